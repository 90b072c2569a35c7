// Search by name over all structures: every name of the atlas, half of them misspelt, one query each. Counters: median and
// 99th percentile of a query in ms. Reference in the same run: the plain way, the whole table of edits (Wagner and
// Fischer 1974, J ACM 21:168) against every name.
#include "core/anatomy/NameSearch.h"

#include "tests/benchmarks/Knowledge.h"
#include "tests/benchmarks/Percentiles.h"

#include <random>

namespace {

using namespace raphe;

std::vector<std::string> queries()
{
    std::mt19937 random(20261125); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same queries every time
    std::vector<std::string> out;
    for (const Structure &s : atlas().structures()) {
        out.push_back(s.names.english);
        std::string wrong = s.names.english;
        wrong[random() % wrong.size()] = static_cast<char>('a' + random() % 26);
        wrong.erase(random() % wrong.size(), 1);
        out.push_back(std::move(wrong));
    }
    return out;
}

template <class F> void measure(benchmark::State &state, const std::vector<std::string> &typed, F find)
{
    Percentiles times;
    for (auto _ : state)
        for (const std::string &query : typed)
            times.time([&] { find(query); });
    times.report(state, "ms", 1e3);
}

void searchByName(benchmark::State &state)
{
    const NameSearch search(atlas());
    measure(state, queries(), [&](const std::string &query) { benchmark::DoNotOptimize(search.find(query, 8)); });
}
BENCHMARK(searchByName)->Unit(benchmark::kMillisecond);

int plainDistance(const std::string &a, const std::string &b)
{
    std::vector<std::vector<int>> table(a.size() + 1, std::vector<int>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        for (std::size_t j = 0; j <= b.size(); ++j)
            table[i][j] = i == 0 ? static_cast<int>(j)
                : j == 0         ? static_cast<int>(i)
                         : std::min({table[i - 1][j] + 1, table[i][j - 1] + 1, table[i - 1][j - 1] + (a[i - 1] != b[j - 1])});
    return table[a.size()][b.size()];
}

void referenceTableAgainstEveryName(benchmark::State &state)
{
    std::vector<std::string> names;
    for (const Structure &s : atlas().structures()) {
        names.push_back(foldedName(s.names.english));
        names.push_back(foldedName(s.names.latin));
        for (const std::string &synonym : s.names.synonyms)
            names.push_back(foldedName(synonym));
    }
    auto typed = queries();
    typed.resize(20); // it is slow
    measure(state, typed, [&](const std::string &query) {
        int best = 1000;
        const std::string folded = foldedName(query);
        for (const std::string &name : names)
            best = std::min(best, plainDistance(folded, name));
        benchmark::DoNotOptimize(best);
    });
}
BENCHMARK(referenceTableAgainstEveryName)->Unit(benchmark::kMillisecond);

} // namespace
