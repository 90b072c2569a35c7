#include "core/document/Completeness.h"

#include "core/base/Utf8.h"
#include "core/document/NoteSource.h"
#include "core/examination/RecordWords.h"
#include "core/safety/Cautions.h"
#include "core/safety/Consents.h"
#include "core/safety/Warnings.h"
#include "core/treatment/CareProgress.h"
#include "core/treatment/Retest.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <set>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Completeness", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

class MissingFinder {
public:
    MissingFinder(const NoteKnowledge &known, const Visit &visit, const std::vector<EarlierVisit> &earlier)
        : m_known(known), m_atlas(known.regions.atlas()), m_visit(visit), m_earlier(earlier)
    {
    }

    std::vector<MissingItem> find()
    {
        heads();
        complaint();
        warnings();
        const bool isLocked = std::any_of(m_visit.warnings.begin(), m_visit.warnings.end(), [&](const WarningAnswer &answer) {
            const WarningSign *sign = m_known.rules.signs().find(answer.sign);
            return answer.isThere && (!answer.decided || !sign || sign->level == WarningLevel::EmergencyNow);
        });
        sides();
        treatment();
        if (isLocked)
            return std::move(m_out);
        consents();
        if (m_visit.findings.empty() && m_visit.measures.empty() && m_visit.tests.empty())
            say(Kind::Findings, VisitStation::Examination,
                tr(QT_TRANSLATE_NOOP("Completeness", "Nothing is written down of an examination.")));
        retest();
        close();
        return std::move(m_out);
    }

private:
    using Kind = MissingItem::Kind;

    void say(Kind kind, VisitStation where, const QString &text) { m_out.push_back({kind, where, text.toStdString()}); }

    void heads()
    {
        if (!m_visit.patient || !saysSomething(m_visit.patient->name) || m_visit.patient->born.empty())
            say(Kind::Patient, VisitStation::Patient,
                tr(QT_TRANSLATE_NOOP("Completeness", "The patient's name or birth date is missing.")));
        if (m_visit.date.empty())
            say(Kind::Date, VisitStation::Patient, tr(QT_TRANSLATE_NOOP("Completeness", "The date of the visit is missing.")));
        if (!saysSomething(m_visit.practitioner))
            say(Kind::Practitioner, VisitStation::Patient,
                tr(QT_TRANSLATE_NOOP("Completeness", "The practitioner's name is missing.")));
    }

    void complaint()
    {
        if (!saysSomething(m_visit.complaint()))
            say(Kind::Complaint, VisitStation::Intake,
                tr(QT_TRANSLATE_NOOP("Completeness", "What brings the patient is missing.")));
        if (m_visit.complaintAt.empty())
            say(Kind::WhereItHurts, VisitStation::Intake, tr(QT_TRANSLATE_NOOP("Completeness", "Where it hurts is missing.")));
        for (const Complaint &complaint : m_visit.complaints) {
            if (&complaint == &m_visit.complaints.front() && !complaint.now)
                say(Kind::Pain, VisitStation::Intake,
                    tr(QT_TRANSLATE_NOOP("Completeness", "How much it hurts now is missing, 0 to 10.")));
            if (saysSomething(complaint.text) && complaint.asked != m_visit.date)
                //: %1: what the patient complains of
                say(Kind::NotConfirmed, VisitStation::Intake,
                    tr(QT_TRANSLATE_NOOP("Completeness", "Not asked or confirmed at this visit: '%1'.")).arg(q(complaint.text)));
        }
    }

    void warnings()
    {
        const WarningSigns &signs = m_known.rules.signs();
        const auto due = dueSigns(signs, askedOf(signs, m_known.regions, m_visit), m_visit.warnings, m_visit.date);
        if (!due.empty()) {
            constexpr std::size_t mostNamed = 5; // our choice; the gravest come first
            QStringList names;
            for (const WarningSign *sign : due)
                if (names.size() < static_cast<qsizetype>(mostNamed))
                    names << q(sign->name);
            if (due.size() > mostNamed)
                names << tr(QT_TRANSLATE_NOOP("Completeness", "and %1 more")).arg(due.size() - mostNamed);
            //: %1: names of warning signs
            say(Kind::WarningSign, VisitStation::WarningSigns,
                tr(QT_TRANSLATE_NOOP("Completeness", "Warning signs not asked for: %1.")).arg(names.join(QStringLiteral("; "))));
        }
        for (const WarningAnswer &answer : m_visit.warnings) {
            if (!answer.isThere || (answer.decided && !answer.isMoved))
                continue;
            const WarningSign *sign = signs.find(answer.sign);
            //: %1: a warning sign
            say(Kind::Decision, VisitStation::WarningSigns,
                tr(QT_TRANSLATE_NOOP("Completeness", "Nothing is decided about: %1.")).arg(q(sign ? sign->name : answer.sign)));
        }
    }

    // Of the examination, of where it hurts, and of what was worked.
    void consents()
    {
        std::set<std::string> actions;
        for (const TreatmentStep &step : m_visit.treatment.steps)
            if (const Technique *technique = m_known.techniques.find(step.technique);
                technique && step.hasBegun() && step.done != StepDone::Skipped)
                actions.insert(technique->action);
        for (const ConsentItem *item : consentsDue(m_known.rules.consents(), m_known.regions, m_visit, actions)) {
            if (item->covers.pictures)
                continue; // nothing of the record needs them
            //: %1: what is asked consent for
            say(Kind::Consent, VisitStation::Consent,
                tr(QT_TRANSLATE_NOOP("Completeness", "No answer holds to the consent '%1'.")).arg(q(item->title)));
        }
    }

