// The clinical note on paper, on as many pages as it needs.
#pragma once

#include "app/paint/Paper.h"
#include "core/document/ClinicalNote.h"

namespace raphe {

[[nodiscard]] PrintedPages clinicalNotePages(Paper paper, const ClinicalNote &note);

} // namespace raphe
