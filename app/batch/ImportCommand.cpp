// raphe-batch import: visit files into a practice file.
#include "app/batch/Commands.h"

#include "app/batch/Unlocked.h"
#include "app/batch/VisitFile.h"
#include "core/reasoning/Knowledge.h"
#include "core/store/VisitImport.h"

#include <nlohmann/json.hpp>

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
        if (const auto checked = checkBelongs(visit.value(), file); !checked)
            return checked.error();
        visits.push_back(std::move(visit).value());
    }
    const auto practice = unlocked(practiceFile, key);
    if (!practice)
        return practice.error();
    auto out = nlohmann::ordered_json::array();
    for (const Visit &visit : visits) {
        const auto imported = importVisit(*practice.value(), visit);
        if (!imported)
            return imported.error();
        out.push_back({{"patient", imported.value().patient}, {"visit", imported.value().visits.front()}});
    }
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
