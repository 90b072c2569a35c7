// The --paper option of the verbs that print.
#pragma once

#include "app/paint/Paper.h"

namespace raphe::batch {

[[nodiscard]] inline Result<Paper> paperOf(const std::string &word)
{
    if (const auto paper = fromWord(paperWords, word))
        return *paper;
    return Error{ErrorCode::BadArgument, "--paper", "'" + word + "' is not a paper size; use a4 or letter"};
}

} // namespace raphe::batch
