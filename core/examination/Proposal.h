// Which sheets a complaint calls for, and whether nerves and the spinal cord are to be tested. Plain functions; nothing fails.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/examination/Examination.h"

#include <vector>

namespace raphe {

/// The sheets of the regions in which it hurts, the one with the most of them first, of equal ones that of fewer regions; nothing
/// where nobody said where it hurts. Places that are no surface region count by the regions over them.
[[nodiscard]] std::vector<const Sheet *> proposedSheets(
    const Examination &examination, const Regions &regions, const Visit &visit);

/// What the visit calls for beyond the sheet itself. Common practice, no source: nerves, when pain is burning, shooting, tingling
/// or numb, when it hurts both on the trunk and on a limb, or with a condition of nerves; the cord, when limbs of both sides, or
/// an arm and a leg, burn, shoot, tingle or are numb, or with a condition of the cord.
struct Calls {
    bool nerves = false;
    bool cord = false;
    bool operator==(const Calls &) const = default;
};
[[nodiscard]] Calls callsOf(const Regions &regions, const Visit &visit);

/// The tests of the sheet for this visit, in the order of work; those that were answered stand there whatever calls for them.
[[nodiscard]] std::vector<const ExamTest *> testsOf(
    const Examination &examination, const Sheet &sheet, const Calls &calls, const Visit &visit);

} // namespace raphe
