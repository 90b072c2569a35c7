// The saver: returns at once, joins what comes together, writes everything else, and says what failed.
#include "core/store/VisitSaver.h"

#include "tests/core/store/PracticeTesting.h"

#include <QFile>

#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

namespace raphe::test {
namespace {

using Clock = std::chrono::steady_clock;
using namespace std::chrono_literals;

// Collects what the saver reports, and lets a test wait for it.
class Reports {
public:
    auto callback()
    {
        return [this](const Result<Done> &result) {
            {
                const std::lock_guard lock(m_mutex);
                m_results.push_back(result);
                m_thread = std::this_thread::get_id();
            }
            m_came.notify_all();
        };
    }

    bool waitFor(std::size_t count, std::chrono::milliseconds most = 10s)
    {
        std::unique_lock lock(m_mutex);
        return m_came.wait_for(lock, most, [&] { return m_results.size() >= count; });
    }

    std::vector<Result<Done>> all()
    {
        const std::lock_guard lock(m_mutex);
        return m_results;
    }

    std::thread::id thread()
    {
        const std::lock_guard lock(m_mutex);
        return m_thread;
    }

private:
    std::mutex m_mutex;
    std::condition_variable m_came;
    std::vector<Result<Done>> m_results;
    std::thread::id m_thread;
};

class VisitSaverTest : public PracticeFileTest {
protected:
    void SetUp() override
    {
        PracticeFileTest::SetUp();
        practice = made();
        ASSERT_TRUE(practice);
        keys = practice->keys();
        patient = practice->addPatient(person("Ana", "")).value();
        visit = addVisit();
    }

    std::int64_t addVisit() { return practice->addVisit(patient, "as it was").value(); }
    std::string stored(std::int64_t id) { return practice->visit(id).value().document; }
    PracticeOpener opener() const { return opener(file()); }
    PracticeOpener opener(const std::string &file) const
    {
        return [file, keys = keys] { return Practice::open(file, keys); };
    }

