// The ends of a structure as the atlas has them, those of its parts among them. Plain functions.
#pragma once

#include "core/language/LineWords.h"
#include "core/language/Mark.h"

#include <vector>

namespace raphe::language {

struct End {
    std::size_t structure = 0; // what it attaches to
    Spot spot{}; // origin or insertion
    bool operator==(const End &) const = default;
};

[[nodiscard]] std::vector<End> endsOf(const Structure &structure, const LineWords &words);

/// The ends that a landmark's name means: the landmark itself, or what lies on the bone of that name.
[[nodiscard]] std::vector<End> endsAt(const Structure &structure, const Mark &landmark, const LineWords &words);

} // namespace raphe::language
