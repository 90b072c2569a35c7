// What is examined again after the treatment, and what became of it: each reading before and after, on the same scale, side and
// device. Plain values; nothing fails.
#pragma once

#include "core/examination/Examination.h"
#include "core/outcome/ReadingChange.h"
#include "core/record/Visit.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What is to be examined again.
struct RetestItem {
    MomentKind kind{};
    std::string id; // of the structure, the movement or the test; empty: the pain of the first complaint
    Side side{};
    std::string name; // 'RIGHT piriformis'
    [[nodiscard]] bool isPain() const { return id.empty(); }
    bool operator==(const RetestItem &) const = default;
};

/// The marked movement or test, then joints that did not move well, then sore places, each once and in the order of examination;
/// at last how much it hurts, where that was told.
[[nodiscard]] std::vector<RetestItem> toRetest(const Visit &visit, const Examination &examination, const Atlas &atlas);
/// Those of it that were not; it is said.
[[nodiscard]] std::vector<RetestItem> notRetested(const Visit &visit, const Examination &examination, const Atlas &atlas);

struct RetestPair {
    RetestItem item;
    std::string quality; // 'tenderness', 'restriction', 'pain'; empty: the value itself
    std::string before; // in words
    std::string now;
    std::optional<ReadingChange> change; // of numbers
    std::string verdict; // a sentence without its full stop
};

/// Of everything that was examined again and before. Readings of two devices or modes are not compared.
[[nodiscard]] std::vector<RetestPair> retestPairs(const Visit &visit, const Examination &examination, const Atlas &atlas);

} // namespace raphe
