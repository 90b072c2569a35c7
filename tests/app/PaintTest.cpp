// Colours, marks and pages: contrast, shapes that differ without colour, marks that keep their side, files in three formats.
#include "app/paint/Marks.h"
#include "app/paint/VisitMapPage.h"
#include "tests/app/PdfPage.h"
#include "tests/app/Window.h"

#include <QFile>
#include <QFontInfo>
#include <QPainter>

namespace raphe::test {

TEST(Theme, TextStandsOutFromItsGround)
{
    // 4.5:1 is the threshold of WCAG 2.1, success criterion 1.4.3 (from memory).
    for (const Theme &theme : {Theme::light(), Theme::night(), Theme::paper()}) {
        for (const QColor &ground : {theme.ground, theme.panel})
            for (const QColor &ink : {theme.ink, theme.quiet, theme.accent, theme.tender, theme.restricted, theme.clear})
                EXPECT_GE(contrast(ink, ground), 4.5) << ink.name().toStdString() << " on " << ground.name().toStdString();
        for (const QColor &mark : {theme.tender, theme.restricted})
            EXPECT_GE(contrast(theme.onMark, mark), 4.5) << "number on " << mark.name().toStdString();
    }
}

TEST(Theme, TheTypefaceIsInstalled)
{
    EXPECT_TRUE(typefaceIsInstalled()) << QFontInfo(typeface(10)).family().toStdString() << " would be used instead";
}

TEST(Marks, DifferInShapeAndNotInColourAlone)
{
    const auto shapeOf = [](MarkKind kind) { // painted in one colour: only the shape is left
        Theme grey = Theme::light();
        grey.tender = grey.restricted = grey.clear = grey.quiet = grey.ink = Qt::black;
        grey.onMark = Qt::black;
        QImage image(60, 60, QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintMark(painter, grey, {kind, 2, false, 0, false}, {30, 30}, 40);
        return image;
    };
    const std::array kinds{
        MarkKind::Tender, MarkKind::Restricted, MarkKind::TenderAndRestricted, MarkKind::Clear, MarkKind::Unable};
    for (std::size_t i = 0; i < kinds.size(); ++i)
        for (std::size_t j = i + 1; j < kinds.size(); ++j) {
            const QImage a = shapeOf(kinds[i]);
            const QImage b = shapeOf(kinds[j]);
            int different = 0;
            for (int y = 0; y < 60; ++y)
                for (int x = 0; x < 60; ++x)
                    different += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 100;
            EXPECT_GT(different, 80) << "kinds " << i << " and " << j;
        }
}

TEST(Marks, SpreadApartWithoutChangingSides)
{
    const auto points = spreadMarks({{2, 100}, {-2, 100}, {0, 100}, {3, 101}, {-3, 101}, {0, 102}}, 10);
    EXPECT_GT(points[0].x(), 0);
    EXPECT_LT(points[1].x(), 0);
    EXPECT_EQ(points[2].x(), 0);
    EXPECT_GT(points[3].x(), 0);
    EXPECT_LT(points[4].x(), 0);
    EXPECT_EQ(points[5].x(), 0);
    for (std::size_t i = 0; i < points.size(); ++i)
        for (std::size_t j = i + 1; j < points.size(); ++j)
            EXPECT_GT(std::hypot(points[i].x() - points[j].x(), points[i].y() - points[j].y()), 5) << i << " and " << j;
}

namespace {

/// Itself or a part of it.
bool isDrawn(const Structure &s)
{
    auto ids = atlas().partsOf(s.id);
    ids.push_back(s.id);
    for (const Drawing *drawing : {&body().of(View::Front), &body().of(View::Back)})
        for (const DrawnShape &shape : drawing->shapes())
            if (std::find(ids.begin(), ids.end(), shape.structure) != ids.end())
                return true;
    return false;
}

Visit longVisit()
{
    Visit visit;
    visit.date = "2026-11-25";
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Muscle && s.paired && isDrawn(s) && visit.findings.size() < 40) {
            Finding f;
            f.place = {s.id, visit.findings.size() % 2 ? Side::Left : Side::Right};
            f.tenderness = Tenderness{static_cast<int>(visit.findings.size() % 5)};
            visit.findings.push_back(f);
        }
    return visit;
}

} // namespace

TEST(VisitMapPage, LeavesNoFindingOutHoweverMany)
{
    const QTemporaryDir folder;
    const Visit visit = longVisit();
    ASSERT_EQ(visit.findings.size(), 40U);
    const VisitMap map = visitMap(adviser().rules(), atlas(), body(), visit, "en");
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const QString pdf = folder.filePath(QStringLiteral("long.pdf"));
        ASSERT_TRUE(writeVisitMap(
            pdf.toStdString(), paper, map, BodyArt(atlas(), body().of(View::Front)), BodyArt(atlas(), body().of(View::Back)))
                        .ok());
        const QString text = textOf(pdf).remove(QLatin1Char(' '));
        for (const MapLine &line : map.lines) { // long names may wrap beside the other column: their beginning must be there
            const QString place = QString::fromStdString(line.place).remove(QLatin1Char(' ')).left(10);
            EXPECT_TRUE(text.contains(place)) << line.number << " " << line.place;
        }
    }
}

