// The letter about warning signs: it says what was decided, and nothing of what was said when nobody else could hear.
#include "core/document/ReferralLetter.h"
#include "tests/support/Complaints.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

const Place calf{StructureId{"sural-region-medial"}, Side::Right};

WarningAnswer clot()
{
    return {"leg-clot-pitting", true, "2026-11-27", {calf}, Decision::CareSameDay, "a dent stays in the right shin", "Dr Marsh"};
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
    Finding sore;
    sore.place = {StructureId{"soleus"}, Side::Right};
    sore.tenderness = Tenderness{3};
    Finding clear;
    clear.place = {StructureId{"soleus"}, Side::Left};
    clear.clear = {true, true};
    visit.findings = {sore, clear};
    visit.warnings = std::move(warnings);
    return visit;
}

std::string everythingIn(const ReferralLetter &letter)
{
    std::string out = letter.title + "\n" + letter.limits + "\n" + letter.signature + "\n";
    const auto add = [&](const std::vector<LetterLine> &lines) {
        for (const LetterLine &line : lines)
            out += line.label + ": " + line.text + "\n";
    };
    add(letter.heads);
    for (const LetterPart &part : letter.parts) {
        out += part.title + "\n";
        add(part.lines);
    }
    return out;
}

std::string letterOf(const Visit &visit)
{
    const auto letter = referralLetter(safetyRules(), atlas(), visit, "v.json");
    return letter ? everythingIn(letter.value()) : inWords(letter.error());
}

bool says(const std::string &letter, const std::string &words)
{
    return letter.find(words) != std::string::npos;
}

} // namespace

TEST(ReferralLetter, SaysWhatWasAskedFoundAndDecided)
{
    const std::string letter = letterOf(visitWith({clot(), {"shingles-rash", false, "2026-11-27", {}, {}, {}, {}}}));
    for (const char *words : {"Patient: Ada Quill", "Born: 1961-03-04", "Date of the visit: 2026-11-27", "From: Ines Brook",
             "to be seen the same day", "Asked: 2026-11-27: 'Does a thumb leave a dent in the sore leg, and not in the other?'",
             "Decided: sent to licensed medical care the same day", "Why: a dent stays in the right shin", "Told: Dr Marsh",
             "All hands-on work: in the whole limb of the right sural region", "In the patient's words: sore since the drive",
             "Pain, 0 to 10: at its worst in seven days 7", "Where it hurts: right sural region", "takes a blood thinner",
             "no oil with nuts", "right soleus: tenderness 3", "it is not a diagnosis",
             "Assists a trained practitioner; follow local law, scope of practice and licensed care."})
        EXPECT_TRUE(says(letter, words)) << words << "\nnot in\n" << letter;
    for (const char *words : {"left", "shingles", "blisters", "At worst", "clot holds back"})
        EXPECT_FALSE(says(letter, words)) << words << "\nin\n" << letter;
}

TEST(ReferralLetter, SaysThatAnEmergencyStoppedEverything)
{
    WarningAnswer chest{"chest-pain-now", true, "2026-11-27", {}, Decision::EmergencyServices, "pressure at rest", "ambulance"};
    const std::string letter = letterOf(visitWith({clot(), chest}));
    EXPECT_TRUE(says(letter, "All hands-on work at this visit.")) << letter;
    EXPECT_LT(letter.find("emergency now"), letter.find("to be seen the same day")) << "the gravest comes first\n" << letter;
    WarningAnswer open = clot();
    open.decided.reset();
    EXPECT_TRUE(says(letterOf(visitWith({open})), "Decided: not yet; the work waits"));
}

TEST(ReferralLetter, KeepsToItselfWhatWasAskedAlone)
{
    int asked = 0;
    for (const WarningSign &sign : safetyRules().signs().signs) {
        if (!sign.alone)
            continue;
        ++asked;
        const WarningAnswer secret{sign.id, true, "2026-11-26", {calf}, Decision::Referred, "whispered reason", "whispered name"};
        EXPECT_EQ(letterOf(visitWith({secret, clot()})), letterOf(visitWith({clot()}))) << sign.id;
        const auto only = referralLetter(safetyRules(), atlas(), visitWith({secret}), "v.json");
        const auto none = referralLetter(safetyRules(), atlas(), visitWith({}), "v.json");
        ASSERT_FALSE(only.ok()) << sign.id;
        ASSERT_FALSE(none.ok());
        EXPECT_EQ(only.error().code, ErrorCode::NotAllowed);
        EXPECT_EQ(inWords(only.error()), inWords(none.error())) << "nor can it be told from the refusal";
    }
    EXPECT_GE(asked, 3);
}

TEST(ReferralLetter, HasItsMirrorImage)
{
    const std::string mirror = letterOf(mirrored(visitWith({clot()})));
    EXPECT_TRUE(says(mirror, "Where it hurts: left sural region")) << mirror;
    EXPECT_TRUE(says(mirror, "left soleus: tenderness 3")) << mirror;
    EXPECT_FALSE(says(mirror, "right soleus")) << mirror;
}

} // namespace raphe::test
