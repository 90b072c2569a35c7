// A program that kills itself: goes through the scripted entry, makes a back-up and closes, and ends by SIGKILL at the given
// moment. A moment is before or after one call by which SQLite changes a file; the first is 1. What has been done is said on
// standard output, one line each: "made", "step N", "backed-up", "closed", and at the end how many "moments" there were.
// Arguments: folder, moment; with 0 it runs to its end.
#include "core/store/Backup.h"
#include "tests/core/store/ScriptedEntry.h"
#include "tests/support/storage/DiskCalls.h"

#include <QCoreApplication>

#include <csignal>
#include <cstdlib>
#include <iostream>

namespace {

using namespace raphe;

constexpr int exitFailure = 2;

int complain(const Error &error)
{
    std::cerr << "kill_step_writer: code " << static_cast<int>(error.code) << " at " << error.place << ": " << error.detail
              << "\n";
    return exitFailure;
}

void say(const std::string &line)
{
    std::cout << line << std::endl; // at once: this is the acknowledgement
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        std::cerr << "usage: kill_step_writer FOLDER MOMENT\n";
        return exitFailure;
    }
    const std::string folder = argv[1];
    const long fatal = std::strtol(argv[2], nullptr, 10);
    long moment = 0;
    const test::DiskCalls calls([&](const test::DiskCall &) {
        if (++moment == fatal)
            std::raise(SIGKILL);
    });
    {
        const auto made = Practice::make(folder + "/p.raphe", {}, {"ada", "Ada Brook", "right words here", leastCost});
        if (!made)
            return complain(made.error());
        say("made");
        auto steps = test::scriptedEntry();
        for (const test::Step &step : test::rarerActs("right words here", "other words here"))
            steps.push_back(step);
        for (std::size_t i = 0; i < steps.size(); ++i) {
            if (const auto done = steps[i](*made.value().practice); !done)
                return complain(done.error());
            say("step " + std::to_string(i + 1));
        }
        if (const auto done = backUp(folder + "/p.raphe", folder + "/p.raphe-backup"); !done)
            return complain(done.error());
        say("backed-up");
    }
    say("closed");
    say("moments " + std::to_string(moment));
    return 0;
}
