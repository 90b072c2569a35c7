// The practice file, unlocked: patients, visits, their history, and who may open it. Sealed documents in SQLite; the format, the
// keys and the order of writing stand in DEVELOPERS.md. Every call that changes something is durable when it returns: it survives
// a kill and a power cut. An object belongs to one thread; several, also in other threads, may have the same file open with the
// same keyring. What is read comes out in ordinary memory: documents are not locked into memory, keys are.
#pragma once

#include "core/record/PatientRecord.h"
#include "core/store/Change.h"
#include "core/store/PracticeSettings.h"

#include <map>
#include <memory>

namespace raphe {

struct PatientCard {
    std::int64_t id = 0;
    std::string name;
    std::string born; // ISO 8601 date or empty
    std::string mark;
    std::string searched; // folded words, see searchText
};

enum class VisitState {
    Draft,
    Signed, // cannot be changed but by an amendment
    Amending, // signed, and an amendment of it is being written
    InError // entered in error: kept, and shown as such
};

struct StoredVisit {
    std::int64_t id = 0;
    std::int64_t patient = 0;
    VisitState state{};
    std::string document; // visit JSON
};

/// One signed word on a visit, or another recorded act.
struct VisitVersion {
    std::int64_t entry = 0;
    EntryKind kind{};
    std::string author;
    std::int64_t madeAt = 0; // time of entry: milliseconds since 1970, UTC
    std::string careAt; // time of care as the author gave it, ISO 8601; empty when the same
    std::string reason; // of an amendment, a late entry, an error, a move
    std::string document; // as signed; empty for acts without one, and after an erasure
};

struct AccountCard {
    std::int64_t id = 0;
    std::string signIn; // readable without a key
    std::string name;
    std::vector<std::string> scope; // groups of techniques that they may use; empty: not restricted
    bool isRemoved = false;
};

struct AccessRow {
    std::int64_t madeAt = 0;
    std::string account; // name
    EntryKind kind{};
    std::optional<std::int64_t> patient;
};

struct NewAccount {
    std::string signIn;
    std::string name;
    std::string passphrase; // the caller's to wipe
    DerivationCost cost = usualCost();
    std::vector<std::string> scope = {}; // as in AccountCard
};

struct Erased {
    bool isTidied = false; // else the log still holds sealed boxes, whose key is gone, until the file is next closed
};

class Practice;
struct MadePractice {
    std::unique_ptr<Practice> practice;
    RecoveryKey recovery; // to be shown once
};

class Practice {
public:
    /// Makes the file with its first user. There must be no file, or an empty database that was left of an attempt.
    [[nodiscard]] static Result<MadePractice> make(
        const std::string &file, const PracticeSettings &settings, const NewAccount &first);
    /// Fails with WrongPassphrase; with Tampered when head, row count or recent entries do not fit.
    [[nodiscard]] static Result<std::unique_ptr<Practice>> unlock(
        const std::string &file, const std::string &signIn, std::span<const char> passphrase);
    /// Another connection with keys that are known.
    [[nodiscard]] static Result<std::unique_ptr<Practice>> open(const std::string &file, std::shared_ptr<const Keyring> keys);
    /// The sign-in names of those who can unlock the file, in order; readable without a key.
    [[nodiscard]] static Result<std::vector<std::string>> signInNames(const std::string &file);
    /// Lets a user whose passphrase is lost set a new one. They get new keys: what they sign from now on names the new public
    /// key. Their name stays; `user.name` is for a sign-in name that the file does not have.
    [[nodiscard]] static Result<std::unique_ptr<Practice>> recover(
        const std::string &file, const RecoveryKey &key, const NewAccount &user);

    [[nodiscard]] const std::string &file() const { return m_db.file(); }
    [[nodiscard]] const std::shared_ptr<const Keyring> &keys() const { return m_keys; }
    /// After removeAccount() through another connection to the same file: the keys that it left there.
    void renewKeys(std::shared_ptr<const Keyring> keys) { m_keys = std::move(keys); }

    [[nodiscard]] Result<PracticeSettings> settings() const;
    [[nodiscard]] Result<Done> saveSettings(const PracticeSettings &settings);

    /// In order of name; merged ones are not listed. `progress`: how many are read; answers false to stop, and nobody is listed.
    [[nodiscard]] Result<std::vector<PatientCard>> patients(const std::function<bool(std::size_t)> &progress = {}) const;
    [[nodiscard]] Result<PatientRecord> patient(std::int64_t id) const;
    [[nodiscard]] Result<std::int64_t> addPatient(const PatientRecord &record);
    /// All or none.
    [[nodiscard]] Result<Done> addPatients(const std::vector<PatientRecord> &records);
    [[nodiscard]] Result<Done> savePatient(std::int64_t id, const PatientRecord &record);
    /// Joins `other` to `keep`: its visits and history then stand under `keep`. Nothing is lost.
    [[nodiscard]] Result<Done> merge(std::int64_t keep, std::int64_t other);
    /// Records that the user opened the patient's record.
    [[nodiscard]] Result<Done> noteOpened(std::int64_t patient);
    [[nodiscard]] Result<Done> noteExported(std::int64_t patient);
    /// Records that the file was restored from a back-up whose newest entry is of that time (milliseconds since 1970, UTC).
    [[nodiscard]] Result<Done> noteRestored(std::int64_t endsAt);
    [[nodiscard]] Result<std::vector<AccessRow>> accesses(std::optional<std::int64_t> patient = {}) const;
    /// Deletes the patient's key, record, visits and the content of their entries, and leaves a signed tombstone. Older back-ups
    /// still hold them. Fails only with nothing erased.
    [[nodiscard]] Result<Erased> erase(std::int64_t patient, const std::string &reason);

