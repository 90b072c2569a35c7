#include "app/paint/ArrivalFormPages.h"

#include "app/paint/Flow.h"
#include "app/paint/Theme.h"
#include "app/paint/Type.h"

#include <QPainter>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

constexpr double margin = 16; // mm
constexpr double headRoom = 10; // above the blocks: the name, so that a lost page is known
constexpr double footRoom = 7;
constexpr double points = 12; // of all that is read, at least
constexpr double writing = 8.2; // from line to line, for a hand
constexpr double tick = 4.2; // a box to tick
constexpr double scaleBox = 10;
constexpr double frameIndent = 5; // of what is urgent

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

class Maker {
public:
    Maker(const QRectF &area, const ArrivalForm &form, const BodyArt &front, const BodyArt &back)
        : m_form(form), m_front(front), m_back(back), m_width(area.width()), m_height(area.height())
    {
    }

    std::vector<Block> make()
    {
        for (const FormSection &section : m_form.sections) {
            m_left = section.isUrgent ? frameIndent : 0;
            const std::size_t first = m_blocks.size();
            room(section.startsPage || m_blocks.empty() ? 0 : 5);
            title(section);
            for (const FormItem &item : section.items)
                add(item);
            if (section.isUrgent)
                frame(first);
        }
        return std::move(m_blocks);
    }

private:
    using Paint = std::function<void(QPainter &, const QPointF &)>;

    [[nodiscard]] TypeLook plain() const { return {points, QFont::Normal, m_theme.ink, 1.28}; }
    [[nodiscard]] TypeLook bold(double size = points) const { return {size, QFont::Bold, m_theme.ink, 1.28}; }
    [[nodiscard]] double width() const { return m_width - m_left; }
    void push(double height, Paint paint, bool keepsWithNext = false)
    {
        m_blocks.push_back({height, std::move(paint), false, keepsWithNext});
    }
    void room(double height)
    {
        if (height > 0)
            push(height, {});
    }

    void title(const FormSection &section)
    {
        const Lines lines(q(section.title), width(), bold(15));
        text(lines, 1.2, true);
        m_blocks.back().startsPage = section.startsPage;
    }
    void text(const Lines &lines, double after, bool keepsWithNext = false)
    {
        push(
            lines.height() + after,
            [lines, left = m_left](QPainter &painter, const QPointF &at) { lines.draw(painter, at + QPointF(left, 0)); },
            keepsWithNext);
    }

    void add(const FormItem &item)
    {
        switch (item.kind) {
        case FormItem::Kind::Words: text(Lines(q(item.text), width(), plain()), 1.6, true); break;
        case FormItem::Kind::Signs: signs(item); break;
        case FormItem::Kind::Choices: choices(item); break;
        case FormItem::Kind::Scale: scale(item); break;
        case FormItem::Kind::Table: table(item); break;
        case FormItem::Kind::Lines: lines(item); break;
        case FormItem::Kind::Figures: figures(); break;
        }
    }

    void question(const std::string &words)
    {
        if (!words.empty())
            text(Lines(q(words), width(), bold()), 0.8, true);
    }

    void signs(const FormItem &item)
    {
        for (const std::string &option : item.options) {
            const Lines lines(q(option), width() - 5, plain());
            push(lines.height() + 0.5, [lines, left = m_left, ink = m_theme.ink](QPainter &painter, const QPointF &at) {
                painter.setPen(Qt::NoPen);
                painter.setBrush(ink);
                painter.drawEllipse(at + QPointF(left + 1.2, lines.lineHeight() / 2), 0.7, 0.7);
                lines.draw(painter, at + QPointF(left + 5, 0));
            });
        }
    }

