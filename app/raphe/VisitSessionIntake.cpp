// Intake's part of the open visit: complaints, pain drawing, warning signs, what was told of the time since the last visit.
#include "app/raphe/VisitSession.h"

#include "app/words/ErrorText.h"
#include "core/plan/NextVisit.h"
#include "core/record/PaintedPlaces.h"
#include "core/safety/Cautions.h"
#include "core/safety/Consents.h"
#include "core/safety/Warnings.h"

#include <algorithm>

namespace raphe {

std::vector<const WarningSign *> VisitSession::warningsToAsk() const
{
    const WarningSigns &signs = m_learned.adviser.rules().signs();
    std::vector<WarningAnswer> answers = m_visit.warnings;
    answers.insert(answers.end(), m_earlierAnswers.begin(), m_earlierAnswers.end());
    return dueSigns(signs, askedOf(signs, *m_learned.knowledge.regions, m_visit), answers, m_visit.date);
}

bool VisitSession::isFinal(const WarningAnswer &answer) const
{
    const WarningSign *sign = m_learned.adviser.rules().signs().find(answer.sign);
    return answer.isThere && !answer.isMoved && sign && sign->level == WarningLevel::EmergencyNow;
}

// A visit that came from a file, or was begun before, says nothing of an emergency that another one of this day has, or denies
// it.
void VisitSession::takeEmergenciesOfTheDay()
{
    if (isReadOnly())
        return;
    for (const WarningAnswer &there : carriedOver(m_earlierAnswers, m_visit.date)) {
        const auto same = std::find_if(
            m_visit.warnings.begin(), m_visit.warnings.end(), [&](const WarningAnswer &a) { return a.sign == there.sign; });
        if (!isFinal(there) && !there.isMoved)
            continue;
        if (same == m_visit.warnings.end())
            m_visit.warnings.push_back(there);
        else if (!same->isThere && isFinal(there))
            *same = there;
    }
}

const WarningAnswer *VisitSession::answerTo(const WarningSign &sign) const
{
    const auto &answers = m_visit.warnings;
    const auto it = std::find_if(answers.begin(), answers.end(), [&](const WarningAnswer &a) { return a.sign == sign.id; });
    return it == answers.end() || it->isMoved || isStale(sign, *it, m_visit.date) ? nullptr : &*it;
}

Result<Done> VisitSession::answerWarning(const WarningAnswer &answer)
{
    if (!mayChange())
        return Error{ErrorCode::NotAllowed, "visit", "it cannot be changed"};
    const auto same = std::find_if(
        m_visit.warnings.begin(), m_visit.warnings.end(), [&](const WarningAnswer &a) { return a.sign == answer.sign; });
    if (same != m_visit.warnings.end() && isFinal(*same) && !answer.isThere)
        return Error{ErrorCode::NotAllowed, answer.sign, "an emergency is not taken back at this visit"};
    Visit changed = m_visit;
    if (same == m_visit.warnings.end())
        changed.warnings.push_back(answer);
    else
        changed.warnings[static_cast<std::size_t>(same - m_visit.warnings.begin())] = answer;
    if (const auto checked = checkWarnings(m_learned.adviser.rules(), changed, "visit"); !checked)
        return checked.error();
    m_visit = std::move(changed);
    this->changed();
    return Done{};
}

void VisitSession::takeBackSlip(const std::vector<WarningAnswer> &before)
{
    if (before == m_visit.warnings || !mayChange())
        return;
    m_visit.warnings = before;
    changed();
}

std::vector<const ConsentItem *> VisitSession::consentsDue() const
{
    auto due = raphe::consentsDue(m_learned.adviser.rules().consents(), *m_learned.knowledge.regions, m_visit, m_techniques);
    const auto wasAsked = [&](const ConsentItem &item) {
        return std::any_of(m_visit.consents.begin(), m_visit.consents.end(),
            [&](const ConsentAnswer &answer) { return answer.item == item.id; });
    };
    std::erase_if(due, [&](const ConsentItem *item) { return item->isForSome() && !wasAsked(*item); });
    return due;
}

Result<Done> VisitSession::answerConsent(const ConsentAnswer &answer)
{
    if (!mayChange())
        return Error{ErrorCode::NotAllowed, "visit", "it cannot be changed"};
    const auto same = std::find_if(
        m_visit.consents.begin(), m_visit.consents.end(), [&](const ConsentAnswer &a) { return a.item == answer.item; });
    const bool wasGiven = same != m_visit.consents.end() && same->state != ConsentState::Refused;
    if (answer.state == ConsentState::Withdrawn && !wasGiven)
        return Error{ErrorCode::NotAllowed, answer.item, "only what was given can be taken back"};
    if (const auto checked = checkConsent(m_learned.adviser.rules().consents(), m_visit, answer, "visit"); !checked)
        return checked.error();
    if (same == m_visit.consents.end())
        m_visit.consents.push_back(answer);
    else
        *same = answer;
    changed();
    Q_EMIT intakeChanged();
    return Done{};
}

std::vector<std::pair<Place, QString>> VisitSession::placesFor(const WarningSign &sign) const
{
    std::vector<std::pair<Place, QString>> out;
    for (const SignPlace &at : placesOf(sign, m_learned.adviser.rules(), *m_learned.knowledge.regions, m_visit)) {
        const std::string side(wordOf(sideWords, at.place.side));
        out.emplace_back(at.place,
            at.area.empty()
                ? QString::fromStdString(m_learned.knowledge.atlas->spoken(at.place))
                : tr("%1 %2", "side, part of the body").arg(QString::fromStdString(side), QString::fromStdString(at.area)));
    }
    return out;
}

std::vector<CautionVerdict> VisitSession::standingVerdicts() const
{
    const auto cautions = Cautions::of(m_learned.adviser.rules(), *m_learned.knowledge.regions, asSuspected(), "visit");
    if (cautions) {
        std::vector<CautionVerdict> out = cautions.value().general();
        for (const std::string &unclear : m_record.unclear)
            out.push_back({std::nullopt, {}, Verdict::Ask,
                tr("The record says '%1', which cannot be: no rule goes by it. Ask before treating.")
                    .arg(QString::fromStdString(unclear))
                    .toStdString(),
                {}, {}, {}});
        return out;
    }
    const QString reason = tr("The cautions cannot be worked out: %1").arg(errorText(cautions.error()));
    return {{std::nullopt, {}, Verdict::Stop, reason.toStdString(), {}, {}, {}}};
}

std::vector<std::string> VisitSession::confirmedConditions() const
{
    std::vector<std::string> confirmed;
    for (const Condition &condition : m_visit.conditions)
        confirmed.push_back(condition.id);
    for (const StandingCondition &condition : m_record.conditions)
        confirmed.push_back(condition.id);
    return confirmed;
}

std::vector<Reminder> VisitSession::reminders() const
{
    return remindersOf(m_learned.adviser.rules().feeds(), m_record, confirmedConditions(), m_visit.date);
}

std::vector<std::string> VisitSession::openOf(const Reminder &reminder) const
{
    return raphe::openOf(reminder, m_record, confirmedConditions());
}

Visit VisitSession::asSuspected() const
{
    Visit visit = m_visit;
    for (const Reminder &reminder : reminders())
        for (const std::string &id : openOf(reminder)) {
            const auto isIt = [&](const Condition &condition) { return condition.id == id; };
            if (m_learned.adviser.rules().findCondition(id)->place != PlaceNeed::Required
                && std::none_of(visit.conditions.begin(), visit.conditions.end(), isIt))
                visit.conditions.push_back({id, {}});
        }
    return visit;
}

Result<Done> VisitSession::takeOver(const std::string &condition, const std::string &because)
{
    const ConditionKind *kind = m_learned.adviser.rules().findCondition(condition);
    if (!kind || !mayChange())
        return Error{ErrorCode::NotAllowed, condition, "it cannot be taken over"};
    const auto confirmed = confirmedConditions();
    if (std::find(confirmed.begin(), confirmed.end(), condition) != confirmed.end())
        return Done{};
    PatientRecord record = m_record;
    record.conditions.push_back({condition, because});
    if (const auto saved = m_practice->savePatient(m_patientId, record); !saved)
        return saved.error();
    m_record = std::move(record);
    takeStanding(m_learned.adviser.rules(), m_record.conditions.back(), m_visit);
    changed();
    Q_EMIT visitOpened(); // the cautions of the visit are shown anew
    return Done{};
}

Result<Done> VisitSession::ruleOut(const std::string &condition, const std::string &because)
{
    if (!mayChange())
        return Error{ErrorCode::NotAllowed, condition, "it cannot be ruled out"};
    PatientRecord record = m_record;
    record.ruledOut.push_back({condition, because});
    if (const auto saved = m_practice->savePatient(m_patientId, record); !saved)
        return saved.error();
    m_record = std::move(record);
    Q_EMIT visitOpened();
    return Done{};
}

bool VisitSession::isLocked() const
{
    return lockAmong(standingVerdicts()) != nullptr;
}

std::optional<SideQuestion> VisitSession::sidesToAsk() const
{
    return m_visit.sidesIntended ? std::nullopt
                                 : sideQuestion(*m_learned.knowledge.linkage, *m_learned.knowledge.regions, m_visit);
}

void VisitSession::setSidesIntended()
{
    if (m_visit.sidesIntended || !mayChange())
        return;
    m_visit.sidesIntended = true;
    save();
}

void VisitSession::setInjured(bool injured)
{
    if (injured == m_visit.injured || !mayChange())
        return;
    m_visit.injured = injured;
    changed();
}

void VisitSession::setEpisode(std::optional<int> complaintId)
{
    Complaint first = m_visit.complaints.empty() ? Complaint{} : m_visit.complaints.front();
    first.episode = complaintId;
    setFirst(first);
}

void VisitSession::setComplaint(const std::string &text)
{
    Complaint first = m_visit.complaints.empty() ? Complaint{} : m_visit.complaints.front();
    first.text = text;
    setFirst(first);
}

void VisitSession::setFirst(const Complaint &first)
{
    std::vector<Complaint> complaints = m_visit.complaints;
    if (complaints.empty())
        complaints.emplace_back();
    complaints.front() = first;
    setComplaints(complaints);
}

void VisitSession::setComplaints(const std::vector<Complaint> &complaints)
{
    std::vector<Complaint> told = complaints;
    while (!told.empty() && told.back() == Complaint{}) // one between others may be about to be told anew
        told.pop_back();
    if (told == m_visit.complaints || !mayChange())
        return;
    m_visit.complaints = std::move(told);
    save();
    Q_EMIT intakeChanged();
}

void VisitSession::confirmComplaints()
{
    setComplaints(confirmedOn(m_visit.date, m_visit.complaints));
}

void VisitSession::setSinceLast(const SinceLast &told)
{
    const std::optional<SinceLast> now = told == SinceLast{} ? std::nullopt : std::optional(told);
    if (now == m_visit.sinceLast || !mayChange())
        return;
    m_visit.sinceLast = now;
    save();
    Q_EMIT intakeChanged();
}

void VisitSession::setPromised(const std::vector<std::string> &lines)
{
    if (lines == m_visit.promised || !mayChange())
        return;
    m_visit.promised = lines;
    save();
    Q_EMIT intakeChanged();
}

void VisitSession::setPain(const std::vector<PainPatch> &pain)
{
    Recorded after = recorded();
    after.pain = pain;
    apply(std::move(after), tr("pain drawing", "undo step"));
}

void VisitSession::confirmPain()
{
    Recorded after = recorded();
    for (PainPatch &patch : after.pain) {
        patch.confirmed = true;
        for (const PaintedPlace &painted :
            paintedPlaces(patch, m_learned.knowledge.body->of(patch.view), *m_learned.knowledge.atlas))
            if (std::find(after.complaintAt.begin(), after.complaintAt.end(), painted.place) == after.complaintAt.end())
                after.complaintAt.push_back(painted.place);
    }
    apply(std::move(after), tr("pain drawing confirmed", "undo step"));
}

void VisitSession::movePainToOtherSide()
{
    Recorded after = recorded();
    for (PainPatch &patch : after.pain)
        patch = mirrored(patch);
    apply(std::move(after), tr("pain drawing on the other side", "undo step"));
}

void VisitSession::moveComplaintToOtherSide()
{
    Recorded after = recorded();
    for (Place &place : after.complaintAt)
        place = mirrored(place);
    apply(std::move(after), tr("where it hurts, on the other side", "undo step"));
}

void VisitSession::takeLastPlaces()
{
    if (!m_last)
        return;
    Recorded after = recorded();
    for (const Place &place : m_last->complaintAt)
        if (std::find(after.complaintAt.begin(), after.complaintAt.end(), place) == after.complaintAt.end())
            after.complaintAt.push_back(place);
    apply(std::move(after), tr("where it hurts, as at the last visit", "undo step"));
}

} // namespace raphe
