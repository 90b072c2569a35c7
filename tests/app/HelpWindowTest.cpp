// The help in the window: it opens at the page that fits, its words can be found and its links followed by mouse and by keys, it
// stays away from hands and patients, and its page of keys names the keys that there are.
#include "app/raphe/help/HelpWindow.h"
#include "app/paint/Theme.h"
#include "app/raphe/Lock.h"
#include "app/raphe/help/Help.h"
#include "app/raphe/help/HelpTopics.h"
#include "app/raphe/help/HelpView.h"
#include "app/raphe/intake/ConsentDialog.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/treatment/TreatmentWindow.h"
#include "tests/app/InNext.h"
#include "tests/app/Window.h"

#include <QAbstractButton>
#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QShortcut>
#include <QTabWidget>
#include <QTextBlock>
#include <QTextTable>
#include <QToolButton>

#include <set>

namespace raphe::test {

namespace {

class HelpOfWindow : public WindowTest {
protected:
    [[nodiscard]] bool isOpen() { return window().help().window() != nullptr; }
    [[nodiscard]] HelpWindow &help()
    {
        if (!isOpen())
            throw std::runtime_error("the help is not open");
        return *window().help().window();
    }
    [[nodiscard]] HelpView &view() { return help().view(); }
    [[nodiscard]] std::string page() { return view().page().id; }
    void open(const char *topic = "index")
    {
        window().help().openAt(QString::fromLatin1(topic), window());
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&help()));
        QApplication::setActiveWindow(&help());
    }
    void away()
    {
        window().help().close();
        QApplication::setActiveWindow(&window());
    }
    /// With the focus in that widget.
    std::string topicAt(QWidget &focus)
    {
        QApplication::setActiveWindow(&window());
        focus.setFocus();
        QTest::keyClick(&focus, Qt::Key_F1);
        const std::string topic = isOpen() ? page() : "none";
        away();
        return topic;
    }
    void type(const char *words)
    {
        help().find().setFocus();
        help().find().clear();
        QTest::keyClicks(&help().find(), QString::fromUtf8(words));
    }
    [[nodiscard]] std::set<std::string> listed()
    {
        std::set<std::string> out;
        const auto pages = readEmbeddedHelpPages();
        for (int i = 0; i < help().contents().count(); ++i)
            if (!help().contents().item(i)->isHidden())
                out.insert(pages.value().pages[static_cast<std::size_t>(i)].id);
        return out;
    }
    /// Where the words of a link stand in the page.
    [[nodiscard]] QPoint pixelOfLink(const QString &to)
    {
        for (QTextBlock block = view().document()->begin(); block.isValid(); block = block.next())
            for (auto it = block.begin(); !it.atEnd(); ++it)
                if (it.fragment().charFormat().anchorHref() == to) {
                    QTextCursor cursor(view().document());
                    cursor.setPosition(it.fragment().position() + 1);
                    view().setTextCursor(cursor);
                    view().ensureCursorVisible();
                    return view().cursorRect(cursor).center() + QPoint(2, 0);
                }
        ADD_FAILURE() << "no link to " << to.toStdString();
        return {};
    }
};

// The keys between backticks under one heading of the page.
std::set<QString> keysUnder(const QString &heading)
{
    const auto pages = readEmbeddedHelpPages();
    std::set<QString> out;
    bool isHere = false;
    for (const QString &line : QString::fromStdString(pages.value().find("shortcuts")->text).split(QLatin1Char('\n'))) {
        if (line.startsWith(QLatin1String("## ")))
            isHere = line.mid(3) == heading;
        if (!isHere || !line.startsWith(QLatin1String("| `")))
            continue;
        const QStringList parts = line.section(QLatin1Char('|'), 1, 1).split(QLatin1Char('`'));
        for (qsizetype i = 1; i < parts.size(); i += 2) {
            const QKeySequence keys = QKeySequence::fromString(parts[i], QKeySequence::PortableText);
            EXPECT_EQ(keys.count(), 1) << parts[i].toStdString();
            EXPECT_NE(keys[0].key(), Qt::Key_unknown) << parts[i].toStdString();
            out.insert(keys.toString());
        }
    }
    EXPECT_FALSE(out.empty()) << heading.toStdString();
    return out;
}

