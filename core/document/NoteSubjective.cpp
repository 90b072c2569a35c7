// What the patient told, and what was asked before hands-on work.
#include "core/document/NoteSource.h"

#include "core/base/NumberText.h"
#include "core/record/PaintedPlaces.h"
#include "core/safety/Warnings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <map>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClinicalNote", text);
}

std::string said(const char *text)
{
    return tr(text).toStdString();
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

QString word(Irritability irritability)
{
    switch (irritability) {
    case Irritability::Low: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "low (of low, medium and high)"));
    case Irritability::Medium: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "medium (of low, medium and high)"));
    case Irritability::High: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "high (of low, medium and high)"));
}

QString word(PartOfDay part)
{
    switch (part) {
    case PartOfDay::Waking: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "waking"));
    case PartOfDay::Morning: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "morning"));
    case PartOfDay::Noon: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "noon"));
    case PartOfDay::Evening: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "evening"));
    case PartOfDay::Night: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "night"));
}

QString word(DayLevel level)
{
    switch (level) {
    case DayLevel::None: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "none"));
    case DayLevel::Less: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "less"));
    case DayLevel::Same: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "the same"));
    case DayLevel::More: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "more"));
}

QString word(View view)
{
    switch (view) {
    case View::Front: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "front"));
    case View::Back: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "back"));
    case View::Side: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "side"));
    case View::Sole: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "sole"));
    case View::Palm: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "palm"));
    case View::Head: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "head"));
}

QString word(PainQuality quality)
{
    switch (quality) {
    case PainQuality::Aching: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "aching"));
    case PainQuality::Burning: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "burning"));
    case PainQuality::Shooting: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "shooting"));
    case PainQuality::Stabbing: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "stabbing"));
    case PainQuality::Tingling: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "tingling"));
    case PainQuality::Numb: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "numb"));
    case PainQuality::Stiff: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "stiff"));
    case PainQuality::Throbbing: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "throbbing"));
    case PainQuality::Pressing: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "pressing"));
    case PainQuality::Other: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "of another kind"));
}

QString word(Kept kept)
{
    switch (kept) {
    case Kept::Done: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "done"));
    case Kept::Part: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "done in part"));
    case Kept::Not: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "not done"));
}

QString ratings(const Complaint &complaint)
{
    QStringList out;
    if (complaint.now)
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "now %1")).arg(complaint.now->value);
    if (complaint.worst)
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "worst of seven days %1")).arg(complaint.worst->value);
    if (complaint.best)
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "best of seven days %1")).arg(complaint.best->value);
    if (!areRatingsInOrder(complaint))
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "as told, though best, now and worst are not in this order"));
    //: %1: ratings of pain
    return out.isEmpty() ? QString()
                         : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (numeric rating scale)")).arg(out.join(QStringLiteral(", ")));
}

QString dayWords(const Complaint &complaint)
{
    QStringList out;
    for (std::size_t i = 0; i < complaint.day.size(); ++i)
        if (complaint.day[i])
            //: %1: a part of the day; %2: how it is then
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2")).arg(word(static_cast<PartOfDay>(i)), word(*complaint.day[i]));
    //: %1: parts of the day and how it is then
    return out.isEmpty()
        ? QString()
        : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (beside how it mostly is)")).arg(out.join(QStringLiteral(", ")));
}

std::string meanText(double mean)
{
    constexpr double hundredths = 100;
    return numberText(std::round(hundredths * mean) / hundredths);
}

class SubjectiveWriter {
public:
    explicit SubjectiveWriter(const NoteSource &source)
        : m_source(source), m_visit(source.visit), m_part(said(QT_TRANSLATE_NOOP("ClinicalNote", "Subjective")))
    {
    }

    NotePart write()
    {
        for (std::size_t i = 0; i < m_visit.complaints.size(); ++i)
            complaint(m_visit.complaints[i], i + 1);
        where();
        sinceLast();
        warnings();
        conditions();
        consents();
        return m_part.take();
    }

private:
    void section(const char *title) { m_part.section(said(title)); }
    void line(const char *label, const QString &text, std::string asOf = {})
    {
        m_part.line(said(label), text.toStdString(), std::move(asOf));
    }

