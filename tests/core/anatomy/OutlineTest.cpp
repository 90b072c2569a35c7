// Plane geometry: area, bounds, what lies inside. Expected values are worked out by hand.
#include "core/anatomy/Outline.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace raphe {

namespace {

Cubic line(Point from, Point to)
{
    return {from, to, to};
}

Contour polygon(const std::vector<Point> &points)
{
    Contour c{points.front(), {}, true};
    for (std::size_t i = 1; i < points.size(); ++i)
        c.segments.push_back(line(points[i - 1], points[i]));
    return c;
}

Contour square(double left, double top, double size, bool clockwise = true)
{
    const double right = left + size;
    const double bottom = top + size;
    return clockwise ? polygon({{left, top}, {right, top}, {right, bottom}, {left, bottom}})
                     : polygon({{left, top}, {left, bottom}, {right, bottom}, {right, top}});
}

// Four cubics with the usual handle length 4/3 (sqrt(2) - 1) keep within 0.03 % of the radius (geometry).
Contour circle(Point centre, double radius)
{
    const double k = 4.0 / 3.0 * (std::numbers::sqrt2 - 1) * radius;
    const auto [x, y] = centre;
    return {{x + radius, y},
        {{{x + radius, y + k}, {x + k, y + radius}, {x, y + radius}}, {{x - k, y + radius}, {x - radius, y + k}, {x - radius, y}},
            {{x - radius, y - k}, {x - k, y - radius}, {x, y - radius}},
            {{x + k, y - radius}, {x + radius, y - k}, {x + radius, y}}},
        true};
}

TEST(Outline, AreaOfASquareIsItsSideSquared)
{
    EXPECT_DOUBLE_EQ(areaOf(flattened({square(2, 3, 10)})), 100);
    EXPECT_DOUBLE_EQ(areaOf(flattened({square(2, 3, 10, false)})), 100) << "the direction does not matter";
}

TEST(Outline, AreaOfACircleIsWithinOnePercent)
{
    const double exact = std::numbers::pi * 50 * 50;
    EXPECT_NEAR(areaOf(flattened({circle({100, 100}, 50)})), exact, 0.01 * exact);
}

TEST(Outline, AContourThatRunsTheOtherWayIsAHole)
{
    EXPECT_DOUBLE_EQ(areaOf(flattened({square(0, 0, 10), square(2, 2, 4, false)})), 100 - 16);
}

TEST(Outline, BoundsEncloseTheCurveAndNotItsControls)
{
    const Box box = boundsOf(flattened({circle({100, 100}, 50)}));
    EXPECT_NEAR(box.left, 50, 0.1);
    EXPECT_NEAR(box.right, 150, 0.1);
    EXPECT_NEAR(box.top, 50, 0.1);
    EXPECT_NEAR(box.bottom, 150, 0.1);
}

TEST(Outline, ChordsStayWithinTheStatedDistanceOfTheCurve)
{
    // Outline.h promises 0.05 units on our shapes; a quarter of a circle of radius 50 is longer than most of our cubics.
    for (const Polygon &p : flattened({circle({0, 0}, 50)}))
        for (std::size_t i = 1; i < p.size(); ++i)
            EXPECT_NEAR(std::hypot((p[i].x + p[i - 1].x) / 2, (p[i].y + p[i - 1].y) / 2), 50, 0.15);
}

TEST(NonzeroWinding, InsideAndOutsideOfASquare)
{
    const auto shape = flattened({square(0, 0, 10)});
    EXPECT_TRUE(contains(shape, {5, 5}));
    EXPECT_FALSE(contains(shape, {15, 5}));
    EXPECT_FALSE(contains(shape, {-1, 5}));
    EXPECT_FALSE(contains(shape, {5, -1}));
    EXPECT_FALSE(contains(shape, {5, 11}));
}

TEST(NonzeroWinding, AHoleIsOutsideWhenItRunsTheOtherWay)
{
    const auto ring = flattened({square(0, 0, 10), square(3, 3, 4, false)});
    EXPECT_TRUE(contains(ring, {1, 5}));
    EXPECT_FALSE(contains(ring, {5, 5}));
}

TEST(NonzeroWinding, ASecondContourThatRunsTheSameWayIsNoHole)
{
    // The even-odd rule would make a hole of it.
    const auto twice = flattened({square(0, 0, 10), square(3, 3, 4)});
    EXPECT_TRUE(contains(twice, {5, 5}));
}

TEST(NonzeroWinding, ARowIsInsideWhereThePointsAre)
{
    const auto shape =
        flattened({circle({50, 50}, 40), square(40, 40, 20, false), polygon({{0, 0}, {10, 0}, {10, 10}, {5, 2}, {0, 10}})});
    for (double y = 0.3; y < 100; y += 0.7) {
        const auto row = rowOf(shape, y);
        for (double x = 0.2; x < 100; x += 0.9) {
            bool inside = false;
            for (const Interval &interval : row)
                inside = inside || (x >= interval.from && x < interval.to);
            EXPECT_EQ(inside, contains(shape, {x, y})) << x << ", " << y;
        }
    }
}

TEST(NonzeroWinding, ANotchIsOutside)
{
    const auto notched = flattened({polygon({{0, 0}, {10, 0}, {10, 10}, {5, 2}, {0, 10}})});
    EXPECT_FALSE(contains(notched, {5, 8}));
    EXPECT_TRUE(contains(notched, {5, 1}));
    EXPECT_TRUE(contains(notched, {1, 7}));
}

TEST(NonzeroWinding, APointOnTheBorderOfTwoNeighboursBelongsToExactlyOne)
{
    const auto left = flattened({square(0, 0, 10)});
    const auto right = flattened({square(10, 0, 10)});
    for (double y = 0.5; y < 10; ++y)
        EXPECT_NE(contains(left, {10, y}), contains(right, {10, y})) << "at y " << y;
    const auto below = flattened({square(0, 10, 10)});
    for (double x = 0.5; x < 10; ++x)
        EXPECT_NE(contains(left, {x, 10}), contains(below, {x, 10})) << "at x " << x;
}

} // namespace

} // namespace raphe
