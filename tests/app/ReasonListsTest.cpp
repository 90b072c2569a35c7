// The three lists beside the map: what would explain it, what to check, what to treat. They follow each finding, lead to a
// place and light the way to it, keep what the practitioner thinks of a row, and respect the caution rules.
#include "tests/app/Window.h"

#include <QAbstractItemModelTester>
#include <QInputDialog>
#include <QLabel>
#include <QListView>
#include <QMap>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTimer>

#include <algorithm>
#include <array>
#include <random>
#include <set>

namespace raphe::test {

namespace {

constexpr std::array allLists{AdviceList::Explain, AdviceList::Check, AdviceList::Treat};

Place right(const char *id)
{
    return {StructureId{id}, Side::Right};
}

Place left(const char *id)
{
    return {StructureId{id}, Side::Left};
}

QString spoken(const Place &place)
{
    return QString::fromStdString(knowledge().atlas->spoken(place));
}

// 'left' for 'right' and the reverse, wherever they stand as words.
QString sidesSwapped(const QString &text)
{
    static const QRegularExpression word(QStringLiteral("\\b(left|right|Left|Right)\\b"));
    static const QMap<QString, QString> other{{QStringLiteral("left"), QStringLiteral("right")},
        {QStringLiteral("right"), QStringLiteral("left")}, {QStringLiteral("Left"), QStringLiteral("Right")},
        {QStringLiteral("Right"), QStringLiteral("Left")}};
    QString out;
    qsizetype from = 0;
    for (auto it = word.globalMatch(text); it.hasNext();) {
        const auto match = it.next();
        out += text.mid(from, match.capturedStart() - from) + other[match.captured()];
        from = match.capturedEnd();
    }
    return out + text.mid(from);
}

class ReasonLists : public WindowTest {
protected:
    static ReasonPanel &panelOf(MainWindow &window) { return *window.findChild<ReasonPanel *>(); }
    ReasonPanel &panel() { return panelOf(window()); }
    QListView &view(AdviceList list) { return panel().view(list); }
    ReasonModel &model(AdviceList list) { return modelOf(panel(), list); }
    static ReasonModel &modelOf(ReasonPanel &panel, AdviceList list)
    {
        return *qobject_cast<ReasonModel *>(panel.view(list).model());
    }

    /// Titles and lines of all rows, in order.
    static QStringList rowsOf(ReasonPanel &panel, AdviceList list)
    {
        ReasonModel &model = modelOf(panel, list);
        QStringList rows;
        for (int row = 0; row < model.rowCount(); ++row) {
            const QModelIndex index = model.index(row);
            rows << index.data().toString() + QStringLiteral(" | ")
                    + index.data(ReasonModel::FullLinesRole).toStringList().join(QStringLiteral(" / "));
        }
        return rows;
    }
    QStringList rows(AdviceList list) { return rowsOf(panel(), list); }

    int rowOf(AdviceList list, const Place &place)
    {
        for (int row = 0; row < model(list).rowCount(); ++row)
            if (const Suggestion *s = model(list).suggestion(row); s && s->place == place)
                return row;
        return -1;
    }
    QString title(AdviceList list, int row) { return model(list).index(row).data().toString(); }
    int rowTitled(AdviceList list, const char *text)
    {
        for (int row = 0; row < model(list).rowCount(); ++row)
            if (title(list, row) == QLatin1String(text))
                return row;
        return -1;
    }
    /// The first row that offers something; -1 when there is none.
    int firstOffered(AdviceList list)
    {
        for (int row = 0; row < model(list).rowCount(); ++row)
            if (model(list).suggestion(row))
                return row;
        return -1;
    }

