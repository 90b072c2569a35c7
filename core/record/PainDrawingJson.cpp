#include "core/record/PainDrawingJson.h"

#include <nlohmann/json.hpp>

namespace raphe {

namespace {

using Json = nlohmann::ordered_json;

Point readPoint(const JsonReader &at)
{
    const auto numbers = at.items(2, 2);
    return {numbers[0].asNumber(viewFrame.left, viewFrame.right) + 0.0, // + 0.0: -0 becomes 0
        numbers[1].asNumber(viewFrame.top, viewFrame.bottom) + 0.0};
}

// `left`: how many points the drawing may still take.
BrushStroke readStroke(const JsonReader &at, std::size_t &left)
{
    at.expectObject({"radius", "points"});
    BrushStroke stroke;
    stroke.radius = at.field("radius").asNumber(PainLimits::leastRadius, PainLimits::greatestRadius);
    const JsonReader points = at.field("points");
    const auto items = points.items(1, PainLimits::points);
    if (items.size() > left)
        points.fail(ErrorCode::OutOfRange, "too many points, allowed in all: " + std::to_string(PainLimits::pointsOfAll));
    left -= items.size();
    stroke.points.reserve(items.size());
    for (const JsonReader &item : items)
        stroke.points.push_back(readPoint(item));
    return stroke;
}

PainPatch readPatch(const JsonReader &at, std::size_t &left)
{
    at.expectObject({"view", "facing", "strokes", "quality", "intensity", "painter", "confirmed"});
    PainPatch patch;
    patch.view = readWord(viewWords, at.field("view"));
    if (isWhole(patch.view)) {
        patch.facing = readWord(sideWords, at.field("facing"));
        if (patch.facing == Side::Midline)
            at.field("facing").fail(ErrorCode::OutOfRange, "midline, allowed: left or right");
    } else if (at.has("facing"))
        at.field("facing").fail(ErrorCode::Contradiction, "facing, view " + std::string(wordOf(viewWords, patch.view)));
    for (const JsonReader &item : at.field("strokes").items(1, PainLimits::strokes))
        patch.strokes.push_back(readStroke(item, left));
    if (at.has("quality"))
        patch.quality = readWord(painQualityWords, at.field("quality"));
    if (at.has("intensity"))
        patch.intensity = PainScore{at.field("intensity").asInt(0, PainScore::highest)};
    patch.painter = readWord(painterWords, at.field("painter"));
    patch.confirmed = at.has("confirmed") && at.field("confirmed").asBool();
    return patch;
}

Json patchJson(const PainPatch &patch)
{
    Json json;
    json["view"] = wordOf(viewWords, patch.view);
    if (isWhole(patch.view))
        json["facing"] = wordOf(sideWords, patch.facing);
    if (patch.quality)
        json["quality"] = wordOf(painQualityWords, *patch.quality);
    if (patch.intensity)
        json["intensity"] = patch.intensity->value;
    json["painter"] = wordOf(painterWords, patch.painter);
    if (patch.confirmed)
        json["confirmed"] = true;
    json["strokes"] = Json::array();
    for (const BrushStroke &stroke : patch.strokes) {
        Json points = Json::array();
        for (const Point &p : stroke.points)
            points.push_back(Json::array({p.x, p.y}));
        json["strokes"].push_back({{"radius", stroke.radius}, {"points", std::move(points)}});
    }
    return json;
}

} // namespace

std::vector<PainPatch> readPainDrawing(const JsonReader &at)
{
    std::size_t left = PainLimits::pointsOfAll;
    std::vector<PainPatch> pain;
    for (const JsonReader &item : at.items(0, PainLimits::patches))
        pain.push_back(readPatch(item, left));
    return pain;
}

nlohmann::ordered_json painDrawingJson(const std::vector<PainPatch> &pain)
{
    Json json = Json::array();
    for (const PainPatch &patch : pain)
        json.push_back(patchJson(patch));
    return json;
}

} // namespace raphe
