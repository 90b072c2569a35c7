// The sheet in the window: what is answered is recorded at once on its side, undone in order, stands in the timeline, and is
// greyed with the reason where a caution bars it.
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/examination/SheetRow.h"
#include "app/raphe/examination/TimelinePanel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/DecisionDialog.h"
#include "core/record/VisitJson.h"
#include "tests/app/InNext.h"
#include "tests/app/Window.h"

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabWidget>
#include <QWheelEvent>

namespace raphe::test {

namespace {

class ExamineTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        session().setClock([] { return QTime(9, 4, 10); });
        window().showMiddle(MainWindow::Middle::Examine);
        window().examine().showSheet("low-back-pelvis");
        QCoreApplication::processEvents();
    }

    template <class T> T *named(const char *name)
    {
        for (auto *widget : window().examine().findChildren<T *>())
            if (widget->accessibleName() == QString::fromUtf8(name))
                return widget;
        ADD_FAILURE() << "nothing is called " << name;
        return nullptr;
    }
    void part(int index) { window().examine().findChild<QTabWidget *>()->setCurrentIndex(index); }
    void write(const char *line, const char *text)
    {
        auto *edit = named<QLineEdit>(line);
        ASSERT_NE(edit, nullptr);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromUtf8(text));
        QTest::keyClick(edit, Qt::Key_Return);
    }
    void choose(const char *row, int index)
    {
        auto *found = named<ChoiceRow>(row);
        ASSERT_NE(found, nullptr);
        QTest::mouseClick(found->button(index), Qt::LeftButton);
    }
    const Visit &visit() { return session().visit(); }
};

} // namespace

TEST_F(ExamineTest, AMovementIsRecordedOnItsSideWithHowItWasMeasured)
{
    write("RIGHT trunk side bending: how far, degrees", "18");
    ASSERT_EQ(visit().measures.size(), 1U);
    const Measure &m = visit().measures[0];
    EXPECT_EQ(m.movement, "trunk-side-bending");
    EXPECT_EQ(m.side, Side::Right);
    EXPECT_EQ(m.value, 18);
    EXPECT_EQ(m.mode, MoveMode::Active);
    choose("RIGHT trunk side bending: pain", 1);
    EXPECT_TRUE(visit().measures[0].familiar);
    EXPECT_EQ(visit().measures.size(), 1U);
    EXPECT_EQ(stored().measures, visit().measures) << "it is on disk";
    session().undoStack().undo();
    session().undoStack().undo();
    EXPECT_TRUE(visit().measures.empty());
    EXPECT_TRUE(visit().timeline.empty()) << "what was taken back has no time";
    EXPECT_EQ(named<QLineEdit>("RIGHT trunk side bending: how far, degrees")->text(), QStringLiteral(""));
}

TEST_F(ExamineTest, LettersInTheFieldSayWhatIsNotANumber)
{
    auto *edit = named<QLineEdit>("trunk flexion: how far, degrees");
    ASSERT_NE(edit, nullptr);
    edit->setFocus();
    QTest::keyClicks(edit, QStringLiteral("40"));
    QTest::keyClick(edit, Qt::Key_F);
    ASSERT_EQ(visit().measures.size(), 1U);
    EXPECT_EQ(visit().measures[0].value, 40);
    EXPECT_TRUE(visit().measures[0].familiar);
    QTest::keyClick(edit, Qt::Key_P);
    EXPECT_TRUE(visit().measures[0].hurts);
    EXPECT_FALSE(visit().measures[0].familiar);
    QTest::keyClick(edit, Qt::Key_R);
    EXPECT_EQ(visit().retest, (RetestMark{MomentKind::Movement, "trunk-flexion", Side::Midline}));
    EXPECT_EQ(edit->text(), QStringLiteral("40")) << "letters are not typed";
    QTest::keyClick(edit, Qt::Key_R);
    EXPECT_FALSE(visit().retest);
}

TEST_F(ExamineTest, WhatCannotBeIsShownAndNotRecorded)
{
    for (const char *wrong : {"1000", "-400", "4x"}) {
        auto *edit = named<QLineEdit>("trunk flexion: how far, degrees");
        edit->clear();
        edit->insert(QString::fromUtf8(wrong));
        QTest::keyClick(edit, Qt::Key_Return);
        EXPECT_TRUE(edit->property("wrong").toBool()) << wrong;
        EXPECT_TRUE(visit().measures.empty()) << wrong;
    }
    write("trunk flexion: how far, degrees", "45");
    EXPECT_FALSE(named<QLineEdit>("trunk flexion: how far, degrees")->property("wrong").toBool());
    EXPECT_EQ(visit().measures.size(), 1U);
}

