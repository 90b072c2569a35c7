// What the shipped caution rules say of visits: each holds where it should and only there.
#include "tests/core/safety/Rules.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe::test {

namespace {

template <class T> bool isIn(const std::vector<T> &list, const T &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

Place placeOf(const StructureId &id)
{
    return {id, atlas().sides(atlas().at(id)).back()}; // right, where there is one
}

// The first structure of the kinds and layers of a rule that lies under its regions.
Place fittingPlace(const CautionRule &rule)
{
    if (rule.where == Where::SameLimb && rule.regions.empty())
        return {{"soleus"}, Side::Right};
    for (const Structure &s : atlas().structures()) {
        if (!(rule.kinds.empty() || isIn(rule.kinds, s.kind)) || !(rule.layers.empty() || isIn(rule.layers, s.layer)))
            continue;
        double under = 0;
        if (!rule.regions.empty())
            for (const auto &[region, share] : regions().over(s.id))
                under += isIn(rule.regions, region) ? share : 0;
        if (rule.regions.empty() || under > 0.5)
            return placeOf(s.id);
    }
    throw std::runtime_error("no structure fits the rule " + rule.id);
}

// Skin that is none of the rule's regions and on neither leg.
Place farFrom(const CautionRule &rule)
{
    for (const char *region : {"palm", "interscapular-region"})
        if (!isIn(rule.regions, StructureId{region}))
            return {{region}, Side::Left};
    throw std::runtime_error("nothing is far from the rule " + rule.id);
}

bool isForEverybodyEverywhere(const CautionRule &rule)
{
    return rule.conditions.empty() && rule.regions.empty() && rule.kinds.empty() && rule.layers.empty();
}

TEST(Cautions, EachRuleHoldsForEachOfItsConditionsAndNotWithoutIt)
{
    const Cautions nothing = cautionsOf({});
    for (const CautionRule &rule : safetyRules().rules()) {
        const Place place = fittingPlace(rule);
        for (const std::string &condition : rule.conditions) {
            const bool placed = safetyRules().findCondition(condition)->place != PlaceNeed::None;
            const Cautions cautions = cautionsOf(visitWith(condition, placed ? std::vector{place} : std::vector<Place>{}));
            const auto verdicts = cautions.at(place);
            const CautionVerdict *verdict = verdictOf(verdicts, rule.id);
            ASSERT_NE(verdict, nullptr) << rule.id << " of " << condition << " at " << place;
            EXPECT_EQ(
                *verdict, (CautionVerdict{place, rule.actions, rule.verdict, rule.reason, rule.id, condition, rule.source}));
            EXPECT_FALSE(holds(nothing, rule.id, place)) << rule.id << " without " << condition;
        }
        if (rule.conditions.empty()) {
            EXPECT_TRUE(holds(nothing, rule.id, place)) << rule.id << " at " << place;
        }
    }
}

TEST(Cautions, ARuleThatIsBoundToPlacesDoesNotHoldFarAway)
{
    for (const CautionRule &rule : safetyRules().rules()) {
        if (rule.where == Where::Everywhere && rule.regions.empty() && rule.kinds.empty() && rule.layers.empty())
            continue;
        const Place place = fittingPlace(rule);
        Visit visit;
        for (const std::string &condition : rule.conditions)
            visit.conditions.push_back({condition, rule.where == Where::Everywhere ? std::vector<Place>{} : std::vector{place}});
        const Cautions cautions = cautionsOf(visit);
        EXPECT_TRUE(holds(cautions, rule.id, place)) << rule.id << " at " << place;
        EXPECT_FALSE(holds(cautions, rule.id, farFrom(rule))) << rule.id << " at " << farFrom(rule);
    }
}

TEST(Cautions, ARuleForEverybodyHoldsEverywhereButIsNotThisPatients)
{
    const Cautions cautions = cautionsOf({});
    for (const CautionRule &rule : safetyRules().rules())
        if (isForEverybodyEverywhere(rule)) {
            EXPECT_TRUE(holds(cautions, rule.id, {{"palm"}, Side::Left})) << rule.id;
            EXPECT_TRUE(holds(cautions, rule.id, {{"l4-l5"}, Side::Midline})) << rule.id;
        }
    EXPECT_TRUE(cautions.general().empty());
}

TEST(Cautions, AMirroredVisitGivesMirroredVerdicts)
{
    Visit visit;
    visit.conditions = {{"anticoagulant", {}}, {"suspected-leg-clot", {{{"popliteal-vein"}, Side::Left}}},
        {"open-wound", {{{"ball-of-foot"}, Side::Right}, {{"scapular-region"}, Side::Left}}},
        {"irritable-joint", {{{"l4-l5"}, Side::Right}, {{"c4-c5"}, Side::Midline}}},
        {"lymphoedema", {{{"biceps-brachii"}, Side::Right}}}};
    const Cautions cautions = cautionsOf(visit);
    const Cautions mirror = cautionsOf(mirrored(visit));
    EXPECT_EQ(mirror.general(), cautions.general());
    for (std::size_t i = 0; i < atlas().structures().size(); i += 13) // the whole atlas takes a minute under sanitizers
        for (const Side side : atlas().sides(atlas().structures()[i])) {
            const Place place{atlas().structures()[i].id, side};
            auto verdicts = mirror.at(mirrored(place));
            for (CautionVerdict &v : verdicts)
                v.place = mirrored(*v.place);
            EXPECT_EQ(verdicts, cautions.at(place)) << place;
        }
}

TEST(Cautions, ASuspectedClotStopsTheWholeLegOfThatSide)
{
    // Wherever in the leg it is marked: at the skin of the calf, or at the vein, which no view shows.
    for (const char *marked : {"sural-region-medial", "popliteal-vein", "gastrocnemius", "femoral-triangle"}) {
        const Cautions cautions = cautionsOf(visitWith("suspected-leg-clot", {{{marked}, Side::Right}}));
        for (const char *leg : {"gluteus-maximus", "piriformis", "rectus-femoris", "biceps-femoris", "knee-joint", "soleus",
                 "flexor-hallucis-brevis", "great-toe", "plantar-region-medial", "femoral-vein", "sf-sural-region-lateral"}) {
            EXPECT_TRUE(cautions.isBarred({{leg}, Side::Right})) << leg << " with a clot at " << marked;
            EXPECT_FALSE(cautions.isBarred({{leg}, Side::Left})) << leg << " with a clot at " << marked;
        }
        for (const char *other : {"latissimus-dorsi", "quadratus-lumborum", "biceps-brachii", "trapezius"})
            EXPECT_FALSE(cautions.isBarred({{other}, Side::Right})) << other << " with a clot at " << marked;
        EXPECT_FALSE(cautions.isBarred({{"l5-s1"}, Side::Midline})) << "with a clot at " << marked;
    }
}

// What is marked at the root of a limb concerns the limb; what is marked in the limb does not concern its root.
TEST(Cautions, AConditionAtTheRootOfALimbHoldsInTheWholeLimb)
{
    for (const char *root : {"inguinal-region", "sf-inguinal-region", "femoral-triangle", "hip-region", "gluteal-region-superior",
             "gluteal-region-middle", "gluteal-region-inferior"}) {
        const Cautions clot = cautionsOf(visitWith("suspected-leg-clot", {{{root}, Side::Right}}));
        EXPECT_TRUE(clot.isBarred({{"soleus"}, Side::Right})) << root;
        EXPECT_FALSE(clot.isBarred({{"soleus"}, Side::Left})) << root;
        EXPECT_FALSE(clot.isBarred({{"biceps-brachii"}, Side::Right})) << root;
    }
    EXPECT_FALSE(
        cautionsOf(visitWith("suspected-leg-clot", {{{"soleus"}, Side::Right}})).isBarred({{"inguinal-region"}, Side::Right}));
    for (const char *root : {"axillary-region", "deltoid-region"}) {
        const Cautions nodes = cautionsOf(visitWith("lymphoedema", {{{root}, Side::Left}}));
        EXPECT_TRUE(holds(nodes, "lymphoedema-limb-light-only", {{"brachioradialis"}, Side::Left})) << root;
        EXPECT_FALSE(holds(nodes, "lymphoedema-limb-light-only", {{"brachioradialis"}, Side::Right})) << root;
        EXPECT_FALSE(holds(nodes, "lymphoedema-limb-light-only", {{"soleus"}, Side::Left})) << root;
    }
}

TEST(Cautions, AConditionOnOneSideOfASpinalSegmentHoldsInTheWholeSegment)
{
    for (const Side marked : {Side::Left, Side::Right, Side::Midline}) {
        const Cautions cautions = cautionsOf(visitWith("suspected-fracture", {{{"l4-l5"}, marked}}));
        for (const Side side : {Side::Left, Side::Right, Side::Midline}) {
            EXPECT_TRUE(cautions.isBarred({{"l4-l5"}, side}));
            EXPECT_FALSE(cautions.isBarred({{"l1-l2"}, side}));
        }
    }
    const Cautions knee = cautionsOf(visitWith("suspected-fracture", {{{"knee-joint"}, Side::Left}}));
    EXPECT_FALSE(knee.isBarred({{"knee-joint"}, Side::Right})) << "two joints";
}

TEST(Cautions, BarredIsWhereAStopOfEveryActionIsAmongTheVerdicts)
{
    Visit visit = visitWith("anticoagulant");
    visit.conditions.push_back({"open-wound", {{{"heel-region"}, Side::Left}, {{"extensor-digitorum"}, Side::Right}}});
    const Cautions cautions = cautionsOf(visit);
    for (std::size_t i = 0; i < atlas().structures().size(); i += 7)
        for (const Side side : atlas().sides(atlas().structures()[i])) {
            const Place place{atlas().structures()[i].id, side};
            const auto verdicts = cautions.at(place);
            EXPECT_EQ(cautions.isBarred(place), std::any_of(verdicts.begin(), verdicts.end(), [](const CautionVerdict &v) {
                return v.verdict == Verdict::Stop && v.concernsAll();
            })) << place;
        }
}

TEST(Cautions, WhatMerelySharesAnEdgeIsNotBarred)
{
    const Cautions cautions = cautionsOf(visitWith("open-wound", {{{"extensor-digitorum"}, Side::Right}}));
    EXPECT_FALSE(cautions.isBarred({{"wrist-joint"}, Side::Right}));
    EXPECT_TRUE(cautions.isBarred({{"extensor-digitorum"}, Side::Right}));
}

TEST(Cautions, AWoundBarsWhatLiesUnderItAndNothingElse)
{
    const Cautions cautions = cautionsOf(visitWith("open-wound", {{{"ball-of-foot"}, Side::Right}}));
    for (const char *under : {"ball-of-foot", "sf-ball-of-foot", "flexor-hallucis-brevis", "adductor-hallucis",
             "metatarsophalangeal-joint-1", "head-of-metatarsal-1"}) {
        EXPECT_TRUE(cautions.isBarred({{under}, Side::Right})) << under;
        EXPECT_FALSE(cautions.isBarred({{under}, Side::Left})) << under;
    }
    const Cautions inFascia = cautionsOf(visitWith("open-wound", {{{"sf-ball-of-foot"}, Side::Right}}));
    EXPECT_TRUE(inFascia.isBarred({{"ball-of-foot"}, Side::Right}));
    EXPECT_TRUE(inFascia.isBarred({{"flexor-hallucis-brevis"}, Side::Right}));
    EXPECT_FALSE(inFascia.isBarred({{"plantar-aponeurosis"}, Side::Right})) << "only a corner of it lies there";
    for (const char *away : {"knee-joint", "heel-region", "dorsum-of-foot", "soleus", "calcaneus"})
        EXPECT_FALSE(cautions.isBarred({{away}, Side::Right})) << away;
}

TEST(Cautions, AHotTendonBarsItselfAndAdaptsTheMuscleThatItLiesOn)
{
    const Place soleus{{"soleus"}, Side::Right};
    const Cautions hot = cautionsOf(visitWith("acute-inflammation", {{{"calcaneal-tendon"}, Side::Right}}));
    EXPECT_TRUE(hot.isBarred({{"calcaneal-tendon"}, Side::Right}));
    EXPECT_FALSE(hot.isBarred(soleus));
    const auto verdicts = hot.at(soleus);
    const auto spared = std::find_if(verdicts.begin(), verdicts.end(),
        [](const CautionVerdict &v) { return v.rule == "acute-inflammation-at-place" && v.verdict == Verdict::Adapt; });
    ASSERT_NE(spared, verdicts.end());
    EXPECT_TRUE(spared->reason.starts_with("Only a part lies there: work the rest, a hand's width away. Pressure"))
        << spared->reason;
    // A rule that does not spare the rest bars the muscle as well.
    EXPECT_TRUE(cautionsOf(visitWith("suspected-fracture", {{{"calcaneal-tendon"}, Side::Right}})).isBarred(soleus));
}

TEST(Cautions, WhatWasInjectedOrIsBruisedIsLeftAloneAndTheJointBelowIsNot)
{
    const Place tendon{{"common-extensor-tendon"}, Side::Left};
    EXPECT_TRUE(cautionsOf(visitWith("recent-injection", {tendon})).isBarred(tendon));
    EXPECT_FALSE(cautionsOf(visitWith("recent-injection", {tendon})).isBarred(mirrored(tendon)));
    const Place rhomboid{{"rhomboid-major"}, Side::Left};
    const Cautions bruised = cautionsOf(visitWith("bruises-from-last-visit", {rhomboid}));
    EXPECT_TRUE(bruised.isBarred(rhomboid));
    EXPECT_FALSE(bruised.isBarred({{"t5-t6"}, Side::Left}));
}

// Less than three tenths of the muscle lie under either, but its mark stands under the one.
TEST(Cautions, TheMarkDecidesWhereNoRegionHasAClearShare)
{
    EXPECT_TRUE(
        cautionsOf(visitWith("burn", {{{"sural-region-lateral"}, Side::Left}})).isBarred({{"gastrocnemius"}, Side::Left}));
    EXPECT_FALSE(
        cautionsOf(visitWith("burn", {{{"posterior-region-of-knee"}, Side::Left}})).isBarred({{"gastrocnemius"}, Side::Left}));
}

TEST(Cautions, AConditionOfAHiddenVesselReachesWhatItLiesBeside)
{
    const Cautions cautions = cautionsOf(visitWith("varicose-veins", {{{"popliteal-vein"}, Side::Left}}));
    for (const char *at : {"popliteal-vein", "popliteal-fascia", "gastrocnemius", "gastrocnemius-medial-head"})
        EXPECT_TRUE(holds(cautions, "veins-lymph-light-only", {{at}, Side::Left})) << at;
    EXPECT_FALSE(holds(cautions, "veins-lymph-light-only", {{"popliteal-fascia"}, Side::Right}));
    EXPECT_FALSE(holds(cautions, "veins-lymph-light-only", {{"vastus-lateralis"}, Side::Left}));
    EXPECT_TRUE(
        cautionsOf(visitWith("burn", {{{"gastrocnemius-medial-head"}, Side::Left}})).isBarred({{"sural-nerve"}, Side::Left}));
}

TEST(Cautions, AConditionOfAStructureReachesItsPartsItsWholeAndWhatLiesOverIt)
{
    const Cautions cautions = cautionsOf(
        visitWith("suspected-fracture", {{{"medial-malleolus"}, Side::Left}, {{"biceps-femoris-long-head"}, Side::Left}}));
    for (const char *at : {"medial-malleolus", "tibia", "medial-malleolar-region", "biceps-femoris-long-head", "biceps-femoris"})
        EXPECT_TRUE(cautions.isBarred({{at}, Side::Left})) << at;
    EXPECT_FALSE(cautions.isBarred({{"medial-malleolus"}, Side::Right}));
    EXPECT_FALSE(cautions.isBarred({{"gluteus-medius"}, Side::Left}));
}

TEST(Cautions, TheMidlineGoesWithBothSides)
{
    const Cautions cautions = cautionsOf(visitWith("open-wound", {{{"sacral-region"}, Side::Midline}}));
    EXPECT_TRUE(cautions.isBarred({{"multifidus"}, Side::Left}));
    EXPECT_TRUE(cautions.isBarred({{"multifidus"}, Side::Right}));
    EXPECT_TRUE(cautions.isBarred({{"sacrum"}, Side::Midline}));
    EXPECT_FALSE(cautions.isBarred({{"gluteus-medius"}, Side::Left}));
}

TEST(Cautions, RulesOfARegionHoldUnderItAndNotWhereACornerReachesIn)
{
    const Cautions cautions = cautionsOf({});
    for (const char *muscle : {"multifidus", "quadratus-lumborum", "erector-spinae"})
        EXPECT_TRUE(holds(cautions, "lumbar-muscle-oblique", {{muscle}, Side::Right})) << muscle;
    for (const char *broad : {"latissimus-dorsi", "gluteus-maximus", "trapezius", "psoas-major"})
        EXPECT_FALSE(holds(cautions, "lumbar-muscle-oblique", {{broad}, Side::Right})) << broad;
    const auto atBroadFascia = cautions.at({{"thoracolumbar-fascia"}, Side::Right});
    EXPECT_TRUE(std::none_of(
        atBroadFascia.begin(), atBroadFascia.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; }));
    const auto atBroadMuscle = cautions.at({{"latissimus-dorsi"}, Side::Right});
    EXPECT_TRUE(std::none_of(
        atBroadMuscle.begin(), atBroadMuscle.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; }));
}

