// Painting at 1920x1080, offscreen raster: the first picture of a view, a step of panning, a step of zooming. Reference in the
// same run: Qt Svg renders the same file at the same size.
#include "app/raphe/BodyView.h"

#include "tests/benchmarks/Knowledge.h"
#include "tests/benchmarks/Percentiles.h"

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

namespace {

using namespace raphe;

void firstPaint(benchmark::State &state)
{
    const auto view = static_cast<View>(state.range(0));
    QImage image(1920, 1080, QImage::Format_ARGB32_Premultiplied);
    (void)knowledge(); // read before the clock runs
    for (auto _ : state) {
        BodyView body(*knowledge().atlas, knowledge().body->of(view));
        body.resize(1920, 1080);
        body.render(&image);
    }
    state.SetLabel(std::string(wordOf(viewWords, view)));
}
BENCHMARK(firstPaint)->DenseRange(0, 5)->Unit(benchmark::kMillisecond);

void panFrame(benchmark::State &state)
{
    BodyView body(*knowledge().atlas, knowledge().body->of(View::Back));
    body.resize(1920, 1080);
    QImage image(1920, 1080, QImage::Format_ARGB32_Premultiplied);
    body.zoomBy(static_cast<double>(state.range(0)), {960, 540});
    body.render(&image);
    Percentiles times;
    int step = 0;
    for (auto _ : state)
        times.time([&] {
            body.panBy({step / 60 % 2 ? -9.0 : 9.0, step / 90 % 2 ? 6.0 : -6.0});
            body.render(&image);
            ++step;
        });
    times.report(state, "ms", 1e3);
}
BENCHMARK(panFrame)->Arg(2)->Arg(8)->Iterations(360)->Unit(benchmark::kMillisecond);

void zoomFrame(benchmark::State &state)
{
    BodyView body(*knowledge().atlas, knowledge().body->of(View::Back));
    body.resize(1920, 1080);
    QImage image(1920, 1080, QImage::Format_ARGB32_Premultiplied);
    body.render(&image);
    Percentiles times;
    int step = 0;
    for (auto _ : state)
        times.time([&] {
            body.zoomBy(step / 40 % 2 ? 0.96 : 1.04, {960, 540});
            body.render(&image);
            ++step;
        });
    times.report(state, "ms", 1e3);
}
BENCHMARK(zoomFrame)->Iterations(240)->Unit(benchmark::kMillisecond);

void referenceQtSvg(benchmark::State &state)
{
    const auto files = embeddedFiles("drawing").value();
    QByteArray svg;
    for (const NamedText &file : files)
        if (file.name == "back.svg")
            svg = QByteArray::fromStdString(file.text);
    QSvgRenderer renderer(svg);
    QImage image(1920, 1080, QImage::Format_ARGB32_Premultiplied);
    for (auto _ : state) {
        QPainter painter(&image);
        renderer.render(&painter);
    }
}
BENCHMARK(referenceQtSvg)->Unit(benchmark::kMillisecond);

} // namespace