    void find(const Place &place, int grade)
    {
        session().aimAt({place, {}, {}});
        session().setTenderness(grade);
    }
    void findThree()
    {
        find(right("gluteus-maximus"), 3);
        find(right("piriformis"), 2);
        find(left("latissimus-dorsi"), 1);
    }
    void showLists()
    {
        if (!panel().isVisible())
            key(Qt::Key_W);
        ASSERT_TRUE(panel().isVisible());
    }
    QPoint pixelOf(AdviceList list, int row)
    {
        view(list).scrollTo(model(list).index(row));
        return view(list).visualRect(model(list).index(row)).center();
    }
    void click(AdviceList list, int row) { QTest::mouseClick(view(list).viewport(), Qt::LeftButton, {}, pixelOf(list, row)); }

    /// Opens this visit as a new one of the patient.
    void open(const Visit &visit)
    {
        const auto id = session().practice().addVisit(session().patientId(), writeVisit(visit));
        ASSERT_TRUE(id.ok());
        ASSERT_TRUE(session().open(id.value()).ok());
    }

    QString notice()
    {
        for (auto *label : panel().findChildren<QLabel *>())
            if (!label->isHidden()
                && (label->text().startsWith(QLatin1String("STOP")) || label->text().startsWith(QLatin1String("Caution"))))
                return label->text();
        return {};
    }