TEST(Cautions, TheSpineBelongsToTheRegionsOfTheBack)
{
    const Cautions cautions = cautionsOf({});
    for (const char *joint : {"c0-c1", "c1-c2", "c2-c3", "c3-c4", "c4-c5", "c5-c6", "c6-c7", "c7-t1"})
        for (const Side side : {Side::Left, Side::Right, Side::Midline}) {
            EXPECT_TRUE(holds(cautions, "neck-end-range-ask-first", {{joint}, side})) << joint;
            EXPECT_FALSE(holds(cautions, "lumbar-bone-no-point", {{joint}, side})) << joint;
            EXPECT_FALSE(holds(cautions, "throat-and-eye-no-pressure", {{joint}, side})) << joint;
        }
    for (const char *bone : {"l1-l2", "l2-l3", "l3-l4", "l4-l5", "l5-s1", "vertebra-l1", "vertebra-l3", "vertebra-l5"}) {
        EXPECT_TRUE(holds(cautions, "lumbar-bone-no-point", {{bone}, Side::Midline})) << bone;
        EXPECT_FALSE(holds(cautions, "neck-end-range-ask-first", {{bone}, Side::Midline})) << bone;
    }
    EXPECT_FALSE(holds(cautions, "lumbar-bone-no-point", {{"t6-t7"}, Side::Midline}));
    EXPECT_FALSE(holds(cautions, "neck-end-range-ask-first", {{"t6-t7"}, Side::Midline}));
}

