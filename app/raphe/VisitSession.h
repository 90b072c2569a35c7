// The open visit: what is aimed at, the findings with undo and redo, and saving on every change.
// Lives in the window's thread; writing happens in the VisitSaver's own thread.
#pragma once

#include "app/raphe/Learned.h"
#include "core/base/Millimetres.h"
#include "core/document/StructureCard.h"
#include "core/examination/Barred.h"
#include "core/examination/Comparing.h"
#include "core/examination/Proposal.h"
#include "core/plan/SessionPlan.h"
#include "core/reasoning/SideCheck.h"
#include "core/record/Visit.h"
#include "core/store/Practice.h"
#include "core/store/VisitSaver.h"
#include "core/treatment/CareProgress.h"
#include "core/treatment/Doses.h"

#include <QObject>
#include <QTime>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What the next grade applies to: a place, perhaps a spot of it, and what lies over and under it at the point touched.
struct Aim {
    Place place;
    std::optional<Spot> spot;
    std::vector<UnderHit> stack; // outside in; just the place itself when it was not reached by a point
    std::optional<StructureId> at = {}; // of a finding that is on one of several attachments
};

class VisitSession : public QObject {
    Q_OBJECT

public:
    /// Keeps a reference to what was learned.
    VisitSession(const Learned &learned, std::unique_ptr<Practice> practice);
    ~VisitSession() override;

    [[nodiscard]] const Knowledge &knowledge() const { return m_learned.knowledge; }
    [[nodiscard]] const Adviser &adviser() const { return m_learned.adviser; }
    [[nodiscard]] const Examination &examination() const { return m_learned.examination; }
    [[nodiscard]] const LineWords &lineWords() const { return m_learned.lineWords; }
    [[nodiscard]] const Techniques &programTechniques() const { return m_learned.techniques; }
    [[nodiscard]] const HomeAdvice &programAdvice() const { return m_learned.homeAdvice; }
    /// With that of the practice.
    [[nodiscard]] const HomeAdvice &homeAdvice() const { return m_homeAdvice; }
    /// From now on advice of the practice; one without an id is new. The id that it has then.
    [[nodiscard]] Result<std::string> keepAdvice(OwnAdvice advice);
    /// With the techniques and times of the practice.
    [[nodiscard]] const Techniques &handTechniques() const { return m_handTechniques; }
    [[nodiscard]] const Access &access() const { return m_learned.access; }
    /// Refers to this session.
    [[nodiscard]] Planner planner() const
    {
        return {m_learned.adviser, *m_learned.knowledge.regions, m_handTechniques, m_learned.access};
    }
    [[nodiscard]] Practice &practice() { return *m_practice; }
    [[nodiscard]] QUndoStack &undoStack() { return m_undo; }

    /// Opens a visit of the practice file; what was open before is saved first. That the patient's record was opened is noted.
    [[nodiscard]] Result<Done> open(std::int64_t visitId);
    /// A new visit today. `episode`: the patient's complaint that it is about.
    [[nodiscard]] Result<std::int64_t> startVisit(std::int64_t patientId, std::optional<int> episode = {});
    /// Nothing is open any more.
    void close();
    /// 0 while no visit is open; then nothing can be recorded.
    [[nodiscard]] std::int64_t visitId() const { return m_visitId; }
    /// Whose visit is open, and what their record says.
    [[nodiscard]] std::int64_t patientId() const { return m_patientId; }
    [[nodiscard]] const PatientRecord &record() const { return m_record; }
    /// Reads which techniques the user may use, after it was changed.
    [[nodiscard]] Result<Done> rereadScope();
    [[nodiscard]] const std::optional<std::set<std::string>> &techniques() const { return m_techniques; }
    /// Reads the techniques, times and advice of the practice, after they were changed; the program's alone hold when it fails.
    [[nodiscard]] Result<Done> rereadTreatment();
    /// Reads the record again, after it was changed.
    [[nodiscard]] Result<Done> rereadRecord();
    [[nodiscard]] VisitState state() const { return m_state; }
    /// A signed visit and one in error cannot be changed; who tries is told by refused().
    [[nodiscard]] bool isReadOnly() const { return m_state == VisitState::Signed || m_state == VisitState::InError; }

