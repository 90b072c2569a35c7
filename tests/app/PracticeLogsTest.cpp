// What a practice remembers, as it is shown: who did what with which record, and the versions of a visit.
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/AccessLogDialog.h"
#include "app/raphe/practice/EntryWords.h"
#include "app/raphe/practice/HistoryDialog.h"
#include "app/raphe/practice/VisitChanges.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/VisitJson.h"
#include "tests/core/examination/Exam.h"
#include "tests/core/store/PracticeTesting.h"
#include "tests/support/Complaints.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTextBrowser>
#include <QTreeView>
#include <QtTest>

#include <ctime>
#include <functional>
#include <map>
#include <set>

namespace raphe::test {

namespace {

const Knowledge &wholeKnowledge()
{
    static const Result<Knowledge> read = readKnowledge();
    EXPECT_TRUE(read.ok()) << inWords(read.error());
    return read.value();
}

Finding tender(const char *structure, Side side, int grade)
{
    Finding finding;
    finding.place = {StructureId{structure}, side};
    finding.tenderness = Tenderness{grade};
    return finding;
}

class PracticeLogs : public PracticeFileTest {
protected:
    void SetUp() override
    {
        PracticeFileTest::SetUp();
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
        m_practice = made();
        ASSERT_NE(m_practice, nullptr);
    }

    [[nodiscard]] Practice &practice() { return *m_practice; }

    [[nodiscard]] std::int64_t patientNamed(const char *name)
    {
        return valueOf(practice().addPatient(person(name, "1980-03-05")));
    }
    [[nodiscard]] static Visit first()
    {
        Visit visit;
        visit.patient = Patient{"Ana Brook", "1980-03-05"};
        visit.date = "2026-11-20";
        visit.complaints = {complaintOf("low back")};
        visit.findings = {
            tender("gluteus-maximus", Side::Right, 2), tender("piriformis", Side::Right, 3), tender("temporalis", Side::Left, 1)};
        return visit;
    }
    [[nodiscard]] std::int64_t visitOf(std::int64_t patient, const Visit &visit)
    {
        return valueOf(practice().addVisit(patient, writeVisit(visit)));
    }
    template <class D> void put(D &dialog)
    {
        dialog.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
        QApplication::setActiveWindow(&dialog);
        QCoreApplication::processEvents();
    }

    /// The rows of a list, its columns joined by ' | '; without the first, which is the time.
    [[nodiscard]] static std::vector<std::string> rowsOf(const QDialog &dialog)
    {
        const QAbstractItemModel *model = dialog.findChild<QTreeView *>()->model();
        std::vector<std::string> out;
        for (int row = 0; row < model->rowCount(); ++row) {
            QStringList words;
            for (int column = 1; column < model->columnCount(); ++column)
                words << model->index(row, column).data().toString();
            out.push_back(words.join(QStringLiteral(" | ")).toStdString());
        }
        return out;
    }
    [[nodiscard]] static bool says(const QDialog &dialog, const char *part)
    {
        for (const QLabel *label : dialog.findChildren<QLabel *>())
            if (label->text().contains(QString::fromUtf8(part)))
                return true;
        return false;
    }
    [[nodiscard]] static std::string textOf(const HistoryDialog &dialog)
    {
        return dialog.findChild<QTextBrowser *>()->toPlainText().toStdString();
    }
    static void expectSays(const HistoryDialog &dialog, const char *part)
    {
        EXPECT_NE(textOf(dialog).find(part), std::string::npos) << "not '" << part << "' in:\n" << textOf(dialog);
    }

