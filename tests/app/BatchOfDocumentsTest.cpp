// Several documents in one run of raphe-batch: each under its visit's name, told one by one, and none at all of a bad list.
#include "tests/app/PdfPage.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace raphe::test {

namespace {

class BatchOfDocuments : public testing::TestWithParam<const char *> {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("out")));
        for (const char *name : {"ada.json", "bo.json"})
            write(name,
                R"({"format":"raphe-visit","version":1,"date":"2026-11-27",)"
                R"("findings":[{"structure":"soleus","side":"left","tenderness":2}]})");
    }
    [[nodiscard]] QString in(const char *name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    void write(const char *name, const QByteArray &text) const
    {
        QFile file(in(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    [[nodiscard]] QStringList written() const { return QDir(in("out")).entryList(QDir::Files, QDir::Name); }
    // Standard error of the run; the exit status is checked.
    [[nodiscard]] QString errors(const QStringList &visits, const char *out, int status, const QStringList &more = {}) const
    {
        QProcess process;
        process.start(QStringLiteral(RAPHE_BATCH),
            QStringList{QString::fromUtf8(GetParam()), QStringLiteral("--out"), in(out), QStringLiteral("--visit")} + visits
                + more);
        EXPECT_TRUE(process.waitForFinished());
        EXPECT_EQ(process.exitCode(), status);
        return QString::fromUtf8(process.readAllStandardError());
    }

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_P(BatchOfDocuments, EachIsToldAndStandsUnderItsVisitsName)
{
    const QString said = errors({in("ada.json"), in("bo.json")}, "out", 0);
    EXPECT_EQ(
        said.toStdString(), QStringLiteral("1 of 2: %1\n2 of 2: %2\n").arg(in("out/ada.pdf"), in("out/bo.pdf")).toStdString());
    EXPECT_EQ(written(), QStringList({QStringLiteral("ada.pdf"), QStringLiteral("bo.pdf")}));
    EXPECT_GE(squeezedPages(in("out/bo.pdf")).size(), 1);
}

TEST_P(BatchOfDocuments, OneInAFolderSaysNothing)
{
    EXPECT_EQ(errors({in("ada.json")}, "out", 0).toStdString(), "");
    EXPECT_EQ(written(), QStringList{QStringLiteral("ada.pdf")});
}

TEST_P(BatchOfDocuments, NoneIsWrittenWhereOneCannotBeRead)
{
    write("bad.json", "{");
    const QString said = errors({in("ada.json"), in("bad.json")}, "out", 2);
    EXPECT_TRUE(said.contains(QStringLiteral("bad.json, line 1"))) << said.toStdString();
    EXPECT_EQ(said.count(QLatin1Char('\n')), 1);
    EXPECT_TRUE(written().isEmpty());
}

TEST_P(BatchOfDocuments, RefusedWithoutAFolderOrWithOneNameTwice)
{
    EXPECT_TRUE(errors({in("ada.json"), in("bo.json")}, "one.pdf", 2).contains(QStringLiteral("folder")));
    EXPECT_TRUE(errors({in("ada.json"), in("ada.json")}, "out", 2).contains(QStringLiteral("same name")));
    EXPECT_TRUE(written().isEmpty());
}

INSTANTIATE_TEST_SUITE_P(Verbs, BatchOfDocuments, testing::Values("map", "note"));

} // namespace raphe::test
