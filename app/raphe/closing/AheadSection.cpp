#include "app/raphe/closing/AheadSection.h"

#include "app/raphe/FlowLayout.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/treatment/Retest.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

// What is offered first; common practice, no source.
constexpr int usualDays = 7;
constexpr int usualVisits = 4;
constexpr int goalWeeks[] = {2, 4, 8, 12};

} // namespace

GoalRow::GoalRow(QWidget *parent)
    : ListRow(tr("goal"), parent),
      m_text(new TextLine(tr("Goal"))),
      m_until(new QComboBox),
      m_reached(new QCheckBox(tr("Reached")))
{
    m_text->setPlaceholderText(tr("What the patient wants to do again"));
    m_until->setAccessibleName(tr("Until when"));
    m_until->setMinimumHeight(touchTarget);
    line().addWidget(m_text, 1);
    line().addWidget(m_until);
    line().addWidget(m_reached);
    watch(m_text);
    connect(m_until, &QComboBox::activated, this, &GoalRow::edited);
    connect(m_reached, &QCheckBox::clicked, this, &GoalRow::edited);
    setStops({m_text, m_until, m_reached});
    give(nothing());
}

void GoalRow::give(const Goal &goal)
{
    const QSignalBlocker quiet(m_text);
    m_text->give(goal.text);
    m_until->clear();
    m_until->addItem(tr("open"), QString());
    const QDate today = QDate::currentDate();
    for (const int weeks : goalWeeks)
        m_until->addItem(tr("in %n weeks", "", weeks), today.addDays(7 * weeks).toString(Qt::ISODate));
    const QString until = QString::fromStdString(goal.until);
    if (m_until->findData(until) < 0)
        m_until->addItem(dayWords(goal.until), until);
    m_until->setCurrentIndex(m_until->findData(until));
    m_reached->setChecked(goal.reached);
    tellButton();
}

Goal GoalRow::value() const
{
    return {m_text->value(), m_until->currentData().toString().toStdString(), m_reached->isChecked()};
}

bool GoalRow::isBlank() const
{
    return m_text->isBlank();
}

AheadSection::AheadSection(VisitSession &session, QWidget *parent)
    : CloseSection(session, parent),
      m_focus(new TextBlock(tr("The next visit looks at, one a line"), 2)),
      m_offers(new QWidget),
      m_offered(new FlowLayout(m_offers)),
      m_goals(new RowsOf<GoalRow>([] { return new GoalRow; }))
{
    column().addWidget(heading(tr("Next time")));
    column().addWidget(m_focus);
    m_focus->setPlaceholderText(m_focus->accessibleName());
    column().addWidget(m_offers);
    column().addWidget(heading(tr("Goals")));
    column().addWidget(m_goals);
    makePlan();
    connect(m_focus, &QPlainTextEdit::textChanged, this, [this] {
        if (isShowing())
            return;
        Closing changed = closing();
        changed.focus = linesIn(m_focus->toPlainText());
        write(changed);
        offerFocus();
    });
    connect(m_goals, &RecordField::edited, this, [this] {
        Closing changed = closing();
        changed.goals = m_goals->value();
        write(changed);
    });
}

