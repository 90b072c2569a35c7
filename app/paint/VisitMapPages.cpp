#include "app/paint/VisitMapPages.h"

#include "app/paint/Flow.h"
#include "app/paint/MapFigures.h"
#include "app/paint/Type.h"
#include "app/paint/TypedText.h"
#include "core/document/PatientTexts.h"

#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr double margin = 12; // mm; most desk printers leave 5 to 6 mm
constexpr double gap = 7; // between columns
constexpr int steps = 5; // of half a point, up to the size of ordinary print
constexpr double smallest = 8; // before a second page is taken
constexpr double largePrint = 16;
constexpr double leastFigures = 52; // mm
constexpr double mostFigures = 150;

QString q(const std::string &text)
{
    return safelyShown(QString::fromStdString(text));
}

// Everything at one size of type: measured, and painted from what was measured.
class Layout {
public:
    Layout(const MapPrint &print, const VisitMap &map, const BodyArt &front, const BodyArt &back, double points)
        : m_map(map),
          m_theme(print.isGrey ? Theme::greyPaper() : Theme::paper()),
          m_area(sheetOf(print.paper).adjusted(margin, margin, -margin, -margin + 3)),
          m_points(points),
          m_columns(print.isLarge ? 1 : 2),
          m_figures(mapFigures(map, front, back)),
          m_legal(q(map.legal), m_area.width() - 22, look(print.isLarge ? 12 : 8, m_theme.quiet)),
          m_cautions(q(map.cautions), m_area.width() - 6, look(points, m_theme.ink))
    {
        head();
        m_key = paintMapKey(nullptr, m_theme, m_map, m_area, keyPoints());
        list();
        sections();
        const double room = m_area.height() - foot() - m_headHeight - warningsHeight() - cautionsHeight() - m_key - 4;
        if (print.isLarge) {
            m_figureHeight = std::min(room * 0.8, mostFigures);
            place(std::max(room - m_figureHeight, 0.0));
        } else {
            // The least height at which two columns hold all; what is left goes to the figures.
            double low = 0;
            double high = room - leastFigures;
            m_fits = columnsAt(high) <= 2;
            for (int i = 0; m_fits && i < 12; ++i)
                (columnsAt((low + high) / 2) <= 2 ? high : low) = (low + high) / 2;
            m_figureHeight = std::clamp(room - high, leastFigures, mostFigures);
            place(room - m_figureHeight);
        }
    }

    [[nodiscard]] bool fits() const { return m_fits; }
    [[nodiscard]] std::size_t pages() const { return std::max<std::size_t>(1, (m_placed.size() + m_columns - 1) / m_columns); }

    void paint(QPainter &painter, std::size_t page) const
    {
        painter.setRenderHint(QPainter::Antialiasing);
        double y = m_area.top();
        if (page == 0) {
            y = paintFirst(painter);
        } else {
            const Lines name(runningHead(), m_area.width(), look(9, m_theme.quiet));
            name.draw(painter, m_area.topLeft());
            y += runningHeight;
        }
        const double width = columnWidth();
        for (std::size_t c = 0; c < m_columns && page * m_columns + c < m_placed.size(); ++c)
            for (const PlacedBlock &at : m_placed[page * m_columns + c])
                if (at.block->paint)
                    at.block->paint(painter, {m_area.left() + static_cast<double>(c) * (width + gap), y + at.top});
        m_legal.draw(painter, {m_area.left(), m_area.bottom() - m_legal.height()});
        if (pages() > 1) {
            const std::string numbered =
                filled(m_map.labels.pageText, {{"page", std::to_string(page + 1)}, {"pages", std::to_string(pages())}});
            Type(painter, millimetresOf(8.5), QFont::Normal, m_theme.quiet)
                .draw(m_area, q(numbered), Qt::AlignRight | Qt::AlignBottom);
        }
    }

private:
    static constexpr double runningHeight = 8;

