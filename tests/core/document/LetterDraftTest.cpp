// The letter to another professional: urgency and reason first, what was decided about warning signs, what was found, done and
// changed; nothing of what was said when nobody else could hear.
#include "core/document/LetterDraft.h"
#include "core/document/LetterSigns.h"
#include "core/document/LetterWords.h"
#include "tests/core/examination/Exam.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Complaints.h"

#include <gtest/gtest.h>

#include <regex>

namespace raphe::test {

namespace {

const Place calf{StructureId{"sural-region-medial"}, Side::Right};

const Techniques &letterTechniques()
{
    static const Techniques read = readEmbeddedTechniques(safetyRules()).value();
    return read;
}

WarningAnswer clot()
{
    return {"leg-clot-pitting", true, "2026-11-27", {calf}, Decision::CareSameDay, "a dent stays in the right shin", "Dr Marsh"};
}

// Which some sign of the content has, asked of everybody or not.
WarningAnswer answerOf(WarningLevel level, std::optional<Decision> decided)
{
    for (const WarningSign &sign : safetyRules().signs().signs)
        if (sign.level == level && !sign.alone)
            return {sign.id, true, "2026-11-27", {}, decided, "so it is", "Dr Marsh"};
    throw std::runtime_error("no sign of that level");
}

Visit visitWith(std::vector<WarningAnswer> warnings)
{
    Visit visit;
    visit.patient = Patient{"Ada Quill", "1961-03-04"};
    visit.date = "2026-11-27";
    visit.practitioner = "Ines Brook";
    visit.complaints = {complaintOf("sore since the drive")};
    visit.complaints.front().worst = PainScore{7};
    visit.complaintAt = {calf};
    visit.cautions = {"no oil with nuts"};
    visit.conditions = {{"anticoagulant", {}}};
    visit.findings = {tender("soleus", Side::Right, 3), clearOf({StructureId{"soleus"}, Side::Left})};
    visit.warnings = std::move(warnings);
    return visit;
}

Letter draftOf(const Visit &visit, const Reference &reference = {})
{
    return letterDraft({safetyRules(), regions(), examination(), letterTechniques(), reference}, visit, "2026-11-27");
}

// As it is read, from the top.
std::string everythingIn(const Letter &letter)
{
    std::string out = letter.title + "\n" + urgencyInWords(letter.urgency) + ": " + urgencyAsks(letter.urgency, letter.written)
        + "\n" + letter.reason.text + "\n" + letter.question.text + "\n";
    for (const LetterPart &part : letter.parts)
        out += "[" + part.title + "]\n" + part.words.text + "\n";
    return out + letterLimits() + "\n";
}

std::string letterOf(const Visit &visit)
{
    return everythingIn(draftOf(visit));
}

bool letterSays(const std::string &letter, const std::string &words)
{
    return letter.find(words) != std::string::npos;
}

std::string letterPart(const Letter &letter, const std::string &title)
{
    for (const LetterPart &part : letter.parts)
        if (part.title == title)
            return part.words.text;
    return {};
}

void expectLetterOrder(const std::string &letter, const std::vector<std::string> &words)
{
    std::size_t from = 0;
    for (const std::string &word : words) {
        const std::size_t at = letter.find(word, from);
        ASSERT_NE(at, std::string::npos) << word << "\nnot there, or too early in\n" << letter;
        from = at;
    }
}

// Everything that can be said.
Visit visitWithAll()
{
    Visit visit = visitWith({clot()});
    Complaint &first = visit.complaints.front();
    first.since = "the drive";
    first.now = PainScore{6};
    first.aggravates = "stairs";
    first.eases = "a cushion";
    first.irritability = Irritability::High;
    first.activities = {{"climb stairs", 4}};
    first.goal = "to drive again";
    visit.injured = true;
    visit.findings.push_back(stiff("hip-joint", Side::Left, 2));
    Finding unable;
    unable.place = {StructureId{"piriformis"}, Side::Right};
    unable.unable = "dressing";
    visit.findings.push_back(unable);
    Measure right{"shoulder-flexion", Side::Right, 120, MoveMode::Active, Device::Inclinometer, {}, true, false, {}};
    Measure left{"shoulder-flexion", Side::Left, 160, MoveMode::Active, Device::Inclinometer, {}, false, false, {}};
    visit.measures = {right, left};
    TestResult positive;
    positive.test = "slump-test";
    positive.side = Side::Left;
    positive.pain = TestPain::Familiar;
    TestResult negative = positive;
    negative.side = Side::Right;
    negative.pain = TestPain::None;
    visit.tests = {negative, positive};
    TreatmentStep step;
    step.place = {StructureId{"piriformis"}, Side::Left};
    step.technique = "held-ease";
    step.began = "10:00:00";
    step.seconds = 90;
    step.done = StepDone::Done;
    visit.treatment.steps = {step};
    visit.treatment.events = {{"10:05:00", {"faint"}, "pale for a minute", "lay down"}};
    right.value = 135;
    visit.retested.measures = {right};
    Finding spot = tender("piriformis", Side::Left, 3);
    spot.spot = Spot::Insertion;
    visit.findings.push_back(spot);
    spot.tenderness = Tenderness{1};
    visit.retested.findings = {spot, stiff("piriformis", Side::Left, 2)};
    visit.findings.push_back(stiff("piriformis", Side::Left, 2));
    visit.retested.pain = PainScore{2};
    Closing &closing = visit.closing;
    closing.advice = {{"walk-a-little", "Walk a little", "Ten minutes."}};
    closing.focus = {"the left hip"};
    closing.impression = {"calf to be judged first", "B-12", "list of the house"};
    closing.goals = {{"stairs without the rail", "2027-01-01", false}};
    closing.plan = CarePlan{"2026-11-20", 6, 7, "half the pain"};
    return visit;
}

} // namespace

TEST(LetterDraft, SaysWhatWasAskedFoundAndDecided)
{
    const std::string letter = letterOf(visitWith({clot(), {"shingles-rash", false, "2026-11-27", {}, {}, {}, {}}}));
    for (const char *words : {"to be seen the same day",
             "on 2026-11-27: 'Does a thumb leave a dent in the sore leg, and not in the other?' Answer: yes.",
             "Where: right sural region", "Decided: sent to licensed medical care the same day.",
             "Why: a dent stays in the right shin.", "Told: Dr Marsh.",
             "All hands-on work: in the whole limb of the right sural region", "'sore since the drive'",
             "pain, 0 to 10: at its worst in seven days 7", "Where it hurts: right sural region", "akes a blood thinner",
             "no oil with nuts", "right soleus: tenderness 3", "it is not a diagnosis",
             "Assists a trained practitioner; follow local law, scope of practice and licensed care."})
        EXPECT_TRUE(letterSays(letter, words)) << words << "\nnot in\n" << letter;
    for (const char *words : {"shingles", "blisters", "At worst", "clot holds back"})
        EXPECT_FALSE(letterSays(letter, words)) << words << "\nin\n" << letter;
    EXPECT_TRUE(letterSays(letter, "Clear: left soleus")) << "the other side of what was found\n" << letter;
}

TEST(LetterDraft, SaysThatAnEmergencyStoppedEverything)
{
    WarningAnswer chest{"chest-pain-now", true, "2026-11-27", {}, Decision::EmergencyServices, "pressure at rest", "ambulance"};
    const std::string letter = letterOf(visitWith({clot(), chest}));
    EXPECT_TRUE(letterSays(letter, "All hands-on work at this visit.")) << letter;
    EXPECT_LT(letter.find("; emergency now"), letter.find("; to be seen the same day")) << "the gravest comes first\n" << letter;
    WarningAnswer open = clot();
    open.decided.reset();
    EXPECT_TRUE(letterSays(letterOf(visitWith({open})), "Decided: not yet; the work waits."));
}

TEST(LetterDraft, KeepsToItselfWhatWasAskedAlone)
{
    int asked = 0;
    for (const WarningSign &sign : safetyRules().signs().signs) {
        if (!sign.alone)
            continue;
        ++asked;
        const WarningAnswer secret{sign.id, true, "2026-11-26", {calf}, Decision::Referred, "whispered reason", "whispered name"};
        EXPECT_EQ(draftOf(visitWith({secret, clot()})), draftOf(visitWith({clot()}))) << sign.id;
        EXPECT_EQ(draftOf(visitWith({secret})), draftOf(visitWith({}))) << sign.id << ": nor can it be told from the urgency";
        EXPECT_EQ(suggestedUrgency(safetyRules().signs(), visitWith({secret})), Urgency::Information) << sign.id;
    }
    EXPECT_GE(asked, 3);
    WarningAnswer moved = clot();
    moved.decided.reset();
    moved.isMoved = true;
    EXPECT_EQ(draftOf(visitWith({moved})), draftOf(visitWith({}))) << "it was told of somebody else, perhaps";
}

TEST(LetterDraft, ComesInTheOrderInWhichItIsRead)
{
    expectLetterOrder(letterOf(visitWithAll()),
        {"Letter about warning signs", "Same day: please see the patient on 2026-11-27",
            "Warning signs at this visit: ", "Please judge the signs below.", "[Warning signs]", "[Stopped because of this]",
            "[Complaint]", "'sore since the drive'", "[Conditions and cautions]", "[Found by hand]", "right soleus",
            "[Movements]", "[Tests]", "[Clear, or not examined]", "[What was done]", "[What changed]", "[What is planned]",
            "[Impression of the practitioner]", "not a diagnosis"});
}

TEST(LetterDraft, SaysWhatWasDoneWhatChangedAndWhatIsPlanned)
{
    const Letter letter = draftOf(visitWithAll());
    const std::string complaint = letterPart(letter, "Complaint");
    for (const char *words : {"since: the drive", "now 6", "Worse with: stairs", "eased by: a cushion", "irritability: high",
             "hopes: to drive again", "climb stairs 4", "it began with an injury"})
        EXPECT_TRUE(letterSays(complaint, words)) << words << "\nnot in\n" << complaint;
    EXPECT_TRUE(letterSays(letterPart(letter, "Movements"),
        "right shoulder flexion, active: 120 degrees, hurts; 40 degrees less than left, beyond "
        "the error of measuring (8 degrees, Kolber 2011)"))
        << letterPart(letter, "Movements");
    EXPECT_TRUE(letterSays(letterPart(letter, "Movements"), "Others, without pain: left shoulder flexion, active: 160 degrees"))
        << letterPart(letter, "Movements");
    const std::string tests = letterPart(letter, "Tests");
    EXPECT_EQ(tests.rfind("left ", 0), 0U) << "what brings the pain comes first\n" << tests;
    EXPECT_TRUE(letterSays(tests, "familiar pain\nNegative: right ")) << tests;
    EXPECT_TRUE(letterSays(letterPart(letter, "Clear, or not examined"), "Could not be examined: right piriformis (dressing)"));
    EXPECT_TRUE(letterSays(letterPart(letter, "What was done"),
        "left piriformis: held position of ease, 1 min 30 s\nReaction at 10:05:00: faint; "
        "pale for a minute; done about it: lay down"))
        << letterPart(letter, "What was done");
    const std::string changed = letterPart(letter, "What changed");
    EXPECT_TRUE(letterSays(changed,
        "right shoulder flexion: before 120 degrees, now 135 degrees; better by 15 degrees, beyond the test's error (8 degrees, "
        "Kolber 2011)\n"))
        << changed;
    EXPECT_TRUE(letterSays(changed, "pain now, 0 to 10: before 6, now 2; better by 4")) << changed;
    EXPECT_TRUE(letterSays(changed, "Not examined again: left hip joint; right soleus")) << changed;
    EXPECT_TRUE(letterSays(changed, "left piriformis: tenderness (insertion) 3, now 1; restriction 2, now 2; error unknown\n"))
        << changed;
    const std::string planned = letterPart(letter, "What is planned");
    for (const char *words :
        {"Agreed on 2026-11-20: visits until it is asked whether it helps: 6, every 7 days", "success would be: half the pain",
            "Goal: stairs without the rail; until 2027-01-01", "Next visit: the left hip", "Advice for home: Walk a little"})
        EXPECT_TRUE(letterSays(planned, words)) << words << "\nnot in\n" << planned;
    EXPECT_EQ(letterPart(letter, "Impression of the practitioner"), "Calf to be judged first; B-12 (list of the house)");
    Visit without = visitWithAll();
    without.closing.impression = {};
    EXPECT_EQ(letterPart(draftOf(without), "Impression of the practitioner"), "") << "the program has none of its own";
}

TEST(LetterDraft, AMovementIsLostAgainstThePublishedRangeToo)
{
    Visit visit = visitWith({});
    const Movement *movement = nullptr;
    const Norm *norm = nullptr;
    for (const Movement &one : examination().movements)
        for (const Norm &published : one.norms)
            if (!norm && published.sd && published.sex && one.isPaired && !one.lessIsBetter) {
                movement = &one;
                norm = &published;
            }
    ASSERT_TRUE(norm);
    const auto linesAt = [&](double sds) {
        visit.measures = {
            {movement->id, Side::Left, norm->mean + sds * *norm->sd, norm->mode, norm->device, {}, false, false, {}}};
        return letterPart(draftOf(visit, {norm->sex, norm->from}), "Movements");
    };
    EXPECT_TRUE(letterSays(linesAt(-2.5), "below the mean")) << linesAt(-2.5);
    EXPECT_TRUE(letterSays(linesAt(-1), "Others, without pain: left ")) << linesAt(-1);
    EXPECT_FALSE(letterSays(linesAt(-1), "below the mean")) << linesAt(-1);
    EXPECT_FALSE(letterSays(letterPart(draftOf(visit), "Movements"), "below")) << "whose range is not known";
}

TEST(LetterDraft, TheUrgencyFollowsTheGravestSignThatSomebodyMustActOn)
{
    const auto suggested = [](std::vector<WarningAnswer> answers) {
        return suggestedUrgency(safetyRules().signs(), visitWith(std::move(answers)));
    };
    using L = WarningLevel;
    EXPECT_EQ(suggested({}), Urgency::Information);
    for (const auto decided :
        {std::optional<Decision>(), std::optional(Decision::EmergencyServices), std::optional(Decision::Explained)})
        EXPECT_EQ(suggested({answerOf(L::BeforeTreating, {}), answerOf(L::EmergencyNow, decided)}), Urgency::EmergencyNow)
            << "an emergency is never settled";
    EXPECT_EQ(suggested({answerOf(L::SameDay, {})}), Urgency::SameDay);
    EXPECT_EQ(
        suggested({answerOf(L::BeforeTreating, Decision::Referred), answerOf(L::SameDay, Decision::Referred)}), Urgency::SameDay);
    EXPECT_EQ(suggested({answerOf(L::BeforeTreating, Decision::Referred)}), Urgency::WithinDays);
    for (const Decision settled : {Decision::InCare, Decision::Explained}) {
        EXPECT_EQ(suggested({answerOf(L::SameDay, settled)}), Urgency::Information);
        EXPECT_EQ(suggested({answerOf(L::SameDay, settled), answerOf(L::BeforeTreating, {})}), Urgency::WithinDays);
    }
    Visit referred = visitWith({});
    referred.closing.review = CareReview{CareDecision::Refer, "no change in six visits"};
    EXPECT_EQ(suggestedUrgency(safetyRules().signs(), referred), Urgency::Routine);
    EXPECT_TRUE(letterSays(draftOf(referred).reason.text, "no change in six visits")) << draftOf(referred).reason.text;
}

TEST(LetterDraft, AsksAQuestionOnlyWhereASignIsOpen)
{
    EXPECT_FALSE(draftOf(visitWith({clot()})).question.text.empty());
    WarningAnswer settled = clot();
    settled.decided = Decision::InCare;
    EXPECT_EQ(draftOf(visitWith({settled})).question.text, "") << "what is asked is the practitioner's";
    const Letter plain = draftOf(visitWith({}));
    EXPECT_EQ(plain.question.text, "");
    EXPECT_EQ(plain.reason.text, "Report on hands-on care for: 'sore since the drive'.");
    EXPECT_EQ(plain.title, "Letter about hands-on care");
    EXPECT_TRUE(letterPart(plain, "Warning signs").empty());
}

TEST(LetterDraft, OfFortyFindingsThoseThatMatterStandFirst)
{
    Visit visit = visitWith({});
    visit.findings.clear();
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Muscle && s.paired && visit.findings.size() < 40)
            visit.findings.push_back(tender(s.id.value, Side::Left, 1));
    ASSERT_EQ(visit.findings.size(), 40U);
    visit.findings[30].tenderness = Tenderness{4};
    visit.findings[35].familiar = true;
    const std::string found = letterPart(draftOf(visit), "Found by hand");
    expectLetterOrder(found,
        {atlas().spoken(visit.findings[35].place), atlas().spoken(visit.findings[30].place),
            atlas().spoken(visit.findings[0].place), "and 32 more, in the record"});
    EXPECT_EQ(std::count(found.begin(), found.end(), '\n'), 8);
}

