// After the treatment: what is examined again without sight of the first answer, and the close of the visit.
#include "tests/app/Window.h"

#include "app/raphe/closing/BeforeAfter.h"
#include "app/raphe/closing/CloseSection.h"
#include "app/raphe/closing/ReviewBox.h"
#include "app/raphe/closing/ValueScale.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/record/TextLine.h"
#include "app/raphe/treatment/AdverseForm.h"
#include "tests/support/Complaints.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>

namespace raphe::test {

namespace {

class AfterTreatment : public WindowTest {
protected:
    void find(const char *id, Side side, int grade)
    {
        session().aimAt({{StructureId{id}, side}, {}, {}});
        session().setTenderness(grade);
    }
    template <class Widget> Widget *named(QWidget &in, const QString &name)
    {
        for (auto *widget : in.findChildren<Widget *>())
            if (widget->accessibleName() == name && widget->isVisible())
                return widget;
        ADD_FAILURE() << "nothing is called " << name.toStdString();
        throw std::runtime_error("no such field");
    }
    void choose(const QString &row, int index)
    {
        QTest::mouseClick(named<ChoiceRow>(window().retest(), row)->button(index), Qt::LeftButton);
    }
    static bool says(const QWidget &in, const QString &words)
    {
        const auto labels = in.findChildren<QLabel *>();
        return std::any_of(
            labels.begin(), labels.end(), [&](const QLabel *l) { return l->isVisible() && l->text().contains(words); });
    }
    void press(QWidget &in, const QString &text)
    {
        for (auto *b : in.findChildren<QAbstractButton *>())
            if (b->isVisible() && b->text() == text)
                return QTest::mouseClick(b, Qt::LeftButton);
        ADD_FAILURE() << "no button " << text.toStdString();
    }
    void saveAnew(const std::function<void(Visit &)> &change)
    {
        Visit visit = session().visit();
        change(visit);
        ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(visit)).ok());
        ASSERT_TRUE(session().open(session().visitId()).ok());
    }
};

} // namespace

TEST_F(AfterTreatment, TheFirstAnswerIsHiddenUntilTheNewOneIsThere)
{
    find("piriformis", Side::Right, 3);
    find("soleus", Side::Left, 2);
    QTest::keyClick(&window(), Qt::Key_J);
    RetestPage &page = window().retest();
    ASSERT_TRUE(page.isVisible());
    EXPECT_FALSE(window().visitPanel().isVisible()) << "its list shows the grades";
    EXPECT_FALSE(window().bodies().isVisible()) << "its marks show the grades";
    EXPECT_FALSE(says(page, QStringLiteral("efore 3")));
    EXPECT_FALSE(page.pictures().before().isVisible());
    EXPECT_TRUE(says(page, QStringLiteral("Not examined again: RIGHT piriformis, LEFT soleus.")));
    QTest::qWait(50); // all has found its place
    const QPoint below = named<ChoiceRow>(page, QStringLiteral("LEFT soleus: Tenderness, 0 to 4"))->mapTo(&page, QPoint(0, 0));
    choose(QStringLiteral("RIGHT piriformis: Tenderness, 0 to 4"), 1);
    QTest::qWait(50);
    EXPECT_EQ(named<ChoiceRow>(page, QStringLiteral("LEFT soleus: Tenderness, 0 to 4"))->mapTo(&page, QPoint(0, 0)), below)
        << "what comes next does not move away under the hand";
    EXPECT_TRUE(says(page, QStringLiteral("Tenderness before 3, now 1: less by 2: error unknown")))
        << "a grade is never better beyond error";
    EXPECT_FALSE(says(page, QStringLiteral("efore 2"))) << "the other one stays hidden";
    EXPECT_TRUE(page.pictures().before().isVisible());
    EXPECT_TRUE(says(page, QStringLiteral("Not examined again: LEFT soleus.")));
    const Visit visit = stored();
    ASSERT_EQ(visit.retested.findings.size(), 1U);
    EXPECT_EQ(visit.retested.findings[0].place, (Place{StructureId{"piriformis"}, Side::Right}));
    EXPECT_EQ(visit.findings.size(), 2U) << "what was found first stays as it was";
    auto *row = named<ChoiceRow>(page, QStringLiteral("RIGHT piriformis: Tenderness, 0 to 4"));
    QTest::keyClick(row->button(1), Qt::Key_K);
    EXPECT_EQ(stored().retested.findings.size(), 1U) << "a letter changes no number";
    EXPECT_EQ(row->value(), 1);
    choose(QStringLiteral("RIGHT piriformis: Tenderness, 0 to 4"), 1);
    EXPECT_TRUE(stored().retested.findings.empty()) << "pressed again it is taken back";
}

