// What the benchmarks know: the content that is built into the program, read once.
#pragma once

#include "core/anatomy/AtlasReader.h"
#include "core/reasoning/Knowledge.h"

namespace raphe {

inline const Knowledge &knowledge()
{
    static const auto read = readKnowledge();
    return read.value();
}

inline const Atlas &atlas()
{
    return *knowledge().atlas;
}

} // namespace raphe
