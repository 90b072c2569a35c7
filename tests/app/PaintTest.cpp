// Colours and marks: contrast, shapes that differ without colour, marks that keep their side.
#include "app/paint/Marks.h"
#include "tests/app/Window.h"

#include <QFontInfo>
#include <QPainter>

#include <random>

namespace raphe::test {

TEST(Theme, TextStandsOutFromItsGround)
{
    // 4.5:1 is the threshold of WCAG 2.1, success criterion 1.4.3 (from memory).
    for (const Theme &theme : {Theme::light(), Theme::night(), Theme::paper(), Theme::greyPaper()}) {
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

// Segments of the spine and muscles beside it, near one another: what is higher in the body stays higher on the page.
TEST(Marks, KeepTheirOrderFromTheHeadDown)
{
    std::mt19937 random(20261129);
    std::uniform_real_distribution<double> height(0, 30);
    std::uniform_int_distribution<int> column(-1, 1);
    for (int round = 0; round < 200; ++round) {
        std::vector<QPointF> home;
        for (int i = 0; i < 6; ++i)
            home.emplace_back(column(random) * 4.0, height(random));
        const std::vector<QPointF> points = spreadMarks(home, 6);
        for (std::size_t i = 0; i < home.size(); ++i)
            for (std::size_t j = 0; j < home.size(); ++j)
                if (home[i].x() == 0 && home[j].x() == 0 && home[i].y() + 0.5 < home[j].y()) {
                    EXPECT_LT(points[i].y(), points[j].y()) << "round " << round;
                }
    }
}

} // namespace raphe::test
