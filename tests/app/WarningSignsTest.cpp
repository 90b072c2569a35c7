// Warning signs in the window: asked by mouse and by keys, a yes stops the work, and an emergency cannot be passed.
#include "tests/app/InNext.h"
#include "tests/app/Window.h"

#include "app/raphe/intake/CautionsDialog.h"
#include "app/raphe/intake/DecisionDialog.h"
#include "app/raphe/intake/WarningsDialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>

namespace raphe::test {

namespace {

class WarningSignsInWindow : public WindowTest {
protected:
    [[nodiscard]] SafetyBanner &banner() { return *window().findChild<SafetyBanner *>(); }
    [[nodiscard]] QString bannerWords() { return banner().findChild<QLabel *>()->text(); }
    [[nodiscard]] static QPushButton *button(const QWidget &in, const QString &start)
    {
        for (auto *b : in.findChildren<QPushButton *>())
            if (b->window() == in.window() && (b->accessibleName().startsWith(start) || b->text() == start))
                return b;
        throw std::runtime_error("no button " + start.toStdString());
    }
    [[nodiscard]] const WarningSign &sign(const char *id) { return *adviser().rules().signs().find(id); }
    [[nodiscard]] QPushButton *answer(const QWidget &dialog, const char *id, const char *word)
    {
        return button(dialog, QString::fromUtf8(word) + QStringLiteral(": ") + QString::fromStdString(sign(id).ask));
    }
    void ask(const std::function<void(WarningsDialog &)> &act)
    {
        inNext<WarningsDialog>(act);
        banner().ask();
    }
    void decide(QPushButton *yes, const char *why, const char *told)
    {
        inNext<DecisionDialog>([=](DecisionDialog &dialog) {
            const auto fields = dialog.findChildren<QLineEdit *>();
            for (QLineEdit *field : fields) {
                if (field->accessibleName() == QStringLiteral("Why"))
                    field->setText(QString::fromUtf8(why));
                if (field->accessibleName() == QStringLiteral("Who was told"))
                    field->setText(QString::fromUtf8(told));
            }
            QTest::mouseClick(button(dialog, QStringLiteral("Record")), Qt::LeftButton);
            if (dialog.isVisible())
                dialog.reject();
        });
        QTest::mouseClick(yes, Qt::LeftButton);
    }
    [[nodiscard]] const WarningAnswer *answered(const char *id)
    {
        for (const WarningAnswer &a : session().visit().warnings)
            if (a.sign == id)
                return &a;
        return nullptr;
    }
};

} // namespace

TEST_F(WarningSignsInWindow, NoToAllInFewStrokesByKeys)
{
    const std::size_t due = session().warningsToAsk().size();
    EXPECT_GT(due, 20U);
    EXPECT_TRUE(button(banner(), QStringLiteral("Warning signs: %1").arg(due)));
    int strokes = 1; // the key that asks
    ask([&](WarningsDialog &dialog) {
        QApplication::setActiveWindow(&dialog);
        for (int guard = 0; guard < 400 && !session().warningsToAsk().empty(); ++guard) {
            auto *focus = qobject_cast<QPushButton *>(QApplication::focusWidget());
            if (focus && focus->text().startsWith(QStringLiteral("No to all")) && focus->isEnabled()) {
                QTest::keyClick(focus, Qt::Key_Space);
                ++strokes;
                auto *list = focus->parentWidget();
                for (auto *b : dialog.findChildren<QPushButton *>())
                    if (b->text().startsWith(QStringLiteral("No to all")) && b->isEnabled() && b->parentWidget() != list) {
                        b->setFocus();
                        break;
                    }
            } else {
                QTest::keyClick(&dialog, Qt::Key_Tab);
            }
        }
        dialog.accept();
    });
    EXPECT_TRUE(session().warningsToAsk().empty());
    EXPECT_FALSE(session().isLocked());
    EXPECT_LE(strokes, 8) << "one for each group";
    EXPECT_EQ(session().visit().warnings.size(), due);
    ASSERT_TRUE(session().saveNow());
}

TEST_F(WarningSignsInWindow, AnEmergencyLocksTheVisitForGood)
{
    session().aimAt({{{"soleus"}, Side::Right}, {}, {}});
    session().setTenderness(3);
    ask([&](WarningsDialog &dialog) {
        decide(answer(dialog, "chest-pain-now", "Yes"), "crushing since this morning", "");
        EXPECT_FALSE(answered("chest-pain-now")) << "nobody was told: not recorded";
        decide(answer(dialog, "chest-pain-now", "Yes"), "crushing since this morning", "emergency service");
        ASSERT_TRUE(answered("chest-pain-now"));
        EXPECT_FALSE(answer(dialog, "chest-pain-now", "No")->isEnabled());
        dialog.accept();
    });
    EXPECT_TRUE(session().isLocked());
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("STOP"))) << bannerWords().toStdString();
    const auto nothingIsOffered = [&] {
        const auto advice = adviser().advise(session().visit(), "visit");
        ASSERT_TRUE(advice.ok());
        EXPECT_TRUE(advice.value().isLocked());
        EXPECT_TRUE(advice.value().treatment.treat.empty());
        EXPECT_TRUE(advice.value().reasons.check.empty());
    };
    nothingIsOffered();
    // Undo takes back findings, not the answer.
    while (session().undoStack().canUndo())
        session().undoStack().undo();
    nothingIsOffered();
    EXPECT_EQ(session().answerWarning({"chest-pain-now", false, session().visit().date, {}, {}, {}, {}}).error().code,
        ErrorCode::NotAllowed);
    // Reopened, and in another visit of the same day.
    const auto visit = session().visitId();
    const auto patient = session().patientId();
    session().close();
    ASSERT_TRUE(session().open(visit).ok());
    nothingIsOffered();
    const auto second = session().startVisit(patient);
    ASSERT_TRUE(second.ok());
    ASSERT_TRUE(session().open(second.value()).ok());
    nothingIsOffered();
    ASSERT_TRUE(session().markInError("opened by mistake").ok());
    const auto third = session().startVisit(patient);
    ASSERT_TRUE(third.ok());
    ASSERT_TRUE(session().open(third.value()).ok());
    nothingIsOffered();
    ASSERT_TRUE(session().sign("").ok());
    ASSERT_TRUE(session().beginAmendment().ok());
    EXPECT_FALSE(session().answerWarning({"chest-pain-now", false, session().visit().date, {}, {}, {}, {}}).ok());
    nothingIsOffered();
}

