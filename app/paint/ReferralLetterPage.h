// The letter about warning signs on paper: one page, in smaller type where there is much to say; more pages before anything
// would be left out.
#pragma once

#include "app/paint/Paper.h"
#include "core/document/ReferralLetter.h"

namespace raphe {

/// The file is a PDF.
[[nodiscard]] Result<Done> writeReferralLetter(const std::string &file, Paper paper, const ReferralLetter &letter);

} // namespace raphe
