// Where a patch lies, in places: against an independent count, its mirror image, every view, and right and left.
#include "core/record/PaintedPlaces.h"

#include "tests/support/BrutePaint.h"
#include "tests/support/Cases.h"
#include "tests/support/Content.h"

#include "core/anatomy/MarkPoint.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <set>

namespace raphe::test {

namespace {

PainPatch painted(View view, Side facing, std::vector<BrushStroke> strokes)
{
    PainPatch patch;
    patch.view = view;
    patch.facing = facing;
    patch.strokes = std::move(strokes);
    return patch;
}

std::vector<PaintedPlace> placesOf(const PainPatch &patch)
{
    return paintedPlaces(patch, body().of(patch.view), atlas());
}

// Left and right halves stand in other places of the file; the topmost shape of the skin counts.
std::map<Place, double> bruteShares(const PainPatch &patch, double apart, int &all)
{
    const Drawing &drawing = body().of(patch.view);
    struct Region {
        const Structure *structure;
        std::vector<Polygon> polygons;
        Box bounds;
    };
    static std::map<View, std::vector<Region>> read;
    auto &regions = read[patch.view];
    if (regions.empty())
        for (auto shape = drawing.shapes().rbegin(); shape != drawing.shapes().rend(); ++shape)
            if (shape->layer == Layer::Skin)
                regions.push_back({&atlas().at(shape->structure), chordsOf(shape->outline), shape->bounds});
    std::map<Place, double> shares;
    all = 0;
    for (double y = apart / 2; y < 1000; y += apart)
        for (double x = -500 + apart / 2; x < 500; x += apart) {
            const Point p{x, y};
            bool isOn = false;
            for (const BrushStroke &stroke : patch.strokes)
                isOn = isOn || isPainted(stroke, p);
            if (!isOn)
                continue;
            Point drawn = p;
            Side side = patch.facing;
            if (isWhole(patch.view)) {
                drawn.x = patch.facing == Side::Left ? -x : x;
            } else {
                drawn.x = std::abs(x);
                side = (x > 0) == (patch.view == View::Back) ? Side::Right : Side::Left;
            }
            for (const Region &region : regions)
                if (region.bounds.contains(drawn) && isInside(region.polygons, drawn)) {
                    ++shares[{region.structure->id, region.structure->paired ? side : Side::Midline}];
                    ++all;
                    break;
                }
        }
    for (auto &[place, share] : shares)
        share /= all;
    return shares;
}

TEST(PaintedPlaces, ADotInsideARegionGivesItAndItsSide)
{
    int regions = 0;
    std::set<std::pair<View, std::string>> covered;
    for (const Drawing &drawing : body().drawings())
        for (const Side facing : {Side::Left, Side::Right})
            for (const DrawnShape &shape : drawing.shapes()) {
                const Structure &structure = atlas().at(shape.structure);
                if (structure.kind != Kind::SurfaceRegion || (!isWhole(drawing.view()) && facing == Side::Left))
                    continue;
                for (const Side side : atlas().sides(structure)) {
                    const Place place{structure.id, side};
                    if (isWhole(drawing.view()) && side != Side::Midline && side != facing)
                        continue;
                    auto at = markPointIn(atlas(), drawing, place);
                    ASSERT_TRUE(at) << place;
                    if (isWhole(drawing.view()) && side == Side::Midline && facing == Side::Left)
                        at->x = -at->x;
                    const auto found =
                        placesOf(painted(drawing.view(), isWhole(drawing.view()) ? facing : Side::Midline, {{{*at}, 1}}));
                    ASSERT_FALSE(found.empty()) << place << wordOf(viewWords, drawing.view());
                    ++regions;
                    if (found.front().place != place) // another region is drawn over the middle of this one
                        covered.emplace(drawing.view(), place.structure.value);
                    EXPECT_EQ(found.front().place.side, place.side) << place << wordOf(viewWords, drawing.view());
                }
            }
    EXPECT_GT(regions, 400);
    const std::set<std::pair<View, std::string>> known{{View::Side, "auricular-region"}};
    EXPECT_EQ(covered, known) << "what the drawing covers";
}

TEST(PaintedPlaces, FrontShowsTheLeftOnTheRightAndBackTheRight)
{
    for (const double x : {110.0, -110.0}) { // over the shoulder
        const auto front = placesOf(painted(View::Front, Side::Midline, {{{{x, 200}}, 12}}));
        const auto back = placesOf(painted(View::Back, Side::Midline, {{{{x, 200}}, 12}}));
        ASSERT_FALSE(front.empty());
        ASSERT_FALSE(back.empty());
        EXPECT_EQ(front.front().place.side, x > 0 ? Side::Left : Side::Right);
        EXPECT_EQ(back.front().place.side, x > 0 ? Side::Right : Side::Left);
    }
}

TEST(PaintedPlaces, BesideTheBodyIsNowhere)
{
    EXPECT_TRUE(placesOf(painted(View::Front, Side::Midline, {{{{-480, 20}}, 12}, {{{480, 20}, {480, 60}}, 12}})).empty());
    EXPECT_TRUE(placesOf(painted(View::Front, Side::Midline, {})).empty());
    for (const Side facing : {Side::Left, Side::Right})
        EXPECT_TRUE(placesOf(painted(View::Side, facing, {{{{-490, 990}}, 1}})).empty());
    // A dot half beside the body is all of one place: what lies beside does not count.
    const auto edge = placesOf(painted(View::Front, Side::Midline, {{{{0, 0}}, 6}}));
    double sum = 0;
    for (const PaintedPlace &place : edge)
        sum += place.share;
    EXPECT_NEAR(sum, 1, 1e-12);
}

TEST(PaintedPlaces, WhatIsPaintedTwiceCountsOnce)
{
    const BrushStroke left{{{110, 200}}, 12};
    const BrushStroke right{{{-110, 200}}, 12};
    const auto once = placesOf(painted(View::Front, Side::Midline, {left, right}));
    EXPECT_EQ(placesOf(painted(View::Front, Side::Midline, {left, left, left, right})), once);
    ASSERT_GE(once.size(), 2U);
    EXPECT_EQ(once[0].share, once[1].share) << "the two shoulders";
    EXPECT_EQ(once[0].place, mirrored(once[1].place));
    EXPECT_EQ(once[0].place.side, Side::Left) << "the left one first, when they are equal";
}

TEST(PaintedPlaces, TheMirrorImageHasTheSameShares)
{
    RandomDrawings drawings(31);
    int compared = 0;
    for (int i = 0; i < casesWanted() / 5; ++i)
        for (PainPatch &patch : drawings.next()) {
            if (i % 3 == 0) { // every view, and lines along the midline
                patch.view = viewWords[static_cast<std::size_t>(i / 3) % viewWords.size()].first;
                patch.facing = isWhole(patch.view) ? (i % 2 ? Side::Left : Side::Right) : Side::Midline;
                patch.strokes.push_back({{{0, 100}, {0, 400}}, 15});
            }
            std::map<Place, double> here;
            std::map<Place, double> there;
            for (const PaintedPlace &place : placesOf(patch))
                here[mirrored(place.place)] = place.share;
            for (const PaintedPlace &place : placesOf(mirrored(patch)))
                there[place.place] = place.share;
            EXPECT_EQ(here, there) << "case " << i;
            compared += static_cast<int>(here.size());
        }
    EXPECT_GT(compared, casesWanted() / 4);
}

TEST(PaintedPlaces, AsAnIndependentCountHasIt)
{
    RandomDrawings drawings(5);
    int compared = 0;
    for (int i = 0; i < 14; ++i)
        for (const PainPatch &patch : drawings.next(2, 5)) {
            bool fine = false;
            for (const BrushStroke &stroke : patch.strokes)
                fine = fine || stroke.radius < 6;
            int points = 0;
            int finerPoints = 0;
            const auto same = bruteShares(patch, fine ? 1 : 2, points);
            const auto finer = bruteShares(patch, fine ? 0.5 : 1, finerPoints);
            std::map<Place, double> ours;
            double last = 1;
            for (const PaintedPlace &place : placesOf(patch)) {
                ours[place.place] = place.share;
                EXPECT_LE(place.share, last) << "most first";
                last = place.share;
            }
            for (const auto &[place, share] : same)
                if (std::abs(share - leastPaintedShare) > 0.003) { // a point on an outline may fall to either side
                    EXPECT_EQ(ours.contains(place), share >= leastPaintedShare) << place << " " << share;
                    if (ours.contains(place)) {
                        EXPECT_NEAR(ours[place], share, 0.003) << place;
                        const auto it = finer.find(place);
                        EXPECT_NEAR(ours[place], it == finer.end() ? 0 : it->second, 0.01 + 0.5 / std::sqrt(points))
                            << place << ": worse than as many points at random";
                        ++compared;
                    }
                }
            for (const auto &[place, share] : ours)
                EXPECT_TRUE(same.contains(place)) << place << " " << share;
        }
    EXPECT_GT(compared, 15);
}

} // namespace

} // namespace raphe::test
