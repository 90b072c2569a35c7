// Texts from outside as UTF-8: whether they are, and how long they are for a reader. Plain functions; any thread.
#pragma once

#include <cstddef>
#include <string_view>

namespace raphe {

/// Whether the bytes are well-formed UTF-8 (RFC 3629). An empty text is.
[[nodiscard]] bool isUtf8(std::string_view text);

/// How many code points the UTF-8 text has.
[[nodiscard]] std::size_t characterCount(std::string_view text);

/// Whether it says anything: a letter or a digit of any script stands in it. A dot, a dash or spaces do not.
[[nodiscard]] bool saysSomething(std::string_view text);

} // namespace raphe
