#include "core/store/AccountRow.h"

#include "core/base/Utf8.h"
#include "core/store/crypto/Seal.h"

#include <algorithm>

namespace raphe {

std::string seedPlace(const PracticeId &practice, std::int64_t id, std::int64_t changes)
{
    return boxPlace(practice, "account", id, "seed", changes);
}

std::string cardPlace(const PracticeId &practice, std::int64_t id)
{
    return boxPlace(practice, "account", id, "card", 0);
}

AccountRow accountRow(
    const PracticeId &practice, std::int64_t id, std::int64_t changes, const NewAccount &account, const SecretBytes &fileKey)
{
    if (account.signIn.empty() || account.name.empty())
        throw Error{ErrorCode::MissingField, "account", account.signIn.empty() ? "sign-in name" : "name"};
    if (characterCount(account.passphrase) < shortestPassphrase)
        throw Error{ErrorCode::NotAllowed, "passphrase",
            "at least " + std::to_string(shortestPassphrase) + " characters; several words make a good one"};
    AccountRow row;
    row.id = id;
    row.changes = changes;
    row.signIn = account.signIn;
    row.plainSeed = SecretBytes::random(32);
    auto locked = lockSeed(row.plainSeed, account.passphrase, account.cost, seedPlace(practice, id, changes));
    if (!locked)
        throw locked.error();
    row.locked = std::move(locked).value();
    row.signs = signingOf(row.plainSeed).publicKey();
    row.box = boxOf(row.plainSeed).publicKey();
    row.fileKey = closedFor(row.box, fileKey);
    row.card = sealText(fileKey, account.name, cardPlace(practice, id));
    return row;
}

void insertAccount(const Database &db, const AccountRow &row)
{
    db.run("INSERT INTO account (id, sign_in, changes, salt, passes, memory_bytes, signs, box, seed, file_key, card)"
           " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {row.id, row.signIn, row.changes, blobOf(row.locked.salt), static_cast<std::int64_t>(row.locked.cost.passes),
            static_cast<std::int64_t>(row.locked.cost.memoryBytes), blobOf(row.signs), blobOf(row.box), row.locked.seed,
            row.fileKey, row.card});
}

AccountRow readAccount(const Database &db, const std::string &signIn)
{
    Rows rows =
        db.run("SELECT id, changes, salt, passes, memory_bytes, signs, box, seed, file_key, card FROM account WHERE sign_in = ?"
               " AND file_key IS NOT NULL",
            {signIn});
    if (!rows.next())
        throw Error{ErrorCode::WrongPassphrase, "sign-in name", {}};
    AccountRow row;
    row.id = rows.number(0);
    row.changes = rows.number(1);
    row.signIn = signIn;
    row.locked.salt = arrayOf<Salt>(rows.blob(2), "account " + signIn);
    row.locked.cost = {static_cast<std::uint64_t>(rows.number(3)), static_cast<std::uint64_t>(rows.number(4))};
    row.signs = arrayOf<PublicKey>(rows.blob(5), "account " + signIn);
    row.box = arrayOf<BoxKey>(rows.blob(6), "account " + signIn);
    row.locked.seed = rows.blob(7);
    row.fileKey = rows.blob(8);
    row.card = rows.blob(9);
    return row;
}

} // namespace raphe
