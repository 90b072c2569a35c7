// A visit that names what there is not, or answers it in a way that cannot be, is refused with the place of the mistake.
#include "tests/core/examination/Exam.h"

#include <gtest/gtest.h>

#include <functional>

namespace raphe::test {

namespace {

Visit sound()
{
    Visit visit;
    Measure bend;
    bend.movement = "trunk-side-bending";
    bend.side = Side::Right;
    bend.value = 20;
    visit.measures = {bend};
    const auto result = [](const char *test, Side side) {
        TestResult out;
        out.test = test;
        out.side = side;
        return out;
    };
    visit.tests = {result("thigh-thrust", Side::Left), result("knee-reflex", Side::Right),
        result("plantar-response", Side::Right), result("blood-pressure", Side::Left), result("slump-test", Side::Left)};
    visit.tests[0].pain = TestPain::Familiar;
    visit.tests[1].grade = 2;
    visit.tests[2].present = false;
    visit.tests[3].values = {120, 80};
    visit.tests[4].pain = TestPain::Other;
    visit.tests[4].changesFromAfar = true;
    visit.retest = RetestMark{MomentKind::Movement, "trunk-side-bending", Side::Right};
    return visit;
}

struct Mistake {
    const char *what;
    std::function<void(Visit &)> make;
    ErrorCode code;
    const char *place;
};

} // namespace

TEST(CheckExaminedTest, WhatIsSoundPasses)
{
    const auto checked = checkExamined(examination(), sound(), "v");
    EXPECT_TRUE(checked.ok()) << inWords(checked.error());
}

TEST(CheckExaminedTest, EachMistakeIsNamedWithItsPlace)
{
    const std::vector<Mistake> mistakes = {
        {"no such movement", [](Visit &v) { v.measures[0].movement = "wing-flapping"; }, ErrorCode::UnknownId,
            "v#/measures/0/movement"},
        {"no such side", [](Visit &v) { v.measures[0].side = Side::Midline; }, ErrorCode::WrongSide, "v#/measures/0/side"},
        {"beyond what can be", [](Visit &v) { v.measures[0].value = 400; }, ErrorCode::OutOfRange, "v#/measures/0/value"},
        {"pain beyond what can be", [](Visit &v) { v.measures[0].painFrom = -300; }, ErrorCode::OutOfRange,
            "v#/measures/0/pain_from"},
        {"no such test", [](Visit &v) { v.tests[0].test = "no-test"; }, ErrorCode::UnknownId, "v#/tests/0/test"},
        {"a paired test without a side", [](Visit &v) { v.tests[0].side = Side::Midline; }, ErrorCode::WrongSide,
            "v#/tests/0/side"},
        {"a grade for pain",
            [](Visit &v) {
                v.tests[0].pain.reset();
                v.tests[0].grade = 1;
            },
            ErrorCode::WrongType, "v#/tests/0"},
        {"too high a grade", [](Visit &v) { v.tests[1].grade = 5; }, ErrorCode::OutOfRange, "v#/tests/1/grade"},
        {"changes of no nerve", [](Visit &v) { v.tests[0].changesFromAfar = true; }, ErrorCode::Contradiction,
            "v#/tests/0/changes"},
        {"half a pressure", [](Visit &v) { v.tests[3].values = {120}; }, ErrorCode::OutOfRange, "v#/tests/3/values"},
        {"a pressure that cannot be",
            [](Visit &v) {
                v.tests[3].values = {120, 8};
            },
            ErrorCode::OutOfRange, "v#/tests/3/values/1"},
        {"a moment of nothing",
            [](Visit &v) {
                v.timeline = {{"09:00:00", MomentKind::Test, "nothing", Side::Right}};
            },
            ErrorCode::UnknownId, "v#/timeline/0/id"},
        {"a retest of nothing", [](Visit &v) { v.retest->id = "nothing"; }, ErrorCode::UnknownId, "v#/retest/id"},
        {"a retest without a side", [](Visit &v) { v.retest->side = Side::Midline; }, ErrorCode::WrongSide, "v#/retest/side"},
    };
    for (const Mistake &mistake : mistakes) {
        Visit visit = sound();
        mistake.make(visit);
        const auto checked = checkExamined(examination(), visit, "v");
        ASSERT_FALSE(checked.ok()) << mistake.what;
        EXPECT_EQ(checked.error().code, mistake.code) << mistake.what << ": " << inWords(checked.error());
        EXPECT_EQ(checked.error().place, mistake.place) << mistake.what;
    }
}

TEST(CheckExaminedTest, WhatCouldNotBeDoneNeedsNoAnswer)
{
    Visit visit = sound();
    visit.tests[3] = {};
    visit.tests[3].test = "blood-pressure";
    visit.tests[3].side = Side::Left;
    visit.tests[3].unable = "no cuff that fits";
    EXPECT_TRUE(checkExamined(examination(), visit, "v").ok());
}

} // namespace raphe::test
