// Patient lists as tables: the rules of RFC 4180 and what goes beyond them, seen through the preview.
#include "tests/core/record/CsvTesting.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

namespace raphe::test {

// RFC 4180, section 2, rules 1 to 7 in its order (from memory).
TEST(CsvTableTest, Rfc4180Rules)
{
    CsvPreview seen = preview("name,phone\r\nAna,1\r\nBo,2\r\n");
    ASSERT_EQ(seen.rows.size(), 2U) << "1: each row on a line of its own, ended by CRLF";
    EXPECT_EQ(recordAt(seen, 0).name, "Ana");
    EXPECT_EQ(recordAt(seen, 1).phone, "2");

    seen = preview("name,phone\r\nAna,1\r\nBo,2");
    ASSERT_EQ(seen.rows.size(), 2U) << "2: the last line may have no line break";
    EXPECT_EQ(recordAt(seen, 1).phone, "2");

    seen = preview("name,phone\r\nAna,1,\r\nBo\r\nCy,3\r\n");
    expectRowError(seen, 0, 2, "", ErrorCode::OutOfRange, "3 cells, allowed: 2"); // 4: as many cells as the header
    expectRowError(seen, 1, 3, "", ErrorCode::OutOfRange, "1 cells, allowed: 2");
    EXPECT_EQ(recordAt(seen, 2).name, "Cy");

    seen = preview("\"name\",\"phone\"\r\n\"Ana\",1\r\n");
    EXPECT_EQ(recordAt(seen, 0).name, "Ana") << "5: quotes around a cell are no part of it";

    seen = preview("name,mark\r\n\"Lee, Ana\",\"first\r\nsecond\"\r\nBo,x\r\n");
    EXPECT_EQ(recordAt(seen, 0).name, "Lee, Ana") << "6: a separator inside quotes";
    EXPECT_EQ(recordAt(seen, 0).mark, "first\r\nsecond") << "6: a line break inside quotes";
    EXPECT_EQ(seen.rows[1].line, 4U) << "and it counts as a line of the file";

    seen = preview("name,mark\r\nAna,\"a \"\"small\"\" scar\"\r\nBo,\"\"\"\"\r\nCy,\"\"\r\n");
    EXPECT_EQ(recordAt(seen, 0).mark, "a \"small\" scar") << "7: a quote inside quotes is doubled";
    EXPECT_EQ(recordAt(seen, 1).mark, "\"");
    EXPECT_EQ(recordAt(seen, 2).mark, "");
}

TEST(CsvTableTest, BrokenQuotesAreTheRowsMistake)
{
    CsvPreview seen = preview("name,mark\nAna,a \"scar\"\nBo,x\n");
    expectRowError(seen, 0, 2, "mark", ErrorCode::WrongType, "quotes around the whole cell");
    EXPECT_EQ(recordAt(seen, 1).name, "Bo");
    seen = preview("name,mark\nAna, \"scar\"\n\"Bo\"x,y\n\"\"Cy,z\nDi,z\n");
    expectRowError(seen, 0, 2, "mark", ErrorCode::WrongType, "quotes around the whole cell");
    expectRowError(seen, 1, 3, "name", ErrorCode::WrongType, "a separator after the closing quote");
    expectRowError(seen, 2, 4, "name", ErrorCode::WrongType, "a separator after the closing quote");
    EXPECT_EQ(recordAt(seen, 3).name, "Di");
    seen = preview("name,mark\nAna,\"scar\nBo,x\n");
    ASSERT_EQ(seen.rows.size(), 1U);
    expectRowError(seen, 0, 2, "mark", ErrorCode::WrongType, "a closing quote; the rest of the file");
}

TEST(CsvTableTest, LinesEndInThreeWaysAndBlankOnesAreNone)
{
    for (const std::string end : {"\n", "\r\n", "\r"}) {
        const CsvPreview seen =
            preview(end + "name,phone" + end + "Ana,\"1" + end + "2\"" + end + end + " , " + end + "Bo,2" + end + end);
        ASSERT_EQ(seen.rows.size(), 2U) << testing::PrintToString(end);
        EXPECT_EQ(seen.rows[0].line, 3U) << testing::PrintToString(end);
        EXPECT_EQ(seen.rows[1].line, 7U) << testing::PrintToString(end);
    }
}

TEST(CsvTableTest, AByteOrderMarkIsNoPartOfTheHeader)
{
    const CsvPreview seen = preview("\xEF\xBB\xBFname,phone\nAna,1\n");
    EXPECT_EQ(seen.columns[0], (CsvColumn{"name", CsvField::Name}));
    EXPECT_EQ(recordAt(seen, 0).name, "Ana");
}

TEST(CsvTableTest, WhatIsNotUtf8IsTheRowsMistake)
{
    const CsvPreview seen = preview("name,phone,shoe size\nJos\xE9,1,38\nJosé,1,38\nAna,1,\xFF\n");
    expectRowError(seen, 0, 2, "name", ErrorCode::WrongType, "UTF-8");
    EXPECT_EQ(recordAt(seen, 1).name, "José");
    expectRowError(seen, 2, 4, "shoe size", ErrorCode::WrongType, "UTF-8");
}

// What is written by the rules is read back, whatever the cells hold.
TEST(CsvTableTest, RandomTablesReadBackEqual)
{
    std::mt19937 engine(6);
    const auto number = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine); };
    const std::vector<std::string> pieces{"a", "É", "李", ",", ";", "\t", "\"", "\"\"", "\n", "\r\n", "\r", "'", " x", "z"};
    for (int i = 0; i < 300; ++i) {
        const std::string separator(1, ",;\t"[number(0, 2)]);
        std::string text = "name" + separator + "mark" + separator + "language\n";
        std::vector<PatientRecord> expected;
        for (int row = number(0, 6); row > 0; --row) {
            PatientRecord record;
            for (std::string *field : {&record.name, &record.mark, &record.language}) {
                *field = "b";
                for (int piece = number(0, 5); piece > 0; --piece)
                    *field += pieces[static_cast<std::size_t>(number(0, static_cast<int>(pieces.size()) - 1))];
                *field += "e";
                std::string cell = *field;
                for (std::size_t at = 0; (at = cell.find('"', at)) != std::string::npos; at += 2)
                    cell.insert(at, 1, '"');
                const bool bare = field->find_first_of(separator + "\"\r\n") == std::string::npos && number(0, 1) == 1;
                text += (field == &record.name ? "" : separator) + (bare ? *field : "\"" + cell + "\"");
            }
            text += number(0, 1) == 1 ? "\n" : "\r\n";
            expected.push_back(record);
        }
        const auto records = chosenRows(preview(text), {});
        ASSERT_TRUE(records) << testing::PrintToString(records.error()) << text;
        ASSERT_EQ(records.value(), expected) << text;
    }
}

} // namespace raphe::test
