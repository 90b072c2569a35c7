// One patient's record for a records request: everything the file holds on them, in a form that other programs can read and one
// that people can. The printed form comes with the documents.
#pragma once

#include "core/store/Practice.h"

namespace raphe {

struct PatientExport {
    std::string json; // format "raphe-export", version 1
    std::string text;
};

/// Record, visits as they are, every signed version, and who opened the record when. Adds an entry that it was exported.
[[nodiscard]] Result<PatientExport> exportPatient(Practice &practice, std::int64_t patient);

} // namespace raphe
