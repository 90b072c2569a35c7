#include "core/document/LetterSigns.h"

#include "core/document/LetterWords.h"
#include "core/safety/Warnings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("LetterSigns", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

// What somebody typed, as the end of a sentence.
QString unended(const std::string &typed)
{
    const QString text = q(typed).trimmed();
    return text.endsWith(QLatin1Char('.')) ? text.chopped(1) : text;
}

QString levelWords(WarningLevel level)
{
    switch (level) {
    case WarningLevel::EmergencyNow: return tr(QT_TRANSLATE_NOOP("LetterSigns", "emergency now"));
    case WarningLevel::SameDay: return tr(QT_TRANSLATE_NOOP("LetterSigns", "to be seen the same day"));
    case WarningLevel::BeforeTreating: return tr(QT_TRANSLATE_NOOP("LetterSigns", "to be judged before this is treated"));
    }
    return {};
}

// Of one rule: what is not done, and where.
QString stopInWords(const SafetyRules &rules, const Atlas &atlas, const CautionRule &rule, const std::vector<Place> &at)
{
    QStringList actions;
    for (const std::string &id : rule.actions)
        actions << q(rules.findAction(id)->name);
    const QString what =
        actions.isEmpty() ? tr(QT_TRANSLATE_NOOP("LetterSigns", "All hands-on work")) : actions.join(QStringLiteral(", "));
    QString where;
    if (rule.where == Where::Everywhere || at.empty())
        where = tr(QT_TRANSLATE_NOOP("LetterSigns", "everywhere"));
    else if (rule.where == Where::SameLimb)
        where = tr(QT_TRANSLATE_NOOP("LetterSigns", "in the whole limb of the %1")).arg(q(spokenList(atlas, at)));
    else
        where = tr(QT_TRANSLATE_NOOP("LetterSigns", "at, over and under the %1")).arg(q(spokenList(atlas, at)));
    QStringList regions;
    for (const StructureId &region : rule.regions)
        regions << q(atlas.at(region).names.english);
    if (!regions.isEmpty())
        //: %1: where; %2: regions of the skin
        where = tr(QT_TRANSLATE_NOOP("LetterSigns", "%1, under: %2")).arg(where, regions.join(QStringLiteral(", ")));
    //: %1: what is not done; %2: where
    return tr(QT_TRANSLATE_NOOP("LetterSigns", "%1: %2")).arg(what, where);
}

} // namespace

bool LetterSign::isForOthers() const
{
    return sign->level == WarningLevel::EmergencyNow || !answer->decided
        || (*answer->decided != Decision::InCare && *answer->decided != Decision::Explained);
}

Visit withoutPrivateAnswers(const WarningSigns &signs, Visit visit)
{
    std::erase_if(visit.warnings, [&](const WarningAnswer &answer) {
        const WarningSign *sign = signs.find(answer.sign);
        return !sign || sign->alone || answer.isMoved;
    });
    return visit;
}

std::vector<LetterSign> signsForLetter(const WarningSigns &signs, const Visit &visit)
{
    std::vector<LetterSign> out;
    for (const WarningAnswer &answer : visit.warnings)
        if (const WarningSign *sign = signs.find(answer.sign); answer.isThere && sign && !sign->alone && !answer.isMoved)
            out.push_back({sign, &answer});
    std::stable_sort(
        out.begin(), out.end(), [](const LetterSign &a, const LetterSign &b) { return a.sign->level > b.sign->level; });
    return out;
}

Urgency suggestedUrgency(const WarningSigns &signs, const Visit &visit)
{
    for (const LetterSign &one : signsForLetter(signs, visit)) {
        if (!one.isForOthers())
            continue;
        switch (one.sign->level) {
        case WarningLevel::EmergencyNow: return Urgency::EmergencyNow;
        case WarningLevel::SameDay: return Urgency::SameDay;
        case WarningLevel::BeforeTreating: return Urgency::WithinDays;
        }
    }
    const bool isReferred = visit.closing.review && visit.closing.review->decision == CareDecision::Refer;
    return isReferred ? Urgency::Routine : Urgency::Information;
}

