// How long whoever mistyped a passphrase waits for the next try: long enough to make guessing at the keyboard hopeless, too short
// to keep the owner out. Guessing on a copy of the file is slowed by the derivation of keys alone. A pure function; any thread.
#pragma once

#include <chrono>

namespace raphe {

/// After so many wrong tries in a row: nothing for the first two, which are slips of the fingers, then 1 s, doubling with each to
/// at most 30 s. Our choice, no source.
[[nodiscard]] std::chrono::seconds unlockDelay(int failures);

} // namespace raphe
