#include "core/store/Entries.h"

#include "core/store/crypto/Bytes.h"

#include <algorithm>
#include <chrono>
#include <map>

namespace raphe {

namespace {

constexpr const char *columns =
    "SELECT number, made_at, account, kind, patient, visit, content, content_hash, previous, signature FROM entry";

std::string named(std::int64_t number)
{
    return "entry " + std::to_string(number);
}

std::string numberOrDash(const std::optional<std::int64_t> &number)
{
    return number ? std::to_string(*number) : "-";
}

std::string signedLines(const PracticeId &practice, const Entry &e)
{
    std::string lines = "raphe-entry 1\n";
    for (const std::string &line : {toHex(practice), std::to_string(e.number), std::to_string(e.madeAt),
             std::to_string(e.account), std::string(wordOf(entryWords, e.kind)), numberOrDash(e.patient), numberOrDash(e.visit),
             e.contentHash ? toHex(*e.contentHash) : std::string("-"), toHex(e.previous)})
        lines += line + '\n';
    return lines;
}

std::optional<std::int64_t> optionalNumber(const Rows &rows, int column)
{
    return rows.isNull(column) ? std::nullopt : std::optional(rows.number(column));
}

Entry entryOf(const Rows &rows)
{
    Entry e;
    e.number = rows.number(0);
    e.madeAt = rows.number(1);
    e.account = rows.number(2);
    const auto kind = fromWord(entryWords, rows.text(3));
    if (!kind)
        throw Error{ErrorCode::Tampered, named(e.number), "of no known kind"};
    e.kind = *kind;
    e.patient = optionalNumber(rows, 4);
    e.visit = optionalNumber(rows, 5);
    e.content = rows.blob(6);
    if (!rows.isNull(7))
        e.contentHash = arrayOf<Hash256>(rows.blob(7), named(e.number));
    e.previous = arrayOf<Hash256>(rows.blob(8), named(e.number));
    e.signature = arrayOf<Signature>(rows.blob(9), named(e.number));
    return e;
}

Value valueOf(const std::optional<std::int64_t> &number)
{
    return number ? Value(*number) : Value();
}

std::int64_t now()
{
    return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::system_clock::now().time_since_epoch()).count();
}

} // namespace

std::string contentPlace(const PracticeId &practice, std::int64_t number)
{
    return boxPlace(practice, "entry", number, "content", 0);
}

void addEntry(const Database &db, const Keyring &keys, Head &head, EntryKind kind, std::optional<std::int64_t> patient,
    std::optional<std::int64_t> visit, const Blob &content)
{
    Entry e;
    e.number = nextNumber(head);
    e.madeAt = now();
    e.account = keys.account;
    e.kind = kind;
    e.patient = patient;
    e.visit = visit;
    e.content = content;
    if (!content.empty())
        e.contentHash = hashOf(content);
    e.previous = head.tip;
    const std::string lines = signedLines(keys.practice, e);
    e.signature = keys.signing.sign(bytesOf(lines));
    db.run("INSERT INTO entry (number, made_at, account, kind, patient, visit, content, content_hash, previous, signature)"
           " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {e.number, e.madeAt, e.account, std::string(wordOf(entryWords, kind)), valueOf(e.patient), valueOf(e.visit),
            content.empty() ? Value() : Value(content), e.contentHash ? Value(blobOf(*e.contentHash)) : Value(),
            blobOf(e.previous), blobOf(e.signature)});
    head.entries = e.number;
    head.tip = hashOf(keys.practice, e);
}

void forEachEntry(const Database &db, std::int64_t first, const std::function<void(const Entry &)> &take)
{
    Rows rows = db.run(std::string(columns) + " WHERE number >= ? ORDER BY number", {first});
    while (rows.next())
        take(entryOf(rows));
}

Entry readEntry(const Database &db, std::int64_t number)
{
    Rows rows = db.run(std::string(columns) + " WHERE number = ?", {number});
    if (!rows.next())
        throw Error{ErrorCode::UnknownId, named(number), std::to_string(number)};
    return entryOf(rows);
}

Hash256 hashOf(const PracticeId &practice, const Entry &entry)
{
    const std::string lines = signedLines(practice, entry) + toHex(entry.signature) + '\n';
    return hashOf(bytesOf(lines));
}

ChainEnd checkChain(
    const Database &db, const PracticeId &practice, std::int64_t first, const std::function<bool(std::int64_t)> &progress)
{
    // SQLite takes 1, '1' and x'31' for three values, of which a question for 1 finds one.
    Rows wrong =
        db.run("SELECT number FROM entry WHERE number >= ? AND (typeof(made_at) <> 'integer' OR typeof(account) <> 'integer'"
               " OR typeof(kind) <> 'text' OR typeof(patient) NOT IN ('integer', 'null')"
               " OR typeof(visit) NOT IN ('integer', 'null')) ORDER BY number LIMIT 1",
            {first});
    if (wrong.next())
        throw Error{ErrorCode::Tampered, named(wrong.number(0)), "a value of the wrong kind"};
    std::map<std::int64_t, PublicKey> signers;
    Rows accounts = db.run("SELECT id, signs FROM account");
    while (accounts.next())
        signers.emplace(
            accounts.number(0), arrayOf<PublicKey>(accounts.blob(1), "account " + std::to_string(accounts.number(0))));
    ChainEnd end{first - 1, {}};
    std::map<std::int64_t, std::int64_t> emptied; // patient -> first entry without its content; a tombstone must follow
    forEachEntry(db, first, [&](const Entry &e) {
        const auto expect = [&](bool holds, const char *what) {
            if (!holds)
                throw Error{ErrorCode::Tampered, named(e.number), what};
        };
        if (progress && !progress(e.number))
            throw Error{ErrorCode::NotAllowed, db.file(), "stopped"};
        expect(e.number == end.entries + 1, "an entry before it is missing");
        expect(e.number == first ? first > 1 || e.previous == Hash256{} : e.previous == end.tip,
            "does not follow the one before it");
        if (!e.content.empty())
            expect(e.contentHash && hashOf(e.content) == *e.contentHash, "its content was changed");
        else if (e.contentHash) {
            expect(e.patient.has_value(), "its content is missing");
            emptied.try_emplace(*e.patient, e.number);
        }
        if (e.kind == EntryKind::Erased && e.patient)
            emptied.erase(*e.patient);
        const auto signer = signers.find(e.account);
        expect(signer != signers.end(), "nobody of that account");
        const std::string lines = signedLines(practice, e);
        expect(verify(signer->second, bytesOf(lines), e.signature), "its signature does not hold");
        end = {e.number, hashOf(practice, e)};
    });
    if (!emptied.empty())
        throw Error{ErrorCode::Tampered, named(emptied.begin()->second), "its content is missing"};
    return end;
}

} // namespace raphe
