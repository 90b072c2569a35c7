#include "app/raphe/treatment/LogPage.h"

#include "app/paint/Theme.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/plan/PlanWords.h"
#include "core/treatment/Doses.h"
#include "core/treatment/HomeAdvice.h"

#include <QButtonGroup>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QVBoxLayout>

namespace raphe {

namespace {

QString text(const std::string &words)
{
    return QString::fromStdString(words);
}

QString wordOfStep(StepWord word)
{
    switch (word) {
    case StepWord::Familiar: return LogPage::tr("familiar");
    case StepWord::Eased: return LogPage::tr("eased");
    case StepWord::Sore: return LogPage::tr("sore");
    case StepWord::Lighter: break;
    }
    return LogPage::tr("worked lighter");
}

constexpr int secondsOfMinute = 60;
constexpr int widest = 960; // pixels: the answers stand near what they are about

StepDone startOf(const TreatmentStep &step)
{
    if (step.done)
        return *step.done;
    return !step.hasBegun() ? StepDone::Skipped : step.seconds < step.planned / 2 ? StepDone::Partly : StepDone::Done;
}

} // namespace

// In the words for patients.
QString LogPage::afterCups() const
{
    const Expectation *after = m_session.homeAdvice().after("suction");
    return after ? text(after->text) : QString();
}

LogPage::LogPage(VisitSession &session, QWidget *parent)
    : QWidget(parent), m_session(session), m_rows(new QVBoxLayout), m_sum(hint())
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(48, 32, 48, 32);
    column->setSpacing(14);
    auto *title = new WrappedLabel(tr("What was done"));
    title->setFont(typeface(30, QFont::Bold));
    column->addWidget(title);
    column->addWidget(
        hint(tr("Say of each step how much of it was done; only then does it stand in the record as care that happened.")));
    auto *page = new QWidget;
    page->setLayout(m_rows);
    page->setMaximumWidth(widest);
    column->addWidget(scrolled(page), 1);
    column->addWidget(m_sum);
    QPushButton *confirm = pushButton(tr("It was so"));
    confirm->setAutoDefault(false);
    connect(confirm, &QPushButton::clicked, this, &LogPage::confirmWanted);
    QPushButton *other = pushButton(tr("Something else was done"));
    other->setAutoDefault(false);
    connect(other, &QPushButton::clicked, this, &LogPage::otherWanted);
    auto *row = new QHBoxLayout;
    row->addWidget(other);
    row->addStretch(1);
    row->addWidget(confirm);
    column->addLayout(row);
}

QString LogPage::lineOf(const TreatmentStep &step) const
{
    const Technique *technique = m_session.handTechniques().find(step.technique);
    const QString what =
        tr("%1: %2", "place, technique")
            .arg(text(m_session.knowledge().atlas->spoken(step.place)), text(technique ? technique->name : step.technique));
    QStringList words;
    for (const StepWord word : step.words)
        words << wordOfStep(word);
    QString line = step.hasBegun()
        ? tr("%1\n%2, from %3", "what, how long, time of day").arg(what, text(minutesInWords(step.seconds)), text(step.began))
        : tr("%1\nnot begun").arg(what);
    if (!words.isEmpty())
        line += tr("; %1", "what the patient said").arg(words.join(QStringLiteral(", ")));
    return line;
}

void LogPage::show(const TreatmentLog &log)
{
    m_log = {};
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_shown.clear();
    m_rows->addStretch(1);
    for (const TreatmentStep &step : log.steps)
        addRow(step);
    m_log = log;
    tellSum();
}

void LogPage::append(const TreatmentStep &step)
{
    addRow(step);
    m_log.steps.push_back(step);
    tellSum();
}

