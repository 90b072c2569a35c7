// What one finding is tied to, on the built-in atlas.
#include "tests/support/Content.h"

#include "core/reasoning/Trace.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace raphe::test {

namespace {

const Traced *find(const std::vector<Traced> &all, const Place &place, TraceGroup group)
{
    const auto it = std::find_if(all.begin(), all.end(), [&](const Traced &t) { return t.place == place && t.group == group; });
    return it == all.end() ? nullptr : &*it;
}

TEST(Trace, TheRightGluteusMaximusReachesTheLeftLatissimusThroughTheThoracolumbarFascia)
{
    const auto traced = trace(linkage(), {{"gluteus-maximus"}, Side::Right});
    const Traced *latissimus = find(traced, {{"latissimus-dorsi"}, Side::Left}, TraceGroup::Continuity);
    ASSERT_TRUE(latissimus);
    ASSERT_EQ(latissimus->path.size(), 2U);
    EXPECT_EQ(latissimus->path[0].from, (Place{{"gluteus-maximus"}, Side::Right}));
    EXPECT_EQ(latissimus->path[0].to, (Place{{"thoracolumbar-fascia"}, Side::Left}));
    EXPECT_TRUE(latissimus->path[0].changesSide());
    EXPECT_EQ(latissimus->path[1].to, (Place{{"latissimus-dorsi"}, Side::Left}));
    EXPECT_FALSE(latissimus->path[1].changesSide());
    EXPECT_EQ(weakestOf(latissimus->path), Grade::Verified);
    for (const PathStep &step : latissimus->path) {
        EXPECT_NE(std::find(step.sources.begin(), step.sources.end(), "wilke-2016"), step.sources.end())
            << step.from << " to " << step.to;
        EXPECT_EQ(step.link, LinkKind::Continues);
        EXPECT_TRUE(step.force) << "how well force passes is said with the link";
    }
}

TEST(Trace, SharedAttachmentsNameTheOthersOnTheSameLandmark)
{
    const auto traced = trace(linkage(), {{"piriformis"}, Side::Left});
    const Traced *medius = find(traced, {{"gluteus-medius"}, Side::Left}, TraceGroup::SharedAttachment);
    ASSERT_TRUE(medius) << "both insert on the greater trochanter";
    ASSERT_EQ(medius->path.size(), 2U);
    EXPECT_EQ(medius->path[0].to, (Place{{"greater-trochanter"}, Side::Left}));
    EXPECT_FALSE(find(traced, {{"gluteus-medius"}, Side::Right}, TraceGroup::SharedAttachment)) << "not the other side's";
}

TEST(Trace, JointsAcrossAreTheCrossedOnes)
{
    std::set<std::string> joints;
    for (const Traced &t : trace(linkage(), {{"biceps-femoris-short-head"}, Side::Left}))
        if (t.group == TraceGroup::AcrossJoint)
            joints.insert(t.place.structure.value);
    EXPECT_TRUE(joints.contains("knee-joint"));
    EXPECT_FALSE(joints.contains("hip-joint"));
}

TEST(Trace, AMidlineSegmentIsTracedOnBothSides)
{
    const auto traced = trace(linkage(), {{"l4-l5"}, Side::Midline});
    for (const Side side : {Side::Left, Side::Right}) {
        EXPECT_TRUE(find(traced, {{"multifidus"}, side}, TraceGroup::AcrossJoint)) << wordOf(sideWords, side);
    }
}

TEST(Trace, IsSortedByGroupThenRingThenGrade)
{
    const auto traced = trace(linkage(), {{"gluteus-maximus"}, Side::Right});
    EXPECT_GT(traced.size(), 10U);
    for (std::size_t i = 1; i < traced.size(); ++i) {
        const auto key = [](const Traced &t) { return std::tuple(t.group, t.path.size(), weakestOf(t.path)); };
        EXPECT_LE(key(traced[i - 1]), key(traced[i])) << traced[i].place;
    }
}

TEST(Trace, GoesNoFurtherThanThreeStepsAndNeverBack)
{
    for (const Place &from : linkage().places())
        for (const Traced &t : trace(linkage(), from)) {
            EXPECT_LE(t.path.size(), traceStepsAtMost);
            ASSERT_FALSE(t.path.empty());
            EXPECT_EQ(t.path.front().from, from);
            EXPECT_EQ(t.path.back().to, t.place);
            EXPECT_NE(t.place, from);
            for (std::size_t i = 1; i < t.path.size(); ++i)
                EXPECT_EQ(t.path[i - 1].to, t.path[i].from);
        }
}

std::multiset<std::string> answer(const std::vector<Traced> &traced, bool mirror)
{
    std::multiset<std::string> out;
    for (const Traced &t : traced) {
        std::ostringstream words;
        words << static_cast<int>(t.group);
        for (const PathStep &step : t.path)
            words << " | " << (mirror ? mirrored(step.from) : step.from) << " > " << (mirror ? mirrored(step.to) : step.to) << ' '
                  << static_cast<int>(step.link) << static_cast<int>(step.evidence);
        out.insert(words.str());
    }
    return out;
}

TEST(Trace, OfTheMirrorImageIsTheMirrorImage)
{
    for (const Place &from : linkage().places()) {
        if (from.side != Side::Left)
            continue;
        EXPECT_EQ(answer(trace(linkage(), from), true), answer(trace(linkage(), mirrored(from)), false)) << from;
    }
}

} // namespace

} // namespace raphe::test
