#include "core/store/AccountRow.h"

#include "core/base/JsonReader.h"
#include "core/base/Utf8.h"
#include "core/store/crypto/Seal.h"

#include <nlohmann/json.hpp>

namespace raphe {

std::string seedPlace(const PracticeId &practice, std::int64_t id, std::int64_t changes)
{
    return boxPlace(practice, "account", id, "seed", changes);
}

namespace {

std::string cardPlace(const PracticeId &practice, std::int64_t id)
{
    return boxPlace(practice, "account", id, "card", 0); // an older one put back shows in the head's sum
}

} // namespace

Blob sealCard(const PracticeId &practice, const SecretBytes &fileKey, const AccountCard &card)
{
    return sealText(
        fileKey, nlohmann::ordered_json{{"name", card.name}, {"scope", card.scope}}.dump(), cardPlace(practice, card.id));
}

AccountCard unsealCard(const PracticeId &practice, const SecretBytes &fileKey, std::int64_t id, const Blob &card)
{
    const std::string where = cardPlace(practice, id);
    const auto json = parseJson(unsealText(fileKey, card, where), where);
    if (!json)
        throw json.error();
    const JsonReader at(json.value(), where);
    at.expectObject({"name", "scope"});
    AccountCard out;
    out.id = id;
    out.name = at.string("name");
    out.scope = at.field("scope").asStrings();
    return out;
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
    row.card = sealCard(practice, fileKey, {id, account.signIn, account.name, account.scope});
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