    /// Named, large enough, and reached by Tab; Escape leaves.
    void expectKeyboard(QDialog &dialog)
    {
        std::set<QWidget *> reached;
        for (int i = 0; i < 12; ++i) {
            reached.insert(QApplication::focusWidget());
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        }
        for (QWidget *widget : dialog.findChildren<QWidget *>()) {
            if (!widget->isVisible() || !(widget->focusPolicy() & Qt::TabFocus) || widget->focusProxy())
                continue;
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
            EXPECT_GE(widget->height(), touchTarget - 1) << widget->accessibleName().toStdString();
            EXPECT_TRUE(reached.contains(widget)) << widget->accessibleName().toStdString();
        }
        EXPECT_LE(dialog.width(), 1366);
        EXPECT_LE(dialog.height(), 700);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        EXPECT_FALSE(dialog.isVisible());
    }

private:
    std::unique_ptr<Practice> m_practice;
};

} // namespace

TEST_F(PracticeLogs, EveryActAndMomentHasItsWords)
{
    std::set<QString> words;
    for (const auto &[kind, word] : entryWords)
        EXPECT_TRUE(!actWords(kind).isEmpty() && words.insert(actWords(kind)).second) << word;
    const QByteArray before = qgetenv("TZ");
    qputenv("TZ", "XXX-5:30"); // half past five hours east of UTC
    tzset();
    EXPECT_EQ(momentWords(0).toStdString(), "1 January 1970, 05:30");
    EXPECT_EQ(careWords("2026-11-20T23:00:00Z").toStdString(), "21 November 2026, 04:30");
    if (before.isNull())
        qunsetenv("TZ");
    else
        qputenv("TZ", before);
    tzset();
    EXPECT_EQ(careWords("2026-11-20").toStdString(), "20 November 2026");
    EXPECT_EQ(careWords("2026-11-20T14:05").toStdString(), "20 November 2026, 14:05");
    EXPECT_EQ(careWords("in the morning").toStdString(), "in the morning");
}

TEST_F(PracticeLogs, ShowsWhoDidWhatTheNewestFirst)
{
    const std::int64_t ana = patientNamed("Ana Brook");
    const std::int64_t twin = patientNamed("Anna Brook");
    const std::int64_t gone = patientNamed("Ole Hill");
    ASSERT_TRUE(practice().noteOpened(ana));
    ASSERT_TRUE(practice().noteOpened(twin));
    ASSERT_TRUE(practice().noteExported(gone));
    ASSERT_TRUE(practice().sign(visitOf(ana, first())));
    ASSERT_TRUE(practice().merge(ana, twin));
    ASSERT_TRUE(practice().erase(gone, "asked for it"));
    ASSERT_TRUE(practice().addAccount({"ben", "Ben Hill", "other words here", cheap}));
    auto ben = valueOf(Practice::unlock(file(), "ben", std::string_view("other words here")));
    ASSERT_TRUE(ben->noteOpened(ana));

    AccessLogDialog dialog(practice(), {});
    put(dialog);
    const std::vector<std::string> expected{"Ben Hill | opened the record | Ana Brook", "Ada Brook | added a user | ",
        "Ada Brook | erased the record | record 3, erased", "Ada Brook | joined another record to this one | Ana Brook",
        "Ada Brook | signed a visit | Ana Brook", "Ada Brook | exported the record | record 3, erased",
        "Ada Brook | opened the record | Anna Brook", "Ada Brook | opened the record | Ana Brook",
        "Ada Brook | made the practice file | "};
    EXPECT_EQ(rowsOf(dialog), expected);
    const QString when = dialog.findChild<QTreeView *>()->model()->index(0, 0).data().toString();
    EXPECT_TRUE(when.startsWith(QLocale().toString(QDate::currentDate(), QStringLiteral("d MMMM yyyy, ")))) << when.toStdString();
    EXPECT_TRUE(says(dialog, "9 of 9"));

    // Of one patient, with the record that was joined to it: nothing of the others.
    AccessLogDialog own(practice(), ana);
    const std::vector<std::string> ownRows{"Ben Hill | opened the record", "Ada Brook | joined another record to this one",
        "Ada Brook | signed a visit", "Ada Brook | opened the record", "Ada Brook | opened the record"};
    EXPECT_EQ(rowsOf(own), ownRows);
    EXPECT_TRUE(own.windowTitle().contains(QStringLiteral("Ana Brook")));
}

TEST_F(PracticeLogs, ShowsOnlyWhatHoldsEveryTypedWord)
{
    const std::int64_t ana = patientNamed("Ana Brook");
    const std::int64_t zoe = patientNamed("Zoë Ørsted");
    ASSERT_TRUE(practice().noteOpened(ana));
    ASSERT_TRUE(practice().noteOpened(zoe));
    ASSERT_TRUE(practice().noteExported(zoe));
    AccessLogDialog dialog(practice(), {});
    put(dialog);
    ASSERT_EQ(rowsOf(dialog).size(), 4U);
    EXPECT_EQ(QApplication::focusWidget(), dialog.findChild<QLineEdit *>()) << "typing begins at once";
    const auto typed = [&](const char *text) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Delete);
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
        return rowsOf(dialog);
    };
    EXPECT_EQ(typed("zoe open"), std::vector<std::string>{"Ada Brook | opened the record | Zoë Ørsted"});
    EXPECT_TRUE(says(dialog, "1 of 4"));
    EXPECT_EQ(typed("open").size(), 2U);
    EXPECT_EQ(typed("zzz").size(), 0U);
    EXPECT_TRUE(says(dialog, "Nothing has this in it"));
    EXPECT_EQ(typed("").size(), 4U);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    EXPECT_EQ(dialog.findChild<QTreeView *>()->currentIndex().row(), 1) << "the arrow keys move in the list";
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(dialog.isVisible()) << "Return ends the typing, not the dialog";
    expectKeyboard(dialog);
}

