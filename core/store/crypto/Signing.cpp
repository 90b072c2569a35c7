#include "core/store/crypto/Signing.h"

#include "core/store/crypto/KeySize.h"

#include <sodium.h>

#include <utility>

namespace raphe {

static_assert(std::tuple_size_v<PublicKey> == crypto_sign_ed25519_PUBLICKEYBYTES);
static_assert(std::tuple_size_v<Signature> == crypto_sign_ed25519_BYTES);
static_assert(signingSeedSize == crypto_sign_ed25519_SEEDBYTES);

SigningKey::SigningKey(SecretBytes seed) : m_seed(std::move(seed)), m_expanded(crypto_sign_ed25519_SECRETKEYBYTES)
{
    expectKeySize(m_seed, signingSeedSize);
    crypto_sign_ed25519_seed_keypair(m_publicKey.data(), m_expanded.span().data(), m_seed.span().data());
}

SigningKey SigningKey::random()
{
    return SigningKey(SecretBytes::random(signingSeedSize));
}

SigningKey SigningKey::fromSeed(SecretBytes seed)
{
    return SigningKey(std::move(seed));
}

Signature SigningKey::sign(std::span<const std::uint8_t> message) const
{
    Signature signature{};
    crypto_sign_ed25519_detached(signature.data(), nullptr, message.data(), message.size(), m_expanded.span().data());
    return signature;
}

bool verify(const PublicKey &publicKey, std::span<const std::uint8_t> message, const Signature &signature)
{
    initialiseCrypto();
    return crypto_sign_ed25519_verify_detached(signature.data(), message.data(), message.size(), publicKey.data()) == 0;
}

} // namespace raphe
