// The practice's own words beside those of the program's library.
#include "core/treatment/OwnAdvice.h"
#include "core/store/PracticeSettings.h"
#include "tests/core/plan/Planning.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace raphe {

namespace {

using namespace test;

HomeAdvice library()
{
    return planContent(readEmbeddedHomeAdvice(safetyRules()));
}

TEST(OwnAdvice, OneOfTheProgramKeepsWhatItIsForAndIsAskedAboutAsBefore)
{
    const HomeAdviceItem before = *library().find("walk-a-little");
    const HomeAdvice changed = withOwn(library(), {{"walk-a-little", "Walk", "Ten steps. Stop when it hurts."}});
    ASSERT_EQ(changed.items.size(), library().items.size());
    const HomeAdviceItem &after = *changed.find("walk-a-little");
    EXPECT_EQ(after.title, "Walk");
    EXPECT_EQ(after.text, "Ten steps. Stop when it hurts.");
    EXPECT_TRUE(after.stop.empty()) << "it stands in the text";
    EXPECT_EQ(after.regions, before.regions);
    EXPECT_EQ(after.askFirst, before.askFirst);
    EXPECT_TRUE(isAskedFirst(changed, after, {"angina"}));
}

TEST(OwnAdvice, ANewOneStandsFirstAndIsAskedWhereAllAdviceIs)
{
    const HomeAdvice changed = withOwn(library(), {{"own-1", "Hum", "Hum a tune."}});
    EXPECT_EQ(changed.items.size(), library().items.size() + 1);
    EXPECT_EQ(changed.items.front().id, "own-1");
    EXPECT_EQ(offeredFor(changed, {}).front()->id, "own-1");
    EXPECT_TRUE(isAskedFirst(changed, changed.items.front(), {"suspected-cauda-equina"}));
    EXPECT_FALSE(isAskedFirst(changed, changed.items.front(), {"angina"}));
}

TEST(OwnAdvice, IsKeptWithTheSettings)
{
    PracticeSettings settings;
    settings.advice = {{"own-1", "Hum", "Hum a tune."}, {"walk-a-little", "Walk", "Ten steps."}};
    const auto read = readSettings(writeSettings(settings), "s");
    ASSERT_TRUE(read) << inWords(read.error());
    EXPECT_EQ(read.value(), settings);
    EXPECT_EQ(newAdviceId(settings.advice), "own-2");
    for (const auto &[spoil, place] : {std::pair(R"({"id":"own-1","title":"Hum"})", "s#/advice/0"),
             std::pair(R"({"id":"own-1","title":"","text":"x"})", "s#/advice/0"),
             std::pair(R"({"id":"Own 1","title":"a","text":"x"})", "s#/advice/0/id"),
             std::pair(R"({"id":"own-1","title":"a","text":"x","colour":1})", "s#/advice/0")}) {
        auto json = nlohmann::json::parse(writeSettings({}));
        json["advice"] = nlohmann::json::array();
        json["advice"].push_back(nlohmann::json::parse(spoil));
        const auto refused = readSettings(json.dump(), "s");
        ASSERT_FALSE(refused) << spoil;
        EXPECT_EQ(refused.error().place, place) << spoil;
    }
}

} // namespace

} // namespace raphe
