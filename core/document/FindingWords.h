// A finding in the practitioner's words, and what kind of mark it gets. Plain functions; nothing fails, any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/record/Visit.h"

#include <string>

namespace raphe {

/// What a mark says. Each has a shape of its own, so that colour never carries the meaning alone.
enum class MarkKind { Tender, Restricted, TenderAndRestricted, Noted, Clear, Unable };

[[nodiscard]] MarkKind markKindOf(const Finding &finding);
/// 'tenderness 3, restriction 2, familiar': for practitioners.
[[nodiscard]] std::string findingInWords(const Atlas &atlas, const Finding &finding);

} // namespace raphe
