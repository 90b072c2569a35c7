#include "tests/support/IntakeHands.h"

#include "app/raphe/intake/ChoiceRow.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabBar>
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

void IntakeHands::see(QWidget &window, const char *name)
{
    if (m_show)
        m_show(window, name);
}

QWidget *IntakeHands::field(QWidget *in, const QString &name)
{
    for (auto *widget : in->findChildren<QWidget *>())
        if (widget->accessibleName() == name && widget->isVisible() && widget->window() == in->window())
            return widget;
    m_troubles.push_back("no field '" + name.toStdString() + "'");
    return nullptr;
}

void IntakeHands::key(int key, Qt::KeyboardModifiers modifiers)
{
    QWidget *focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : QApplication::activeWindow(), static_cast<Qt::Key>(key), modifiers);
    ++m_actions;
}

bool IntakeHands::tabTo(QWidget *widget)
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

void IntakeHands::press(QWidget *in, const QString &name)
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

void IntakeHands::open(QWidget *in, const QString &button, int itsKey, Qt::KeyboardModifiers modifiers)
{
    if (m_by == By::Keys)
        key(itsKey, modifiers);
    else
        press(in, button);
}

void IntakeHands::type(QWidget *field, const QString &text)
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

void IntakeHands::choose(QWidget *in, const QString &name, int index)
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

void IntakeHands::paint(View view, const Place &place)
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

void IntakeHands::inNext(const std::function<void(QWidget &)> &act)
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

void IntakeHands::newPatient()
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

void IntakeHands::warningSigns()
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

void IntakeHands::consent()
{
    inNext([this](QWidget &dialog) {
        see(dialog, "consent");
        press(&dialog, QStringLiteral("Explained and agreed"));
        press(&dialog, QStringLiteral("Done"));
    });
    open(&m_window.intake(), QStringLiteral("Consent"), Qt::Key_C, Qt::AltModifier);
}

void IntakeHands::firstVisit()
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

void IntakeHands::followUp()
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

} // namespace raphe::test