TEST_F(ExamineTest, SidesAreComparedInWordsWithTheErrorOrThatItIsUnknown)
{
    window().examine().showSheet("shoulder");
    auto *device = named<QComboBox>("Measured with");
    device->setCurrentIndex(static_cast<int>(Device::Inclinometer) + 1);
    Q_EMIT device->activated(device->currentIndex());
    write("RIGHT shoulder abduction: how far, degrees", "120");
    write("LEFT shoulder abduction: how far, degrees", "150");
    const auto says = [&](const char *part) {
        for (const auto *label : window().examine().findChildren<WrappedLabel *>())
            if (label->isVisible() && label->text().contains(QString::fromUtf8(part)))
                return true;
        return false;
    };
    EXPECT_TRUE(says("RIGHT 30 degrees less than LEFT: more than the error of measuring"));
    device->setCurrentIndex(static_cast<int>(Device::Phone) + 1);
    Q_EMIT device->activated(device->currentIndex());
    write("RIGHT shoulder extension: how far, degrees", "30");
    write("LEFT shoulder extension: how far, degrees", "50");
    EXPECT_TRUE(says("RIGHT 20 degrees less than LEFT: error of measuring unknown"));
}

TEST_F(ExamineTest, ActiveAndPassiveAreKeptApart)
{
    write("trunk flexion: how far, degrees", "40");
    auto *mode = named<QComboBox>("Who moves");
    mode->setCurrentIndex(1);
    Q_EMIT mode->activated(1);
    EXPECT_EQ(named<QLineEdit>("trunk flexion: how far, degrees")->text(), QStringLiteral(""))
        << "nothing was measured passively";
    write("trunk flexion: how far, degrees", "50");
    ASSERT_EQ(visit().measures.size(), 2U);
    EXPECT_EQ(visit().measures[1].mode, MoveMode::Passive);
    mode->setCurrentIndex(0);
    Q_EMIT mode->activated(0);
    EXPECT_EQ(named<QLineEdit>("trunk flexion: how far, degrees")->text(), QStringLiteral("40"));
}

TEST_F(ExamineTest, AJointKeepsWhatHandsFoundThereOtherwise)
{
    Finding sore;
    sore.place = {StructureId{"l4-l5"}, Side::Right};
    sore.tenderness = Tenderness{2};
    session().record(sore);
    part(1);
    choose("right L4/L5 segment: joint play", 2);
    const Finding *f = session().findingAt(sore.place);
    ASSERT_NE(f, nullptr);
    EXPECT_EQ(f->play, JointPlay{2});
    EXPECT_EQ(f->tenderness, Tenderness{2});
    choose("right L4/L5 segment: motion", 0);
    EXPECT_FALSE(session().findingAt(sore.place)->clear.motion) << "play 2 is not clear of motion";
    choose("right L4/L5 segment: joint play", 3);
    choose("right L4/L5 segment: motion", 0);
    EXPECT_TRUE(session().findingAt(sore.place)->clear.motion);
    EXPECT_EQ(session().findingAt({StructureId{"l4-l5"}, Side::Left}), nullptr) << "nothing was said of the left";
}

TEST_F(ExamineTest, TestsAreCountedAndTheCountStandsAboveThem)
{
    part(2);
    choose("sacroiliac distraction", 2);
    choose("RIGHT thigh thrust", 2);
    choose("LEFT thigh thrust", 1);
    choose("RIGHT one hip bent, the other hung back (Gaenslen)", 2);
    const auto *counts = [&]() -> WrappedLabel * {
        for (auto *label : window().examine().findChildren<WrappedLabel *>())
            if (label->text().contains(QStringLiteral("of 6 reproduced")))
                return label;
        return nullptr;
    }();
    ASSERT_NE(counts, nullptr);
    EXPECT_TRUE(counts->text().contains(QStringLiteral("3 of 6 reproduced the familiar pain"))) << counts->text().toStdString();
    EXPECT_TRUE(counts->text().contains(QStringLiteral("15 of 22 such patients"))) << counts->text().toStdString();
    EXPECT_EQ(visit().tests.size(), 4U);
    choose("RIGHT thigh thrust", 2); // pressed again: taken back
    EXPECT_EQ(visit().tests.size(), 3U);
    EXPECT_TRUE(counts->text().contains(QStringLiteral("2 of 6"))) << counts->text().toStdString();
}

