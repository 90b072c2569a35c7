#include "core/plan/TechniqueChoice.h"

#include <QCoreApplication>

#include <algorithm>

namespace raphe {

namespace {

constexpr int adaptedWeight = 2; // less; our choice
constexpr int daysOfWeek = 7;
constexpr int hoursOfDay = 24;
constexpr std::string_view thrust = "thrust";

QString tr(const char *text)
{
    return QCoreApplication::translate("TechniqueChoice", text);
}

// The highest grades at the place, and the spot of the most tender finding.
struct Grades {
    int tenderness = 0;
    int restriction = 0;
    std::optional<Spot> spot;
};

Grades gradesOf(const std::vector<Finding> &findings)
{
    Grades out;
    int worst = -1;
    for (const Finding &f : findings) {
        out.tenderness = std::max(out.tenderness, f.tendernessGrade());
        const int tooLittlePlay = f.play ? std::max(0, JointPlay::normal - f.play->grade) : 0;
        out.restriction = std::max({out.restriction, f.restrictionGrade(), tooLittlePlay});
        if (const int worth = f.tendernessGrade() + f.restrictionGrade(); worth > worst) {
            worst = worth;
            out.spot = f.spot;
        }
    }
    return out;
}

int weightOf(const Technique &technique, Tissue tissue, const Grades &grades)
{
    int best = 0;
    for (const Suit &suit : technique.suits) {
        const bool suits = suit.tissue == tissue && grades.tenderness >= suit.leastTenderness
            && grades.tenderness <= suit.mostTenderness && grades.restriction >= suit.leastRestriction;
        best = std::max(best, suits ? suit.weight : 0);
    }
    return best;
}

bool concerns(const CautionVerdict &verdict, const std::string &action)
{
    return verdict.concernsAll() || std::find(verdict.actions.begin(), verdict.actions.end(), action) != verdict.actions.end();
}

// Why it is too early or too often there; empty when it is not.
QString dosedOut(const Technique &technique, const Techniques &all, const Place &place, const std::vector<EarlierWork> &earlier)
{
    int times = 0;
    for (const EarlierWork &work : earlier) {
        if (!(work.place == place))
            continue;
        const Technique *before = all.find(work.technique);
        if (before && before->deep && technique.deep && work.daysAgo * hoursOfDay < before->dose.restHours)
            //: %1: a technique, %n: days
            return QCoreApplication::translate("TechniqueChoice",
                QT_TRANSLATE_NOOP("TechniqueChoice", "Deep work rests here: %1 was %n day(s) ago."), nullptr, work.daysAgo)
                .arg(QString::fromStdString(before->name));
        times += work.technique == technique.id && work.daysAgo < daysOfWeek ? 1 : 0;
    }
    if (times >= technique.dose.perWeek)
        //: %1: a technique
        return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "Enough of %1 here in seven days."))
            .arg(QString::fromStdString(technique.name));
    return {};
}

QString reasonFor(Tissue tissue, const Grades &grades)
{
    const bool irritable = grades.tenderness >= Tenderness::highest - 1;
    if (irritable)
        return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "Gentle, because touch makes the patient withdraw."));
    switch (tissue) {
    case Tissue::SuperficialFascia: return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "The skin and what lies directly under it."));
    case Tissue::Fascia: return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "A sheet that glides badly or is tender."));
    case Tissue::Attachment: return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "Where it meets the bone."));
    case Tissue::Joint: return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "A joint, given motion."));
    case Tissue::Muscle: break;
    }
    return grades.restriction >= 2 ? tr(QT_TRANSLATE_NOOP("TechniqueChoice", "A muscle that does not lengthen."))
                                   : tr(QT_TRANSLATE_NOOP("TechniqueChoice", "A tender muscle."));
}

class Chooser {
public:
    Chooser(const Techniques &techniques, const Suggestion &suggestion, const TechniqueLimits &limits)
        : m_techniques(techniques), m_suggestion(suggestion), m_limits(limits)
    {
    }

