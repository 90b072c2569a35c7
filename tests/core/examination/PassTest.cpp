// A pass with two pedals under a test clock: what is recorded, what is said, and that nothing of a side is ever lost.
#include "core/examination/Pass.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

namespace raphe {

namespace {

using namespace std::chrono_literals;

std::vector<Place> fourPlaces()
{
    return {{StructureId{"l4-l5"}, Side::Right}, {StructureId{"l4-l5"}, Side::Left}, {StructureId{"gluteus-medius"}, Side::Right},
        {StructureId{"sacrum"}, Side::Midline}};
}

// Feet that press and let go, with a clock that goes on between; what was said stands in `said`.
class Feet {
public:
    explicit Feet(Pass &pass) : m_pass(pass) { }

    void tap(Pedal pedal, std::chrono::milliseconds down = 120ms)
    {
        take(m_pass.press(pedal, m_now));
        wait(down);
        take(m_pass.release(pedal, m_now));
    }
    void wait(std::chrono::milliseconds time)
    {
        for (const auto end = m_now + time; m_now < end; m_now += 20ms)
            take(m_pass.tick(m_now));
    }
    void clear()
    {
        tap(Pedal::Clear);
        wait(600ms);
    }
    void sore()
    {
        tap(Pedal::Sore);
        wait(300ms);
    }
    void familiar() { tap(Pedal::Sore, 900ms); }
    void twice()
    {
        tap(Pedal::Clear, 100ms);
        wait(100ms);
        tap(Pedal::Clear, 100ms);
        wait(600ms);
    }

    std::vector<std::string> said;
    std::map<std::size_t, PassEntry> recorded;

private:
    void take(const PassStep &step)
    {
        if (!step.say.empty())
            said.push_back(step.say);
        if (step.kind != PassStep::Kind::Nothing)
            recorded[step.at] = step.entry;
    }

