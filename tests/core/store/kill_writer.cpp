// A program to be killed: hands a new document to the saver every few milliseconds and says so on standard output,
// one line "counter milliseconds" each (steady clock, which on Linux all programs share), written after the hand-over.
// Arguments: practice file, first counter. Makes the practice, its patient and its visit when they are missing.
#include "core/store/PracticeStore.h"
#include "core/store/VisitSaver.h"

#include <QCoreApplication>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <thread>

namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds pace{4};
constexpr int exitFailure = 2;

int complain(const raphe::Error &error)
{
    std::cerr << "kill_writer: code " << static_cast<int>(error.code) << " at " << error.place << ": " << error.detail << "\n";
    return exitFailure;
}

// The visit to write to: the first of the first patient.
raphe::Result<std::int64_t> theVisit(raphe::PracticeStore &store)
{
    const auto patients = store.patients();
    if (!patients)
        return patients.error();
    const auto patient =
        patients.value().empty() ? store.addPatient("Ana", "") : raphe::Result<std::int64_t>(patients.value()[0].id);
    if (!patient)
        return patient.error();
    const auto visits = store.visits(patient.value());
    if (!visits)
        return visits.error();
    return visits.value().empty() ? store.addVisit(patient.value(), "2024-01-01", "0 ") : visits.value().back().id;
}

// The counter, then as many 'x' as the counter tells, so that a torn or mixed document gives itself away.
std::string document(long counter)
{
    return std::to_string(counter) + " " + std::string(static_cast<std::size_t>(counter % 97) * 200, 'x');
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        std::cerr << "usage: kill_writer PRACTICE FIRST\n";
        return exitFailure;
    }
    auto store = raphe::openPractice(argv[1]);
    if (!store)
        return complain(store.error());
    const auto visit = theVisit(*store.value());
    if (!visit)
        return complain(visit.error());

    raphe::VisitSaver saver(argv[1], [](const raphe::Result<raphe::Done> &result) {
        if (!result)
            std::exit(complain(result.error()));
    });
    auto next = Clock::now();
    for (long counter = std::strtol(argv[2], nullptr, 10);; ++counter) {
        saver.save(visit.value(), document(counter));
        const auto now = std::chrono::duration<double, std::milli>(Clock::now().time_since_epoch());
        std::printf("%ld %.3f\n", counter, now.count());
        if (std::fflush(stdout) != 0)
            return exitFailure;
        next += pace;
        std::this_thread::sleep_until(next);
    }
}
