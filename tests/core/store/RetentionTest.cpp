// Which records are past their time: the days by the calendar, the rule for children, what a practice file says, and the examples
// that are built in. All people here are invented. Expected days were counted by hand on the calendar.
#include "core/store/Retention.h"
#include "core/store/RetentionExamples.h"
#include "tests/core/store/PracticeTesting.h"

#include <gtest/gtest.h>

#include <ostream>

namespace raphe {

inline void PrintTo(const DueRecord &due, std::ostream *out)
{
    *out << "patient " << due.record.patient << " from " << due.from << (due.mayBeChild ? ", may be a child" : "");
}

} // namespace raphe

namespace raphe::test {

namespace {

constexpr const char *lateDay = "2090-01-01"; // everybody is due by then
constexpr const char *grownUp = "1950-06-15";

KeptRecord seen(const std::string &lastVisit, const std::string &born = grownUp, std::int64_t patient = 1)
{
    return {patient, "Anna Meyer", born, 1, lastVisit};
}

RetentionReview review(const std::vector<KeptRecord> &records, const RetentionRule &rule, const std::string &today = lateDay)
{
    return valueOf(reviewRetention(records, rule, today));
}

/// The day from which the record may be considered; empty when it never is.
std::string dueFrom(const KeptRecord &record, const RetentionRule &rule = {8})
{
    const RetentionReview all = review({record}, rule);
    return all.due.size() == 1 ? all.due[0].from : std::string();
}

bool isDue(const KeptRecord &record, const std::string &today, const RetentionRule &rule = {8})
{
    return !review({record}, rule, today).due.empty();
}

} // namespace

TEST(RetentionTest, IsDueOnTheDayTheYearsAreFullAndNotBefore)
{
    EXPECT_EQ(dueFrom(seen("2016-03-05")), "2024-03-05");
    EXPECT_FALSE(isDue(seen("2016-03-05"), "2024-03-04"));
    EXPECT_TRUE(isDue(seen("2016-03-05"), "2024-03-05"));
    EXPECT_TRUE(isDue(seen("2016-03-05"), "2024-03-06"));
    EXPECT_EQ(dueFrom(seen("2016-12-31"), {1}), "2017-12-31");
}

TEST(RetentionTest, NobodyIsDueWhenNoTimeIsSet)
{
    const RetentionReview none = review({seen("1950-01-01"), seen("not a date")}, {0});
    EXPECT_TRUE(none.due.empty());
    EXPECT_TRUE(none.unclear.empty());
}

TEST(RetentionTest, AYearAfterALeapDayEndsOnTheFirstOfMarch)
{
    EXPECT_EQ(dueFrom(seen("2016-02-29"), {8}), "2024-02-29");
    EXPECT_EQ(dueFrom(seen("2016-02-29"), {7}), "2023-03-01");
    EXPECT_FALSE(isDue(seen("2016-02-29"), "2023-02-28", {7}));
    EXPECT_EQ(dueFrom(seen("1996-02-29", "1940-01-01"), {4}), "2000-02-29") << "2000 was a leap year";
    EXPECT_EQ(dueFrom(seen("2000-02-29", "1940-01-01"), {100}), "") << "2100 has not come by the day of the test";
    EXPECT_EQ(dueFrom(seen("1996-02-29", "1940-01-01"), {1}), "1997-03-01");
}

TEST(RetentionTest, KeepsChildrenUntilTheirBirthday)
{
    EXPECT_EQ(dueFrom(seen("2010-05-01", "2000-06-15")), "2025-06-15") << "9 at the last visit: until 25";
    EXPECT_EQ(dueFrom(seen("2017-06-14", "2000-06-15")), "2025-06-15") << "16 years old for one more day";
    EXPECT_EQ(dueFrom(seen("2017-06-15", "2000-06-15")), "2026-06-15") << "17 on that day: until 26";
    EXPECT_EQ(dueFrom(seen("2018-06-14", "2000-06-15")), "2026-06-15") << "17 for one more day";
    EXPECT_EQ(dueFrom(seen("2018-06-15", "2000-06-15")), "2026-06-15") << "18: eight years, the same day by chance";
    EXPECT_EQ(dueFrom(seen("2018-06-16", "2000-06-15")), "2026-06-16") << "18: eight years after the last visit";
    EXPECT_EQ(dueFrom(seen("2000-06-15", "2000-06-15")), "2025-06-15") << "on the day of birth";
}

TEST(RetentionTest, TheLaterOfTheTwoTimesCounts)
{
    EXPECT_EQ(dueFrom(seen("2016-01-10", "2000-06-15"), {20}), "2036-01-10");
    EXPECT_EQ(dueFrom(seen("2016-01-10", "2000-06-15"), {1}), "2025-06-15");
    EXPECT_EQ(dueFrom(seen("2018-06-14", "2000-06-15"), {1}), "2026-06-15") << "17 for one more day";
    EXPECT_EQ(dueFrom(seen("2018-06-15", "2000-06-15"), {1}), "2019-06-15") << "18, and no child";
}

TEST(RetentionTest, ChildrenAreLikeOthersWhereThereIsNoSuchRule)
{
    const RetentionRule rule{8, 0, 0};
    EXPECT_EQ(dueFrom(seen("2010-05-01", "2000-06-15"), rule), "2018-05-01");
    EXPECT_FALSE(review({seen("2010-05-01", "")}, rule).due.at(0).mayBeChild);
}

TEST(RetentionTest, ABirthdayOnALeapDayIsOnTheFirstOfMarchInOtherYears)
{
    EXPECT_EQ(dueFrom(seen("2010-05-01", "2004-02-29")), "2029-03-01");
    EXPECT_EQ(dueFrom(seen("2021-02-28", "2004-02-29")), "2029-03-01") << "16 until the end of February 2021";
    EXPECT_EQ(dueFrom(seen("2021-03-01", "2004-02-29")), "2030-03-01") << "17 from 1 March 2021";
}

TEST(RetentionTest, SaysWhenItCannotTellWhetherItWasAChild)
{
    for (const char *born : {"", "2017-01-01", "1980-13-01"}) {
        const RetentionReview all = review({seen("2016-03-05", born)}, {8});
        ASSERT_EQ(all.due.size(), 1U) << born;
        EXPECT_EQ(all.due[0].from, "2024-03-05") << born;
        EXPECT_TRUE(all.due[0].mayBeChild) << born;
    }
    EXPECT_FALSE(review({seen("2016-03-05")}, {8}).due.at(0).mayBeChild);
}

TEST(RetentionTest, DoesNotProposeWhoNeverCame)
{
    KeptRecord never = seen("");
    never.visits = 0;
    const RetentionReview all = review({never}, {8});
    EXPECT_TRUE(all.due.empty());
    EXPECT_TRUE(all.unclear.empty());
}

TEST(RetentionTest, DoesNotProposeWhereTheLastVisitHasNoRealDate)
{
    const RetentionReview all = review(
        {seen("2023-02-29", grownUp, 9), seen("2016-03-05", grownUp, 4), seen("", grownUp, 2), seen("05.03.2016", grownUp, 7)},
        {8});
    ASSERT_EQ(all.due.size(), 1U);
    EXPECT_EQ(all.due[0].record.patient, 4);
    ASSERT_EQ(all.unclear.size(), 3U);
    EXPECT_EQ(all.unclear[0].patient, 2);
    EXPECT_EQ(all.unclear[1].patient, 7);
    EXPECT_EQ(all.unclear[2].patient, 9);
}

TEST(RetentionTest, ShowsTheOldestFirstAndTheLowerNumberOfEquals)
{
    const std::vector<KeptRecord> records{seen("2015-01-01", grownUp, 5), seen("2014-06-01", grownUp, 6),
        seen("2000-01-01", "1990-01-01", 7), seen("2015-01-01", grownUp, 3), seen("2007-01-01", "1990-01-01", 8)};
    std::vector<std::int64_t> order;
    for (const DueRecord &due : review(records, {8}).due)
        order.push_back(due.record.patient);
    // 7: a child, due on the 25th birthday 2015-01-01; 8: 17 at the end, due 2016-01-01
    EXPECT_EQ(order, (std::vector<std::int64_t>{7, 8, 6, 3, 5}));
}

TEST(RetentionTest, RefusesNumbersAndDaysThatCannotBe)
{
    const std::vector<KeptRecord> one{seen("2016-03-05")};
    const auto refused = [&](const RetentionRule &rule, const char *today, const char *place) {
        const auto answer = reviewRetention(one, rule, today);
        ASSERT_FALSE(answer.ok()) << place;
        EXPECT_EQ(answer.error().code, ErrorCode::OutOfRange);
        EXPECT_EQ(answer.error().place, place);
    };
    refused({-1}, lateDay, "years");
    refused({101}, lateDay, "years");
    refused({8, -1, 26}, lateDay, "childUntil");
    refused({8, 25, 101}, lateDay, "childOf17Until");
    refused({8}, "2023-02-29", "today");
    refused({8}, "", "today");
    EXPECT_TRUE(reviewRetention(one, {100, 100, 100}, lateDay).ok());
}

TEST(RetentionTest, TakesTheLastDayOfTheCalendarWithoutHarm)
{
    EXPECT_EQ(dueFrom(seen("9999-12-31"), {100}), "");
    EXPECT_TRUE(isDue(seen("9899-12-31", "9000-01-01"), "9999-12-31", {100}));
    EXPECT_EQ(dueFrom(seen("0001-01-01", ""), {8}), "0009-01-01");
}

using RetentionPracticeTest = PracticeFileTest;

TEST_F(RetentionPracticeTest, ReadsTheLastVisitOfEachPatient)
{
    const auto practice = made();
    ASSERT_TRUE(practice);
    const std::int64_t anna = valueOf(practice->addPatient(person("Anna Meyer", "1980-03-05")));
    const std::int64_t bo = valueOf(practice->addPatient(person("Bo Reed", "")));
    for (const char *date : {"2015-04-01", "2019-11-30", "2016-12-24"})
        ASSERT_TRUE(practice->addVisit(anna, std::string("{\"date\":\"") + date + "\"}").ok());
    const std::vector<KeptRecord> expected{{anna, "Anna Meyer", "1980-03-05", 3, "2019-11-30"}, {bo, "Bo Reed", "", 0, ""}};
    EXPECT_EQ(valueOf(readKeptRecords(*practice)), expected);
}

TEST_F(RetentionPracticeTest, LeavesOutWhatWasEnteredInError)
{
    const auto practice = made();
    ASSERT_TRUE(practice);
    const std::int64_t anna = valueOf(practice->addPatient(person("Anna Meyer", "1980-03-05")));
    ASSERT_TRUE(practice->addVisit(anna, R"({"date":"2015-04-01"})").ok());
    const std::int64_t wrong = valueOf(practice->addVisit(anna, R"({"date":"2205-04-01"})"));
    EXPECT_EQ(valueOf(readKeptRecords(*practice)).at(0).lastVisit, "2205-04-01");
    ASSERT_TRUE(practice->markInError(wrong, "the year").ok());
    EXPECT_EQ(valueOf(readKeptRecords(*practice)).at(0), (KeptRecord{anna, "Anna Meyer", "1980-03-05", 1, "2015-04-01"}));
}

TEST_F(RetentionPracticeTest, OneVisitWithoutADateMakesTheLastVisitUnclear)
{
    for (const char *document : {"{}", "[]", "no JSON", R"({"date":7})", R"({"date":"2015-02-29"})"}) {
        auto opened = std::filesystem::exists(file()) ? unlocked() : made();
        ASSERT_TRUE(opened);
        const std::int64_t id = valueOf(opened->addPatient(person("Anna Meyer", "1980-03-05")));
        ASSERT_TRUE(opened->addVisit(id, R"({"date":"2015-04-01"})").ok());
        ASSERT_TRUE(opened->addVisit(id, document).ok());
        const KeptRecord last = valueOf(readKeptRecords(*opened)).back();
        EXPECT_EQ(last, (KeptRecord{id, "Anna Meyer", "1980-03-05", 2, ""})) << document;
        EXPECT_EQ(review({last}, {8}).unclear.size(), 1U) << document;
    }
}

TEST_F(RetentionPracticeTest, CountsTheVisitsAndTheLatestBirthDateOfJoinedRecords)
{
    const auto practice = made();
    ASSERT_TRUE(practice);
    const std::int64_t keep = valueOf(practice->addPatient(person("Anna Meyer", "1980-03-05")));
    const std::int64_t other = valueOf(practice->addPatient(person("Anna Maier", "2008-03-05")));
    ASSERT_TRUE(practice->addVisit(keep, R"({"date":"2012-01-01"})").ok());
    ASSERT_TRUE(practice->addVisit(other, R"({"date":"2014-01-01"})").ok());
    ASSERT_TRUE(practice->merge(keep, other).ok());
    const std::vector<KeptRecord> expected{{keep, "Anna Meyer", "2008-03-05", 2, "2014-01-01"}};
    EXPECT_EQ(valueOf(readKeptRecords(*practice)), expected);
}

// The figures of the two pages that the file names as its sources; both were read as pages.
TEST(RetentionExamplesTest, HoldsTheBuiltInExamples)
{
    const auto examples = valueOf(readEmbeddedRetentionExamples());
    ASSERT_EQ(examples.size(), 2U);
    EXPECT_EQ(examples[0].label, "Chiropractors, United Kingdom");
    EXPECT_EQ(examples[0].rule, (RetentionRule{8, 25, 26}));
    EXPECT_EQ(examples[0].read, Reading::Page);
    EXPECT_EQ(examples[1].label, "Osteopaths, United Kingdom");
    EXPECT_EQ(examples[1].rule, (RetentionRule{8, 25, 25}));
    for (const RetentionExample &example : examples)
        EXPECT_NE(example.source.find("https://"), std::string::npos);
}

TEST(RetentionExamplesTest, ARuleMayBeWithoutChildren)
{
    const auto examples = valueOf(readRetentionExamples(
        R"({"format":"raphe-retention-examples","version":1,"examples":[{"label":"a","years":10,"source":"s","read":"memory"}]})",
        "t"));
    ASSERT_EQ(examples.size(), 1U);
    EXPECT_EQ(examples[0].rule, (RetentionRule{10, 0, 0}));
    EXPECT_EQ(examples[0].read, Reading::Memory);
}

TEST(RetentionExamplesTest, NamesThePlaceOfAMistake)
{
    struct Case {
        const char *example;
        ErrorCode code;
        const char *place;
    };
    const std::string good = R"({"label":"a","years":8,"source":"s","read":"page"})";
    const std::vector<Case> cases{
        {R"({"label":"","years":8,"source":"s","read":"page"})", ErrorCode::MissingField, "t#/examples/0"},
        {R"({"label":"b","years":0,"source":"s","read":"page"})", ErrorCode::OutOfRange, "t#/examples/0/years"},
        {R"({"label":"b","years":101,"source":"s","read":"page"})", ErrorCode::OutOfRange, "t#/examples/0/years"},
        {R"({"label":"b","years":8,"child_until":0,"source":"s","read":"page"})", ErrorCode::OutOfRange,
            "t#/examples/0/child_until"},
        {R"({"label":"b","years":8,"source":"","read":"page"})", ErrorCode::MissingField, "t#/examples/0"},
        {R"({"label":"b","years":8,"source":"s","read":"hearsay"})", ErrorCode::UnknownWord, "t#/examples/0/read"},
        {R"({"label":"b","years":8,"source":"s"})", ErrorCode::MissingField, "t#/examples/0"},
        {R"({"label":"b","years":8,"source":"s","read":"page","law":"x"})", ErrorCode::UnknownField, "t#/examples/0"},
    };
    const auto read = [](const std::string &items) {
        return readRetentionExamples(R"({"format":"raphe-retention-examples","version":1,"examples":[)" + items + "]}", "t");
    };
    ASSERT_TRUE(read(good).ok());
    for (const Case &c : cases) {
        const auto answer = read(c.example);
        ASSERT_FALSE(answer.ok()) << c.example;
        EXPECT_EQ(answer.error().code, c.code) << c.example;
        EXPECT_EQ(answer.error().place, c.place) << c.example;
    }
    const auto twice = read(good + "," + good);
    ASSERT_FALSE(twice.ok());
    EXPECT_EQ(twice.error().code, ErrorCode::Duplicate);
    EXPECT_EQ(twice.error().place, "t#/examples/1/label");
    EXPECT_EQ(readRetentionExamples(R"({"format":"other","version":1,"examples":[]})", "t").error().code, ErrorCode::WrongFormat);
    EXPECT_FALSE(readRetentionExamples(R"({"format":"raphe-retention-examples","version":2,"examples":[]})", "t").ok());
    EXPECT_FALSE(readRetentionExamples("{", "t").ok());
}

} // namespace raphe::test
