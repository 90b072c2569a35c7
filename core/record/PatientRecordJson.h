// The patient's record as JSON: format "raphe-patient", version 1, as resources/schema/patient.schema.json says. Unknown
// fields are errors.
#pragma once

#include "core/base/Result.h"
#include "core/record/PatientRecord.h"

#include <string>
#include <string_view>

namespace raphe {

/// Reads and checks a record (checkPatient). `file` is used in messages.
[[nodiscard]] Result<PatientRecord> readPatient(std::string_view text, const std::string &file);

/// The record as pretty-printed JSON, UTF-8, stable order. A record that checkPatient takes is read back equal by
/// readPatient.
[[nodiscard]] std::string writePatient(const PatientRecord &record);

} // namespace raphe
