// Percent of body: whole parts and the whole body come out as the table has them, to the last bit (lund-browder.json).
#include "core/anatomy/BodyShare.h"

#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <iostream>
#include <map>

namespace raphe::test {

namespace {

const BodyShare &shares()
{
    static const auto read = readEmbeddedBodyShare(atlas(), body());
    EXPECT_TRUE(read.ok()) << (read ? "" : read.error().place + ": " + read.error().detail);
    return read.value();
}

template <class F> SurfaceMask maskWhere(F wanted)
{
    SurfaceMask mask;
    for (const View view : {View::Front, View::Back})
        for (int y = 0; y < 1000; ++y)
            for (int x = -500; x < 500; ++x)
                if (wanted(view, x, y))
                    mask.mark(view, x, y);
    return mask;
}

std::string source()
{
    return "source: lund-browder.json, " + publishedJson("lund-browder.json").at("citation")[0].get<std::string>();
}

TEST(BodyShare, TheWholeBodyIsAHundredPercent)
{
    EXPECT_EQ(shares().percentOf(maskWhere([](View, int, int) { return true; })), 100.0) << source();
    EXPECT_EQ(shares().percentOf(SurfaceMask{}), 0.0);
}

TEST(BodyShare, EachPartIsTheTables)
{
    std::map<std::string, double> ours;
    std::map<std::string, int> cells;
    int all = 0;
    for (const BodyPart &part : shares().parts()) {
        const std::string id = part.id == "trunk" ? part.id + "-" + std::string(wordOf(viewWords, part.view)) : part.id;
        ours[id] += part.percent;
        cells[id] += part.cells;
        all += part.cells;
        EXPECT_GT(part.cells, 0) << id;
    }
    const auto json = publishedJson("lund-browder.json");
    for (const auto &[id, percent] : json.at("parts").items()) {
        EXPECT_EQ(ours[id], percent.get<double>()) << id << "; " << source();
        std::cout << id << ": table " << percent << " %, share of what is drawn " << 100.0 * cells[id] / all << " %\n";
    }
    EXPECT_EQ(ours.size(), json.at("parts").size()) << source();
}

TEST(BodyShare, AWholePartComesOutExactly)
{
    const auto everything = maskWhere([](View, int, int) { return true; });
    const auto percent = shares().percentByPart(everything);
    for (std::size_t i = 0; i < percent.size(); ++i)
        EXPECT_EQ(percent[i], shares().parts()[i].percent) << shares().parts()[i].id;
}

TEST(BodyShare, LeftAndRightWeighTheSame)
{
    const double left = shares().percentOf(maskWhere([](View view, int x, int) { return (view == View::Back) != (x >= 0); }));
    const double right = shares().percentOf(maskWhere([](View view, int x, int) { return (view == View::Back) == (x >= 0); }));
    EXPECT_EQ(left, right);
    EXPECT_DOUBLE_EQ(left, 50);
}

TEST(BodyShare, ARegionIsMarkedOnItsOwnSideInBothViews)
{
    SurfaceMask right;
    shares().markRegion(right, {{"deltoid-region"}, Side::Right});
    SurfaceMask left;
    shares().markRegion(left, {{"deltoid-region"}, Side::Left});
    EXPECT_EQ(shares().percentOf(right), shares().percentOf(left));
    EXPECT_GT(shares().percentOf(right), 0.3);
    EXPECT_LT(shares().percentOf(right), 4) << "less than the upper arm";
    SurfaceMask both;
    shares().markRegion(both, {{"deltoid-region"}, Side::Right});
    shares().markRegion(both, {{"deltoid-region"}, Side::Left});
    EXPECT_DOUBLE_EQ(shares().percentOf(both), 2 * shares().percentOf(right));
    const auto percent = shares().percentByPart(right);
    for (std::size_t i = 0; i < percent.size(); ++i)
        if (percent[i] > 0) {
            EXPECT_EQ(shares().parts()[i].id, "upper-arm");
            EXPECT_EQ(shares().parts()[i].side, Side::Right);
        }
}

} // namespace

} // namespace raphe::test
