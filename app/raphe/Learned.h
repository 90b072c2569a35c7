// What the program knows of the body, of caution, of examining and of trade talk: read once at the start, beside the window.
// Immutable; thread-safe.
#pragma once

#include "core/base/Result.h"
#include "core/examination/Examination.h"
#include "core/language/LineWords.h"
#include "core/plan/Access.h"
#include "core/plan/Advice.h"
#include "core/plan/Technique.h"
#include "core/reasoning/Knowledge.h"
#include "core/safety/TechniqueGroups.h"
#include "core/treatment/HomeAdvice.h"

#include <memory>
#include <vector>

namespace raphe {

struct Learned {
    Knowledge knowledge;
    Adviser adviser;
    std::vector<TechniqueGroup> groups;
    Examination examination;
    LineWords lineWords;
    Techniques techniques; // of the program; a practice has its own besides
    Access access;
    HomeAdvice homeAdvice;
};

[[nodiscard]] Result<std::shared_ptr<const Learned>> learn();

} // namespace raphe
