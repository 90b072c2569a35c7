// Cells of front and back: runs over word limits and beyond the view, and counting, each against marking cell by cell.
#include "core/anatomy/SurfaceMask.h"

#include <gtest/gtest.h>

#include <random>

namespace raphe {

namespace {

SurfaceMask runMask(View view, int y, int from, int to)
{
    SurfaceMask mask;
    mask.markRun(view, y, from, to);
    return mask;
}

SurfaceMask cellByCell(View view, int y, int from, int to)
{
    SurfaceMask mask;
    for (int x = SurfaceMask::firstX; x <= SurfaceMask::lastX; ++x)
        if (x >= from && x <= to)
            mask.mark(view, x, y);
    return mask;
}

TEST(SurfaceMask, ARunIsItsCells)
{
    std::mt19937 random(5); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same every time
    const auto below = [&](int limit) { return static_cast<int>(random() % static_cast<unsigned>(limit)); };
    for (int i = 0; i < 500; ++i) {
        const int from = below(1100) - 550;
        const int to = from + below(200) - 20;
        const View view = below(2) ? View::Front : View::Back;
        const int y = below(1000);
        EXPECT_EQ(runMask(view, y, from, to), cellByCell(view, y, from, to)) << from << " to " << to;
    }
    for (const int from : {-500, -437, -436, -435, 0, 435, 499})
        for (const int to : {-500, -437, -436, 63, 64, 499})
            EXPECT_EQ(runMask(View::Back, 999, from, to), cellByCell(View::Back, 999, from, to)) << from << " to " << to;
}

TEST(SurfaceMask, WhatLiesBeyondTheViewIsLeftOut)
{
    EXPECT_EQ(runMask(View::Front, -1, 0, 10), SurfaceMask{});
    EXPECT_EQ(runMask(View::Front, 1000, 0, 10), SurfaceMask{});
    EXPECT_EQ(runMask(View::Front, 3, 500, 800), SurfaceMask{});
    EXPECT_EQ(runMask(View::Front, 3, -800, -501), SurfaceMask{});
    EXPECT_EQ(runMask(View::Front, 3, 10, 9), SurfaceMask{});
    EXPECT_EQ(runMask(View::Front, 3, -2000, 2000).count(View::Front), 1000);
    EXPECT_EQ(runMask(View::Front, 3, -2000, 2000).count(View::Back), 0);
    EXPECT_TRUE(SurfaceMask::shows(View::Front));
    EXPECT_TRUE(SurfaceMask::shows(View::Back));
    for (const View view : {View::Side, View::Sole, View::Palm, View::Head})
        EXPECT_FALSE(SurfaceMask::shows(view));
}

TEST(SurfaceMask, CountsWhatBothAndWhatEitherMark)
{
    SurfaceMask a = runMask(View::Front, 10, -5, 4); // ten
    a.markRun(View::Back, 10, 0, 99);
    SurfaceMask b = runMask(View::Front, 10, 2, 11); // ten, three of them the same
    EXPECT_EQ(a.count(View::Front), 10);
    EXPECT_EQ(a.count(View::Back), 100);
    EXPECT_EQ(a.countBoth(b, View::Front), 3);
    EXPECT_EQ(a.countEither(b, View::Front), 17);
    EXPECT_EQ(a.countBoth(b, View::Back), 0);
    EXPECT_EQ(a.countEither(b, View::Back), 100);
    a.keepOnly(b);
    EXPECT_EQ(a, runMask(View::Front, 10, 2, 4));
}

} // namespace

} // namespace raphe
