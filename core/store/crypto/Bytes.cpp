#include "core/store/crypto/Bytes.h"

#include <sodium.h>

namespace raphe {

std::span<const std::uint8_t> bytesOf(std::string_view text)
{
    return {reinterpret_cast<const std::uint8_t *>(text.data()), text.size()};
}

std::string toHex(std::span<const std::uint8_t> bytes)
{
    std::string text(2 * bytes.size() + 1, '\0'); // libsodium writes a final zero
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

std::optional<std::vector<std::uint8_t>> fromHex(std::string_view text)
{
    if (text.size() % 2 != 0)
        return std::nullopt;
    std::vector<std::uint8_t> bytes(text.size() / 2);
    // libsodium may not be handed the null pointer of no bytes
    if (!bytes.empty() && sodium_hex2bin(bytes.data(), bytes.size(), text.data(), text.size(), nullptr, nullptr, nullptr) != 0)
        return std::nullopt;
    return bytes;
}

} // namespace raphe
