// The file of an older version becomes one of today, as a whole or not at all. There is no older version yet: the tests make one
// of a file of today, and the steps that lead back. What makes it older: it has a table with a column less, and a sealed text in
// another form.
#include "core/store/Migrations.h"
#include "tests/core/store/PracticeTesting.h"
#include "tests/core/store/ScriptedEntry.h"
#include "tests/support/storage/StorageShim.h"

#include <iostream>

namespace raphe::test {

namespace {

constexpr std::int64_t oldest = practiceVersion - 2;

// From `oldest` to the one after it: visits get their state, which was told by their entries. Makes the table anew.
void addStates(const Database &db, const Keyring &)
{
    db.run("CREATE TABLE visit_new (id INTEGER PRIMARY KEY, patient INTEGER NOT NULL REFERENCES patient (id),"
           " changes INTEGER NOT NULL, state INTEGER NOT NULL CHECK (state BETWEEN 0 AND 3), document BLOB NOT NULL)");
    db.run("INSERT INTO visit_new SELECT id, patient, changes, EXISTS (SELECT 1 FROM entry WHERE entry.visit = visit.id AND"
           " entry.kind IN ('signed', 'amended')), document FROM visit");
    db.run("DROP TABLE visit");
    db.run("ALTER TABLE visit_new RENAME TO visit");
    db.run("CREATE INDEX visit_by_patient ON visit (patient)");
}

// To the present one: the settings in their form of today, and the head's sum after them.
void renewSettings(const Database &db, const Keyring &keys)
{
    Head head = readHead(db, keys);
    if (sumOfRows(db, keys) != head.rows)
        throw Error{ErrorCode::Tampered, db.file(), "the rows are not those that were written"};
    const auto place = [&](std::int64_t changes) { return boxPlace(keys.practice, "practice", 1, "settings", changes); };
    const Rows rows = db.single("SELECT changes, settings FROM practice WHERE id = 1");
    const std::string older = unsealText(keys.fileKey, rows.blob(1), place(rows.number(0)));
    if (older != "Brook and Brook")
        throw Error{ErrorCode::Tampered, db.file(), older};
    PracticeSettings settings;
    settings.name = older;
    head.rows.remove(rowHash(db, keys, "practice", 1));
    db.run("UPDATE practice SET changes = ?, settings = ? WHERE id = 1",
        {rows.number(0) + 1, sealText(keys.fileKey, writeSettings(settings), place(rows.number(0) + 1))});
    head.rows.add(rowHash(db, keys, "practice", 1));
    writeHead(db, keys, head);
}

const std::vector<MigrationStep> steps{addStates, renewSettings};

// Takes the steps back.
void makeOlder(const std::string &file, const Keyring &keys)
{
    const Database db(file);
    Head head = readHead(db, keys);
    head.rows.remove(rowHash(db, keys, "practice", 1));
    const std::int64_t changes = db.number("SELECT changes FROM practice WHERE id = 1");
    db.run("UPDATE practice SET settings = ? WHERE id = 1",
        {sealText(keys.fileKey, "Brook and Brook", boxPlace(keys.practice, "practice", 1, "settings", changes))});
    head.rows.add(rowHash(db, keys, "practice", 1));
    writeHead(db, keys, head);
    db.run("ALTER TABLE visit DROP COLUMN state");
    db.run("PRAGMA user_version = " + std::to_string(oldest));
}

// Version, tables and every row, as they stand in the file.
std::string contentOf(const std::string &file)
{
    const Database db(file);
    std::string out = db.single("PRAGMA user_version").text(0) + "\n";
    std::vector<std::string> tables;
    Rows schema = db.run("SELECT type, name, sql FROM sqlite_master ORDER BY type, name");
    while (schema.next()) {
        out += schema.text(1) + ": " + schema.text(2) + "\n";
        if (schema.text(0) == "table")
            tables.push_back(schema.text(1));
    }
    for (const std::string &table : tables) {
        std::string columns;
        Rows info = db.run("SELECT name FROM pragma_table_info('" + table + "')");
        while (info.next())
            columns += (columns.empty() ? "quote(" : " || ',' || quote(") + info.text(0) + ")";
        Rows rows = db.run("SELECT " + columns + " FROM " + table + " ORDER BY 1");
        while (rows.next())
            out += table + " " + rows.text(0) + "\n";
    }
    return out;
}

class PracticeMigration : public PracticeFileTest {
protected:
    void SetUp() override
    {
        PracticeFileTest::SetUp();
        auto practice = made();
        ASSERT_TRUE(practice);
        m_keys = practice->keys();
        for (const char *name : {"Ada Quill", "Bo Stone"}) {
            const auto patient = practice->addPatient(person(name, "")).value();
            ASSERT_TRUE(practice->sign(practice->addVisit(patient, "one").value()).ok());
            ASSERT_TRUE(practice->addVisit(patient, "a draft").ok());
        }
        m_state = stateOf(*practice);
        practice.reset();
        makeOlder(file(), *m_keys);
        m_older = contentOf(file());
    }

