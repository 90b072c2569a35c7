// A letter to another professional on paper: letterhead, the addressee where the window of an envelope shows it, how urgent it is
// and why, the question, then the parts. One page, in smaller type where there is much to say; more pages before anything would
// be left out.
#pragma once

#include "app/paint/Paper.h"
#include "core/document/LetterDraft.h"

namespace raphe {

[[nodiscard]] PrintedPages letterPages(Paper paper, const Letter &letter, const LetterFacts &facts);

} // namespace raphe
