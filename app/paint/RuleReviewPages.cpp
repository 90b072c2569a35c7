#include "app/paint/RuleReviewPages.h"

#include "app/paint/Flow.h"
#include "app/paint/Theme.h"
#include "app/paint/Type.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr double margin = 10; // mm
constexpr double headRoom = 9; // above the blocks: title and mark
constexpr double footRoom = 8; // below them: number of the page
constexpr double pad = 1.3; // within a cell
constexpr double tickWidth = 12; // a column for a tick
constexpr double remarkWidth = 40;
constexpr double tick = 3.6; // a box to tick

QString tr(const char *text)
{
    return QCoreApplication::translate("RuleReviewPages", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

class Table {
public:
    Table(const ReviewPart &part, const QRectF &area) : m_area(area)
    {
        double shares = 0;
        for (const ReviewColumn &column : part.columns)
            shares += column.share;
        const double width = area.width() - 2 * tickWidth - remarkWidth;
        for (const ReviewColumn &column : part.columns) {
            m_names << q(column.name);
            m_widths.push_back(width * column.share / shares);
        }
        for (const auto &[name, answerWidth] : {std::pair{tr("agree"), tickWidth}, std::pair{tr("change"), tickWidth},
                 std::pair{tr("remark of the reviewer"), remarkWidth}}) {
            m_names << name;
            m_widths.push_back(answerWidth);
        }
    }

    /// The names of the columns; with a title where the table goes on on another page.
    [[nodiscard]] Block head(const QString &title) const
    {
        const Lines above(title, m_area.width(), {9, QFont::Bold, theme().quiet});
        const double down = title.isEmpty() ? 0 : above.height() + 1;
        std::vector<Lines> cells;
        double height = 0;
        for (std::size_t i = 0; i < m_widths.size(); ++i) {
            cells.emplace_back(m_names.at(static_cast<int>(i)), textWidth(i), TypeLook{8, QFont::Bold, theme().ink});
            height = std::max(height, cells.back().height());
        }
        const double whole = height + 2 * pad;
        return {down + whole, [*this, above, down, cells, whole](QPainter &painter, const QPointF &top) {
                    const QPointF at = top + QPointF(0, down);
                    above.draw(painter, top);
                    painter.fillRect(QRectF(at, QSizeF(m_area.width(), whole)), QColor(0xe9, 0xec, 0xed));
                    drawCells(painter, at, cells);
                    drawLines(painter, at, whole);
                }};
    }

    /// The row, in as many pieces as pages of this height need.
    void addRow(std::vector<Block> &blocks, const ReviewRow &row, const std::shared_ptr<const Block> &head) const
    {
        std::vector<Lines> cells;
        int lines = 2; // room for a remark
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            cells.emplace_back(q(row.cells[i]), textWidth(i), TypeLook{8.2, QFont::Normal, theme().ink, 1.18});
            lines = std::max(lines, cells.back().count());
        }
        const double lineHeight = cells.front().lineHeight();
        const int most = static_cast<int>((m_area.height() - head->height - 2 * pad) / lineHeight);
        for (int first = 0; first < lines; first += most) {
            std::vector<Lines> pieces;
            pieces.reserve(cells.size());
            for (const Lines &whole : cells)
                pieces.push_back(whole.part(first, most));
            const double height = std::min(most, lines - first) * lineHeight + 2 * pad;
            const bool isFirst = first == 0;
            blocks.push_back({height,
                [*this, pieces, height, isFirst](QPainter &painter, const QPointF &at) {
                    drawCells(painter, at, pieces);
                    drawLines(painter, at, height);
                    if (isFirst)
                        drawTicks(painter, at);
                },
                false, false, head});
        }
    }

private:
    static const Theme &theme()
    {
        static const Theme paper = Theme::paper();
        return paper;
    }
    [[nodiscard]] double textWidth(std::size_t column) const { return m_widths[column] - 2 * pad; }
    void drawCells(QPainter &painter, const QPointF &at, const std::vector<Lines> &cells) const
    {
        double x = at.x();
        for (std::size_t i = 0; i < cells.size(); ++i) {
            cells[i].draw(painter, {x + pad, at.y() + pad});
            x += m_widths[i];
        }
    }
    void drawLines(QPainter &painter, const QPointF &at, double height) const
    {
        painter.setPen(QPen(theme().quiet, 0.15));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(at, QSizeF(m_area.width(), height)));
        double x = at.x();
        for (std::size_t i = 0; i + 1 < m_widths.size(); ++i) {
            x += m_widths[i];
            painter.drawLine(QPointF(x, at.y()), QPointF(x, at.y() + height));
        }
    }
    void drawTicks(QPainter &painter, const QPointF &at) const
    {
        painter.setPen(QPen(theme().ink, 0.25));
        double x = at.x() + m_area.width() - remarkWidth - 2 * tickWidth;
        for (int i = 0; i < 2; ++i, x += tickWidth)
            painter.drawRect(QRectF(x + (tickWidth - tick) / 2, at.y() + pad + 0.3, tick, tick));
    }

    QRectF m_area;
    QStringList m_names;
    std::vector<double> m_widths;
};

