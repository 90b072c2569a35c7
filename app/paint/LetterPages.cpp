#include "app/paint/LetterPages.h"

#include "app/paint/Flow.h"
#include "app/paint/Theme.h"
#include "app/paint/Type.h"
#include "app/paint/TypedText.h"
#include "core/document/LetterWords.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

// All in millimetres.
constexpr double leftMargin = 25; // as the addressee
constexpr double rightMargin = 18;
constexpr double topMargin = 15;
constexpr double bottomMargin = 13;
constexpr double footRoom = 13;
constexpr double titleColumn = 37; // of the parts
constexpr double partGap = 1.3;
constexpr double paragraphGap = 1; // for a blank line
constexpr double boxPadding = 2.5;
constexpr double boxLeft = 5; // of the words in it
constexpr double boxLabels = 22;
constexpr double addresseeWidth = 80;
constexpr double signatureRoom = 19;

// Where the addressee stands, from the top of the sheet: within the windows of envelopes for a third of A4 (20 mm from the left;
// 45 to 90 mm down in DIN 5008 form B, 57 mm and more in a window of 35 x 90 mm) and for a third of Letter (about 52 to 80 mm
// down). From memory.
double addresseeTop(Paper paper)
{
    return paper == Paper::A4 ? 58 : 54;
}
constexpr double addresseeRoom = 28; // to what follows

QString tr(const char *text)
{
    return QCoreApplication::translate("LetterPages", text);
}

QString q(const std::string &text)
{
    return safelyShown(QString::fromStdString(text));
}

// Without blank lines around it.
QString shown(const std::string &text)
{
    return safelyShown(QString::fromStdString(text).trimmed());
}

QString addresseeText(const Addressee &to)
{
    if (to.isNobody())
        return tr(QT_TRANSLATE_NOOP("LetterPages", "To the licensed clinician\nwho takes over"));
    QStringList lines;
    for (const std::string &line : {to.name, to.role})
        if (!line.empty())
            lines << q(line);
    for (const std::string &line : to.lines)
        lines << q(line);
    return lines.join(QLatin1Char('\n'));
}

class Maker {
public:
    Maker(Paper paper, const QRectF &area, double points, const Letter &letter, const LetterFacts &facts)
        : m_area(area), m_points(points), m_letter(letter), m_facts(facts)
    {
        head(paper);
        text(Lines(q(letter.title), width(), bold(points + 4)), 0, 1.5);
        m_blocks.back().keepsWithNext = true;
        box();
        part(tr(QT_TRANSLATE_NOOP("LetterPages", "Patient")), patient(), bold(points));
        for (const LetterPart &one : letter.parts)
            part(q(one.title), shown(one.words.text), plain());
        signature();
    }

    [[nodiscard]] std::vector<Block> take() { return std::move(m_blocks); }

private:
    [[nodiscard]] double width() const { return m_area.width(); }
    [[nodiscard]] TypeLook plain() const { return {m_points, QFont::Normal, m_theme.ink}; }
    [[nodiscard]] TypeLook bold(double points) const { return {points, QFont::Bold, m_theme.ink}; }
    [[nodiscard]] TypeLook quiet(double points) const { return {points, QFont::Normal, m_theme.quiet}; }

    // Letterhead, addressee, dates: at the same place whatever else the letter says, at any size of the type.
    void head(Paper paper)
    {
        const bool hasPractice = !m_facts.practice.empty();
        const double half = width() / 2;
        const Lines practice(q(hasPractice ? m_facts.practice : m_facts.practitioner), half, bold(14));
        const Lines letterhead(q(m_facts.letterhead), half - 5, quiet(9.5));
        const Lines to(addresseeText(m_letter.to), addresseeWidth, {11, QFont::Normal, m_theme.ink});
        constexpr double labelRoom = 18;
        constexpr double rowsLeft = addresseeWidth + 12;
        std::vector<std::pair<Lines, Lines>> rows; // each label before its value, for who reads aloud
        double rowsHeight = 0;
        const auto add = [&](const char *label, const std::string &value) {
            if (value.empty())
                return;
            const TypeLook look{10.5, QFont::Normal, m_theme.ink};
            rows.emplace_back(Lines(tr(label), labelRoom, quiet(10.5)), Lines(q(value), width() - rowsLeft - labelRoom, look));
            rowsHeight += rows.back().second.height();
        };
        add(QT_TRANSLATE_NOOP("LetterPages", "Date"), m_letter.written);
        add(QT_TRANSLATE_NOOP("LetterPages", "Visit on"), m_facts.visited == m_letter.written ? std::string() : m_facts.visited);
        add(QT_TRANSLATE_NOOP("LetterPages", "From"), hasPractice ? m_facts.practitioner : std::string());
        const double below = std::max(practice.height(), letterhead.height()) + 4;
        const bool isMailed = !m_letter.to.isNobody(); // else it needs no window, and goes by hand
        const double toTop = isMailed ? std::max(addresseeTop(paper) - m_area.top(), below) : below;
        const double height = toTop + std::max({isMailed ? addresseeRoom : 0, to.height() + 4, rowsHeight + 4});
        m_blocks.push_back({height, [=, this_width = width()](QPainter &painter, const QPointF &at) {
                                practice.draw(painter, at);
                                letterhead.draw(painter, at + QPointF(this_width / 2 + 5, 0.6));
                                to.draw(painter, at + QPointF(0, toTop));
                                double top = toTop;
                                for (const auto &row : rows) {
                                    row.first.draw(painter, at + QPointF(rowsLeft, top));
                                    row.second.draw(painter, at + QPointF(rowsLeft + labelRoom, top));
                                    top += row.second.height();
                                }
                            }});
    }

