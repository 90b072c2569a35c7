#include "core/reasoning/Evidence.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <string>
#include <tuple>

namespace raphe {

namespace {

auto sortKey(const Finding &f)
{
    return std::tie(f.place, f.spot, f.at, f.tenderness, f.restriction, f.sore, f.stiff, f.play, f.familiar, f.certain,
        f.clear.tenderness, f.clear.motion, f.unable);
}

bool earlier(const Finding &a, const Finding &b)
{
    return sortKey(a) < sortKey(b);
}

void sortAll(Visit &visit)
{
    std::sort(visit.findings.begin(), visit.findings.end(), earlier);
    std::sort(visit.complaintAt.begin(), visit.complaintAt.end());
}

// Negative, 0 or positive, as a comes before, with or after b.
int compared(const Visit &a, const Visit &b)
{
    for (const auto &[first, second, sign] : {std::tuple(&a, &b, -1), std::tuple(&b, &a, 1)})
        if (std::lexicographical_compare(
                first->findings.begin(), first->findings.end(), second->findings.begin(), second->findings.end(), earlier))
            return sign;
    return a.complaintAt < b.complaintAt ? -1 : (b.complaintAt < a.complaintAt ? 1 : 0);
}

// All that the spots of one place say together.
struct AtPlace {
    int tenderness = 0;
    bool clearOfTenderness = false;
    bool familiar = false;
    bool motion = false; // found, and certain
    bool clearOfMotion = false; // certain
};

std::map<Place, AtPlace> byPlace(const std::vector<Finding> &findings)
{
    std::map<Place, AtPlace> places;
    for (const Finding &f : findings) {
        if (f.isUnable())
            continue;
        AtPlace &at = places[f.place];
        at.tenderness = std::max(at.tenderness, f.tendernessGrade());
        at.clearOfTenderness = at.clearOfTenderness || f.clear.tenderness || (f.tenderness && f.tenderness->grade == 0);
        at.familiar = at.familiar || f.familiar;
        if (!f.certain)
            continue;
        const bool moved = f.restriction || f.stiff || f.play;
        const bool found = f.restrictionGrade() > 0 || (f.play && f.play->grade != JointPlay::normal);
        at.motion = at.motion || found;
        at.clearOfMotion = at.clearOfMotion || f.clear.motion || (moved && !found);
    }
    return places;
}

} // namespace

double strengthOf(const Finding &finding, const Constants &constants)
{
    if (!finding.isFound())
        return 0;
    double strength = constants["strength-least"];
    strength += constants["strength-tenderness"] * finding.tendernessGrade() / Tenderness::highest;
    const int stiff = finding.restrictionGrade();
    const int play = finding.play ? std::abs(finding.play->grade - JointPlay::normal) : 0; // 3 steps either way, as restriction
    strength += constants["strength-restriction"] * std::max(stiff, play) / Restriction::highest;
    if (finding.familiar)
        strength += constants["strength-familiar"];
    return strength;
}

Canonical canonical(const Visit &visit)
{
    Canonical here{visit, false, false};
    Canonical there{mirrored(visit), true, false};
    sortAll(here.visit);
    sortAll(there.visit);
    const int order = compared(there.visit, here.visit);
    here.isItsOwnImage = order == 0;
    return order < 0 ? there : here;
}

std::vector<double> startOf(const Linkage &linkage, const std::vector<Finding> &findings, const Constants &constants)
{
    std::vector<double> start(linkage.places().size(), 0.0);
    for (const Finding &f : findings) {
        const auto nodes = linkage.nodesOf(f.place);
        for (const std::size_t node : nodes)
            start[node] += strengthOf(f, constants) / static_cast<double>(nodes.size());
    }
    return start;
}

std::vector<std::size_t> foundNodes(const Linkage &linkage, const std::vector<Finding> &findings)
{
    std::set<std::size_t> found;
    for (const Finding &f : findings)
        if (f.isFound())
            for (const std::size_t node : linkage.nodesOf(f.place))
                found.insert(node);
    return {found.begin(), found.end()};
}

std::set<std::size_t> clearNodes(const Linkage &linkage, const std::vector<Finding> &findings)
{
    std::set<std::size_t> clear;
    for (const Finding &f : findings)
        if (f.isClear())
            for (const std::size_t node : linkage.nodesOf(f.place))
                clear.insert(node);
    for (const Finding &f : findings)
        if (f.isFound())
            for (const std::size_t node : linkage.nodesOf(f.place))
                clear.erase(node);
    return clear;
}

std::set<std::size_t> examinedNodes(const Linkage &linkage, const std::vector<Finding> &findings)
{
    std::set<std::size_t> examined;
    for (const Finding &f : findings) {
        std::vector<StructureId> structures = linkage.atlas().partsOf(f.place.structure);
        structures.push_back(f.place.structure);
        for (const StructureId &id : structures)
            for (const std::size_t node : linkage.nodesOf({id, f.place.side}))
                examined.insert(node);
    }
    return examined;
}

std::vector<Evidence> evidenceOf(const Linkage &linkage, const std::vector<Finding> &findings, const Constants &constants)
{
    const auto detection = [&](const char *quality, const std::string &leak) {
        return Detection{constants[std::string("detect-") + quality], constants["leak-" + leak]};
    };
    std::vector<Evidence> out;
    for (const auto &[place, at] : byPlace(findings)) {
        const auto nodes = linkage.nodesOf(place);
        const auto say = [&, &p = place](const char *quality, bool isPositive, const Detection &d, double weight) {
            for (const std::size_t node : nodes)
                out.push_back({quality, p, {node, isPositive, d, weight / static_cast<double>(nodes.size())}});
        };
        if (at.tenderness > 0)
            say("tenderness", true, detection("tenderness", "tenderness-" + std::to_string(at.tenderness)), 1);
        else if (at.clearOfTenderness)
            say("tenderness", false, detection("tenderness", "tenderness-1"), 1);
        if (at.familiar)
            say("familiar", true, detection("familiar", "familiar"), 1);
        if (at.motion || at.clearOfMotion)
            say("motion", at.motion, detection("motion", "motion"), constants["weight-motion"]);
    }
    return out;
}

double howOftenFactor(const Structure &structure, std::string_view prefix, const Constants &constants)
{
    if (!structure.seat || structure.seat->howOften == HowOften::Common)
        return 1;
    return constants[std::string(prefix) + std::string(wordOf(howOftenWords, structure.seat->howOften))];
}

Detection touch(const Structure &structure, const Constants &constants)
{
    return {constants["detect-tenderness"] * howOftenFactor(structure, "touch-", constants), constants["leak-tenderness-2"]};
}

} // namespace raphe