    static Visit rich()
    {
        Visit visit;
        visit.patient = Patient{"Test Patient", "1980-01-01"};
        const auto tender = [&](const Place &place, int grade) {
            Finding f;
            f.place = place;
            f.tenderness = Tenderness{grade};
            visit.findings.push_back(f);
        };
        tender(right("gluteus-maximus"), 3);
        visit.findings.back().familiar = true;
        tender(left("latissimus-dorsi"), 1);
        tender(right("piriformis"), 2);
        tender(left("tensor-fasciae-latae"), 2);
        Finding stiff;
        stiff.place = right("sacroiliac-joint");
        stiff.restriction = Restriction{2};
        stiff.certain = true;
        visit.findings.push_back(stiff);
        Finding clear;
        clear.place = left("gluteus-medius");
        clear.clear = {true, true};
        visit.findings.push_back(clear);
        visit.complaintAt = {right("gluteus-maximus")};
        visit.conditions = {{"consent-refused", {left("tensor-fasciae-latae")}}};
        return visit;
    }
};

} // namespace

TEST_F(ReasonLists, AreEmptyUntilSomethingIsFound)
{
    for (const AdviceList list : allLists)
        EXPECT_EQ(model(list).rowCount(), 0) << static_cast<int>(list);
    EXPECT_TRUE(notice().isEmpty()) << notice().toStdString();
    session().aimAt({right("gluteus-maximus"), {}, {}});
    session().setClear();
    EXPECT_EQ(model(AdviceList::Treat).rowCount(), 0) << "what is clear needs no treatment";
    EXPECT_EQ(model(AdviceList::Explain).rowCount(), 0);
}

TEST_F(ReasonLists, FollowEachFinding)
{
    for (const Place &place : {right("gluteus-maximus"), left("latissimus-dorsi"), right("piriformis")}) {
        find(place, 2);
        EXPECT_GE(rowOf(AdviceList::Treat, place), 0) << "the newest finding";
        EXPECT_LT(rowOf(AdviceList::Check, place), 0) << "what was examined is not to be checked again";
        for (const AdviceList list : allLists)
            EXPECT_GE(firstOffered(list), 0) << static_cast<int>(list);
    }
    EXPECT_GE(rowTitled(AdviceList::Explain, "Or nothing that was found explains it"), 0);
    session().undoStack().undo();
    EXPECT_LT(rowOf(AdviceList::Treat, right("piriformis")), 0);
    session().undoStack().setIndex(0);
    for (const AdviceList list : allLists)
        EXPECT_EQ(model(list).rowCount(), 0) << static_cast<int>(list);
}

TEST_F(ReasonLists, ModelsKeepTheirPromisesWhileFindingsComeAndGo)
{
    constexpr auto fatal = QAbstractItemModelTester::FailureReportingMode::Fatal;
    const QAbstractItemModelTester explain(&model(AdviceList::Explain), fatal);
    const QAbstractItemModelTester check(&model(AdviceList::Check), fatal);
    const QAbstractItemModelTester treat(&model(AdviceList::Treat), fatal);
    findThree();
    const Suggestion *first = model(AdviceList::Check).suggestion(firstOffered(AdviceList::Check));
    ASSERT_TRUE(first);
    const Place checked = first->place;
    session().judge({AdviceList::Check, checked, {}});
    session().judge({AdviceList::Treat, right("piriformis"), "too sore"});
    session().judge({AdviceList::Explain, right("gluteus-maximus"), "not likely"});
    session().selectFinding(1);
    session().removeFinding();
    session().undoStack().setIndex(0);
    session().undoStack().setIndex(session().undoStack().count());
    open(rich());
    session().aimAt({right("psoas-major"), {}, {}});
    session().setUnable("full bladder");
    EXPECT_GE(firstOffered(AdviceList::Treat), 0);
}

TEST_F(ReasonLists, TheKeyWTurnsToThemAndBack)
{
    EXPECT_FALSE(panel().isVisible());
    key(Qt::Key_W);
    EXPECT_TRUE(panel().isVisible());
    for (const AdviceList list : allLists)
        EXPECT_TRUE(view(list).isVisible());
    key(Qt::Key_W);
    EXPECT_FALSE(panel().isVisible());
}

TEST_F(ReasonLists, AChosenCheckIsAimedAtAndTheNextKeyRecordsIt)
{
    findThree();
    showLists();
    const int row = firstOffered(AdviceList::Check);
    ASSERT_GE(row, 0);
    const Place place = model(AdviceList::Check).suggestion(row)->place;
    click(AdviceList::Check, row);
    ASSERT_TRUE(session().aim());
    EXPECT_EQ(session().aim()->place, place);
    EXPECT_EQ(findings().size(), 3U) << "to choose is not to record";
    key(Qt::Key_2);
    ASSERT_EQ(findings().size(), 4U);
    EXPECT_EQ(findings().back().place, place);
    EXPECT_EQ(findings().back().tenderness, Tenderness{2});
    EXPECT_LT(rowOf(AdviceList::Check, place), 0);
    EXPECT_GE(rowOf(AdviceList::Treat, place), 0);
    EXPECT_EQ(stored().findings, findings());

    // The next row by the arrow keys alone, found clear.
    view(AdviceList::Check).setFocus();
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    ASSERT_NE(session().aim()->place, place) << "arrow keys choose";
    const Place next = session().aim()->place;
    EXPECT_GE(rowOf(AdviceList::Check, next), 0);
    key(Qt::Key_C);
    ASSERT_EQ(findings().size(), 5U);
    EXPECT_TRUE(findings().back().isClear());
    EXPECT_EQ(findings().back().place, next);
    EXPECT_LT(rowOf(AdviceList::Check, next), 0);
    EXPECT_LT(rowOf(AdviceList::Treat, next), 0);
}

TEST_F(ReasonLists, ARowUnderTheMouseLightsItsWay)
{
    findThree();
    showLists();
    for (const AdviceList list : allLists) {
        QSignalSpy shown(&panel(), &ReasonPanel::shown);
        QSignalSpy left(&panel(), &ReasonPanel::left);
        const int row = firstOffered(list);
        ASSERT_GE(row, 0);
        const Suggestion offered = *model(list).suggestion(row);
        QTest::mouseMove(view(list).viewport(), pixelOf(list, row));
        ASSERT_FALSE(shown.isEmpty()) << static_cast<int>(list);
        EXPECT_EQ(shown.back().at(0).value<Place>(), offered.place);
        const auto lit = shown.back().at(1).value<std::vector<LitPlace>>();
        const auto path = shown.back().at(2).value<std::vector<PathStep>>();
        ASSERT_FALSE(path.empty());
        ASSERT_EQ(lit.size(), path.size());
        for (std::size_t i = 0; i < path.size(); ++i) {
            EXPECT_EQ(lit[i].place, path[i].to);
            EXPECT_EQ(lit[i].ring, static_cast<int>(i) + 1);
        }
        EXPECT_TRUE(path.front().from == offered.place || path.back().to == offered.place);
        EXPECT_TRUE(left.isEmpty());
        BodyView &back = window().bodyView(View::Back);
        QTest::mouseMove(&back, back.rect().center());
        EXPECT_EQ(left.size(), 1) << static_cast<int>(list);
    }
    EXPECT_EQ(findings().size(), 3U);
}

TEST_F(ReasonLists, EveryRowHasAWayThatCanBeShown)
{
    open(rich());
    showLists();
    for (const AdviceList list : allLists)
        for (int row = 0; row < model(list).rowCount(); ++row) {
            const Suggestion *s = model(list).suggestion(row);
            if (!s)
                continue;
            const QSignalSpy shown(&panel(), &ReasonPanel::shown);
            const Place place = s->place;
            view(list).setCurrentIndex(model(list).index(row));
            ASSERT_FALSE(shown.isEmpty()) << spoken(place).toStdString();
            EXPECT_EQ(shown.back().at(0).value<Place>(), place);
            EXPECT_FALSE(shown.back().at(1).value<std::vector<LitPlace>>().empty());
            EXPECT_FALSE(shown.back().at(2).value<std::vector<PathStep>>().empty()) << spoken(place).toStdString();
            EXPECT_EQ(session().aim()->place, place);
        }
}

TEST_F(ReasonLists, APinnedRowStandsFirstAndStaysInTheRecord)
{
    findThree();
    showLists();
    const int last = model(AdviceList::Check).rowCount() - 1;
    ASSERT_GT(last, 3);
    const Place place = model(AdviceList::Check).suggestion(last)->place;
    click(AdviceList::Check, last);
    key(Qt::Key_P);
    EXPECT_EQ(rowOf(AdviceList::Check, place), 0);
    EXPECT_EQ(title(AdviceList::Check, 0), QStringLiteral("Pinned: ") + spoken(place));
    EXPECT_EQ(button(QStringLiteral("Pin the chosen row"))->text(), QStringLiteral("Unpin"));
    EXPECT_EQ(stored().judgements, (std::vector<Judgement>{{AdviceList::Check, place, {}}}));
    EXPECT_EQ(view(AdviceList::Check).currentIndex().row(), 0) << "the chosen row stays the chosen one";

    key(Qt::Key_P);
    EXPECT_GT(rowOf(AdviceList::Check, place), 0);
    EXPECT_EQ(title(AdviceList::Check, rowOf(AdviceList::Check, place)), spoken(place));
    EXPECT_TRUE(session().visit().judgements.empty());

    key(Qt::Key_P);
    EXPECT_EQ(rowOf(AdviceList::Check, place), 0);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_GT(rowOf(AdviceList::Check, place), 0);
    EXPECT_TRUE(stored().judgements.empty());
    EXPECT_EQ(findings().size(), 3U) << "undo took back the pin and nothing else";
}

TEST_F(ReasonLists, ADismissedRowKeepsItsReason)
{
    findThree();
    showLists();
    for (const AdviceList list : allLists) {
        const int row = firstOffered(list);
        ASSERT_GE(row, 0);
        const Place place = model(list).suggestion(row)->place;
        session().judge({list, place, "done \"last week\", ü"});
        const int heading = rowTitled(list, "Dismissed");
        ASSERT_GT(heading, 0) << static_cast<int>(list);
        EXPECT_EQ(rowOf(list, place), heading + 1);
        EXPECT_EQ(model(list).index(heading + 1).data(ReasonModel::LinesRole).toStringList(),
            QStringList{QStringLiteral("dismissed: done \"last week\", ü")});
        ASSERT_TRUE(session().judgementOf(list, place));
        EXPECT_EQ(session().judgementOf(list, place)->dismissed, "done \"last week\", ü");
    }
    const auto kept = session().visit().judgements;
    ASSERT_EQ(kept.size(), 3U);
    EXPECT_EQ(stored().judgements, kept);
    ASSERT_TRUE(session().open(session().visitId()).ok());
    EXPECT_EQ(session().visit().judgements, kept);
    for (const AdviceList list : allLists)
        EXPECT_GT(rowTitled(list, "Dismissed"), 0) << static_cast<int>(list);
}

TEST_F(ReasonLists, TheKeyDAsksForTheReasonAndTakesItBack)
{
    findThree();
    showLists();
    const int row = firstOffered(AdviceList::Treat);
    ASSERT_GE(row, 0);
    const Place place = model(AdviceList::Treat).suggestion(row)->place;
    click(AdviceList::Treat, row);
    const auto dismiss = [this](const QString &reason, bool accept) {
        QTimer::singleShot(0, [reason, accept] {
            auto *dialog = qobject_cast<QInputDialog *>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            dialog->setTextValue(reason);
            if (accept)
                dialog->accept();
            else
                dialog->reject();
        });
        key(Qt::Key_D);
        QApplication::setActiveWindow(&window()); // no window manager gives it back here
    };
    dismiss(QStringLiteral("no"), false);
    dismiss(QStringLiteral("  "), true);
    EXPECT_TRUE(session().visit().judgements.empty()) << "cancelled, and without a reason";
    dismiss(QStringLiteral(" the patient asked to wait "), true);
    ASSERT_EQ(session().visit().judgements.size(), 1U);
    EXPECT_EQ(session().visit().judgements[0], (Judgement{AdviceList::Treat, place, "the patient asked to wait"}));
    EXPECT_EQ(rowOf(AdviceList::Treat, place), rowTitled(AdviceList::Treat, "Dismissed") + 1);
    EXPECT_EQ(button(QStringLiteral("Dismiss the chosen row"))->text(), QStringLiteral("Take back"));
    key(Qt::Key_D);
    EXPECT_TRUE(session().visit().judgements.empty());
    EXPECT_LT(rowTitled(AdviceList::Treat, "Dismissed"), 0);
}

TEST_F(ReasonLists, TheKeyBMarksWhereItHurts)
{
    session().aimAt({right("gluteus-maximus"), {}, {}});
    key(Qt::Key_B);
    EXPECT_EQ(session().visit().complaintAt, (std::vector<Place>{right("gluteus-maximus")}));
    EXPECT_EQ(stored().complaintAt, session().visit().complaintAt);
    EXPECT_TRUE(findings().empty());
    EXPECT_GE(firstOffered(AdviceList::Check), 0) << "where it hurts is reason enough to check";
    EXPECT_EQ(firstOffered(AdviceList::Explain), -1) << "nothing was found that could be explained";
    key(Qt::Key_B);
    EXPECT_TRUE(session().visit().complaintAt.empty());
    EXPECT_TRUE(stored().complaintAt.empty());
    EXPECT_EQ(firstOffered(AdviceList::Check), -1);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(session().hurtsAtAim());
}

TEST_F(ReasonLists, WhereConsentIsRefusedIsLeftAlone)
{
    open(rich());
    const int heading = rowTitled(AdviceList::Treat, "Leave alone for now");
    const int row = rowOf(AdviceList::Treat, left("tensor-fasciae-latae"));
    ASSERT_GT(heading, 0);
    EXPECT_EQ(row, heading + 1);
    EXPECT_EQ(row, model(AdviceList::Treat).rowCount() - 1) << "nothing else is left alone";
    const SafetyRules &rules = safetyRules();
    const auto rule = std::find_if(rules.rules().begin(), rules.rules().end(), [](const CautionRule &r) {
        return std::find(r.conditions.begin(), r.conditions.end(), "consent-refused") != r.conditions.end();
    });
    ASSERT_NE(rule, rules.rules().end());
    EXPECT_EQ(
        model(AdviceList::Treat).index(row).data(ReasonModel::LinesRole).toStringList().front().toStdString(), rule->reason);
    EXPECT_TRUE(notice().isEmpty()) << "it holds there, not everywhere: " << notice().toStdString();
}

TEST_F(ReasonLists, AnEmergencySaysStopAndOffersNothingToTreat)
{
    Visit visit = rich();
    visit.conditions = {{"suspected-cauda-equina", {}}};
    open(visit);
    showLists();
    EXPECT_TRUE(notice().startsWith(QLatin1String("STOP: "))) << notice().toStdString();
    EXPECT_EQ(model(AdviceList::Check).rowCount(), 0);
    ASSERT_GT(model(AdviceList::Treat).rowCount(), 0);
    EXPECT_EQ(title(AdviceList::Treat, 0), QStringLiteral("Leave alone for now")) << "no row to treat above it";
    std::size_t found = 0;
    for (const Finding &f : visit.findings)
        if (f.isFound()) {
            ++found;
            EXPECT_GT(rowOf(AdviceList::Treat, f.place), 0) << spoken(f.place).toStdString();
        }
    EXPECT_EQ(model(AdviceList::Treat).rowCount(), static_cast<int>(found) + 1);

    // Another visit of a patient without it shows no notice.
    open(rich());
    EXPECT_TRUE(notice().isEmpty()) << notice().toStdString();
}

TEST_F(ReasonLists, WhatHoldsEverywhereStandsAboveTheListsOnce)
{
    Visit visit = rich();
    visit.conditions = {{"anticoagulant", {}}};
    open(visit);
    showLists();
    EXPECT_TRUE(notice().startsWith(QLatin1String("Caution: "))) << notice().toStdString();
    const QString reason = notice().mid(9);
    EXPECT_FALSE(rows(AdviceList::Treat).join(QLatin1Char('\n')).contains(reason));
}

TEST_F(ReasonLists, TheSideStandsInEachRow)
{
    open(rich());
    int seen = 0;
    for (const AdviceList list : allLists)
        for (int row = 0; row < model(list).rowCount(); ++row)
            if (const Suggestion *s = model(list).suggestion(row)) {
                const QString word = QString::fromUtf8(wordOf(sideWords, s->place.side).data());
                EXPECT_TRUE(title(list, row).contains(QRegularExpression(QStringLiteral("\\b%1\\b").arg(word))))
                    << title(list, row).toStdString();
                EXPECT_TRUE(model(list).index(row).data(Qt::AccessibleTextRole).toString().contains(title(list, row)));
                ++seen;
            }
    EXPECT_GT(seen, 20);
}

TEST_F(ReasonLists, AMirroredVisitShowsMirroredRows)
{
    Visit visit = rich();
    visit.judgements.push_back({AdviceList::Treat, right("piriformis"), "too sore"});
    visit.judgements.push_back({AdviceList::Treat, left("latissimus-dorsi"), {}});
    std::array<QStringList, allLists.size()> before;
    open(visit);
    for (const AdviceList list : allLists) {
        before[static_cast<std::size_t>(list)] = rows(list);
        EXPECT_GT(rows(list).size(), 3) << static_cast<int>(list);
    }
    open(mirrored(visit));
    for (const AdviceList list : allLists) {
        QStringList expected;
        for (const QString &row : before[static_cast<std::size_t>(list)])
            expected << sidesSwapped(row);
        EXPECT_EQ(rows(list).join(QLatin1Char('\n')).toStdString(), expected.join(QLatin1Char('\n')).toStdString());
    }
}

TEST_F(ReasonLists, AVisitFromThePracticeFileShowsTheSameRows)
{
    findThree();
    session().aimAt({right("gluteus-maximus"), {}, {}});
    session().toggleComplaint();
    session().judge({AdviceList::Treat, right("piriformis"), "too sore"});
    session().judge({AdviceList::Treat, left("latissimus-dorsi"), {}});
    ASSERT_TRUE(session().saveNow().ok());

    auto file = Practice::open(practice(), session().practice().keys());
    ASSERT_TRUE(file.ok());
    VisitSession restored(learned(), std::move(file).value());
    MainWindow another(restored);
    another.visitPanel().openPatient(session().patientId());
    EXPECT_EQ(restored.visit(), session().visit());
    for (const AdviceList list : allLists) {
        EXPECT_GT(rows(list).size(), 2);
        EXPECT_EQ(rowsOf(panelOf(another), list).join(QLatin1Char('\n')).toStdString(),
            rows(list).join(QLatin1Char('\n')).toStdString());
    }
}

TEST_F(ReasonLists, EachWidgetIsNamedReachedByTabAndLargeEnough)
{
    findThree();
    showLists();
    click(AdviceList::Treat, firstOffered(AdviceList::Treat)); // so that the buttons can be used
    std::set<QWidget *> wanted;
    for (auto *widget : panel().findChildren<QWidget *>())
        if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) && !widget->focusProxy()
            && !qobject_cast<QAbstractScrollArea *>(widget->parentWidget())) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
            EXPECT_GE(widget->height(), touchTarget) << widget->accessibleName().toStdString();
            wanted.insert(widget);
        }
    EXPECT_GE(wanted.size(), 6U) << "three lists, pin, dismiss, order";
    std::set<QWidget *> reached;
    window().bodyView(View::Back).setFocus();
    for (int i = 0; i < 120; ++i) {
        reached.insert(QApplication::focusWidget());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (auto *widget : wanted)
        EXPECT_TRUE(reached.contains(widget)) << widget->accessibleName().toStdString();
    EXPECT_TRUE(reached.contains(&window().bodyView(View::Back))) << "the lists are no trap";
    for (const AdviceList list : allLists)
        for (int row = 0; row < model(list).rowCount(); ++row)
            if (model(list).suggestion(row)) {
                EXPECT_GE(view(list).visualRect(model(list).index(row)).height(), touchTarget);
            } else {
                EXPECT_FALSE(model(list).flags(model(list).index(row)) & Qt::ItemIsSelectable) << "a heading is not chosen";
            }
}

