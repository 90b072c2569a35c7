#include "app/raphe/examination/PassDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/examination/PedalsDialog.h"
#include "app/raphe/examination/Speaker.h"
#include "app/raphe/practice/FormParts.h"

#include <QElapsedTimer>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace raphe {

namespace {

constexpr int tickTime = 40; // ms
constexpr int farSize = 34; // points: letters of some 9 mm, read at two metres
constexpr int nearSize = 20;

void setSize(QWidget *widget, int points)
{
    QFont font = widget->font();
    font.setPointSize(points);
    font.setBold(points == farSize);
    widget->setFont(font);
}

} // namespace

PassDialog::PassDialog(VisitSession &session, Settings &settings, std::vector<Place> places, QWidget *parent)
    : QDialog(parent),
      m_session(session),
      m_settings(settings),
      m_pass(*session.knowledge().atlas, std::move(places)),
      m_speaker(new Speaker(this)),
      m_place(new WrappedLabel),
      m_echo(new WrappedLabel),
      m_progress(new QLabel),
      m_help(hint()),
      m_speaks(pushButton(tr("Speak")))
{
    setWindowTitle(tr("Pass with two pedals"));
    resize(860, 560);
    auto elapsed = std::make_shared<QElapsedTimer>();
    elapsed->start();
    m_clock = [elapsed] { return Pass::Time(elapsed->elapsed()); };

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(12);
    m_progress->setProperty("role", QStringLiteral("quiet"));
    column->addWidget(m_progress);
    m_place->setAlignment(Qt::AlignCenter);
    m_place->setAccessibleName(tr("The place to feel now"));
    setSize(m_place, farSize);
    column->addStretch(1);
    column->addWidget(m_place);
    m_echo->setAlignment(Qt::AlignCenter);
    m_echo->setAccessibleName(tr("What was recorded last"));
    setSize(m_echo, nearSize);
    column->addWidget(m_echo);
    column->addStretch(1);
    auto *pedals = new QHBoxLayout;
    pedals->addWidget(makeButton(tr("Clear, or on"), tr("Clear; on, when it is sore; twice quickly: take back"), Pedal::Clear));
    pedals->addWidget(makeButton(tr("Sore"), tr("Sore, once more for each grade; held: familiar"), Pedal::Sore));
    column->addLayout(pedals);
    column->addWidget(m_help);
    auto *row = new QHBoxLayout;
    m_speaks->setCheckable(true);
    m_speaks->setChecked(settings.speaks());
    m_speaks->setEnabled(m_speaker->canSpeak());
    m_speaks->setToolTip(m_speaker->canSpeak() ? tr("Say each place and each answer aloud") : tr("No voice is installed"));
    connect(m_speaks, &QPushButton::clicked, this, [this](bool on) {
        m_settings.setSpeaks(on);
        if (!on)
            m_speaker->stop();
    });
    QPushButton *choose = pushButton(tr("Pedals ..."));
    choose->setToolTip(tr("Which key each pedal sends"));
    connect(choose, &QPushButton::clicked, this, &PassDialog::choosePedals);
    QPushButton *done = pushButton(tr("Done"));
    connect(done, &QPushButton::clicked, this, &PassDialog::accept);
    row->addWidget(m_speaks);
    row->addWidget(choose);
    row->addStretch(1);
    row->addWidget(done);
    column->addLayout(row);
    for (QPushButton *button : findChildren<QPushButton *>()) {
        button->setAutoDefault(false);
        button->installEventFilter(this);
    }

    auto *timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &PassDialog::tick);
    timer->start(tickTime);
    tellPedals();
    showPlace();
    done->setFocus();
}

PassDialog::~PassDialog() = default;

QPushButton *PassDialog::makeButton(const QString &text, const QString &about, Pedal pedal)
{
    QPushButton *button = pushButton(text);
    button->setAccessibleName(about);
    button->setToolTip(about);
    button->setFixedHeight(2 * touchTarget);
    setSize(button, nearSize);
    connect(button, &QPushButton::pressed, this, [this, pedal] { down(pedal); });
    connect(button, &QPushButton::released, this, [this, pedal] { up(pedal); });
    return button;
}

