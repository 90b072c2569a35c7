// Pieces of JSON that several verbs print.
#pragma once

#include "core/record/CautionVerdict.h"

#include <nlohmann/json.hpp>

#include <vector>

namespace raphe::batch {

using Json = nlohmann::ordered_json;

[[nodiscard]] inline Json placeJson(const Place &place)
{
    return {{"structure", place.structure.value}, {"side", wordOf(sideWords, place.side)}};
}

[[nodiscard]] inline Json verdictsJson(const std::vector<CautionVerdict> &verdicts)
{
    Json out = Json::array();
    for (const CautionVerdict &v : verdicts)
        out.push_back({{"verdict", wordOf(verdictWords, v.verdict)}, {"actions", v.actions}, {"reason", v.reason},
            {"rule", v.rule}, {"condition", v.condition.empty() ? Json(nullptr) : Json(v.condition)}, {"source", v.source}});
    return out;
}

} // namespace raphe::batch
