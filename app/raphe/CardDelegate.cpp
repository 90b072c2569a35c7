#include "app/raphe/CardDelegate.h"

#include "app/paint/Marks.h"
#include "app/raphe/Style.h"

#include <QAbstractItemView>
#include <QPainter>

namespace raphe {

namespace {

constexpr int padding = 7;
constexpr int markSize = 22;
constexpr int barHeight = 5;

QFont titleFont()
{
    return typeface(10.5, QFont::DemiBold);
}
QFont lineFont()
{
    return typeface(9.5);
}

int heightOf(const QFont &font, const QString &text, int width)
{
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, text).height();
}

} // namespace

CardDelegate::CardDelegate(Roles roles, QObject *parent) : QStyledItemDelegate(parent), m_roles(roles) { }

QStringList CardDelegate::linesOf(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    const bool chosen = m_roles.chosenLines >= 0 && view && view->currentIndex() == index;
    const QVariant lines = index.data(chosen ? m_roles.chosenLines : m_roles.lines);
    QStringList list = lines.metaType().id() == QMetaType::QStringList ? lines.toStringList() : QStringList{lines.toString()};
    list.removeAll(QString());
    return list;
}

int CardDelegate::textLeft() const
{
    return m_roles.markKind >= 0 ? padding + markSize + 12 : padding + 3;
}

bool CardDelegate::isHeading(const QModelIndex &index)
{
    return !(index.flags() & Qt::ItemIsSelectable);
}

std::optional<double> CardDelegate::barOf(const QModelIndex &index) const
{
    const QVariant bar = m_roles.bar >= 0 ? index.data(m_roles.bar) : QVariant();
    return bar.isValid() ? std::optional(bar.toDouble()) : std::nullopt;
}

QSize CardDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    const int whole = view ? view->viewport()->width() : option.rect.width();
    const int width = std::max(80, whole - textLeft() - padding);
    int height = 2 * padding + heightOf(isHeading(index) ? lineFont() : titleFont(), index.data().toString(), width);
    if (barOf(index))
        height += barHeight + 3;
    for (const QString &line : linesOf(option, index))
        height += 1 + heightOf(lineFont(), line, width);
    return {whole, isHeading(index) ? height : std::max(height, touchTarget)};
}

void CardDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRect box = option.rect.adjusted(3, 1, -3, -1);
    const bool selected = option.state & QStyle::State_Selected;
    if (selected || ((option.state & QStyle::State_MouseOver) && !isHeading(index))) {
        QColor fill = m_theme.accent;
        fill.setAlphaF(selected ? 0.20F : 0.08F);
        painter->setPen(selected ? QPen(m_theme.accent, 1.5) : QPen(Qt::NoPen));
        painter->setBrush(fill);
        painter->drawRoundedRect(box, 6, 6);
    }
    if (m_roles.markKind >= 0)
        paintMark(*painter, m_theme,
            {static_cast<MarkKind>(index.data(m_roles.markKind).toInt()), 0, index.data(m_roles.familiar).toBool(),
                index.data(m_roles.number).toInt(), false},
            QPointF(box.left() + padding + markSize / 2.0 + 3, box.center().y() + 0.5), markSize * 0.86);
    const int left = option.rect.left() + textLeft();
    const int width = option.rect.right() - left - padding;
    int y = option.rect.top() + padding;
    const auto draw = [&](const QFont &font, const QColor &color, const QString &text) {
        painter->setFont(font);
        painter->setPen(color);
        const int height = heightOf(font, text, width);
        painter->drawText(QRect(left, y, width, height), Qt::TextWordWrap, text);
        y += height + 1;
    };
    draw(isHeading(index) ? lineFont() : titleFont(), isHeading(index) ? m_theme.quiet : m_theme.ink, index.data().toString());
    if (const auto bar = barOf(index)) {
        const QRectF track(left, y + 1, width, barHeight);
        QColor empty = m_theme.quiet;
        empty.setAlphaF(0.18F);
        painter->setPen(Qt::NoPen);
        painter->setBrush(empty);
        painter->drawRoundedRect(track, barHeight / 2.0, barHeight / 2.0);
        painter->setBrush(isHeading(index) ? m_theme.quiet : m_theme.accent);
        const double length = std::max<double>(barHeight, track.width() * *bar);
        painter->drawRoundedRect(QRectF(track.topLeft(), QSizeF(length, barHeight)), barHeight / 2.0, barHeight / 2.0);
        y += barHeight + 3;
    }
    for (const QString &line : linesOf(option, index))
        draw(lineFont(), m_theme.quiet, line);
    painter->restore();
}

} // namespace raphe