    [[nodiscard]] static TypeLook look(double points, const QColor &color, int weight = QFont::Normal)
    {
        return {points, weight, color, points < 9.5 ? 1.17 : 1.22};
    }
    [[nodiscard]] double keyPoints() const { return std::max(8.0, m_points - 1); }
    [[nodiscard]] double columnWidth() const
    {
        return (m_area.width() - gap * static_cast<double>(m_columns - 1)) / static_cast<double>(m_columns);
    }
    [[nodiscard]] double foot() const { return m_legal.height() + 3; }
    [[nodiscard]] double cautionsHeight() const { return m_cautions.height() + 6; }
    [[nodiscard]] double warningsHeight() const { return m_map.warnings.empty() ? 0 : m_warnings.height() + 7; }
    [[nodiscard]] QString runningHead() const
    {
        QStringList words;
        for (const std::string &word : {m_map.title, m_map.patient, m_map.date})
            if (!word.empty())
                words << q(word);
        return words.join(QStringLiteral(" \u00b7 "));
    }

    void head()
    {
        const double half = m_area.width() * 0.62;
        m_title = Lines(q(m_map.title), half, look(m_points + 9, m_theme.ink, QFont::Bold));
        m_name = Lines(q(m_map.patient), half, look(m_points + 1, m_theme.ink));
        m_words = Lines(q(m_map.complaint), m_area.width(), look(m_points, m_theme.quiet));
        m_right = Lines(q(m_map.date + "\n" + m_map.practitioner), m_area.width() - half - 4, look(m_points, m_theme.quiet));
        QStringList warnings;
        for (const std::string &warning : m_map.warnings)
            warnings << q(warning);
        m_warnings = Lines(warnings.join(QLatin1Char('\n')), m_area.width() - 6, look(m_points + 0.5, m_theme.ink, QFont::Bold));
        const double left = m_title.height() + (m_map.patient.empty() ? 0 : m_name.height());
        m_headHeight = std::max(left, m_right.height()) + (m_map.complaint.empty() ? 0 : m_words.height() + 0.6) + 4;
    }

    double paintFirst(QPainter &painter) const
    {
        double y = m_area.top();
        m_title.draw(painter, {m_area.left(), y});
        m_right.draw(painter, {m_area.left() + m_area.width() * 0.62 + 4, y + 1});
        if (!m_map.patient.empty())
            m_name.draw(painter, {m_area.left(), y + m_title.height()});
        y += m_headHeight;
        if (!m_map.complaint.empty())
            m_words.draw(painter, {m_area.left(), y - 3.6 - m_words.height()});
        painter.setPen(QPen(m_theme.quiet, 0.2));
        painter.drawLine(QPointF(m_area.left(), y - 2), QPointF(m_area.right(), y - 2));
        if (!m_map.warnings.empty()) {
            box(painter, {m_area.left(), y, m_area.width(), m_warnings.height() + 4}, 0.8, 0);
            m_warnings.draw(painter, {m_area.left() + 3, y + 2});
            y += warningsHeight();
        }
        paintMapFigures(painter, m_theme, m_map, m_figures, {m_area.left(), y, m_area.width(), m_figureHeight});
        y += m_figureHeight + 1;
        paintMapKey(&painter, m_theme, m_map, {m_area.left(), y, m_area.width(), m_key}, keyPoints());
        y += m_key + 2;
        const double top = m_area.bottom() - foot() - cautionsHeight() + 3;
        box(painter, {m_area.left(), top, m_area.width(), m_cautions.height() + 3}, 0.35, 1.2);
        m_cautions.draw(painter, {m_area.left() + 3, top + 1.5});
        return y;
    }

