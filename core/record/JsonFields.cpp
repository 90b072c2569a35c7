#include "core/record/JsonFields.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

bool isTime(std::string_view text)
{
    constexpr std::string_view pattern = "dd:dd:dd";
    const bool shaped = std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(),
        [](char c, char p) { return p == 'd' ? c >= '0' && c <= '9' : c == p; });
    return shaped && text.substr(0, 2) < "24" && text[3] < '6' && text[6] < '6';
}

} // namespace

std::string readForeignId(const JsonReader &at)
{
    std::string id = at.asString();
    if (!isWellFormed(StructureId{id}))
        at.fail(ErrorCode::BadId, id);
    return id;
}

nlohmann::ordered_json placeJson(const Place &place)
{
    return {{"structure", place.structure.value}, {"side", wordOf(sideWords, place.side)}};
}

std::string readTimeOfDay(const JsonReader &at)
{
    std::string time = at.asString();
    if (!isTime(time))
        at.fail(ErrorCode::WrongFormat, time);
    return time;
}

} // namespace raphe
