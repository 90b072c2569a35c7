// The history: entries that are only ever added, each signed by its user and holding the hash of its sealed content and of the
// entry before it, so that none can be changed, left out or put in unseen. An erased patient's entries lose their content and
// keep the rest: the chain still holds. What is signed, one line each: "raphe-entry 1", practice, number, time, account, kind,
// patient, visit, hash of the content, hash of the entry before. An entry's hash is over these lines and the signature.
#pragma once

#include "core/base/Words.h"
#include "core/store/Head.h"

#include <functional>
#include <optional>

namespace raphe {

enum class EntryKind {
    FileMade,
    Opened, // a patient's record, by whom
    Signed,
    Amended, // of a signed visit, with a reason
    Late, // written down after the day of care, with a reason
    InError, // a visit entered in error
    Moved, // a visit to the right patient
    Merged, // two records of one patient
    Erased, // the tombstone
    Exported,
    AccountAdded,
    AccountRemoved,
    PassphraseChanged,
    ScopeChanged, // of a user
    Recovered, // with the recovery key
    RecoveryKeyChanged,
    Restored // from a back-up
};
inline constexpr WordTable<EntryKind, 17> entryWords{{{EntryKind::FileMade, "file-made"}, {EntryKind::Opened, "opened"},
    {EntryKind::Signed, "signed"}, {EntryKind::Amended, "amended"}, {EntryKind::Late, "late"}, {EntryKind::InError, "in-error"},
    {EntryKind::Moved, "moved"}, {EntryKind::Merged, "merged"}, {EntryKind::Erased, "erased"}, {EntryKind::Exported, "exported"},
    {EntryKind::AccountAdded, "account-added"}, {EntryKind::AccountRemoved, "account-removed"},
    {EntryKind::PassphraseChanged, "passphrase-changed"}, {EntryKind::ScopeChanged, "scope-changed"},
    {EntryKind::Recovered, "recovered"}, {EntryKind::RecoveryKeyChanged, "recovery-key-changed"},
    {EntryKind::Restored, "restored"}}};

struct Entry {
    std::int64_t number = 0; // from 1
    std::int64_t madeAt = 0; // milliseconds since 1970, UTC
    std::int64_t account = 0;
    EntryKind kind{};
    std::optional<std::int64_t> patient;
    std::optional<std::int64_t> visit;
    Blob content; // sealed; empty when there is none, or none any more
    std::optional<Hash256> contentHash;
    Hash256 previous{};
    Signature signature{};
};

/// Signs and adds an entry, and moves the head on; the caller writes the head in the same transaction. `content`: sealed.
void addEntry(const Database &db, const Keyring &keys, Head &head, EntryKind kind, std::optional<std::int64_t> patient,
    std::optional<std::int64_t> visit, const Blob &content);

/// The number that the next entry will have: its content is bound to it.
[[nodiscard]] inline std::int64_t nextNumber(const Head &head)
{
    return head.entries + 1;
}
[[nodiscard]] std::string contentPlace(const PracticeId &practice, std::int64_t number);

/// Reads the entries from `first` on, in order, and hands each to `take`. Throws Error with Tampered for a row that is none.
void forEachEntry(const Database &db, std::int64_t first, const std::function<void(const Entry &)> &take);
/// One entry; throws Error with UnknownId.
[[nodiscard]] Entry readEntry(const Database &db, std::int64_t number);

[[nodiscard]] Hash256 hashOf(const PracticeId &practice, const Entry &entry);

/// Checks the chain from entry `first` on (its own `previous` is believed unless it is the first of all): numbers without a gap,
/// contents as hashed, hashes linked, signatures by the accounts' public keys. Needs no passphrase. Gives the last hash and
/// number. Throws Error with Tampered, place "entry 12", for the first that is broken. `progress` is told the number of each
/// entry; when it answers false the check stops with NotAllowed.
struct ChainEnd {
    std::int64_t entries = 0;
    Hash256 tip{};
};
[[nodiscard]] ChainEnd checkChain(
    const Database &db, const PracticeId &practice, std::int64_t first, const std::function<bool(std::int64_t)> &progress = {});

} // namespace raphe
