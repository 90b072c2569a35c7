#include "app/paint/Flow.h"

#include <QPainter>

namespace raphe {

namespace {

// Of the block at i with all that it must not be parted from.
double heightTogether(const std::vector<Block> &blocks, std::size_t i)
{
    double height = blocks[i].height;
    while (blocks[i].keepsWithNext && i + 1 < blocks.size())
        height += blocks[++i].height;
    return height;
}

} // namespace

std::vector<std::vector<PlacedBlock>> flow(const std::vector<Block> &blocks, double height)
{
    return flow(blocks, [height](std::size_t) { return height; });
}

std::vector<std::vector<PlacedBlock>> flow(
    const std::vector<Block> &blocks, const std::function<double(std::size_t page)> &heightOf)
{
    constexpr double slack = 0.01; // sums of heights are not exact
    std::vector<std::vector<PlacedBlock>> pages(1);
    double top = 0;
    bool isKept = false; // by the block before
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const Block &block = blocks[i];
        const double height = heightOf(pages.size() - 1);
        const bool isFull = !isKept && top + heightTogether(blocks, i) > height + slack;
        if (!pages.back().empty() && (block.startsPage || isFull || top + block.height > height + slack)) {
            pages.emplace_back();
            top = 0;
        }
        if (pages.back().empty() && !block.paint)
            continue;
        if (pages.back().empty() && block.head) {
            pages.back().push_back({block.head.get(), top});
            top += block.head->height;
        }
        pages.back().push_back({&block, top});
        top += block.height;
        isKept = block.keepsWithNext;
    }
    return pages;
}

PrintedPages flowPages(const QString &title, const FlowLook &look, std::vector<Block> blocks)
{
    PrintedPages document{look.paper, look.orientation, title, {}};
    const auto kept = std::make_shared<const std::vector<Block>>(std::move(blocks));
    const auto placed = flow(*kept, look.area.height());
    for (std::size_t i = 0; i < placed.size(); ++i)
        document.pages.emplace_back([kept, look, page = placed[i], number = static_cast<int>(i) + 1,
                                        count = static_cast<int>(placed.size())](QPainter &painter) {
            painter.setRenderHint(QPainter::Antialiasing);
            look.frame(painter, number, count);
            for (const PlacedBlock &at : page)
                if (at.block->paint)
                    at.block->paint(painter, look.area.topLeft() + QPointF(0, at.top));
        });
    return document;
}

} // namespace raphe
