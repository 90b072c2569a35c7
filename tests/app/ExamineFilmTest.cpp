// An examination of an invented patient in the window by mouse, and by keys alone, within a counted number of actions.
#include "tests/app/Window.h"
#include "tests/support/VisitHands.h"

namespace raphe::test {

namespace {

using By = VisitHands::By;

class ExamineFilm : public WindowTest {
protected:
    void examine(By by)
    {
        session().aimAt({{StructureId{"lumbar-region-medial"}, Side::Right}, {}, {}});
        session().toggleComplaint();
        session().undoStack().clear();
        VisitHands hands(window(), by);
        hands.examine();
        for (const std::string &trouble : hands.troubles())
            ADD_FAILURE() << trouble;
        std::cout << "actions " << hands.actions() << ", Tab " << hands.tabs() << '\n';
        EXPECT_LT(hands.actions(), 40);
        const Visit visit = stored();
        const Measure *flexion = session().measureOf("trunk-flexion", Side::Midline, MoveMode::Active);
        ASSERT_NE(flexion, nullptr);
        EXPECT_EQ(flexion->value, 45);
        EXPECT_EQ(flexion->painFrom, 30);
        EXPECT_TRUE(flexion->familiar);
        EXPECT_EQ(session().measureOf("trunk-side-bending", Side::Right, MoveMode::Active)->value, 18);
        EXPECT_EQ(session().measureOf("trunk-side-bending", Side::Left, MoveMode::Active)->value, 27);
        EXPECT_EQ(visit.retest, (RetestMark{MomentKind::Movement, "trunk-flexion", Side::Midline}));
        EXPECT_EQ(session().findingAt({StructureId{"l4-l5"}, Side::Right})->play, JointPlay{2});
        const Finding *joint = session().findingAt({StructureId{"sacroiliac-joint"}, Side::Right});
        ASSERT_NE(joint, nullptr);
        EXPECT_TRUE(joint->stiff);
        EXPECT_TRUE(joint->afterComparing);
        EXPECT_EQ(session().resultOf("thigh-thrust", Side::Right)->pain, TestPain::Familiar);
        EXPECT_EQ(session().resultOf("thigh-thrust", Side::Left)->pain, TestPain::None);
        EXPECT_EQ(session().resultOf("gaenslen", Side::Right)->pain, TestPain::Familiar);
        EXPECT_EQ(visit.tests.size(), 7U);
        EXPECT_NE(session().findingAt({StructureId{"gluteus-maximus"}, Side::Right}, Spot::Origin), nullptr);
        EXPECT_EQ(
            session().findingAt({StructureId{"quadratus-lumborum"}, Side::Right})->texture, std::vector<std::string>{"ropy"});
        EXPECT_TRUE(session().findingAt({StructureId{"l4-l5"}, Side::Left})->clear.tenderness);
        EXPECT_EQ(visit, session().visit()) << "all of it is on disk";
        while (session().undoStack().canUndo())
            session().undoStack().undo();
        EXPECT_TRUE(session().visit().measures.empty() && session().visit().tests.empty() && findings().empty()
            && session().visit().timeline.empty())
            << "undo goes across the whole examination";
    }
};

} // namespace

TEST_F(ExamineFilm, ByMouse)
{
    examine(By::Mouse);
}

TEST_F(ExamineFilm, ByKeysAlone)
{
    examine(By::Keys);
}

} // namespace raphe::test