    // What can be done with a whole visit; each saves first, and shows the visit as it then is.
    /// Whether it was written down after the day of care: then signing needs a reason.
    [[nodiscard]] bool isLate() const;
    /// A draft or an amendment. The reason is that of a late entry or of the amendment.
    [[nodiscard]] Result<Done> sign(const std::string &reason);
    [[nodiscard]] Result<Done> beginAmendment();
    [[nodiscard]] Result<Done> dropAmendment();
    [[nodiscard]] Result<Done> markInError(const std::string &reason);
    /// An emergency leaves its mark with the patient that the visit is taken from: a visit of the day that asks for it.
    [[nodiscard]] Result<Done> moveTo(std::int64_t patient, const std::string &reason);
    [[nodiscard]] const Visit &visit() const { return m_visit; }
    /// What was found at this patient's other visits, newest first.
    [[nodiscard]] const std::vector<PastFinding> &pastFindings() const { return m_past; }
    /// This patient's other visits, newest first, without those in error.
    [[nodiscard]] const std::vector<EarlierVisit> &earlierVisits() const { return m_earlier; }
    /// What was done at this patient's visits before this one.
    [[nodiscard]] const std::vector<PastTreatment> &pastTreatments() const { return m_pastTreatments; }
    /// Everything is on disk when it succeeds.
    [[nodiscard]] Result<Done> saveNow();

    // Warning signs. What was answered at other visits of this patient counts as long as it is not stale.
    [[nodiscard]] std::vector<const WarningSign *> warningsToAsk() const;
    /// The answer of this visit that still holds; nullptr when there is none.
    [[nodiscard]] const WarningAnswer *answerTo(const WarningSign &sign) const;
    /// Replaces an answer to the same sign. Fails with NotAllowed where the answer is final; cannot be undone.
    [[nodiscard]] Result<Done> answerWarning(const WarningAnswer &answer);
    /// Puts the answers back as they were before a yes that nobody had decided on and that was a slip.
    void takeBackSlip(const std::vector<WarningAnswer> &before);
    /// An emergency that is there stays there for this visit; one of a visit that was moved away is asked for.
    [[nodiscard]] bool isFinal(const WarningAnswer &answer) const;
    /// Where a sign that needs a place may be, with names: where it hurts, or else the sign's parts of the body on each side.
    /// Empty when it needs none.
    [[nodiscard]] std::vector<std::pair<Place, QString>> placesFor(const WarningSign &sign) const;
    /// What holds everywhere for this patient, gravest first.
    [[nodiscard]] std::vector<CautionVerdict> standingVerdicts() const;
    /// What the record says that may be a condition, as long as it is neither confirmed nor ruled out.
    [[nodiscard]] std::vector<Reminder> reminders() const;
    /// The conditions that a reminder still puts.
    [[nodiscard]] std::vector<std::string> openOf(const Reminder &reminder) const;
    /// The visit with what the record lets suspect: it holds until it was said whether it is so. What needs a place does not, as
    /// nothing says where.
    [[nodiscard]] Visit asSuspected() const;
    /// A condition that the record lets suspect is one: it goes into the record, `because` as its note, and into the visit; one
    /// that needs a place comes into the visit as a caution in words. Cannot be undone.
    [[nodiscard]] Result<Done> takeOver(const std::string &condition, const std::string &because);
    /// It is not so: the record keeps that it was said, beside what the record said.
    [[nodiscard]] Result<Done> ruleOut(const std::string &condition, const std::string &because);
    /// Nothing may be treated.
    [[nodiscard]] bool isLocked() const;

    /// Complaint and findings on opposite sides, not known to be meant so.
    [[nodiscard]] std::optional<SideQuestion> sidesToAsk() const;
    void setSidesIntended();

    /// The items of consent to be asked at this visit, by the techniques that the user may use and by where it hurts. A technique
    /// that not every visit uses is asked about when it is wanted, and then again when its answer no longer holds.
    [[nodiscard]] std::vector<const ConsentItem *> consentsDue() const;
    /// Replaces an answer to the same item. Fails with NotAllowed for what is taken back and was not given, and as checkConsent.
    /// Cannot be undone.
    [[nodiscard]] Result<Done> answerConsent(const ConsentAnswer &answer);

