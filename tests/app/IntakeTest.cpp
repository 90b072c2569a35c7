// Intake in the window: a new patient and a follow-up by mouse and by keys alone, within a counted number of actions; and that
// what is told contradicting itself, half or at great length is kept as it was told.
#include "tests/app/Window.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/ComplaintForm.h"
#include "core/plan/NextVisit.h"
#include "tests/support/Complaints.h"
#include "tests/support/VisitHands.h"

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTabBar>

namespace raphe::test {

namespace {

using By = VisitHands::By;

class Intake : public WindowTest {
protected:
    void expectNoTrouble(const VisitHands &hands)
    {
        for (const std::string &trouble : hands.troubles())
            ADD_FAILURE() << trouble;
    }
    void newPatient(By by)
    {
        VisitHands hands(window(), by);
        hands.newPatient();
        ASSERT_TRUE(window().isIntake()) << "a new visit begins with intake";
        hands.firstVisit();
        expectNoTrouble(hands);
        RecordProperty("actions", hands.actions());
        RecordProperty("tabs", hands.tabs());
        std::cout << "actions " << hands.actions() << ", Tab " << hands.tabs() << '\n';
        EXPECT_LT(hands.actions(), 40);
        const Visit visit = stored();
        EXPECT_EQ(visit.patient, (Patient{"Wanda Ferrel", "1961-04-07"}));
        ASSERT_EQ(visit.complaints.size(), 1U);
        const Complaint &told = visit.complaints.front();
        EXPECT_EQ(told.text, "A dull ache beside the spine after moving house");
        EXPECT_EQ(told.since, "three weeks");
        EXPECT_EQ(told.now, PainScore{4});
        EXPECT_EQ(told.worst, PainScore{8});
        EXPECT_EQ(told.best, PainScore{1});
        EXPECT_EQ(told.aggravates, "lifting, sitting");
        EXPECT_EQ(told.eases, "a walk");
        EXPECT_EQ(told.day[static_cast<std::size_t>(PartOfDay::Waking)], DayLevel::More);
        EXPECT_EQ(told.day[static_cast<std::size_t>(PartOfDay::Night)], DayLevel::Less);
        EXPECT_EQ(told.irritability, Irritability::Low);
        EXPECT_EQ(
            told.activities, (std::vector<Activity>{{"put on socks", 3}, {"carry the shopping", 4}, {"sit through a film", 5}}));
        EXPECT_EQ(told.goal, "to work in the garden");
        EXPECT_EQ(told.asked, visit.date);
        ASSERT_EQ(visit.pain.size(), 1U);
        EXPECT_EQ(visit.pain[0].quality, PainQuality::Aching);
        EXPECT_EQ(visit.pain[0].intensity, PainScore{5});
        EXPECT_TRUE(visit.pain[0].confirmed);
        EXPECT_NE(std::find(visit.complaintAt.begin(), visit.complaintAt.end(),
                      Place{StructureId{"lumbar-region-medial"}, Side::Right}),
            visit.complaintAt.end());
        for (const Place &place : visit.complaintAt)
            EXPECT_NE(place.side, Side::Left) << place.structure.value;
        EXPECT_TRUE(session().warningsToAsk().empty());
        EXPECT_FALSE(window().isIntake());
    }
    // The patient of the window was here nine days ago.
    void wasHereBefore()
    {
        Visit before = session().visit();
        before.date = QDate::currentDate().addDays(-9).toString(Qt::ISODate).toStdString();
        Complaint told = complaintOf("neck after work");
        told.now = PainScore{5};
        told.worst = PainScore{7};
        told.best = PainScore{2};
        told.goal = "to sleep";
        told.activities = {{"drive", 4}};
        told.asked = before.date;
        before.complaints = {told};
        before.complaintAt = {{StructureId{"posterior-cervical-region"}, Side::Left}};
        before.promised = {"walk twice a day"};
        for (const WarningSign *sign : session().warningsToAsk())
            before.warnings.push_back({sign->id, false, before.date, {}, {}, {}, {}});
        ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(before)).ok());
        ASSERT_TRUE(session().open(session().visitId()).ok());
    }
    void followUp(By by)
    {
        wasHereBefore();
        const std::string before = session().visit().date;
        VisitHands hands(window(), by);
        hands.followUp();
        expectNoTrouble(hands);
        std::cout << "actions " << hands.actions() << ", Tab " << hands.tabs() << '\n';
        RecordProperty("actions", hands.actions());
        RecordProperty("tabs", hands.tabs());
        EXPECT_LT(hands.actions(), 12);
        const Visit visit = stored();
        EXPECT_GT(visit.date, before);
        EXPECT_EQ(visit.sinceLast, (SinceLast{Course::Better, Reaction::Sore, "", {{"walk twice a day", Kept::Done}}}));
        EXPECT_EQ(visit.complaint(), "neck after work");
        EXPECT_EQ(visit.complaints.front().now, PainScore{2});
        EXPECT_EQ(visit.complaints.front().goal, "to sleep");
        EXPECT_EQ(visit.complaints.front().asked, visit.date) << "confirmed in one stroke";
        EXPECT_EQ(visit.complaintAt, (std::vector<Place>{{StructureId{"posterior-cervical-region"}, Side::Left}}));
        EXPECT_FALSE(window().isIntake());
    }
    template <class Widget> Widget *named(const QString &name)
    {
        for (auto *widget : window().intake().findChildren<Widget *>())
            if (widget->accessibleName() == name)
                return widget;
        throw std::runtime_error("no field " + name.toStdString());
    }
    bool says(const QString &words)
    {
        for (const auto *label : window().intake().findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(words))
                return true;
        return false;
    }
    void type(QWidget *field, const QString &text)
    {
        field->setFocus();
        QTest::keyClicks(field, text);
    }
};

} // namespace