TEST_F(WarningSignsInWindow, ASignOfALowerLevelWaitsForTheDecision)
{
    session().aimAt({{{"gastrocnemius-medial-head"}, Side::Right}, {}, {}});
    ask([&](WarningsDialog &dialog) {
        inNext<DecisionDialog>([](DecisionDialog &decision) {
            QTest::mouseClick(button(decision, QStringLiteral("Not decided yet")), Qt::LeftButton);
        });
        QTest::mouseClick(answer(dialog, "fever-now", "Yes"), Qt::LeftButton);
        EXPECT_TRUE(session().isLocked()) << "not decided";
        dialog.accept();
    });
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("write down what was decided"))) << bannerWords().toStdString();
    ask([&](WarningsDialog &dialog) {
        QTest::mouseClick(answer(dialog, "past-cancer", "No"), Qt::LeftButton);
        decide(answer(dialog, "past-cancer", "Yes"), "breast, 2012, discharged", "");
        dialog.accept();
    });
    ASSERT_TRUE(answered("past-cancer"));
    EXPECT_EQ(answered("past-cancer")->decided, Decision::Referred);
    EXPECT_TRUE(session().isLocked()) << "the fever is still undecided";
    ask([&](WarningsDialog &dialog) {
        decide(answer(dialog, "fever-now", "Yes"), "since yesterday, 38.6", "the surgery");
        dialog.accept();
    });
    ASSERT_TRUE(answered("fever-now"));
    EXPECT_EQ(answered("fever-now")->decided, Decision::CareSameDay) << "what is there can be decided later";
}

TEST_F(WarningSignsInWindow, WhatWasAnsweredBeforeHoldsAsLongAsItIsFresh)
{
    for (const WarningSign *due : session().warningsToAsk())
        ASSERT_TRUE(session().answerWarning({due->id, false, session().visit().date, {}, {}, {}, {}}).ok());
    ASSERT_TRUE(session().saveNow());
    const auto next = session().startVisit(session().patientId());
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    EXPECT_TRUE(session().visit().warnings.empty()) << "an answer stands where it was given";
    EXPECT_TRUE(session().warningsToAsk().empty()) << "asked today";
}

