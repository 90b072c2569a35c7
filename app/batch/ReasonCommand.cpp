// raphe-batch reason: explain, check and treat for a visit (resources/schema/reason.schema.json).
#include "app/batch/Commands.h"

#include "app/batch/VisitFile.h"
#include "core/plan/TreatFirst.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace raphe::batch {

namespace {

using Json = nlohmann::ordered_json;

Json placeJson(const Place &place)
{
    return {{"structure", place.structure.value}, {"side", wordOf(sideWords, place.side)}};
}

Json listJson(const std::vector<Suggestion> &list)
{
    Json out = Json::array();
    for (const Suggestion &s : list) {
        Json terms = Json::array();
        for (const Term &term : s.terms)
            terms.push_back({{"name", term.name}, {"value", term.value}});
        Json path = Json::array();
        for (const PathStep &step : s.path)
            path.push_back({{"from", placeJson(step.from)}, {"to", placeJson(step.to)}, {"link", wordOf(linkWords, step.link)},
                {"evidence", wordOf(gradeWords, step.evidence)}, {"sources", step.sources},
                {"basis", wordOf(basisWords, step.basis)}});
        Json entry = placeJson(s.place);
        entry["score"] = s.score;
        entry["rank"] = s.rank;
        entry["terms"] = std::move(terms);
        entry["why"] = s.why;
        entry["path"] = std::move(path);
        out.push_back(std::move(entry));
    }
    return out;
}

} // namespace

Result<Done> printReasons(const std::string &visitFile)
{
    const auto read = readKnownVisit(visitFile);
    if (!read)
        return read.error();
    const auto &[knowledge, visit] = read.value();
    const Reasons reasons = reason(*knowledge.linkage, visit, *knowledge.constants);
    const Json out{{"explain", listJson(reasons.explain)}, {"check", listJson(reasons.check)},
        {"treat", listJson(treatFirst(*knowledge.linkage, visit, *knowledge.constants))}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
