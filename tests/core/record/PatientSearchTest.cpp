// Folding words and finding patients by them. All people here are invented.
#include "core/record/PatientSearch.h"
#include "core/base/Utf8.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <string>

namespace raphe::test {

TEST(PatientSearchTest, FoldsWords)
{
    EXPECT_EQ(foldedWords("  José   MÜLLER-Strauß "), "jose muller strauss");
    EXPECT_EQ(foldedWords("Wałęsa Ødegård Đorđe"), "walesa odegard dorde");
    EXPECT_EQ(foldedWords("O’Brien O'Brien"), "obrien obrien");
    EXPECT_EQ(foldedWords("Žižka\tçelik"), "zizka celik");
    EXPECT_EQ(foldedWords("5/3/1980"), "5.3.1980");
    EXPECT_EQ(foldedWords("4-5 weeks, L4/5"), "4 5 weeks l4 5");
    EXPECT_EQ(foldedWords(" -- "), "");
}

TEST(PatientSearchTest, SplitsWords)
{
    EXPECT_EQ(splitWords("ana 5.3. lago"), (std::vector<std::string>{"ana", "5.3.", "lago"}));
    EXPECT_EQ(splitWords(" ana  bo "), (std::vector<std::string>{"ana", "bo"}));
    EXPECT_TRUE(splitWords("").empty());
}

TEST(PatientSearchTest, TextHoldsNamesDatesAndComplaints)
{
    EXPECT_EQ(searchText(wholeRecord()),
        "zoe orsted zoe oersted 1980-03-05 05.03.1980 5.3.1980 05031980 1980-05-03 03.05.1980 3.5.1980 03051980 low back knie "
        "rechts");
    EXPECT_EQ(searchText(named("Ana")), "ana");
}

TEST(PatientSearchTest, FindsByAnyPart)
{
    PatientRecord anna = named("Anna-María Lindström", "1980-03-05");
    anna.complaints = {{1, "Schmerz im Kreuz, seit 4-5 Wochen", "", false}};
    const std::string text = searchText(anna);
    for (const char *query : {"", " ", "anna", "LIND", "lindstrom maria", "strö", "Lindström", "1980", "1980-03-05", "05.03.1980",
             "5.3.1980", "5/3/1980", "05/03/1980", "5.3.", "03.1980", "05031980", "kreuz lind", "wochen 1980 anna", "4-5"})
        EXPECT_TRUE(PatientQuery(query).matches(text)) << query;
    for (const char *query : {"anne", "lindqvist", "1981", "1980-05-03", "3.5.1980", "anna knie", "6.3."})
        EXPECT_FALSE(PatientQuery(query).matches(text)) << query;
}

// Any piece of a word, as it was written or without its accents, in any order.
TEST(PatientSearchTest, FindsRandomPieces)
{
    Random random(2);
    for (int i = 0; i < 300; ++i) {
        const PatientRecord record = random.record();
        const std::string text = searchText(record);
        EXPECT_TRUE(PatientQuery(record.name).matches(text)) << record.name;
        EXPECT_TRUE(PatientQuery(foldedWords(record.name)).matches(text)) << record.name;
        EXPECT_TRUE(PatientQuery(record.born).matches(text)) << record.born;
        for (const PatientComplaint &complaint : record.complaints) {
            EXPECT_TRUE(PatientQuery(complaint.text).matches(text)) << complaint.text;
            EXPECT_TRUE(PatientQuery(complaint.text + " " + record.born + " " + record.name).matches(text));
        }
        const std::string folded = foldedWords(record.name);
        const std::string begun = folded.substr(0, static_cast<std::size_t>(random.number(1, 3)));
        EXPECT_TRUE(!isUtf8(begun) || PatientQuery(begun).matches(text)) << begun;
        EXPECT_FALSE(PatientQuery(record.name + " xqzw").matches(text));
    }
}

} // namespace raphe::test
