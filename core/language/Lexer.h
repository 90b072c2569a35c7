// A typed line as tokens with the bytes they came from. Letters and digits part company ('t2stuck2' is four tokens), so that
// names and grades read the same whether a blank was typed or not; `glued` remembers. Plain functions; any bytes are taken.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace raphe::language {

enum class TokenKind { Word, Number, Plus, Dash, Slash, Comma, Colon };

struct Token {
    TokenKind kind{};
    std::size_t begin = 0; // bytes of the line
    std::size_t end = 0;
    std::string text; // lower case without accents; a number's digits
    bool glued = false; // nothing stands between it and the token before
};

/// Comma stands for every mark that ends a clause: comma, semicolon, line break. Plus is a run of plus signs.
[[nodiscard]] std::vector<Token> tokensOf(std::string_view line);

} // namespace raphe::language
