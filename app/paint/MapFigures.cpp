#include "app/paint/MapFigures.h"

#include "app/paint/Marks.h"
#include "app/paint/Type.h"
#include "app/paint/TypedText.h"

#include <QFontMetricsF>
#include <QLineF>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr double captionHeight = 8;
constexpr double mostMark = 4.6;
constexpr double markShare = 1 / 12.0; // of the figure's height, at most: marks on a small one would hide the head
constexpr double keyMark = 3.2;

QString shown(const std::string &text)
{
    return safelyShown(QString::fromStdString(text));
}

bool isOn(const std::vector<MapMark> &marks, View view)
{
    return std::any_of(marks.begin(), marks.end(), [view](const MapMark &mark) { return mark.at && mark.at->view == view; });
}

// The letters stay R and L in every language; the word stands below.
void paintSides(QPainter &painter, const Theme &theme, const MapLabels &labels, const Drawing &drawing, const QRectF &box)
{
    const bool rightOnRight = drawing.signOf(Side::Right) > 0;
    Type letter(painter, 5, QFont::Bold, theme.ink);
    Type word(painter, 2.6, QFont::Normal, theme.quiet);
    for (const bool atRight : {false, true}) {
        const bool isRight = atRight == rightOnRight;
        const QRectF at(box.left(), box.top() + box.height() * 0.24, box.width(), 8);
        const int flags = atRight ? Qt::AlignRight : Qt::AlignLeft;
        letter.draw(at, isRight ? QStringLiteral("R") : QStringLiteral("L"), flags);
        word.draw(at.translated(0, 6.2), shown(isRight ? labels.right : labels.left), flags);
    }
}

// From a mark that had to give way to the place it is of.
void paintLeader(QPainter &painter, const Theme &theme, const QPointF &place, const QPointF &mark)
{
    painter.setBrush(theme.ink);
    for (const auto &[color, width] : {std::pair(theme.ground, 0.8), std::pair(theme.ink, 0.25)}) {
        painter.setPen(QPen(color, width, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(place, mark);
        painter.drawEllipse(place, 0.35, 0.35);
    }
}

void paintFigure(QPainter &painter, const Theme &theme, const VisitMap &map, const MapFigure &figure, const QRectF &box)
{
    const BodyArt &art = *figure.art;
    const View view = art.drawing().view();
    const QRectF frame = art.frame();
    const double scale = std::min((box.height() - captionHeight) / 1000, box.width() / frame.width());
    const QPointF origin(box.center().x(), box.top() + captionHeight + (box.height() - captionHeight - scale * 1000) / 2);
    const double markSize = std::min(mostMark, scale * 1000 * markShare);
    painter.save();
    painter.translate(origin);
    painter.scale(scale, scale);
    BodyLook look;
    look.unitsPerPixel = 0.25 / scale * 0.55; // lines of about 0.14 mm
    for (const MapMark &mark : *figure.marks)
        if (mark.kind != MarkKind::Clear && mark.kind != MarkKind::Unable && mark.at && mark.at->view == view)
            look.found.push_back(mark.place);
    art.paintLayers(painter, theme, look);
    art.paintHighlights(painter, theme, look);
    painter.restore();

    std::vector<const MapMark *> here;
    std::vector<QPointF> points;
    for (const MapMark &mark : *figure.marks)
        if (mark.at && mark.at->view == view) {
            here.push_back(&mark);
            points.emplace_back(mark.at->point.x * scale, mark.at->point.y * scale);
        }
    const std::vector<QPointF> home = points;
    points = spreadMarks(std::move(points), markSize * 1.45);
    for (std::size_t i = 0; i < points.size(); ++i)
        if (QLineF(home[i], points[i]).length() > markSize * 0.6)
            paintLeader(painter, theme, origin + home[i], origin + points[i]);
    for (std::size_t i = 0; i < here.size(); ++i)
        paintMark(painter, theme, {here[i]->kind, here[i]->grade, here[i]->familiar, here[i]->number, false}, origin + points[i],
            markSize);
    paintSides(painter, theme, map.labels, art.drawing(), box);
    Type(painter, 3.3, QFont::Normal, theme.quiet)
        .draw(QRectF(box.left(), box.top(), box.width(), captionHeight), figure.caption,
            Qt::AlignLeft); // marks above the crown stand in the middle
}

} // namespace

std::vector<MapFigure> mapFigures(const VisitMap &map, const BodyArt &front, const BodyArt &back)
{
    const auto views = {std::pair(&front, map.labels.front), std::pair(&back, map.labels.back)};
    std::vector<MapFigure> out;
    for (const auto &[art, name] : views) {
        const View view = art->drawing().view();
        if (!map.now.empty() && !isOn(map.now, view) && !isOn(map.marks, view))
            continue; // nothing on it at all
        const bool isAgain = isOn(map.now, view);
        const QString before = isAgain ? QStringLiteral("%1: %2").arg(shown(name), shown(map.labels.before)) : shown(name);
        out.push_back({art, &map.marks, before});
        if (isAgain)
            out.push_back({art, &map.now, shown(map.labels.now)});
    }
    return out;
}

void paintMapFigures(
    QPainter &painter, const Theme &theme, const VisitMap &map, const std::vector<MapFigure> &figures, const QRectF &box)
{
    const double width = box.width() / static_cast<double>(std::max<std::size_t>(figures.size(), 2));
    const double left = box.left() + (box.width() - width * static_cast<double>(figures.size())) / 2;
    for (std::size_t i = 0; i < figures.size(); ++i)
        paintFigure(painter, theme, map, figures[i],
            QRectF(left + width * (static_cast<double>(i) + 0.02), box.top(), width * 0.96, box.height()));
}

double paintMapKey(QPainter *painter, const Theme &theme, const VisitMap &map, const QRectF &box, double points)
{
    struct Entry {
        MarkKind kind;
        bool familiar;
        QString words;
    };
    std::vector<Entry> entries;
    for (const auto &[kind, words] : map.labels.marks)
        if (std::any_of(map.marks.begin(), map.marks.end(), [k = kind](const MapMark &m) { return m.kind == k; })
            || std::any_of(map.now.begin(), map.now.end(), [k = kind](const MapMark &m) { return m.kind == k; }))
            entries.push_back({kind, false, shown(words)});
    if (std::any_of(map.marks.begin(), map.marks.end(), [](const MapMark &m) { return m.familiar; }))
        entries.push_back({MarkKind::Tender, true, shown(map.labels.familiar)});
    const TypeLook look{points, QFont::Normal, theme.quiet};
    const double row = std::max(keyMark + 1.4, millimetresOf(points) * 1.4);
    double x = 3;
    double y = 0;
    for (const Entry &entry : entries) {
        const double width = QFontMetricsF(typefaceInUnits(100)).horizontalAdvance(entry.words) * millimetresOf(points) / 100;
        if (x > 3 && x + width + 3 > box.width()) {
            x = 3;
            y += row;
        }
        if (painter) {
            paintMark(
                *painter, theme, {entry.kind, 0, entry.familiar, 0, false}, box.topLeft() + QPointF(x, y + row / 2), keyMark);
            const Lines words(entry.words, width + 5, look);
            words.draw(*painter, box.topLeft() + QPointF(x + 3.4, y + (row - words.lineHeight()) / 2));
        }
        x += width + 7;
    }
    return entries.empty() ? 0 : y + row;
}

} // namespace raphe
