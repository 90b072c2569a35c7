#include "core/safety/Warnings.h"

#include "core/base/Utf8.h"
#include "core/safety/Day.h"
#include "core/safety/Under.h"

#include <QCoreApplication>

#include <algorithm>

namespace raphe {

namespace {

constexpr const char *pregnancies[] = {"pregnancy", "late-pregnancy", "pregnancy-warning"};

QString tr(const char *text)
{
    return QCoreApplication::translate("Warnings", text);
}

bool concerns(const WarningSign &sign, const Asked &asked)
{
    const bool atArea = sign.areas.empty()
        || std::any_of(sign.areas.begin(), sign.areas.end(), [&](const std::string &area) { return asked.areas.contains(area); });
    const bool atAge =
        !asked.age || ((!sign.ageFrom || *asked.age >= *sign.ageFrom) && (!sign.ageBelow || *asked.age < *sign.ageBelow));
    return atArea && atAge && (!sign.ifPregnant || asked.isPregnant) && (!sign.ifInjured || asked.isInjured);
}

bool needsPlace(const WarningSign &sign, const SafetyRules &rules)
{
    return std::any_of(sign.suspects.begin(), sign.suspects.end(),
        [&](const std::string &id) { return rules.findCondition(id)->place == PlaceNeed::Required; });
}

// Whether it is to be said which limb it is: a whole limb is stopped, or nothing stops but what the limb's rules say. What stops
// everything at its place alone, such as a break or a rash, may be on the trunk too.
bool concernsLimb(const WarningSign &sign, const SafetyRules &rules)
{
    return std::any_of(sign.suspects.begin(), sign.suspects.end(), [&](const std::string &id) {
        const auto has = [&](Where where, bool stopsAll) {
            return std::any_of(rules.rules().begin(), rules.rules().end(), [&](const CautionRule &rule) {
                return rule.where == where && (!stopsAll || (rule.verdict == Verdict::Stop && rule.actions.empty()))
                    && std::find(rule.conditions.begin(), rule.conditions.end(), id) != rule.conditions.end();
            });
        };
        return has(Where::SameLimb, true) || (has(Where::SameLimb, false) && !has(Where::AtPlace, true));
    });
}

QString decidedWords(Decision decision)
{
    switch (decision) {
    case Decision::EmergencyServices: return tr(QT_TRANSLATE_NOOP("Warnings", "emergency services were called"));
    case Decision::CareSameDay: return tr(QT_TRANSLATE_NOOP("Warnings", "sent to licensed medical care the same day"));
    case Decision::Referred: return tr(QT_TRANSLATE_NOOP("Warnings", "referred before this is treated"));
    case Decision::InCare: return tr(QT_TRANSLATE_NOOP("Warnings", "known to the treating team"));
    case Decision::Explained: return tr(QT_TRANSLATE_NOOP("Warnings", "asked further and explained"));
    }
    return {};
}

CautionVerdict verdictOf(const WarningSign &sign, const WarningAnswer &answer)
{
    QString name = QString::fromStdString(sign.name);
    name[0] = name[0].toUpper();
    const QString act = QString::fromStdString(sign.act);
    const auto make = [&](Verdict verdict, const QString &reason) {
        return CautionVerdict{std::nullopt, {}, verdict, reason.toStdString(), sign.id, {}, sign.source};
    };
    if (answer.isMoved)
        return make(Verdict::Stop,
            //: %1: a warning sign; %2: who moved the visit; %3: the reason
            tr(QT_TRANSLATE_NOOP("Warnings",
                   "%1: told at a visit that %2 moved to another patient (%3). Ask this patient; until then nothing is treated."))
                .arg(name, QString::fromStdString(answer.told), QString::fromStdString(answer.why)));
    if (sign.level == WarningLevel::EmergencyNow)
        return make(Verdict::Stop,
            //: %1: a warning sign; %2: what to do, sentences
            tr(QT_TRANSLATE_NOOP("Warnings", "%1: nothing is treated at this visit. %2")).arg(name, act));
    if (!answer.decided)
        return make(Verdict::Stop,
            //: %1: a warning sign; %2: what to do, sentences
            tr(QT_TRANSLATE_NOOP("Warnings", "%1: write down what was decided before going on. %2")).arg(name, act));
    const bool isSettled = *answer.decided == Decision::InCare || *answer.decided == Decision::Explained;
    return make(isSettled ? Verdict::Ask : Verdict::Adapt,
        //: %1: a warning sign; %2: what was decided; %3: why; %4: what to do, sentences
        tr(QT_TRANSLATE_NOOP("Warnings", "%1: %2 (%3). %4"))
            .arg(name, decidedWords(*answer.decided), QString::fromStdString(answer.why), act));
}

} // namespace

Asked askedOf(const WarningSigns &signs, const Regions &regions, const Visit &visit)
{
    Asked out;
    for (const WarningArea &area : signs.areas)
        if (std::any_of(visit.complaintAt.begin(), visit.complaintAt.end(),
                [&](const Place &place) { return isUnder(regions, place.structure, area.regions); }))
            out.areas.insert(area.id);
    if (visit.patient)
        out.age = yearsBetween(visit.patient->born, visit.date);
    out.isPregnant = std::any_of(visit.conditions.begin(), visit.conditions.end(), [](const Condition &c) {
        return std::find(std::begin(pregnancies), std::end(pregnancies), c.id) != std::end(pregnancies);
    });
    out.isInjured = visit.injured;
    return out;
}

bool isStale(const WarningSign &sign, const WarningAnswer &answer, const std::string &today)
{
    const auto days = daysBetween(answer.asked, today);
    return !days || *days < 0 || *days > sign.staleDays;
}

std::vector<const WarningSign *> dueSigns(
    const WarningSigns &signs, const Asked &asked, const std::vector<WarningAnswer> &answers, const std::string &today)
{
    const auto isThere = [&](const std::string &id) {
        const WarningSign *sign = signs.find(id);
        return std::any_of(answers.begin(), answers.end(),
            [&](const WarningAnswer &a) { return a.sign == id && a.isThere && sign && !isStale(*sign, a, today); });
    };
    std::vector<const WarningSign *> due;
    for (const WarningSign &sign : signs.signs) {
        if (!concerns(sign, asked))
            continue;
        if (!sign.askedWith.empty() && std::none_of(sign.askedWith.begin(), sign.askedWith.end(), isThere))
            continue;
        if (std::none_of(answers.begin(), answers.end(),
                [&](const WarningAnswer &a) { return a.sign == sign.id && !a.isMoved && !isStale(sign, a, today); }))
            due.push_back(&sign);
    }
    std::stable_sort(due.begin(), due.end(), [](const WarningSign *a, const WarningSign *b) { return a->level > b->level; });
    return due;
}

std::vector<SignPlace> placesOf(const WarningSign &sign, const SafetyRules &rules, const Regions &regions, const Visit &visit)
{
    if (!needsPlace(sign, rules))
        return {};
    const bool isOfLimb = concernsLimb(sign, rules);
    const auto isOffered = [&](const StructureId &id) { return !isOfLimb || regions.limbOf(id, leastUnder, rules.limbRoots()); };
    std::vector<SignPlace> out;
    for (const Place &place : visit.complaintAt)
        if (isOffered(place.structure))
            out.push_back({place, {}});
    if (!out.empty() && !sign.areas.empty()) // asked of everybody: it need not be where it hurts
        return out;
    const Atlas &atlas = regions.atlas();
    for (const WarningArea &area : rules.signs().areas) {
        if (!sign.areas.empty() && std::find(sign.areas.begin(), sign.areas.end(), area.id) == sign.areas.end())
            continue;
        const auto offered = std::count_if(area.regions.begin(), area.regions.end(), isOffered);
        if (offered * 2 < static_cast<std::ptrdiff_t>(area.regions.size())) // the low back has some of the buttock
            continue;
        const auto stands = std::find_if(area.regions.begin(), area.regions.end(),
            [&](const StructureId &region) { return isOffered(region) && atlas.sides(atlas.at(region)).size() > 1; });
        const StructureId &region = stands == area.regions.end() ? area.regions.front() : *stands;
        for (const Side side : atlas.sides(atlas.at(region)))
            out.push_back({{region, side}, area.name});
    }
    return out;
}

Result<Done> checkWarnings(const SafetyRules &rules, const Visit &visit, const std::string &file)
{
    for (std::size_t i = 0; i < visit.warnings.size(); ++i) {
        const WarningAnswer &answer = visit.warnings[i];
        const std::string place = file + "#/warnings/" + std::to_string(i);
        const WarningSign *sign = rules.signs().find(answer.sign);
        if (!sign)
            return Error{ErrorCode::UnknownId, place + "/sign", answer.sign};
        if (!answer.decided)
            continue;
        if (needsPlace(*sign, rules) && answer.at.empty())
            return Error{ErrorCode::MissingField, place, "at"};
        if (sign->level == WarningLevel::EmergencyNow && !saysSomething(answer.told))
            return Error{ErrorCode::MissingField, place, "told"};
    }
    return Done{};
}

Visit withSuspected(const SafetyRules &rules, Visit visit)
{
    for (const WarningAnswer &answer : visit.warnings) {
        const WarningSign *sign = answer.isThere ? rules.signs().find(answer.sign) : nullptr;
        if (!sign)
            continue;
        for (const std::string &id : sign->suspects)
            visit.conditions.push_back(
                {id, rules.findCondition(id)->place == PlaceNeed::None ? std::vector<Place>{} : answer.at});
    }
    return visit;
}

std::vector<CautionVerdict> warningVerdicts(const WarningSigns &signs, const Visit &visit)
{
    std::vector<CautionVerdict> out;
    for (const WarningAnswer &answer : visit.warnings)
        if (const WarningSign *sign = answer.isThere ? signs.find(answer.sign) : nullptr)
            out.push_back(verdictOf(*sign, answer));
    std::stable_sort(
        out.begin(), out.end(), [](const CautionVerdict &a, const CautionVerdict &b) { return a.verdict > b.verdict; });
    return out;
}

std::string decisionInWords(Decision decision)
{
    return decidedWords(decision).toStdString();
}

int legClotPoints(const WarningSigns &signs, const std::vector<WarningAnswer> &answers)
{
    int points = 0;
    for (const WarningSign &sign : signs.signs)
        if (std::any_of(answers.begin(), answers.end(), [&](const WarningAnswer &a) { return a.sign == sign.id && a.isThere; }))
            points += sign.points;
    return points;
}

std::vector<WarningAnswer> carriedOver(const std::vector<WarningAnswer> &answers, const std::string &today)
{
    std::vector<WarningAnswer> out;
    std::copy_if(answers.begin(), answers.end(), std::back_inserter(out),
        [&](const WarningAnswer &a) { return a.isThere && a.asked == today; });
    return out;
}

} // namespace raphe
