// raphe-batch csv: the findings of visit files as a table for analysis. Patients are numbered, not named.
#include "app/batch/Commands.h"

#include "app/batch/SamePatient.h"
#include "app/batch/VisitFile.h"
#include "app/paint/Paper.h"
#include "core/anatomy/AtlasReader.h"
#include "core/document/FindingsCsv.h"

#include <QByteArray>

#include <iostream>

namespace raphe::batch {

Result<Done> writeCsv(const std::vector<std::string> &visitFiles, const std::string &out)
{
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    const auto rules = readEmbeddedSafetyRules(atlas.value());
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas.value(), rules.value());
    if (!examination)
        return examination.error();
    std::vector<Visit> visits;
    for (const std::string &file : visitFiles) {
        auto visit = readVisitFile(file, atlas.value());
        if (!visit)
            return visit.error();
        visits.push_back(std::move(visit).value());
    }
    const std::vector<int> numbers = patientNumbers(visits);
    std::vector<ListedVisit> listed;
    for (std::size_t i = 0; i < visits.size(); ++i)
        listed.push_back({std::to_string(numbers[i]), std::move(visits[i])});
    const std::string table = findingsCsv(listed, atlas.value(), examination.value());
    if (!out.empty())
        return saveAll(out, QByteArray::fromStdString(table));
    std::cout << table;
    return Done{};
}

} // namespace raphe::batch
