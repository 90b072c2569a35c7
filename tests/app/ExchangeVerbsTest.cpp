// The exchange verbs of raphe-batch, run as a program: csv, deidentify and import-patient.
#include "core/store/Practice.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

namespace raphe::test {

namespace {

struct ExchangeRun {
    int status = -1;
    std::string out;
    std::string error;
};

class ExchangeVerbs : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }
    [[nodiscard]] QString in(const char *name) const { return m_folder.filePath(QString::fromUtf8(name)); }

    // The passphrase goes to standard input.
    [[nodiscard]] static ExchangeRun run(const QStringList &arguments)
    {
        QProcess process;
        process.start(QStringLiteral(RAPHE_BATCH), arguments);
        process.write("right words here\n");
        process.closeWriteChannel();
        if (!process.waitForFinished())
            return {};
        return {process.exitCode(), process.readAllStandardOutput().toStdString(), process.readAllStandardError().toStdString()};
    }
    [[nodiscard]] QString write(const char *name, const QByteArray &text) const
    {
        QFile file(in(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return in(name);
    }
    [[nodiscard]] QString visitOf(const char *name, const char *patient, const char *date, const char *more = "") const
    {
        return write(name,
            QStringLiteral(R"({"format":"raphe-visit","version":2,"patient":{"name":"%1","born":"1980-02-03"},"date":"%2",)"
                           R"("findings":[{"structure":"soleus","side":"left","tenderness":3,"note":"=of %1"}]%3})")
                .arg(QString::fromUtf8(patient), QString::fromUtf8(date), QString::fromUtf8(more))
                .toUtf8());
    }
    [[nodiscard]] static QStringList withKey(const char *verb, const QStringList &more)
    {
        return QStringList{QString::fromUtf8(verb), QStringLiteral("--sign-in"), QStringLiteral("ada"),
                   QStringLiteral("--passphrase-fd"), QStringLiteral("0")}
        + more;
    }
    [[nodiscard]] std::unique_ptr<Practice> made(const char *name) const
    {
        return Practice::make(in(name).toStdString(), {}, {"ada", "Ada Brook", "right words here", leastCost}).value().practice;
    }

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(ExchangeVerbs, CsvNumbersThePatientsAndGuardsTexts)
{
    const QStringList visits{QStringLiteral("csv"), QStringLiteral("--visit"), visitOf("a.json", "Ada Quill", "2024-03-05"),
        visitOf("b.json", "Bo Stone", "2024-03-06"), visitOf("c.json", "Ada Quill", "2024-03-12")};
    const ExchangeRun printed = run(visits);
    ASSERT_EQ(printed.status, 0) << printed.error;
    EXPECT_EQ(printed.error, "");
    for (const char *row : {"\r\n1,1,2024-03-05,before,finding,soleus,", "\r\n2,2,2024-03-06,", "\r\n1,3,2024-03-12,",
             ",tenderness,3,,0-4,,,,,,,,,,,'=of Ada Quill\r\n"})
        EXPECT_NE(printed.out.find(row), std::string::npos) << row << " is not in\n" << printed.out;
    const ExchangeRun written = run(visits + QStringList{QStringLiteral("--out"), in("t.csv")});
    EXPECT_EQ(written.status, 0) << written.error;
    EXPECT_EQ(written.out, "");
    QFile file(in("t.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().toStdString(), printed.out);
    const ExchangeRun refused = run(visits + QStringList{QStringLiteral("--out"), in("missing/t.csv")});
    EXPECT_EQ(refused.status, 2);
    EXPECT_EQ(refused.out, "");
}

TEST_F(ExchangeVerbs, DeidentifyWritesASeriesForEachPatient)
{
    ASSERT_TRUE(QDir().mkdir(in("copies")));
    const QStringList visits{QStringLiteral("deidentify"), QStringLiteral("--visit"),
        visitOf("a.json", "Ada Quill", "2024-03-12"), visitOf("b.json", "Bo Stone", "2024-03-06"),
        visitOf("c.json", "Ada Quill", "2024-03-05")};
    const ExchangeRun ran = run(visits + QStringList{QStringLiteral("--out-dir"), in("copies")});
    ASSERT_EQ(ran.status, 0) << ran.error;
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.error.find("can still tell who it is"), std::string::npos) << ran.error;
    EXPECT_EQ(QDir(in("copies")).entryList(QDir::Files),
        (QStringList{QStringLiteral("patient-1-visit-1.json"), QStringLiteral("patient-1-visit-2.json"),
            QStringLiteral("patient-2-visit-1.json")}));
    const auto copyOf = [this](const char *name) {
        QFile file(in("copies") + QLatin1Char('/') + QString::fromUtf8(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        const std::string text = file.readAll().toStdString();
        for (const char *word : {"Quill", "Stone", "2024", "of "})
            EXPECT_EQ(text.find(word), std::string::npos) << word << " in " << text;
        return nlohmann::json::parse(text);
    };
    EXPECT_EQ(copyOf("patient-1-visit-1.json").at("date"), "2000-01-08");
    EXPECT_EQ(copyOf("patient-1-visit-2.json").at("date"), "2000-01-01");
    EXPECT_EQ(copyOf("patient-2-visit-1.json").at("date"), "2000-01-01");
    EXPECT_EQ(copyOf("patient-2-visit-1.json").at("patient"), (nlohmann::json{{"name", "Patient 2"}, {"born", "1956-01-01"}}));
    const ExchangeRun again = run(visits + QStringList{QStringLiteral("--out-dir"), in("copies")});
    EXPECT_EQ(again.status, 2) << "no copy is written over another";
    EXPECT_EQ(run(visits).status, 2) << "there are several";
    const ExchangeRun one = run(visits.mid(0, 3));
    EXPECT_EQ(one.status, 0) << one.error;
    EXPECT_EQ(nlohmann::json::parse(one.out).at("date"), "2000-01-01");
}

TEST_F(ExchangeVerbs, ImportPatientTakesWhatExportPrinted)
{
    std::int64_t patient = 0;
    {
        const auto practice = made("from.raphe");
        PatientRecord record;
        record.name = "Ada Quill";
        record.born = "1980-02-03";
        patient = practice->addPatient(record).value();
        QFile file(visitOf("a.json", "Ada Quill", "2024-03-05"));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        ASSERT_TRUE(practice->sign(practice->addVisit(patient, file.readAll().toStdString()).value()).ok());
        ASSERT_TRUE(made("to.raphe"));
    }
    const auto exported = [&](const char *practice, std::int64_t number) {
        const ExchangeRun ran = run(withKey(
            "export", {QStringLiteral("--practice"), in(practice), QStringLiteral("--patient"), QString::number(number)}));
        EXPECT_EQ(ran.status, 0) << ran.error;
        return ran.out;
    };
    const std::string text = exported("from.raphe", patient);
    const QStringList importing =
        withKey("import-patient", {QStringLiteral("--practice"), in("to.raphe"), QStringLiteral("--export")});
    for (int i = 1; i <= 2; ++i) {
        const ExchangeRun ran = run(importing + QStringList{write("e.json", QByteArray::fromStdString(text))});
        ASSERT_EQ(ran.status, 0) << ran.error;
        const auto said = nlohmann::json::parse(ran.out);
        EXPECT_EQ(said.at("patient"), i);
        EXPECT_EQ(said.at("visits"), nlohmann::json::array({i}));
        EXPECT_EQ(said.at("alike"), i == 1 ? nlohmann::json::array() : nlohmann::json::array({1}));
        EXPECT_EQ(said.at("accesses_left_behind"), 2) << "signed, exported";
        const auto before = nlohmann::json::parse(text);
        const auto after = nlohmann::json::parse(exported("to.raphe", i));
        EXPECT_EQ(after.at("patient"), before.at("patient"));
        EXPECT_EQ(after.at("visits").at(0).at("document"), before.at("visits").at(0).at("document"));
        EXPECT_EQ(after.at("visits").at(0).at("state"), "signed");
        EXPECT_EQ(after.at("visits").at(0).at("history").at(0).at("act"), "late");
    }
    auto unknown = nlohmann::json::parse(text);
    for (auto *document : {&unknown["visits"][0]["document"], &unknown["visits"][0]["history"][0]["document"]})
        (*document)["conditions"] = {{{"condition", "hiccups"}}};
    const ExchangeRun refused = run(importing + QStringList{write("e.json", QByteArray::fromStdString(unknown.dump()))});
    EXPECT_EQ(refused.status, 2);
    EXPECT_NE(refused.error.find("e.json#/visits/0/document/conditions/0/condition: 'hiccups'"), std::string::npos)
        << refused.error;
}

} // namespace raphe::test
