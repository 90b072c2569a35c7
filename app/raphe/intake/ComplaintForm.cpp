#include "app/raphe/intake/ComplaintForm.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/SinceDoubt.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/outcome/ScaleChange.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

namespace raphe {

namespace {

using Rating = std::optional<PainScore> Complaint::*;
constexpr std::array<Rating, 3> ratings{&Complaint::now, &Complaint::worst, &Complaint::best};

QStringList ratingNames()
{
    return {ComplaintForm::tr("Now"), ComplaintForm::tr("Worst"), ComplaintForm::tr("Best")};
}

QHBoxLayout *besideName(const QString &name, QWidget *field)
{
    auto *row = new QHBoxLayout;
    auto *label = new QLabel(name);
    label->setMinimumWidth(64);
    row->addWidget(label);
    row->addWidget(field, 1);
    return row;
}

} // namespace

ComplaintForm::ComplaintForm(QWidget *parent)
    : QWidget(parent),
      m_text(new TextBlock(tr("What brings the patient, in their words"), 2)),
      m_since(new TextBlock(tr("Since when"), 1)),
      m_sinceDoubt(hint()),
      m_doubt(hint()),
      m_aggravates(new TextBlock(tr("What makes it worse"), 1)),
      m_eases(new TextBlock(tr("What makes it better"), 1)),
      m_irritability(new ChoiceRow(tr("How easily it is stirred up"), {tr("Low"), tr("Medium"), tr("High")})),
      m_mean(hint()),
      m_goal(new TextBlock(tr("What the patient hopes for, in their words"), 1))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    const auto addText = [&](TextBlock *block, QBoxLayout *into) {
        into->addLayout(labelled(block->accessibleName(), block));
        connect(block, &QPlainTextEdit::textChanged, this, &ComplaintForm::typed);
    };
    addText(m_text, column);
    addText(m_since, column);
    column->addWidget(m_sinceDoubt);

    column->addWidget(heading(tr("Pain now, and worst and best of seven days")));
    const QStringList names = ratingNames();
    for (std::size_t i = 0; i < m_ratings.size(); ++i) {
        const QString &name = names[static_cast<qsizetype>(i)];
        m_ratings[i] = ChoiceRow::ofNumbers(tr("Pain %1").arg(name.toLower()), PainScore::highest);
        connect(m_ratings[i], &ChoiceRow::chosen, this, &ComplaintForm::typed);
        column->addLayout(besideName(name, m_ratings[i]));
    }
    column->addWidget(m_doubt);

    auto *changes = new QHBoxLayout;
    addText(m_aggravates, changes);
    addText(m_eases, changes);
    column->addLayout(changes);

    column->addWidget(heading(tr("Through the day, beside how it mostly is")));
    const QStringList parts{tr("Waking"), tr("Morning"), tr("Noon"), tr("Evening"), tr("Night")};
    auto *day = new QVBoxLayout;
    day->setSpacing(2);
    for (std::size_t i = 0; i < m_day.size(); ++i) {
        const QString &part = parts[static_cast<qsizetype>(i)];
        m_day[i] = new ChoiceRow(part, {tr("None"), tr("Less"), tr("Same"), tr("More")});
        connect(m_day[i], &ChoiceRow::chosen, this, &ComplaintForm::typed);
        day->addLayout(besideName(part, m_day[i]));
    }
    column->addLayout(day);

    column->addWidget(heading(tr("Irritability: how soon it comes, how long it stays")));
    m_irritability->setTips({tr("Much is needed to stir it up, and it settles within minutes. Common practice, no source."),
        tr("In between. Common practice, no source."),
        tr("Little is needed to stir it up, and it stays for hours: examine and treat sparingly. Common practice, no source.")});
    connect(m_irritability, &ChoiceRow::chosen, this, &ComplaintForm::typed);
    column->addWidget(m_irritability);

    column->addWidget(heading(tr("Three things that are hard to do: 0 cannot, 10 as before")));
    for (std::size_t i = 0; i < Activity::usual; ++i)
        addActivityRow(*column);
    column->addWidget(m_mean);
    addText(m_goal, column);
    column->addStretch(1);
}

void ComplaintForm::addActivityRow(QBoxLayout &column)
{
    const int number = static_cast<int>(m_activities.size()) + 1;
    ActivityRow made{new TextLine(tr("What is hard to do, %1").arg(number)),
        ChoiceRow::ofNumbers(tr("Score of %1").arg(number), Activity::highest)};
    made.name->setPlaceholderText(tr("%1. In their words").arg(number));
    connect(made.name, &QLineEdit::textChanged, this, &ComplaintForm::typed);
    connect(made.score, &ChoiceRow::chosen, this, &ComplaintForm::typed);
    column.addWidget(made.name);
    column.addWidget(made.score);
    m_activities.push_back(made);
}

void ComplaintForm::give(const Complaint &complaint, const Complaint *before)
{
    m_before = before ? *before : Complaint{};
    Complaint shown = value();
    shown.episode = complaint.episode;
    shown.asked = complaint.asked;
    if (shown == complaint) { // what is being typed stays as it is
        m_given = complaint;
        tell();
        return;
    }
    m_filling = true;
    m_given = complaint;
    m_text->give(complaint.text);
    m_since->give(complaint.since);
    for (std::size_t i = 0; i < ratings.size(); ++i) {
        const std::optional<PainScore> &score = complaint.*ratings[i];
        m_ratings[i]->give(score ? std::optional(score->value) : std::nullopt);
    }
    m_aggravates->give(complaint.aggravates);
    m_eases->give(complaint.eases);
    for (std::size_t i = 0; i < m_day.size(); ++i)
        m_day[i]->give(complaint.day[i] ? std::optional(static_cast<int>(*complaint.day[i])) : std::nullopt);
    m_irritability->give(complaint.irritability ? std::optional(static_cast<int>(*complaint.irritability)) : std::nullopt);
    for (std::size_t i = 0; i < m_activities.size(); ++i) {
        const Activity activity = i < complaint.activities.size() ? complaint.activities[i] : Activity{};
        m_activities[i].name->give(activity.name);
        m_activities[i].score->give(activity.score);
    }
    m_goal->give(complaint.goal);
    m_filling = false;
    tell();
}

