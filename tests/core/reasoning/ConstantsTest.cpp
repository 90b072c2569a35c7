// The reader of the reasoning's constants: each has its reason, none is missing, none is unknown, all are in range.
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

using nlohmann::json;

void expectRefused(const json &spoilt, ErrorCode code, const std::string &place, const std::string &detail)
{
    const auto read = readConstants(spoilt.dump(), "c.json");
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen";
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, "c.json#" + place);
    EXPECT_NE(read.error().detail.find(detail), std::string::npos) << read.error().detail;
}

TEST(Constants, TheShippedOnesAreAccepted)
{
    const json all = shippedConstants();
    const auto read = readConstants(all.dump(), "c.json");
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    for (const auto &item : all["constants"].items())
        EXPECT_EQ(read.value()[item.key()], item.value()["value"].get<double>()) << item.key();
}

TEST(Constants, AMissingOneIsNamed)
{
    json j = shippedConstants();
    j["constants"].erase("restart");
    expectRefused(j, ErrorCode::MissingField, "/constants", "restart");
}

TEST(Constants, AnUnknownOneIsNamed)
{
    json j = shippedConstants();
    j["constants"]["boost"] = {{"value", 1}, {"reason", "x"}};
    expectRefused(j, ErrorCode::UnknownField, "/constants", "boost");
}

TEST(Constants, AValueNeedsAReason)
{
    json j = shippedConstants();
    j["constants"]["restart"]["reason"] = "";
    expectRefused(j, ErrorCode::MissingField, "/constants/restart", "reason");
    j["constants"]["restart"].erase("reason");
    expectRefused(j, ErrorCode::MissingField, "/constants/restart", "reason");
}

TEST(Constants, AValueOutOfRangeIsRefused)
{
    json j = shippedConstants();
    j["constants"]["link-attaches"]["value"] = -0.1;
    expectRefused(j, ErrorCode::OutOfRange, "/constants/link-attaches", "-0.1");
    j["constants"]["link-attaches"]["value"] = 10.5;
    expectRefused(j, ErrorCode::OutOfRange, "/constants/link-attaches", "10.5");
    j["constants"]["link-attaches"]["value"] = "much";
    expectRefused(j, ErrorCode::WrongType, "/constants/link-attaches/value", "number");
}

TEST(Constants, HandsFindWhatTheySeldomFeelForNoMoreSurely)
{
    for (const double value : {0.0, 1.1}) {
        json j = shippedConstants();
        j["constants"]["touch-rare"]["value"] = value;
        expectRefused(j, ErrorCode::OutOfRange, "/constants/touch-rare", "allowed: above 0, at most 1");
    }
}

TEST(Constants, TheRestartIsAProbabilityAboveNoneAndBelowOne)
{
    for (const double value : {0.0, 1.0, 3.0}) {
        json j = shippedConstants();
        j["constants"]["restart"]["value"] = value;
        expectRefused(j, ErrorCode::OutOfRange, "/constants/restart", "allowed");
    }
}

TEST(Constants, UnknownFieldsAreRefused)
{
    json j = shippedConstants();
    j["constants"]["restart"]["unit"] = "none";
    expectRefused(j, ErrorCode::UnknownField, "/constants/restart", "unit");
    j = shippedConstants();
    j["author"] = "x";
    expectRefused(j, ErrorCode::UnknownField, "/", "author");
}

TEST(Constants, AnotherFormatIsRefused)
{
    json j = shippedConstants();
    j["format"] = "raphe-atlas";
    expectRefused(j, ErrorCode::WrongFormat, "/", "raphe-atlas");
    j = shippedConstants();
    j["version"] = 2;
    expectRefused(j, ErrorCode::WrongFormat, "/", "");
}

TEST(Constants, TextThatIsNotJsonIsRefusedWithItsLine)
{
    const auto read = readConstants("{\n\"format\": nothing}", "c.json");
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().code, ErrorCode::BadJson);
    EXPECT_EQ(read.error().place, "c.json, line 2, column 12");
}

} // namespace

} // namespace raphe::test
