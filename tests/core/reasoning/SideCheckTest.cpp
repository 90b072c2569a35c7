// When complaint and findings stand on opposite sides, on the built-in atlas.
#include "tests/support/Content.h"

#include "core/reasoning/SideCheck.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

Finding tender(const char *id, Side side)
{
    Finding finding;
    finding.place = {StructureId{id}, side};
    finding.tenderness = Tenderness{2};
    return finding;
}

Visit with(const std::vector<Place> &complaint, const std::vector<Finding> &findings)
{
    Visit visit;
    visit.complaintAt = complaint;
    visit.findings = findings;
    return visit;
}

const Place rightShoulder{StructureId{"deltoid-region"}, Side::Right};

std::optional<SideQuestion> asked(const Visit &visit)
{
    return sideQuestion(linkage(), regions(), visit);
}

} // namespace

TEST(SideCheck, AsksWhenAllThatWasFoundIsOnTheOtherSide)
{
    const Visit visit = with({rightShoulder}, {tender("supraspinatus", Side::Left), tender("deltoid", Side::Left)});
    const auto question = asked(visit);
    ASSERT_TRUE(question);
    EXPECT_EQ(question->complaint, Side::Right);
    EXPECT_EQ(question->found.size(), 2U);
    const auto swapped = asked(mirrored(visit));
    ASSERT_TRUE(swapped);
    EXPECT_EQ(swapped->complaint, Side::Left);
    EXPECT_EQ(swapped->found.front().side, Side::Right);
}

TEST(SideCheck, IsQuietWhereOneFindingIsOnTheSameSideOrInTheMiddle)
{
    EXPECT_FALSE(asked(with({rightShoulder}, {tender("supraspinatus", Side::Left), tender("deltoid", Side::Right)})));
    EXPECT_FALSE(asked(with({rightShoulder}, {tender("supraspinatus", Side::Left), tender("c5-c6", Side::Midline)})));
    EXPECT_FALSE(asked(with({rightShoulder}, {})));
    EXPECT_FALSE(asked(with({}, {tender("deltoid", Side::Left)})));
    EXPECT_FALSE(
        asked(with({rightShoulder, {StructureId{"deltoid-region"}, Side::Left}}, {tender("supraspinatus", Side::Left)})));
}

TEST(SideCheck, AClearPlaceOfTheSameSideIsNoFinding)
{
    Finding clear;
    clear.place = {StructureId{"deltoid"}, Side::Right};
    clear.clear = {true, true};
    EXPECT_TRUE(asked(with({rightShoulder}, {tender("supraspinatus", Side::Left), clear})));
}

// Latissimus dorsi, thoracolumbar fascia, opposite gluteus maximus: verified in dissection (Wilke 2016, tests/published).
TEST(SideCheck, IsQuietWhereAContinuityToTheOtherSideExplainsIt)
{
    const Place loin{StructureId{"infrascapular-region-lateral"}, Side::Right};
    EXPECT_FALSE(asked(with({loin}, {tender("gluteus-maximus", Side::Left)})));
    EXPECT_FALSE(asked(with({{StructureId{"latissimus-dorsi"}, Side::Right}}, {tender("gluteus-maximus", Side::Left)})));
    const auto question = asked(with({loin}, {tender("gluteus-maximus", Side::Left), tender("soleus", Side::Left)}));
    ASSERT_TRUE(question) << "the calf is not explained";
    EXPECT_EQ(question->found, (std::vector<Place>{{StructureId{"soleus"}, Side::Left}}));
}

TEST(SideCheck, WhatWasPaintedCountsWhereNoPlaceIsTold)
{
    Visit visit = with({}, {tender("deltoid", Side::Left)});
    PainPatch patch;
    patch.view = View::Front;
    patch.strokes = {{{{-120, 215}}, 12}}; // front view: x < 0 is the patient's right
    visit.pain = {patch};
    ASSERT_TRUE(asked(visit));
    EXPECT_EQ(asked(visit)->complaint, Side::Right);
}

} // namespace raphe::test
