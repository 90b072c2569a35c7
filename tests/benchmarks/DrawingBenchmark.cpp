// What lies under a point: random points of each view. Reference in the same run: every shape asked, no cells.

#include "tests/benchmarks/Knowledge.h"
#include "tests/benchmarks/Percentiles.h"

#include <random>

namespace {

using namespace raphe;

std::vector<Point> points()
{
    std::mt19937 random(20261125); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same points every time
    std::uniform_real_distribution<double> x(-200, 200);
    std::uniform_real_distribution<double> y(0, 1000);
    std::vector<Point> out;
    for (int i = 0; i < 2000; ++i)
        out.push_back({x(random), y(random)});
    return out;
}

void underAPoint(benchmark::State &state)
{
    const Drawing &drawing = knowledge().body->of(static_cast<View>(state.range(0)));
    Percentiles times;
    for (auto _ : state)
        for (const Point p : points())
            times.time([&] { benchmark::DoNotOptimize(drawing.under(*knowledge().atlas, p)); });
    times.report(state, "us", 1e6);
    state.SetLabel(std::string(wordOf(viewWords, drawing.view())));
}
BENCHMARK(underAPoint)->DenseRange(0, 5)->Unit(benchmark::kMillisecond);

void referenceEveryShapeAsked(benchmark::State &state)
{
    const Drawing &drawing = knowledge().body->of(View::Back);
    Percentiles times;
    for (auto _ : state)
        for (const Point p : points())
            times.time([&] {
                int hits = 0;
                for (const DrawnShape &shape : drawing.shapes())
                    hits += contains(shape.polygons, drawing.drawnPoint(p));
                benchmark::DoNotOptimize(hits);
            });
    times.report(state, "us", 1e6);
}
BENCHMARK(referenceEveryShapeAsked)->Unit(benchmark::kMillisecond);

} // namespace
