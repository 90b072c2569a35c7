#include "core/document/ReferralLetter.h"

#include "core/document/VisitMap.h"
#include "core/safety/Warnings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ReferralLetter", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

// Empty when nothing was told.
QString painWords(const Complaint &complaint)
{
    QStringList told;
    if (complaint.now)
        told << tr(QT_TRANSLATE_NOOP("ReferralLetter", "now %1")).arg(complaint.now->value);
    if (complaint.worst)
        told << tr(QT_TRANSLATE_NOOP("ReferralLetter", "at its worst in seven days %1")).arg(complaint.worst->value);
    if (complaint.best)
        told << tr(QT_TRANSLATE_NOOP("ReferralLetter", "at its best in seven days %1")).arg(complaint.best->value);
    return told.join(QStringLiteral(", "));
}

// Without what was said when nobody else could hear, so that nothing below can come to speak of it.
Visit withoutPrivateAnswers(const WarningSigns &signs, Visit visit)
{
    std::erase_if(visit.warnings, [&](const WarningAnswer &answer) {
        const WarningSign *sign = signs.find(answer.sign);
        return !sign || sign->alone || answer.isMoved;
    });
    return visit;
}

QString levelWords(WarningLevel level)
{
    switch (level) {
    case WarningLevel::EmergencyNow: return tr(QT_TRANSLATE_NOOP("ReferralLetter", "emergency now"));
    case WarningLevel::SameDay: return tr(QT_TRANSLATE_NOOP("ReferralLetter", "to be seen the same day"));
    case WarningLevel::BeforeTreating: return tr(QT_TRANSLATE_NOOP("ReferralLetter", "to be judged before this is treated"));
    }
    return {};
}

class Maker {
public:
    Maker(const SafetyRules &rules, const Atlas &atlas, const Visit &visit) : m_rules(rules), m_atlas(atlas), m_visit(visit)
    {
        for (const WarningAnswer &answer : visit.warnings)
            if (answer.isThere)
                m_signs.emplace_back(m_rules.signs().find(answer.sign), &answer);
        std::stable_sort(
            m_signs.begin(), m_signs.end(), [](const auto &a, const auto &b) { return a.first->level > b.first->level; });
    }

    [[nodiscard]] bool hasSigns() const { return !m_signs.empty(); }

    ReferralLetter make()
    {
        m_letter.title = text(QT_TRANSLATE_NOOP("ReferralLetter", "Letter about warning signs"));
        m_letter.limits = text(QT_TRANSLATE_NOOP("ReferralLetter",
            "This letter tells what was asked, seen and decided; it is not a diagnosis. Assists a trained practitioner; follow "
            "local "
            "law, scope of practice and licensed care."));
        m_letter.signature = text(QT_TRANSLATE_NOOP("ReferralLetter", "Signature, telephone"));
        heads();
        signs();
        stopped();
        complaint();
        cautions();
        found();
        std::erase_if(m_letter.parts, [](const LetterPart &part) { return part.lines.empty(); });
        return std::move(m_letter);
    }

private:
    static std::string text(const char *words) { return tr(words).toStdString(); }

    void part(const char *title) { m_letter.parts.push_back({text(title), {}}); }
    // Nothing for what is not known.
    void line(const QString &label, const QString &words)
    {
        if (!words.isEmpty())
            m_letter.parts.back().lines.push_back({label.toStdString(), words.toStdString()});
    }
    [[nodiscard]] QString spoken(const std::vector<Place> &places) const
    {
        QStringList out;
        for (const Place &place : places)
            out << q(m_atlas.spoken(place));
        return out.join(QStringLiteral("; "));
    }

    void heads()
    {
        const auto add = [&](const char *label, const std::string &words) {
            if (!words.empty())
                m_letter.heads.push_back({text(label), words});
        };
        add(QT_TRANSLATE_NOOP("ReferralLetter", "To"),
            text(QT_TRANSLATE_NOOP("ReferralLetter", "the licensed clinician who takes over")));
        if (m_visit.patient) {
            add(QT_TRANSLATE_NOOP("ReferralLetter", "Patient"), m_visit.patient->name);
            add(QT_TRANSLATE_NOOP("ReferralLetter", "Born"), m_visit.patient->born);
        }
        add(QT_TRANSLATE_NOOP("ReferralLetter", "Date of the visit"), m_visit.date);
        add(QT_TRANSLATE_NOOP("ReferralLetter", "From"), m_visit.practitioner);
    }