    // Visits, newest number first; those of merged records too.
    [[nodiscard]] Result<std::vector<StoredVisit>> visits(std::int64_t patient) const;
    [[nodiscard]] Result<StoredVisit> visit(std::int64_t id) const;
    [[nodiscard]] Result<std::int64_t> addVisit(std::int64_t patient, const std::string &document);
    /// Of a draft or an amendment that is being written; NotAllowed else.
    [[nodiscard]] Result<Done> saveVisit(std::int64_t id, const std::string &document);
    /// Signs a draft, or the amendment that is being written. With a reason a draft becomes a late entry; an amendment has its
    /// reason already. `careAt`: ISO 8601, or empty.
    [[nodiscard]] Result<Done> sign(std::int64_t id, const std::string &careAt = {}, const std::string &lateReason = {});
    [[nodiscard]] Result<Done> beginAmendment(std::int64_t id);
    /// The signed version is back; the amendment's draft is gone.
    [[nodiscard]] Result<Done> dropAmendment(std::int64_t id);
    [[nodiscard]] Result<Done> signAmendment(std::int64_t id, const std::string &reason, const std::string &careAt = {});
    [[nodiscard]] Result<Done> markInError(std::int64_t id, const std::string &reason);
    /// A draft that was written under the wrong patient. `document`: as it reads under the right one; empty: as it is. `left`: a
    /// draft that the wrong patient gets instead; empty: none.
    [[nodiscard]] Result<Done> move(std::int64_t id, std::int64_t toPatient, const std::string &reason,
        const std::string &document = {}, const std::string &left = {});
    [[nodiscard]] Result<std::vector<VisitVersion>> history(std::int64_t visit) const;

    // Users.
    [[nodiscard]] Result<std::vector<AccountCard>> accounts() const;
    [[nodiscard]] Result<std::int64_t> addAccount(const NewAccount &account);
    /// `scope`: as in AccountCard.
    [[nodiscard]] Result<Done> saveScope(std::int64_t account, const std::vector<std::string> &scope);
    /// Makes a new file key and seals all patients' keys with it: the removed user's passphrase opens nothing any more, also in a
    /// later copy of the file. What they had read, or taken out of a running program, cannot be taken back. Nobody can remove
    /// themselves. Other connections have to be opened anew, or told with renewKeys().
    [[nodiscard]] Result<Done> removeAccount(std::int64_t id);
    [[nodiscard]] Result<Done> changePassphrase(
        std::span<const char> old, std::span<const char> next, const DerivationCost &cost = usualCost());

    /// The key before it opens this file no more, but older back-ups still. To be called once the new one is on paper.
    [[nodiscard]] Result<Done> changeRecoveryKey(const RecoveryKey &next);

    /// Checks all: SQLite's own structure, the chain, the head, every sealed box and every document. Fails with Tampered for the
    /// first that is broken. `progress`: of the entries; answers false to stop.
    [[nodiscard]] Result<Done> verify(const std::function<bool(std::int64_t)> &progress = {}) const;

private:
    Practice(const std::string &file, std::shared_ptr<const Keyring> keys);

    [[nodiscard]] SecretBytes keyOf(std::int64_t patient) const;
    [[nodiscard]] SecretBytes journalKey() const;
    [[nodiscard]] StoredVisit storedVisit(std::int64_t id) const;
    [[nodiscard]] std::map<std::int64_t, std::string> accountNames() const;
    [[nodiscard]] std::string place(const char *table, std::int64_t row, const char *column, std::int64_t changes) const;
    [[nodiscard]] StoredVisit visitOf(const Rows &rows, const SecretBytes &key) const;
    std::int64_t putNewPatient(Change &change, const PatientRecord &record);
    std::int64_t putNewVisit(Change &change, std::int64_t patient, const SecretBytes &key, const std::string &document);
    void putVisit(Change &change, const StoredVisit &visit);
    void signNow(const StoredVisit &visit, EntryKind kind, const std::string &reason, const std::string &careAt);
    Result<Done> note(EntryKind kind, std::int64_t patient);
    void checkRecent() const;
    [[nodiscard]] std::vector<std::int64_t> withMerged(std::int64_t patient) const;

    Database m_db;
    std::shared_ptr<const Keyring> m_keys;
};

} // namespace raphe