std::set<QString> keysOf(const QWidget &window)
{
    std::set<QString> out;
    const auto add = [&](const QKeySequence &keys) {
        if (!keys.isEmpty())
            out.insert(keys.toString());
    };
    for (const auto *shortcut : window.findChildren<QShortcut *>())
        for (const QKeySequence &keys : shortcut->keys())
            add(keys);
    for (const auto *action : window.findChildren<QAction *>())
        for (const QKeySequence &keys : action->shortcuts())
            add(keys);
    for (const auto *button : window.findChildren<QAbstractButton *>())
        add(button->shortcut());
    return out;
}

void expectSame(const std::set<QString> &written, const std::set<QString> &there)
{
    for (const QString &keys : written)
        EXPECT_TRUE(there.contains(keys)) << keys.toStdString() << " is written, and no key of the window";
    for (const QString &keys : there)
        EXPECT_TRUE(written.contains(keys)) << keys.toStdString() << " is a key, and not written";
}

QTextCharFormat withCell(const QTextBlock &block, QTextCharFormat format)
{
    const QTextCursor at(block);
    if (const QTextTable *table = at.currentTable(); table && format.background().style() == Qt::NoBrush)
        format.setBackground(table->cellAt(at).format().background());
    return format;
}

} // namespace

TEST_F(HelpOfWindow, F1OpensThePageThatFits)
{
    using Middle = MainWindow::Middle;
    const std::vector<std::pair<Middle, const char *>> middles{{Middle::Intake, "intake"}, {Middle::Examine, "examination"},
        {Middle::Retest, "retest"}, {Middle::Close, "close"}, {Middle::Body, "examination"}};
    for (const auto &[middle, topic] : middles) {
        window().showMiddle(middle);
        QWidget *focus = QApplication::focusWidget() ? QApplication::focusWidget() : &window();
        EXPECT_EQ(topicAt(*focus), topic);
    }
    BodyView &body = window().bodyView(View::Back);
    const char *const tabs[] = {"examination", "reasoning", "plan", "examination"}; // visit, next, plan, when
    for (const char *topic : tabs) {
        EXPECT_EQ(topicAt(body), topic);
        QTest::keyClick(&body, Qt::Key_W);
    }
    EXPECT_EQ(topicAt(window().line().line()), "typed-line") << "while somebody types, too";
    session().close();
    EXPECT_EQ(topicAt(body), "index") << "no visit is open";
}

TEST_F(HelpOfWindow, TheButtonsOpenItToo)
{
    for (auto *button : window().findChildren<QToolButton *>())
        if (button->text() == QStringLiteral("Help"))
            QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(isOpen());
    EXPECT_EQ(page(), "examination");
    away();
    QTest::mouseClick(button(QStringLiteral("How to type")), Qt::LeftButton);
    ASSERT_TRUE(isOpen());
    EXPECT_EQ(page(), "typed-line");
    EXPECT_TRUE(view().toPlainText().contains(QStringLiteral("ql r t3 l t2"))) << "the page that the line has";
}

