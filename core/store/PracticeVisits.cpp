#include "core/base/JsonReader.h"
#include "core/store/Practice.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

constexpr const char *visitColumns = "SELECT id, patient, changes, state, document FROM visit";

std::string said(const std::string &reason, const std::string &careAt, const std::string &document)
{
    nlohmann::ordered_json json = nlohmann::ordered_json::object();
    if (!reason.empty())
        json["reason"] = reason;
    if (!careAt.empty())
        json["care_at"] = careAt;
    if (!document.empty())
        json["document"] = document;
    return json.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace); // it would throw at ill-formed UTF-8
}

void expectState(const StoredVisit &visit, std::initializer_list<VisitState> allowed, const char *why)
{
    if (std::find(allowed.begin(), allowed.end(), visit.state) == allowed.end())
        throw Error{ErrorCode::NotAllowed, "visit " + std::to_string(visit.id), why};
}

void expectReason(const std::string &reason)
{
    if (reason.empty())
        throw Error{ErrorCode::MissingField, "visit", "reason"};
}

} // namespace

StoredVisit Practice::visitOf(const Rows &rows, const SecretBytes &key) const
{
    StoredVisit visit;
    visit.id = rows.number(0);
    visit.patient = rows.number(1);
    const std::int64_t state = rows.number(3);
    if (state < 0 || state > static_cast<std::int64_t>(VisitState::InError))
        throw Error{ErrorCode::Tampered, "visit " + std::to_string(visit.id), "in no known state"};
    visit.state = static_cast<VisitState>(state);
    visit.document = unsealText(key, rows.blob(4), place("visit", visit.id, "document", rows.number(2)));
    return visit;
}

Result<std::vector<StoredVisit>> Practice::visits(std::int64_t patient) const
{
    return guarded([&] {
        std::vector<StoredVisit> out;
        for (const std::int64_t id : withMerged(patient)) {
            const SecretBytes key = keyOf(id);
            Rows rows = m_db.run(std::string(visitColumns) + " WHERE patient = ?", {id});
            while (rows.next())
                out.push_back(visitOf(rows, key));
        }
        std::sort(out.begin(), out.end(), [](const StoredVisit &a, const StoredVisit &b) { return a.id > b.id; });
        return out;
    });
}

StoredVisit Practice::storedVisit(std::int64_t id) const
{
    Rows rows = m_db.run(std::string(visitColumns) + " WHERE id = ?", {id});
    if (!rows.next())
        throw Error{ErrorCode::UnknownId, m_db.file() + ", visit", std::to_string(id)};
    return visitOf(rows, keyOf(rows.number(1)));
}

Result<StoredVisit> Practice::visit(std::int64_t id) const
{
    return guarded([&] { return storedVisit(id); });
}

Result<std::int64_t> Practice::addVisit(std::int64_t patient, const std::string &document)
{
    return guarded([&]() -> std::int64_t {
        const SecretBytes key = keyOf(patient);
        Change change(m_db, *m_keys);
        const std::int64_t id = putNewVisit(change, patient, key, document);
        change.commit();
        return id;
    });
}

std::int64_t Practice::putNewVisit(Change &change, std::int64_t patient, const SecretBytes &key, const std::string &document)
{
    const std::int64_t id = change.newVisit();
    change.row("visit", id, [&] {
        m_db.run("INSERT INTO visit (id, patient, changes, state, document) VALUES (?, ?, 0, 0, ?)",
            {id, patient, sealText(key, document, place("visit", id, "document", 0))});
    });
    return id;
}

// Under the patient and in the state that the value says.
void Practice::putVisit(Change &change, const StoredVisit &visit)
{
    const std::int64_t changes = m_db.number("SELECT changes FROM visit WHERE id = ?", {visit.id}) + 1;
    const Blob box = sealText(keyOf(visit.patient), visit.document, place("visit", visit.id, "document", changes));
    change.row("visit", visit.id, [&] {
        m_db.run("UPDATE visit SET patient = ?, changes = ?, state = ?, document = ? WHERE id = ?",
            {visit.patient, changes, static_cast<std::int64_t>(visit.state), box, visit.id});
    });
}

Result<Done> Practice::saveVisit(std::int64_t id, const std::string &document)
{
    return guarded([&]() -> Done {
        Change change(m_db, *m_keys);
        StoredVisit visit = storedVisit(id);
        expectState(visit, {VisitState::Draft, VisitState::Amending}, "it is signed - begin an amendment to change it");
        visit.document = document;
        putVisit(change, visit);
        change.commit();
        return {};
    });
}

void Practice::signNow(const StoredVisit &visit, EntryKind kind, const std::string &reason, const std::string &careAt)
{
    Change change(m_db, *m_keys);
    StoredVisit signedVisit = storedVisit(visit.id); // as it is now, with the write lock
    if (signedVisit.document != visit.document || signedVisit.state != visit.state)
        throw Error{
            ErrorCode::NotAllowed, "visit " + std::to_string(visit.id), "it has just been changed elsewhere - look at it again"};
    signedVisit.state = VisitState::Signed;
    putVisit(change, signedVisit);
    change.entry(kind, visit.patient, visit.id, keyOf(visit.patient), said(reason, careAt, visit.document));
    change.commit();
}

