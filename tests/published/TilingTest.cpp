// The surface regions cover the whole skin of each view and do not cover each other. The limits are the project's own:
// at least 99.5 % covered, at most 0.5 % covered twice, at least 35 regions on each side.
#include "tests/published/Silhouette.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
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
        for (double x = bounds.left - 5.5; x < bounds.right + 5; x += step) {
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

// Bare samples that fill a square of one unit: a gap that a finger could fall into.
TEST_P(Tiling, HasNoGapWiderThanOneUnit)
{
    const Drawing &drawing = body().of(GetParam());
    const Silhouette silhouette(drawing);
    const Box bounds = boundsOf(silhouette.polygons());
    constexpr double fine = 0.5;
    const auto columns = static_cast<std::size_t>((bounds.right - bounds.left) / fine) + 1;
    std::vector<int> run(columns); // bare samples one below the other, up to here
    int gaps = 0;
    for (double y = fine / 2; y < 1000; y += fine) {
        std::vector<bool> bare(columns);
        const auto set = [&](const std::vector<Polygon> &polygons, bool value) {
            for (const Interval &inside : rowOf(polygons, y))
                for (std::size_t i = 0; i < columns; ++i)
                    if (const double x = bounds.left + (static_cast<double>(i) + 0.5) * fine; x >= inside.from && x < inside.to)
                        bare[i] = value;
        };
        set(silhouette.polygons(), true);
        for (const DrawnShape &shape : drawing.shapes())
            if (shape.layer == Layer::Skin && y >= shape.bounds.top && y <= shape.bounds.bottom)
                set(shape.polygons, false);
        int across = 0;
        for (std::size_t i = 0; i < columns; ++i) {
            run[i] = bare[i] ? run[i] + 1 : 0;
            across = run[i] >= 3 ? across + 1 : 0;
            gaps += across >= 3;
        }
    }
    EXPECT_EQ(gaps, 0) << "source: limit of the project itself";
}

TEST_P(Tiling, HasThirtyFiveRegionsASide)
{
    if (isInset(GetParam()))
        return; // a foot, a hand or a head has fewer
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

INSTANTIATE_TEST_SUITE_P(Views, Tiling, testing::Values(View::Front, View::Back, View::Side, View::Sole, View::Palm, View::Head),
    [](const auto &each) { return std::string(wordOf(viewWords, each.param)); });

// What a hand can reach is drawn in some view; what is not drawn stands in resources/drawing/unreachable.json with the reason.
TEST(Drawn, EverythingThatAHandCanReach)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/resources/drawing/unreachable.json");
    const auto list = nlohmann::json::parse(in);
    std::map<std::string, std::string> unreachable;
    for (const auto &entry : list.at("structures"))
        unreachable[entry.at("id")] = entry.at("reason");
    const auto isDrawn = [](const StructureId &id) {
        return std::any_of(
            body().drawings().begin(), body().drawings().end(), [&](const Drawing &drawing) { return drawing.shows(id); });
    };
    for (const Structure &s : atlas().structures()) {
        const bool counted = s.kind == Kind::Muscle || s.kind == Kind::Fascia || s.kind == Kind::Joint || s.kind == Kind::Landmark
            || s.kind == Kind::SurfaceRegion || s.kind == Kind::SuperficialFascia || s.kind == Kind::Bone
            || s.kind == Kind::Ligament || s.kind == Kind::Tendon;
        if (!counted || (!atlas().partsOf(s.id).empty() && !isDrawn(s.id)))
            continue; // a whole is drawn by its parts
        EXPECT_NE(isDrawn(s.id), unreachable.contains(s.id.value)) << s.id << " is drawn and listed, or neither";
    }
    for (const auto &[id, reason] : unreachable) {
        EXPECT_TRUE(atlas().find({id})) << id;
        EXPECT_GT(reason.size(), 10U) << id;
    }
    std::cout << "not drawn, each with its reason: " << unreachable.size() << '\n';
}

} // namespace

} // namespace raphe::test
