// The tables for a clinician's review on paper, with room for the answers and a signature. Landscape; 8 pt or larger.
#pragma once

#include "app/paint/Paper.h"
#include "core/document/RuleReview.h"

namespace raphe {

/// A row stands on one page, but for one that is longer than a page.
[[nodiscard]] PrintedPages ruleReviewPages(Paper paper, const RuleReview &review);

} // namespace raphe
