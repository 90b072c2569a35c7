#include "core/reasoning/SideCheck.h"

#include "core/reasoning/Trace.h"
#include "core/record/PaintedPlaces.h"

#include <algorithm>

namespace raphe {

namespace {

// Share of a structure under a region of the skin from which on pain there may be pain of it; as for nearness to the complaint.
constexpr double enough = 0.3;

std::vector<Place> complaintOf(const Regions &regions, const Visit &visit)
{
    std::vector<Place> places = visit.complaintAt;
    if (places.empty())
        for (const PainPatch &patch : visit.pain)
            for (const PaintedPlace &painted : paintedPlaces(patch, regions.body().of(patch.view), regions.atlas()))
                places.push_back(painted.place);
    return places;
}

// The one side that all places are on; midline when there is none, or none that all share.
Side onlySide(const std::vector<Place> &places)
{
    if (places.empty())
        return Side::Midline;
    const Side side = places.front().side;
    const bool areSame = std::all_of(places.begin(), places.end(), [&](const Place &place) { return place.side == side; });
    return areSame ? side : Side::Midline;
}

bool liesAt(const Regions &regions, const Place &place, const std::vector<Place> &complaint)
{
    const auto &over = regions.over(place.structure);
    return std::any_of(complaint.begin(), complaint.end(), [&](const Place &at) {
        const auto region = over.find(at.structure);
        return at == place || (at.side == place.side && region != over.end() && region->second >= enough);
    });
}

bool isTiedTo(const Linkage &linkage, const Regions &regions, const Place &found, const std::vector<Place> &complaint)
{
    const std::vector<Traced> reached = trace(linkage, found);
    return std::any_of(reached.begin(), reached.end(), [&](const Traced &traced) {
        const auto &path = traced.path;
        return traced.group == TraceGroup::Continuity
            && std::any_of(path.begin(), path.end(), [](const PathStep &step) { return step.changesSide(); })
            && liesAt(regions, traced.place, complaint);
    });
}

} // namespace

std::optional<SideQuestion> sideQuestion(const Linkage &linkage, const Regions &regions, const Visit &visit)
{
    std::vector<Place> found;
    for (const Finding &finding : visit.findings)
        if (finding.isFound())
            found.push_back(finding.place);
    const std::vector<Place> complaint = complaintOf(regions, visit);
    const Side hurts = onlySide(complaint);
    if (hurts == Side::Midline || onlySide(found) != mirrored(hurts))
        return {};
    std::erase_if(found, [&](const Place &place) { return isTiedTo(linkage, regions, place, complaint); });
    return found.empty() ? std::nullopt : std::optional(SideQuestion{hurts, std::move(found)});
}

} // namespace raphe
