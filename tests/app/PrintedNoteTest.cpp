// Note and records request, read back from the PDF: nothing is missing or cut, and every page says whose record it is, of
// which visit, in what state, and that it defers to licensed care.
#include "app/paint/ClinicalNotePages.h"
#include "app/paint/RecordsRequestPages.h"
#include "tests/app/PdfPage.h"
#include "tests/core/document/NoteTesting.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

#include <algorithm>

namespace raphe::test {

namespace {

QString squeezedWords(const std::string &text)
{
    return squeezed(QString::fromStdString(text));
}

class PrintedNote : public testing::TestWithParam<Paper> {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }
    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("note.pdf")); }

    /// The pages as squeezed text; nothing stands beyond the margins.
    QStringList printed(const ClinicalNote &note)
    {
        EXPECT_TRUE(writePdf(file().toStdString(), clinicalNotePages(GetParam(), note)).ok());
        EXPECT_EQ(wordsBeyond(file(), 28).join(QLatin1Char(' ')).toStdString(), "");
        return squeezedPages(file());
    }
    void expectOnEveryPage(const QStringList &pages, const std::vector<std::string> &all)
    {
        for (qsizetype i = 0; i < pages.size(); ++i) {
            for (const std::string &words : all)
                EXPECT_TRUE(pages[i].contains(squeezedWords(words))) << words << " on page " << i + 1;
            EXPECT_TRUE(pages[i].contains(QStringLiteral("page%1of%2").arg(i + 1).arg(pages.size()))) << i + 1;
        }
    }

private:
    QTemporaryDir m_folder;
};

constexpr const char *noteLimits = "Assists a trained practitioner; follow local law, scope of practice and licensed care.";

// Each line, whole, though a page may end within it.
void expectNoteLines(const QStringList &pages, const ClinicalNote &note)
{
    const QString all = pages.join(QString());
    for (const FlatNoteLine &line : flatLines(note)) {
        EXPECT_TRUE(all.contains(squeezedWords(line.line.text))) << wholeText(line);
        EXPECT_TRUE(all.contains(squeezedWords(line.line.label))) << wholeText(line);
        EXPECT_TRUE(all.contains(squeezedWords(line.line.asOf))) << wholeText(line);
    }
}

} // namespace

INSTANTIATE_TEST_SUITE_P(Papers, PrintedNote, testing::Values(Paper::A4, Paper::Letter));

TEST_P(PrintedNote, HoldsEveryLine)
{
    Visit before = notedVisit();
    before.date = "2026-11-22";
    NoteGiven given;
    given.state = NoteState::Signed;
    given.earlier = {{before, false}};
    const auto advice = adviser().advise(notedVisit(), "v");
    ASSERT_TRUE(advice.ok());
    given.explain = advice.value().reasons.explain;
    const ClinicalNote note = notedAs(notedVisit(), given);
    const QStringList pages = printed(note);
    EXPECT_LE(pages.size(), 5) << "of a visit in which everything is written down";
    expectNoteLines(pages, note);
    expectOnEveryPage(pages, {"Ada Quill, born 1961-03-04, visit of 2026-11-29", noteLimits});
    for (const NotePart &part : note.parts)
        EXPECT_TRUE(pages.join(QString()).contains(squeezedWords(part.title))) << part.title;
}

TEST_P(PrintedNote, SaysItsStateInBigWordsOnEveryPage)
{
    for (const auto &[state, words] : {std::pair{NoteState::Draft, "DRAFT: NOT SIGNED"},
             {NoteState::Amending, "AMENDMENT BEING WRITTEN: NOT SIGNED"}, {NoteState::InError, "ENTERED IN ERROR"}}) {
        NoteGiven given;
        given.state = state;
        const QStringList pages = printed(notedAs(notedVisit(), given));
        ASSERT_GT(pages.size(), 1);
        expectOnEveryPage(pages, {words});
        double tallest = 0; // points; ordinary type is 9.5
        for (const PrintedWord &word : wordsOf(file()))
            if (QString::fromUtf8(words).contains(word.text) && word.text.size() > 2 && word.text == word.text.toUpper())
                tallest = std::max(tallest, word.box.height());
        EXPECT_GT(tallest, 18) << words;
    }
    NoteGiven given;
    given.state = NoteState::Signed;
    EXPECT_FALSE(printed(notedAs(notedVisit(), given)).join(QString()).contains(squeezedWords("NOT SIGNED")));
}

