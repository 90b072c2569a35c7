// Cautions respected throughout: what is barred is neither to be checked nor treated, and an emergency locks the visit.
#include "tests/core/reasoning/Visits.h"

#include "core/plan/Advice.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

Visit buttock()
{
    return visitOf({tender("gluteus-maximus", Side::Right, 3), tender("biceps-femoris-long-head", Side::Right, 2),
        tender("latissimus-dorsi", Side::Left, 1)});
}

Advice adviceFor(const Visit &visit)
{
    const auto advice = adviser().advise(visit, "v.json");
    EXPECT_TRUE(advice.ok()) << inWords(advice.error());
    return advice.value();
}

TEST(Advice, AnEmergencyLocksTheVisit)
{
    Visit visit = buttock();
    EXPECT_FALSE(adviceFor(visit).isLocked());
    visit.conditions = {{"suspected-cauda-equina", {}}};
    const Advice advice = adviceFor(visit);
    EXPECT_TRUE(advice.isLocked());
    EXPECT_TRUE(advice.reasons.check.empty());
    EXPECT_TRUE(advice.treatment.treat.empty());
    EXPECT_EQ(advice.treatment.leave.size(), 3U);
}

TEST(Advice, WhatIsBarredIsNeitherCheckedNorTreated)
{
    Visit visit = buttock();
    visit.conditions = {{"suspected-leg-clot", {{{"biceps-femoris-long-head"}, Side::Right}}}};
    const Advice advice = adviceFor(visit);
    EXPECT_FALSE(advice.isLocked());
    const auto isOnTheLeg = [](const Suggestion &s) {
        return s.place.side == Side::Right && regions().limbOf(s.place.structure, 0.3) == Limb::Leg;
    };
    for (const auto *list : {&advice.reasons.check, &advice.treatment.treat})
        for (const Suggestion &s : *list)
            EXPECT_FALSE(isOnTheLeg(s)) << s.place;
    EXPECT_EQ(advice.treatment.treat.size(), 1U) << "the back of the other side stays";
    EXPECT_TRUE(std::any_of(advice.reasons.explain.begin(), advice.reasons.explain.end(), isOnTheLeg))
        << "what is not touched may still be what explains it";
}

TEST(Advice, AMuscleThatMayBeNeitherPressedNorLengthenedIsLeftAlone)
{
    const Place torn{{"biceps-femoris-long-head"}, Side::Right};
    for (const char *condition : {"recent-muscle-injury", "haematoma"}) {
        Visit visit = buttock();
        visit.conditions = {{condition, {torn}}};
        const Advice advice = adviceFor(visit);
        ASSERT_EQ(advice.treatment.leave.size(), 1U) << condition;
        EXPECT_EQ(advice.treatment.leave.front().place, torn) << condition;
        EXPECT_FALSE(advice.treatment.leave.front().why.empty()) << condition;
        EXPECT_EQ(advice.treatment.treat.size(), 2U) << condition;
    }
    // Where only pressing is left out, the place stays on the list with its caution.
    Visit visit = buttock();
    visit.conditions = {{"peripheral-neuropathy", {torn}}};
    EXPECT_TRUE(adviceFor(visit).treatment.leave.empty());
}

TEST(Advice, ASoreTendonIsLeftAloneUnderAMedicineThatWeakensTendons)
{
    Visit visit = visitOf({tender("calcaneal-tendon", Side::Left, 2), tender("soleus", Side::Left, 2)});
    visit.conditions = {{"fluoroquinolone", {}}};
    const Advice advice = adviceFor(visit);
    ASSERT_EQ(advice.treatment.leave.size(), 1U);
    EXPECT_EQ(advice.treatment.leave.front().place.structure, StructureId{"calcaneal-tendon"});
    ASSERT_EQ(advice.treatment.treat.size(), 1U);
    EXPECT_EQ(advice.treatment.treat.front().place.structure, StructureId{"soleus"});
}

TEST(Advice, AnUnknownConditionIsNamedWithItsPlace)
{
    Visit visit = buttock();
    visit.conditions = {{"anticoagulant", {}}, {"bad-luck", {}}};
    const auto advice = adviser().advise(visit, "v.json");
    ASSERT_FALSE(advice.ok());
    EXPECT_EQ(advice.error().place, "v.json#/conditions/1/condition");
    EXPECT_EQ(advice.error().detail, "bad-luck");
}

TEST(Advice, OfTheMirrorImageIsTheMirrorImage)
{
    Visit visit = buttock();
    visit.conditions = {{"open-wound", {{{"heel-region"}, Side::Right}}}, {"anticoagulant", {}}};
    const Advice here = adviceFor(visit);
    const Advice there = adviceFor(mirrored(visit));
    ASSERT_EQ(here.treatment.treat.size(), there.treatment.treat.size());
    for (std::size_t i = 0; i < here.treatment.treat.size(); ++i) {
        const Suggestion &a = here.treatment.treat[i];
        const Suggestion &b = there.treatment.treat[i];
        EXPECT_EQ(a.place, mirrored(b.place));
        EXPECT_EQ(a.score, b.score);
        ASSERT_EQ(a.cautions.size(), b.cautions.size());
        for (std::size_t k = 0; k < a.cautions.size(); ++k)
            EXPECT_EQ(a.cautions[k].rule, b.cautions[k].rule);
    }
}

} // namespace

} // namespace raphe::test
