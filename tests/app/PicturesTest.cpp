// Each document as a picture, held against the one that was looked at and approved (tests/pictures). A change that is meant is
// looked at and renewed: RAPHE_RENEW_PICTURES=1 raphe-app-tests --gtest_filter='Pictures.*'
#include "app/paint/ArrivalFormPages.h"
#include "app/paint/ClinicalNotePages.h"
#include "app/paint/LetterPages.h"
#include "app/paint/RecordsRequestPages.h"
#include "app/paint/VisitMapPages.h"
#include "core/document/ArrivalForm.h"
#include "core/document/LetterWords.h"
#include "core/document/PatientTexts.h"
#include "tests/core/document/NoteTesting.h"
#include "tests/support/Maps.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QImage>
#include <QPainter>

#include <cmath>

namespace raphe::test {

namespace {

constexpr double dotsPerInch = 50;
// Fonts are drawn a little differently by other versions of FreeType; our choice.
constexpr int tolerance = 40; // of 255, for a pixel
constexpr double mayDiffer = 0.01; // of all pixels

QImage painted(const PrintedPages &document)
{
    const QSizeF sheet = sheetOf(document.paper, document.orientation).size() * (dotsPerInch / 25.4);
    QImage image(static_cast<int>(sheet.width()), static_cast<int>(sheet.height()) * static_cast<int>(document.pages.size()),
        QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    for (const PagePainter &page : document.pages) {
        painter.save();
        painter.scale(dotsPerInch / 25.4, dotsPerInch / 25.4);
        page(painter);
        painter.restore();
        painter.translate(0, static_cast<int>(sheet.height()));
    }
    return image;
}

double shareThatDiffers(const QImage &a, const QImage &b)
{
    if (a.size() != b.size())
        return 1;
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QRgb p = a.pixel(x, y);
            const QRgb q = b.pixel(x, y);
            count += std::abs(qRed(p) - qRed(q)) > tolerance || std::abs(qGreen(p) - qGreen(q)) > tolerance
                    || std::abs(qBlue(p) - qBlue(q)) > tolerance
                ? 1
                : 0;
        }
    return static_cast<double>(count) / (a.width() * a.height());
}

void expectApproved(const PrintedPages &document, const std::string &name)
{
    const QString file = QDir(QStringLiteral(RAPHE_SOURCE_DIR))
                             .filePath(QStringLiteral("tests/pictures/%1.png").arg(QString::fromStdString(name)));
    const QImage now = painted(document);
    if (qEnvironmentVariableIsSet("RAPHE_RENEW_PICTURES")) {
        ASSERT_TRUE(now.save(file)) << file.toStdString();
        return;
    }
    const QImage approved = QImage(file).convertToFormat(QImage::Format_RGB32);
    ASSERT_FALSE(approved.isNull()) << file.toStdString() << " is missing: look at the page and renew";
    const double differs = shareThatDiffers(now, approved);
    if (differs > mayDiffer)
        now.save(QDir::temp().filePath(QString::fromStdString(name) + QStringLiteral("-now.png")));
    EXPECT_LE(differs, mayDiffer) << name << " looks different; it is in " << QDir::tempPath().toStdString()
                                  << ", look at both, and renew when it is meant";
}

} // namespace

TEST(Pictures, OfTheVisitMap)
{
    const BodyArt front(atlas(), body().of(View::Front));
    const BodyArt back(atlas(), body().of(View::Back));
    const Visit whole = demoVisit("pellam-2026-11-26");
    for (const auto &language : languageWords)
        for (const auto &paper : paperWords)
            expectApproved(visitMapPages({paper.first, false, false}, mapOf(whole, language.first), front, back),
                "map-" + std::string(language.second) + "-" + std::string(paper.second));
    expectApproved(visitMapPages({Paper::A4, false, true}, mapOf(whole), front, back), "map-grey");
    expectApproved(visitMapPages({Paper::A4, true, false}, mapOf(whole), front, back), "map-large");
    expectApproved(
        visitMapPages({Paper::A4, false, false}, mapOf(demoVisit("tarrant-2026-11-12")), front, back), "map-findings-only");
}

TEST(Pictures, OfTheFormBeforeArrival)
{
    const BodyArt front(atlas(), body().of(View::Front));
    const BodyArt back(atlas(), body().of(View::Back));
    for (const auto &language : languageWords) {
        const auto form = arrivalForm(inLanguage(valueOf(readEmbeddedPatientTexts()), Phrases(language.first)));
        expectApproved(arrivalFormPages(Paper::A4, valueOf(form), front, back), "form-" + std::string(language.second));
    }
}

TEST(Pictures, OfTheNote)
{
    const Visit whole = demoVisit("pellam-2026-11-26");
    for (const auto &paper : paperWords) {
        expectApproved(clinicalNotePages(paper.first, notedAs(whole, {})), "note-draft-" + std::string(paper.second));
        NoteGiven given;
        given.state = NoteState::Signed;
        expectApproved(clinicalNotePages(paper.first, notedAs(whole, given)), "note-signed-" + std::string(paper.second));
    }
}

TEST(Pictures, OfTheLetter)
{
    const Visit whole = demoVisit("pellam-2026-11-26");
    Letter letter =
        letterDraft({safetyRules(), regions(), mapSource().examination, mapSource().techniques, {}}, whole, "2026-11-27");
    letter.to = {"Dr Asta Nord", "general practice", {"4 Mill Lane", "Lower Harrow"}};
    letter.question.text = "May the neck be worked on while the tablets are changed?";
    for (const auto &paper : paperWords)
        expectApproved(letterPages(paper.first, letter, letterFacts(whole, "Lowbridge Hands", "3 Millpond Yard\nLowbridge")),
            "letter-" + std::string(paper.second));
}

TEST(Pictures, OfTheRecordsRequest)
{
    RecordContent kept;
    kept.practice = "Lowbridge Hands";
    kept.madeBy = "Ines Brook";
    kept.madeAt = 1795780800000; // 2026-11-27, noon UTC
    const Visit whole = demoVisit("pellam-2026-11-26");
    kept.patient.name = whole.patient->name;
    kept.patient.born = whole.patient->born;
    kept.visits.push_back({NoteState::Signed, {}, whole, {}, {}});
    for (const auto &paper : paperWords)
        expectApproved(recordsRequestPages(paper.first, recordsRequest(noteKnowledge(), kept, NoteFor::Others)),
            "records-" + std::string(paper.second));
}

} // namespace raphe::test
