// Techniques and access are read strictly, and what ships is whole.
#include "core/plan/TreatmentSettings.h"
#include "tests/core/plan/Planning.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <functional>

namespace raphe {

namespace {

using namespace test;
using nlohmann::json;

struct Mistake {
    const char *what;
    std::function<void(json &)> spoil;
    ErrorCode code;
    const char *place;
};

TechniqueChoice chosenFor(const Finding &found, const Techniques &among)
{
    Suggestion suggestion;
    suggestion.place = found.place;
    return chooseTechnique(among, atlas().at(found.place.structure), suggestion, {found}, {});
}

TEST(Techniques, WhatShipsIsWhole)
{
    EXPECT_GE(techniques().all.size(), 14U);
    for (const Technique &technique : techniques().all) {
        EXPECT_EQ(safetyRules().findAction(technique.action)->kind, ActionKind::Technique) << technique.id;
        EXPECT_EQ(technique.dose.kPa.has_value(), technique.action == "suction" || technique.action == "gliding-suction")
            << technique.id << ": cups, and only cups, say how strong";
        EXPECT_EQ(!technique.grades.empty(), technique.action == "mobilising" || technique.action == "thrust") << technique.id;
        if (technique.deep) {
            EXPECT_GE(technique.dose.restHours, 24) << technique.id << ": deep work rests";
        }
    }
    for (const Tissue tissue : {Tissue::SuperficialFascia, Tissue::Fascia, Tissue::Muscle, Tissue::Attachment, Tissue::Joint})
        EXPECT_TRUE(std::any_of(techniques().all.begin(), techniques().all.end(), [&](const Technique &t) {
            return std::any_of(t.suits.begin(), t.suits.end(), [&](const Suit &suit) { return suit.tissue == tissue; });
        })) << wordOf(tissueWords, tissue);
    for (std::size_t a = 0; a < plan::positionCount; ++a)
        for (std::size_t b = 0; b < plan::positionCount; ++b) {
            const auto &turn = techniques().times.between.turn;
            EXPECT_EQ(turn[a][b], turn[b][a]);
            EXPECT_EQ(turn[a][b] == 0, a == b);
        }
}

// A turn to the left takes as long as one to the right: else the mirrored plan would be another.
TEST(Techniques, TurnsAreTheSameOnBothSides)
{
    const auto &turn = techniques().times.between.turn;
    for (const auto &[a, word] : positionWords)
        for (const auto &[b, other] : positionWords)
            EXPECT_EQ(turn[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)],
                turn[static_cast<std::size_t>(mirrored(a))][static_cast<std::size_t>(mirrored(b))])
                << word << " " << other;
}

TEST(Techniques, MistakesAreNamedWithTheirPlace)
{
    const std::vector<Mistake> mistakes = {
        {"an unknown field", [](json &d) { d["techniques"][0]["colour"] = "red"; }, ErrorCode::UnknownField, "t#/techniques/0"},
        {"an unknown action", [](json &d) { d["techniques"][0]["action"] = "magic"; }, ErrorCode::UnknownId,
            "t#/techniques/0/action"},
        {"a test as action", [](json &d) { d["techniques"][0]["action"] = "palpation"; }, ErrorCode::UnknownId,
            "t#/techniques/0/action"},
        {"an id twice", [](json &d) { d["techniques"][1]["id"] = d["techniques"][0]["id"]; }, ErrorCode::Duplicate,
            "t#/techniques/1/id"},
        {"an unknown layer", [](json &d) { d["techniques"][0]["layers"] = {"soul"}; }, ErrorCode::UnknownWord,
            "t#/techniques/0/layers/0"},
        {"no time", [](json &d) { d["techniques"][0]["dose"]["seconds"] = 0; }, ErrorCode::OutOfRange,
            "t#/techniques/0/dose/seconds"},
        {"no source", [](json &d) { d["techniques"][0]["dose"].erase("source"); }, ErrorCode::MissingField,
            "t#/techniques/0/dose"},
        {"tenderness the wrong way round",
            [](json &d) {
                d["techniques"][0]["suits"] = {
                    {{"tissue", "muscle"}, {"least_tenderness", 3}, {"most_tenderness", 2}, {"weight", 1}}};
            },
            ErrorCode::OutOfRange, "t#/techniques/0/suits/0/most_tenderness"},
        {"a way without its time", [](json &d) { d["times"]["turn"]["prone"].erase("seated"); }, ErrorCode::MissingField,
            "t#/times/turn/prone"},
        {"another format", [](json &d) { d["format"] = "raphe-visit"; }, ErrorCode::WrongFormat, "t#/format"},
    };
    for (const Mistake &mistake : mistakes) {
        json spoilt = shipped("techniques.json");
        mistake.spoil(spoilt);
        const auto read = readTechniques(spoilt.dump(), "t", safetyRules());
        ASSERT_FALSE(read) << mistake.what;
        EXPECT_EQ(read.error().code, mistake.code) << mistake.what << ": " << inWords(read.error());
        EXPECT_EQ(read.error().place, mistake.place) << mistake.what;
    }
}

TEST(Techniques, ThePractitionersOwnAreAddedAndKeepTheCautionsOfTheOneTheyAreLike)
{
    TreatmentSettings settings;
    settings.techniques = {{"slow-hand", "gliding", "slow hand", 240, "very slowly", "Lighter over bone."}};
    const auto added = withOwn(techniques(), settings);
    ASSERT_TRUE(added) << inWords(added.error());
    ASSERT_EQ(added.value().all.size(), techniques().all.size() + 1);
    const Technique &own = added.value().all.back();
    EXPECT_TRUE(own.isOwn);
    EXPECT_EQ(own.action, techniques().find("gliding")->action);
    EXPECT_EQ(own.dose.seconds, 240);
    settings.techniques[0].id = "gliding";
    EXPECT_EQ(withOwn(techniques(), settings).error().code, ErrorCode::Duplicate);
    settings.techniques[0] = {"slow-hand", "slow-hand", "slow hand", 240, "very slowly", "Lighter over bone."};
    EXPECT_EQ(withOwn(techniques(), settings).error().code, ErrorCode::UnknownId);
}

TEST(Techniques, AnOwnOneThatIsPreferredIsChosenInThePlaceOfTheOther)
{
    const Finding found = tender("gluteus-maximus", Side::Right, 1);
    const auto chosen = [&](bool isPreferred) {
        TreatmentSettings settings;
        const TechniqueChoice usual = chosenFor(found, techniques());
        settings.techniques = {{"own", usual.technique->id, "my own", 45, "as I do it", "At pain.", isPreferred}};
        const Techniques all = withOwn(techniques(), settings).value();
        return chosenFor(found, all).technique->id == "own";
    };
    EXPECT_TRUE(chosen(true));
    EXPECT_FALSE(chosen(false));
}

TEST(Techniques, SettingsOfAPracticeAreReadAsTheyWereWritten)
{
    TreatmentSettings settings;
    settings.reserved = ReservedTimes{30, 90, 60, 45};
    settings.techniques = {{"slow-hand", "gliding", "slow hand", 240, "very slowly", "Lighter over bone.", true},
        {"warm-hand", "held-ease", "warm hand", 60, "still", "When it is too warm."}};
    const json written = json::parse(treatmentSettingsJson(settings).dump());
    const auto again = guarded([&] { return readTreatmentSettings(JsonReader(written, "s")); });
    ASSERT_TRUE(again) << inWords(again.error());
    EXPECT_EQ(again.value(), settings);
    EXPECT_EQ(withOwn(techniques(), settings).value().times.reserved.sum(), 225);
    const std::vector<Mistake> mistakes = {
        {"unknown field", [](json &d) { d["colour"] = 1; }, ErrorCode::UnknownField, "s/colour"},
        {"no name", [](json &d) { d["techniques"][0]["name"] = ""; }, ErrorCode::MissingField, "s#/techniques/0"},
        {"no time", [](json &d) { d["techniques"][1]["seconds"] = 0; }, ErrorCode::OutOfRange, "s#/techniques/1/seconds"},
        {"twice", [](json &d) { d["techniques"][1]["id"] = "slow-hand"; }, ErrorCode::Duplicate, "s#/techniques/1/id"},
        {"too long", [](json &d) { d["reserved"]["rising"] = 3601; }, ErrorCode::OutOfRange, "s#/reserved/rising"},
        {"a time left out", [](json &d) { d["reserved"].erase("retest"); }, ErrorCode::MissingField, "s#/reserved"},
    };
    for (const Mistake &mistake : mistakes) {
        json spoilt = written;
        mistake.spoil(spoilt);
        const auto read = guarded([&] { return readTreatmentSettings(JsonReader(spoilt, "s")); });
        ASSERT_FALSE(read) << mistake.what;
        EXPECT_EQ(read.error().code, mistake.code) << mistake.what << ": " << inWords(read.error());
    }
}

TEST(Access, MistakesAreNamedWithTheirPlace)
{
    const std::vector<Mistake> mistakes = {
        {"a region left out", [](json &d) { d["regions"].erase(0); }, ErrorCode::MissingField, "a#/regions"},
        {"a region twice", [](json &d) { d["regions"][1]["region"] = d["regions"][0]["region"]; }, ErrorCode::Duplicate,
            "a#/regions/1/region"},
        {"an unknown position", [](json &d) { d["regions"][0]["positions"] = {"standing"}; }, ErrorCode::UnknownWord,
            "a#/regions/0/positions/0"},
        {"an unknown cover", [](json &d) { d["regions"][0]["uncover"] = "hat"; }, ErrorCode::UnknownId, "a#/regions/0/uncover"},
    };
    for (const Mistake &mistake : mistakes) {
        json spoilt = shipped("access.json");
        mistake.spoil(spoilt);
        const auto read = Access::read(spoilt.dump(), "a", regions());
        ASSERT_FALSE(read) << mistake.what;
        EXPECT_EQ(read.error().code, mistake.code) << mistake.what << ": " << inWords(read.error());
        EXPECT_EQ(read.error().place, mistake.place) << mistake.what;
    }
}

TEST(Access, SidesAreThoseThatLieUpOrDown)
{
    const auto reached = [](const char *structure, Side side) { return access().positionsOf({StructureId{structure}, side}); };
    EXPECT_TRUE(reached("gluteus-medius", Side::Right) & setOf(Position::OnLeftSide)) << "right side up";
    EXPECT_FALSE(reached("gluteus-medius", Side::Right) & setOf(Position::OnRightSide));
    EXPECT_TRUE(reached("medial-region-of-thigh", Side::Right) & setOf(Position::OnRightSide))
        << "the inner thigh of the lower leg";
    EXPECT_FALSE(reached("medial-region-of-thigh", Side::Right) & setOf(Position::OnLeftSide));
    for (const Structure &structure : atlas().structures())
        for (const Side side : atlas().sides(structure)) {
            const auto here = access().positionsOf({structure.id, side});
            const auto there = access().positionsOf(mirrored(Place{structure.id, side}));
            for (const auto &[position, word] : positionWords)
                EXPECT_EQ((here & setOf(position)) != 0, (there & setOf(mirrored(position))) != 0)
                    << structure.id.value << " " << word;
        }
}

} // namespace

} // namespace raphe
