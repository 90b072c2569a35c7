#include "core/document/Deidentified.h"

#include "core/safety/Day.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <optional>
#include <set>

namespace raphe {

namespace {

constexpr int oldestAge = 90; // years
constexpr int secondsOfDay = 24 * 3600;

// Those at which the work is stopped (asked in the window).
constexpr std::array<std::string_view, 4> stopSignIds{"faint", "new-numbness-or-weakness", "sudden-severe-pain", "breathless"};

void removeWords(std::string &text)
{
    if (!text.empty())
        text = removedWords;
}

void removeWords(std::vector<std::string> &lines)
{
    for (std::string &line : lines)
        removeWords(line);
}

// Day numbers count from 1970-01-01, which daysBetween need not know of the year 0.
using std::chrono::sys_days;

sys_days dayOf(const std::string &isoDate)
{
    const auto number = [&](std::size_t from, std::size_t count) { return std::atoi(isoDate.substr(from, count).c_str()); };
    return std::chrono::year_month_day(std::chrono::year(number(0, 4)), std::chrono::month(static_cast<unsigned>(number(5, 2))),
        std::chrono::day(static_cast<unsigned>(number(8, 2))));
}

std::string isoText(const std::chrono::year_month_day &day)
{
    const int year = static_cast<int>(day.year());
    if (year < 0 || year > 9999)
        return neutralDay;
    std::array<char, 16> text{};
    std::snprintf(
        text.data(), text.size(), "%04d-%02u-%02u", year, static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return text.data();
}

int secondsOf(const std::string &time)
{
    const auto number = [&](std::size_t from) { return std::atoi(time.substr(from, 2).c_str()); };
    return number(0) * 3600 + number(3) * 60 + number(6);
}

std::string timeText(int seconds)
{
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%02d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60);
    return text.data();
}

// All dates but the birth date and those of letters, which go; empty ones too.
template <class F> void forEachDate(Visit &visit, F change)
{
    change(visit.date);
    for (Complaint &complaint : visit.complaints)
        change(complaint.asked);
    for (WarningAnswer &answer : visit.warnings)
        change(answer.asked);
    for (ConsentAnswer &answer : visit.consents)
        change(answer.asked);
    for (Goal &goal : visit.closing.goals)
        change(goal.until);
    if (visit.closing.plan)
        change(visit.closing.plan->agreed);
    if (visit.closing.call) {
        change(visit.closing.call->due);
        change(visit.closing.call->made);
    }
}

template <class F> void forEachTime(Visit &visit, F change)
{
    for (Moment &moment : visit.timeline)
        change(moment.time);
    for (TreatmentStep &step : visit.treatment.steps)
        change(step.began);
    for (TreatmentStep &step : visit.treatment.ahead)
        change(step.began);
    change(visit.treatment.running);
    for (AdverseEvent &event : visit.treatment.events)
        change(event.time);
}

// The first of the times around the clock is the one after the longest pause.
void countTimesFromFirst(Visit &visit)
{
    std::set<int> times;
    forEachTime(visit, [&](const std::string &time) {
        if (!time.empty())
            times.insert(secondsOf(time));
    });
    if (times.empty())
        return;
    int first = *times.begin();
    int pause = *times.begin() + secondsOfDay - *times.rbegin();
    for (auto it = times.begin(), next = std::next(it); next != times.end(); it = next++)
        if (*next - *it > pause) {
            pause = *next - *it;
            first = *next;
        }
    forEachTime(visit, [&](std::string &time) {
        if (!time.empty())
            time = timeText((secondsOf(time) - first + secondsOfDay) % secondsOfDay);
    });
}

class WordsRemover {
public:
    WordsRemover(const KnownContent &known, std::string patient) : m_known(known), m_patient(std::move(patient)) { }

