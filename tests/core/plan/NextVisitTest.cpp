// What a patient's next visit takes over, and what is asked anew.
#include "core/plan/NextVisit.h"
#include "core/record/PlacesSince.h"
#include "tests/support/Complaints.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

const std::string today = "2031-03-12";

PatientRecord record()
{
    PatientRecord out;
    out.name = "Ada Brook";
    out.born = "1980-03-05";
    out.complaints = {{1, "my knee", "May", false}, {2, "my neck", "", false}};
    out.conditions = {{"anticoagulant", "since 2024"}, {"hip-replacement", "left hip"}};
    return out;
}

Visit lastVisit()
{
    Visit visit;
    visit.date = "2031-03-01";
    visit.practitioner = "B. Okoye";
    visit.cautions = {"faints"};
    Complaint knee = complaintOf("my knee");
    knee.episode = 1;
    knee.now = PainScore{4};
    knee.worst = PainScore{8};
    knee.best = PainScore{1};
    knee.irritability = Irritability::High;
    knee.activities = {{"stairs", 3}, {"", 7}};
    knee.goal = "to walk";
    knee.asked = "2031-03-01";
    visit.complaints = {knee, complaintOf("my heel")};
    visit.complaintAt = {{StructureId{"anterior-region-of-knee"}, Side::Left}};
    visit.consents = {{"cupping", ConsentState::Withdrawn, "2031-03-01", {}, {}, {}, {}}};
    visit.promised = {"walk"};
    visit.warnings = {{"chest-pain-now", true, "2031-03-01", {}, Decision::EmergencyServices, "now", "112"}};
    visit.injured = true;
    visit.plan.barred = {Position::Prone};
    visit.plan.refused = {"cups-still"};
    return visit;
}

// With everything that can be said at the end.
Visit closedVisit()
{
    Visit visit = lastVisit();
    visit.retested.pain = PainScore{2};
    visit.focus = {"the left hip"};
    visit.closing.advice = {{"walk-a-little", "Walk a little", "Ten minutes, twice a day."}, {{}, {}, "Put the leg up."}};
    visit.closing.isTold = true;
    visit.closing.focus = {"stairs", "the right hip"};
    visit.closing.impression = {"joint of the knee", "B-12", "list of the house, 2nd edition"};
    visit.closing.goals = {{"to sleep through", "2031-03-01", true}, {"to climb the stairs", "2031-05-01", false}};
    visit.closing.plan = CarePlan{"2031-02-01", 6, 7, "half the pain on the stairs"};
    visit.closing.call = LaterCall{"2031-03-03", "2031-03-03", Reaction::Sore, "for a day"};
    visit.letters.emplace_back();
    visit.letters.back().title = "Letter about warning signs";
    return visit;
}

Visit aboutNeck(Visit visit)
{
    visit.complaints.front().episode = 2;
    visit.complaints.front().text = "my neck";
    return visit;
}

Visit reviewedAs(CareDecision decision, std::optional<CarePlan> plan)
{
    Visit visit = closedVisit();
    visit.closing.plan = std::move(plan);
    visit.closing.review = CareReview{decision, "no change in six visits"};
    return visit;
}

Visit next(const std::vector<EarlierVisit> &earlier, std::optional<int> episode = 1)
{
    return nextVisit(safetyRules(), record(), earlier, today, episode);
}

} // namespace

TEST(NextVisit, AFirstOneTakesWhatTheRecordSays)
{
    const Visit visit = next({}, 1);
    EXPECT_EQ(visit.patient, (Patient{"Ada Brook", "1980-03-05"}));
    EXPECT_EQ(visit.date, today);
    EXPECT_EQ(visit.complaint(), "my knee");
    EXPECT_EQ(visit.complaints.front().since, "May");
    EXPECT_EQ(visit.conditions, (std::vector<Condition>{{"anticoagulant", {}}}));
    ASSERT_EQ(visit.cautions.size(), 1U) << "a condition that needs a place comes in words";
    EXPECT_NE(visit.cautions.front().find("left hip"), std::string::npos);
    EXPECT_FALSE(visit.sinceLast);
}

