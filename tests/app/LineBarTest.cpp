// The typed line in the window: read while it is typed, asked where it is open, recorded as one step, never with a side that was
// not typed.
#include "app/raphe/help/Help.h"
#include "app/raphe/help/HelpView.h"
#include "app/raphe/help/HelpWindow.h"
#include "tests/app/InNext.h"
#include "tests/app/Window.h"

#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>

namespace raphe::test {

namespace {

class LineBarTest : public WindowTest {
protected:
    QLineEdit &line() { return window().line().line(); }
    void type(const char *text)
    {
        line().setFocus();
        QTest::keyClicks(&line(), QString::fromUtf8(text));
        QCoreApplication::processEvents(); // what was read is shown
    }
    void enter() { QTest::keyClick(&line(), Qt::Key_Return); }
    QStringList chips(const QString &role)
    {
        QStringList out;
        for (const auto *label : window().line().findChildren<QLabel *>())
            if (label->property("chip").toString() == role)
                out << label->text();
        return out;
    }
    QPushButton *answer(const QString &part)
    {
        for (auto *button : window().line().findChildren<QPushButton *>())
            if (button->property("chip").toString() == QStringLiteral("answer") && button->text().contains(part))
                return button;
        return nullptr;
    }
};

} // namespace

TEST_F(LineBarTest, KeyLTakesTheLineAndEnterRecordsAllAsOneStep)
{
    window().bodyView(View::Back).setFocus();
    key(Qt::Key_L);
    EXPECT_TRUE(line().hasFocus());
    type("r glute max origin tender 3 familiar, l l4/5 clear, hip ir 32 r 45 l");
    EXPECT_TRUE(findings().empty()) << "nothing is recorded before Enter";
    EXPECT_EQ(chips(QStringLiteral("read")).size(), 4) << chips(QStringLiteral("read")).join(QLatin1Char('|')).toStdString();
    enter();
    ASSERT_EQ(findings().size(), 2U);
    EXPECT_EQ(findings()[0].place, (Place{StructureId{"gluteus-maximus"}, Side::Right}));
    EXPECT_EQ(findings()[0].spot, Spot::Origin);
    EXPECT_TRUE(findings()[0].familiar);
    EXPECT_EQ(findings()[1].place, (Place{StructureId{"l4-l5"}, Side::Left}));
    ASSERT_EQ(session().visit().measures.size(), 2U);
    EXPECT_EQ(session().visit().measures[0].side, Side::Right);
    EXPECT_EQ(session().visit().measures[0].value, 32);
    EXPECT_TRUE(session().visit().measures[0].mode) << "as the sheet measures";
    EXPECT_EQ(line().text(), QStringLiteral(""));
    session().undoStack().undo();
    EXPECT_TRUE(findings().empty());
    EXPECT_TRUE(session().visit().measures.empty());
    QTest::keyClick(&line(), Qt::Key_Up);
    EXPECT_TRUE(line().text().startsWith(QStringLiteral("r glute max"))) << "the line before comes back";
}

TEST_F(LineBarTest, WorkOffThePlanIsLoggedWithItsSideAndTime)
{
    session().setCautions({});
    session().setClock([] { return QTime(10, 30, 0); });
    window().bodyView(View::Back).setFocus();
    key(Qt::Key_L);
    type("did left soleus gliding strokes 2 min");
    EXPECT_EQ(chips(QStringLiteral("read")), QStringList{QStringLiteral("Left soleus: gliding strokes along the fibres, 2 min")});
    enter();
    if (auto *asked = qobject_cast<QMessageBox *>(QApplication::activeModalWidget()))
        ADD_FAILURE() << asked->text().toStdString();
    const auto &steps = session().visit().treatment.steps;
    ASSERT_EQ(steps.size(), 1U);
    EXPECT_EQ(steps[0].place, (Place{StructureId{"soleus"}, Side::Left}));
    EXPECT_EQ(steps[0].technique, "gliding");
    EXPECT_EQ(steps[0].seconds, 120);
    EXPECT_EQ(steps[0].began, "10:28:00");
    EXPECT_EQ(steps[0].done, StepDone::Done);
    EXPECT_EQ(stored().treatment, session().visit().treatment);
    EXPECT_TRUE(findings().empty()) << "it is no finding";
    EXPECT_EQ(line().text(), QString());
    type("did soleus gliding strokes 2 min");
    enter();
    EXPECT_EQ(steps.size(), 1U) << "the side is asked";
    ASSERT_NE(answer(QStringLiteral("right")), nullptr);
}

TEST_F(LineBarTest, WhatIsOpenIsAskedAndAnsweredByAButton)
{
    type("glute med tender 2");
    EXPECT_EQ(chips(QStringLiteral("ask")).size(), 1);
    enter();
    EXPECT_TRUE(findings().empty());
    auto *right = answer(QStringLiteral("right"));
    ASSERT_NE(right, nullptr);
    QTest::mouseClick(right, Qt::LeftButton);
    QCoreApplication::processEvents();
    EXPECT_TRUE(chips(QStringLiteral("ask")).isEmpty()) << line().text().toStdString();
    enter();
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].place, (Place{StructureId{"gluteus-medius"}, Side::Right}));
}

