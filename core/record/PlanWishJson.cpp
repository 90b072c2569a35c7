#include "core/record/PlanWishJson.h"

#include "core/record/JsonFields.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

using Json = nlohmann::ordered_json;

// What was said of one place in the plan.
void readPlanned(const JsonReader &at, const Place &place, PlanWish &into)
{
    const auto says = [&](std::string_view name) { return at.has(name) && at.field(name).asBool(); };
    if (into.pinned.contains(place) || into.dropped.contains(place) || into.byHand.contains(place))
        at.fail(ErrorCode::Duplicate, place.structure.value);
    if (says("pinned"))
        into.pinned.insert(place);
    if (says("dropped"))
        into.dropped.insert(place);
    if (into.pinned.contains(place) && into.dropped.contains(place))
        at.fail(ErrorCode::Contradiction, "pinned, dropped");
    if (at.has("technique"))
        into.byHand.emplace(place, readForeignId(at.field("technique")));
    if (!says("pinned") && !says("dropped") && !at.has("technique"))
        at.fail(ErrorCode::MissingField, "pinned, dropped or technique");
}

Json plannedJson(const PlanWish &wish, const Place &place)
{
    Json json = placeJson(place);
    if (wish.pinned.contains(place))
        json["pinned"] = true;
    if (wish.dropped.contains(place))
        json["dropped"] = true;
    if (const auto technique = wish.byHand.find(place); technique != wish.byHand.end())
        json["technique"] = technique->second;
    return json;
}

} // namespace

PlanWish readPlanWish(const JsonReader &at, const std::function<Place(const JsonReader &)> &readPlace)
{
    at.expectObject({"minutes", "barred", "refused", "places", "order"});
    PlanWish out;
    if (at.has("minutes"))
        out.minutes = at.field("minutes").asInt(0, PlanWish::mostMinutes);
    if (at.has("barred"))
        for (const JsonReader &item : at.field("barred").items())
            if (!out.barred.insert(readWord(positionWords, item)).second)
                item.fail(ErrorCode::Duplicate, item.asString());
    if (at.has("refused"))
        for (const JsonReader &item : at.field("refused").items())
            if (!out.refused.insert(readForeignId(item)).second)
                item.fail(ErrorCode::Duplicate, item.asString());
    if (at.has("places"))
        for (const JsonReader &item : at.field("places").items()) {
            item.expectObject({"structure", "side", "pinned", "dropped", "technique"});
            readPlanned(item, readPlace(item), out);
        }
    if (at.has("order"))
        for (const JsonReader &item : at.field("order").items()) {
            item.expectObject({"first", "then"});
            const auto end = [&](std::string_view name) {
                const JsonReader place = item.field(name);
                place.expectObject({"structure", "side"});
                return readPlace(place);
            };
            std::pair pair(end("first"), end("then"));
            if (pair.first == pair.second)
                item.fail(ErrorCode::Contradiction, "first, then");
            if (std::find(out.ordered.begin(), out.ordered.end(), pair) != out.ordered.end())
                item.fail(ErrorCode::Duplicate, pair.first.structure.value);
            out.ordered.push_back(std::move(pair));
        }
    return out;
}

Json planWishJson(const PlanWish &wish)
{
    Json json = Json::object();
    if (wish.minutes)
        json["minutes"] = *wish.minutes;
    for (const Position position : wish.barred)
        json["barred"].push_back(wordOf(positionWords, position));
    if (!wish.refused.empty())
        json["refused"] = wish.refused;
    std::set<Place> places = wish.pinned;
    places.insert(wish.dropped.begin(), wish.dropped.end());
    for (const auto &[place, technique] : wish.byHand)
        places.insert(place);
    for (const Place &place : places)
        json["places"].push_back(plannedJson(wish, place));
    for (const auto &[first, then] : wish.ordered)
        json["order"].push_back({{"first", placeJson(first)}, {"then", placeJson(then)}});
    return json;
}

} // namespace raphe
