#include "core/store/VisitImport.h"

#include "core/record/VisitJson.h"

#include <algorithm>

namespace raphe {

Result<Done> checkBelongs(const Visit &visit, const std::string &file)
{
    if (!visit.patient)
        return Error{ErrorCode::MissingField, file + "#/", "patient"};
    if (visit.date.empty())
        return Error{ErrorCode::MissingField, file + "#/", "date"};
    return Done{};
}

Result<ImportedPatient> importVisit(Practice &practice, const Visit &visit)
{
    const auto patients = practice.patients();
    if (!patients)
        return patients.error();
    const auto same = std::find_if(patients.value().begin(), patients.value().end(),
        [&](const PatientCard &card) { return card.name == visit.patient->name && card.born == visit.patient->born; });
    PatientRecord record;
    record.name = visit.patient->name;
    record.born = visit.patient->born;
    const auto patient = same != patients.value().end() ? Result<std::int64_t>(same->id) : practice.addPatient(record);
    if (!patient)
        return patient.error();
    const auto id = practice.addVisit(patient.value(), writeVisit(visit));
    if (!id)
        return id.error();
    return ImportedPatient{patient.value(), {id.value()}};
}

} // namespace raphe
