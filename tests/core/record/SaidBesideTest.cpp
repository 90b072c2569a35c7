// What is said of a place after something was said of it already.
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <random>

namespace raphe {

namespace {

const Place segment{StructureId{"l4-l5"}, Side::Right};

Finding at(const Place &place)
{
    Finding f;
    f.place = place;
    return f;
}

TEST(SaidBesideTest, AGradeOfOneQualityLeavesTheOther)
{
    Finding before = at(segment);
    before.tenderness = Tenderness{3};
    before.familiar = true;
    Finding now = at(segment);
    now.stiff = true;
    const Finding both = saidBeside(before, now);
    EXPECT_EQ(both.tenderness, Tenderness{3});
    EXPECT_TRUE(both.familiar);
    EXPECT_TRUE(both.stiff);
}

TEST(SaidBesideTest, APainThatIsKnownTakesClearOfTouchAway)
{
    Finding before = at(segment);
    before.clear = {true, true};
    Finding now = at(segment);
    now.familiar = true;
    const Finding both = saidBeside(before, now);
    EXPECT_TRUE(both.familiar);
    EXPECT_FALSE(both.clear.tenderness);
    EXPECT_TRUE(both.clear.motion);
}

TEST(SaidBesideTest, ClearTakesTheGradeOfItsOwnQualityAway)
{
    Finding before = at(segment);
    before.sore = true;
    before.restriction = Restriction{2};
    before.certain = true;
    Finding clear = at(segment);
    clear.clear.motion = true;
    const Finding after = saidBeside(before, clear);
    EXPECT_TRUE(after.sore);
    EXPECT_FALSE(after.restriction);
    EXPECT_TRUE(after.clear.motion);
    EXPECT_FALSE(after.certain) << "that was said of the other feel";
    Finding again = at(segment);
    again.play = JointPlay{2};
    EXPECT_FALSE(saidBeside(after, again).clear.motion);
}

TEST(SaidBesideTest, CouldNotAndCouldAfterAll)
{
    Finding before = at(segment);
    before.tenderness = Tenderness{1};
    Finding unable = at(segment);
    unable.unable = "rash";
    EXPECT_EQ(saidBeside(before, unable), unable);
    EXPECT_EQ(saidBeside(unable, before), before);
}

TEST(SaidBesideTest, OfAMovementTheNewValueStandsAndThePainStays)
{
    Measure before;
    before.movement = "hip-internal-rotation";
    before.side = Side::Right;
    before.value = 30;
    before.device = Device::Goniometer;
    before.painFrom = 25;
    before.familiar = true;
    Measure now;
    now.movement = before.movement;
    now.side = before.side;
    now.value = 34;
    now.device = Device::Phone;
    const Measure both = saidBeside(before, now);
    EXPECT_EQ(both.value, 34);
    EXPECT_EQ(both.device, Device::Phone) << "of the new value";
    EXPECT_EQ(both.painFrom, 25);
    EXPECT_TRUE(both.familiar);
    now.value.reset();
    now.hurts = true;
    EXPECT_EQ(saidBeside(before, now).value, 30);
    EXPECT_TRUE(saidBeside(before, now).hurts);
}

// Whatever two sound findings say, together they are one that can be written and read.
TEST(SaidBesideTest, TwoSoundFindingsMakeASoundOne)
{
    std::mt19937 random(11);
    const auto yes = [&] { return random() % 3 == 0; };
    const auto any = [&] {
        Finding f = at(segment);
        if (yes())
            f.tenderness = Tenderness{static_cast<int>(random() % 5)};
        else
            f.sore = yes();
        if (yes())
            f.restriction = Restriction{static_cast<int>(random() % 4)};
        else
            f.stiff = yes();
        if (yes())
            f.play = JointPlay{static_cast<int>(random() % 7)};
        if (yes())
            f.endFeel = EndFeel::Firm;
        f.familiar = yes();
        f.clear.tenderness = f.tendernessGrade() == 0 && yes();
        f.clear.motion = f.restrictionGrade() == 0 && (!f.play || f.play->grade == JointPlay::normal) && yes();
        f.certain = f.saysOfMotion() && yes();
        f.afterComparing = f.saysOfMotion() && yes();
        if (!f.saysAnything())
            f.note = "seen";
        return f;
    };
    for (int i = 0; i < 3000; ++i) {
        Visit visit;
        visit.findings = {saidBeside(any(), any())};
        const auto again = readVisit(writeVisit(visit), "v", test::atlas());
        ASSERT_TRUE(again) << test::inWords(again.error()) << "\n" << writeVisit(visit);
        EXPECT_EQ(again.value(), visit);
    }
}

} // namespace

} // namespace raphe
