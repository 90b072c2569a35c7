#include "app/raphe/practice/PracticeTable.h"

#include "app/raphe/Style.h"

#include <QApplication>
#include <QHeaderView>
#include <QListView>
#include <QTableView>

namespace raphe {

namespace {

constexpr int roomBeside = 8; // pixels, on each side
constexpr int roomAbove = 6;

} // namespace

void RoomyDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem whole = option;
    initStyleOption(&whole, index);
    const QStyle &style = *(option.widget ? option.widget->style() : QApplication::style());
    style.drawPrimitive(QStyle::PE_PanelItemViewItem, &whole, painter, option.widget);
    QStyleOptionViewItem inner = option;
    inner.rect.adjust(roomBeside, roomAbove, -roomBeside, -roomAbove);
    inner.state &= ~QStyle::State_HasFocus; // the chosen row shows where one is
    QStyledItemDelegate::paint(painter, inner, index);
}

QSize RoomyDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem inner = option;
    inner.rect.adjust(roomBeside, roomAbove, -roomBeside, -roomAbove);
    return QStyledItemDelegate::sizeHint(inner, index) + QSize(2 * roomBeside, 2 * roomAbove);
}

void prepareTable(QTableView &table, const QString &name)
{
    table.setAccessibleName(name);
    table.setItemDelegate(new RoomyDelegate(&table));
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.setAlternatingRowColors(true);
    table.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    table.verticalHeader()->hide();
    table.verticalHeader()->setDefaultSectionSize(touchTarget);
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table.horizontalHeader()->setMinimumHeight(touchTarget - 4);
    table.setStyleSheet(QStringLiteral("QTableView { border: 1px solid palette(mid); border-radius: 7px; padding: 1px; }"
                                       "QTableView:focus { border: 2px solid palette(highlight); padding: 0px; }"
                                       "QHeaderView { background: palette(base); }"
                                       "QHeaderView::section { background: palette(base); color: palette(text); border: 0px; "
                                       "border-bottom: 1px solid palette(mid); padding: 2px 11px; font-weight: 700; }"));
}

void prepareList(QListView &list, const QString &name)
{
    list.setAccessibleName(name);
    list.setItemDelegate(new RoomyDelegate(&list));
    list.setAlternatingRowColors(true);
    list.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list.setStyleSheet(QStringLiteral("QListView { padding: 1px; } QListView:focus { padding: 0px; }")); // its border grows
}

} // namespace raphe