    void remove(Visit &visit)
    {
        if (visit.patient && !visit.patient->name.empty())
            visit.patient->name = m_patient;
        removeWords(visit.practitioner);
        for (Complaint &complaint : visit.complaints)
            remove(complaint);
        for (std::vector<std::string> *lines : {&visit.cautions, &visit.promised, &visit.focus, &visit.closing.focus})
            removeWords(*lines);
        std::erase_if(visit.conditions, [&](const Condition &c) { return !m_known.rules.findCondition(c.id); });
        std::erase_if(visit.warnings, [&](const WarningAnswer &answer) { return !isShownSign(answer.sign); });
        for (WarningAnswer &answer : visit.warnings) {
            removeWords(answer.why);
            removeWords(answer.told);
        }
        remove(visit.consents);
        if (visit.sinceLast) {
            removeWords(visit.sinceLast->reactionTold);
            for (Promise &promise : visit.sinceLast->promises)
                removeWords(promise.task);
        }
        remove(visit.findings, visit.measures, visit.tests);
        remove(visit.retested.findings, visit.retested.measures, visit.retested.tests);
        if (visit.retest && !isExamined(visit.retest->kind, visit.retest->id))
            visit.retest.reset();
        std::erase_if(visit.timeline, [&](const Moment &moment) { return !isExamined(moment.kind, moment.id); });
        for (Judgement &judgement : visit.judgements)
            removeWords(judgement.dismissed);
        remove(visit.plan);
        remove(visit.treatment);
        remove(visit.closing);
        visit.letters.clear();
    }

private:
    void remove(Complaint &complaint)
    {
        if (complaint.episode)
            complaint.episode = numbered(m_episodes, *complaint.episode);
        for (std::string *text : {&complaint.text, &complaint.since, &complaint.aggravates, &complaint.eases, &complaint.goal})
            removeWords(*text);
        for (Activity &activity : complaint.activities)
            if (!activity.name.empty())
                activity.name = std::string(removedWords) + " " + std::to_string(numbered(m_activities, activity.name));
    }

    void remove(std::vector<ConsentAnswer> &consents) const
    {
        std::erase_if(consents, [&](const ConsentAnswer &answer) { return !m_known.rules.consents().find(answer.item); });
        for (ConsentAnswer &answer : consents) {
            removeWords(answer.chaperoneName);
            removeWords(answer.remark);
            if (answer.guardian) {
                removeWords(answer.guardian->name);
                removeWords(answer.guardian->relation);
            }
        }
    }

    void remove(std::vector<Finding> &findings, std::vector<Measure> &measures, std::vector<TestResult> &tests) const
    {
        for (Finding &finding : findings) {
            const bool saidSomething = finding.saysAnything();
            std::erase_if(finding.texture, [&](const std::string &word) { return !isIn(m_known.textures, word); });
            removeWords(finding.note);
            if (finding.unable)
                finding.unable = removedWords;
            if (saidSomething && !finding.saysAnything()) // a texture in other words was all
                finding.note = removedWords;
        }
        std::erase_if(measures, [&](const Measure &m) { return !isExamined(MomentKind::Movement, m.movement); });
        for (Measure &measure : measures)
            removeWords(measure.note);
        std::erase_if(tests, [&](const TestResult &t) { return !isExamined(MomentKind::Test, t.test); });
        for (TestResult &test : tests) {
            removeWords(test.note);
            if (test.unable)
                test.unable = removedWords;
        }
    }

    void remove(PlanWish &plan) const
    {
        std::erase_if(
            plan.refused, [&](const std::string &id) { return !m_known.techniques.find(id) && !m_known.rules.findAction(id); });
        std::erase_if(plan.byHand, [&](const auto &chosen) { return !m_known.techniques.find(chosen.second); });
    }

    void remove(TreatmentLog &treatment) const
    {
        for (std::vector<TreatmentStep> *steps : {&treatment.steps, &treatment.ahead})
            for (TreatmentStep &step : *steps) {
                if (!m_known.techniques.find(step.technique))
                    step.technique = removedTechnique;
                std::erase_if(step.minded, [&](const std::string &id) { return !isRule(id); });
                removeWords(step.note);
            }
        for (AdverseEvent &event : treatment.events) {
            std::erase_if(event.signs, [](const std::string &id) { return !isIn(stopSignIds, id); });
            removeWords(event.told);
            removeWords(event.answer);
            if (event.signs.empty()) // there was one, or words
                event.told = removedWords;
        }
    }

    void remove(Closing &closing) const
    {
        for (GivenAdvice &advice : closing.advice) {
            if (!m_known.advice.find(advice.item))
                advice.item.clear();
            removeWords(advice.title);
            removeWords(advice.text);
        }
        for (std::string *text : {&closing.impression.text, &closing.impression.code, &closing.impression.system})
            removeWords(*text);
        for (Goal &goal : closing.goals)
            removeWords(goal.text);
        if (closing.plan)
            removeWords(closing.plan->success);
        if (closing.review)
            removeWords(closing.review->why);
        if (closing.call)
            removeWords(closing.call->told);
    }