    [[nodiscard]] QString patient() const
    {
        QStringList words;
        if (!m_facts.patient.empty())
            words << q(m_facts.patient);
        if (!m_facts.born.empty())
            words << tr(QT_TRANSLATE_NOOP("LetterPages", "born %1")).arg(q(m_facts.born));
        if (!m_facts.visited.empty())
            words << tr(QT_TRANSLATE_NOOP("LetterPages", "seen on %1")).arg(q(m_facts.visited));
        return words.join(QStringLiteral(", "));
    }

    // Lines from the left; a page may end within a long text.
    void text(const Lines &lines, double left, double after)
    {
        constexpr int together = 6; // lines
        for (int first = 0; first < lines.count(); first += together) {
            const Lines piece = lines.part(first, together);
            const bool isLast = first + together >= lines.count();
            m_blocks.push_back({piece.height() + (isLast ? after : 0),
                [piece, left](QPainter &painter, const QPointF &at) { piece.draw(painter, at + QPointF(left, 0)); }});
        }
    }

    // What must be seen first, on a grey ground with a bar at its left that is broader the more urgent it is.
    void box()
    {
        const QString urgency = q(urgencyInWords(m_letter.urgency));
        //: %1: how urgent it is; %2: what is asked for
        const QString asks =
            tr(QT_TRANSLATE_NOOP("LetterPages", "%1: %2")).arg(urgency, q(urgencyAsks(m_letter.urgency, m_letter.written)));
        boxed({}, Lines(asks, boxWidth(), bold(m_points + 3)), 0);
        boxRow(tr(QT_TRANSLATE_NOOP("LetterPages", "Reason")), m_letter.reason.text);
        boxRow(tr(QT_TRANSLATE_NOOP("LetterPages", "Question")), m_letter.question.text);
        boxed({}, {}, 0);
        m_blocks.back().keepsWithNext = false;
        m_blocks.push_back({partGap * 2, {}});
    }

    [[nodiscard]] double boxWidth() const { return width() - boxLeft - boxPadding; }

    void boxRow(const QString &label, const std::string &words)
    {
        if (shown(words).isEmpty())
            return;
        const Lines name(label, boxLabels, bold(m_points));
        const Lines lines(shown(words), boxWidth() - boxLabels, plain());
        constexpr int together = 6; // lines
        for (int first = 0; first < lines.count(); first += together)
            boxed(first == 0 ? name : Lines(), lines.part(first, together), boxLabels, first == 0);
        m_blocks.back().keepsWithNext = lines.count() <= together;
    }

    void boxed(const Lines &label, const Lines &lines, double indent, bool hasRoomAbove = true)
    {
        const double above = hasRoomAbove ? boxPadding * 0.6 : 0;
        const double bar = m_letter.urgency >= Urgency::SameDay ? 2.2 : 0.9;
        Block block{above + lines.height(), {}};
        block.keepsWithNext = hasRoomAbove;
        block.paint = [label, lines, bar, indent, above, height = block.height, this_width = width(), ink = m_theme.ink](
                          QPainter &painter, const QPointF &at) {
            constexpr double overlap = 0.05; // no light line between two of them
            painter.fillRect(QRectF(at, QSizeF(this_width, height + overlap)), QColor(240, 240, 240));
            painter.fillRect(QRectF(at, QSizeF(bar, height + overlap)), ink);
            label.draw(painter, at + QPointF(boxLeft, above));
            lines.draw(painter, at + QPointF(boxLeft + indent, above));
        };
        m_blocks.push_back(std::move(block));
    }

