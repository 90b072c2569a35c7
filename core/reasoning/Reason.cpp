#include "core/reasoning/Reason.h"

#include "core/reasoning/Spread.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>
#include <tuple>

namespace raphe {

namespace {

auto sortKey(const Finding &f)
{
    return std::tuple(
        f.place, f.spot, f.at, f.tenderness, f.restriction, f.familiar, f.clear.tenderness, f.clear.motion, f.unable);
}

bool earlier(const Finding &a, const Finding &b)
{
    return sortKey(a) < sortKey(b);
}

// What hands can examine and treat as a tissue of its own; the skin, bones and nerves are not ranked.
bool isRanked(const Structure &structure)
{
    switch (structure.kind) {
    case Kind::Muscle:
    case Kind::Fascia:
    case Kind::Ligament:
    case Kind::Tendon:
    case Kind::Joint: return true;
    default: return false;
    }
}

// Nodes that are clear and at which nothing was found either: not at another spot, not of the other quality.
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

// The values as the mirror image has them.
std::vector<double> mirroredValues(const Linkage &linkage, const std::vector<double> &values)
{
    std::vector<double> out(values.size());
    for (std::size_t node = 0; node < values.size(); ++node)
        out[linkage.nodesOf(mirrored(linkage.places()[node])).front()] = values[node];
    return out;
}

bool isItsOwnMirrorImage(const std::vector<Finding> &sorted)
{
    std::vector<Finding> image;
    image.reserve(sorted.size());
    for (const Finding &f : sorted)
        image.push_back(mirrored(f));
    std::sort(image.begin(), image.end(), earlier);
    return std::equal(sorted.begin(), sorted.end(), image.begin(), image.end(),
        [](const Finding &a, const Finding &b) { return sortKey(a) == sortKey(b); });
}

std::string whyLinked(const Atlas &atlas, const std::vector<PathStep> &path)
{
    if (path.empty())
        return QCoreApplication::translate("Reason", "Found here.").toStdString();
    return QCoreApplication::translate("Reason", "%1: %2.")
        .arg(QString::fromStdString(pathInWords(atlas, path)), QString::fromStdString(gradeInWords(weakestOf(path))))
        .toStdString();
}

} // namespace

double strengthOf(const Finding &finding, const Constants &constants)
{
    if (!finding.isFound())
        return 0;
    double strength = constants["strength-least"];
    if (finding.tenderness)
        strength += constants["strength-tenderness"] * finding.tenderness->grade / Tenderness::highest;
    if (finding.restriction)
        strength += constants["strength-restriction"] * finding.restriction->grade / Restriction::highest;
    if (finding.familiar)
        strength += constants["strength-familiar"];
    return strength;
}

Canonical canonical(const Visit &visit)
{
    Canonical here{visit, false};
    Canonical there{mirrored(visit), true};
    std::sort(here.visit.findings.begin(), here.visit.findings.end(), earlier);
    std::sort(there.visit.findings.begin(), there.visit.findings.end(), earlier);
    const bool mirrorFirst = std::lexicographical_compare(there.visit.findings.begin(), there.visit.findings.end(),
        here.visit.findings.begin(), here.visit.findings.end(), earlier);
    return mirrorFirst ? there : here;
}

std::vector<double> liftOf(const Linkage &linkage, const std::vector<Finding> &findings, const Constants &constants)
{
    Visit visit;
    visit.findings = findings;
    const Canonical c = canonical(visit);
    std::vector<double> start(linkage.places().size(), 0.0);
    std::vector<bool> absorbing(linkage.places().size(), false);
    for (const Finding &f : c.visit.findings) {
        const auto nodes = linkage.nodesOf(f.place);
        for (const std::size_t node : nodes)
            start[node] += strengthOf(f, constants) / static_cast<double>(nodes.size());
    }
    for (const std::size_t node : clearNodes(linkage, c.visit.findings))
        absorbing[node] = true;
    std::vector<double> lifts = lift(linkage, start, absorbing, constants["restart"]);
    if (c.isMirrored)
        return mirroredValues(linkage, lifts);
    if (isItsOwnMirrorImage(c.visit.findings)) { // rounding must not tell left from right
        const std::vector<double> image = mirroredValues(linkage, lifts);
        for (std::size_t node = 0; node < lifts.size(); ++node)
            lifts[node] = (lifts[node] + image[node]) / 2;
    }
    return lifts;
}

void rankAndCut(std::vector<Suggestion> &list)
{
    std::sort(list.begin(), list.end(),
        [](const Suggestion &a, const Suggestion &b) { return a.score != b.score ? a.score > b.score : a.place < b.place; });
    for (std::size_t i = 0; i < list.size(); ++i)
        list[i].rank = i > 0 && list[i].score == list[i - 1].score ? list[i - 1].rank : static_cast<int>(i) + 1;
    if (list.size() > suggestionsAtMost)
        list.resize(suggestionsAtMost);
}

void mirrorAll(std::vector<Suggestion> &list)
{
    for (Suggestion &s : list) {
        s.place = mirrored(s.place);
        for (PathStep &step : s.path) {
            step.from = mirrored(step.from);
            step.to = mirrored(step.to);
        }
    }
}

Reasons reason(const Linkage &linkage, const Visit &visit, const Constants &constants)
{
    const Canonical c = canonical(visit);
    const std::vector<double> lifts = liftOf(linkage, c.visit.findings, constants);

    std::vector<std::size_t> starts;
    const std::set<std::size_t> clear = clearNodes(linkage, c.visit.findings);
    std::set<std::size_t> examined;
    for (const Finding &f : c.visit.findings)
        for (const std::size_t node : linkage.nodesOf(f.place)) {
            examined.insert(node);
            if (f.isFound())
                starts.push_back(node);
        }
    const PathTree paths(linkage, starts);

    Reasons out;
    const double least = 1e-12; // what the walk does not reach at all is not a suggestion
    for (std::size_t node = 0; node < lifts.size(); ++node) {
        const Place &place = linkage.places()[node];
        if (lifts[node] <= least || clear.contains(node) || !isRanked(linkage.atlas().at(place.structure)))
            continue;
        const Suggestion s{place, lifts[node], 0, {{"spread", lifts[node]}}, {}, {}};
        out.explain.push_back(s);
        if (!examined.contains(node))
            out.check.push_back(s);
    }
    for (auto *list : {&out.explain, &out.check}) {
        rankAndCut(*list);
        for (Suggestion &s : *list)
            s.path = paths.to(linkage.nodesOf(s.place).front());
        if (c.isMirrored)
            mirrorAll(*list);
        for (Suggestion &s : *list)
            s.why = whyLinked(linkage.atlas(), s.path);
    }
    return out;
}

} // namespace raphe
