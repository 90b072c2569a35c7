// A patient list as a whole: the rows that are chosen from its preview, long ones, and any bytes.
#include "tests/core/record/CsvTesting.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace raphe::test {

TEST(PatientCsvTest, AHeaderAloneIsAnEmptyList)
{
    EXPECT_TRUE(preview("name,born\n").rows.empty());
}

TEST(PatientCsvTest, GivesTheRowsThatWereChosen)
{
    const CsvPreview seen = preview("name,born\nAna,1980-03-05\nBo,1.1.80\nCy,\n");
    const auto refused = chosenRows(seen, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(refused.error().place, "list.csv, line 3, column born");
    EXPECT_NE(refused.error().detail.find("1.1.80"), std::string::npos);
    EXPECT_FALSE(chosenRows(seen, {0, 2})) << "another row left out does not help";

    const auto both = chosenRows(seen, {1});
    ASSERT_TRUE(both);
    EXPECT_EQ(both.value(), (std::vector<PatientRecord>{named("Ana", "1980-03-05"), named("Cy")}));
    const auto one = chosenRows(seen, {1, 0});
    ASSERT_TRUE(one);
    EXPECT_EQ(one.value(), std::vector<PatientRecord>{named("Cy")});

    const auto outside = chosenRows(seen, {1, 3});
    ASSERT_FALSE(outside);
    EXPECT_EQ(outside.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(outside.error().place, "list.csv");

    const auto wholeRow = chosenRows(preview("name,born\nAna\n"), {});
    ASSERT_FALSE(wholeRow);
    EXPECT_EQ(wholeRow.error().place, "list.csv, line 2");
}

TEST(PatientCsvTest, ReadsTenThousandRows)
{
    std::string text = "Vorname;Nachname;Geburtsdatum;Telefon;Ort\n";
    for (int i = 0; i < 10'000; ++i)
        text += "Anna" + std::to_string(i % 97) + ";Meyer" + std::to_string(i) + ";" + std::to_string(1 + i % 28) + "."
            + std::to_string(1 + i % 12) + "." + std::to_string(1920 + i % 90) + ";0555 " + std::to_string(i) + ";Elmford\n";
    const CsvPreview seen = preview(text);
    ASSERT_EQ(seen.rows.size(), 10'000U);
    EXPECT_EQ(seen.rows.back().line, 10'001U);
    EXPECT_TRUE(std::all_of(seen.rows.begin(), seen.rows.end(), [](const CsvRow &row) { return row.ok(); }));
    EXPECT_TRUE(seen.comparedAll);
}

// Whatever the bytes, there is a refusal with a place, or a preview that keeps its promises.
TEST(PatientCsvTest, RandomBytesNeverBreakAPromise)
{
    std::mt19937 engine(7);
    const auto number = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine); };
    const std::vector<std::string> pieces{"name", "born", "Vorname", "medicines", "Ana", "Bo", "5.3.1980", "03/04/1980", ",", ",",
        ";", "\t", "\n", "\n", "\r\n", "\r", "\"", "\"\"", " ", "\xEF\xBB\xBF", "\xE9", std::string(1, '\0'), "é", "\xF0\x9F"};
    int previews = 0;
    for (int i = 0; i < 20'000; ++i) {
        std::string text = number(0, 2) == 0 ? "" : "name,born,phone\n";
        for (int piece = number(0, 30); piece > 0; --piece)
            text += number(0, 9) == 0 ? std::string(1, static_cast<char>(number(0, 255)))
                                      : pieces[static_cast<std::size_t>(number(0, static_cast<int>(pieces.size()) - 1))];
        const auto seen = previewCsv(text, with(number(0, 1) == 1 ? std::optional(DateOrder::DayFirst) : std::nullopt), {});
        if (!seen) {
            ASSERT_FALSE(seen.error().place.empty());
            ASSERT_FALSE(seen.error().detail.empty());
            continue;
        }
        ++previews;
        std::size_t line = 1;
        for (const CsvRow &row : seen.value().rows) {
            ASSERT_GT(row.line, line) << "lines go up, and the first is the header's";
            line = row.line;
            if (row.ok())
                ASSERT_TRUE(checkPatient(row.record(), "row"));
            else
                ASSERT_TRUE(row.error().line == line && !row.error().detail.empty());
        }
        for (const CsvDuplicate &d : seen.value().duplicates)
            ASSERT_TRUE(d.row < seen.value().rows.size() && d.other < d.row && d.likeness >= duplicateLikeness);
    }
    EXPECT_GT(previews, 5000) << "too few got beyond the header to say much";
}

} // namespace raphe::test
