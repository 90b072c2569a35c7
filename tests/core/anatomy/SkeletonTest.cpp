// Which joints a muscle crosses, on a skeleton small enough to count on one hand.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/support/Content.h"

#include "core/anatomy/Skeleton.h"

#include <gtest/gtest.h>

#include <set>

namespace raphe::test {

namespace {

using nlohmann::json;

std::set<std::string> jointsCrossed(const Atlas &atlas, const std::string &muscle)
{
    std::set<std::string> joints;
    for (const Crossing &c : atlas.crossings())
        if (c.muscle.value == muscle)
            joints.insert(c.joint.value);
    return joints;
}

const Crossing &crossing(const Atlas &atlas, const std::string &muscle, const std::string &joint)
{
    for (const Crossing &c : atlas.crossings())
        if (c.muscle.value == muscle && c.joint.value == joint)
            return c;
    throw std::runtime_error(muscle + " does not cross " + joint);
}

using Joints = std::set<std::string>;

json withHeads(const json &heads)
{
    json j = tinyJson();
    j["structures"][mover]["attachments"] = heads;
    return j;
}

TEST(Skeleton, PathNamesTheJointsInOrder)
{
    const Atlas tiny = tinyAtlas();
    const Skeleton skeleton(tiny.joints());
    EXPECT_EQ(
        skeleton.path({"lumbar"}, {"tibia"}), (std::vector<StructureId>{{"lumbosacral"}, {"sacroiliac"}, {"hip"}, {"knee"}}));
    EXPECT_EQ(skeleton.path({"tibia"}, {"hip-bone"}), (std::vector<StructureId>{{"knee"}, {"hip"}}));
    EXPECT_TRUE(skeleton.path({"femur"}, {"femur"}).empty());
    EXPECT_TRUE(skeleton.path({"femur"}, {"no-bone"}).empty());
}

TEST(Crossings, AMuscleCrossesEveryJointBetweenItsBones)
{
    EXPECT_EQ(jointsCrossed(tinyAtlas(), "mover"), (Joints{"hip", "knee"}));
    EXPECT_EQ(crossing(tinyAtlas(), "mover", "hip").basis, Basis::Computed);
}

TEST(Crossings, AMuscleWithinOneBoneCrossesNothing)
{
    EXPECT_EQ(jointsCrossed(tinyAtlas(withHeads(json::array({tinyHead("crest", "hip-bone")}))), "mover"), Joints{});
}

TEST(Crossings, AClosingJointIsNeverOnThePath)
{
    // From one side of the pelvis to the spine one could also go through the symphysis; the tree does not.
    EXPECT_EQ(jointsCrossed(tinyAtlas(withHeads(json::array({tinyHead("process", "crest")}))), "mover"),
        (Joints{"lumbosacral", "sacroiliac"}));
}

TEST(Crossings, AnEndOnFasciaIsAnEndThere)
{
    // The tract runs on to the shin, but the muscle does not.
    json j = withHeads(json::array({tinyHead("crest", "tract")}));
    j["structures"][tract]["attachments"] = json::array({tinyHead("crest", "shin")});
    EXPECT_EQ(jointsCrossed(tinyAtlas(j), "mover"), Joints{});
}

TEST(Crossings, EndsOfDifferentHeadsAreNotPaired)
{
    // One head within the trunk, one head at the knee: the hip lies between them and is crossed by neither.
    const json heads = json::array({tinyHead("process", "sacrum"), tinyHead("trochanter", "shin")});
    EXPECT_EQ(jointsCrossed(tinyAtlas(withHeads(heads)), "mover"), (Joints{"lumbosacral", "knee"}));
}

TEST(Crossings, EveryOriginOfAHeadBelongsWithEveryInsertion)
{
    json head = tinyHead("process", "trochanter");
    head["origins"].push_back("crest");
    head["insertions"].push_back("shin");
    EXPECT_EQ(
        jointsCrossed(tinyAtlas(withHeads(json::array({head}))), "mover"), (Joints{"lumbosacral", "sacroiliac", "hip", "knee"}));
}

TEST(Crossings, AStatedSpanIsAddedWithItsSource)
{
    json j = withHeads(json::array({tinyHead("crest", "tract")}));
    j["structures"][mover]["spans"] = {{{"joint", "symphysis"}, {"sources", {"review"}}}};
    const Atlas tiny = tinyAtlas(j);
    EXPECT_EQ(jointsCrossed(tiny, "mover"), (Joints{"symphysis"}));
    const Crossing &stated = crossing(tiny, "mover", "symphysis");
    EXPECT_EQ(stated.basis, Basis::Stated);
    EXPECT_EQ(stated.sources, (std::vector<std::string>{"review"}));
    EXPECT_EQ(stated.evidence, Grade::Described) << "that a muscle spans a joint is anatomy, whatever the source could support";
}

TEST(Crossings, TheBestHeadThatShowsItGivesTheGrade)
{
    json weak = tinyHead("crest", "shin");
    weak["evidence"] = "convention";
    json strong = tinyHead("crest", "trochanter");
    strong["evidence"] = "verified";
    strong["sources"] = {"review"};
    const Atlas tiny = tinyAtlas(withHeads(json::array({weak, strong})));
    EXPECT_EQ(crossing(tiny, "mover", "knee").evidence, Grade::Convention);
    EXPECT_EQ(crossing(tiny, "mover", "hip").evidence, Grade::Verified);
    EXPECT_EQ(crossing(tiny, "mover", "hip").sources, (std::vector<std::string>{"book", "review"}));
}

} // namespace

} // namespace raphe::test
