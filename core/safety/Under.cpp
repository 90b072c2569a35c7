#include "core/safety/Under.h"

#include <algorithm>

namespace raphe {

bool isUnder(const Regions &regions, const StructureId &id, const std::vector<StructureId> &skin)
{
    const std::map<StructureId, double> &over = regions.over(id);
    double share = 0;
    for (const StructureId &region : skin)
        if (const auto it = over.find(region); it != over.end())
            share += it->second;
    if (share >= leastUnder || share <= 0)
        return share > 0;
    const auto &mark = regions.atMark(id);
    return mark && std::find(skin.begin(), skin.end(), *mark) != skin.end();
}

} // namespace raphe
