// What the atlas derives and answers: superficial fascia, sides, spinal segments, spoken names; places and mirroring.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe::test {

namespace {

TEST(SuperficialFascia, IsDerivedFromEachSurfaceRegion)
{
    auto json = tinyJson();
    json["structures"][region]["ids"] = {{"uberon", {"UBERON:1"}}, {"fma", {"FMA:1"}}};
    const Atlas tiny = tinyAtlas(json);
    const Structure *skin = tiny.find({"flank"});
    const Structure *fascia = tiny.find({"sf-flank"});
    ASSERT_TRUE(skin);
    ASSERT_TRUE(fascia);
    EXPECT_EQ(fascia->kind, Kind::SuperficialFascia);
    EXPECT_EQ(fascia->layer, Layer::SuperficialFascia);
    EXPECT_EQ(fascia->paired, skin->paired);
    EXPECT_EQ(fascia->sources, skin->sources);
    EXPECT_EQ(fascia->names.english, "superficial fascia of the english flank");
    EXPECT_EQ(fascia->names.plain.size(), 3U);
    for (const auto &[language, name] : fascia->names.plain) {
        EXPECT_NE(name, skin->names.plain.at(language)) << language;
        EXPECT_NE(name.find(skin->names.plain.at(language)), std::string::npos) << language;
    }
    EXPECT_TRUE(fascia->uberon.empty()) << "the identifier is the region's, not its fascia's";
    EXPECT_TRUE(fascia->fma.empty());
}

TEST(SuperficialFascia, ExistsOnceForEveryRegionOfTheBuiltInAtlas)
{
    std::size_t regions = 0;
    std::size_t fasciae = 0;
    for (const Structure &s : atlas().structures()) {
        fasciae += s.kind == Kind::SuperficialFascia;
        if (s.kind != Kind::SurfaceRegion)
            continue;
        ++regions;
        EXPECT_TRUE(atlas().find({"sf-" + s.id.value})) << s.id;
    }
    EXPECT_GT(regions, 0U);
    EXPECT_EQ(fasciae, regions);
}

TEST(Sides, APairedStructureHasLeftAndRight)
{
    const Atlas tiny = tinyAtlas();
    EXPECT_EQ(tiny.sides(tiny.at({"mover"})), (std::vector{Side::Left, Side::Right}));
    EXPECT_EQ(tiny.sides(tiny.at({"sacrum"})), (std::vector{Side::Midline}));
}

TEST(Sides, ASpinalSegmentHasLeftRightAndMidline)
{
    const Atlas tiny = tinyAtlas();
    EXPECT_TRUE(tiny.isSpinalSegment({"lumbosacral"}));
    EXPECT_EQ(tiny.sides(tiny.at({"lumbosacral"})), (std::vector{Side::Left, Side::Right, Side::Midline}));
}

TEST(Sides, NeitherAPairedJointNorTheSymphysisIsASpinalSegment)
{
    const Atlas tiny = tinyAtlas();
    EXPECT_FALSE(tiny.isSpinalSegment({"hip"}));
    EXPECT_FALSE(tiny.isSpinalSegment({"sacroiliac"}));
    EXPECT_FALSE(tiny.isSpinalSegment({"symphysis"})) << "joins a paired bone to itself";
    EXPECT_FALSE(tiny.isSpinalSegment({"femur"}));
}

TEST(BonesOf, ALandmarkIsItsBoneAndSoftTissueIsNone)
{
    const Atlas tiny = tinyAtlas();
    EXPECT_EQ(tiny.bonesOf({"crest"}), (std::vector<StructureId>{{"hip-bone"}}));
    EXPECT_EQ(tiny.bonesOf({"femur"}), (std::vector<StructureId>{{"femur"}}));
    EXPECT_TRUE(tiny.bonesOf({"tract"}).empty());
    EXPECT_TRUE(tiny.bonesOf({"nothing"}).empty());
}

TEST(Spoken, AlwaysWritesTheSideOut)
{
    const Atlas tiny = tinyAtlas();
    EXPECT_EQ(tiny.spoken({{"mover"}, Side::Left}), "left english mover");
    EXPECT_EQ(tiny.spoken({{"mover"}, Side::Right}), "right english mover");
    EXPECT_EQ(tiny.spoken({{"lumbosacral"}, Side::Midline}), "english lumbosacral, midline");
    EXPECT_EQ(tiny.spoken({{"sacrum"}, Side::Midline}), "english sacrum");
    EXPECT_EQ(tiny.plain({{"mover"}, Side::Right}, "de"), "deutsch mover, right side") << "no translation is loaded";
    EXPECT_EQ(tiny.plain({{"mover"}, Side::Right}, "xx"), "plain mover, right side") << "falls back on English";
}

TEST(Mirroring, TwiceGivesThePlaceBack)
{
    for (const Structure &s : atlas().structures())
        for (const Side side : atlas().sides(s)) {
            const Place place{s.id, side};
            EXPECT_EQ(mirrored(mirrored(place)), place);
            EXPECT_EQ(mirrored(place).structure, place.structure);
            const auto sides = atlas().sides(s);
            EXPECT_NE(std::find(sides.begin(), sides.end(), mirrored(side)), sides.end()) << mirrored(place) << " does not exist";
        }
    EXPECT_EQ(mirrored(Side::Left), Side::Right);
    EXPECT_EQ(mirrored(Side::Midline), Side::Midline);
}

} // namespace

} // namespace raphe::test
