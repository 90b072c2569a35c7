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
    [[nodiscard]] Ran writeLetter(const QString &warnings, const char *notes = "") const
    {
        QFile file(in("visit.json"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QStringLiteral(R"({"format":"raphe-visit","version":1,"patient":{"name":"Ada Quill"},"date":"2026-11-27",)"
                                  R"("complaint":"sore %2","findings":[],"warnings":[%1]})")
                       .arg(warnings, QString::fromUtf8(notes))
                       .toUtf8());
        file.close();
        return write("letter", {QStringLiteral("--visit"), in("visit.json")});
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

TEST_F(DocumentVerbs, WriteNoLetterWhenThereIsNothingToTell)
{
    for (const QString &warnings : {QString(), secret,
             QString(clot).replace(QLatin1String(R"("yes")"), QLatin1String(R"("no")")).section(QStringLiteral(",\"at\""), 0, 0)
                 + QLatin1Char('}')}) {
        const Ran ran = writeLetter(warnings);
        EXPECT_EQ(ran.status, 2) << warnings.toStdString();
        EXPECT_EQ(ran.said.count(QLatin1Char('\n')), 1) << ran.said.toStdString();
        EXPECT_TRUE(ran.said.contains(QStringLiteral("no warning sign is there"))) << ran.said.toStdString();
        EXPECT_FALSE(QFile::exists(in("out.pdf")));
    }
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
