// Hands that go through intake and examination in the real window, by mouse or by keys alone, and count what they do. An action
// is a press of a button, a line painted, a text typed into a field, a choice, or a key that is not Tab; moves by Tab are counted
// for themselves.
#pragma once

#include "app/raphe/MainWindow.h"

#include <functional>
#include <string>
#include <vector>

class QAbstractButton;
class QWidget;

namespace raphe::test {

class VisitHands {
public:
    enum class By { Mouse, Keys };
    VisitHands(MainWindow &window, By by) : m_window(window), m_by(by) { }

    [[nodiscard]] int actions() const { return m_actions; }
    [[nodiscard]] int tabs() const { return m_tabs; }
    /// What was looked for and not found, or could not be reached.
    [[nodiscard]] const std::vector<std::string> &troubles() const { return m_troubles; }
    /// Called with the name of each screen as it is seen.
    void onScreen(std::function<void(QWidget &, const char *)> show) { m_show = std::move(show); }

    /// A patient without a record: opens the list, writes name, birth date and a medicine, and stands in the first visit's
    /// intake.
    void newPatient();
    /// A patient who was here before: finds the name in the list, asks who it is, and stands in the newest visit (CareHands.cpp).
    void greet(const QString &name);
    /// Everything that intake asks of a first visit, without a warning sign.
    void firstVisit();
    /// A new visit of a patient who was here before, and all is as it was but the numbers.
    void followUp();
    /// Movements, joints, tests and palpation of the low back and pelvis, where it hurts on the right.
    void examine();
    /// By mouse and pedal, without a letter typed: a little of the examination of a follow-up visit, its plan, treatment, retest,
    /// close and signature (CareHands.cpp). Stands in the examination before, in the signed visit after.
    void careAndSign();

private:
    void press(QWidget *in, const QString &button);
    /// What the window offers by a button and by a key.
    void open(QWidget *in, const QString &button, int itsKey, Qt::KeyboardModifiers modifiers);
    void type(QWidget *field, const QString &text);
    void choose(QWidget *in, const QString &row, int index);
    void paint(View view, const Place &place);
    void key(int key, Qt::KeyboardModifiers modifiers = {});
    bool tabTo(QWidget *widget);
    /// What is done in the window that opens over this one.
    void inNext(const std::function<void(QWidget &)> &act);
    void see(QWidget &window, const char *name);
    [[nodiscard]] QWidget *field(QWidget *in, const QString &name);
    void warningSigns();
    void consent();
    /// A part of the sheet: movements, joints, tests.
    void part(QWidget &page, int index);
    void feel(const Place &place, const QString &grade);
    void treatByPedal();
    void retest();
    void close();

    MainWindow &m_window;
    By m_by;
    int m_actions = 0;
    int m_tabs = 0;
    std::vector<std::string> m_troubles;
    std::function<void(QWidget &, const char *)> m_show;
};

} // namespace raphe::test
