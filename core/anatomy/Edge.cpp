#include "core/anatomy/Edge.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace raphe {

std::optional<Edge> edgeOf(const Atlas &atlas, const StructureId &id)
{
    const Structure *structure = atlas.find(id);
    if (!structure || !structure->border)
        return std::nullopt;
    Edge edge{id, *structure->border, {}};
    for (const Structure &s : atlas.structures())
        for (const Attachment &head : s.attachments)
            if (const Along *along = head.alongOf(id)) {
                const bool origin = std::find(head.origins.begin(), head.origins.end(), id) != head.origins.end();
                edge.stretches.push_back({s.id, head.head, origin, *along, head.evidence, head.sources});
            }
    const auto key = [](const Stretch &s) { return std::tie(s.along.from, s.along.to, s.structure, s.head); };
    std::sort(edge.stretches.begin(), edge.stretches.end(), [&](const Stretch &a, const Stretch &b) { return key(a) < key(b); });
    return edge;
}

Millimetres lengthOf(const Border &border, double from, double to, Millimetres stature)
{
    return {border.lengthOverStature * (to - from) * stature.value};
}

int stepsOver(Millimetres length, Millimetres step)
{
    return std::max(1, static_cast<int>(std::ceil(length.value / step.value)));
}

} // namespace raphe
