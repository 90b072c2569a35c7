// What is examined again, and what is said of each pair.
#include "core/treatment/Retest.h"
#include "tests/core/examination/Exam.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/core/treatment/Care.h"
#include "tests/support/Cases.h"
#include "tests/support/Complaints.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe {

namespace {

using namespace test;

std::vector<RetestPair> pairs(const Visit &visit)
{
    return retestPairs(visit, examination(), atlas());
}

TEST(Retest, TheMarkedOneComesFirstThenJointsThenSorePlaces)
{
    Visit visit = visitOf({tender("piriformis", Side::Right, 2), stiff("l4-l5", Side::Right, 2), tender("soleus", Side::Left, 1),
        stiff("gluteus-maximus", Side::Right, 2)});
    visit.retest = RetestMark{MomentKind::Movement, "neck-rotation", Side::Left};
    const auto items = toRetest(visit, examination(), atlas());
    std::vector<std::string> ids;
    ids.reserve(items.size());
    for (const RetestItem &item : items)
        ids.push_back(item.id);
    EXPECT_EQ(ids, (std::vector<std::string>{"neck-rotation", "l4-l5", "piriformis", "soleus"}));
    EXPECT_EQ(items[0].name.rfind("LEFT ", 0), 0U) << items[0].name;
    EXPECT_EQ(notRetested(visit, examination(), atlas()), items);
    visit.retested.findings = {tender("piriformis", Side::Right, 1)};
    visit.retested.measures = {readWith("neck-rotation", Side::Left, 60, Device::Compass)};
    const auto left = notRetested(visit, examination(), atlas());
    ASSERT_EQ(left.size(), 2U);
    EXPECT_EQ(left[0].id, "l4-l5");
    EXPECT_EQ(left[1].id, "soleus");
}

TEST(Retest, AMovementIsHeldAgainstThePublishedErrorOfItsDevice)
{
    Visit visit;
    visit.measures = {readWith("shoulder-flexion", Side::Right, 120, Device::Inclinometer)};
    visit.retested.measures = {readWith("shoulder-flexion", Side::Right, 130, Device::Inclinometer)};
    const auto found = pairs(visit);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].item.side, Side::Right);
    ASSERT_TRUE(found[0].change);
    EXPECT_EQ(found[0].change->beyond, Beyond::Beyond);
    EXPECT_NE(found[0].verdict.find("better by 10 degrees, beyond the test's error (8 degrees"), std::string::npos)
        << found[0].verdict;
}

TEST(Retest, TwoDevicesOrModesOrSidesAreNotCompared)
{
    Visit visit;
    visit.measures = {readWith("shoulder-flexion", Side::Right, 120, Device::Inclinometer)};
    visit.retested.measures = {readWith("shoulder-flexion", Side::Right, 150, Device::Goniometer)};
    ASSERT_EQ(pairs(visit).size(), 1U);
    EXPECT_FALSE(pairs(visit)[0].change);
    EXPECT_NE(pairs(visit)[0].verdict.find("two devices"), std::string::npos);
    visit.retested.measures = {readWith("shoulder-flexion", Side::Right, 150, Device::Inclinometer, MoveMode::Passive)};
    EXPECT_TRUE(pairs(visit).empty());
    visit.retested.measures = {readWith("shoulder-flexion", Side::Left, 150, Device::Inclinometer)};
    EXPECT_TRUE(pairs(visit).empty());
}

TEST(Retest, AMovementWithoutAPublishedErrorIsSaidToBeUnknown)
{
    Visit visit;
    visit.measures = {readWith("shoulder-flexion", Side::Right, 120, Device::Eye)};
    visit.retested.measures = {readWith("shoulder-flexion", Side::Right, 170, Device::Eye)};
    ASSERT_EQ(pairs(visit).size(), 1U);
    EXPECT_EQ(pairs(visit)[0].verdict, "more by 50 degrees: error unknown");
}

TEST(Retest, AGapThatIsLessIsBetter)
{
    Visit visit;
    visit.measures = {readWith("fingertip-to-floor", Side::Midline, 300, Device::Tape)};
    visit.retested.measures = {readWith("fingertip-to-floor", Side::Midline, 150, Device::Tape)};
    ASSERT_EQ(pairs(visit).size(), 1U);
    EXPECT_EQ(pairs(visit)[0].change->course, ReadingChange::Course::Better);
}

TEST(Retest, TendernessAndRestrictionAreTwoPairs)
{
    Finding before = tender("piriformis", Side::Right, 3);
    before.restriction = Restriction{2};
    Finding now = before;
    now.tenderness.reset();
    now.clear.tenderness = true;
    now.restriction = Restriction{2};
    Visit visit = visitOf({before});
    visit.retested.findings = {now};
    const auto found = pairs(visit);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].quality, "tenderness");
    EXPECT_EQ(found[0].before, "3");
    EXPECT_EQ(found[0].now, "0");
    EXPECT_EQ(found[0].verdict, "less by 3: error unknown");
    EXPECT_EQ(found[1].verdict, "no change: error unknown");
}