TEST_P(PrintedNote, FortyFindingsFlowToAnotherPage)
{
    Visit visit;
    visit.patient = Patient{"Ada Quill", "1961-03-04"};
    visit.date = "2026-11-29";
    for (const Place &place : examinablePlaces()) {
        if (visit.findings.size() == 40)
            break;
        Finding finding = tender(place.structure.value, place.side, 2);
        finding.note = "number " + std::to_string(visit.findings.size()) + " of the palpation";
        visit.findings.push_back(finding);
    }
    ASSERT_EQ(visit.findings.size(), 40U);
    NoteGiven given;
    given.state = NoteState::Signed;
    const ClinicalNote note = notedAs(visit, given);
    const QStringList pages = printed(note);
    EXPECT_GE(pages.size(), 2);
    expectNoteLines(pages, note);
    expectOnEveryPage(pages, {"Ada Quill, born 1961-03-04, visit of 2026-11-29", noteLimits});
    EXPECT_TRUE(pages[1].contains(squeezedWords("Objective, continued")));
}

TEST_P(PrintedNote, LosesNothingOfVeryLongTextsAndNames)
{
    Visit visit = notedVisit();
    visit.patient->name = "Wilhelmina " + std::string(200, 'W');
    std::string words(300, '~'); // wider than its column
    for (int i = 0; i < 2500; ++i)
        words += " <" + std::to_string(i) + ">";
    visit.closing.impression.text = words;
    visit.complaints[0].text = words;
    NoteGiven given;
    given.state = NoteState::Draft;
    const QString text = printed(notedAs(visit, given)).join(QString());
    EXPECT_EQ(text.count(QLatin1Char('~')), 600);
    for (int i = 0; i < 2500; ++i)
        EXPECT_EQ(text.count(QStringLiteral("<%1>").arg(i)), 2) << i;
    EXPECT_TRUE(text.contains(QString(200, QLatin1Char('W')))) << "in full under the title";
}

TEST_P(PrintedNote, ARequestHasOneCountOfPagesAndEachNoteItsOwnHead)
{
    RecordContent kept;
    kept.patient = wholeRecord();
    kept.madeAt = 1'796'100'000'000;
    Visit first = notedVisit();
    first.date = "2026-11-15";
    Visit amended = first;
    amended.findings[0].tenderness = Tenderness{1};
    NoteVersion signature;
    signature.act = RecordAct::Signed;
    signature.author = "Ines Brook";
    signature.visit = first;
    NoteVersion amendment = signature;
    amendment.act = RecordAct::Amended;
    amendment.reason = "one grade was wrong";
    amendment.visit = amended;
    kept.visits = {
        {NoteState::Signed, {}, amended, {signature, amendment}, {{}, {}}}, {NoteState::InError, {}, notedVisit(), {}, {}}};
    kept.accesses = {{1'796'000'500'000, "Juno Marsh", RecordAct::Opened}};
    const RecordsRequest request = recordsRequest(noteKnowledge(), kept, NoteFor::Record);
    ASSERT_EQ(request.notes.size(), 3U);
    ASSERT_TRUE(writePdf(file().toStdString(), recordsRequestPages(GetParam(), request)).ok());
    EXPECT_EQ(wordsBeyond(file(), 28).join(QLatin1Char(' ')).toStdString(), "");
    const QStringList pages = squeezedPages(file());
    expectOnEveryPage(pages, {noteLimits});
    EXPECT_TRUE(pages[0].contains(squeezedWords("Copy of a patient's record")));
    EXPECT_TRUE(pages[0].contains(squeezedWords("2026-11-15")) && pages[0].contains(squeezedWords("earlier versions: 1")));
    for (const ClinicalNote &note : request.notes)
        expectNoteLines(pages, note);
    for (const NotePart *part : {&request.record, &request.contents, &request.accesses})
        for (const NoteSection &section : part->sections)
            for (const NoteLine &line : section.lines)
                EXPECT_TRUE(pages.join(QString()).contains(squeezedWords(line.text))) << line.text;
    // A page with the head of one note has the state of that note.
    for (const QString &page : pages) {
        EXPECT_EQ(page.contains(squeezedWords("visit of 2026-11-29")), page.contains(squeezedWords("ENTERED IN ERROR")));
        if (page.contains(squeezedWords("EARLIER VERSION OF"))) {
            EXPECT_TRUE(page.contains(squeezedWords("visit of 2026-11-15")));
        }
    }
}

} // namespace raphe::test
