// Bytes seen as text and the reverse. Nothing here is for secrets: hexadecimal text lives in ordinary memory.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// The UTF-8 bytes of a text, which must outlive the span.
[[nodiscard]] std::span<const std::uint8_t> bytesOf(std::string_view text);

/// Two lower-case digits a byte.
[[nodiscard]] std::string toHex(std::span<const std::uint8_t> bytes);
/// Nothing unless the text is pairs of hexadecimal digits, of either case, throughout.
[[nodiscard]] std::optional<std::vector<std::uint8_t>> fromHex(std::string_view text);

} // namespace raphe
