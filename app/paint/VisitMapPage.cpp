#include "app/paint/VisitMapPage.h"

#include "app/paint/Marks.h"
#include "app/paint/Type.h"
#include "app/paint/TypedText.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDate>
#include <QImage>
#include <QLocale>
#include <QPainter>
#include <QSvgGenerator>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace raphe {

namespace {

constexpr double margin = 14; // mm; most desk printers leave 5 to 6 mm

QString tr(const char *text)
{
    return QCoreApplication::translate("VisitMapPage", text);
}

QString q(const std::string &text)
{
    return safelyShown(QString::fromStdString(text));
}

QString longDate(const std::string &iso)
{
    const QDate date = QDate::fromString(q(iso), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, QLocale::LongFormat) : QString();
}

void paintSideLetters(QPainter &painter, const Theme &theme, const Drawing &drawing, const QRectF &box)
{
    Type letter(painter, 5, QFont::Bold, theme.ink);
    const bool rightOnRight = drawing.signOf(Side::Right) > 0;
    const QRectF at(box.left(), box.top() + box.height() * 0.30, box.width(), 7);
    letter.draw(at, rightOnRight ? tr("L") : tr("R"), Qt::AlignLeft);
    letter.draw(at, rightOnRight ? tr("R") : tr("L"), Qt::AlignRight);
}

void paintFigure(QPainter &painter, const Theme &theme, const BodyArt &art, const VisitMap &map, const QRectF &box)
{
    const View view = art.drawing().view();
    const double scale = (box.height() - 6) / 1000;
    const QPointF origin(box.center().x(), box.top() + 6);

    painter.save();
    painter.translate(origin);
    painter.scale(scale, scale);
    BodyLook look;
    look.unitsPerPixel = 0.25 / scale * 0.55; // lines of about 0.14 mm
    for (const MapMark &mark : map.marks)
        if (mark.kind != MarkKind::Clear && mark.kind != MarkKind::Unable && mark.at && mark.at->view == view)
            look.found.push_back(mark.place);
    art.paintLayers(painter, theme, look);
    art.paintHighlights(painter, theme, look);
    painter.restore();

    std::vector<const MapMark *> here;
    std::vector<QPointF> points;
    for (const MapMark &mark : map.marks)
        if (mark.at && mark.at->view == view) {
            here.push_back(&mark);
            points.emplace_back(mark.at->point.x * scale, mark.at->point.y * scale);
        }
    const double size = 4.6; // mm
    points = spreadMarks(std::move(points), size * 1.45);
    for (std::size_t i = 0; i < here.size(); ++i)
        paintMark(
            painter, theme, {here[i]->kind, here[i]->grade, here[i]->familiar, here[i]->number, false}, origin + points[i], size);

    paintSideLetters(painter, theme, art.drawing(), box);
    Type caption(painter, 3.3, QFont::Normal, theme.quiet);
    caption.draw(QRectF(box.left(), box.top(), box.width(), 5), view == View::Front ? tr("Front") : tr("Back"), Qt::AlignHCenter);
}

double paintHeader(QPainter &painter, const Theme &theme, const QRectF &area, const VisitMap &map)
{
    double y = area.top();
    Type title(painter, 7, QFont::Bold, theme.ink);
    Type quiet(painter, 3.5, QFont::Normal, theme.quiet);
    Type text(painter, 3.9, QFont::Normal, theme.ink);
    title.draw(QRectF(area.left(), y, area.width(), 10), tr("What we found today"));
    quiet.draw(QRectF(area.left(), y + 1, area.width(), 6), longDate(map.date), Qt::AlignRight);
    quiet.draw(QRectF(area.left(), y + 6, area.width(), 6), q(map.practitioner), Qt::AlignRight);
    y += 10;
    if (!map.patient.empty())
        y += text.draw(QRectF(area.left(), y, area.width() * 0.6, 8), q(map.patient)) + 0.6;
    if (!map.complaint.empty())
        y += quiet.draw(QRectF(area.left(), y, area.width(), 14), tr("In your words: %1").arg(q(map.complaint))) + 0.6;
    painter.setPen(QPen(theme.quiet, 0.2));
    painter.drawLine(QPointF(area.left(), y + 1.6), QPointF(area.right(), y + 1.6));
    return y + 3;
}

// One sample of each mark that the page uses.
void paintLegend(QPainter &painter, const Theme &theme, const QRectF &area, const VisitMap &map)
{
    struct Entry {
        MarkKind kind;
        bool familiar;
        QString words;
    };
    std::vector<Entry> entries;
    const auto used = [&](MarkKind kind) {
        return std::any_of(map.marks.begin(), map.marks.end(), [kind](const MapMark &m) { return m.kind == kind; });
    };
    if (used(MarkKind::Tender))
        entries.push_back({MarkKind::Tender, false, tr("sore")});
    if (used(MarkKind::Restricted))
        entries.push_back({MarkKind::Restricted, false, tr("moves less")});
    if (used(MarkKind::TenderAndRestricted))
        entries.push_back({MarkKind::TenderAndRestricted, false, tr("sore and moves less")});
    if (used(MarkKind::Noted))
        entries.push_back({MarkKind::Noted, false, tr("noted")});
    if (used(MarkKind::Clear))
        entries.push_back({MarkKind::Clear, false, tr("checked, nothing found")});
    if (used(MarkKind::Unable))
        entries.push_back({MarkKind::Unable, false, tr("not checked")});
    if (std::any_of(map.marks.begin(), map.marks.end(), [](const MapMark &m) { return m.familiar; }))
        entries.push_back({MarkKind::Tender, true, tr("ring: the pain you know")});
    Type words(painter, 3.1, QFont::Normal, theme.quiet);
    double x = area.left() + 3;
    for (const Entry &entry : entries) {
        paintMark(painter, theme, {entry.kind, 0, entry.familiar, 0, false}, QPointF(x, area.top() + 2.2), 3.2);
        words.draw(QRectF(x + 3.6, area.top() + 0.2, 60, 5), entry.words, Qt::AlignLeft);
        x += 9 + QFontMetricsF(typefaceInUnits(100)).horizontalAdvance(entry.words) * 0.031;
    }
}

// Where each line of the list goes, in type of one size and a number of columns of about the same height.
struct ListLayout {
    double size = 0; // mm
    double column = 0;
    std::vector<std::pair<QPointF, const MapLine *>> lines;
    bool fits = false;
};

ListLayout layOut(QPainter &painter, const QRectF &area, const VisitMap &map, double size, int columns)
{
    const double gap = 6;
    ListLayout layout{size, (area.width() - gap * (columns - 1)) / columns, {}, true};
    const Type bold(painter, size, QFont::Bold, {});
    const Type words(painter, size, QFont::Normal, {});
    const double width = layout.column - size * 2.1;
    std::vector<double> heights;
    for (const MapLine &line : map.lines)
        heights.push_back(bold.height(width, q(line.place)) + words.height(width, q(line.finding)) + size * 0.6);
    const double share = std::accumulate(heights.begin(), heights.end(), 0.0) / columns;
    QPointF at = area.topLeft();
    int column = 0;
    for (std::size_t i = 0; i < heights.size(); ++i) {
        const bool full = at.y() + heights[i] > area.bottom();
        const bool hasItsShare = at.y() - area.top() + heights[i] / 2 > share;
        if ((full || hasItsShare) && column + 1 < columns && at.y() > area.top()) {
            ++column;
            at = QPointF(area.left() + column * (layout.column + gap), area.top());
        }
        layout.fits = layout.fits && at.y() + heights[i] <= area.bottom() + 0.5;
        layout.lines.emplace_back(at, &map.lines[i]);
        at.ry() += heights[i];
    }
    return layout;
}

// Full size in two columns if it fits, then three, then smaller; nothing is left out.
ListLayout bestLayout(QPainter &painter, const QRectF &area, const VisitMap &map, double smallest)
{
    ListLayout layout;
    for (double size = 3.9; size >= smallest; size -= 0.1)
        for (const int columns : {2, 3})
            if (layout = layOut(painter, area, map, size, columns); layout.fits)
                return layout;
    return layout;
}

void paintList(QPainter &painter, const Theme &theme, const ListLayout &layout)
{
    Type bold(painter, layout.size, QFont::Bold, theme.ink);
    Type words(painter, layout.size, QFont::Normal, theme.ink);
    const double indent = layout.size * 2.1;
    for (const auto &[at, line] : layout.lines) {
        bold.draw(QRectF(at.x(), at.y(), indent, 20), QString::number(line->number));
        const double used = bold.draw(QRectF(at.x() + indent, at.y(), layout.column - indent, 30), q(line->place));
        words.draw(QRectF(at.x() + indent, at.y() + used, layout.column - indent, 30), q(line->finding));
    }
}

// In a frame of its own over the figures: whoever takes the page home sees it first. Gives where it ends.
double paintWarnings(QPainter &painter, const Theme &theme, const QRectF &area, const std::vector<std::string> &warnings)
{
    if (warnings.empty())
        return area.top();
    QStringList lines;
    for (const std::string &warning : warnings)
        lines << q(warning);
    const QString text = lines.join(QLatin1Char('\n'));
    Type bold(painter, 3.9, QFont::Bold, theme.ink);
    const QRectF box(area.left(), area.top() + 1, area.width(), bold.height(area.width() - 6, text) + 3.6);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.ink, 0.8));
    painter.drawRect(box);
    bold.draw(box.adjusted(3, 1.6, -3, -1), text);
    return box.bottom() + 3;
}

