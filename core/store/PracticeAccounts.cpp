#include "core/base/JsonReader.h"
#include "core/base/Utf8.h"
#include "core/store/AccountRow.h"
#include "core/store/Migrations.h"
#include "core/store/crypto/Seal.h"

#include <algorithm>
#include <filesystem>

namespace raphe {

namespace {

// A sign-in name that is free again for a new user; the row stays, since entries are signed by it.
std::string retired(std::int64_t id, const std::string &signIn)
{
    return signIn + " (removed, " + std::to_string(id) + ")";
}

} // namespace

Result<std::vector<AccountCard>> Practice::accounts() const
{
    return guarded([&] {
        Rows rows = m_db.run("SELECT id, sign_in, card, file_key IS NULL FROM account ORDER BY id");
        std::vector<AccountCard> out;
        while (rows.next()) {
            AccountCard card = unsealCard(m_keys->practice, m_keys->fileKey, rows.number(0), rows.blob(2));
            card.signIn = rows.text(1);
            card.isRemoved = rows.number(3) != 0;
            out.push_back(std::move(card));
        }
        return out;
    });
}

std::map<std::int64_t, std::string> Practice::accountNames() const
{
    const auto cards = accounts();
    if (!cards)
        throw cards.error();
    std::map<std::int64_t, std::string> names;
    for (const AccountCard &card : cards.value())
        names.emplace(card.id, card.name);
    return names;
}

Result<std::int64_t> Practice::addAccount(const NewAccount &account)
{
    return guarded([&]() -> std::int64_t {
        if (m_db.number("SELECT COUNT(*) FROM account WHERE sign_in = ?", {account.signIn}) > 0)
            throw Error{ErrorCode::Duplicate, "sign-in name", account.signIn};
        const auto nextId = [&] { return m_db.number("SELECT MAX(id) FROM account") + 1; }; // rows are never deleted
        const std::int64_t id = nextId();
        const AccountRow row = accountRow(m_keys->practice, id, 0, account, m_keys->fileKey);
        Change change(m_db, *m_keys); // only now: the key takes a second, and nobody else can write meanwhile
        if (id != nextId())
            throw Error{ErrorCode::NotAllowed, "account", "another user was added at the same time; try again"};
        change.row("account", id, [&] { insertAccount(m_db, row); });
        change.entry(EntryKind::AccountAdded, {}, {}, journalKey(), account.signIn);
        change.commit();
        return id;
    });
}

Result<Done> Practice::saveScope(std::int64_t account, const std::vector<std::string> &scope)
{
    return guarded([&]() -> Done {
        Change change(m_db, *m_keys);
        Rows rows = m_db.run("SELECT sign_in, card FROM account WHERE id = ? AND file_key IS NOT NULL", {account});
        if (!rows.next())
            throw Error{ErrorCode::UnknownId, "account", std::to_string(account)};
        const std::string signIn = rows.text(0);
        AccountCard card = unsealCard(m_keys->practice, m_keys->fileKey, account, rows.blob(1));
        card.scope = scope;
        change.row("account", account, [&] {
            m_db.run("UPDATE account SET card = ? WHERE id = ?", {sealCard(m_keys->practice, m_keys->fileKey, card), account});
        });
        change.entry(EntryKind::ScopeChanged, {}, {}, journalKey(), signIn);
        change.commit();
        return {};
    });
}

Result<Done> Practice::changeRecoveryKey(const RecoveryKey &next)
{
    return guarded([&]() -> Done {
        Change change(m_db, *m_keys);
        auto now = settings();
        if (!now)
            throw now.error();
        now.value().isRecoveryOnPaper = true;
        const BoxKey box = boxOf(next).publicKey();
        const std::int64_t changes = m_db.number("SELECT changes FROM practice WHERE id = 1") + 1;
        change.row("practice", 1, [&] {
            m_db.run("UPDATE practice SET changes = ?, settings = ?, recovery_box = ?, recovery = ? WHERE id = 1",
                {changes, sealText(m_keys->fileKey, writeSettings(now.value()), place("practice", 1, "settings", changes)),
                    blobOf(box), closedFor(box, m_keys->fileKey)});
        });
        change.entry(EntryKind::RecoveryKeyChanged, {}, {}, journalKey(), {});
        change.commit();
        return {};
    });
}

Result<Done> Practice::changePassphrase(std::span<const char> old, std::span<const char> next, const DerivationCost &cost)
{
    return guarded([&]() -> Done {
        if (characterCount({next.data(), next.size()}) < shortestPassphrase)
            throw Error{ErrorCode::NotAllowed, "passphrase", "at least " + std::to_string(shortestPassphrase) + " characters"};
        const std::string signIn = m_db.single("SELECT sign_in FROM account WHERE id = ?", {m_keys->account}).text(0);
        const AccountRow row = readAccount(m_db, signIn);
        const auto seed = unlockSeed(row.locked, old, seedPlace(m_keys->practice, row.id, row.changes));
        if (!seed)
            throw seed.error();
        const auto locked = lockSeed(seed.value(), next, cost, seedPlace(m_keys->practice, row.id, row.changes + 1));
        if (!locked)
            throw locked.error();
        Change change(m_db, *m_keys);
        change.row("account", row.id, [&] {
            const LockedSeed &l = locked.value();
            m_db.run("UPDATE account SET changes = ?, salt = ?, passes = ?, memory_bytes = ?, seed = ? WHERE id = ?",
                {row.changes + 1, Blob(l.salt.begin(), l.salt.end()), static_cast<std::int64_t>(l.cost.passes),
                    static_cast<std::int64_t>(l.cost.memoryBytes), l.seed, row.id});
        });
        change.entry(EntryKind::PassphraseChanged, {}, {}, journalKey(), {});
        change.commit();
        return {};
    });
}

Result<Done> Practice::removeAccount(std::int64_t id)
{
    return guarded([&]() -> Done {
        if (id == m_keys->account)
            throw Error{ErrorCode::NotAllowed, "account", "nobody can remove themselves"};
        const auto cards = accounts();
        if (!cards)
            throw cards.error();
        const auto gone =
            std::find_if(cards.value().begin(), cards.value().end(), [&](const AccountCard &c) { return c.id == id; });
        if (gone == cards.value().end() || gone->isRemoved)
            throw Error{ErrorCode::UnknownId, "account", std::to_string(id)};

        WriteTransaction transaction(m_db);
        Head head = readHead(m_db, *m_keys);
        if (sumOfRows(m_db, *m_keys) != head.rows) // the boxes' public keys below must be those that were written
            throw Error{ErrorCode::Tampered, m_db.file(), "a row was dropped, added or put back from before"};
        auto keys = std::make_shared<const Keyring>(m_keys->practice, SecretBytes::random(sealKeySize), m_keys->account,
            SigningKey::fromSeed(m_keys->signing.seed().clone()));
        const auto sealedAnew = [&](const Blob &box, const std::string &where) {
            return seal(keys->fileKey, unsealKey(m_keys->fileKey, box, where).span(), where);
        };

        Rows practice = m_db.run("SELECT changes, recovery_box, settings, journal_key FROM practice WHERE id = 1");
        static_cast<void>(practice.next());
        const std::string settingsPlace = place("practice", 1, "settings", practice.number(0));
        m_db.run("UPDATE practice SET settings = ?, recovery = ?, journal_key = ? WHERE id = 1",
            {sealText(keys->fileKey, unsealText(m_keys->fileKey, practice.blob(2), settingsPlace), settingsPlace),
                closedFor(arrayOf<BoxKey>(practice.blob(1), "recovery box"), keys->fileKey),
                sealedAnew(practice.blob(3), place("practice", 1, "journal_key", 0))});
        m_db.run("UPDATE account SET file_key = NULL, sign_in = ? WHERE id = ?", {retired(gone->id, gone->signIn), id});
        Rows others = m_db.run("SELECT id, box, file_key IS NULL FROM account");
        while (others.next())
            if (others.number(2) == 0)
                m_db.run("UPDATE account SET file_key = ? WHERE id = ?",
                    {closedFor(arrayOf<BoxKey>(others.blob(1), "account " + std::to_string(others.number(0))), keys->fileKey),
                        others.number(0)});
        for (const AccountCard &card : cards.value())
            m_db.run("UPDATE account SET card = ? WHERE id = ?", {sealCard(keys->practice, keys->fileKey, card), card.id});
        Rows patients = m_db.run("SELECT id, patient_key FROM patient");
        while (patients.next())
            m_db.run("UPDATE patient SET patient_key = ? WHERE id = ?",
                {sealedAnew(patients.blob(1), place("patient", patients.number(0), "patient_key", 0)), patients.number(0)});

        const std::int64_t number = nextNumber(head);
        addEntry(m_db, *keys, head, EntryKind::AccountRemoved, {}, {},
            sealText(unsealKey(keys->fileKey, m_db.single("SELECT journal_key FROM practice WHERE id = 1").blob(0),
                         place("practice", 1, "journal_key", 0)),
                gone->signIn, contentPlace(keys->practice, number)));
        head.rows = sumOfRows(m_db, *keys);
        writeHead(m_db, *keys, head);
        transaction.commit();
        m_keys = std::move(keys);
        return {};
    });
}

Result<std::vector<std::string>> Practice::signInNames(const std::string &file)
{
    return guarded([&] {
        if (!std::filesystem::exists(file)) // else an empty one would be made
            throw Error{ErrorCode::CannotRead, file, "no such file"};
        const Database db(file);
        expectPractice(db);
        Rows rows = db.run("SELECT sign_in FROM account WHERE file_key IS NOT NULL ORDER BY sign_in");
        std::vector<std::string> names;
        while (rows.next())
            names.push_back(rows.text(0));
        return names;
    });
}

Result<std::unique_ptr<Practice>> Practice::recover(const std::string &file, const RecoveryKey &key, const NewAccount &user)
{
    return guarded([&]() -> std::unique_ptr<Practice> {
        if (!std::filesystem::exists(file))
            throw Error{ErrorCode::CannotRead, file, "no such file"};
        std::shared_ptr<const Keyring> keys;
        std::int64_t id = 0;
        {
            const Database db(file);
            expectPractice(db);
            const PracticeId practice = readPracticeId(db);
            const auto fileKey = boxOf(key).open(db.single("SELECT recovery FROM practice WHERE id = 1").blob(0));
            if (!fileKey)
                throw Error{ErrorCode::WrongPassphrase, "recovery key", {}};
            id = db.number("SELECT MAX(id) FROM account") + 1;
            const auto old = guarded([&] { return readAccount(db, user.signIn); });
            AccountRow row = accountRow(practice, id, 0, user, *fileKey);
            if (old) {
                AccountCard card = unsealCard(practice, *fileKey, old.value().id, old.value().card);
                card.id = id;
                row.card = sealCard(practice, *fileKey, card);
            }
            keys = std::make_shared<const Keyring>(practice, fileKey->clone(), id, signingOf(row.plainSeed));
            migrateToPresent(db, *keys); // before foreign keys are enforced
            db.makeDurable();
            Change change(db, *keys);
            if (old)
                change.row("account", old.value().id, [&] {
                    db.run("UPDATE account SET file_key = NULL, sign_in = ? WHERE id = ?",
                        {retired(old.value().id, user.signIn), old.value().id});
                });
            change.row("account", id, [&] { insertAccount(db, row); });
            const SecretBytes journal = unsealKey(*fileKey, db.single("SELECT journal_key FROM practice WHERE id = 1").blob(0),
                boxPlace(practice, "practice", 1, "journal_key", 0));
            change.entry(EntryKind::Recovered, {}, {}, journal, user.signIn);
            change.commit();
        }
        auto opened = open(file, keys);
        if (!opened)
            throw opened.error();
        return std::move(opened).value();
    });
}

} // namespace raphe
