// BLAKE2b with 256 bits (RFC 7693), by libsodium. Pure functions; any thread.
#pragma once

#include "core/store/crypto/Bytes.h"
#include "core/store/crypto/SecretBytes.h"

#include <array>
#include <cstdint>
#include <span>

namespace raphe {

using Hash256 = std::array<std::uint8_t, 32>;
inline constexpr std::size_t hashKeySize = 32;

[[nodiscard]] Hash256 hashOf(std::span<const std::uint8_t> bytes);
/// Only who has the key can make or check it. Throws Error with OutOfRange unless the key has hashKeySize bytes.
/// Compare with `matches` where the other hash comes from outside.
[[nodiscard]] Hash256 hashOf(std::span<const std::uint8_t> bytes, const SecretBytes &key);
/// Takes the same time wherever the two differ.
[[nodiscard]] bool matches(const Hash256 &one, const Hash256 &other);

} // namespace raphe
