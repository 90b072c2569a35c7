// What the drawing says of one structure against another (core/anatomy/Regions.h), on the shipped atlas and drawings.
#include "tests/support/Content.h"

#include "core/anatomy/Regions.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <thread>

namespace raphe::test {

namespace {

constexpr double least = 0.3;

TEST(Regions, APartIsPartOfEveryWholeAboveIt)
{
    EXPECT_TRUE(isPartOf(atlas(), {"gastrocnemius-medial-head"}, {"gastrocnemius"}));
    EXPECT_TRUE(isPartOf(atlas(), {"medial-malleolus"}, {"tibia"}));
    EXPECT_FALSE(isPartOf(atlas(), {"tibia"}, {"medial-malleolus"}));
    EXPECT_FALSE(isPartOf(atlas(), {"tibia"}, {"tibia"}));
}

TEST(Regions, ASurfaceRegionLiesUnderItselfAlone)
{
    for (const Structure &s : atlas().structures()) {
        if (s.kind != Kind::SurfaceRegion)
            continue;
        for (const auto &[region, share] : regions().over(s.id))
            EXPECT_NEAR(share, region == s.id ? 1 : 0, 0.05) << region << " over " << s.id;
    }
}

// The regions tile the body's outline, so that what lies inside it lies under them as a whole; the insets may add to that.
TEST(Regions, WhatIsDrawnLiesUnderRegionsAsAWhole)
{
    for (const char *id : {"latissimus-dorsi", "trapezius", "rectus-abdominis", "vertebra-l5", "gluteus-maximus", "femur"}) {
        double sum = 0;
        for (const auto &[region, share] : regions().over({id}))
            sum += share;
        EXPECT_NEAR(sum, 1, 0.02) << id;
    }
}

TEST(Regions, WhatIsHiddenIsShownByItsWholeAndAWholeByItsParts)
{
    EXPECT_EQ(regions().over({"vertebral-body-c5"}), regions().over({"vertebra-c5"}));
    EXPECT_GT(regions().over({"deltoid"}).at({"deltoid-region"}), 0.8);
    EXPECT_TRUE(regions().over({"femoral-vein"}).empty());
    EXPECT_EQ(regions().atMark({"femoral-vein"}), std::nullopt);
}

TEST(Regions, TheMarkStandsUnderARegion)
{
    EXPECT_EQ(regions().atMark({"ball-of-foot"}), StructureId{"ball-of-foot"});
    EXPECT_EQ(regions().atMark({"sternohyoid"}), StructureId{"anterior-cervical-region"});
}

TEST(Regions, ASmallOneLiesOnALargeOneAndNotTheOtherWayRound)
{
    EXPECT_GT(regions().shareOn({"piriformis"}, {"gluteus-maximus"}), 0.9);
    EXPECT_LT(regions().shareOn({"gluteus-maximus"}, {"piriformis"}), 0.5);
}

TEST(Regions, AnOverlapIsTheSameBothWays)
{
    EXPECT_GT(regions().overlap({"gluteus-maximus"}, {"piriformis"}), 0.9);
    EXPECT_EQ(regions().overlap({"gluteus-maximus"}, {"piriformis"}), regions().overlap({"piriformis"}, {"gluteus-maximus"}));
    EXPECT_EQ(regions().overlap({"gluteus-maximus"}, {"soleus"}), 0);
    // Seen from the side they lie on one another, a hand's breadth apart.
    EXPECT_LT(regions().overlap({"gluteus-medius"}, {"l4-l5"}), 0.15);
}

TEST(Regions, LimbsAreToldByTheSkinAboveThem)
{
    for (const char *leg : {"gluteus-maximus", "soleus", "great-toe", "ball-of-foot", "quadratus-plantae", "hip-joint"})
        EXPECT_EQ(regions().limbOf({leg}, least), Limb::Leg) << leg;
    for (const char *arm : {"deltoid", "biceps-brachii", "palm", "lumbricals-of-hand", "ulna"})
        EXPECT_EQ(regions().limbOf({arm}, least), Limb::Arm) << arm;
    for (const char *neither : {"latissimus-dorsi", "pectoralis-major", "l5-s1", "masseter", "umbilical-region"})
        EXPECT_EQ(regions().limbOf({neither}, least), std::nullopt) << neither;
    for (const char *hidden : {"popliteal-vein", "great-saphenous-vein", "sciatic-nerve", "anterior-cruciate-ligament"})
        EXPECT_EQ(regions().limbOf({hidden}, least), Limb::Leg) << hidden;
}

TEST(Regions, RootsCountToALimbOnRequest)
{
    const LimbRegions roots{{{"inguinal-region"}, Limb::Leg}};
    EXPECT_EQ(regions().limbOf({"inguinal-region"}, least), std::nullopt);
    EXPECT_EQ(regions().limbOf({"inguinal-region"}, least, roots), Limb::Leg);
    EXPECT_EQ(regions().limbOf({"palm"}, least, roots), Limb::Arm);
    EXPECT_EQ(regions().limbOf({"umbilical-region"}, least, roots), std::nullopt);
}

TEST(Regions, WhatWasFoundStaysWhereItIs)
{
    auto read = readEmbeddedRegions(atlas(), body());
    ASSERT_TRUE(read.ok());
    const auto &soleus = read.value().over({"soleus"});
    const Regions moved = std::move(read).value();
    EXPECT_EQ(&moved.over({"soleus"}), &soleus);
    EXPECT_EQ(moved.over({"soleus"}), regions().over({"soleus"}));
}

TEST(Regions, ManyMayAskAtOnce)
{
    auto read = readEmbeddedRegions(atlas(), body());
    ASSERT_TRUE(read.ok());
    const Regions &shared = read.value();
    std::vector<std::thread> askers;
    std::vector<const void *> found(4);
    for (const void *&mine : found)
        askers.emplace_back([&shared, &mine] {
            for (std::size_t i = 0; i < atlas().structures().size(); i += 11)
                mine = &shared.over(atlas().structures()[i].id);
        });
    for (std::thread &asker : askers)
        asker.join();
    EXPECT_EQ(found, std::vector<const void *>(4, found[0]));
}

TEST(Regions, ALimbThatLacksAPartIsRefused)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/resources/body-shares.json", std::ios::binary);
    auto shares = nlohmann::json::parse(in);
    auto &parts = shares["parts"];
    parts.erase(std::find_if(parts.begin(), parts.end(), [](const auto &part) { return part["id"] == "thigh"; }));
    const auto read = Regions::read(shares.dump(), "b.json", atlas(), body());
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen";
    EXPECT_EQ(read.error().code, ErrorCode::MissingField);
    EXPECT_EQ(read.error().place, "b.json#/parts");
    EXPECT_EQ(read.error().detail, "thigh");
}

} // namespace

} // namespace raphe::test
