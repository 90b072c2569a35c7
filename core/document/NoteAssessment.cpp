// What the practitioner makes of it, in their own words; then what the program can say, marked as its own: the order of possible
// sources with reasons, and what changed against published errors.
#include "core/document/NoteSource.h"

#include "core/examination/RecordWords.h"
#include "core/reasoning/ReasonWords.h"
#include "core/treatment/CareProgress.h"
#include "core/treatment/Retest.h"

#include <QCoreApplication>
#include <QStringList>

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

class AssessmentWriter {
public:
    explicit AssessmentWriter(const NoteSource &source)
        : m_source(source), m_visit(source.visit), m_part(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Assessment")).toStdString())
    {
    }

    NotePart write()
    {
        impression();
        judgements();
        changes();
        progress();
        sources();
        return m_part.take();
    }

private:
    void section(const char *title, bool isDerived = false) { m_part.section(tr(title).toStdString(), isDerived); }
    void line(const QString &label, const QString &text, std::string asOf = {})
    {
        m_part.line(label.toStdString(), text.toStdString(), std::move(asOf));
    }

    void impression()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "The practitioner's impression, in their own words"));
        const Impression &impression = m_visit.closing.impression;
        const bool isOfBefore = m_source.previous && m_source.previous->closing.impression == impression;
        line({}, q(impression.text), m_source.sameWords(isOfBefore));
        const QString code = impression.system.empty()
            ? q(impression.code)
            //: %1: a code; %2: the list that it is of
            : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (%2)")).arg(q(impression.code), q(impression.system));
        if (!impression.code.empty() || !impression.system.empty())
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Code, chosen by the practitioner")), code, m_source.sameWords(isOfBefore));
    }

    static QString listWords(AdviceList list)
    {
        switch (list) {
        case AdviceList::Explain: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "as a possible source"));
        case AdviceList::Check: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "as a place to check"));
        case AdviceList::Treat: break;
        }
        return tr(QT_TRANSLATE_NOOP("ClinicalNote", "as a place to treat"));
    }

    void judgements()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "What the practitioner made of the program's lists"));
        for (const Judgement &judgement : m_visit.judgements) {
            //: %1: a place; %2: 'as a possible source'
            QString text = tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1, %2"))
                               .arg(q(m_source.named(judgement.place)), listWords(judgement.list));
            if (!judgement.isPinned())
                text = tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: %2")).arg(text, q(judgement.dismissed));
            line(judgement.isPinned() ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "Pinned"))
                                      : tr(QT_TRANSLATE_NOOP("ClinicalNote", "Dismissed")),
                text);
        }
    }

    void changes()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "What changed with the treatment, against the published error of each reading"),
            true);
        const Examination &examination = m_source.known.examination;
        for (const RetestPair &pair : retestPairs(m_visit, examination, m_source.atlas())) {
            const QString name = pair.quality.empty()
                ? q(pair.item.name)
                : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1, %2")).arg(q(pair.item.name), q(pair.quality));
            // Of things without numbers the verdict has both words already.
            const bool isSaid = !pair.change && pair.verdict.find(pair.before) != std::string::npos
                && pair.verdict.find(pair.now) != std::string::npos;
            line(name,
                isSaid ? q(pair.verdict)
                       //: %1 and %2: a reading before and after; %3: what that means
                       : tr(QT_TRANSLATE_NOOP("ClinicalNote", "before %1, after %2; %3"))
                             .arg(q(pair.before), q(pair.now), q(pair.verdict)));
        }
        if (m_visit.treatment.steps.empty() && m_visit.retested == Retested{})
            return;
        QStringList names;
        for (const RetestItem &item : notRetested(m_visit, examination, m_source.atlas()))
            names << q(item.name);
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Not examined again")), names.join(QStringLiteral("; ")));
    }

    void progress()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Progress since the plan of care was agreed on"), true);
        const CareProgress care = careProgress(m_visit, m_source.given.earlier, m_source.known.examination);
        if (care.visits == 0)
            return;
        const CarePlan &plan = *m_visit.closing.plan;
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Visits")),
            //: %1: which visit it is; %2: of how many; %3: a date
            tr(QT_TRANSLATE_NOOP("ClinicalNote", "number %1 of %2 since the agreement of %3"))
                .arg(QString::number(care.visits), QString::number(plan.visits), q(plan.agreed)));
        for (const CareReading &reading : care.readings)
            line(q(reading.name),
                tr(QT_TRANSLATE_NOOP("ClinicalNote", "then %1, now %2; %3"))
                    .arg(q(reading.before), q(reading.now), q(reading.verdict)));
        if (!care.readings.empty())
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "In all")),
                care.isBetter && care.isWorse
                    ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "some better and some worse, beyond their error"))
                    : care.isBetter ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "at least one better beyond its error, none worse"))
                    : care.isWorse  ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "at least one worse beyond its error, none better"))
                                    : tr(QT_TRANSLATE_NOOP("ClinicalNote", "none better or worse beyond its error")));
        if (care.isToReview)
            line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "To be decided")),
                tr(QT_TRANSLATE_NOOP("ClinicalNote",
                    "the agreed visits are over, nothing is better beyond its error, and nothing is decided yet")));
    }

    void sources()
    {
        section(
            QT_TRANSLATE_NOOP("ClinicalNote",
                "Possible sources in the program's order, reckoned from these findings when the note was made: not a diagnosis"),
            true);
        const auto &list = m_source.given.explain;
        if (m_visit.findings.empty()) // nothing to explain
            return;
        const auto lead = [&](double score) { return m_source.given.unexplained > score; };
        bool isUnexplainedSaid = false;
        for (std::size_t i = 0; i < std::min(list.size(), sourcesInNote); ++i) {
            const Suggestion &source = list[i];
            if (!isUnexplainedSaid && lead(source.score))
                isUnexplainedSaid = sayUnexplained();
            const auto of =
                std::count_if(list.begin(), list.end(), [&](const Suggestion &other) { return other.rank == source.rank; });
            QString text = q(m_source.named(source.place));
            if (!source.why.empty())
                text = tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1. %2")).arg(text, q(source.why));
            if (!source.path.empty())
                //: %1: a place and a reason; %2: how it is tied to the findings, with how well that is known, a sentence
                text = tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 Tied by: %2"))
                           .arg(text, q(linkedInWords(m_source.atlas(), source.path)));
            line((of > 1 ? tr(QT_TRANSLATE_NOOP("ClinicalNote", "Program's order: %1, equal"))
                         : tr(QT_TRANSLATE_NOOP("ClinicalNote", "Program's order: %1")))
                     .arg(source.rank),
                text);
        }
    }

    bool sayUnexplained()
    {
        line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Program's order")),
            tr(QT_TRANSLATE_NOOP("ClinicalNote", "likelier than what follows: nothing that was found explains it")));
        return true;
    }

    const NoteSource &m_source;
    const Visit &m_visit;
    NotePartWriter m_part;
};

} // namespace

NotePart assessmentPart(const NoteSource &source)
{
    return AssessmentWriter(source).write();
}

} // namespace raphe
