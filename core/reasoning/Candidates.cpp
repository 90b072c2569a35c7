#include "core/reasoning/Candidates.h"

#include "core/reasoning/Evidence.h"
#include "core/reasoning/Position.h"

#include <map>
#include <numeric>
#include <set>

namespace raphe {

namespace {

// Name of the constant; none for bones, nerves and the skin itself, which are not ranked.
std::string_view priorOf(const Atlas &atlas, const Structure &structure)
{
    switch (structure.kind) {
    case Kind::Muscle: return "prior-muscle";
    case Kind::Fascia: return "prior-fascia";
    case Kind::Ligament: return "prior-ligament";
    case Kind::Tendon: return "prior-tendon";
    case Kind::Joint: return atlas.isSpinalSegment(structure.id) ? "prior-segment" : "prior-joint";
    case Kind::SuperficialFascia: return "prior-superficial-fascia";
    default: return {};
    }
}

} // namespace

Candidates candidatesOf(const Linkage &linkage, const Body &body, const Constants &constants)
{
    const Atlas &atlas = linkage.atlas();
    std::set<StructureId> wholes;
    for (const Structure &s : atlas.structures())
        if (s.partOf && s.kind != Kind::Landmark)
            wholes.insert(*s.partOf);
    std::map<StructureId, bool> isDrawn;
    Candidates out;
    for (std::size_t node = 0; node < linkage.places().size(); ++node) {
        const Place &place = linkage.places()[node];
        const Structure &structure = atlas.at(place.structure);
        const std::string_view name = priorOf(atlas, structure);
        if (name.empty())
            continue;
        out.sources.push_back(node);
        out.prior.push_back(constants[name] * howOftenFactor(structure, "seat-", constants));
        out.isWhole.push_back(wholes.contains(place.structure));
        const auto [it, fresh] = isDrawn.try_emplace(place.structure, false);
        if (fresh)
            it->second = positionFor(body, place).has_value();
        if (structure.kind != Kind::SuperficialFascia && !out.isWhole.back() && it->second)
            out.checks.push_back(node);
    }
    const double sum = std::accumulate(out.prior.begin(), out.prior.end(), 0.0);
    for (double &p : out.prior)
        p /= sum;
    out.prior.push_back(constants["prior-unexplained"]);
    return out;
}

} // namespace raphe
