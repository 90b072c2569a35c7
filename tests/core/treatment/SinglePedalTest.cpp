// One pedal under a test clock: presses, double presses, a held one, contacts that bounce.
#include "core/treatment/SinglePedal.h"

#include <gtest/gtest.h>

#include <vector>

namespace raphe {

namespace {

using namespace std::chrono_literals;
using Act = SinglePedal::Act;
using Time = SinglePedal::Time;

class PedalUnderClock : public testing::Test {
protected:
    /// Time passes in ticks of 50 ms.
    void until(Time time)
    {
        for (; m_now < time; m_now += 50ms)
            take(m_pedal.tick(m_now));
        m_now = time;
        take(m_pedal.tick(m_now));
    }
    void press(Time down, Time up)
    {
        until(down);
        m_pedal.press(m_now);
        until(up);
        take(m_pedal.release(m_now));
    }
    std::vector<SinglePedal::Said> said;

private:
    void take(const std::optional<SinglePedal::Said> &one)
    {
        if (one)
            said.push_back(*one);
    }
    SinglePedal m_pedal;
    Time m_now{};
};

TEST_F(PedalUnderClock, APressMovesOnOnceItCannotBeTheFirstOfTwo)
{
    press(1000ms, 1100ms);
    until(1400ms);
    EXPECT_TRUE(said.empty()) << "it may still be the first of two";
    until(1500ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Next, 1000ms}})) << "and counts from when the foot went down";
    until(9000ms);
    EXPECT_EQ(said.size(), 1U);
}

TEST_F(PedalUnderClock, TwoQuickPressesGoBackOnce)
{
    press(1000ms, 1100ms);
    press(1300ms, 1400ms);
    until(5000ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Back, 1300ms}}));
}

TEST_F(PedalUnderClock, TwoSlowPressesMoveOnTwice)
{
    press(1000ms, 1100ms);
    press(1500ms, 1600ms);
    until(5000ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Next, 1000ms}, {Act::Next, 1500ms}}));
}

TEST_F(PedalUnderClock, ThreeQuickPressesGoBackAndThenMoveOn)
{
    press(1000ms, 1080ms);
    press(1250ms, 1330ms);
    press(1500ms, 1580ms);
    until(5000ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Back, 1250ms}, {Act::Next, 1500ms}}));
}

TEST_F(PedalUnderClock, HeldForTwoSecondsItStopsWhileTheFootIsStillDown)
{
    press(1000ms, 1050ms + 900ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Next, 1000ms}})) << "a long press is none that is held";
    said.clear();
    until(5000ms);
    press(5000ms, 6990ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Next, 5000ms}}));
    said.clear();
    press(10000ms, 13000ms);
    until(15000ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Stop, 10000ms}})) << "once, and the release says no more";
}

TEST_F(PedalUnderClock, ASecondPressThatIsHeldStopsAndNothingElse)
{
    press(1000ms, 1100ms);
    press(1300ms, 4000ms);
    until(6000ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Stop, 1300ms}}));
}

TEST_F(PedalUnderClock, AContactThatBouncesIsOnePress)
{
    press(1000ms, 1100ms);
    press(1110ms, 1120ms);
    press(1130ms, 1140ms);
    until(5000ms);
    EXPECT_EQ(said, (std::vector<SinglePedal::Said>{{Act::Next, 1000ms}}));
}

} // namespace

} // namespace raphe
