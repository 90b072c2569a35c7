// A line's marks as clauses: what is one finding, what is the next, and which side word belongs to which. Plain functions.
#pragma once

#include "core/language/LineWords.h"
#include "core/language/Mark.h"

#include <optional>
#include <vector>

namespace raphe::language {

/// What one part of a line speaks of, and its marks in order.
struct Clause {
    enum class Of { Nothing, Names, Movement };
    Of of = Of::Nothing;
    std::vector<Mark> names; // a list ('a and b') has several
    std::optional<Mark> movement; // the move; the stretch covers the joint's name
    std::vector<Mark> sides;
    std::vector<Mark> marks; // the sides among them, the names and the movement left out
    std::optional<std::size_t> firstSaid; // of marks: the first one behind the names
    bool isBeside = false; // directly behind a name of which nothing was said
    std::optional<Mark> contested; // a side word that could be its own or its neighbour's
};

/// Whether a side was said for all clauses by a heading.
enum class HeadSide { No, Yes };

/// The clauses of the marks between two breaks.
[[nodiscard]] std::vector<Clause> clausesOf(const std::vector<Mark> &marks, const LineWords &words, HeadSide head);

/// Left and right only, left, right and midline, or midline only; of a name that fits several, what any of them needs.
enum class Sidedness { Paired, Segment, Midline };
[[nodiscard]] Sidedness sidednessOf(const Mark &name, const LineWords &words);

/// The parts of a clause that has several side words, each with its side and its own marks; none when a side word has no marks
/// of its own.
struct SidePart {
    Mark side;
    std::vector<Mark> marks;
};
[[nodiscard]] std::vector<SidePart> sideParts(const Clause &clause);

} // namespace raphe::language