    void drawTick(QPainter &painter, const QPointF &topLeft) const
    {
        painter.setPen(QPen(m_theme.ink, 0.3));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(topLeft, QSizeF(tick, tick)));
    }

    // In two columns, read across.
    void choices(const FormItem &item)
    {
        room(1.5);
        question(item.text);
        const double column = width() / 2;
        for (std::size_t i = 0; i < item.options.size(); i += 2) {
            std::vector<Lines> pair;
            double height = 0;
            for (std::size_t j = i; j < std::min(i + 2, item.options.size()); ++j) {
                const double room = item.options.size() == 1 ? width() : column;
                pair.emplace_back(q(item.options[j]), room - tick - 5, plain());
                height = std::max(height, pair.back().height());
            }
            push(height + 1.6, [this, pair, column, left = m_left](QPainter &painter, const QPointF &at) {
                double x = at.x() + left;
                for (const Lines &words : pair) {
                    drawTick(painter, {x, at.y() + (words.lineHeight() - tick) / 2});
                    words.draw(painter, {x + tick + 2.5, at.y()});
                    x += column;
                }
            });
        }
    }

    void scale(const FormItem &item)
    {
        if (item.text.empty()) { // what it is a number of stands before
            m_blocks.back().keepsWithNext = true;
            m_blocks.back().height += 1.5;
        } else {
            room(1.5);
        }
        question(item.text);
        push(scaleBox + 1.5, [this, left = m_left](QPainter &painter, const QPointF &at) {
            constexpr int numbers = 11;
            const double step = (m_width - left) / numbers;
            Type number(painter, millimetresOf(14), QFont::Normal, m_theme.ink);
            for (int i = 0; i < numbers; ++i) {
                const QRectF box(at.x() + left + i * step + (step - scaleBox - 2) / 2, at.y(), scaleBox + 2, scaleBox);
                painter.setPen(QPen(m_theme.ink, 0.3));
                painter.setBrush(Qt::NoBrush);
                painter.drawRoundedRect(box, 1.5, 1.5);
                number.draw(box, QString::number(i), Qt::AlignCenter);
            }
        });
    }

    void table(const FormItem &item)
    {
        std::vector<Lines> heads;
        std::vector<double> widths;
        double head = 0;
        double all = 0;
        for (const std::string &option : item.options) {
            widths.push_back(item.options.size() == 3 ? 19 : 25);
            const QString name = q(option);
            heads.emplace_back(name.endsWith(QLatin1Char('.')) ? name.chopped(1) : name, widths.back() - 1, bold());
            head = std::max(head, heads.back().height());
            all += widths.back();
        }
        const double first = m_left + width() - all; // where the boxes begin
        const auto top =
            std::make_shared<const Block>(Block{head + 1.5, [heads, widths, first](QPainter &painter, const QPointF &at) {
                                                    double x = at.x() + first;
                                                    for (std::size_t i = 0; i < heads.size(); ++i) {
                                                        heads[i].draw(painter, {x + 1, at.y()});
                                                        x += widths[i];
                                                    }
                                                }});
        m_blocks.push_back(*top);
        m_blocks.back().keepsWithNext = true;
        for (const std::string &row : item.rows) {
            const Lines words(q(row), first - m_left - 3, plain());
            const double height = words.height() + 1.3;
            push(height, [this, words, widths, first, height, left = m_left](QPainter &painter, const QPointF &at) {
                words.draw(painter, at + QPointF(left, (height - words.height()) / 2));
                double x = at.x() + first;
                for (const double box : widths) {
                    drawTick(painter, {x + 1, at.y() + (height - tick) / 2});
                    x += box;
                }
                painter.setPen(QPen(m_theme.quiet, 0.1));
                painter.drawLine(at + QPointF(left, height), at + QPointF(m_width, height));
            });
            m_blocks.back().head = top;
        }
    }

    // One line stands beside a short question, more of them, or one of a long question, below.
    void lines(const FormItem &item)
    {
        const Lines oneLine(q(item.text), 1000, plain());
        const double beside = item.text.empty()
            ? 0
            : QFontMetricsF(typefaceInUnits(100)).horizontalAdvance(q(item.text)) / 100 * millimetresOf(points) + 3;
        const bool isBeside = item.lines == 1 && beside < width() * 0.72;
        const auto line = [this](double from) {
            push(writing, [this, from](QPainter &painter, const QPointF &at) {
                painter.setPen(QPen(m_theme.ink, 0.2));
                painter.drawLine(at + QPointF(from, writing - 0.6), at + QPointF(m_width, writing - 0.6));
            });
        };
        if (isBeside) {
            line(m_left + beside);
            m_blocks.back().paint = [under = m_blocks.back().paint, oneLine, left = m_left](
                                        QPainter &painter, const QPointF &at) {
                oneLine.draw(painter, at + QPointF(left, writing - oneLine.height()));
                under(painter, at);
            };
            return;
        }
        room(1.5);
        if (!item.text.empty())
            text(Lines(q(item.text), width(), plain()), 0, true);
        for (int i = 0; i < item.lines; ++i) {
            line(m_left);
            m_blocks.back().keepsWithNext = i + 1 < item.lines;
        }
    }

    // As large as the page allows; one line below stays for what follows.
    void figures()
    {
        double used = 0;
        for (const Block &block : m_blocks)
            used = block.startsPage ? block.height : used + block.height;
        constexpr double gap = 2; // above
        const double height = m_height - used - 2 * writing;
        const double half = m_width / 2;
        const Lines front(q(m_form.frontWords), half - 3, plain());
        const Lines back(q(m_form.backWords), half - 3, plain());
        const double below = std::max(front.height(), back.height());
        push(height, [this, height, half, front, back, below](QPainter &painter, const QPointF &at) {
            figure(painter, m_front, m_form.frontTitle, front, QRectF(at, QSizeF(half, height)).adjusted(0, gap, -3, 0), below);
            figure(painter, m_back, m_form.backTitle, back,
                QRectF(at + QPointF(half, 0), QSizeF(half, height)).adjusted(3, gap, 0, 0), below);
        });
    }

    void figure(QPainter &painter, const BodyArt &art, const std::string &title, const Lines &words, const QRectF &box,
        double below) const
    {
        const Lines name(q(title), box.width(), bold(14));
        name.draw(painter, box.topLeft());
        words.draw(painter, {box.left(), box.bottom() - below});
        const QRectF room = box.adjusted(0, name.height() + 1, 0, -below - 3);
        const QRectF drawn = art.silhouette().boundingRect();
        const double scale = std::min(room.height() / drawn.height(), room.width() / drawn.width());
        painter.save();
        painter.translate(room.center().x(), room.top());
        painter.scale(scale, scale);
        painter.translate(0, -drawn.top());
        BodyLook look;
        look.layer = Layer::Skin;
        look.unitsPerPixel = 0.14 / scale;
        art.paintLayers(painter, m_theme, look);
        painter.restore();
        sideWords(painter, art.drawing().signOf(Side::Right) > 0, room);
    }

    // The letter, and the word below it, beside the head on each side.
    void sideWords(QPainter &painter, bool rightIsRight, const QRectF &room) const
    {
        const auto draw = [&](bool atRight) {
            const bool isRight = atRight == rightIsRight;
            const int across = atRight ? Qt::AlignRight : Qt::AlignLeft;
            const QRectF place = room.adjusted(0, room.height() * 0.02, 0, 0);
            Type letter(painter, millimetresOf(22), QFont::Bold, m_theme.ink);
            Type word(painter, millimetresOf(points), QFont::Bold, m_theme.ink);
            const double down = letter.draw(place, q(isRight ? m_form.rightLetter : m_form.leftLetter), across | Qt::AlignTop);
            word.draw(place.adjusted(0, down, 0, 0), q(isRight ? m_form.right : m_form.left), across | Qt::AlignTop);
        };
        draw(false);
        draw(true);
    }

    // A bar beside the blocks from `first` on.
    void frame(std::size_t first)
    {
        for (std::size_t i = first; i < m_blocks.size(); ++i)
            m_blocks[i].paint = [under = m_blocks[i].paint, height = m_blocks[i].height, ink = m_theme.ink](
                                    QPainter &painter, const QPointF &at) {
                painter.fillRect(QRectF(at, QSizeF(1.4, height)), ink);
                if (under)
                    under(painter, at);
            };
    }

    const Theme m_theme = Theme::paper();
    ArrivalForm m_form;
    const BodyArt &m_front;
    const BodyArt &m_back;
    double m_width;
    double m_height;
    double m_left = 0;
    std::vector<Block> m_blocks;
};

} // namespace

