// Which structure a name means in its clause, on which sides, and at which end of it. Plain functions.
#pragma once

#include "core/language/Issue.h"
#include "core/language/LineWords.h"
#include "core/language/Mark.h"
#include "core/language/Said.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe::language {

/// A side word and where it stands; a heading's stands elsewhere.
struct SideSaid {
    SideWord side{};
    std::optional<Stretch> at; // nothing when a heading said it
};

/// The structure that a name means, with what the clause says of it; nothing (and an issue) when that is open.
[[nodiscard]] std::optional<std::size_t> structureOf(
    const Mark &name, const std::optional<SideSaid> &side, const Said &said, const LineWords &words, Issues &issues);

/// The sides of the structure that are meant; none (and an issue) when that is open.
[[nodiscard]] std::vector<Side> sidesOf(
    std::size_t structure, const Mark &name, const std::optional<SideSaid> &side, const LineWords &words, Issues &issues);

/// Spot and landmark of a finding of this structure; an issue when they are not of it.
void placeSpot(std::size_t structure, const Said &said, Finding &finding, const LineWords &words, Issues &issues);

/// Joint play and end feel are of joints; an issue when this is none.
void checkJoint(std::size_t structure, const Mark &name, const Said &said, const LineWords &words, Issues &issues);

/// The places that it refers to, each with a side of its own.
[[nodiscard]] std::vector<Place> targetsOf(const Said &said, const LineWords &words, Issues &issues);

/// The word for a side as a choice says it.
[[nodiscard]] const std::string &phraseOf(SideWord side, const LineWords &words);

} // namespace raphe::language
