// The command line of raphe-batch: which verbs there are and what each takes.
#pragma once

#include "core/base/Result.h"

#include <CLI/CLI.hpp>

namespace raphe::batch {

/// Of the atlas, of one visit and of a typed line. The verb that was given leaves its outcome in `result`, and in `isCheckFailed`
/// whether the error is what a check found; both must outlive the parsing.
void addVisitVerbs(CLI::App &cli, Result<Done> &result, bool &isCheckFailed);
/// That print pages for others: a clinician who reviews or takes over, a patient before the visit.
void addDocumentVerbs(CLI::App &cli, Result<Done> &result);
/// Of the practice file.
void addPracticeVerbs(CLI::App &cli, Result<Done> &result);

} // namespace raphe::batch