TEST(NextVisit, TakesOverWhatWasToldAndAsksTheNumbersAnew)
{
    const Visit visit = next({{lastVisit(), false}});
    ASSERT_EQ(visit.complaints.size(), 2U);
    const Complaint &knee = visit.complaints.front();
    EXPECT_EQ(knee.text, "my knee");
    EXPECT_EQ(knee.irritability, Irritability::High);
    EXPECT_EQ(knee.goal, "to walk");
    EXPECT_FALSE(knee.now || knee.worst || knee.best);
    EXPECT_EQ(knee.activities, (std::vector<Activity>{{"stairs", {}}}));
    EXPECT_EQ(knee.asked, "2031-03-01") << "not confirmed by being carried over";
    EXPECT_EQ(confirmedOn(today, visit.complaints).front().asked, today);
    EXPECT_EQ(visit.consents, lastVisit().consents) << "what was withdrawn stays withdrawn";
    ASSERT_TRUE(visit.sinceLast);
    EXPECT_EQ(visit.sinceLast->promises, (std::vector<Promise>{{"walk", {}}}));
    EXPECT_TRUE(visit.promised.empty());
    EXPECT_TRUE(visit.complaintAt.empty()) << "where it hurts is asked";
    EXPECT_TRUE(visit.pain.empty());
    EXPECT_TRUE(visit.warnings.empty()) << "an emergency of another day was for that visit";
    EXPECT_TRUE(visit.injured);
    EXPECT_EQ(visit.cautions.front(), "faints");
    EXPECT_EQ(visit.plan.barred, (std::set<Position>{Position::Prone}));
    EXPECT_TRUE(visit.plan.refused.empty()) << "what was not wanted was not wanted that day";
}

TEST(NextVisit, AboutAnotherComplaintBeginsAnew)
{
    const Visit visit = next({{lastVisit(), false}}, 2);
    ASSERT_EQ(visit.complaints.size(), 1U);
    EXPECT_EQ(visit.complaint(), "my neck");
    EXPECT_EQ(visit.complaints.front().asked, "");
    EXPECT_FALSE(visit.injured);
}

TEST(NextVisit, OneInErrorGivesNothingButTheWarningSignsOfTheDay)
{
    Visit wrong = lastVisit();
    wrong.date = today;
    wrong.warnings.front().asked = today;
    const Visit visit = next({{wrong, true}});
    EXPECT_EQ(visit.warnings, wrong.warnings);
    EXPECT_TRUE(visit.practitioner.empty());
    EXPECT_FALSE(visit.sinceLast);
}

TEST(NextVisit, TakesOverWhatTheLastOneLeftForIt)
{
    Closing left;
    left.goals = {{"to climb the stairs", "2031-05-01", false}};
    left.plan = CarePlan{"2031-02-01", 6, 7, "half the pain on the stairs"};
    for (const std::optional<int> episode : {std::optional(1), std::optional<int>()}) {
        const Visit visit = next({{closedVisit(), false}}, episode);
        EXPECT_EQ(visit.focus, (std::vector<std::string>{"stairs", "the right hip"}));
        EXPECT_EQ(visit.closing, left) << "no advice, impression, call nor focus of the last one, and no goal that is reached";
        EXPECT_EQ(visit.retested, Retested{});
        EXPECT_TRUE(visit.letters.empty()) << "they were written about that visit";
    }
}

TEST(NextVisit, OnlyTheNewestAboutTheComplaintLeavesSomething)
{
    const Visit bare = next({{lastVisit(), false}, {closedVisit(), false}});
    EXPECT_EQ(bare.closing, Closing{}) << "it was ended at the newer one";
    EXPECT_TRUE(bare.focus.empty());
    Visit wrong = closedVisit();
    wrong.closing.focus = {"of somebody else"};
    wrong.closing.advice = {{{}, "Of somebody else", "x"}};
    const Visit visit = next({{wrong, true}, {closedVisit(), false}});
    EXPECT_EQ(visit.focus, closedVisit().closing.focus) << "one in error leaves nothing";
    EXPECT_EQ(visit.sinceLast->promises.back().task, "Put the leg up.");
}