TEST(Retest, ATestIsToldInWords)
{
    TestResult before;
    before.test = "slump-test";
    before.side = Side::Left;
    before.pain = TestPain::Familiar;
    TestResult now = before;
    now.pain = TestPain::None;
    Visit visit;
    visit.tests = {before};
    visit.retested.tests = {now};
    ASSERT_EQ(pairs(visit).size(), 1U);
    EXPECT_EQ(pairs(visit)[0].verdict, "was familiar pain, now no pain: error unknown");
}

// Every published error of every movement: one below it is within, one above it beyond, for both directions.
TEST(Retest, EachPublishedErrorIsTheEdge)
{
    int edges = 0;
    for (const Movement &movement : examination().movements)
        for (const ReadingError &error : movement.errors) {
            if (!error.mode)
                continue;
            double edge = 0;
            for (const ReadingError &other : movement.errors) // the greatest of several holds
                if (other.device == error.device && (!other.mode || other.mode == error.mode))
                    edge = std::max(edge, other.least());
            for (const double sign : {1.0, -1.0})
                for (const auto &[past, beyond] : {std::pair{-0.01, Beyond::Within}, {0.01, Beyond::Beyond}}) {
                    const Side side = movement.isPaired ? Side::Right : Side::Midline;
                    Visit visit;
                    visit.measures = {readWith(movement.id, side, 50, error.device, *error.mode)};
                    visit.retested.measures = {readWith(movement.id, side, 50 + sign * (edge + past), error.device, *error.mode)};
                    const auto found = pairs(visit);
                    ASSERT_EQ(found.size(), 1U) << movement.id;
                    EXPECT_EQ(found[0].change->beyond, beyond) << movement.id << ", " << error.source;
                    EXPECT_NE(found[0].verdict.find("test's error"), std::string::npos) << found[0].verdict;
                    ++edges;
                }
        }
    EXPECT_GE(edges, 4 * 30);
}

TEST(Retest, PainIsAskedAgainLast)
{
    Visit visit = visitOf({tender("piriformis", Side::Right, 2)});
    EXPECT_EQ(toRetest(visit, examination(), atlas()).size(), 1U) << "how much it hurts was not told";
    visit.complaints = {complaintOf("my hip")};
    visit.complaints[0].now = PainScore{6};
    const auto items = toRetest(visit, examination(), atlas());
    ASSERT_EQ(items.size(), 2U);
    EXPECT_TRUE(items[1].isPain());
    visit.retested.pain = PainScore{4};
    EXPECT_EQ(notRetested(visit, examination(), atlas()).size(), 1U);
    ASSERT_EQ(pairs(visit).size(), 1U);
    EXPECT_EQ(pairs(visit)[0].before, "6");
    EXPECT_EQ(pairs(visit)[0].now, "4");
    EXPECT_NE(pairs(visit)[0].verdict.find("better by 2, beyond the test's error (1.77"), std::string::npos)
        << pairs(visit)[0].verdict;
    EXPECT_NE(pairs(visit)[0].verdict.find("as much as matters to patients (2, Ostelo 2008)"), std::string::npos)
        << pairs(visit)[0].verdict;
}

TEST(Retest, ASpotIsNamedAndAPlaceWithoutAGradeIsNotCompared)
{
    Finding ungraded;
    ungraded.place = {StructureId{"piriformis"}, Side::Left};
    ungraded.sore = true;
    Finding origin = tender("gluteus-maximus", Side::Right, 3);
    origin.spot = Spot::Origin;
    Visit visit = visitOf({ungraded, origin});
    visit.retested.findings = {tender("piriformis", Side::Left, 1), origin};
    visit.retested.findings[1].tenderness = Tenderness{1};
    const auto found = pairs(visit);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].quality, "tenderness");
    EXPECT_EQ(found[0].verdict, "was found, without a grade, now 1: error unknown");
    EXPECT_EQ(found[1].quality, "tenderness, origin");
}

TEST(Retest, MirroringTheVisitMirrorsTheAnswer)
{
    Visit visit = visitOf({tender("piriformis", Side::Right, 2), stiff("l4-l5", Side::Right, 2)});
    visit.retested.findings = {tender("piriformis", Side::Right, 1)};
    visit.measures = {readWith("shoulder-flexion", Side::Right, 120, Device::Inclinometer)};
    visit.retested.measures = {readWith("shoulder-flexion", Side::Right, 130, Device::Inclinometer)};
    const auto here = pairs(visit);
    const auto there = pairs(mirrored(visit));
    ASSERT_EQ(here.size(), there.size());
    for (std::size_t i = 0; i < here.size(); ++i) {
        EXPECT_EQ(here[i].item.side, mirrored(there[i].item.side));
        EXPECT_EQ(here[i].change, there[i].change);
        EXPECT_EQ(here[i].verdict, there[i].verdict);
    }
}

} // namespace

} // namespace raphe
