// Tests the tools of tests/support/storage, on plain SQLite: that the power cuts and faults they make are survived where
// SQLite promises it, and that they do show where it does not. What each setting of `synchronous` promises is from
// SQLite's page on it (https://www.sqlite.org/pragma.html#pragma_synchronous), from memory.
#include "tests/support/storage/StorageShim.h"

#include "tests/core/store/StoreTesting.h"

#include <sqlite3.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <sstream>
#include <vector>

namespace raphe::test {
namespace {

namespace fs = std::filesystem;

constexpr int transactions = 30; // with a write-ahead log
constexpr int fewTransactions = 10; // with a rollback journal, which syncs more often for each
constexpr int fileSectors = 4; // of the small files that are written without SQLite
constexpr std::size_t sectorSize = 512;

// ---- SQLite, by its own interface ----

class Connection {
public:
    explicit Connection(const fs::path &file, const char *vfs = nullptr)
    {
        constexpr int flags = SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
        m_code = sqlite3_open_v2(file.c_str(), &m_db, flags, vfs);
        sqlite3_extended_result_codes(m_db, 1);
    }
    ~Connection() { sqlite3_close(m_db); }
    Connection(const Connection &) = delete;
    Connection &operator=(const Connection &) = delete;

    [[nodiscard]] int openCode() const { return m_code; }
    [[nodiscard]] sqlite3 *handle() const { return m_db; }

    /// Runs the statements; the first column of all rows, in `out`, and SQLite's extended code.
    int run(const std::string &sql, std::vector<std::string> *out = nullptr)
    {
        const auto keep = [](void *rows, int, char **values, char **) {
            if (rows)
                static_cast<std::vector<std::string> *>(rows)->emplace_back(values[0] ? values[0] : "");
            return 0;
        };
        return sqlite3_exec(m_db, sql.c_str(), keep, out, nullptr);
    }

    /// The first column of the rows; nothing after an error.
    std::vector<std::string> rows(const std::string &sql)
    {
        std::vector<std::string> out;
        return run(sql, &out) == SQLITE_OK ? out : std::vector<std::string>{};
    }

private:
    sqlite3 *m_db = nullptr;
    int m_code = 0;
};

struct Settings {
    const char *journal;
    const char *synchronous;
};

// A log so short that it is brought into the database every few transactions.
int configure(Connection &db, const Settings &settings)
{
    return db.run(std::string("PRAGMA journal_mode = ") + settings.journal + "; PRAGMA synchronous = " + settings.synchronous
        + "; PRAGMA wal_autocheckpoint = 6");
}

// ---- The check table: each transaction adds an entry, counts it, and changes an old one on another page ----

int makeTables(Connection &db)
{
    return db.run("BEGIN IMMEDIATE;"
                  "CREATE TABLE entry (number INTEGER PRIMARY KEY, filler TEXT NOT NULL, touched INTEGER NOT NULL);"
                  "CREATE TABLE tally (entries INTEGER NOT NULL, touches INTEGER NOT NULL);"
                  "INSERT INTO tally VALUES (0, 0);"
                  "COMMIT");
}

std::string filler(int number)
{
    const auto size = static_cast<std::size_t>(700 + number % 7 * 1100); // bytes; a page has 4096
    return std::string(size, static_cast<char>('a' + number % 26));
}

// A failed one is rolled back.
int addEntry(Connection &db, int number)
{
    const std::string now = std::to_string(number);
    const std::string before = std::to_string(number / 2);
    const int code = db.run("BEGIN IMMEDIATE;"
                            "INSERT INTO entry VALUES ("
        + now + ", '" + filler(number) + "', 0); UPDATE entry SET touched = touched + 1 WHERE number = " + before
        + "; UPDATE tally SET entries = entries + 1, touches = touches + changes(); COMMIT");
    if (code != SQLITE_OK)
        db.run("ROLLBACK");
    return code;
}

struct LookedAt {
    bool whole = false;
    bool hasTables = false;
    std::set<int> entries;

