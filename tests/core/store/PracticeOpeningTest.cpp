// Opening a practice file: what is not a whole practice of ours is refused with its place and left untouched; several may have
// one open; every connection is given back; a second program is told that it is in use.
#include "core/store/PracticeInUse.h"

#include "tests/core/store/PracticeTesting.h"

#include <sys/stat.h>
#include <unistd.h>

#include <fstream>
#include <future>
#include <iterator>

namespace raphe::test {

namespace {

class OpeningPractice : public PracticeFileTest {
protected:
    [[nodiscard]] static std::string bytes(const std::string &file)
    {
        std::ifstream in(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    static void writeBytes(const std::string &file, const std::string &content)
    {
        std::ofstream(file, std::ios::binary | std::ios::trunc) << content;
    }
    [[nodiscard]] Result<std::unique_ptr<Practice>> unlocking() const
    {
        return Practice::unlock(file(), "ada", std::string_view("right words here"));
    }
    void expectRefused(ErrorCode code, const std::string &detail)
    {
        const std::string before = bytes(file());
        const auto practice = unlocking();
        ASSERT_FALSE(practice) << "was opened";
        EXPECT_EQ(practice.error().code, code) << inWords(practice.error());
        EXPECT_EQ(practice.error().place, file());
        EXPECT_EQ(practice.error().detail, detail);
        EXPECT_TRUE(bytes(file()) == before) << "the file was changed";
    }
};

} // namespace

TEST_F(OpeningPractice, TheFileIsMarkedAsOurs)
{
    ASSERT_TRUE(made());
    EXPECT_EQ(bytes(file()).substr(68, 4), "Raph") << "application id, at byte 68 of an SQLite file";
    const Database db(file());
    EXPECT_EQ(db.number("PRAGMA user_version"), practiceVersion);
    EXPECT_EQ(db.single("PRAGMA journal_mode").text(0), "wal");
}

TEST_F(OpeningPractice, SeveralObjectsMayHaveTheFileOpen)
{
    const auto one = made();
    const auto two = unlocked();
    ASSERT_TRUE(two);
    const auto patient = one->addPatient(person("Ana", "")).value();
    const auto visit = two->addVisit(patient, "from two").value();
    EXPECT_EQ(one->visit(visit).value().document, "from two");
    ASSERT_TRUE(one->saveVisit(visit, "from one"));
    EXPECT_EQ(two->visit(visit).value().document, "from one");
    EXPECT_TRUE(two->verify());
}

// The switch to the write-ahead log is the one step at which SQLite itself would give up at once.
TEST_F(OpeningPractice, WaitsForAnotherWriter)
{
    ASSERT_TRUE(made());
    const Database other(file());
    other.setPragma("journal_mode", "DELETE", "delete");
    other.run("BEGIN IMMEDIATE");
    auto opening = std::async(std::launch::async, [this] { return unlocking().ok(); });
    EXPECT_EQ(opening.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout) << "did not wait";
    other.run("COMMIT");
    EXPECT_TRUE(opening.get());
}

TEST_F(OpeningPractice, AFailedCallLeavesThePracticeUsable)
{
    const auto practice = made();
    const auto patient = practice->addPatient(person("Ana", "")).value();
    const auto visit = practice->addVisit(patient, "one").value();
    {
        const Database behind(file());
        behind.run("ALTER TABLE visit RENAME TO hidden");
        EXPECT_EQ(practice->visit(visit).error().code, ErrorCode::Storage);
        EXPECT_FALSE(practice->visits(patient));
        EXPECT_FALSE(practice->saveVisit(visit, "x"));
        EXPECT_FALSE(practice->addVisit(patient, "x"));
        behind.run("ALTER TABLE hidden RENAME TO visit");
    }
    EXPECT_EQ(practice->visit(visit).value().document, "one");
    EXPECT_TRUE(practice->addVisit(patient, "x"));
    EXPECT_TRUE(practice->verify());
}

TEST_F(OpeningPractice, EveryConnectionIsGivenBack)
{
    const auto before = QSqlDatabase::connectionNames().size();
    {
        const auto one = made();
        const auto two = unlocked();
        EXPECT_EQ(QSqlDatabase::connectionNames().size(), before + 2);
    }
    EXPECT_FALSE(Practice::unlock(file(), "ada", std::string_view("other words here")));
    writeBytes(file(), "words");
    EXPECT_FALSE(unlocking());
    EXPECT_EQ(QSqlDatabase::connectionNames().size(), before);
}

TEST_F(OpeningPractice, AnEmptyFileOfAnAttemptBecomesAPractice)
{
    writeBytes(file(), "");
    EXPECT_TRUE(made());
}

TEST_F(OpeningPractice, RefusesAnEmptyFileWithALogBesideIt)
{
    writeBytes(file(), "");
    writeBytes(file() + "-wal", "what is left of a practice");
    expectRefused(ErrorCode::Storage, "empty, but its write-ahead log is not");
    EXPECT_EQ(bytes(file() + "-wal"), "what is left of a practice");
}

TEST_F(OpeningPractice, RefusesWhatIsMissingAndAFolder)
{
    EXPECT_EQ(unlocking().error().code, ErrorCode::CannotRead);
    EXPECT_FALSE(std::filesystem::exists(file())) << "looking for it must not make one";
    EXPECT_EQ(Practice::unlock(folder(), "ada", std::string_view("right words here")).error().code, ErrorCode::NotAPractice);
    EXPECT_EQ(Practice::make(folder() + "/none/a.raphe", settings(), owner()).error().code, ErrorCode::CannotWrite);
    EXPECT_FALSE(std::filesystem::exists(folder() + "/none"));
}

TEST_F(OpeningPractice, RefusesTextAndPictures)
{
    writeBytes(file(), "Dear colleague, thank you for seeing this patient.\n");
    expectRefused(ErrorCode::NotAPractice, "file is not a database");
    writeBytes(file(), std::string("\x89PNG\r\n\x1a\n", 8) + std::string(5000, '\0'));
    expectRefused(ErrorCode::NotAPractice, "file is not a database");
}

TEST_F(OpeningPractice, RefusesAnotherDatabase)
{
    {
        const Database theirs(file());
        theirs.run("CREATE TABLE patient (id INTEGER PRIMARY KEY, name TEXT)");
        theirs.run("INSERT INTO patient (name) VALUES ('theirs')");
    }
    expectRefused(ErrorCode::NotAPractice, "application id 0");
    Database(file()).run("PRAGMA application_id = 12345");
    expectRefused(ErrorCode::NotAPractice, "application id 12345");
    EXPECT_EQ(Database(file()).single("SELECT name FROM patient").text(0), "theirs");
}

TEST_F(OpeningPractice, RefusesALaterVersion)
{
    ASSERT_TRUE(made());
    Database(file()).run("PRAGMA user_version = 99");
    expectRefused(ErrorCode::NewerVersion, "99");
}

// A write-protected practice must be refused at once, not when the first visit is to be saved. The administrator may
// write everywhere, so as administrator the test steps down for the moment.
TEST_F(OpeningPractice, RefusesAWriteProtectedFile)
{
    ASSERT_TRUE(made());
    ASSERT_EQ(chmod(folder().c_str(), 0777), 0);
    ASSERT_EQ(chmod(file().c_str(), 0444), 0);
    const auto self = geteuid();
    constexpr uid_t nobody = 65534;
    ASSERT_TRUE(self != 0 || seteuid(nobody) == 0);
    const auto practice = unlocking();
    ASSERT_TRUE(self != 0 || seteuid(self) == 0);
    ASSERT_FALSE(practice);
    EXPECT_EQ(practice.error().code, ErrorCode::CannotWrite) << inWords(practice.error());
    EXPECT_EQ(practice.error().detail, "attempt to write a readonly database");
}

TEST_F(OpeningPractice, ASecondProgramIsToldWhoHasIt)
{
    ASSERT_TRUE(made());
    {
        const auto held = PracticeInUse::hold(file());
        ASSERT_TRUE(held) << inWords(held.error());
        const auto second = PracticeInUse::hold(file());
        ASSERT_FALSE(second);
        EXPECT_EQ(second.error().code, ErrorCode::NotAllowed);
        EXPECT_EQ(second.error().place, file());
        EXPECT_NE(second.error().detail.find(std::to_string(getpid())), std::string::npos) << second.error().detail;
    }
    EXPECT_TRUE(PracticeInUse::hold(file())) << "given back when its holder goes";
    EXPECT_EQ(PracticeInUse::hold(folder() + "/none/a.raphe").error().code, ErrorCode::CannotWrite);
}

} // namespace raphe::test
