#include "core/store/SealedStore.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

// Empty when the document says none.
std::string dateIn(const std::string &document)
{
    const auto json = nlohmann::json::parse(document, nullptr, false);
    return json.is_object() && json.contains("date") && json["date"].is_string() ? json["date"].get<std::string>()
                                                                                 : std::string();
}

VisitRow rowOf(const StoredVisit &visit)
{
    return {visit.id, visit.patient, dateIn(visit.document), visit.document};
}

} // namespace

Result<std::vector<PatientRow>> SealedStore::patients()
{
    const auto cards = m_practice->patients();
    if (!cards)
        return cards.error();
    std::vector<PatientRow> out;
    for (const PatientCard &card : cards.value())
        out.push_back({card.id, card.name, card.born});
    return out;
}

Result<std::int64_t> SealedStore::addPatient(const std::string &name, const std::string &born)
{
    PatientRecord record;
    record.name = name;
    record.born = born;
    return m_practice->addPatient(record);
}

Result<std::vector<VisitRow>> SealedStore::visits(std::int64_t patient)
{
    const auto visits = m_practice->visits(patient);
    if (!visits)
        return visits.error();
    std::vector<VisitRow> out;
    for (const StoredVisit &visit : visits.value())
        out.push_back(rowOf(visit));
    std::stable_sort(out.begin(), out.end(), [](const VisitRow &a, const VisitRow &b) { return a.date > b.date; });
    return out;
}

Result<VisitRow> SealedStore::visit(std::int64_t id)
{
    const auto visit = m_practice->visit(id);
    return visit ? Result<VisitRow>(rowOf(visit.value())) : Result<VisitRow>(visit.error());
}

Result<std::int64_t> SealedStore::addVisit(std::int64_t patient, const std::string &date, const std::string &document)
{
    if (dateIn(document) != date)
        return Error{ErrorCode::Contradiction, "visit", "date " + date + ", but the document says '" + dateIn(document) + "'"};
    return m_practice->addVisit(patient, document);
}

Result<Done> SealedStore::saveVisit(std::int64_t id, const std::string &document)
{
    return m_practice->saveVisit(id, document);
}

StoreOpener sealedPractice(const std::string &file, std::shared_ptr<const Keyring> keys)
{
    return [file, keys = std::move(keys)]() -> Result<std::unique_ptr<PracticeStore>> {
        auto practice = Practice::open(file, keys);
        if (!practice)
            return practice.error();
        return std::unique_ptr<PracticeStore>(std::make_unique<SealedStore>(std::move(practice).value()));
    };
}

} // namespace raphe
