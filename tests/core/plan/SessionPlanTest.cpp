// The plan of a whole treatment: techniques, positions, cautions, orders by hand, and its mirror image.
#include "core/plan/SessionPlan.h"
#include "core/reasoning/Evidence.h"
#include "tests/core/plan/Planning.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Cases.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe {

namespace {

using namespace test;

const PlannedStep *stepAt(const SessionPlan &plan, const Place &place)
{
    const auto it = std::find_if(plan.steps.begin(), plan.steps.end(), [&](const PlannedStep &s) { return s.place == place; });
    return it == plan.steps.end() ? nullptr : &*it;
}

const LeftOut *leftOut(const SessionPlan &plan, const Place &place)
{
    const auto it = std::find_if(plan.left.begin(), plan.left.end(), [&](const LeftOut &l) { return l.place == place; });
    return it == plan.left.end() ? nullptr : &*it;
}

const Place rightPiriformis{StructureId{"piriformis"}, Side::Right};
const Place leftPiriformis{StructureId{"piriformis"}, Side::Left};
const Place rightSegment{StructureId{"l4-l5"}, Side::Right};

SessionPlan planned(const Visit &visit, const PlanRequest &request = {})
{
    return planner().plan(visit, request, "visit").value();
}

TEST(SessionPlan, EveryPlaceFoundIsWorkedOrSaidToBeLeft)
{
    const Visit visit = visitOf({tender("piriformis", Side::Right, 2), tender("gluteus-medius", Side::Right, 3),
        stiff("l4-l5", Side::Right, 2), tender("soleus", Side::Left, 1)});
    for (const int minutes : {0, 6, 9, 12, 20, 60}) {
        PlanRequest request;
        request.wish.minutes = minutes;
        const SessionPlan plan = planned(visit, request);
        EXPECT_EQ(plan.steps.size() + plan.left.size(), 4U) << minutes;
        EXPECT_LE(plan.seconds + plan.reserved, std::max(minutes * 60, plan.reserved)) << minutes;
        for (const PlannedStep &step : plan.steps) {
            EXPECT_FALSE(step.why.empty());
            EXPECT_TRUE(access().positionsOf(step.place) & setOf(step.position)) << step.place.structure.value;
        }
        for (const LeftOut &left : plan.left)
            EXPECT_FALSE(left.why.empty());
    }
}

TEST(SessionPlan, ABarredPositionIsNeverTaken)
{
    PlanRequest request;
    request.wish.minutes = 40;
    request.wish.barred = {Position::Prone};
    const SessionPlan plan =
        planned(visitOf({tender("piriformis", Side::Right, 2), tender("soleus", Side::Left, 2), stiff("l4-l5", Side::Right, 2)}),
            request);
    EXPECT_FALSE(plan.steps.empty());
    for (const PlannedStep &step : plan.steps)
        EXPECT_NE(step.position, Position::Prone);
}

TEST(SessionPlan, LatePregnancyBarsFaceDown)
{
    Visit visit = visitOf({tender("piriformis", Side::Right, 2), tender("gluteus-medius", Side::Left, 2)});
    visit.conditions = {{"late-pregnancy", {}}};
    const SessionPlan plan = planned(visit);
    for (const PlannedStep &step : plan.steps)
        EXPECT_NE(step.position, Position::Prone);
    EXPECT_FALSE(plan.told.empty());
}

TEST(SessionPlan, AnEmergencyLocksEverything)
{
    int locked = 0;
    for (const WarningSign &sign : adviser().rules().signs().signs) {
        if (sign.level != WarningLevel::EmergencyNow)
            continue;
        Visit visit = visitOf({tender("piriformis", Side::Right, 2)});
        visit.date = "2026-03-02";
        WarningAnswer answer;
        answer.sign = sign.id;
        answer.isThere = true;
        answer.asked = visit.date;
        answer.decided = Decision::EmergencyServices;
        answer.why = "as heard";
        answer.told = "the emergency services";
        visit.warnings = {answer};
        const auto plan = planner().plan(visit, {}, "visit");
        if (!plan)
            continue; // one that needs a place
        ++locked;
        EXPECT_TRUE(plan.value().steps.empty()) << sign.id;
        EXPECT_FALSE(plan.value().told.empty()) << sign.id;
    }
    EXPECT_GT(locked, 5);
}

TEST(SessionPlan, WhatIsNotWantedTodayIsReplacedOrLeft)
{
    const Visit visit = visitOf({stiff("piriformis", Side::Right, 2)});
    const SessionPlan before = planned(visit);
    ASSERT_EQ(before.steps.size(), 1U);
    PlanRequest request;
    request.wish.refused = {before.steps[0].technique->id};
    const SessionPlan after = planned(visit, request);
    for (const PlannedStep &step : after.steps)
        EXPECT_NE(step.technique->id, before.steps[0].technique->id);
    for (const Technique &technique : techniques().all)
        request.wish.refused.insert(technique.id);
    const SessionPlan none = planned(visit, request);
    EXPECT_TRUE(none.steps.empty());
    ASSERT_NE(leftOut(none, rightPiriformis), nullptr);
}

TEST(SessionPlan, AThrustNeedsItsOwnYes)
{
    const Visit visit = visitOf({stiff("l4-l5", Side::Right, 3)});
    PlanRequest request;
    request.wish.byHand = {{rightSegment, "thrust"}};
    const SessionPlan plan = planned(visit, request);
    EXPECT_TRUE(plan.steps.empty()) << "nobody asked";
    ASSERT_NE(leftOut(plan, rightSegment), nullptr);
    request.preferences.techniques = std::set<std::string>{"mobilising", "gliding"};
    EXPECT_TRUE(planned(visit, request).steps.empty()) << "outside the scope";
}

TEST(SessionPlan, DeepWorkRestsForItsHours)
{
    const Visit visit = visitOf({stiff("piriformis", Side::Right, 2)});
    const SessionPlan fresh = planned(visit);
    ASSERT_EQ(fresh.steps.size(), 1U);
    ASSERT_TRUE(fresh.steps[0].technique->deep) << "the case wants deep work";
    PlanRequest request;
    request.earlier = {{rightPiriformis, fresh.steps[0].technique->id, 1}};
    for (const PlannedStep &step : planned(visit, request).steps)
        EXPECT_FALSE(step.technique->deep) << "one day after deep work";
    request.earlier[0].daysAgo = 3;
    ASSERT_EQ(planned(visit, request).steps.size(), 1U);
    EXPECT_TRUE(planned(visit, request).steps[0].technique->deep) << "three days after";
    request.earlier[0] = {leftPiriformis, fresh.steps[0].technique->id, 1};
    EXPECT_TRUE(planned(visit, request).steps[0].technique->deep) << "the other side rests";
}

TEST(SessionPlan, PinnedDroppedAndMovedStepsAreKept)
{
    const Visit visit = visitOf({tender("piriformis", Side::Right, 3), tender("gluteus-medius", Side::Right, 3),
        tender("soleus", Side::Left, 1), stiff("l4-l5", Side::Right, 2)});
    const Place soleus{StructureId{"soleus"}, Side::Left};
    PlanRequest request;
    request.wish.minutes = 9;
    EXPECT_EQ(stepAt(planned(visit, request), soleus), nullptr) << "the mildest has no room";
    request.wish.pinned = {soleus};
    EXPECT_NE(stepAt(planned(visit, request), soleus), nullptr);
    request.wish.pinned.clear();
    request.wish.minutes = 40;
    request.wish.dropped = {rightPiriformis};
    EXPECT_EQ(stepAt(planned(visit, request), rightPiriformis), nullptr);
    request.wish.dropped.clear();
    const SessionPlan free = planned(visit, request);
    ASSERT_GE(free.steps.size(), 2U);
    request.wish.ordered = {{free.steps.back().place, free.steps.front().place}};
    const SessionPlan moved = planned(visit, request);
    const auto *last = stepAt(moved, free.steps.back().place);
    const auto *first = stepAt(moved, free.steps.front().place);
    ASSERT_TRUE(last && first);
    EXPECT_LT(last, first);
}

TEST(SessionPlan, SkinComesBeforeWhatLiesDeeper)
{
    const Visit visit = visitOf({stiff("gluteus-maximus", Side::Right, 3), stiff("sf-gluteal-region-middle", Side::Right, 1)});
    PlanRequest request;
    request.wish.minutes = 40;
    const SessionPlan plan = planned(visit, request);
    const auto *skin = stepAt(plan, {StructureId{"sf-gluteal-region-middle"}, Side::Right});
    const auto *deep = stepAt(plan, {StructureId{"gluteus-maximus"}, Side::Right});
    ASSERT_TRUE(skin && deep);
    EXPECT_LT(skin, deep);
}

// Every place that a sentence names is one of the plan, on its side.
TEST(SessionPlan, SentencesNameTheSideThatIsWorked)
{
    int named = 0;
    for (const Side side : {Side::Right, Side::Left}) {
        const Visit visit = visitOf({stiff("gluteus-maximus", side, 3), stiff("sf-gluteal-region-middle", side, 1)});
        PlanRequest request;
        request.wish.minutes = 40;
        const SessionPlan plan = planned(visit, request);
        const std::string other = side == Side::Right ? "left" : "right";
        for (const PlannedStep &step : plan.steps)
            for (const std::string &why : step.why) {
                EXPECT_EQ(why.find(other), std::string::npos) << why;
                named += why.find("Before ") == 0 ? 1 : 0;
            }
    }
    EXPECT_EQ(named, 2);
}

TEST(SessionPlan, MirroringTheVisitMirrorsThePlan)
{
    RandomVisits visits(6);
    for (int i = 0; i < casesWanted(); ++i) {
        const Visit visit = visits.next();
        PlanRequest request;
        request.wish.minutes = 10 + i % 40;
        if (i % 3 == 0)
            request.wish.barred = {Position::OnLeftSide};
        if (i % 4 == 0)
            request.lying = Position::OnRightSide;
        const SessionPlan plan = planned(visit, request);
        const SessionPlan image = mirrored(planned(mirrored(visit), mirrored(request)));
        ASSERT_EQ(plan.value, image.value) << i;
        ASSERT_EQ(plan.turns, image.turns) << i;
        ASSERT_EQ(plan.seconds, image.seconds) << i;
        if (canonical(visit).isItsOwnImage)
            continue; // one side first, whichever
        ASSERT_EQ(plan.steps.size(), image.steps.size()) << i;
        for (std::size_t s = 0; s < plan.steps.size(); ++s) {
            ASSERT_EQ(plan.steps[s].place, image.steps[s].place) << i;
            ASSERT_EQ(plan.steps[s].position, image.steps[s].position) << i;
            ASSERT_EQ(plan.steps[s].technique, image.steps[s].technique) << i;
            ASSERT_EQ(plan.steps[s].before, image.steps[s].before) << i;
        }
    }
}

} // namespace

} // namespace raphe
