// A pain drawing as cells and percent: strokes of 10 to 1000 points, 3 units from one to the next, as a hand draws them, and one
// of 1000 points that crosses the body each time. Reference in the same run: every cell of the body against every piece.
#include "core/anatomy/BodyShare.h"
#include "core/anatomy/StrokeRaster.h"
#include "core/record/PainMask.h"

#include "tests/benchmarks/Knowledge.h"
#include "tests/benchmarks/Percentiles.h"
#include "tests/support/BrutePaint.h"

#include <cmath>

namespace {

using namespace raphe;

const SurfaceMask &silhouette()
{
    static const SurfaceMask mask = silhouetteMask(*knowledge().body);
    return mask;
}

// A spiral over the trunk; the brush is as wide as two fingers (15 units: 26 mm to each side).
std::vector<PainPatch> handDrawn(int points)
{
    PainPatch patch;
    patch.view = View::Back;
    patch.strokes.push_back({{}, 15});
    double angle = 0;
    for (int i = 0; i < points; ++i) {
        const double radius = 10 + 2 * angle;
        patch.strokes[0].points.push_back({radius * std::cos(angle), 350 + radius * std::sin(angle)});
        angle += 3 / radius;
    }
    return {patch};
}

std::vector<PainPatch> crossing(int points)
{
    PainPatch patch;
    patch.view = View::Back;
    patch.strokes.push_back({{}, 15});
    for (int i = 0; i < points; ++i)
        patch.strokes[0].points.push_back({i % 2 ? 120.0 : -120.0, 1000.0 * i / points});
    return {patch};
}

void measure(benchmark::State &state, const std::vector<PainPatch> &pain)
{
    const SurfaceMask &body = silhouette();
    Percentiles times;
    for (auto _ : state)
        for (int i = 0; i < 20; ++i)
            times.time([&] { benchmark::DoNotOptimize(painMask(pain, body)); });
    times.report(state, "us", 1e6);
}

void painRaster(benchmark::State &state)
{
    measure(state, handDrawn(static_cast<int>(state.range(0))));
}
BENCHMARK(painRaster)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

void painRasterCrossing(benchmark::State &state)
{
    measure(state, crossing(1000));
}
BENCHMARK(painRasterCrossing)->Unit(benchmark::kMillisecond);

void painPercent(benchmark::State &state)
{
    static const auto share = readEmbeddedBodyShare(*knowledge().atlas, *knowledge().body);
    const SurfaceMask mask = painMask(handDrawn(1000), silhouette());
    Percentiles times;
    for (auto _ : state)
        for (int i = 0; i < 20; ++i)
            times.time([&] { benchmark::DoNotOptimize(share.value().percentByRegion(mask)); });
    times.report(state, "us", 1e6);
}
BENCHMARK(painPercent)->Unit(benchmark::kMillisecond);

void referenceEveryCell(benchmark::State &state)
{
    static const test::Picture body = test::bodyPicture(knowledge().body->of(View::Back));
    const auto pain = handDrawn(static_cast<int>(state.range(0)));
    Percentiles times;
    for (auto _ : state)
        times.time([&] { benchmark::DoNotOptimize(test::brutePicture(pain, View::Back, body)); });
    times.report(state, "us", 1e6);
}
BENCHMARK(referenceEveryCell)->Arg(10)->Arg(100)->Arg(1000)->Unit(benchmark::kMillisecond);

} // namespace
