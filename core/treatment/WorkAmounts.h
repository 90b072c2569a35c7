// How long, and with what suction: the amounts in a line about work. Plain functions; any thread.
#pragma once

#include "core/language/Lexer.h"
#include "core/language/WordList.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace raphe {

struct WorkAmount {
    std::size_t begin = 0; // tokens
    std::size_t end = 0;
    double value = 0; // seconds or kPa; 1e9 at most
    bool isOne = true; // one number that can be meant in one way: no '60-90 s', no '1:75'
};

/// The time that starts at this token: '90 s', '1.5 min', '2 min 30 s', '1:30'. `isAfterAt`: 'at 10:30' is a time of day.
[[nodiscard]] std::optional<WorkAmount> durationAt(
    const std::vector<language::Token> &tokens, std::size_t at, bool isAfterAt, const WordList::Work &words);

/// The suction that starts at this token: '20 kPa'.
[[nodiscard]] std::optional<WorkAmount> suctionAt(
    const std::vector<language::Token> &tokens, std::size_t at, const WordList::Work &words);

} // namespace raphe
