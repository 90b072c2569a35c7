// What was done and told, and how it goes on; then the goals.
#include "core/document/NoteSource.h"

#include "core/base/NumberText.h"
#include "core/plan/PlanWords.h"
#include "core/reasoning/Position.h"
#include "core/safety/Day.h"
#include "core/treatment/Doses.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

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

QString word(StepWord word)
{
    switch (word) {
    case StepWord::Familiar: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "familiar pain"));
    case StepWord::Eased: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "eased"));
    case StepWord::Sore: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "sore"));
    case StepWord::Lighter: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "then worked lighter"));
}

bool isLeftOut(const TreatmentStep &step)
{
    return !step.hasBegun() || step.done == StepDone::Skipped;
}

class PlanWriter {
public:
    explicit PlanWriter(const NoteSource &source)
        : m_source(source), m_visit(source.visit), m_part(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Plan")).toStdString())
    {
    }

    NotePart write()
    {
        wishes();
        treatment();
        week();
        minded();
        events();
        home();
        ahead();
        return m_part.take();
    }

private:
    void section(const char *title, bool isDerived = false) { m_part.section(tr(title).toStdString(), isDerived); }
    void line(const QString &label, const QString &text, std::string asOf = {})
    {
        m_part.line(label.toStdString(), text.toStdString(), std::move(asOf));
    }

    [[nodiscard]] QString techniqueName(const std::string &id) const
    {
        const Technique *technique = m_source.known.techniques.find(id);
        return q(technique ? technique->name : id);
    }

    // What the patient cannot or does not want; which places the plan was asked for is no part of the record of care.
    void wishes()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Limits of the treatment"));
        const PlanWish &wish = m_visit.plan;
        if (wish.minutes)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Time")),
                tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 min")).arg(*wish.minutes));
        const bool stoodBefore = m_source.previous && m_source.previous->plan.barred == wish.barred;
        for (const Position position : wish.barred)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Position that the patient cannot take")), q(positionInWords(position)),
                m_source.unasked(stoodBefore));
        QStringList refused;
        for (const std::string &id : wish.refused) {
            const HandsAction *action = m_source.known.rules.findAction(id);
            refused << (action ? q(action->name) : techniqueName(id));
        }
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Not wanted by the patient today")), refused.join(QStringLiteral("; ")));
    }

    void treatment()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Treatment given"));
        int seconds = 0;
        for (const TreatmentStep &step : m_visit.treatment.steps)
            if (!isLeftOut(step)) {
                seconds += step.seconds;
                line(q(step.began), worked(step), sameNote(step));
            }
        if (seconds > 0)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Work in all")), q(minutesInWords(seconds)));
        for (const TreatmentStep &step : m_visit.treatment.steps)
            if (isLeftOut(step))
                line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Left out")), with(place(step), step), sameNote(step));
        for (const TreatmentStep &step : m_visit.treatment.ahead)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Still ahead")), with(place(step), step));
        if (!m_visit.treatment.running.empty())
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Clock of the last step seen running")), q(m_visit.treatment.running));
    }

    [[nodiscard]] QString place(const TreatmentStep &step) const
    {
        //: %1: a place; %2: a technique
        return tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2")).arg(q(m_source.named(step.place)), techniqueName(step.technique));
    }

    [[nodiscard]] QString worked(const TreatmentStep &step) const
    {
        QString amount = q(minutesInWords(step.seconds));
        if (step.planned > 0 && step.planned != step.seconds)
            //: %1 and %2: times
            amount = tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 of planned %2")).arg(amount, q(minutesInWords(step.planned)));
        QStringList out{place(step), amount};
        if (step.kPa)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 kPa below the air")).arg(q(numberText(*step.kPa)));
        if (step.position)
            out << q(positionInWords(*step.position));
        if (step.rest > 0)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "rest before it, as proposed: %1")).arg(q(minutesInWords(step.rest)));
        if (step.done == StepDone::Partly)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "done in part"));
        if (!step.done)
            out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "how much of it was done is not said yet"));
        return with(out.join(QStringLiteral(", ")), step);
    }

    // What the patient said, and what was written.
    static QString with(const QString &before, const TreatmentStep &step)
    {
        QString out = before;
        QStringList said;
        for (const StepWord one : step.words)
            said << word(one);
        if (!said.empty())
            //: %1: what was done; %2: what the patient said of it
            out = tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1; the patient: %2")).arg(out, said.join(QStringLiteral(", ")));
        return step.note.empty() ? out : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1; %2")).arg(out, q(step.note));
    }

    [[nodiscard]] std::string sameNote(const TreatmentStep &step) const
    {
        if (step.note.empty() || !m_source.previous)
            return {};
        const auto &steps = m_source.previous->treatment.steps;
        return m_source.sameWords(std::any_of(steps.begin(), steps.end(),
            [&](const TreatmentStep &other) { return other.place == step.place && other.note == step.note; }));
    }

    // What was worked in the days before too.
    void week()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Worked in seven days, today's counted"), true);
        std::vector<PastTreatment> past;
        for (const auto &[visit, isInError] : m_source.given.earlier)
            if (const auto days = daysBetween(visit.date, m_visit.date); days && *days >= 0 && *days < 7 && !isInError)
                past.push_back({static_cast<int>(*days), visit.treatment});
        for (const WeekDose &dose : dosesOf(m_visit.treatment, past))
            if (dose.timesToday > 0 && dose.timesInWeek > dose.timesToday)
                //: %1: a place; %2: a technique; %3: a time; %4: a count
                line({},
                    tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2, %3, %4 times"))
                        .arg(q(m_source.named(dose.place)), techniqueName(dose.technique), q(minutesInWords(dose.secondsInWeek)),
                            QString::number(dose.timesInWeek)));
    }

    [[nodiscard]] QString ruleWords(const std::string &id) const
    {
        const SafetyRules &rules = m_source.known.rules;
        for (const CautionRule &rule : rules.rules())
            if (rule.id == id)
                return q(rule.reason);
        if (const WarningSign *sign = rules.signs().find(id))
            return q(sign->name);
        if (const ConsentItem *item = rules.consents().find(id))
            return tr(QT_TRANSLATE_NOOP("ClinicalNote", "consent: %1")).arg(q(item->title));
        const Structure *area = m_source.atlas().find(StructureId{id});
        return q(area ? area->names.english : id);
    }

    // Each rule once, with the places where it was read.
    void minded()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Cautions read before the work began"));
        std::vector<std::pair<std::string, std::vector<Place>>> rules;
        for (const TreatmentStep &step : m_visit.treatment.steps)
            for (const std::string &id : step.minded) {
                auto rule = std::find_if(rules.begin(), rules.end(), [&](const auto &one) { return one.first == id; });
                if (rule == rules.end())
                    rule = rules.insert(rules.end(), {id, {}});
                if (std::find(rule->second.begin(), rule->second.end(), step.place) == rule->second.end())
                    rule->second.push_back(step.place);
            }
        for (const auto &[id, places] : rules)
            line(q(m_source.named(places)), ruleWords(id));
    }

    void events()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Adverse events"));
        for (const AdverseEvent &event : m_visit.treatment.events) {
            QStringList out;
            for (const std::string &sign : event.signs) // an id in words of the trade
                out << q(sign).replace(QLatin1Char('-'), QLatin1Char(' '));
            if (!event.told.empty())
                out << q(event.told);
            out << (event.answer.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "what was done about it is not written down"))
                                         : tr(QT_TRANSLATE_NOOP("ClinicalNote", "done about it: %1")).arg(q(event.answer)));
            line(q(event.time), out.join(QStringLiteral("; ")));
        }
    }

    void home()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "For home"));
        const Closing &closing = m_visit.closing;
        for (const GivenAdvice &advice : closing.advice) {
            // The program's own words are the same each time.
            const bool isSame = advice.item.empty() && m_source.previous
                && std::find(m_source.previous->closing.advice.begin(), m_source.previous->closing.advice.end(), advice)
                    != m_source.previous->closing.advice.end();
            line(advice.title.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "In own words")) : q(advice.title), q(advice.text),
                m_source.sameWords(isSame));
        }
        if (closing.isTold)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Told")),
                tr(QT_TRANSLATE_NOOP("ClinicalNote", "what to expect, and when to call whom")));
        for (const std::string &task : m_visit.promised)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Promised until the next visit")), q(task));
    }

    static QString decisionWord(CareDecision decision)
    {
        switch (decision) {
        case CareDecision::ChangePlan: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "the plan is changed"));
        case CareDecision::Refer: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "referred"));
        case CareDecision::Discharge: break;
        }
        return tr(QT_TRANSLATE_NOOP("ClinicalNote", "the care is ended"));
    }

    void ahead()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "How it goes on"));
        const Closing &closing = m_visit.closing;
        for (const std::string &focus : closing.focus)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "The next visit looks at")), q(focus));
        if (const auto &plan = closing.plan) {
            const std::string asOf = m_source.asked(plan->agreed);
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Plan of care, agreed on")), q(plan->agreed), asOf);
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Level of care")),
                //: %1: days; %2: a number of visits
                tr(QT_TRANSLATE_NOOP("ClinicalNote", "a visit every %1 days; after %2 visits it is asked whether it works"))
                    .arg(plan->everyDays)
                    .arg(plan->visits),
                asOf);
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Success would be")), q(plan->success), asOf);
        }
        if (const auto &review = closing.review)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Is it working: decided")),
                tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2")).arg(decisionWord(review->decision), q(review->why)));
        call();
    }

    void call()
    {
        if (!m_visit.closing.call)
            return;
        const LaterCall &call = *m_visit.closing.call;
        QStringList out{tr(QT_TRANSLATE_NOOP("ClinicalNote", "due %1")).arg(q(call.due)),
            call.made.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "not made yet"))
                              : tr(QT_TRANSLATE_NOOP("ClinicalNote", "made %1")).arg(q(call.made))};
        if (call.reaction)
            out << q(reactionInWords(*call.reaction));
        if (!call.told.empty())
            out << q(call.told);
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Call after the treatment")), out.join(QStringLiteral("; ")));
    }

    const NoteSource &m_source;
    const Visit &m_visit;
    NotePartWriter m_part;
};

} // namespace

NotePart planPart(const NoteSource &source)
{
    return PlanWriter(source).write();
}

NotePart goalsPart(const NoteSource &source)
{
    NotePartWriter part(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Goals")).toStdString());
    for (const Goal &goal : source.visit.closing.goals) {
        QStringList when{goal.until.empty() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "date open"))
                                            : tr(QT_TRANSLATE_NOOP("ClinicalNote", "until %1")).arg(q(goal.until))};
        if (goal.reached)
            when << tr(QT_TRANSLATE_NOOP("ClinicalNote", "reached"));
        const bool isOfBefore = source.previous
            && std::find(source.previous->closing.goals.begin(), source.previous->closing.goals.end(), goal)
                != source.previous->closing.goals.end();
        part.line(when.join(QStringLiteral(", ")).toStdString(), goal.text, source.sameWords(isOfBefore));
    }
    return part.take();
}

} // namespace raphe