    void setInjured(bool injured);
    void setEpisode(std::optional<int> complaintId);
    /// The words of the first complaint.
    void setComplaint(const std::string &text);
    void setComplaints(const std::vector<Complaint> &complaints);
    void setPain(const std::vector<PainPatch> &pain);
    /// The patient agreed to the places, said in words: all patches are confirmed, and it hurts there.
    void confirmPain();
    /// It was painted, or told, on the wrong side.
    void movePainToOtherSide();
    void moveComplaintToOtherSide();
    void setSinceLast(const SinceLast &told);
    void setPromised(const std::vector<std::string> &lines);
    /// This patient's visit before this one, and nothing at a first visit.
    [[nodiscard]] const std::optional<Visit> &lastVisit() const { return m_last; }
    /// It hurts where it hurt at the last visit.
    void takeLastPlaces();
    /// What was carried over of the complaints is as it was.
    void confirmComplaints();
    void setCautions(const std::vector<std::string> &lines);

    [[nodiscard]] const std::optional<Aim> &aim() const { return m_aim; }
    void aimAt(Aim aim);
    void chooseFromStack(const Place &place);
    /// Takes aim at a finding of the list.
    void selectFinding(int index);
    /// The finding that the aim stands on, or -1.
    [[nodiscard]] int currentFinding() const;

    // Each records at once at the aim; without an aim they do nothing.
    void setTenderness(int grade);
    void setRestriction(int grade);
    void toggleFamiliar();
    void setClear();
    void setUnable(const std::string &reason);
    void setSpot(std::optional<Spot> spot);
    void removeFinding();
    void setPlay(std::optional<int> grade);
    void setEndFeel(std::optional<EndFeel> feel);
    void toggleAfterComparing();
    void toggleCertain();
    void toggleTexture(const std::string &word);
    /// Pressing at the aim is felt there too, or no longer.
    void toggleRefersTo(const Place &place);
    /// Clear of one quality only, or no longer; what was found of the other one stays.
    void toggleClearOf(bool tenderness, bool motion);
    /// It hurts here, or no longer.
    void toggleComplaint();
    [[nodiscard]] bool hurtsAtAim() const;

    // The examination (VisitSessionExamination.cpp). Each is one step of undo, and stands in the timeline.
    /// Whom reference values must be of, and what the record says of height, in mm.
    [[nodiscard]] Reference reference() const;
    [[nodiscard]] std::optional<Millimetres> stature() const;
    /// The cautions of this visit, with what the record lets suspect.
    [[nodiscard]] Cautions cautions() const;
    [[nodiscard]] const Finding *findingAt(const Place &place, std::optional<Spot> spot = {}) const;
    [[nodiscard]] const Measure *measureOf(const std::string &movement, Side side, std::optional<MoveMode> mode) const;
    [[nodiscard]] const TestResult *resultOf(const std::string &test, Side side) const;
    /// Takes the place of what was said of the same place and spot; one that says nothing takes it away.
    void record(const Finding &finding);
    /// The same for the movement on its side in its mode.
    void record(const Measure &measure);
    void record(const TestResult &result);
    void removeResult(const std::string &test, Side side);
    /// Several at once, as of a typed line; each beside what was said before of the same, see saidBeside. False
    /// when the visit says all of it already, or takes nothing.
    bool record(const std::vector<Finding> &findings, const std::vector<Measure> &measures, const QString &what);
    void setRetest(const std::optional<RetestMark> &mark);
    /// For pictures and tests; the timeline goes by it.
    void setClock(std::function<QTime()> clock) { m_clock = std::move(clock); }

    /// What is wanted of the plan; cannot be undone.
    void setPlanWish(const PlanWish &wish);

    // Treatment and what comes after it (VisitSessionTreatment.cpp); cannot be undone.
    /// What was done, and where the work stands.
    void setTreatment(const TreatmentLog &log);
    /// Work off the plan that was done until now, at the end of the log. What stops it there is told by refused(), and what else
    /// holds asked by workHeld(): then nothing is logged, and false is returned. `minded`: it was read.
    bool addWork(TreatmentStep step, bool minded = false);
    void addEvent(AdverseEvent event);
    void setRetested(const Retested &retested);
    void setClosing(const Closing &closing);
    void setLetters(const std::vector<Letter> &letters);
    /// Whether the care that was agreed on changed anything.
    [[nodiscard]] CareProgress careProgress() const;
    /// Local time, HH:MM:SS.
    [[nodiscard]] std::string timeNow() const;