    // The first transactions that are there, with the one that made the tables; -1 when others are there.
    [[nodiscard]] int prefix() const
    {
        const int last = entries.empty() ? 0 : *entries.rbegin();
        return static_cast<int>(entries.size()) == last ? last + (hasTables ? 1 : 0) : -1;
    }
};

// What is in the database, and whether it is sound and its tables agree with each other. No file is an empty database.
LookedAt look(const fs::path &file)
{
    LookedAt found;
    Connection db(file);
    db.run("PRAGMA synchronous = OFF"); // nothing is cut here
    if (db.rows("PRAGMA integrity_check") != std::vector<std::string>{"ok"})
        return found;
    const auto tables = db.rows("SELECT COUNT(*) FROM sqlite_master");
    if (tables == std::vector<std::string>{"0"}) {
        found.whole = true;
        return found;
    }
    found.hasTables = true;
    for (const auto &number : db.rows("SELECT number FROM entry ORDER BY number"))
        found.entries.insert(std::stoi(number));
    const auto agrees = db.rows("SELECT entries = (SELECT COUNT(*) FROM entry)"
                                " AND touches = (SELECT TOTAL(touched) FROM entry) FROM tally");
    std::vector<std::string> fillers;
    for (const int number : found.entries)
        fillers.push_back(filler(number));
    found.whole = agrees == std::vector<std::string>{"1"} && db.rows("SELECT filler FROM entry ORDER BY number") == fillers;
    return found;
}

// ---- Power cuts ----

const char *nameOf(Cut how)
{
    switch (how) {
    case Cut::None: return "none";
    case Cut::All: return "all";
    case Cut::Subset: return "subset";
    case Cut::Torn: return "torn";
    }
    return "";
}

struct Survived {
    int cuts = 0;
    int broken = 0; // unsound, or not the first transactions
    int lost = 0; // sound, but a transaction that had been committed is not there
    std::string first; // the first of either, for messages
};

class ShimTest : public StoreTest {
protected:
    void SetUp() override
    {
        StoreTest::SetUp();
        watched = fs::path(path("watched"));
        fs::create_directory(watched);
        file = watched / "check.db";
    }

    // Everything in transactions of which SQLite says that they succeeded; for each the number of syncs by then.
    std::vector<std::size_t> recordedRun(const StorageShim &shim, const Settings &settings, int count)
    {
        std::vector<std::size_t> commits;
        Connection db(file);
        EXPECT_EQ(db.openCode(), SQLITE_OK);
        EXPECT_EQ(configure(db, settings), SQLITE_OK);
        EXPECT_EQ(makeTables(db), SQLITE_OK);
        commits.push_back(shim.record().syncs());
        for (int number = 1; number <= count; ++number) {
            EXPECT_EQ(addEntry(db, number), SQLITE_OK);
            commits.push_back(shim.record().syncs());
        }
        return commits;
    }

    // Every cut, in every way. `commits` are as recordedRun() answers them.
    Survived cutEverywhere(const WriteRecorder &record, const std::vector<std::size_t> &commits)
    {
        constexpr std::uint64_t seeds = 4;
        Survived survived;
        for (std::size_t after = 0; after <= record.syncs(); ++after) {
            const auto committed = std::count_if(commits.begin(), commits.end(), [&](auto syncs) { return syncs <= after; });
            for (const Cut how : {Cut::None, Cut::All, Cut::Subset, Cut::Torn}) {
                const bool seeded = how == Cut::Subset || how == Cut::Torn;
                for (std::uint64_t seed = 1; seed <= (seeded ? seeds : 1); ++seed) {
                    const fs::path left = path("left");
                    fs::remove_all(left);
                    record.materialise(left, after, seed, how);
                    const LookedAt found = look(left / file.filename());
                    const bool broken = !found.whole || found.prefix() < 0;
                    const bool lost = !broken && found.prefix() < committed;
                    ++survived.cuts;
                    survived.broken += broken ? 1 : 0;
                    survived.lost += lost ? 1 : 0;
                    if ((broken || lost) && survived.first.empty()) {
                        std::ostringstream text;
                        text << "cut after sync " << after << ", " << nameOf(how) << ", seed " << seed << ": "
                             << (broken ? "broken" : "lost") << ", " << found.prefix() << " of " << committed;
                        survived.first = text.str();
                    }
                }
            }
        }
        return survived;
    }