TEST_F(Intake, OfANewPatientByMouse)
{
    newPatient(By::Mouse);
}

TEST_F(Intake, OfANewPatientByKeysAlone)
{
    newPatient(By::Keys);
}

TEST_F(Intake, OfAFollowUpByMouse)
{
    followUp(By::Mouse);
}

TEST_F(Intake, OfAFollowUpByKeysAlone)
{
    followUp(By::Keys);
}

TEST_F(Intake, NoKeyOfTheBodyRecordsWhileItIsNotSeen)
{
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    window().showIntake(true);
    window().intake().pain().board().setFocus();
    for (const Qt::Key k : {Qt::Key_3, Qt::Key_F, Qt::Key_C, Qt::Key_B, Qt::Key_Delete})
        key(k);
    EXPECT_TRUE(findings().empty());
    EXPECT_TRUE(session().visit().complaintAt.empty());
    key(Qt::Key_E);
    ASSERT_FALSE(window().isIntake());
    key(Qt::Key_3);
    EXPECT_EQ(findings().size(), 1U);
}

TEST_F(Intake, RatingsThatDoNotFitAreKeptAndSaid)
{
    window().showIntake(true);
    named<ChoiceRow>(QStringLiteral("Pain now"))->button(6)->click();
    named<ChoiceRow>(QStringLiteral("Pain worst"))->button(3)->click();
    named<ChoiceRow>(QStringLiteral("Pain best"))->button(8)->click();
    EXPECT_TRUE(says(QStringLiteral("now 6, worst 3, best 8")));
    const Complaint told = stored().complaints.front();
    EXPECT_EQ(told.now, PainScore{6});
    EXPECT_EQ(told.worst, PainScore{3});
    EXPECT_EQ(told.best, PainScore{8});
    named<ChoiceRow>(QStringLiteral("Pain best"))->button(8)->click();
    EXPECT_FALSE(stored().complaints.front().best) << "taken back is not 0";
}

TEST_F(Intake, HalfActivitiesAreKeptAndCountInNoMean)
{
    window().showIntake(true);
    named<ChoiceRow>(QStringLiteral("Score of 1"))->button(5)->click();
    type(named<QLineEdit>(QStringLiteral("What is hard to do, 2")), QStringLiteral("carry my grandson"));
    EXPECT_TRUE(says(QStringLiteral("A score of 5 has no name yet. 'carry my grandson' has no score yet.")));
    EXPECT_FALSE(says(QStringLiteral("Mean")));
    EXPECT_EQ(stored().complaints.front().activities, (std::vector<Activity>{{"", 5}, {"carry my grandson", {}}}));
    ASSERT_TRUE(session().open(session().visitId()).ok());
    EXPECT_EQ(named<QLineEdit>(QStringLiteral("What is hard to do, 2"))->text(), QStringLiteral("carry my grandson"));
}

