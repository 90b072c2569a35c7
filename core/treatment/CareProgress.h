// Whether the care of a complaint changed anything since it was agreed on, so that care that does not help is not just gone on
// with. Plain values; nothing fails, any thread.
#pragma once

#include "core/examination/Examination.h"
#include "core/outcome/ReadingChange.h"
#include "core/plan/NextVisit.h"
#include "core/record/Visit.h"

#include <string>
#include <vector>

namespace raphe {

/// One reading at the visit of the agreement and today.
struct CareReading {
    std::string name; // 'pain now', 'climbing stairs', 'RIGHT rotation of the neck'
    std::string before; // in words
    std::string now;
    ReadingChange change;
    std::string verdict; // as in ReadingChange.h
};

struct CareProgress {
    int visits = 0; // about this complaint, after the agreement, today's counted
    std::vector<CareReading> readings; // of what was read at both
    bool isBetter = false; // one of them, beyond its error
    bool isWorse = false;
    /// The agreed number of visits is over, nothing is better beyond error, and nobody has decided yet.
    bool isToReview = false;
};

/// Readings are the pain now, each activity by its name and the mean of several, and movements on the same side, in the same mode
/// and with the same device; those before the treatment of each day. The errors and their sources: ReadingChange.h,
/// ScaleChange.h, MovementScale.h. Without a plan of care, and on the day of the agreement, there is none. When the visit of the
/// agreement is not to be found there are no readings, and it is reviewed when it is due all the same. `earlier`: the patient's
/// other visits, newest first; those in error do not count, nor those about another complaint or after today's.
[[nodiscard]] CareProgress careProgress(
    const Visit &today, const std::vector<EarlierVisit> &earlier, const Examination &examination);

} // namespace raphe
