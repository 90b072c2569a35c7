// When the program locks: by key, when nobody touches it, when the computer has slept; not without saving first. And the daily
// back-up of the program that is open.
#include "app/raphe/Lock.h"
#include "tests/app/Window.h"

#include <QDialog>
#include <QSignalSpy>

namespace raphe::test {

namespace {

using namespace std::chrono_literals;

class Locking : public WindowTest { };

} // namespace

TEST_F(Locking, TheKeySavesAndEndsTheRound)
{
    Lock lock(session(), window());
    session().setComplaint("last words");
    QTimer::singleShot(0, [this] { key(Qt::Key_L, Qt::ControlModifier); });
    EXPECT_EQ(QApplication::exec(), Lock::exitCode);
    EXPECT_EQ(stored().complaint(), "last words");
}

TEST_F(Locking, WhatCannotBeSavedIsCoveredAndKept)
{
    Lock lock(session(), window());
    {
        const Database behind(practice());
        behind.run("ALTER TABLE visit RENAME TO hidden");
        session().setComplaint("kept words");
        lock.lock();
        QWidget *cover = QApplication::activeModalWidget();
        ASSERT_TRUE(cover);
        EXPECT_FALSE(qobject_cast<QDialog *>(cover));
        cover->close();
        EXPECT_TRUE(cover->isVisible()) << "only its buttons take it away";
        behind.run("ALTER TABLE hidden RENAME TO visit");
    }
    QTimer::singleShot(0, [] {
        for (auto *button : QApplication::activeModalWidget()->findChildren<QPushButton *>())
            if (button->text() == QLatin1String("Save and lock"))
                QTest::mouseClick(button, Qt::LeftButton);
    });
    EXPECT_EQ(QApplication::exec(), Lock::exitCode);
    EXPECT_EQ(stored().complaint(), "kept words");
}

TEST(IdleWatchTest, SpeaksWhenNobodyTouchesTheProgram)
{
    IdleWatch watch(80ms, nullptr, [] { return 0ms; });
    QSignalSpy wanted(&watch, &IdleWatch::lockWanted);
    QWidget field;
    for (int i = 0; i < 8; ++i) { // longer than the time, but never idle
        QTest::qWait(20);
        QTest::keyClick(&field, Qt::Key_A);
    }
    EXPECT_EQ(wanted.count(), 0);
    EXPECT_TRUE(wanted.wait(5000));
}

TEST(IdleWatchTest, CanBeSuspendedAndTurnedOff)
{
    IdleWatch watch(30ms, nullptr, [] { return 0ms; });
    QSignalSpy wanted(&watch, &IdleWatch::lockWanted);
    watch.suspend();
    watch.suspend();
    watch.resume();
    EXPECT_FALSE(wanted.wait(120)) << "suspended twice, resumed once";
    watch.resume();
    EXPECT_TRUE(wanted.wait(5000));
    watch.setIdle(0ms);
    EXPECT_FALSE(wanted.wait(120)) << "0 is never";
}

TEST(IdleWatchTest, SpeaksWhenTheComputerSleepsOrHasSlept)
{
    auto slept = std::make_shared<std::chrono::milliseconds>(5h);
    IdleWatch watch(0ms, nullptr, [slept] { return *slept; });
    QSignalSpy wanted(&watch, &IdleWatch::lockWanted);
    EXPECT_FALSE(wanted.wait(2500)) << "what it slept before the program began does not count";
    *slept += 10min;
    EXPECT_TRUE(wanted.wait(5000));
    wanted.clear();
    ASSERT_TRUE(QMetaObject::invokeMethod(&watch, "prepareForSleep", Q_ARG(bool, true))); // as the system says it
    EXPECT_EQ(wanted.count(), 1);
    ASSERT_TRUE(QMetaObject::invokeMethod(&watch, "prepareForSleep", Q_ARG(bool, false)));
    EXPECT_EQ(wanted.count(), 1) << "waking";
}

TEST_F(Locking, BackupsAreMadeOnceADayIntoTheFolder)
{
    const QString folder = inFolder("backups");
    ASSERT_TRUE(QDir().mkpath(folder));
    BackupRunner &backups = window().backups();
    QSignalSpy done(&backups, &BackupRunner::done);
    QSignalSpy failed(&backups, &BackupRunner::failed);
    backups.runIfDue();
    EXPECT_FALSE(backups.isRunning()) << "no folder, no schedule";
    backups.run();
    EXPECT_EQ(failed.count(), 1) << "asked for without a folder";

    PracticeSettings settings;
    settings.backupFolder = folder.toStdString();
    ASSERT_TRUE(session().practice().saveSettings(settings).ok());
    backups.readSettings();
    backups.runIfDue();
    EXPECT_TRUE(backups.isRunning());
    EXPECT_TRUE(done.wait(30'000));
    backups.runIfDue();
    EXPECT_FALSE(backups.isRunning()) << "there is one of today";
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 1);

    settings.backupFolder = (folder + QStringLiteral("/unplugged")).toStdString();
    ASSERT_TRUE(session().practice().saveSettings(settings).ok());
    backups.readSettings();
    backups.runIfDue();
    ASSERT_TRUE(failed.count() == 2 || failed.wait(30'000));
    EXPECT_TRUE(failed.last().front().toString().contains(QLatin1String("NO BACK-UP")));
    backups.runIfDue();
    EXPECT_FALSE(backups.isRunning()) << "said once a day, not every ten minutes";
}

} // namespace raphe::test
