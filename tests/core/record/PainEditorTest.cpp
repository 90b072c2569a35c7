// Painting by hand: which patch a stroke belongs to, limits, erasing, undoing.
#include "core/record/PainEditor.h"

#include "core/record/VisitJson.h"
#include "tests/support/BrutePaint.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <cmath>

namespace raphe::test {

namespace {

const Canvas front{View::Front};
const Canvas back{View::Back};

void stroke(PainEditor &editor, const Canvas &on, const std::vector<Point> &points, double radius = 12)
{
    ASSERT_FALSE(editor.begin(on, radius, points.front()));
    for (const Point &p : points)
        ASSERT_FALSE(editor.extend(p));
    editor.end();
}

void dot(PainEditor &editor, const Canvas &on, Point at, double radius = 12)
{
    stroke(editor, on, {at}, radius);
}

// What the reader of a visit file would say of these patches; nothing when it takes them.
std::string complaint(const std::vector<PainPatch> &patches)
{
    Visit visit;
    visit.pain = patches;
    const auto read = readVisit(writeVisit(visit), "v.json", atlas());
    if (!read)
        return inWords(read.error());
    return read.value().pain == patches ? "" : "read back otherwise";
}

TEST(PainEditor, AStrokeGoesOnInThePatchThatItTouchesOrIsNear)
{
    PainEditor editor;
    dot(editor, front, {100, 200});
    dot(editor, front, {100, 230}); // edges 6 apart
    ASSERT_EQ(editor.patches().size(), 1U);
    EXPECT_EQ(editor.patches()[0].strokes.size(), 2U);
    dot(editor, front, {100, 300}); // 46 apart
    ASSERT_EQ(editor.patches().size(), 2U);
    EXPECT_EQ(editor.current(), 1);
    dot(editor, back, {100, 300});
    ASSERT_EQ(editor.patches().size(), 3U) << "another view";
    // Touches the second, which is not current: it goes on there; only near it: a new one.
    stroke(editor, front, {{100, 310}, {100, 325}});
    ASSERT_EQ(editor.patches().size(), 3U);
    EXPECT_EQ(editor.current(), 1);
    dot(editor, back, {100, 300});
    EXPECT_EQ(editor.current(), 2) << "a dot on another patch chooses it";
    EXPECT_EQ(editor.patches()[2].strokes.size(), 1U) << "and paints nothing";
    editor.choose(0);
    editor.setPainter(Painter::Practitioner);
    dot(editor, front, {100, 205});
    ASSERT_EQ(editor.patches().size(), 4U) << "another hand";
    EXPECT_EQ(editor.patches()[3].painter, Painter::Practitioner);
}

TEST(PainEditor, AStrokeThatComesToTheCurrentPatchJoinsIt)
{
    PainEditor editor;
    dot(editor, front, {100, 200});
    ASSERT_FALSE(editor.begin(front, 12, {100, 400}));
    EXPECT_EQ(editor.patches().size(), 2U) << "far at first";
    ASSERT_FALSE(editor.extend({100, 210}));
    EXPECT_EQ(editor.patches().size(), 1U);
    EXPECT_TRUE(editor.end());
    EXPECT_EQ(editor.patches()[0].strokes.size(), 2U);
    EXPECT_TRUE(editor.undo());
    EXPECT_EQ(editor.patches()[0].strokes.size(), 1U);
}

TEST(PainEditor, SideViewsOfBothSidesAreTwoViews)
{
    PainEditor editor;
    dot(editor, canvasOf(View::Side, Side::Left), {10, 200});
    dot(editor, canvasOf(View::Side, Side::Right), {10, 200});
    ASSERT_EQ(editor.patches().size(), 2U);
    EXPECT_EQ(editor.patches()[0].facing, Side::Left);
    EXPECT_EQ(editor.patches()[1].facing, Side::Right);
    EXPECT_EQ(canvasOf(View::Front, Side::Left), front) << "facing counts for whole views";
    EXPECT_EQ(complaint(editor.patches()), "");
}

TEST(PainEditor, ThinnedLinesPaintTheSame)
{
    PainEditor editor;
    BrushStroke hand{{}, 12};
    for (int i = 0; i < 900; ++i) // a slow spiral, as a pen reports it
        hand.points.push_back({60 + i * 0.05 * std::cos(i * 0.03), 300 + i * 0.05 * std::sin(i * 0.03)});
    stroke(editor, front, hand.points);
    const BrushStroke &kept = editor.patches()[0].strokes[0];
    EXPECT_LT(kept.points.size(), hand.points.size() / 3);
    int either = 0;
    int differ = 0;
    for (int y = 200; y < 400; ++y)
        for (int x = -40; x < 160; ++x) {
            const Point p{x + 0.5, y + 0.5};
            either += isPainted(kept, p) || isPainted(hand, p);
            differ += isPainted(kept, p) != isPainted(hand, p);
        }
    EXPECT_LT(differ, either / 50);
}

TEST(PainEditor, AScribbleKeepsWithinTheLimitsAndTells)
{
    PainEditor editor;
    RandomDrawings random(3);
    std::vector<PainLimit> told;
    ASSERT_FALSE(editor.begin(front, 12, {0, 500}));
    for (int i = 0; i < 30000; ++i)
        if (const auto limit = editor.extend({random.between(-500, 500), random.between(0, 1000)}))
            told.push_back(*limit);
    editor.end();
    EXPECT_EQ(told, std::vector<PainLimit>{PainLimit::Points}) << "said once a stroke";
    ASSERT_EQ(editor.patches().size(), 1U);
    EXPECT_GT(editor.patches()[0].strokes.size(), 3U) << "a long line goes on in further strokes";
    std::size_t points = 0;
    for (const BrushStroke &one : editor.patches()[0].strokes)
        points += one.points.size();
    EXPECT_GT(points, PainLimits::pointsOfAll * 9 / 10) << "nothing is thrown away";
    EXPECT_EQ(complaint(editor.patches()), "");
    const auto before = editor.patches();
    if (points == PainLimits::pointsOfAll) {
        EXPECT_EQ(editor.begin(front, 12, {0, 500}), PainLimit::Points);
        EXPECT_EQ(editor.patches(), before);
    }
    EXPECT_TRUE(editor.undo());
    EXPECT_TRUE(editor.patches().empty());
}

TEST(PainEditor, ASlowScribbleOfAsManyPointsIsThinnedAndNotRefused)
{
    PainEditor editor;
    ASSERT_FALSE(editor.begin(front, 12, {0, 300}));
    for (int i = 0; i < 30000; ++i)
        ASSERT_FALSE(editor.extend({100 * std::sin(i * 0.004), 300 + i * 0.01}));
    editor.end();
    EXPECT_EQ(complaint(editor.patches()), "");
}

TEST(PainEditor, TooManyPatchesAndStrokesAreRefused)
{
    PainEditor editor;
    std::vector<PainPatch> patches(PainLimits::patches);
    for (std::size_t i = 0; i < patches.size(); ++i)
        patches[i].strokes = {{{{400, static_cast<double>(i) * 10}}, 1}};
    editor.setPatches(patches);
    EXPECT_EQ(editor.begin(front, 1, {-400, 5}), PainLimit::Patches);
    EXPECT_FALSE(editor.end());
    EXPECT_EQ(editor.patches(), patches) << "nothing is lost";
    std::vector<PainPatch> full(1);
    full[0].strokes.assign(PainLimits::strokes, {{{100, 100}}, 5});
    editor.setPatches(full);
    editor.choose(0);
    EXPECT_EQ(editor.begin(front, 5, {100, 104}), PainLimit::Strokes);
    EXPECT_EQ(editor.patches(), full);
    dot(editor, front, {-100, 100});
    EXPECT_EQ(editor.patches().size(), 2U) << "elsewhere there is room";
}

TEST(PainEditor, NumbersStayWithinTheView)
{
    PainEditor editor;
    dot(editor, front, {1e6, -5}, 1e6);
    dot(editor, back, {-0.01, 1e6}, 0);
    EXPECT_EQ(complaint(editor.patches()), "");
    EXPECT_EQ(editor.patches()[0].strokes[0], (BrushStroke{{{500, 0}}, PainLimits::greatestRadius}));
    EXPECT_FALSE(std::signbit(editor.patches()[1].strokes[0].points[0].x));
}

TEST(PainEditor, TheEraserTakesTheStrokesThatItTouches)
{
    PainEditor editor;
    stroke(editor, front, {{50, 300}, {150, 300}});
    stroke(editor, front, {{50, 330}, {150, 330}});
    dot(editor, back, {100, 300});
    ASSERT_EQ(editor.patches().size(), 2U);
    EXPECT_FALSE(editor.erase(front, {100, 200}, {100, 280})) << "beside";
    EXPECT_TRUE(editor.erase(front, {100, 200}, {100, 310})) << "moved over in one go";
    EXPECT_EQ(editor.patches()[0].strokes.size(), 1U);
    EXPECT_TRUE(editor.erase(front, {100, 310}, {100, 320}));
    ASSERT_EQ(editor.patches().size(), 1U) << "a patch without strokes is none";
    EXPECT_EQ(editor.patches()[0].view, View::Back) << "the other view is untouched";
    EXPECT_EQ(editor.current(), 0) << "the same patch as before";
    editor.endErasing();
    EXPECT_TRUE(editor.undo()) << "one movement, taken back at once";
    ASSERT_EQ(editor.patches().size(), 2U);
    EXPECT_EQ(editor.patches()[0].strokes.size(), 2U);
}

TEST(PainEditor, UndoGoesBackChangeByChange)
{
    PainEditor editor;
    EXPECT_FALSE(editor.undo());
    dot(editor, front, {100, 200});
    EXPECT_TRUE(editor.setIntensity(PainScore{3}));
    EXPECT_TRUE(editor.setIntensity(PainScore{4}));
    EXPECT_FALSE(editor.setIntensity(PainScore{4})) << "no change";
    EXPECT_TRUE(editor.setQuality(PainQuality::Numb));
    dot(editor, back, {100, 200});
    EXPECT_TRUE(editor.removeCurrent());
    EXPECT_EQ(editor.current(), -1);
    EXPECT_FALSE(editor.setQuality(PainQuality::Stiff)) << "of no patch";
    EXPECT_TRUE(editor.clear());
    EXPECT_TRUE(editor.patches().empty());
    EXPECT_TRUE(editor.undo());
    EXPECT_EQ(editor.patches().size(), 1U);
    EXPECT_TRUE(editor.undo());
    EXPECT_EQ(editor.patches().size(), 2U);
    EXPECT_TRUE(editor.undo());
    EXPECT_EQ(editor.patches().size(), 1U);
    EXPECT_EQ(editor.patches()[0].quality, PainQuality::Numb);
    EXPECT_TRUE(editor.undo());
    EXPECT_FALSE(editor.patches()[0].quality);
    EXPECT_EQ(editor.patches()[0].intensity, PainScore{4});
    EXPECT_TRUE(editor.undo());
    EXPECT_FALSE(editor.patches()[0].intensity) << "both steps of the slider";
    EXPECT_TRUE(editor.undo());
    EXPECT_TRUE(editor.patches().empty());
    EXPECT_FALSE(editor.undo());
}

TEST(PainEditor, WhatWasConfirmedIsConfirmedAnewOnceItLiesElsewhere)
{
    std::vector<PainPatch> patches(1);
    patches[0].strokes = {{{{100, 200}}, 12}, {{{100, 220}}, 12}};
    patches[0].confirmed = true;
    PainEditor editor;
    const auto fresh = [&] {
        editor.setPatches({});
        editor.setPatches(patches);
        editor.choose(0);
    };
    fresh();
    editor.setIntensity(PainScore{5});
    EXPECT_TRUE(editor.patches()[0].confirmed) << "the place is the same";
    dot(editor, front, {100, 180});
    EXPECT_FALSE(editor.patches()[0].confirmed);
    fresh();
    EXPECT_TRUE(editor.erase(front, {100, 190}, {100, 190}));
    EXPECT_FALSE(editor.patches()[0].confirmed);
    fresh();
    dot(editor, front, {100, 500});
    EXPECT_TRUE(editor.patches()[0].confirmed) << "another patch was painted";
    fresh();
    ASSERT_FALSE(editor.begin(front, 12, {100, 500}));
    ASSERT_FALSE(editor.extend({100, 210}));
    editor.end();
    EXPECT_FALSE(editor.patches()[0].confirmed) << "a stroke joined it";
}

TEST(PainEditor, ADotIsTakenAwayWhereItWasPainted)
{
    PainEditor editor;
    dot(editor, front, {100.04, 200});
    EXPECT_FALSE(editor.removeDot(front, {101, 200}));
    EXPECT_FALSE(editor.removeDot(back, {100.04, 200}));
    EXPECT_TRUE(editor.removeDot(front, {100.04, 200}));
    EXPECT_TRUE(editor.patches().empty());
    EXPECT_TRUE(editor.undo());
    EXPECT_EQ(editor.patches().size(), 1U);
}

TEST(PainEditor, WhatOthersSetWhileAStrokeIsPainted)
{
    PainEditor editor;
    dot(editor, front, {100, 200});
    const auto before = editor.patches();
    ASSERT_FALSE(editor.begin(back, 12, {100, 200}));
    editor.setPatches(before);
    EXPECT_TRUE(editor.isPainting()) << "the same patches change nothing";
    editor.setPatches({});
    EXPECT_FALSE(editor.isPainting());
    EXPECT_FALSE(editor.extend({100, 300}));
    EXPECT_TRUE(editor.patches().empty());
    ASSERT_FALSE(editor.begin(back, 12, {100, 200}));
    editor.cancel();
    EXPECT_TRUE(editor.patches().empty());
    EXPECT_FALSE(editor.undo()) << "nothing was painted";
}

} // namespace

} // namespace raphe::test
