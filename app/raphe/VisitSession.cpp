#include "app/raphe/VisitSession.h"

#include "app/words/ErrorText.h"
#include "core/anatomy/MarkPoint.h"
#include "core/plan/NextVisit.h"
#include "core/record/VisitJson.h"
#include "core/safety/TechniqueGroups.h"

#include <QDate>
#include <QMetaObject>
#include <QUndoCommand>

#include <algorithm>
#include <utility>

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
        visit.measures = state.measures;
        visit.tests = state.tests;
        visit.retest = state.retest;
        visit.timeline = state.timeline;
        visit.complaintAt = state.complaintAt;
        visit.pain = state.pain;
        visit.judgements = state.judgements;
        m_session.changed();
    }

    VisitSession &m_session;
    Recorded m_before;
    Recorded m_after;
};

VisitSession::VisitSession(const Learned &learned, std::unique_ptr<Practice> practice)
    : m_learned(learned), m_practice(std::move(practice)), m_handTechniques(learned.techniques), m_homeAdvice(learned.homeAdvice)
{
    const auto open = [file = m_practice->file(), keys = m_practice->keys()] { return Practice::open(file, keys); };
    m_saver = std::make_unique<VisitSaver>(open, [this](const Result<Done> &result) {
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
    Q_EMIT leaving();
    if (const auto before = saveNow(); !before)
        return before.error();
    const auto stored = m_practice->visit(visitId);
    if (!stored)
        return stored.error();
    auto visit = readVisit(stored.value().document, "visit " + std::to_string(visitId), *m_learned.knowledge.atlas);
    if (!visit)
        return visit.error();
    auto record = m_practice->patient(stored.value().patient);
    if (!record)
        return record.error();
    auto past = readPast(stored.value(), visit.value().date);
    if (!past)
        return past.error();
    if (stored.value().patient != m_patientId) {
        if (const auto noted = m_practice->noteOpened(stored.value().patient); !noted)
            return noted.error();
    }
    m_undo.clear();
    m_visitId = visitId;
    m_patientId = stored.value().patient;
    m_record = std::move(record).value();
    m_state = stored.value().state;
    m_visit = std::move(visit).value();
    m_past = std::move(past.value().findings);
    m_earlierAnswers = std::move(past.value().answers);
    m_pastTreatments = std::move(past.value().treatments);
    m_last = std::move(past.value().last);
    m_earlier = std::move(past.value().earlier);
    takeEmergenciesOfTheDay();
    m_aim.reset();
    Q_EMIT visitOpened();
    Q_EMIT findingsChanged();
    Q_EMIT aimChanged();
    return Done{};
}

void VisitSession::close()
{
    m_undo.clear();
    m_visitId = 0;
    m_patientId = 0;
    m_record = {};
    m_state = {};
    m_visit = {};
    m_past.clear();
    m_earlierAnswers.clear();
    m_pastTreatments.clear();
    m_last.reset();
    m_earlier.clear();
    m_aim.reset();
    Q_EMIT visitOpened();
    Q_EMIT findingsChanged();
    Q_EMIT aimChanged();
}

Result<Done> VisitSession::rereadTreatment()
{
    m_handTechniques = m_learned.techniques;
    m_homeAdvice = m_learned.homeAdvice;
    const auto settings = m_practice->settings();
    if (!settings)
        return settings.error();
    m_homeAdvice = withOwn(m_learned.homeAdvice, settings.value().advice);
    auto own = withOwn(m_learned.techniques, settings.value().treatment);
    if (!own)
        return own.error();
    m_handTechniques = std::move(own).value();
    Q_EMIT planChanged();
    return Done{};
}

Result<Done> VisitSession::rereadRecord()
{
    if (m_patientId == 0)
        return Done{};
    auto record = m_practice->patient(m_patientId);
    if (!record)
        return record.error();
    m_record = std::move(record).value();
    Q_EMIT visitOpened();
    return Done{};
}

Result<Done> VisitSession::rereadScope()
{
    const auto users = m_practice->accounts();
    if (!users)
        return users.error();
    const auto groups = readEmbeddedTechniqueGroups(m_learned.adviser.rules());
    if (!groups)
        return groups.error();
    for (const AccountCard &user : users.value())
        if (user.id == m_practice->keys()->account)
            m_techniques = techniquesWithin(groups.value(), user.scope);
    Q_EMIT findingsChanged(); // other places may be offered
    return Done{};
}

namespace {

int daysBetween(const std::string &earlier, const std::string &later)
{
    const auto day = [](const std::string &iso) { return QDate::fromString(QString::fromStdString(iso), Qt::ISODate); };
    return static_cast<int>(day(earlier).daysTo(day(later)));
}

} // namespace

Result<VisitSession::Past> VisitSession::readPast(const StoredVisit &current, const std::string &date)
{
    const auto rows = m_practice->visits(current.patient);
    if (!rows)
        return rows.error();
    Past past;
    const auto isBefore = [&](const Visit &visit, std::int64_t id) {
        return visit.date < date || (visit.date == date && id < current.id);
    };
    for (const StoredVisit &row : rows.value()) {
        if (row.id == current.id || row.state == VisitState::InError)
            continue;
        const auto visit = readVisit(row.document, "visit " + std::to_string(row.id), *m_learned.knowledge.atlas);
        if (!visit)
            return visit.error();
        for (const Finding &finding : visit.value().findings)
            past.findings.push_back({visit.value().date, finding});
        past.answers.insert(past.answers.end(), visit.value().warnings.begin(), visit.value().warnings.end());
        if (isBefore(visit.value(), row.id) && !visit.value().treatment.steps.empty())
            past.treatments.push_back({daysBetween(visit.value().date, date), visit.value().treatment});
        if (isBefore(visit.value(), row.id) && (!past.last || past.last->date < visit.value().date)) // newest first
            past.last = visit.value();
        if (isBefore(visit.value(), row.id))
            past.earlier.push_back({visit.value(), false});
    }
    std::stable_sort(
        past.findings.begin(), past.findings.end(), [](const PastFinding &a, const PastFinding &b) { return a.date > b.date; });
    return past;
}

Result<std::int64_t> VisitSession::startVisit(std::int64_t patientId, std::optional<int> episode)
{
    const auto record = m_practice->patient(patientId);
    if (!record)
        return record.error();
    const auto earlier = m_practice->visits(patientId);
    if (!earlier)
        return earlier.error();
    std::vector<EarlierVisit> others;
    for (const StoredVisit &stored : earlier.value()) {
        auto read = readVisit(stored.document, "visit " + std::to_string(stored.id), *m_learned.knowledge.atlas);
        if (!read)
            return read.error();
        others.push_back({std::move(read).value(), stored.state == VisitState::InError});
    }
    const std::string today = QDate::currentDate().toString(Qt::ISODate).toStdString();
    const Visit visit = nextVisit(m_learned.adviser.rules(), record.value(), others, today, episode);
    return m_practice->addVisit(patientId, writeVisit(visit));
}

Result<Done> VisitSession::saveNow()
{
    if (m_saver->flush() || m_visitId == 0 || isReadOnly())
        return Done{};
    return m_practice->saveVisit(m_visitId, writeVisit(m_visit)); // the saver's attempt failed; this one succeeds or says why
}

bool VisitSession::isLate() const
{
    return m_visit.date < QDate::currentDate().toString(Qt::ISODate).toStdString();
}

Result<Done> VisitSession::afterSaving(const std::function<Result<Done>()> &act)
{
    Q_EMIT leaving(); // what is being typed is not signed away
    if (const auto before = saveNow(); !before)
        return before.error();
    if (const auto done = act(); !done)
        return done.error();
    return open(m_visitId);
}

Result<Done> VisitSession::sign(const std::string &reason)
{
    return afterSaving([&]() -> Result<Done> {
        const auto &steps = m_visit.treatment.steps;
        if (std::any_of(steps.begin(), steps.end(), [](const TreatmentStep &step) { return !step.done; }))
            return Error{ErrorCode::MissingField, "treatment", "how much of each step was done, said in the treatment view"};
        if (m_state == VisitState::Amending)
            return m_practice->signAmendment(m_visitId, reason, m_visit.date);
        if (isLate() && reason.empty())
            return Error{ErrorCode::MissingField, "visit", "reason of the late entry"};
        return isLate() ? m_practice->sign(m_visitId, m_visit.date, reason) : m_practice->sign(m_visitId);
    });
}

Result<Done> VisitSession::beginAmendment()
{
    return afterSaving([&] { return m_practice->beginAmendment(m_visitId); });
}

Result<Done> VisitSession::dropAmendment()
{
    return afterSaving([&] { return m_practice->dropAmendment(m_visitId); });
}

Result<Done> VisitSession::markInError(const std::string &reason)
{
    return afterSaving([&] { return m_practice->markInError(m_visitId, reason); });
}

Result<Done> VisitSession::moveTo(std::int64_t patient, const std::string &reason)
{
    return afterSaving([&]() -> Result<Done> {
        const auto record = m_practice->patient(patient);
        if (!record)
            return record.error();
        Visit moved = m_visit; // it names its patient
        moved.patient = Patient{record.value().name, record.value().born};
        for (Complaint &complaint : moved.complaints)
            complaint.episode.reset(); // that was one of the other patient
        const auto left = leftBehind(reason);
        if (!left)
            return left.error();
        return m_practice->move(m_visitId, patient, reason, writeVisit(moved), left.value());
    });
}

// Empty when the visit tells of no emergency.
Result<std::string> VisitSession::leftBehind(const std::string &reason) const
{
    Visit left;
    left.patient = m_visit.patient;
    left.date = m_visit.date;
    for (const WarningAnswer &answer : m_visit.warnings)
        if (isFinal(answer))
            left.warnings.push_back({answer.sign, true, answer.asked, answer.at, {}, reason, {}, true});
    if (left.warnings.empty())
        return std::string();
    const auto users = m_practice->accounts();
    if (!users)
        return users.error();
    for (const AccountCard &user : users.value())
        if (user.id == m_practice->keys()->account)
            for (WarningAnswer &answer : left.warnings)
                answer.told = user.name;
    return writeVisit(left);
}

bool VisitSession::mayChange()
{
    if (m_visitId == 0)
        return false;
    if (!isReadOnly())
        return true;
    Q_EMIT refused(m_state == VisitState::Signed ? tr("This visit is signed. To change it, amend it.")
                                                 : tr("This visit was entered in error and stays as it is."));
    return false;
}

void VisitSession::setCautions(const std::vector<std::string> &lines)
{
    if (lines == m_visit.cautions || !mayChange())
        return;
    m_visit.cautions = lines;
    save();
}

void VisitSession::aimAt(Aim aim)
{
    if (aim.stack.empty()) { // reached by name or list: what lies at the place where its mark stands
        const Knowledge &k = m_learned.knowledge;
        if (const auto at = markPoint(*k.atlas, *k.body, aim.place, aim.spot))
            aim.stack = k.body->of(at->view).under(*k.atlas, at->point, aim.place.side == Side::Left ? Side::Left : Side::Right);
        const auto isAimed = [&](const UnderHit &hit) { return hit.place == aim.place; };
        if (std::none_of(aim.stack.begin(), aim.stack.end(), isAimed))
            aim.stack = {{aim.place, k.atlas->at(aim.place.structure).layer}};
    }
    if (!aim.spot) // an earlier finding at this place is what is meant
        for (const Finding &f : m_visit.findings)
            if (f.place == aim.place) {
                aim.spot = f.spot;
                aim.at = f.at;
            }
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
    aimAt({f.place, f.spot, {}, f.at});
}

bool VisitSession::isAimedAt(const Finding &f) const
{
    return f.place == m_aim->place && f.spot == m_aim->spot && f.at == m_aim->at;
}

int VisitSession::currentFinding() const
{
    if (!m_aim)
        return -1;
    for (std::size_t i = 0; i < m_visit.findings.size(); ++i)
        if (isAimedAt(m_visit.findings[i]))
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
    fresh.at = m_aim->at;
    return fresh;
}

namespace {

// What could not be examined gives way to what is found, and so does what was clear of the same quality; a pain that the patient
// knows is none of a place that is clear to the touch.
Finding withSomethingFound(Finding finding)
{
    finding.unable.reset();
    if (finding.tendernessGrade() > 0 || finding.familiar)
        finding.clear.tenderness = false;
    if (finding.restrictionGrade() > 0 || (finding.play && finding.play->grade != JointPlay::normal))
        finding.clear.motion = false;
    return finding;
}

// How sure, and how it was told, is said of a motion or not at all.
Finding withoutLooseWords(Finding finding)
{
    finding.certain = finding.certain && finding.saysOfMotion();
    finding.afterComparing = finding.afterComparing && finding.saysOfMotion();
    return finding;
}

} // namespace

void VisitSession::setTenderness(int grade)
{
    if (!m_aim || grade < 0 || grade > Tenderness::highest)
        return;
    Finding f = startingPoint();
    f.tenderness = Tenderness{grade};
    f.sore = false;
    put(withSomethingFound(std::move(f)), tr("tenderness %1", "undo step").arg(grade));
}

void VisitSession::setRestriction(int grade)
{
    if (!m_aim || grade < 0 || grade > Restriction::highest)
        return;
    Finding f = startingPoint();
    f.restriction = Restriction{grade};
    f.stiff = false;
    put(withSomethingFound(std::move(f)), tr("restriction %1", "undo step").arg(grade));
}

void VisitSession::toggleFamiliar()
{
    if (!m_aim)
        return;
    Finding f = startingPoint();
    f.familiar = !f.familiar;
    putOrRemove(withSomethingFound(std::move(f)), tr("familiar pain", "undo step"));
}

// Puts the finding, or takes it away when nothing is left to say.
void VisitSession::putOrRemove(Finding finding, const QString &what)
{
    if (finding.saysAnything())
        put(withoutLooseWords(std::move(finding)), what);
    else
        removeFinding();
}

void VisitSession::setPlay(std::optional<int> grade)
{
    if (!m_aim || m_learned.knowledge.atlas->at(m_aim->place.structure).kind != Kind::Joint)
        return;
    Finding f = startingPoint();
    f.play = grade ? std::optional(JointPlay{*grade}) : std::nullopt;
    putOrRemove(withSomethingFound(std::move(f)), tr("joint play", "undo step"));
}

void VisitSession::setEndFeel(std::optional<EndFeel> feel)
{
    if (!m_aim || m_learned.knowledge.atlas->at(m_aim->place.structure).kind != Kind::Joint)
        return;
    Finding f = startingPoint();
    f.unable.reset();
    f.endFeel = feel;
    putOrRemove(std::move(f), tr("end feel", "undo step"));
}

void VisitSession::toggleAfterComparing()
{
    Finding f = m_aim ? startingPoint() : Finding{};
    if (!f.saysOfMotion())
        return;
    f.afterComparing = !f.afterComparing;
    put(std::move(f), tr("felt only after comparing", "undo step"));
}

void VisitSession::toggleCertain()
{
    Finding f = m_aim ? startingPoint() : Finding{};
    if (!f.saysOfMotion())
        return;
    f.certain = !f.certain;
    put(std::move(f), tr("how sure", "undo step"));
}

void VisitSession::toggleTexture(const std::string &word)
{
    if (!m_aim)
        return;
    Finding f = startingPoint();
    f.unable.reset();
    if (std::erase(f.texture, word) == 0)
        f.texture.push_back(word);
    putOrRemove(std::move(f), tr("what it feels like", "undo step"));
}

void VisitSession::toggleRefersTo(const Place &place)
{
    if (!m_aim)
        return;
    Finding f = startingPoint();
    f.unable.reset();
    if (std::erase(f.refersTo, place) == 0)
        f.refersTo.push_back(place);
    putOrRemove(std::move(f), tr("where it is felt as well", "undo step"));
}

void VisitSession::toggleClearOf(bool tenderness, bool motion)
{
    if (!m_aim || (!tenderness && !motion))
        return;
    Finding before = startingPoint();
    if ((before.clear.tenderness || !tenderness) && (before.clear.motion || !motion)) {
        before.clear = {before.clear.tenderness && !tenderness, before.clear.motion && !motion};
        putOrRemove(std::move(before), tr("no longer clear", "undo step"));
        return;
    }
    Finding now;
    now.clear = {tenderness, motion};
    put(saidBeside(startingPoint(), now), tr("clear", "undo step"));
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
    if (!m_aim || spot == m_aim->spot || (spot && !hasSpots(m_learned.knowledge.atlas->at(m_aim->place.structure).kind)))
        return;
    const auto standsAt = [&](const Finding &f) { return f.place == m_aim->place && f.spot == spot; };
    const auto there = std::find_if(m_visit.findings.begin(), m_visit.findings.end(), standsAt);
    const bool taken = there != m_visit.findings.end();
    const int index = currentFinding();
    // An unplaced finding gets its spot; a placed one stays where it is.
    const bool moves =
        index >= 0 && !isReadOnly() && !m_aim->spot && !m_visit.findings[static_cast<std::size_t>(index)].at && !taken;
    Aim aim = *m_aim;
    aim.spot = spot;
    aim.at = taken ? there->at : std::nullopt;
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
    const QString name = m_aim ? tr("%1, %2", "undo step: place, what")
                                     .arg(QString::fromStdString(m_learned.knowledge.atlas->spoken(m_aim->place)), what)
                               : what;
    Recorded after = recorded();
    after.findings = std::move(findings);
    apply(std::move(after), name);
}

bool VisitSession::apply(Recorded after, const QString &name)
{
    if (after == recorded() || !mayChange())
        return false;
    noteTime(after);
    m_undo.push(new Change(*this, std::move(after), name)); // the stack owns it and calls redo()
    return true;
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
        tr("%1, where it hurts", "undo step").arg(QString::fromStdString(m_learned.knowledge.atlas->spoken(m_aim->place))));
}

void VisitSession::setPlanWish(const PlanWish &wish)
{
    if (wish == m_visit.plan || !mayChange())
        return;
    m_visit.plan = wish;
    save();
    Q_EMIT planChanged();
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
            .arg(QString::fromStdString(m_learned.knowledge.atlas->spoken(judgement.place))));
}

void VisitSession::withdrawJudgement(AdviceList list, const Place &place)
{
    Recorded after = recorded();
    std::erase_if(after.judgements, [&](const Judgement &j) { return j.list == list && j.place == place; });
    apply(std::move(after),
        tr("no judgement of %1", "undo step").arg(QString::fromStdString(m_learned.knowledge.atlas->spoken(place))));
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
