// Reading and checking the whole atlas. Reference in the same run: nlohmann_json parsing the same text, nothing checked.
#include "core/anatomy/AtlasReader.h"

#include <benchmark/benchmark.h>
#include <nlohmann/json.hpp>

namespace {

const std::vector<raphe::NamedText> &files()
{
    static const auto read = raphe::embeddedFiles("atlas").value();
    return read;
}

void readAndCheckAtlas(benchmark::State &state)
{
    for (auto _ : state) {
        auto atlas = raphe::readAtlas(files());
        if (!atlas)
            state.SkipWithError(atlas.error().place.c_str());
        benchmark::DoNotOptimize(atlas);
    }
}
BENCHMARK(readAndCheckAtlas)->Unit(benchmark::kMillisecond);

void referenceParseOnly(benchmark::State &state)
{
    for (auto _ : state)
        for (const auto &file : files())
            benchmark::DoNotOptimize(nlohmann::json::parse(file.text));
}
BENCHMARK(referenceParseOnly)->Unit(benchmark::kMillisecond);

} // namespace
