// The screen of a treatment: one step at a time for oiled hands, driven by one pedal or key; a page for when the work is stopped;
// at the end the log, to be confirmed. Everything is written down as it happens, so that a lock or a crash loses a few seconds at
// most. The pedal cannot leave it. Deletes itself when it is closed.
#pragma once

#include "app/raphe/Settings.h"
#include "app/raphe/VisitSession.h"
#include "app/raphe/treatment/ScreenAwake.h"
#include "core/treatment/SinglePedal.h"
#include "core/treatment/TreatmentRun.h"

#include <QDialog>

#include <functional>

class QStackedWidget;

namespace raphe {

class LogPage;
class Speaker;
class StepView;
class StopPage;
class WorkPicker;

class TreatmentWindow : public QDialog {
    Q_OBJECT

public:
    /// Goes on where the visit's log stands; `ahead` is what to begin with when nothing stands there.
    TreatmentWindow(VisitSession &session, Settings &settings, const Theme &theme, std::vector<TreatmentStep> ahead,
        QWidget *parent = nullptr);
    ~TreatmentWindow() override;

    /// The test clock of a test; the real one otherwise.
    void setClock(std::function<TreatmentRun::Now()> clock) { m_clock = std::move(clock); }
    /// Time has passed; called by a timer too.
    void tick();
    [[nodiscard]] const TreatmentRun &run() const { return m_run; }
    /// All that was said, in order.
    [[nodiscard]] const QStringList &said() const { return m_said; }
    /// The key that leaves it by hand: the clock stands, and the work can go on later.
    void reject() override;

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void keyReleaseEvent(QKeyEvent *event) override;
    void changeEvent(QEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;

private:
    [[nodiscard]] bool isPedal(int key) const;
    void act(const std::optional<SinglePedal::Said> &said);
    void word(StepWord word, const QString &aloud);
    void showOther();
    void takeOther(TreatmentStep step);
    void moved();
    void showPage();
    void keep();
    void say(const QString &words);

    VisitSession &m_session;
    Settings &m_settings;
    TreatmentRun m_run;
    SinglePedal m_pedal;
    ScreenAwake m_awake;
    Speaker *m_speaker;
    QStackedWidget *m_pages;
    StepView *m_step;
    StopPage *m_stop;
    LogPage *m_log;
    WorkPicker *m_other;
    std::function<TreatmentRun::Now()> m_clock;
    QStringList m_said;
};

} // namespace raphe
