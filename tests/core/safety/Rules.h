// What the caution rules that are built into the program say of a visit, for the tests of this folder.
#pragma once

#include "tests/support/Content.h"

#include "core/safety/Cautions.h"

#include <stdexcept>

namespace raphe::test {

/// The cautions of a visit that is meant to be correct.
inline Cautions cautionsOf(const Visit &visit)
{
    auto cautions = Cautions::of(safetyRules(), regions(), visit, "visit.json");
    if (!cautions)
        throw std::runtime_error("the visit is refused: " + inWords(cautions.error()));
    return std::move(cautions).value();
}

/// A visit in which nothing is known but one condition.
inline Visit visitWith(const std::string &condition, const std::vector<Place> &at = {})
{
    Visit visit;
    visit.conditions = {{condition, at}};
    return visit;
}

/// What this rule says at a place; nullptr when it does not hold there.
inline const CautionVerdict *verdictOf(const std::vector<CautionVerdict> &verdicts, const std::string &rule)
{
    for (const CautionVerdict &v : verdicts)
        if (v.rule == rule)
            return &v;
    return nullptr;
}

inline bool holds(const Cautions &cautions, const std::string &rule, const Place &place)
{
    return verdictOf(cautions.at(place), rule) != nullptr;
}

} // namespace raphe::test