PrintedPages arrivalFormPages(Paper paper, const ArrivalForm &form, const BodyArt &front, const BodyArt &back)
{
    const QRectF within = sheetOf(paper).adjusted(margin, margin - 4, -margin, -margin + 4);
    const Theme theme = Theme::paper();
    FlowLook look{paper, QPageLayout::Portrait, within.adjusted(0, headRoom, 0, -footRoom), {}};
    const auto maker = std::make_shared<Maker>(look.area, form, front, back); // the blocks refer to it
    look.frame = [within, theme, maker, pageText = form.pageText, nameLabel = q(form.nameLabel)](
                     QPainter &painter, int page, int pages) {
        Type words(painter, millimetresOf(points), QFont::Normal, theme.ink);
        const std::string numbered = filled(pageText, {{"page", std::to_string(page)}, {"pages", std::to_string(pages)}});
        words.draw(within, q(numbered), Qt::AlignRight | Qt::AlignBottom);
        if (page == 1)
            return;
        const Lines name(nameLabel, within.width(), {points, QFont::Normal, theme.ink});
        name.draw(painter, within.topLeft());
        painter.setPen(QPen(theme.ink, 0.2));
        painter.drawLine(within.topLeft() + QPointF(42, name.height()), within.topRight() + QPointF(-60, name.height()));
    };
    return flowPages(q(form.title), look, maker->make());
}

} // namespace raphe
