// What to treat first: a sum of visible terms, with caution where touch itself is too much.
#include "tests/core/reasoning/Visits.h"

#include "core/plan/Treat.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace raphe::test {

namespace {

const Suggestion &entryOf(const std::vector<Suggestion> &list, const Place &place)
{
    for (const Suggestion &s : list)
        if (s.place == place)
            return s;
    throw std::runtime_error("not suggested: " + place.structure.value);
}

const Term *termOf(const Suggestion &s, const std::string &name)
{
    for (const Term &term : s.terms)
        if (term.name == name)
            return &term;
    return nullptr;
}

TEST(TreatFirst, EveryScoreIsTheSumOfItsTerms)
{
    RandomVisits random(11);
    std::size_t seen = 0;
    for (int i = 0; i < 40; ++i)
        for (const Suggestion &s : treatFirst(reasoner(), random.next()).treat) {
            double sum = 0;
            for (const Term &term : s.terms) {
                EXPECT_GT(term.value, 0) << term.name;
                sum += term.value;
            }
            EXPECT_NEAR(s.score, sum, 1e-12) << s.place;
            EXPECT_FALSE(s.why.empty()) << s.place;
            ++seen;
        }
    EXPECT_GT(seen, 50U);
}

TEST(TreatFirst, LeavesToOthersWhatIsOutsideTheScope)
{
    const Visit visit = visitOf({stiff("l4-l5", Side::Midline, 2), tender("piriformis", Side::Right, 2)});
    const Place joint{{"l4-l5"}, Side::Midline};
    const Place muscle{{"piriformis"}, Side::Right};
    const auto within = [&](std::set<std::string> techniques) {
        return treatFirst(reasoner(), visit, {true, true, std::move(techniques)});
    };
    EXPECT_TRUE(treatFirst(reasoner(), visit).leave.empty());
    EXPECT_TRUE(within({"mobilising", "gliding"}).leave.empty());
    const auto softTissueOnly = within({"gliding"});
    EXPECT_NE(entryOf(softTissueOnly.leave, joint).why.find("scope"), std::string::npos);
    EXPECT_EQ(softTissueOnly.treat.size(), 1U);
    entryOf(softTissueOnly.treat, muscle);
    const auto jointsOnly = within({"mobilising", "thrust"});
    EXPECT_NE(entryOf(jointsOnly.leave, muscle).why.find("scope"), std::string::npos);
    entryOf(jointsOnly.treat, joint);
    EXPECT_EQ(within({}).leave.size(), 2U);
}

TEST(TreatFirst, GradeFourAddsNoTendernessAndAsksForCaution)
{
    const Place place{{"piriformis"}, Side::Right};
    const auto four = treatFirst(reasoner(), visitOf({tender("piriformis", Side::Right, 4)})).treat;
    const auto three = treatFirst(reasoner(), visitOf({tender("piriformis", Side::Right, 3)})).treat;
    EXPECT_FALSE(termOf(entryOf(four, place), "tenderness"));
    EXPECT_NE(entryOf(four, place).why.find("aution"), std::string::npos) << entryOf(four, place).why;
    ASSERT_TRUE(termOf(entryOf(three, place), "tenderness"));
    EXPECT_DOUBLE_EQ(termOf(entryOf(three, place), "tenderness")->value, constants()["treat-tenderness"]);
    EXPECT_EQ(entryOf(three, place).why.find("aution"), std::string::npos) << entryOf(three, place).why;
}

TEST(TreatFirst, AMildSpotMoreDoesNotMakeASorePlaceCountLess)
{
    Finding sore = tender("piriformis", Side::Right, 0);
    sore.tenderness.reset();
    sore.sore = true;
    Finding mild = tender("piriformis", Side::Right, 1);
    mild.spot = Spot::Belly;
    const Place place{{"piriformis"}, Side::Right};
    const auto alone = treatFirst(reasoner(), visitOf({sore})).treat;
    const auto both = treatFirst(reasoner(), visitOf({sore, mild})).treat;
    EXPECT_DOUBLE_EQ(termOf(entryOf(both, place), "tenderness")->value, termOf(entryOf(alone, place), "tenderness")->value);
}

TEST(TreatFirst, GradeFourAtOneSpotSpeaksForThePlace)
{
    Finding origin = tender("piriformis", Side::Right, 4);
    origin.spot = Spot::Origin;
    Finding belly = tender("piriformis", Side::Right, 2);
    belly.spot = Spot::Belly;
    for (const Visit &visit : {visitOf({origin, belly}), visitOf({belly, origin})}) {
        const auto list = treatFirst(reasoner(), visit).treat;
        ASSERT_EQ(list.size(), 1U) << "one entry a place";
        EXPECT_FALSE(termOf(list.front(), "tenderness"));
        EXPECT_NE(list.front().why.find("aution"), std::string::npos);
    }
}

TEST(TreatFirst, AJointComesBeforeTheMuscleAcrossIt)
{
    const Place joint{{"hip-joint"}, Side::Right};
    const auto with =
        treatFirst(reasoner(), visitOf({stiff("hip-joint", Side::Right, 2), tender("gluteus-medius", Side::Right, 2)})).treat;
    ASSERT_TRUE(termOf(entryOf(with, joint), "joint first"));
    EXPECT_DOUBLE_EQ(termOf(entryOf(with, joint), "joint first")->value, constants()["treat-joint-first"]);
    EXPECT_FALSE(termOf(entryOf(with, {{"gluteus-medius"}, Side::Right}), "joint first"));
}

TEST(TreatFirst, AJointAloneOrWithAMuscleOfTheOtherSideIsNotFirst)
{
    const Place joint{{"hip-joint"}, Side::Right};
    const auto alone = treatFirst(reasoner(), visitOf({stiff("hip-joint", Side::Right, 2)})).treat;
    EXPECT_FALSE(termOf(entryOf(alone, joint), "joint first"));
    const auto other =
        treatFirst(reasoner(), visitOf({stiff("hip-joint", Side::Right, 2), tender("gluteus-medius", Side::Left, 2)})).treat;
    EXPECT_FALSE(termOf(entryOf(other, joint), "joint first"));
    const auto noncrossing =
        treatFirst(reasoner(), visitOf({stiff("hip-joint", Side::Right, 2), tender("vastus-medialis", Side::Right, 2)})).treat;
    EXPECT_FALSE(termOf(entryOf(noncrossing, joint), "joint first")) << "vastus medialis does not cross the hip";
}

TEST(TreatFirst, AMidlineSegmentComesBeforeTheMusclesOfEitherSide)
{
    for (const Side side : {Side::Left, Side::Right}) {
        const auto list =
            treatFirst(reasoner(), visitOf({stiff("l4-l5", Side::Midline, 2), tender("multifidus", side, 2)})).treat;
        EXPECT_TRUE(termOf(entryOf(list, {{"l4-l5"}, Side::Midline}), "joint first")) << wordOf(sideWords, side);
    }
}

TEST(TreatFirst, TheSkinAndItsFasciaComeBeforeWhatLiesDeeper)
{
    const auto list =
        treatFirst(reasoner(), visitOf({tender("thoracolumbar-fascia", Side::Right, 2), tender("multifidus", Side::Right, 2)}))
            .treat;
    EXPECT_TRUE(termOf(entryOf(list, {{"thoracolumbar-fascia"}, Side::Right}), "superficial first"));
    EXPECT_FALSE(termOf(entryOf(list, {{"multifidus"}, Side::Right}), "superficial first"));
}

TEST(TreatFirst, TheMostTiedFindingHasTheWholeLinkageTermAndALoneOneHasNone)
{
    const auto list = treatFirst(reasoner(),
        visitOf({tender("gluteus-maximus", Side::Right, 2), tender("thoracolumbar-fascia", Side::Left, 2),
            tender("latissimus-dorsi", Side::Left, 2)}))
                          .treat;
    double most = 0;
    for (const Suggestion &s : list)
        if (const Term *term = termOf(s, "linkage"))
            most = std::max(most, term->value);
    EXPECT_DOUBLE_EQ(most, constants()["treat-linkage"]);
    const auto alone = treatFirst(reasoner(), visitOf({tender("gluteus-maximus", Side::Right, 2)})).treat;
    EXPECT_FALSE(termOf(alone.front(), "linkage"));
}

TEST(TreatFirst, ListsOnlyWhatWasFound)
{
    Finding unable;
    unable.place = {{"iliacus"}, Side::Left};
    unable.unable = "guarding";
    const auto list =
        treatFirst(reasoner(), visitOf({tender("piriformis", Side::Left, 2), clearOf({{"gluteus-maximus"}, Side::Left}), unable}))
            .treat;
    ASSERT_EQ(list.size(), 1U);
    EXPECT_EQ(list.front().place, (Place{{"piriformis"}, Side::Left}));
}

TEST(TreatFirst, TenderButMovingFreelyIsTreated)
{
    Finding f = tender("piriformis", Side::Left, 2);
    f.clear.motion = true;
    EXPECT_EQ(treatFirst(reasoner(), visitOf({f})).treat.size(), 1U);
}

TEST(TreatFirst, FamiliarPainCountsAndIsNamed)
{
    Finding f = tender("piriformis", Side::Left, 1);
    f.familiar = true;
    const auto list = treatFirst(reasoner(), visitOf({f})).treat;
    ASSERT_TRUE(termOf(list.front(), "familiar"));
    EXPECT_DOUBLE_EQ(termOf(list.front(), "familiar")->value, constants()["treat-familiar"]);
    EXPECT_NE(list.front().why.find("knows this pain"), std::string::npos) << list.front().why;
}

TEST(TreatFirst, FamiliarPainThatWithdrawsFromTouchIsNoReasonToBeginThere)
{
    Finding f = tender("piriformis", Side::Left, 4);
    f.familiar = true;
    const auto list = treatFirst(reasoner(), visitOf({f, tender("gluteus-maximus", Side::Left, 1)})).treat;
    EXPECT_EQ(list.front().place, (Place{{"gluteus-maximus"}, Side::Left}));
    EXPECT_FALSE(termOf(entryOf(list, f.place), "familiar"));
}

TEST(TreatFirst, WhereItHurtsComesFirstUnlessThePractitionerPrefersOtherwise)
{
    Visit visit = visitOf({tender("gluteus-medius", Side::Right, 2)});
    visit.complaintAt = {{{"gluteal-region-superior"}, Side::Right}};
    EXPECT_TRUE(termOf(treatFirst(reasoner(), visit).treat.front(), "complaint"));
    EXPECT_FALSE(termOf(treatFirst(reasoner(), visit, {false, true}).treat.front(), "complaint"));
    const Visit joint = visitOf({stiff("hip-joint", Side::Right, 2), tender("gluteus-medius", Side::Right, 2)});
    EXPECT_FALSE(
        termOf(entryOf(treatFirst(reasoner(), joint, {true, false}).treat, {{"hip-joint"}, Side::Right}), "joint first"));
}

TEST(TreatFirst, AJointFusedOrWithTooMuchPlayIsLeftAlone)
{
    for (int play = 0; play <= JointPlay::highest; ++play) {
        Finding joint = tender("l4-l5", Side::Midline, 2);
        joint.play = JointPlay{play};
        const Treatment treatment = treatFirst(reasoner(), visitOf({joint, tender("multifidus", Side::Left, 2)}));
        const bool barred = play == 0 || play >= 4;
        EXPECT_EQ(treatment.leave.size(), barred ? 1U : 0U) << play;
        EXPECT_EQ(treatment.treat.size(), barred ? 1U : 2U) << play;
        if (barred) {
            EXPECT_NE(treatment.leave.front().why.find("not to be mobilised"), std::string::npos);
        }
    }
}

TEST(TreatFirst, AStopOfEverythingOrOfMobilisingAJointIsAVeto)
{
    const Place joint{{"hip-joint"}, Side::Right};
    const Place muscle{{"gluteus-medius"}, Side::Right};
    const Visit visit = visitOf({tender("hip-joint", Side::Right, 2), tender("gluteus-medius", Side::Right, 2)});
    const auto left = [&](std::vector<std::string> actions, Verdict verdict) {
        std::set<Place> places;
        for (const Suggestion &s : treatFirst(reasoner(), visit, {}, [&](const Place &place) {
                 return std::vector{CautionVerdict{place, actions, verdict, "why", "rule", "", "source"}};
             }).leave)
            places.insert(s.place);
        return places;
    };
    EXPECT_EQ(left({}, Verdict::Stop), (std::set{joint, muscle}));
    EXPECT_EQ(left({"mobilising"}, Verdict::Stop), std::set{joint});
    EXPECT_TRUE(left({"suction"}, Verdict::Stop).empty());
    EXPECT_TRUE(left({}, Verdict::Adapt).empty());
}

TEST(TreatFirst, GivesAtMostTwentyFiniteScores)
{
    Visit huge;
    for (const Place &place : examinablePlaces())
        if (huge.findings.size() < 60)
            huge.findings.push_back(tender(place.structure.value, place.side, 2));
    const auto list = treatFirst(reasoner(), huge).treat;
    EXPECT_EQ(list.size(), suggestionsAtMost);
    for (const Suggestion &s : list)
        EXPECT_TRUE(std::isfinite(s.score)) << s.place;
}

} // namespace

} // namespace raphe::test