TEST(LetterDraft, OnlyClearPlacesThatBearOnItStandThere)
{
    Visit visit = visitWith({});
    visit.findings.push_back(clearOf({StructureId{"temporalis"}, Side::Right})); // far from everything
    visit.findings.push_back(clearOf({StructureId{"gastrocnemius-medial-head"}, Side::Right})); // under where it hurts
    Finding half = clearOf({StructureId{"soleus"}, Side::Left});
    half.clear.motion = false;
    visit.findings[1] = half;
    EXPECT_EQ(letterPart(draftOf(visit), "Clear, or not examined"),
        "Clear: left soleus (clear of tenderness); right medial head of gastrocnemius");
}

TEST(LetterDraft, HasItsMirrorImage)
{
    // Side words of each change places; what was typed has none.
    Visit visit = visitWithAll();
    visit.warnings[0].why = "a dent stays";
    visit.closing.focus = {"the hip"};
    const auto swapped = [](std::string text) {
        text = std::regex_replace(text, std::regex("\\bleft\\b"), "@");
        text = std::regex_replace(text, std::regex("\\bright\\b"), "left");
        return std::regex_replace(text, std::regex("@"), "right");
    };
    EXPECT_EQ(letterOf(mirrored(visit)), swapped(letterOf(visit)));
}

