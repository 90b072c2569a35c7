// The sealed head: what the file must hold. Every transaction writes it anew, so that a dropped tail of the entries and a row
// that was dropped, added, or put back from before show. It holds the number of transactions, the number and the last hash of the
// entries, and a sum over all other rows.
// The sum: of each row a hash keyed with a key from the file key, over the table, what is readable in the row, and the tags of
// its boxes, taken as a number of 256 bits; added modulo 2^256, so that a row can be taken out and put in again. Without the key
// nobody can make rows that add up to the same. A file that was put back whole, as it was before, is its own past: that cannot be
// told from inside.
#pragma once

#include "core/store/Database.h"
#include "core/store/Keyring.h"
#include "core/store/crypto/Hash.h"

namespace raphe {

class RowSum {
public:
    void add(const Hash256 &row);
    void remove(const Hash256 &row);
    bool operator==(const RowSum &) const = default;
    [[nodiscard]] const Hash256 &bytes() const { return m_sum; }
    [[nodiscard]] static RowSum of(const Hash256 &bytes);

private:
    Hash256 m_sum{}; // least significant byte first
};

/// One row of practice, account, patient or visit, as it counts in the sum; all zero when there is no such row.
[[nodiscard]] Hash256 rowHash(const Database &db, const Keyring &keys, const char *table, std::int64_t id);

struct Head {
    std::int64_t transactions = 0;
    std::int64_t entries = 0;
    Hash256 tip{}; // of the last entry; all zero before the first
    RowSum rows;
    std::int64_t lastPatient = 0; // highest number ever given: those of erased patients are not used again
    std::int64_t lastVisit = 0;
    bool operator==(const Head &) const = default;
};

/// Throws Error with Tampered when it is missing or does not open.
[[nodiscard]] Head readHead(const Database &db, const Keyring &keys);
/// Counts the transaction.
void writeHead(const Database &db, const Keyring &keys, Head head);

/// The sum as the tables are now: accounts, patients, visits, the practice itself.
[[nodiscard]] RowSum sumOfRows(const Database &db, const Keyring &keys);

} // namespace raphe