    Pass &m_pass;
    std::chrono::milliseconds m_now{0};
};

TEST(PassTest, OnePedalIsClearTheOtherSoreAndOnceMoreForEachGrade)
{
    Pass pass(test::atlas(), fourPlaces());
    Feet feet(pass);
    EXPECT_EQ(pass.prompt(), "RIGHT, L4/L5 segment");
    feet.clear();
    feet.sore();
    feet.sore();
    feet.familiar();
    feet.clear(); // on
    feet.sore();
    feet.clear(); // on
    feet.clear();
    EXPECT_TRUE(pass.isDone());
    const std::vector<std::string> said{"RIGHT, L4/L5 segment, clear. LEFT, L4/L5 segment", "LEFT, L4/L5 segment, sore 1",
        "LEFT, L4/L5 segment, sore 2", "LEFT, L4/L5 segment, sore 2, familiar", "RIGHT, gluteus medius",
        "RIGHT, gluteus medius, sore 1", "sacrum", "sacrum, clear. End of the pass"};
    EXPECT_EQ(feet.said, said);
    EXPECT_EQ(feet.recorded.at(0), (PassEntry{true, 0, false}));
    EXPECT_EQ(feet.recorded.at(1), (PassEntry{false, 2, true}));
    EXPECT_EQ(feet.recorded.at(2), (PassEntry{false, 1, false}));
    EXPECT_EQ(feet.recorded.at(3), (PassEntry{true, 0, false}));
}

TEST(PassTest, TwiceQuicklyTakesTheLastBackAndGoesThere)
{
    Pass pass(test::atlas(), fourPlaces());
    Feet feet(pass);
    feet.clear();
    feet.sore();
    feet.sore();
    feet.twice();
    EXPECT_EQ(pass.at(), 1U);
    EXPECT_EQ(feet.recorded.at(1), (PassEntry{false, 1, false})) << "one grade was taken back, no more";
    feet.twice();
    EXPECT_EQ(feet.recorded.at(1), PassEntry{});
    feet.twice();
    EXPECT_EQ(pass.at(), 0U) << "back at the place that was called clear";
    EXPECT_EQ(feet.recorded.at(0), PassEntry{});
    feet.twice();
    EXPECT_EQ(feet.said.back(), "Nothing to take back");
    EXPECT_EQ(pass.at(), 0U);
}

TEST(PassTest, SlowlyTwiceIsTwoClears)
{
    Pass pass(test::atlas(), fourPlaces());
    Feet feet(pass);
    feet.tap(Pedal::Clear);
    feet.wait(500ms);
    feet.tap(Pedal::Clear);
    feet.wait(500ms);
    EXPECT_EQ(pass.at(), 2U);
}

TEST(PassTest, AClearPressBeforeASoreOneWasForThePlaceBefore)
{
    Pass pass(test::atlas(), fourPlaces());
    Feet feet(pass);
    feet.tap(Pedal::Clear, 60ms); // within the time of a double press
    feet.tap(Pedal::Sore, 100ms);
    feet.wait(600ms);
    EXPECT_EQ(pass.entryAt(0), (PassEntry{true, 0, false}));
    EXPECT_EQ(pass.entryAt(1), (PassEntry{false, 1, false}));
}

TEST(PassTest, BothPedalsAtOnceAreForThePlaceThatWasAskedFor)
{
    Pass pass(test::atlas(), fourPlaces());
    std::map<std::size_t, PassEntry> recorded;
    const auto take = [&](const PassStep &step) {
        if (step.kind == PassStep::Kind::Record)
            recorded[step.at] = step.entry;
    };
    take(pass.press(Pedal::Sore, 0ms));
    take(pass.press(Pedal::Clear, 100ms)); // the sore pedal is still down
    for (auto now = 120ms; now < 1500ms; now += 20ms)
        take(pass.tick(now));
    take(pass.release(Pedal::Clear, 1500ms));
    take(pass.release(Pedal::Sore, 1520ms));
    for (auto now = 1540ms; now < 3000ms; now += 20ms)
        take(pass.tick(now));
    EXPECT_EQ(pass.at(), 1U);
    EXPECT_EQ(recorded, (std::map<std::size_t, PassEntry>{{0, {false, 1, false}}})) << "sore 1, and on to the next";
}

TEST(PassTest, ALongPressIsFamiliarThoughNoTickCameInTime)
{
    Pass pass(test::atlas(), fourPlaces());
    (void)pass.press(Pedal::Sore, 0ms);
    const PassStep step = pass.release(Pedal::Sore, 2000ms);
    EXPECT_EQ(step.entry, (PassEntry{false, 0, true}));
}

TEST(PassTest, TheHighestGradeStaysAndTheEndRecordsNothing)
{
    Pass pass(test::atlas(), {fourPlaces()[0]});
    Feet feet(pass);
    for (int i = 0; i < 6; ++i)
        feet.sore();
    EXPECT_EQ(pass.entryAt(0).sore, Tenderness::highest);
    feet.clear();
    EXPECT_TRUE(pass.isDone());
    feet.sore();
    feet.familiar();
    feet.clear();
    EXPECT_EQ(pass.entryAt(0), (PassEntry{false, Tenderness::highest, false}));
    EXPECT_EQ(feet.said.back(), "End of the pass");
}

TEST(PassTest, AnEmptyPassIsAtItsEnd)
{
    Pass pass(test::atlas(), {});
    EXPECT_TRUE(pass.isDone());
    EXPECT_EQ(pass.prompt(), "End of the pass");
    Feet feet(pass);
    feet.clear();
    feet.twice();
    EXPECT_TRUE(feet.recorded.empty());
}

// Whatever the feet do: what is said of a place names its side, the mirrored pass says the mirrored words, and everything can be
// taken back.
TEST(PassTest, RandomFeetMirroredSayTheMirroredWords)
{
    std::mt19937 random(7);
    const auto swapped = [](std::string text) {
        for (std::size_t at = 0; at < text.size(); ++at) {
            if (text.compare(at, 5, "RIGHT") == 0)
                text.replace(at, 5, "LEFT");
            else if (text.compare(at, 4, "LEFT") == 0)
                text.replace(at, 4, "RIGHT");
        }
        return text;
    };
    for (int round = 0; round < 100; ++round) {
        std::vector<Place> turned = fourPlaces();
        for (Place &place : turned)
            place = mirrored(place);
        Pass one(test::atlas(), fourPlaces());
        Pass other(test::atlas(), turned);
        Feet here(one);
        Feet there(other);
        for (int act = 0; act < 15; ++act) {
            const auto kind = random() % 4;
            for (Feet *feet : {&here, &there})
                kind == 0 ? feet->clear() : kind == 1 ? feet->sore() : kind == 2 ? feet->familiar() : feet->twice();
        }
        ASSERT_EQ(here.said.size(), there.said.size());
        for (std::size_t i = 0; i < here.said.size(); ++i)
            EXPECT_EQ(swapped(here.said[i]), there.said[i]);
        for (int i = 0; i < 40; ++i)
            here.twice();
        for (std::size_t i = 0; i < one.places().size(); ++i)
            EXPECT_TRUE(one.entryAt(i).isEmpty()) << "place " << i;
        EXPECT_EQ(one.at(), 0U);
    }
}

TEST(PassTest, AnEntryIsAFindingOfTouchAlone)
{
    const Place place = fourPlaces()[2];
    const Finding clear = findingOf(place, {true, 0, false});
    EXPECT_TRUE(clear.clear.tenderness);
    EXPECT_FALSE(clear.clear.motion) << "nothing was moved";
    const Finding sore = findingOf(place, {false, 3, true});
    EXPECT_EQ(sore.tenderness, Tenderness{3});
    EXPECT_TRUE(sore.familiar);
    EXPECT_EQ(sore.place, place);
}

} // namespace

} // namespace raphe
