// Rows of several lines: a title, and under it wrapped lines in quieter type; findings carry their mark, suggestions a bar. A
// row that cannot be chosen is a heading.
#pragma once

#include "app/paint/Theme.h"

#include <QStyledItemDelegate>

#include <optional>

namespace raphe {

class CardDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// Roles of the model: lines under the title (QStringList or QString), the lines of the chosen row where those are
    /// more, and optionally the mark and the bar.
    struct Roles {
        int lines;
        int chosenLines = -1;
        int markKind = -1;
        int number = -1;
        int familiar = -1;
        int bar = -1; // 0 to 1, or nothing
    };

    CardDelegate(Roles roles, QObject *parent);
    void setTheme(const Theme &theme) { m_theme = theme; }

    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    [[nodiscard]] QStringList linesOf(const QStyleOptionViewItem &option, const QModelIndex &index) const;
    [[nodiscard]] int textLeft() const;
    [[nodiscard]] static bool isHeading(const QModelIndex &index);
    [[nodiscard]] std::optional<double> barOf(const QModelIndex &index) const;

    Roles m_roles;
    Theme m_theme = Theme::light();
};

} // namespace raphe
