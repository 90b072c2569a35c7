// The sentences of the reasoning, one for each row.
#pragma once

#include "core/reasoning/Suggestion.h"

namespace raphe {

/// 'right gluteus maximus, to ...: continuity seen in dissection.'; empty for an empty path.
[[nodiscard]] std::string linkedInWords(const Atlas &atlas, const std::vector<PathStep> &path);

/// What speaks most for and against a source, from its terms: 'Found here, and tied to what was found at ...; against it: ...'.
[[nodiscard]] std::string explainedInWords(const Atlas &atlas, const Suggestion &s);

/// What a check at `place` would tell: `one` from `other`; no other: from 'nothing found explains it'.
[[nodiscard]] std::string separatedInWords(
    const Atlas &atlas, const Place &place, const Place &one, const std::optional<Place> &other);

} // namespace raphe
