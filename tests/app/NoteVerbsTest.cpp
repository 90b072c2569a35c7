// raphe-batch note and export --form pdf, run as a program.
#include "core/record/VisitJson.h"
#include "core/store/Practice.h"
#include "tests/app/PdfPage.h"
#include "tests/core/document/NoteTesting.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

namespace raphe::test {

namespace {

constexpr const char *words = "right words here";

struct NoteRun {
    int status = -1;
    QString out;
    QString error;
};

class NoteVerbs : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }
    [[nodiscard]] QString in(const char *name) const { return m_folder.filePath(QString::fromUtf8(name)); }

    /// The passphrase goes to standard input.
    [[nodiscard]] static NoteRun run(const QStringList &arguments)
    {
        QProcess process;
        process.start(QStringLiteral(RAPHE_BATCH), arguments);
        process.write(words);
        process.write("\n");
        process.closeWriteChannel();
        if (!process.waitForFinished())
            return {};
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
    }
    [[nodiscard]] QString written(const char *name, const Visit &visit) const
    {
        QFile file(in(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(writeVisit(visit)));
        return file.fileName();
    }
    /// A practice with one patient, whose visit was signed and amended.
    [[nodiscard]] QStringList exporting() const
    {
        auto made = Practice::make(in("p.raphe").toStdString(), {}, {"ada", "Ada Brook", words, leastCost});
        EXPECT_TRUE(made.ok());
        Practice &practice = *made.value().practice;
        PatientRecord record;
        record.name = "Ada Quill";
        record.medicines = {"warfarin"};
        const auto patient = practice.addPatient(record).value();
        Visit visit = notedVisit();
        const auto id = practice.addVisit(patient, writeVisit(visit)).value();
        EXPECT_TRUE(practice.sign(id).ok());
        EXPECT_TRUE(practice.beginAmendment(id).ok());
        visit.findings[0].tenderness = Tenderness{1};
        visit.warnings.push_back({"unsafe-at-home", true, "2026-11-29", {}, Decision::Referred, "whispered", "hotline"});
        EXPECT_TRUE(practice.saveVisit(id, writeVisit(visit)).ok());
        EXPECT_TRUE(practice.signAmendment(id, "one grade was wrong").ok());
        EXPECT_TRUE(practice.addVisit(patient, "{\"note\":\"of a later program\"}").ok());
        return {QStringLiteral("export"), QStringLiteral("--practice"), in("p.raphe"), QStringLiteral("--patient"),
            QString::number(patient), QStringLiteral("--sign-in"), QStringLiteral("ada"), QStringLiteral("--passphrase-fd"),
            QStringLiteral("0"), QStringLiteral("--form"), QStringLiteral("pdf")};
    }

private:
    QTemporaryDir m_folder;
};

const QStringList note{QStringLiteral("note"), QStringLiteral("--visit")};

} // namespace

