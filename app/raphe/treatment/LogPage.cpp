#include "app/raphe/treatment/LogPage.h"

#include "app/paint/Theme.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/plan/PlanWords.h"
#include "core/treatment/Doses.h"
#include "core/treatment/HomeAdvice.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
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
    const auto advice = readEmbeddedHomeAdvice(m_session.adviser().rules());
    const Expectation *after = advice ? advice.value().after("suction") : nullptr;
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
    column->addWidget(scrolled(page), 1);
    column->addWidget(m_sum);
    QPushButton *confirm = pushButton(tr("It was so"));
    confirm->setAutoDefault(false);
    connect(confirm, &QPushButton::clicked, this, &LogPage::confirmWanted);
    auto *row = new QHBoxLayout;
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
    m_log = log;
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_groups.clear();
    for (const TreatmentStep &step : log.steps) {
        auto *box = new QWidget;
        auto *row = new QHBoxLayout(box);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(new WrappedLabel(lineOf(step)), 1);
        auto *group = new QButtonGroup(box);
        const std::pair<StepDone, QString> answers[] = {
            {StepDone::Done, tr("Done")}, {StepDone::Partly, tr("Partly")}, {StepDone::Skipped, tr("Not")}};
        for (const auto &[done, word] : answers) {
            QPushButton *button = toggleButton(
                word, tr("%1: %2", "place, how much was done").arg(text(m_session.knowledge().atlas->spoken(step.place)), word));
            button->setMinimumWidth(2 * touchTarget);
            button->setEnabled(step.hasBegun() || done == StepDone::Skipped);
            button->setChecked(done == startOf(step));
            group->addButton(button, static_cast<int>(done));
            row->addWidget(button);
        }
        m_groups.push_back(group);
        m_rows->addWidget(box);
    }
    m_rows->addStretch(1);
    int seconds = 0;
    for (const TreatmentStep &step : log.steps)
        seconds += step.seconds;
    QString sum = tr("%1 of work in all.").arg(text(minutesInWords(seconds)));
    if (const CupDose cups = cupsOf(log, m_session.handTechniques()); cups.seconds > 0)
        sum += tr(" %1 under cups. %2", "how long; what the patient may expect")
                   .arg(text(minutesInWords(cups.seconds)), afterCups());
    m_sum->say(sum);
}

TreatmentLog LogPage::confirmed() const
{
    TreatmentLog out = m_log;
    for (std::size_t i = 0; i < out.steps.size(); ++i)
        out.steps[i].done = static_cast<StepDone>(m_groups[i]->checkedId());
    return out;
}

} // namespace raphe