TEST(VisitMapPage, PrintsTheSignsThatSomebodyElseMustSee)
{
    Visit visit;
    const auto add = [&](const char *sign, std::optional<Decision> decided) {
        visit.warnings.push_back({sign, true, "2026-11-25", {}, decided, "why", "told"});
    };
    EXPECT_TRUE(visitMap(adviser().rules(), atlas(), body(), visit, "en").warnings.empty());
    const auto &signs = adviser().rules().signs().signs;
    const auto first = [&](WarningLevel level, bool alone) {
        return std::find_if(signs.begin(), signs.end(),
            [&](const WarningSign &s) { return s.level == level && s.alone == alone && !s.byPractitioner; });
    };
    const auto same = first(WarningLevel::SameDay, false);
    const auto private_ = std::find_if(signs.begin(), signs.end(), [](const WarningSign &s) { return s.alone; });
    ASSERT_NE(private_, signs.end());
    add(same->id.c_str(), Decision::CareSameDay);
    add(private_->id.c_str(), std::nullopt);
    add("chest-pain-now", Decision::Explained);
    visit.warnings.push_back({first(WarningLevel::BeforeTreating, false)->id, false, "2026-11-25", {}, {}, "", ""});
    auto map = visitMap(adviser().rules(), atlas(), body(), visit, "en");
    ASSERT_EQ(map.warnings.size(), 2U) << "what was asked alone is not on a page that others may read, nor is a no";
    EXPECT_TRUE(map.warnings[0].starts_with("Get medical help at once")) << map.warnings[0] << ": an emergency stays one";
    EXPECT_NE(map.warnings[1].find(same->ask), std::string::npos) << map.warnings[1];

    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("stopped.pdf"));
    ASSERT_TRUE(writeVisitMap(
        pdf.toStdString(), Paper::A4, map, BodyArt(atlas(), body().of(View::Front)), BodyArt(atlas(), body().of(View::Back)))
                    .ok());
    EXPECT_TRUE(textOf(pdf).simplified().contains(QStringLiteral("Get medical help at once"))) << textOf(pdf).toStdString();

    visit.warnings[0].decided = Decision::InCare;
    map = visitMap(adviser().rules(), atlas(), body(), visit, "en");
    EXPECT_EQ(map.warnings.size(), 1U) << "settled with the treating team";
}

TEST(VisitMapPage, WritesEachFormatAndRefusesOthers)
{
    const QTemporaryDir folder;
    const VisitMap map = visitMap(adviser().rules(), atlas(), body(), Visit{}, "en");
    const BodyArt front(atlas(), body().of(View::Front));
    const BodyArt back(atlas(), body().of(View::Back));
    const auto write = [&](const char *name) {
        return writeVisitMap(folder.filePath(QString::fromUtf8(name)).toStdString(), Paper::A4, map, front, back);
    };
    const auto begin = [&](const char *name) {
        QFile file(folder.filePath(QString::fromUtf8(name)));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.read(200);
    };
    ASSERT_TRUE(write("a.pdf").ok());
    EXPECT_TRUE(begin("a.pdf").startsWith("%PDF"));
    ASSERT_TRUE(write("a.svg").ok());
    EXPECT_TRUE(begin("a.svg").contains("<svg"));
    ASSERT_TRUE(write("a.png").ok());
    EXPECT_EQ(QImage(folder.filePath(QStringLiteral("a.png"))).size(), QSize(1240, 1754)) << "A4 at 150 dpi";
    ASSERT_FALSE(write("a.txt").ok());
    EXPECT_EQ(write("a.txt").error().code, ErrorCode::BadArgument);
    ASSERT_FALSE(write("missing/a.pdf").ok());
    EXPECT_EQ(write("missing/a.pdf").error().code, ErrorCode::CannotWrite);
    EXPECT_TRUE(textOf(folder.filePath(QStringLiteral("a.pdf"))).contains(QStringLiteral("not a diagnosis")));
}

TEST(VisitMapPage, MarksEveryDrawnMuscleWholeOrPart)
{
    std::string missing;
    int marked = 0;
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Muscle && isDrawn(s))
            for (const Side side : atlas().sides(s)) {
                if (!markPoint(atlas(), body(), {s.id, side}))
                    missing += " " + s.id.value;
                ++marked;
            }
    EXPECT_EQ(missing, "") << "muscles without a mark on either view";
    EXPECT_GT(marked, 150);
    const auto wholeAt = markPoint(atlas(), body(), {StructureId{"erector-spinae"}, Side::Right});
    ASSERT_TRUE(wholeAt);
    EXPECT_EQ(wholeAt->view, View::Back);
    EXPECT_GT(wholeAt->point.x, 0) << "the patient's right is at x > 0 in the back view";
}

TEST(VisitMapPage, AMirroredVisitGivesTheMirroredMarks)
{
    const Visit visit = longVisit();
    const VisitMap here = visitMap(adviser().rules(), atlas(), body(), visit, "en");
    const VisitMap there = visitMap(adviser().rules(), atlas(), body(), mirrored(visit), "en");
    ASSERT_EQ(here.marks.size(), there.marks.size());
    int drawn = 0;
    for (std::size_t i = 0; i < here.marks.size(); ++i) {
        ASSERT_EQ(here.marks[i].at.has_value(), there.marks[i].at.has_value());
        if (!here.marks[i].at)
            continue;
        ++drawn;
        EXPECT_EQ(here.marks[i].at->view, there.marks[i].at->view);
        EXPECT_EQ(here.marks[i].at->point.x, -there.marks[i].at->point.x);
        EXPECT_EQ(here.marks[i].at->point.y, there.marks[i].at->point.y);
    }
    EXPECT_GT(drawn, 30);
}

} // namespace raphe::test
