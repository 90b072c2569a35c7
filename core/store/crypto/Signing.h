// Signatures: Ed25519 (RFC 8032), by libsodium. Whoever has the public key can tell that the message is the signer's and
// unchanged. Signing needs no randomness. Objects belong to one thread at a time; `verify` is pure, any thread.
#pragma once

#include "core/store/crypto/SecretBytes.h"

#include <array>
#include <cstdint>
#include <span>

namespace raphe {

using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;
inline constexpr std::size_t signingSeedSize = 32;

class SigningKey {
public:
    [[nodiscard]] static SigningKey random();
    /// The seed is RFC 8032's private key. Throws Error with OutOfRange unless it has signingSeedSize bytes.
    [[nodiscard]] static SigningKey fromSeed(SecretBytes seed);

    /// What is to be stored, sealed.
    [[nodiscard]] const SecretBytes &seed() const { return m_seed; }
    [[nodiscard]] const PublicKey &publicKey() const { return m_publicKey; }
    [[nodiscard]] Signature sign(std::span<const std::uint8_t> message) const;

private:
    explicit SigningKey(SecretBytes seed);

    SecretBytes m_seed;
    SecretBytes m_expanded; // libsodium's form: seed and public key
    PublicKey m_publicKey{};
};

/// Also refuses second forms of a signature, and public keys of small order, for which signatures can be made up.
[[nodiscard]] bool verify(const PublicKey &publicKey, std::span<const std::uint8_t> message, const Signature &signature);

} // namespace raphe
