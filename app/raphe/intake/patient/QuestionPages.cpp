#include "app/raphe/intake/patient/QuestionPages.h"

#include "app/paint/TypedText.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/patient/SaidBack.h"
#include "app/raphe/record/TextLine.h"

#include <QGridLayout>
#include <QLocale>
#include <QPushButton>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

QStringList buttonTexts(const PatientWords &words, const std::vector<const char *> &ids)
{
    QStringList texts;
    for (const char *id : ids)
        texts << words.onButton(id);
    return texts;
}

const std::vector<const char *> whenIds{"since-today", "since-days", "since-weeks", "since-months", "since-years"};
const std::vector<const char *> howIds{"since-sudden", "since-slow", "since-injury", "since-unknown"};
constexpr int injury = 2; // of howIds
const std::vector<const char *> stirsIds{"settle-little", "settle-some", "settle-lots"};
const std::vector<const char *> settlesIds{"settle-minutes", "settle-hours", "settle-days"};
const std::vector<const char *> levelIds{"day-none", "day-less", "day-same", "day-more"}; // as DayLevel
const std::vector<const char *> partIds{"day-waking", "day-morning", "day-noon", "day-evening", "day-night"}; // as PartOfDay
// As PainQuality.
const std::vector<const char *> qualityIds{"quality-aches", "quality-burns", "quality-shoots", "quality-sharp", "quality-tingles",
    "quality-numb", "quality-stiff", "quality-throbs", "quality-presses", "quality-other"};
const std::vector<const char *> ratingIds{"strength-now", "strength-worst", "strength-best"};
constexpr std::array<std::optional<PainScore> Complaint::*, 3> ratings{&Complaint::now, &Complaint::worst, &Complaint::best};

// What stands in the record is what was on the button.
std::string joined(const PatientWords &words, const std::vector<const char *> &ids, const std::string &own)
{
    QStringList parts;
    for (const char *id : ids)
        parts << words.say(id);
    if (!own.empty())
        parts << QString::fromStdString(own);
    return parts.join(QLatin1Char(' ')).toStdString();
}

const char *chosenIn(const ChoiceRow &row, const std::vector<const char *> &ids)
{
    return row.value() ? ids[static_cast<std::size_t>(*row.value())] : nullptr;
}

std::optional<PainScore> scoreIn(const ChoiceRow &row)
{
    return row.value() ? std::optional(PainScore{*row.value()}) : std::nullopt;
}

bool hasPatch(const PatientAnswers &answers, int patch)
{
    return patch >= 0 && patch < static_cast<int>(answers.pain.size());
}

const PainPatch &patchOf(const PatientAnswers &answers, int patch)
{
    return answers.pain[static_cast<std::size_t>(patch)];
}

QString shown(const std::string &typed)
{
    return safelyShown(QString::fromStdString(typed));
}

} // namespace

ReadPage::ReadPage(const PatientWords &words, const char *titleId, const std::vector<const char *> &textIds)
    : PatientPage(words, titleId)
{
    for (const char *id : textIds)
        tell(say(id));
    column().addStretch(1);
}

UrgentPage::UrgentPage(const PatientWords &words) : PatientPage(words, "urgent-here-title"), m_choice(nullptr)
{
    QStringList signs;
    for (const char *id : {"urgent-chest", "urgent-face", "urgent-speech", "urgent-head", "urgent-head-fever", "urgent-joint",
             "urgent-throb", "urgent-saddle", "urgent-bladder", "urgent-legs", "urgent-fall", "urgent-pregnant"})
        signs << QStringLiteral("\u2022 ") + say(id);
    tell(signs.join(QLatin1Char('\n')));
    m_choice = ask({}, {words.onButton("urgent-none"), words.onButton("urgent-here-yes")}, 2);
    column().addStretch(1);
    connect(m_choice, &ChoiceRow::chosen, this, [this] { m_wasSaid = m_wasSaid || answer() == 1; });
}

QString UrgentPage::note() const
{
    return answer() == 1 ? say("urgent-here-what") : QString();
}

std::optional<int> UrgentPage::answer() const
{
    return m_choice->value();
}

WordsPage::WordsPage(const PatientWords &words, const char *titleId, std::string Complaint::*field)
    : PatientPage(words, titleId), m_field(field), m_text(askWords(words.say("goal-own"), 6))
{
    column().addStretch(1);
}

void WordsPage::take(PatientAnswers &answers) const
{
    answers.complaint.*m_field = m_text->value();
}

QString WordsPage::answerWords(const PatientAnswers &answers, int) const
{
    return shown(answers.complaint.*m_field);
}

PatchPage::PatchPage(const PatientWords &words, const char *titleId, const Knowledge &knowledge)
    : PatientPage(words, titleId), m_knowledge(knowledge), m_where(tellLarge())
{
}

