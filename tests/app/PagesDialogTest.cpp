// The documents of a visit in the window: chosen, in a language, on paper, saved; and the files for other programs.
#include "app/raphe/pages/PagesDialog.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/pages/VisitPages.h"
#include "tests/app/PdfPage.h"
#include "tests/app/Window.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>

namespace raphe::test {

namespace {

class PagesOfVisit : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
        session().setTenderness(3);
        pages = std::make_unique<VisitPages>(session());
    }
    void TearDown() override
    {
        pages.reset();
        WindowTest::TearDown();
    }
    static QComboBox *box(QWidget &in, const QString &name)
    {
        for (auto *each : in.findChildren<QComboBox *>())
            if (each->accessibleName() == name)
                return each;
        throw std::runtime_error("no such choice");
    }
    static QString said(const QWidget &in)
    {
        QString out;
        for (const auto *label : in.findChildren<QLabel *>())
            if (!label->isHidden())
                out += label->text() + QLatin1Char('\n');
        return out;
    }
    QString fileText(const QString &file)
    {
        QFile in(file);
        return in.open(QIODevice::ReadOnly) ? QString::fromUtf8(in.readAll()) : QString();
    }
    std::unique_ptr<VisitPages> pages;
};

} // namespace

TEST_F(PagesOfVisit, TheMapIsShownInEachLanguageAndSavedAsShown)
{
    PagesDialog dialog({pages->map(), pages->note()}, {Paper::A4, Language::English, false, false});
    dialog.show();
    EXPECT_TRUE(said(dialog).contains(QStringLiteral("Reading grade"))) << said(dialog).toStdString();
    const QString pdf = inFolder("shown.pdf");
    ASSERT_TRUE(dialog.saveAs(pdf));
    EXPECT_TRUE(textOf(pdf).contains(QStringLiteral("Main buttock muscle, right side")));
    box(dialog, QStringLiteral("Language of the patient"))->setCurrentIndex(1);
    ASSERT_TRUE(dialog.saveAs(pdf));
    EXPECT_TRUE(textOf(pdf).contains(QStringLiteral("rechte Seite"))) << textOf(pdf).toStdString();
    box(dialog, QStringLiteral("Language of the patient"))->setCurrentIndex(2);
    ASSERT_TRUE(dialog.saveAs(pdf));
    EXPECT_TRUE(textOf(pdf).contains(QStringLiteral("lado derecho"))) << textOf(pdf).toStdString();
    const auto size = dialog.pages().pages.size();
    box(dialog, QStringLiteral("Print"))->setCurrentIndex(2);
    EXPECT_GT(dialog.pages().pages.size(), size) << "large print takes more pages";
    box(dialog, QStringLiteral("Paper"))->setCurrentIndex(1);
    EXPECT_EQ(dialog.pages().paper, Paper::Letter);
    EXPECT_FALSE(dialog.saveAs(QStringLiteral("/proc/no/such.pdf"))) << "and it says so";
    EXPECT_TRUE(said(dialog).contains(QStringLiteral("/proc/no/such.pdf"))) << said(dialog).toStdString();
}

TEST_F(PagesOfVisit, TheNoteSaysWhatIsMissingAndIsTextAsWell)
{
    PagesDialog dialog({pages->map(), pages->note()}, {Paper::A4, Language::English, false, false});
    dialog.show();
    dialog.choose(1);
    EXPECT_TRUE(said(dialog).contains(QStringLiteral("Missing:"))) << said(dialog).toStdString();
    QTest::qWait(50); // until it is laid out
    for (const auto *label : dialog.findChildren<QLabel *>())
        if (label->isVisible()) {
            EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->text().toStdString();
        }
    const QString text = inFolder("note.txt");
    ASSERT_TRUE(dialog.saveAs(text));
    EXPECT_TRUE(fileText(text).contains(QStringLiteral("DRAFT"))) << fileText(text).toStdString();
    EXPECT_TRUE(fileText(text).contains(QStringLiteral("RIGHT gluteus maximus"))) << fileText(text).toStdString();
}

TEST_F(PagesOfVisit, TheWholeRecordIsNotedOnceAndOnlyThen)
{
    const auto exports = [&] {
        int count = 0;
        const auto rows = session().practice().accesses(session().patientId());
        for (const AccessRow &row : rows.value())
            count += row.kind == EntryKind::Exported ? 1 : 0;
        return count;
    };
    PageOffer offer = pages->record();
    EXPECT_EQ(exports(), 0);
    PagesDialog dialog({offer}, {Paper::A4, Language::English, false, false});
    dialog.show();
    box(dialog, QStringLiteral("Paper"))->setCurrentIndex(1);
    EXPECT_EQ(exports(), 1) << "one request, however often it is looked at";
    EXPECT_GT(dialog.pages().pages.size(), 1U);
}

TEST_F(PagesOfVisit, FilesForOtherProgramsAreWritten)
{
    const auto formats = pages->exchange();
    ASSERT_EQ(formats.size(), 4U);
    const auto written = [&](std::size_t i, const char *name) {
        const QString file = inFolder(name);
        EXPECT_TRUE(formats[i].write(file.toStdString(), {}).ok()) << name;
        return fileText(file);
    };
    EXPECT_TRUE(written(0, "fhir.json").contains(QStringLiteral("\"resourceType\": \"Bundle\"")));
    const QString visit = written(1, "visit.json");
    const auto again = readVisit(visit.toStdString(), "visit.json", atlas());
    ASSERT_TRUE(again.ok()) << inWords(again.error());
    EXPECT_EQ(again.value(), session().visit());
    EXPECT_TRUE(written(2, "findings.csv").contains(QStringLiteral("gluteus-maximus")));
    const QString copy = written(3, "copy.json");
    EXPECT_TRUE(copy.contains(QStringLiteral("gluteus-maximus")));
    EXPECT_FALSE(copy.contains(QStringLiteral("Test Patient")));
}

TEST_F(PagesOfVisit, ThePatientChoosesTheLanguageOfTheScreen)
{
    const auto handed = PatientWindow::handOver(session(), Theme::light(), 0, window(), Language::German);
    ASSERT_TRUE(handed.ok());
    PatientWindow *patient = handed.value();
    EXPECT_EQ(patient->page().title(),
        QString::fromStdString(Phrases(Language::German).say("patient-texts", "Before we start: tell us how you are.")));
    std::optional<Language> wanted;
    QObject::connect(patient, &PatientWindow::languageWanted, patient, [&](Language language) { wanted = language; });
    for (auto *button : patient->findChildren<QPushButton *>())
        if (button->isVisible() && button->text() == QStringLiteral("Espa\u00f1ol"))
            button->click();
    EXPECT_EQ(wanted, Language::Spanish);
    patient->giveWay();
}

} // namespace raphe::test
