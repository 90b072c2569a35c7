// What the drawing says of one structure against another (core/anatomy/Regions.h), on the shipped atlas and drawings.
#include "tests/support/Content.h"

#include "core/anatomy/Regions.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <stdexcept>

namespace raphe::test {

namespace {

constexpr double least = 0.3;

const Limbs &limbs()
{
    static const Limbs read = [] {
        auto result = readEmbeddedLimbs(atlas(), body());
        if (!result)
            throw std::runtime_error("the built-in body shares: " + inWords(result.error()));
        return std::move(result).value();
    }();
    return read;
}

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
        for (const auto &[region, share] : regionsOver(atlas(), body(), s.id))
            EXPECT_NEAR(share, region == s.id ? 1 : 0, 0.05) << region << " over " << s.id;
    }
}

// The regions tile the body's outline, so that what lies inside it lies under them as a whole; the insets may add to that.
TEST(Regions, WhatIsDrawnLiesUnderRegionsAsAWhole)
{
    for (const char *id : {"latissimus-dorsi", "trapezius", "rectus-abdominis", "vertebra-l5", "gluteus-maximus", "femur"}) {
        double sum = 0;
        for (const auto &[region, share] : regionsOver(atlas(), body(), {id}))
            sum += share;
        EXPECT_NEAR(sum, 1, 0.02) << id;
    }
}

TEST(Regions, WhatIsHiddenIsShownByItsWholeAndAWholeByItsParts)
{
    EXPECT_EQ(regionsOver(atlas(), body(), {"vertebral-body-c5"}), regionsOver(atlas(), body(), {"vertebra-c5"}));
    EXPECT_GT(regionsOver(atlas(), body(), {"deltoid"})[{"deltoid-region"}], 0.8);
    EXPECT_TRUE(regionsOver(atlas(), body(), {"femoral-vein"}).empty());
    EXPECT_EQ(regionAtMark(atlas(), body(), {"femoral-vein"}), std::nullopt);
}

TEST(Regions, TheMarkStandsUnderARegion)
{
    EXPECT_EQ(regionAtMark(atlas(), body(), {"ball-of-foot"}), StructureId{"ball-of-foot"});
    EXPECT_EQ(regionAtMark(atlas(), body(), {"sternohyoid"}), StructureId{"anterior-cervical-region"});
}

TEST(Regions, AnOverlapIsTheSameBothWays)
{
    EXPECT_GT(overlapOf(atlas(), body(), {"gluteus-maximus"}, {"piriformis"}), 0.9);
    EXPECT_EQ(overlapOf(atlas(), body(), {"gluteus-maximus"}, {"piriformis"}),
        overlapOf(atlas(), body(), {"piriformis"}, {"gluteus-maximus"}));
    EXPECT_EQ(overlapOf(atlas(), body(), {"gluteus-maximus"}, {"soleus"}), 0);
    // Seen from the side they lie on one another, a hand's breadth apart.
    EXPECT_LT(overlapOf(atlas(), body(), {"gluteus-medius"}, {"l4-l5"}), 0.15);
}

TEST(Regions, LimbsAreToldByTheSkinAboveThem)
{
    for (const char *leg : {"gluteus-maximus", "soleus", "great-toe", "ball-of-foot", "quadratus-plantae", "hip-joint"})
        EXPECT_EQ(limbs().limbOf(atlas(), body(), {leg}, least), Limb::Leg) << leg;
    for (const char *arm : {"deltoid", "biceps-brachii", "palm", "lumbricals-of-hand", "ulna"})
        EXPECT_EQ(limbs().limbOf(atlas(), body(), {arm}, least), Limb::Arm) << arm;
    for (const char *neither : {"latissimus-dorsi", "pectoralis-major", "l5-s1", "masseter", "umbilical-region"})
        EXPECT_EQ(limbs().limbOf(atlas(), body(), {neither}, least), std::nullopt) << neither;
    for (const char *hidden : {"popliteal-vein", "great-saphenous-vein", "sciatic-nerve", "anterior-cruciate-ligament"})
        EXPECT_EQ(limbs().limbOf(atlas(), body(), {hidden}, least), Limb::Leg) << hidden;
}

TEST(Regions, ALimbThatLacksAPartIsRefused)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/resources/body-shares.json", std::ios::binary);
    auto shares = nlohmann::json::parse(in);
    auto &parts = shares["parts"];
    parts.erase(std::find_if(parts.begin(), parts.end(), [](const auto &part) { return part["id"] == "thigh"; }));
    const auto read = Limbs::read(shares.dump(), "b.json", atlas(), body());
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen";
    EXPECT_EQ(read.error().code, ErrorCode::MissingField);
    EXPECT_EQ(read.error().place, "b.json#/parts");
    EXPECT_EQ(read.error().detail, "thigh");
}

} // namespace

} // namespace raphe::test