void PatchPage::give(const PatientAnswers &answers, int patch)
{
    PatientPage::give(answers, patch);
    if (!hasPatch(answers, patch))
        return;
    m_where->say(placesOf(m_knowledge, patchOf(answers, patch)));
    m_row->give(answerOf(patchOf(answers, patch)));
}

void PatchPage::take(PatientAnswers &answers) const
{
    if (hasPatch(answers, patch()))
        setAnswer(answers.pain[static_cast<std::size_t>(patch())], m_row->value());
}

QString PatchPage::answerWords(const PatientAnswers &answers, int patch) const
{
    const PainPatch &painted = patchOf(answers, patch);
    const auto answer = answerOf(painted);
    return answer ? placesOf(m_knowledge, painted) + QLatin1Char('\n') + wordsOf(*answer) : QString();
}

QualityPage::QualityPage(const PatientWords &words, const Knowledge &knowledge) : PatchPage(words, "quality-title", knowledge)
{
    tell(say("quality-one"));
    setRow(ask({}, buttonTexts(words, qualityIds), 2));
    column().addStretch(1);
}

std::optional<int> QualityPage::answerOf(const PainPatch &patch) const
{
    return patch.quality ? std::optional(static_cast<int>(*patch.quality)) : std::nullopt;
}

void QualityPage::setAnswer(PainPatch &patch, std::optional<int> answer) const
{
    patch.quality = answer ? std::optional(painQualityWords[static_cast<std::size_t>(*answer)].first) : std::nullopt;
}

QString QualityPage::wordsOf(int answer) const
{
    return say(qualityIds[static_cast<std::size_t>(answer)]);
}

StrengthPage::StrengthPage(const PatientWords &words, const Knowledge &knowledge) : PatchPage(words, "strength-here", knowledge)
{
    tell(say("strength-how"));
    setRow(askNumber({}));
    tell(say("strength-zero"));
    tell(say("strength-ten"));
    column().addStretch(1);
}

std::optional<int> StrengthPage::answerOf(const PainPatch &patch) const
{
    return patch.intensity ? std::optional(patch.intensity->value) : std::nullopt;
}

void StrengthPage::setAnswer(PainPatch &patch, std::optional<int> answer) const
{
    patch.intensity = answer ? std::optional(PainScore{*answer}) : std::nullopt;
}

QString StrengthPage::wordsOf(int answer) const
{
    return QLocale().toString(answer);
}

RatingsPage::RatingsPage(const PatientWords &words) : PatientPage(words, "strength-title")
{
    tell(say("strength-zero") + QLatin1Char(' ') + say("strength-ten"));
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i] = askNumber(say(ratingIds[i]));
    column().addStretch(1);
}

// The patient can go on all the same: it is kept as told.
QString RatingsPage::note() const
{
    PatientAnswers answers;
    take(answers);
    const Complaint &told = answers.complaint;
    if (areRatingsInOrder(told))
        return {};
    return say(told.best && told.worst && *told.best > *told.worst ? "strength-check" : "move-clash");
}

void RatingsPage::take(PatientAnswers &answers) const
{
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        answers.complaint.*ratings[i] = scoreIn(*m_rows[i]);
}

QString RatingsPage::answerWords(const PatientAnswers &answers, int) const
{
    QStringList lines;
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (const auto &score = answers.complaint.*ratings[i])
            lines << say(ratingIds[i]) + QLatin1Char(' ') + QLocale().toString(score->value);
    return lines.join(QLatin1Char('\n'));
}

SincePage::SincePage(const PatientWords &words)
    : PatientPage(words, "since-title"),
      m_when(ask({}, buttonTexts(words, whenIds), 3)),
      m_how(ask(words.say("since-how"), buttonTexts(words, howIds), 2)),
      m_day(askWords(words.say("since-date"), 1))
{
    column().addStretch(1);
}

void SincePage::take(PatientAnswers &answers) const
{
    std::vector<const char *> ids;
    for (const char *id : {chosenIn(*m_when, whenIds), chosenIn(*m_how, howIds)})
        if (id)
            ids.push_back(id);
    answers.complaint.since = joined(words(), ids, m_day->value());
}

QString SincePage::answerWords(const PatientAnswers &answers, int) const
{
    return shown(answers.complaint.since);
}

bool SincePage::isInjury() const
{
    return m_how->value() == injury;
}