    Survived runAndCut(const Settings &settings, int count)
    {
        const StorageShim shim(watched);
        const auto commits = recordedRun(shim, settings, count);
        return cutEverywhere(shim.record(), commits);
    }

    fs::path watched;
    fs::path file;
};

TEST_F(ShimTest, ACutLeavesEveryCommitOfAWriteAheadLogThatIsFullySynced)
{
    const Survived survived = runAndCut({"WAL", "FULL"}, transactions);
    EXPECT_GT(survived.cuts, 10 * transactions) << "each transaction is synced, and each sync cut in ten ways";
    EXPECT_EQ(survived.broken, 0) << survived.first;
    EXPECT_EQ(survived.lost, 0) << survived.first;
}

TEST_F(ShimTest, ACutLeavesAWriteAheadLogThatIsSyncedNowAndThenWholeButOlder)
{
    const Survived survived = runAndCut({"WAL", "NORMAL"}, transactions);
    EXPECT_EQ(survived.broken, 0) << survived.first;
    EXPECT_GT(survived.lost, 0) << "of " << survived.cuts;
}

TEST_F(ShimTest, ACutBreaksAWriteAheadLogThatIsNotSynced)
{
    const Survived survived = runAndCut({"WAL", "OFF"}, transactions);
    EXPECT_GT(survived.broken, 0) << "of " << survived.cuts;
    EXPECT_GT(survived.lost, 0) << "of " << survived.cuts;
}

TEST_F(ShimTest, ACutLeavesEveryCommitOfARollbackJournalWhoseRemovalIsSynced)
{
    const Survived survived = runAndCut({"DELETE", "EXTRA"}, fewTransactions);
    EXPECT_EQ(survived.broken, 0) << survived.first;
    EXPECT_EQ(survived.lost, 0) << survived.first;
}

TEST_F(ShimTest, ACutMayBringBackARollbackJournalWhoseRemovalIsNotSynced)
{
    const Survived survived = runAndCut({"DELETE", "FULL"}, fewTransactions);
    EXPECT_EQ(survived.broken, 0) << survived.first;
    EXPECT_GT(survived.lost, 0) << "of " << survived.cuts;
}

TEST_F(ShimTest, ACutBreaksADatabaseWhoseRollbackJournalIsNotSynced)
{
    const Survived survived = runAndCut({"DELETE", "OFF"}, fewTransactions);
    EXPECT_GT(survived.broken, 0) << "of " << survived.cuts;
}

TEST_F(ShimTest, WhatWasThereBeforeTheRecordSurvivesEveryCut)
{
    {
        Connection db(file);
        ASSERT_EQ(configure(db, {"WAL", "FULL"}), SQLITE_OK);
        ASSERT_EQ(makeTables(db), SQLITE_OK);
        for (int number = 1; number <= 3; ++number)
            ASSERT_EQ(addEntry(db, number), SQLITE_OK);
    }
    const StorageShim shim(watched);
    std::vector<std::size_t> commits(4, 0);
    {
        Connection db(file);
        ASSERT_EQ(configure(db, {"WAL", "FULL"}), SQLITE_OK);
        for (int number = 4; number <= 9; ++number) {
            ASSERT_EQ(addEntry(db, number), SQLITE_OK);
            commits.push_back(shim.record().syncs());
        }
    }
    const Survived survived = cutEverywhere(shim.record(), commits);
    EXPECT_EQ(survived.broken, 0) << survived.first;
    EXPECT_EQ(survived.lost, 0) << survived.first;
}

// Nothing goes past the shim, not even where memory mapping and growth in large steps are asked for.
TEST_F(ShimTest, TheRecordAtItsEndIsWhatIsOnTheDisk)
{
    const StorageShim shim(watched);
    Connection db(file);
    int step = 1 << 20; // bytes
    sqlite3_file_control(db.handle(), nullptr, SQLITE_FCNTL_CHUNK_SIZE, &step);
    EXPECT_EQ(db.rows("PRAGMA mmap_size = 10000000"), std::vector<std::string>{"0"});
    ASSERT_EQ(configure(db, {"WAL", "FULL"}), SQLITE_OK);
    ASSERT_EQ(makeTables(db), SQLITE_OK);
    for (int number = 1; number <= transactions; ++number)
        ASSERT_EQ(addEntry(db, number), SQLITE_OK);
    ASSERT_EQ(db.run("DELETE FROM entry; VACUUM; PRAGMA wal_checkpoint(TRUNCATE)"), SQLITE_OK); // both files shrink
    ASSERT_EQ(addEntry(db, 1), SQLITE_OK);

    const fs::path copy = path("copy");
    shim.record().materialise(copy, shim.record().syncs(), 1, Cut::All);
    std::set<std::string> names;
    for (const auto &entry : fs::directory_iterator(watched)) {
        const std::string name = entry.path().filename().string();
        names.insert(name);
        if (name == "check.db-shm")
            EXPECT_FALSE(fs::exists(copy / name));
        else
            EXPECT_EQ(bytes(entry.path().string()), bytes((copy / name).string())) << name;
    }
    EXPECT_EQ(names, (std::set<std::string>{"check.db", "check.db-shm", "check.db-wal"}));
}

// ---- The record by itself ----

class RecorderTest : public StoreTest {
protected:
    // A sector of each letter, as many as fileSectors.
    static std::string pattern(char first)
    {
        std::string out;
        for (int i = 0; i < fileSectors; ++i)
            out += std::string(sectorSize, static_cast<char>(first + i));
        return out;
    }

