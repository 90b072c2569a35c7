#include "tests/support/VisitHands.h"

#include "app/raphe/intake/ChoiceRow.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QTimer>
#include <QToolButton>

namespace raphe::test {

namespace {

constexpr int tabsAtMost = 400; // of a window; more means that Tab goes round without reaching it

bool isSeen(const QWidget *widget)
{
    return widget && widget->isVisible() && widget->isEnabled();
}

} // namespace

void VisitHands::see(QWidget &window, const char *name)
{
    if (m_show)
        m_show(window, name);
}

QWidget *VisitHands::field(QWidget *in, const QString &name)
{
    for (auto *widget : in->findChildren<QWidget *>())
        if (widget->accessibleName() == name && widget->isVisible() && widget->window() == in->window())
            return widget;
    m_troubles.push_back("no field '" + name.toStdString() + "'");
    return nullptr;
}

void VisitHands::key(int key, Qt::KeyboardModifiers modifiers)
{
    QWidget *focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : QApplication::activeWindow(), static_cast<Qt::Key>(key), modifiers);
    ++m_actions;
}

bool VisitHands::tabTo(QWidget *widget)
{
    for (int i = 0; i < tabsAtMost; ++i) {
        QWidget *focus = QApplication::focusWidget();
        if (focus && (focus == widget || widget->isAncestorOf(focus)))
            return true;
        QTest::keyClick(focus ? focus : widget->window(), Qt::Key_Tab);
        ++m_tabs;
    }
    m_troubles.push_back("Tab does not reach '" + widget->accessibleName().toStdString() + "'");
    return false;
}

void VisitHands::press(QWidget *in, const QString &name)
{
    QAbstractButton *found = nullptr;
    for (auto *button : in->findChildren<QAbstractButton *>())
        if (isSeen(button) && button->window() == in->window()
            && (button->accessibleName().startsWith(name) || button->text().startsWith(name)))
            found = found ? found : button;
    if (!found) {
        m_troubles.push_back("no button '" + name.toStdString() + "'");
        return;
    }
    if (m_by == By::Keys) {
        if (tabTo(found))
            key(Qt::Key_Space);
        return;
    }
    ++m_actions;
    QTest::mouseClick(found, Qt::LeftButton);
}

void VisitHands::open(QWidget *in, const QString &button, int itsKey, Qt::KeyboardModifiers modifiers)
{
    if (m_by == By::Keys)
        key(itsKey, modifiers);
    else
        press(in, button);
}

void VisitHands::type(QWidget *field, const QString &text)
{
    if (!field)
        return;
    if (m_by == By::Keys)
        static_cast<void>(tabTo(field));
    else
        QTest::mouseClick(field, Qt::LeftButton);
    ++m_actions;
    QWidget *focus = QApplication::focusWidget();
    QTest::keyClicks(focus ? focus : field, text);
}

void VisitHands::choose(QWidget *in, const QString &name, int index)
{
    auto *row = qobject_cast<ChoiceRow *>(field(in, name));
    if (!row)
        return;
    if (m_by == By::Mouse) {
        ++m_actions;
        QTest::mouseClick(row->button(index), Qt::LeftButton);
    } else if (tabTo(row)) {
        const QString text = row->button(index)->text();
        if (text.front().isDigit())
            for (const QChar digit : text)
                key(digit.unicode());
        else
            for (int i = 0; i < 5 && row->value() != index; ++i)
                key(text.front().toUpper().unicode());
    }
    if (row->value() != index)
        m_troubles.push_back("'" + name.toStdString() + "' is not what was chosen");
}

void VisitHands::paint(View view, const Place &place)
{
    PainBoard &board = m_window.intake().pain().board();
    const auto spots = board.spots();
    const auto spot = std::find_if(spots.begin(), spots.end(),
        [&](const PainBoard::Spot &s) { return s.place == place && board.views()[s.pane].view == view; });
    if (spot == spots.end()) {
        m_troubles.push_back("no place '" + place.structure.value + "' to paint on");
        return;
    }
    if (m_by == By::Mouse) {
        ++m_actions;
        const QPoint at = board.boxOf(*spot).center();
        QTest::mousePress(&board, Qt::LeftButton, {}, at);
        QTest::mouseMove(&board, at + QPoint(6, 10));
        QTest::mouseMove(&board, at + QPoint(0, 16));
        QTest::mouseRelease(&board, Qt::LeftButton, {}, at + QPoint(0, 16));
        return;
    }
    const std::string side(wordOf(sideWords, place.side));
    type(field(&m_window.intake(), QStringLiteral("Place to paint on, by its name")),
        QString::fromStdString(side + ' ' + place.structure.value).replace(QLatin1Char('-'), QLatin1Char(' ')));
    key(Qt::Key_Return);
}