ChangePage::ChangePage(
    const PatientWords &words, const char *titleId, std::string Complaint::*field, const std::vector<const char *> &choiceIds)
    : PatientPage(words, titleId), m_field(field), m_ids(choiceIds), m_own(nullptr)
{
    tell(say("change-how"));
    auto *grid = new QGridLayout;
    constexpr int across = 3;
    for (const char *id : m_ids) {
        const int index = static_cast<int>(m_choices.size());
        QPushButton *button = largeButton(inTwoLines(words.onButton(id)));
        button->setCheckable(true);
        connect(button, &QPushButton::toggled, this, &PatientPage::changed);
        grid->addWidget(button, index / across, index % across);
        m_choices.push_back(button);
    }
    column().addLayout(grid);
    m_own = askWords(say("goal-own"), 1);
    column().addStretch(1);
}

void ChangePage::take(PatientAnswers &answers) const
{
    std::vector<const char *> ids;
    for (std::size_t i = 0; i < m_choices.size(); ++i)
        if (m_choices[i]->isChecked())
            ids.push_back(m_ids[i]);
    answers.complaint.*m_field = joined(words(), ids, m_own->value());
}

bool ChangePage::isAnswered() const
{
    return PatientPage::isAnswered()
        || std::any_of(m_choices.begin(), m_choices.end(), [](const QPushButton *choice) { return choice->isChecked(); });
}

QString ChangePage::answerWords(const PatientAnswers &answers, int) const
{
    return shown(answers.complaint.*m_field);
}

QWidget *ChangePage::firstField() const
{
    return m_choices.front();
}

void ChangePage::setScale(double scale)
{
    PatientPage::setScale(scale);
    for (auto *grid : findChildren<QGridLayout *>())
        grid->setSpacing(static_cast<int>(std::lround(8 * scale)));
}

SettlePage::SettlePage(const PatientWords &words)
    : PatientPage(words, "settle-how-much"),
      m_stirs(ask({}, buttonTexts(words, stirsIds), 3)),
      m_settles(ask(words.say("settle-title"), buttonTexts(words, settlesIds), 3))
{
    column().addStretch(1);
}

void SettlePage::take(PatientAnswers &answers) const
{
    answers.complaint.irritability = m_stirs->value() && m_settles->value()
        ? std::optional(irritabilityOf(static_cast<Stirs>(*m_stirs->value()), static_cast<Settles>(*m_settles->value())))
        : std::nullopt;
}

QString SettlePage::answerWords(const PatientAnswers &, int) const
{
    QStringList said;
    for (const char *id : {chosenIn(*m_stirs, stirsIds), chosenIn(*m_settles, settlesIds)})
        if (id)
            said << say(id);
    return said.join(QLatin1Char(' '));
}

DayPage::DayPage(const PatientWords &words) : PatientPage(words, "day-title")
{
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i] = ask(say(partIds[i]), buttonTexts(words, levelIds), 4, true);
    column().addStretch(1);
}

void DayPage::take(PatientAnswers &answers) const
{
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        answers.complaint.day[i] = m_rows[i]->value() ? std::optional(static_cast<DayLevel>(*m_rows[i]->value())) : std::nullopt;
}

QString DayPage::answerWords(const PatientAnswers &answers, int) const
{
    QStringList lines;
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (const auto &level = answers.complaint.day[i])
            lines << say(partIds[i]) + QLatin1Char(' ') + say(levelIds[static_cast<std::size_t>(*level)]);
    return lines.join(QLatin1Char('\n'));
}

HardPage::HardPage(const PatientWords &words, const std::vector<Activity> &known) : PatientPage(words, "hard-title")
{
    if (known.empty()) {
        tell(say("hard-how") + QLatin1Char(' ') + say("hard-like"));
    }
    tell(say("hard-number") + QLatin1Char(' ') + say("hard-zero") + QLatin1Char(' ') + say("hard-ten"));
    for (const Activity &activity : known)
        if (!activity.name.empty())
            m_hard.push_back({activity.name, nullptr, askNumber(shown(activity.name))});
    if (known.empty())
        for (const char *id : {"hard-first", "hard-second", "hard-third"}) {
            TextBlock *own = askWords(say(id), 1);
            m_hard.push_back({{}, own, askNumber({})});
            for (auto *button : m_hard.back().score->findChildren<QPushButton *>())
                button->setAccessibleName(say(id) + QLatin1Char(' ') + button->text());
        }
    column().addStretch(1);
}

void HardPage::take(PatientAnswers &answers) const
{
    std::vector<Activity> told;
    for (const Row &row : m_hard) {
        const Activity activity{row.own ? row.own->value() : row.name, row.score->value()};
        if (row.own ? activity != Activity{} : activity.score.has_value())
            told.push_back(activity);
    }
    answers.complaint.activities = std::move(told);
}

QString HardPage::answerWords(const PatientAnswers &answers, int) const
{
    QStringList lines;
    for (const Activity &activity : answers.complaint.activities)
        lines << shown(activity.name) + QStringLiteral("   ")
                + (activity.score ? QLocale().toString(*activity.score) : QString());
    return lines.join(QLatin1Char('\n'));
}

} // namespace raphe
