// A positive answer that is a warning sign names it, and no other answer does.
#include "tests/core/examination/Exam.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

std::string raised(const char *id, const TestResult &result)
{
    return signRaisedBy(*examination().findTest(id), result);
}

TestResult present(bool isPresent)
{
    TestResult out;
    out.present = isPresent;
    return out;
}

TestResult of(std::vector<double> values)
{
    TestResult out;
    out.values = std::move(values);
    return out;
}

} // namespace

TEST(RaisedSignTest, ASignThatIsPresentIsTheWarningSign)
{
    EXPECT_EQ(raised("plantar-response", present(true)), "cord-reflex-signs");
    EXPECT_EQ(raised("plantar-response", present(false)), "");
    EXPECT_EQ(raised("calf-squeeze", present(true)), "tendon-rupture-calf");
    EXPECT_EQ(raised("tandem-gait", present(true)), "") << "judged with the others";
    TestResult unable;
    unable.unable = "plaster";
    EXPECT_EQ(raised("plantar-response", unable), "");
}

// NICE NG136: 180/120 mmHg, either of the two.
TEST(RaisedSignTest, EitherPressureReachesIt)
{
    EXPECT_EQ(raised("blood-pressure", of({179, 119})), "");
    EXPECT_EQ(raised("blood-pressure", of({180, 90})), "very-high-blood-pressure");
    EXPECT_EQ(raised("blood-pressure", of({150, 120})), "very-high-blood-pressure");
    EXPECT_EQ(raised("temperature", of({37.9})), "");
    EXPECT_EQ(raised("temperature", of({38})), "fever-now");
}

TEST(RaisedSignTest, WhatSaysToSendToMedicalCareRaisesASign)
{
    for (const ExamTest &test : examination().tests) {
        if (test.positive.find("send to medical care") != std::string::npos) {
            EXPECT_TRUE(test.raises) << test.id;
        }
    }
}

} // namespace raphe::test