    std::unique_ptr<Practice> practice;
    std::shared_ptr<const Keyring> keys;
    std::int64_t patient = 0;
    std::int64_t visit = 0;
    Reports reports;
};

TEST_F(VisitSaverTest, SavesByItselfInItsOwnThread)
{
    VisitSaver saver(opener(), reports.callback());
    static_cast<void>(saver.flush()); // now the thread is asleep and must be woken
    const auto start = Clock::now();
    saver.save(visit, "new");
    ASSERT_TRUE(reports.waitFor(1));
    EXPECT_GE(Clock::now() - start, VisitSaver::coalesce) << "did not wait for what may follow";
    EXPECT_TRUE(reports.all()[0]);
    EXPECT_EQ(stored(visit), "new");
    EXPECT_NE(reports.thread(), std::this_thread::get_id());
}

TEST_F(VisitSaverTest, FlushDoesNotReturnBeforeItIsWritten)
{
    VisitSaver saver(opener(), reports.callback());
    for (int i = 0; i < 20; ++i) {
        const std::string document = "number " + std::to_string(i);
        saver.save(visit, document);
        static_cast<void>(saver.flush());
        ASSERT_EQ(stored(visit), document);
        ASSERT_EQ(reports.all().size(), static_cast<std::size_t>(i) + 1);
    }
    static_cast<void>(saver.flush()); // nothing to do
    EXPECT_EQ(reports.all().size(), 20U);
}

TEST_F(VisitSaverTest, FlushDoesNotWaitForTheWindow)
{
    VisitSaver saver(opener(), reports.callback());
    static_cast<void>(saver.flush()); // the thread has opened its store
    auto best = Clock::duration::max();
    for (int i = 0; i < 10; ++i) {
        const auto start = Clock::now();
        saver.save(visit, std::to_string(i));
        static_cast<void>(saver.flush());
        best = std::min(best, Clock::now() - start);
    }
    EXPECT_LT(best, VisitSaver::coalesce);
}

TEST_F(VisitSaverTest, JoinsChangesThatComeTogether)
{
    VisitSaver saver(opener(), reports.callback());
    const auto start = Clock::now();
    for (int i = 0; i < 1000; ++i)
        saver.save(visit, "change " + std::to_string(i));
    static_cast<void>(saver.flush());
    const auto windows = (Clock::now() - start) / VisitSaver::coalesce;
    EXPECT_LE(reports.all().size(), static_cast<std::size_t>(windows) + 2);
    EXPECT_EQ(stored(visit), "change 999");
}

TEST_F(VisitSaverTest, SteadyChangesDoNotPutOffTheWrite)
{
    VisitSaver saver(opener(), reports.callback());
    const auto giveUp = Clock::now() + 10s;
    int i = 0;
    do
        saver.save(visit, "change " + std::to_string(++i));
    while (!reports.waitFor(2, 10ms) && Clock::now() < giveUp);
    EXPECT_GE(reports.all().size(), 2U) << "nothing was written in the midst of changes";
    EXPECT_EQ(stored(visit).substr(0, 7), "change ");
}

TEST_F(VisitSaverTest, WritesEveryVisit)
{
    std::vector<std::int64_t> visits;
    for (int i = 0; i < 10; ++i)
        visits.push_back(addVisit());
    VisitSaver saver(opener(), reports.callback());
    for (int round = 0; round < 3; ++round)
        for (const auto id : visits)
            saver.save(id, std::to_string(round) + " of " + std::to_string(id));
    static_cast<void>(saver.flush());
    for (const auto id : visits)
        EXPECT_EQ(stored(id), "2 of " + std::to_string(id));
    EXPECT_EQ(stored(visit), "as it was");
}

TEST_F(VisitSaverTest, TheDestructorSavesWhatIsPending)
{
    const auto other = addVisit();
    {
        VisitSaver saver(opener(), reports.callback());
        saver.save(visit, "last words");
        saver.save(other, "and these");
    }
    EXPECT_EQ(reports.all().size(), 2U);
    EXPECT_EQ(stored(visit), "last words");
    EXPECT_EQ(stored(other), "and these");
    {
        const VisitSaver unused(opener(), {});
    }
}

TEST_F(VisitSaverTest, WorksWithoutAListener)
{
    VisitSaver saver(opener(), {});
    saver.save(visit, "unheard");
    static_cast<void>(saver.flush());
    EXPECT_EQ(stored(visit), "unheard");
}

TEST_F(VisitSaverTest, SaveReturnsAtOnceWhileTheFileIsBusy)
{
    VisitSaver saver(opener(), reports.callback());
    static_cast<void>(saver.flush());
    const Database other(file());
    other.run("BEGIN IMMEDIATE");
    const auto start = Clock::now();
    for (int i = 0; i < 100; ++i) {
        saver.save(visit, "while busy " + std::to_string(i));
        ASSERT_LT(Clock::now() - start, 1s) << "the driver waits five seconds for a busy file";
    }
    other.run("COMMIT");
    static_cast<void>(saver.flush());
    EXPECT_EQ(stored(visit), "while busy 99");
}

TEST_F(VisitSaverTest, ReportsAVisitThatDoesNotExistOnce)
{
    VisitSaver saver(opener(), reports.callback());
    saver.save(77, "nowhere");
    saver.save(visit, "somewhere");
    static_cast<void>(saver.flush());
    static_cast<void>(saver.flush());
    const auto results = reports.all();
    ASSERT_EQ(results.size(), 2U);
    EXPECT_TRUE(results[0]);
    ASSERT_FALSE(results[1]);
    EXPECT_EQ(results[1].error().code, ErrorCode::UnknownId);
    EXPECT_EQ(results[1].error().detail, "77");
    EXPECT_EQ(stored(visit), "somewhere");
}

TEST_F(VisitSaverTest, AMissingFileIsReportedAndNotMadeAnew)
{
    const std::string missing = folder() + "/unplugged.raphe";
    VisitSaver saver(opener(missing), reports.callback());
    saver.save(visit, "x");
    static_cast<void>(saver.flush());
    ASSERT_EQ(reports.all().size(), 1U);
    ASSERT_FALSE(reports.all()[0]);
    EXPECT_EQ(reports.all()[0].error().code, ErrorCode::CannotRead);
    EXPECT_EQ(reports.all()[0].error().place, missing);
    EXPECT_FALSE(QFile::exists(QString::fromStdString(missing)));
}

TEST_F(VisitSaverTest, WhatFailedIsTriedAgain)
{
    practice.reset();
    const QString here = QString::fromStdString(file());
    const QString away = here + QStringLiteral(".away");
    ASSERT_TRUE(QFile::rename(here, away));
    const auto flushed = [&](VisitSaver &saver) {
        const bool all = saver.flush();
        EXPECT_EQ(all, reports.all().back().ok());
        return all;
    };
    {
        VisitSaver saver(opener(), reports.callback());
        saver.save(visit, "kept by itself");
        EXPECT_FALSE(flushed(saver));
        ASSERT_TRUE(QFile::rename(away, here));
        ASSERT_TRUE(reports.waitFor(2));
        EXPECT_TRUE(reports.all()[1]);
    }
    ASSERT_TRUE(QFile::rename(here, away));
    {
        VisitSaver saver(opener(), reports.callback());
        saver.save(visit, "old");
        EXPECT_FALSE(flushed(saver));
        saver.save(visit, "newer");
        ASSERT_TRUE(QFile::rename(away, here));
        EXPECT_TRUE(flushed(saver));
    }
    practice = unlocked();
    ASSERT_TRUE(practice);
    EXPECT_EQ(stored(visit), "newer");
}

TEST_F(VisitSaverTest, WhatFailedDoesNotReplaceANewerDocument)
{
    practice.reset();
    const QString here = QString::fromStdString(file());
    const QString away = here + QStringLiteral(".away");
    ASSERT_TRUE(QFile::rename(here, away));
    VisitSaver *handle = nullptr;
    VisitSaver saver(opener(), [&](const Result<Done> &result) {
        if (!result) // while this write is still going on
            handle->save(visit, "newer");
    });
    handle = &saver;
    saver.save(visit, "older");
    static_cast<void>(saver.flush());
    ASSERT_TRUE(QFile::rename(away, here));
    static_cast<void>(saver.flush());
    practice = unlocked();
    ASSERT_TRUE(practice);
    EXPECT_EQ(stored(visit), "newer");
}

} // namespace
} // namespace raphe::test
