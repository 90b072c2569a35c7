// Two records of one person made into one that holds all that both said. Which of them stays is for the caller to say.
// Plain functions of plain values; any thread.
#pragma once

#include "core/base/Result.h"
#include "core/record/PatientRecord.h"

#include <map>

namespace raphe {

struct MergedPatient {
    PatientRecord record;
    std::map<int, int> complaintIds; // from the complaints' ids in `other` to those in the record
};

/// One record of two of the same person; nothing is lost. Single texts that differ stand one after the other with '; '
/// between. The name, birth date, pregnancy and blood pressure of `keep` stay, and those of `other` that differ go into
/// the lists beside them. A contact of another name is added to the name together with its phone. Lists are united.
/// The complaints of `other` get new ids, unless `keep` has the very same one. A text or list that becomes too long is an
/// error with its place, as of checkPatient.
[[nodiscard]] Result<MergedPatient> merged(const PatientRecord &keep, const PatientRecord &other);

} // namespace raphe
