// What the marks of one clause say of a place, once the place is set aside. Plain functions.
#pragma once

#include "core/language/Issue.h"
#include "core/language/LineWords.h"
#include "core/language/Mark.h"
#include "core/record/Visit.h"

#include <optional>
#include <vector>

namespace raphe::language {

struct Said {
    Finding what; // its place is not set
    std::optional<Stretch> spot;
    std::vector<Mark> at; // landmarks
    std::vector<Mark> refersTo;
    std::optional<Stretch> play; // it was said of a joint's play
    std::optional<Stretch> endFeel;
    std::optional<Stretch> certain; // or felt only after comparing
    bool isSame = false; // as the finding before

    [[nodiscard]] bool saysAnything() const { return what.saysAnything() || what.isUnable() || isSame || !refersTo.empty(); }
};

/// Reads the marks; what is unclear or wrong about them goes to `issues`. `hasSide`: a side is said already; `isJoint`: of a
/// joint, whose play has a grade too.
[[nodiscard]] Said saidBy(const std::vector<Mark> &marks, bool hasSide, bool isJoint, const LineWords &words, Issues &issues);

/// Whether the parts go together; if not, a mistake about them is added.
void checkSense(const Said &said, Stretch at, Issues &issues);

/// Adds what a later clause says to the finding before it; false when the two contradict each other.
[[nodiscard]] bool addTo(Finding &finding, const Finding &more);

} // namespace raphe::language
