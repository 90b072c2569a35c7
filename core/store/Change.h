// One change of the practice file: a transaction that keeps the sealed head in step with the rows and the entries. Nothing of it
// is there until commit() returns, and all of it from then on, through a kill or a power cut.
#pragma once

#include "core/store/Entries.h"

#include <functional>

namespace raphe {

class Change {
public:
    Change(const Database &db, const Keyring &keys) : m_db(db), m_keys(keys), m_transaction(db), m_head(readHead(db, keys)) { }

    /// Writes one row of a table that the head counts (make, change or delete); `write` runs the SQL.
    void row(const char *table, std::int64_t id, const std::function<void()> &write);
    /// An entry whose content, if any, is sealed by `key`.
    void entry(EntryKind kind, std::optional<std::int64_t> patient, std::optional<std::int64_t> visit, const SecretBytes &key,
        const std::string &content);
    [[nodiscard]] std::int64_t newPatient() { return ++m_head.lastPatient; }
    [[nodiscard]] std::int64_t newVisit() { return ++m_head.lastVisit; }
    void commit();

private:
    const Database &m_db;
    const Keyring &m_keys;
    WriteTransaction m_transaction;
    Head m_head;
};

} // namespace raphe