    // What is left of the file; "-" when it is gone.
    std::string left(std::size_t afterSync, std::uint64_t seed, Cut how)
    {
        const fs::path target = path("left");
        fs::remove_all(target);
        record.materialise(target, afterSync, seed, how);
        return fs::exists(target / "f") ? bytes((target / "f").string()) : "-";
    }

    // Everything that some seed leaves.
    std::set<std::string> leftBySeeds(std::size_t afterSync, Cut how)
    {
        std::set<std::string> out;
        for (std::uint64_t seed = 0; seed < 200; ++seed)
            out.insert(left(afterSync, seed, how));
        return out;
    }

    WriteRecorder record{path("")};
};

TEST_F(RecorderTest, WhatWasSyncedStaysAndTheRestMayGo)
{
    const auto f = record.open("f");
    record.write(f, 0, "abcd");
    record.sync(f);
    record.write(f, 4, "ef");
    record.write(f, 0, "X");
    record.truncate(f, 5);
    EXPECT_EQ(record.syncs(), 1U);
    EXPECT_EQ(left(1, 1, Cut::None), "abcd");
    EXPECT_EQ(left(1, 1, Cut::All), "Xbcde");
    const std::string grown = std::string("abcd") + '\0'; // the truncation alone
    const std::string changed = std::string("Xbcd") + '\0';
    EXPECT_EQ(leftBySeeds(1, Cut::Subset),
        (std::set<std::string>{"abcd", "abcdef", "Xbcd", "Xbcdef", grown, changed, "abcde", "Xbcde"}));
}

TEST_F(RecorderTest, ASyncOfAnotherFileDoesNothing)
{
    const auto f = record.open("f");
    record.sync(f);
    record.write(f, 0, "ab");
    const auto other = record.open("other");
    record.sync(other);
    EXPECT_EQ(left(2, 1, Cut::None), "");
    record.sync(f);
    EXPECT_EQ(left(2, 1, Cut::None), "");
    EXPECT_EQ(left(3, 1, Cut::None), "ab");
}

TEST_F(RecorderTest, ACutComesJustBeforeTheNextSync)
{
    const auto f = record.open("f");
    record.write(f, 0, "a");
    record.sync(f);
    record.write(f, 1, "b");
    record.sync(f);
    record.write(f, 2, "c");
    EXPECT_EQ(left(0, 1, Cut::All), "a");
    EXPECT_EQ(left(1, 1, Cut::All), "ab");
    EXPECT_EQ(left(2, 1, Cut::All), "abc");
    EXPECT_THROW(left(3, 1, Cut::All), std::runtime_error);
}

TEST_F(RecorderTest, AWriteIsTornBetweenSectorsOnly)
{
    const auto f = record.open("f");
    record.write(f, 0, pattern('a'));
    record.sync(f);
    record.write(f, 100, pattern('A').substr(100));
    std::set<std::string> expected; // each sector old or new; the first 100 bytes are in no write
    for (int kept = 0; kept < (1 << fileSectors); ++kept) {
        std::string content = pattern('a');
        for (int i = 0; i < fileSectors; ++i)
            if ((kept & (1 << i)) != 0)
                content.replace(static_cast<std::size_t>(i) * sectorSize, sectorSize, sectorSize, static_cast<char>('A' + i));
        content.replace(0, 100, 100, 'a');
        expected.insert(content);
    }
    EXPECT_EQ(leftBySeeds(1, Cut::Torn), expected);
    EXPECT_EQ(left(1, 5, Cut::Torn), left(1, 5, Cut::Torn)) << "the same seed, the same files";
}

TEST_F(RecorderTest, TornSectorsComeInAnyOrder)
{
    const auto f = record.open("f");
    record.sync(f);
    record.write(f, 0, "a");
    record.write(f, 0, "b");
    EXPECT_EQ(leftBySeeds(1, Cut::Subset), (std::set<std::string>{"", "a", "b"}));
    int older = 0;
    for (std::uint64_t seed = 0; seed < 200; ++seed)
        older += left(1, seed, Cut::Torn) == "a" ? 1 : 0;
    int olderInOrder = 0;
    for (std::uint64_t seed = 0; seed < 200; ++seed)
        olderInOrder += left(1, seed, Cut::Subset) == "a" ? 1 : 0;
    EXPECT_GT(older, olderInOrder);
}

TEST_F(RecorderTest, AFileThatWasNeverSyncedMayNotExist)
{
    const auto f = record.open("f");
    record.write(f, 0, "ab");
    EXPECT_EQ(left(0, 1, Cut::None), "-");
    EXPECT_EQ(left(0, 1, Cut::All), "ab");
    EXPECT_EQ(leftBySeeds(0, Cut::Subset), (std::set<std::string>{"-", "", "ab"}));
}

TEST_F(RecorderTest, ARemovalIsDurableWithItsFolderOrWithTheNextFileOfTheName)
{
    const auto f = record.open("f");
    record.write(f, 0, "old");
    record.sync(f);
    record.remove("f");
    EXPECT_EQ(left(1, 1, Cut::None), "old");
    EXPECT_EQ(left(1, 1, Cut::All), "-");
    EXPECT_EQ(leftBySeeds(1, Cut::Torn), (std::set<std::string>{"-", "old"}));
    record.syncFolder("f");
    EXPECT_EQ(record.syncs(), 2U);
    EXPECT_EQ(left(2, 1, Cut::None), "-");

    const auto again = record.open("f");
    EXPECT_NE(again, f);
    record.sync(again);
    record.remove("f");
    const auto third = record.open("f");
    EXPECT_EQ(leftBySeeds(3, Cut::Subset), (std::set<std::string>{"-", ""}));
    record.write(third, 0, "new");
    record.sync(third);
    EXPECT_EQ(left(4, 1, Cut::None), "new");
}

TEST_F(RecorderTest, ASyncOfAFolderIsForAllOfItsNamesAndForNoContent)
{
    const auto f = record.open("f");
    record.write(f, 0, "ab");
    record.syncFolder("below/other");
    EXPECT_EQ(left(1, 1, Cut::None), "-");
    record.syncFolder("other");
    EXPECT_EQ(left(2, 1, Cut::None), "");
    record.remove("f");
    record.syncFolder("other");
    EXPECT_EQ(left(3, 1, Cut::None), "-");
}

TEST_F(RecorderTest, AFileThatWasThereBeforeIsThereFromTheStart)
{
    writeBytes(path("f"), "old");
    const auto other = record.open("other");
    record.sync(other);
    record.notice("f");
    const auto f = record.open("f");
    record.write(f, 0, "N");
    EXPECT_EQ(left(0, 1, Cut::None), "old");
    EXPECT_EQ(left(1, 1, Cut::None), "old");
    EXPECT_EQ(left(1, 1, Cut::All), "Nld");
}

TEST_F(RecorderTest, DoesNotMixWithWhatIsInAFolder)
{
    writeBytes(path("f"), "here");
    EXPECT_THROW(record.materialise(path(""), 0, 1, Cut::All), std::runtime_error);
}

// ---- Faults ----

TEST(FaultPlanTest, TheNthFailsOnceOrFromThenOn)
{
    FaultPlan plan;
    EXPECT_FALSE(plan.next(Operation::Write));
    EXPECT_EQ(plan.count(Operation::Write), 1U);

    const auto failed = [&](Operation operation, int times) {
        std::vector<bool> out;
        for (int i = 0; i < times; ++i)
            out.push_back(plan.next(operation).has_value());
        return out;
    };
    plan.arm({Operation::Write, 2, Failure::DiskFull, false});
    EXPECT_EQ(failed(Operation::Sync, 3), (std::vector<bool>{false, false, false}));
    EXPECT_EQ(failed(Operation::Write, 4), (std::vector<bool>{false, true, false, false}));
    EXPECT_EQ(plan.failures(), 1U);
    EXPECT_EQ(plan.count(Operation::Write), 4U);
    EXPECT_EQ(plan.count(Operation::Sync), 3U);
    EXPECT_EQ(plan.count(Operation::Remove), 0U);

    plan.arm({Operation::Write, 2, Failure::DiskFull, true});
    EXPECT_EQ(failed(Operation::Write, 4), (std::vector<bool>{false, true, true, true}));
    plan.arm({Operation::Open, 1, Failure::ShortWrite, false});
    EXPECT_EQ(plan.next(Operation::Open), Failure::ShortWrite);
    plan.disarm();
    EXPECT_EQ(plan.count(Operation::Open), 0U);
    EXPECT_FALSE(plan.next(Operation::Open));
}

TEST_F(ShimTest, SqliteIsToldWhatFailed)
{
    StorageShim shim(watched);
    {
        Connection db(file);
        ASSERT_EQ(configure(db, {"DELETE", "EXTRA"}), SQLITE_OK);
        ASSERT_EQ(makeTables(db), SQLITE_OK);
        const auto codeWith = [&](Operation operation, Failure failure) {
            shim.faults().arm({operation, 1, failure, false});
            const int code = addEntry(db, 1);
            EXPECT_EQ(shim.faults().failures(), 1U);
            return code;
        };
        EXPECT_EQ(codeWith(Operation::Open, Failure::IoError), SQLITE_CANTOPEN); // the journal
        EXPECT_EQ(codeWith(Operation::Write, Failure::IoError), SQLITE_IOERR_WRITE);
        EXPECT_EQ(codeWith(Operation::Write, Failure::ShortWrite), SQLITE_IOERR_WRITE);
        EXPECT_EQ(codeWith(Operation::Write, Failure::DiskFull), SQLITE_FULL);
        EXPECT_EQ(codeWith(Operation::Sync, Failure::IoError), SQLITE_IOERR_FSYNC);
        EXPECT_EQ(codeWith(Operation::Remove, Failure::IoError), SQLITE_IOERR_DELETE);
        shim.faults().disarm();
        EXPECT_EQ(db.run("PRAGMA journal_mode = TRUNCATE"), SQLITE_OK);
        EXPECT_EQ(codeWith(Operation::Truncate, Failure::IoError), SQLITE_IOERR_TRUNCATE);
        shim.faults().disarm();
        EXPECT_EQ(addEntry(db, 1), SQLITE_OK);
    }
    EXPECT_EQ(look(file).entries, std::set<int>{1});
}

TEST_F(ShimTest, AShortWriteLeavesHalfOfTheBytes)
{
    StorageShim shim(watched);
    Connection db(file);
    ASSERT_EQ(configure(db, {"WAL", "FULL"}), SQLITE_OK);
    ASSERT_EQ(makeTables(db), SQLITE_OK);
    const fs::path log = watched / "check.db-wal";
    constexpr std::uintmax_t frameHeader = 24; // bytes (https://www.sqlite.org/fileformat2.html#the_write_ahead_log)
    constexpr std::uintmax_t page = 4096;
    const auto before = fs::file_size(log);
    shim.faults().arm({Operation::Write, 1, Failure::ShortWrite, false});
    EXPECT_EQ(addEntry(db, 1), SQLITE_IOERR_WRITE);
    EXPECT_EQ(fs::file_size(log), before + frameHeader / 2);
    shim.faults().arm({Operation::Write, 2, Failure::ShortWrite, false});
    EXPECT_EQ(addEntry(db, 1), SQLITE_IOERR_WRITE);
    EXPECT_EQ(fs::file_size(log), before + frameHeader + page / 2);
    shim.faults().disarm();

    const fs::path copy = path("copy");
    shim.record().materialise(copy, shim.record().syncs(), 1, Cut::All);
    EXPECT_EQ(bytes(log.string()), bytes((copy / log.filename()).string())) << "the record has the half";
}

struct FaultRun {
    std::set<int> reportedDone;
    bool error = false;
};

// Opens the database and adds entries 4 to 6; goes on after an error.
FaultRun addUnderFault(const fs::path &file, const Settings &settings)
{
    FaultRun run;
    Connection db(file);
    run.error = db.openCode() != SQLITE_OK || configure(db, settings) != SQLITE_OK;
    for (int number = 4; number <= 6; ++number) {
        if (addEntry(db, number) == SQLITE_OK)
            run.reportedDone.insert(number);
        else
            run.error = true;
    }
    return run;
}

class FaultSweepTest : public ShimTest {
protected:
    // A database with three entries.
    void makeFile(const Settings &settings)
    {
        fs::remove_all(watched);
        fs::create_directory(watched);
        Connection db(file);
        ASSERT_EQ(configure(db, {settings.journal, "OFF"}), SQLITE_OK);
        ASSERT_EQ(makeTables(db), SQLITE_OK);
        for (int number = 1; number <= 3; ++number)
            ASSERT_EQ(addEntry(db, number), SQLITE_OK);
    }

