// Kills a program before and after each call by which SQLite changes a file during a scripted entry: writes, syncs,
// truncations, removals, and the openings that make a file. Whatever was said to be done is then there, of the step under way
// all or nothing, and work goes on. Some 40 moments, evenly spread; RAPHE_EVERY_STEP=1 takes all.
// A kill loses what the program held, not what the system had not yet brought to the disk: power cuts are PracticeStorageTest's.
#include "core/store/Backup.h"
#include "tests/core/store/PracticeTesting.h"
#include "tests/core/store/ScriptedEntry.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <iostream>
#include <sstream>

namespace raphe::test {

namespace {

constexpr std::size_t spread = 40; // moments in a small run
constexpr std::string_view passphrase = "right words here";
constexpr std::string_view nextPassphrase = "other words here";

// How the writer ended, and what it had said by then.
struct Ended {
    bool byKill = false;
    bool well = false;
    bool made = false;
    std::size_t steps = 0;
    bool backedUp = false;
    bool closed = false;
    std::size_t moments = 0;
};

Ended heard(const std::string &said)
{
    Ended out;
    std::istringstream in(said);
    for (std::string line; std::getline(in, line);) {
        out.made |= line == "made";
        out.backedUp |= line == "backed-up";
        out.closed |= line == "closed";
        std::istringstream words(line);
        std::string word;
        std::size_t number = 0;
        if (words >> word >> number)
            (word == "step" ? out.steps : out.moments) = number;
    }
    return out;
}

Ended runWriter(const std::filesystem::path &folder, std::size_t moment)
{
    int ends[2];
    if (pipe2(ends, O_CLOEXEC) != 0)
        return {};
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    std::string program = RAPHE_KILL_STEP_WRITER;
    std::string where = folder.string();
    std::string when = std::to_string(moment);
    char *arguments[] = {program.data(), where.data(), when.data(), nullptr};
    pid_t process = -1;
    const bool started = posix_spawn(&process, program.c_str(), &actions, nullptr, arguments, environ) == 0;
    posix_spawn_file_actions_destroy(&actions);
    close(ends[1]);
    std::string said;
    char buffer[4096];
    for (ssize_t count = 0; started && (count = read(ends[0], buffer, sizeof buffer)) > 0;)
        said.append(buffer, static_cast<std::size_t>(count));
    close(ends[0]);
    int status = 0;
    if (!started || waitpid(process, &status, 0) != process)
        return {};
    Ended out = heard(said);
    out.byKill = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    out.well = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    return out;
}

class KillSteps : public PracticeFileTest {
protected:
    [[nodiscard]] std::filesystem::path fresh(const std::string &name) const
    {
        const std::filesystem::path out = std::filesystem::path(folder()) / name;
        std::filesystem::remove_all(out);
        std::filesystem::create_directories(out);
        return out;
    }

    // With the passphrase or the one that it is changed to.
    [[nodiscard]] static Result<std::unique_ptr<Practice>> opened(const std::string &file)
    {
        auto practice = Practice::unlock(file, "ada", passphrase);
        return practice.ok() ? std::move(practice) : Practice::unlock(file, "ada", nextPassphrase);
    }

    // What a reader sees after each step, and before the first; from a run without a kill.
    [[nodiscard]] std::vector<std::string> learnStates() const
    {
        auto made = Practice::make((fresh("learn") / "p.raphe").string(), {}, owner());
        if (!made.ok())
            return {};
        Practice &practice = *made.value().practice;
        std::vector<std::string> states{stateOf(practice)};
        auto steps = scriptedEntry();
        for (const Step &step : rarerActs(std::string(passphrase), std::string(nextPassphrase)))
            steps.push_back(step);
        for (const Step &step : steps) {
            const auto done = step(practice);
            if (!done.ok()) {
                ADD_FAILURE() << inWords(done.error());
                return {};
            }
            states.push_back(stateOf(practice));
        }
        return states;
    }
};

} // namespace

TEST_F(KillSteps, LoseNothingThatWasSaidToBeDone)
{
    const std::vector<std::string> states = learnStates();
    ASSERT_GT(states.size(), 20U);
    const Ended whole = runWriter(fresh("killed"), 0);
    ASSERT_TRUE(whole.well && whole.closed) << "the writer does not come to its end";
    ASSERT_EQ(whole.steps + 1, states.size());
    ASSERT_GT(whole.moments, 200U);

    const char *every = std::getenv("RAPHE_EVERY_STEP");
    const bool all = every && std::string(every) == "1";
    const std::size_t tries = all ? whole.moments : std::min(spread, whole.moments);
    std::size_t whileMade = 0;
    std::size_t halfDone = 0; // the step under way was there, although it had not been said
    for (std::size_t i = 0; i < tries; ++i) {
        const std::size_t moment = 1 + (tries == 1 ? 0 : i * (whole.moments - 1) / (tries - 1)); // the first and the last too
        SCOPED_TRACE("moment " + std::to_string(moment) + " of " + std::to_string(whole.moments));
        const auto where = fresh("killed");
        const std::string practiceFile = (where / "p.raphe").string();
        const Ended ended = runWriter(where, moment);
        ASSERT_TRUE(ended.byKill) << "the writer ended by itself";

        auto practice = opened(practiceFile);
        if (!ended.made && !practice.ok()) { // not there yet, and nothing in the way of making it
            ++whileMade;
            const auto again = Practice::make(practiceFile, {}, owner());
            ASSERT_TRUE(again.ok()) << inWords(again.error());
            continue;
        }
        ASSERT_TRUE(practice.ok()) << inWords(practice.error());
        const auto verified = practice.value()->verify();
        ASSERT_TRUE(verified.ok()) << inWords(verified.error());
        const std::string state = stateOf(*practice.value());
        const bool isNext = ended.steps + 1 < states.size() && state == states[ended.steps + 1];
        ASSERT_TRUE(state == states[ended.steps] || isNext)
            << "after step " << ended.steps << " neither what was said to be done, nor "
            << "the next:\n"
            << state << "\nsaid:\n"
            << states[ended.steps];
        halfDone += isNext ? 1 : 0;

        const std::string backup = (where / "p.raphe-backup").string();
        if (std::filesystem::exists(backup)) { // under its name only when it is whole
            const auto checked = checkWithoutKey(backup);
            ASSERT_TRUE(checked.ok()) << inWords(checked.error());
        } else {
            ASSERT_FALSE(ended.backedUp);
        }
        PatientRecord another;
        another.name = "Cy Reed";
        const auto added = practice.value()->addPatient(another);
        ASSERT_TRUE(added.ok()) << inWords(added.error());
        const auto copied = backUp(practiceFile, backup); // also over what is left of one that was cut off
        ASSERT_TRUE(copied.ok()) << inWords(copied.error());
        practice.value().reset();
        EXPECT_FALSE(std::filesystem::exists(practiceFile + "-wal")) << "the log is brought in and gone";
    }
    std::cout << tries << " kills at " << whole.moments << " moments: " << whileMade << " while the file was made, " << halfDone
              << " between a step's commit and its acknowledgement\n";
    EXPECT_GT(whileMade, 0U);
    EXPECT_GT(halfDone, 0U);
}

} // namespace raphe::test
