// On the smallest window that the program offers nothing is squeezed: every button keeps its height for a finger and lies whole
// within what holds it. The window fits a laptop's 1366 x 768 less a title bar and a task bar.
#include "app/raphe/WrappedLabel.h"
#include "tests/app/Window.h"

#include "app/raphe/Style.h"

#include <QPushButton>
#include <QScrollArea>

namespace raphe::test {

namespace {

class SmallScreen : public WindowTest {
protected:
    static bool isScrolled(const QWidget *widget)
    {
        for (const QWidget *at = widget; at; at = at->parentWidget())
            if (qobject_cast<const QScrollArea *>(at))
                return true;
        return false;
    }
    void expectWholeButtons(const std::string &when)
    {
        window().resize(window().minimumSizeHint());
        for (int i = 0; i < 5; ++i) // wrapped words settle their height after the width
            QCoreApplication::processEvents();
        int seen = 0;
        for (const auto *b : window().findChildren<QPushButton *>()) {
            if (!b->isVisible() || isScrolled(b))
                continue;
            ++seen;
            const QString name = b->accessibleName() + b->text();
            EXPECT_GE(b->height(), touchTarget) << name.toStdString() << ", " << when;
            EXPECT_EQ(b->visibleRegion().boundingRect(), b->rect()) << name.toStdString() << " is covered, " << when;
        }
        EXPECT_GT(seen, 5);
        EXPECT_LE(window().height(), 768 - 68);
        EXPECT_LE(window().width(), 1366);
    }
};

} // namespace

TEST_F(SmallScreen, KeepsEveryButtonWhole)
{
    expectWholeButtons("before anything is touched");
    session().aimAt({{StructureId{"thoracolumbar-fascia-superficial-lamina"}, Side::Right}, {}, {}}); // a long name
    expectWholeButtons("with a long name");
    key(Qt::Key_W);
    expectWholeButtons("beside the lists");
    session().aimAt({{StructureId{"l4-l5"}, Side::Right}, {}, {}});
    key(Qt::Key_Y);
    expectWholeButtons("with what else was felt");
    key(Qt::Key_M);
    expectWholeButtons("on the sheet");
}

// Before the first layout as well: what is not seen asks for no room.
TEST_F(SmallScreen, StaysAsWideAsItWasOpened)
{
    MainWindow small(session());
    small.resize(1280, 700);
    small.show();
    for (const char *when : {"at first", "at the sheet", "back at the body"}) {
        for (int i = 0; i < 5; ++i)
            QCoreApplication::processEvents();
        EXPECT_EQ(small.width(), 1280) << when;
        QTest::keyClick(&small, Qt::Key_M);
    }
}

// What a splitter shows for the first time is no pixel wide for a moment: the height of its words then would make the window grow
// for good.
TEST_F(SmallScreen, AColumnThatWasNeverShownAsksForNoHeight)
{
    MainWindow small(session());
    small.resize(1280, 700);
    small.showMiddle(MainWindow::Middle::Intake);
    small.show();
    QCoreApplication::processEvents();
    small.showMiddle(MainWindow::Middle::Body);
    for (const auto *label : small.findChildren<WrappedLabel *>())
        if (label->isVisible()) {
            EXPECT_LT(label->minimumHeight(), 120) << label->text().toStdString();
        }
}

} // namespace raphe::test