    std::size_t countWithoutFault(Operation operation, const Settings &settings)
    {
        makeFile(settings);
        StorageShim shim(watched);
        const FaultRun run = addUnderFault(file, settings);
        EXPECT_FALSE(run.error);
        EXPECT_EQ(run.reportedDone, (std::set<int>{4, 5, 6}));
        return shim.faults().count(operation);
    }

    // Runs with the fault, and expects all that was reported done, or older, in a sound database. Whether an error was
    // reported.
    bool failsHonestly(const Fault &fault, const Settings &settings)
    {
        makeFile(settings);
        StorageShim shim(watched);
        shim.faults().arm(fault);
        const FaultRun run = addUnderFault(file, settings);
        EXPECT_GT(shim.faults().failures(), 0U);
        shim.faults().disarm();
        const LookedAt found = look(file);
        EXPECT_TRUE(found.whole);
        std::set<int> expected{1, 2, 3};
        expected.insert(run.reportedDone.begin(), run.reportedDone.end());
        EXPECT_TRUE(std::includes(found.entries.begin(), found.entries.end(), expected.begin(), expected.end()))
            << testing::PrintToString(found.entries) << " lacks some of " << testing::PrintToString(expected);
        return run.error;
    }

    // How many of all faults of the kind were reported.
    int sweep(Operation operation, const Settings &settings)
    {
        int errors = 0;
        const std::size_t count = countWithoutFault(operation, settings);
        EXPECT_GT(count, 0U);
        for (std::size_t number = 1; number <= count; ++number)
            for (const Failure failure : {Failure::IoError, Failure::DiskFull, Failure::ShortWrite})
                for (const bool lasting : {false, true}) {
                    if (failure == Failure::ShortWrite && operation != Operation::Write)
                        continue;
                    SCOPED_TRACE(testing::Message() << "operation " << static_cast<int>(operation) << ", number " << number
                                                    << ", failure " << static_cast<int>(failure) << ", lasting " << lasting);
                    errors += failsHonestly({operation, number, failure, lasting}, settings) ? 1 : 0;
                }
        return errors;
    }
};

TEST_F(FaultSweepTest, AnInsertIntoAWriteAheadLogFailsOrIsThere)
{
    const Settings settings{"WAL", "FULL"};
    EXPECT_GT(sweep(Operation::Open, settings), 0);
    EXPECT_GT(sweep(Operation::Write, settings), 0);
    EXPECT_GT(sweep(Operation::Sync, settings), 0);
    EXPECT_EQ(sweep(Operation::Truncate, settings), 0) << "only when the log is brought into the database";
    EXPECT_EQ(sweep(Operation::Remove, settings), 0) << "only when the database is closed";
}

TEST_F(FaultSweepTest, AnInsertWithARollbackJournalFailsOrIsThere)
{
    const Settings settings{"DELETE", "EXTRA"};
    for (const Operation operation : {Operation::Open, Operation::Write, Operation::Sync, Operation::Remove})
        EXPECT_GT(sweep(operation, settings), 0) << static_cast<int>(operation);
    EXPECT_GT(sweep(Operation::Truncate, {"TRUNCATE", "FULL"}), 0);
}

// ---- The shim in the process ----

TEST_F(ShimTest, IsTheDefaultWhileItLives)
{
    sqlite3_vfs *before = sqlite3_vfs_find(nullptr);
    {
        const StorageShim shim(watched);
        EXPECT_NE(sqlite3_vfs_find(nullptr), before);
    }
    EXPECT_EQ(sqlite3_vfs_find(nullptr), before);
    EXPECT_THROW(StorageShim(path("missing")), fs::filesystem_error);
    EXPECT_EQ(sqlite3_vfs_find(nullptr), before);
}

TEST_F(ShimTest, LeavesFilesElsewhereAlone)
{
    StorageShim shim(watched);
    const auto addTo = [](const fs::path &where) {
        Connection db(where);
        EXPECT_EQ(makeTables(db), SQLITE_OK);
    };
    addTo(path("watched.db")); // beside the folder, with a name that begins like it
    EXPECT_EQ(shim.faults().count(Operation::Open), 0U);
    EXPECT_EQ(shim.record().syncs(), 0U);
    fs::create_directory(watched / "below");
    addTo(watched / "below" / "check.db");
    EXPECT_EQ(shim.faults().count(Operation::Open), 2U) << "the database and its journal";
    shim.record().materialise(path("left"), shim.record().syncs(), 1, Cut::All);
    EXPECT_TRUE(look(fs::path(path("left")) / "below" / "check.db").hasTables);
}

TEST_F(ShimTest, ServesTheDriverOfQt)
{
    StorageShim shim(watched);
    {
        PlainSql sql(file.string());
        sql.run("CREATE TABLE t (n INTEGER)");
    }
    EXPECT_GT(shim.faults().count(Operation::Write), 0U);
    EXPECT_GT(shim.record().syncs(), 0U);
}

TEST_F(ShimTest, AFileLeftOpenEndsTheProgram)
{
    EXPECT_DEATH(
        {
            const StorageShim *shim = new StorageShim(watched);
            const Connection db(file);
            delete shim;
        },
        "files still open: 1");
}

} // namespace
} // namespace raphe::test
