// What several published checks ask of the atlas.
#pragma once

#include "core/anatomy/Atlas.h"

#include <set>
#include <string>

namespace raphe::test {

[[nodiscard]] inline std::set<std::string> jointsCrossedBy(const Atlas &atlas, const std::string &muscle)
{
    std::set<std::string> joints;
    for (const Crossing &c : atlas.crossings())
        if (c.muscle.value == muscle)
            joints.insert(c.joint.value);
    return joints;
}

[[nodiscard]] inline std::set<std::string> musclesCrossing(const Atlas &atlas, const std::string &joint)
{
    std::set<std::string> muscles;
    for (const Crossing &c : atlas.crossings())
        if (c.joint.value == joint)
            muscles.insert(c.muscle.value);
    return muscles;
}

} // namespace raphe::test
