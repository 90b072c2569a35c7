#include "core/store/UnlockDelay.h"

#include <algorithm>

namespace raphe {

namespace {

constexpr int freeTries = 2; // wrong, without a wait
constexpr std::chrono::seconds longest{30};
constexpr int doublings = 5; // 32 s, above the longest

} // namespace

std::chrono::seconds unlockDelay(int failures)
{
    if (failures <= freeTries)
        return std::chrono::seconds{0};
    return std::min(longest, std::chrono::seconds{1 << std::min(failures - freeTries - 1, doublings)});
}

} // namespace raphe
