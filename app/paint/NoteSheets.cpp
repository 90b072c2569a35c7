#include "app/paint/NoteSheets.h"

#include "app/paint/Theme.h"
#include "app/paint/Type.h"
#include "app/paint/TypedText.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace raphe {

namespace {

constexpr double side = 18; // margins, mm
constexpr double top = 12;
constexpr double bottom = 11;
constexpr double footRoom = 9;
constexpr double labelWidth = 44;
constexpr double gutter = 4;
constexpr double ownerShare = 0.73; // of the head's width
constexpr double pageRoom = 30; // for the number of the page
constexpr double points = 9.5;
constexpr double smallPoints = 8.5;
constexpr double statePoints = 20;
constexpr int fewLines = 6; // of a long text that stay together
constexpr int longestName = 80; // characters, at the head of a page

QString tr(const char *text)
{
    return QCoreApplication::translate("NoteSheets", text);
}

QString q(const std::string &text)
{
    return safelyShown(QString::fromStdString(text));
}

const Theme &theme()
{
    static const Theme paper = Theme::paper();
    return paper;
}

TypeLook plain()
{
    return {points, QFont::Normal, theme().ink, 1.3};
}
TypeLook quiet(double size)
{
    return {size, QFont::Normal, theme().quiet, 1.3};
}
TypeLook bold(double size)
{
    return {size, QFont::Bold, theme().ink, 1.25};
}

} // namespace

void NoteBlocks::title(const QString &words)
{
    const Lines lines(words, m_room.width(), bold(17));
    m_blocks.push_back(
        {lines.height() + 2, [lines](QPainter &painter, const QPointF &at) { lines.draw(painter, at); }, false, true});
}

void NoteBlocks::paragraph(const QString &words)
{
    const Lines whole(words, m_room.width(), plain());
    const int most = std::max(1, static_cast<int>(m_room.height() / whole.lineHeight()) - 1);
    for (int first = 0; first < whole.count(); first += most) {
        const Lines lines = whole.part(first, most);
        m_blocks.push_back({lines.height() + 1.5, [lines](QPainter &painter, const QPointF &at) { lines.draw(painter, at); }});
    }
}

void NoteBlocks::lines(const std::vector<NoteLine> &lines)
{
    for (const NoteLine &one : lines)
        line(one, {});
}

void NoteBlocks::part(const NotePart &part)
{
    if (part.sections.empty())
        return;
    gap(5);
    const double width = m_room.width();
    const Lines name(q(part.title), width, bold(13));
    m_blocks.push_back({name.height() + 2.2,
        [name, width](QPainter &painter, const QPointF &at) {
            name.draw(painter, at);
            painter.setPen(QPen(theme().ink, 0.35));
            painter.drawLine(at + QPointF(0, name.height() + 0.6), at + QPointF(width, name.height() + 0.6));
        },
        false, true});
    //: %1: title of a part that goes on on another page
    const Lines again(tr("%1, continued").arg(q(part.title)), width, bold(smallPoints));
    const auto head = std::make_shared<const Block>(
        Block{again.height() + 1.5, [again](QPainter &painter, const QPointF &at) { again.draw(painter, at); }});
    for (const NoteSection &section : part.sections) {
        const bool isFirst = &section == &part.sections.front();
        if (!isFirst)
            gap(2.2);
        if (!section.title.empty()) {
            const Lines title(q(section.title), width, bold(10.5));
            m_blocks.push_back({title.height() + 0.8, [title](QPainter &painter, const QPointF &at) { title.draw(painter, at); },
                false, true, isFirst ? Head() : head});
        }
        for (const NoteLine &one : section.lines)
            line(one, head);
    }
}

