// Power cuts and failing disks: whatever the disk does at whichever step of a scripted entry, the practice file then opens,
// verifies, and holds every change that was said to be saved; of the one under way all or nothing. A signed word is never
// missing.
#include "tests/core/store/PracticeTesting.h"
#include "tests/core/store/ScriptedEntry.h"
#include "tests/support/storage/StorageShim.h"

#include <iostream>
#include <map>
#include <optional>

namespace raphe::test {

namespace {

class PracticeStorage : public PracticeFileTest {
protected:
    [[nodiscard]] std::filesystem::path fresh(const std::string &name) const
    {
        const std::filesystem::path out = std::filesystem::path(folder()) / name;
        std::filesystem::remove_all(out);
        std::filesystem::create_directories(out);
        return out;
    }
};

constexpr Cut cuts[] = {Cut::None, Cut::All, Cut::Subset, Cut::Torn};

} // namespace

TEST_F(PracticeStorage, APowerCutAtAnySyncLosesNothingThatWasSaved)
{
    const auto watched = fresh("watched");
    const std::string practiceFile = (watched / "p.raphe").string();
    std::vector<std::string> states; // before the first step and after each
    std::vector<std::size_t> syncs{0};
    std::shared_ptr<const Keyring> keys;
    const StorageShim shim(watched);
    {
        auto made = Practice::make(practiceFile, settings(), owner());
        ASSERT_TRUE(made.ok()) << inWords(made.error());
        Practice &practice = *made.value().practice;
        keys = practice.keys();
        syncs[0] = shim.record().syncs();
        states.push_back(stateOf(practice));
        for (const Step &step : scriptedEntry()) {
            const auto done = step(practice);
            ASSERT_TRUE(done.ok()) << inWords(done.error());
            states.push_back(stateOf(practice));
            syncs.push_back(shim.record().syncs());
        }
    }
    int opened = 0;
    int refused = 0;
    for (std::size_t cut = 0; cut <= shim.record().syncs(); ++cut)
        for (const Cut how : cuts)
            for (unsigned seed = 0; seed < (how == Cut::Subset || how == Cut::Torn ? 2U : 1U); ++seed) {
                SCOPED_TRACE("after sync " + std::to_string(cut) + ", " + std::to_string(static_cast<int>(how)) + ", seed "
                    + std::to_string(seed));
                const auto left = fresh("left");
                shim.record().materialise(left, cut, seed, how);
                const auto practice = Practice::open((left / "p.raphe").string(), keys);
                if (cut < syncs[0] && !practice.ok()) { // it was still being made
                    ++refused;
                    continue;
                }
                ASSERT_TRUE(practice.ok()) << inWords(practice.error());
                ++opened;
                const auto verified = practice.value()->verify();
                ASSERT_TRUE(verified.ok()) << inWords(verified.error());
                const std::size_t least =
                    static_cast<std::size_t>(std::upper_bound(syncs.begin(), syncs.end(), cut) - syncs.begin());
                const std::string state = stateOf(*practice.value());
                const std::size_t first = least == 0 ? 0 : least - 1; // steps that were done before the cut
                const auto from = states.begin() + static_cast<std::ptrdiff_t>(first);
                const auto to = states.begin() + static_cast<std::ptrdiff_t>(std::min(first + 2, states.size()));
                ASSERT_NE(std::find(from, to, state), to) << "neither the state that was saved nor the next:\n"
                                                          << state << "\nsaved:\n"
                                                          << states[first];
            }
    std::cout << shim.record().syncs() << " syncs, " << opened << " cuts opened and verified, " << refused
              << " while the file was being made\n";
    EXPECT_GT(opened, 100);
}

TEST_F(PracticeStorage, AnyFailingOperationLeavesTheOldStateOrTheNew)
{
    const std::vector<Step> steps = scriptedEntry();
    constexpr Operation operations[] = {Operation::Write, Operation::Sync, Operation::Truncate, Operation::Remove};
    std::vector<std::string> states; // before the first step and after each, when nothing fails
    std::map<Operation, std::size_t> counts;
    int faults = 0;
    int reported = 0;
    // Goes through the entry until a step fails, and looks at what is left. Without a fault it learns the counts.
    const auto go = [&](const std::optional<Fault> &fault) {
        const auto watched = fresh("watched");
        const std::string practiceFile = (watched / "p.raphe").string();
        StorageShim shim(watched);
        std::shared_ptr<const Keyring> keys;
        std::size_t done = 0;
        {
            auto made = Practice::make(practiceFile, settings(), owner());
            ASSERT_TRUE(made.ok());
            Practice &practice = *made.value().practice;
            keys = practice.keys();
            if (!fault)
                states.push_back(stateOf(practice));
            fault ? shim.faults().arm(*fault) : shim.faults().disarm();
            for (const Step &step : steps) {
                const auto outcome = step(practice);
                if (!outcome) {
                    ++reported;
                    ASSERT_FALSE(inWords(outcome.error()).empty());
                    break; // what comes next would build on a state that is not there
                }
                ++done;
                if (!fault)
                    states.push_back(stateOf(practice));
            }
            for (const Operation operation : operations)
                if (!fault)
                    counts[operation] = shim.faults().count(operation);
            faults += shim.faults().failures() > 0;
            shim.faults().disarm();
        }
        const auto practice = Practice::open(practiceFile, keys);
        ASSERT_TRUE(practice.ok()) << inWords(practice.error());
        const auto verified = practice.value()->verify();
        ASSERT_TRUE(verified.ok()) << inWords(verified.error());
        const std::string left = stateOf(*practice.value());
        ASSERT_TRUE(left == states[done] || (done < steps.size() && left == states[done + 1]))
            << "neither the old state nor the new, but\n"
            << left;
    };
    go({});
    ASSERT_EQ(states.size(), steps.size() + 1);
    for (const Operation operation : operations)
        for (const Failure failure : {Failure::IoError, Failure::DiskFull, Failure::ShortWrite})
            for (std::size_t number = 1; number <= counts[operation]; ++number)
                for (const bool lasting : {false, true}) {
                    if (failure == Failure::ShortWrite && operation != Operation::Write)
                        continue;
                    SCOPED_TRACE("operation " + std::to_string(static_cast<int>(operation)) + " number " + std::to_string(number)
                        + ", failure " + std::to_string(static_cast<int>(failure)) + (lasting ? ", lasting" : ""));
                    go(Fault{operation, number, failure, lasting});
                    if (HasFatalFailure())
                        return;
                }
    std::cout << counts[Operation::Write] << " writes, " << counts[Operation::Sync] << " syncs, " << counts[Operation::Truncate]
              << " truncations; " << faults << " faults came, " << reported << " steps reported one\n";
    EXPECT_GT(faults, 100);
}

} // namespace raphe::test
