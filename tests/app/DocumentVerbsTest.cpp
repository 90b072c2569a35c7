// The printing verbs of raphe-batch, run as a program: rules, form and letter.
#include "tests/app/PdfPage.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

namespace raphe::test {

namespace {

struct Ran {
    int status = -1;
    QString said; // on both outputs
};

class DocumentVerbs : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }
    [[nodiscard]] QString in(const char *name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    [[nodiscard]] static Ran run(const QStringList &arguments)
    {
        QProcess process;
        process.setProcessChannelMode(QProcess::MergedChannels);
        process.start(QStringLiteral(RAPHE_BATCH), arguments);
        if (!process.waitForFinished())
            return {};
        return {process.exitCode(), QString::fromUtf8(process.readAll())};
    }
    [[nodiscard]] Ran write(const char *verb, const QStringList &more = {}) const
    {
        return run(QStringList{QString::fromUtf8(verb), QStringLiteral("--out"), in("out.pdf")} + more);
    }
    [[nodiscard]] Ran writeLetter(const QString &warnings, const char *notes = "", const QStringList &more = {},
        const char *fields = R"("version":1,"complaint":"sore %1")") const
    {
        QFile file(in("visit.json"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QStringLiteral(R"({"format":"raphe-visit","patient":{"name":"Ada Quill"},"date":"2026-11-27",)"
                                  R"(%1,"findings":[],"warnings":[%2]})")
                       .arg(QString::fromUtf8(fields).arg(QString::fromUtf8(notes)), warnings)
                       .toUtf8());
        file.close();
        return write("letter", QStringList{QStringLiteral("--visit"), in("visit.json")} + more);
    }

private:
    QTemporaryDir m_folder;
};

const QString clot = QStringLiteral(
    R"({"sign":"leg-clot-pitting","answer":"yes","asked":"2026-11-27","at":[{"structure":"sural-region-medial","side":"right"}],)"
    R"("decided":"care-same-day","why":"a dent stays","told":"Dr Marsh"})");
const QString secret = QStringLiteral(
    R"({"sign":"unsafe-at-home","answer":"yes","asked":"2026-11-27","decided":"referred","why":"whispered","told":"hotline"})");

} // namespace

TEST_F(DocumentVerbs, WriteRulesAndForm)
{
    for (const char *verb : {"rules", "form"})
        for (const char *paper : {"a4", "letter"}) {
            const Ran ran = write(verb, {QStringLiteral("--paper"), QString::fromUtf8(paper)});
            EXPECT_EQ(ran.status, 0) << verb << ran.said.toStdString();
            EXPECT_EQ(ran.said.toStdString(), "");
            EXPECT_GE(squeezedPages(in("out.pdf")).size(), 6) << verb;
        }
}

TEST_F(DocumentVerbs, RefuseInOneLine)
{
    for (const QStringList &arguments :
        {QStringList{QStringLiteral("rules")}, QStringList{QStringLiteral("form"), QStringLiteral("--out"), in("form.txt")},
            QStringList{QStringLiteral("rules"), QStringLiteral("--out"), in("missing/rules.pdf")},
            QStringList{
                QStringLiteral("form"), QStringLiteral("--out"), in("a.pdf"), QStringLiteral("--paper"), QStringLiteral("a5")},
            QStringList{QStringLiteral("letter"), QStringLiteral("--out"), in("a.pdf")}}) {
        const Ran ran = run(arguments);
        EXPECT_EQ(ran.status, 2) << arguments.join(QLatin1Char(' ')).toStdString();
        EXPECT_EQ(ran.said.count(QLatin1Char('\n')), 1) << ran.said.toStdString();
    }
}

TEST_F(DocumentVerbs, WriteALetterOfOnePageWithoutWhatWasAskedAlone)
{
    const Ran ran = writeLetter(clot + QLatin1Char(',') + secret);
    ASSERT_EQ(ran.status, 0) << ran.said.toStdString();
    const QStringList pages = squeezedPages(in("out.pdf"));
    ASSERT_EQ(pages.size(), 1);
    for (const char *words : {"Ada Quill", "2026-11-27", "a dent stays", "Dr Marsh", "right sural region", "not a diagnosis",
             "sent to licensed medical care the same day"})
        EXPECT_TRUE(pages[0].contains(squeezed(QString::fromUtf8(words)))) << words;
    for (const char *words : {"whispered", "hotline", "home", "afraid"})
        EXPECT_FALSE(pages[0].contains(QString::fromUtf8(words))) << words;
    EXPECT_EQ(wordsBeyond(in("out.pdf"), 30).join(QLatin1Char(' ')).toStdString(), "");
}

TEST_F(DocumentVerbs, WhatWasAskedAloneCannotBeToldFromTheLetter)
{
    const QString no =
        QString(clot).replace(QLatin1String(R"("yes")"), QLatin1String(R"("no")")).section(QStringLiteral(",\"at\""), 0, 0)
        + QLatin1Char('}');
    ASSERT_EQ(writeLetter({}).status, 0);
    const QStringList none = squeezedPages(in("out.pdf"));
    ASSERT_EQ(none.size(), 1);
    EXPECT_TRUE(none[0].contains(squeezed(QStringLiteral("Letter about hands-on care"))));
    for (const QString &warnings : {secret, no}) {
        const Ran ran = writeLetter(warnings);
        ASSERT_EQ(ran.status, 0) << ran.said.toStdString();
        EXPECT_EQ(squeezedPages(in("out.pdf")), none) << warnings.toStdString();
    }
}

TEST_F(DocumentVerbs, ALetterHasItsAddresseeItsQuestionAndItsUrgency)
{
    const QStringList more{QStringLiteral("--to"), QStringLiteral("Dr A. Example, general practice, 1 High Street, Lowbridge"),
        QStringLiteral("--question"), QStringLiteral("May care go on?")};
    ASSERT_EQ(writeLetter(clot, "", more).status, 0);
    QString page = squeezedPages(in("out.pdf"))[0];
    for (const char *words : {"Dr A. Example", "general practice", "1 High Street",
             "Same day: please see the patient on 2026-11-27", "Question May care go on?"})
        EXPECT_TRUE(page.contains(squeezed(QString::fromUtf8(words)))) << words;
    ASSERT_EQ(writeLetter({}, "", more).status, 0);
    EXPECT_TRUE(squeezedPages(in("out.pdf"))[0].contains(QStringLiteral("Routine:"))) << "an answer is asked for";
    ASSERT_EQ(writeLetter({}, "", more + QStringList{QStringLiteral("--urgency"), QStringLiteral("within-days")}).status, 0);
    EXPECT_TRUE(squeezedPages(in("out.pdf"))[0].contains(QStringLiteral("Withindays:")));
    for (const QStringList &wrong : {QStringList{QStringLiteral("--urgency"), QStringLiteral("soon")},
             QStringList{QStringLiteral("--to"), QStringLiteral("a, b, 1, 2, 3, 4, 5, 6, 7")},
             QStringList{QStringLiteral("--to"), QString(201, QLatin1Char('x'))}}) {
        const Ran ran = writeLetter(clot, "", wrong);
        EXPECT_EQ(ran.status, 2) << wrong.join(QLatin1Char(' ')).toStdString();
        EXPECT_EQ(ran.said.count(QLatin1Char('\n')), 1) << ran.said.toStdString();
    }
}

TEST_F(DocumentVerbs, AKeptLetterIsWrittenAsItWasKept)
{
    const char *const kept = R"("version":2,"letters":[{"written":"2026-11-20","title":"First","urgency":"routine"},)"
                             R"({"written":"2026-11-28","to":{"name":"Dr Vance"},"title":"Second","urgency":"for-information",)"
                             R"("reason":{"text":"as it was edited%1","composed":"as it was composed"}}])";
    const Ran ran = writeLetter(clot, "", {}, kept);
    ASSERT_EQ(ran.status, 0) << ran.said.toStdString();
    const QString page = squeezedPages(in("out.pdf"))[0];
    for (const char *words : {"Dr Vance", "Second", "For information", "as it was edited", "2026-11-28"})
        EXPECT_TRUE(page.contains(squeezed(QString::fromUtf8(words)))) << words;
    for (const char *words : {"First", "as it was composed", "a dent stays"})
        EXPECT_FALSE(page.contains(squeezed(QString::fromUtf8(words)))) << words;
    const QStringList other{QStringLiteral("--to"), QStringLiteral("Dr Nord")};
    EXPECT_EQ(writeLetter(clot, "", other, kept).status, 2) << "it went to somebody else";
    ASSERT_EQ(writeLetter(clot, "", other + QStringList{QStringLiteral("--draft")}, kept).status, 0);
    EXPECT_TRUE(squeezedPages(in("out.pdf"))[0].contains(QStringLiteral("adentstays")));
}

TEST_F(DocumentVerbs, LoseNothingOfALongLetter)
{
    std::string notes;
    for (int i = 0; i < 1500; ++i)
        notes += " <" + std::to_string(i) + ">";
    ASSERT_EQ(writeLetter(clot, notes.c_str()).status, 0);
    const QString text = squeezedPages(in("out.pdf")).join(QString());
    for (int i = 0; i < 1500; ++i)
        EXPECT_EQ(text.count(QStringLiteral("<%1>").arg(i)), 1) << i;
}

} // namespace raphe::test
