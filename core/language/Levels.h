// Levels of the spine as they are typed: 'l4/5', 'l4/l5', 'l5s1', 'd6-7', 't7'. Plain functions.
#pragma once

#include "core/language/Lexer.h"
#include "core/language/LineWords.h"

#include <optional>

namespace raphe::language {

struct Level {
    std::size_t tokens = 0; // how many it takes
    std::vector<std::size_t> structures; // one; several for a stretch of segments; none when no spine has it
};

/// The level whose letter is the token at `at`, when its number is glued to it.
[[nodiscard]] std::optional<Level> levelAt(const std::vector<Token> &tokens, std::size_t at, const LineWords &words);

/// The vertebra of a letter and a number; nothing when there is none.
[[nodiscard]] std::optional<std::size_t> vertebra(const std::string &letter, int number, const LineWords &words);
/// The segments that a vertebra takes part in, from the head down.
[[nodiscard]] std::vector<std::size_t> segmentsOf(const StructureId &vertebra, const LineWords &words);

/// Segments, vertebrae, discs and parts of a vertebra: after these a 't3' could be a vertebra.
[[nodiscard]] bool isOfSpine(const Structure &structure, const Atlas &atlas);
[[nodiscard]] bool isVertebra(const Structure &structure);

} // namespace raphe::language
