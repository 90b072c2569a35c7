// Making, unlocking and checking the file. What is done with it stands in PracticePatients.cpp, PracticeVisits.cpp and
// PracticeAccounts.cpp.
#include "core/store/Practice.h"

#include "core/base/JsonReader.h"
#include "core/record/PatientRecordJson.h"
#include "core/store/AccountRow.h"
#include "core/store/Migrations.h"
#include "core/store/crypto/Seal.h"

#include <algorithm>
#include <filesystem>

namespace raphe {

namespace {

constexpr std::int64_t recentEntries = 100; // checked at every opening; our choice, a few milliseconds

void prepare(const Database &db, const Keyring &keys)
{
    expectPractice(db);
    migrateToPresent(db, keys); // before foreign keys are enforced
    db.makeDurable();
    db.run("PRAGMA secure_delete = ON"); // what is deleted is overwritten
    // SQLite opens a write-protected file for reading without a word, so try a write and take it back.
    const WriteTransaction attempt(db);
    db.run("PRAGMA user_version = " + std::to_string(practiceVersion));
}

} // namespace

Practice::Practice(const std::string &file, std::shared_ptr<const Keyring> keys) : m_db(file), m_keys(std::move(keys)) { }

std::string Practice::place(const char *table, std::int64_t row, const char *column, std::int64_t changes) const
{
    return boxPlace(m_keys->practice, table, row, column, changes);
}

SecretBytes Practice::journalKey() const
{
    return unsealKey(m_keys->fileKey, m_db.single("SELECT journal_key FROM practice WHERE id = 1").blob(0),
        place("practice", 1, "journal_key", 0));
}

Result<MadePractice> Practice::make(const std::string &file, const PracticeSettings &settings, const NewAccount &first)
{
    return guarded([&]() -> MadePractice {
        initialiseCrypto();
        PracticeId id{};
        const SecretBytes random = SecretBytes::random(id.size());
        std::copy(random.span().begin(), random.span().end(), id.begin());
        const SecretBytes fileKey = SecretBytes::random(sealKeySize);
        const RecoveryKey recovery = RecoveryKey::random();
        const AccountRow row = accountRow(id, 1, 0, first, fileKey);
        auto keys = std::make_shared<const Keyring>(id, fileKey.clone(), 1, signingOf(row.plainSeed));

        std::unique_ptr<Practice> practice(new Practice(file, keys));
        const Database &db = practice->m_db;
        db.setPragma("synchronous", "FULL", "2");
        {
            WriteTransaction transaction(db);
            // An empty database may be left of an attempt that was cut off.
            if (db.number("PRAGMA application_id") != 0 || db.number("SELECT COUNT(*) FROM sqlite_master") != 0)
                throw Error{ErrorCode::CannotWrite, file, "exists already"};
            createTables(db);
            const BoxOwner box = boxOf(recovery);
            db.run("INSERT INTO practice (id, changes, ident, recovery_box, settings, recovery, journal_key) VALUES (1, 0, ?, ?, "
                   "?, ?, ?)",
                {Blob(id.begin(), id.end()), Blob(box.publicKey().begin(), box.publicKey().end()),
                    sealText(fileKey, writeSettings(settings), practice->place("practice", 1, "settings", 0)),
                    closedFor(box.publicKey(), fileKey),
                    seal(fileKey, SecretBytes::random(sealKeySize).span(), practice->place("practice", 1, "journal_key", 0))});
            insertAccount(db, row);
            Head head;
            head.rows = sumOfRows(db, *keys);
            addEntry(db, *keys, head, EntryKind::FileMade, {}, {}, {});
            writeHead(db, *keys, head);
            transaction.commit();
        }
        prepare(db, *keys);
        return {std::move(practice), recovery};
    });
}

Result<std::unique_ptr<Practice>> Practice::unlock(
    const std::string &file, const std::string &signIn, std::span<const char> passphrase)
{
    return guarded([&]() -> std::unique_ptr<Practice> {
        if (!std::filesystem::exists(file))
            throw Error{ErrorCode::CannotRead, file, "no such file"};
        std::shared_ptr<const Keyring> keys;
        {
            const Database db(file);
            expectPractice(db);
            const PracticeId id = readPracticeId(db);
            const AccountRow row = readAccount(db, signIn);
            const auto seed = unlockSeed(row.locked, passphrase, seedPlace(id, row.id, row.changes));
            if (!seed)
                throw seed.error();
            auto fileKey = boxOf(seed.value()).open(row.fileKey);
            if (!fileKey)
                throw Error{ErrorCode::Tampered, file, "the file key does not open"};
            keys = std::make_shared<const Keyring>(id, std::move(*fileKey), row.id, signingOf(seed.value()));
        }
        auto practice = open(file, keys);
        if (!practice)
            throw practice.error();
        return std::move(practice).value();
    });
}

Result<std::unique_ptr<Practice>> Practice::open(const std::string &file, std::shared_ptr<const Keyring> keys)
{
    return guarded([&]() -> std::unique_ptr<Practice> {
        if (!std::filesystem::exists(file)) // else an empty one would be made
            throw Error{ErrorCode::CannotRead, file, "no such file"};
        std::unique_ptr<Practice> practice(new Practice(file, std::move(keys)));
        prepare(practice->m_db, *practice->m_keys);
        practice->checkRecent();
        return practice;
    });
}

void Practice::checkRecent() const
{
    const Head head = readHead(m_db, *m_keys);
    const std::int64_t first = std::max<std::int64_t>(1, head.entries - recentEntries + 1);
    const ChainEnd end = checkChain(m_db, m_keys->practice, first);
    if (end.entries != head.entries || end.tip != head.tip)
        throw Error{ErrorCode::Tampered, m_db.file(), "the last entries are not those that were written last"};
}

Result<PracticeSettings> Practice::settings() const
{
    return guarded([&]() -> PracticeSettings {
        Rows rows = m_db.run("SELECT changes, settings FROM practice WHERE id = 1");
        if (!rows.next())
            throw Error{ErrorCode::Tampered, m_db.file(), "the settings are missing"};
        const std::string where = place("practice", 1, "settings", rows.number(0));
        const auto settings = readSettings(unsealText(m_keys->fileKey, rows.blob(1), where), where);
        if (!settings)
            throw settings.error();
        return settings.value();
    });
}

Result<Done> Practice::saveSettings(const PracticeSettings &settings)
{
    return guarded([&]() -> Done {
        Change change(m_db, *m_keys);
        const std::int64_t changes = m_db.number("SELECT changes FROM practice WHERE id = 1") + 1;
        change.row("practice", 1, [&] {
            m_db.run("UPDATE practice SET changes = ?, settings = ? WHERE id = 1",
                {changes, sealText(m_keys->fileKey, writeSettings(settings), place("practice", 1, "settings", changes))});
        });
        change.commit();
        return {};
    });
}

Result<Done> Practice::verify(const std::function<bool(std::int64_t)> &progress) const
{
    return guarded([&]() -> Done {
        if (const std::string answer = m_db.single("PRAGMA integrity_check(1)").text(0); answer != "ok")
            throw Error{ErrorCode::Tampered, m_db.file(), answer};
        m_db.run("BEGIN"); // one state of the file, whoever writes meanwhile
        const auto check = [&] {
            const Head head = readHead(m_db, *m_keys);
            const ChainEnd end = checkChain(m_db, m_keys->practice, 1, progress);
            if (end.entries != head.entries || end.tip != head.tip)
                throw Error{ErrorCode::Tampered, "entry " + std::to_string(end.entries + 1), "is missing"};
            if (sumOfRows(m_db, *m_keys) != head.rows)
                throw Error{ErrorCode::Tampered, m_db.file(), "a row was dropped, added or put back from before"};
            static_cast<void>(settings().ok() ? Done{} : throw settings().error());
            static_cast<void>(accountNames());
            Rows patients = m_db.run("SELECT id FROM patient");
            while (patients.next()) {
                const std::int64_t id = patients.number(0);
                if (const auto record = patient(id); !record)
                    throw record.error();
                const SecretBytes key = keyOf(id);
                Rows rows = m_db.run("SELECT id, patient, changes, state, document FROM visit WHERE patient = ?", {id});
                while (rows.next())
                    static_cast<void>(visitOf(rows, key));
                Rows entries = m_db.run("SELECT number, content FROM entry WHERE patient = ? AND content IS NOT NULL", {id});
                while (entries.next())
                    static_cast<void>(unsealText(key, entries.blob(1), contentPlace(m_keys->practice, entries.number(0))));
            }
        };
        const auto outcome = guarded([&]() -> Done {
            check();
            return {};
        });
        m_db.run("COMMIT");
        if (!outcome)
            throw outcome.error();
        return {};
    });
}

} // namespace raphe
