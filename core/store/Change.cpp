#include "core/store/Change.h"

namespace raphe {

void Change::row(const char *table, std::int64_t id, const std::function<void()> &write)
{
    m_head.rows.remove(rowHash(m_db, m_keys, table, id));
    write();
    m_head.rows.add(rowHash(m_db, m_keys, table, id));
}

void Change::entry(EntryKind kind, std::optional<std::int64_t> patient, std::optional<std::int64_t> visit, const SecretBytes &key,
    const std::string &content)
{
    const Blob box = content.empty() ? Blob{} : sealText(key, content, contentPlace(m_keys.practice, nextNumber(m_head)));
    addEntry(m_db, m_keys, m_head, kind, patient, visit, box);
}

void Change::commit()
{
    writeHead(m_db, m_keys, m_head);
    m_transaction.commit();
}

} // namespace raphe
