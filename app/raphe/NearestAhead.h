// Where an arrow key leads on the body: of many points, the one that is near and straight ahead.
#pragma once

#include "core/anatomy/Outline.h"

#include <cmath>
#include <cstddef>
#include <optional>

namespace raphe {

/// Index of the best of `count` points, `at(i)`, in the direction of one step (dx, dy); what lies aside counts two and a half
/// times. Nothing when none lies ahead.
template <class F> [[nodiscard]] std::optional<std::size_t> nearestAhead(std::size_t count, F at, Point here, int dx, int dy)
{
    std::optional<std::size_t> best;
    double bestCost = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const Point there = at(i);
        const double along = (there.x - here.x) * dx + (there.y - here.y) * dy;
        if (along <= 0.5)
            continue;
        const double across = std::abs((there.x - here.x) * dy) + std::abs((there.y - here.y) * dx);
        const double cost = along + 2.5 * across;
        if (!best || cost < bestCost) {
            best = i;
            bestCost = cost;
        }
    }
    return best;
}

} // namespace raphe
