// The program from its command line to its end: set-up or unlocking, the window, locking. A lock ends everything that holds
// plain text or keys and executes the program anew, so that no copy of them stays in its memory.
#pragma once

namespace raphe {

/// Returns the exit status.
int runProgram(int argc, char **argv);

} // namespace raphe