std::optional<Pedal> PassDialog::pedalOf(int key) const
{
    for (const Pedal pedal : {Pedal::Clear, Pedal::Sore})
        if (m_settings.pedalKey(pedal) == key)
            return pedal;
    return std::nullopt;
}

// A pedal never presses the button that has the focus, nor goes on to the next, whichever key it sends.
bool PassDialog::eventFilter(QObject *watched, QEvent *event)
{
    const bool isPress = event->type() == QEvent::KeyPress;
    if (!isPress && event->type() != QEvent::KeyRelease)
        return QDialog::eventFilter(watched, event);
    auto *key = static_cast<QKeyEvent *>(event);
    if (!pedalOf(key->key()))
        return QDialog::eventFilter(watched, event);
    isPress ? keyPressEvent(key) : keyReleaseEvent(key);
    return true;
}

void PassDialog::keyPressEvent(QKeyEvent *event)
{
    const auto pedal = pedalOf(event->key());
    if (!pedal)
        return QDialog::keyPressEvent(event);
    if (!event->isAutoRepeat()) {
        m_down.insert(*pedal);
        down(*pedal);
    }
}

void PassDialog::keyReleaseEvent(QKeyEvent *event)
{
    const auto pedal = pedalOf(event->key());
    if (!pedal)
        return QDialog::keyReleaseEvent(event);
    if (!event->isAutoRepeat() && m_down.erase(*pedal) > 0)
        up(*pedal);
}

void PassDialog::showEvent(QShowEvent *event)
{
    QDialog::showEvent(event);
    say(QString::fromStdString(m_pass.prompt()));
}

// A pedal that is let go while another window has the keys would count as held.
void PassDialog::changeEvent(QEvent *event)
{
    if (event->type() == QEvent::ActivationChange && !isActiveWindow())
        for (const Pedal pedal : std::exchange(m_down, {}))
            up(pedal);
    QDialog::changeEvent(event);
}

void PassDialog::done(int result)
{
    for (const Pedal pedal : std::exchange(m_down, {}))
        up(pedal);
    take(m_pass.tick(m_clock() + 2 * quickPress));
    QDialog::done(result);
}

void PassDialog::down(Pedal pedal)
{
    take(m_pass.press(pedal, m_clock()));
}

void PassDialog::up(Pedal pedal)
{
    take(m_pass.release(pedal, m_clock()));
}

void PassDialog::tick()
{
    take(m_pass.tick(m_clock()));
}

void PassDialog::take(const PassStep &step)
{
    switch (step.kind) {
    case PassStep::Kind::Record: {
        m_marks.push_back(m_session.undoStack().index());
        m_session.record({findingOf(m_pass.places()[step.at], step.entry)}, {}, QString::fromStdString(step.say));
        break;
    }
    case PassStep::Kind::TakeBack:
        while (m_session.undoStack().index() > m_marks.back())
            m_session.undoStack().undo();
        m_marks.pop_back();
        break;
    case PassStep::Kind::Nothing: break;
    }
    if (step.say.empty())
        return;
    say(QString::fromStdString(step.say));
    showPlace();
}

void PassDialog::showPlace()
{
    const std::size_t count = m_pass.places().size();
    m_place->say(QString::fromStdString(m_pass.prompt()));
    m_progress->setText(
        m_pass.isDone() ? tr("%1 of %1 places", "of a pass").arg(count) : tr("Place %1 of %2").arg(m_pass.at() + 1).arg(count));
    m_echo->say(m_said.isEmpty() ? QString() : m_said.back());
}

void PassDialog::say(const QString &text)
{
    m_said << text;
    if (m_settings.speaks())
        m_speaker->say(text);
}

void PassDialog::choosePedals()
{
    if (PedalsDialog(m_settings, this).exec() == QDialog::Accepted)
        tellPedals();
}

void PassDialog::tellPedals()
{
    const auto name = [this](Pedal pedal) { return QKeySequence(m_settings.pedalKey(pedal)).toString(QKeySequence::NativeText); };
    m_help->say(
        tr("%1: clear, or on when it is sore; twice quickly takes back. %2: sore, once more for each grade; held: familiar. "
           "Soreness to touch is asked, not motion. Palpation repeats only moderately from one examiner to another.")
            .arg(name(Pedal::Clear), name(Pedal::Sore)));
}

} // namespace raphe