TEST(Cautions, ACautionAreaSpeaksAtWhatItLiesBeside)
{
    const auto verdicts = cautionsOf({}).at({{"sternocleidomastoid"}, Side::Right});
    const CautionVerdict *artery = verdictOf(verdicts, "caution-neck-artery");
    ASSERT_NE(artery, nullptr);
    EXPECT_EQ(artery->verdict, Verdict::Adapt);
    EXPECT_EQ(artery->actions, std::vector<std::string>{"sustained-pressure"});
    EXPECT_TRUE(artery->condition.empty());
    EXPECT_NE(artery->reason.find("never both sides at once"), std::string::npos) << artery->reason;
    EXPECT_NE(artery->reason.find("carotid sinus"), std::string::npos) << artery->reason;
    EXPECT_NE(artery->source.find("Gray"), std::string::npos) << artery->source;
    EXPECT_TRUE(holds(cautionsOf({}), "caution-neck-artery", {{"caution-neck-artery"}, Side::Left}));
    EXPECT_FALSE(holds(cautionsOf({}), "caution-neck-artery", {{"soleus"}, Side::Left}));
}

TEST(Cautions, TheGravestComesFirst)
{
    Visit visit = visitWith("anticoagulant");
    visit.conditions.push_back({"pregnancy", {}});
    visit.conditions.push_back({"pacemaker", {}});
    const Cautions cautions = cautionsOf(visit);
    for (const auto &verdicts : {cautions.general(), cautions.at({{"sternocleidomastoid"}, Side::Left})}) {
        ASSERT_GT(verdicts.size(), 4U);
        for (std::size_t i = 1; i < verdicts.size(); ++i) {
            const CautionVerdict &before = verdicts[i - 1];
            const CautionVerdict &after = verdicts[i];
            EXPECT_TRUE(before.verdict > after.verdict || (before.verdict == after.verdict && before.rule < after.rule))
                << before.rule << ", " << after.rule;
        }
    }
    for (const CautionVerdict &v : cautions.general())
        EXPECT_FALSE(v.place) << v.rule;
}