std::string signNames(const Atlas &atlas, const std::vector<LetterSign> &signs)
{
    std::vector<std::string> out;
    out.reserve(signs.size());
    for (const auto &[sign, answer] : signs)
        //: %1: a warning sign; %2: where it is
        out.push_back(answer->at.empty() ? sign->name
                                         : tr(QT_TRANSLATE_NOOP("LetterSigns", "%1, at the %2"))
                                               .arg(q(sign->name), q(spokenList(atlas, answer->at)))
                                               .toStdString());
    return inOneLine(out);
}

std::vector<std::string> signLines(const Atlas &atlas, const std::vector<LetterSign> &signs)
{
    std::vector<std::string> out;
    for (const auto &[sign, answer] : signs) {
        if (!out.empty())
            out.emplace_back(); // a blank line
        QString name = q(sign->name);
        name[0] = name[0].toUpper();
        //: %1: a warning sign; %2: how urgent it is
        out.push_back(tr(QT_TRANSLATE_NOOP("LetterSigns", "%1; %2")).arg(name, levelWords(sign->level)).toStdString());
        //: %1: a date; %2: a question
        QString asked = (sign->byPractitioner ? tr(QT_TRANSLATE_NOOP("LetterSigns", "Looked for on %1: '%2' Answer: yes."))
                                              : tr(QT_TRANSLATE_NOOP("LetterSigns", "Asked on %1: '%2' Answer: yes.")))
                            .arg(q(answer->asked), q(sign->ask));
        if (!answer->at.empty())
            //: %1: a place
            asked += QLatin1Char(' ') + tr(QT_TRANSLATE_NOOP("LetterSigns", "Where: %1.")).arg(q(spokenList(atlas, answer->at)));
        out.push_back(asked.toStdString());
        QStringList decided;
        decided << (answer->decided
                //: %1: what was decided
                ? tr(QT_TRANSLATE_NOOP("LetterSigns", "Decided: %1.")).arg(q(decisionInWords(*answer->decided)))
                : tr(QT_TRANSLATE_NOOP("LetterSigns", "Decided: not yet; the work waits.")));
        if (!answer->why.empty())
            //: %1: a reason, as it was typed
            decided << tr(QT_TRANSLATE_NOOP("LetterSigns", "Why: %1.")).arg(unended(answer->why));
        if (!answer->told.empty())
            //: %1: who was told, as it was typed
            decided << tr(QT_TRANSLATE_NOOP("LetterSigns", "Told: %1.")).arg(unended(answer->told));
        out.push_back(decided.join(QLatin1Char(' ')).toStdString());
    }
    return out;
}

std::vector<std::string> stopLines(const SafetyRules &rules, const Atlas &atlas, const std::vector<LetterSign> &signs)
{
    std::vector<std::string> out;
    const bool isLocked = std::any_of(signs.begin(), signs.end(),
        [](const LetterSign &s) { return s.sign->level == WarningLevel::EmergencyNow || !s.answer->decided; });
    if (isLocked) {
        out.push_back(tr(QT_TRANSLATE_NOOP("LetterSigns", "All hands-on work at this visit.")).toStdString());
        return out;
    }
    for (const auto &[sign, answer] : signs)
        for (const std::string &suspected : sign->suspects)
            for (const CautionRule &rule : rules.rules()) {
                if (rule.verdict != Verdict::Stop
                    || std::find(rule.conditions.begin(), rule.conditions.end(), suspected) == rule.conditions.end())
                    continue;
                std::string stop = stopInWords(rules, atlas, rule, answer->at).toStdString();
                if (std::find(out.begin(), out.end(), stop) == out.end())
                    out.push_back(std::move(stop));
            }
    return out;
}

} // namespace raphe
