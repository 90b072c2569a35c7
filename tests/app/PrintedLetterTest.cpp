// The letter to another professional on paper, read back from the PDF: in the order in which it is to be read, within its page
// and the window of the envelope, and nothing lost.
#include "app/paint/LetterPages.h"
#include "core/document/LetterWords.h"
#include "core/record/VisitJson.h"
#include "tests/app/PdfPage.h"
#include "tests/core/examination/Exam.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace raphe::test {

namespace {

const LetterFacts printedFacts{"Lowbridge Hands", "3 Millpond Yard\nLowbridge\nTelephone 0555 204466", "Ines Brook", "Ada Quill",
    "1961-03-04", "2026-11-26"};

Letter shortLetter()
{
    Letter out;
    out.written = "2026-11-27";
    out.to = {"Dr Asta Nord", "general practice", {"4 Mill Lane", "Lower Harrow", "LH2 4QQ"}};
    out.title = "Letter about warning signs";
    out.urgency = Urgency::SameDay;
    out.reason = {"One calf is swollen.", "One calf is swollen."};
    out.question = {"May care go on?", {}};
    out.parts = {{"Complaint", {"sore since the drive", "something else"}}, {"Left out", {"  \n ", "right soleus: tenderness 3"}},
        {"Tests", {"\nleft slump: familiar pain\n\nNegative: right slump\n", {}}}};
    return out;
}

class PrintedLetter : public testing::TestWithParam<Paper> {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    /// The pages as squeezed text.
    QStringList printed(const Letter &letter, const LetterFacts &of = printedFacts)
    {
        const auto written = writePdf(file().toStdString(), letterPages(GetParam(), letter, of));
        EXPECT_TRUE(written) << inWords(written.error());
        return squeezedPages(file());
    }
    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("letter.pdf")); }
    /// Where the word stands on the first page, in millimetres.
    [[nodiscard]] QRectF boxOf(const char *word) const
    {
        for (const PrintedWord &one : wordsOf(file()))
            if (one.page == 1 && one.text == QString::fromUtf8(word))
                return {one.box.topLeft() * millimetre, one.box.bottomRight() * millimetre};
        ADD_FAILURE() << word << " is not there";
        return {};
    }

private:
    static constexpr double millimetre = 25.4 / 72; // of a point
    QTemporaryDir m_folder;
};

void expectPrintedOrder(const QString &text, const QStringList &words)
{
    qsizetype from = 0;
    for (const QString &word : words) {
        const qsizetype at = text.indexOf(squeezed(word), from);
        ASSERT_GE(at, 0) << word.toStdString() << " is not there, or too early, in " << text.toStdString();
        from = at;
    }
}

} // namespace

INSTANTIATE_TEST_SUITE_P(Papers, PrintedLetter, testing::Values(Paper::A4, Paper::Letter));

TEST_P(PrintedLetter, HasUrgencyAndReasonFirst)
{
    const QStringList pages = printed(shortLetter());
    ASSERT_EQ(pages.size(), 1);
    expectPrintedOrder(pages[0],
        {QStringLiteral("Lowbridge Hands"), QStringLiteral("Dr Asta Nord"), QStringLiteral("Letter about warning signs"),
            QStringLiteral("Same day: please see the patient on 2026-11-27"), QStringLiteral("One calf is swollen."),
            QStringLiteral("May care go on?"), QStringLiteral("Ada Quill, born 1961-03-04, seen on 2026-11-26"),
            QStringLiteral("sore since the drive"), QStringLiteral("left slump: familiar pain"), QStringLiteral("Signature")});
    for (const char *words : {"Telephone 0555 204466", "LH2 4QQ", "Date 2026-11-27", "Visit on 2026-11-26", "From Ines Brook",
             "it is not a diagnosis"})
        EXPECT_TRUE(pages[0].contains(squeezed(QString::fromUtf8(words)))) << words;
    for (const char *words : {"something else", "Left out", "tenderness 3"})
        EXPECT_FALSE(pages[0].contains(squeezed(QString::fromUtf8(words)))) << words << ": as it was edited";
}

TEST_P(PrintedLetter, StandsInTheWindowOfTheEnvelope)
{
    for (const char *letterhead : {"", "one line", "a\nb\nc\nd\ne\nf"}) {
        LetterFacts other = printedFacts;
        other.letterhead = letterhead;
        printed(shortLetter(), other);
        for (const char *word : {"Asta", "general", "Mill", "Harrow", "4QQ"}) {
            const QRectF box = boxOf(word);
            // Letterhead, from memory: see LetterPages.cpp.
            EXPECT_GE(box.left(), 20) << word;
            EXPECT_LE(box.right(), 20 + 85) << word;
            EXPECT_GE(box.top(), GetParam() == Paper::A4 ? 57 : 52) << word;
            EXPECT_LE(box.bottom(), GetParam() == Paper::A4 ? 90 : 80) << word;
        }
    }
}

