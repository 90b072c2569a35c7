#include "app/raphe/FlowLayout.h"

#include <algorithm>

namespace raphe {

FlowLayout::~FlowLayout()
{
    for (QLayoutItem *item : m_items)
        delete item;
}

QLayoutItem *FlowLayout::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem *FlowLayout::takeAt(int index)
{
    QLayoutItem *item = itemAt(index);
    if (item)
        m_items.erase(m_items.begin() + index);
    return item;
}

QSize FlowLayout::minimumSize() const
{
    QSize least;
    for (const QLayoutItem *item : m_items)
        least = least.expandedTo(item->minimumSize());
    return least;
}

void FlowLayout::setGeometry(const QRect &rect)
{
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

// The height that was needed.
int FlowLayout::arrange(const QRect &rect, bool isReal) const
{
    const int gap = std::max(0, spacing());
    int x = rect.x();
    int y = rect.y();
    int line = 0;
    for (QLayoutItem *item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize size = item->sizeHint().boundedTo({rect.width(), QLAYOUTSIZE_MAX});
        if (x > rect.x() && x + size.width() > rect.right() + 1) {
            x = rect.x();
            y += line + gap;
            line = 0;
        }
        if (isReal)
            item->setGeometry({{x, y}, size});
        x += size.width() + gap;
        line = std::max(line, size.height());
    }
    return y + line - rect.y();
}

} // namespace raphe
