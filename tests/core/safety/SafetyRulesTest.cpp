// The reader of the caution rules: the shipped ones are accepted, and each mistake is refused with file and place.
#include "tests/core/safety/Rules.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>

namespace raphe::test {

namespace {

using nlohmann::json;

/// The three files as they are shipped.
struct Files {
    json actions = shipped("actions");
    json conditions = shipped("conditions");
    json rules = shipped("rules");

    static json shipped(const std::string &name)
    {
        std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/resources/safety/" + name + ".json", std::ios::binary);
        return json::parse(in);
    }
    [[nodiscard]] Result<SafetyRules> read() const
    {
        return readSafetyRules(actions.dump(), conditions.dump(), rules.dump(), atlas());
    }
    /// The rule with this id.
    [[nodiscard]] json &rule(const std::string &id) { return rules["rules"][indexOf(id)]; }
    [[nodiscard]] std::string placeOf(const std::string &id) const
    {
        return "safety/rules.json#/rules/" + std::to_string(indexOf(id));
    }
    [[nodiscard]] std::size_t indexOf(const std::string &id) const
    {
        std::size_t i = 0;
        while (rules["rules"].at(i)["id"] != id)
            ++i;
        return i;
    }
};

void expectRefused(const Files &spoilt, ErrorCode code, const std::string &place, const std::string &detail)
{
    const auto read = spoilt.read();
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen";
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, place);
    EXPECT_NE(read.error().detail.find(detail), std::string::npos) << read.error().detail;
}

TEST(SafetyRules, TheShippedOnesAreAccepted)
{
    const Files files;
    const auto read = files.read();
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    EXPECT_EQ(read.value().actions().size(), files.actions["actions"].size());
    EXPECT_EQ(read.value().conditions().size(), files.conditions["conditions"].size());
    EXPECT_EQ(read.value().rules().size(), files.rules["rules"].size());
    ASSERT_NE(read.value().findAction("thrust"), nullptr);
    EXPECT_EQ(read.value().findAction("thrust")->kind, ActionKind::Technique);
    ASSERT_NE(read.value().findCondition("open-wound"), nullptr);
    EXPECT_EQ(read.value().findCondition("open-wound")->place, PlaceNeed::Required);
    EXPECT_EQ(read.value().findAction("open-wound"), nullptr);
    EXPECT_EQ(read.value().findCondition("thrust"), nullptr);
}

TEST(SafetyRules, GroinAndArmpitAreRootsOfALimb)
{
    EXPECT_EQ(safetyRules().limbRoots().at({"inguinal-region"}), Limb::Leg);
    EXPECT_EQ(safetyRules().limbRoots().at({"axillary-region"}), Limb::Arm);
    EXPECT_FALSE(safetyRules().limbRoots().contains({"pubic-region"}));
}

TEST(SafetyRules, MistakesInTheRootsOfTheLimbsAreRefused)
{
    const std::string leg = "safety/rules.json#/limb_roots/0";
    Files f;
    f.rules.erase("limb_roots");
    expectRefused(f, ErrorCode::MissingField, "safety/rules.json#/", "limb_roots");
    f = {};
    f.rules["limb_roots"][0]["side"] = "left";
    expectRefused(f, ErrorCode::UnknownField, leg, "side");
    f = {};
    f.rules["limb_roots"][0]["limb"] = "tail";
    expectRefused(f, ErrorCode::UnknownWord, leg + "/limb", "tail");
    f = {};
    f.rules["limb_roots"][0]["regions"] = json::array();
    expectRefused(f, ErrorCode::MissingField, leg, "regions");
    f = {};
    f.rules["limb_roots"][0]["regions"][1] = "sartorius";
    expectRefused(f, ErrorCode::WrongType, leg + "/regions/1", "sartorius");
    f = {};
    f.rules["limb_roots"][1]["regions"] = {"inguinal-region"};
    expectRefused(f, ErrorCode::Duplicate, "safety/rules.json#/limb_roots/1/regions/0", "inguinal-region");
    for (const char *field : {"reason", "source"}) {
        f = {};
        f.rules["limb_roots"][0][field] = "";
        expectRefused(f, ErrorCode::MissingField, leg, field);
    }
}

TEST(SafetyRules, UnknownFieldsAreRefused)
{
    Files f;
    f.rule("numb-area-light-only")["colour"] = "red";
    expectRefused(f, ErrorCode::UnknownField, f.placeOf("numb-area-light-only"), "colour");
    f = {};
    f.actions["author"] = "x";
    expectRefused(f, ErrorCode::UnknownField, "safety/actions.json#/", "author");
}

TEST(SafetyRules, AnotherFormatIsRefused)
{
    Files f;
    f.conditions["format"] = "raphe-atlas";
    expectRefused(f, ErrorCode::WrongFormat, "safety/conditions.json#/format", "raphe-atlas");
    f = {};
    f.rules["version"] = 2;
    expectRefused(f, ErrorCode::WrongFormat, "safety/rules.json#/version", "2");
}

TEST(SafetyRules, UnknownIdsAreRefused)
{
    Files f;
    f.rule("bad-reaction-ask")["conditions"][0] = "hiccups";
    expectRefused(f, ErrorCode::UnknownId, f.placeOf("bad-reaction-ask") + "/conditions/0", "hiccups");
    f = {};
    f.rule("cups-ask-and-tell")["actions"][1] = "singing";
    expectRefused(f, ErrorCode::UnknownId, f.placeOf("cups-ask-and-tell") + "/actions/1", "singing");
    f = {};
    f.rule("lumbar-bone-no-point")["regions"][0] = "third-lung";
    expectRefused(f, ErrorCode::UnknownId, f.placeOf("lumbar-bone-no-point") + "/regions/0", "third-lung");
}

TEST(SafetyRules, ARegionIsASurfaceRegion)
{
    Files f;
    f.rule("lumbar-bone-no-point")["regions"][0] = "multifidus";
    expectRefused(f, ErrorCode::WrongType, f.placeOf("lumbar-bone-no-point") + "/regions/0", "multifidus");
}

TEST(SafetyRules, UnknownWordsAreRefused)
{
    Files f;
    f.rule("bruises-ask")["verdict"] = "pray";
    expectRefused(f, ErrorCode::UnknownWord, f.placeOf("bruises-ask") + "/verdict", "pray");
    f = {};
    f.rule("bruises-ask")["where"] = "nearby";
    expectRefused(f, ErrorCode::UnknownWord, f.placeOf("bruises-ask") + "/where", "nearby");
    f = {};
    f.rule("lumbar-bone-no-point")["layers"][0] = "marrow";
    expectRefused(f, ErrorCode::UnknownWord, f.placeOf("lumbar-bone-no-point") + "/layers/0", "marrow");
    f = {};
    f.conditions["conditions"][0]["place"] = "maybe";
    expectRefused(f, ErrorCode::UnknownWord, "safety/conditions.json#/conditions/0/place", "maybe");
}

TEST(SafetyRules, AnEmptyListWouldMeanEverythingAndIsRefused)
{
    for (const char *list : {"conditions", "actions"}) {
        Files f;
        f.rule("bleeding-no-thrust")[list] = json::array();
        expectRefused(f, ErrorCode::MissingField, f.placeOf("bleeding-no-thrust"), list);
    }
}

TEST(SafetyRules, OnlyAStopAtAPlaceCanSpareTheRest)
{
    for (const char *rule : {"bruises-ask", "fragile-skin-no-shear"}) { // an ask, and a stop everywhere
        Files f;
        f.rule(rule)["spares_the_rest"] = true;
        expectRefused(f, ErrorCode::Contradiction, f.placeOf(rule), "spares_the_rest; only a stop at a place can");
    }
}

TEST(SafetyRules, EachIdStandsOnce)
{
    Files f;
    f.rules["rules"].push_back(f.rule("bruises-ask"));
    expectRefused(f, ErrorCode::Duplicate, "safety/rules.json#/rules/" + std::to_string(f.rules["rules"].size() - 1) + "/id",
        "bruises-ask");
    f = {};
    f.actions["actions"][1]["id"] = f.actions["actions"][0]["id"];
    expectRefused(f, ErrorCode::Duplicate, "safety/actions.json#/actions/1/id", "gliding");
    f = {};
    f.rule("cups-ask-and-tell")["actions"] = {"suction", "suction"};
    expectRefused(f, ErrorCode::Duplicate, f.placeOf("cups-ask-and-tell") + "/actions/1", "suction");
}

TEST(SafetyRules, IdsAreWellFormed)
{
    Files f;
    f.rule("bruises-ask")["id"] = "Bruises";
    expectRefused(f, ErrorCode::BadId, f.placeOf("Bruises") + "/id", "Bruises");
}

TEST(SafetyRules, EachRuleHasItsReasonAndItsSource)
{
    for (const char *field : {"reason", "source"}) {
        Files f;
        f.rule("bruises-ask")[field] = "";
        expectRefused(f, ErrorCode::MissingField, f.placeOf("bruises-ask"), field);
        f.rule("bruises-ask").erase(field);
        expectRefused(f, ErrorCode::MissingField, f.placeOf("bruises-ask"), field);
    }
}

TEST(SafetyRules, ARuleThatGoesByAPlaceNeedsConditionsThatHaveOne)
{
    Files f;
    f.rule("bruises-ask").erase("conditions");
    expectRefused(f, ErrorCode::MissingField, f.placeOf("bruises-ask"), "conditions");
    f = {};
    f.rule("bruises-ask")["conditions"].push_back("pacemaker");
    expectRefused(f, ErrorCode::Contradiction, f.placeOf("bruises-ask"), "at-place, pacemaker");
}

TEST(SafetyRules, AConditionThatNoRuleUsesIsRefused)
{
    Files f;
    const std::size_t i = f.conditions["conditions"].size();
    f.conditions["conditions"].push_back({{"id", "green-hair"}, {"name", "green hair"}, {"place", "none"}});
    expectRefused(f, ErrorCode::MissingField, "safety/conditions.json#/conditions/" + std::to_string(i), "green-hair");
}

TEST(SafetyRules, TextThatIsNotJsonIsRefusedWithItsLine)
{
    const Files f;
    const auto read = readSafetyRules(f.actions.dump(), "{\n\"format\": nothing}", f.rules.dump(), atlas());
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().code, ErrorCode::BadJson);
    EXPECT_EQ(read.error().place, "safety/conditions.json, line 2, column 12");
}

} // namespace

} // namespace raphe::test
