// A program to be killed: hands a new document to the saver every few milliseconds and says so on standard output,
// one line "counter milliseconds" each (steady clock, which on Linux all programs share), written after the hand-over.
// Arguments: practice file, first counter. Makes the practice, its patient and its visit when they are missing.
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

// The counter, then as many 'x' as the counter tells, so that a torn or mixed document gives itself away.
std::string document(long counter)
{
    return "{\"date\":\"2024-01-01\",\"words\":\"" + std::to_string(counter) + " "
        + std::string(static_cast<std::size_t>(counter % 97) * 200, 'x') + "\"}";
}

// Of a sealed practice with a cheap passphrase, which is made when it is missing.
raphe::PracticeOpener sealedOpener(const std::string &file)
{
    constexpr std::string_view words = "for the test only";
    auto practice = raphe::Practice::unlock(file, "ana", words);
    if (!practice) {
        auto made = raphe::Practice::make(file, {}, {"ana", "Ana", std::string(words), raphe::leastCost});
        if (!made)
            std::exit(complain(made.error()));
        practice = std::move(made.value().practice);
    }
    return [file, keys = practice.value()->keys()] { return raphe::Practice::open(file, keys); };
}

// The visit to write to: the first of the first patient.
raphe::Result<std::int64_t> theVisit(raphe::Practice &practice)
{
    const auto patients = practice.patients();
    if (!patients)
        return patients.error();
    raphe::PatientRecord ana;
    ana.name = "Ana";
    const auto patient =
        patients.value().empty() ? practice.addPatient(ana) : raphe::Result<std::int64_t>(patients.value()[0].id);
    if (!patient)
        return patient.error();
    const auto visits = practice.visits(patient.value());
    if (!visits)
        return visits.error();
    return visits.value().empty() ? practice.addVisit(patient.value(), document(0)) : visits.value().back().id;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        std::cerr << "usage: kill_writer PRACTICE FIRST\n";
        return exitFailure;
    }
    const auto opener = sealedOpener(argv[1]);
    auto practice = opener();
    if (!practice)
        return complain(practice.error());
    const auto visit = theVisit(*practice.value());
    if (!visit)
        return complain(visit.error());

    raphe::VisitSaver saver(opener, [](const raphe::Result<raphe::Done> &result) {
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