TEST_F(HelpOfWindow, ThereIsOneAndEscClosesIt)
{
    open("consent");
    HelpWindow *first = &help();
    open("retest");
    EXPECT_EQ(&help(), first);
    EXPECT_EQ(page(), "retest");
    EXPECT_FALSE(help().isModal());
    QTest::keyClick(&view(), Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(isOpen());
    window().help().openAt(QStringLiteral("no such page"), window());
    EXPECT_EQ(page(), "index");
}

TEST_F(HelpOfWindow, LinksAndContentsLeadAndBackLeadsBack)
{
    open();
    QTest::mouseClick(view().viewport(), Qt::LeftButton, {}, pixelOfLink(QStringLiteral("consent.md")));
    EXPECT_EQ(page(), "consent");
    EXPECT_EQ(help().contents().currentItem()->text(), QStringLiteral("Consent"));
    EXPECT_EQ(help().windowTitle(), QStringLiteral("Help: Consent"));
    help().contents().setFocus();
    QTest::keyClick(&help().contents(), Qt::Key_Down);
    EXPECT_EQ(page(), "record");
    QTest::keyClick(&help(), Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(page(), "consent");
    QTest::keyClick(&help(), Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(page(), "index");
    QTest::keyClick(&help(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(page(), "consent");
    QTest::keyClick(&help(), Qt::Key_Home, Qt::AltModifier);
    EXPECT_EQ(page(), "index");

    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_Tab); // the first link of the page
    QTest::keyClick(&view(), Qt::Key_Return);
    EXPECT_EQ(page(), "first-visit");
}

TEST_F(HelpOfWindow, EveryLinkOfEveryPageOpensIts)
{
    open();
    const auto pages = readEmbeddedHelpPages();
    int followed = 0;
    for (const HelpPage &from : pages.value().pages) {
        for (const std::string &link : linksIn(from.text)) {
            view().open(from.id);
            ASSERT_EQ(page(), from.id);
            view().setSource(QUrl(QString::fromStdString(link))); // as a press on it does
            EXPECT_EQ(page() + ".md", link);
            EXPECT_GT(view().toPlainText().size(), 200) << link;
            ++followed;
        }
    }
    EXPECT_GT(followed, 30);
}

TEST_F(HelpOfWindow, WordsAreFoundOnAllPagesAndMarked)
{
    open();
    type("chaperone");
    EXPECT_EQ(listed(), std::set<std::string>{"consent"});
    EXPECT_EQ(page(), "index") << "nothing moves while somebody types";
    QTest::keyClick(&help().find(), Qt::Key_Return);
    EXPECT_EQ(page(), "consent");
    EXPECT_TRUE(help().find().hasFocus()) << "Enter again goes on";
    const auto count = static_cast<int>(view().toPlainText().count(QStringLiteral("chaperone"), Qt::CaseInsensitive));
    EXPECT_GE(count, 1);
    EXPECT_EQ(view().found(), count);
    EXPECT_EQ(view().extraSelections().size(), count);
    EXPECT_EQ(view().foundAt(), 0);
    EXPECT_EQ(view().extraSelections().first().cursor.selectedText().toLower(), QStringLiteral("chaperone"));

    type("PEDAL held");
    EXPECT_TRUE(listed().contains("treatment"));
    EXPECT_FALSE(listed().contains("consent")) << "every word stands on the page";
    QTest::keyClick(&help(), Qt::Key_F3);
    const std::string first = page();
    EXPECT_TRUE(listed().contains(first));
    for (int i = view().found(); i > 0; --i) {
        EXPECT_EQ(view().foundAt(), view().found() - i);
        QTest::keyClick(&help(), Qt::Key_F3);
    }
    EXPECT_NE(page(), first) << "on to the next page";
    EXPECT_EQ(view().foundAt(), 0);
    QTest::keyClick(&help(), Qt::Key_F3, Qt::ShiftModifier);
    EXPECT_EQ(page(), first);
    EXPECT_EQ(view().foundAt(), view().found() - 1);

    type("quux");
    EXPECT_TRUE(listed().empty());
    EXPECT_TRUE(help().said().startsWith(QStringLiteral("Nothing found"))) << help().said().toStdString();
    const std::string before = page();
    QTest::keyClick(&help().find(), Qt::Key_Return);
    EXPECT_EQ(page(), before);
    help().find().clear();
    EXPECT_EQ(static_cast<int>(listed().size()), help().contents().count());
    EXPECT_TRUE(view().extraSelections().isEmpty());
}

TEST_F(HelpOfWindow, APlaceThatWasFoundIsSeen)
{
    open("shortcuts");
    type("Shift+F3");
    QTest::keyClick(&help().find(), Qt::Key_Return);
    ASSERT_EQ(page(), "shortcuts");
    const QRect at = view().cursorRect(view().extraSelections().first().cursor);
    EXPECT_TRUE(view().viewport()->rect().contains(at.center()));
    EXPECT_GT(view().verticalScrollBar()->value(), 0);
}

TEST_F(HelpOfWindow, EveryWidgetHasANameAndTabReachesAll)
{
    open();
    type("consent"); // all buttons have something to do
    view().open("limits");
    view().backward();
    view().open("evidence");
    view().backward();
    QWidgetList wanted;
    for (auto *widget : help().findChildren<QWidget *>())
        if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus)
            && widget->focusProxy() == nullptr) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
            wanted << widget;
        }
    EXPECT_GE(wanted.size(), 7);
    std::set<QWidget *> reached;
    help().find().setFocus();
    for (int i = 0; i < 200; ++i) {
        reached.insert(QApplication::focusWidget());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (QWidget *widget : wanted)
        EXPECT_TRUE(reached.contains(widget)) << widget->accessibleName().toStdString();
}

TEST_F(HelpOfWindow, CanBeReadInLightAndDark)
{
    for (const Theme &theme : {Theme::light(), Theme::night()}) {
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), theme);
        open("shortcuts");
        EXPECT_EQ(view().document()->defaultFont().pointSizeF(), QApplication::font().pointSizeF());
        const QPalette palette = view().palette();
        const auto pages = readEmbeddedHelpPages();
        int links = 0;
        for (const HelpPage &one : pages.value().pages) {
            view().open(one.id);
            for (QTextBlock block = view().document()->begin(); block.isValid(); block = block.next())
                for (auto it = block.begin(); !it.atEnd(); ++it) {
                    const QTextCharFormat is = withCell(block, it.fragment().charFormat());
                    const QColor ink =
                        is.hasProperty(QTextFormat::ForegroundBrush) ? is.foreground().color() : palette.color(QPalette::Text);
                    const QColor ground =
                        is.background().style() == Qt::NoBrush ? palette.color(QPalette::Base) : is.background().color();
                    EXPECT_GE(contrast(ink, ground), 4.5) << one.id << ": " << it.fragment().text().toStdString();
                    links += is.isAnchor() ? 1 : 0;
                }
        }
        EXPECT_GT(links, 30);
        type("the");
        QTest::keyClick(&help().find(), Qt::Key_Return);
        for (const auto &mark : view().extraSelections())
            EXPECT_GE(contrast(mark.format.foreground().color(), mark.format.background().color()), 4.5);
    }
}