double cautionsHeight(QPainter &painter, const Theme &theme, double width, const QString &text)
{
    return Type(painter, 3.5, QFont::Normal, theme.ink).height(width - 6, text) + 3.6;
}

void paintCautions(QPainter &painter, const Theme &theme, const QRectF &box, const QString &text)
{
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.ink, 0.35));
    painter.drawRoundedRect(box, 1.2, 1.2);
    Type(painter, 3.5, QFont::Normal, theme.ink).draw(box.adjusted(3, 1.6, -3, -1), text);
}

} // namespace

void paintVisitMap(QPainter &painter, const QRectF &page, const VisitMap &map, const BodyArt &front, const BodyArt &back)
{
    const Theme theme = Theme::paper();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF area = page.adjusted(margin, margin, -margin, -margin + 3);

    const double head = paintHeader(painter, theme, area, map);
    const double top = paintWarnings(painter, theme, QRectF(area.left(), head, area.width(), 0), map.warnings);

    QStringList cautionList;
    for (const std::string &caution : map.cautions)
        cautionList << q(caution);
    const QString cautions = cautionList.isEmpty()
        ? tr("Cautions: none were recorded. Tell us if your health or medicines change.")
        : tr("Cautions: %1").arg(cautionList.join(QStringLiteral("; ")));
    const QString assist =
        tr("This page shows where hands found something. It is not a diagnosis. It assists a trained practitioner, who follows "
           "local law, scope of practice and licensed care. If things get worse or new signs appear, seek medical help.");
    Type small(painter, 2.9, QFont::Normal, theme.quiet);
    const double assistHeight = small.height(area.width(), assist);
    const double boxHeight = cautionsHeight(painter, theme, area.width(), cautions);
    const double bottom = area.bottom() - assistHeight - boxHeight - 3;

    // The figures give way to a long list, first in size, and the type only after that.
    const auto listArea = [&](double figures) {
        return QRectF(area.left(), top + figures + 10, area.width(), bottom - top - figures - 12);
    };
    double figures = 0;
    ListLayout list;
    for (const auto &[share, smallest] :
        {std::pair{0.66, 3.0}, std::pair{0.58, 3.0}, std::pair{0.5, 2.8}, std::pair{0.42, 0.8}}) {
        figures = (bottom - top) * share;
        list = bestLayout(painter, listArea(figures), map, smallest);
        if (list.fits)
            break;
    }
    const double width = area.width() / 2;
    paintFigure(painter, theme, front, map, QRectF(area.left() + width * 0.04, top, width * 0.92, figures));
    paintFigure(painter, theme, back, map, QRectF(area.left() + width * 1.04, top, width * 0.92, figures));
    paintLegend(painter, theme, QRectF(area.left(), top + figures + 2, area.width(), 6), map);
    paintList(painter, theme, list);
    paintCautions(painter, theme, QRectF(area.left(), bottom, area.width(), boxHeight), cautions);
    small.draw(QRectF(area.left(), area.bottom() - assistHeight, area.width(), assistHeight + 1), assist);
}

