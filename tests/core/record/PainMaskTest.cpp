// What a pain drawing covers, against brute force (BrutePaint.h): every cell, the percent of the body by part, by region and in
// all; its mirror image; and the edges: nothing drawn, a dot at the outline, strokes beside the body, views that do not count.
#include "core/record/PainMask.h"

#include "core/anatomy/BodyShare.h"
#include "core/anatomy/StrokeRaster.h"
#include "tests/support/BrutePaint.h"
#include "tests/support/Cases.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <iostream>
#include <set>
#include <tuple>

namespace raphe::test {

namespace {

const SurfaceMask &silhouette()
{
    static const SurfaceMask mask = silhouetteMask(body());
    return mask;
}

const BodyShare &shares()
{
    static const auto read = readEmbeddedBodyShare(atlas(), body());
    EXPECT_TRUE(read.ok()) << (read ? "" : inWords(read.error()));
    return read.value();
}

const Picture &picture(View view)
{
    static const std::map<View, Picture> both{
        {View::Front, bodyPicture(body().of(View::Front))}, {View::Back, bodyPicture(body().of(View::Back))}};
    return both.at(view);
}

int differences(const SurfaceMask &mask, View view, const Picture &expected)
{
    int count = 0;
    for (int y = 0; y < 1000; ++y)
        for (int x = -500; x < 500; ++x)
            count += mask.isMarked(view, x, y) != expected[pixelAt(x, y)];
    return count;
}

// The same percent from the table and the shapes themselves, cell by cell.
class BrutePercent {
public:
    BrutePercent()
    {
        const auto table = nlohmann::json::parse(sourceText("resources/body-shares.json"));
        for (const View view : {View::Front, View::Back}) {
            struct Region {
                std::string id;
                std::vector<Polygon> polygons;
                Box bounds;
            };
            std::vector<Region> regions;
            for (const DrawnShape &shape : body().of(view).shapes())
                if (shape.layer == Layer::Skin)
                    regions.push_back({shape.structure.value, chordsOf(shape.outline), shape.bounds});
            auto &at = m_regionAt[view];
            at.resize(picture(view).size());
            for (int y = 0; y < 1000; ++y)
                for (int x = 0; x < 500; ++x)
                    for (const Region &region : regions)
                        if (const Point p{x + 0.5, y + 0.5};
                            picture(view)[pixelAt(x, y)] && region.bounds.contains(p) && isInside(region.polygons, p)) {
                            at[pixelAt(x, y)] = at[pixelAt(-1 - x, y)] = region.id;
                            break;
                        }
            for (const auto &part : table["parts"]) {
                const auto &seen = part.at(std::string(wordOf(viewWords, view)));
                std::set<std::string> own;
                for (const auto &region : seen.at("regions"))
                    own.insert(region.get<std::string>());
                std::map<bool, int> cells; // of each half; all in one when the part is not paired
                const bool paired = part.at("paired").get<bool>();
                for (int pass = 0; pass < 2; ++pass)
                    for (int y = 0; y < 1000; ++y)
                        for (int x = -500; x < 500; ++x) {
                            const std::size_t pixel = pixelAt(x, y);
                            if (at[pixel].empty() || !own.contains(at[pixel]))
                                continue;
                            const bool half = paired && x < 0;
                            if (pass == 0)
                                ++cells[half];
                            else
                                m_worth[view][pixel] = seen.at("percent").get<double>() / cells[half];
                        }
            }
        }
    }