// Divided where it is longer than a page.
void NoteBlocks::line(const NoteLine &line, const Head &head)
{
    const double left = line.label.empty() ? 0 : labelWidth + gutter;
    const Lines label(q(line.label), labelWidth, quiet(points));
    const Lines text(q(line.text), m_room.width() - left, plain());
    const double used = head ? head->height : 0;
    const int mostOnPage = std::max(1, static_cast<int>((m_room.height() - used) / text.lineHeight()) - 2);
    const bool isLabelled = !line.label.empty();
    const int all = std::max(text.count(), isLabelled ? label.count() : 0);
    const int most = std::min(mostOnPage, all > 2 * fewLines ? fewLines : all);
    //: %1: since when something stands as it does
    const Lines since(line.asOf.empty() ? QString() : tr("[%1]").arg(q(line.asOf)), m_room.width() - left, quiet(smallPoints));
    const double sinceHeight = line.asOf.empty() ? 0 : since.height();
    for (int first = 0; first < all; first += most) {
        const Lines words = text.part(first, most);
        const Lines name = isLabelled ? label.part(first, most) : Lines();
        const bool isLast = first + most >= all;
        const bool hasSince = isLast && sinceHeight > 0;
        const double height = std::max(words.height() + (hasSince ? sinceHeight : 0), name.count() > 0 ? name.height() : 0);
        m_blocks.push_back({height + (isLast ? 0.8 : 0),
            [words, name, left, since, hasSince](QPainter &painter, const QPointF &at) {
                if (name.count() > 0)
                    name.draw(painter, at);
                words.draw(painter, at + QPointF(left, 0));
                if (hasSince)
                    since.draw(painter, at + QPointF(left, words.height()));
            },
            false, false, head});
    }
}

NoteSheets::NoteSheets(Paper paper, const QString &title, QString limits)
    : m_paper(paper),
      m_limits(std::move(limits)),
      m_pages{paper, QPageLayout::Portrait, title, {}},
      m_count(std::make_shared<int>(0))
{
}

void NoteSheets::add(const SheetHead &head, const std::function<void(NoteBlocks &)> &fill)
{
    const QRectF within = sheetOf(m_paper).adjusted(side, top, -side, -bottom);
    const Lines state(head.state, within.width(), {statePoints, QFont::Bold, theme().tender, 1.15});
    const Lines title(head.title, within.width() / 4, quiet(smallPoints));
    const Lines who(head.who, within.width() * ownerShare, bold(smallPoints));
    const double stateHeight = head.state.isEmpty() ? 0 : state.height() + 1;
    const double headHeight = stateHeight + std::max(who.height(), title.height()) + 1;
    FlowLook look{m_paper, QPageLayout::Portrait, within.adjusted(0, headHeight + 4, 0, -footRoom), {}};
    look.frame = [=, words = m_limits, count = m_count, before = static_cast<int>(m_pages.pages.size())](
                     QPainter &painter, int page, int) {
        if (stateHeight > 0)
            state.draw(painter, within.topLeft());
        const QPointF at = within.topLeft() + QPointF(0, stateHeight);
        who.draw(painter, at);
        Type small(painter, millimetresOf(smallPoints), QFont::Normal, theme().quiet);
        small.draw(QRectF(at, QPointF(within.right(), at.y() + headHeight)), head.title, Qt::AlignRight | Qt::AlignTop);
        painter.setPen(QPen(theme().quiet, 0.2));
        const double below = within.top() + headHeight + 0.5;
        painter.drawLine(QPointF(within.left(), below), QPointF(within.right(), below));
        small.draw(within.adjusted(0, 0, -pageRoom, 0), words, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap);
        small.draw(within, tr("page %1 of %2").arg(before + page).arg(*count), Qt::AlignRight | Qt::AlignBottom);
    };
    NoteBlocks blocks(look.area.size());
    fill(blocks);
    PrintedPages made = flowPages(m_pages.title, look, blocks.take());
    m_pages.pages.insert(m_pages.pages.end(), made.pages.begin(), made.pages.end());
}

void NoteSheets::add(const ClinicalNote &note)
{
    add({q(note.title), sheetOwner(note.patient, note.born, note.date), q(note.state)}, [&](NoteBlocks &blocks) {
        blocks.title(q(note.title));
        blocks.lines(note.heads);
        for (const NotePart &part : note.parts)
            blocks.part(part);
        blocks.part(note.signatures);
    });
}

PrintedPages NoteSheets::take()
{
    *m_count = static_cast<int>(m_pages.pages.size());
    return std::move(m_pages);
}

QString sheetOwner(const std::string &name, const std::string &born, const std::string &visitDate)
{
    QString whole = QString::fromStdString(name);
    if (whole.size() > longestName) {
        whole = whole.left(longestName - 3);
        if (whole.back().isHighSurrogate()) // half a character
            whole.chop(1);
        whole += QStringLiteral("...");
    }
    QStringList out{name.empty() ? tr("patient without a name") : safelyShown(whole),
        born.empty() ? tr("no birth date") : tr("born %1").arg(q(born))};
    if (!visitDate.empty())
        out << tr("visit of %1").arg(q(visitDate));
    return out.join(QStringLiteral(", "));
}

} // namespace raphe
