// Numbers and grades as they are typed. Plain functions.
#pragma once

#include "core/language/Lexer.h"
#include "core/language/LineWords.h"
#include "core/language/Mark.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe::language {

struct NumberFound {
    std::size_t end = 0; // token after it
    double value = 0;
    std::optional<double> upTo; // '2-3'
};
/// A number, a range of two, or one with a minus; nothing where none starts.
[[nodiscard]] std::optional<NumberFound> numberAt(const std::vector<Token> &tokens, std::size_t at);

[[nodiscard]] std::optional<Quality> qualityOf(LineWord word);
/// The highest grade of its scale.
[[nodiscard]] int highestOf(Quality quality);

struct GradeFound {
    GradeSaid said;
    std::size_t end = 0; // token after it
};
/// What follows a grade word, from the token `at` on: a number, plus signs, or nothing.
[[nodiscard]] GradeFound gradeAfter(const std::vector<Token> &tokens, std::size_t at, Quality quality, const LineWords &words);

} // namespace raphe::language
