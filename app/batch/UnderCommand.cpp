// raphe-batch under: what lies under a point of a view, outside in (resources/schema/under.schema.json).
#include "app/batch/Commands.h"

#include "core/reasoning/Knowledge.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace raphe::batch {

Result<Done> printUnder(const std::string &view, const std::string &facing, double x, double y)
{
    const auto which = fromWord(viewWords, view);
    if (!which)
        return Error{ErrorCode::BadArgument, "--view",
            "'" + view + "' is not a view; the views are front, back, side, sole, palm and head"};
    const auto side = fromWord(sideWords, facing);
    if (!side || *side == Side::Midline)
        return Error{ErrorCode::BadArgument, "--facing", "'" + facing + "' is not a side; right or left is"};
    if (!(x >= -500 && x <= 500 && y >= 0 && y <= 1000))
        return Error{
            ErrorCode::BadArgument, "--x, --y", "the point is off the drawing; x runs from -500 to 500, y from 0 to 1000"};
    const auto read = readKnowledge();
    if (!read)
        return read.error();
    auto out = nlohmann::ordered_json::array();
    for (const UnderHit &hit : read.value().body->of(*which).under(*read.value().atlas, {x, y}, *side))
        out.push_back({{"structure", hit.place.structure.value}, {"side", wordOf(sideWords, hit.place.side)},
            {"layer", wordOf(layerWords, hit.layer)},
            {"kind", wordOf(kindWords, read.value().atlas->at(hit.place.structure).kind)},
            {"name", read.value().atlas->spoken(hit.place)}});
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