TEST_F(AfterTreatment, AMovementIsPointedAtWithTheSameDeviceAndAllOfItIsAsked)
{
    Measure before;
    before.movement = "shoulder-flexion";
    before.side = Side::Right;
    before.value = 120;
    before.mode = MoveMode::Active;
    before.device = Device::Inclinometer;
    before.familiar = true;
    session().record(before);
    session().setRetest(RetestMark{MomentKind::Movement, "shoulder-flexion", Side::Right});
    QTest::keyClick(&window(), Qt::Key_J);
    RetestPage &page = window().retest();
    EXPECT_TRUE(says(page, QStringLiteral("with the inclinometer, as before")));
    auto *scale = named<ValueScale>(page, QStringLiteral("RIGHT shoulder flexion, degrees, on a scale"));
    QTest::mouseClick(scale, Qt::LeftButton, {}, scale->rect().center());
    EXPECT_TRUE(stored().retested.measures.empty()) << "whether it still hurts was not answered";
    choose(QStringLiteral("RIGHT shoulder flexion: pain"), 0);
    ASSERT_EQ(stored().retested.measures.size(), 1U);
    const Measure now = stored().retested.measures[0];
    EXPECT_EQ(now.device, Device::Inclinometer);
    EXPECT_EQ(now.mode, MoveMode::Active);
    EXPECT_EQ(now.side, Side::Right);
    EXPECT_FALSE(now.bringsPain());
    auto *line = named<QLineEdit>(page, QStringLiteral("RIGHT shoulder flexion, degrees"));
    line->setText(QStringLiteral("130"));
    Q_EMIT line->editingFinished();
    EXPECT_TRUE(says(page, QStringLiteral("better by 10 degrees, beyond the test's error (8 degrees")));
    line->setText(QStringLiteral("9000"));
    Q_EMIT line->editingFinished();
    EXPECT_TRUE(stored().retested.measures.empty()) << "what cannot be is not recorded";
}

TEST_F(AfterTreatment, WhatWasDoneInBetweenIsSaid)
{
    find("piriformis", Side::Right, 3);
    TreatmentStep done;
    done.place = {StructureId{"piriformis"}, Side::Right};
    done.technique = "held-ease";
    done.seconds = 90;
    ASSERT_TRUE(session().addWork(done, true));
    QTest::keyClick(&window(), Qt::Key_J);
    EXPECT_TRUE(says(window().retest(), QStringLiteral("In between:\nright piriformis: held position of ease, 1 min 30 s")));
}

