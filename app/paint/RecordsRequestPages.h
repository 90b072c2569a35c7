// All that is held on one patient on paper: a cover, the record, each visit with its versions, and who used the record.
#pragma once

#include "app/paint/Paper.h"
#include "core/document/RecordsRequest.h"

namespace raphe {

[[nodiscard]] PrintedPages recordsRequestPages(Paper paper, const RecordsRequest &request);

} // namespace raphe