TEST_F(ReasonLists, WhatWasPinnedDoesNotVanish)
{
    Visit visit = rich();
    visit.judgements.push_back({AdviceList::Check, left("temporalis"), {}});
    open(visit);
    showLists();
    EXPECT_EQ(title(AdviceList::Check, 0), QStringLiteral("Pinned: left temporalis"));
}

TEST_F(ReasonLists, ANewVisitStartsAnew)
{
    Visit visit = rich();
    visit.judgements.push_back({AdviceList::Treat, right("piriformis"), "too sore"});
    open(visit);
    const auto id = session().startVisit(session().patientId());
    ASSERT_TRUE(id.ok());
    ASSERT_TRUE(session().open(id.value()).ok());
    EXPECT_TRUE(session().visit().conditions.empty()) << "those of the day are asked anew";
    EXPECT_TRUE(session().visit().judgements.empty());
    EXPECT_TRUE(session().visit().complaintAt.empty());
    EXPECT_TRUE(findings().empty());
}

// What is recorded by key on a finding that came from a file must stay a visit that can be read.
TEST_F(ReasonLists, KeysNeverMakeAVisitThatCannotBeRead)
{
    const auto opened = [this](const Finding &finding) {
        Visit visit;
        visit.patient = Patient{"Test Patient", "1980-01-01"};
        visit.findings = {finding};
        open(visit);
        session().aimAt({finding.place, finding.spot, {}});
        ASSERT_EQ(session().currentFinding(), 0);
    };
    const auto expectReadable = [this](const char *after) {
        const auto read = readVisit(writeVisit(session().visit()), "visit", *knowledge().atlas);
        EXPECT_TRUE(read.ok()) << after << ": " << (read ? std::string() : inWords(read.error()));
    };
    Finding moves;
    moves.place = right("hip-joint");
    moves.clear.motion = true;
    moves.certain = true;
    opened(moves);
    key(Qt::Key_2);
    expectReadable("tender, where motion was surely clear");
    opened(moves);
    key(Qt::Key_F);
    expectReadable("familiar, where motion was surely clear");
    opened(moves);
    key(Qt::Key_S);
    expectReadable("a spot of a joint");

    Finding loose;
    loose.place = right("hip-joint");
    loose.play = JointPlay{5};
    opened(loose);
    key(Qt::Key_F);
    key(Qt::Key_F);
    expectReadable("familiar and not");
    ASSERT_EQ(findings().size(), 1U) << "the play was not to be thrown away";
    EXPECT_EQ(findings()[0].play, JointPlay{5});

    // One end of a muscle beside the muscle as a whole.
    Finding end;
    end.place = right("gluteus-maximus");
    end.at = knowledge().atlas->at(end.place.structure).attachments.front().insertions.front();
    end.tenderness = Tenderness{2};
    opened(end);
    key(Qt::Key_S);
    key(Qt::Key_S); // the origin, where this end is not
    key(Qt::Key_1);
    expectReadable("a spot of one end");
    Visit both;
    both.patient = Patient{"Test Patient", "1980-01-01"};
    Finding whole = end;
    whole.at.reset();
    both.findings = {end, whole};
    for (const Qt::Key clear : {Qt::Key_C, Qt::Key_1}) {
        open(both);
        session().aimAt({end.place, {}, {}});
        key(clear);
        expectReadable("one end beside the whole");
        EXPECT_EQ(findings().size(), 2U);
        EXPECT_EQ(findings()[0].at, end.at);
    }
    open(both);
    session().aimAt({end.place, {}, {}});
    session().setUnable("dressing");
    expectReadable("one end that could not be examined");
}