TEST_F(AfterTreatment, WhatIsWrittenAtTheCloseIsInTheRecordAndLeadsToTheNextVisit)
{
    find("piriformis", Side::Right, 3);
    session().setEpisode(1);
    QTest::keyClick(&window(), Qt::Key_K);
    ClosePage &page = window().closing();
    ASSERT_TRUE(page.isVisible());
    auto *menu = page.findChild<QMenu *>();
    Q_EMIT menu->aboutToShow();
    menu->actions().constFirst()->trigger();
    ASSERT_EQ(stored().closing.advice.size(), 1U);
    auto *words = named<QPlainTextEdit>(
        page, QString::fromStdString(stored().closing.advice[0].title) + QStringLiteral(", as the patient gets it"));
    words->setPlainText(QStringLiteral("Walk to the corner and back."));
    EXPECT_EQ(stored().closing.advice[0].text, "Walk to the corner and back.");
    press(page, QStringLiteral("Told to the patient"));
    press(page, QStringLiteral("RIGHT piriformis: examine again"));
    press(page, QStringLiteral("Agree on a plan"));
    named<QPlainTextEdit>(page, QStringLiteral("Your impression"))->setPlainText(QStringLiteral("buttock pain on lifting"));
    auto *goal = named<TextLine>(page, QStringLiteral("Goal 1"));
    EXPECT_EQ(named<QComboBox>(page, QStringLiteral("Until when 1"))->currentText(), QStringLiteral("open"));
    QTest::keyClicks(goal, QStringLiteral("lift the child"));
    const Visit visit = stored();
    EXPECT_TRUE(visit.closing.isTold);
    EXPECT_EQ(visit.closing.focus, std::vector<std::string>{"RIGHT piriformis: examine again"});
    ASSERT_TRUE(visit.closing.plan);
    EXPECT_EQ(visit.closing.plan->agreed, visit.date);
    EXPECT_EQ(visit.closing.impression.text, "buttock pain on lifting");
    ASSERT_EQ(visit.closing.goals.size(), 1U);
    EXPECT_EQ(visit.closing.goals[0].text, "lift the child");
    const auto next = session().startVisit(session().patientId(), 1);
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    EXPECT_EQ(session().visit().focus, visit.closing.focus);
    EXPECT_EQ(session().visit().closing.goals, visit.closing.goals);
    EXPECT_EQ(session().visit().closing.impression, Impression{}) << "an impression is made anew";
}

TEST_F(AfterTreatment, AWordingIsKeptForOtherPatients)
{
    QTest::keyClick(&window(), Qt::Key_K);
    ClosePage &page = window().closing();
    auto *menu = page.findChild<QMenu *>();
    Q_EMIT menu->aboutToShow();
    menu->actions().constFirst()->trigger();
    const GivenAdvice advice = stored().closing.advice[0];
    const auto isOffered = [&] {
        const auto buttons = page.findChildren<QAbstractButton *>();
        return std::any_of(buttons.begin(), buttons.end(),
            [](const QAbstractButton *b) { return b->isVisible() && b->text() == QStringLiteral("Keep this wording"); });
    };
    EXPECT_FALSE(isOffered()) << "it is the library's own";
    named<QPlainTextEdit>(page, QString::fromStdString(advice.title) + QStringLiteral(", as the patient gets it"))
        ->setPlainText(QStringLiteral("Walk to the corner and back."));
    ASSERT_TRUE(isOffered());
    press(page, QStringLiteral("Keep this wording"));
    EXPECT_FALSE(isOffered());
    EXPECT_EQ(session().homeAdvice().find(advice.item)->text, "Walk to the corner and back.");
    const auto settings = session().practice().settings();
    ASSERT_TRUE(settings.ok());
    EXPECT_EQ(settings.value().advice, (std::vector<OwnAdvice>{{advice.item, advice.title, "Walk to the corner and back."}}));
}

TEST_F(AfterTreatment, CareThatChangesNothingIsAskedAbout)
{
    saveAnew([](Visit &visit) {
        visit.date = QDate::currentDate().addDays(-7).toString(Qt::ISODate).toStdString();
        visit.complaints = {complaintOf("my hip")};
        visit.complaints[0].now = PainScore{6};
        visit.closing.plan = CarePlan{visit.date, 1, 7, {}};
    });
    const auto next = session().startVisit(session().patientId());
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    saveAnew([](Visit &visit) { visit.complaints[0].now = PainScore{5}; });
    QTest::keyClick(&window(), Qt::Key_K);
    ClosePage &page = window().closing();
    auto *box = page.findChild<ReviewBox *>();
    ASSERT_TRUE(box->isVisible());
    EXPECT_TRUE(says(*box, QStringLiteral("nothing is better beyond error")));
    EXPECT_TRUE(says(*box, QStringLiteral("within the test's error (1.77")));
    QTest::mouseClick(named<ChoiceRow>(*box, QStringLiteral("What is made of it"))->button(1), Qt::LeftButton);
    EXPECT_FALSE(stored().closing.review) << "not without a reason";
    QTest::keyClicks(named<TextLine>(*box, QStringLiteral("Why")), QStringLiteral("no change in a month"));
    ASSERT_TRUE(stored().closing.review);
    EXPECT_EQ(stored().closing.review->decision, CareDecision::Refer);
    EXPECT_EQ(stored().closing.review->why, "no change in a month");
}

