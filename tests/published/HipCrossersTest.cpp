// Exactly the muscles that anatomy names cross the hip joint, and their neighbours do not.
#include "tests/published/Crossed.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

std::string sourceOf(const nlohmann::json &json)
{
    return "source: hip-crossers.json, " + json.at("confidence").get<std::string>();
}

TEST(HipCrossers, AreExactlyTheListedMuscles)
{
    const auto json = publishedJson("hip-crossers.json");
    const auto listed = json.at("cross").get<std::set<std::string>>();
    EXPECT_EQ(listed.size(), 22U) << sourceOf(json);
    const auto ours = musclesCrossing(atlas(), "hip-joint");
    for (const std::string &muscle : listed) {
        EXPECT_TRUE(ours.contains(muscle)) << muscle << " crosses the hip joint, but not in our atlas; " << sourceOf(json);
    }
    for (const std::string &muscle : ours) {
        EXPECT_TRUE(listed.contains(muscle)) << muscle << " crosses the hip joint only in our atlas; " << sourceOf(json);
    }
}

TEST(HipCrossers, TheVastiTheShortHeadAndPsoasMinorDoNotCross)
{
    const auto json = publishedJson("hip-crossers.json");
    const auto ours = musclesCrossing(atlas(), "hip-joint");
    for (const auto &muscle : json.at("do_not_cross")) {
        EXPECT_TRUE(atlas().find({muscle.get<std::string>()})) << muscle;
        EXPECT_FALSE(ours.contains(muscle.get<std::string>())) << muscle << "; " << sourceOf(json);
    }
}

} // namespace

} // namespace raphe::test