TEST_F(ExamineTest, CouldNotBeDoneKeepsTheReason)
{
    part(2);
    inNext<QDialog>([](QDialog &dialog) {
        QTest::keyClicks(dialog.findChild<QLineEdit *>(), QStringLiteral("hip replaced"));
        QTest::keyClick(dialog.findChild<QLineEdit *>(), Qt::Key_Return);
    });
    QTest::mouseClick(named<QPushButton>("LEFT thigh thrust: could not be done, with the reason"), Qt::LeftButton);
    ASSERT_EQ(visit().tests.size(), 1U);
    EXPECT_EQ(visit().tests[0].unable, "hip replaced");
    EXPECT_EQ(visit().tests[0].side, Side::Left);
}

TEST_F(ExamineTest, ABarredTestIsGreyOnItsSideWithTheReason)
{
    Visit visit = session().visit();
    WarningAnswer clot;
    clot.sign = "leg-clot-suspicion";
    clot.isThere = true;
    clot.asked = visit.date;
    clot.at = {{StructureId{"sural-region-medial"}, Side::Right}};
    clot.decided = Decision::CareSameDay;
    clot.why = "swollen calf";
    ASSERT_TRUE(session().answerWarning(clot).ok());
    window().examine().showSheet("knee");
    EXPECT_FALSE(named<QLineEdit>("RIGHT knee flexion: how far, degrees")->isEnabled());
    EXPECT_TRUE(named<QLineEdit>("LEFT knee flexion: how far, degrees")->isEnabled());
    bool isSaid = false;
    for (const auto *label : window().examine().findChildren<QLabel *>())
        isSaid = isSaid
            || (!label->isHidden() && label->text().startsWith(QStringLiteral("Leave the RIGHT:"))
                && label->text().contains(QStringLiteral("clot")));
    EXPECT_TRUE(isSaid);
}

TEST_F(ExamineTest, WhatIsToBeAskedFirstStandsAtTheTest)
{
    Visit replaced = visit();
    replaced.conditions = {{"hip-replacement", {{StructureId{"hip-joint"}, Side::Left}}}};
    const auto stored = session().practice().addVisit(session().patientId(), writeVisit(replaced));
    ASSERT_TRUE(stored.ok());
    ASSERT_TRUE(session().open(stored.value()).ok());
    window().examine().showSheet("low-back-pelvis");
    part(2);
    bool isSaid = false;
    for (const auto *label : window().examine().findChildren<QLabel *>())
        isSaid = isSaid || (!label->isHidden() && label->text().contains(QStringLiteral("Ask first: Tests of the pelvis")));
    EXPECT_TRUE(isSaid);
}

// The heads of the columns stand above what scrolls, over the cells of their side.
TEST_F(ExamineTest, TheSidesStayInSight)
{
    const char *cells[] = {"RIGHT trunk side bending: how far, degrees", "LEFT trunk side bending: how far, degrees",
        "right L4/L5 segment: joint play", "left L4/L5 segment: joint play", "RIGHT thigh thrust", "LEFT thigh thrust"};
    for (const int index : {0, 1, 2}) {
        part(index);
        QTest::qWait(50); // laid out
        auto *area = window().examine().findChildren<QScrollArea *>()[index];
        area->verticalScrollBar()->setValue(area->verticalScrollBar()->maximum());
        for (const int side : {0, 1}) {
            const QString word = side == 0 ? QStringLiteral("RIGHT") : QStringLiteral("LEFT");
            int heads = 0;
            for (const auto *head : window().examine().findChildren<QLabel *>()) {
                if (head->text() != word || !head->isVisible() || area->isAncestorOf(head))
                    continue;
                ++heads;
                const QWidget *cell = named<QWidget>(cells[2 * index + side]);
                ASSERT_NE(cell, nullptr);
                const auto isOver = [&] {
                    const QWidget *top = window().examine().window();
                    return std::abs(head->mapTo(top, QPoint(0, 0)).x() - cell->mapTo(top, QPoint(0, 0)).x()) <= 4;
                };
                EXPECT_TRUE(QTest::qWaitFor(isOver)) << word.toStdString() << index;
            }
            EXPECT_EQ(heads, 1) << word.toStdString() << index;
        }
    }
}

