// What a PDF says (pdftotext) and shows (pdftoppm), both from poppler-utils: a reader that is not ours.
#pragma once

#include <QColor>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QString>

#include <cmath>
#include <vector>

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

/// Without white space and hyphens, so that it does not matter where lines were broken.
inline QString squeezed(QString text)
{
    return text.remove(QRegularExpression(QStringLiteral("[\\s\u00ad-]")));
}

/// Each page's text, squeezed, in the order in which it was painted.
inline QStringList squeezedPages(const QString &pdf)
{
    const QString text =
        QString::fromUtf8(poppler(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), pdf, QStringLiteral("-")}));
    QStringList pages;
    for (const QString &page : text.split(QLatin1Char('\f'), Qt::SkipEmptyParts))
        pages << squeezed(page);
    return pages;
}

struct PrintedWord {
    int page = 0; // from 1
    QSizeF sheet;
    QRectF box; // all in points, from the top left
    QString text;
};

inline std::vector<PrintedWord> wordsOf(const QString &pdf)
{
    static const QRegularExpression one(
        QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">"
                       "|<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    const QString boxes =
        QString::fromUtf8(poppler(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), pdf, QStringLiteral("-")}));
    std::vector<PrintedWord> out;
    int page = 0;
    QSizeF sheet;
    for (auto it = one.globalMatch(boxes); it.hasNext();) {
        const auto match = it.next();
        const auto number = [&](int i) { return match.captured(i).toDouble(); };
        if (!match.captured(1).isEmpty()) {
            ++page;
            sheet = {number(1), number(2)};
        } else {
            out.push_back({page, sheet, {QPointF(number(3), number(4)), QPointF(number(5), number(6))}, match.captured(7)});
        }
    }
    return out;
}

/// Words that stand, with a part of them, beyond the margin (points) of their page.
inline QStringList wordsBeyond(const QString &pdf, double margin)
{
    const auto words = wordsOf(pdf);
    QStringList out;
    for (const PrintedWord &word : words)
        if (!QRectF(QPointF(0, 0), word.sheet).adjusted(margin, margin, -margin, -margin).contains(word.box))
            out << word.text;
    return words.empty() ? QStringList{QStringLiteral("no words")} : out;
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