void LogPage::addRow(const TreatmentStep &step)
{
    const QString place = text(m_session.knowledge().atlas->spoken(step.place));
    const Technique *technique = m_session.handTechniques().find(step.technique);
    Row out{new QButtonGroup(this), nullptr, nullptr};
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new WrappedLabel(lineOf(step)), 1);
    if (step.hasBegun() && step.planned == 0 && !step.done) {
        out.minutes = new QSpinBox;
        out.minutes->setAccessibleName(tr("%1: minutes", "place").arg(place));
        out.minutes->setRange(1, TreatmentStep::longest / secondsOfMinute);
        out.minutes->setSuffix(tr(" min"));
        out.minutes->setValue((step.seconds + secondsOfMinute / 2) / secondsOfMinute);
        connect(out.minutes, &QSpinBox::valueChanged, this, &LogPage::tellSum);
        row->addWidget(out.minutes);
    }
    if (technique && technique->dose.kPa && step.hasBegun()) {
        out.kPa = new QDoubleSpinBox;
        out.kPa->setAccessibleName(tr("%1: suction in kPa below the air", "place").arg(place));
        out.kPa->setDecimals(0);
        out.kPa->setRange(0, TreatmentStep::strongestSuction);
        out.kPa->setSingleStep(5);
        out.kPa->setSuffix(tr(" kPa"));
        out.kPa->setSpecialValueText(tr("kPa not known"));
        out.kPa->setValue(step.kPa.value_or(0));
        connect(out.kPa, &QDoubleSpinBox::valueChanged, this, &LogPage::tellSum);
        row->addWidget(out.kPa);
    }
    for (QWidget *spin : {static_cast<QWidget *>(out.minutes), static_cast<QWidget *>(out.kPa)})
        if (spin)
            spin->setMinimumHeight(touchTarget);
    const std::pair<StepDone, QString> answers[] = {
        {StepDone::Done, tr("Done")}, {StepDone::Partly, tr("Partly")}, {StepDone::Skipped, tr("Not")}};
    for (const auto &[done, word] : answers) {
        QPushButton *button = toggleButton(word, tr("%1: %2", "place, how much was done").arg(place, word));
        button->setMinimumWidth(2 * touchTarget);
        button->setEnabled(step.hasBegun() || done == StepDone::Skipped);
        button->setChecked(done == startOf(step));
        out.done->addButton(button, static_cast<int>(done));
        row->addWidget(button);
    }
    connect(out.done, &QButtonGroup::idToggled, this, &LogPage::tellSum);
    m_shown.push_back(out);
    m_rows->insertWidget(m_rows->count() - 1, box);
}

// The sum of what is ticked, and what comes together with the days before.
void LogPage::tellSum()
{
    if (m_shown.size() != m_log.steps.size())
        return; // while it is filled
    const TreatmentLog log = confirmed();
    int seconds = 0;
    for (const TreatmentStep &step : log.steps)
        if (step.done != StepDone::Skipped)
            seconds += step.seconds;
    QStringList lines{tr("%1 of work in all.").arg(text(minutesInWords(seconds)))};
    for (const WeekDose &dose : dosesOf(log, m_session.pastTreatments())) {
        if (dose.timesToday == 0 || dose.timesInWeek == dose.timesToday)
            continue;
        const Technique *technique = m_session.handTechniques().find(dose.technique);
        lines << tr("%1, %2: %3 in seven days, %4 times.", "place, technique, how long, how often")
                     .arg(text(m_session.knowledge().atlas->spoken(dose.place)),
                         text(technique ? technique->name : dose.technique), text(minutesInWords(dose.secondsInWeek)),
                         QString::number(dose.timesInWeek));
    }
    if (const CupDose cups = cupsOf(log, m_session.handTechniques()); cups.seconds > 0)
        lines << (cups.strongest ? tr("%1 under cups, %2 kPa at most. %3", "how long, suction, what the patient may expect")
                                       .arg(text(minutesInWords(cups.seconds)), QString::number(*cups.strongest), afterCups())
                                 : tr("%1 under cups. %2", "how long; what the patient may expect")
                                       .arg(text(minutesInWords(cups.seconds)), afterCups()));
    m_sum->say(lines.join(QLatin1Char('\n')));
}

TreatmentLog LogPage::confirmed() const
{
    TreatmentLog out = m_log;
    for (std::size_t i = 0; i < out.steps.size(); ++i) {
        const Row &row = m_shown[i];
        out.steps[i].done = static_cast<StepDone>(row.done->checkedId());
        if (row.minutes)
            out.steps[i].seconds = row.minutes->value() * secondsOfMinute;
        if (row.kPa)
            out.steps[i].kPa = row.kPa->value() > 0 ? std::optional(row.kPa->value()) : std::nullopt;
    }
    return out;
}

} // namespace raphe
