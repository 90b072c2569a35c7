// Who in a patient list may be there twice. All people here are invented.
#include "core/record/PatientLikeness.h"
#include "tests/core/record/CsvTesting.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

namespace raphe::test {

TEST(PatientDuplicatesTest, ShowsWhoIsThereAlready)
{
    const std::vector<PatientRecord> existing{named("Bo Reed", "1990-01-01"), named("Anna Méyer", "1980-03-05")};
    const CsvPreview seen = preview("name,born\n"
                                    "Zed Orr,1970-01-01\n"
                                    ",1980-03-05\n"
                                    "Meyer Anna,05.03.1980\n"
                                    "Anna Maier,1980-03-05\n"
                                    "Bo Reed,\n"
                                    "Anna Meyer,1955-07-21\n",
        plain, existing);
    using D = CsvDuplicate;
    const std::vector<D> expected{
        {2, D::Among::Existing, 1, 1.0},
        {3, D::Among::Existing, 1, 0.8},
        {3, D::Among::Rows, 2, 0.8},
        {4, D::Among::Existing, 0, 0.8},
    };
    EXPECT_EQ(seen.duplicates, expected) << "rows with mistakes and another birth date are none";
    EXPECT_TRUE(seen.comparedAll);
}

// The short way (only those who share a sign are compared) against comparing everybody with everybody.
TEST(PatientDuplicatesTest, FindsTheSameDuplicatesAsComparingAll)
{
    std::mt19937 engine(5);
    const auto pick = [&](const std::vector<std::string> &from) {
        return from[std::uniform_int_distribution<std::size_t>(0, from.size() - 1)(engine)];
    };
    const std::vector<std::string> first{"Anna", "Ana", "Hanna", "Bo", "Boris", "Zoë", "Maria", "Marie"};
    const std::vector<std::string> last{"Meyer", "Maier", "Meier", "Reed", "Reid", "Ørsted", "Lago"};
    const std::vector<std::string> born{"1980-03-05", "1980-05-03", "1980-03-06", "1955-07-21", ""};
    std::string text = "name,born\n";
    std::vector<PatientRecord> records;
    for (int i = 0; i < 300; ++i) {
        records.push_back(named(pick(first) + " " + pick(last), pick(born)));
        text += records.back().name + "," + records.back().born + "\n";
    }
    const std::vector<PatientRecord> existing(records.begin(), records.begin() + 40);
    const CsvPreview seen = preview(text, plain, existing);
    ASSERT_EQ(seen.rows.size(), records.size());
    std::size_t found = 0;
    for (std::size_t row = 0; row < records.size(); ++row)
        for (const auto among : {CsvDuplicate::Among::Existing, CsvDuplicate::Among::Rows}) {
            double best = 0;
            const std::size_t count = among == CsvDuplicate::Among::Existing ? existing.size() : row;
            for (std::size_t other = 0; other < count; ++other)
                best = std::max(best, likeness(records[row], records[other]));
            const auto shown = std::find_if(seen.duplicates.begin(), seen.duplicates.end(),
                [&](const CsvDuplicate &d) { return d.row == row && d.among == among; });
            if (best < duplicateLikeness) {
                EXPECT_EQ(shown, seen.duplicates.end()) << records[row].name;
                continue;
            }
            ++found;
            ASSERT_NE(shown, seen.duplicates.end()) << records[row].name << " " << best;
            EXPECT_DOUBLE_EQ(shown->likeness, best);
            EXPECT_DOUBLE_EQ(likeness(records[row], records[shown->other]), best);
        }
    EXPECT_EQ(found, seen.duplicates.size());
    EXPECT_TRUE(seen.comparedAll);
}

TEST(PatientDuplicatesTest, SaysWhenThereWasTooMuchAlikeToCompare)
{
    const std::string text = "name\nAnna Reed\nAnna Lago\nAnna Orr\nAnna Reed\n"; // one is found at once: 5 comparisons
    CsvOptions options = plain;
    options.mostComparisons = 6;
    EXPECT_TRUE(preview(text, options).comparedAll);
    EXPECT_EQ(preview(text, options).duplicates.size(), 1U);
    options.mostComparisons = 3;
    EXPECT_FALSE(preview(text, options).comparedAll);
    EXPECT_EQ(preview(text, options).duplicates.size(), 0U);
}

} // namespace raphe::test
