#include "core/base/JsonReader.h"
#include "core/record/PatientMerge.h"
#include "core/record/PatientRecordJson.h"
#include "core/record/PatientSearch.h"
#include "core/store/Practice.h"
#include "core/store/crypto/Seal.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

SecretBytes Practice::keyOf(std::int64_t patient) const
{
    Rows rows = m_db.run("SELECT patient_key FROM patient WHERE id = ?", {patient});
    if (!rows.next())
        throw Error{ErrorCode::UnknownId, m_db.file() + ", patient", std::to_string(patient)};
    return unsealKey(m_keys->fileKey, rows.blob(0), place("patient", patient, "patient_key", 0));
}

std::vector<std::int64_t> Practice::withMerged(std::int64_t patient) const
{
    std::vector<std::int64_t> out{patient};
    for (std::size_t i = 0; i < out.size(); ++i) { // merges may have been merged again
        Rows rows = m_db.run("SELECT id FROM patient WHERE merged_into = ?", {out[i]});
        while (rows.next()) {
            if (std::find(out.begin(), out.end(), rows.number(0)) != out.end())
                throw Error{ErrorCode::Tampered, m_db.file(), "records are joined in a ring"};
            out.push_back(rows.number(0));
        }
    }
    return out;
}

Result<std::vector<PatientCard>> Practice::patients(const std::function<bool(std::size_t)> &progress) const
{
    constexpr std::size_t tellsEvery = 256;
    return guarded([&]() -> std::vector<PatientCard> {
        Rows rows = m_db.run("SELECT id, changes, patient_key, record FROM patient WHERE merged_into IS NULL");
        std::vector<PatientCard> out;
        while (rows.next()) {
            const std::int64_t id = rows.number(0);
            const SecretBytes key = unsealKey(m_keys->fileKey, rows.blob(2), place("patient", id, "patient_key", 0));
            const std::string where = place("patient", id, "record", rows.number(1));
            const auto record = readPatient(unsealText(key, rows.blob(3), where), where);
            if (!record)
                throw record.error();
            out.push_back({id, record.value().name, record.value().born, record.value().mark, searchText(record.value())});
            if (progress && out.size() % tellsEvery == 0 && !progress(out.size()))
                return {};
        }
        std::sort(out.begin(), out.end(), [](const PatientCard &a, const PatientCard &b) {
            return a.searched != b.searched ? a.searched < b.searched : a.id < b.id;
        });
        return out;
    });
}

Result<PatientRecord> Practice::patient(std::int64_t id) const
{
    return guarded([&]() -> PatientRecord {
        const SecretBytes key = keyOf(id);
        Rows rows = m_db.run("SELECT changes, record FROM patient WHERE id = ?", {id});
        static_cast<void>(rows.next());
        const std::string where = place("patient", id, "record", rows.number(0));
        const auto record = readPatient(unsealText(key, rows.blob(1), where), where);
        if (!record)
            throw record.error();
        return record.value();
    });
}

std::int64_t Practice::putNewPatient(Change &change, const PatientRecord &record)
{
    const std::int64_t id = change.newPatient();
    const SecretBytes key = SecretBytes::random(sealKeySize);
    change.row("patient", id, [&] {
        m_db.run("INSERT INTO patient (id, changes, merged_into, patient_key, record) VALUES (?, 0, NULL, ?, ?)",
            {id, seal(m_keys->fileKey, key.span(), place("patient", id, "patient_key", 0)),
                sealText(key, writePatient(record), place("patient", id, "record", 0))});
    });
    return id;
}

Result<std::int64_t> Practice::addPatient(const PatientRecord &record)
{
    return guarded([&]() -> std::int64_t {
        if (const auto checked = checkPatient(record, "patient"); !checked)
            throw checked.error();
        Change change(m_db, *m_keys);
        const std::int64_t id = putNewPatient(change, record);
        change.commit();
        return id;
    });
}

Result<Done> Practice::addPatients(const std::vector<PatientRecord> &records)
{
    return guarded([&]() -> Done {
        for (std::size_t i = 0; i < records.size(); ++i)
            if (const auto checked = checkPatient(records[i], "patient " + std::to_string(i + 1)); !checked)
                throw checked.error();
        Change change(m_db, *m_keys);
        for (const PatientRecord &record : records)
            putNewPatient(change, record);
        change.commit();
        return {};
    });
}

Result<Done> Practice::savePatient(std::int64_t id, const PatientRecord &record)
{
    return guarded([&]() -> Done {
        if (const auto checked = checkPatient(record, "patient"); !checked)
            throw checked.error();
        const SecretBytes key = keyOf(id);
        Change change(m_db, *m_keys);
        const std::int64_t changes = m_db.number("SELECT changes FROM patient WHERE id = ?", {id}) + 1;
        change.row("patient", id, [&] {
            m_db.run("UPDATE patient SET changes = ?, record = ? WHERE id = ?",
                {changes, sealText(key, writePatient(record), place("patient", id, "record", changes)), id});
        });
        change.commit();
        return {};
    });
}

