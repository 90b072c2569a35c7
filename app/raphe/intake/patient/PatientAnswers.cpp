#include "app/raphe/intake/patient/PatientAnswers.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text, const char *comment = nullptr)
{
    return QCoreApplication::translate("PatientAnswers", text, comment);
}

bool isPatientsOwn(const PainPatch &patch)
{
    return patch.painter == Painter::Patient && !patch.confirmed;
}

bool hasLines(const QString &text, const QString &lines)
{
    const QChar end = QLatin1Char('\n');
    return (end + text + end).contains(end + lines + end);
}

std::string bothTexts(const std::string &before, const std::string &told)
{
    if (told.empty() || before.empty())
        return told.empty() ? before : told;
    const QString old = QString::fromStdString(before);
    const QString words = QString::fromStdString(told);
    const QString line = tr("Patient: %1", "words of the patient").arg(words);
    if (hasLines(old, words) || hasLines(old, line))
        return before;
    return (old + QLatin1Char('\n') + line).toStdString();
}

// The patient's stands; what stood before goes into the words.
template <class T, class Say>
void takeTold(std::optional<T> &now, const std::optional<T> &told, QStringList &words, const Say &inWords)
{
    if (!told)
        return;
    if (now && *now != *told)
        words << tr("Before the patient answered: %1.").arg(inWords(*now));
    now = told;
}

QString spokenLevel(DayLevel level)
{
    switch (level) {
    case DayLevel::None: return tr("none");
    case DayLevel::Less: return tr("less");
    case DayLevel::Same: return tr("same");
    case DayLevel::More: break;
    }
    return tr("more");
}

QString spokenTime(std::size_t part)
{
    switch (static_cast<PartOfDay>(part)) {
    case PartOfDay::Waking: return tr("on waking");
    case PartOfDay::Morning: return tr("in the morning");
    case PartOfDay::Noon: return tr("at noon");
    case PartOfDay::Evening: return tr("in the evening");
    case PartOfDay::Night: break;
    }
    return tr("at night");
}

QString spokenIrritability(Irritability value)
{
    switch (value) {
    case Irritability::Low: return tr("low");
    case Irritability::Medium: return tr("medium");
    case Irritability::High: break;
    }
    return tr("high");
}

void takeActivities(std::vector<Activity> &now, const std::vector<Activity> &told, QStringList &words)
{
    const auto folded = [](const std::string &name) { return QString::fromStdString(name).simplified().toCaseFolded(); };
    for (const Activity &activity : told) {
        const auto same = std::find_if(now.begin(), now.end(),
            [&](const Activity &other) { return !activity.name.empty() && folded(other.name) == folded(activity.name); });
        if (same != now.end())
            takeTold(same->score, activity.score, words, [&](int score) {
                return tr("'%1' was %2", "something hard to do, number").arg(QString::fromStdString(same->name)).arg(score);
            });
        else if (now.size() < Activity::most)
            now.push_back(activity);
        else
            words << tr("Hard for the patient, too: %1 (%2).", "something hard to do, number")
                         .arg(QString::fromStdString(activity.name),
                             activity.score ? QLocale().toString(*activity.score) : tr("no number"));
    }
}

Complaint merged(const Complaint &before, const Complaint &told)
{
    Complaint out = before;
    QStringList words;
    out.text = bothTexts(before.text, told.text);
    out.since = bothTexts(before.since, told.since);
    out.aggravates = bothTexts(before.aggravates, told.aggravates);
    out.eases = bothTexts(before.eases, told.eases);
    out.goal = bothTexts(before.goal, told.goal);
    takeTold(out.now, told.now, words, [](PainScore score) { return tr("pain now %1").arg(score.value); });
    takeTold(out.worst, told.worst, words, [](PainScore score) { return tr("pain at worst %1").arg(score.value); });
    takeTold(out.best, told.best, words, [](PainScore score) { return tr("pain at best %1").arg(score.value); });
    for (std::size_t i = 0; i < out.day.size(); ++i)
        takeTold(out.day[i], told.day[i], words,
            [i](DayLevel level) { return tr("pain %1: %2", "time of day, how much").arg(spokenTime(i), spokenLevel(level)); });
    if (out.irritability && told.irritability && *out.irritability != *told.irritability)
        words << tr("By the patient's answers irritability would be %1.").arg(spokenIrritability(*told.irritability));
    else if (told.irritability)
        out.irritability = told.irritability;
    takeActivities(out.activities, told.activities, words);
    QString text = QString::fromStdString(out.text);
    for (const QString &line : words)
        if (!hasLines(text, line))
            text += (text.isEmpty() ? QString() : QStringLiteral("\n")) + line;
    out.text = text.toStdString();
    return out;
}

} // namespace

int rankOf(const PainPatch &patch)
{
    switch (patch.view) {
    case View::Front: return 0;
    case View::Back: return 1;
    case View::Side: return patch.facing == Side::Right ? 2 : 3;
    default: return 4;
    }
}

PatientAnswers startingAnswers(const Visit &visit)
{
    PatientAnswers answers;
    std::copy_if(visit.pain.begin(), visit.pain.end(), std::back_inserter(answers.pain), isPatientsOwn);
    std::stable_sort(
        answers.pain.begin(), answers.pain.end(), [](const PainPatch &a, const PainPatch &b) { return rankOf(a) < rankOf(b); });
    return answers;
}

std::vector<PainPatch> mergedPain(const Visit &before, const PatientAnswers &answers)
{
    std::vector<PainPatch> pain = before.pain;
    std::erase_if(pain, isPatientsOwn); // they are among the answers
    for (PainPatch patch : answers.pain) {
        patch.painter = Painter::Patient;
        patch.confirmed = false; // the practitioner says it back in words
        pain.push_back(std::move(patch));
    }
    return pain;
}

bool fitsDrawing(const std::vector<PainPatch> &pain)
{
    std::size_t points = 0;
    for (const PainPatch &patch : pain)
        for (const BrushStroke &stroke : patch.strokes)
            points += stroke.points.size();
    return pain.size() <= PainLimits::patches && points <= PainLimits::pointsOfAll;
}

std::vector<Complaint> mergedComplaints(const Visit &before, const PatientAnswers &answers)
{
    std::vector<Complaint> complaints = before.complaints;
    const Complaint first = complaints.empty() ? Complaint{} : complaints.front();
    Complaint out = merged(first, answers.complaint);
    if (out == first)
        return complaints;
    out.asked = before.date;
    if (complaints.empty())
        complaints.push_back(std::move(out));
    else
        complaints.front() = std::move(out);
    return complaints;
}

Irritability irritabilityOf(Stirs stirs, Settles settles)
{
    if (stirs == Stirs::Little && settles != Settles::Minutes)
        return Irritability::High;
    if (stirs == Stirs::Lots && settles == Settles::Minutes)
        return Irritability::Low;
    return Irritability::Medium;
}

} // namespace raphe
