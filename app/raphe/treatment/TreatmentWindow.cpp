#include "app/raphe/treatment/TreatmentWindow.h"

#include "app/raphe/examination/Speaker.h"
#include "app/raphe/treatment/AskMinded.h"
#include "app/raphe/treatment/LogPage.h"
#include "app/raphe/treatment/StepView.h"
#include "app/raphe/treatment/StopPage.h"
#include "app/raphe/treatment/WorkPicker.h"
#include "core/treatment/Gate.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QStackedWidget>
#include <QTime>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace raphe {

namespace {

constexpr int tickTime = 40; // ms

TreatmentLog begunWith(TreatmentLog log, std::vector<TreatmentStep> ahead)
{
    if (!isOpen(log))
        log.ahead = std::move(ahead);
    return log;
}

} // namespace

TreatmentWindow::TreatmentWindow(
    VisitSession &session, Settings &settings, const Theme &theme, std::vector<TreatmentStep> ahead, QWidget *parent)
    : QDialog(parent, Qt::Window | Qt::FramelessWindowHint),
      m_session(session),
      m_settings(settings),
      m_run(begunWith(session.visit().treatment, std::move(ahead)),
          [&session](const TreatmentStep &step) { return gateOf(session.cautions(), session.handTechniques(), step); }),
      m_speaker(new Speaker(this)),
      m_pages(new QStackedWidget),
      m_step(new StepView(session, theme)),
      m_stop(new StopPage),
      m_log(new LogPage(session)),
      m_other(new WorkPicker(session))
{
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(QStringLiteral("Raphe")); // no name of a patient
    auto elapsed = std::make_shared<QElapsedTimer>();
    elapsed->start();
    m_clock = [elapsed] {
        return TreatmentRun::Now{
            TreatmentRun::Time(elapsed->elapsed()), QTime::currentTime().toString(QStringLiteral("HH:mm:ss")).toStdString()};
    };
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    for (QWidget *page : {static_cast<QWidget *>(m_step), static_cast<QWidget *>(m_stop), static_cast<QWidget *>(m_log),
             static_cast<QWidget *>(m_other)})
        m_pages->addWidget(page);
    column->addWidget(m_pages);
    connect(m_stop, &StopPage::goOnWanted, this, [this] {
        m_run.goOn(m_clock());
        moved();
    });
    connect(m_stop, &StopPage::endWanted, this, [this] {
        AdverseEvent event = m_stop->told();
        event.time = m_clock().clock;
        const bool isSomething = !event.signs.empty() || !event.told.empty();
        m_run.end(m_clock(), isSomething ? std::optional(event) : std::nullopt);
        moved();
    });
    connect(m_log, &LogPage::confirmWanted, this, [this] {
        m_session.setTreatment(m_log->confirmed());
        QDialog::accept();
    });
    connect(m_log, &LogPage::otherWanted, this, &TreatmentWindow::showOther);
    connect(m_other, &WorkPicker::chosen, this, &TreatmentWindow::takeOther);
    connect(m_other, &WorkPicker::left, this, [this] { showPage(); });
    connect(&session, &VisitSession::intakeChanged, this, [this] {
        m_run.recheck(m_clock());
        moved();
    });
    qApp->installEventFilter(this);
    auto *timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &TreatmentWindow::tick);
    timer->start(tickTime);
    resize(1280, 800);
    moved();
}

TreatmentWindow::~TreatmentWindow() = default;

bool TreatmentWindow::isPedal(int key) const
{
    return key == m_settings.pedalKey(Pedal::Clear) || key == m_settings.pedalKey(Pedal::Sore);
}