TEST_F(Intake, WhatIsTypedIsNotMovedUnderTheHand)
{
    window().showIntake(true);
    auto *text = named<QPlainTextEdit>(QStringLiteral("What brings the patient, in their words"));
    type(text, QStringLiteral("my  knee, "));
    type(text, QStringLiteral("left"));
    EXPECT_EQ(text->toPlainText(), QStringLiteral("my  knee, left"));
    EXPECT_EQ(stored().complaint(), "my  knee, left");
    EXPECT_EQ(window().visitPanel().findChild<QPlainTextEdit *>()->toPlainText(), text->toPlainText());
    text->clear();
    EXPECT_TRUE(stored().complaints.empty());
}

TEST_F(Intake, SeveralComplaintsAndOneOfThemFirst)
{
    window().showIntake(true);
    auto *text = named<QPlainTextEdit>(QStringLiteral("What brings the patient, in their words"));
    type(text, QStringLiteral("my knee"));
    QTest::mouseClick(named<QPushButton>(QStringLiteral("Another complaint")), Qt::LeftButton);
    EXPECT_TRUE(text->toPlainText().isEmpty());
    type(text, QStringLiteral("my heel"));
    EXPECT_EQ(stored().complaints.size(), 2U);
    EXPECT_EQ(stored().complaint(), "my knee");
    QTest::mouseClick(named<QPushButton>(QStringLiteral("Make first")), Qt::LeftButton);
    EXPECT_EQ(stored().complaint(), "my heel");
    auto *tabs = window().intake().findChild<QTabBar *>();
    tabs->setCurrentIndex(1);
    EXPECT_EQ(text->toPlainText(), QStringLiteral("my knee"));
    text->clear();
    EXPECT_EQ(stored().complaints, std::vector{stored().complaints.front()}) << "an empty one at the end is none";
}

TEST_F(Intake, ALongStoryIsKeptToItsLastWord)
{
    window().showIntake(true);
    const QString story =
        QStringLiteral("and then ").repeated(25'000) + QStringLiteral("and since Tuesday I cannot feel the saddle");
    auto *text = named<QPlainTextEdit>(QStringLiteral("What brings the patient, in their words"));
    text->insertPlainText(story);
    EXPECT_EQ(stored().complaint(), story.toStdString());
    auto *activity = named<QLineEdit>(QStringLiteral("What is hard to do, 1"));
    const QString word = QStringLiteral("hoovering").repeated(5'000);
    activity->insert(word);
    EXPECT_EQ(stored().complaints.front().activities.front().name, word.toStdString());
    EXPECT_FALSE(session().warningsToAsk().empty()) << "a story answers no question";
}

TEST_F(Intake, TheDrawingIsMeasuredAndComparedWithTheLastOne)
{
    wasHereBefore();
    Visit before = session().visit();
    PainPatch patch;
    patch.view = View::Back;
    patch.strokes = {{{{40, 400}, {40, 440}}, 12}};
    before.pain = {patch};
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(before)).ok());
    window().visitPanel().newVisit();
    ASSERT_TRUE(session().lastVisit());
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("cannot be compared")); }));
    EXPECT_FALSE(says(QStringLiteral("redrawing error")));
    session().setPain({patch});
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return says(QStringLiteral("% of the body")) && says(QStringLiteral("redrawing error")); }));
    EXPECT_FALSE(says(QStringLiteral("may have moved")));
    session().setPain({mirrored(patch)});
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("may have moved")); }));
    EXPECT_TRUE(says(QStringLiteral("LEFT"))) << "the other side is said in words";
    session().undoStack().undo();
    EXPECT_EQ(session().visit().pain, std::vector{patch});
}

// What one visit promises is never taken for another's, also while the cursor stands in the field.
TEST_F(Intake, PromisesBelongToTheirVisit)
{
    window().showIntake(true);
    auto *promised = named<QPlainTextEdit>(QStringLiteral("Promised until the next visit, one a line"));
    type(promised, QStringLiteral("walk "));
    type(promised, QStringLiteral("a lot"));
    EXPECT_EQ(promised->toPlainText(), QStringLiteral("walk a lot"));
    EXPECT_EQ(stored().promised, std::vector<std::string>{"walk a lot"});
    ASSERT_TRUE(promised->hasFocus());
    const auto next = session().startVisit(session().patientId());
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    EXPECT_TRUE(promised->toPlainText().isEmpty());
    type(promised, QStringLiteral("rest"));
    EXPECT_EQ(stored().promised, std::vector<std::string>{"rest"});
}

} // namespace raphe::test
