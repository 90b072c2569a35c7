// The list of words is read strictly: each kind of mistake is refused with its place.
#include "tests/core/examination/Exam.h"
#include "tests/core/language/EnglishWords.h"

#include "core/anatomy/AtlasReader.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <functional>

namespace {

using namespace raphe;
using nlohmann::json;

json english()
{
    const auto files = embeddedFiles("language");
    for (const NamedText &file : files.value())
        if (file.name == "en.json")
            return json::parse(file.text);
    throw std::runtime_error("no English words");
}

Error refused(const std::function<void(json &)> &spoil)
{
    json list = english();
    spoil(list);
    const auto read = readWordList(list.dump(), "en.json", test::atlas());
    if (read)
        throw std::runtime_error("it was let through");
    return read.error();
}

TEST(WordList, IsReadWhole)
{
    const auto list = readEmbeddedWordList("en", test::atlas());
    ASSERT_TRUE(list) << test::inWords(list.error());
    EXPECT_EQ(list.value().words.size(), lineWordWords.size());
    EXPECT_GE(list.value().movements.size(), 47U);
    EXPECT_GE(list.value().textures.size(), 18U);
}

// What the line takes, the sheet and the file take too.
TEST(WordList, LimitsAreThoseOfTheExamination)
{
    std::size_t shared = 0;
    for (const LineMovement &said : test::englishWords().list().movements)
        if (const Movement *movement = test::examination().findMovement(said.id)) {
            ++shared;
            EXPECT_EQ(said.least, movement->least) << said.id;
            EXPECT_EQ(said.most, movement->furthest) << said.id;
            EXPECT_EQ(said.unit == MoveUnit::Degrees, movement->unit == Unit::Degrees) << said.id;
        }
    EXPECT_GE(shared, 48U);
}

TEST(WordList, MistakesAreNamedWithTheirPlace)
{
    const auto expect = [](const std::function<void(json &)> &spoil, ErrorCode code, const std::string &place) {
        const Error error = refused(spoil);
        EXPECT_EQ(error.code, code) << test::inWords(error);
        EXPECT_EQ(error.place, place) << test::inWords(error);
    };
    expect([](json &j) { j["colour"] = 1; }, ErrorCode::UnknownField, "en.json#/");
    expect([](json &j) { j["format"] = "raphe-words"; }, ErrorCode::WrongFormat, "en.json#/format");
    expect([](json &j) { j["version"] = 2; }, ErrorCode::WrongFormat, "en.json#/version");
    expect([](json &j) { j["words"][0]["word"] = "leftish"; }, ErrorCode::UnknownWord, "en.json#/words/0/word");
    expect([](json &j) { j["words"][1]["word"] = "left"; }, ErrorCode::Duplicate, "en.json#/words/1/word");
    expect([](json &j) { j["words"].erase(3); }, ErrorCode::MissingField, "en.json#/words");
    expect([](json &j) { j["words"][0]["says"] = json::array(); }, ErrorCode::MissingField, "en.json#/words/0/says");
    expect([](json &j) { j["words"][0]["says"][0] = ""; }, ErrorCode::MissingField, "en.json#/words/0/says/0");
    expect([](json &j) { j["words"][1]["says"].push_back("l"); }, ErrorCode::Duplicate, "en.json#/words/1/says/8");
    expect([](json &j) { j["short-forms"][0]["structure"] = "third-lung"; }, ErrorCode::UnknownId,
        "en.json#/short-forms/0/structure");
    expect(
        [](json &j) { j["shared"][0]["structures"][0] = "third-lung"; }, ErrorCode::UnknownId, "en.json#/shared/0/structures/0");
    expect(
        [](json &j) { j["shared"][0]["structures"] = json::array(); }, ErrorCode::MissingField, "en.json#/shared/0/structures");
    expect([](json &j) { j["movements"][0]["region"] = "tail"; }, ErrorCode::UnknownId, "en.json#/movements/0/region");
    expect([](json &j) { j["movements"][1]["id"] = j["movements"][0]["id"]; }, ErrorCode::Duplicate, "en.json#/movements/1/id");
    expect([](json &j) { j["movements"][0]["most"] = -90; }, ErrorCode::OutOfRange, "en.json#/movements/0/most");
    expect([](json &j) { j["movements"][0]["unit"] = "inches"; }, ErrorCode::UnknownWord, "en.json#/movements/0/unit");
    expect([](json &j) { j["regions"][1]["id"] = j["regions"][0]["id"]; }, ErrorCode::Duplicate, "en.json#/regions/1/id");
    expect([](json &j) { j["devices"][0]["device"] = "eyepiece"; }, ErrorCode::UnknownWord, "en.json#/devices/0/device");
}

TEST(WordList, ThereIsNoneForALanguageThatWasNotWritten)
{
    const auto list = readEmbeddedWordList("xx", test::atlas());
    ASSERT_FALSE(list);
    EXPECT_EQ(list.error().code, ErrorCode::CannotRead);
}

} // namespace