namespace {

constexpr double dotsPerInch = 150;

} // namespace

Result<Done> writeVisitMap(const std::string &file, Paper paper, const VisitMap &map, const BodyArt &front, const BodyArt &back)
{
    const QRectF page = sheetOf(paper);
    if (file.ends_with(".pdf"))
        return writePdf(file, paper, QPageLayout::Portrait, tr("What we found today"),
            {[&](QPainter &painter) { paintVisitMap(painter, page, map, front, back); }});
    const QSizeF mm = page.size();
    const auto paint = [&](QPaintDevice *device, double unitsPerMillimetre) {
        QPainter painter;
        if (!painter.begin(device))
            return false;
        painter.scale(unitsPerMillimetre, unitsPerMillimetre);
        paintVisitMap(painter, page, map, front, back);
        return painter.end();
    };

    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool painted = false;
    if (file.ends_with(".svg")) {
        QSvgGenerator svg;
        svg.setOutputDevice(&buffer);
        svg.setResolution(254); // ten units a millimetre
        svg.setSize((mm * 10).toSize());
        svg.setViewBox(QRectF(0, 0, mm.width() * 10, mm.height() * 10));
        svg.setTitle(tr("What we found today"));
        painted = paint(&svg, 10);
    } else if (file.ends_with(".png")) {
        QImage image((mm * (dotsPerInch / 25.4)).toSize(), QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::white);
        painted = paint(&image, dotsPerInch / 25.4) && image.save(&buffer, "PNG");
    } else {
        return Error{ErrorCode::BadArgument, file, "the name must end in .pdf, .svg or .png"};
    }
    if (!painted)
        return Error{ErrorCode::CannotWrite, file, "the page could not be painted"};
    return saveAll(file, bytes);
}

} // namespace raphe
