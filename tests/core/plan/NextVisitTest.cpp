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