    void side(const std::string &name)
    {
        //: %1: a structure, movement or test
        say(Kind::Side, VisitStation::Examination,
            tr(QT_TRANSLATE_NOOP("Completeness", "Which side is missing: %1.")).arg(q(name)));
    }

    void sides()
    {
        const auto needsSide = [&](const Place &place) {
            const Structure *structure = m_atlas.find(place.structure);
            return place.side == Side::Midline && structure && structure->paired;
        };
        for (const auto *findings : {&m_visit.findings, &m_visit.retested.findings})
            for (const Finding &finding : *findings)
                if (needsSide(finding.place))
                    side(m_atlas.at(finding.place.structure).names.english);
        for (const auto *measures : {&m_visit.measures, &m_visit.retested.measures})
            for (const Measure &measure : *measures)
                if (const Movement *movement = m_known.examination.findMovement(measure.movement);
                    movement && movement->isPaired && measure.side == Side::Midline)
                    side(movement->name);
        for (const auto *tests : {&m_visit.tests, &m_visit.retested.tests})
            for (const TestResult &result : *tests)
                if (const ExamTest *test = m_known.examination.findTest(result.test);
                    test && test->isPaired && result.side == Side::Midline)
                    side(test->name);
        for (const TreatmentStep &step : m_visit.treatment.steps)
            if (needsSide(step.place))
                side(m_atlas.at(step.place.structure).names.english);
    }

    void treatment()
    {
        for (const TreatmentStep &step : m_visit.treatment.steps)
            if (!step.done)
                //: %1: a place that was worked
                say(Kind::StepDone, VisitStation::Treatment,
                    tr(QT_TRANSLATE_NOOP("Completeness", "How much was done is missing: %1."))
                        .arg(q(m_atlas.spoken(step.place))));
        for (const AdverseEvent &event : m_visit.treatment.events)
            if (!saysSomething(event.answer))
                //: %1: a time of the day
                say(Kind::AdverseAnswer, VisitStation::Treatment,
                    tr(QT_TRANSLATE_NOOP("Completeness", "What was done about the adverse event of %1 is missing."))
                        .arg(q(event.time)));
    }

    [[nodiscard]] bool isTreated() const
    {
        return std::any_of(m_visit.treatment.steps.begin(), m_visit.treatment.steps.end(),
            [](const TreatmentStep &step) { return step.hasBegun() && step.done != StepDone::Skipped; });
    }

    void retest()
    {
        if (!isTreated())
            return;
        QStringList names;
        for (const RetestItem &item : notRetested(m_visit, m_known.examination, m_atlas))
            names << q(item.name);
        if (!names.isEmpty())
            //: %1: places, movements and tests
            say(Kind::Retest, VisitStation::Retest,
                tr(QT_TRANSLATE_NOOP("Completeness", "Not examined again after the treatment: %1."))
                    .arg(names.join(QStringLiteral("; "))));
    }

    void close()
    {
        const Closing &closing = m_visit.closing;
        if (!saysSomething(closing.impression.text))
            say(Kind::Impression, VisitStation::Close,
                tr(QT_TRANSLATE_NOOP("Completeness", "The practitioner's impression is missing.")));
        if (!closing.plan && !closing.review)
            say(Kind::Plan, VisitStation::Close,
                tr(QT_TRANSLATE_NOOP(
                    "Completeness", "Nothing is agreed on how it goes on: a plan of care, or why there is none.")));
        if (isTreated() && !closing.isTold)
            say(Kind::Told, VisitStation::Close,
                tr(QT_TRANSLATE_NOOP(
                    "Completeness", "It is not written down that the patient was told what to expect, and when to call whom.")));
        if (careProgress(m_visit, m_earlier, m_known.examination).isToReview)
            say(Kind::Review, VisitStation::Close,
                tr(QT_TRANSLATE_NOOP("Completeness",
                    "The agreed visits are over and nothing is better beyond its error: what is made of it is missing.")));
    }

    const NoteKnowledge &m_known;
    const Atlas &m_atlas;
    const Visit &m_visit;
    const std::vector<EarlierVisit> &m_earlier;
    std::vector<MissingItem> m_out;
};

} // namespace

std::vector<MissingItem> completenessOf(const NoteKnowledge &known, const Visit &visit, const std::vector<EarlierVisit> &earlier)
{
    return MissingFinder(known, visit, earlier).find();
}

std::string stationInWords(VisitStation station)
{
    const auto words = [station] {
        switch (station) {
        case VisitStation::Patient: return QT_TRANSLATE_NOOP("Completeness", "head of the visit");
        case VisitStation::Intake: return QT_TRANSLATE_NOOP("Completeness", "intake");
        case VisitStation::WarningSigns: return QT_TRANSLATE_NOOP("Completeness", "warning signs");
        case VisitStation::Consent: return QT_TRANSLATE_NOOP("Completeness", "consent");
        case VisitStation::Examination: return QT_TRANSLATE_NOOP("Completeness", "examination");
        case VisitStation::Treatment: return QT_TRANSLATE_NOOP("Completeness", "treatment");
        case VisitStation::Retest: return QT_TRANSLATE_NOOP("Completeness", "retest");
        case VisitStation::Close: break;
        }
        return QT_TRANSLATE_NOOP("Completeness", "close of the visit");
    };
    return tr(words()).toStdString();
}

} // namespace raphe
