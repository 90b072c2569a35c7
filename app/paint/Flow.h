// Blocks that follow one another down the pages of a printed document. Heights and places in millimetres. Plain values.
#pragma once

#include "app/paint/Paper.h"

#include <memory>

namespace raphe {

struct Block {
    double height = 0;
    std::function<void(QPainter &, const QPointF &topLeft)> paint; // empty: room only, dropped at the top of a page
    bool startsPage = false;
    bool keepsWithNext = false; // a heading
    std::shared_ptr<const Block> head{}; // stands above it again when it is the first of a page
};

struct PlacedBlock {
    const Block *block = nullptr; // must outlive this
    double top = 0; // from the top of the area
};

/// Which block stands where, page by page. A block that is higher than a page has one of its own and reaches beyond; whoever
/// makes blocks divides them before.
[[nodiscard]] std::vector<std::vector<PlacedBlock>> flow(const std::vector<Block> &blocks, double height);
/// Into pages, or columns, of different heights.
[[nodiscard]] std::vector<std::vector<PlacedBlock>> flow(
    const std::vector<Block> &blocks, const std::function<double(std::size_t page)> &heightOf);

/// What stands around the blocks on every page, such as its number.
using FramePainter = std::function<void(QPainter &, int page, int pages)>;

struct FlowLook {
    Paper paper{};
    QPageLayout::Orientation orientation = QPageLayout::Portrait;
    QRectF area; // of the sheet, for the blocks
    FramePainter frame;
};

[[nodiscard]] PrintedPages flowPages(const QString &title, const FlowLook &look, std::vector<Block> blocks);

} // namespace raphe
