#include "core/reasoning/ReasonTables.h"

#include "core/anatomy/SpinalRoot.h"

#include <algorithm>

namespace raphe {

void symmetrise(std::vector<double> &values, const std::vector<std::size_t> &image)
{
    for (std::size_t i = 0; i < image.size(); ++i)
        if (image[i] > i)
            values[i] = values[image[i]] = (values[i] + values[image[i]]) / 2;
}

namespace {

std::vector<Detection> touches(const Linkage &linkage, const std::vector<std::size_t> &checks, const Constants &constants)
{
    std::vector<Detection> out;
    out.reserve(checks.size());
    for (const std::size_t node : checks)
        out.push_back(touch(linkage.atlas().at(linkage.places()[node].structure), constants));
    return out;
}

} // namespace

ReasonTables::ReasonTables(const Linkage &l, const Regions &r, const Constants &c)
    : linkage(l),
      regions(r),
      constants(c),
      walk(l.graph(), c["restart"], l.mirror()),
      candidates(candidatesOf(l, r.body(), c)),
      reach(walk, l.places().size(), candidates.sources, l.mirror()),
      check(reach, candidates.checks, touches(l, candidates.checks, c)),
      sourceOf(l.places().size(), Between::notASource)
{
    const std::vector<std::size_t> &sources = candidates.sources;
    const std::vector<std::size_t> &checks = candidates.checks;
    for (std::size_t s = 0; s < sources.size(); ++s) {
        sourceOf[sources[s]] = s;
        static_cast<void>(regions.atMark(source(s).structure)); // they remember: the first answer shall not wait for them
    }
    for (const std::size_t node : sources)
        mirroredSource.push_back(sourceOf[linkage.mirror()[node]]);
    for (const std::size_t node : checks)
        mirroredCheck.push_back(
            static_cast<std::size_t>(std::lower_bound(checks.begin(), checks.end(), linkage.mirror()[node]) - checks.begin()));
    findNearRegions();
}

// What one pass of the hands checks: the joints of a complex, and what lies in one layer under one region of the skin. The
// most telling of them stands for the others until it is examined.
std::string ReasonTables::checkedTogether(const Place &place) const
{
    const Structure &structure = linkage.atlas().at(place.structure);
    if (const Joint *joint = linkage.atlas().findJoint(place.structure))
        return std::string(wordOf(complexWords, joint->complex));
    const auto &region = regions.atMark(place.structure);
    return std::string(wordOf(layerWords, structure.layer)) + (region ? " " + region->value : "");
}

// Nearness of every source to where it hurts, 0 to 1: the mean over the places of the complaint, since what is near to all of
// them would explain it whole.
std::vector<double> ReasonTables::near(const std::vector<Place> &complaint) const
{
    std::vector<double> out(candidates.sources.size(), 0.0);
    for (const Place &at : complaint) {
        const std::vector<double> here = nearTo(at);
        for (std::size_t s = 0; s < out.size(); ++s)
            out[s] += here[s] / static_cast<double>(complaint.size());
    }
    return out;
}

std::vector<double> ReasonTables::nearTo(const Place &at) const
{
    const Structure &structure = linkage.atlas().at(at.structure);
    std::vector<double> out;
    std::vector<double> supplying(candidates.sources.size(), 0.0); // the segments of the skin and of the muscles there
    const double ofSkin = constants["near-supplied-skin"];
    const double ofMuscle = constants["near-supplied"];
    if (structure.kind == Kind::SurfaceRegion) {
        out.resize(candidates.sources.size(), 0.0);
        if (const auto near = nearRegion.find(structure.id); near != nearRegion.end())
            for (const auto &[s, value] : near->second)
                if (goTogether(source(s).side, at.side))
                    out[s] = value;
        for (const std::string &root : structure.roots)
            if (const auto segment = segmentOf(root))
                for (const Side side : {Side::Left, Side::Right})
                    if (goTogether(side, at.side)) {
                        double &own = supplying[sourceOf[nodeOf({*segment, side})]];
                        own = std::max(own, ofSkin);
                    }
    } else {
        out = nearTissue(at);
    }
    for (const auto &[muscle, segment] : supplied)
        supplying[segment] = std::max(supplying[segment], ofMuscle * out[muscle]);
    for (std::size_t s = 0; s < out.size(); ++s)
        out[s] = std::max(out[s], supplying[s]);
    return out;
}

// Of every skin region what lies under it by a clear share, and what is felt there when it is in trouble.
void ReasonTables::findNearRegions()
{
    constexpr double clearShare = 0.3; // of the structure's shape; our choice, as for the caution rules
    for (std::size_t s = 0; s < candidates.sources.size(); ++s) {
        std::map<StructureId, double> near;
        for (const auto &[region, share] : regions.over(source(s).structure))
            near[region] = constants["near-over"] * std::min(1.0, share / clearShare);
        if (const auto &seat = linkage.atlas().at(source(s).structure).seat) {
            double felt = constants["near-felt"];
            for (const StructureId &region : seat->feltAt) {
                near[region] = std::max(near[region], felt);
                felt *= constants["near-felt-later"];
            }
        }
        for (const auto &[region, value] : near)
            nearRegion[region].emplace_back(s, value);
    }
    for (const Link &link : linkage.links())
        if (link.kind == LinkKind::Supplied)
            supplied.emplace_back(sourceOf[link.a], sourceOf[link.b]);
}

// Of any other place: what it reaches, against the place that it reaches best.
std::vector<double> ReasonTables::nearTissue(const Place &place) const
{
    std::vector<double> out(candidates.sources.size(), 0.0);
    for (const std::size_t node : linkage.nodesOf(place)) {
        const auto column = reach.at(node);
        double most = 0;
        for (const std::size_t other : candidates.checks)
            most = std::max(most, column[sourceOf[other]]);
        if (most > 0)
            for (std::size_t s = 0; s < out.size(); ++s)
                out[s] = std::max(out[s], std::min(1.0, column[s] / most));
    }
    return out;
}

std::vector<double> ReasonTables::priorFor(const std::vector<Place> &complaint) const
{
    std::vector<double> prior = candidates.prior;
    const std::vector<double> nearness = near(complaint);
    for (std::size_t s = 0; s < nearness.size(); ++s)
        prior[s] *= 1 + constants["prior-complaint"] * nearness[s];
    return prior;
}

} // namespace raphe
