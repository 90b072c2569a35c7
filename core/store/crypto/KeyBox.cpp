#include "core/store/crypto/KeyBox.h"

#include "core/base/Result.h"
#include "core/store/crypto/Bytes.h"
#include "core/store/crypto/KeySize.h"

#include <sodium.h>

namespace raphe {

static_assert(std::tuple_size_v<BoxKey> == crypto_box_PUBLICKEYBYTES);

BoxOwner BoxOwner::fromSeed(const SecretBytes &seed)
{
    initialiseCrypto();
    expectKeySize(seed, crypto_box_SEEDBYTES);
    BoxOwner owner(SecretBytes(crypto_box_SECRETKEYBYTES));
    crypto_box_seed_keypair(owner.m_public.data(), owner.m_secret.span().data(), seed.span().data());
    return owner;
}

std::optional<SecretBytes> BoxOwner::open(std::span<const std::uint8_t> box) const
{
    if (box.size() < crypto_box_SEALBYTES)
        return std::nullopt;
    SecretBytes content(box.size() - crypto_box_SEALBYTES);
    if (crypto_box_seal_open(content.span().data(), box.data(), box.size(), m_public.data(), m_secret.span().data()) != 0)
        return std::nullopt;
    return content;
}

std::vector<std::uint8_t> closedFor(const BoxKey &owner, const SecretBytes &content)
{
    initialiseCrypto();
    std::vector<std::uint8_t> box(content.size() + crypto_box_SEALBYTES);
    if (crypto_box_seal(box.data(), content.span().data(), content.size(), owner.data()) != 0)
        throw Error{ErrorCode::OutOfRange, "box key", "not a key that a box can be closed for"};
    return box;
}

SecretBytes derivedKey(const SecretBytes &key, std::string_view use)
{
    initialiseCrypto();
    expectKeySize(key, 32);
    SecretBytes out(32);
    const auto name = bytesOf(use);
    crypto_generichash(out.span().data(), out.size(), name.data(), name.size(), key.span().data(), key.size());
    return out;
}

} // namespace raphe