TEST_F(NoteVerbs, PrintTheNoteAsTextAndAsPages)
{
    const QString visit = written("v.json", notedVisit());
    const NoteRun text = run(note + QStringList{visit});
    ASSERT_EQ(text.status, 0) << text.error.toStdString();
    for (const char *said : {"SUBJECTIVE", "OBJECTIVE", "ASSESSMENT", "PLAN", "GOALS", "Ada Quill", "RIGHT gluteus maximus",
             "*** DRAFT: NOT SIGNED ***", "Program's order: 1", "NOT COMPLETE YET"})
        EXPECT_TRUE(text.out.contains(QString::fromUtf8(said))) << said;
    for (const QString &line : text.out.split(QLatin1Char('\n')))
        EXPECT_LE(line.size(), 80) << line.toStdString();
    ASSERT_EQ(run(note + QStringList{visit, QStringLiteral("--out"), in("note.txt")}).status, 0);
    QFile file(in("note.txt"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(QString::fromUtf8(file.readAll()), text.out);
    for (const char *paper : {"a4", "letter"}) {
        const NoteRun ran = run(note
            + QStringList{visit, QStringLiteral("--out"), in("note.pdf"), QStringLiteral("--paper"), QString::fromUtf8(paper)});
        ASSERT_EQ(ran.status, 0) << ran.error.toStdString();
        EXPECT_EQ((ran.out + ran.error).toStdString(), "");
        EXPECT_TRUE(squeezedPages(in("note.pdf")).join(QString()).contains(QStringLiteral("RIGHTgluteusmaximus")));
        EXPECT_NEAR(
            wordsOf(in("note.pdf")).front().sheet.width(), QString::fromUtf8(paper) == QLatin1String("a4") ? 595 : 612, 1);
    }
}

TEST_F(NoteVerbs, KnowTheVisitsBeforeAndMakeACopyForOthers)
{
    Visit before = notedVisit();
    before.date = "2026-11-22";
    Visit visit = notedVisit();
    visit.warnings.push_back({"unsafe-at-home", true, "2026-11-29", {}, Decision::Referred, "whispered", "hotline"});
    const QStringList arguments =
        note + QStringList{written("v.json", visit), QStringLiteral("--before"), written("b.json", before)};
    const NoteRun own = run(arguments);
    ASSERT_EQ(own.status, 0) << own.error.toStdString();
    EXPECT_TRUE(own.out.simplified().contains(QStringLiteral("[as on 2026-11-22,")));
    EXPECT_TRUE(own.out.contains(QStringLiteral("whispered")));
    const NoteRun copy = run(arguments + QStringList{QStringLiteral("--for-others")});
    ASSERT_EQ(copy.status, 0) << copy.error.toStdString();
    for (const char *secret : {"whispered", "hotline", "at home"})
        EXPECT_FALSE(copy.out.contains(QString::fromUtf8(secret))) << secret;
}

TEST_F(NoteVerbs, RefuseInOneLine)
{
    const QString visit = written("v.json", notedVisit());
    for (const QStringList &arguments : {QStringList{QStringLiteral("note")}, note + QStringList{in("missing.json")},
             note + QStringList{visit, QStringLiteral("--out"), in("note.doc")},
             note + QStringList{visit, QStringLiteral("--paper"), QStringLiteral("a5")},
             note + QStringList{visit, QStringLiteral("--out"), in("missing/note.pdf")},
             note + QStringList{visit, QStringLiteral("--before"), in("missing.json")}}) {
        const NoteRun ran = run(arguments);
        EXPECT_EQ(ran.status, 2) << arguments.join(QLatin1Char(' ')).toStdString();
        EXPECT_EQ(ran.error.count(QLatin1Char('\n')), 1) << ran.error.toStdString();
        EXPECT_EQ(ran.out.toStdString(), "");
    }
}

TEST_F(NoteVerbs, ExportTheWholeRecordAsPages)
{
    const QStringList arguments = exporting();
    const NoteRun none = run(arguments);
    EXPECT_EQ(none.status, 2) << "pages need a file";
    EXPECT_EQ(none.error.count(QLatin1Char('\n')), 1) << none.error.toStdString();
    const NoteRun ran = run(arguments + QStringList{QStringLiteral("--out"), in("record.pdf")});
    ASSERT_EQ(ran.status, 0) << ran.error.toStdString();
    const QString all = squeezedPages(in("record.pdf")).join(QString());
    for (const char *said : {"Copy of a patient's record", "warfarin", "Made by Ada Brook", "one grade was wrong",
             "was 'origin, tenderness 3", "EARLIER VERSION OF", "of a later program", "exported the record", "whispered"})
        EXPECT_TRUE(all.contains(squeezed(QString::fromUtf8(said)))) << said;
    ASSERT_EQ(run(arguments + QStringList{QStringLiteral("--out"), in("copy.pdf"), QStringLiteral("--for-others")}).status, 0);
    const QString copy = squeezedPages(in("copy.pdf")).join(QString());
    EXPECT_TRUE(copy.contains(QStringLiteral("warfarin")));
    for (const char *secret : {"whispered", "hotline", "oflaterprogram"})
        EXPECT_FALSE(copy.contains(QString::fromUtf8(secret))) << secret;
}

} // namespace raphe::test
