// How long a mistyped passphrase makes wait.
#include "core/store/UnlockDelay.h"

#include <gtest/gtest.h>

#include <limits>

namespace raphe::test {

TEST(UnlockDelay, ForgivesTwoSlipsThenDoublesUpToHalfAMinute)
{
    constexpr int expected[] = {0, 0, 0, 1, 2, 4, 8, 16, 30, 30, 30}; // seconds, by hand
    for (int failures = 0; failures < static_cast<int>(std::size(expected)); ++failures)
        EXPECT_EQ(unlockDelay(failures).count(), expected[failures]) << failures << " wrong tries";
}

TEST(UnlockDelay, NeverLocksTheOwnerOutWhateverWasCounted)
{
    EXPECT_EQ(unlockDelay(std::numeric_limits<int>::max()).count(), 30);
    EXPECT_EQ(unlockDelay(std::numeric_limits<int>::min()).count(), 0) << "a count from spoilt settings";
    EXPECT_EQ(unlockDelay(-1).count(), 0);
}

} // namespace raphe::test