TEST_F(ExamineTest, TheDeviceIsThatOfTheMeasuring)
{
    const auto measured = [this](const QString &device) {
        auto *combo = named<QComboBox>("Measured with");
        combo->setCurrentIndex(combo->findText(device));
        Q_EMIT combo->activated(combo->currentIndex());
    };
    measured(QStringLiteral("not told with what"));
    write("trunk flexion: how far, degrees", "40");
    measured(QStringLiteral("inclinometer"));
    choose("trunk flexion: pain", 0);
    ASSERT_EQ(visit().measures.size(), 1U);
    EXPECT_TRUE(visit().measures[0].hurts);
    EXPECT_FALSE(visit().measures[0].device) << "it was measured before the device was chosen";
    write("trunk flexion: how far, degrees", "42");
    EXPECT_EQ(visit().measures[0].device, Device::Inclinometer);
}

TEST_F(ExamineTest, PainIsHeardBesideANumberThatIsWrong)
{
    write("trunk flexion: how far, degrees", "4000");
    choose("trunk flexion: pain", 1);
    ASSERT_EQ(visit().measures.size(), 1U);
    EXPECT_TRUE(visit().measures[0].familiar);
    EXPECT_FALSE(visit().measures[0].value);
    EXPECT_EQ(named<QLineEdit>("trunk flexion: how far, degrees")->text(), QStringLiteral("4000"));
}

TEST_F(ExamineTest, WhatIsBeingTypedBelongsToTheVisitThatIsLeft)
{
    const std::int64_t first = session().visitId();
    auto *edit = named<QLineEdit>("trunk flexion: how far, degrees");
    edit->setFocus();
    QTest::keyClicks(edit, QStringLiteral("45"));
    const auto fresh = session().startVisit(session().patientId());
    ASSERT_TRUE(fresh.ok());
    ASSERT_TRUE(session().open(fresh.value()).ok());
    EXPECT_TRUE(visit().measures.empty());
    ASSERT_TRUE(session().open(first).ok());
    ASSERT_EQ(visit().measures.size(), 1U);
    EXPECT_EQ(visit().measures[0].value, 45);
}

TEST_F(ExamineTest, TheTimelineTellsInOrderAndLeadsBack)
{
    write("trunk flexion: how far, degrees", "40");
    session().setClock([] { return QTime(9, 6, 0); });
    part(2);
    choose("sacroiliac distraction", 0);
    Finding sore;
    sore.place = {StructureId{"gluteus-medius"}, Side::Left};
    sore.tenderness = Tenderness{2};
    session().record(sore);
    ASSERT_EQ(visit().timeline.size(), 3U);
    auto *list = window().findChild<TimelinePanel *>()->findChild<QListWidget *>();
    ASSERT_EQ(list->count(), 3);
    EXPECT_TRUE(list->item(0)->text().startsWith(QStringLiteral("09:04"))) << list->item(0)->text().toStdString();
    EXPECT_TRUE(list->item(0)->text().contains(QStringLiteral("trunk flexion, active: 40 degrees")));
    EXPECT_TRUE(list->item(1)->text().contains(QStringLiteral("sacroiliac distraction: no pain")));
    EXPECT_TRUE(list->item(2)->text().contains(QStringLiteral("left gluteus medius: tenderness 2")));
    list->setCurrentRow(2);
    Q_EMIT list->itemActivated(list->item(2));
    EXPECT_EQ(window().middle(), MainWindow::Middle::Body);
    EXPECT_EQ(session().aim()->place, sore.place);
    list->setCurrentRow(1);
    Q_EMIT list->itemActivated(list->item(1));
    EXPECT_EQ(window().middle(), MainWindow::Middle::Examine);
}

