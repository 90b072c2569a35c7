// How often a property is tried at random.
#pragma once

#include <algorithm>
#include <cstdlib>

namespace raphe::test {

/// RAPHE_CASES, 200 when it is not set.
inline int casesWanted()
{
    const char *wanted = std::getenv("RAPHE_CASES"); // NOLINT(concurrency-mt-unsafe): nothing else reads or sets it
    return wanted ? std::max(1, std::atoi(wanted)) : 200;
}

} // namespace raphe::test
