// All fields of a patient's record as labelled lines. Plain function of plain values; nothing fails.
#pragma once

#include "core/document/NoteParts.h"
#include "core/record/PatientRecord.h"
#include "core/safety/SafetyRules.h"

namespace raphe {

/// `rules` name the conditions.
[[nodiscard]] NotePart patientRecordPart(const SafetyRules &rules, const PatientRecord &record);

} // namespace raphe
