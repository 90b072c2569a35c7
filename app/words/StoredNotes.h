// The visits of a practice file as notes want them: what the file keeps, joined to what a note is composed of. Fails as the
// practice file does.
#pragma once

#include "core/document/RecordsRequest.h"
#include "core/store/Practice.h"

#include <cstdint>
#include <vector>

namespace raphe {

class Atlas;

/// One visit with its signed words; a document that is no visit of this program is kept as text.
[[nodiscard]] Result<KeptVisit> keptVisit(const Practice &practice, const StoredVisit &stored, const Atlas &atlas);

/// State and acts of a visit, and what came before it, for its note; the program's order of sources is the caller's to add.
/// `earlier`: the patient's other visits, newest first; those after this one's day are left out.
[[nodiscard]] NoteGiven noteGiven(const KeptVisit &kept, const std::vector<EarlierVisit> &earlier);

/// All that the file holds on one patient; adds an entry that it was exported.
[[nodiscard]] Result<RecordContent> recordContent(Practice &practice, std::int64_t patient, const Atlas &atlas);

} // namespace raphe