TEST(LetterDraft, EverySideIsWrittenOut)
{
    const std::string letter = letterOf(visitWithAll());
    EXPECT_FALSE(std::regex_search(letter, std::regex("\\b(RIGHT|LEFT|[RL]|rt|lt)\\b"))) << letter;
    for (const char *words :
        {"right soleus", "left hip joint", "right shoulder flexion", "left piriformis", "right sural region"})
        EXPECT_TRUE(letterSays(letter, words)) << words << "\nnot in\n" << letter;
    const std::regex named("(\\w+) (soleus|hip joint|shoulder flexion|piriformis|sural region)");
    for (auto it = std::sregex_iterator(letter.begin(), letter.end(), named); it != std::sregex_iterator(); ++it)
        EXPECT_TRUE((*it)[1] == "right" || (*it)[1] == "left") << it->str();
    Visit spine = visitWith({});
    spine.findings = {stiff("l4-l5", Side::Midline, 2)};
    EXPECT_TRUE(letterSays(letterPart(draftOf(spine), "Found by hand"), "L4/L5 segment, midline: restriction 2"))
        << letterPart(draftOf(spine), "Found by hand");
}

TEST(LetterDraft, SourcesStandWithAuthorAndYear)
{
    EXPECT_EQ(withShortSources(
                  "better by 15 degrees, beyond the test's error (8 degrees, Kolber MJ, Vega F. The reliability of a device "
                  "(two of them) in 1999 words. Physiotherapy 2011;27:176 (between examiners).); and (a) remark"),
        "better by 15 degrees, beyond the test's error (8 degrees, Kolber 2011); and (a) remark")
        << "the year of the volume";
    EXPECT_EQ(withShortSources("x (3 mm, Brook, A. A thesis on tape measures and what they do not measure, 1987)"),
        "x (3 mm, Brook 1987)");
    for (const char *same : {"less by 2: error unknown",
             "better by 4, beyond the test's error (1.77, 1,232 inpatients with spine trouble, secondhand)",
             "as much as matters to patients (2, Ostelo 2008)", "(", ")", "a) b (c", ""})
        EXPECT_EQ(withShortSources(same), same);
}

