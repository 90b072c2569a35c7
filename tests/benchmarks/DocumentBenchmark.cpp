// The visit map of a whole visit, composed and written as a PDF. Reference in the same run: a PDF of one page with nothing but a
// line of type, by Qt.
#include "app/paint/VisitMapPages.h"
#include "app/raphe/Learned.h"
#include "core/record/VisitJson.h"

#include <benchmark/benchmark.h>

#include <QBuffer>
#include <QFile>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>

namespace {

using namespace raphe;

void visitMapWritten(benchmark::State &state)
{
    const QTemporaryDir folder;
    const std::string file = folder.filePath(QStringLiteral("map.pdf")).toStdString();
    static const auto learned = learn();
    QFile in(QStringLiteral(RAPHE_SOURCE_DIR "/demo/practice/pellam-2026-11-26.json"));
    if (!learned || !in.open(QIODevice::ReadOnly))
        return state.SkipWithError("not read");
    const Learned &known = *learned.value();
    const Atlas &atlas = *known.knowledge.atlas;
    const auto visit = readVisit(in.readAll().toStdString(), "visit", atlas);
    if (!visit)
        return state.SkipWithError("no visit");
    const auto language = static_cast<Language>(state.range(0));
    const BodyArt front(atlas, known.knowledge.body->of(View::Front));
    const BodyArt back(atlas, known.knowledge.body->of(View::Back));
    for (auto _ : state) {
        const VisitMap map =
            visitMap({known.adviser.rules(), atlas, *known.knowledge.body, known.examination, known.techniques, known.homeAdvice},
                visit.value(), Phrases(language));
        if (!writePdf(file, visitMapPages({Paper::A4, false, false}, map, front, back)))
            state.SkipWithError("not written");
    }
    state.SetLabel(std::string(wordOf(languageWords, language)));
}
BENCHMARK(visitMapWritten)->DenseRange(0, 2)->Unit(benchmark::kMillisecond);

void emptyPdfWritten(benchmark::State &state)
{
    for (auto _ : state) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter pdf(&buffer);
        QPainter painter(&pdf);
        painter.drawText(100, 100, QStringLiteral("Visit map"));
        painter.end();
        benchmark::DoNotOptimize(bytes);
    }
}
BENCHMARK(emptyPdfWritten)->Unit(benchmark::kMillisecond);

} // namespace
