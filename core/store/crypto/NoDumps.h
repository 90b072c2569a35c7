// Keeps this process out of core dumps and away from other programs of the same user that would read its memory. For the first
// lines of main(); after a re-execution it has to be said again.
#pragma once

namespace raphe {

/// False when the system does not know how: nothing else changes then.
bool refuseDumps();

} // namespace raphe
