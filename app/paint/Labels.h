// Names on the drawing: as many as find room without touching one another.
#pragma once

#include <QRectF>
#include <QString>

#include <algorithm>
#include <vector>

namespace raphe {

struct Label {
    QString text;
    QPointF at; // where the structure is, in pixels
    double weight = 0; // heavier ones choose their place first
    QRectF box; // where the text stands; empty until placed
};

/// Places labels centred on their structures within `room`; a label that would touch another or what is `taken`, or leave the
/// room, is left out.
/// `sizeOf` gives a text's size in pixels.
template <class F>
[[nodiscard]] std::vector<Label> placedLabels(
    std::vector<Label> labels, const QRectF &room, const std::vector<QRectF> &taken, F sizeOf)
{
    constexpr double apart = 3; // pixels between two labels
    std::stable_sort(labels.begin(), labels.end(), [](const Label &a, const Label &b) { return a.weight > b.weight; });
    std::vector<Label> placed;
    for (Label &label : labels) {
        const QSizeF size = sizeOf(label.text);
        label.box = QRectF(label.at.x() - size.width() / 2, label.at.y() - size.height() / 2, size.width(), size.height());
        const QRectF needed = label.box.adjusted(-apart, -apart, apart, apart);
        const auto touches = [&](const Label &other) { return other.box.intersects(needed); };
        const auto covers = [&](const QRectF &box) { return box.intersects(needed); };
        if (room.contains(label.box) && std::none_of(placed.begin(), placed.end(), touches)
            && std::none_of(taken.begin(), taken.end(), covers))
            placed.push_back(std::move(label));
    }
    return placed;
}

} // namespace raphe
