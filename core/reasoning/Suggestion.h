// One row of a list that is offered, and what is done with whole lists. Plain values.
#pragma once

#include "core/reasoning/Paths.h"
#include "core/reasoning/Position.h"
#include "core/record/CautionVerdict.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

struct Term {
    std::string name; // constant or quantity, e.g. "tenderness"
    double value = 0;
    std::optional<Place> at; // of the finding that it comes from
};

struct Suggestion {
    explicit Suggestion(Place p = {}, double s = 0) : place(std::move(p)), score(s) { }

    Place place;
    double score = 0; // for ordering and bars only; never a probability
    int rank = 0; // 1 is first; equal scores share a rank
    std::vector<Term> terms;
    std::string why;
    std::vector<PathStep> path;
    std::optional<Position> position; // for checks
    std::vector<CautionVerdict> cautions; // for treatment
};

inline constexpr std::size_t suggestionsAtMost = 20;

/// Sorts best first, keeps 20 at most, gives equal scores one rank.
void rankAndCut(std::vector<Suggestion> &list);
void mirrorAll(std::vector<Suggestion> &list);
/// The rows by position, each position where its best row stands, best rows first within it.
[[nodiscard]] std::vector<Suggestion> groupedByPosition(std::vector<Suggestion> list);

} // namespace raphe