void VisitHands::inNext(const std::function<void(QWidget &)> &act)
{
    QTimer::singleShot(0, &m_window, [this, act] {
        QWidget *dialog = QApplication::activeModalWidget();
        if (!dialog) {
            m_troubles.emplace_back("no window opened");
            return;
        }
        QWidget *before = QApplication::activeWindow();
        QApplication::setActiveWindow(dialog);
        QTest::qWait(60); // wrapped words find their height
        act(*dialog);
        if (dialog->isVisible() && QApplication::activeModalWidget() == dialog) {
            m_troubles.push_back("'" + dialog->windowTitle().toStdString() + "' did not close");
            dialog->close();
        }
        QApplication::setActiveWindow(before ? before : &m_window);
    });
}

void VisitHands::newPatient()
{
    inNext([this](QWidget &list) {
        inNext([this](QWidget &editor) {
            type(field(&editor, QStringLiteral("Name")), QStringLiteral("Wanda Ferrel"));
            type(field(&editor, QStringLiteral("Birth date")), QStringLiteral("1961-04-07"));
            see(editor, "record");
            press(&editor, QStringLiteral("Save the record"));
        });
        press(&list, QStringLiteral("New patient"));
        see(list, "identity");
        press(&list, QStringLiteral("All three agree"));
    });
    open(&m_window, QStringLiteral("Patients"), Qt::Key_O, Qt::ControlModifier);
}

void VisitHands::warningSigns()
{
    inNext([this](QWidget &dialog) {
        see(dialog, "warning-signs");
        const QString name = QStringLiteral("No to all");
        const auto next = [&]() -> QPushButton * {
            for (auto *button : dialog.findChildren<QPushButton *>())
                if (isSeen(button) && button->text().startsWith(name))
                    return button;
            return nullptr;
        };
        for (int groups = 0; next() && groups < 9; ++groups)
            press(&dialog, name);
        press(&dialog, QStringLiteral("Done"));
    });
    open(&m_window, QStringLiteral("Warning signs"), Qt::Key_A, Qt::AltModifier);
}

void VisitHands::consent()
{
    inNext([this](QWidget &dialog) {
        see(dialog, "consent");
        press(&dialog, QStringLiteral("Explained and agreed"));
        press(&dialog, QStringLiteral("Done"));
    });
    open(&m_window.intake(), QStringLiteral("Consent"), Qt::Key_C, Qt::AltModifier);
}

void VisitHands::firstVisit()
{
    QWidget &page = m_window.intake();
    type(field(&page, QStringLiteral("What brings the patient, in their words")),
        QStringLiteral("A dull ache beside the spine after moving house"));
    type(field(&page, QStringLiteral("Since when")), QStringLiteral("three weeks"));
    choose(&page, QStringLiteral("Pain now"), 4);
    choose(&page, QStringLiteral("Pain worst"), 8);
    choose(&page, QStringLiteral("Pain best"), 1);
    type(field(&page, QStringLiteral("What makes it worse")), QStringLiteral("lifting, sitting"));
    type(field(&page, QStringLiteral("What makes it better")), QStringLiteral("a walk"));
    choose(&page, QStringLiteral("Waking"), 3);
    choose(&page, QStringLiteral("Night"), 1);
    choose(&page, QStringLiteral("How easily it is stirred up"), 0);
    const char *activities[] = {"put on socks", "carry the shopping", "sit through a film"};
    for (int i = 0; i < 3; ++i) {
        type(field(&page, QStringLiteral("What is hard to do, %1").arg(i + 1)), QString::fromUtf8(activities[i]));
        choose(&page, QStringLiteral("Score of %1").arg(i + 1), 3 + i);
    }
    type(field(&page, QStringLiteral("What the patient hopes for, in their words")), QStringLiteral("to work in the garden"));
    paint(View::Back, {StructureId{"lumbar-region-medial"}, Side::Right});
    choose(&page, QStringLiteral("What it feels like"), 0);
    choose(&page, QStringLiteral("How strong it is here"), 5);
    see(m_window, "intake");
    press(&page, QStringLiteral("Said back and agreed"));
    warningSigns();
    consent();
    see(m_window, "intake-asked");
    press(&page, QStringLiteral("To the examination"));
    see(m_window, "examination");
}

