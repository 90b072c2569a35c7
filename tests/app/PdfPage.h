// What a PDF says (pdftotext) and shows (pdftoppm), both from poppler-utils: a reader that is not ours.
#pragma once

#include <QColor>
#include <QImage>
#include <QProcess>
#include <QString>

#include <cmath>

namespace raphe::test {

inline QByteArray poppler(const QString &program, const QStringList &arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitCode() != 0)
        return {};
    return process.readAllStandardOutput();
}

/// One line of text, white space folded.
inline QString textOf(const QString &pdf)
{
    return QString::fromUtf8(poppler(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")}))
        .simplified();
}

inline QImage pictureOf(const QString &pdf, int dotsPerInch)
{
    return QImage::fromData(
        poppler(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QString::number(dotsPerInch), QStringLiteral("-png"), pdf}),
        "PNG");
}

/// Number of pixels near a colour in a part of the picture given as fractions of its width and height.
inline int pixelsLike(const QImage &picture, const QColor &color, double left, double right, double top, double bottom)
{
    int count = 0;
    for (int y = static_cast<int>(top * picture.height()); y < static_cast<int>(bottom * picture.height()); ++y)
        for (int x = static_cast<int>(left * picture.width()); x < static_cast<int>(right * picture.width()); ++x) {
            const QColor c = picture.pixelColor(x, y);
            if (std::abs(c.red() - color.red()) + std::abs(c.green() - color.green()) + std::abs(c.blue() - color.blue()) < 40)
                ++count;
        }
    return count;
}

} // namespace raphe::test
