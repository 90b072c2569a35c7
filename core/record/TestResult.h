// What an examination test showed, as a plain value. Which tests there are, and which answer each takes, is known to
// core/examination (resources/examination/tests.json).
#pragma once

#include "core/anatomy/Place.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What a test that loads or stretches a tissue brings.
enum class TestPain { None, Other, Familiar };
inline constexpr WordTable<TestPain, 3> testPainWords{
    {{TestPain::None, "none"}, {TestPain::Other, "other"}, {TestPain::Familiar, "familiar"}}};

/// Exactly one of pain, grade, present, values and unable is said.
struct TestResult {
    static constexpr int highestGrade = 5; // muscle power 0-5; reflexes 0-4 and sensation 0-2 are shorter
    static constexpr double furthest = 1000;

    std::string test; // id
    Side side{}; // midline: the test has no sides
    std::optional<TestPain> pain;
    bool changesFromAfar = false; // of a nerve: moving a distant part changes what is felt
    std::optional<int> grade; // power, reflex, sensation
    std::optional<bool> present; // a sign
    std::vector<double> values; // vitals
    std::optional<std::string> unable; // why it was not done
    std::string note;

    bool operator==(const TestResult &) const = default;
};

} // namespace raphe
