// Documents of several visits in one go: where each is written, and how far the work is.
#pragma once

#include "core/base/Result.h"

#include <string>
#include <vector>

namespace raphe::batch {

struct DocumentTask {
    std::string visit; // file
    std::string out; // file
};

/// One visit is written to `out`, a file; into a folder `out` each under the name of its visit file, with `ending` (".pdf").
/// Refused: several visits and no folder, two visit files of one name.
[[nodiscard]] Result<std::vector<DocumentTask>> documentTasks(
    const std::vector<std::string> &visits, const std::string &out, const std::string &ending);

/// Says on standard error which of several is being written: '3 of 12: visit.pdf'. Silent for one. What is written already is
/// whole if the work is ended here.
void tellProgress(const std::vector<DocumentTask> &tasks, std::size_t at);

} // namespace raphe::batch
