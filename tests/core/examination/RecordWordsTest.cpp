// What was measured and tested, in words: side first and loud, with its unit, and nothing that was not said.
#include "core/examination/RecordWords.h"
#include "core/examination/ComparingWords.h"
#include "tests/core/examination/Exam.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

Measure bending(Side side)
{
    Measure m;
    m.movement = "trunk-side-bending";
    m.side = side;
    return m;
}

} // namespace

TEST(RecordWordsTest, AMeasureSaysWhatWasSaidOfIt)
{
    Measure m = bending(Side::Right);
    EXPECT_EQ(inWords(examination(), m), "RIGHT trunk side bending");
    m.value = 18;
    m.mode = MoveMode::Active;
    EXPECT_EQ(inWords(examination(), m), "RIGHT trunk side bending, active: 18 degrees");
    m.painFrom = 12.5;
    m.familiar = true;
    m.note = "slow";
    EXPECT_EQ(
        inWords(examination(), m), "RIGHT trunk side bending, active: 18 degrees, pain from 12.5 degrees, familiar pain, slow");
    EXPECT_TRUE(inWords(examination(), bending(Side::Left)).starts_with("LEFT "));
}

TEST(RecordWordsTest, ATestSaysItsAnswerInItsForm)
{
    TestResult r;
    r.test = "thigh-thrust";
    r.side = Side::Left;
    r.pain = TestPain::None;
    EXPECT_EQ(inWords(examination(), r), "LEFT thigh thrust: no pain");
    r.pain.reset();
    r.unable = "hip replaced";
    EXPECT_EQ(inWords(examination(), r), "LEFT thigh thrust: could not be done: hip replaced");
    TestResult pressure;
    pressure.test = "blood-pressure";
    pressure.side = Side::Right;
    pressure.values = {128, 82};
    EXPECT_EQ(inWords(examination(), pressure), "RIGHT blood pressure: 128/82 mmHg");
    TestResult reflex;
    reflex.test = "knee-reflex";
    reflex.side = Side::Right;
    reflex.grade = 2;
    EXPECT_TRUE(inWords(examination(), reflex).ends_with(": 2 of 4")) << inWords(examination(), reflex);
    TestResult gone;
    gone.test = "no-longer-there";
    gone.side = Side::Midline;
    gone.present = true;
    EXPECT_EQ(inWords(examination(), gone), "no-longer-there: present");
}

TEST(RecordWordsTest, ADifferenceOfSidesNamesTheLesserSide)
{
    const Movement &m = *examination().findMovement("trunk-side-bending");
    EXPECT_EQ(
        inWords(m, SideComparison{-8, Beyond::Unknown, nullptr}), "RIGHT 8 degrees less than LEFT: error of measuring unknown");
    EXPECT_EQ(
        inWords(m, SideComparison{8, Beyond::Unknown, nullptr}), "LEFT 8 degrees less than RIGHT: error of measuring unknown");
    EXPECT_EQ(inWords(m, SideComparison{0, Beyond::Unknown, nullptr}), "RIGHT and LEFT the same: error of measuring unknown");
}

} // namespace raphe::test