    [[nodiscard]] double of(const std::map<View, Picture> &marked) const
    {
        double sum = 0;
        for (const auto &[view, cells] : marked)
            for (std::size_t pixel = 0; pixel < cells.size(); ++pixel)
                if (cells[pixel])
                    if (const auto it = m_worth.at(view).find(pixel); it != m_worth.at(view).end())
                        sum += it->second;
        return sum;
    }
    [[nodiscard]] std::map<Place, double> byRegion(const std::map<View, Picture> &marked) const
    {
        std::map<Place, double> out;
        for (const auto &[view, cells] : marked)
            for (int y = 0; y < 1000; ++y)
                for (int x = -500; x < 500; ++x)
                    if (const std::size_t pixel = pixelAt(x, y); cells[pixel] && !m_regionAt.at(view)[pixel].empty()) {
                        const StructureId id{m_regionAt.at(view)[pixel]};
                        const bool right = (view == View::Back) == (x >= 0);
                        const Side side = !atlas().at(id).paired ? Side::Midline : right ? Side::Right : Side::Left;
                        out[{id, side}] += m_worth.at(view).at(pixel);
                    }
        return out;
    }

private:
    std::map<View, std::vector<std::string>> m_regionAt;
    std::map<View, std::map<std::size_t, double>> m_worth; // percent of the body
};

PainPatch patchOf(View view, std::vector<BrushStroke> strokes)
{
    PainPatch patch;
    patch.view = view;
    patch.strokes = std::move(strokes);
    return patch;
}

TEST(PainMask, TheSilhouetteIsTheDrawings)
{
    for (const View view : {View::Front, View::Back})
        EXPECT_EQ(differences(silhouette(), view, picture(view)), 0) << wordOf(viewWords, view);
    std::cout << "cells of the body: front " << silhouette().count(View::Front) << ", back " << silhouette().count(View::Back)
              << '\n';
    EXPECT_NEAR(shares().percentOf(silhouette()), 100, 1e-9) << "a body painted all over";
}

TEST(PainMask, AgreesWithBruteForceOnRandomDrawings)
{
    const BrutePercent brute;
    RandomDrawings drawings(20261127);
    double greatest = 0;
    int empty = 0;
    for (int i = 0; i < casesWanted(); ++i) {
        const auto pain = drawings.next();
        const SurfaceMask mask = painMask(pain, silhouette());
        std::map<View, Picture> expected;
        for (const View view : {View::Front, View::Back}) {
            expected[view] = brutePicture(pain, view, picture(view));
            ASSERT_EQ(differences(mask, view, expected[view]), 0) << "drawing " << i << ", " << wordOf(viewWords, view);
        }
        const double percent = shares().percentOf(mask);
        ASSERT_NEAR(percent, brute.of(expected), 1e-9) << "drawing " << i;
        const auto regions = shares().percentByRegion(mask);
        const auto bruteRegions = brute.byRegion(expected);
        ASSERT_EQ(regions.size(), bruteRegions.size()) << "drawing " << i;
        double sum = 0;
        for (const RegionShare &share : regions) {
            ASSERT_TRUE(bruteRegions.contains(share.region)) << share.region;
            ASSERT_NEAR(share.percent, bruteRegions.at(share.region), 1e-9) << share.region;
            ASSERT_LE(share.percent, share.of + 1e-12) << share.region;
            sum += share.percent;
        }
        ASSERT_NEAR(sum, percent, 1e-9);
        greatest = std::max(greatest, percent);
        empty += percent == 0;
    }
    EXPECT_GT(greatest, 5) << "the drawings are too small to tell";
    EXPECT_LT(empty, casesWanted() / 2) << "too many drawings are empty";
    std::cout << casesWanted() << " drawings, up to " << greatest << " % of the body, " << empty << " empty\n";
}

TEST(PainMask, AMirroredDrawingHasTheMirroredAnswer)
{
    RandomDrawings drawings(7);
    for (int i = 0; i < casesWanted(); ++i) {
        const auto pain = drawings.next(4, 30);
        std::vector<PainPatch> other;
        for (const PainPatch &patch : pain)
            other.push_back(mirrored(patch));
        const SurfaceMask here = painMask(pain, silhouette());
        const SurfaceMask there = painMask(other, silhouette());
        int wrong = 0;
        for (const View view : {View::Front, View::Back})
            for (int y = 0; y < 1000; ++y)
                for (int x = -500; x < 500; ++x)
                    wrong += here.isMarked(view, x, y) != there.isMarked(view, -1 - x, y);
        ASSERT_EQ(wrong, 0) << "drawing " << i;
        ASSERT_EQ(shares().percentOf(here), shares().percentOf(there));
        const auto parts = [](const SurfaceMask &mask, bool mirror) {
            std::map<std::tuple<std::string, View, Side>, double> out;
            const auto percent = shares().percentByPart(mask);
            for (std::size_t p = 0; p < percent.size(); ++p) {
                const BodyPart &part = shares().parts()[p];
                out[{part.id, part.view, mirror ? mirrored(part.side) : part.side}] = percent[p];
            }
            return out;
        };
        ASSERT_EQ(parts(here, false), parts(there, true));
        const auto regions = [](const SurfaceMask &mask, bool mirror) {
            std::map<Place, std::pair<double, double>> out;
            for (const RegionShare &share : shares().percentByRegion(mask))
                out[mirror ? mirrored(share.region) : share.region] = {share.percent, share.of};
            return out;
        };
        ASSERT_EQ(regions(here, false), regions(there, true));
    }
}

TEST(PainMask, NothingDrawnIsNothing)
{
    EXPECT_EQ(painMask({}, silhouette()), SurfaceMask{});
    EXPECT_EQ(painMask({PainPatch{}}, silhouette()), SurfaceMask{}) << "no strokes";
    EXPECT_EQ(painMask({patchOf(View::Front, {BrushStroke{{}, 10}})}, silhouette()), SurfaceMask{}) << "no points";
    EXPECT_EQ(shares().percentOf(SurfaceMask{}), 0);
    EXPECT_TRUE(shares().percentByRegion(SurfaceMask{}).empty());
}

TEST(PainMask, ADotIsADisc)
{
    // 5 units around the corner of four cells: 80 middles lie within (counted by hand, 20 in each quarter).
    const SurfaceMask mask = painMask({patchOf(View::Back, {{{{30, 300}}, 5}})}, silhouette());
    EXPECT_EQ(mask.count(View::Back), 80);
    EXPECT_EQ(mask.count(View::Front), 0);
    // The least brush reaches the middle of a cell wherever it stands.
    RandomDrawings at(3);
    for (int i = 0; i < 100; ++i) {
        SurfaceMask dot;
        paintStroke(dot, View::Front, {{{at.between(-499, 499), at.between(1, 999)}}, PainLimits::leastRadius});
        EXPECT_GE(dot.count(View::Front), 1);
    }
    // A middle exactly at the radius counts: (0.5, 0.5) to (3.5, 4.5) is 5.
    SurfaceMask exact;
    paintStroke(exact, View::Front, {{{0.5, 500.5}}, 5});
    EXPECT_TRUE(exact.isMarked(View::Front, 3, 504));
    EXPECT_FALSE(exact.isMarked(View::Front, 4, 504));
}

TEST(PainMask, ADotAtTheOutlineCountsTheBodyOnly)
{
    const auto line = chordsOf(body().of(View::Front).silhouette()).front();
    const Point edge = line[line.size() / 3];
    SurfaceMask whole;
    paintStroke(whole, View::Front, {{edge}, 8});
    const SurfaceMask clipped = painMask({patchOf(View::Front, {{{edge}, 8}})}, silhouette());
    EXPECT_GT(clipped.count(View::Front), 0);
    EXPECT_LT(clipped.count(View::Front), whole.count(View::Front));
    EXPECT_EQ(clipped.countBoth(silhouette(), View::Front), clipped.count(View::Front));
}

TEST(PainMask, BesideTheBodyIsNothing)
{
    const BrushStroke corner{{{-500, 0}, {-400, 0}, {-400, 5}}, 20};
    EXPECT_EQ(painMask({patchOf(View::Front, {corner})}, silhouette()), SurfaceMask{});
    EXPECT_EQ(painMask({patchOf(View::Back, {corner})}, silhouette()), SurfaceMask{});
    // Beyond the view nothing is marked, and nothing breaks.
    SurfaceMask mask;
    paintStroke(mask, View::Front, {{{-1e9, -1e9}}, 100});
    paintStroke(mask, View::Front, {{{0, 2000}, {5000, 2000}}, 100});
    EXPECT_EQ(mask, SurfaceMask{});
    paintStroke(mask, View::Front, {{{-1e6, 500.5}, {1e6, 500.5}}, 1});
    EXPECT_EQ(mask.count(View::Front), 3000) << "three rows, from end to end";
}

TEST(PainMask, SideViewAndInsetsMarkNothing)
{
    const BrushStroke stroke{{{0, 300}, {10, 400}}, 30};
    for (const View view : {View::Side, View::Sole, View::Palm, View::Head})
        EXPECT_EQ(painMask({patchOf(view, {stroke})}, silhouette()), SurfaceMask{}) << wordOf(viewWords, view);
    EXPECT_GT(painMask({patchOf(View::Front, {stroke})}, silhouette()).count(View::Front), 1000);
}

TEST(PainMask, TheSideOfARegionIsThePatients)
{
    // Front, x > 0: the patient's left; back, x > 0: the right.
    const auto sideOf = [](View view, double x) {
        const auto regions = shares().percentByRegion(painMask({patchOf(view, {{{{x, 800}}, 4}})}, silhouette()));
        return regions.empty() ? Side::Midline : regions.front().region.side;
    };
    double inLeg = 0;
    for (int x = 5; x < 200 && inLeg == 0; ++x)
        if (silhouette().isMarked(View::Front, x - 4, 800) && silhouette().isMarked(View::Front, x + 4, 800))
            inLeg = x;
    EXPECT_EQ(sideOf(View::Front, inLeg), Side::Left);
    EXPECT_EQ(sideOf(View::Front, -inLeg), Side::Right);
    EXPECT_EQ(sideOf(View::Back, inLeg), Side::Right);
    EXPECT_EQ(sideOf(View::Back, -inLeg), Side::Left);
}

} // namespace

} // namespace raphe::test