TEST_F(PracticeLogs, TheAccessModelKeepsTheRulesOfModels)
{
    AccessModel model(true);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 0);
    model.setAccesses({{0, "Ada", EntryKind::FileMade, {}}, {1000, "", EntryKind::Opened, 7}},
        [](std::int64_t id) { return QStringLiteral("patient %1").arg(id); });
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(0, AccessModel::Who).data().toString(), QStringLiteral("unknown user"));
    EXPECT_EQ(model.index(0, AccessModel::Whose).data().toString(), QStringLiteral("patient 7"));
    for (int column = 0; column < model.columnCount(); ++column)
        EXPECT_FALSE(model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().isEmpty());
    model.setTyped(QStringLiteral("made"));
    EXPECT_EQ(model.rowCount(), 1);
    model.setTyped(QStringLiteral("nothing of that"));
    EXPECT_EQ(model.rowCount(), 0);
    model.setAccesses({}, [](std::int64_t) { return QString(); });
    EXPECT_EQ(AccessModel(false).columnCount(), 3);
}

TEST_F(PracticeLogs, SaysWhenTheEntriesAreBroken)
{
    const std::int64_t ana = patientNamed("Ana Brook");
    const std::int64_t visit = visitOf(ana, first());
    ASSERT_TRUE(practice().sign(visit));
    {
        PlainSql sql(file());
        sql.run("UPDATE entry SET kind = 'guessed'");
    }
    AccessLogDialog dialog(practice(), {});
    EXPECT_TRUE(says(dialog, "an entry of no known kind"));
    EXPECT_EQ(rowsOf(dialog).size(), 0U);
    HistoryDialog history(practice(), visit, wholeKnowledge(), adviser().rules(), examination());
    EXPECT_TRUE(says(history, "not as it was written"));
}

TEST_F(PracticeLogs, ADraftHasNoVersionYet)
{
    HistoryDialog dialog(
        practice(), visitOf(patientNamed("Ana Brook"), first()), wholeKnowledge(), adviser().rules(), examination());
    EXPECT_EQ(dialog.findChild<QListView *>()->model()->rowCount(), 0);
    expectSays(dialog, "no version yet");
    EXPECT_TRUE(says(dialog, "is a draft"));
    HistoryDialog none(practice(), 99, wholeKnowledge(), adviser().rules(), examination());
    EXPECT_TRUE(says(none, "99")) << "there is no such visit";
}

