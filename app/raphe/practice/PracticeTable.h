// How tables and lists in the dialogs of a practice look and answer to keys: whole rows are chosen, Tab leaves the table, rows
// are high enough for a finger. Colours are those of the palette.
#pragma once

#include <QString>
#include <QStyledItemDelegate>

class QListView;
class QTableView;

namespace raphe {

/// Leaves some room around what stands in a cell or row.
class RoomyDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;
};

/// `name`: for screen readers.
void prepareTable(QTableView &table, const QString &name);
void prepareList(QListView &list, const QString &name);

} // namespace raphe
