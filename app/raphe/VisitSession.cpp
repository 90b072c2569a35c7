#include "app/raphe/VisitSession.h"

#include "app/words/ErrorText.h"
#include "core/anatomy/MarkPoint.h"
#include "core/record/VisitJson.h"

#include <QDate>
#include <QMetaObject>
#include <QUndoCommand>

#include <algorithm>

namespace raphe {

// One step of undo: all that was recorded before and after. Lists are short, and a whole list cannot be half undone.
class VisitSession::Change : public QUndoCommand {
public:
    Change(VisitSession &session, Recorded after, const QString &what)
        : QUndoCommand(what), m_session(session), m_before(session.recorded()), m_after(std::move(after))
    {
    }
    void undo() override { restore(m_before); }
    void redo() override { restore(m_after); }

private:
    void restore(const Recorded &state)
    {
        Visit &visit = m_session.m_visit;
        visit.findings = state.findings;
        visit.complaintAt = state.complaintAt;
        visit.judgements = state.judgements;
        m_session.changed();
    }

    VisitSession &m_session;
    Recorded m_before;
    Recorded m_after;
};

VisitSession::VisitSession(
    const Knowledge &knowledge, const Adviser &adviser, std::unique_ptr<PracticeStore> store, const StoreOpener &openForSaving)
    : m_knowledge(&knowledge), m_adviser(&adviser), m_store(std::move(store))
{
    m_saver = std::make_unique<VisitSaver>(openForSaving, [this](const Result<Done> &result) {
        const QString message = result ? QString() : errorText(result.error());
        QMetaObject::invokeMethod(this, [this, message] {
            if (message.isEmpty())
                Q_EMIT saved();
            else
                Q_EMIT saveFailed(message);
        });
    });
}

VisitSession::~VisitSession()
{
    m_saver.reset(); // saves what is pending while this object still stands
}

Result<Done> VisitSession::open(std::int64_t visitId)
{
    m_saver->flush();
    const auto row = m_store->visit(visitId);
    if (!row)
        return row.error();
    auto visit = readVisit(row.value().document, "visit " + std::to_string(visitId), *m_knowledge->atlas);
    if (!visit)
        return visit.error();
    auto past = readPast(row.value());
    if (!past)
        return past.error();
    m_undo.clear();
    m_visitId = visitId;
    m_visit = std::move(visit).value();
    m_past = std::move(past).value();
    m_aim.reset();
    Q_EMIT visitOpened();
    Q_EMIT findingsChanged();
    Q_EMIT aimChanged();
    return Done{};
}

Result<std::vector<PastFinding>> VisitSession::readPast(const VisitRow &current)
{
    const auto rows = m_store->visits(current.patient);
    if (!rows)
        return rows.error();
    std::vector<PastFinding> past;
    for (const VisitRow &row : rows.value()) {
        if (row.id == current.id)
            continue;
        const auto visit = readVisit(row.document, "visit " + std::to_string(row.id), *m_knowledge->atlas);
        if (!visit)
            return visit.error();
        for (const Finding &finding : visit.value().findings)
            past.push_back({visit.value().date, finding});
    }
    return past;
}

Result<std::int64_t> VisitSession::startVisit(std::int64_t patientId)
{
    const auto patients = m_store->patients();
    if (!patients)
        return patients.error();
    const auto patient =
        std::find_if(patients.value().begin(), patients.value().end(), [&](const PatientRow &p) { return p.id == patientId; });
    if (patient == patients.value().end())
        return Error{ErrorCode::UnknownId, "patient", std::to_string(patientId)};
    Visit visit;
    visit.patient = Patient{patient->name, patient->born};
    visit.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    const auto earlier = m_store->visits(patientId);
    if (!earlier)
        return earlier.error();
    if (!earlier.value().empty()) { // cautions stay with the patient until someone takes them away
        const auto last = readVisit(earlier.value().front().document, "last visit", *m_knowledge->atlas);
        if (!last)
            return last.error();
        visit.cautions = last.value().cautions;
        visit.practitioner = last.value().practitioner;
    }
    return m_store->addVisit(patientId, visit.date, writeVisit(visit));
}

void VisitSession::saveNow()
{
    m_saver->flush();
}

void VisitSession::setComplaint(const std::string &text)
{
    if (m_visitId == 0 || text == m_visit.complaint)
        return;
    m_visit.complaint = text;
    save();
}

void VisitSession::setCautions(const std::vector<std::string> &lines)
{
    if (m_visitId == 0 || lines == m_visit.cautions)
        return;
    m_visit.cautions = lines;
    save();
}

void VisitSession::aimAt(Aim aim)
{
    if (aim.stack.empty()) { // reached by name or list: what lies at the place where its mark stands
        const Knowledge &k = *m_knowledge;
        if (const auto at = markPoint(*k.atlas, *k.body, aim.place, aim.spot))
            aim.stack = k.body->of(at->view).under(*k.atlas, at->point, aim.place.side == Side::Left ? Side::Left : Side::Right);
        const auto isAimed = [&](const UnderHit &hit) { return hit.place == aim.place; };
        if (std::none_of(aim.stack.begin(), aim.stack.end(), isAimed))
            aim.stack = {{aim.place, k.atlas->at(aim.place.structure).layer}};
    }
    if (!aim.spot) // an earlier finding at this place is what is meant
        for (const Finding &f : m_visit.findings)
            if (f.place == aim.place)
                aim.spot = f.spot;
    m_aim = std::move(aim);
    Q_EMIT aimChanged();
}

void VisitSession::chooseFromStack(const Place &place)
{
    if (m_aim)
        aimAt({place, {}, m_aim->stack});
}

void VisitSession::selectFinding(int index)
{
    if (index < 0 || index >= static_cast<int>(m_visit.findings.size()) || index == currentFinding())
        return;
    const Finding &f = m_visit.findings[static_cast<std::size_t>(index)];
    aimAt({f.place, f.spot, {}});
}

int VisitSession::currentFinding() const
{
    if (!m_aim)
        return -1;
    for (std::size_t i = 0; i < m_visit.findings.size(); ++i)
        if (m_visit.findings[i].place == m_aim->place && m_visit.findings[i].spot == m_aim->spot)
            return static_cast<int>(i);
    return -1;
}

Finding VisitSession::startingPoint() const
{
    const int index = currentFinding();
    if (index >= 0)
        return m_visit.findings[static_cast<std::size_t>(index)];
    Finding fresh;
    fresh.place = m_aim->place;
    fresh.spot = m_aim->spot;
    return fresh;
}

namespace {

// What was clear or could not be examined gives way to what is found; nothing is certain that is no longer said.
Finding withSomethingFound(Finding finding)
{
    finding.clear = {};
    finding.unable.reset();
    finding.certain = finding.certain && (finding.restriction || finding.play);
    return finding;
}

} // namespace

void VisitSession::setTenderness(int grade)
{
    if (!m_aim || grade < 0 || grade > Tenderness::highest)
        return;
    Finding f = startingPoint();
    f.tenderness = Tenderness{grade};
    put(withSomethingFound(std::move(f)), tr("tenderness %1", "undo step").arg(grade));
}

void VisitSession::setRestriction(int grade)
{
    if (!m_aim || grade < 0 || grade > Restriction::highest)
        return;
    Finding f = startingPoint();
    f.restriction = Restriction{grade};
    put(withSomethingFound(std::move(f)), tr("restriction %1", "undo step").arg(grade));
}

void VisitSession::toggleFamiliar()
{
    if (!m_aim)
        return;
    Finding f = withSomethingFound(startingPoint());
    f.familiar = !f.familiar;
    if (!f.familiar && !f.tenderness && !f.restriction && !f.play && f.note.empty())
        removeFinding(); // nothing would be left to say
    else
        put(std::move(f), tr("familiar pain", "undo step"));
}

void VisitSession::setClear()
{
    if (!m_aim)
        return;
    const Finding before = startingPoint();
    Finding f;
    f.place = before.place;
    f.spot = before.spot;
    f.at = before.at;
    f.note = before.note;
    f.clear = {true, true};
    put(std::move(f), tr("clear", "undo step"));
}

void VisitSession::setUnable(const std::string &reason)
{
    if (!m_aim || reason.empty())
        return;
    const Finding before = startingPoint();
    Finding f;
    f.place = before.place;
    f.spot = before.spot;
    f.at = before.at;
    f.unable = reason;
    put(std::move(f), tr("could not examine", "undo step"));
}

void VisitSession::setSpot(std::optional<Spot> spot)
{
    if (!m_aim || spot == m_aim->spot || (spot && !hasSpots(m_knowledge->atlas->at(m_aim->place.structure).kind)))
        return;
    const auto standsAt = [&](const Finding &f) { return f.place == m_aim->place && f.spot == spot; };
    const bool taken = std::any_of(m_visit.findings.begin(), m_visit.findings.end(), standsAt);
    const int index = currentFinding();
    // An unplaced finding gets its spot; a placed one stays where it is.
    const bool moves = index >= 0 && !m_aim->spot && !m_visit.findings[static_cast<std::size_t>(index)].at && !taken;
    Aim aim = *m_aim;
    aim.spot = spot;
    if (moves) {
        auto findings = m_visit.findings;
        findings[static_cast<std::size_t>(index)].spot = spot;
        m_aim = aim;
        apply(std::move(findings), tr("spot", "undo step"));
    } else {
        m_aim = std::move(aim);
    }
    Q_EMIT aimChanged();
}

void VisitSession::removeFinding()
{
    const int index = currentFinding();
    if (index < 0)
        return;
    auto findings = m_visit.findings;
    findings.erase(findings.begin() + index);
    apply(std::move(findings), tr("remove", "undo step"));
}

void VisitSession::put(Finding finding, const QString &what)
{
    auto findings = m_visit.findings;
    const int index = currentFinding();
    if (index >= 0)
        findings[static_cast<std::size_t>(index)] = std::move(finding);
    else
        findings.push_back(std::move(finding));
    apply(std::move(findings), what);
}

void VisitSession::apply(std::vector<Finding> findings, const QString &what)
{
    const QString name = m_aim
        ? tr("%1, %2", "undo step: place, what").arg(QString::fromStdString(m_knowledge->atlas->spoken(m_aim->place)), what)
        : what;
    Recorded after = recorded();
    after.findings = std::move(findings);
    apply(std::move(after), name);
}

void VisitSession::apply(Recorded after, const QString &name)
{
    if (m_visitId != 0 && after != recorded())
        m_undo.push(new Change(*this, std::move(after), name)); // the stack owns it and calls redo()
}

bool VisitSession::hurtsAtAim() const
{
    const auto &at = m_visit.complaintAt;
    return m_aim && std::find(at.begin(), at.end(), m_aim->place) != at.end();
}

void VisitSession::toggleComplaint()
{
    if (!m_aim)
        return;
    Recorded after = recorded();
    if (hurtsAtAim())
        std::erase(after.complaintAt, m_aim->place);
    else
        after.complaintAt.push_back(m_aim->place);
    apply(std::move(after),
        tr("%1, where it hurts", "undo step").arg(QString::fromStdString(m_knowledge->atlas->spoken(m_aim->place))));
}

const Judgement *VisitSession::judgementOf(AdviceList list, const Place &place) const
{
    const auto it = std::find_if(m_visit.judgements.begin(), m_visit.judgements.end(),
        [&](const Judgement &j) { return j.list == list && j.place == place; });
    return it == m_visit.judgements.end() ? nullptr : &*it;
}

void VisitSession::judge(const Judgement &judgement)
{
    Recorded after = recorded();
    std::erase_if(after.judgements, [&](const Judgement &j) { return j.list == judgement.list && j.place == judgement.place; });
    after.judgements.push_back(judgement);
    apply(std::move(after),
        (judgement.isPinned() ? tr("pin %1", "undo step") : tr("dismiss %1", "undo step"))
            .arg(QString::fromStdString(m_knowledge->atlas->spoken(judgement.place))));
}

void VisitSession::withdrawJudgement(AdviceList list, const Place &place)
{
    Recorded after = recorded();
    std::erase_if(after.judgements, [&](const Judgement &j) { return j.list == list && j.place == place; });
    apply(std::move(after), tr("no judgement of %1", "undo step").arg(QString::fromStdString(m_knowledge->atlas->spoken(place))));
}

void VisitSession::save()
{
    Q_EMIT saving();
    m_saver->save(m_visitId, writeVisit(m_visit));
}

void VisitSession::changed()
{
    save();
    Q_EMIT findingsChanged();
}

} // namespace raphe