TEST(NextVisit, AsksAboutWhatWasGivenToDoAtHome)
{
    const Visit visit = next({{closedVisit(), false}});
    ASSERT_TRUE(visit.sinceLast);
    EXPECT_EQ(visit.sinceLast->promises, (std::vector<Promise>{{"walk", {}}, {"Walk a little", {}}, {"Put the leg up.", {}}}));
    Visit unpromised = closedVisit();
    unpromised.promised.clear();
    const Visit advised = next({{unpromised, false}});
    ASSERT_TRUE(advised.sinceLast);
    EXPECT_EQ(advised.sinceLast->promises, (std::vector<Promise>{{"Walk a little", {}}, {"Put the leg up.", {}}}));
    unpromised.closing.advice.clear();
    EXPECT_FALSE(next({{unpromised, false}}).sinceLast);
}

TEST(NextVisit, AReviewEndsThePlanUnlessANewOneWasAgreed)
{
    const CarePlan old{"2031-02-01", 6, 7, {}};
    const CarePlan fresh{"2031-03-01", 4, 14, {}};
    for (const CareDecision decision : {CareDecision::Refer, CareDecision::Discharge})
        for (const CarePlan &plan : {old, fresh})
            EXPECT_FALSE(next({{reviewedAs(decision, plan), false}}).closing.plan) << wordOf(careDecisionWords, decision);
    EXPECT_FALSE(next({{reviewedAs(CareDecision::ChangePlan, old), false}}).closing.plan) << "to be changed, and was not";
    EXPECT_FALSE(next({{reviewedAs(CareDecision::ChangePlan, {}), false}}).closing.plan);
    const Visit changed = next({{reviewedAs(CareDecision::ChangePlan, fresh), false}});
    EXPECT_EQ(changed.closing.plan, fresh);
    EXPECT_FALSE(changed.closing.review) << "it was of that day";
    const Visit ended = next({{reviewedAs(CareDecision::Discharge, old), false}});
    EXPECT_EQ(ended.closing.goals.size(), 1U) << "goals stay";
    EXPECT_EQ(ended.focus, closedVisit().closing.focus);
}

TEST(NextVisit, WhatAnotherComplaintLeftStaysWithIt)
{
    const Visit first = next({{closedVisit(), false}}, 2);
    EXPECT_EQ(first.closing, Closing{});
    EXPECT_TRUE(first.focus.empty());
    ASSERT_TRUE(first.sinceLast) << "what was given to do at home is asked about all the same";
    EXPECT_EQ(first.sinceLast->promises.size(), 3U);

    Visit neck = aboutNeck(closedVisit());
    neck.closing = {};
    neck.closing.focus = {"look over the shoulder"};
    neck.closing.plan = CarePlan{"2031-03-08", 3, 14, {}};
    neck.closing.advice = {{{}, {}, "Change the pillow."}};
    const Visit knee = next({{neck, false}, {closedVisit(), false}}, 1);
    EXPECT_EQ(knee.focus, closedVisit().closing.focus) << "an older visit was about it";
    EXPECT_EQ(knee.closing.plan, closedVisit().closing.plan);
    EXPECT_EQ(knee.closing.goals.size(), 1U);
    EXPECT_EQ(knee.sinceLast->promises, (std::vector<Promise>{{"walk", {}}, {"Change the pillow.", {}}}));
    const Visit again = next({{neck, false}, {closedVisit(), false}}, {});
    EXPECT_EQ(again.focus, neck.closing.focus) << "about what the last one was about";
    EXPECT_EQ(again.closing.plan, neck.closing.plan);
    EXPECT_TRUE(again.closing.goals.empty());
}

TEST(PlacesSince, SaysWhatIsNewGoneAndTheSame)
{
    const Place knee{StructureId{"anterior-region-of-knee"}, Side::Left};
    const Place heel{StructureId{"heel-region"}, Side::Left};
    const Place otherHeel{StructureId{"heel-region"}, Side::Right};
    Visit now;
    now.complaintAt = {otherHeel, knee};
    Visit before;
    before.complaintAt = {knee, heel};
    const PlacesSince since = placesSince(now, before);
    EXPECT_EQ(since.same, std::vector{knee});
    EXPECT_EQ(since.fresh, std::vector{otherHeel});
    EXPECT_EQ(since.gone, std::vector{heel}) << "the other side is another place";
}

} // namespace raphe::test
