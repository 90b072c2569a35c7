#include "core/reasoning/Trace.h"

#include <algorithm>
#include <deque>
#include <map>
#include <set>
#include <tuple>

namespace raphe {

namespace {

// Rings along continuities; within a ring the path whose weakest link is best known wins.
void followContinuities(const Linkage &linkage, std::size_t start, std::vector<Traced> &out)
{
    std::map<std::size_t, std::vector<PathStep>> ring{{start, {}}};
    std::set<std::size_t> seen{start};
    for (std::size_t step = 0; step < traceStepsAtMost; ++step) {
        std::map<std::size_t, std::vector<PathStep>> next;
        for (const auto &[node, path] : ring) {
            for (const std::size_t index : linkage.linksAt(node)) {
                const Link &link = linkage.links()[index];
                const std::size_t to = link.other(node);
                if (link.kind != LinkKind::Continues || seen.contains(to))
                    continue;
                auto longer = path;
                longer.push_back(stepOver(linkage, link, node));
                const auto it = next.find(to);
                if (it == next.end() || weakestOf(longer) < weakestOf(it->second))
                    next[to] = std::move(longer);
            }
        }
        for (const auto &[node, path] : next) {
            seen.insert(node);
            out.push_back({linkage.places()[node], TraceGroup::Continuity, path});
        }
        ring = std::move(next);
    }
}

void followNeighbours(const Linkage &linkage, std::size_t start, std::vector<Traced> &out)
{
    const Atlas &atlas = linkage.atlas();
    std::set<Place> sharing;
    for (const std::size_t index : linkage.linksAt(start)) {
        const Link &link = linkage.links()[index];
        const PathStep step = stepOver(linkage, link, start);
        switch (link.kind) {
        case LinkKind::Crosses: out.push_back({step.to, TraceGroup::AcrossJoint, {step}}); break;
        case LinkKind::Overlies: out.push_back({step.to, TraceGroup::Neighbour, {step}}); break;
        case LinkKind::Attaches: {
            const std::size_t area = link.other(start);
            if (atlas.at(step.to.structure).kind != Kind::Landmark && sharing.insert(step.to).second)
                out.push_back({step.to, TraceGroup::SharedAttachment, {step}});
            for (const std::size_t second : linkage.linksAt(area)) {
                const Link &onward = linkage.links()[second];
                const PathStep further = stepOver(linkage, onward, area);
                if (onward.kind == LinkKind::Attaches && onward.other(area) != start && sharing.insert(further.to).second)
                    out.push_back({further.to, TraceGroup::SharedAttachment, {step, further}});
            }
            break;
        }
        case LinkKind::Continues:
        case LinkKind::PartOf:
        case LinkKind::Supplied:
        case LinkKind::Adjoins:
        case LinkKind::Synergist:
        case LinkKind::Opposes:
        case LinkKind::OtherSide: break;
        }
    }
}

} // namespace

std::vector<Traced> trace(const Linkage &linkage, const Place &from)
{
    // Computed on the left and mirrored back, so that of several equally good paths both sides get the same one.
    const bool isMirrored = from.side == Side::Right;
    std::vector<Traced> out;
    for (const std::size_t start : linkage.nodesOf(isMirrored ? mirrored(from) : from)) {
        followContinuities(linkage, start, out);
        followNeighbours(linkage, start, out);
    }
    if (isMirrored)
        for (Traced &traced : out) {
            traced.place = mirrored(traced.place);
            traced.path = mirrored(std::move(traced.path));
        }
    const auto key = [&](const Traced &t) { return std::tuple(t.group, t.path.size(), weakestOf(t.path), t.place); };
    std::stable_sort(out.begin(), out.end(), [&](const Traced &a, const Traced &b) { return key(a) < key(b); });
    return out;
}

} // namespace raphe
