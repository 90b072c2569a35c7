// Dates of birth in patient lists.
#include "tests/core/record/CsvTesting.h"

#include <gtest/gtest.h>

#include <optional>
#include <string>

namespace raphe::test {

namespace {

std::string bornFrom(const std::string &cell, std::optional<DateOrder> order = {})
{
    return recordAt(preview("name,born\nAna," + cell + "\n", with(order)), 0).born;
}

void expectBadDate(const std::string &cell, std::optional<DateOrder> order, ErrorCode code, const std::string &detail)
{
    const CsvPreview seen = preview("name,born\nAna," + cell + "\n", with(order));
    expectRowError(seen, 0, 2, "born", code, cell + ", " + detail);
}

} // namespace

TEST(CsvDateTest, ReadsDates)
{
    EXPECT_EQ(bornFrom("1980-03-05"), "1980-03-05");
    EXPECT_EQ(bornFrom("05.03.1980"), "1980-03-05");
    EXPECT_EQ(bornFrom("5.3.1980"), "1980-03-05");
    EXPECT_EQ(bornFrom("29.02.2024"), "2024-02-29");
    EXPECT_EQ(bornFrom("25/03/1980"), "1980-03-25");
    EXPECT_EQ(bornFrom("03/25/1980"), "1980-03-25");
    EXPECT_EQ(bornFrom("04/04/1980"), "1980-04-04") << "the same either way";
    EXPECT_EQ(bornFrom("03/04/1980", DateOrder::DayFirst), "1980-04-03");
    EXPECT_EQ(bornFrom("03/04/1980", DateOrder::MonthFirst), "1980-03-04");
    EXPECT_EQ(bornFrom("12/11/1980", DateOrder::DayFirst), "1980-11-12");
    EXPECT_EQ(bornFrom("05.03.1980", DateOrder::MonthFirst), "1980-03-05") << "points always put the day first";
}

TEST(CsvDateTest, RefusesDatesThatAreNone)
{
    for (const char *cell : {"1980", "5.3.80", "1980-3-5", "30.02.1980", "0.1.1980", "1.13.1980", "13/13/1980", "32/01/1980",
             "05-03-1980", "5.3/1980", "5..1980", "5.3.1980.", "5.3.19800", "005.3.1980", "1980/03/05", "5 March 1980",
             "29.02.2023", "/", "..", "+5.3.1980"})
        expectBadDate(cell, {}, ErrorCode::OutOfRange, "allowed: a real date");
}

TEST(CsvDateTest, ADateWithTwoReadingsWaitsForTheUser)
{
    expectBadDate("03/04/1980", {}, ErrorCode::OutOfRange, "allowed: a date of which day and month can be told apart");
    EXPECT_TRUE(preview("name,born\nAna,03/04/1980\n").dateOrderNeeded);
    EXPECT_FALSE(preview("name,born\nAna,03/14/1980\nBo,13/01/1980\nCy,1980\n").dateOrderNeeded);
    EXPECT_FALSE(preview("name,born\nAna,03/04/1980\n", with(DateOrder::DayFirst)).dateOrderNeeded);
}

// Such a date shows that the order was chosen wrongly; the others would be read without a sign of it.
TEST(CsvDateTest, ADateAgainstTheChosenOrderIsAMistake)
{
    expectBadDate("03/25/1980", DateOrder::DayFirst, ErrorCode::Contradiction, "the chosen order");
    expectBadDate("25/03/1980", DateOrder::MonthFirst, ErrorCode::Contradiction, "the chosen order");
    EXPECT_EQ(bornFrom("25/03/1980", DateOrder::DayFirst), "1980-03-25");
    EXPECT_EQ(bornFrom("03/25/1980", DateOrder::MonthFirst), "1980-03-25");
}

} // namespace raphe::test
