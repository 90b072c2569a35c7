// A whole visit by keyboard alone, and the walk that every widget must allow: named, reached by Tab, left by Tab.
#include "tests/app/PdfPage.h"
#include "tests/app/Window.h"

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>

#include <set>

namespace raphe::test {

namespace {

class KeyboardVisit : public WindowTest {
protected:
    /// Walks the map with the arrow keys until the wanted place is under the cursor; each key must be needed.
    void walkTo(BodyView &view, const Place &place)
    {
        std::set<Place> seen;
        for (int step = 0; step < 200 && view.cursor() != place; ++step) {
            const auto target = markPoint(place, view);
            const auto here = view.cursor() ? markPoint(*view.cursor(), view) : std::nullopt;
            const auto before = view.cursor();
            if (!here) {
                key(Qt::Key_Down);
                continue;
            }
            const double dx = target->x - here->x;
            const double dy = target->y - here->y;
            const Qt::Key horizontal = dx > 0 ? Qt::Key_Right : Qt::Key_Left;
            const Qt::Key vertical = dy > 0 ? Qt::Key_Down : Qt::Key_Up;
            key(std::abs(dy) > std::abs(dx) ? vertical : horizontal);
            if (view.cursor() == before || seen.contains(*view.cursor()))
                key(std::abs(dy) > std::abs(dx) ? horizontal : vertical);
            seen.insert(*view.cursor());
        }
        ASSERT_TRUE(view.cursor());
        EXPECT_EQ(*view.cursor(), place);
    }

private:
    static std::optional<Point> markPoint(const Place &place, const BodyView &view)
    {
        return markPointIn(*knowledge().atlas, view.drawing(), place);
    }
};

} // namespace

TEST_F(KeyboardVisit, RecordsTracesAndPrintsWithoutAMouse)
{
    BodyView &back = window().bodyView(View::Back);
    back.setFocus();
    walkTo(back, {StructureId{"gluteus-maximus"}, Side::Right});
    key(Qt::Key_Return);
    key(Qt::Key_3);
    key(Qt::Key_2, Qt::AltModifier);
    key(Qt::Key_F);
    key(Qt::Key_S);
    key(Qt::Key_S); // belly, then origin
    ASSERT_EQ(findings().size(), 1U);
    const Finding &f = findings()[0];
    EXPECT_EQ(f.place, (Place{StructureId{"gluteus-maximus"}, Side::Right}));
    EXPECT_EQ(f.tenderness, Tenderness{3});
    EXPECT_EQ(f.restriction, Restriction{2});
    EXPECT_TRUE(f.familiar);

    walkTo(back, {StructureId{"semitendinosus"}, Side::Left});
    key(Qt::Key_Space);
    key(Qt::Key_C);
    ASSERT_EQ(findings().size(), 2U);
    EXPECT_TRUE(findings()[1].isClear());
    EXPECT_EQ(findings()[1].place.side, Side::Left);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(findings().size(), 1U);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(findings().size(), 2U);

    key(Qt::Key_PageDown);
    EXPECT_EQ(back.layer(), Layer::IntermediateMuscle);
    key(Qt::Key_F, Qt::ControlModifier);
    auto *search = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    ASSERT_TRUE(search) << "Ctrl+F goes to the search box";
    QTest::keyClicks(search, QStringLiteral("left piriformis"));
    QTest::keyClick(search, Qt::Key_Return);
    ASSERT_TRUE(session().aim());
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"piriformis"}, Side::Left}));

    const QString pdf = inFolder("keys.pdf");
    ASSERT_TRUE(window().exportMap(pdf, Paper::Letter));
    const QString text = textOf(pdf);
    EXPECT_TRUE(text.contains(QStringLiteral("Main buttock muscle, right side"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("This is the pain you know.")));
    EXPECT_TRUE(text.contains(QStringLiteral("ack of the thigh, left side"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Checked, nothing found.")));
    EXPECT_EQ(stored().findings, findings());
}

TEST_F(KeyboardVisit, TypingInATextFieldIsNotARecord)
{
    BodyView &back = window().bodyView(View::Back);
    QTest::mouseClick(&back, Qt::LeftButton, {}, pixelOf(back, {StructureId{"gluteus-maximus"}, Side::Right}));
    auto *complaint = window().visitPanel().findChild<QPlainTextEdit *>();
    complaint->setFocus();
    QTest::keyClicks(complaint, QStringLiteral("since 3 days, cannot sit for 4 hours"));
    EXPECT_TRUE(findings().empty());
    EXPECT_EQ(session().visit().complaint(), "since 3 days, cannot sit for 4 hours");
    EXPECT_EQ(stored().complaint(), session().visit().complaint());
}

TEST_F(KeyboardVisit, EveryWidgetHasANameAndTabReachesAll)
{
    std::set<QWidget *> wanted;
    for (auto *widget : window().findChildren<QWidget *>())
        if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) && !widget->focusProxy()
            && !qobject_cast<QAbstractScrollArea *>(widget->parentWidget())) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()
                && (!qobject_cast<QAbstractButton *>(widget) || qobject_cast<QAbstractButton *>(widget)->text().isEmpty()))
                << widget->metaObject()->className() << " has no accessible name";
            wanted.insert(widget);
        }
    ASSERT_GT(wanted.size(), 10U);
    std::set<QWidget *> reached;
    window().bodyView(View::Back).setFocus();
    for (std::size_t i = 0; i < wanted.size() * 3; ++i) {
        reached.insert(QApplication::focusWidget());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (auto *widget : wanted) {
        const auto *b = qobject_cast<QAbstractButton *>(widget);
        const bool inGroup = b && b->group(); // arrow keys go on inside a group
        EXPECT_TRUE(inGroup || reached.contains(widget))
            << widget->metaObject()->className() << " " << widget->accessibleName().toStdString();
    }
}

