// A visit file into a practice.
#pragma once

#include "core/record/Visit.h"
#include "core/store/ExportImport.h"
#include "core/store/Practice.h"

#include <string>

namespace raphe {

/// Fails with `file` for a visit that names no patient or no day: it would belong to nobody.
[[nodiscard]] Result<Done> checkBelongs(const Visit &visit, const std::string &file);

/// Adds the visit as a draft, to the patient of the same name and birth date, else to a new one. `visit` belongs to somebody.
[[nodiscard]] Result<ImportedPatient> importVisit(Practice &practice, const Visit &visit);

} // namespace raphe