void VisitHands::followUp()
{
    open(&m_window, QStringLiteral("New visit"), Qt::Key_N, Qt::ControlModifier);
    QWidget &page = m_window.intake();
    see(m_window, "since-last");
    choose(&page, QStringLiteral("Since the last visit"), 0);
    choose(&page, QStringLiteral("In the two days after it"), 1);
    choose(&page, QStringLiteral("Promised: walk twice a day"), 0);
    choose(&page, QStringLiteral("Pain now"), 2);
    choose(&page, QStringLiteral("Pain worst"), 5);
    choose(&page, QStringLiteral("Pain best"), 0);
    see(m_window, "since-last-told");
    press(&page, QStringLiteral("All the rest is as it was"));
    see(m_window, "follow-up-examination");
}

void VisitHands::examine()
{
    if (m_window.middle() != MainWindow::Middle::Examine)
        open(&m_window, QStringLiteral("Movements, joints and tests"), Qt::Key_M, Qt::AltModifier);
    ExaminePage &page = m_window.examine();
    const auto value = [&](const char *movement, const char *text) {
        type(field(&page, QStringLiteral("%1: how far, degrees").arg(QString::fromUtf8(movement))), QString::fromUtf8(text));
    };
    value("trunk flexion", "45");
    type(field(&page, QStringLiteral("trunk flexion: pain from, degrees")), QStringLiteral("30"));
    choose(&page, QStringLiteral("trunk flexion: pain"), 1);
    value("trunk extension", "10");
    choose(&page, QStringLiteral("trunk extension: pain"), 0);
    value("RIGHT trunk side bending", "18");
    value("LEFT trunk side bending", "27");
    press(&page, QStringLiteral("trunk flexion: today's retest"));
    see(m_window, "movements");
    part(page, 1);
    choose(&page, QStringLiteral("right L4/L5 segment: joint play"), 2);
    choose(&page, QStringLiteral("left L4/L5 segment: joint play"), 3);
    choose(&page, QStringLiteral("right sacroiliac joint: motion"), 1);
    press(&page, QStringLiteral("right sacroiliac joint: felt only after comparing"));
    see(m_window, "joints");
    part(page, 2);
    const int none = 0;
    const int familiar = 2;
    choose(&page, QStringLiteral("sacroiliac distraction"), familiar);
    choose(&page, QStringLiteral("RIGHT thigh thrust"), familiar);
    choose(&page, QStringLiteral("LEFT thigh thrust"), none);
    choose(&page, QStringLiteral("RIGHT one hip bent, the other hung back (Gaenslen)"), familiar);
    choose(&page, QStringLiteral("LEFT one hip bent, the other hung back (Gaenslen)"), none);
    choose(&page, QStringLiteral("sacroiliac compression"), none);
    choose(&page, QStringLiteral("sacral thrust"), none);
    see(m_window, "tests");
    if (m_by == By::Keys)
        key(Qt::Key_L, Qt::AltModifier);
    type(field(&m_window, QStringLiteral("Findings in trade talk")),
        QStringLiteral("r glute max origin tender 3 familiar, r ql tender 2 ropy, l l4/5 clear"));
    see(m_window, "line");
    key(Qt::Key_Return);
    open(&m_window, QStringLiteral("Movements, joints and tests"), Qt::Key_M, Qt::AltModifier);
    see(m_window, "palpated");
}

void VisitHands::part(QWidget &page, int index)
{
    auto *tabs = page.findChild<QTabWidget *>();
    if (m_by == By::Mouse) {
        ++m_actions;
        QTest::mouseClick(tabs->tabBar(), Qt::LeftButton, {}, tabs->tabBar()->tabRect(index).center());
    } else if (tabTo(tabs->tabBar())) {
        key(Qt::Key_Right);
    }
    if (tabs->currentIndex() != index)
        m_troubles.emplace_back("the part of the sheet does not open");
}

} // namespace raphe::test