    void box(QPainter &painter, const QRectF &at, double line, double radius) const
    {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme.ink, line));
        painter.drawRoundedRect(at, radius, radius);
    }

    void title(const std::string &text)
    {
        m_blocks.push_back({m_points * 0.25, {}});
        const Lines lines(q(text), columnWidth(), look(m_points + 2, m_theme.ink, QFont::Bold));
        m_blocks.push_back({lines.height() + 0.4, [lines](QPainter &painter, const QPointF &at) { lines.draw(painter, at); }});
        m_blocks.back().keepsWithNext = true;
    }

    void word(const std::string &lead, const std::string &text, const std::string &number)
    {
        const double indent = number.empty() ? 0 : millimetresOf(m_points) * 2.1;
        const QString head = lead.empty() ? QString() : q(lead) + (text.empty() ? QString() : QStringLiteral(" "));
        const Lines lines(head + q(text), columnWidth() - indent, look(m_points, m_theme.ink), static_cast<int>(head.size()));
        const Lines digits(q(number), indent + 1, look(m_points, m_theme.ink, QFont::Bold));
        // Long ones in pieces, so that a column can end in between.
        for (int first = 0, taken = 0; first < lines.count(); first += taken) {
            const int left = lines.count() - first;
            taken = left == 4 ? 2 : std::min(left, 3); // no last line alone
            const Lines piece = lines.part(first, taken);
            m_blocks.push_back({piece.height() + (taken == left ? m_points * 0.09 : 0),
                [piece, digits, indent, isFirst = first == 0](QPainter &painter, const QPointF &at) {
                    if (isFirst && indent > 0)
                        digits.draw(painter, at);
                    piece.draw(painter, at + QPointF(indent, 0));
                }});
        }
    }

    void list()
    {
        if (m_map.lines.empty())
            return;
        title(m_map.foundTitle);
        for (const MapLine &line : m_map.lines)
            word(line.place + ":", line.finding, std::to_string(line.number));
    }

    void sections()
    {
        for (const MapSection &section : m_map.sections) {
            title(section.title);
            for (const MapWord &at : section.words)
                word(at.lead, at.text, at.number > 0 ? std::to_string(at.number) : std::string());
        }
    }

    [[nodiscard]] std::size_t columnsAt(double height) const { return height <= 0 ? 1000 : flow(m_blocks, height).size(); }
    void place(double first)
    {
        const double later = m_area.height() - foot() - runningHeight;
        const std::size_t columns = m_columns;
        m_placed = flow(m_blocks, [=](std::size_t column) { return column < columns ? first : later; });
    }

    const VisitMap &m_map;
    Theme m_theme;
    QRectF m_area;
    double m_points;
    std::size_t m_columns;
    std::vector<MapFigure> m_figures;
    Lines m_legal, m_cautions, m_title, m_name, m_words, m_right, m_warnings;
    double m_headHeight = 0;
    double m_key = 0;
    double m_figureHeight = 0;
    bool m_fits = true;
    std::vector<Block> m_blocks;
    std::vector<std::vector<PlacedBlock>> m_placed;
};

} // namespace

PrintedPages visitMapPages(const MapPrint &print, const VisitMap &map, const BodyArt &front, const BodyArt &back)
{
    const auto kept = std::make_shared<const VisitMap>(map);
    std::shared_ptr<const Layout> layout;
    if (print.isLarge)
        layout = std::make_shared<const Layout>(print, *kept, front, back, largePrint);
    // The greatest size that fits, found by halving; the smallest where none does.
    const auto at = [&](int step) { return std::make_shared<const Layout>(print, *kept, front, back, smallest + 0.5 * step); };
    if (!print.isLarge) {
        layout = at(0);
        for (int low = 1, high = layout->fits() ? steps : 0; low <= high;) {
            const int middle = (low + high) / 2;
            auto tried = at(middle);
            if (tried->fits()) {
                layout = std::move(tried);
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
    }
    PrintedPages document{print.paper, QPageLayout::Portrait, q(map.title), {}};
    for (std::size_t page = 0; page < layout->pages(); ++page)
        document.pages.emplace_back([kept, layout, page](QPainter &painter) { layout->paint(painter, page); });
    return document;
}

} // namespace raphe