TEST_F(PracticeLogs, TheHistoryShowsEveryVersionAndWhatItChanged)
{
    const std::int64_t ana = patientNamed("Ana Brook");
    Visit visit = first();
    const std::int64_t id = visitOf(patientNamed("Anna Brook"), visit);
    ASSERT_TRUE(practice().move(id, ana, "wrong <b>person</b>"));
    ASSERT_TRUE(practice().sign(id, "2026-11-20T14:05", "power cut"));
    ASSERT_TRUE(practice().beginAmendment(id));
    visit.findings[0].tenderness = Tenderness{4};
    visit.findings[1].place.side = Side::Left; // gone on the right, there on the left
    visit.findings.pop_back();
    visit.complaints = {complaintOf("low back & <leg>")};
    ASSERT_TRUE(practice().saveVisit(id, writeVisit(visit)));
    {
        HistoryDialog dialog(practice(), id, wholeKnowledge(), adviser().rules(), examination());
        EXPECT_TRUE(says(dialog, "An amendment is being written"));
        EXPECT_EQ(dialog.findChild<QListView *>()->model()->rowCount(), 2) << "what is not signed is no version";
    }
    ASSERT_TRUE(practice().signAmendment(id, "wrong side"));
    ASSERT_TRUE(practice().markInError(id, "not this patient"));

    HistoryDialog dialog(practice(), id, wholeKnowledge(), adviser().rules(), examination());
    put(dialog);
    auto *list = dialog.findChild<QListView *>();
    ASSERT_EQ(list->model()->rowCount(), 4);
    EXPECT_EQ(QApplication::focusWidget(), list);
    const auto title = [&](int row) { return list->model()->index(row, 0).data().toString().section(QLatin1Char('\n'), 0, 0); };
    EXPECT_EQ(title(0), QStringLiteral("Ada Brook marked a visit as entered in error"));
    EXPECT_EQ(title(1), QStringLiteral("Ada Brook signed an amendment of a visit"));
    EXPECT_EQ(title(2), QStringLiteral("Ada Brook signed a visit as a late entry"));
    EXPECT_EQ(title(3), QStringLiteral("Ada Brook moved a visit to this record"));
    EXPECT_TRUE(says(dialog, "entered in error"));

    EXPECT_EQ(list->currentIndex().row(), 0);
    expectSays(dialog, "not this patient");
    expectSays(dialog, "Nothing: both say the same.");

    QTest::keyClick(list, Qt::Key_Down);
    expectSays(dialog, "wrong side");
    expectSays(dialog, "not given: the same");
    expectSays(dialog, "Added: left piriformis: tenderness 3");
    expectSays(dialog, "Gone: right piriformis: tenderness 3");
    expectSays(dialog, "Gone: left temporalis: tenderness 1");
    expectSays(dialog, "Changed: right gluteus maximus: tenderness 2; now tenderness 4");
    expectSays(dialog, "Complaint: 'low back'; now 'low back & <leg>'");
    expectSays(dialog, "Findings (2)");
    expectSays(dialog, "1. right gluteus maximus: tenderness 4");
    expectSays(dialog, "2. left piriformis: tenderness 3");

    QTest::keyClick(list, Qt::Key_Down);
    expectSays(dialog, "power cut");
    expectSays(dialog, "20 November 2026, 14:05");
    expectSays(dialog, "This is the first version.");
    expectSays(dialog, "Findings (3)");

    QTest::keyClick(list, Qt::Key_Down);
    expectSays(dialog, "wrong <b>person</b>");
    expectSays(dialog, "keeps no copy");
    EXPECT_EQ(textOf(dialog).find("Findings"), std::string::npos);
    expectKeyboard(dialog);
}

TEST_F(PracticeLogs, AVersionThatCannotBeReadSaysWhy)
{
    const std::int64_t id = valueOf(practice().addVisit(patientNamed("Ana Brook"), writeVisit(first())));
    ASSERT_TRUE(practice().sign(id));
    ASSERT_TRUE(practice().beginAmendment(id));
    ASSERT_TRUE(practice().saveVisit(id, R"({"format": "raphe-visit", "version": 3})"));
    ASSERT_TRUE(practice().signAmendment(id, "from a later program"));
    HistoryDialog dialog(practice(), id, wholeKnowledge(), adviser().rules(), examination());
    expectSays(dialog, "from a later program");
    expectSays(dialog, "made by a later program (version 3)");
}

