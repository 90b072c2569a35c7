// The --paper and --language options of the verbs that print.
#pragma once

#include "app/paint/Paper.h"
#include "core/base/Phrases.h"

namespace raphe::batch {

[[nodiscard]] inline Result<Paper> paperOf(const std::string &word)
{
    if (const auto paper = fromWord(paperWords, word))
        return *paper;
    return Error{ErrorCode::BadArgument, "--paper", "'" + word + "' is not a paper size; use a4 or letter"};
}

[[nodiscard]] inline Result<Language> languageOf(const std::string &word)
{
    if (const auto language = fromWord(languageWords, word))
        return *language;
    return Error{ErrorCode::BadArgument, "--language", "'" + word + "' is not a language for patients; use en, de or es"};
}

} // namespace raphe::batch
