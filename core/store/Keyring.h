// What an unlocked practice file knows: its file key and who is at work. The file key is random; each user has a random seed
// that is sealed by a key from their passphrase alone, and from which the keys of their box (where the file key lies) and of
// their signatures come. So a passphrase is changed by sealing 32 bytes anew, and a new file key can be given to all users
// without their passphrases.
// Immutable once made; may be shared between threads.
#pragma once

#include "core/store/Layout.h"
#include "core/store/crypto/KeyBox.h"
#include "core/store/crypto/KeyDerivation.h"
#include "core/store/crypto/RecoveryKey.h"
#include "core/store/crypto/Signing.h"

#include <memory>

namespace raphe {

struct Keyring {
    Keyring(const PracticeId &practice, SecretBytes fileKey, std::int64_t account, SigningKey signing);

    PracticeId practice{};
    SecretBytes fileKey;
    SecretBytes rowKey; // from the file key, for the head's sum
    std::int64_t account = 0;
    SigningKey signing;
};

/// The part of an account row that its passphrase opens.
struct LockedSeed {
    Salt salt{};
    DerivationCost cost;
    Blob seed; // sealed
};

/// `place`: that of the account's seed (boxPlace).
[[nodiscard]] Result<LockedSeed> lockSeed(
    const SecretBytes &seed, std::span<const char> passphrase, const DerivationCost &cost, const std::string &place);
/// Fails with WrongPassphrase when the passphrase does not open it, and as checkCost before any memory is taken.
[[nodiscard]] Result<SecretBytes> unlockSeed(
    const LockedSeed &locked, std::span<const char> passphrase, const std::string &place);

[[nodiscard]] BoxOwner boxOf(const SecretBytes &seed);
[[nodiscard]] SigningKey signingOf(const SecretBytes &seed);
[[nodiscard]] BoxOwner boxOf(const RecoveryKey &key);

/// Seals text for a column, see boxPlace.
[[nodiscard]] Blob sealText(const SecretBytes &key, std::string_view text, const std::string &place);
/// Throws Error with Tampered, place: the box's.
[[nodiscard]] std::string unsealText(const SecretBytes &key, const Blob &box, const std::string &place);
[[nodiscard]] SecretBytes unsealKey(const SecretBytes &key, const Blob &box, const std::string &place);

} // namespace raphe
