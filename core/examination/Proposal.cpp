#include "core/examination/Proposal.h"

#include "core/record/PaintedPlaces.h"
#include "core/safety/Under.h"

#include <algorithm>
#include <set>

namespace raphe {

namespace {

std::set<StructureId> regionsOf(const Regions &regions, const Place &place)
{
    const Structure *structure = regions.atlas().find(place.structure);
    if (!structure)
        return {};
    if (structure->kind == Kind::SurfaceRegion)
        return {place.structure};
    std::set<StructureId> out;
    for (const auto &[region, share] : regions.over(place.structure))
        if (share >= leastUnder)
            out.insert(region);
    if (const auto &mark = regions.atMark(place.structure); out.empty() && mark)
        out.insert(*mark);
    return out;
}

bool isOfNerves(const PainPatch &patch)
{
    return patch.quality == PainQuality::Burning || patch.quality == PainQuality::Shooting
        || patch.quality == PainQuality::Tingling || patch.quality == PainQuality::Numb;
}

bool hasCondition(const Visit &visit, std::initializer_list<std::string_view> ids)
{
    return std::any_of(visit.conditions.begin(), visit.conditions.end(),
        [&](const Condition &c) { return std::find(ids.begin(), ids.end(), c.id) != ids.end(); });
}

using LimbOfSide = std::pair<Limb, Side>;

std::set<LimbOfSide> limbsOf(const Regions &regions, const std::vector<Place> &places)
{
    std::set<LimbOfSide> out;
    for (const Place &place : places)
        if (const auto limb = regions.limbOf(place.structure, leastUnder))
            out.emplace(*limb, place.side);
    return out;
}

bool isAlsoOnTrunk(const Regions &regions, const std::vector<Place> &places)
{
    return std::any_of(places.begin(), places.end(),
        [&](const Place &place) { return !regions.limbOf(place.structure, leastUnder).has_value(); });
}

} // namespace

std::vector<const Sheet *> proposedSheets(const Examination &examination, const Regions &regions, const Visit &visit)
{
    std::set<std::pair<StructureId, Side>> hurt;
    for (const Place &place : visit.complaintAt)
        for (const StructureId &region : regionsOf(regions, place))
            hurt.emplace(region, place.side);
    std::vector<std::pair<std::size_t, const Sheet *>> ranked;
    for (const Sheet &sheet : examination.sheets) {
        const auto count = static_cast<std::size_t>(std::count_if(hurt.begin(), hurt.end(), [&](const auto &one) {
            return std::find(sheet.regions.begin(), sheet.regions.end(), one.first) != sheet.regions.end();
        }));
        if (count > 0)
            ranked.emplace_back(count, &sheet);
    }
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto &a, const auto &b) {
        return a.first != b.first ? a.first > b.first : a.second->regions.size() < b.second->regions.size();
    });
    std::vector<const Sheet *> out;
    out.reserve(ranked.size());
    for (const auto &[count, sheet] : ranked)
        out.push_back(sheet);
    return out;
}

Calls callsOf(const Regions &regions, const Visit &visit)
{
    std::vector<Place> ofNerves;
    for (const PainPatch &patch : visit.pain)
        if (isOfNerves(patch))
            for (const PaintedPlace &painted : paintedPlaces(patch, regions.body().of(patch.view), regions.atlas()))
                ofNerves.push_back(painted.place);
    const std::set<LimbOfSide> limbs = limbsOf(regions, ofNerves);
    const bool radiates = !limbsOf(regions, visit.complaintAt).empty() && isAlsoOnTrunk(regions, visit.complaintAt);
    Calls calls;
    calls.cord =
        limbs.size() > 1 || hasCondition(visit, {"suspected-cord-pressure", "suspected-cauda-equina", "spinal-cord-injury"});
    calls.nerves = !ofNerves.empty() || radiates || calls.cord
        || hasCondition(visit, {"nerve-root-signs", "progressive-nerve-loss", "peripheral-neuropathy"});
    return calls;
}

std::vector<const ExamTest *> testsOf(const Examination &examination, const Sheet &sheet, const Calls &calls, const Visit &visit)
{
    const auto isAnswered = [&](const std::string &id) {
        return std::any_of(visit.tests.begin(), visit.tests.end(), [&](const TestResult &r) { return r.test == id; });
    };
    std::vector<const ExamTest *> out;
    for (const auto &[list, isCalled] : {std::pair{&sheet.tests, true}, {&sheet.nerves, calls.nerves}, {&sheet.cord, calls.cord}})
        for (const std::string &id : *list)
            if (const ExamTest *test = examination.findTest(id);
                (isCalled || isAnswered(id)) && std::find(out.begin(), out.end(), test) == out.end())
                out.push_back(test);
    return out;
}

} // namespace raphe