TEST_F(ExamineTest, TheSheetOfTheComplaintIsProposedUntilOneIsChosen)
{
    const auto fresh = session().startVisit(session().patientId());
    ASSERT_TRUE(fresh.ok());
    ASSERT_TRUE(session().open(fresh.value()).ok());
    session().aimAt({{StructureId{"deltoid-region"}, Side::Left}, {}, {}});
    session().toggleComplaint();
    const auto leaveAndComeBack = [this] {
        window().showMiddle(MainWindow::Middle::Body);
        window().showMiddle(MainWindow::Middle::Examine);
    };
    leaveAndComeBack();
    EXPECT_EQ(window().examine().sheet()->id, "shoulder") << "the complaint was told after the visit was begun";
    window().examine().showSheet("knee");
    leaveAndComeBack();
    EXPECT_EQ(window().examine().sheet()->id, "knee");
    ASSERT_TRUE(session().rereadRecord().ok());
    EXPECT_EQ(window().examine().sheet()->id, "knee") << "another record of the same visit";
}

TEST_F(ExamineTest, ASignedVisitIsGreyAndTakesNothing)
{
    ASSERT_TRUE(session().sign("late").ok());
    EXPECT_FALSE(named<QLineEdit>("trunk flexion: how far, degrees")->isEnabled());
    part(2);
    choose("sacroiliac distraction", 2);
    EXPECT_TRUE(visit().measures.empty());
    EXPECT_TRUE(visit().tests.empty());
    const auto buttons = window().findChildren<QPushButton *>();
    const auto says = [&](const QString &text) {
        return std::any_of(buttons.begin(), buttons.end(), [&](const QPushButton *b) { return b->text() == text; });
    };
    const std::size_t signs = session().warningsToAsk().size();
    ASSERT_GT(signs, 0U);
    EXPECT_TRUE(says(QStringLiteral("Warning signs: %1 not asked").arg(signs)));
    EXPECT_FALSE(says(QStringLiteral("Consent: all asked")));
}