TEST_F(LineBarTest, AMistakeIsNamedAndNothingIsLost)
{
    type("r glute max tender 9");
    EXPECT_EQ(chips(QStringLiteral("mistake")).size(), 1);
    enter();
    EXPECT_TRUE(findings().empty());
    EXPECT_EQ(line().text(), QStringLiteral("r glute max tender 9"));
}

TEST_F(LineBarTest, AnAnswerIsTakenByKeysAndTypingGoesOnBehindIt)
{
    type("l4/5 r stiff 1. t3 right");
    QPushButton *segment = answer(QStringLiteral("T3/T4"));
    ASSERT_NE(segment, nullptr);
    segment->setFocus();
    QTest::keyClick(segment, Qt::Key_Return);
    QCoreApplication::processEvents();
    EXPECT_TRUE(line().hasFocus());
    QTest::keyClicks(&line(), QStringLiteral("stiff 2"));
    enter();
    ASSERT_EQ(findings().size(), 2U) << line().text().toStdString();
    EXPECT_EQ(findings()[1].place, (Place{StructureId{"t3-t4"}, Side::Right}));
}

TEST_F(LineBarTest, UpGoesBackAndDownForthToWhatWasBeingTyped)
{
    type("r piriformis tender 2");
    enter();
    type("l psoas ten");
    QTest::keyClick(&line(), Qt::Key_Up);
    EXPECT_EQ(line().text(), QStringLiteral("r piriformis tender 2"));
    QTest::keyClick(&line(), Qt::Key_Down);
    EXPECT_EQ(line().text(), QStringLiteral("l psoas ten"));
}

TEST_F(LineBarTest, WhereItIsFeltAsWellIsShownBeforeItIsRecorded)
{
    type("piriformis r tender 3 refers to l heel");
    ASSERT_EQ(chips(QStringLiteral("read")).size(), 1);
    EXPECT_TRUE(chips(QStringLiteral("read")).front().contains(QStringLiteral("left")))
        << chips(QStringLiteral("read")).front().toStdString();
}

TEST_F(LineBarTest, NamesAreOfferedAsTheyBegin)
{
    type("r piri");
    QPushButton *offered = nullptr;
    for (auto *button : window().line().findChildren<QPushButton *>())
        if (button->property("chip").toString() == QStringLiteral("offer")
            && button->text().contains(QStringLiteral("piriformis")))
            offered = button;
    ASSERT_NE(offered, nullptr);
    QTest::keyClick(&line(), Qt::Key_Down);
    EXPECT_TRUE(window().line().isAncestorOf(QApplication::focusWidget())) << "Down goes to what is asked or offered";
    EXPECT_FALSE(line().hasFocus());
    QTest::mouseClick(offered, Qt::LeftButton);
    QCoreApplication::processEvents();
    EXPECT_TRUE(line().text().startsWith(QStringLiteral("r piriformis"))) << line().text().toStdString();
    EXPECT_TRUE(line().hasFocus());
}

TEST_F(LineBarTest, LaterWordsOfAPlaceStandBesideTheEarlierOnes)
{
    type("r piriformis tender 2");
    enter();
    type("r piriformis stuck 1 ropy");
    enter();
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].tenderness, Tenderness{2});
    EXPECT_EQ(findings()[0].restriction, Restriction{1});
    EXPECT_EQ(findings()[0].texture, std::vector<std::string>{"ropy"});
}

TEST_F(LineBarTest, ThePageOfHelpIsThere)
{
    QTest::mouseClick(button(QStringLiteral("How to type")), Qt::LeftButton);
    ASSERT_NE(window().help().window(), nullptr);
    const QString text = window().help().window()->view().toPlainText();
    EXPECT_GT(text.size(), 600);
    EXPECT_TRUE(text.contains(QStringLiteral("tender")));
}

} // namespace raphe::test
