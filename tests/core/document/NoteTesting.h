// A visit in which everything is written down, what notes are composed with, and notes as plain lines, for the tests of written
// records. Its own texts have none of the words 'left' and 'right', so that a mirrored note can be told by them.
#pragma once

#include "core/document/ClinicalNote.h"
#include "core/examination/RecordWords.h"
#include "tests/core/examination/Exam.h"
#include "tests/core/plan/Planning.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Complaints.h"

#include <QRegularExpression>
#include <QString>

#include <string>
#include <vector>

namespace raphe::test {

inline const NoteKnowledge &noteKnowledge()
{
    static const NoteKnowledge known{regions(), safetyRules(), examination(), techniques()};
    return known;
}

inline Measure notedMeasure(const std::string &movement, Side side, double value, MoveMode mode, Device device)
{
    Measure out;
    out.movement = movement;
    out.side = side;
    out.value = value;
    out.mode = mode;
    out.device = device;
    return out;
}

inline TestResult notedResult(const std::string &test, Side side, TestPain pain)
{
    TestResult out;
    out.test = test;
    out.side = side;
    out.pain = pain;
    return out;
}

inline TreatmentStep notedStep(const std::string &structure, Side side, const std::string &technique, const std::string &began)
{
    TreatmentStep out;
    out.place = {{structure}, side};
    out.technique = technique;
    out.began = began;
    out.seconds = 90;
    out.planned = 60;
    out.done = StepDone::Done;
    return out;
}

inline Complaint notedComplaint()
{
    Complaint out = complaintOf("buttock aches after digging");
    out.since = "four months";
    out.now = PainScore{6};
    out.worst = PainScore{8};
    out.best = PainScore{2};
    out.aggravates = "driving home";
    out.eases = "lying curled";
    out.day[static_cast<std::size_t>(PartOfDay::Waking)] = DayLevel::More;
    out.irritability = Irritability::Medium;
    out.activities = {{"sit through a concert", 4}, {"dig the garden", 3}, {"lift the niece", {}}};
    out.goal = "a bed of beans in spring";
    out.asked = "2026-11-29";
    return out;
}

inline void addNotedIntake(Visit &visit)
{
    visit.complaints = {notedComplaint(), complaintOf("shoulder will not reach back")};
    visit.complaintAt = {{{"gluteal-region-middle"}, Side::Right}};
    visit.pain = {PainPatch{View::Back, Side::Midline, {BrushStroke{{{60, 500}, {70, 510}}, 12}}, PainQuality::Burning,
        PainScore{5}, Painter::Patient, true}};
    visit.injured = true;
    visit.cautions = {"thin skin on the forearms"};
    visit.conditions = {{"anticoagulant", {}}, {"irritable-joint", {{{"t4-t5"}, Side::Left}}}};
    visit.warnings = {{"leg-clot-pitting", true, "2026-11-29", {{{"sural-region-medial"}, Side::Right}}, Decision::InCare,
                          "seen last week", "Dr Marsh"},
        {"chest-pain-now", false, "2026-11-29", {}, {}, {}, {}}, {"shingles-rash", false, "2026-11-20", {}, {}, {}, {}}};
    ConsentAnswer given{"examination-by-touch", ConsentState::Given, "2026-11-29", {}, {}, {}, "asked how hard it would be"};
    ConsentAnswer refused{
        "cupping", ConsentState::Refused, "2026-11-20", Chaperone::Present, "Nurse Ferris", Guardian{"Otto Quill", "father"}, {}};
    visit.consents = {given, refused};
    visit.sinceLast =
        SinceLast{Course::Better, Reaction::Sore, "ached in the evening", {{"walk daily", Kept::Part}, {"heat at night", {}}}};
    visit.focus = {"look at the ankle"};
    visit.promised = {"bring the pictures of the hip"};
}

inline void addNotedExamination(Visit &visit)
{
    Finding gluteus = tender("gluteus-maximus", Side::Right, 3);
    gluteus.spot = Spot::Origin;
    gluteus.restriction = Restriction{2};
    gluteus.familiar = true;
    gluteus.texture = {"ropy"};
    gluteus.refersTo = {{{"gluteal-region-middle"}, Side::Right}};
    gluteus.note = "worse on the second pass";
    Finding joint = stiff("sacroiliac-joint", Side::Right, 2);
    joint.play = JointPlay{1};
    joint.endFeel = EndFeel::Hard;
    Finding unable;
    unable.place = {{"soleus"}, Side::Left};
    unable.unable = "a dressing covers it";
    visit.findings = {gluteus, joint, clearOf({{"piriformis"}, Side::Right}), clearOf({{"piriformis"}, Side::Left}),
        clearOf({{"l4-l5"}, Side::Midline}), unable};
    Measure painful = notedMeasure("trunk-side-bending", Side::Right, 18, MoveMode::Active, Device::Inclinometer);
    painful.painFrom = 12.5;
    painful.familiar = true;
    painful.note = "slow";
    Measure watched;
    watched.movement = "trunk-flexion";
    watched.side = Side::Midline;
    watched.hurts = true;
    visit.measures = {
        painful, notedMeasure("trunk-side-bending", Side::Left, 30, MoveMode::Active, Device::Inclinometer), watched};
    TestResult slump = notedResult("slump-test", Side::Left, TestPain::Familiar);
    slump.changesFromAfar = true;
    TestResult unableTest;
    unableTest.test = "thigh-thrust";
    unableTest.side = Side::Left;
    unableTest.unable = "hip replaced";
    TestResult pressure;
    pressure.test = "blood-pressure";
    pressure.side = Side::Right;
    pressure.values = {128, 82};
    TestResult reflex;
    reflex.test = "knee-reflex";
    reflex.side = Side::Right;
    reflex.grade = 2;
    visit.tests = {slump, unableTest, pressure, reflex};
    visit.retest = RetestMark{MomentKind::Movement, "trunk-side-bending", Side::Right};
    visit.timeline = {{"10:02:11", MomentKind::Finding, "gluteus-maximus", Side::Right},
        {"10:14:50", MomentKind::Test, "slump-test", Side::Left}};
    visit.judgements = {{AdviceList::Explain, {{"piriformis"}, Side::Right}, {}},
        {AdviceList::Treat, {{"sacroiliac-joint"}, Side::Right}, "rested this week"}};
    visit.sidesIntended = true;
}

inline void addNotedTreatment(Visit &visit)
{
    visit.plan.minutes = 25;
    visit.plan.barred = {Position::Prone, Position::OnLeftSide};
    visit.plan.refused = {"thrust"};
    TreatmentStep first = notedStep("gluteus-maximus", Side::Right, "sustained-pressure", "10:20:05");
    first.position = Position::OnLeftSide;
    first.rest = 45;
    first.words = {StepWord::Familiar, StepWord::Eased};
    first.minded = {"malignancy-ask-team"};
    first.note = "breathing helped";
    TreatmentStep partly = notedStep("piriformis", Side::Right, "cups-gliding", "10:24:40");
    partly.kPa = 20;
    partly.done = StepDone::Partly;
    TreatmentStep skipped = notedStep("soleus", Side::Left, "gliding", {});
    skipped.seconds = 0;
    skipped.done = StepDone::Skipped;
    visit.treatment.steps = {first, partly, skipped};
    visit.treatment.events = {
        {"10:31:00", {"new-numbness-or-weakness"}, "tingling in the foot", "lay down, gone after a minute"}};
    visit.retested.findings = {tender("gluteus-maximus", Side::Right, 1)};
    visit.retested.findings.front().spot = Spot::Origin;
    visit.retested.measures = {notedMeasure("trunk-side-bending", Side::Right, 29, MoveMode::Active, Device::Inclinometer)};
    visit.retested.tests = {notedResult("slump-test", Side::Left, TestPain::None)};
    visit.retested.pain = PainScore{3};
}

inline void addNotedClose(Visit &visit)
{
    Closing &closing = visit.closing;
    closing.advice = {{{}, {}, "stand up every half hour"}, {"walk", "Walking", "Ten minutes twice a day.\nStop when it burns."}};
    closing.isTold = true;
    closing.focus = {"ankle first", "then the loin"};
    closing.impression = {"deep buttock trouble without nerve signs", "MG30.0", "ICD-11, 2024"};
    closing.goals = {{"dig a whole bed", "2027-03-20", false}, {"sit for an hour", {}, true}};
    closing.plan = CarePlan{"2026-11-29", 4, 7, "digging without a break"};
    closing.review = CareReview{CareDecision::ChangePlan, "the loin takes longer"};
    closing.call = LaterCall{"2026-12-01", "2026-12-02", Reaction::Sore, "stiff for a morning"};
}

/// Everything that a visit can hold but letters and work that is still ahead.
inline Visit notedVisit()
{
    Visit visit;
    visit.patient = Patient{"Ada Quill", "1961-03-04"};
    visit.date = "2026-11-29";
    visit.practitioner = "Ines Brook";
    addNotedIntake(visit);
    addNotedExamination(visit);
    addNotedTreatment(visit);
    addNotedClose(visit);
    return visit;
}

[[nodiscard]] inline bool hasWords(const std::string &text, const std::string &words)
{
    return text.find(words) != std::string::npos;
}

struct FlatNoteLine {
    std::string section; // part and section
    NoteLine line;
};

/// All lines of the parts, and of heads and signatures when asked for.
inline std::vector<FlatNoteLine> flatLines(const ClinicalNote &note, bool withFrame = true)
{
    std::vector<FlatNoteLine> out;
    if (withFrame)
        for (const NoteLine &line : note.heads)
            out.push_back({"heads", line});
    std::vector<NotePart> parts = note.parts;
    if (withFrame)
        parts.push_back(note.signatures);
    for (const NotePart &part : parts)
        for (const NoteSection &section : part.sections)
            for (const NoteLine &line : section.lines)
                out.push_back({part.title + " / " + section.title, line});
    return out;
}

inline std::string wholeText(const FlatNoteLine &line)
{
    return line.section + " | " + line.line.label + ": " + line.line.text
        + (line.line.asOf.empty() ? "" : " [" + line.line.asOf + "]");
}

inline std::string wholeText(const ClinicalNote &note)
{
    std::string out = note.title + "\n" + note.state + "\n";
    for (const FlatNoteLine &line : flatLines(note))
        out += wholeText(line) + "\n";
    return out + note.limits + "\n";
}

inline ClinicalNote notedAs(const Visit &visit, const NoteGiven &given = {})
{
    return clinicalNote(noteKnowledge(), visit, given);
}

/// The words 'left' and 'right' change places, in small and in capital letters.
inline std::string withSidesSwapped(const std::string &text)
{
    QString out = QString::fromStdString(text);
    for (const auto &[one, other] : {std::pair{QStringLiteral("left"), QStringLiteral("right")},
             std::pair{QStringLiteral("LEFT"), QStringLiteral("RIGHT")}}) {
        const QString between = QStringLiteral("\x01");
        out.replace(QRegularExpression(QStringLiteral("\\b%1\\b").arg(one)), between);
        out.replace(QRegularExpression(QStringLiteral("\\b%1\\b").arg(other)), one);
        out.replace(between, other);
    }
    return out.toStdString();
}

} // namespace raphe::test
