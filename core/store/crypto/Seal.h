// Sealed boxes: XChaCha20-Poly1305 (draft-irtf-cfrg-xchacha-03), by libsodium. What is in a box can be neither read nor
// changed without its key. Pure functions; any thread.
// A box is nonce (24 bytes, random) || ciphertext (as long as the plain bytes) || tag (16 bytes). Nonces of 192 bits are
// drawn at random for each box, so that one key may seal as many boxes as anybody can make.
// The box shows how long its content is. It does not prove that only one key opens it (it is not key-committing): bind
// the key's number in `boundTo` where that matters.
#pragma once

#include "core/store/crypto/SecretBytes.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace raphe {

inline constexpr std::size_t sealKeySize = 32;
inline constexpr std::size_t sealNonceSize = 24;
inline constexpr std::size_t sealTagSize = 16;
/// How many bytes a box is longer than its content.
inline constexpr std::size_t sealOverhead = sealNonceSize + sealTagSize;

/// `boundTo` names the place of the box, e.g. table, row and version. It is not in the box, and the box opens only with
/// the same: a box that was moved elsewhere is refused. Join parts so that no two places read alike.
/// Throws Error with OutOfRange unless the key has sealKeySize bytes.
[[nodiscard]] std::vector<std::uint8_t> seal(
    const SecretBytes &key, std::span<const std::uint8_t> plain, std::string_view boundTo);

/// Nothing when box, key or place differ in any bit from those of the sealing, or the box is too short to be one.
/// The plain bytes are in ordinary memory. Throws as `seal`.
[[nodiscard]] std::optional<std::vector<std::uint8_t>> unseal(
    const SecretBytes &key, std::span<const std::uint8_t> sealed, std::string_view boundTo);

/// The same for a box that holds a key: the plain bytes are never in ordinary memory.
[[nodiscard]] std::optional<SecretBytes> unsealSecret(
    const SecretBytes &key, std::span<const std::uint8_t> sealed, std::string_view boundTo);

} // namespace raphe