    [[nodiscard]] Result<Done> migrated(const std::string &path, const std::vector<MigrationStep> &by) const
    {
        return guarded([&]() -> Done {
            const Database db(path);
            migrate(db, *m_keys, oldest, by);
            return {};
        });
    }

    void expectOfToday(const std::string &path) const
    {
        const auto practice = Practice::open(path, m_keys);
        ASSERT_TRUE(practice.ok()) << inWords(practice.error());
        const auto verified = practice.value()->verify();
        ASSERT_TRUE(verified.ok()) << inWords(verified.error());
        ASSERT_EQ(stateOf(*practice.value()), m_state);
    }

    [[nodiscard]] std::filesystem::path fresh(const std::string &name) const
    {
        const std::filesystem::path out = std::filesystem::path(folder()) / name;
        std::filesystem::remove_all(out);
        std::filesystem::create_directories(out);
        return out;
    }

    std::shared_ptr<const Keyring> m_keys;
    std::string m_state; // of the file of today
    std::string m_older; // as it stands in the older file
};

} // namespace

TEST_F(PracticeMigration, BringsAnOlderFileToThePresentVersion)
{
    EXPECT_FALSE(Practice::open(file(), m_keys).ok()) << "it is older";
    const auto done = migrated(file(), steps);
    ASSERT_TRUE(done.ok()) << inWords(done.error());
    expectOfToday(file());
    ASSERT_TRUE(unlocked());
    const std::string once = contentOf(file());
    ASSERT_TRUE(migrated(file(), steps).ok());
    EXPECT_EQ(contentOf(file()), once) << "and then no more";
}

TEST_F(PracticeMigration, DoesTheStepsThatAreLeft)
{
    int calls = 0;
    const MigrationStep counts = [&](const Database &, const Keyring &) { ++calls; };
    {
        const Database db(file());
        db.run("PRAGMA user_version = " + std::to_string(oldest + 1));
    }
    ASSERT_TRUE(
        migrated(file(), {[](const Database &, const Keyring &) { ADD_FAILURE() << "that was done before"; }, counts}).ok());
    EXPECT_EQ(calls, 1);
    ASSERT_TRUE(migrated(file(), {counts}).ok()) << "to a version before that of the file";
    EXPECT_EQ(calls, 1);
    EXPECT_EQ(contentOf(file()).substr(0, 2), std::to_string(practiceVersion) + "\n");
}

TEST_F(PracticeMigration, AStepThatFailsLeavesTheFileAsItWas)
{
    const MigrationStep fails = [](const Database &db, const Keyring &keys) {
        renewSettings(db, keys);
        throw Error{ErrorCode::Storage, db.file(), "as the test wants it"};
    };
    const MigrationStep brokenSql = [](const Database &db, const Keyring &) { db.run("DROP TABLE none"); };
    const MigrationStep dangles = [](const Database &db, const Keyring &) { db.run("DELETE FROM patient WHERE id = 1"); };
    EXPECT_EQ(migrated(file(), {addStates, fails}).error().detail, "as the test wants it");
    EXPECT_EQ(contentOf(file()), m_older);
    EXPECT_EQ(migrated(file(), {addStates, brokenSql}).error().code, ErrorCode::Storage);
    EXPECT_EQ(contentOf(file()), m_older);
    EXPECT_EQ(migrated(file(), {addStates, dangles}).error().code, ErrorCode::Tampered);
    EXPECT_EQ(contentOf(file()), m_older);
    ASSERT_TRUE(migrated(file(), steps).ok());
    expectOfToday(file());
}

TEST_F(PracticeMigration, APowerCutAtAnySyncLeavesTheOldVersionOrTheNew)
{
    const auto watched = fresh("watched");
    std::filesystem::copy_file(file(), watched / "p.raphe");
    const StorageShim shim(watched);
    ASSERT_TRUE(migrated((watched / "p.raphe").string(), steps).ok());
    std::size_t old = 0;
    std::size_t present = 0;
    for (std::size_t cut = 0; cut <= shim.record().syncs(); ++cut)
        for (const Cut how : {Cut::None, Cut::All, Cut::Subset, Cut::Torn})
            for (unsigned seed = 0; seed < (how == Cut::Subset || how == Cut::Torn ? 20U : 1U); ++seed) {
                SCOPED_TRACE("after sync " + std::to_string(cut) + ", " + std::to_string(static_cast<int>(how)) + ", seed "
                    + std::to_string(seed));
                const auto left = fresh("left");
                const std::string practiceFile = (left / "p.raphe").string();
                shim.record().materialise(left, cut, seed, how);
                if (contentOf(practiceFile) == m_older) {
                    ++old;
                    const auto again = migrated(practiceFile, steps);
                    ASSERT_TRUE(again.ok()) << inWords(again.error());
                } else {
                    ++present;
                }
                expectOfToday(practiceFile);
                if (HasFatalFailure())
                    return;
            }
    std::cout << shim.record().syncs() << " syncs; the old version was left " << old << " times, the new one " << present << "\n";
    EXPECT_GT(old, 0U);
    EXPECT_GT(present, 0U);
}

TEST_F(PracticeMigration, AFailingDiskLeavesTheOldVersionOrTheNew)
{
    int faults = 0;
    int reported = 0;
    for (const Operation operation : {Operation::Write, Operation::Sync, Operation::Truncate, Operation::Remove})
        for (const Failure failure : {Failure::IoError, Failure::DiskFull, Failure::ShortWrite})
            for (std::size_t number = 1;; ++number) {
                SCOPED_TRACE("operation " + std::to_string(static_cast<int>(operation)) + " number " + std::to_string(number));
                const auto watched = fresh("watched");
                const std::string practiceFile = (watched / "p.raphe").string();
                std::filesystem::copy_file(file(), practiceFile);
                StorageShim shim(watched);
                shim.faults().arm({operation, number, failure, false});
                const auto done = migrated(practiceFile, steps);
                const bool came = shim.faults().failures() > 0;
                shim.faults().disarm();
                if (!came)
                    break; // there are not so many
                ++faults;
                reported += done.ok() ? 0 : 1;
                if (contentOf(practiceFile) == m_older) {
                    ASSERT_FALSE(done.ok()) << "it was said to be done";
                    ASSERT_TRUE(migrated(practiceFile, steps).ok());
                }
                expectOfToday(practiceFile);
                if (HasFatalFailure())
                    return;
            }
    std::cout << faults << " faults came, " << reported << " were reported\n";
    EXPECT_GT(faults, 10);
    EXPECT_GT(reported, 0);
}

} // namespace raphe::test
