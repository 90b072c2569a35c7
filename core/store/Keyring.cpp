#include "core/store/Keyring.h"

#include "core/base/JsonReader.h"
#include "core/store/crypto/Bytes.h"
#include "core/store/crypto/Seal.h"

namespace raphe {

Keyring::Keyring(const PracticeId &id, SecretBytes key, std::int64_t who, SigningKey signs)
    : practice(id), fileKey(std::move(key)), rowKey(derivedKey(fileKey, "raphe rows")), account(who), signing(std::move(signs))
{
}

Result<LockedSeed> lockSeed(
    const SecretBytes &seed, std::span<const char> passphrase, const DerivationCost &cost, const std::string &place)
{
    return guarded([&] {
        LockedSeed locked{randomSalt(), cost, {}};
        const auto key = deriveKey(passphrase, locked.salt, cost);
        if (!key)
            throw key.error();
        locked.seed = seal(key.value(), seed.span(), place);
        return locked;
    });
}

Result<SecretBytes> unlockSeed(const LockedSeed &locked, std::span<const char> passphrase, const std::string &place)
{
    return guarded([&]() -> SecretBytes {
        const auto key = deriveKey(passphrase, locked.salt, locked.cost);
        if (!key)
            throw key.error();
        auto seed = unsealSecret(key.value(), locked.seed, place);
        if (!seed)
            throw Error{ErrorCode::WrongPassphrase, "passphrase", {}};
        return std::move(*seed);
    });
}

BoxOwner boxOf(const SecretBytes &seed)
{
    return BoxOwner::fromSeed(derivedKey(seed, "raphe box"));
}

SigningKey signingOf(const SecretBytes &seed)
{
    return SigningKey::fromSeed(derivedKey(seed, "raphe signature"));
}

BoxOwner boxOf(const RecoveryKey &key)
{
    return boxOf(key.key());
}

Blob sealText(const SecretBytes &key, std::string_view text, const std::string &place)
{
    return seal(key, bytesOf(text), place);
}

std::string unsealText(const SecretBytes &key, const Blob &box, const std::string &place)
{
    const auto plain = unseal(key, box, place);
    if (!plain)
        throw Error{ErrorCode::Tampered, place, "a sealed box does not open"};
    return {plain->begin(), plain->end()};
}

SecretBytes unsealKey(const SecretBytes &key, const Blob &box, const std::string &place)
{
    auto plain = unsealSecret(key, box, place);
    if (!plain)
        throw Error{ErrorCode::Tampered, place, "a sealed key does not open"};
    return std::move(*plain);
}

} // namespace raphe
