#include "core/treatment/OwnAdvice.h"

#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

using namespace content;

namespace {

constexpr std::size_t adviceAtMost = 200;

} // namespace

std::vector<OwnAdvice> readOwnAdvice(const JsonReader &at)
{
    std::vector<OwnAdvice> out;
    for (const JsonReader &item : at.items(0, adviceAtMost)) {
        item.expectObject({"id", "title", "text"});
        OwnAdvice advice;
        advice.id = readNewId(item, out);
        advice.title = readText(item, "title");
        advice.text = readText(item, "text");
        out.push_back(std::move(advice));
    }
    return out;
}

nlohmann::ordered_json ownAdviceJson(const std::vector<OwnAdvice> &advice)
{
    auto json = nlohmann::ordered_json::array();
    for (const OwnAdvice &own : advice)
        json.push_back({{"id", own.id}, {"title", own.title}, {"text", own.text}});
    return json;
}

HomeAdvice withOwn(HomeAdvice known, const std::vector<OwnAdvice> &own)
{
    std::vector<HomeAdviceItem> fresh;
    for (const OwnAdvice &advice : own) {
        const auto same =
            std::find_if(known.items.begin(), known.items.end(), [&](const HomeAdviceItem &i) { return i.id == advice.id; });
        HomeAdviceItem item = same == known.items.end() ? HomeAdviceItem{} : *same;
        item.id = advice.id;
        item.title = advice.title;
        item.text = advice.text;
        item.stop.clear();
        item.source = "your own";
        if (same != known.items.end()) {
            *same = std::move(item);
        } else {
            item.regions = {"anywhere"};
            fresh.push_back(std::move(item));
        }
    }
    known.items.insert(known.items.begin(), fresh.begin(), fresh.end());
    return known;
}

std::string newAdviceId(const std::vector<OwnAdvice> &own)
{
    for (std::size_t i = 1;; ++i) {
        std::string id = "own-" + std::to_string(i);
        if (std::none_of(own.begin(), own.end(), [&](const OwnAdvice &advice) { return advice.id == id; }))
            return id;
    }
}

} // namespace raphe
