// Our reading of the drawings against Qt Svg's: each shape of each file is rendered by Qt Svg and compared, pixel by pixel, with
// what our geometry says is inside.
#include "tests/support/Content.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

namespace raphe::test {

namespace {

struct PathOfFile {
    QString id;
    QString data;
};

// The path data of every shape of a file, in its order, as any reader of XML sees them.
std::vector<PathOfFile> pathsOf(const QString &file)
{
    QFile in(file);
    EXPECT_TRUE(in.open(QIODevice::ReadOnly)) << file.toStdString();
    QXmlStreamReader xml(&in);
    std::vector<PathOfFile> paths;
    while (!xml.atEnd())
        if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == u"path"
            && !xml.attributes().hasAttribute(QLatin1String("class")))
            paths.push_back(
                {xml.attributes().value(QLatin1String("id")).toString(), xml.attributes().value(QLatin1String("d")).toString()});
    return paths;
}

QImage renderedByQt(const QString &data, const Box &box, QSize size, double pixelsPerUnit)
{
    const QByteArray svg = QStringLiteral("<svg xmlns='http://www.w3.org/2000/svg' viewBox='%1 %2 %3 %4'><path d='%5'/></svg>")
                               .arg(box.left)
                               .arg(box.top)
                               .arg(size.width() / pixelsPerUnit)
                               .arg(size.height() / pixelsPerUnit)
                               .arg(data)
                               .toUtf8();
    QSvgRenderer renderer(svg);
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter, QRectF(QPointF(0, 0), QSizeF(size)));
    return image;
}

class SvgAgreement : public testing::TestWithParam<View> { };

TEST_P(SvgAgreement, GeometryAndQtSvgFillTheSamePixels)
{
    const Drawing &drawing = body().of(GetParam());
    const auto paths = pathsOf(QStringLiteral(":/drawing/%1.svg").arg(QLatin1String(wordOf(viewWords, GetParam()).data())));
    const double pixelsPerUnit = isInset(GetParam()) ? 0.75 : 2.5;
    long filled = 0;
    long different = 0;
    ASSERT_EQ(paths.size(), drawing.shapes().size());
    for (std::size_t i = 0; i < paths.size(); ++i) {
        const DrawnShape &shape = drawing.shapes()[i];
        ASSERT_EQ(paths[i].id.section(QStringLiteral("--"), 0, 0).toStdString(), shape.structure.value);
        const Box &box = shape.bounds;
        const QSize size(static_cast<int>(std::ceil((box.right - box.left) * pixelsPerUnit)) + 1,
            static_cast<int>(std::ceil((box.bottom - box.top) * pixelsPerUnit)) + 1);
        const QImage image = renderedByQt(paths[i].data, box, size, pixelsPerUnit);
        for (int y = 0; y < size.height(); ++y)
            for (int x = 0; x < size.width(); ++x) {
                const bool theirs = qAlpha(image.pixel(x, y)) >= 128;
                const bool ours =
                    contains(shape.polygons, {box.left + (x + 0.5) / pixelsPerUnit, box.top + (y + 0.5) / pixelsPerUnit});
                filled += ours || theirs;
                different += ours != theirs;
            }
    }
    const double percent = 100.0 * static_cast<double>(different) / static_cast<double>(filled);
    std::cout << wordOf(viewWords, GetParam()) << ": " << different << " of " << filled << " pixels differ, " << percent
              << " %\n";
    EXPECT_LE(percent, 0.5);
}

INSTANTIATE_TEST_SUITE_P(Views, SvgAgreement,
    testing::Values(View::Front, View::Back, View::Side, View::Sole, View::Palm, View::Head),
    [](const auto &each) { return std::string(wordOf(viewWords, each.param)); });

} // namespace

} // namespace raphe::test
