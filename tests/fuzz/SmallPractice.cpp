#include "tests/fuzz/SmallPractice.h"

#include "tests/fuzz/Expect.h"

#include <QCoreApplication>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace raphe::fuzz {

namespace {

template <class T> T must(Result<T> result)
{
    if (!result)
        expect(false, "the small practice can be made", result.error().place + ": " + result.error().detail);
    return std::move(result).value();
}

SmallPractice madeSmall()
{
    const std::string file = workFolder() + "/small.raphe";
    SmallPractice out;
    {
        PracticeSettings settings;
        settings.name = "Brook and Brook";
        const NewAccount first{smallSignIn, "Ada Brook", std::string(smallPassphrase), leastCost};
        auto made = must(Practice::make(file, settings, first));
        out.recovery = made.recovery.text();
        Practice &p = *made.practice;
        const auto named = [&](const char *name) {
            PatientRecord record;
            record.name = name;
            record.born = "1980-02-03";
            record.complaints = {{1, "sore loin", "since May", false}};
            return must(p.addPatient(record));
        };
        const auto ada = named("Ada Quill");
        const auto twin = named("Quill Ada");
        const auto gone = named("Bo Stone");
        const auto visit = must(p.addVisit(ada, R"({"date":"2026-11-02","complaint":"sore loin"})"));
        must(p.sign(visit, "2026-11-02T10:00", "power was out"));
        must(p.beginAmendment(visit));
        must(p.saveVisit(visit, R"({"date":"2026-11-02","complaint":"sore left loin"})"));
        must(p.signAmendment(visit, "the side was missing"));
        must(p.sign(must(p.addVisit(twin, "of the twin"))));
        must(p.addVisit(gone, "of another"));
        must(p.noteOpened(ada));
        must(p.merge(ada, twin));
        must(p.erase(gone, "asked for it"));
        must(p.removeAccount(must(p.addAccount({"bo", "Bo Stone", "second of them", leastCost}))));
        must(p.addVisit(ada, "a draft"));
        out.keys = p.keys();
    }
    std::ifstream in(file, std::ios::binary);
    out.bytes.assign(std::istreambuf_iterator<char>(in), {});
    return out;
}

// What a reader gives, or nothing after an error; it must have a place, for a person is to be told where.
template <class T> T read(const Result<T> &result, bool expectAll)
{
    if (result)
        return result.value();
    expect(!expectAll, "what verifies can be read", result.error().place + ": " + result.error().detail);
    expect(!result.error().place.empty(), "an error has a place", result.error().detail);
    return {};
}

} // namespace

std::string workFolder()
{
    static int count = 1;
    static char name[] = "fuzz";
    static char *arguments[] = {name, nullptr};
    static const QCoreApplication application(count, arguments); // Qt's drivers need one
    static const QTemporaryDir folder;
    return folder.path().toStdString();
}

const SmallPractice &smallPractice()
{
    static const SmallPractice practice = madeSmall();
    return practice;
}

void putFile(const std::string &path, const std::string &bytes)
{
    for (const char *end : {"-wal", "-shm", "-journal"})
        std::filesystem::remove(path + end);
    std::ofstream(path, std::ios::binary | std::ios::trunc).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

std::string allOf(const Practice &practice, bool expectAll)
{
    std::string out = read(practice.settings(), expectAll).name + "\n";
    for (const AccountCard &account : read(practice.accounts(), expectAll))
        out += account.signIn + " " + account.name + (account.isRemoved ? " removed\n" : "\n");
    for (const AccessRow &access : read(practice.accesses(), expectAll))
        out += std::to_string(access.madeAt) + " " + access.account + " " + std::string(wordOf(entryWords, access.kind)) + "\n";
    for (const PatientCard &card : read(practice.patients(), expectAll)) {
        out += card.name + " " + card.born + " " + read(practice.patient(card.id), expectAll).name + "\n";
        for (const StoredVisit &visit : read(practice.visits(card.id), expectAll)) {
            out += "  " + visit.document + " " + std::to_string(static_cast<int>(visit.state)) + "\n";
            for (const VisitVersion &version : read(practice.history(visit.id), expectAll))
                out += "    " + version.author + " " + version.reason + " " + version.document + "\n";
        }
    }
    return out;
}

} // namespace raphe::fuzz
