// A file that another practice or another copy of this program wrote, into the practice: a patient's exported record, or one
// visit.
#pragma once

#include "core/store/ExportImport.h"

#include <QString>

namespace raphe {

struct TakenOver {
    ImportedPatient imported;
    bool isAlike = false; // somebody else of this name and birth date was on file already
};

/// All of the file or, with an error, nothing of it. Slow: it reads what the program knows of the body. Any thread that may use
/// `practice`.
[[nodiscard]] Result<TakenOver> takeOver(Practice &practice, const QString &file);

} // namespace raphe
