// Who among the practice's patients may be one person. All people here are invented.
#include "core/record/PatientPairs.h"
#include "core/record/PatientLikeness.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

namespace raphe {

inline void PrintTo(const PatientPair &pair, std::ostream *out)
{
    *out << pair.one << " and " << pair.other << " by " << pair.likeness;
}

} // namespace raphe

namespace raphe::test {

TEST(PatientPairsTest, NobodyIsAPairAlone)
{
    EXPECT_TRUE(findPatientPairs({}).found.empty());
    const std::vector<PatientRecord> one{named("Anna Meyer", "1980-03-05")};
    EXPECT_TRUE(findPatientPairs(one).found.empty()) << "a name and a birth date are two signs of the same person";
    EXPECT_TRUE(findPatientPairs(one).isAll);
}

TEST(PatientPairsTest, ShowsTheMostAlikeFirstAndThenInTheOrderOfTheRecords)
{
    const std::vector<PatientRecord> records{named("Bo Reed", ""), named("Anna Maier", "1980-03-05"),
        named("Zed Orr", "1970-01-01"), named("Anna Meyer", "1980-03-05"), named("Reed Bo", "1990-01-01"),
        named("Meyer Anna", "1980-03-05")};
    const PatientPairs pairs = findPatientPairs(records);
    const std::vector<PatientPair> expected{{3, 5, 1.0}, {0, 4, 0.8}, {1, 3, 0.8}, {1, 5, 0.8}};
    EXPECT_EQ(pairs.found, expected);
    EXPECT_TRUE(pairs.isAll);
}

TEST(PatientPairsTest, LooksAtOtherNamesAndBirthDatesToo)
{
    std::vector<PatientRecord> records{named("Anna Meyer", "1980-03-05"), named("Anna Lago", "1955-07-21")};
    EXPECT_TRUE(findPatientPairs(records).found.empty());
    records[1].otherNames = {"Anna Meyer"};
    EXPECT_TRUE(findPatientPairs(records).found.empty()) << "born on another day";
    records[1].otherBorn = {"1980-03-05"};
    EXPECT_EQ(findPatientPairs(records).found, (std::vector<PatientPair>{{0, 1, 1.0}}));
}

// The short way (only those who share a sign are compared) against comparing everybody with everybody.
TEST(PatientPairsTest, FindsTheSamePairsAsComparingAll)
{
    std::mt19937 engine(11);
    const auto pick = [&](const std::vector<std::string> &from) {
        return from[std::uniform_int_distribution<std::size_t>(0, from.size() - 1)(engine)];
    };
    const std::vector<std::string> first{"Anna", "Ana", "Hanna", "Bo", "Boris", "Zoë", "Maria", "Marie"};
    const std::vector<std::string> last{"Meyer", "Maier", "Meier", "Reed", "Reid", "Ørsted", "Lago"};
    const std::vector<std::string> born{"1980-03-05", "1980-05-03", "1980-03-06", "1955-07-21", ""};
    std::vector<PatientRecord> records;
    for (int i = 0; i < 200; ++i)
        records.push_back(named(pick(first) + " " + pick(last), pick(born)));
    std::vector<PatientPair> expected;
    for (std::size_t one = 0; one < records.size(); ++one)
        for (std::size_t other = one + 1; other < records.size(); ++other)
            if (const double alike = likeness(records[one], records[other]); alike >= duplicateLikeness)
                expected.push_back({one, other, alike});
    std::stable_sort(
        expected.begin(), expected.end(), [](const PatientPair &a, const PatientPair &b) { return a.likeness > b.likeness; });
    ASSERT_GT(expected.size(), 400U);
    PairLimits wide;
    wide.pairs = expected.size();
    const PatientPairs pairs = findPatientPairs(records, wide);
    EXPECT_EQ(pairs.found, expected);
    EXPECT_TRUE(pairs.isAll);
}

TEST(PatientPairsTest, SaysWhenThereAreMorePairsThanItGives)
{
    const std::vector<PatientRecord> records(4, named("Anna Meyer", "1980-03-05")); // six pairs
    PairLimits limits;
    limits.pairs = 6;
    EXPECT_EQ(findPatientPairs(records, limits).found.size(), 6U);
    EXPECT_TRUE(findPatientPairs(records, limits).isAll);
    limits.pairs = 5;
    const PatientPairs some = findPatientPairs(records, limits);
    ASSERT_EQ(some.found.size(), 5U);
    EXPECT_EQ(some.found.back(), (PatientPair{1, 3, 1.0})) << "the last one, 2 and 3, is left out";
    EXPECT_FALSE(some.isAll);
}

// Four share the first name, two of them the last name as well.
TEST(PatientPairsTest, LeavesOutTheCommonestNameWhenThereIsTooMuchToCompare)
{
    const std::vector<PatientRecord> records{
        named("Maria Reed", ""), named("Maria Orr", ""), named("Maria Lago", ""), named("Maria Reed", "")};
    PairLimits limits;
    limits.comparisons = 7; // one for Reed, six for Maria
    EXPECT_TRUE(findPatientPairs(records, limits).isAll);
    limits.comparisons = 1;
    const PatientPairs some = findPatientPairs(records, limits);
    EXPECT_EQ(some.found, (std::vector<PatientPair>{{0, 3, 0.8}}));
    EXPECT_FALSE(some.isAll);
    limits.comparisons = 0;
    EXPECT_TRUE(findPatientPairs(records, limits).found.empty());
    EXPECT_FALSE(findPatientPairs(records, limits).isAll);
}

} // namespace raphe::test
