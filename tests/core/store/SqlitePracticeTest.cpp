// The practice file: what is put in comes out, what is not a whole practice of ours is refused and left untouched.
#include "core/store/SqlitePractice.h"

#include "tests/core/store/StoreTesting.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <future>
#include <mutex>
#include <thread>

namespace raphe {
namespace {

class SqlitePracticeTest : public StoreTest {
protected:
    std::unique_ptr<PracticeStore> opened() { return valueOf(openPractice(file)); }

    void expectRefused(ErrorCode code, const std::string &detail = {})
    {
        const std::string before = bytes(file);
        const auto practice = openPractice(file);
        ASSERT_FALSE(practice) << "was opened";
        EXPECT_EQ(practice.error().code, code) << testing::PrintToString(practice.error());
        EXPECT_EQ(practice.error().place, file);
        EXPECT_FALSE(practice.error().detail.empty());
        if (!detail.empty()) {
            EXPECT_EQ(practice.error().detail, detail);
        }
        EXPECT_TRUE(bytes(file) == before) << "the file was changed";
    }

    // A practice with some content, closed, so that everything is in the one file.
    void makePractice(int visits)
    {
        const auto practice = opened();
        ASSERT_TRUE(practice);
        const auto patient = valueOf(practice->addPatient("Ana", "1980-01-02"));
        for (int i = 0; i < visits; ++i)
            valueOf(practice->addVisit(patient, "2024-01-01", std::string(3000, static_cast<char>('a' + i % 26))));
    }

