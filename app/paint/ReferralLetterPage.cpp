#include "app/paint/ReferralLetterPage.h"

#include "app/paint/Flow.h"
#include "app/paint/Theme.h"
#include "app/paint/Type.h"
#include "app/paint/TypedText.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr double margin = 18; // mm
constexpr double footRoom = 14;
constexpr double labelWidth = 42;

QString tr(const char *text)
{
    return QCoreApplication::translate("ReferralLetterPage", text);
}

QString q(const std::string &text)
{
    return safelyShown(QString::fromStdString(text));
}

class Maker {
public:
    Maker(const QRectF &area, double points) : m_width(area.width()), m_height(area.height()), m_points(points) { }

    std::vector<Block> blocksOf(const ReferralLetter &letter)
    {
        text(Lines(q(letter.title), m_width, bold(m_points + 6)), 0, 2);
        for (const LetterLine &line : letter.heads)
            add(line, bold(m_points));
        for (const LetterPart &part : letter.parts) {
            m_blocks.push_back({m_points * 0.3, {}});
            text(Lines(q(part.title), m_width, bold(m_points + 0.5)), 0, 0.6);
            m_blocks.back().keepsWithNext = true;
            for (const LetterLine &line : part.lines)
                add(line, plain());
        }
        m_blocks.push_back({12, {}});
        const Lines sign(q(letter.signature), labelWidth, plain());
        m_blocks.push_back({8, [this_width = m_width, sign, ink = m_theme.ink](QPainter &painter, const QPointF &at) {
                                sign.draw(painter, at + QPointF(0, 8 - sign.height()));
                                painter.setPen(QPen(ink, 0.2));
                                painter.drawLine(at + QPointF(labelWidth, 8), at + QPointF(this_width, 8));
                            }});
        return std::move(m_blocks);
    }

private:
    [[nodiscard]] TypeLook plain() const { return {m_points, QFont::Normal, m_theme.ink}; }
    [[nodiscard]] TypeLook bold(double points) const { return {points, QFont::Bold, m_theme.ink}; }

    // Divided where it is longer than a page.
    void text(const Lines &lines, double left, double after, const Lines &label = {})
    {
        const int most = std::max(1, static_cast<int>(m_height / lines.lineHeight()) - 1);
        for (int first = 0; first < lines.count(); first += most) {
            const Lines piece = lines.part(first, most);
            const bool isFirst = first == 0;
            m_blocks.push_back({std::max(piece.height(), isFirst ? label.height() : 0) + after,
                [piece, left, label, isFirst](QPainter &painter, const QPointF &at) {
                    if (isFirst && label.count() > 0)
                        label.draw(painter, at);
                    piece.draw(painter, at + QPointF(left, 0));
                }});
        }
    }

    void add(const LetterLine &line, const TypeLook &look)
    {
        const double left = line.label.empty() ? 0 : labelWidth;
        const Lines label(q(line.label), labelWidth - 3, {m_points, QFont::Normal, m_theme.quiet});
        text(Lines(q(line.text), m_width - left, look), left, 0.5, line.label.empty() ? Lines() : label);
    }

    const Theme m_theme = Theme::paper();
    double m_width;
    double m_height;
    double m_points;
    std::vector<Block> m_blocks;
};

} // namespace

Result<Done> writeReferralLetter(const std::string &file, Paper paper, const ReferralLetter &letter)
{
    const QRectF within = sheetOf(paper).adjusted(margin, margin, -margin, -margin + 4);
    const Theme theme = Theme::paper();
    FlowLook look{paper, QPageLayout::Portrait, within.adjusted(0, 0, 0, -footRoom), {}};
    look.frame = [&](QPainter &painter, int page, int pages) {
        const Lines limits(q(letter.limits), within.width() - (pages > 1 ? 25 : 0), {8.5, QFont::Normal, theme.quiet});
        limits.draw(painter, {within.left(), within.bottom() - limits.height()});
        Type quiet(painter, millimetresOf(8.5), QFont::Normal, theme.quiet);
        if (pages > 1)
            quiet.draw(within, tr("page %1 of %2").arg(page).arg(pages), Qt::AlignRight | Qt::AlignBottom);
    };
    std::vector<Block> blocks;
    for (double points = 11; points >= 8; points -= 0.5) {
        blocks = Maker(look.area, points).blocksOf(letter);
        if (flow(blocks, look.area.height()).size() == 1)
            break;
    }
    return writeFlow(file, q(letter.title), look, blocks);
}

} // namespace raphe