TEST_P(PrintedLetter, OfEachDemoVisitIsShort)
{
    const auto techniques = readEmbeddedTechniques(safetyRules());
    ASSERT_TRUE(techniques);
    const QDir folder(QStringLiteral(RAPHE_SOURCE_DIR "/demo/practice"));
    const QStringList files = folder.entryList({QStringLiteral("*.json")});
    ASSERT_GE(files.size(), 3);
    for (const QString &name : files) {
        QFile in(folder.filePath(name));
        ASSERT_TRUE(in.open(QIODevice::ReadOnly));
        const auto visit = readVisit(in.readAll().toStdString(), name.toStdString(), atlas());
        ASSERT_TRUE(visit) << inWords(visit.error());
        const Letter letter =
            letterDraft({safetyRules(), regions(), examination(), techniques.value(), {}}, visit.value(), visit.value().date);
        const QStringList pages = printed(letter, letterFacts(visit.value(), printedFacts.practice, printedFacts.letterhead));
        EXPECT_LE(pages.size(), visit.value().treatment.steps.empty() ? 1 : 2) << name.toStdString();
        EXPECT_TRUE(pages[0].contains(squeezed(QString::fromStdString(visit.value().patient->name)))) << name.toStdString();
        for (const LetterPart &part : letter.parts)
            for (const QString &line : QString::fromStdString(part.words.text).split(QLatin1Char('\n')))
                EXPECT_TRUE(pages.join(QString()).contains(squeezed(line))) << part.title;
        EXPECT_EQ(wordsBeyond(file(), 30).join(QLatin1Char(' ')).toStdString(), "") << name.toStdString();
    }
}

TEST_P(PrintedLetter, LosesNothingWhenItIsLong)
{
    Letter letter = shortLetter();
    const auto numbered = [](char mark, int count) {
        std::string out(300, mark); // wider than its column
        for (int i = 0; i < count; ++i)
            out += " <" + std::string(1, mark) + std::to_string(i) + ">";
        return out;
    };
    letter.reason.text = numbered('r', 400);
    letter.question.text = numbered('q', 900);
    letter.parts[0].words.text = numbered('c', 1500);
    const QStringList pages = printed(letter);
    ASSERT_GT(pages.size(), 3);
    const QString text = pages.join(QString());
    for (const auto &[mark, count] : {std::pair{'r', 400}, {'q', 900}, {'c', 1500}})
        for (int i = 0; i < count; ++i)
            EXPECT_EQ(text.count(QStringLiteral("<%1%2>").arg(QLatin1Char(mark)).arg(i)), 1) << mark << i;
    for (qsizetype i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(pages[i].contains(QStringLiteral("AdaQuillpage%1of%2").arg(i + 1).arg(pages.size()))) << i;
        EXPECT_TRUE(pages[i].contains(squeezed(QStringLiteral("it is not a diagnosis")))) << i;
    }
    EXPECT_EQ(wordsBeyond(file(), 30).join(QLatin1Char(' ')).toStdString(), "");
}

TEST_P(PrintedLetter, SaysWhereItGoesWhenNobodyIsNamed)
{
    Letter letter = shortLetter();
    letter.to = {};
    letter.question = {};
    LetterFacts bare;
    bare.practitioner = "Ines Brook";
    const QStringList pages = printed(letter, bare);
    ASSERT_EQ(pages.size(), 1);
    EXPECT_LT(boxOf("Ines").top(), 25) << "there is no letterhead";
    EXPECT_TRUE(pages[0].contains(QStringLiteral("Tothelicensedclinicianwhotakesover")));
    EXPECT_FALSE(pages[0].contains(QStringLiteral("Question")));
    EXPECT_FALSE(pages[0].contains(QStringLiteral("Patient")));
}

TEST_P(PrintedLetter, ShowsTypedTextThatTurnsDirectionAsAMark)
{
    Letter letter = shortLetter();
    letter.reason.text = "left \u202Ethgir\u202C side";
    EXPECT_TRUE(printed(letter)[0].contains(QChar::ReplacementCharacter));
}

} // namespace raphe::test