    void signs()
    {
        for (const auto &[sign, answer] : m_signs) {
            QString name = q(sign->name);
            name[0] = name[0].toUpper();
            //: %1: a warning sign; %2: how urgent it is
            m_letter.parts.push_back(
                {tr(QT_TRANSLATE_NOOP("ReferralLetter", "%1; %2")).arg(name, levelWords(sign->level)).toStdString(), {}});
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Asked")),
                //: %1: a date; %2: a question
                tr(QT_TRANSLATE_NOOP("ReferralLetter", "%1: '%2' Answer: yes")).arg(q(answer->asked), q(sign->ask)));
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Where")), spoken(answer->at));
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Decided")),
                answer->decided ? q(decisionInWords(*answer->decided))
                                : tr(QT_TRANSLATE_NOOP("ReferralLetter", "not yet; the work waits")));
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Why")), q(answer->why));
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Told")), q(answer->told));
        }
    }

    void stopped()
    {
        part(QT_TRANSLATE_NOOP("ReferralLetter", "Stopped because of this"));
        const bool isLocked = std::any_of(m_signs.begin(), m_signs.end(),
            [](const auto &s) { return s.first->level == WarningLevel::EmergencyNow || !s.second->decided; });
        if (isLocked) {
            line({}, tr(QT_TRANSLATE_NOOP("ReferralLetter", "All hands-on work at this visit.")));
            return;
        }
        for (const auto &[sign, answer] : m_signs)
            for (const std::string &suspected : sign->suspects)
                for (const CautionRule &rule : m_rules.rules())
                    if (rule.verdict == Verdict::Stop
                        && std::find(rule.conditions.begin(), rule.conditions.end(), suspected) != rule.conditions.end())
                        addStop(rule, answer->at);
    }

    void addStop(const CautionRule &rule, const std::vector<Place> &at)
    {
        QStringList actions;
        for (const std::string &id : rule.actions)
            actions << q(m_rules.findAction(id)->name);
        const QString what =
            actions.isEmpty() ? tr(QT_TRANSLATE_NOOP("ReferralLetter", "All hands-on work")) : actions.join(QStringLiteral(", "));
        QString where;
        if (rule.where == Where::Everywhere || at.empty())
            where = tr(QT_TRANSLATE_NOOP("ReferralLetter", "everywhere"));
        else if (rule.where == Where::SameLimb)
            where = tr(QT_TRANSLATE_NOOP("ReferralLetter", "in the whole limb of the %1")).arg(spoken(at));
        else
            where = tr(QT_TRANSLATE_NOOP("ReferralLetter", "at, over and under the %1")).arg(spoken(at));
        QStringList regions;
        for (const StructureId &region : rule.regions)
            regions << q(m_atlas.at(region).names.english);
        if (!regions.isEmpty())
            //: %1: where; %2: regions of the skin
            where = tr(QT_TRANSLATE_NOOP("ReferralLetter", "%1, under: %2")).arg(where, regions.join(QStringLiteral(", ")));
        //: %1: what is not done; %2: where
        const std::string stop = tr(QT_TRANSLATE_NOOP("ReferralLetter", "%1: %2")).arg(what, where).toStdString();
        auto &lines = m_letter.parts.back().lines;
        if (std::none_of(lines.begin(), lines.end(), [&](const LetterLine &other) { return other.text == stop; }))
            lines.push_back({{}, stop});
    }

    void complaint()
    {
        part(QT_TRANSLATE_NOOP("ReferralLetter", "Complaint"));
        for (const Complaint &complaint : m_visit.complaints) {
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "In the patient's words")), q(complaint.text));
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Since when")), q(complaint.since));
            line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Pain, 0 to 10")), painWords(complaint));
        }
        line(tr(QT_TRANSLATE_NOOP("ReferralLetter", "Where it hurts")), spoken(m_visit.complaintAt));
        if (m_visit.injured)
            line({}, tr(QT_TRANSLATE_NOOP("ReferralLetter", "It began with an injury.")));
    }

    void cautions()
    {
        part(QT_TRANSLATE_NOOP("ReferralLetter", "Conditions and cautions"));
        QStringList words;
        for (const Condition &condition : m_visit.conditions) {
            const QString name = q(m_rules.findCondition(condition.id)->name);
            //: %1: a condition; %2: where it is
            words << (condition.at.empty() ? name
                                           : tr(QT_TRANSLATE_NOOP("ReferralLetter", "%1 (%2)")).arg(name, spoken(condition.at)));
        }
        for (const std::string &caution : m_visit.cautions)
            words << q(caution);
        line({}, words.join(QStringLiteral("; ")));
    }

    void found()
    {
        part(QT_TRANSLATE_NOOP("ReferralLetter", "Found by hand at this visit"));
        QStringList words;
        for (const Finding &finding : m_visit.findings)
            if (finding.isFound())
                //: %1: a place; %2: what was found there
                words << tr(QT_TRANSLATE_NOOP("ReferralLetter", "%1: %2"))
                             .arg(q(m_atlas.spoken(finding.place)), q(findingInWords(m_atlas, finding)));
        line({}, words.join(QStringLiteral("; ")));
    }

    const SafetyRules &m_rules;
    const Atlas &m_atlas;
    const Visit &m_visit;
    std::vector<std::pair<const WarningSign *, const WarningAnswer *>> m_signs; // that are there
    ReferralLetter m_letter;
};

} // namespace

Result<ReferralLetter> referralLetter(const SafetyRules &rules, const Atlas &atlas, const Visit &visit, const std::string &file)
{
    const Visit shown = withoutPrivateAnswers(rules.signs(), visit);
    Maker maker(rules, atlas, shown);
    if (!maker.hasSigns())
        return Error{ErrorCode::NotAllowed, file,
            "no warning sign is there that a letter may name; what was asked alone is passed on by word of mouth"};
    return maker.make();
}

} // namespace raphe
