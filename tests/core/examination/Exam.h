// The examination content that is built into the program, read once for all tests of a run.
#pragma once

#include "core/examination/Examination.h"
#include "tests/support/Content.h"

#include <stdexcept>

namespace raphe::test {

inline const Examination &examination()
{
    static const Examination read = [] {
        auto result = readEmbeddedExamination(atlas(), safetyRules());
        if (!result)
            throw std::runtime_error(inWords(result.error()));
        return std::move(result).value();
    }();
    return read;
}

} // namespace raphe::test
