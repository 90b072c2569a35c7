// A pass over places while the hands stay on the patient: the next place in words that can be read at two metres, spoken where
// there is a voice, and answered with two pedals, two keys or two large buttons. What is felt is recorded at once.
#pragma once

#include "app/raphe/Settings.h"
#include "app/raphe/VisitSession.h"
#include "core/examination/Pass.h"

#include <QDialog>

#include <functional>
#include <set>

class QLabel;
class QPushButton;

namespace raphe {

class Speaker;
class WrappedLabel;

class PassDialog : public QDialog {
    Q_OBJECT

public:
    /// Places that cannot be pressed for a caution are to be left out before.
    PassDialog(VisitSession &session, Settings &settings, std::vector<Place> places, QWidget *parent = nullptr);
    ~PassDialog() override;

    /// The test clock of a test; the real one otherwise.
    void setClock(std::function<Pass::Time()> clock) { m_clock = std::move(clock); }
    /// Time has passed; called by a timer too.
    void tick();
    [[nodiscard]] const Pass &pass() const { return m_pass; }
    /// All that was said, in order.
    [[nodiscard]] const QStringList &said() const { return m_said; }

    /// What was pressed last counts, although its time is not over.
    void done(int result) override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void keyReleaseEvent(QKeyEvent *event) override;
    void showEvent(QShowEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    [[nodiscard]] std::optional<Pedal> pedalOf(int key) const;
    [[nodiscard]] QPushButton *makeButton(const QString &text, const QString &about, Pedal pedal);
    void down(Pedal pedal);
    void up(Pedal pedal);
    void take(const PassStep &step);
    void showPlace();
    void say(const QString &text);
    void choosePedals();
    void tellPedals();

    VisitSession &m_session;
    Settings &m_settings;
    Pass m_pass;
    Speaker *m_speaker;
    std::function<Pass::Time()> m_clock;
    WrappedLabel *m_place;
    WrappedLabel *m_echo;
    QLabel *m_progress;
    WrappedLabel *m_help;
    QPushButton *m_speaks;
    QStringList m_said;
    std::vector<int> m_marks; // of the undo stack, before each act
    std::set<Pedal> m_down; // by key
};

} // namespace raphe
