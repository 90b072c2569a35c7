// The surface regions cover the whole skin of each view and do not cover each other. The limits are the project's own:
// at least 99.5 % covered, at most 0.5 % covered twice, at least 35 regions on each side.
#include "tests/published/Silhouette.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <iostream>
#include <map>
#include <set>

namespace raphe::test {

namespace {

constexpr double step = 1; // units between samples, 1.7 mm of a body of 1.74 m

class Tiling : public testing::TestWithParam<View> { };

TEST_P(Tiling, CoversTheSkinOnce)
{
    const Drawing &drawing = body().of(GetParam());
    const Silhouette silhouette(drawing);
    const Box bounds = boundsOf(silhouette.polygons());
    std::vector<const DrawnShape *> skin;
    for (const DrawnShape &shape : drawing.shapes())
        if (shape.layer == Layer::Skin)
            skin.push_back(&shape);
    std::size_t inside = 0;
    std::size_t bare = 0;
    std::size_t twice = 0;
    std::size_t outside = 0;
    std::map<std::string, int> bareRows;
    for (double y = step / 2; y < 1000; y += step)
        for (double x = step / 2; x < bounds.right + 5; x += step) {
            std::set<std::string> regions;
            for (const DrawnShape *shape : skin)
                if (shape->bounds.contains({x, y}) && contains(shape->polygons, {x, y}))
                    regions.insert(shape->structure.value);
            if (!silhouette.holds({x, y})) {
                outside += !regions.empty();
                continue;
            }
            ++inside;
            twice += regions.size() > 1;
            bare += regions.empty();
            if (regions.empty())
                ++bareRows["y " + std::to_string(static_cast<int>(y / 20) * 20) + ", x "
                    + std::to_string(static_cast<int>(x / 20) * 20)];
        }
    const auto percent = [&](std::size_t n) { return 100.0 * static_cast<double>(n) / static_cast<double>(inside); };
    std::cout << wordOf(viewWords, GetParam()) << ": covered " << 100 - percent(bare) << " %, twice " << percent(twice)
              << " %, outside of the silhouette " << percent(outside) << " %\n";
    const std::string source = "source: limits of the project itself";
    EXPECT_GE(100 - percent(bare), 99.5) << source;
    EXPECT_LE(percent(twice), 0.5) << source;
    EXPECT_LE(percent(outside), 0.5) << source;
    if (percent(bare) > 0.5)
        for (const auto &[where, count] : bareRows)
            std::cout << "  bare near " << where << ": " << count << " samples\n";
}

TEST_P(Tiling, HasThirtyFiveRegionsASide)
{
    std::set<std::string> regions;
    for (const DrawnShape &shape : body().of(GetParam()).shapes())
        if (shape.layer == Layer::Skin)
            regions.insert(shape.structure.value);
    std::cout << wordOf(viewWords, GetParam()) << ": " << regions.size() << " regions a side\n";
    EXPECT_GE(regions.size(), 35U) << "source: limit of the project itself";
}

TEST_P(Tiling, GivesTheSuperficialFasciaTheOutlineOfItsRegion)
{
    std::map<std::string, double> skin;
    std::map<std::string, double> fascia;
    for (const DrawnShape &shape : body().of(GetParam()).shapes())
        if (shape.layer == Layer::Skin)
            skin["sf-" + shape.structure.value] += areaOf(shape.polygons);
        else if (shape.layer == Layer::SuperficialFascia)
            fascia[shape.structure.value] += areaOf(shape.polygons);
    EXPECT_EQ(skin, fascia);
}

INSTANTIATE_TEST_SUITE_P(Views, Tiling, testing::Values(View::Front, View::Back),
    [](const auto &each) { return each.param == View::Front ? "Front" : "Back"; });

TEST(TilingOfBothViews, EveryRegionOfTheAtlasIsDrawnSomewhere)
{
    std::set<std::string> drawn;
    for (const View view : {View::Front, View::Back})
        for (const DrawnShape &shape : body().of(view).shapes())
            drawn.insert(shape.structure.value);
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::SurfaceRegion) {
            EXPECT_TRUE(drawn.contains(s.id.value)) << s.id;
        }
}

} // namespace

} // namespace raphe::test