TEST(Cautions, AStopIsFoundForItsActionAndAStopOfEverythingGoesFirst)
{
    const Place soleus{{"soleus"}, Side::Right};
    Visit visit = visitWith("anticoagulant");
    const Cautions thinner = cautionsOf(visit);
    EXPECT_FALSE(thinner.isBarred(soleus));
    EXPECT_FALSE(thinner.stopOf(soleus, "gliding"));
    ASSERT_TRUE(thinner.stopOf(soleus, "sustained-pressure"));
    EXPECT_EQ(thinner.stopOf(soleus, "sustained-pressure")->rule, "anticoagulant-no-point-pressure");
    EXPECT_EQ(thinner.stopOf(soleus, "sustained-pressure")->place, soleus);
    visit.conditions.push_back({"suspected-leg-clot", {{{"sural-region-medial"}, Side::Right}}});
    const Cautions clot = cautionsOf(visit);
    EXPECT_TRUE(clot.isBarred(soleus));
    ASSERT_TRUE(clot.stopOf(soleus, "sustained-pressure"));
    EXPECT_TRUE(clot.stopOf(soleus, "sustained-pressure")->concernsAll());
    EXPECT_TRUE(clot.stopOf(soleus, "gliding"));
}

TEST(Cautions, ConsentThatIsRefusedWithoutAPlaceIsRefusedEverywhere)
{
    const Cautions whole = cautionsOf(visitWith("consent-refused"));
    EXPECT_TRUE(whole.isBarred({{"palm"}, Side::Left}));
    EXPECT_NE(verdictOf(whole.general(), "consent-refused-no-hands"), nullptr);
    const Cautions placed = cautionsOf(visitWith("consent-refused", {{{"pectoral-region"}, Side::Left}}));
    EXPECT_TRUE(placed.isBarred({{"pectoral-region"}, Side::Left}));
    EXPECT_FALSE(placed.isBarred({{"pectoral-region"}, Side::Right}));
    EXPECT_EQ(verdictOf(placed.general(), "consent-refused-no-hands"), nullptr);
}