    // Why it may not be done; empty when it may.
    QString barred(const Technique &technique) const
    {
        if (m_limits.actions && !m_limits.actions->contains(technique.action))
            return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "What would suit is outside your scope of practice."));
        if (m_limits.without.contains(technique.id) || m_limits.without.contains(technique.action))
            return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "What would suit is not wanted today."));
        for (const CautionVerdict &v : m_suggestion.cautions) {
            if (!concerns(v, technique.action))
                continue;
            if (v.verdict == Verdict::Stop)
                return QString::fromStdString(v.reason);
            if (v.verdict == Verdict::Ask && technique.action == thrust && !v.concernsAll())
                return tr(QT_TRANSLATE_NOOP("TechniqueChoice", "A thrust needs the patient's own yes."));
        }
        return dosedOut(technique, m_techniques, m_suggestion.place, m_limits.earlier);
    }
    int lessFor(const Technique &technique) const
    {
        return std::any_of(m_suggestion.cautions.begin(), m_suggestion.cautions.end(),
                   [&](const CautionVerdict &v) {
                       return v.verdict == Verdict::Adapt && !v.concernsAll() && concerns(v, technique.action);
                   })
            ? adaptedWeight
            : 0;
    }
    std::vector<CautionVerdict> cautionsOf(const Technique &technique) const
    {
        std::vector<CautionVerdict> out;
        std::copy_if(m_suggestion.cautions.begin(), m_suggestion.cautions.end(), std::back_inserter(out),
            [&](const CautionVerdict &v) { return concerns(v, technique.action); });
        return out;
    }

private:
    const Techniques &m_techniques;
    const Suggestion &m_suggestion;
    const TechniqueLimits &m_limits;
};

bool isIn(const Technique &technique, Layer layer)
{
    return std::find(technique.layers.begin(), technique.layers.end(), layer) != technique.layers.end();
}

} // namespace

std::optional<Tissue> tissueOf(const Structure &structure, const std::vector<Finding> &findings)
{
    switch (structure.kind) {
    case Kind::SurfaceRegion:
    case Kind::SuperficialFascia: return Tissue::SuperficialFascia;
    case Kind::Fascia: return Tissue::Fascia;
    case Kind::Ligament:
    case Kind::Tendon: return Tissue::Attachment;
    case Kind::Joint: return Tissue::Joint;
    case Kind::Muscle: break;
    default: return std::nullopt;
    }
    const auto spot = gradesOf(findings).spot;
    const bool isEnd = spot == Spot::Origin || spot == Spot::Insertion || spot == Spot::Junction;
    return isEnd ? Tissue::Attachment : Tissue::Muscle;
}

std::vector<const Technique *> techniquesFor(
    const Techniques &techniques, const Structure &structure, const std::vector<Finding> &findings)
{
    std::vector<const Technique *> out;
    const auto tissue = tissueOf(structure, findings);
    for (const Technique &technique : techniques.all) {
        const bool isMeant =
            std::any_of(technique.suits.begin(), technique.suits.end(), [&](const Suit &suit) { return suit.tissue == tissue; });
        if (isMeant && (isIn(technique, structure.layer) || tissue == Tissue::Joint))
            out.push_back(&technique);
    }
    return out;
}

TechniqueChoice chooseTechnique(const Techniques &techniques, const Structure &structure, const Suggestion &suggestion,
    const std::vector<Finding> &findings, const TechniqueLimits &limits, const std::optional<std::string> &wanted)
{
    TechniqueChoice out;
    const auto tissue = tissueOf(structure, findings);
    if (!tissue) {
        out.why = tr(QT_TRANSLATE_NOOP("TechniqueChoice", "Hands treat what lies beside it, not this itself.")).toStdString();
        return out;
    }
    const Grades grades = gradesOf(findings);
    const Chooser chooser(techniques, suggestion, limits);
    QString why;
    int best = 0;
    int bestBarred = 0;
    for (const Technique &technique : techniques.all) {
        const bool isWanted = wanted && technique.id == *wanted;
        const int suits = isIn(technique, structure.layer) || *tissue == Tissue::Joint ? weightOf(technique, *tissue, grades) : 0;
        if ((wanted && !isWanted) || (!isWanted && suits == 0))
            continue;
        if (const QString reason = chooser.barred(technique); !reason.isEmpty()) {
            if (suits >= bestBarred) {
                bestBarred = suits;
                why = reason;
            }
            continue;
        }
        const int weight = std::max(1, suits - chooser.lessFor(technique));
        if (weight > best) {
            best = weight;
            out.technique = &technique;
        }
    }
    if (out.technique) {
        why = reasonFor(*tissue, grades);
        out.cautions = chooser.cautionsOf(*out.technique);
    } else if (why.isEmpty()) {
        why = tr(QT_TRANSLATE_NOOP("TechniqueChoice", "No technique of the list suits what was found here."));
    }
    out.why = why.toStdString();
    return out;
}

} // namespace raphe