TEST_F(ExamineTest, UndoInAFieldIsTheVisitsOnceNothingIsTyped)
{
    write("RIGHT trunk side bending: how far, degrees", "18");
    ASSERT_EQ(visit().measures.size(), 1U);
    auto *edit = named<QLineEdit>("RIGHT trunk side bending: how far, degrees");
    edit->setFocus();
    QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(visit().measures.empty());
    QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(visit().measures.size(), 1U);
    edit->selectAll();
    QTest::keyClicks(edit, QStringLiteral("7"));
    QTest::keyClick(edit, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(visit().measures.size(), 1U) << "what was typed goes first";
    EXPECT_EQ(edit->text(), QStringLiteral("18"));
}

TEST_F(ExamineTest, AMistakeStaysInItsFieldWhileTheOtherSideIsTyped)
{
    write("RIGHT trunk side bending: how far, degrees", "1800");
    write("LEFT trunk side bending: how far, degrees", "20");
    auto *wrong = named<QLineEdit>("RIGHT trunk side bending: how far, degrees");
    EXPECT_EQ(wrong->text(), QStringLiteral("1800"));
    EXPECT_TRUE(wrong->property("wrong").toBool());
    EXPECT_EQ(visit().measures.size(), 1U);
}

TEST_F(ExamineTest, HalfABloodPressureWaitsAndUndoTakesItOff)
{
    part(2);
    write("RIGHT blood pressure, systolic", "128");
    EXPECT_TRUE(visit().tests.empty());
    EXPECT_EQ(named<QLineEdit>("RIGHT blood pressure, systolic")->text(), QStringLiteral("128"));
    write("RIGHT blood pressure, diastolic", "82");
    ASSERT_EQ(visit().tests.size(), 1U);
    session().undoStack().undo();
    EXPECT_EQ(named<QLineEdit>("RIGHT blood pressure, systolic")->text(), QString());
    EXPECT_EQ(named<QLineEdit>("RIGHT blood pressure, diastolic")->text(), QString());
    write("RIGHT blood pressure, systolic", "150");
    const auto fresh = session().startVisit(session().patientId());
    ASSERT_TRUE(fresh.ok());
    ASSERT_TRUE(session().open(fresh.value()).ok());
    window().examine().showSheet("low-back-pelvis");
    EXPECT_EQ(named<QLineEdit>("RIGHT blood pressure, systolic")->text(), QString()) << "that was of another visit";
}

TEST_F(ExamineTest, AnEmptyAnswerDoesNotTakeCouldNotAway)
{
    part(2);
    session().record(TestResult{"blood-pressure", Side::Right, {}, false, {}, {}, {}, "no cuff that fits", {}});
    Q_EMIT named<QLineEdit>("RIGHT blood pressure, systolic")->editingFinished();
    ASSERT_EQ(visit().tests.size(), 1U);
    Finding unable;
    unable.place = {StructureId{"l4-l5"}, Side::Right};
    unable.unable = "plaster";
    session().record(unable);
    part(1);
    auto *feel = named<QComboBox>("right L4/L5 segment: end feel");
    Q_EMIT feel->activated(0);
    ASSERT_NE(session().findingAt(unable.place), nullptr);
    EXPECT_TRUE(session().findingAt(unable.place)->isUnable());
}

TEST_F(ExamineTest, TheWheelScrollsAndChoosesNoEndFeel)
{
    part(1);
    auto *feel = named<QComboBox>("right L4/L5 segment: end feel");
    QWheelEvent wheel(
        QPointF(4, 4), feel->mapToGlobal(QPointF(4, 4)), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(feel, &wheel);
    EXPECT_EQ(feel->currentIndex(), 0);
    EXPECT_TRUE(findings().empty());
}

// A positive answer that is a warning sign stops the work until it is decided what to do.
TEST_F(ExamineTest, ASignThatIsFoundStopsTheWork)
{
    ASSERT_FALSE(session().isLocked());
    session().record(TestResult{"blood-pressure", Side::Right, {}, false, {}, {}, {184, 90}, {}, {}});
    inNext<DecisionDialog>([&](DecisionDialog &dialog) {
        EXPECT_TRUE(session().isLocked()) << "before anything is decided";
        ASSERT_EQ(visit().warnings.size(), 1U);
        EXPECT_EQ(visit().warnings[0].sign, "very-high-blood-pressure");
        EXPECT_TRUE(visit().warnings[0].isThere);
        EXPECT_EQ(stored().warnings, visit().warnings) << "it is on disk";
        dialog.reject(); // Escape
    });
    QCoreApplication::processEvents();
    ASSERT_EQ(visit().warnings.size(), 1U);
    EXPECT_TRUE(session().isLocked()) << "not decided, and no slip";
    session().record(TestResult{"blood-pressure", Side::Left, {}, false, {}, {}, {190, 92}, {}, {}});
    QCoreApplication::processEvents();
    EXPECT_EQ(visit().warnings.size(), 1U) << "asked once";
}

TEST_F(ExamineTest, TestsThatALaterAnswerCallsForComeOntoTheSheet)
{
    window().examine().showSheet("neck");
    part(2);
    const auto isOn = [this](const char *test) {
        const QString name = QString::fromStdString(session().examination().findTest(test)->name);
        const auto rows = window().examine().findChildren<ChoiceRow *>();
        return std::any_of(rows.begin(), rows.end(), [&](const ChoiceRow *row) { return row->accessibleName().endsWith(name); });
    };
    ASSERT_FALSE(isOn("plantar-response"));
    WarningAnswer clumsy;
    clumsy.sign = "cord-clumsy-hands";
    clumsy.isThere = true;
    clumsy.asked = visit().date;
    clumsy.decided = Decision::CareSameDay;
    clumsy.why = "drops cups";
    ASSERT_TRUE(session().answerWarning(clumsy).ok());
    QCoreApplication::processEvents();
    EXPECT_TRUE(isOn("plantar-response"));
}

// A folder of sheets: every one can be shown, every widget on it is named.
TEST_F(ExamineTest, EverySheetFillsAndNamesItsWidgets)
{
    for (const Sheet &sheet : session().examination().sheets) {
        window().examine().showSheet(sheet.id);
        for (const int index : {0, 1, 2}) {
            part(index);
            for (const auto *widget : window().examine().findChildren<QWidget *>())
                if (widget->focusPolicy() & Qt::TabFocus && qobject_cast<const QLineEdit *>(widget)) {
                    EXPECT_FALSE(widget->accessibleName().isEmpty()) << sheet.id;
                }
        }
    }
}

// To build all rows took longer than to open the visit.
TEST_F(ExamineTest, WhatIsNotLookedAtIsNotBuilt)
{
    const auto rows = [this] { return window().examine().findChildren<SheetRow *>().size(); };
    const auto movements = rows();
    part(2);
    EXPECT_GT(rows(), movements);
    window().showMiddle(MainWindow::Middle::Body);
    window().examine().showSheet("hip");
    EXPECT_EQ(rows(), 0);
    window().showMiddle(MainWindow::Middle::Examine);
    EXPECT_GT(rows(), 0);
}

} // namespace raphe::test
