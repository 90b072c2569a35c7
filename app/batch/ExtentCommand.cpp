// raphe-batch extent: how much of the body's surface the findings on the skin take, and how much the pain drawing, in percent
// (resources/schema/extent.schema.json).
#include "app/batch/Commands.h"
#include "app/batch/Output.h"
#include "app/batch/VisitFile.h"

#include "core/anatomy/BodyShare.h"
#include "core/anatomy/StrokeRaster.h"
#include "core/record/PainMask.h"

#include <algorithm>
#include <iostream>

namespace raphe::batch {

namespace {

// The parts with something marked in them.
Json partsJson(const BodyShare &share, const SurfaceMask &mask)
{
    Json parts = Json::array();
    const auto percent = share.percentByPart(mask);
    for (std::size_t i = 0; i < percent.size(); ++i)
        if (percent[i] > 0) {
            const BodyPart &part = share.parts()[i];
            parts.push_back({{"part", part.id}, {"side", wordOf(sideWords, part.side)}, {"view", wordOf(viewWords, part.view)},
                {"percent", percent[i]}, {"of", part.percent}});
        }
    return parts;
}

Json painJson(const BodyShare &share, const std::vector<PainPatch> &pain, const SurfaceMask &silhouette)
{
    const SurfaceMask mask = painMask(pain, silhouette);
    Json regions = Json::array();
    for (const RegionShare &touched : share.percentByRegion(mask)) {
        Json region = placeJson(touched.region);
        region["percent"] = touched.percent;
        region["of"] = touched.of;
        regions.push_back(std::move(region));
    }
    const auto uncounted =
        std::count_if(pain.begin(), pain.end(), [](const PainPatch &patch) { return !SurfaceMask::shows(patch.view); });
    return {{"percent", share.percentOf(mask)}, {"parts", partsJson(share, mask)}, {"regions", std::move(regions)},
        {"patches", pain.size()}, {"uncounted_patches", uncounted}};
}

} // namespace

Result<Done> printExtent(const std::string &visitFile)
{
    const auto known = readKnownVisit(visitFile);
    if (!known)
        return known.error();
    const auto &[knowledge, visit] = known.value();
    const auto share = readEmbeddedBodyShare(*knowledge.atlas, *knowledge.body);
    if (!share)
        return share.error();
    SurfaceMask mask;
    Json regions = Json::array();
    for (const Finding &f : visit.findings) {
        if (knowledge.atlas->at(f.place.structure).kind != Kind::SurfaceRegion || !f.isFound())
            continue;
        share.value().markRegion(mask, f.place);
        SurfaceMask alone;
        share.value().markRegion(alone, f.place);
        Json region = placeJson(f.place);
        region["percent"] = share.value().percentOf(alone);
        regions.push_back(std::move(region));
    }
    const Json out{{"percent", share.value().percentOf(mask)}, {"parts", partsJson(share.value(), mask)},
        {"regions", std::move(regions)}, {"pain", painJson(share.value(), visit.pain, silhouetteMask(*knowledge.body))}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