TEST(LetterDraft, AKeptLetterKeepsItsEditsWhenItIsComposedAnew)
{
    const Letter first = draftOf(visitWith({}));
    Letter kept = first;
    kept.to = {"Dr Asta Nord", {}, {}};
    kept.urgency = Urgency::Routine;
    kept.reason.text = "My own reason.";
    kept.parts.push_back({"Added by hand", {"A copy goes to the patient.", {}}});
    ASSERT_EQ(kept.parts[0].title, "Complaint");
    kept.parts[0].words.text.clear();
    EXPECT_FALSE(isOutdated(kept, first)) << "only edited";
    Visit later = visitWith({clot()});
    later.findings[0].tenderness = Tenderness{4};
    const Letter fresh = draftOf(later);
    EXPECT_TRUE(isOutdated(kept, fresh));
    const Letter out = composedAnew(kept, fresh);
    EXPECT_FALSE(isOutdated(out, fresh));
    EXPECT_EQ(out.to, kept.to);
    EXPECT_EQ(out.urgency, Urgency::Routine) << "it was chosen";
    EXPECT_EQ(out.reason, (LetterText{"My own reason.", fresh.reason.composed}));
    EXPECT_EQ(letterPart(out, "Complaint"), "") << "it stays left out";
    EXPECT_TRUE(letterSays(letterPart(out, "Found by hand"), "tenderness 4")) << "nobody had touched it";
    EXPECT_TRUE(letterSays(letterPart(out, "Warning signs"), "Dr Marsh")) << "new";
    EXPECT_EQ(letterPart(out, "Added by hand"), "A copy goes to the patient.");
    EXPECT_EQ(out.parts.front().title, "Warning signs");
    EXPECT_EQ(out.question, fresh.question);
}

} // namespace raphe::test