// What was planned and not done, and what was not examined again.
void AheadSection::offerFocus()
{
    while (QLayoutItem *item = m_offered->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
    const Visit &visit = m_session.visit();
    const Atlas &atlas = *m_session.knowledge().atlas;
    std::vector<std::string> lines;
    for (const TreatmentStep &step : visit.treatment.steps)
        if (!step.hasBegun() || step.done == StepDone::Skipped)
            lines.push_back(tr("%1: not treated", "a place").arg(QString::fromStdString(atlas.spoken(step.place))).toStdString());
    for (const RetestItem &item : notRetested(visit, m_session.examination(), atlas))
        if (!item.isPain())
            lines.push_back(tr("%1: examine again", "a place or test").arg(QString::fromStdString(item.name)).toStdString());
    constexpr std::size_t most = 6;
    std::size_t shown = 0;
    for (const std::string &line : lines) {
        const auto &focus = visit.closing.focus;
        if (shown == most || std::find(focus.begin(), focus.end(), line) != focus.end())
            continue;
        ++shown;
        QPushButton *button = pushButton(QString::fromStdString(line));
        button->setToolTip(tr("Adds it"));
        connect(button, &QPushButton::clicked, this, [this, line] { addFocus(line); });
        m_offered->addWidget(button);
        button->show();
    }
    m_offers->setVisible(shown > 0);
}

void AheadSection::addFocus(const std::string &line)
{
    Closing changed = closing();
    changed.focus.push_back(line);
    write(changed);
    refresh();
}

void AheadSection::makePlan()
{
    column().addWidget(heading(tr("Plan of care")));
    m_agreed = hint();
    column().addWidget(m_agreed);
    m_plan = new QWidget;
    auto *lines = new QVBoxLayout(m_plan);
    lines->setContentsMargins(0, 0, 0, 0);
    auto *row = new QHBoxLayout;
    const auto spin = [&](const QString &name, const QString &before, const QString &after, int most) {
        auto *box = new QSpinBox;
        box->setAccessibleName(name);
        box->setMinimumHeight(touchTarget);
        box->setRange(1, most);
        box->setPrefix(before);
        box->setSuffix(after);
        row->addWidget(box);
        connect(box, &QSpinBox::valueChanged, this, &AheadSection::takePlan);
        return box;
    };
    m_every = spin(tr("How often, in days"), tr("every "), tr(" days"), CarePlan::mostDays);
    m_visits = spin(tr("Visits until it is asked whether it works"), {}, tr(" visits, then look again"), CarePlan::mostVisits);
    row->addStretch(1);
    lines->addLayout(row);
    m_success = new TextLine(tr("What would count as success"));
    m_success->setPlaceholderText(m_success->accessibleName());
    lines->addWidget(m_success);
    column().addWidget(m_plan);
    m_agree = pushButton({});
    connect(m_agree, &QPushButton::clicked, this, &AheadSection::agree);
    column().addWidget(m_agree, 0, Qt::AlignLeft);
    connect(m_success, &QLineEdit::textEdited, this, &AheadSection::takePlan);
}

void AheadSection::agree()
{
    Closing changed = closing();
    if (!changed.plan) {
        changed.plan.emplace();
        changed.plan->everyDays = usualDays;
        changed.plan->visits = usualVisits;
    }
    changed.plan->agreed = m_session.visit().date;
    write(changed);
    refresh();
}

void AheadSection::takePlan()
{
    Closing changed = closing();
    if (isShowing() || !changed.plan)
        return;
    changed.plan->everyDays = m_every->value();
    changed.plan->visits = m_visits->value();
    changed.plan->success = m_success->value();
    write(changed);
}

void AheadSection::showPlan(const std::optional<CarePlan> &plan)
{
    m_plan->setVisible(plan.has_value());
    m_agree->setText(plan ? tr("Agreed anew today") : tr("Agree on a plan"));
    m_agree->setVisible(!plan || plan->agreed != m_session.visit().date);
    if (!plan) {
        m_agreed->say(tr("Nothing is agreed on how often and how long."));
        return;
    }
    const int since = m_session.careProgress().visits;
    m_agreed->say(since == 0 ? tr("Agreed today.")
                             : tr("Agreed on %1; this is visit %2 of %3 since.")
                                   .arg(dayWords(plan->agreed), QString::number(since), QString::number(plan->visits)));
    m_every->setValue(plan->everyDays);
    m_visits->setValue(plan->visits);
    if (m_success->value() != plan->success)
        m_success->give(plan->success);
}

void AheadSection::show(const Closing &closing)
{
    if (linesIn(m_focus->toPlainText()) != closing.focus) {
        std::string lines;
        for (const std::string &line : closing.focus)
            lines += (lines.empty() ? "" : "\n") + line;
        m_focus->give(lines);
    }
    offerFocus();
    if (m_goals->value() != closing.goals || m_goals->rows().size() != closing.goals.size() + 1)
        m_goals->give(closing.goals);
    showPlan(closing.plan);
}

} // namespace raphe