    // The title beside the first of its paragraphs.
    void part(const QString &title, const QString &words, const TypeLook &look)
    {
        if (words.isEmpty())
            return;
        const Lines name(title, titleColumn - 4, bold(m_points));
        const double room = width() - titleColumn;
        const QStringList paragraphs = words.split(QLatin1Char('\n'));
        QStringList first;
        qsizetype next = 0;
        do
            first << paragraphs[next++];
        while (next < paragraphs.size() && Lines(first.join(QLatin1Char('\n')), room, look).height() < name.height());
        m_blocks.push_back({partGap, {}});
        const auto before = m_blocks.size();
        text(Lines(first.join(QLatin1Char('\n')), room, look), titleColumn, 0.3);
        Block &top = m_blocks[before];
        top.height = std::max(top.height, name.height() + 0.3);
        top.paint = [name, words_ = top.paint, this_width = width(), line = m_theme.quiet](QPainter &painter, const QPointF &at) {
            painter.setPen(QPen(line, 0.1));
            painter.drawLine(at - QPointF(0, partGap / 2), at + QPointF(this_width, -partGap / 2));
            name.draw(painter, at);
            words_(painter, at);
        };
        const auto rest = m_blocks.size();
        for (; next < paragraphs.size(); ++next)
            if (paragraphs[next].trimmed().isEmpty())
                m_blocks.push_back({paragraphGap, {}});
            else
                text(Lines(paragraphs[next], room, look), titleColumn, 0.3);
        const Lines again(title, titleColumn - 4, quiet(m_points)); // on the next page
        const auto head =
            std::make_shared<const Block>(Block{0, [again](QPainter &painter, const QPointF &at) { again.draw(painter, at); }});
        for (auto i = rest; i < m_blocks.size(); ++i)
            m_blocks[i].head = head;
    }

    void signature()
    {
        const Lines label(tr(QT_TRANSLATE_NOOP("LetterPages", "Signature, telephone")), titleColumn - 2, plain());
        const Lines name(q(m_facts.practitioner), width() - titleColumn, quiet(9));
        m_blocks.push_back({signatureRoom - 12, {}});
        m_blocks.push_back({12, [label, name, this_width = width(), ink = m_theme.ink](QPainter &painter, const QPointF &at) {
                                constexpr double line = 7;
                                label.draw(painter, at + QPointF(0, line - label.height()));
                                painter.setPen(QPen(ink, 0.2));
                                painter.drawLine(at + QPointF(titleColumn, line), at + QPointF(this_width, line));
                                name.draw(painter, at + QPointF(titleColumn, line + 0.5));
                            }});
    }

    const Theme m_theme = Theme::paper();
    QRectF m_area;
    double m_points;
    const Letter &m_letter;
    const LetterFacts &m_facts;
    std::vector<Block> m_blocks;
};

} // namespace

PrintedPages letterPages(Paper paper, const Letter &letter, const LetterFacts &facts)
{
    const QRectF within = sheetOf(paper).adjusted(leftMargin, topMargin, -rightMargin, -bottomMargin);
    const Theme theme = Theme::paper();
    FlowLook look{paper, QPageLayout::Portrait, within.adjusted(0, 0, 0, -footRoom), {}};
    look.frame = [within, theme, words = q(letterLimits()), patient = q(facts.patient)](QPainter &painter, int page, int pages) {
        const Lines limits(words, within.width() - (pages > 1 ? 45 : 0), {8.5, QFont::Normal, theme.quiet});
        limits.draw(painter, {within.left(), within.bottom() - limits.height()});
        if (pages == 1)
            return;
        const QString which = tr(QT_TRANSLATE_NOOP("LetterPages", "page %1 of %2")).arg(page).arg(pages);
        const Lines number(patient.isEmpty() ? which : patient + QLatin1Char('\n') + which, 42, {8.5, QFont::Normal, theme.ink});
        number.draw(painter, {within.right() - 42, within.bottom() - number.height()});
    };
    const auto blocksAt = [&](double points) { return Maker(paper, look.area, points, letter, facts).take(); };
    constexpr double usual = 10.5;
    constexpr double least = 8.5; // smaller, and nobody reads it: rather two pages of the usual size
    std::vector<Block> blocks;
    double points = usual;
    do
        blocks = blocksAt(points);
    while (flow(blocks, look.area.height()).size() > 1 && (points -= 0.5) >= least);
    if (points < least)
        blocks = blocksAt(usual);
    return flowPages(q(letter.title), look, std::move(blocks));
}

} // namespace raphe
