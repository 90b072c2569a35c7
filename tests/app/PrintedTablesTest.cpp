// The tables for a clinician's review, read back from the PDF: nothing is missing or cut, and every page says that no clinician
// has read it.
#include "app/paint/Flow.h"
#include "app/paint/RuleReviewPages.h"
#include "tests/app/PdfPage.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <algorithm>

namespace raphe::test {

namespace {

class PrintedTables : public testing::TestWithParam<Paper> {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    /// The pages as squeezed text.
    QStringList printed(const RuleReview &review)
    {
        EXPECT_TRUE(writePdf(file().toStdString(), ruleReviewPages(GetParam(), review)).ok());
        return squeezedPages(file());
    }
    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("rules.pdf")); }

private:
    QTemporaryDir m_folder;
};

} // namespace

INSTANTIATE_TEST_SUITE_P(Papers, PrintedTables, testing::Values(Paper::A4, Paper::Letter));

TEST_P(PrintedTables, HoldEveryRuleSignAndReminder)
{
    const RuleReview review = ruleReview(safetyRules(), atlas());
    const QStringList pages = printed(review);
    ASSERT_GT(pages.size(), 10);
    // All of an entry on one page: no row is broken.
    const auto expectOnAPage = [&](const std::vector<std::string> &all, const std::string &of) {
        const auto holdsAll = [&](const QString &page) {
            return std::all_of(all.begin(), all.end(),
                [&](const std::string &words) { return page.contains(squeezed(QString::fromStdString(words))); });
        };
        EXPECT_TRUE(std::any_of(pages.begin(), pages.end(), holdsAll)) << of;
    };
    for (const CautionRule &rule : safetyRules().rules())
        expectOnAPage({"[" + rule.id + "]", rule.reason, rule.source}, rule.id);
    for (const WarningSign &sign : safetyRules().signs().signs)
        expectOnAPage({"[" + sign.id + "]", sign.name, sign.ask, sign.means, sign.act, sign.source}, sign.id);
    for (const CautionFeed &feed : safetyRules().feeds())
        expectOnAPage({"[" + feed.id + "]", feed.say, feed.source}, feed.id);
    const QString text = pages.join(QString());
    EXPECT_EQ(safetyRules().rules().size() + safetyRules().signs().signs.size() + safetyRules().feeds().size(),
        static_cast<std::size_t>(text.count(QLatin1Char('['))));
}

TEST_P(PrintedTables, SayOnEveryPageThatNoClinicianHasReadThem)
{
    const QStringList pages = printed(ruleReview(safetyRules(), atlas()));
    for (qsizetype i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(pages[i].contains(squeezed(QStringLiteral("Not yet reviewed by a clinician")))) << "page " << i + 1;
        EXPECT_TRUE(pages[i].contains(QStringLiteral("page%1of%2").arg(i + 1).arg(pages.size()))) << "page " << i + 1;
        EXPECT_TRUE(i + 1 == pages.size() || pages[i].contains(QStringLiteral("agreechangeremarkofthereviewer")))
            << "page " << i + 1;
    }
    for (const char *field : {"Name", "licence", "Date", "Signature"})
        EXPECT_TRUE(pages.back().contains(QString::fromUtf8(field))) << field;
}

TEST_P(PrintedTables, LoseNothingOfAVeryLongReason)
{
    RuleReview review = ruleReview(safetyRules(), atlas());
    std::string reason(400, '~'); // wider than its column
    for (int i = 0; i < 3000; ++i)
        reason += " <" + std::to_string(i) + ">";
    review.parts[0].groups[0].rows[3].cells[3] = reason;
    const QString text = printed(review).join(QString());
    EXPECT_EQ(text.count(QLatin1Char('~')), 400);
    for (int i = 0; i < 3000; ++i)
        EXPECT_EQ(text.count(QStringLiteral("<%1>").arg(i)), 1) << i;
    EXPECT_EQ(wordsBeyond(file(), 25).join(QLatin1Char(' ')).toStdString(), "");
}

TEST_P(PrintedTables, StayWithinTheirPages)
{
    printed(ruleReview(safetyRules(), atlas()));
    EXPECT_EQ(wordsBeyond(file(), 25).join(QLatin1Char(' ')).toStdString(), "") << "10 mm are 28 points";
}

TEST(PrintedFlow, KeepsHeadingsWithWhatFollowsAndRepeatsHeads)
{
    const auto paint = [](QPainter &, const QPointF &) {};
    const auto head = std::make_shared<const Block>(Block{2, paint});
    Block heading{3, paint};
    heading.keepsWithNext = true;
    const std::vector<Block> blocks{{6, paint}, {1, {}}, heading, {4, paint, false, false, head}, {5, paint, false, false, head}};
    const auto pages = flow(blocks, 10);
    ASSERT_EQ(pages.size(), 3U);
    ASSERT_EQ(pages[0].size(), 2U);
    ASSERT_EQ(pages[1].size(), 2U) << "a heading does not stay behind";
    EXPECT_EQ(pages[1][0].block, &blocks[2]);
    EXPECT_EQ(pages[1][1].top, 3);
    ASSERT_EQ(pages[2].size(), 2U);
    EXPECT_EQ(pages[2][0].block, head.get());
    EXPECT_EQ(pages[2][1].top, 2);
}

} // namespace raphe::test
