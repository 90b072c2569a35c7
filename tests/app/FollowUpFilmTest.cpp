// A whole follow-up visit in the window, from the greeting to the signed note, by mouse and pedal without a letter typed, within
// a counted number of actions.
#include "tests/app/Window.h"
#include "tests/support/Complaints.h"
#include "tests/support/VisitHands.h"

namespace raphe::test {

namespace {

class FollowUpFilm : public WindowTest {
protected:
    // Nine days ago: a complaint, where it hurts, and what was asked and agreed.
    void wasHereBefore()
    {
        Visit before = session().visit();
        before.date = QDate::currentDate().addDays(-9).toString(Qt::ISODate).toStdString();
        before.cautions.clear();
        Complaint told = complaintOf("low back after gardening");
        told.now = PainScore{5};
        told.worst = PainScore{7};
        told.best = PainScore{2};
        told.asked = before.date;
        before.complaints = {told};
        before.complaintAt = {{StructureId{"lumbar-region-medial"}, Side::Right}};
        before.promised = {"walk twice a day"};
        before.closing.focus = {"LEFT soleus: examine again"};
        before.closing.goals = {{"carry the shopping", "", false}};
        before.closing.plan = CarePlan{before.date, 4, 7, "no more pills"};
        for (const WarningSign *sign : session().warningsToAsk())
            before.warnings.push_back({sign->id, false, before.date, {}, {}, {}, {}});
        ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(before)).ok());
        ASSERT_TRUE(session().open(session().visitId()).ok());
    }
};

} // namespace

TEST_F(FollowUpFilm, FromTheGreetingToTheSignature)
{
    wasHereBefore();
    VisitHands hands(window(), VisitHands::By::Mouse);
    hands.greet(QStringLiteral("Test Patient"));
    hands.followUp();
    hands.careAndSign();
    for (const std::string &trouble : hands.troubles())
        ADD_FAILURE() << trouble;
    std::cout << "actions " << hands.actions() << '\n';
    RecordProperty("actions", hands.actions());
    EXPECT_LT(hands.actions(), 60) << "of the whole visit; no letter is typed in VisitHands::careAndSign and followUp";
    EXPECT_EQ(session().state(), VisitState::Signed);
    const Visit visit = stored();
    EXPECT_EQ(visit.focus, std::vector<std::string>{"LEFT soleus: examine again"});
    EXPECT_FALSE(visit.treatment.steps.empty());
    for (const TreatmentStep &step : visit.treatment.steps)
        EXPECT_EQ(step.done, StepDone::Done);
    ASSERT_EQ(visit.retested.measures.size(), 1U);
    EXPECT_FALSE(visit.retested.measures[0].bringsPain());
    ASSERT_EQ(visit.retested.findings.size(), 3U);
    for (const Finding &again : visit.retested.findings)
        EXPECT_NE(session().findingAt(again.place), nullptr) << "the same side: " << again.place.structure.value;
    EXPECT_EQ(visit.retested.pain, PainScore{0});
    EXPECT_EQ(visit.closing.advice.size(), 1U);
    EXPECT_TRUE(visit.closing.isTold);
    ASSERT_TRUE(visit.closing.call);
    EXPECT_GT(visit.closing.call->due, visit.date);
    ASSERT_TRUE(visit.closing.plan);
    EXPECT_EQ(visit.closing.plan->success, "no more pills");
}

} // namespace raphe::test
