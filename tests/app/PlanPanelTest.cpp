// The plan beside the body: it follows what is found and wanted, keeps what was changed by hand with the visit, and says why.
#include "tests/app/Window.h"

#include "core/plan/PlanWords.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QMenu>
#include <QSlider>
#include <QToolButton>

#include <algorithm>
#include <set>

namespace raphe::test {

namespace {

Place at(const char *id, Side side)
{
    return {StructureId{id}, side};
}

class PlanOfVisit : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        find(at("gluteus-maximus", Side::Right), 3);
        find(at("piriformis", Side::Right), 2);
        find(at("latissimus-dorsi", Side::Left), 2);
        find(at("soleus", Side::Left), 1);
        key(Qt::Key_W);
        key(Qt::Key_W);
        ASSERT_TRUE(panel().isVisible());
    }

    PlanPanel &panel() { return window().planPanel(); }
    const SessionPlan &plan() { return panel().plan(); }
    PlanModel &model() { return *qobject_cast<PlanModel *>(panel().view().model()); }
    void find(const Place &place, int grade)
    {
        session().aimAt({place, {}, {}});
        session().setTenderness(grade);
    }
    void minutes(int value) { panel().minutes().setValue(value); }
    void choose(const Place &place) { panel().view().setCurrentIndex(model().index(rowOf(place))); }
    int rowOf(const Place &place)
    {
        for (int row = 0; row < model().rowCount(); ++row)
            if (model().place(row) == place)
                return row;
        ADD_FAILURE() << "not in the list: " << place.structure.value;
        return -1;
    }
    int step(const Place &place)
    {
        const auto it =
            std::find_if(plan().steps.begin(), plan().steps.end(), [&](const PlannedStep &s) { return s.place == place; });
        return it == plan().steps.end() ? -1 : static_cast<int>(it - plan().steps.begin());
    }
    QMenu &menuOf(const char *name)
    {
        for (auto *b : panel().findChildren<QToolButton *>())
            if (b->accessibleName().startsWith(QLatin1String(name)))
                return *b->menu();
        throw std::runtime_error(std::string("no menu ") + name);
    }
    static QAction *actionOf(QMenu &menu, const char *text)
    {
        Q_EMIT menu.aboutToShow();
        for (QAction *action : menu.actions())
            if (action->text().startsWith(QLatin1String(text)))
                return action;
        ADD_FAILURE() << "no action " << text;
        return nullptr;
    }
    bool isSaid(const QString &words)
    {
        const auto labels = panel().findChildren<QLabel *>();
        return std::any_of(
            labels.begin(), labels.end(), [&](const QLabel *l) { return l->isVisible() && l->text().contains(words); });
    }
};

} // namespace

