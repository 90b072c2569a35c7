#include "core/document/NoteSource.h"

#include "core/examination/RecordWords.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClinicalNote", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

std::string span(const std::string &first, const std::string &last)
{
    if (first.empty() || first == last)
        return first;
    //: %1 and %2: times of the day
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 to %2")).arg(q(first), q(last)).toStdString();
}

// Conditions that nothing lets suspect but what was answered alone.
std::set<std::string> suspectedAlone(const WarningSigns &signs, const Visit &visit)
{
    std::set<std::string> out;
    std::set<std::string> known;
    for (const Condition &condition : visit.conditions)
        known.insert(condition.id);
    for (const WarningAnswer &answer : visit.warnings)
        if (const WarningSign *sign = answer.isThere ? signs.find(answer.sign) : nullptr)
            (sign->alone ? out : known).insert(sign->suspects.begin(), sign->suspects.end());
    for (const std::string &id : known)
        out.erase(id);
    return out;
}

} // namespace

std::string NoteSource::named(const Place &place) const
{
    return place.side == Side::Midline ? atlas().spoken(place)
                                       : namedWithSide(atlas().at(place.structure).names.english, place.side);
}

std::string NoteSource::named(const std::vector<Place> &places) const
{
    std::string out;
    for (const Place &place : places)
        out += (out.empty() ? "" : "; ") + named(place);
    return out;
}

std::string NoteSource::asked(const std::string &day) const
{
    if (day.empty())
        return tr(QT_TRANSLATE_NOOP("ClinicalNote", "not confirmed with the patient")).toStdString();
    if (day == visit.date)
        return {};
    return (visit.date < day ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "as on %1"))
                             : tr(QT_TRANSLATE_NOOP("ClinicalNote", "as on %1, not asked again")))
        .arg(q(day))
        .toStdString();
}

std::string NoteSource::unasked(bool stoodBefore) const
{
    return stoodBefore && previous ? asked(previous->date) : std::string();
}

std::string NoteSource::sameWords(bool areTheSame) const
{
    if (!areTheSame || !previous)
        return {};
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "the same words as on %1")).arg(q(previous->date)).toStdString();
}

Visit visitFor(NoteFor readers, const SafetyRules &rules, Visit visit)
{
    if (readers == NoteFor::Record)
        return visit;
    const WarningSigns &signs = rules.signs();
    const auto isAlone = [&](const std::string &id) {
        const WarningSign *sign = signs.find(id);
        return sign && sign->alone;
    };
    const std::set<std::string> suspected = suspectedAlone(signs, visit);
    const auto isOfAlone = [&](const std::string &id) {
        const auto rule =
            std::find_if(rules.rules().begin(), rules.rules().end(), [&](const CautionRule &r) { return r.id == id; });
        if (rule == rules.rules().end())
            return isAlone(id);
        return std::any_of(rule->conditions.begin(), rule->conditions.end(), [&](const std::string &condition) {
            return suspected.contains(condition);
        }) && std::none_of(visit.conditions.begin(), visit.conditions.end(), [&](const Condition &condition) {
            return std::find(rule->conditions.begin(), rule->conditions.end(), condition.id) != rule->conditions.end();
        });
    };
    for (auto *steps : {&visit.treatment.steps, &visit.treatment.ahead})
        for (TreatmentStep &step : *steps)
            std::erase_if(step.minded, isOfAlone);
    std::erase_if(visit.warnings, [&](const WarningAnswer &answer) { return isAlone(answer.sign); });
    return visit;
}

std::string reactionInWords(Reaction reaction)
{
    switch (reaction) {
    case Reaction::None: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "nothing unusual")).toStdString();
    case Reaction::Sore: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "sore, and it passed")).toStdString();
    case Reaction::Bad: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "bad: more than soreness that passes")).toStdString();
}

std::string timesOfExamination(const Visit &visit)
{
    return visit.timeline.empty() ? std::string() : span(visit.timeline.front().time, visit.timeline.back().time);
}

std::string timesOfTreatment(const Visit &visit)
{
    std::string first;
    std::string last;
    for (const TreatmentStep &step : visit.treatment.steps)
        if (step.hasBegun()) {
            first = first.empty() ? step.began : first;
            last = step.began;
        }
    //: %1: when the first step of a treatment began, and the last
    return first.empty() ? first
                         : tr(QT_TRANSLATE_NOOP("ClinicalNote", "steps begun %1")).arg(q(span(first, last))).toStdString();
}

} // namespace raphe