// The look is changed while the help is open.
TEST_F(HelpOfWindow, FollowsTheLook)
{
    open();
    const auto linkColour = [this] {
        QTextCursor cursor(view().document());
        while (cursor.movePosition(QTextCursor::NextCharacter))
            if (cursor.charFormat().isAnchor())
                return cursor.charFormat().foreground().color();
        return QColor();
    };
    EXPECT_EQ(linkColour(), Theme::light().accent);
    dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::night());
    QCoreApplication::processEvents();
    EXPECT_EQ(linkColour(), Theme::night().accent);
}

TEST_F(HelpOfWindow, InADialogItOpensBesideTheDialogAndCanBeUsed)
{
    open();
    QPointer<HelpWindow> beside;
    inNext<ConsentDialog>([&](ConsentDialog &dialog) {
        QApplication::setActiveWindow(&dialog);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_F1);
        ASSERT_TRUE(isOpen());
        EXPECT_EQ(page(), "consent");
        EXPECT_EQ(help().parentWidget(), &dialog) << "one window at a time, and not behind the dialog";
        beside = &help();
        QApplication::setActiveWindow(&help());
        QTest::keyClick(&help().contents(), Qt::Key_Down);
        EXPECT_EQ(page(), "record") << "the dialog does not block it";
        QTest::keyClick(&help(), Qt::Key_Escape);
        EXPECT_TRUE(dialog.isVisible());
        QApplication::setActiveWindow(&dialog);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_F1);
        beside = window().help().window();
        dialog.reject();
    });
    QApplication::setActiveWindow(&window());
    QTest::keyClick(&window(), Qt::Key_C, Qt::AltModifier);
    EXPECT_FALSE(beside) << "gone with the dialog";
}

