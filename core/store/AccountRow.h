// One user of a practice as a row of its table.
#pragma once

#include "core/store/Practice.h"

namespace raphe {

struct AccountRow {
    std::int64_t id = 0;
    std::int64_t changes = 0;
    std::string signIn;
    LockedSeed locked;
    PublicKey signs{};
    BoxKey box{};
    Blob fileKey; // closed for the box; empty once removed
    Blob card; // see sealCard
    SecretBytes plainSeed{32}; // of a new account only
};

[[nodiscard]] std::string seedPlace(const PracticeId &practice, std::int64_t id, std::int64_t changes);

/// What the practice says of a user: JSON of name and scope, sealed by the file key.
[[nodiscard]] Blob sealCard(const PracticeId &practice, const SecretBytes &fileKey, const AccountCard &card);
/// `signIn` and `isRemoved` are not in it. Throws Error with Tampered.
[[nodiscard]] AccountCard unsealCard(const PracticeId &practice, const SecretBytes &fileKey, std::int64_t id, const Blob &card);

/// A new user with new keys. Throws Error; NotAllowed for an empty name or a passphrase that is too short.
[[nodiscard]] AccountRow accountRow(
    const PracticeId &practice, std::int64_t id, std::int64_t changes, const NewAccount &account, const SecretBytes &fileKey);
void insertAccount(const Database &db, const AccountRow &row);
/// Throws Error with WrongPassphrase when there is no such user, or no more.
[[nodiscard]] AccountRow readAccount(const Database &db, const std::string &signIn);

inline constexpr std::size_t shortestPassphrase = 8; // characters; NIST SP 800-63B, section 5.1.1.1, from memory

} // namespace raphe
