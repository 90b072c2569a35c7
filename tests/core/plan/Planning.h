// What a plan is made with, read once for all tests of a run.
#pragma once

#include "core/plan/SessionPlan.h"
#include "tests/support/Content.h"

#include <stdexcept>

namespace raphe::test {

template <class T> T planContent(Result<T> read)
{
    if (!read)
        throw std::runtime_error(inWords(read.error()));
    return std::move(read).value();
}

inline const Techniques &techniques()
{
    static const Techniques read = planContent(readEmbeddedTechniques(safetyRules()));
    return read;
}

inline const Access &access()
{
    static const Access read = planContent(readEmbeddedAccess(regions()));
    return read;
}

inline const Planner &planner()
{
    static const Planner made(adviser(), regions(), techniques(), access());
    return made;
}

} // namespace raphe::test