TEST_F(ReasonLists, WhateverIsRecordedCanBeReadAgain)
{
    std::mt19937 random(20261127); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same on every run
    const auto below = [&](std::size_t limit) { return static_cast<std::size_t>(random() % limit); };
    const auto &structures = knowledge().atlas->structures();
    Visit visit = rich();
    open(visit);
    for (int step = 0; step < 120; ++step) {
        if (below(3) == 0) {
            const Structure &s = structures[below(structures.size())];
            const auto sides = knowledge().atlas->sides(s);
            session().aimAt({{s.id, sides[below(sides.size())]}, {}, {}});
        } else if (below(3) == 0) {
            session().selectFinding(static_cast<int>(below(findings().size() + 1)));
        }
        switch (below(9)) {
        case 0: session().setTenderness(static_cast<int>(below(5))); break;
        case 1: session().setRestriction(static_cast<int>(below(4))); break;
        case 2: session().toggleFamiliar(); break;
        case 3: session().setClear(); break;
        case 4: session().setUnable("dressing"); break;
        case 5: session().setSpot(spotWords[below(spotWords.size())].first); break;
        case 6: session().removeFinding(); break;
        case 7: session().toggleComplaint(); break;
        default:
            if (session().aim())
                session().judge({allLists[below(allLists.size())], session().aim()->place, below(2) ? "seen" : ""});
            break;
        }
        const std::string written = writeVisit(session().visit());
        const auto read = readVisit(written, "visit", *knowledge().atlas);
        ASSERT_TRUE(read.ok()) << inWords(read.error()) << "\n" << written;
        ASSERT_EQ(read.value(), session().visit());
    }
}

} // namespace raphe::test