Result<Done> Practice::merge(std::int64_t keep, std::int64_t other)
{
    return guarded([&]() -> Done {
        const std::vector<std::int64_t> under = withMerged(other);
        if (std::find(under.begin(), under.end(), keep) != under.end())
            throw Error{ErrorCode::NotAllowed, "patient", "a record cannot be joined to itself"};
        const auto kept = patient(keep);
        const auto joined = patient(other);
        if (!kept || !joined)
            throw kept ? joined.error() : kept.error();
        const auto both = merged(kept.value(), joined.value());
        if (!both)
            throw both.error();
        const SecretBytes key = keyOf(keep);
        Change change(m_db, *m_keys);
        const std::int64_t changes = m_db.number("SELECT changes FROM patient WHERE id = ?", {keep}) + 1;
        change.row("patient", keep, [&] {
            m_db.run("UPDATE patient SET changes = ?, record = ? WHERE id = ?",
                {changes, sealText(key, writePatient(both.value().record), place("patient", keep, "record", changes)), keep});
        });
        change.row("patient", other, [&] { m_db.run("UPDATE patient SET merged_into = ? WHERE id = ?", {keep, other}); });
        nlohmann::json complaints = nlohmann::json::object();
        for (const auto &[old, now] : both.value().complaintIds)
            complaints[std::to_string(old)] = now;
        change.entry(EntryKind::Merged, keep, {}, key, nlohmann::json{{"other", other}, {"complaints", complaints}}.dump());
        change.commit();
        return {};
    });
}

Result<Done> Practice::note(EntryKind kind, std::int64_t patient)
{
    return guarded([&]() -> Done {
        const SecretBytes key = keyOf(patient);
        Change change(m_db, *m_keys);
        change.entry(kind, patient, {}, key, {});
        change.commit();
        return {};
    });
}

Result<Done> Practice::noteOpened(std::int64_t patient)
{
    return note(EntryKind::Opened, patient);
}

Result<Done> Practice::noteExported(std::int64_t patient)
{
    return note(EntryKind::Exported, patient);
}

Result<Done> Practice::noteRestored(std::int64_t endsAt)
{
    return guarded([&]() -> Done {
        Change change(m_db, *m_keys);
        change.entry(EntryKind::Restored, {}, {}, journalKey(), std::to_string(endsAt));
        change.commit();
        return {};
    });
}

Result<std::vector<AccessRow>> Practice::accesses(std::optional<std::int64_t> patient) const
{
    return guarded([&] {
        const auto names = accountNames();
        const std::string columns = "SELECT made_at, account, kind, patient, number FROM entry";
        std::map<std::int64_t, AccessRow> byNumber;
        const auto take = [&](Rows rows) {
            while (rows.next()) {
                const auto name = names.find(rows.number(1));
                const auto kind = fromWord(entryWords, rows.text(2));
                if (!kind)
                    throw Error{ErrorCode::Tampered, m_db.file(), "an entry of no known kind"};
                byNumber[rows.number(4)] = {rows.number(0), name == names.end() ? std::string() : name->second, *kind,
                    rows.isNull(3) ? std::nullopt : std::optional(rows.number(3))};
            }
        };
        if (!patient)
            take(m_db.run(columns));
        else
            for (const std::int64_t id : withMerged(*patient))
                take(m_db.run(columns + " WHERE patient = ?", {id}));
        std::vector<AccessRow> out;
        out.reserve(byNumber.size());
        for (auto &[number, row] : byNumber)
            out.push_back(std::move(row));
        return out;
    });
}

Result<Erased> Practice::erase(std::int64_t patient, const std::string &reason)
{
    return guarded([&]() -> Erased {
        static_cast<void>(keyOf(patient)); // there is such a patient
        std::vector<std::int64_t> all = withMerged(patient);
        {
            Change change(m_db, *m_keys);
            std::reverse(all.begin(), all.end()); // merged ones refer to the one they were joined to
            for (const std::int64_t id : all) {
                std::vector<std::int64_t> visits;
                Rows rows = m_db.run("SELECT id FROM visit WHERE patient = ?", {id});
                while (rows.next())
                    visits.push_back(rows.number(0));
                for (const std::int64_t visit : visits)
                    change.row("visit", visit, [&] { m_db.run("DELETE FROM visit WHERE id = ?", {visit}); });
                m_db.run("UPDATE entry SET content = NULL WHERE patient = ?", {id});
                change.row("patient", id, [&] { m_db.run("DELETE FROM patient WHERE id = ?", {id}); });
                change.entry(EntryKind::Erased, id, {}, journalKey(), reason);
            }
            change.commit();
        }
        const auto tidied = guarded([&]() -> Done {
            m_db.run("VACUUM"); // and with it the free pages; the log below
            m_db.run("PRAGMA wal_checkpoint(TRUNCATE)");
            return {};
        });
        return {tidied.ok()};
    });
}

} // namespace raphe
