// A change between two readings: its words at every edge of the error and of what matters to patients.
#include "core/outcome/ReadingChange.h"

#include <gtest/gtest.h>

namespace raphe {

namespace {

std::string said(double before, double now, const ReadingScale &scale)
{
    return inWords(changeOf(before, now, scale), scale);
}

const ReadingScale shoulder{Better::More, PublishedFigure{8, "Kolber 2011"}, {}, " degrees"};
const ReadingScale gap{Better::Less, PublishedFigure{98, "Robinson 2014"}, {}, " mm"};

TEST(ReadingChange, IsBeyondTheErrorOnlyWhenItIsGreater)
{
    EXPECT_EQ(said(100, 108, shoulder), "better by 8 degrees, within the test's error (8 degrees, Kolber 2011)");
    EXPECT_EQ(said(100, 108.1, shoulder), "better by 8.1 degrees, beyond the test's error (8 degrees, Kolber 2011)");
    EXPECT_EQ(changeOf(8.1, 16.1, shoulder).beyond, Beyond::Within) << "the last bit of a difference is no degree";
    EXPECT_EQ(said(100, 92, shoulder), "worse by 8 degrees, within the test's error (8 degrees, Kolber 2011)");
    EXPECT_EQ(said(100, 91, shoulder), "worse by 9 degrees, beyond the test's error (8 degrees, Kolber 2011)");
    EXPECT_EQ(said(100, 100, shoulder), "no change, within the test's error (8 degrees, Kolber 2011)");
    EXPECT_EQ(said(30.1, 35.3, shoulder), "better by 5.2 degrees, within the test's error (8 degrees, Kolber 2011)");
}

TEST(ReadingChange, LessOfAGapIsBetter)
{
    EXPECT_EQ(changeOf(300, 200, gap).course, ReadingChange::Course::Better);
    EXPECT_EQ(changeOf(300, 200, gap).beyond, Beyond::Beyond);
    EXPECT_EQ(changeOf(200, 298, gap).course, ReadingChange::Course::Worse);
    EXPECT_EQ(changeOf(200, 298, gap).beyond, Beyond::Within);
}

TEST(ReadingChange, OfPainSaysWhatMattersAsWell)
{
    const ReadingScale pain = painScale();
    for (int before = 0; before <= 10; ++before)
        for (int now = 0; now <= 10; ++now) {
            const ReadingChange change = changeOf(before, now, pain);
            const int size = std::abs(now - before);
            EXPECT_EQ(change.beyond == Beyond::Beyond, size >= 2) << before << " " << now;
            EXPECT_EQ(change.isImportant, size >= 2);
            EXPECT_EQ(change.course,
                now < before       ? ReadingChange::Course::Better
                    : now > before ? ReadingChange::Course::Worse
                                   : ReadingChange::Course::Same);
        }
    EXPECT_NE(said(6, 4, pain).find("; as much as matters to patients (2, Ostelo 2008)"), std::string::npos) << said(6, 4, pain);
    EXPECT_NE(said(6, 5, pain).find("; less than matters to patients (2, Ostelo 2008)"), std::string::npos) << said(6, 5, pain);
}

// A figure that matters is worth nothing within the error.
TEST(ReadingChange, WithinTheErrorNothingIsImportant)
{
    const ReadingScale odd{Better::Less, PublishedFigure{3, "one"}, PublishedFigure{2, "another"}, {}};
    EXPECT_FALSE(changeOf(6, 3, odd).isImportant);
    EXPECT_TRUE(changeOf(6, 2, odd).isImportant);
}

TEST(ReadingChange, OfAGradeWithoutAPublishedErrorIsNeverBetterOrWorse)
{
    const ReadingScale scale = gradeScale();
    for (int before = 0; before <= 4; ++before)
        for (int now = 0; now <= 4; ++now) {
            const ReadingChange change = changeOf(before, now, scale);
            EXPECT_EQ(change.beyond, Beyond::Unknown);
            EXPECT_EQ(change.course, now == before ? ReadingChange::Course::Same : ReadingChange::Course::Unsaid);
            const std::string words = inWords(change, scale);
            for (const char *never : {"better", "worse", "beyond", "within"})
                EXPECT_EQ(words.find(never), std::string::npos) << words;
            EXPECT_NE(words.find("error unknown"), std::string::npos) << words;
        }
    EXPECT_EQ(said(3, 1, gradeScale()), "less by 2: error unknown");
}

} // namespace

} // namespace raphe
