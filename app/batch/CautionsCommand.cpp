// raphe-batch cautions: what must be respected in a visit, everywhere and at its places
// (resources/schema/cautions.schema.json).
#include "app/batch/Commands.h"
#include "app/batch/Output.h"
#include "app/batch/VisitFile.h"

#include "core/safety/Cautions.h"

#include <iostream>
#include <set>

namespace raphe::batch {

namespace {

std::set<Place> placesOf(const Visit &visit)
{
    std::set<Place> places(visit.complaintAt.begin(), visit.complaintAt.end());
    for (const Finding &f : visit.findings)
        places.insert(f.place);
    for (const Condition &c : visit.conditions)
        places.insert(c.at.begin(), c.at.end());
    return places;
}

} // namespace

Result<Done> printCautions(const std::string &visitFile)
{
    const auto known = readKnownVisit(visitFile);
    if (!known)
        return known.error();
    const auto &[knowledge, visit] = known.value();
    const auto rules = readEmbeddedSafetyRules(*knowledge.atlas);
    if (!rules)
        return rules.error();
    const auto cautions = Cautions::of(rules.value(), *knowledge.regions, visit, visitFile);
    if (!cautions)
        return cautions.error();
    Json places = Json::array();
    for (const Place &place : placesOf(visit)) {
        places.push_back(placeJson(place));
        places.back()["verdicts"] = verdictsJson(cautions.value().at(place));
    }
    const Json out{{"general", verdictsJson(cautions.value().general())}, {"places", std::move(places)}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