    const std::string file = path("test.practice");
};

TEST_F(SqlitePracticeTest, ANewFileIsMarkedAsOurs)
{
    {
        const auto practice = opened();
        ASSERT_TRUE(practice);
        EXPECT_TRUE(valueOf(practice->patients()).empty());
    }
    PlainSql sql(file);
    EXPECT_EQ(sql.run("PRAGMA application_id"), std::to_string(0x52617068));
    EXPECT_EQ(sql.run("PRAGMA user_version"), "1");
    EXPECT_EQ(sql.run("PRAGMA journal_mode"), "wal");
    EXPECT_EQ(bytes(file).substr(68, 4), "Raph");
}

TEST_F(SqlitePracticeTest, WhatIsPutInComesOutAfterReopening)
{
    const std::string umlauts = "Zoë Größer-Peña 𝄞 'O\"Neil'; --";
    const std::string document = "{\"complaint\": \"größer\\u0000\"}\n" + std::string(1 << 20, 'x');
    std::int64_t patient = 0;
    std::int64_t visit = 0;
    {
        const auto practice = opened();
        ASSERT_TRUE(practice);
        patient = valueOf(practice->addPatient(umlauts, ""));
        visit = valueOf(practice->addVisit(patient, "2024-02-29", document));
    }
    const auto practice = opened();
    ASSERT_TRUE(practice);
    const auto patients = valueOf(practice->patients());
    ASSERT_EQ(patients.size(), 1U);
    EXPECT_EQ(patients[0].id, patient);
    EXPECT_EQ(patients[0].name, umlauts);
    EXPECT_EQ(patients[0].born, "");
    const auto row = valueOf(practice->visit(visit));
    EXPECT_EQ(row.id, visit);
    EXPECT_EQ(row.patient, patient);
    EXPECT_EQ(row.date, "2024-02-29");
    EXPECT_TRUE(row.document == document);
}

TEST_F(SqlitePracticeTest, PatientsByNameAndVisitsNewestFirst)
{
    const auto practice = opened();
    ASSERT_TRUE(practice);
    const auto zoe = valueOf(practice->addPatient("Zoe", "1990-05-06"));
    const auto ana = valueOf(practice->addPatient("Ana", "1980-01-02"));
    const auto patients = valueOf(practice->patients());
    ASSERT_EQ(patients.size(), 2U);
    EXPECT_EQ(patients[0].id, ana);
    EXPECT_EQ(patients[1].id, zoe);
    EXPECT_EQ(patients[1].born, "1990-05-06");

    const auto middle = valueOf(practice->addVisit(ana, "2024-02-01", "m"));
    const auto newest = valueOf(practice->addVisit(ana, "2024-03-01", "n"));
    const auto oldest = valueOf(practice->addVisit(ana, "2023-12-31", "o"));
    const auto sameDayLater = valueOf(practice->addVisit(ana, "2024-02-01", "l"));
    const auto others = valueOf(practice->addVisit(zoe, "2024-02-15", "z"));
    std::vector<std::int64_t> order;
    for (const VisitRow &row : valueOf(practice->visits(ana)))
        order.push_back(row.id);
    EXPECT_EQ(order, (std::vector<std::int64_t>{newest, sameDayLater, middle, oldest}));
    const auto zoes = valueOf(practice->visits(zoe));
    ASSERT_EQ(zoes.size(), 1U);
    EXPECT_EQ(zoes[0].id, others);
    EXPECT_EQ(zoes[0].document, "z");
    EXPECT_TRUE(valueOf(practice->visits(999)).empty());
}

TEST_F(SqlitePracticeTest, SavingChangesThisVisitOnly)
{
    const auto practice = opened();
    ASSERT_TRUE(practice);
    const auto patient = valueOf(practice->addPatient("Ana", ""));
    const auto first = valueOf(practice->addVisit(patient, "2024-01-01", "one"));
    const auto second = valueOf(practice->addVisit(patient, "2024-01-01", "two"));
    valueOf(practice->saveVisit(second, "changed"));
    EXPECT_EQ(valueOf(practice->visit(first)).document, "one");
    EXPECT_EQ(valueOf(practice->visit(second)).document, "changed");
    EXPECT_EQ(valueOf(practice->visit(second)).date, "2024-01-01");
    valueOf(practice->saveVisit(second, "changed")); // the same again is no error
}

TEST_F(SqlitePracticeTest, WhatDoesNotExistIsAnError)
{
    const auto practice = opened();
    ASSERT_TRUE(practice);
    const auto patient = valueOf(practice->addPatient("Ana", ""));
    const auto expectUnknown = [this](const Error &error, const char *what) {
        EXPECT_EQ(error.code, ErrorCode::UnknownId) << testing::PrintToString(error);
        EXPECT_EQ(error.place, file + what);
        EXPECT_EQ(error.detail, "77");
    };
    const auto visit = practice->visit(77);
    const auto saved = practice->saveVisit(77, "lost");
    const auto added = practice->addVisit(77, "2024-01-01", "lost");
    ASSERT_FALSE(visit);
    ASSERT_FALSE(saved);
    ASSERT_FALSE(added);
    expectUnknown(visit.error(), ", visit");
    expectUnknown(saved.error(), ", visit");
    expectUnknown(added.error(), ", patient");
    EXPECT_TRUE(valueOf(practice->visits(77)).empty());
    valueOf(practice->addVisit(patient, "2024-01-01", "kept")); // the failed one left no transaction open
}

TEST_F(SqlitePracticeTest, WrongDatesAndNamesAreRefused)
{
    const auto practice = opened();
    ASSERT_TRUE(practice);
    const auto patient = valueOf(practice->addPatient("Ana", ""));
    for (const char *date : {"2023-02-29", "yesterday", "2023-1-1"}) {
        const auto added = practice->addPatient("Bo", date);
        const auto visit = practice->addVisit(patient, date, "x");
        ASSERT_FALSE(added) << date;
        ASSERT_FALSE(visit) << date;
        EXPECT_EQ(added.error().code, ErrorCode::OutOfRange);
        EXPECT_EQ(visit.error().code, ErrorCode::OutOfRange);
    }
    EXPECT_FALSE(practice->addVisit(patient, "", "x"));
    const auto nameless = practice->addPatient("", "");
    ASSERT_FALSE(nameless);
    EXPECT_EQ(nameless.error().code, ErrorCode::MissingField);
    EXPECT_EQ(valueOf(practice->patients()).size(), 1U);
    EXPECT_TRUE(valueOf(practice->visits(patient)).empty());
}

TEST_F(SqlitePracticeTest, TheTablesThemselvesKeepTheRules)
{
    makePractice(1);
    const auto practice = opened(); // stays open beside us
    ASSERT_TRUE(practice);
    PlainSql sql(file);
    QSqlQuery query(QSqlDatabase::database(QStringLiteral("plain-sql")));
    sql.run("PRAGMA foreign_keys = ON");
    for (const char *statement : {"INSERT INTO visit (patient, held_on, document) VALUES (99, '2024-01-01', 'x')",
             "INSERT INTO visit (patient, held_on, document) VALUES (1, 'today', 'x')",
             "INSERT INTO visit (patient, held_on, document) VALUES (1, '2024-01-01', NULL)",
             "INSERT INTO patient (name, born) VALUES ('', '')", "DELETE FROM patient"})
        EXPECT_FALSE(query.exec(QString::fromUtf8(statement))) << statement;
}

TEST_F(SqlitePracticeTest, SeveralObjectsMayHaveTheFileOpen)
{
    const auto one = opened();
    const auto two = opened();
    ASSERT_TRUE(one);
    ASSERT_TRUE(two);
    const auto patient = valueOf(one->addPatient("Ana", ""));
    const auto visit = valueOf(two->addVisit(patient, "2024-01-01", "from two"));
    EXPECT_EQ(valueOf(one->visit(visit)).document, "from two");
    valueOf(one->saveVisit(visit, "from one"));
    EXPECT_EQ(valueOf(two->visit(visit)).document, "from one");
}

TEST_F(SqlitePracticeTest, ManyThreadsMayCreateTheSameFileAtOnce)
{
    for (int round = 0; round < 10; ++round) {
        const std::string shared = path(("race" + std::to_string(round)).c_str());
        std::atomic<bool> go{false};
        std::atomic<int> added{0};
        std::mutex mutex;
        std::vector<std::string> errors;
        {
            std::vector<std::jthread> threads;
            for (int i = 0; i < 4; ++i)
                threads.emplace_back([&] {
                    go.wait(false);
                    auto practice = openPractice(shared);
                    const auto patient =
                        practice ? practice.value()->addPatient("Ana", "") : Result<std::int64_t>(practice.error());
                    if (patient) {
                        ++added;
                    } else {
                        const std::lock_guard lock(mutex);
                        errors.push_back(testing::PrintToString(patient.error()));
                    }
                });
            go = true;
            go.notify_all();
        }
        EXPECT_EQ(added, 4) << testing::PrintToString(errors);
        EXPECT_EQ(valueOf(valueOf(openPractice(shared))->patients()).size(), 4U);
    }
}

// The switch to the write-ahead log is the one step at which SQLite itself would give up at once.
TEST_F(SqlitePracticeTest, OpeningWaitsForAnotherWriter)
{
    makePractice(1);
    PlainSql sql(file);
    ASSERT_EQ(sql.run("PRAGMA journal_mode = DELETE"), "delete");
    sql.run("BEGIN IMMEDIATE");
    auto opening = std::async(std::launch::async, [this] { return valueOf(openPractice(file)) != nullptr; });
    EXPECT_EQ(opening.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout) << "did not wait";
    sql.run("COMMIT");
    EXPECT_TRUE(opening.get());
}

TEST_F(SqlitePracticeTest, AFailedCallLeavesTheStoreUsable)
{
    makePractice(1);
    const auto practice = opened();
    ASSERT_TRUE(practice);
    {
        PlainSql sql(file);
        sql.run("ALTER TABLE visit RENAME TO hidden");
        const auto visit = practice->visit(1);
        ASSERT_FALSE(visit);
        EXPECT_EQ(visit.error().code, ErrorCode::Storage);
        EXPECT_FALSE(practice->visits(1));
        EXPECT_FALSE(practice->saveVisit(1, "x"));
        EXPECT_FALSE(practice->addVisit(1, "2024-01-01", "x"));
        sql.run("ALTER TABLE hidden RENAME TO visit");
    }
    EXPECT_TRUE(practice->visit(1));
    EXPECT_TRUE(practice->addVisit(1, "2024-01-01", "x"));
}

TEST_F(SqlitePracticeTest, EveryConnectionIsGivenBack)
{
    const auto before = QSqlDatabase::connectionNames().size();
    {
        const auto one = opened();
        const auto two = opened();
        EXPECT_EQ(QSqlDatabase::connectionNames().size(), before + 2);
    }
    writeBytes(path("text"), "words");
    EXPECT_FALSE(openPractice(path("text")));
    EXPECT_FALSE(openPractice(path("no/such/folder/x")));
    EXPECT_EQ(QSqlDatabase::connectionNames().size(), before);
}

TEST_F(SqlitePracticeTest, AnEmptyFileBecomesAPractice)
{
    writeBytes(file, "");
    const auto practice = opened();
    ASSERT_TRUE(practice);
    EXPECT_TRUE(practice->addPatient("Ana", ""));
}

TEST_F(SqlitePracticeTest, RefusesAnEmptyFileWithALogBesideIt)
{
    writeBytes(file, "");
    writeBytes(file + "-wal", "what is left of a practice");
    expectRefused(ErrorCode::Storage, "empty, but its write-ahead log is not");
    EXPECT_EQ(bytes(file + "-wal"), "what is left of a practice");
}

TEST_F(SqlitePracticeTest, RefusesAMissingFolder)
{
    const auto practice = openPractice(path("no-such-folder/a.practice"));
    ASSERT_FALSE(practice);
    EXPECT_EQ(practice.error().code, ErrorCode::CannotWrite);
    EXPECT_FALSE(QFileInfo::exists(folder.filePath(QStringLiteral("no-such-folder"))));
    const auto nameless = openPractice("");
    ASSERT_FALSE(nameless);
    EXPECT_EQ(nameless.error().code, ErrorCode::CannotWrite);
}

TEST_F(SqlitePracticeTest, RefusesAFolder)
{
    const auto practice = openPractice(folder.path().toStdString());
    ASSERT_FALSE(practice);
    EXPECT_EQ(practice.error().code, ErrorCode::NotAPractice);
}

TEST_F(SqlitePracticeTest, RefusesTextAndPictures)
{
    writeBytes(file, "Dear colleague, thank you for seeing this patient.\n");
    expectRefused(ErrorCode::NotAPractice, "file is not a database");
    writeBytes(file, std::string("\x89PNG\r\n\x1a\n", 8) + std::string(5000, '\0'));
    expectRefused(ErrorCode::NotAPractice, "file is not a database");
}

TEST_F(SqlitePracticeTest, RefusesAnotherDatabase)
{
    {
        PlainSql sql(file);
        sql.run("CREATE TABLE patient (id INTEGER PRIMARY KEY, name TEXT)");
        sql.run("INSERT INTO patient (name) VALUES ('theirs')");
    }
    expectRefused(ErrorCode::NotAPractice, "application id 0");
    {
        PlainSql sql(file);
        sql.run("PRAGMA application_id = 12345");
        sql.run("PRAGMA user_version = 1");
    }
    expectRefused(ErrorCode::NotAPractice, "application id 12345");
    {
        PlainSql sql(file);
        sql.run("PRAGMA journal_mode = WAL");
    }
    expectRefused(ErrorCode::NotAPractice, "application id 12345");
    PlainSql sql(file);
    EXPECT_EQ(sql.run("SELECT name FROM patient"), "theirs");
}

TEST_F(SqlitePracticeTest, RefusesALaterVersion)
{
    makePractice(1);
    {
        PlainSql sql(file);
        sql.run("PRAGMA user_version = 2");
    }
    expectRefused(ErrorCode::NewerVersion, "2");
    {
        PlainSql sql(file);
        sql.run("PRAGMA user_version = 0");
    }
    expectRefused(ErrorCode::NotAPractice, "version 0");
}

TEST_F(SqlitePracticeTest, RefusesADamagedFileWithOneError)
{
    makePractice(40);
    const std::string whole = bytes(file);
    ASSERT_GT(whole.size(), 100000U);

    writeBytes(file, whole.substr(0, whole.size() / 2));
    expectRefused(ErrorCode::Storage, "database disk image is malformed");

    // Every page in turn but the first, whose 100 bytes of header make it a database at all.
    int refused = 0;
    for (std::size_t page = 4096; page + 4096 <= whole.size(); page += 4096) {
        std::string damaged = whole;
        damaged.replace(page, 512, 512, '\xa5');
        writeBytes(file, damaged);
        const auto practice = openPractice(file);
        refused += practice ? 0 : 1;
        if (!practice) {
            EXPECT_EQ(practice.error().code, ErrorCode::Storage) << testing::PrintToString(practice.error());
        }
        EXPECT_TRUE(practice || bytes(file) == damaged) << "the damaged file was changed";
    }
    EXPECT_EQ(refused, static_cast<int>(whole.size() / 4096) - 1);

    std::string tables = whole;
    tables.replace(100, 2000, 2000, '\xa5');
    writeBytes(file, tables);
    expectRefused(ErrorCode::Storage);

    writeBytes(file, whole);
    EXPECT_TRUE(openPractice(file));
}

// A file that breaks while it is open: the rows up to there are no answer.
TEST_F(SqlitePracticeTest, DamageInTheMidstOfReadingIsAnError)
{
    makePractice(40);
    const auto practice = opened();
    ASSERT_TRUE(practice);
    EXPECT_EQ(valueOf(practice->visits(1)).size(), 40U);
    PlainSql(file).run("UPDATE patient SET name = 'Bo'"); // so that SQLite forgets what it holds in memory
    std::string damaged = bytes(file);
    for (std::size_t page = 8; page < 15; ++page) // some of the oldest visits, which are read last
        damaged.replace(page * 4096, 512, 512, '\xa5');
    writeBytes(file, damaged);
    const auto visits = practice->visits(1);
    ASSERT_FALSE(visits) << "gave " << visits.value().size() << " visits";
    EXPECT_EQ(visits.error().code, ErrorCode::Storage) << testing::PrintToString(visits.error());
    EXPECT_EQ(visits.error().detail, "database disk image is malformed");
}

// A write-protected practice must be refused at once, not when the first visit is to be saved. The administrator may
// write everywhere, so as administrator the test steps down for the moment.
TEST_F(SqlitePracticeTest, RefusesAWriteProtectedFile)
{
    makePractice(1);
    ASSERT_EQ(chmod(folder.path().toUtf8().constData(), 0777), 0);
    ASSERT_EQ(chmod(file.c_str(), 0444), 0);
    const auto self = geteuid();
    constexpr uid_t nobody = 65534;
    ASSERT_TRUE(self != 0 || seteuid(nobody) == 0);
    const auto practice = openPractice(file);
    ASSERT_TRUE(self != 0 || seteuid(self) == 0);
    ASSERT_FALSE(practice);
    EXPECT_EQ(practice.error().code, ErrorCode::CannotWrite) << testing::PrintToString(practice.error());
    EXPECT_EQ(practice.error().detail, "attempt to write a readonly database");
}

} // namespace
} // namespace raphe
