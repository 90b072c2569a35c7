// Back-ups: made while the practice is in use, checked without a key, opened on another machine, rotated; erasures outlive them.
#include "tests/core/store/PracticeTesting.h"

#include "core/store/BackupFolder.h"

#include <QDate>

#include <fstream>
#include <set>

namespace raphe::test {

namespace {

using Backups = PracticeFileTest;

} // namespace

TEST_F(Backups, AreMadeInUseAndRestoredElsewhere)
{
    auto practice = made();
    const auto patient = practice->addPatient(person("Ada Quill", "")).value();
    const auto visit = practice->addVisit(patient, "one").value();
    ASSERT_TRUE(practice->sign(visit).ok());
    const std::string target = folder() + "/" + backupName(file(), "2026-11-27T0930");
    EXPECT_TRUE(target.ends_with("/test-2026-11-27T0930.raphe-backup"));
    const auto done = backUp(file(), target);
    ASSERT_TRUE(done.ok()) << inWords(done.error());
    EXPECT_FALSE(std::filesystem::exists(target + ".unfinished"));
    EXPECT_EQ(checkWithoutKey(target).value(), 2) << "entries: the file was made, one visit signed";

    const std::string elsewhere = folder() + "/elsewhere.raphe";
    const auto restored = restore(target, elsewhere);
    ASSERT_TRUE(restored.ok()) << inWords(restored.error());
    EXPECT_TRUE(restored.value().empty());
    NewAccount again = owner();
    again.passphrase = "another machine";
    auto recovered = Practice::recover(elsewhere, RecoveryKey::parse(recovery()).value(), again);
    ASSERT_TRUE(recovered.ok()) << inWords(recovered.error());
    EXPECT_EQ(recovered.value()->visit(visit).value().document, "one");
    EXPECT_TRUE(recovered.value()->verify().ok());
}

TEST_F(Backups, NameThePatientsThatWereErasedSince)
{
    auto practice = made();
    const auto stays = practice->addPatient(person("Ada Quill", "")).value();
    const auto goes = practice->addPatient(person("Bo Stone", "")).value();
    const std::string target = folder() + "/b.raphe-backup";
    ASSERT_TRUE(backUp(file(), target).ok());
    ASSERT_TRUE(practice->erase(goes, "asked for it").ok());
    practice.reset();
    const auto restored = restore(target, file());
    ASSERT_TRUE(restored.ok()) << inWords(restored.error());
    EXPECT_EQ(restored.value(), std::vector<std::int64_t>{goes});
    EXPECT_TRUE(std::filesystem::exists(file() + ".before-restore"));
    practice = unlocked();
    ASSERT_TRUE(practice);
    EXPECT_EQ(practice->patients().value().size(), 2U);
    ASSERT_TRUE(practice->erase(goes, "erased before the restore").ok());
    ASSERT_EQ(practice->patients().value().size(), 1U);
    EXPECT_EQ(practice->patients().value()[0].id, stays);
    EXPECT_TRUE(practice->verify().ok());
}

TEST_F(Backups, OfADamagedFileFailAndLeaveTheOldOne)
{
    static_cast<void>(made());
    const std::string target = folder() + "/b.raphe-backup";
    ASSERT_TRUE(backUp(file(), target).ok());
    {
        const Database db(file());
        db.run("UPDATE entry SET made_at = made_at + 1");
    }
    EXPECT_EQ(backUp(file(), target).error().code, ErrorCode::Tampered);
    EXPECT_TRUE(checkWithoutKey(target).ok()) << "the good one stays";
    EXPECT_FALSE(std::filesystem::exists(target + ".unfinished"));
    std::ofstream(folder() + "/other.raphe-backup") << "not a database, by far, although it is a file";
    EXPECT_EQ(restore(folder() + "/other.raphe-backup", file()).error().code, ErrorCode::NotAPractice);
    EXPECT_EQ(restore(folder() + "/none.raphe-backup", file()).error().code, ErrorCode::CannotRead);
    EXPECT_EQ(backUp(file(), "/no/such/folder/b").error().code, ErrorCode::CannotWrite);
}

TEST_F(Backups, StopWhenAsked)
{
    static_cast<void>(made());
    const std::string target = folder() + "/b.raphe-backup";
    EXPECT_EQ(backUp(file(), target, [](std::int64_t) { return false; }).error().code, ErrorCode::NotAllowed);
    EXPECT_FALSE(std::filesystem::exists(target));
}

TEST(BackupRotation, KeepsSevenDaysFiveWeeksTwelveMonths)
{
    std::vector<std::string> names;
    for (QDate day(2025, 1, 1); day <= QDate(2026, 11, 27); day = day.addDays(1))
        for (const char *time : {"T0800", "T1700"})
            names.push_back("p-" + day.toString(Qt::ISODate).toStdString() + time + ".raphe-backup");
    names.emplace_back("p-notes.raphe-backup");
    names.emplace_back("letter.txt");
    const auto gone = superseded(names);
    const std::set<std::string> removed(gone.begin(), gone.end());
    std::vector<std::string> kept;
    for (const std::string &name : names)
        if (!removed.contains(name))
            kept.push_back(name);
    // 7 days; of the weeks those of 15, 8, 1 November and 25 October (that of the 22nd is among the days, this week's too);
    // the last days of October 2026 back to December 2025.
    EXPECT_EQ(kept,
        (std::vector<std::string>{"p-2025-12-31T1700.raphe-backup", "p-2026-01-31T1700.raphe-backup",
            "p-2026-02-28T1700.raphe-backup", "p-2026-03-31T1700.raphe-backup", "p-2026-04-30T1700.raphe-backup",
            "p-2026-05-31T1700.raphe-backup", "p-2026-06-30T1700.raphe-backup", "p-2026-07-31T1700.raphe-backup",
            "p-2026-08-31T1700.raphe-backup", "p-2026-09-30T1700.raphe-backup", "p-2026-10-31T1700.raphe-backup",
            "p-2026-11-01T1700.raphe-backup", "p-2026-11-08T1700.raphe-backup", "p-2026-11-15T1700.raphe-backup",
            "p-2026-11-21T1700.raphe-backup", "p-2026-11-22T1700.raphe-backup", "p-2026-11-23T1700.raphe-backup",
            "p-2026-11-24T1700.raphe-backup", "p-2026-11-25T1700.raphe-backup", "p-2026-11-26T1700.raphe-backup",
            "p-2026-11-27T1700.raphe-backup", "p-notes.raphe-backup", "letter.txt"}));
}

TEST_F(Backups, AFolderKeepsThemAndTheirRotation)
{
    ASSERT_TRUE(made());
    const std::string into = folder() + "/backups";
    std::filesystem::create_directory(into);
    EXPECT_EQ(lastBackupDay(into, file()), "");
    for (int day = 10; day <= 20; ++day) {
        const auto done = backUpInto(into, file(), "2026-11-" + std::to_string(day) + "T0930");
        ASSERT_TRUE(done.ok()) << inWords(done.error());
        EXPECT_TRUE(std::filesystem::exists(done.value().file));
    }
    std::ofstream(into + "/test-notes-2026-11-01T0930.raphe-backup") << "of a practice called test-notes";
    EXPECT_EQ(lastBackupDay(into, file()), "2026-11-20");
    ASSERT_TRUE(backUpInto(into, file(), "2026-11-21T0930").ok());
    std::set<std::string> left;
    for (const auto &entry : std::filesystem::directory_iterator(into))
        left.insert(entry.path().filename().string());
    // Seven days back from the 21st, of which the 15th is the newest of its ISO week too, and what is not ours.
    EXPECT_EQ(left.size(), 8U) << testing::PrintToString(left);
    EXPECT_TRUE(left.contains("test-2026-11-15T0930.raphe-backup"));
    EXPECT_FALSE(left.contains("test-2026-11-14T0930.raphe-backup"));
    EXPECT_TRUE(left.contains("test-notes-2026-11-01T0930.raphe-backup"));
    EXPECT_EQ(backUpInto(folder() + "/none", file(), "2026-11-22T0930").error().code, ErrorCode::CannotWrite);
}

} // namespace raphe::test
