#include "core/store/crypto/Hash.h"

#include "core/store/crypto/KeySize.h"

#include <sodium.h>

namespace raphe {

static_assert(std::tuple_size_v<Hash256> == crypto_generichash_BYTES);
static_assert(hashKeySize == crypto_generichash_KEYBYTES);

Hash256 hashOf(std::span<const std::uint8_t> bytes)
{
    initialiseCrypto();
    Hash256 hash{};
    crypto_generichash(hash.data(), hash.size(), bytes.data(), bytes.size(), nullptr, 0);
    return hash;
}

Hash256 hashOf(std::span<const std::uint8_t> bytes, const SecretBytes &key)
{
    expectKeySize(key, hashKeySize);
    Hash256 hash{};
    crypto_generichash(hash.data(), hash.size(), bytes.data(), bytes.size(), key.span().data(), key.size());
    return hash;
}

bool matches(const Hash256 &one, const Hash256 &other)
{
    return sodium_memcmp(one.data(), other.data(), one.size()) == 0;
}

} // namespace raphe
