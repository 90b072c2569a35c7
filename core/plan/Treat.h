// What to treat first among the findings, and what to leave alone: a sum of visible terms, with vetoes. Tenderness 4 asks
// for caution: neither it nor 'familiar' adds anything then. Computed in one canonical orientation and mirrored back, as the
// reasoning is. No state.
#pragma once

#include "core/reasoning/Reason.h"

#include <functional>
#include <optional>
#include <set>

namespace raphe {

/// What the practitioner chose once for all visits.
struct Preferences {
    bool complaintFirst = true; // start where the complaint is
    bool jointFirst = true; // give the joint motion before lengthening the muscles across it
    std::optional<std::set<std::string>> techniques = {}; // within their scope of practice; nothing: not restricted
};

struct Treatment {
    std::vector<Suggestion> treat; // places found, best first
    std::vector<Suggestion> leave; // places found that are not to be worked on now, each with its reason; no order of merit
};

/// Verdicts of the caution rules at a place of the visit, gravest first; empty function: none.
using Verdicts = std::function<std::vector<CautionVerdict>(const Place &)>;

/// Ranks the places found. A place where a verdict stops every technique is left alone; so is a joint where mobilising is
/// stopped, or whose play is 0 or 4 to 6, soft tissue that may be neither pressed nor lengthened, and whatever calls for
/// techniques outside the practitioner's scope. `why` names every term, the heaviest first, and any caution.
[[nodiscard]] Treatment treatFirst(
    const Reasoner &reasoner, const Visit &visit, const Preferences &preferences = {}, const Verdicts &verdicts = {});

} // namespace raphe
