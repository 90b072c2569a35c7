// raphe-batch import: visit files into a practice file.
#include "app/batch/Commands.h"

#include "app/batch/Unlocked.h"
#include "app/batch/VisitFile.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/VisitJson.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace raphe::batch {

Result<Done> importVisits(const std::string &practiceFile, const Key &key, const std::vector<std::string> &visitFiles)
{
    const auto read = readKnowledge();
    if (!read)
        return read.error();
    std::vector<Visit> visits; // all are checked before the first is written
    for (const std::string &file : visitFiles) {
        auto visit = readVisitFile(file, *read.value().atlas);
        if (!visit)
            return visit.error();
        if (!visit.value().patient || visit.value().date.empty())
            return Error{ErrorCode::MissingField, file + "#/", visit.value().patient ? "date" : "patient"};
        visits.push_back(std::move(visit).value());
    }
    const auto practice = unlocked(practiceFile, key);
    if (!practice)
        return practice.error();
    auto out = nlohmann::ordered_json::array();
    for (const Visit &visit : visits) {
        const auto patients = practice.value()->patients();
        if (!patients)
            return patients.error();
        const auto same = std::find_if(patients.value().begin(), patients.value().end(),
            [&](const PatientCard &card) { return card.name == visit.patient->name && card.born == visit.patient->born; });
        PatientRecord record;
        record.name = visit.patient->name;
        record.born = visit.patient->born;
        const auto patient =
            same != patients.value().end() ? Result<std::int64_t>(same->id) : practice.value()->addPatient(record);
        if (!patient)
            return patient.error();
        const auto id = practice.value()->addVisit(patient.value(), writeVisit(visit));
        if (!id)
            return id.error();
        out.push_back({{"patient", patient.value()}, {"visit", id.value()}});
    }
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
