// Reading a typed line: lines of findings, of lists, of movements, and misspelt ones. Counters: median and 99th percentile of a
// line in ms; the floor is 1 ms. Making the index of words and names is timed by itself; its floor is 100 ms. Reference in the
// same run: the search by name (core/anatomy/NameSearch) on each word of the same lines, which finds names only.
#include "core/anatomy/NameSearch.h"
#include "core/language/LineReading.h"

#include "tests/benchmarks/Knowledge.h"
#include "tests/benchmarks/Percentiles.h"

#include <sstream>

namespace {

using namespace raphe;

WordList english()
{
    return readEmbeddedWordList("en", atlas()).value();
}

const std::vector<std::string> &lines()
{
    static const std::vector<std::string> all{"r ql t3 l t2", "right glute max origin tender 3, left l4/5 clear",
        "si: r stiff 2, l free", "l glute med and glute min t2 familiar", "hip ir r 32 l 45, knee flex 110 r 130 l",
        "scm r at the mastoid t3 familiar", "l pirifromis stuk 2 r clear", "r infraspin t3 refers to r front of the upper arm",
        "t4/5 stiff 2, rib 5 l stuck 1, t4/5 l tender 2", "piri t2 r ql t1", "r tempralis orign tender 2 not familiar",
        "lt atfl t2, rt deltoid lig t1, talocrural bilat free", "psoas l could not: too ticklish, r t1", "r hamstrings tight"};
    return all;
}

void readTypedLine(benchmark::State &state)
{
    const LineWords words(atlas(), english());
    Percentiles times;
    for (auto _ : state)
        for (const std::string &line : lines())
            times.time([&] { benchmark::DoNotOptimize(readLine(line, words)); });
    times.report(state, "ms", 1e3);
}
BENCHMARK(readTypedLine)->Unit(benchmark::kMillisecond);

void makeLineWords(benchmark::State &state)
{
    const WordList list = english();
    Percentiles times;
    for (auto _ : state)
        times.time([&] { benchmark::DoNotOptimize(LineWords(atlas(), list).longestPhrase()); });
    times.report(state, "ms", 1e3);
}
BENCHMARK(makeLineWords)->Unit(benchmark::kMillisecond);

void referenceSearchForEachWord(benchmark::State &state)
{
    const NameSearch search(atlas());
    Percentiles times;
    for (auto _ : state)
        for (const std::string &line : lines())
            times.time([&] {
                std::istringstream words(line);
                for (std::string word; words >> word;)
                    benchmark::DoNotOptimize(search.find(word, 8));
            });
    times.report(state, "ms", 1e3);
}
BENCHMARK(referenceSearchForEachWord)->Unit(benchmark::kMillisecond);

} // namespace