// A pedal never presses the button that has the focus.
bool TreatmentWindow::eventFilter(QObject *watched, QEvent *event)
{
    const bool isPress = event->type() == QEvent::KeyPress;
    const auto *widget = qobject_cast<QWidget *>(watched);
    if (!widget || widget->window() != this)
        return QDialog::eventFilter(watched, event);
    if ((isPress || event->type() == QEvent::KeyRelease) && isPedal(static_cast<QKeyEvent *>(event)->key())) {
        isPress ? keyPressEvent(static_cast<QKeyEvent *>(event)) : keyReleaseEvent(static_cast<QKeyEvent *>(event));
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

void TreatmentWindow::keyPressEvent(QKeyEvent *event)
{
    if (isPedal(event->key())) {
        if (!event->isAutoRepeat())
            m_pedal.press(m_clock().at);
        return;
    }
    if (m_pages->currentWidget() != m_step)
        return QDialog::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_F: return word(StepWord::Familiar, tr("FAMILIAR"));
    case Qt::Key_E: return word(StepWord::Eased, tr("EASED"));
    case Qt::Key_S: return word(StepWord::Sore, tr("SORE"));
    case Qt::Key_L: return word(StepWord::Lighter, tr("LIGHTER"));
    case Qt::Key_X: m_run.changeSide(); return moved();
    case Qt::Key_O: return showOther();
    case Qt::Key_N: m_run.skip(m_clock()); return moved();
    default: return QDialog::keyPressEvent(event);
    }
}

void TreatmentWindow::keyReleaseEvent(QKeyEvent *event)
{
    if (!isPedal(event->key()))
        return QDialog::keyReleaseEvent(event);
    if (!event->isAutoRepeat())
        act(m_pedal.release(m_clock().at));
}

// A pedal that is let go while another window has the keys would count as held.
void TreatmentWindow::changeEvent(QEvent *event)
{
    if (event->type() == QEvent::ActivationChange && !isActiveWindow() && m_pedal.isDown())
        act(m_pedal.release(m_clock().at));
    QDialog::changeEvent(event);
}

void TreatmentWindow::tick()
{
    const TreatmentRun::Now now = m_clock();
    act(m_pedal.tick(now.at));
    if (m_run.tick(now))
        keep();
    if (m_pages->currentWidget() == m_step)
        m_step->tick(m_run, now.at);
}

void TreatmentWindow::act(const std::optional<SinglePedal::Said> &said)
{
    if (!said)
        return;
    const TreatmentRun::Now now{said->at, m_clock().clock};
    switch (said->act) {
    case SinglePedal::Act::Next: m_run.advance(now); break;
    case SinglePedal::Act::Back: m_run.back(now); break;
    case SinglePedal::Act::Stop: m_run.stop(now); break;
    }
    moved();
}

void TreatmentWindow::word(StepWord word, const QString &aloud)
{
    m_run.say(word);
    m_step->echo(aloud);
    say(aloud);
    keep();
}

// While the clock of a step runs it runs on.
void TreatmentWindow::showOther()
{
    m_other->begin();
    m_pages->setCurrentWidget(m_other);
}

// During the work it comes next, behind the gate as all steps; after it, it was done.
void TreatmentWindow::takeOther(TreatmentStep step)
{
    const Technique *technique = m_session.handTechniques().find(step.technique);
    const int dose = technique ? technique->dose.seconds : 0;
    if (m_run.phase() != TreatmentRun::Phase::Over) {
        step.planned = dose;
        m_run.add(std::move(step), m_clock());
        return moved();
    }
    const auto held = gateOf(m_session.cautions(), m_session.handTechniques(), step);
    const bool isStopped =
        std::any_of(held.begin(), held.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; });
    if (isStopped || (!held.empty() && !askMinded(m_session, step, reasonsOf(held), this)))
        return;
    step.minded = idsOf(held);
    step.seconds = dose;
    step.began = QTime::fromString(QString::fromStdString(m_clock().clock), QStringLiteral("HH:mm:ss"))
                     .addSecs(-dose)
                     .toString(QStringLiteral("HH:mm:ss"))
                     .toStdString();
    m_run.addPast(step);
    m_log->append(step);
    keep();
    m_pages->setCurrentWidget(m_log);
}

// Touching is off unless somebody switched it on.
void TreatmentWindow::mousePressEvent(QMouseEvent *event)
{
    if (m_settings.touches() && m_pages->currentWidget() == m_step)
        m_pedal.press(m_clock().at);
    QDialog::mousePressEvent(event);
}

void TreatmentWindow::mouseReleaseEvent(QMouseEvent *event)
{
    if (m_settings.touches() && m_pedal.isDown())
        act(m_pedal.release(m_clock().at));
    QDialog::mouseReleaseEvent(event);
}

// Another step, or another page.
void TreatmentWindow::moved()
{
    showPage();
    keep();
}

void TreatmentWindow::showPage()
{
    const TreatmentRun::Time now = m_clock().at;
    switch (m_run.phase()) {
    case TreatmentRun::Phase::Stopped:
        if (m_pages->currentWidget() != m_stop)
            m_stop->begin();
        m_pages->setCurrentWidget(m_stop);
        say(tr("Stopped."));
        break;
    case TreatmentRun::Phase::Over:
        if (m_pages->currentWidget() != m_log) // a press on the page changes nothing that was ticked
            m_log->show(m_run.treatment());
        m_pages->setCurrentWidget(m_log);
        say(tr("The end."));
        break;
    case TreatmentRun::Phase::Ready:
    case TreatmentRun::Phase::Working: {
        m_pages->setCurrentWidget(m_step);
        m_step->show(m_run, now);
        const TreatmentStep &step = *m_run.current();
        const bool isWorking = m_run.phase() == TreatmentRun::Phase::Working;
        m_step->echo(isWorking ? tr("Working") : QString());
        m_step->tick(m_run, now);
        say(isWorking ? tr("%1, begins", "side").arg(sideAloud(step.place.side))
                      : tr("%1, %2", "side, place")
                            .arg(sideAloud(step.place.side),
                                QString::fromStdString(m_session.knowledge().atlas->at(step.place.structure).names.english)));
        break;
    }
    }
}

void TreatmentWindow::keep()
{
    m_session.setTreatment(m_run.treatment());
}

void TreatmentWindow::say(const QString &words)
{
    m_said << words;
    if (m_settings.speaks())
        m_speaker->say(words);
}

void TreatmentWindow::reject()
{
    if (m_pages->currentWidget() == m_other)
        return showPage(); // one page back
    if (m_run.phase() == TreatmentRun::Phase::Working)
        m_run.back(m_clock()); // the clock stands, the seconds are kept
    keep();
    QDialog::reject();
}

} // namespace raphe