Result<Done> Practice::sign(std::int64_t id, const std::string &careAt, const std::string &lateReason)
{
    return guarded([&]() -> Done {
        const StoredVisit visit = storedVisit(id);
        expectState(visit, {VisitState::Draft}, "it is not a draft");
        signNow(visit, lateReason.empty() ? EntryKind::Signed : EntryKind::Late, lateReason, careAt);
        return {};
    });
}

Result<Done> Practice::beginAmendment(std::int64_t id)
{
    return guarded([&]() -> Done {
        Change change(m_db, *m_keys);
        StoredVisit visit = storedVisit(id);
        expectState(visit, {VisitState::Signed}, "only a signed visit can be amended");
        visit.state = VisitState::Amending;
        putVisit(change, visit);
        change.commit();
        return {};
    });
}

Result<Done> Practice::dropAmendment(std::int64_t id)
{
    return guarded([&]() -> Done {
        const auto versions = history(id);
        if (!versions)
            throw versions.error();
        const auto last = std::find_if(
            versions.value().rbegin(), versions.value().rend(), [](const VisitVersion &v) { return !v.document.empty(); });
        Change change(m_db, *m_keys);
        StoredVisit visit = storedVisit(id);
        expectState(visit, {VisitState::Amending}, "no amendment is being written");
        if (last == versions.value().rend())
            throw Error{ErrorCode::Tampered, "visit " + std::to_string(id), "its signed version is missing"};
        visit.state = VisitState::Signed;
        visit.document = last->document;
        putVisit(change, visit);
        change.commit();
        return {};
    });
}

Result<Done> Practice::signAmendment(std::int64_t id, const std::string &reason, const std::string &careAt)
{
    return guarded([&]() -> Done {
        expectReason(reason);
        const StoredVisit visit = storedVisit(id);
        expectState(visit, {VisitState::Amending}, "no amendment is being written");
        signNow(visit, EntryKind::Amended, reason, careAt);
        return {};
    });
}

Result<Done> Practice::markInError(std::int64_t id, const std::string &reason)
{
    return guarded([&]() -> Done {
        expectReason(reason);
        Change change(m_db, *m_keys);
        StoredVisit visit = storedVisit(id);
        expectState(visit, {VisitState::Draft, VisitState::Signed, VisitState::Amending}, "it is marked already");
        visit.state = VisitState::InError;
        putVisit(change, visit);
        change.entry(EntryKind::InError, visit.patient, id, keyOf(visit.patient), said(reason, {}, visit.document));
        change.commit();
        return {};
    });
}

Result<Done> Practice::move(
    std::int64_t id, std::int64_t toPatient, const std::string &reason, const std::string &document, const std::string &left)
{
    return guarded([&]() -> Done {
        expectReason(reason);
        const SecretBytes key = keyOf(toPatient);
        Change change(m_db, *m_keys);
        StoredVisit visit = storedVisit(id);
        expectState(
            visit, {VisitState::Draft}, "only a draft can be moved; mark a signed visit as entered in error and write it anew");
        if (visit.patient == toPatient)
            throw Error{ErrorCode::NotAllowed, "visit " + std::to_string(id), "it is there already"};
        const std::int64_t from = visit.patient;
        visit.patient = toPatient;
        if (!document.empty())
            visit.document = document;
        putVisit(change, visit);
        if (!left.empty())
            putNewVisit(change, from, keyOf(from), left);
        change.entry(EntryKind::Moved, toPatient, id, key, nlohmann::ordered_json{{"reason", reason}, {"from", from}}.dump());
        change.commit();
        return {};
    });
}

Result<std::vector<VisitVersion>> Practice::history(std::int64_t visit) const
{
    return guarded([&] {
        const auto names = accountNames();
        std::vector<VisitVersion> out;
        Rows rows = m_db.run("SELECT number FROM entry WHERE visit = ? ORDER BY number", {visit});
        while (rows.next()) {
            const Entry e = readEntry(m_db, rows.number(0));
            VisitVersion v;
            v.entry = e.number;
            v.kind = e.kind;
            v.madeAt = e.madeAt;
            if (const auto name = names.find(e.account); name != names.end())
                v.author = name->second;
            if (!e.content.empty() && e.patient) {
                const std::string where = contentPlace(m_keys->practice, e.number);
                const auto json = parseJson(unsealText(keyOf(*e.patient), e.content, where), where);
                if (!json)
                    throw json.error();
                const JsonReader said(json.value(), where);
                v.reason = said.stringOr("reason", {});
                v.careAt = said.stringOr("care_at", {});
                v.document = said.stringOr("document", {});
            }
            out.push_back(std::move(v));
        }
        return out;
    });
}

} // namespace raphe
