#include "core/examination/Barred.h"

#include "core/anatomy/Atlas.h"

#include <algorithm>

namespace raphe {

namespace {

bool concerns(const CautionVerdict &verdict, const std::vector<std::string> &actions)
{
    return verdict.concernsAll() || std::any_of(actions.begin(), actions.end(), [&](const std::string &action) {
        return std::find(verdict.actions.begin(), verdict.actions.end(), action) != verdict.actions.end();
    });
}

// Of each structure on that side, or where it has only other ones, on all that it has.
std::vector<Place> placesOf(const Atlas &atlas, const std::vector<StructureId> &ids, Side side)
{
    std::vector<Place> places;
    for (const StructureId &id : ids) {
        const Structure *structure = atlas.find(id);
        if (!structure)
            continue;
        const std::vector<Side> sides = atlas.sides(*structure);
        const bool hasSide = std::find(sides.begin(), sides.end(), side) != sides.end();
        for (const Side one : sides)
            if (!hasSide || one == side)
                places.push_back({id, one});
    }
    return places;
}

// Each once, the gravest first. No places: what holds for all of the body.
std::vector<CautionVerdict> verdictsAt(
    const Cautions &cautions, const std::vector<std::string> &actions, const std::vector<Place> &places)
{
    std::vector<CautionVerdict> out;
    if (actions.empty())
        return out;
    const auto take = [&](std::vector<CautionVerdict> verdicts) {
        for (CautionVerdict &verdict : verdicts) {
            const bool isNew = std::none_of(out.begin(), out.end(),
                [&](const CautionVerdict &v) { return v.rule == verdict.rule && v.reason == verdict.reason; });
            if (isNew && concerns(verdict, actions))
                out.push_back(std::move(verdict));
        }
    };
    for (const Place &place : places)
        take(cautions.at(place));
    if (places.empty())
        take(cautions.general());
    std::stable_sort(
        out.begin(), out.end(), [](const CautionVerdict &a, const CautionVerdict &b) { return a.verdict > b.verdict; });
    return out;
}

} // namespace

std::vector<CautionVerdict> verdictsOn(const Atlas &atlas, const Cautions &cautions, const Movement &movement, Side side)
{
    return verdictsAt(cautions, movement.actions, placesOf(atlas, movement.joints, side));
}

std::vector<CautionVerdict> verdictsOn(const Atlas &atlas, const Cautions &cautions, const ExamTest &test, Side side)
{
    std::vector<Place> places = placesOf(atlas, test.loads, side);
    for (const Place &place : placesOf(atlas, test.loadsOtherSide, mirrored(side)))
        places.push_back(place);
    std::vector<CautionVerdict> out = verdictsAt(cautions, test.actions, places);
    // A blood pressure is taken while help is on its way; at a wound or in a refused limb it is not.
    if (test.kind == TestKind::Vital)
        std::erase_if(out, [everywhere = cautions.general()](const CautionVerdict &v) {
            return v.concernsAll()
                && std::any_of(everywhere.begin(), everywhere.end(), [&](const CautionVerdict &g) { return g.rule == v.rule; });
        });
    return out;
}

std::vector<CautionVerdict> verdictsOnPlay(const Atlas &atlas, const Cautions &cautions, const StructureId &joint, Side side)
{
    return verdictsAt(cautions, {"joint-play"}, placesOf(atlas, {joint}, side));
}

const CautionVerdict *stopAmong(const std::vector<CautionVerdict> &verdicts)
{
    return !verdicts.empty() && verdicts.front().verdict == Verdict::Stop ? &verdicts.front() : nullptr;
}

} // namespace raphe
