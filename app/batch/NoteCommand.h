// The verbs that print written records: what they are asked for with.
#pragma once

#include "app/batch/Commands.h"

#include <cstdint>
#include <string>
#include <vector>

namespace raphe::batch {

struct NoteVerb {
    std::vector<std::string> visits; // files
    std::vector<std::string> before; // files of the patient's earlier visits, in any order; for one visit only
    std::string out; // .pdf or .txt, for several visits a folder; empty: text on standard output
    std::string paper = "a4";
    bool isForOthers = false; // a copy without what was answered alone
};
/// The clinical note of each visit file, as a draft: nobody signed it. None is written unless all can be read.
[[nodiscard]] Result<Done> writeNote(const NoteVerb &verb);

struct RecordsVerb {
    std::int64_t patient = 0;
    std::string out; // .pdf
    std::string paper = "a4";
    bool isForOthers = false;
};
/// All that the practice file holds on one patient, as pages; adds an entry that it was exported.
[[nodiscard]] Result<Done> exportPages(const std::string &practiceFile, const Key &key, const RecordsVerb &verb);

} // namespace raphe::batch