class Maker {
public:
    explicit Maker(const QRectF &area) : m_area(area) { }

    std::vector<Block> blocksOf(const RuleReview &review)
    {
        text(q(review.title), {17, QFont::Bold, m_theme.ink}, 2);
        for (const std::string &words : review.words)
            text(q(words), {10, QFont::Normal, m_theme.ink, 1.35}, 2);
        for (const ReviewPart &part : review.parts)
            add(part);
        addSignature(review);
        return std::move(m_blocks);
    }

private:
    void room(double height) { m_blocks.push_back({height, {}}); }

    void text(const QString &words, const TypeLook &look, double after, bool isHeading = false)
    {
        const Lines lines(words, m_area.width(), look);
        m_blocks.push_back({lines.height() + after, [lines](QPainter &painter, const QPointF &at) { lines.draw(painter, at); },
            false, isHeading});
    }

    void add(const ReviewPart &part)
    {
        const Table table(part, m_area);
        room(6);
        text(q(part.title), {13, QFont::Bold, m_theme.ink}, 1, true);
        text(q(part.words), {9, QFont::Normal, m_theme.quiet}, 1, true);
        for (const ReviewGroup &group : part.groups) {
            room(3);
            text(q(group.title), {10, QFont::Bold, m_theme.ink}, 1, true);
            m_blocks.push_back(table.head({}));
            m_blocks.back().keepsWithNext = true;
            //: %1: title of a table; %2: its group of rows; stands where the table goes on on another page
            const auto head =
                std::make_shared<const Block>(table.head(tr("%1: %2, continued").arg(q(part.title), q(group.title))));
            for (const ReviewRow &row : group.rows)
                table.addRow(m_blocks, row, head);
        }
    }

    // On one page, with the sentence that is signed.
    void addSignature(const RuleReview &review)
    {
        room(8);
        text(tr("Reviewer"), {13, QFont::Bold, m_theme.ink}, 1, true);
        text(tr("I have read the pages above. Where 'change' is ticked I do not agree as it stands. Rows without a tick were not "
                "judged. Until this block is filled in: %1.")
                 .arg(q(review.mark).toLower()),
            {10, QFont::Normal, m_theme.ink, 1.35}, 3, true);
        const QStringList names{tr("Name"), tr("Profession, licence and its number"), tr("Date"), tr("Signature"),
            tr("What is missing from these tables")};
        for (const QString &name : names) {
            const Lines label(name, 70, {10, QFont::Normal, m_theme.ink});
            const double width = m_area.width();
            m_blocks.push_back({12,
                [label, width, pen = QPen(m_theme.ink, 0.25)](QPainter &painter, const QPointF &at) {
                    label.draw(painter, at + QPointF(0, 5));
                    painter.setPen(pen);
                    painter.drawLine(at + QPointF(72, 10), at + QPointF(width, 10));
                },
                false, name != names.back()});
        }
    }

    const Theme m_theme = Theme::paper();
    QRectF m_area;
    std::vector<Block> m_blocks;
};

} // namespace

PrintedPages ruleReviewPages(Paper paper, const RuleReview &review)
{
    const QRectF sheet = sheetOf(paper, QPageLayout::Landscape);
    const QRectF within = sheet.adjusted(margin, margin, -margin, -margin);
    const Theme theme = Theme::paper();
    FlowLook look{paper, QPageLayout::Landscape, within.adjusted(0, headRoom, 0, -footRoom), {}};
    look.frame = [within, theme, markWords = q(review.mark), title = q(review.title)](QPainter &painter, int page, int pages) {
        Type mark(painter, millimetresOf(11), QFont::Bold, theme.tender);
        Type quiet(painter, millimetresOf(8.5), QFont::Normal, theme.quiet);
        mark.draw(within, markWords, Qt::AlignLeft | Qt::AlignTop);
        quiet.draw(within, title, Qt::AlignRight | Qt::AlignTop);
        quiet.draw(within, tr("Assists a trained practitioner; follow local law, scope of practice and licensed care."),
            Qt::AlignLeft | Qt::AlignBottom);
        quiet.draw(within, tr("page %1 of %2").arg(page).arg(pages), Qt::AlignRight | Qt::AlignBottom);
    };
    return flowPages(q(review.title), look, Maker(look.area).blocksOf(review));
}

} // namespace raphe
