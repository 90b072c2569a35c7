// A treatment under a test clock: a whole one by one pedal, stopped, killed and resumed, consent withdrawn half way; and, for
// random acts, that nothing that was worked is ever lost.
#include "core/treatment/TreatmentRun.h"
#include "core/record/VisitJson.h"
#include "core/treatment/Gate.h"
#include "core/treatment/SinglePedal.h"
#include "tests/core/plan/Planning.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Cases.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <numeric>
#include <random>

namespace raphe {

namespace {

using namespace test;
using namespace std::chrono_literals;
using Phase = TreatmentRun::Phase;
using Now = TreatmentRun::Now;

constexpr int tenOClock = 10 * 3600;

Now at(int seconds)
{
    std::array<char, 16> clock{};
    const int of = tenOClock + seconds;
    std::snprintf(clock.data(), clock.size(), "%02d:%02d:%02d", of / 3600, of / 60 % 60, of % 60);
    return {std::chrono::seconds(seconds), clock.data()};
}

TreatmentStep step(const char *structure, Side side, const char *technique, int planned = 60)
{
    TreatmentStep out;
    out.place = {StructureId{structure}, side};
    out.technique = technique;
    out.planned = planned;
    return out;
}

TreatmentLog threeSteps()
{
    TreatmentLog log;
    log.ahead = {step("gluteus-maximus", Side::Right, "gliding"), step("piriformis", Side::Right, "held-ease"),
        step("soleus", Side::Left, "gliding")};
    return log;
}

std::vector<CautionVerdict> nothing(const TreatmentStep & /*step*/)
{
    return {};
}

int workedIn(const TreatmentLog &log)
{
    const auto sum = [](int so, const TreatmentStep &s) { return so + s.seconds; };
    return std::accumulate(log.steps.begin(), log.steps.end(), 0, sum)
        + std::accumulate(log.ahead.begin(), log.ahead.end(), 0, sum);
}

CautionVerdict verdict(Verdict of, const char *rule)
{
    CautionVerdict v;
    v.verdict = of;
    v.rule = rule;
    v.reason = "a reason";
    return v;
}

// The pedal's acts as the window takes them.
class ByPedal {
public:
    explicit ByPedal(TreatmentRun &run) : m_run(run) { }
    void press(int second, SinglePedal::Time length = 100ms)
    {
        using Time = SinglePedal::Time;
        const Time down = std::chrono::seconds(second);
        m_pedal.press(down);
        for (Time t = down; t < down + length; t += 50ms)
            take(m_pedal.tick(t));
        take(m_pedal.release(down + length));
        for (Time t = down + length; t < down + length + 500ms; t += 50ms)
            take(m_pedal.tick(t));
    }

private:
    void take(const std::optional<SinglePedal::Said> &said)
    {
        if (!said)
            return;
        const Now now = at(static_cast<int>(std::chrono::duration_cast<std::chrono::seconds>(said->at).count()));
        switch (said->act) {
        case SinglePedal::Act::Next: return m_run.advance(now);
        case SinglePedal::Act::Back: return m_run.back(now);
        case SinglePedal::Act::Stop: return m_run.stop(now);
        }
    }
    TreatmentRun &m_run;
    SinglePedal m_pedal;
};

TEST(TreatmentRun, AWholeTreatmentByOnePedalLeavesALogWhoseTimesAddUp)
{
    TreatmentRun run(threeSteps(), nothing);
    ByPedal pedal(run);
    for (const int second : {10, 70, 80, 170, 200, 260})
        pedal.press(second);
    EXPECT_EQ(run.phase(), Phase::Over);
    const TreatmentLog &log = run.treatment();
    ASSERT_EQ(log.steps.size(), 3U);
    EXPECT_EQ(log.steps[0].began, "10:00:10");
    EXPECT_EQ(log.steps[0].seconds, 60);
    EXPECT_EQ(log.steps[1].began, "10:01:20");
    EXPECT_EQ(log.steps[1].seconds, 90);
    EXPECT_EQ(log.steps[2].began, "10:03:20");
    EXPECT_EQ(log.steps[2].seconds, 60);
    EXPECT_EQ(workedIn(log), 210) << "of 250 s between the first press and the last, 40 lay between the steps";
    EXPECT_TRUE(log.running.empty());
    EXPECT_FALSE(log.steps[0].done) << "confirmed by the practitioner, not by the clock";
    EXPECT_EQ(run.current(), nullptr);
}

TEST(TreatmentRun, GoingBackKeepsTheSecondsAndOpensTheStepBefore)
{
    TreatmentRun run(threeSteps(), nothing);
    run.advance(at(0));
    run.advance(at(60));
    run.advance(at(70)); // piriformis is worked
    run.back(at(75));
    EXPECT_EQ(run.phase(), Phase::Ready);
    EXPECT_EQ(run.current()->place.structure.value, "piriformis");
    EXPECT_EQ(run.seconds(at(90).at), 5) << "the clock stands";
    run.back(at(80));
    EXPECT_EQ(run.current()->place.structure.value, "gluteus-maximus");
    EXPECT_EQ(run.seconds(at(80).at), 60);
    run.advance(at(100));
    EXPECT_EQ(run.seconds(at(110).at), 70);
    run.advance(at(110));
    EXPECT_EQ(run.treatment().steps.back().seconds, 70);
    EXPECT_EQ(run.treatment().steps.back().began, "10:00:00") << "when it was begun first";
    EXPECT_EQ(run.current()->seconds, 5);
}

TEST(TreatmentRun, HeldThePedalStopsTheClockAndNoPressGoesOn)
{
    TreatmentRun run(threeSteps(), nothing);
    ByPedal pedal(run);
    pedal.press(0);
    pedal.press(30, 2500ms);
    EXPECT_EQ(run.phase(), Phase::Stopped);
    EXPECT_EQ(workedIn(run.treatment()), 30) << "to when the foot went down";
    pedal.press(60);
    pedal.press(90, 2500ms);
    run.say(StepWord::Eased);
    EXPECT_EQ(run.phase(), Phase::Stopped) << "the pedal cannot leave it";
    EXPECT_EQ(workedIn(run.treatment()), 30);
    run.goOn(at(120));
    EXPECT_EQ(run.phase(), Phase::Ready);
    run.advance(at(130));
    run.advance(at(160));
    EXPECT_EQ(run.treatment().steps[0].seconds, 60);
}

TEST(TreatmentRun, WhatHappenedEndsItAndStandsInTheLog)
{
    TreatmentRun run(threeSteps(), nothing);
    run.advance(at(0));
    run.stop(at(20));
    run.end(at(60), AdverseEvent{"10:00:20", {"faint"}, "went pale", "lay down, legs up"});
    EXPECT_EQ(run.phase(), Phase::Over);
    const TreatmentLog &log = run.treatment();
    ASSERT_EQ(log.steps.size(), 3U);
    EXPECT_FALSE(log.steps[0].done) << "confirmed by the practitioner";
    EXPECT_TRUE(isOpen(log));
    EXPECT_EQ(log.steps[0].seconds, 20);
    EXPECT_EQ(log.steps[1].done, StepDone::Skipped);
    ASSERT_EQ(log.events.size(), 1U);
    EXPECT_EQ(log.events[0].signs, (std::vector<std::string>{"faint"}));
}

TEST(TreatmentRun, KilledItGoesOnWhereItWasLastSeen)
{
    TreatmentLog kept;
    {
        TreatmentRun run(threeSteps(), nothing);
        run.advance(at(0));
        run.advance(at(60));
        run.advance(at(70));
        for (int second = 70; second <= 103; ++second)
            if (run.tick(at(second)))
                kept = run.treatment();
    } // killed at 103
    EXPECT_EQ(kept.running, "10:01:40") << "kept every five seconds";
    TreatmentRun resumed(kept, nothing);
    EXPECT_EQ(resumed.interruptedAt(), "10:01:40");
    EXPECT_EQ(resumed.phase(), Phase::Ready) << "nobody knows whether the hands went on";
    EXPECT_EQ(resumed.current()->place.structure.value, "piriformis");
    EXPECT_EQ(resumed.seconds(at(500).at), 30);
    resumed.advance(at(600));
    EXPECT_TRUE(resumed.interruptedAt().empty());
    resumed.advance(at(610));
    EXPECT_EQ(resumed.treatment().steps[1].seconds, 40);
    EXPECT_EQ(workedIn(resumed.treatment()), 100);
}

TEST(TreatmentRun, WhatHoldsIsReadBeforeTheWorkBegins)
{
    const auto gate = [](const TreatmentStep &s) {
        return s.place.structure.value == "piriformis" ? std::vector{verdict(Verdict::Adapt, "thin-bone")}
                                                       : std::vector<CautionVerdict>{};
    };
    TreatmentRun run(threeSteps(), gate);
    run.advance(at(0));
    run.advance(at(10));
    EXPECT_TRUE(run.toRead());
    ASSERT_EQ(run.held().size(), 1U);
    run.advance(at(20));
    EXPECT_EQ(run.phase(), Phase::Ready) << "the press read it";
    EXPECT_FALSE(run.toRead());
    run.advance(at(30));
    EXPECT_EQ(run.phase(), Phase::Working);
    EXPECT_EQ(run.current()->minded, (std::vector<std::string>{"thin-bone"}));
}

TEST(TreatmentRun, EachCautionIsReadOnceInATreatmentAndStandsWithEachStep)
{
    const auto gate = [](const TreatmentStep & /*step*/) {
        return std::vector{verdict(Verdict::Adapt, "thin-bone"), verdict(Verdict::Ask, "own-consent")};
    };
    TreatmentRun run(threeSteps(), gate);
    EXPECT_EQ(run.toRead()->rule, "thin-bone");
    run.advance(at(0));
    EXPECT_EQ(run.toRead()->rule, "own-consent") << "one after the other";
    run.advance(at(1));
    EXPECT_EQ(run.toRead(), nullptr);
    run.advance(at(2));
    EXPECT_EQ(run.phase(), Phase::Working);
    run.advance(at(60));
    EXPECT_EQ(run.toRead(), nullptr) << "read before";
    EXPECT_EQ(run.held().size(), 2U) << "and still told";
    run.advance(at(70));
    EXPECT_EQ(run.current()->minded, (std::vector<std::string>{"thin-bone", "own-consent"}));
}

TEST(TreatmentRun, WhatIsStoppedIsReadAndThenSkipped)
{
    const auto gate = [](const TreatmentStep &s) {
        return s.place.structure.value == "gluteus-maximus" ? std::vector{verdict(Verdict::Stop, "wound")}
                                                            : std::vector<CautionVerdict>{};
    };
    TreatmentRun run(threeSteps(), gate);
    EXPECT_TRUE(run.isBarred());
    run.advance(at(0));
    EXPECT_EQ(run.current()->place.structure.value, "gluteus-maximus") << "not passed over unseen";
    run.advance(at(1));
    EXPECT_EQ(run.treatment().steps[0].done, StepDone::Skipped);
    EXPECT_EQ(run.treatment().steps[0].seconds, 0);
    EXPECT_EQ(run.current()->place.structure.value, "piriformis");
}

// With the rules as they ship: cups are consented to, and the patient takes that back while they stand.
TEST(TreatmentRun, ConsentWithdrawnHalfWayStopsWhatItCovered)
{
    Visit visit = visitOf({stiff("thoracolumbar-fascia", Side::Left, 2)});
    visit.date = "2026-11-12";
    std::string item;
    for (const ConsentItem &one : safetyRules().consents().items)
        if (std::find(one.covers.techniques.begin(), one.covers.techniques.end(), "suction") != one.covers.techniques.end())
            item = one.id;
    ASSERT_FALSE(item.empty());
    visit.consents = {{item, ConsentState::Given, visit.date, {}, {}, {}, {}}};
    const auto gate = [&visit](const TreatmentStep &s) {
        return gateOf(Cautions::of(safetyRules(), regions(), visit, "visit").value(), techniques(), s);
    };
    TreatmentLog log;
    log.ahead = {
        step("thoracolumbar-fascia", Side::Left, "cups-still", 300), step("thoracolumbar-fascia", Side::Left, "gliding")};
    TreatmentRun run(log, gate);
    ASSERT_FALSE(run.isBarred());
    for (int second = 0; run.phase() == Phase::Ready && second < 20; ++second)
        run.advance(at(second));
    ASSERT_EQ(run.phase(), Phase::Working);
    visit.consents[0].state = ConsentState::Withdrawn;
    run.recheck(at(100));
    EXPECT_EQ(run.phase(), Phase::Ready) << "the clock stands";
    EXPECT_TRUE(run.isBarred());
    EXPECT_GE(run.current()->seconds, 80);
    run.advance(at(110));
    run.advance(at(120));
    EXPECT_TRUE(run.treatment().steps[0].hasBegun());
    EXPECT_FALSE(run.treatment().steps[0].done);
    EXPECT_EQ(run.current()->technique, "gliding");
    EXPECT_FALSE(run.isBarred()) << "other work goes on";
    const auto read = readVisit(writeVisit([&] {
        Visit written = visit;
        written.treatment = run.treatment();
        return written;
    }()),
        "visit", atlas());
    ASSERT_TRUE(read) << inWords(read.error()) << ": the ids of rules can stand in the record";
    EXPECT_EQ(read.value().treatment, run.treatment());
}

TEST(TreatmentRun, TheSideIsChangedOnlyBeforeTheStepIsBegun)
{
    TreatmentRun run(threeSteps(), nothing);
    run.changeSide();
    EXPECT_EQ(run.current()->place.side, Side::Left);
    run.advance(at(0));
    run.changeSide();
    EXPECT_EQ(run.current()->place.side, Side::Left);
    run.back(at(10));
    run.changeSide();
    EXPECT_EQ(run.current()->place.side, Side::Left) << "what was worked there was worked there";
}

TEST(TreatmentRun, WordsGoToTheStepThatTheyAreAbout)
{
    TreatmentRun run(threeSteps(), nothing);
    run.say(StepWord::Sore);
    run.advance(at(0));
    run.say(StepWord::Familiar);
    run.say(StepWord::Lighter);
    run.advance(at(60));
    run.say(StepWord::Eased); // said while the next one is made ready
    run.advance(at(70));
    EXPECT_EQ(run.treatment().steps[0].words, (std::vector<StepWord>{StepWord::Familiar, StepWord::Lighter, StepWord::Eased}));
    EXPECT_TRUE(run.treatment().steps[1].words.empty());
}

TEST(TreatmentRun, ARestIsCountedDownWhileTheStepIsReady)
{
    TreatmentLog log = threeSteps();
    log.ahead[1].rest = 60;
    TreatmentRun run(log, nothing);
    run.advance(at(0));
    EXPECT_EQ(run.restLeft(at(10).at), 0);
    run.advance(at(60));
    EXPECT_EQ(run.restLeft(at(80).at), 40);
    EXPECT_EQ(run.restLeft(at(200).at), 0);
}

// Whatever is pressed, killed and resumed: the seconds while the clock ran are all in the log, each step once, and the right
// ones.
TEST(TreatmentRun, NothingThatWasWorkedIsEverLost)
{
    std::mt19937 random(11);
    const auto below = [&](int n) { return std::uniform_int_distribution(0, n - 1)(random); };
    for (int i = 0; i < casesWanted(); ++i) {
        auto run = std::make_unique<TreatmentRun>(threeSteps(), nothing);
        int now = 0;
        int worked = 0;
        for (int acts = 0; acts < 30; ++acts) {
            const int passed = below(40);
            if (run->phase() == Phase::Working)
                worked += passed;
            now += passed;
            switch (below(7)) {
            case 0:
            case 1:
            case 2: run->advance(at(now)); break;
            case 3: run->back(at(now)); break;
            case 4: run->stop(at(now)); break;
            case 5: run->goOn(at(now)); break;
            default: {
                static_cast<void>(run->tick({std::chrono::seconds(now) + TreatmentRun::keptEvery, at(now).clock}));
                if (run->phase() != Phase::Working)
                    run = std::make_unique<TreatmentRun>(run->treatment(), nothing); // locked, and resumed
                break;
            }
            }
            if (run->phase() != Phase::Working) {
                ASSERT_EQ(workedIn(run->treatment()), worked) << i;
            }
            ASSERT_EQ(run->treatment().steps.size() + run->treatment().ahead.size(), 3U) << i;
        }
    }
}

TEST(TreatmentRun, WorkOffThePlanComesNextAndWhatIsWorkedGoesOn)
{
    TreatmentRun run(threeSteps(), nothing);
    run.advance(at(0));
    run.add(step("soleus", Side::Right, "held-ease"), at(10));
    EXPECT_EQ(run.phase(), Phase::Working);
    ASSERT_NE(run.next(), nullptr);
    EXPECT_EQ(run.next()->place, (Place{StructureId{"soleus"}, Side::Right}));
    run.addPast(step("soleus", Side::Left, "gliding"));
    run.advance(at(30));
    ASSERT_EQ(run.treatment().steps.size(), 2U);
    EXPECT_EQ(run.treatment().steps.back().seconds, 30) << "the one that is worked stays the last";
    EXPECT_EQ(run.current()->place, (Place{StructureId{"soleus"}, Side::Right}));
    run.end(at(31));
    EXPECT_EQ(run.phase(), Phase::Over);
    run.add(step("soleus", Side::Right, "gliding"), at(40));
    EXPECT_EQ(run.phase(), Phase::Ready) << "it is gone on with";
}

TEST(TreatmentRun, WorkOffThePlanStandsBehindTheGateToo)
{
    const auto stop = [](const TreatmentStep &) {
        return std::vector<CautionVerdict>{{{}, {}, Verdict::Stop, "no", "a-rule", {}, {}}};
    };
    TreatmentRun run({}, stop);
    run.add(step("soleus", Side::Right, "gliding"), at(0));
    run.advance(at(1));
    run.advance(at(2));
    EXPECT_EQ(run.phase(), Phase::Over);
    EXPECT_EQ(run.treatment().steps.back().done, StepDone::Skipped);
}

TEST(StepsAhead, WhatWasDoneTodayIsNotOfferedAgain)
{
    static const Technique gliding = *techniques().find("gliding");
    SessionPlan plan;
    plan.steps.resize(2);
    plan.steps[0].place = {StructureId{"soleus"}, Side::Left};
    plan.steps[1].place = {StructureId{"soleus"}, Side::Right};
    for (PlannedStep &planned : plan.steps)
        planned.technique = &gliding;
    EXPECT_EQ(stepsAhead(plan).size(), 2U);
    TreatmentLog today;
    today.steps = {step("soleus", Side::Left, "gliding")};
    today.steps[0].done = StepDone::Partly;
    EXPECT_EQ(stepsAhead(plan, today).size(), 2U) << "in part is not done";
    today.steps[0].done = StepDone::Done;
    ASSERT_EQ(stepsAhead(plan, today).size(), 1U);
    EXPECT_EQ(stepsAhead(plan, today)[0].place.side, Side::Right);
}

} // namespace

} // namespace raphe