    void complaint(const Complaint &c, std::size_t number)
    {
        m_part.section((m_visit.complaints.size() == 1 ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "Complaint"))
                                                       : tr(QT_TRANSLATE_NOOP("ClinicalNote", "Complaint %1")).arg(number))
                           .toStdString());
        const std::string asOf = m_source.asked(c.asked);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "In the patient's words"), q(c.text), asOf);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Since"), q(c.since), asOf);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Pain, 0 to 10"), ratings(c));
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Worse with"), q(c.aggravates), asOf);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Better with"), q(c.eases), asOf);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Through the day"), dayWords(c), asOf);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Irritability"), c.irritability ? word(*c.irritability) : QString(), asOf);
        activities(c, asOf);
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Hopes for"), q(c.goal), asOf);
        if (c.asked == m_visit.date)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Asked or confirmed"), q(c.asked));
    }

    // Patient-Specific Functional Scale.
    void activities(const Complaint &c, const std::string &asOf)
    {
        std::size_t complete = 0;
        for (const Activity &activity : c.activities) {
            const QString name =
                activity.name.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "without a name")) : q(activity.name);
            complete += activity.isComplete() ? 1 : 0;
            if (activity.score)
                //: %1: something that is hard to do; %2: a score
                line(QT_TRANSLATE_NOOP("ClinicalNote", "Hard to do, 0 to 10"),
                    tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2 of 10")).arg(name, QString::number(*activity.score)));
            else
                line(QT_TRANSLATE_NOOP("ClinicalNote", "Hard to do, 0 to 10"),
                    tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: no score")).arg(name), asOf);
        }
        if (const auto mean = meanScore(c.activities); mean && complete > 1)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Mean of these"),
                tr(QT_TRANSLATE_NOOP(
                       "ClinicalNote", "%1 of 10, of %2 activities (Patient-Specific Functional Scale: 0 cannot, 10 as before)"))
                    .arg(q(meanText(*mean)))
                    .arg(complete));
    }

    void where()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Where it hurts"));
        line(QT_TRANSLATE_NOOP("ClinicalNote", "Places"), q(m_source.named(m_visit.complaintAt)));
        for (const PainPatch &patch : m_visit.pain)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Drawn"), drawn(patch));
        if (m_visit.injured)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Beginning"), tr(QT_TRANSLATE_NOOP("ClinicalNote", "with an injury")),
                m_source.unasked(m_source.previous && m_source.previous->injured));
    }

    [[nodiscard]] QString drawn(const PainPatch &patch) const
    {
        std::vector<Place> places;
        for (const PaintedPlace &painted : paintedPlaces(patch, m_source.known.regions.body().of(patch.view), m_source.atlas()))
            places.push_back(painted.place);
        QStringList out;
        out << (places.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "beside the body")) : q(m_source.named(places)));
        //: %1: a view of the body, such as 'back'
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "drawing of the %1")).arg(word(patch.view));
        if (patch.quality)
            out << word(*patch.quality);
        if (patch.intensity)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 of 10")).arg(patch.intensity->value);
        out << (patch.painter == Painter::Patient ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "painted by the patient"))
                                                  : tr(QT_TRANSLATE_NOOP("ClinicalNote", "painted by the practitioner")));
        out << (patch.confirmed ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "confirmed in words"))
                                : tr(QT_TRANSLATE_NOOP("ClinicalNote", "not confirmed in words")));
        return out.join(QStringLiteral(", "));
    }

    void sinceLast()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Since the last visit"));
        if (const auto &since = m_visit.sinceLast) {
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Course"), since->course ? courseWord(*since->course) : QString());
            line(QT_TRANSLATE_NOOP("ClinicalNote", "In the two days after it"),
                since->reaction ? q(reactionInWords(*since->reaction)) : QString());
            line(QT_TRANSLATE_NOOP("ClinicalNote", "What came of it, in the patient's words"), q(since->reactionTold));
            for (const Promise &promise : since->promises)
                //: %1: what was promised; %2: whether it was done
                line(QT_TRANSLATE_NOOP("ClinicalNote", "Promised"),
                    tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2"))
                        .arg(q(promise.task),
                            promise.kept ? word(*promise.kept) : tr(QT_TRANSLATE_NOOP("ClinicalNote", "not asked"))));
        }
        for (const std::string &focus : m_visit.focus)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Left for today by the visit before"), q(focus));
    }

    static QString courseWord(Course course)
    {
        return course == Course::Better ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "better"))
            : course == Course::Same    ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "the same"))
                                        : tr(QT_TRANSLATE_NOOP("ClinicalNote", "worse"));
    }

    // What is there in full, gravest first; what is not there by name, for each day of asking.
    void warnings()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Warning signs"));
        const WarningSigns &signs = m_source.known.rules.signs();
        std::vector<const WarningAnswer *> there;
        std::map<std::string, QStringList, std::greater<>> notThere; // by day of asking, the newest first
        for (const WarningAnswer &answer : m_visit.warnings) {
            const WarningSign *sign = signs.find(answer.sign);
            const QString name = sign ? q(sign->name) : q(answer.sign);
            if (answer.isThere)
                there.push_back(&answer);
            else
                notThere[answer.asked] << (sign && sign->alone
                        ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (asked alone)")).arg(name)
                        : name);
        }
        const auto level = [&](const WarningAnswer *answer) {
            const WarningSign *sign = signs.find(answer->sign);
            return sign ? sign->level : WarningLevel::BeforeTreating;
        };
        std::stable_sort(there.begin(), there.end(), [&](const auto *a, const auto *b) { return level(a) > level(b); });
        for (const WarningAnswer *answer : there)
            sign(*answer, signs.find(answer->sign));
        for (const auto &[day, names] : notThere)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Asked, and the answer was no"), names.join(QStringLiteral("; ")),
                m_source.asked(day));
    }

    void sign(const WarningAnswer &answer, const WarningSign *sign)
    {
        QStringList out;
        if (sign)
            //: %1: a question; its answer was yes
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "'%1' yes")).arg(q(sign->ask));
        if (!answer.at.empty())
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "where: %1")).arg(q(m_source.named(answer.at)));
        if (answer.isMoved)
            out << tr(QT_TRANSLATE_NOOP(
                "ClinicalNote", "told at a visit that was moved to another patient; this one was not asked yet"));
        else if (!answer.decided)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "nothing is decided yet"));
        if (answer.decided)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "decided: %1")).arg(q(decisionInWords(*answer.decided)));
        if (!answer.why.empty())
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "why: %1")).arg(q(answer.why));
        if (!answer.told.empty())
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "told: %1")).arg(q(answer.told));
        const QString name = sign ? q(sign->name) : q(answer.sign);
        const QString label = sign && sign->alone ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "THERE (asked alone): %1"))
                                                  : tr(QT_TRANSLATE_NOOP("ClinicalNote", "THERE: %1"));
        m_part.line(label.arg(name).toStdString(), out.join(QStringLiteral("; ")).toStdString(), m_source.asked(answer.asked));
    }

    void conditions()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Conditions and cautions"));
        const auto stoodBefore = [&](const auto &list, const auto &one) {
            return std::find(list.begin(), list.end(), one) != list.end();
        };
        const Visit none;
        const Visit &before = m_source.previous ? *m_source.previous : none;
        for (const Condition &condition : m_visit.conditions) {
            const ConditionKind *kind = m_source.known.rules.findCondition(condition.id);
            const QString name = q(kind ? kind->name : condition.id);
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Condition"),
                condition.at.empty()
                    ? name
                    : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (%2)")).arg(name, q(m_source.named(condition.at))),
                m_source.unasked(stoodBefore(before.conditions, condition)));
        }
        for (const std::string &caution : m_visit.cautions)
            line(QT_TRANSLATE_NOOP("ClinicalNote", "Caution"), q(caution),
                m_source.unasked(stoodBefore(before.cautions, caution)));
    }

    void consents()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Consent"));
        for (const ConsentAnswer &answer : m_visit.consents) {
            const ConsentItem *item = m_source.known.rules.consents().find(answer.item);
            m_part.line(item ? item->title : answer.item, consent(answer).toStdString(), m_source.asked(answer.asked));
        }
    }

    static QString consent(const ConsentAnswer &answer)
    {
        QStringList out;
        switch (answer.state) {
        case ConsentState::Given: out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "given on %1")).arg(q(answer.asked)); break;
        case ConsentState::Refused: out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "REFUSED on %1")).arg(q(answer.asked)); break;
        case ConsentState::Withdrawn:
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "TAKEN BACK on %1")).arg(q(answer.asked));
            break;
        }
        if (answer.chaperone)
            out << (*answer.chaperone == Chaperone::Declined
                    ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "a chaperone was offered and not wanted"))
                    : tr(QT_TRANSLATE_NOOP("ClinicalNote", "a chaperone was present")));
        if (!answer.chaperoneName.empty())
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "chaperone: %1")).arg(q(answer.chaperoneName));
        if (answer.guardian)
            out << (answer.guardian->relation.empty()
                    ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "guardian: %1")).arg(q(answer.guardian->name))
                    : tr(QT_TRANSLATE_NOOP("ClinicalNote", "guardian: %1 (%2)"))
                          .arg(q(answer.guardian->name), q(answer.guardian->relation)));
        if (!answer.remark.empty())
            out << q(answer.remark);
        return out.join(QStringLiteral("; "));
    }

    const NoteSource &m_source;
    const Visit &m_visit;
    NotePartWriter m_part;
};

} // namespace

NotePart subjectivePart(const NoteSource &source)
{
    return SubjectiveWriter(source).write();
}

} // namespace raphe
