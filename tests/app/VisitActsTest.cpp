// Signing, amending, marking as an error and moving, by the buttons; and that a signed visit does not change.
#include "tests/app/Window.h"

#include <QAction>
#include <QComboBox>
#include <QInputDialog>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QStatusBar>
#include <QTimer>
#include <QToolButton>

namespace raphe::test {

namespace {

class VisitActs : public WindowTest {
protected:
    QToolButton *acts()
    {
        for (auto *b : window().visitPanel().findChildren<QToolButton *>())
            if (b->popupMode() == QToolButton::MenuButtonPopup)
                return b;
        return nullptr;
    }
    QStringList offered()
    {
        QStringList out;
        for (const QAction *action : acts()->menu()->actions())
            if (action->isVisible())
                out << action->text();
        return out;
    }
    /// Chooses from the menu; answers the question that comes up with `reason`, if one does.
    void choose(const QString &text, const QString &reason = {})
    {
        bool asked = false;
        QTimer answer;
        QObject::connect(&answer, &QTimer::timeout, [&] {
            if (auto *dialog = qobject_cast<QInputDialog *>(QApplication::activeModalWidget())) {
                asked = true;
                dialog->setTextValue(reason);
                reason.isEmpty() ? dialog->reject() : dialog->accept();
            }
        });
        answer.start(10);
        for (QAction *action : acts()->menu()->actions())
            if (action->isVisible() && action->text() == text) {
                action->trigger();
                m_asked = asked;
                return;
            }
        ADD_FAILURE() << "'" << text.toStdString() << "' is not offered";
    }
    QString visitWords()
    {
        for (const auto *box : window().visitPanel().findChildren<QComboBox *>())
            if (box->accessibleName() == QLatin1String("Visit"))
                return box->currentText();
        return {};
    }
    bool m_asked = false;
};

} // namespace

TEST_F(VisitActs, ASignedVisitStaysAsItIsUntilItIsAmended)
{
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    key(Qt::Key_3);
    ASSERT_EQ(findings().size(), 1U);
    QTest::mouseClick(acts(), Qt::LeftButton, {}, QPoint(10, 10)); // the button itself signs
    EXPECT_EQ(session().state(), VisitState::Signed);
    EXPECT_TRUE(visitWords().endsWith(QLatin1String("signed"))) << visitWords().toStdString();
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    key(Qt::Key_1);
    EXPECT_EQ(findings().front().tenderness->grade, 3);
    EXPECT_TRUE(window().statusBar()->currentMessage().contains(QLatin1String("signed")));
    EXPECT_TRUE(window().visitPanel().findChild<QPlainTextEdit *>()->isReadOnly());
    EXPECT_EQ(stored().findings.front().tenderness->grade, 3);

    choose(QStringLiteral("Amend"));
    EXPECT_EQ(session().state(), VisitState::Amending);
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    key(Qt::Key_1);
    EXPECT_EQ(findings().front().tenderness->grade, 1);
    choose(QStringLiteral("Sign"), {});
    EXPECT_TRUE(m_asked) << "an amendment needs a reason";
    EXPECT_EQ(session().state(), VisitState::Amending) << "without one nothing happens";
    choose(QStringLiteral("Sign"), QStringLiteral("a slip of the hand"));
    EXPECT_EQ(session().state(), VisitState::Signed);
    const auto history = session().practice().history(session().visitId()).value();
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[1].reason, "a slip of the hand");
    EXPECT_NE(history[0].document, history[1].document);
}

TEST_F(VisitActs, AnAmendmentCanBeGivenUp)
{
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    key(Qt::Key_3);
    choose(QStringLiteral("Sign"));
    choose(QStringLiteral("Amend"));
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    key(Qt::Key_0);
    choose(QStringLiteral("Give the amendment up"));
    EXPECT_EQ(session().state(), VisitState::Signed);
    EXPECT_EQ(findings().front().tenderness->grade, 3);
}

TEST_F(VisitActs, AVisitInErrorStaysAndIsMarked)
{
    choose(QStringLiteral("Entered in error ..."), QStringLiteral("another person's"));
    EXPECT_EQ(session().state(), VisitState::InError);
    EXPECT_TRUE(visitWords().endsWith(QLatin1String("in error")));
    EXPECT_EQ(offered(), QStringList{QStringLiteral("History ...")});
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    key(Qt::Key_3);
    EXPECT_TRUE(findings().empty());
}

TEST_F(VisitActs, ALateEntryNeedsAReason)
{
    Visit visit = session().visit();
    visit.date = "2026-01-07";
    const auto id = session().practice().addVisit(session().patientId(), writeVisit(visit));
    ASSERT_TRUE(session().open(id.value()).ok());
    choose(QStringLiteral("Sign"), {});
    EXPECT_TRUE(m_asked);
    EXPECT_EQ(session().state(), VisitState::Draft);
    choose(QStringLiteral("Sign"), QStringLiteral("the power was out"));
    EXPECT_EQ(session().state(), VisitState::Signed);
    const auto history = session().practice().history(session().visitId()).value();
    ASSERT_EQ(history.size(), 1U);
    EXPECT_EQ(history[0].kind, EntryKind::Late);
    EXPECT_EQ(history[0].careAt, "2026-01-07");
}

TEST_F(VisitActs, AMovedDraftNamesItsNewPatient)
{
    PatientRecord other;
    other.name = "Right One";
    const auto to = session().practice().addPatient(other).value();
    const auto visit = session().visitId();
    ASSERT_TRUE(session().moveTo(to, "wrong name chosen").ok());
    EXPECT_EQ(session().patientId(), to);
    EXPECT_EQ(session().visitId(), visit);
    EXPECT_EQ(session().visit().patient->name, "Right One");
    EXPECT_EQ(stored().patient->name, "Right One");
}

// The guard asks once: 'look again' leaves the visit open, 'intended' signs and is kept.
TEST_F(VisitActs, OppositeSidesAreAskedOnceAtSigning)
{
    session().aimAt({{StructureId{"deltoid-region"}, Side::Right}, {}, {}});
    session().toggleComplaint();
    session().aimAt({{StructureId{"supraspinatus"}, Side::Left}, {}, {}});
    session().setTenderness(3);
    QString asked;
    int times = 0;
    const auto answer = [&](const QString &button) {
        QTimer::singleShot(0, [&, button] {
            auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
            ASSERT_TRUE(box);
            ++times;
            asked = box->text();
            for (QAbstractButton *b : box->buttons())
                if (b->text() == button)
                    b->click();
        });
        choose(QStringLiteral("Sign"));
    };
    answer(QStringLiteral("Look again"));
    EXPECT_TRUE(asked.contains(QStringLiteral("complaint is on the RIGHT, everything found is on the LEFT")))
        << asked.toStdString();
    EXPECT_EQ(session().state(), VisitState::Draft);
    EXPECT_FALSE(session().visit().sidesIntended);
    answer(QStringLiteral("Intended: sign"));
    EXPECT_EQ(session().state(), VisitState::Signed);
    EXPECT_TRUE(stored().sidesIntended);
    choose(QStringLiteral("Amend"));
    EXPECT_FALSE(session().sidesToAsk()) << "it was meant so";
    EXPECT_EQ(times, 2);
}

} // namespace raphe::test
