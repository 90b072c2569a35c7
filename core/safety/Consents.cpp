#include "core/safety/Consents.h"

#include "core/base/Utf8.h"
#include "core/record/PatientSearch.h"
#include "core/safety/Day.h"
#include "core/safety/Under.h"

#include <QCoreApplication>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Consents", text);
}

const ConsentAnswer *answerTo(const ConsentItem &item, const Visit &visit)
{
    const auto it = std::find_if(
        visit.consents.begin(), visit.consents.end(), [&](const ConsentAnswer &answer) { return answer.item == item.id; });
    return it == visit.consents.end() ? nullptr : &*it;
}

bool shareTechnique(const ConsentItem &a, const ConsentItem &b)
{
    return std::any_of(a.covers.techniques.begin(), a.covers.techniques.end(), [&](const std::string &technique) {
        return std::find(b.covers.techniques.begin(), b.covers.techniques.end(), technique) != b.covers.techniques.end();
    });
}

// A whole is at hand where a part of it is.
bool isAmong(const std::vector<StructureId> &structures, const Atlas &atlas, const StructureId &id)
{
    return std::any_of(structures.begin(), structures.end(),
        [&](const StructureId &s) { return s == id || isPartOf(atlas, id, s) || isPartOf(atlas, s, id); });
}

QString noWords(const ConsentItem &item, const ConsentAnswer &answer)
{
    const QString title = QString::fromStdString(item.title);
    const QString said = answer.state == ConsentState::Withdrawn
        //: %1: the title of what was explained
        ? tr(QT_TRANSLATE_NOOP("Consents", "The consent to '%1' was taken back.")).arg(title)
        : tr(QT_TRANSLATE_NOOP("Consents", "The consent to '%1' was refused.")).arg(title);
    //: %1: that it was refused, a sentence; %2: what was said with it
    return answer.remark.empty() ? said
                                 : tr(QT_TRANSLATE_NOOP("Consents", "%1 (%2)")).arg(said, QString::fromStdString(answer.remark));
}

CautionVerdict verdictOf(
    const ConsentItem &item, const ConsentAnswer &no, Verdict verdict, const QString &meaning, std::vector<std::string> actions)
{
    return {std::nullopt, std::move(actions), verdict, (noWords(item, no) + QLatin1Char(' ') + meaning).toStdString(), item.id,
        {},
        //: %1: the day on which the patient said so
        tr(QT_TRANSLATE_NOOP("Consents", "The patient's decision of %1.")).arg(QString::fromStdString(no.asked)).toStdString()};
}

CautionVerdict stopOf(const ConsentItem &item, const ConsentAnswer &no)
{
    const bool isWhole = item.covers.examination || item.covers.guardian;
    return verdictOf(item, no, Verdict::Stop,
        isWhole ? tr(QT_TRANSLATE_NOOP("Consents", "Nothing is examined or treated with the hands."))
                : tr(QT_TRANSLATE_NOOP("Consents", "Nothing of it is done.")),
        isWhole ? std::vector<std::string>{} : item.covers.techniques);
}

CautionVerdict askFor(const ConsentItem &item)
{
    const QString ask = item.chaperone
        //: %1: the title of what is to be explained
        ? tr(QT_TRANSLATE_NOOP("Consents", "'%1' needs a consent of its own, with a chaperone offered."))
        : tr(QT_TRANSLATE_NOOP("Consents", "'%1' needs a consent of its own."));
    return {std::nullopt, item.covers.techniques, Verdict::Ask, ask.arg(QString::fromStdString(item.title)).toStdString(),
        item.id, {}, item.source};
}

} // namespace

bool isUnderAge(const ConsentItems &items, const Visit &visit, const std::string &day)
{
    const auto age = visit.patient ? yearsBetween(visit.patient->born, day) : std::nullopt;
    return age && *age < items.guardianBelow;
}

bool needsGuardian(const ConsentItems &items, const Visit &visit)
{
    return isUnderAge(items, visit, visit.date)
        || std::any_of(visit.consents.begin(), visit.consents.end(), [](const ConsentAnswer &a) { return a.guardian; });
}

bool covers(const ConsentItems &items, const ConsentItem &item, const Regions &regions, const Place &place)
{
    if (item.covers.elsewhere)
        return std::none_of(items.items.begin(), items.items.end(), [&](const ConsentItem &other) {
            return other.covers.isOfPlace() && !other.covers.elsewhere && shareTechnique(item, other)
                && covers(items, other, regions, place);
        });
    return !item.covers.isOfPlace() || isAmong(item.covers.structures, regions.atlas(), place.structure)
        || isUnder(regions, place.structure, item.covers.regions);
}

const ConsentAnswer *answerThatHolds(const ConsentItems &items, const ConsentItem &item, const Visit &visit)
{
    const ConsentAnswer *answer = answerTo(item, visit);
    if (!answer || answer->state != ConsentState::Given)
        return answer;
    const auto days = daysBetween(answer->asked, visit.date);
    const bool cameOfAge = isUnderAge(items, visit, answer->asked) && !isUnderAge(items, visit, visit.date);
    return days && *days >= 0 && *days <= item.renewDays && !cameOfAge ? answer : nullptr;
}

