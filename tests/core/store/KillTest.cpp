// Kills a program in the midst of saving and looks at what is left: the practice must be whole, and no older than what
// was handed to the saver 200 ms before the kill. RAPHE_KILLS says how many kills, 50 when it is not set.
// A kill (SIGKILL) loses what the program held; it does not lose what the system had not yet brought to the disk, so
// this says nothing about a power cut.
#include "core/store/Practice.h"

#include "tests/core/store/StoreTesting.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <nlohmann/json.hpp>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <random>
#include <sstream>
#include <vector>

namespace raphe {
namespace {

constexpr double mostLost = 200; // milliseconds
constexpr unsigned seed = 20240229;

double nowMs()
{
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

struct HandedOver {
    long counter = 0;
    double at = 0; // milliseconds, steady clock
};

// The writer as a child process.
class Writer {
public:
    Writer(const std::string &file, long first)
    {
        int ends[2];
        if (pipe2(ends, O_CLOEXEC) != 0)
            return;
        m_out = ends[0];
        posix_spawn_file_actions_t actions;
        posix_spawn_file_actions_init(&actions);
        posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
        std::string program = RAPHE_KILL_WRITER;
        std::string path = file;
        std::string counter = std::to_string(first);
        char *arguments[] = {program.data(), path.data(), counter.data(), nullptr};
        if (posix_spawn(&m_process, program.c_str(), &actions, nullptr, arguments, environ) != 0)
            m_process = -1;
        posix_spawn_file_actions_destroy(&actions);
        close(ends[1]);
    }
    ~Writer()
    {
        kill();
        if (m_out >= 0)
            close(m_out);
    }
    Writer(const Writer &) = delete;
    Writer &operator=(const Writer &) = delete;

    bool started() const { return m_process > 0; }

    // Reads what comes until the time is there; false when the writer ended by itself.
    bool readUntil(double time, bool stopAtFirstLine = false)
    {
        while (true) {
            const double left = time - nowMs();
            if (left <= 0)
                return true;
            pollfd wait{m_out, POLLIN, 0};
            if (poll(&wait, 1, static_cast<int>(left) + 1) > 0 && !readSome())
                return false;
            if (stopAtFirstLine && m_text.find('\n') != std::string::npos)
                return true;
        }
    }

    // Kills it and waits for its end; the time just before the kill, and whether it was the kill that ended it.
    std::pair<double, bool> kill()
    {
        if (m_process <= 0)
            return {0, false};
        const double time = nowMs();
        ::kill(m_process, SIGKILL);
        int status = 0;
        waitpid(m_process, &status, 0);
        m_process = -1;
        return {time, WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL};
    }

    // Everything that it said it had handed over. The writer is dead; a last line that was cut off does not count.
    std::vector<HandedOver> lines()
    {
        while (readSome()) { }
        std::istringstream in(m_text.substr(0, m_text.rfind('\n') + 1));
        std::vector<HandedOver> out;
        for (HandedOver line; in >> line.counter >> line.at;)
            out.push_back(line);
        return out;
    }

private:
    bool readSome()
    {
        char buffer[4096];
        const ssize_t count = read(m_out, buffer, sizeof buffer);
        if (count > 0)
            m_text.append(buffer, static_cast<std::size_t>(count));
        return count > 0;
    }

    pid_t m_process = -1;
    int m_out = -1;
    std::string m_text;
};

class KillTest : public StoreTest {
protected:
    static int kills()
    {
        const char *wanted = std::getenv("RAPHE_KILLS");
        return wanted ? std::atoi(wanted) : 50;
    }

    void expectWhole()
    {
        PlainSql sql(file);
        EXPECT_EQ(sql.run("PRAGMA integrity_check"), "ok");
        EXPECT_EQ(sql.run("PRAGMA foreign_key_check"), "");
    }

    // The stored counter; -1 and a failed test when the document is not as the writer makes it.
    static long counterOf(const std::string &document)
    {
        const auto json = nlohmann::json::parse(document, nullptr, false);
        std::istringstream in(json.is_object() ? json.value("words", "") : "");
        long counter = -1;
        std::string rest;
        in >> counter >> rest;
        const bool whole = rest == std::string(static_cast<std::size_t>(counter % 97) * 200, 'x');
        EXPECT_TRUE(counter >= 0 && whole) << document.substr(0, 40);
        return whole ? counter : -1;
    }

    const std::string file = path("kill.practice");
};

// Opened as by its owner; null and a failed test when it does not open or does not verify.
std::unique_ptr<Practice> opened(const std::string &file)
{
    auto practice = valueOf(Practice::unlock(file, "ana", std::string_view("for the test only")));
    if (!practice)
        return nullptr;
    const auto verified = practice->verify();
    EXPECT_TRUE(verified) << testing::PrintToString(verified.error());
    return practice;
}

TEST_F(KillTest, LosesAtMostTheLastMoment)
{
    ASSERT_GT(kills(), 0);
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> moment(0, 430);
    double worst = 0;
    int telling = 0;
    for (int i = 0; i < kills(); ++i) {
        SCOPED_TRACE("kill " + std::to_string(i) + ", seed " + std::to_string(seed));
        Writer writer(file, (i + 1) * 10000L);
        ASSERT_TRUE(writer.started());
        ASSERT_TRUE(writer.readUntil(nowMs() + 10000, true)) << "the writer ended by itself";
        ASSERT_TRUE(writer.readUntil(nowMs() + moment(random))) << "the writer ended by itself";
        const auto [killed, byUs] = writer.kill();
        ASSERT_TRUE(byUs) << "the writer ended by itself";
        const auto handedOver = writer.lines();
        ASSERT_FALSE(handedOver.empty());

        expectWhole();
        const auto practice = opened(file);
        ASSERT_TRUE(practice);
        const auto visits = valueOf(practice->visits(1));
        ASSERT_EQ(visits.size(), 1U);
        const long stored = counterOf(visits[0].document);

        for (const HandedOver &line : handedOver) {
            if (line.counter <= stored)
                continue;
            const double lost = killed - line.at;
            worst = std::max(worst, lost);
            EXPECT_LE(lost, mostLost) << "stored is " << stored << ", but " << line.counter << " was handed over earlier";
            break; // the later ones lost less
        }
        telling += killed - handedOver.front().at > mostLost ? 1 : 0;
        EXPECT_LT(stored, (i + 2) * 10000L);
    }
    EXPECT_TRUE(telling > 0 || kills() < 10) << "no kill came late enough to tell anything";
    RecordProperty("worst_loss_ms", std::to_string(worst));
    std::cout << kills() << " kills, " << telling << " of them later than 200 ms after the first change; worst loss " << worst
              << " ms\n";
}

// Killed while it makes the file: what is left either opens or can be made anew, never a half practice.
TEST_F(KillTest, AKillWhileTheFileIsMadeLeavesAllOrNothing)
{
    std::mt19937 random(seed + 1);
    double longest = 60;
    int unfinished = 0;
    for (int i = 0; i < kills(); ++i) {
        SCOPED_TRACE("kill " + std::to_string(i) + ", seed " + std::to_string(seed + 1));
        for (const char *suffix : {"", "-wal", "-shm", "-journal"})
            unlink((file + suffix).c_str());
        Writer writer(file, 1);
        ASSERT_TRUE(writer.started());
        const double start = nowMs();
        if (i == 0) { // how long this machine takes to the first change
            ASSERT_TRUE(writer.readUntil(start + 10000, true));
            longest = nowMs() - start;
        } else {
            ASSERT_TRUE(writer.readUntil(start + std::uniform_real_distribution<double>(0, longest)(random)));
        }
        ASSERT_TRUE(writer.kill().second) << "the writer ended by itself";
        const bool started = !writer.lines().empty();
        unfinished += started ? 0 : 1;
        if (!started) { // it may not be there yet: then it can be made anew
            const auto made = Practice::unlock(file, "ana", std::string_view("for the test only"));
            if (!made) {
                ASSERT_TRUE(Practice::make(file, {}, {"ana", "Ana", "for the test only", leastCost}));
            }
        }
        const auto practice = opened(file);
        ASSERT_TRUE(practice);
        EXPECT_TRUE(practice->patients());
        expectWhole();
    }
    EXPECT_TRUE(unfinished > 0 || kills() < 10) << "no kill came early enough to tell anything";
}

} // namespace
} // namespace raphe
