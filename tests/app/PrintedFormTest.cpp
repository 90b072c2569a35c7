// The form before arrival, read back from the PDF: nothing is missing, type is large enough, and the sides are where they belong.
#include "app/paint/ArrivalFormPages.h"
#include "tests/app/PdfPage.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QTemporaryDir>

#include <algorithm>

namespace raphe::test {

namespace {

class PrintedForm : public testing::TestWithParam<Paper> {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        const auto texts = readEmbeddedPatientTexts();
        ASSERT_TRUE(texts.ok());
        m_texts = texts.value();
        const auto form = arrivalForm(m_texts);
        ASSERT_TRUE(form.ok());
        const BodyArt front(atlas(), body().of(View::Front));
        const BodyArt back(atlas(), body().of(View::Back));
        ASSERT_TRUE(writePdf(file().toStdString(), arrivalFormPages(GetParam(), form.value(), front, back)).ok());
    }
    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("form.pdf")); }

    PatientTexts m_texts;

private:
    QTemporaryDir m_folder;
};

} // namespace

INSTANTIATE_TEST_SUITE_P(Papers, PrintedForm, testing::Values(Paper::A4, Paper::Letter));

TEST_P(PrintedForm, HoldsEveryTextOnFewPages)
{
    const QStringList pages = squeezedPages(file());
    EXPECT_LE(pages.size(), GetParam() == Paper::A4 ? 6 : 7);
    const QString all = pages.join(QString());
    for (const PatientText &text : m_texts.texts) {
        if (text.use == TextUse::PatientMode || text.id == "move-page")
            continue;
        QString words = squeezed(QString::fromStdString(text.text));
        if (words.endsWith(QLatin1Char('.'))) // the heads of tables go without
            words.chop(1);
        EXPECT_TRUE(all.contains(words)) << text.id;
    }
    for (qsizetype i = 0; i < pages.size(); ++i)
        EXPECT_TRUE(pages[i].contains(QStringLiteral("Thisispage%1of%2.").arg(i + 1).arg(pages.size()))) << i + 1;
    EXPECT_TRUE(pages.front().contains(squeezed(QString::fromStdString(m_texts.at("urgent-title")))));
    EXPECT_FALSE(all.contains(QLatin1Char('{')));
    EXPECT_EQ(wordsBeyond(file(), 30).join(QLatin1Char(' ')).toStdString(), "");
}

TEST_P(PrintedForm, IsSetInTwelvePointsAtLeast)
{
    const auto words = wordsOf(file());
    ASSERT_GT(words.size(), 500U);
    // The page numbers are the measure of 12 points: a box is as high as ascent and descent of the typeface.
    const QFontMetricsF metrics(typefaceInUnits(100));
    const double twelve = 12 * (metrics.ascent() + metrics.descent()) / 100;
    for (const PrintedWord &word : words)
        EXPECT_GT(word.box.height(), twelve * 0.97) << word.text.toStdString();
}

TEST_P(PrintedForm, ShowsFrontAndBackOnOnePageWithTheirSides)
{
    const auto words = wordsOf(file());
    const auto large = [&](const char *letter) {
        std::vector<PrintedWord> out;
        std::copy_if(words.begin(), words.end(), std::back_inserter(out),
            [&](const PrintedWord &word) { return word.text == QString::fromUtf8(letter) && word.box.height() > 20; });
        std::sort(out.begin(), out.end(), [](const PrintedWord &a, const PrintedWord &b) { return a.box.left() < b.box.left(); });
        return out;
    };
    const auto left = large("L");
    const auto right = large("R");
    ASSERT_EQ(left.size(), 2U);
    ASSERT_EQ(right.size(), 2U);
    EXPECT_EQ(left[0].page, left[1].page);
    EXPECT_EQ(right[0].page, left[1].page);
    EXPECT_LT(right[0].box.left(), left[0].box.left()) << "front: the patient's right is on the viewer's left";
    EXPECT_LT(left[1].box.left(), right[1].box.left()) << "back: as the patient sees it";
    for (const auto &letters : {left, right}) {
        const QString side = letters[0].text == QLatin1String("L") ? QStringLiteral("LEFT") : QStringLiteral("RIGHT");
        for (const PrintedWord &letter : letters) // the side in words stands below its letter
            EXPECT_TRUE(std::any_of(words.begin(), words.end(), [&](const PrintedWord &word) {
                return word.page == letter.page && word.text == side && word.box.top() > letter.box.top()
                    && word.box.top() < letter.box.bottom() + 6 && std::abs(word.box.center().x() - letter.box.center().x()) < 60;
            })) << side.toStdString();
    }
}

} // namespace raphe::test
