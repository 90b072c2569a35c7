// The practice file's verbs of raphe-batch, run as a program: verify, backup, restore, export.
#include "core/store/Practice.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QProcess>
#include <QTemporaryDir>

namespace raphe::test {

namespace {

constexpr const char *words = "right words here";

struct Ran {
    int status = -1;
    std::string out;
    std::string error;
};

class PracticeVerbs : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        auto made = Practice::make(file().toStdString(), {}, {"ada", "Ada Brook", words, leastCost});
        ASSERT_TRUE(made.ok());
        PatientRecord record;
        record.name = "Ada Quill";
        m_patient = made.value().practice->addPatient(record).value();
        const auto visit = made.value().practice->addVisit(m_patient, "{\"note\":\"one\"}").value();
        ASSERT_TRUE(made.value().practice->sign(visit).ok());
    }

    [[nodiscard]] QString file() const { return m_folder.filePath(QStringLiteral("p.raphe")); }
    [[nodiscard]] QString in(const char *name) const { return m_folder.filePath(QString::fromUtf8(name)); }

    /// The passphrase goes to standard input.
    [[nodiscard]] static Ran run(const QStringList &arguments, const char *typed = words)
    {
        QProcess process;
        process.start(QStringLiteral(RAPHE_BATCH), arguments);
        process.write(typed);
        process.write("\n");
        process.closeWriteChannel();
        if (!process.waitForFinished())
            return {};
        return {process.exitCode(), process.readAllStandardOutput().toStdString(), process.readAllStandardError().toStdString()};
    }
    [[nodiscard]] QStringList withKey(QStringList arguments) const
    {
        return arguments << QStringLiteral("--sign-in") << QStringLiteral("ada") << QStringLiteral("--passphrase-fd")
                         << QStringLiteral("0");
    }

    std::int64_t m_patient = 0;

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(PracticeVerbs, VerifyChecksTheChainWithoutAKeyAndAllWithOne)
{
    const QStringList verify{QStringLiteral("verify"), QStringLiteral("--practice"), file()};
    const Ran chain = run(verify);
    EXPECT_EQ(chain.status, 0) << chain.error;
    EXPECT_EQ(nlohmann::json::parse(chain.out).at("entries"), 2);
    const Ran all = run(withKey(verify));
    EXPECT_EQ(all.status, 0) << all.error;
    EXPECT_EQ(nlohmann::json::parse(all.out).at("patients"), 1);
    const Ran wrong = run(withKey(verify), "other words here");
    EXPECT_EQ(wrong.status, 2);
    EXPECT_NE(wrong.error.find("passphrase"), std::string::npos) << wrong.error;
    {
        const Database db(file().toStdString());
        db.run("UPDATE entry SET made_at = 1 WHERE number = 2");
    }
    const Ran broken = run(verify);
    EXPECT_EQ(broken.status, 1) << "a failed check";
    EXPECT_NE(broken.error.find("entry 2"), std::string::npos) << broken.error;
    EXPECT_EQ(std::count(broken.error.begin(), broken.error.end(), '\n'), 1) << "one line";
}

TEST_F(PracticeVerbs, BackupAndRestoreGoTogether)
{
    const Ran backup =
        run({QStringLiteral("backup"), QStringLiteral("--practice"), file(), QStringLiteral("--out"), in("b.raphe-backup")});
    ASSERT_EQ(backup.status, 0) << backup.error;
    {
        auto practice = Practice::unlock(file().toStdString(), "ada", std::string_view(words));
        ASSERT_TRUE(practice.value()->erase(m_patient, "asked for it").ok());
    }
    const QStringList restore{
        QStringLiteral("restore"), QStringLiteral("--practice"), file(), QStringLiteral("--from"), in("b.raphe-backup")};
    const Ran restored = run(withKey(restore));
    ASSERT_EQ(restored.status, 0) << restored.error;
    EXPECT_EQ(nlohmann::json::parse(restored.out).at("erased_again"), nlohmann::json::array({m_patient}));
    EXPECT_TRUE(Practice::unlock(file().toStdString(), "ada", std::string_view(words)).value()->patients().value().empty());
}

TEST_F(PracticeVerbs, ExportPrintsOnePatient)
{
    QStringList arguments{
        QStringLiteral("export"), QStringLiteral("--practice"), file(), QStringLiteral("--patient"), QStringLiteral("1")};
    const Ran exported = run(withKey(arguments));
    ASSERT_EQ(exported.status, 0) << exported.error;
    EXPECT_EQ(nlohmann::json::parse(exported.out).at("patient").at("name"), "Ada Quill");
    arguments.back() = QStringLiteral("9");
    EXPECT_EQ(run(withKey(arguments)).status, 2);
}

} // namespace raphe::test
