#include "core/document/LetterDraft.h"

#include "core/document/LetterChanges.h"
#include "core/document/LetterFindings.h"
#include "core/document/LetterSigns.h"
#include "core/document/LetterWords.h"
#include "core/treatment/WorkWords.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

constexpr std::size_t mostSteps = 10; // of the work, in lines; our choice, no source

QString tr(const char *text)
{
    return QCoreApplication::translate("LetterDraft", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

class Maker {
public:
    Maker(const LetterSources &sources, const Visit &visit, const std::string &written)
        : m_sources(sources),
          m_atlas(sources.regions.atlas()),
          m_visit(visit),
          m_signs(signsForLetter(sources.rules.signs(), visit))
    {
        m_letter.written = written;
    }

    Letter make()
    {
        m_letter.title = m_signs.empty() ? said(QT_TRANSLATE_NOOP("LetterDraft", "Letter about hands-on care"))
                                         : said(QT_TRANSLATE_NOOP("LetterDraft", "Letter about warning signs"));
        m_letter.urgency = suggestedUrgency(m_sources.rules.signs(), m_visit);
        m_letter.reason = composed(reason());
        m_letter.question = composed(question());
        if (!m_signs.empty()) {
            part(QT_TRANSLATE_NOOP("LetterDraft", "Warning signs"), signLines(m_atlas, m_signs));
            part(QT_TRANSLATE_NOOP("LetterDraft", "Stopped because of this"), stopLines(m_sources.rules, m_atlas, m_signs));
        }
        part(QT_TRANSLATE_NOOP("LetterDraft", "Complaint"), complaint());
        part(QT_TRANSLATE_NOOP("LetterDraft", "Conditions and cautions"), cautions());
        part(QT_TRANSLATE_NOOP("LetterDraft", "Found by hand"), findingLines(m_atlas, m_visit));
        part(QT_TRANSLATE_NOOP("LetterDraft", "Movements"), movementLines(m_sources.examination, m_sources.reference, m_visit));
        part(QT_TRANSLATE_NOOP("LetterDraft", "Tests"), testLines(m_sources.examination, m_visit));
        part(QT_TRANSLATE_NOOP("LetterDraft", "Clear, or not examined"), clearLines(m_sources.regions, m_visit));
        part(QT_TRANSLATE_NOOP("LetterDraft", "What was done"), done());
        part(QT_TRANSLATE_NOOP("LetterDraft", "What changed"), changeLines(m_visit, m_sources.examination, m_atlas));
        part(QT_TRANSLATE_NOOP("LetterDraft", "What is planned"), planned());
        part(QT_TRANSLATE_NOOP("LetterDraft", "Impression of the practitioner"), impression());
        return std::move(m_letter);
    }

private:
    using Strings = std::vector<std::string>;

    static std::string said(const char *words) { return tr(words).toStdString(); }
    static LetterText composed(const std::string &text) { return {text, text}; }
    // Nothing for what is not known.
    void part(const char *title, const Strings &lines)
    {
        std::string text;
        for (const std::string &line : lines)
            text += (text.empty() ? "" : "\n") + line; // the first is never blank
        if (!text.empty())
            m_letter.parts.push_back({said(title), composed(text)});
    }
    // "label: words"; nothing for no words.
    static void add(QStringList &to, const char *sentence, const std::string &words)
    {
        if (!words.empty())
            to << tr(sentence).arg(q(words));
    }
    static void add(Strings &to, const QStringList &sayings)
    {
        if (sayings.isEmpty())
            return;
        QString line = sayings.join(QStringLiteral("; "));
        line[0] = line[0].toUpper();
        to.push_back(line.toStdString());
    }

    [[nodiscard]] std::string reason() const
    {
        if (!m_signs.empty())
            //: %1: warning signs, with their places
            return tr(QT_TRANSLATE_NOOP("LetterDraft", "Warning signs at this visit: %1."))
                .arg(q(signNames(m_atlas, m_signs)))
                .toStdString();
        const auto &review = m_visit.closing.review;
        if (review && review->decision == CareDecision::Refer)
            //: %1: why, as it was typed
            return tr(QT_TRANSLATE_NOOP("LetterDraft", "Care changed nothing beyond the errors of measuring: %1"))
                .arg(q(review->why))
                .toStdString();
        return m_visit.complaint().empty() ? said(QT_TRANSLATE_NOOP("LetterDraft", "Report on a visit for hands-on care."))
                                           //: %1: the patient's words
                                           : tr(QT_TRANSLATE_NOOP("LetterDraft", "Report on hands-on care for: '%1'."))
                                                 .arg(q(m_visit.complaint()))
                                                 .toStdString();
    }

    [[nodiscard]] std::string question() const
    {
        const bool isOpen = std::any_of(m_signs.begin(), m_signs.end(), [](const LetterSign &s) { return s.isForOthers(); });
        return isOpen ? said(QT_TRANSLATE_NOOP(
                   "LetterDraft", "Please judge the signs below. May hands-on care go on afterwards, and what is to be avoided?"))
                      : std::string();
    }

    [[nodiscard]] Strings complaint() const
    {
        Strings out;
        for (const Complaint &c : m_visit.complaints) {
            QStringList told;
            add(told, QT_TRANSLATE_NOOP("LetterDraft", "'%1'"), c.text);
            add(told, QT_TRANSLATE_NOOP("LetterDraft", "since: %1"), c.since);
            add(told, QT_TRANSLATE_NOOP("LetterDraft", "pain, 0 to 10: %1"), painInWords(c));
            add(out, told);
            QStringList nature;
            add(nature, QT_TRANSLATE_NOOP("LetterDraft", "worse with: %1"), c.aggravates);
            add(nature, QT_TRANSLATE_NOOP("LetterDraft", "eased by: %1"), c.eases);
            if (c.irritability)
                add(nature, QT_TRANSLATE_NOOP("LetterDraft", "irritability: %1"), irritabilityInWords(*c.irritability));
            add(nature, QT_TRANSLATE_NOOP("LetterDraft", "hopes: %1"), c.goal);
            add(out, nature);
            QStringList activities;
            for (const Activity &activity : c.activities)
                if (activity.isComplete())
                    activities << tr(QT_TRANSLATE_NOOP("LetterDraft", "%1 %2")).arg(q(activity.name)).arg(*activity.score);
            if (!activities.isEmpty())
                //: %1: activities with their scores
                out.push_back(tr(QT_TRANSLATE_NOOP("LetterDraft", "Activities, 0 (cannot) to 10 (as before): %1"))
                                  .arg(activities.join(QStringLiteral("; ")))
                                  .toStdString());
        }
        QStringList where;
        add(where, QT_TRANSLATE_NOOP("LetterDraft", "where it hurts: %1"), spokenList(m_atlas, m_visit.complaintAt));
        if (m_visit.injured)
            where << tr(QT_TRANSLATE_NOOP("LetterDraft", "it began with an injury"));
        add(out, where);
        return out;
    }

    static std::string painInWords(const Complaint &c)
    {
        QStringList told;
        if (c.now)
            told << tr(QT_TRANSLATE_NOOP("LetterDraft", "now %1")).arg(c.now->value);
        if (c.worst && c.best)
            //: %1 and %2: numbers of the pain scale
            told << tr(QT_TRANSLATE_NOOP("LetterDraft", "in seven days from %1 to %2")).arg(c.best->value).arg(c.worst->value);
        else if (c.worst)
            told << tr(QT_TRANSLATE_NOOP("LetterDraft", "at its worst in seven days %1")).arg(c.worst->value);
        else if (c.best)
            told << tr(QT_TRANSLATE_NOOP("LetterDraft", "at its best in seven days %1")).arg(c.best->value);
        return told.join(QStringLiteral(", ")).toStdString();
    }

    static std::string irritabilityInWords(Irritability irritability)
    {
        switch (irritability) {
        case Irritability::Low: return said(QT_TRANSLATE_NOOP("LetterDraft", "low"));
        case Irritability::Medium: return said(QT_TRANSLATE_NOOP("LetterDraft", "medium"));
        case Irritability::High: break;
        }
        return said(QT_TRANSLATE_NOOP("LetterDraft", "high"));
    }

    [[nodiscard]] Strings cautions() const
    {
        Strings words;
        for (const Condition &condition : m_visit.conditions) {
            const ConditionKind *kind = m_sources.rules.findCondition(condition.id);
            const std::string name = kind ? kind->name : condition.id;
            //: %1: a condition; %2: where it is
            words.push_back(condition.at.empty() ? name
                                                 : tr(QT_TRANSLATE_NOOP("LetterDraft", "%1 (%2)"))
                                                       .arg(q(name), q(spokenList(m_atlas, condition.at)))
                                                       .toStdString());
        }
        words.insert(words.end(), m_visit.cautions.begin(), m_visit.cautions.end());
        Strings out;
        if (!words.empty())
            add(out, QStringList{q(inOneLine(words))});
        return out;
    }

    [[nodiscard]] Strings done() const
    {
        Strings out = capped(workInWords(m_visit.treatment, m_sources.techniques, m_atlas), mostSteps);
        for (const AdverseEvent &event : m_visit.treatment.events) {
            QStringList told;
            for (const std::string &sign : event.signs)
                told << q(sign).replace(QLatin1Char('-'), QLatin1Char(' '));
            add(told, "%1", event.told);
            add(told, QT_TRANSLATE_NOOP("LetterDraft", "done about it: %1"), event.answer);
            //: %1: a time of day; %2: what happened, and what was done about it
            out.push_back(tr(QT_TRANSLATE_NOOP("LetterDraft", "Reaction at %1: %2"))
                              .arg(q(event.time), told.join(QStringLiteral("; ")))
                              .toStdString());
        }
        return out;
    }

    [[nodiscard]] Strings planned() const
    {
        const Closing &closing = m_visit.closing;
        Strings out;
        if (closing.review)
            //: %1: what was decided; %2: why
            out.push_back(tr(QT_TRANSLATE_NOOP("LetterDraft", "Decided of care that changed nothing: %1; %2"))
                              .arg(decisionInWords(closing.review->decision), q(closing.review->why))
                              .toStdString());
        if (const auto &plan = closing.plan) {
            QStringList agreed;
            //: %1: a date; %2 and %3: numbers
            agreed << tr(
                QT_TRANSLATE_NOOP("LetterDraft", "agreed on %1: visits until it is asked whether it helps: %2, every %3 days"))
                          .arg(q(plan->agreed))
                          .arg(plan->visits)
                          .arg(plan->everyDays);
            add(agreed, QT_TRANSLATE_NOOP("LetterDraft", "success would be: %1"), plan->success);
            add(out, agreed);
        }
        for (const Goal &goal : closing.goals) {
            QStringList words;
            add(words,
                goal.reached ? QT_TRANSLATE_NOOP("LetterDraft", "goal, reached: %1")
                             : QT_TRANSLATE_NOOP("LetterDraft", "goal: %1"),
                goal.text);
            add(words, QT_TRANSLATE_NOOP("LetterDraft", "until %1"), goal.until);
            add(out, words);
        }
        QStringList next;
        add(next, QT_TRANSLATE_NOOP("LetterDraft", "next visit: %1"), inOneLine(closing.focus));
        Strings advice;
        for (const GivenAdvice &given : closing.advice)
            advice.push_back(given.title.empty() ? given.text : given.title);
        add(next, QT_TRANSLATE_NOOP("LetterDraft", "advice for home: %1"), inOneLine(advice));
        for (const QString &line : next)
            add(out, QStringList{line});
        return out;
    }

    static QString decisionInWords(CareDecision decision)
    {
        switch (decision) {
        case CareDecision::ChangePlan: return tr(QT_TRANSLATE_NOOP("LetterDraft", "the plan is changed"));
        case CareDecision::Refer: return tr(QT_TRANSLATE_NOOP("LetterDraft", "the patient is referred"));
        case CareDecision::Discharge: break;
        }
        return tr(QT_TRANSLATE_NOOP("LetterDraft", "care ends here"));
    }

    [[nodiscard]] Strings impression() const
    {
        const Impression &own = m_visit.closing.impression;
        QStringList words;
        add(words, "%1", own.text);
        if (!own.code.empty())
            words << (own.system.empty() ? q(own.code)
                                         //: %1: a code; %2: which list it is of
                                         : tr(QT_TRANSLATE_NOOP("LetterDraft", "%1 (%2)")).arg(q(own.code), q(own.system)));
        Strings out;
        add(out, words);
        return out;
    }

    const LetterSources &m_sources;
    const Atlas &m_atlas;
    const Visit &m_visit;
    std::vector<LetterSign> m_signs;
    Letter m_letter;
};

LetterText renewed(const LetterText &kept, const LetterText &draft)
{
    return kept.isEdited() ? LetterText{kept.text, draft.composed} : draft;
}

} // namespace

Letter letterDraft(const LetterSources &sources, const Visit &visit, const std::string &written)
{
    const Visit shown = withoutPrivateAnswers(sources.rules.signs(), visit);
    return Maker(sources, shown, written).make();
}

bool isOutdated(const Letter &kept, const Letter &draft)
{
    const auto composedOf = [](const Letter &letter) {
        std::vector<std::string> out{letter.title, letter.reason.composed, letter.question.composed};
        for (const LetterPart &part : letter.parts)
            if (!part.words.composed.empty()) {
                out.push_back(part.title);
                out.push_back(part.words.composed);
            }
        return out;
    };
    return composedOf(kept) != composedOf(draft);
}

Letter composedAnew(const Letter &kept, const Letter &draft)
{
    Letter out = kept;
    out.title = draft.title;
    out.reason = renewed(kept.reason, draft.reason);
    out.question = renewed(kept.question, draft.question);
    out.parts = draft.parts;
    for (const LetterPart &part : kept.parts) {
        const auto same =
            std::find_if(out.parts.begin(), out.parts.end(), [&](const LetterPart &other) { return other.title == part.title; });
        if (same != out.parts.end())
            same->words = renewed(part.words, same->words);
        else if (part.words.isEdited() && !part.words.text.empty() && out.parts.size() < Letter::mostParts)
            out.parts.push_back({part.title, {part.words.text, {}}});
    }
    return out;
}

LetterFacts letterFacts(const Visit &visit, std::string practice, std::string letterhead)
{
    const Patient patient = visit.patient.value_or(Patient{});
    return {std::move(practice), std::move(letterhead), visit.practitioner, patient.name, patient.born, visit.date};
}

} // namespace raphe
