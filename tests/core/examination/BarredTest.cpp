// What cautions bar on a sheet: on the right side, for the right actions, and never what needs no hands.
#include "core/examination/Barred.h"
#include "tests/core/examination/Exam.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace raphe {

namespace {

Cautions cautionsOf(const Visit &visit)
{
    auto cautions = Cautions::of(test::safetyRules(), test::regions(), visit, "visit");
    if (!cautions)
        throw std::runtime_error(test::inWords(cautions.error()));
    return std::move(cautions).value();
}

const CautionVerdict *stopOn(const std::vector<CautionVerdict> &verdicts)
{
    return stopAmong(verdicts);
}

TEST(BarredTest, ASuspectedClotBarsItsOwnLegOnly)
{
    Visit visit;
    visit.conditions = {{"suspected-leg-clot", {{StructureId{"sural-region-medial"}, Side::Right}}}};
    const Cautions cautions = cautionsOf(visit);
    const Movement &knee = *test::examination().findMovement("knee-flexion");
    const auto right = verdictsOn(test::atlas(), cautions, knee, Side::Right);
    const auto left = verdictsOn(test::atlas(), cautions, knee, Side::Left);
    ASSERT_NE(stopOn(right), nullptr) << "a leg with a suspected clot is not moved";
    EXPECT_NE(stopOn(right)->reason.find("clot"), std::string::npos);
    EXPECT_EQ(stopOn(left), nullptr);
    const Cautions turned = cautionsOf(mirrored(visit));
    EXPECT_EQ(stopOn(verdictsOn(test::atlas(), turned, knee, Side::Right)), nullptr);
    EXPECT_NE(stopOn(verdictsOn(test::atlas(), turned, knee, Side::Left)), nullptr);
}

TEST(BarredTest, AnEmergencyBarsEveryTestThatNeedsHandsAndNoVital)
{
    Visit visit;
    const auto &signs = test::safetyRules().signs().signs;
    const auto gravest = std::find_if(signs.begin(), signs.end(),
        [](const WarningSign &s) { return s.level == WarningLevel::EmergencyNow && s.suspects.empty(); });
    ASSERT_NE(gravest, signs.end());
    WarningAnswer answer;
    answer.sign = gravest->id;
    answer.isThere = true;
    answer.asked = "2026-11-25";
    visit.warnings = {answer};
    const Cautions cautions = cautionsOf(visit);
    int barred = 0;
    for (const ExamTest &test : test::examination().tests) {
        const Side side = test.isPaired ? Side::Right : Side::Midline;
        const auto verdicts = verdictsOn(test::atlas(), cautions, test, side);
        const bool isVital = test.kind == TestKind::Vital; // can be taken while help is on its way
        EXPECT_EQ(stopOn(verdicts) != nullptr, !test.actions.empty() && !isVital) << test.id;
        barred += stopOn(verdicts) ? 1 : 0;
    }
    EXPECT_GT(barred, 100);
}

// Hands that hold one leg down in full bend load its hip as well.
TEST(BarredTest, AReplacedHipBarsWhatBendsItWhileTheOtherSideIsTested)
{
    Visit visit;
    visit.conditions = {{"joint-replacement", {{StructureId{"hip-joint"}, Side::Left}}}};
    const Cautions cautions = cautionsOf(visit);
    for (const char *id : {"gaenslen", "hip-flexor-length"}) {
        const ExamTest &test = *test::examination().findTest(id);
        EXPECT_NE(stopOn(verdictsOn(test::atlas(), cautions, test, Side::Right)), nullptr) << id;
        EXPECT_NE(stopOn(verdictsOn(test::atlas(), cautionsOf(mirrored(visit)), test, Side::Left)), nullptr) << id;
    }
}

// Common practice, no source: a bone that may be broken is not pressed, sprung or bent upon.
TEST(BarredTest, ASpineOrRibThatMayBeBrokenIsNotForced)
{
    const std::vector<std::string> ofNeck{
        "neck-side-bending-compression", "neck-distraction", "neck-vertebral-pressure", "slump-test"};
    const std::vector<std::string> ofChest{"thoracic-vertebral-pressure", "slump-test"};
    const std::vector<std::string> ofLoins{"lumbar-vertebral-pressure", "repeated-flexion-lying", "slump-test"};
    const auto expectStops = [&](const std::string &bone, Side side, const std::vector<std::string> &tests) {
        Visit visit;
        visit.conditions = {{"suspected-fracture", {{StructureId{bone}, side}}}};
        const Cautions cautions = cautionsOf(visit);
        for (const std::string &id : tests) {
            const ExamTest *test = test::examination().findTest(id);
            ASSERT_NE(test, nullptr) << id;
            const Side tested = test->isPaired ? (side == Side::Midline ? Side::Right : side) : Side::Midline;
            EXPECT_NE(stopOn(verdictsOn(test::atlas(), cautions, *test, tested)), nullptr) << bone << ": " << id;
        }
    };
    for (int i = 1; i <= 7; ++i)
        expectStops("vertebra-c" + std::to_string(i), Side::Midline, ofNeck);
    for (int i = 1; i <= 12; ++i)
        expectStops("vertebra-t" + std::to_string(i), Side::Midline, ofChest);
    for (int i = 1; i <= 5; ++i)
        expectStops("vertebra-l" + std::to_string(i), Side::Midline, ofLoins);
    for (int i = 1; i <= 10; ++i)
        for (const Side side : {Side::Right, Side::Left})
            expectStops("rib-" + std::to_string(i), side, {"rib-spring"});
}

TEST(BarredTest, NothingIsBarredWithoutACaution)
{
    const Cautions cautions = cautionsOf({});
    for (const Movement &movement : test::examination().movements)
        EXPECT_EQ(stopOn(verdictsOn(test::atlas(), cautions, movement, movement.isPaired ? Side::Left : Side::Midline)), nullptr)
            << movement.id;
}

TEST(BarredTest, EveryActionOfATestIsStoppedOrAdaptedBySomeCondition)
{
    std::set<std::string> told;
    for (const CautionRule &rule : test::safetyRules().rules())
        if (rule.verdict != Verdict::Ask)
            told.insert(rule.actions.begin(), rule.actions.end());
    for (const ExamTest &test : test::examination().tests)
        for (const std::string &action : test.actions)
            EXPECT_TRUE(told.contains(action)) << test.id << ": " << action;
}

} // namespace

} // namespace raphe