bool concerns(const ConsentItems &items, const ConsentItem &item, const Regions &regions, const Visit &visit,
    const std::optional<std::set<std::string>> &techniques)
{
    const ConsentScope &scope = item.covers;
    if (item.adultsOnly && isUnderAge(items, visit, visit.date))
        return false;
    if (scope.guardian)
        return needsGuardian(items, visit);
    const bool isUsed = scope.techniques.empty() || !techniques
        || std::any_of(scope.techniques.begin(), scope.techniques.end(),
            [&](const std::string &technique) { return techniques->contains(technique); });
    const bool isWhereItHurts = !scope.isOfPlace()
        || std::any_of(visit.complaintAt.begin(), visit.complaintAt.end(),
            [&](const Place &place) { return covers(items, item, regions, place); });
    return isUsed && isWhereItHurts;
}

std::vector<const ConsentItem *> consentsDue(
    const ConsentItems &items, const Regions &regions, const Visit &visit, const std::optional<std::set<std::string>> &techniques)
{
    std::vector<const ConsentItem *> due;
    for (const ConsentItem &item : items.items)
        if (!answerThatHolds(items, item, visit) && concerns(items, item, regions, visit, techniques))
            due.push_back(&item);
    return due;
}

bool isPatient(const Visit &visit, const std::string &name)
{
    return visit.patient && saysSomething(name) && foldedWords(name) == foldedWords(visit.patient->name);
}

Result<Done> checkConsent(const ConsentItems &items, const Visit &visit, const ConsentAnswer &answer, const std::string &place)
{
    const ConsentItem *item = items.find(answer.item);
    if (!item)
        return Error{ErrorCode::UnknownId, place + "/item", answer.item};
    if (answer.state != ConsentState::Given)
        return Done{};
    const bool underAge = isUnderAge(items, visit, answer.asked);
    if (underAge && item->adultsOnly)
        return Error{ErrorCode::Contradiction, place, item->id + ", under the age of " + std::to_string(items.guardianBelow)};
    if ((underAge || item->covers.guardian) && (!answer.guardian || !saysSomething(answer.guardian->name)))
        return Error{ErrorCode::MissingField, place, "guardian"};
    if (answer.guardian && isPatient(visit, answer.guardian->name))
        return Error{ErrorCode::Contradiction, place, "the guardian, the patient"};
    if (item->chaperone && !answer.chaperone)
        return Error{ErrorCode::MissingField, place, "chaperone"};
    return Done{};
}

Result<Done> checkConsents(const SafetyRules &rules, const Visit &visit, const std::string &file)
{
    for (std::size_t i = 0; i < visit.consents.size(); ++i)
        if (auto checked = checkConsent(rules.consents(), visit, visit.consents[i], file + "#/consents/" + std::to_string(i));
            !checked)
            return checked;
    return Done{};
}

ConsentVerdicts consentVerdicts(const ConsentItems &items, const Visit &visit)
{
    ConsentVerdicts out;
    std::vector<const ConsentItem *> outside;
    for (const ConsentItem &item : items.items) {
        const ConsentScope &scope = item.covers;
        const bool stopsWork = scope.examination || (scope.guardian && needsGuardian(items, visit)) || scope.isOfPlace()
            || !scope.techniques.empty();
        const ConsentAnswer *answer = stopsWork ? answerThatHolds(items, item, visit) : nullptr;
        const bool isNo = answer && answer->state != ConsentState::Given;
        if (scope.isOfPlace() && isNo)
            out.atPlaces.push_back({&item, *answer, {}});
        else if (scope.isOfPlace() && !answer && !(item.adultsOnly && isUnderAge(items, visit, visit.date)))
            out.atPlaces.push_back({&item, std::nullopt, {}});
        else if (scope.isOfPlace() && answer && !scope.inside && scope.techniques.empty())
            outside.push_back(&item);
        else if (isNo)
            out.everywhere.push_back(stopOf(item, *answer));
    }
    for (ConsentVerdict &verdict : out.atPlaces)
        if (verdict.item->covers.inside)
            verdict.outside = outside;
    return out;
}

std::optional<CautionVerdict> verdictAt(
    const ConsentItems &items, const ConsentVerdict &verdict, const Regions &regions, const Place &place)
{
    const ConsentItem &item = *verdict.item;
    if (!verdict.no && !item.covers.techniques.empty() && regions.atlas().at(place.structure).kind != Kind::Joint)
        return std::nullopt;
    if (!covers(items, item, regions, place))
        return std::nullopt;
    CautionVerdict out = verdict.no ? stopOf(item, *verdict.no) : askFor(item);
    const bool maybeOutside = verdict.no
        && std::any_of(verdict.outside.begin(), verdict.outside.end(),
            [&](const ConsentItem *other) { return covers(items, *other, regions, place); });
    if (maybeOutside)
        out = verdictOf(item, *verdict.no, Verdict::Adapt,
            tr(QT_TRANSLATE_NOOP("Consents", "Only from outside the body, as agreed to.")), {});
    out.place = place;
    return out;
}

} // namespace raphe