TEST(Cautions, OneVerdictARuleForTheFirstOfItsConditions)
{
    Visit visit = visitWith("bleeding-disorder");
    visit.conditions.push_back({"anticoagulant", {}});
    const auto general = cautionsOf(visit).general();
    EXPECT_EQ(
        std::count_if(general.begin(), general.end(), [](const CautionVerdict &v) { return v.rule == "bleeding-light-only"; }),
        1);
    EXPECT_EQ(verdictOf(general, "bleeding-light-only")->condition, "anticoagulant");
}

void expectRefused(const Visit &visit, ErrorCode code, const std::string &place, const std::string &detail)
{
    const auto cautions = Cautions::of(safetyRules(), regions(), visit, "v.json");
    ASSERT_FALSE(cautions.ok()) << "this mistake goes unseen";
    EXPECT_EQ(cautions.error().code, code) << inWords(cautions.error());
    EXPECT_EQ(cautions.error().place, place);
    EXPECT_EQ(cautions.error().detail, detail);
}

TEST(Cautions, ConditionsAreCheckedAgainstTheRules)
{
    expectRefused(visitWith("hiccups"), ErrorCode::UnknownId, "v.json#/conditions/0/condition", "hiccups");
    expectRefused(visitWith("open-wound"), ErrorCode::MissingField, "v.json#/conditions/0", "at");
    expectRefused(visitWith("pacemaker", {{{"palm"}, Side::Left}}), ErrorCode::UnknownField, "v.json#/conditions/0", "at");
    Visit second = visitWith("pacemaker");
    second.conditions.push_back({"burn", {}});
    expectRefused(second, ErrorCode::MissingField, "v.json#/conditions/1", "at");
}

} // namespace

} // namespace raphe::test