TEST_F(AfterTreatment, NothingHalfSaidOfOneVisitStaysForTheNext)
{
    saveAnew([](Visit &visit) {
        visit.date = QDate::currentDate().addDays(-7).toString(Qt::ISODate).toStdString();
        visit.closing.call = LaterCall{visit.date, visit.date, Reaction::Bad, "fainted at home"};
    });
    QTest::keyClick(&window(), Qt::Key_K);
    ClosePage &page = window().closing();
    press(page, QStringLiteral("Write it down"));
    press(page, QStringLiteral("Faint, or about to be"));
    const auto next = session().startVisit(session().patientId());
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    press(page, QStringLiteral("We call tomorrow"));
    const auto call = stored().closing.call;
    ASSERT_TRUE(call);
    EXPECT_EQ(call->made, "");
    EXPECT_FALSE(call->reaction);
    EXPECT_EQ(call->told, "");
    press(page, QStringLiteral("Write it down"));
    const auto boxes = page.findChild<AdverseForm *>()->findChildren<QCheckBox *>();
    for (const QCheckBox *box : boxes)
        EXPECT_FALSE(box->isChecked()) << box->text().toStdString();
}

TEST_F(AfterTreatment, ACallIsWrittenDownAsAnAmendment)
{
    saveAnew([](Visit &visit) {
        visit.closing.call = LaterCall{visit.date, {}, {}, {}}; // due today
    });
    ASSERT_TRUE(session().sign({}).ok());
    ASSERT_TRUE(session().beginAmendment().ok());
    QTest::keyClick(&window(), Qt::Key_K);
    ClosePage &page = window().closing();
    QTest::mouseClick(named<ChoiceRow>(page, QStringLiteral("After the treatment"))->button(1), Qt::LeftButton);
    QTest::keyClicks(named<TextLine>(page, QStringLiteral("What was told, and what was agreed")), QStringLiteral("slept well"));
    const auto call = stored().closing.call;
    ASSERT_TRUE(call);
    EXPECT_EQ(call->made, session().visit().date);
    EXPECT_EQ(call->reaction, Reaction::Sore);
    EXPECT_EQ(call->told, "slept well");
}

TEST_F(AfterTreatment, WhatShouldNotHaveHappenedGetsATime)
{
    QTest::keyClick(&window(), Qt::Key_K);
    ClosePage &page = window().closing();
    press(page, QStringLiteral("Write it down"));
    press(page, QStringLiteral("Faint, or about to be"));
    press(page, QStringLiteral("Record it, with the time"));
    ASSERT_EQ(stored().treatment.events.size(), 1U);
    EXPECT_EQ(stored().treatment.events[0].signs, std::vector<std::string>{"faint"});
    EXPECT_EQ(stored().treatment.events[0].time.size(), 8U);
    EXPECT_TRUE(says(page, QStringLiteral("Faint, or about to be")));
}

TEST_F(AfterTreatment, ASignedVisitTakesNothing)
{
    find("piriformis", Side::Right, 3);
    ASSERT_TRUE(session().sign({}).ok());
    QTest::keyClick(&window(), Qt::Key_J);
    EXPECT_FALSE(named<ChoiceRow>(window().retest(), QStringLiteral("RIGHT piriformis: Tenderness, 0 to 4"))->isEnabled());
    QTest::keyClick(&window(), Qt::Key_K);
    for (auto *section : window().closing().findChildren<CloseSection *>())
        EXPECT_FALSE(section->isEnabled());
}

} // namespace raphe::test
