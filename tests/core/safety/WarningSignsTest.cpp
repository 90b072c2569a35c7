// The reader of the warning signs: the shipped ones are accepted, and each mistake is refused with file and place.
#include "tests/core/safety/Rules.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace raphe::test {

namespace {

using nlohmann::json;

void expectRefused(const json &spoilt, ErrorCode code, const std::string &place, const std::string &detail)
{
    const auto read = readWarningSigns(spoilt.dump(), safetyRules().conditions(), atlas());
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen: " << detail;
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, "safety/warning-signs.json#" + place);
    EXPECT_NE(read.error().detail.find(detail), std::string::npos) << read.error().detail;
}

} // namespace

TEST(WarningSigns, TheShippedOnesAreReadWhole)
{
    const json content = shipped("safety/warning-signs.json");
    ASSERT_EQ(safetyRules().signs().signs.size(), content.at("signs").size());
    for (std::size_t i = 0; i < content.at("signs").size(); ++i) {
        const json &from = content.at("signs")[i];
        const WarningSign &sign = safetyRules().signs().signs[i];
        EXPECT_EQ(sign.id, from.at("id"));
        EXPECT_EQ(wordOf(warningLevelWords, sign.level), from.at("level").get<std::string>());
        EXPECT_EQ(sign.suspects, from.value("suspects", std::vector<std::string>{})) << sign.id;
        EXPECT_EQ(sign.staleDays, from.at("stale_days")) << sign.id;
        EXPECT_EQ(sign.ask.back(), '?') << sign.id;
    }
}

TEST(WarningSigns, MistakesAreNamedByTheirPlace)
{
    const auto spoilt = [](const char *pointer, const json &value) {
        json content = shipped("safety/warning-signs.json");
        content[json::json_pointer(pointer)] = value;
        return content;
    };
    expectRefused(spoilt("/format", "raphe-signs"), ErrorCode::WrongFormat, "/format", "raphe-signs");
    expectRefused(spoilt("/version", 2), ErrorCode::WrongFormat, "/version", "2");
    expectRefused(spoilt("/signs/0/level", "soon"), ErrorCode::UnknownWord, "/signs/0/level", "soon");
    expectRefused(spoilt("/signs/0/colour", "red"), ErrorCode::UnknownField, "/signs/0", "colour");
    expectRefused(spoilt("/signs/1/id", shipped("safety/warning-signs.json")["signs"][0]["id"]), ErrorCode::Duplicate,
        "/signs/1/id", "chest");
    expectRefused(spoilt("/signs/1/areas", {"tail"}), ErrorCode::UnknownId, "/signs/1/areas/0", "tail");
    expectRefused(spoilt("/signs/1/areas", json::array()), ErrorCode::MissingField, "/signs/1", "areas");
    expectRefused(spoilt("/signs/1/suspects", {"a-cold"}), ErrorCode::UnknownId, "/signs/1/suspects/0", "a-cold");
    expectRefused(spoilt("/signs/1/asked_with", {"a-cold"}), ErrorCode::UnknownId, "/signs/1/asked_with", "a-cold");
    expectRefused(spoilt("/signs/1/stale_days", -1), ErrorCode::OutOfRange, "/signs/1/stale_days", "-1");
    expectRefused(spoilt("/signs/1/act", ""), ErrorCode::MissingField, "/signs/1", "act");
    expectRefused(spoilt("/signs/1/when", json::object()), ErrorCode::MissingField, "/signs/1/when", "age_from");
    expectRefused(spoilt("/signs/1/by", "nobody"), ErrorCode::UnknownWord, "/signs/1/by", "nobody");
    expectRefused(spoilt("/areas/0/regions", {"femur"}), ErrorCode::WrongType, "/areas/0/regions/0", "femur");
    expectRefused(spoilt("/areas/8/regions", {"great-toe"}), ErrorCode::MissingField, "/areas", "an area with");
}

} // namespace raphe::test
