// A whole visit by mouse: touch, grade, undo, list, trace, visit map.
#include "tests/app/PdfPage.h"
#include "tests/app/Window.h"

#include <QListView>
#include <QPushButton>

namespace raphe::test {

namespace {

const Place rightGluteusMaximus{StructureId{"gluteus-maximus"}, Side::Right};
const Place leftLatissimus{StructureId{"latissimus-dorsi"}, Side::Left};

class MouseVisit : public WindowTest {
protected:
    void touch(const Place &place)
    {
        BodyView &view = window().bodyView(View::Back);
        QTest::mouseClick(&view, Qt::LeftButton, {}, pixelOf(view, place));
    }
    void press(const QString &name) { QTest::mouseClick(button(name), Qt::LeftButton); }
};

} // namespace

TEST_F(MouseVisit, TwoClicksRecordAFinding)
{
    touch(rightGluteusMaximus);
    ASSERT_TRUE(session().aim());
    EXPECT_EQ(session().aim()->place, rightGluteusMaximus);
    EXPECT_GE(session().aim()->stack.size(), 4U) << "the stack under the point goes on beyond the muscle";
    press(QStringLiteral("Tenderness 3: severe, with withdrawal"));
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].place, rightGluteusMaximus);
    EXPECT_EQ(findings()[0].tenderness, Tenderness{3});
}

TEST_F(MouseVisit, ATouchOnTheRightHalfOfTheBackIsThePatientsRight)
{
    BodyView &back = window().bodyView(View::Back);
    BodyView &front = window().bodyView(View::Front);
    const auto sideAt = [](BodyView &view, double x) { return view.placeAt(view.toWidget({x, 600}))->side; };
    EXPECT_EQ(sideAt(back, 50), Side::Right);
    EXPECT_EQ(sideAt(back, -50), Side::Left);
    EXPECT_EQ(sideAt(front, 50), Side::Left);
    EXPECT_EQ(sideAt(front, -50), Side::Right);
}

TEST_F(MouseVisit, ADeeperStructureIsThreeClicksAway)
{
    touch(rightGluteusMaximus);
    const auto stack = session().aim()->stack;
    const auto deep =
        std::find_if(stack.begin(), stack.end(), [](const UnderHit &hit) { return hit.layer > Layer::SuperficialMuscle; });
    ASSERT_NE(deep, stack.end());
    auto *list = window().findChild<QListWidget *>();
    const auto row = static_cast<int>(deep - stack.begin());
    list->scrollToItem(list->item(row));
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(row)).center());
    press(QStringLiteral("Clear: not tender and moves freely (C)"));
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].place, deep->place);
    EXPECT_EQ(findings()[0].clear, (Clear{true, true}));
}

TEST_F(MouseVisit, UndoAndRedoGoThroughEveryStep)
{
    touch(rightGluteusMaximus);
    press(QStringLiteral("Tenderness 2: moderate, with grimace or flinch"));
    press(QStringLiteral("Familiar: the patient knows this pain (F)"));
    ASSERT_TRUE(findings()[0].familiar);
    session().undoStack().undo();
    EXPECT_FALSE(findings()[0].familiar);
    session().undoStack().undo();
    EXPECT_TRUE(findings().empty());
    session().undoStack().redo();
    session().undoStack().redo();
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_TRUE(findings()[0].familiar);
    EXPECT_EQ(stored().findings, findings()) << "what is on disk follows undo and redo";
}

TEST_F(MouseVisit, ListAndMapMirrorEachOther)
{
    touch(rightGluteusMaximus);
    press(QStringLiteral("Tenderness 3: severe, with withdrawal"));
    touch(leftLatissimus);
    press(QStringLiteral("Restriction 2: clear"));
    auto *list = window().findChild<VisitPanel *>()->findChild<QListView *>();
    ASSERT_EQ(list->model()->rowCount(), 2);
    EXPECT_EQ(list->currentIndex().row(), 1) << "the list follows the map";
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(0, 0)).center());
    ASSERT_TRUE(session().aim());
    EXPECT_EQ(session().aim()->place, rightGluteusMaximus) << "the map follows the list";
}

TEST_F(MouseVisit, ASpotMovesAnUnplacedFindingAndKeepsAPlacedOne)
{
    touch(rightGluteusMaximus);
    press(QStringLiteral("Tenderness 3: severe, with withdrawal"));
    press(QStringLiteral("Spot: origin"));
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].spot, Spot::Origin);
    press(QStringLiteral("Spot: belly"));
    press(QStringLiteral("Tenderness 1: mild"));
    ASSERT_EQ(findings().size(), 2U);
    EXPECT_EQ(findings()[0].spot, Spot::Origin);
    EXPECT_EQ(findings()[1].spot, Spot::Belly);
}

TEST_F(MouseVisit, TheTraceStepsToTheOtherSideAndSaysHowWellItIsKnown)
{
    touch(rightGluteusMaximus);
    press(QStringLiteral("Tenderness 3: severe, with withdrawal"));
    auto *panel = window().findChild<TracePanel *>();
    auto *list = panel->findChild<QListView *>();
    const auto rowOf = [&](const char *name) {
        for (int row = 0; row < list->model()->rowCount(); ++row)
            if (list->model()->index(row, 0).data().toString() == QLatin1String(name))
                return row;
        return -1;
    };
    EXPECT_GE(rowOf("left thoracolumbar fascia"), 0) << "first step";
    EXPECT_EQ(rowOf("left latissimus dorsi"), -1) << "not yet at the first step";
    press(QStringLiteral("Light up the next step"));
    const int row = rowOf("left latissimus dorsi");
    ASSERT_GE(row, 0) << "second step";
    const QString words = list->model()->index(row, 0).data(TraceModel::LinesRole).toStringList().join(QLatin1Char('\n'));
    EXPECT_TRUE(words.contains(
        QStringLiteral("right gluteus maximus, to the other side to left thoracolumbar fascia, to left latissimus dorsi")));
    EXPECT_TRUE(words.contains(QStringLiteral("verified: continuity seen in dissection; force transfer:")));
    EXPECT_TRUE(words.contains(QStringLiteral("that treating one end helps the other: not shown")));
    EXPECT_TRUE(words.contains(QStringLiteral("Wilke J, Krause F, Vogt L, Banzer W")));
    EXPECT_TRUE(words.contains(QStringLiteral("from memory"))) << "the pairs have not been read in the paper yet";
}

TEST_F(MouseVisit, EndsWithAVisitMapThatShowsTheRightSide)
{
    touch(rightGluteusMaximus);
    press(QStringLiteral("Tenderness 3: severe, with withdrawal"));
    const QString pdf = inFolder("map.pdf");
    ASSERT_TRUE(window().exportMap(pdf, Paper::A4));
    const QString text = textOf(pdf);
    EXPECT_TRUE(text.contains(QStringLiteral("Main buttock muscle, right side"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Very sore"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Takes a blood thinner"))) << "the cautions line";
    EXPECT_TRUE(text.contains(QStringLiteral("Test Patient")));

    // Back view: right half of the page; the patient's right is on its right. The middle of that figure is at 3/4.
    const QImage picture = pictureOf(pdf, 100);
    ASSERT_FALSE(picture.isNull());
    const QColor tender = Theme::paper().tender;
    EXPECT_GT(pixelsLike(picture, tender, 0.73, 1.0, 0.12, 0.6), 60) << "a mark on the patient's right";
    EXPECT_EQ(pixelsLike(picture, tender, 0.0, 0.70, 0.12, 0.6), 0) << "and none elsewhere on the figures";
}

} // namespace raphe::test