Complaint ComplaintForm::value() const
{
    Complaint out = m_given; // with what the form does not show
    out.text = m_text->value();
    out.since = m_since->value();
    for (std::size_t i = 0; i < ratings.size(); ++i) {
        const auto score = m_ratings[i]->value();
        out.*ratings[i] = score ? std::optional(PainScore{*score}) : std::nullopt;
    }
    out.aggravates = m_aggravates->value();
    out.eases = m_eases->value();
    for (std::size_t i = 0; i < m_day.size(); ++i) {
        const auto level = m_day[i]->value();
        out.day[i] = level ? std::optional(static_cast<DayLevel>(*level)) : std::nullopt;
    }
    const auto irritability = m_irritability->value();
    out.irritability = irritability ? std::optional(static_cast<Irritability>(*irritability)) : std::nullopt;
    std::vector<Activity> activities;
    for (const ActivityRow &row : m_activities)
        if (Activity activity{row.name->value(), row.score->value()}; activity != Activity{})
            activities.push_back(std::move(activity));
    for (std::size_t i = m_activities.size(); i < m_given.activities.size(); ++i)
        activities.push_back(m_given.activities[i]);
    out.activities = std::move(activities);
    out.goal = m_goal->value();
    return out;
}

void ComplaintForm::setReadOnly(bool isReadOnly)
{
    for (TextBlock *block : {m_text, m_since, m_aggravates, m_eases, m_goal})
        block->setReadOnly(isReadOnly);
    for (ChoiceRow *row : m_ratings)
        row->setEnabled(!isReadOnly);
    for (ChoiceRow *row : m_day)
        row->setEnabled(!isReadOnly);
    m_irritability->setEnabled(!isReadOnly);
    for (const ActivityRow &row : m_activities) {
        row.name->setReadOnly(isReadOnly);
        row.score->setEnabled(!isReadOnly);
    }
}

void ComplaintForm::focusFirst()
{
    m_text->setFocus();
}

void ComplaintForm::typed()
{
    tell();
    if (!m_filling)
        Q_EMIT edited();
}

namespace {

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

QString ratingsOf(const Complaint &complaint)
{
    const QStringList names = ratingNames();
    QStringList told;
    for (std::size_t i = 0; i < ratings.size(); ++i)
        if (const std::optional<PainScore> &score = complaint.*ratings[i])
            told << ComplaintForm::tr("%1 %2", "which rating, number")
                        .arg(names[static_cast<qsizetype>(i)].toLower())
                        .arg(score->value);
    return told.join(QStringLiteral(", "));
}

} // namespace

void ComplaintForm::tell()
{
    const Complaint now = value();
    const QString doubt = sinceDoubt(QString::fromStdString(now.since), QDate::currentDate());
    m_sinceDoubt->say(doubt);
    m_sinceDoubt->setVisible(!doubt.isEmpty());
    QStringList lines;
    for (const ChoiceRow *row : m_ratings)
        if (!row->unread().isEmpty())
            lines << tr("%1: '%2' is not a whole number from 0 to %3. Nothing is recorded.", "which rating, what was typed")
                         .arg(row->accessibleName(), row->unread())
                         .arg(PainScore::highest);
    if (!areRatingsInOrder(now))
        lines << tr("These do not fit each other: %1. Best is the least, worst is the most. They are kept as told; ask which is "
                    "meant.")
                     .arg(ratingsOf(now));
    if (const QString last = ratingsOf(m_before); !last.isEmpty())
        lines << tr("Last visit: %1.").arg(last);
    if (now.now && m_before.now)
        lines << tr("Now %1.", "how it changed").arg(q(changeInWords(m_before.now->value, now.now->value, painScoreThreshold)));
    m_doubt->say(lines.join(QLatin1Char('\n')));
    m_doubt->setVisible(!lines.isEmpty());

    QStringList activities;
    const auto complete = std::count_if(
        now.activities.begin(), now.activities.end(), [](const Activity &activity) { return activity.isComplete(); });
    for (const Activity &activity : now.activities)
        if (!activity.isComplete())
            activities << (activity.name.empty() ? tr("A score of %1 has no name yet.").arg(*activity.score)
                                                 : tr("'%1' has no score yet.").arg(QString::fromStdString(activity.name)));
    const auto told = static_cast<qsizetype>(now.activities.size());
    const auto mean = meanScore(now.activities);
    if (mean)
        activities << tr("Mean %1 of %2 of %3.").arg(QLocale().toString(*mean, 'f', 1)).arg(complete).arg(told);
    if (const auto last = meanScore(m_before.activities)) {
        activities << tr("Last visit: mean %1.").arg(QLocale().toString(*last, 'f', 1));
        if (mean)
            activities << tr("The mean is %1.", "how it changed").arg(q(changeInWords(*last, *mean, activitiesThreshold)));
    }
    m_mean->say(activities.join(QLatin1Char(' ')));
    m_mean->setVisible(!activities.isEmpty());
}

} // namespace raphe