TEST_F(KeyboardVisit, AScreenReaderFindsTheStructuresOfTheLayer)
{
    QAccessibleInterface *view = QAccessible::queryAccessibleInterface(&window().bodyView(View::Back));
    ASSERT_TRUE(view);
    EXPECT_EQ(view->text(QAccessible::Name), QStringLiteral("Body: Back"));
    ASSERT_GT(view->childCount(), 20);
    QStringList names;
    for (int i = 0; i < view->childCount(); ++i) {
        ASSERT_TRUE(view->child(i));
        names << view->child(i)->text(QAccessible::Name);
        EXPECT_EQ(view->indexOfChild(view->child(i)), i);
    }
    EXPECT_TRUE(names.contains(QStringLiteral("left gluteus maximus")));
    EXPECT_TRUE(names.contains(QStringLiteral("right gluteus maximus")));
}

TEST_F(KeyboardVisit, ModelsKeepTheirPromisesWhileFindingsComeAndGo)
{
    FindingsModel model(session());
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    TraceModel traced(knowledge());
    const QAbstractItemModelTester traceTester(&traced, QAbstractItemModelTester::FailureReportingMode::Fatal);
    for (const char *id : {"gluteus-maximus", "piriformis", "psoas-major"}) {
        session().aimAt({{StructureId{id}, Side::Right}, {}, {}});
        session().setTenderness(2);
        traced.show(session().aim()->place, TraceGroup::SharedAttachment, traceStepsAtMost);
        EXPECT_GT(traced.rowCount(), 0);
    }
    session().selectFinding(1);
    session().removeFinding();
    EXPECT_EQ(model.rowCount(), 2);
    session().undoStack().setIndex(0);
    EXPECT_EQ(model.rowCount(), 0);
    session().undoStack().setIndex(4);
    EXPECT_EQ(model.rowCount(), 2);
}

} // namespace raphe::test