TEST_F(HelpOfWindow, EveryTopicOfADialogIsAPage)
{
    const auto pages = readEmbeddedHelpPages();
    ConsentDialog consent(session());
    const auto topic = topicOfDialog(consent);
    ASSERT_TRUE(topic);
    EXPECT_TRUE(pages.value().find(topic->toStdString()));
    EXPECT_FALSE(topicOfDialog(window()));
    for (const char *id : {"cautions", "consent", "examination", "record", "practice-file", "plan", "intake", "retest", "close",
             "typed-line", "evidence", "reasoning", "index"})
        EXPECT_TRUE(pages.value().find(id)) << id;
}

TEST_F(HelpOfWindow, TheTreatmentHasNoneAndTheHelpGoesBeforeIt)
{
    session().aimAt({{StructureId{"latissimus-dorsi"}, Side::Left}, {}, {}});
    session().setTenderness(2);
    open("plan");
    QApplication::setActiveWindow(&window());
    BodyView &body = window().bodyView(View::Back);
    body.setFocus();
    QTest::keyClick(&body, Qt::Key_R);
    auto *treatment = window().findChild<TreatmentWindow *>();
    ASSERT_TRUE(treatment);
    EXPECT_FALSE(isOpen());
    QApplication::setActiveWindow(treatment);
    QTest::keyClick(treatment, Qt::Key_F1);
    EXPECT_FALSE(isOpen());
    QTest::keyClick(&window(), Qt::Key_F1);
    EXPECT_FALSE(isOpen());
    window().help().openAt(QStringLiteral("treatment"), window());
    EXPECT_FALSE(isOpen()) << "whoever asks for it";
    EXPECT_EQ(QApplication::activeModalWidget(), treatment);
    treatment->reject();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(topicAt(body), "plan") << "and it is there again";
}

TEST_F(HelpOfWindow, ThePatientHasNone)
{
    open();
    Q_EMIT window().intake().patientWanted();
    auto *patient = window().findChild<PatientWindow *>();
    ASSERT_TRUE(patient);
    EXPECT_FALSE(isOpen()) << "it went before the screen was handed over";
    QApplication::setActiveWindow(patient);
    QTest::keyClick(patient, Qt::Key_F1);
    QTest::keyClick(&window(), Qt::Key_F1);
    window().help().openAt(QStringLiteral("index"), window());
    EXPECT_FALSE(isOpen());
    delete patient;
}

TEST_F(HelpOfWindow, LocksFromTheHelpAndGoesWithIt)
{
    Lock lock(session(), window());
    session().setComplaint("last words");
    open();
    QPointer<HelpWindow> shown = &help();
    QTimer::singleShot(0, [this] { QTest::keyClick(&view(), Qt::Key_L, Qt::ControlModifier); });
    EXPECT_EQ(QApplication::exec(), Lock::exitCode);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(shown);
    EXPECT_EQ(stored().complaint(), "last words");
}

TEST_F(HelpOfWindow, GoesWithTheWindow)
{
    open();
    QPointer<HelpWindow> shown = &help();
    window().close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_FALSE(shown);
}

TEST_F(HelpOfWindow, ItsKeysAreThoseOfTheWindowAndTheOtherWayRound)
{
    std::set<QString> written = keysUnder(QStringLiteral("Everywhere in the window"));
    for (const QString &keys : keysUnder(QStringLiteral("On the body"))) {
        EXPECT_FALSE(written.contains(keys)) << keys.toStdString() << " stands there twice";
        written.insert(keys);
    }
    expectSame(written, keysOf(window()));
    open();
    expectSame(keysUnder(QStringLiteral("This help")), keysOf(help()));
    ConsentDialog consent(session());
    expectSame(keysUnder(QStringLiteral("Consent")), keysOf(consent));
}

} // namespace raphe::test
