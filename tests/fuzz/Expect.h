// What a fuzz target holds to be true whatever it is fed: a broken promise ends the process, which the fuzzer keeps as a crash.
#pragma once

#include <cstdio>
#include <cstdlib>
#include <string>

namespace raphe::fuzz {

inline void expect(bool holds, const char *promise, const std::string &seen = {})
{
    if (holds)
        return;
    std::fprintf(stderr, "broken promise: %s: %s\n", promise, seen.c_str());
    std::abort();
}

} // namespace raphe::fuzz
