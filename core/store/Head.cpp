#include "core/store/Head.h"

#include "core/store/crypto/Bytes.h"
#include "core/store/crypto/Seal.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

// With its length before it, so that no two rows read alike.
void append(std::string &out, std::string_view part)
{
    out += std::to_string(part.size());
    out += ':';
    out += part;
}

// Which columns of a row count: first the readable ones, as SQL literals, since SQLite takes 1, '1' and x'31' for three values;
// then the boxes, of which the tags count.
struct Counted {
    const char *table;
    const char *select;
    int readable;
    int boxes;
};
constexpr Counted countedTables[] = {
    {"practice",
        "SELECT quote(id), quote(changes), quote(ident), quote(recovery_box), settings, recovery, journal_key FROM practice", 4,
        3},
    {"account",
        "SELECT quote(id), quote(changes), typeof(sign_in), hex(sign_in), quote(salt), quote(passes), quote(memory_bytes),"
        " quote(signs), quote(box), seed, file_key, card FROM account",
        9, 3}, // quote() ends a text at a zero character
    {"patient", "SELECT quote(id), quote(changes), quote(merged_into), patient_key, record FROM patient", 3, 2},
    {"visit", "SELECT quote(id), quote(changes), quote(patient), quote(state), document FROM visit", 4, 1},
};

const Counted &countedAs(std::string_view table)
{
    return *std::find_if(std::begin(countedTables), std::end(countedTables), [&](const Counted &c) { return table == c.table; });
}

Hash256 hashOfRow(const Keyring &keys, const Counted &counted, const Rows &rows)
{
    std::string row;
    append(row, counted.table);
    for (int i = 0; i < counted.readable; ++i)
        append(row, rows.text(i));
    for (int i = counted.readable; i < counted.readable + counted.boxes; ++i) {
        const Blob box = rows.blob(i);
        append(row, toHex(std::span(box).last(std::min(box.size(), sealTagSize))));
    }
    return hashOf(bytesOf(row), keys.rowKey);
}

Hash256 hashFrom(const nlohmann::json &hex)
{
    const auto bytes = fromHex(hex.get<std::string>());
    Hash256 out{};
    if (!bytes || bytes->size() != out.size())
        throw Error{ErrorCode::Tampered, "head", "a hash of the wrong size"};
    std::copy(bytes->begin(), bytes->end(), out.begin());
    return out;
}

} // namespace

void RowSum::add(const Hash256 &row)
{
    unsigned carry = 0;
    for (std::size_t i = 0; i < m_sum.size(); ++i) {
        const unsigned sum = carry + m_sum[i] + row[i];
        m_sum[i] = static_cast<std::uint8_t>(sum & 0xff);
        carry = sum >> 8;
    }
}

void RowSum::remove(const Hash256 &row)
{
    unsigned borrow = 0;
    for (std::size_t i = 0; i < m_sum.size(); ++i) {
        const unsigned taken = row[i] + borrow;
        borrow = m_sum[i] < taken ? 1 : 0;
        m_sum[i] = static_cast<std::uint8_t>((m_sum[i] + 256U * borrow - taken) & 0xff);
    }
}

RowSum RowSum::of(const Hash256 &bytes)
{
    RowSum sum;
    sum.m_sum = bytes;
    return sum;
}

Hash256 rowHash(const Database &db, const Keyring &keys, const char *table, std::int64_t id)
{
    const Counted &counted = countedAs(table);
    Rows rows = db.run(std::string(counted.select) + " WHERE id = ?", {id});
    return rows.next() ? hashOfRow(keys, counted, rows) : Hash256{};
}

Head readHead(const Database &db, const Keyring &keys)
{
    Rows rows = db.run("SELECT seal FROM head WHERE id = 1");
    if (!rows.next())
        throw Error{ErrorCode::Tampered, db.file(), "the head is missing"};
    const std::string text = unsealText(keys.fileKey, rows.blob(0), boxPlace(keys.practice, "head", 1, "seal", 0));
    try {
        const auto json = nlohmann::json::parse(text);
        const auto count = [&](const char *name) {
            constexpr std::int64_t most = std::int64_t{1} << 53; // leaves room for counting on
            const auto &value = json.at(name);
            if (!value.is_number_unsigned() || value > most)
                throw Error{ErrorCode::Tampered, db.file(), "the head is not as it is written"};
            return value.get<std::int64_t>();
        };
        Head head;
        head.transactions = count("transactions");
        head.entries = count("entries");
        head.tip = hashFrom(json.at("tip"));
        head.rows = RowSum::of(hashFrom(json.at("rows")));
        head.lastPatient = count("last_patient");
        head.lastVisit = count("last_visit");
        return head;
    } catch (const nlohmann::json::exception &) { // sealed with our key, but not by us
        throw Error{ErrorCode::Tampered, db.file(), "the head is not as it is written"};
    }
}

void writeHead(const Database &db, const Keyring &keys, Head head)
{
    ++head.transactions;
    const nlohmann::json json{{"transactions", head.transactions}, {"entries", head.entries}, {"tip", toHex(head.tip)},
        {"rows", toHex(head.rows.bytes())}, {"last_patient", head.lastPatient}, {"last_visit", head.lastVisit}};
    const Blob box = sealText(keys.fileKey, json.dump(), boxPlace(keys.practice, "head", 1, "seal", 0));
    if (db.run("UPDATE head SET seal = ? WHERE id = 1", {box}).affected() == 0)
        db.run("INSERT INTO head (id, seal) VALUES (1, ?)", {box});
}

RowSum sumOfRows(const Database &db, const Keyring &keys)
{
    RowSum sum;
    for (const Counted &one : countedTables) {
        Rows rows = db.run(one.select);
        while (rows.next())
            sum.add(hashOfRow(keys, one, rows));
    }
    return sum;
}

} // namespace raphe
