// raphe-trials: how many checks each policy needs (Simulation.h), and how stable the first five are when every weight is
// changed at random by up to 30 %. Prints both tables; exits 1 when ours is not cut off less often than random at every level.
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Published.h"
#include "tests/trials/Simulation.h"

#include "core/reasoning/Candidates.h"
#include "core/record/VisitJson.h"

#include <CLI/CLI.hpp>

#include <array>
#include <cstdio>
#include <map>

namespace {

using namespace raphe;
using namespace raphe::test;

int simulateAll(int trials)
{
    const Candidates candidates = candidatesOf(linkage(), body(), constants());
    const WalkSolver solver(linkage().graph(), constants()["restart"], linkage().mirror());
    const ReachTable reach(solver, linkage().places().size(), candidates.sources, linkage().mirror());
    const double decay = trials::decayLength(linkage().graph(), candidates.checks);
    std::printf(
        "Checks until the source is among the first three, %d trials a level (cut off after %d)\n", trials, trials::checksAtMost);
    std::printf("%-28s %-16s %8s %8s\n", "noise", "policy", "median", "cut off");
    bool isGood = true;
    for (const trials::Noise &noise : trials::levels) {
        const CheckTable check(reach, candidates.checks, {noise.sensitivity, noise.falsePositive});
        const trials::World world{&linkage().graph(), &reach, &check, candidates.prior, decay};
        const unsigned seed = 20261126;
        const auto outcomes = trials::simulate(world, noise, trials, seed);
        for (std::size_t i = 0; i < outcomes.size(); ++i)
            std::printf("sensitivity %.1f, false %.2f  %-16s %8.1f %8d\n", noise.sensitivity, noise.falsePositive,
                trials::nameOf(trials::policies[i]).c_str(), outcomes[i].median(), outcomes[i].cutOff());
        std::printf("%26s  with all %zu places examined %d of %d are found\n", "", candidates.checks.size(),
            trials::foundWithAll(world, noise, trials, seed), trials);
        isGood = isGood && outcomes[0].cutOff() < outcomes[3].cutOff();
    }
    return isGood ? 0 : 1;
}

std::vector<Visit> visits()
{
    std::vector<Visit> out;
    const auto cases = nlohmann::json::parse(sourceText("tests/expert-cases/tuned.json"));
    for (const auto &one : cases.at("cases"))
        out.push_back(readVisit(one.at("visit").dump(), one.at("id"), atlas()).value());
    return out;
}

std::set<Place> firstFive(const std::vector<Suggestion> &list)
{
    std::set<Place> out;
    for (std::size_t i = 0; i < std::min<std::size_t>(5, list.size()); ++i)
        out.insert(list[i].place);
    return out;
}

bool mostStay(const std::set<Place> &before, const std::set<Place> &after)
{
    std::size_t kept = 0;
    for (const Place &place : before)
        kept += after.contains(place);
    return kept + 1 >= before.size();
}

// Of the visits that the constants were tuned with, one after the other.
void shakeAll(int trials)
{
    std::mt19937 random(30);
    const auto change = [&] { return 0.7 + 0.6 * static_cast<double>(random()) / 4294967296.0; };
    const std::vector<Visit> all = visits();
    std::size_t kept[3]{};
    for (int trial = 0; trial < trials; ++trial) {
        const Visit &visit = all[static_cast<std::size_t>(trial) % all.size()];
        std::vector<double> weights;
        std::map<std::array<std::size_t, 4>, double> changes; // a link and its mirror image change alike
        for (const Link &link : linkage().links()) {
            std::array<std::size_t, 4> key{link.a, link.b, linkage().mirror()[link.a], linkage().mirror()[link.b]};
            std::sort(key.begin(), key.end());
            weights.push_back(link.weight * changes.try_emplace(key, change()).first->second);
        }
        const Linkage shaken(linkage(), weights);
        const Reasoner other(shaken, regions(), constants());
        const Reasons before = reasoner().reasons(visit);
        const Reasons after = other.reasons(visit);
        kept[0] += mostStay(firstFive(before.explain), firstFive(after.explain));
        kept[1] += mostStay(firstFive(before.check), firstFive(after.check));
        kept[2] += mostStay(firstFive(treatFirst(reasoner(), visit).treat), firstFive(treatFirst(other, visit).treat));
    }
    std::printf("Weights changed by up to 30 %%, %d trials: at least four of the first five stay in\n", trials);
    const char *names[]{"explain", "check", "treat"};
    for (std::size_t i = 0; i < 3; ++i)
        std::printf("%-8s %5.1f %% of trials\n", names[i], 100.0 * static_cast<double>(kept[i]) / trials);
}

} // namespace

int main(int argc, char **argv)
{
    CLI::App cli{"Trials of the reasoning"};
    int simulated = 60;
    int shaken = 24;
    cli.add_option("--simulate", simulated, "trials of each level of noise");
    cli.add_option("--shake", shaken, "trials of changed weights");
    CLI11_PARSE(cli, argc, argv);
    const int status = simulateAll(simulated);
    shakeAll(shaken);
    return status;
}
