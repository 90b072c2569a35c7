// Reads a visit file from disk for a verb, alone or with all that is needed to answer about it. Conditions, warning
// signs, movements and tests that the program does not know are refused here.
#pragma once

#include "app/batch/DocumentTasks.h"
#include "core/base/Result.h"
#include "core/plan/Advice.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/Visit.h"

#include <string>

namespace raphe::batch {

[[nodiscard]] Result<Visit> readVisitFile(const std::string &file, const Atlas &atlas);

/// Those of several documents, in order; the first that cannot be read is the error.
[[nodiscard]] Result<std::vector<Visit>> readVisitFiles(const std::vector<DocumentTask> &tasks, const Atlas &atlas);

struct KnownVisit {
    Knowledge knowledge;
    Visit visit;
};
[[nodiscard]] Result<KnownVisit> readKnownVisit(const std::string &file);

/// With all the advice for it; making its tables takes a moment.
struct AdvisedVisit {
    KnownVisit known;
    Adviser adviser;
};
[[nodiscard]] Result<AdvisedVisit> readAdvisedVisit(const std::string &file);

} // namespace raphe::batch
