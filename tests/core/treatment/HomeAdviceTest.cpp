// Advice for home is read strictly, and what ships is whole. How easily it reads is measured by tests/readability.
#include "core/treatment/HomeAdvice.h"
#include "tests/core/examination/Exam.h"
#include "tests/core/plan/Planning.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace raphe {

namespace {

using namespace test;
using nlohmann::json;

const HomeAdvice &advice()
{
    static const HomeAdvice read = planContent(readEmbeddedHomeAdvice(safetyRules()));
    return read;
}

TEST(HomeAdvice, WhatShipsTellsOfEveryTechniqueAndWhomToCall)
{
    EXPECT_GE(advice().items.size(), 24U);
    for (const Technique &technique : techniques().all)
        EXPECT_NE(advice().after(technique.action), nullptr) << technique.id;
    for (const auto &known : callWhomWords)
        EXPECT_TRUE(std::any_of(advice().calls.begin(), advice().calls.end(), [&](const CallLine &c) {
            return c.whom == known.first;
        })) << known.second;
    EXPECT_FALSE(advice().always.empty());
    for (const HomeAdviceItem &item : advice().items)
        for (const std::string *text : {&item.title, &item.text, &item.stop})
            for (const char *never : {"left", "right", "diagnos"})
                EXPECT_EQ(text->find(never), std::string::npos) << item.id << ": " << *text;
}

TEST(HomeAdvice, IsAskedFirstWithAConditionOfTheItemOrOfAll)
{
    const HomeAdviceItem &walk = *advice().find("walk-a-little");
    const HomeAdviceItem &sit = *advice().find("change-how-you-sit");
    EXPECT_FALSE(isAskedFirst(advice(), walk, {}));
    EXPECT_TRUE(isAskedFirst(advice(), walk, {"angina"}));
    EXPECT_FALSE(isAskedFirst(advice(), sit, {"angina"}));
    EXPECT_TRUE(isAskedFirst(advice(), sit, {"suspected-cauda-equina"}));
}

TEST(HomeAdvice, WhatIsForTheSheetStandsFirst)
{
    for (const Sheet &sheet : examination().sheets)
        EXPECT_TRUE(std::any_of(advice().bySheet.begin(), advice().bySheet.end(), [&](const SheetRegions &known) {
            return known.sheet == sheet.id;
        })) << sheet.id;
    const auto isFor = [](const HomeAdviceItem *item, const std::string &region) {
        return std::find(item->regions.begin(), item->regions.end(), region) != item->regions.end();
    };
    const auto offered = offeredFor(advice(), {"neck"});
    ASSERT_EQ(offered.size(), advice().items.size()) << "nothing is kept back";
    EXPECT_TRUE(isFor(offered.front(), "neck")) << offered.front()->id;
    bool isOver = false;
    for (const HomeAdviceItem *item : offered) {
        EXPECT_FALSE(isOver && isFor(item, "neck")) << item->id;
        isOver = isOver || !isFor(item, "neck");
    }
    EXPECT_TRUE(isFor(offeredFor(advice(), {}).front(), "anywhere"));
}

TEST(HomeAdvice, WhatToExpectFollowsTheWorkAndIsToldOnce)
{
    TreatmentStep step;
    step.place = {StructureId{"soleus"}, Side::Left};
    step.technique = "gliding";
    step.began = "10:00:00";
    step.done = StepDone::Done;
    TreatmentLog log;
    log.steps = {step, step};
    const auto told = expectedAfter(advice(), log, techniques());
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0], advice().after(techniques().find("gliding")->action)->text);
    log.steps[0].done = log.steps[1].done = StepDone::Skipped;
    EXPECT_TRUE(expectedAfter(advice(), log, techniques()).empty()) << "what was not done has no after";
}

TEST(HomeAdvice, MistakesAreNamedWithTheirPlace)
{
    struct Mistake {
        const char *what;
        std::function<void(json &)> spoil;
        ErrorCode code;
        const char *place;
    };
    const std::vector<Mistake> mistakes = {
        {"unknown field", [](json &d) { d["advice"][0]["colour"] = 1; }, ErrorCode::UnknownField, "h#/advice/0"},
        {"unknown condition", [](json &d) { d["advice"][0]["not_with"] = {"gout-of-the-ear"}; }, ErrorCode::UnknownId,
            "h#/advice/0/not_with/0"},
        {"unknown region", [](json &d) { d["advice"][0]["for"] = {"tail"}; }, ErrorCode::UnknownWord, "h#/advice/0/for/0"},
        {"unknown region of a sheet", [](json &d) { d["by_sheet"][0]["regions"] = {"tail"}; }, ErrorCode::UnknownWord,
            "h#/by_sheet/0/regions/0"},
        {"a sheet twice", [](json &d) { d["by_sheet"][1]["sheet"] = d["by_sheet"][0]["sheet"]; }, ErrorCode::Duplicate,
            "h#/by_sheet/1/sheet"},
        {"no word of when to stop", [](json &d) { d["advice"][0]["stop"] = ""; }, ErrorCode::MissingField, "h#/advice/0"},
        {"twice", [](json &d) { d["advice"][1]["id"] = d["advice"][0]["id"]; }, ErrorCode::Duplicate, "h#/advice/1/id"},
        {"an action that is no technique", [](json &d) { d["expect"][0]["action"] = "palpation"; }, ErrorCode::UnknownId,
            "h#/expect/0/action"},
        {"a technique that nothing is told of", [](json &d) { d["expect"].erase(0); }, ErrorCode::MissingField, "h#/expect"},
        {"the gravest last", [](json &d) { std::swap(d["call"][0], d["call"][d["call"].size() - 1]); }, ErrorCode::Contradiction,
            "h#/call/1/how"},
    };
    for (const Mistake &mistake : mistakes) {
        json spoilt = shipped("home-advice.json");
        mistake.spoil(spoilt);
        const auto read = readHomeAdvice(spoilt.dump(), "h", safetyRules());
        ASSERT_FALSE(read) << mistake.what;
        EXPECT_EQ(read.error().code, mistake.code) << mistake.what << ": " << inWords(read.error());
        EXPECT_EQ(read.error().place, mistake.place) << mistake.what;
    }
}

} // namespace

} // namespace raphe
