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

// On that side, or where the structure has only other ones, on all that it has.
std::vector<Place> placesOf(const Atlas &atlas, const StructureId &id, Side side)
{
    std::vector<Place> places;
    const Structure *structure = atlas.find(id);
    if (!structure)
        return places;
    const std::vector<Side> sides = atlas.sides(*structure);
    const bool hasSide = std::find(sides.begin(), sides.end(), side) != sides.end();
    for (const Side one : sides)
        if (!hasSide || one == side)
            places.push_back({id, one});
    return places;
}

} // namespace

std::vector<CautionVerdict> verdictsOn(const Atlas &atlas, const Cautions &cautions, const std::vector<std::string> &actions,
    const std::vector<StructureId> &structures, Side side)
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
    for (const StructureId &id : structures)
        for (const Place &place : placesOf(atlas, id, side))
            take(cautions.at(place));
    if (structures.empty())
        take(cautions.general());
    std::stable_sort(
        out.begin(), out.end(), [](const CautionVerdict &a, const CautionVerdict &b) { return a.verdict > b.verdict; });
    return out;
}

std::vector<CautionVerdict> verdictsOn(const Atlas &atlas, const Cautions &cautions, const Movement &movement, Side side)
{
    return verdictsOn(atlas, cautions, movement.actions, movement.joints, side);
}

std::vector<CautionVerdict> verdictsOn(const Atlas &atlas, const Cautions &cautions, const ExamTest &test, Side side)
{
    return verdictsOn(atlas, cautions, test.actions, test.loads, side);
}

std::vector<CautionVerdict> verdictsOnPlay(const Atlas &atlas, const Cautions &cautions, const StructureId &joint, Side side)
{
    return verdictsOn(atlas, cautions, {"joint-play"}, {joint}, side);
}

const CautionVerdict *stopAmong(const std::vector<CautionVerdict> &verdicts)
{
    return !verdicts.empty() && verdicts.front().verdict == Verdict::Stop ? &verdicts.front() : nullptr;
}

} // namespace raphe