TEST_F(WarningSignsInWindow, ASignWithAPlaceAsksWhere)
{
    session().aimAt({{{"sural-region-medial"}, Side::Left}, {}, {}});
    session().toggleComplaint();
    ask([&](WarningsDialog &dialog) {
        decide(answer(dialog, "leg-clot-suspicion", "Yes"), "swollen since the flight", "the surgery");
        dialog.accept();
    });
    ASSERT_TRUE(answered("leg-clot-suspicion"));
    EXPECT_EQ(answered("leg-clot-suspicion")->at, (std::vector<Place>{{{"sural-region-medial"}, Side::Left}}));
    const auto cautions = Cautions::of(adviser().rules(), *knowledge().regions, session().visit(), "visit");
    ASSERT_TRUE(cautions.ok());
    EXPECT_TRUE(cautions.value().isBarred({{"soleus"}, Side::Left}));
    EXPECT_FALSE(cautions.value().isBarred({{"soleus"}, Side::Right}));
}

TEST_F(WarningSignsInWindow, ALimbIsAskedForWhereverElseItHurts)
{
    session().aimAt({{{"lumbar-region-medial"}, Side::Left}, {}, {}});
    session().toggleComplaint();
    const auto places = session().placesFor(sign("leg-clot-suspicion"));
    ASSERT_GE(places.size(), 2U);
    EXPECT_GE(session().placesFor(sign("arm-swollen-blue")).size(), 2U);
    EXPECT_GE(session().placesFor(sign("compartment-signs")).size(), 4U) << "arms and legs";
    for (const auto &[place, name] : places)
        EXPECT_FALSE(name.contains(QStringLiteral("back"))) << name.toStdString();
    for (const auto &[place, name] : places) {
        WarningAnswer there{
            "leg-clot-suspicion", true, session().visit().date, {place}, Decision::CareSameDay, "swollen", "surgery"};
        Visit visit = session().visit();
        visit.warnings = {there};
        const auto cautions = Cautions::of(adviser().rules(), *knowledge().regions, visit, "visit");
        ASSERT_TRUE(cautions.ok());
        EXPECT_TRUE(cautions.value().isBarred({{"soleus"}, place.side})) << name.toStdString();
    }
    ASSERT_TRUE(session().answerWarning({"chest-pain-now", true, session().visit().date, {}, {}, {}, {}}).ok());
    banner().refresh();
    EXPECT_TRUE(bannerWords().startsWith(QStringLiteral("STOP: Chest pain"))) << "what locks, before what only stops a technique";
}

// What the record lets suspect becomes a condition of record and visit in one stroke, and is not asked again.
TEST_F(WarningSignsInWindow, AReminderIsTakenOverInOneStroke)
{
    PatientRecord record = session().record();
    record.medicines = {"apixaban 5 mg"};
    ASSERT_TRUE(session().practice().savePatient(session().patientId(), record).ok());
    ASSERT_TRUE(session().rereadRecord().ok());
    const std::size_t before = session().reminders().size();
    ASSERT_GT(before, 0U);
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("apixaban"))) << bannerWords().toStdString();
    inNext<CautionsDialog>([&](CautionsDialog &dialog) {
        QTest::mouseClick(button(dialog, QStringLiteral("It is so: takes a blood thinner")), Qt::LeftButton);
        QCoreApplication::processEvents();
        EXPECT_EQ(session().reminders().size(), before - 1);
        dialog.accept();
    });
    QTest::mouseClick(button(banner(), QStringLiteral("What it means")), Qt::LeftButton);
    EXPECT_EQ(session().visit().conditions.back().id, "anticoagulant");
    EXPECT_EQ(stored().conditions, (std::vector<Condition>{{"anticoagulant", {}}}));
    const auto kept = session().practice().patient(session().patientId());
    ASSERT_TRUE(kept.ok());
    ASSERT_EQ(kept.value().conditions.size(), 1U);
    EXPECT_NE(kept.value().conditions.front().note.find("apixaban"), std::string::npos) << "why it was taken over";
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("blood thinner"), Qt::CaseInsensitive));
}

} // namespace raphe::test
