// raphe-batch extent: how much of the body's surface the findings on the skin take, in percent
// (resources/schema/extent.schema.json).
#include "app/batch/Commands.h"
#include "app/batch/VisitFile.h"

#include "core/anatomy/BodyShare.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace raphe::batch {

Result<Done> printExtent(const std::string &visitFile)
{
    const auto known = readKnownVisit(visitFile);
    if (!known)
        return known.error();
    const Knowledge &knowledge = known.value().knowledge;
    const auto share = readEmbeddedBodyShare(*knowledge.atlas, *knowledge.body);
    if (!share)
        return share.error();
    SurfaceMask mask;
    auto regions = nlohmann::ordered_json::array();
    for (const Finding &f : known.value().visit.findings) {
        const Structure &s = knowledge.atlas->at(f.place.structure);
        if (s.kind != Kind::SurfaceRegion || !f.isFound())
            continue;
        share.value().markRegion(mask, f.place);
        SurfaceMask alone;
        share.value().markRegion(alone, f.place);
        regions.push_back(
            {{"structure", s.id.value}, {"side", wordOf(sideWords, f.place.side)}, {"percent", share.value().percentOf(alone)}});
    }
    auto parts = nlohmann::ordered_json::array();
    const auto percent = share.value().percentByPart(mask);
    for (std::size_t i = 0; i < percent.size(); ++i)
        if (percent[i] > 0) {
            const BodyPart &part = share.value().parts()[i];
            parts.push_back({{"part", part.id}, {"side", wordOf(sideWords, part.side)}, {"view", wordOf(viewWords, part.view)},
                {"percent", percent[i]}, {"of", part.percent}});
        }
    std::cout << nlohmann::ordered_json{{"percent", share.value().percentOf(mask)}, {"parts", parts}, {"regions", regions}}.dump(
        1) << '\n';
    return Done{};
}

} // namespace raphe::batch
