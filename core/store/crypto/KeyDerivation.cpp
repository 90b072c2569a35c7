#include "core/store/crypto/KeyDerivation.h"

#include "core/base/JsonReader.h"

#include <sodium.h>

#include <string>

namespace raphe {

static_assert(saltSize == crypto_pwhash_argon2id_SALTBYTES);
static_assert(leastCost.passes == crypto_pwhash_argon2id_OPSLIMIT_MIN);
static_assert(leastCost.memoryBytes == crypto_pwhash_argon2id_MEMLIMIT_MIN);

namespace {

void expectWithin(const char *what, std::uint64_t value, std::uint64_t least, std::uint64_t most)
{
    if (value < least || value > most)
        throw Error{ErrorCode::OutOfRange, what,
            std::to_string(value) + ", allowed: " + std::to_string(least) + " to " + std::to_string(most)};
}

} // namespace

DerivationCost usualCost()
{
    return {3, std::uint64_t{64} * 1024 * 1024};
}

Result<Done> checkCost(const DerivationCost &cost)
{
    return guarded([&] {
        expectWithin("passes", cost.passes, leastCost.passes, mostCost.passes);
        expectWithin("memoryBytes", cost.memoryBytes, leastCost.memoryBytes, mostCost.memoryBytes);
        return Done{};
    });
}

Salt randomSalt()
{
    initialiseCrypto();
    Salt salt{};
    randombytes_buf(salt.data(), salt.size());
    return salt;
}

Result<SecretBytes> deriveKey(std::span<const char> passphrase, const Salt &salt, const DerivationCost &cost)
{
    if (const auto allowed = checkCost(cost); !allowed)
        return allowed.error();
    return guarded([&] {
        SecretBytes key(derivedKeySize);
        const char *text = passphrase.empty() ? "" : passphrase.data(); // libsodium may not be handed a null pointer
        if (crypto_pwhash_argon2id(key.span().data(), key.size(), text, passphrase.size(), salt.data(), cost.passes,
                static_cast<std::size_t>(cost.memoryBytes), crypto_pwhash_argon2id_ALG_ARGON2ID13)
            != 0)
            throw Error{ErrorCode::OutOfMemory, "memoryBytes", std::to_string(cost.memoryBytes)};
        return key;
    });
}

} // namespace raphe
