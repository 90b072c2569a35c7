// Edges: order along them, lengths in a patient, steps.
#include "core/anatomy/Edge.h"

#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

// The crest of the tiny atlas as an edge of a tenth of stature, with two stretches typed in the wrong order.
nlohmann::json withEdge()
{
    auto j = tinyJson();
    j["structures"][crest]["border"] = {
        {"from", "front"}, {"to", "back"}, {"length_over_stature", 0.1}, {"sources", {"book"}}, {"note", "measured"}};
    j["structures"][mover]["attachments"][0]["along"] = {{{"end", "crest"}, {"from", 0.5}, {"to", 1.0}}};
    auto sheet = tinyHead("trochanter", "crest");
    sheet["head"] = "front sheet";
    sheet["along"] = {{{"end", "crest"}, {"from", 0.0}, {"to", 0.75}}};
    j["structures"][tract]["attachments"] = nlohmann::json::array({sheet});
    return j;
}

TEST(Edge, WhoAttachesComesInOrderFromItsStart)
{
    const Atlas atlas = tinyAtlas(withEdge());
    const auto edge = edgeOf(atlas, {"crest"});
    ASSERT_TRUE(edge);
    EXPECT_EQ(edge->border.from, "front");
    ASSERT_EQ(edge->stretches.size(), 2U);
    EXPECT_EQ(edge->stretches[0].structure.value, "tract");
    EXPECT_EQ(edge->stretches[0].head, "front sheet");
    EXPECT_FALSE(edge->stretches[0].origin);
    EXPECT_EQ(edge->stretches[1].structure.value, "mover");
    EXPECT_TRUE(edge->stretches[1].origin);
    EXPECT_FALSE(edgeOf(atlas, {"trochanter"})) << "no border";
    EXPECT_FALSE(edgeOf(atlas, {"nothing"}));
}

TEST(Edge, LengthGoesWithStatureAndStepsCoverIt)
{
    const Border border{"front", "back", 0.1, {"book"}, {}};
    EXPECT_DOUBLE_EQ(lengthOf(border, 0, 1, {1700}).value, 170);
    EXPECT_DOUBLE_EQ(lengthOf(border, 0.25, 0.75, {1600}).value, 80);
    EXPECT_EQ(stepsOver({170}), 7);
    EXPECT_EQ(stepsOver({175}), 7);
    EXPECT_EQ(stepsOver({175.1}), 8);
    EXPECT_EQ(stepsOver({1}), 1) << "at least one";
}

TEST(Edge, EveryEdgeOfTheAtlasHasSomeoneAlongIt)
{
    int edges = 0;
    for (const Structure &s : atlas().structures())
        if (const auto edge = edgeOf(atlas(), s.id)) {
            ++edges;
            EXPECT_FALSE(edge->stretches.empty()) << s.id;
            EXPECT_FALSE(edge->border.note.empty()) << s.id << " should say how its length was come by";
            const Millimetres length = lengthOf(edge->border, 0, 1, {1740});
            EXPECT_GT(length.value, 15) << s.id;
            EXPECT_LT(length.value, 350) << s.id << " is longer than any edge of one bone that hands follow";
        }
    EXPECT_GE(edges, 10);
}

} // namespace

} // namespace raphe::test
