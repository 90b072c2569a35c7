// Boxes that anyone can close and only one person can open: X25519 with XSalsa20-Poly1305 (crypto_box_seal of libsodium). So a
// key can be given to a user whose passphrase is not at hand. Who closes a box stays unknown: the box proves nothing of its
// sender, so take the public key from where it cannot have been changed.
// Objects belong to one thread at a time.
#pragma once

#include "core/store/crypto/SecretBytes.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

namespace raphe {

using BoxKey = std::array<std::uint8_t, 32>; // public

class BoxOwner {
public:
    /// The seed has 32 bytes; throws Error with OutOfRange otherwise.
    [[nodiscard]] static BoxOwner fromSeed(const SecretBytes &seed);
    [[nodiscard]] const BoxKey &publicKey() const { return m_public; }
    /// Nothing unless the box was closed for this owner and is unchanged.
    [[nodiscard]] std::optional<SecretBytes> open(std::span<const std::uint8_t> box) const;

private:
    explicit BoxOwner(SecretBytes secret) : m_secret(std::move(secret)) { }

    SecretBytes m_secret;
    BoxKey m_public{};
};

[[nodiscard]] std::vector<std::uint8_t> closedFor(const BoxKey &owner, const SecretBytes &content);

/// A key of 32 bytes for one use, from another: BLAKE2b of the use's name, keyed. The result tells nothing of the other.
[[nodiscard]] SecretBytes derivedKey(const SecretBytes &key, std::string_view use);

} // namespace raphe
