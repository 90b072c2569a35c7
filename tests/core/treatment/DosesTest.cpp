// Doses of the day and of the week, and what the plan has to leave room after.
#include "core/treatment/Doses.h"
#include "tests/core/plan/Planning.h"

#include <gtest/gtest.h>

namespace raphe {

namespace {

using namespace test;

const Place soleus{StructureId{"soleus"}, Side::Left};
const Place glute{StructureId{"gluteus-maximus"}, Side::Right};

TreatmentStep worked(const Place &place, const char *technique, int seconds)
{
    TreatmentStep out;
    out.place = place;
    out.technique = technique;
    out.began = "10:00:00";
    out.seconds = seconds;
    return out;
}

TreatmentLog logOf(std::vector<TreatmentStep> steps)
{
    TreatmentLog out;
    out.steps = std::move(steps);
    return out;
}

TEST(Doses, TodayAndTheSixDaysBeforeAreAWeek)
{
    const TreatmentLog today =
        logOf({worked(soleus, "gliding", 60), worked(soleus, "gliding", 30), worked(glute, "gliding", 50)});
    const std::vector<PastTreatment> earlier{{6, logOf({worked(soleus, "gliding", 100)})},
        {7, logOf({worked(soleus, "gliding", 1000)})}, {1, logOf({worked(soleus, "held-ease", 90)})}};
    EXPECT_EQ(dosesOf(today, earlier),
        (std::vector<WeekDose>{
            {soleus, "gliding", 90, 2, 190, 3}, {glute, "gliding", 50, 1, 50, 1}, {soleus, "held-ease", 0, 0, 90, 1}}));
}

TEST(Doses, WhatWasSkippedIsNone)
{
    TreatmentStep skipped = worked(soleus, "gliding", 0);
    skipped.began.clear();
    skipped.done = StepDone::Skipped;
    EXPECT_TRUE(dosesOf(logOf({skipped}), {}).empty());
    EXPECT_TRUE(earlierWork({{1, logOf({skipped})}}).empty());
}

TEST(Doses, EarlierWorkRestsInTodaysPlan)
{
    Finding found;
    found.place = glute;
    found.restriction = Restriction{2};
    Visit visit;
    visit.findings = {found};
    const auto chosen = [&](const std::vector<PastTreatment> &earlier) {
        PlanRequest request;
        request.earlier = earlierWork(earlier);
        return planner().plan(visit, request, "visit").value().steps.at(0).technique;
    };
    const Technique *usual = chosen({});
    ASSERT_TRUE(usual->deep) << "the case wants deep work";
    EXPECT_FALSE(chosen({{1, logOf({worked(glute, usual->id.c_str(), 60)})}})->deep);
    EXPECT_TRUE(chosen({{1, logOf({worked(mirrored(glute), usual->id.c_str(), 60)})}})->deep);
}

TEST(Doses, CupsAreCountedTogether)
{
    TreatmentStep still = worked(glute, "cups-still", 300);
    still.kPa = 20;
    TreatmentStep moved = worked(soleus, "cups-gliding", 120);
    moved.kPa = 15;
    EXPECT_EQ(cupsOf(logOf({still, moved, worked(soleus, "gliding", 60)}), techniques()), (CupDose{420, 20}));
    EXPECT_EQ(cupsOf(logOf({worked(soleus, "gliding", 60)}), techniques()), CupDose{});
}

} // namespace

} // namespace raphe
