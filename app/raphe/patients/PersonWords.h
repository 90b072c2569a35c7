// A person in a few words, the same wherever one is named: birth date with age, and the mark.
#pragma once

#include "core/record/PatientRecord.h"

#include <QDate>
#include <QString>

#include <string>

namespace raphe {

/// "born 5 March 1980, 46 years"; "no birth date" when it is empty.
[[nodiscard]] QString bornWords(const std::string &isoDate, const QDate &today = QDate::currentDate());
/// "12 November 2026"; empty for what is no date.
[[nodiscard]] QString dayWords(const std::string &isoDate);
[[nodiscard]] QString sexInWords(Sex sex);

} // namespace raphe
