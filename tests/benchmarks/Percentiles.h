// Times of single steps, told as median and 99th percentile.
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

namespace raphe {

class Percentiles {
public:
    /// Runs a step and keeps its time.
    template <class F> void time(F step)
    {
        const auto start = std::chrono::steady_clock::now();
        step();
        m_seconds.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    /// Adds the counters 'median_<unit>' and 'p99_<unit>'; `perSecond` units are one second.
    void report(benchmark::State &state, const std::string &unit, double perSecond)
    {
        std::sort(m_seconds.begin(), m_seconds.end());
        state.counters["median_" + unit] = m_seconds[m_seconds.size() / 2] * perSecond;
        state.counters["p99_" + unit] = m_seconds[m_seconds.size() * 99 / 100] * perSecond;
        state.counters["steps"] = static_cast<double>(m_seconds.size());
    }

private:
    std::vector<double> m_seconds;
};

} // namespace raphe