    /// What was thought of a row; nullptr when nothing.
    [[nodiscard]] const Judgement *judgementOf(AdviceList list, const Place &place) const;
    void judge(const Judgement &judgement);
    void withdrawJudgement(AdviceList list, const Place &place);

    /// For whoever watches: nothing was changed, and why.
    void tell(const QString &message) { Q_EMIT refused(message); }

Q_SIGNALS:
    /// The visit is about to be signed or left, or the program to lock or end: what is being typed is to be finished.
    void leaving();
    void visitOpened();
    void findingsChanged();
    void aimChanged();
    /// Complaints, consents, or what was told of the time since the last visit.
    void intakeChanged();
    void treatmentChanged();
    /// This work is to be logged, and this holds there.
    void workHeld(const raphe::TreatmentStep &step, const QString &why);
    void retestChanged();
    void closingChanged();
    /// What is wanted of the plan, or the techniques of the practice.
    void planChanged();
    void saving();
    void saved();
    void saveFailed(const QString &message);
    /// An answer to a test is this warning sign, which nobody has said to be there yet.
    void signFound(const QString &sign);
    /// Nothing was changed, and why.
    void refused(const QString &message);

private:
    class Change;
    [[nodiscard]] bool isAimedAt(const Finding &f) const;
    [[nodiscard]] Finding startingPoint() const;
    struct Past {
        std::vector<PastFinding> findings;
        std::vector<WarningAnswer> answers;
        std::vector<PastTreatment> treatments;
        std::optional<Visit> last; // of a day before, or of this day and begun before
        std::vector<EarlierVisit> earlier;
    };
    [[nodiscard]] Result<Past> readPast(const StoredVisit &current, const std::string &date);
    [[nodiscard]] Result<Done> afterSaving(const std::function<Result<Done>()> &act);
    [[nodiscard]] std::vector<std::string> confirmedConditions() const;
    void takeEmergenciesOfTheDay();
    [[nodiscard]] Result<std::string> leftBehind(const std::string &reason) const;
    [[nodiscard]] bool mayChange();
    // What undo and redo bring back.
    struct Recorded {
        std::vector<Finding> findings;
        std::vector<Measure> measures;
        std::vector<TestResult> tests;
        std::optional<RetestMark> retest;
        std::vector<Moment> timeline;
        std::vector<Place> complaintAt;
        std::vector<PainPatch> pain;
        std::vector<Judgement> judgements;
        bool operator==(const Recorded &) const = default;
    };
    [[nodiscard]] Recorded recorded() const
    {
        return {m_visit.findings, m_visit.measures, m_visit.tests, m_visit.retest, m_visit.timeline, m_visit.complaintAt,
            m_visit.pain, m_visit.judgements};
    }
    void put(Recorded &after, const Finding &finding) const;
    void put(Recorded &after, const Measure &measure) const;
    void noteTime(Recorded &after) const;
    void put(Finding finding, const QString &what);
    void putOrRemove(Finding finding, const QString &what);
    void apply(std::vector<Finding> findings, const QString &what);
    bool apply(Recorded after, const QString &name);
    void setFirst(const Complaint &first);
    void changed();
    void save();

    const Learned &m_learned;
    std::unique_ptr<Practice> m_practice;
    std::unique_ptr<VisitSaver> m_saver;
    QUndoStack m_undo;
    std::int64_t m_visitId = 0;
    std::int64_t m_patientId = 0;
    PatientRecord m_record;
    VisitState m_state{};
    std::optional<std::set<std::string>> m_techniques; // nothing: not restricted
    Techniques m_handTechniques;
    HomeAdvice m_homeAdvice;
    Visit m_visit;
    std::vector<PastFinding> m_past;
    std::vector<WarningAnswer> m_earlierAnswers; // of this patient's other visits
    std::vector<PastTreatment> m_pastTreatments;
    std::optional<Visit> m_last;
    std::vector<EarlierVisit> m_earlier; // none of them in error
    std::optional<Aim> m_aim;
    std::function<QTime()> m_clock = [] { return QTime::currentTime(); };
};

} // namespace raphe