TEST_F(PlanOfVisit, ShowsEachStepWithItsReasonsAndWhatIsLeftOut)
{
    const QAbstractItemModelTester tester(&model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    minutes(60);
    ASSERT_EQ(plan().steps.size(), 4U);
    int number = 0;
    for (const PlannedStep &step : plan().steps) {
        const int row = rowOf(step.place);
        const QString title = model().index(row).data().toString();
        EXPECT_TRUE(title.startsWith(QString::number(++number))) << title.toStdString();
        EXPECT_TRUE(title.contains(QString::fromStdString(knowledge().atlas->spoken(step.place)))) << title.toStdString();
        const QString lines = model().index(row).data(PlanModel::FullLinesRole).toStringList().join(QLatin1Char('\n'));
        for (const std::string &why : step.why)
            EXPECT_TRUE(lines.contains(QString::fromStdString(why))) << why;
        EXPECT_TRUE(lines.contains(QString::fromStdString(positionInWords(step.position))));
        EXPECT_TRUE(lines.contains(QString::fromStdString(step.technique->caution)));
    }
    minutes(9);
    ASSERT_LT(plan().steps.size(), 4U);
    ASSERT_FALSE(plan().left.empty());
    EXPECT_EQ(model().index(rowOf(plan().left.front().place) - 1).data().toString(), QStringLiteral("Left out"));
    EXPECT_TRUE(isSaid(QStringLiteral("9 min until")));
    EXPECT_TRUE(isSaid(QStringLiteral("licensed care")));
}

TEST_F(PlanOfVisit, TheSliderPlansAtOnceAndIsKeptWithTheVisit)
{
    minutes(60);
    const std::size_t many = plan().steps.size();
    minutes(9);
    EXPECT_LT(plan().steps.size(), many);
    ASSERT_TRUE(session().open(session().visitId()).ok()); // leaving takes what the slider said last
    EXPECT_EQ(stored().plan.minutes, 9);
    EXPECT_EQ(panel().minutes().value(), 9);
}

TEST_F(PlanOfVisit, TheSliderIsKeptWhenItHasCometoRest)
{
    minutes(33);
    EXPECT_TRUE(QTest::qWaitFor([&] { return session().visit().plan.minutes == 33; }));
}

TEST_F(PlanOfVisit, WhatThePatientRefusesIsNotPlannedAnyMore)
{
    minutes(60);
    const Place first = plan().steps.front().place;
    const std::string technique = plan().steps.front().technique->id;
    choose(first);
    actionOf(menuOf("Another technique"), "Patient says no")->trigger();
    for (const PlannedStep &step : plan().steps)
        EXPECT_NE(step.technique->id, technique);
    EXPECT_EQ(stored().plan.refused, (std::set<std::string>{technique}));
    QMenu &unwanted = *menuOf("Positions that").findChild<QMenu *>();
    Q_EMIT unwanted.aboutToShow();
    const auto actions = unwanted.actions();
    const auto ticked = std::find_if(actions.begin(), actions.end(), [](const QAction *a) { return a->isChecked(); });
    ASSERT_NE(ticked, actions.end());
    (*ticked)->trigger();
    EXPECT_TRUE(stored().plan.refused.empty()) << "the patient thought again";
}

TEST_F(PlanOfVisit, AStepIsPinnedDroppedAndMovedByKeys)
{
    minutes(60);
    const Place soleus = at("soleus", Side::Left);
    choose(soleus);
    key(Qt::Key_P);
    EXPECT_EQ(stored().plan.pinned, (std::set<Place>{soleus}));
    minutes(9);
    EXPECT_GE(step(soleus), 0) << "the mildest would have no room";
    choose(soleus);
    key(Qt::Key_D);
    EXPECT_EQ(step(soleus), -1);
    EXPECT_EQ(stored().plan.dropped, (std::set<Place>{soleus}));
    EXPECT_TRUE(stored().plan.pinned.empty());
    key(Qt::Key_D);
    EXPECT_TRUE(stored().plan.dropped.empty());

    minutes(60);
    const Place second = plan().steps[1].place;
    const Place first = plan().steps[0].place;
    choose(second);
    panel().view().setFocus();
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_LT(step(second), step(first));
    EXPECT_EQ(stored().plan.ordered, (std::vector<std::pair<Place, Place>>{{second, first}}));
    EXPECT_EQ(*model().place(panel().view().currentIndex().row()), second) << "the moved step stays the chosen one";
    panel().view().setFocus();
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_LT(step(first), step(second));
    EXPECT_EQ(stored().plan.ordered.size(), 1U) << "moving back says the opposite and no more";
    actionOf(menuOf("Positions that"), "Take back")->trigger();
    EXPECT_TRUE(stored().plan.ordered.empty());
    EXPECT_EQ(stored().plan.minutes, 60);
}

TEST_F(PlanOfVisit, APositionThatIsNotOpenIsNotUsedAndStaysClosedAtTheNextVisit)
{
    minutes(60);
    QAction *prone = actionOf(menuOf("Positions that"), "Lying face down");
    ASSERT_TRUE(prone && prone->isChecked());
    prone->trigger();
    for (const PlannedStep &step : plan().steps)
        EXPECT_NE(step.position, Position::Prone);
    EXPECT_EQ(stored().plan.barred, (std::set<Position>{Position::Prone}));
    ASSERT_TRUE(session().startVisit(session().patientId()).ok());
    EXPECT_EQ(session().visit().plan.barred, (std::set<Position>{Position::Prone}));
    EXPECT_FALSE(actionOf(menuOf("Positions that"), "Lying face down")->isChecked());
}

TEST_F(PlanOfVisit, ATechniqueCanBeChosenForAStepAndGivenBack)
{
    minutes(60);
    const Place glute = at("gluteus-maximus", Side::Right);
    choose(glute);
    const std::string usual = plan().steps[static_cast<std::size_t>(step(glute))].technique->id;
    ASSERT_NE(usual, "gliding");
    actionOf(menuOf("Another technique"), "Gliding")->trigger();
    ASSERT_GE(step(glute), 0);
    EXPECT_EQ(plan().steps[static_cast<std::size_t>(step(glute))].technique->id, "gliding");
    EXPECT_EQ(stored().plan.byHand, (std::map<Place, std::string>{{glute, "gliding"}}));
    actionOf(menuOf("Another technique"), "As it suits")->trigger();
    EXPECT_EQ(plan().steps[static_cast<std::size_t>(step(glute))].technique->id, usual);
    EXPECT_TRUE(stored().plan.byHand.empty());
}

TEST_F(PlanOfVisit, WhatWasWorkedYesterdayRests)
{
    session().aimAt({at("gluteus-medius", Side::Right), {}, {}});
    session().setRestriction(2);
    minutes(60);
    const Place place = at("gluteus-medius", Side::Right);
    ASSERT_GE(step(place), 0);
    const Technique usual = *plan().steps[static_cast<std::size_t>(step(place))].technique;
    ASSERT_TRUE(usual.deep) << "the case wants deep work";
    Visit yesterday;
    yesterday.date = QDate::currentDate().addDays(-1).toString(Qt::ISODate).toStdString();
    TreatmentStep worked;
    worked.place = place;
    worked.technique = usual.id;
    worked.began = "10:00:00";
    worked.seconds = 90;
    yesterday.treatment.steps = {worked};
    ASSERT_TRUE(session().practice().addVisit(session().patientId(), writeVisit(yesterday)).ok());
    const auto id = session().practice().addVisit(session().patientId(), writeVisit(session().visit()));
    ASSERT_TRUE(id.ok());
    ASSERT_TRUE(session().open(id.value()).ok());
    ASSERT_EQ(session().pastTreatments().size(), 1U);
    EXPECT_EQ(session().pastTreatments()[0].daysAgo, 1);
    EXPECT_TRUE(step(place) < 0 || !plan().steps[static_cast<std::size_t>(step(place))].technique->deep);
}

TEST_F(PlanOfVisit, AChosenStepIsAimedAt)
{
    choose(at("piriformis", Side::Right));
    ASSERT_TRUE(session().aim());
    EXPECT_EQ(session().aim()->place, at("piriformis", Side::Right));
}

TEST_F(PlanOfVisit, AnEmergencyEmptiesThePlanAndSaysWhy)
{
    minutes(60);
    ASSERT_FALSE(plan().steps.empty());
    ASSERT_TRUE(session()
                    .answerWarning({"chest-pain-now", true, session().visit().date, {}, Decision::EmergencyServices,
                        "pressure since noon", "emergency service"})
                    .ok());
    EXPECT_TRUE(plan().steps.empty());
    ASSERT_FALSE(plan().told.empty());
    EXPECT_TRUE(isSaid(QString::fromStdString(plan().told.back())));
}

TEST_F(PlanOfVisit, ASignedVisitShowsItsPlanAndChangesNothing)
{
    minutes(25);
    const auto signing = session().sign({});
    ASSERT_TRUE(signing.ok()) << inWords(signing.error());
    const Visit before = session().visit();
    EXPECT_EQ(before.plan.minutes, 25) << "what the slider said last is signed as well";
    EXPECT_FALSE(panel().minutes().isEnabled());
    choose(plan().steps.front().place);
    key(Qt::Key_P);
    key(Qt::Key_D);
    panel().move(1);
    panel().refuse();
    EXPECT_EQ(session().visit().plan, before.plan);
}

} // namespace raphe::test
