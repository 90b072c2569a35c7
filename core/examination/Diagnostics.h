// What a table of two by two says of a test: shares and likelihood ratios with their 95 % intervals, for showing beside counts.
// They speak of the patients of one study, never of the one in the room. Plain functions; nothing fails.
#pragma once

#include "core/examination/ExamTest.h"

#include <optional>

namespace raphe {

struct ConfidenceInterval {
    double low = 0;
    double high = 0;
};

/// A share of people with its 95 % Wilson score interval (Wilson 1927, J Am Stat Assoc 22:209).
struct Share {
    int count = 0;
    int of = 0; // above 0
    [[nodiscard]] double value() const { return static_cast<double>(count) / of; }
    [[nodiscard]] ConfidenceInterval interval() const;
};

[[nodiscard]] Share sensitivity(const TwoByTwo &table);
[[nodiscard]] Share specificity(const TwoByTwo &table);
/// Of those with a positive test, who had it; nothing when nobody was positive.
[[nodiscard]] std::optional<Share> positiveValue(const TwoByTwo &table);
[[nodiscard]] std::optional<Share> negativeValue(const TwoByTwo &table);

/// A ratio of two shares with its 95 % score interval (Koopman 1984, Biometrics 40:513), which small studies need: the interval
/// by the logarithm reaches too far down.
struct Ratio {
    double value = 0;
    ConfidenceInterval interval;
};

/// Nothing where one of the two shares is 0: the interval has no bound then.
[[nodiscard]] std::optional<Ratio> positiveRatio(const TwoByTwo &table);
[[nodiscard]] std::optional<Ratio> negativeRatio(const TwoByTwo &table);

} // namespace raphe
