// raphe-batch edge: how long an edge is in a patient, and who attaches along it (resources/schema/edge.schema.json).
#include "app/batch/Commands.h"

#include "core/anatomy/AtlasReader.h"
#include "core/anatomy/Edge.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <iostream>

namespace raphe::batch {

Result<Done> printEdge(const std::string &structure, double stature)
{
    if (!(stature >= leastStature.value && stature <= greatestStature.value))
        return Error{ErrorCode::BadArgument, "--stature",
            "the stature is in millimetres, from " + std::to_string(std::lround(leastStature.value)) + " to "
                + std::to_string(std::lround(greatestStature.value))};
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    const auto edge = edgeOf(atlas.value(), {structure});
    if (!edge)
        return Error{ErrorCode::BadArgument, "--structure", "'" + structure + "' is no edge of the atlas; iliac-crest is one"};
    const Millimetres patient{stature};
    const Millimetres whole = lengthOf(edge->border, 0, 1, patient);
    nlohmann::ordered_json attached = nlohmann::ordered_json::array();
    for (const Stretch &s : edge->stretches)
        attached.push_back({{"structure", s.structure.value}, {"head", s.head}, {"role", s.origin ? "origin" : "insertion"},
            {"from", s.along.from}, {"to", s.along.to}, {"from_mm", lengthOf(edge->border, 0, s.along.from, patient).value},
            {"to_mm", lengthOf(edge->border, 0, s.along.to, patient).value}, {"evidence", wordOf(gradeWords, s.evidence)},
            {"sources", s.sources}});
    const nlohmann::ordered_json out{{"structure", structure}, {"from", edge->border.from}, {"to", edge->border.to},
        {"stature_mm", stature}, {"length_mm", whole.value}, {"step_mm", customaryStep.value}, {"steps", stepsOver(whole)},
        {"sources", edge->border.sources}, {"note", edge->border.note}, {"attached", attached}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
