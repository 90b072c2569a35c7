// How much two records look like one person. All people here are invented.
#include "core/record/PatientLikeness.h"
#include "core/record/PatientSearch.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <vector>

namespace raphe::test {

TEST(PatientLikenessTest, TheSameNameAndBirthDateAreOne)
{
    EXPECT_DOUBLE_EQ(likeness(named("Anna Meyer", "1980-03-05"), named("Anna Meyer", "1980-03-05")), 1);
    EXPECT_DOUBLE_EQ(likeness(named("Anna Méyer", "1980-03-05"), named("MEYER, Anna", "1980-03-05")), 1) << "swapped";
}

// Worked out by hand from the rule in the header.
TEST(PatientLikenessTest, FollowsTheRule)
{
    const auto like = [](const char *a, const char *b) { return likeness(named(a, "1980-03-05"), named(b, "1980-03-05")); };
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Maier"), (1 + 0.6) / 2) << "two of five letters";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Hanna Meyer"), (1 + 0.8) / 2);
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Maria Meyer"), 2 / 2.5) << "a further word";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Schulz"), 0.5) << "nothing common with the other word";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Huber"), 0.5) << "two of five letters in common are chance";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Bodo Schulz"), 0);
    EXPECT_DOUBLE_EQ(like("Meyer Mayer", "Mayer Meyor"), (1 + 0.8) / 2) << "the equal word first";
    EXPECT_DOUBLE_EQ(like("Mayer Meyer", "Meier"), 0.8 / 1.5) << "a word is paired once, with the most alike";
    EXPECT_DOUBLE_EQ(like("Meier", "Mayer Meyer"), 0.8 / 1.5);
}

TEST(PatientLikenessTest, TheBirthDateWeighs)
{
    const auto like = [](const char *a, const char *b) { return likeness(named("Anna Meyer", a), named("Anna Meyer", b)); };
    EXPECT_DOUBLE_EQ(like("1980-03-05", ""), 0.8) << "missing";
    EXPECT_DOUBLE_EQ(like("", ""), 0.8) << "missing in both";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1980-05-03"), 0.8) << "day and month swapped";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1980-03-15"), 0.8) << "one digit";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1980-05-04"), 0.3);
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1981-05-03"), 0.3) << "swapped, and another year";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1955-07-21"), 0.3) << "father and son";
}

TEST(PatientLikenessTest, OtherNamesAndDatesCount)
{
    PatientRecord married = named("Anna Schulz", "1980-03-05");
    married.otherNames = {"Anna Meyer"};
    EXPECT_DOUBLE_EQ(likeness(married, named("Anna Meyer", "1980-03-05")), 1);
    married.otherBorn = {"1980-12-24"};
    EXPECT_DOUBLE_EQ(likeness(married, named("Anna Meyer", "1980-12-24")), 1);
}

TEST(PatientLikenessTest, IsTheSameEitherWayRoundAndWithinBounds)
{
    Random random(3);
    std::vector<PatientRecord> records;
    for (int i = 0; i < 30; ++i)
        records.push_back(random.record());
    for (const PatientRecord &a : records) {
        EXPECT_DOUBLE_EQ(likeness(a, a), foldedWords(a.name).empty() ? 0 : a.born.empty() && a.otherBorn.empty() ? 0.8 : 1);
        for (const PatientRecord &b : records) {
            EXPECT_DOUBLE_EQ(likeness(a, b), likeness(b, a));
            EXPECT_GE(likeness(a, b), 0);
            EXPECT_LE(likeness(a, b), 1);
        }
    }
}

} // namespace raphe::test