TEST_F(PracticeLogs, TheVersionsModelKeepsTheRulesOfModels)
{
    VersionsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    VisitVersion one;
    one.entry = 1;
    one.kind = EntryKind::Signed;
    one.document = "a";
    VisitVersion two = one;
    two.entry = 2;
    two.kind = EntryKind::Moved;
    two.document.clear();
    VisitVersion three = one;
    three.entry = 3;
    model.setVersions({one, two, three});
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.version(0).entry, 3);
    ASSERT_NE(model.before(0), nullptr);
    EXPECT_EQ(model.before(0)->entry, 1) << "the one between has no document";
    EXPECT_EQ(model.before(2), nullptr);
    EXPECT_TRUE(model.index(0).data().toString().startsWith(QStringLiteral("unknown user")));
    model.setVersions({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(VisitChangesTest, NothingIsChangedWithoutAWord)
{
    const Atlas &atlas = *wholeKnowledge().atlas;
    Visit visit;
    visit.patient = Patient{"Ana Brook", "1980-03-05"};
    visit.date = "2026-11-20";
    visit.complaints = {complaintOf("low back")};
    visit.complaintAt = {{StructureId{"gluteus-maximus"}, Side::Right}};
    visit.cautions = {"bruises easily"};
    visit.conditions = {{"diabetes", {}}};
    Finding joint;
    joint.place = {StructureId{"hip-joint"}, Side::Right};
    joint.play = JointPlay{5};
    visit.findings = {tender("gluteus-maximus", Side::Right, 2), joint, tender("piriformis", Side::Left, 1)};
    Letter letter;
    letter.to = {"Dr Nord", "general practice", {}};
    letter.title = "A letter";
    letter.urgency = Urgency::Routine;
    letter.parts = {{"Complaint", {"low back", "low back"}}};
    visit.letters = {letter};
    EXPECT_TRUE(visitChanges(atlas, safetyRules(), examination(), visit, visit).areNone());

    using Change = std::function<void(Visit &)>;
    struct Case {
        Change change;
        const char *list; // where it stands
        const char *words;
    };
    const std::vector<Case> cases{
        {[](Visit &v) { v.patient.reset(); }, "others", "Patient: 'Ana Brook, 5 March 1980'; now nothing"},
        {[](Visit &v) { v.date = "2026-11-21"; }, "others", "Date: '20 November 2026'; now '21 November 2026'"},
        {[](Visit &v) { v.practitioner = "Ada"; }, "others", "Practitioner: nothing; now 'Ada'"},
        {[](Visit &v) { v.complaints[0].episode = 2; }, "others", "another complaint"},
        {[](Visit &v) { v.complaints[0].text.clear(); }, "others", "Complaint: 'low back'; now nothing"},
        {[](Visit &v) { v.complaints[0].now = PainScore{3}; }, "others", "What was told of the complaints is another."},
        {[](Visit &v) { v.complaints.emplace_back(); }, "others", "What was told of the complaints is another."},
        {[](Visit &v) {
             v.warnings.push_back({"hot-joint", false, "2026-11-20", {}, {}, {}, {}});
         },
            "others", "warning signs"},
        {[](Visit &v) {
             v.consents.push_back({"cupping", ConsentState::Given, "2026-11-20", {}, {}, {}, {}});
         },
            "others", "consent"},
        {[](Visit &v) { v.promised.emplace_back("walk"); }, "others", "promised until the next"},
        {[](Visit &v) { v.complaintAt.clear(); }, "others", "Where it hurts: 'right gluteus maximus'; now nothing"},
        {[](Visit &v) { v.pain.emplace_back(); }, "others", "The pain drawing is another."},
        {[](Visit &v) { v.cautions.emplace_back("faints"); }, "others", "now 'bruises easily; faints'"},
        {[](Visit &v) {
             v.conditions = {{"open-wound", {{StructureId{"gluteus-maximus"}, Side::Right}}}};
         },
            "others", "Conditions: 'diabetes'; now 'open wound (right gluteus maximus)'"},
        {[](Visit &v) {
             v.judgements.emplace_back();
             v.judgements.back().list = AdviceList::Treat;
             v.judgements.back().place = {StructureId{"piriformis"}, Side::Left};
             v.judgements.back().dismissed = "sore";
         },
            "others", "pinned or put away"},
        {[](Visit &v) { v.plan.minutes = 30; }, "others", "wishes for the plan"},
        {[](Visit &v) { std::swap(v.findings[0], v.findings[2]); }, "others", "another order"},
        {[](Visit &v) { v.findings.pop_back(); }, "gone", "left piriformis: tenderness 1"},
        {[](Visit &v) { v.findings.insert(v.findings.begin(), tender("temporalis", Side::Left, 1)); }, "added",
            "left temporalis: tenderness 1"},
        {[](Visit &v) { v.findings[0].familiar = true; }, "changed", "tenderness 2; now tenderness 2, familiar pain"},
        {[](Visit &v) { v.findings[0].spot = Spot::Belly; }, "changed", "tenderness 2; now belly, tenderness 2"},
        {[](Visit &v) { v.findings[0].at = StructureId{"femur"}; }, "changed", "now at right femur, tenderness 2"},
        {[](Visit &v) { v.findings[0].certain = true; }, "changed", "now tenderness 2, very sure"},
        {[](Visit &v) { v.findings[0].note = "warm"; }, "changed", "now tenderness 2, warm"},
        {[](Visit &v) { v.findings[0].restriction = Restriction{1}; }, "changed", "now tenderness 2, restriction 1"},
        {[](Visit &v) { v.findings[1].play = JointPlay{1}; }, "changed", "right hip joint: joint play 5; now joint play 1"},
        {[](Visit &v) { v.findings[1].play.reset(); }, "changed", "now noted"},
        {[](Visit &v) {
             v.findings[0].refersTo = {{StructureId{"piriformis"}, Side::Left}};
         },
            "changed", "felt at left piriformis as well"},
        {[](Visit &v) { v.findings[0].texture = {"ropy"}; }, "changed", "now tenderness 2, ropy"},
        {[](Visit &v) {
             v.measures.push_back({"hip-flexion", Side::Right, 110, {}, {}, {}, false, false, {}});
         },
            "others", "Movements: nothing; now 'RIGHT hip flexion: 110 degrees'"},
        {[](Visit &v) {
             v.tests.push_back({"slump", Side::Left, TestPain::Familiar, false, {}, {}, {}, {}, {}});
         },
            "others", "Tests: nothing; now 'LEFT slump: familiar pain'"},
        {[](Visit &v) {
             v.retest = RetestMark{MomentKind::Test, "slump", Side::Left};
         },
            "others", "Today's retest"},
        {[](Visit &v) {
             v.timeline.push_back({"09:00:00", MomentKind::Test, "slump", Side::Left});
         },
            "others", "times"},
        {[](Visit &v) {
             Letter second;
             second.title = "Another";
             v.letters.push_back(second);
         },
            "others", "A letter to whoever takes over is kept: 'Another', For information"},
        {[](Visit &v) { v.letters.clear(); }, "others", "A letter to Dr Nord is no longer kept."},
        {[](Visit &v) { v.letters[0].parts[0].words.text = "sore"; }, "others",
            "The letter to Dr Nord is another: Complaint: 'low back'; now 'sore'"},
        {[](Visit &v) { v.letters[0].question.text = "What next?"; }, "others", "question: nothing; now 'What next?'"},
        {[](Visit &v) { v.letters[0].urgency = Urgency::SameDay; }, "others", "urgency: 'Routine'; now 'Same day'"},
        {[](Visit &v) {
             v.letters[0].to = {"Dr Vance", {}, {}};
         },
            "others", "now to Dr Vance"},
        {[](Visit &v) { v.letters[0].to.lines = {"4 Mill Lane"}; }, "others", "role or address"},
        {[](Visit &v) { v.letters[0].sent = "2026-11-21"; }, "others", "sent on 21 November 2026"},
        {[](Visit &v) { v.letters[0].parts[0].words.composed = "back"; }, "others", "what was composed"},
        {[](Visit &v) { v.findings[2].unable = "dressing"; }, "changed", "could not examine: dressing"}};
    for (const Case &c : cases) {
        Visit after = visit;
        c.change(after);
        const VisitChanges changes = visitChanges(atlas, safetyRules(), examination(), visit, after);
        const std::map<std::string, QStringList> lists{
            {"added", changes.added}, {"gone", changes.gone}, {"changed", changes.changed}, {"others", changes.others}};
        for (const auto &[name, lines] : lists)
            EXPECT_EQ(lines.size(), name == c.list ? 1 : 0) << c.words << ", " << name << ": " << lines.join(u'/').toStdString();
        EXPECT_NE(lists.at(c.list).join(u'/').toStdString().find(c.words), std::string::npos)
            << c.words << ", but " << lists.at(c.list).join(u'/').toStdString();
        EXPECT_FALSE(visitChanges(atlas, safetyRules(), examination(), after, visit).areNone())
            << "the other way round: " << c.words;
    }
}

} // namespace raphe::test
