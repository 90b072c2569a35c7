// The command line of raphe-batch: which verbs there are and what each takes.
#pragma once

#include "core/base/Result.h"

#include <CLI/CLI.hpp>

namespace raphe::batch {

/// Of the atlas and of one visit. The verb that was given leaves its outcome in `result`, which must outlive the parsing.
void addVisitVerbs(CLI::App &cli, Result<Done> &result);
/// That print pages for others: a clinician who reviews or takes over, a patient before the visit.
void addDocumentVerbs(CLI::App &cli, Result<Done> &result);
/// Of the practice file.
void addPracticeVerbs(CLI::App &cli, Result<Done> &result);

} // namespace raphe::batch
