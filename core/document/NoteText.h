// A note as plain text: UTF-8, lines of at most 80 characters, labels in a column of their own. Characters that cannot be seen or
// turn the direction of text are shown as a mark. Plain functions; any thread.
#pragma once

#include "core/document/ClinicalNote.h"

#include <string>

namespace raphe {

inline constexpr int noteTextWidth = 80; // code points

[[nodiscard]] std::string noteText(const ClinicalNote &note);

} // namespace raphe
