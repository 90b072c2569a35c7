// Plans at random for the solver: places, positions, oil, covers, deep work, orders, pins and a beginning in the middle.
#pragma once

#include "core/plan/PlanProblem.h"

#include <random>

namespace raphe::plan::test {

class RandomPlans {
public:
    explicit RandomPlans(unsigned seed) : m_dice(seed) { }

    /// `seconds` of 0: scarce, so that not everything fits.
    [[nodiscard]] Problem plan(std::size_t places, int seconds = 0)
    {
        Problem out;
        out.seconds = seconds > 0 ? seconds : any(200, 350 + 120 * static_cast<int>(places));
        out.turnsAtMost = any(0, mostTurns);
        out.times.wipe = 60;
        out.times.uncover = 15;
        out.times.rest = 60;
        for (std::size_t a = 0; a < positionCount; ++a)
            for (std::size_t b = 0; b < positionCount; ++b)
                out.times.turn[a][b] = a == b ? 0 : any(20, 60);
        for (std::size_t i = 0; i < places; ++i) {
            ProblemPlace place;
            place.value = any(1, 150);
            place.seconds = any(30, 300);
            place.positions = static_cast<PositionSet>((1 << any(0, 4)) | (any(0, 1) == 0 ? 1 << any(0, 4) : 0));
            place.skin = static_cast<Skin>(any(0, 2));
            for (int &cover : place.cover)
                cover = any(0, 5);
            place.deepArea = any(0, 3);
            out.places.push_back(place);
        }
        for (std::size_t a = 0; a < places; ++a)
            for (std::size_t b = a + 1; b < places; ++b)
                if (any(0, 9) == 0)
                    out.before.emplace_back(a, b);
        if (any(0, 3) == 0 && places > 0)
            out.pinned.push_back(static_cast<std::size_t>(any(0, static_cast<int>(places) - 1)));
        if (any(0, 2) == 0)
            out.start.position = static_cast<std::size_t>(any(0, 4));
        out.start.oiled = any(0, 1) == 1;
        out.start.cover = any(0, 5);
        return out;
    }

    [[nodiscard]] int any(int least, int most) { return std::uniform_int_distribution<int>(least, most)(m_dice); }

private:
    std::mt19937 m_dice;
};

} // namespace raphe::plan::test
