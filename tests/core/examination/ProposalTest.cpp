// Sheets proposed by where it hurts, and when nerves and cord are tested.
#include "core/examination/Proposal.h"
#include "core/anatomy/MarkPoint.h"
#include "tests/core/examination/Exam.h"

#include <gtest/gtest.h>

namespace raphe {

namespace {

Visit hurtingAt(std::vector<Place> places)
{
    Visit visit;
    visit.complaintAt = std::move(places);
    return visit;
}

Place skin(const char *region, Side side)
{
    return {StructureId{region}, side};
}

std::string firstFor(const Visit &visit)
{
    const auto sheets = proposedSheets(test::examination(), test::regions(), visit);
    return sheets.empty() ? "none" : sheets.front()->id;
}

TEST(ProposalTest, EveryRegionOfTheSkinHasASheet)
{
    for (const Structure &s : test::atlas().structures()) {
        if (s.kind != Kind::SurfaceRegion)
            continue;
        for (const Side side : test::atlas().sides(s))
            EXPECT_NE(firstFor(hurtingAt({{s.id, side}})), "none") << s.id;
    }
}

TEST(ProposalTest, TheSheetIsThatOfThePlace)
{
    EXPECT_EQ(firstFor(hurtingAt({skin("lumbar-region-medial", Side::Right)})), "low-back-pelvis");
    EXPECT_EQ(firstFor(hurtingAt({skin("deltoid-region", Side::Left)})), "shoulder");
    EXPECT_EQ(firstFor(hurtingAt({skin("heel-region", Side::Left)})), "ankle-foot");
    EXPECT_EQ(firstFor(hurtingAt({skin("anterior-region-of-knee", Side::Right)})), "knee");
    EXPECT_EQ(firstFor(hurtingAt({skin("thumb", Side::Right)})), "elbow-wrist-hand");
    EXPECT_EQ(firstFor(hurtingAt({skin("parotideomasseteric-region", Side::Right)})), "jaw");
    EXPECT_EQ(firstFor(hurtingAt({{StructureId{"gluteus-medius"}, Side::Right}})), "hip")
        << "a muscle counts by the skin over it, and the sheet of fewer regions comes first";
    EXPECT_EQ(firstFor({}), "none");
}

TEST(ProposalTest, AMirroredComplaintHasTheSameSheets)
{
    for (const char *region : {"gluteal-region-superior", "scapular-region", "lateral-region-of-knee"}) {
        const Visit visit = hurtingAt({skin(region, Side::Right)});
        EXPECT_EQ(proposedSheets(test::examination(), test::regions(), visit),
            proposedSheets(test::examination(), test::regions(), mirrored(visit)));
    }
}

TEST(ProposalTest, NervesAndCordAreCalledByWhatIsFelt)
{
    const auto calls = [](const Visit &visit) { return callsOf(test::regions(), visit); };
    EXPECT_EQ(calls(hurtingAt({skin("lumbar-region-medial", Side::Right)})), (Calls{false, false}));
    EXPECT_EQ(calls(hurtingAt({skin("lumbar-region-medial", Side::Right), skin("sural-region-lateral", Side::Right)})),
        (Calls{true, false}))
        << "from the trunk into the leg";
    Visit tingling = hurtingAt({skin("palm", Side::Right)});
    PainPatch patch;
    patch.view = View::Front;
    patch.quality = PainQuality::Tingling;
    const auto hand = markPointIn(test::atlas(), test::body().of(View::Front), skin("palm", Side::Right));
    ASSERT_TRUE(hand);
    patch.strokes = {BrushStroke{{*hand}, 14}};
    tingling.pain = {patch};
    EXPECT_TRUE(calls(tingling).nerves);
    EXPECT_FALSE(calls(tingling).cord);
    PainPatch other = mirrored(patch);
    tingling.pain.push_back(other);
    EXPECT_EQ(calls(tingling), (Calls{true, true})) << "both arms";
    EXPECT_EQ(calls(mirrored(tingling)), calls(tingling));
    Visit visit;
    visit.conditions = {{"suspected-cord-pressure", {}}};
    EXPECT_EQ(calls(visit), (Calls{true, true}));
}

TEST(ProposalTest, TestsOfNervesStandThereWhenCalledOrAnswered)
{
    const Examination &all = test::examination();
    const Sheet &neck = *all.findSheet("neck");
    ASSERT_FALSE(neck.nerves.empty());
    ASSERT_FALSE(neck.cord.empty());
    const auto quiet = testsOf(all, neck, {false, false}, {});
    EXPECT_EQ(quiet.size(), neck.tests.size());
    EXPECT_GT(testsOf(all, neck, {true, true}, {}).size(), quiet.size() + neck.nerves.size() - 1);
    Visit visit;
    TestResult answered;
    answered.test = neck.cord.front();
    answered.present = false;
    visit.tests = {answered};
    const auto with = testsOf(all, neck, {false, false}, visit);
    EXPECT_EQ(with.size(), quiet.size() + 1) << "what was answered does not vanish";
}

} // namespace

} // namespace raphe
