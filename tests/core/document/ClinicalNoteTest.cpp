// The clinical note: all that was written down stands in it with its side, and nothing else; what was taken over says so, and
// amendments tell what they changed.
#include "core/document/NoteText.h"
#include "core/plan/NextVisit.h"
#include "core/record/PaintedPlaces.h"
#include "core/record/VisitJson.h"
#include "tests/core/document/NoteTesting.h"

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>

#include <algorithm>
#include <functional>
#include <set>

namespace raphe::test {

namespace {

// Lines as they would be compared, in any order.
std::multiset<std::string> lineSet(const ClinicalNote &note, const std::function<std::string(const std::string &)> &change)
{
    std::multiset<std::string> out;
    for (const FlatNoteLine &line : flatLines(note))
        out.insert(change(wholeText(line)));
    return out;
}

std::string unchangedText(const std::string &text)
{
    return text;
}

// What only one of the two has, for messages.
std::string lineDifference(const std::multiset<std::string> &one, const std::multiset<std::string> &other)
{
    std::string out;
    for (const std::string &line : one)
        out += other.contains(line) ? "" : "- " + line + "\n";
    for (const std::string &line : other)
        out += one.contains(line) ? "" : "+ " + line + "\n";
    return out;
}

NoteVersion signedVersion(RecordAct act, const Visit &visit, std::int64_t entry)
{
    NoteVersion out;
    out.entry = entry;
    out.act = act;
    out.author = "Ines Brook";
    out.enteredAt = 1'796'000'000'000 + entry * 60'000;
    out.careAt = visit.date;
    out.visit = visit;
    return out;
}

} // namespace

TEST(ClinicalNote, HoldsAllThatIsWrittenDown)
{
    NoteGiven given;
    given.state = NoteState::Signed;
    const std::string note = wholeText(notedAs(notedVisit(), given));
    for (const char *words :
        {"Ada Quill", "1961-03-04", "2026-11-29", "Ines Brook", "10:02:11 to 10:14:50", "steps begun 10:20:05 to 10:24:40",
            // subjective
            "buttock aches after digging", "shoulder will not reach back", "four months",
            "Pain, 0 to 10: now 6, worst of seven days 8, best of seven days 2 (numeric rating scale)", "driving home",
            "lying curled", "waking: more", "medium", "sit through a concert: 4 of 10", "dig the garden: 3 of 10",
            "lift the niece: no score", "3.5 of 10, of 2 activities", "a bed of beans in spring", "RIGHT middle gluteal region",
            "drawing of the back", "burning", "5 of 10", "painted by the patient", "confirmed in words", "with an injury",
            "better", "sore, and it passed", "ached in the evening", "walk daily: done in part", "heat at night: not asked",
            "look at the ankle", "thin skin on the forearms", "takes a blood thinner", "LEFT T4/T5 segment",
            "known to the treating team", "seen last week", "Dr Marsh", "RIGHT sural region", "given on 2026-11-29",
            "REFUSED on 2026-11-20", "a chaperone was present", "Nurse Ferris", "Otto Quill (father)",
            "asked how hard it would be",
            // objective
            "RIGHT blood pressure: 128/82 mmHg", "RIGHT trunk side bending, active: 18 degrees, pain from 12.5 degrees",
            "slow, by inclinometer", "LEFT trunk side bending, active: 30 degrees, by inclinometer",
            "trunk side bending, active, sides compared: RIGHT 12 degrees less than LEFT: more than the error of measuring",
            "trunk flexion: watched, not measured, hurts", "LEFT slump: familiar pain, changes with a distant movement",
            "LEFT thigh thrust: could not be done: hip replaced", "RIGHT knee reflex: 2 of 4",
            "RIGHT gluteus maximus: origin, tenderness 3, restriction 2, familiar pain, ropy", "worse on the second pass",
            "joint play 1", "end feel hard", "Clear: RIGHT piriformis; LEFT piriformis; ",
            "LEFT soleus: could not examine: a dressing covers it", "meant it so",
            "Marked to be examined again: RIGHT trunk side bending",
            // assessment
            "deep buttock trouble without nerve signs", "MG30.0 (ICD-11, 2024)", "Pinned: RIGHT piriformis, as a possible source",
            "rested this week", "before 18 degrees, after 29 degrees", "better by 11 degrees, beyond the test's error (9 degrees",
            "was familiar pain, now no pain: error unknown", "tenderness, origin: before 3, after 1; less by 2: error unknown",
            "better by 3, beyond the test's error (1.77", "Not examined again: RIGHT sacroiliac joint",
            // plan
            "25 min", "lying face down", "thrust", "10:20:05: RIGHT gluteus maximus: sustained pressure on a spot",
            "1 min 30 s of planned 1 min", "lying on the left side, right side up", "rest before it, as proposed: 45 s",
            "the patient: familiar pain, eased", "breathing helped", "20 kPa below the air", "done in part",
            "Left out: LEFT soleus: gliding strokes along the fibres", "Work in all: 3 min", "ask what the treating team allows",
            "10:31:00: new numbness or weakness; tingling in the foot", "lay down, gone after a minute",
            "stand up every half hour", "Walking: Ten minutes twice a day.", "what to expect, and when to call whom",
            "bring the pictures of the hip", "ankle first", "then the loin", "a visit every 7 days; after 4 visits",
            "digging without a break", "the plan is changed: the loin takes longer",
            "due 2026-12-01; made 2026-12-02; sore, and it passed; stiff for a morning",
            // goals
            "until 2027-03-20: dig a whole bed", "date open, reached: sit for an hour",
            "Assists a trained practitioner; follow local law, scope of practice and licensed care."})
        EXPECT_TRUE(hasWords(note, words)) << words << "\nnot in\n" << note;
    EXPECT_EQ(notedAs(notedVisit(), given).parts.size(), 5U) << "subjective, objective, assessment, plan, goals";
}

// Random findings, movements, tests and steps over the whole content: each stands in the note with its side.
TEST(ClinicalNote, EachSidedThingStandsThereWithItsSide)
{
    RandomVisits random(29);
    for (int i = 0; i < casesWanted(); ++i) {
        Visit visit = random.next();
        visit.date = "2026-11-29";
        for (int k = 0; k < 3; ++k) {
            const Movement &movement =
                examination().movements[static_cast<std::size_t>(random.below(static_cast<int>(examination().movements.size())))];
            const Side side = !movement.isPaired ? Side::Midline : random.below(2) == 0 ? Side::Left : Side::Right;
            if (std::none_of(visit.measures.begin(), visit.measures.end(),
                    [&](const Measure &m) { return m.movement == movement.id && m.side == side; }))
                visit.measures.push_back(notedMeasure(movement.id, side, 10 + random.below(40), MoveMode::Passive, Device::Eye));
            const ExamTest &test =
                examination().tests[static_cast<std::size_t>(random.below(static_cast<int>(examination().tests.size())))];
            TestResult result;
            result.test = test.id;
            result.side = !test.isPaired ? Side::Midline : random.below(2) == 0 ? Side::Left : Side::Right;
            result.unable = "no room " + std::to_string(k);
            visit.tests.push_back(result);
        }
        for (const Finding &finding : visit.findings) {
            TreatmentStep step = notedStep(finding.place.structure.value, finding.place.side, "gliding", "10:00:00");
            step.note = "step of " + finding.place.structure.value;
            visit.treatment.steps.push_back(step);
        }
        const ClinicalNote note = notedAs(visit);
        const std::string all = wholeText(note);
        const auto named = [&](const Place &place) {
            return place.side == Side::Midline ? atlas().spoken(place)
                                               : namedWithSide(atlas().at(place.structure).names.english, place.side);
        };
        const auto lines = flatLines(note, false);
        const auto isThere = [&](const std::string &name, const std::string &words) {
            return std::any_of(lines.begin(), lines.end(), [&](const FlatNoteLine &line) {
                const std::string whole = line.line.label + ": " + line.line.text;
                return hasWords(whole, name) && hasWords(whole, words);
            });
        };
        for (const Finding &finding : visit.findings)
            EXPECT_TRUE(isThere(named(finding.place),
                finding.unable            ? "could not examine"
                    : finding.isClear()   ? "lear"
                    : finding.tenderness  ? "tenderness " + std::to_string(finding.tenderness->grade)
                    : finding.restriction ? "restriction " + std::to_string(finding.restriction->grade)
                                          : ""))
                << named(finding.place) << "\n"
                << all;
        for (const TreatmentStep &step : visit.treatment.steps)
            EXPECT_TRUE(isThere(named(step.place), step.note)) << step.note;
        for (const Measure &measure : visit.measures)
            EXPECT_TRUE(hasWords(all, inWords(examination(), measure))) << inWords(examination(), measure) << "\n" << all;
        for (const TestResult &result : visit.tests)
            EXPECT_TRUE(hasWords(all, inWords(examination(), result))) << inWords(examination(), result);
    }
}

TEST(ClinicalNote, TheMirroredVisitHasTheMirroredNote)
{
    Visit visit = notedVisit();
    NoteGiven given;
    NoteGiven other;
    for (auto [v, g] : {std::pair{visit, &given}, std::pair{mirrored(visit), &other}}) {
        g->earlier = {{v, false}};
        g->earlier.front().visit.date = "2026-11-22";
        const auto advice = adviser().advise(v, "v");
        ASSERT_TRUE(advice.ok());
        g->explain = advice.value().reasons.explain;
        g->unexplained = advice.value().reasons.unexplained;
        g->versions = {signedVersion(RecordAct::Signed, v, 3), signedVersion(RecordAct::Amended, v, 5)};
        g->versions.back().visit->findings.pop_back();
        g->state = NoteState::Amending;
    }
    ASSERT_FALSE(given.explain.empty());
    const ClinicalNote here = notedAs(visit, given);
    const ClinicalNote there = notedAs(mirrored(visit), other);
    EXPECT_NE(lineSet(here, unchangedText), lineSet(there, unchangedText));
    EXPECT_EQ(lineDifference(lineSet(here, withSidesSwapped), lineSet(there, unchangedText)), "");
    EXPECT_EQ(lineSet(here, withSidesSwapped).size(), lineSet(there, unchangedText).size());
    const std::string text = wholeText(here);
    EXPECT_TRUE(hasWords(text, "RIGHT gluteus maximus") && hasWords(text, "Program's order: 1"));

    RandomVisits random(31);
    for (int i = 0; i < casesWanted(); ++i) {
        const Visit one = random.next();
        EXPECT_EQ(lineDifference(lineSet(notedAs(one), withSidesSwapped), lineSet(notedAs(mirrored(one)), unchangedText)), "")
            << writeVisit(one);
    }
}

TEST(ClinicalNote, TheProgramsOrderIsMarkedAsItsOwnAndNoDiagnosis)
{
    NoteGiven given;
    const auto advice = adviser().advise(notedVisit(), "v");
    ASSERT_TRUE(advice.ok());
    given.explain = advice.value().reasons.explain;
    const ClinicalNote note = notedAs(notedVisit(), given);
    std::size_t rows = 0;
    for (const FlatNoteLine &line : flatLines(note))
        if (hasWords(line.section, "Possible sources in the program's order")) {
            EXPECT_TRUE(hasWords(line.section, "not a diagnosis"));
            EXPECT_EQ(line.line.label.rfind("Program's order: ", 0), 0U) << line.line.label;
            EXPECT_TRUE(hasWords(line.line.text, given.explain[rows].why)) << line.line.text;
            ++rows;
        }
    EXPECT_EQ(rows, sourcesInNote);
    EXPECT_TRUE(hasWords(wholeText(note), "described in textbooks") || hasWords(wholeText(note), "seen in dissection")
        || hasWords(wholeText(note), "taught in the trade"))
        << "how well a tie is known\n"
        << wholeText(note);
    EXPECT_FALSE(hasWords(wholeText(notedAs(notedVisit())), "program's order")) << "none was reckoned";
    NoteGiven nothing = given;
    nothing.unexplained = 1e9;
    EXPECT_TRUE(hasWords(wholeText(notedAs(notedVisit(), nothing)), "nothing that was found explains it"));
    Visit unfound = notedVisit();
    unfound.findings.clear();
    EXPECT_FALSE(hasWords(wholeText(notedAs(unfound, given)), "program's order")) << "there is nothing to explain";
}

// What the next visit takes over stands in its note with the day since when it stands so; only what was asked today stands bare.
TEST(ClinicalNote, NothingIsCopiedForwardUnseen)
{
    Visit before = notedVisit();
    before.date = "2026-11-22";
    before.complaints[0].asked = before.complaints[1].asked = "2026-11-22";
    before.warnings[0].asked = before.warnings[1].asked = before.consents[0].asked = "2026-11-22";
    before.closing.plan->agreed = "2026-11-22";
    before.closing.review.reset();
    PatientRecord record;
    record.name = "Ada Quill";
    record.born = "1961-03-04";
    const Visit next = nextVisit(safetyRules(), record, {{before, false}}, "2026-11-29", {});
    NoteGiven given;
    given.state = NoteState::Signed;
    given.earlier = {{before, false}};
    const auto then = flatLines(notedAs(before), false);
    int taken = 0;
    for (const FlatNoteLine &line : flatLines(notedAs(next, given), false)) {
        const bool stoodThen = std::any_of(then.begin(), then.end(),
            [&](const FlatNoteLine &other) { return other.line.label == line.line.label && other.line.text == line.line.text; });
        if (!stoodThen)
            continue;
        ++taken;
        EXPECT_FALSE(line.line.asOf.empty()) << wholeText(line);
        EXPECT_TRUE(hasWords(line.line.asOf, "2026-11-22") || hasWords(line.line.asOf, "2026-11-20")) << wholeText(line);
    }
    EXPECT_GE(taken, 15) << wholeText(notedAs(next, given));
    const std::string note = wholeText(notedAs(next, given));
    EXPECT_TRUE(hasWords(note, "In the patient's words: buttock aches after digging [as on 2026-11-22, not asked again]"))
        << note;
    EXPECT_TRUE(hasWords(note, "Caution: thin skin on the forearms [as on 2026-11-22, not asked again]")) << note;
    EXPECT_TRUE(hasWords(note,
        "REFUSED on 2026-11-20; a chaperone was present; chaperone: Nurse Ferris; guardian: Otto Quill "
        "(father) [as on 2026-11-20, not asked again]"))
        << note;

    Visit asked = next;
    asked.complaints = confirmedOn("2026-11-29", asked.complaints);
    EXPECT_TRUE(hasWords(wholeText(notedAs(asked, given)), "In the patient's words: buttock aches after digging\n"));
    Visit never = next;
    never.complaints[0].asked.clear();
    EXPECT_TRUE(hasWords(wholeText(notedAs(never, given)), "buttock aches after digging [not confirmed with the patient]"));
    Visit copied = asked;
    copied.closing.impression = before.closing.impression;
    EXPECT_TRUE(hasWords(
        wholeText(notedAs(copied, given)), "deep buttock trouble without nerve signs [the same words as on 2026-11-22]"));
    NoteGiven wrong = given;
    wrong.earlier.front().isInError = true;
    EXPECT_FALSE(hasWords(wholeText(notedAs(copied, wrong)), "the same words")) << "a visit in error is none that was before";
}

// Every answer that was given alone, yes or no: a copy for others is the same as if it had never been asked.
TEST(ClinicalNote, ACopyForOthersKeepsToItselfWhatWasAskedAlone)
{
    NoteGiven others;
    others.readers = NoteFor::Others;
    int alone = 0;
    for (const WarningSign &sign : safetyRules().signs().signs) {
        if (!sign.alone)
            continue;
        ++alone;
        for (const bool isThere : {true, false}) {
            Visit visit = notedVisit();
            const std::string without = wholeText(notedAs(visit, others));
            WarningAnswer answer{sign.id, isThere, "2026-11-29", {}, {}, {}, {}};
            if (isThere) {
                answer.decided = Decision::Referred;
                answer.why = "whispered reason";
                answer.told = "whispered name";
                visit.treatment.steps.front().minded.push_back(sign.id);
            }
            visit.warnings.push_back(answer);
            for (const NoteState state : {NoteState::Draft, NoteState::Signed}) {
                others.state = state;
                Visit plain = notedVisit();
                EXPECT_EQ(wholeText(notedAs(visit, others)), wholeText(notedAs(plain, others))) << sign.id;
            }
            const std::string own = wholeText(notedAs(visit));
            EXPECT_TRUE(hasWords(own, sign.name)) << "the practitioner's own record has it";
            EXPECT_EQ(hasWords(own, "whispered reason"), isThere);
            // Nor does an amendment tell.
            NoteGiven amended = others;
            amended.versions = {signedVersion(RecordAct::Signed, notedVisit(), 1), signedVersion(RecordAct::Amended, visit, 2)};
            EXPECT_FALSE(hasWords(wholeText(notedAs(visit, amended)), sign.name));
            EXPECT_FALSE(hasWords(wholeText(notedAs(visit, amended)), "whispered"));
            others.state = NoteState::Draft;
        }
    }
    EXPECT_GE(alone, 3);
    EXPECT_TRUE(hasWords(wholeText(notedAs(notedVisit(), others)), "are left out of every copy"));
}

TEST(ClinicalNote, IsDatedTwiceAndShowsWhatAmendmentsChanged)
{
    const Visit first = notedVisit();
    Visit second = first;
    second.findings[0].tenderness = Tenderness{1};
    second.findings.push_back(tender("soleus", Side::Right, 2));
    second.cautions.clear();
    second.closing.call.reset();
    NoteGiven given;
    given.state = NoteState::Signed;
    NoteVersion late = signedVersion(RecordAct::Late, first, 12);
    late.reason = "the power was off";
    NoteVersion amended = signedVersion(RecordAct::Amended, second, 15);
    amended.author = "Juno Marsh";
    amended.careAt.clear();
    amended.reason = "a finding was forgotten";
    given.versions = {late, amended};
    const ClinicalNote note = notedAs(second, given);
    ASSERT_EQ(note.signatures.sections.size(), 2U);
    EXPECT_EQ(note.signatures.sections[0].title, "Signed as a late entry");
    EXPECT_EQ(note.signatures.sections[1].title, "Amendment 1");
    const std::string all = wholeText(note);
    for (const std::string &words : {std::string("Care given: 2026-11-29"), "Entered: " + momentInRecord(late.enteredAt),
             "Entered: " + momentInRecord(amended.enteredAt), std::string("Reason: the power was off"),
             std::string("By: Juno Marsh"), std::string("Reason: a finding was forgotten"),
             std::string("Care given: 2026-11-29, 10:02:11 to 10:14:50, steps begun 10:20:05 to 10:24:40"),
             std::string("Entry in the history: 15"),
             std::string("RIGHT gluteus maximus: was 'origin, tenderness 3, restriction 2"),
             std::string("now 'origin, tenderness 1, restriction 2"), std::string("RIGHT soleus: 'tenderness 2' is added"),
             std::string("Caution: 'thin skin on the forearms' is gone")})
        EXPECT_TRUE(hasWords(all, words)) << words << "\nnot in\n" << all;
    EXPECT_EQ(note.state, "");

    given.state = NoteState::Amending;
    Visit third = second;
    third.practitioner = "I. Brook-Marsh";
    const ClinicalNote writing = notedAs(third, given);
    EXPECT_EQ(writing.state, "AMENDMENT BEING WRITTEN: NOT SIGNED");
    EXPECT_TRUE(hasWords(wholeText(writing), "Practitioner: was 'Ines Brook', now 'I. Brook-Marsh'")) << wholeText(writing);
    given.state = NoteState::InError;
    NoteVersion wrong = signedVersion(RecordAct::InError, second, 20);
    wrong.reason = "another person";
    given.versions.push_back(wrong);
    const ClinicalNote error = notedAs(second, given);
    EXPECT_EQ(error.state, "ENTERED IN ERROR");
    EXPECT_TRUE(hasWords(wholeText(error), "Marked as entered in error") && hasWords(wholeText(error), "Reason: another person"));
    EXPECT_EQ(notedAs(first).state, "DRAFT: NOT SIGNED");
}

TEST(ClinicalNote, FindsEveryFieldThatAnAmendmentChanged)
{
    using Change = std::function<void(Visit &)>;
    const std::vector<std::pair<const char *, Change>> changes{{"born 1961", [](Visit &v) { v.patient->born = "1961-03-05"; }},
        {"date", [](Visit &v) { v.date = "2026-11-28"; }}, {"practitioner", [](Visit &v) { v.practitioner = "x"; }},
        {"complaint", [](Visit &v) { v.complaints[0].now = PainScore{5}; }},
        {"asked", [](Visit &v) { v.complaints[0].asked = "2026-11-28"; }}, {"second", [](Visit &v) { v.complaints.pop_back(); }},
        {"where", [](Visit &v) { v.complaintAt[0].side = Side::Left; }}, {"pain", [](Visit &v) { v.pain[0].confirmed = false; }},
        {"stroke", [](Visit &v) { v.pain[0].strokes[0].points[0].y += 0.25; }},
        {"cautions", [](Visit &v) { v.cautions.clear(); }}, {"injured", [](Visit &v) { v.injured = false; }},
        {"conditions", [](Visit &v) { v.conditions.pop_back(); }}, {"warnings", [](Visit &v) { v.warnings[0].why = "x"; }},
        {"consents", [](Visit &v) { v.consents[0].remark.clear(); }},
        {"since", [](Visit &v) { v.sinceLast->course = Course::Worse; }}, {"promised", [](Visit &v) { v.promised.clear(); }},
        {"focus", [](Visit &v) { v.focus.clear(); }}, {"findings", [](Visit &v) { v.findings[1].endFeel = EndFeel::Soft; }},
        {"order", [](Visit &v) { std::swap(v.findings[0], v.findings[1]); }},
        {"measures", [](Visit &v) { v.measures[0].device = Device::Eye; }}, {"tests", [](Visit &v) { v.tests[3].grade = 3; }},
        {"retest", [](Visit &v) { v.retest.reset(); }},
        {"timeline", [](Visit &v) { v.timeline.insert(v.timeline.begin() + 1, v.timeline[0]); }},
        {"judgements", [](Visit &v) { v.judgements.pop_back(); }},
        {"plan",
            [](Visit &v) {
                v.plan.pinned = {{{"soleus"}, Side::Left}};
            }},
        {"minutes", [](Visit &v) { v.plan.minutes = 30; }}, {"steps", [](Visit &v) { v.treatment.steps[0].seconds = 91; }},
        {"minded", [](Visit &v) { v.treatment.steps[0].minded.clear(); }},
        {"events", [](Visit &v) { v.treatment.events[0].answer = "x"; }},
        {"retested", [](Visit &v) { v.retested.pain = PainScore{4}; }}, {"advice", [](Visit &v) { v.closing.advice.pop_back(); }},
        {"told", [](Visit &v) { v.closing.isTold = false; }}, {"next", [](Visit &v) { v.closing.focus.pop_back(); }},
        {"impression", [](Visit &v) { v.closing.impression.code = "x"; }},
        {"goals", [](Visit &v) { v.closing.goals[0].reached = true; }}, {"care", [](Visit &v) { v.closing.plan->visits = 5; }},
        {"review", [](Visit &v) { v.closing.review->why = "x"; }}, {"call", [](Visit &v) { v.closing.call->told = "x"; }},
        {"sides", [](Visit &v) { v.sidesIntended = false; }}};
    std::set<std::string> told;
    for (const auto &[name, change] : changes) {
        Visit after = notedVisit();
        change(after);
        ASSERT_NE(after, notedVisit()) << name;
        const auto said = noteChanges(noteKnowledge(), notedVisit(), after, NoteFor::Record);
        ASSERT_FALSE(said.empty()) << name;
        for (const std::string &sentence : said)
            EXPECT_FALSE(hasWords(sentence, "does not show in this note.")) << name << ": it is at least named";
        told.insert(said.front());
    }
    EXPECT_EQ(told.size(), changes.size()) << "each is told in its own words";
    EXPECT_TRUE(noteChanges(noteKnowledge(), notedVisit(), notedVisit(), NoteFor::Record).empty());
}

namespace {

std::set<std::string> longWords(const std::string &text)
{
    static const QRegularExpression word(QStringLiteral("[\\p{L}][\\p{L}']{2,}"));
    std::set<std::string> out;
    for (auto it = word.globalMatch(QString::fromStdString(text)); it.hasNext();)
        out.insert(it.next().captured().toLower().toStdString());
    return out;
}

// All texts between quotes in the sources that compose the sentences of a note.
std::string sentencesOfTheProgram()
{
    std::string out;
    const auto take = [&](const QString &path) {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            throw std::runtime_error("cannot read " + path.toStdString());
        static const QRegularExpression quoted(QStringLiteral("\"((?:[^\"\\\\\\n]|\\\\.)*)\""));
        for (auto it = quoted.globalMatch(QString::fromUtf8(file.readAll())); it.hasNext();)
            out += it.next().captured(1).toStdString() + "\n";
    };
    const QString core = QStringLiteral(RAPHE_SOURCE_DIR "/core/");
    QDirIterator notes(core + QStringLiteral("document"),
        {QStringLiteral("Note*.cpp"), QStringLiteral("ClinicalNote.cpp"), QStringLiteral("FindingWords.cpp")}, QDir::Files);
    while (notes.hasNext())
        take(notes.next());
    for (const char *file : {"anatomy/Atlas.cpp", "anatomy/Place.h", "examination/RecordWords.cpp",
             "examination/ComparingWords.cpp", "outcome/ReadingChange.cpp", "outcome/ScaleChange.h", "plan/PlanWords.cpp",
             "reasoning/Position.cpp", "safety/Warnings.cpp", "treatment/Retest.cpp", "treatment/CareProgress.cpp"})
        take(core + QString::fromUtf8(file));
    return out;
}

// What the content says of the things that the visit names.
std::string namesInVisit(const Visit &visit)
{
    std::string out;
    const auto place = [&](const Place &p) { out += atlas().spoken(p) + "\n"; };
    for (const auto *findings : {&visit.findings, &visit.retested.findings})
        for (const Finding &f : *findings) {
            place(f.place);
            for (const Place &other : f.refersTo)
                place(other);
        }
    for (const Place &p : visit.complaintAt)
        place(p);
    for (const Condition &condition : visit.conditions) {
        out += safetyRules().findCondition(condition.id)->name + "\n";
        for (const Place &p : condition.at)
            place(p);
    }
    for (const WarningAnswer &answer : visit.warnings) {
        const WarningSign *sign = safetyRules().signs().find(answer.sign);
        out += sign->name + "\n" + (answer.isThere ? sign->ask : std::string()) + "\n";
        for (const Place &p : answer.at)
            place(p);
    }
    for (const ConsentAnswer &answer : visit.consents)
        out += safetyRules().consents().find(answer.item)->title + "\n";
    for (const Judgement &judgement : visit.judgements)
        place(judgement.place);
    for (const TreatmentStep &step : visit.treatment.steps) {
        place(step.place);
        out += techniques().find(step.technique)->name + "\n";
        for (const std::string &id : step.minded)
            for (const CautionRule &rule : safetyRules().rules())
                if (rule.id == id)
                    out += rule.reason + "\n";
    }
    for (const Measure &measure : visit.measures)
        out += examination().findMovement(measure.movement)->name + "\n";
    for (const TestResult &result : visit.tests) {
        const ExamTest *test = examination().findTest(result.test);
        out += test->name + (test->vital ? " " + test->vital->unit : std::string()) + "\n";
    }
    for (const ExamSource &source : examination().sources) // of published errors
        out += source.id + " " + source.citation + "\n";
    for (const HandsAction &action : safetyRules().actions())
        out += visit.plan.refused.contains(action.id) ? action.name + "\n" : std::string();
    return out;
}

} // namespace

// Every word of the note stands in the visit, is the name of what the visit names, or is one of the program's fixed sentences.
TEST(ClinicalNote, HasNoWordThatTheRecordHasNot)
{
    const Visit visit = notedVisit();
    std::set<std::string> known =
        longWords(QString::fromStdString(writeVisit(visit)).replace(QStringLiteral("\\n"), QStringLiteral(" ")).toStdString());
    for (const std::string &more : {namesInVisit(visit), sentencesOfTheProgram()})
        known.merge(longWords(more));
    for (const PaintedPlace &painted : paintedPlaces(visit.pain.front(), body().of(View::Back), atlas()))
        known.merge(longWords(atlas().spoken(painted.place)));
    NoteGiven given;
    given.state = NoteState::Signed;
    int looked = 0;
    for (const FlatNoteLine &line : flatLines(notedAs(visit, given), false)) {
        if (hasWords(line.section, "Not examined, of what stands on"))
            continue;
        for (const std::string &word : longWords(line.line.label + " " + line.line.text)) {
            EXPECT_TRUE(known.contains(word)) << word << "\nin " << wholeText(line);
            ++looked;
        }
    }
    EXPECT_GT(looked, 400);
}

// A note of a visit in which nothing is written down says nothing.
TEST(ClinicalNote, SaysNothingOfAnEmptyVisit)
{
    NoteGiven given;
    given.state = NoteState::Signed;
    const ClinicalNote note = notedAs(Visit(), given);
    EXPECT_TRUE(note.heads.empty());
    EXPECT_TRUE(note.parts.empty()) << wholeText(note);
}

TEST(ClinicalNote, NamesWhatOfTheSheetsWasNotExamined)
{
    const auto notExamined = [](const Visit &visit) {
        std::string out;
        for (const FlatNoteLine &line : flatLines(notedAs(visit)))
            if (hasWords(line.section, "Not examined, of what stands on"))
                out += "; " + line.line.text + ";";
        return out;
    };
    Visit visit = notedVisit();
    const std::string missing = notExamined(visit);
    EXPECT_FALSE(missing.empty());
    EXPECT_FALSE(hasWords(missing, "trunk side bending;")) << "both sides were";
    EXPECT_TRUE(hasWords(missing, "; RIGHT thigh thrust;")) << missing;
    EXPECT_FALSE(hasWords(missing, "LEFT thigh thrust")) << "that it could not be done is said: " << missing;
    visit.measures.erase(visit.measures.begin());
    EXPECT_TRUE(hasWords(notExamined(visit), "; RIGHT trunk side bending;")) << notExamined(visit);
    visit.measures.clear();
    EXPECT_TRUE(hasWords(notExamined(visit), "; none of the ")) << notExamined(visit);
    visit.complaintAt.clear();
    EXPECT_EQ(notExamined(visit), "") << "no sheet is called for";
}

TEST(ClinicalNote, TellsOfLettersToWhomHowUrgentAndWhatIsAsked)
{
    Visit visit = notedVisit();
    Letter letter;
    letter.written = "2026-11-29";
    letter.to = {"Dr Marsh", "general practice", {"1 High Street", "Lowbridge"}};
    letter.title = "Letter about the hip";
    letter.urgency = Urgency::WithinDays;
    letter.reason = {"the groin aches at night", "composed before"};
    letter.question = {"a picture of the hip?", {}};
    letter.parts = {{"Findings of the hip", {"stiff inwards", {}}}};
    visit.letters = {letter};
    const std::string note = wholeText(notedAs(visit));
    for (const char *words : {"Letters / Letter about the hip | Written: 2026-11-29",
             "Addressed: to Dr Marsh, general practice, 1 High Street, Lowbridge", "the groin aches at night",
             "a picture of the hip?", "Handed over: not yet"})
        EXPECT_TRUE(hasWords(note, words)) << words << "\nnot in\n" << note;
    EXPECT_TRUE(hasWords(note, "Urgency: ")) << note;
    EXPECT_FALSE(hasWords(note, "composed before")) << "what was edited away is not in the letter";
    EXPECT_FALSE(hasWords(note, "stiff inwards")) << "the letter itself is a document of its own";
    NoteGiven inFull;
    inFull.lettersInFull = true;
    EXPECT_TRUE(hasWords(wholeText(notedAs(visit, inFull)), "Findings of the hip: stiff inwards"));
    Visit sent = visit;
    sent.letters[0].sent = "2026-11-30";
    const auto changes = noteChanges(noteKnowledge(), visit, sent, NoteFor::Record);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_TRUE(hasWords(changes[0], "Handed over: was 'not yet', now '2026-11-30'")) << changes[0];
}

TEST(NoteText, KeepsWithinEightyColumnsAndLosesNothing)
{
    Visit visit = notedVisit();
    visit.complaints[0].text = std::string(300, 'x') + " und Schlo\xC3\x9F " + std::string(81, 'y');
    visit.closing.impression.text = "two\nlines \xF0\x9F\x8C\xB1 end";
    NoteGiven given;
    given.state = NoteState::InError;
    const ClinicalNote note = notedAs(visit, given);
    const QString text = QString::fromStdString(noteText(note));
    const QStringList lines = text.split(QLatin1Char('\n'));
    for (const QString &line : lines) {
        EXPECT_LE(line.toUcs4().size(), noteTextWidth) << line.toStdString();
        EXPECT_FALSE(line.endsWith(QLatin1Char(' '))) << line.toStdString();
    }
    const auto bare = [](QString words) { return words.remove(QRegularExpression(QStringLiteral("\\s"))); };
    QString labels; // the two columns, each read down by itself
    QString texts;
    for (const QString &line : lines) {
        labels += line.left(26);
        texts += line.mid(26);
    }
    const QString across = bare(text);
    EXPECT_TRUE(bare(texts).contains(QString(300, QLatin1Char('x'))));
    for (const FlatNoteLine &line : flatLines(note)) {
        const QString words = bare(QString::fromStdString(line.line.text));
        EXPECT_TRUE(bare(texts).contains(words) || across.contains(words)) << wholeText(line);
        EXPECT_TRUE(bare(labels).contains(bare(QString::fromStdString(line.line.label)))) << wholeText(line);
    }
    EXPECT_GE(text.count(QStringLiteral("*** ENTERED IN ERROR ***")), static_cast<int>(note.parts.size()) + 2);
    EXPECT_TRUE(text.contains(QString::fromUtf8("two\n"))) << "a line break stays one";
}

TEST(NoteText, ShowsNoCharacterThatATerminalWouldObey)
{
    Visit visit = notedVisit();
    visit.complaints[0].text = "\x1b[2Jgone \xE2\x80\xAE turned\tback";
    const std::string text = noteText(notedAs(visit));
    EXPECT_FALSE(hasWords(text, "\x1b"));
    EXPECT_FALSE(hasWords(text, "\xE2\x80\xAE"));
    EXPECT_TRUE(hasWords(text, "\xEF\xBF\xBD[2Jgone \xEF\xBF\xBD turned back")) << text;
}

} // namespace raphe::test