    template <class List> static bool isIn(const List &list, const std::string &one)
    {
        return std::find(list.begin(), list.end(), one) != list.end();
    }

    // Numbers from 1, in the order of the visits.
    template <class T> static int numbered(std::map<T, int> &numbers, const T &one)
    {
        return numbers.emplace(one, static_cast<int>(numbers.size()) + 1).first->second;
    }

    [[nodiscard]] bool isShownSign(const std::string &id) const
    {
        const WarningSign *sign = m_known.rules.signs().find(id);
        return sign && !sign->alone;
    }

    [[nodiscard]] bool isExamined(MomentKind kind, const std::string &id) const
    {
        switch (kind) {
        case MomentKind::Finding: return m_known.atlas.find(StructureId{id}) != nullptr;
        case MomentKind::Movement: return m_known.examination.findMovement(id) != nullptr;
        case MomentKind::Test: break;
        }
        return m_known.examination.findTest(id) != nullptr;
    }

    // Something that verdicts come from: a caution rule, a warning sign, a consent, a place to be careful at.
    [[nodiscard]] bool isRule(const std::string &id) const
    {
        const auto &rules = m_known.rules.rules();
        return isShownSign(id) || m_known.rules.consents().find(id) || m_known.atlas.find(StructureId{id})
            || std::any_of(rules.begin(), rules.end(), [&](const CautionRule &rule) { return rule.id == id; });
    }

    const KnownContent &m_known;
    std::string m_patient;
    std::map<int, int> m_episodes;
    std::map<std::string, int> m_activities;
};

// The earliest day of a visit, or of all dates where no visit has one; nothing without any.
std::optional<std::string> firstDay(std::vector<Visit> &visits)
{
    std::optional<std::string> first;
    const auto take = [&](const std::string &date) {
        if (!date.empty() && (!first || date < *first)) // ISO 8601: in the order of time
            first = date;
    };
    for (const Visit &visit : visits)
        take(visit.date);
    if (!first)
        for (Visit &visit : visits)
            forEachDate(visit, take);
    return first;
}

// What the birth date becomes; empty when there is none, or it lies after the first day. `moved`: the visits' dates are neutral.
std::string neutralBirth(const std::vector<Visit> &moved, const std::string &first)
{
    const Visit *told = nullptr; // the earliest visit that tells
    std::string last = neutralDay;
    for (const Visit &visit : moved) {
        last = std::max(last, visit.date);
        if (visit.patient && !visit.patient->born.empty() && (!told || visit.date < told->date))
            told = &visit;
    }
    const auto age = told ? yearsBetween(told->patient->born, first) : std::nullopt;
    if (!age)
        return {};
    const auto yearOf = [](const std::string &date) { return static_cast<int>(std::chrono::year_month_day(dayOf(date)).year()); };
    const int year = std::max(yearOf(neutralDay) - *age, yearOf(last) - oldestAge);
    return isoText(std::chrono::year(year) / 1 / 1);
}

} // namespace

std::vector<Visit> deidentified(std::vector<Visit> visits, const std::string &patient, const KnownContent &known)
{
    const auto first = firstDay(visits);
    if (first) {
        const auto shift = dayOf(neutralDay) - dayOf(*first);
        for (Visit &visit : visits)
            forEachDate(visit, [&](std::string &date) {
                if (!date.empty())
                    date = isoText(dayOf(date) + shift);
            });
    }
    const std::string born = first ? neutralBirth(visits, *first) : std::string();
    WordsRemover remover(known, patient);
    for (Visit &visit : visits) {
        if (visit.patient && !visit.patient->born.empty())
            visit.patient->born = born;
        remover.remove(visit);
        countTimesFromFirst(visit);
    }
    return visits;
}

std::string deidentifiedWarning()
{
    return QCoreApplication::translate("Deidentified",
        "The copy holds no names, no words of the patient or the practitioner and no real dates. A rare condition, an unusual "
        "course or a pain drawing can still tell who it is: look through it before anybody else sees it, and follow local law.")
        .toStdString();
}

} // namespace raphe
