// What a visit still lacks: a visit that has all of it lacks nothing, and each thing that is taken out is missed, once, with
// where to go for it.
#include "core/document/Completeness.h"
#include "core/safety/Consents.h"
#include "core/safety/Warnings.h"
#include "tests/core/document/NoteTesting.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace raphe::test {

namespace {

using Kind = MissingItem::Kind;

// Everything asked, examined, done and closed.
Visit completeVisit()
{
    Visit visit = notedVisit();
    visit.complaints[1].asked = "2026-11-29";
    visit.warnings.clear();
    for (const WarningSign *sign :
        dueSigns(safetyRules().signs(), askedOf(safetyRules().signs(), regions(), visit), {}, visit.date))
        visit.warnings.push_back({sign->id, false, visit.date, {}, {}, {}, {}});
    visit.consents.clear();
    for (const ConsentItem &item : safetyRules().consents().items) {
        ConsentAnswer answer{item.id, ConsentState::Given, visit.date, {}, {}, {}, {}};
        if (item.chaperone)
            answer.chaperone = Chaperone::Declined;
        if (!item.covers.guardian)
            visit.consents.push_back(answer);
    }
    Finding joint = visit.findings[1];
    joint.restriction = Restriction{1};
    visit.retested.findings.push_back(joint);
    return visit;
}

std::vector<MissingItem> missingOf(const Visit &visit, const std::vector<EarlierVisit> &earlier = {})
{
    return completenessOf(noteKnowledge(), visit, earlier);
}

std::string missingLines(const std::vector<MissingItem> &items)
{
    std::string out;
    for (const MissingItem &item : items)
        out += stationInWords(item.where) + ": " + item.text + "\n";
    return out;
}

} // namespace

TEST(Completeness, ACompleteVisitLacksNothing)
{
    EXPECT_EQ(missingLines(missingOf(completeVisit())), "");
    EXPECT_EQ(missingLines(missingOf(mirrored(completeVisit()))), "");
}

TEST(Completeness, EachThingThatIsTakenOutIsMissedThere)
{
    struct Case {
        Kind kind;
        VisitStation where;
        std::function<void(Visit &)> takeOut;
        std::string words;
    };
    const auto unsay = [](Visit &v, const char *sign) {
        const auto before = v.warnings.size();
        std::erase_if(v.warnings, [&](const WarningAnswer &answer) { return answer.sign == sign; });
        ASSERT_LT(v.warnings.size(), before) << sign << " is asked for";
    };
    const auto refuse = [](Visit &v, const char *item) {
        std::erase_if(v.consents, [&](const ConsentAnswer &answer) { return answer.item == item; });
    };
    const std::vector<Case> cases{{Kind::Patient, VisitStation::Patient, [](Visit &v) { v.patient->name = " "; }, "name"},
        {Kind::Practitioner, VisitStation::Patient, [](Visit &v) { v.practitioner.clear(); }, "practitioner"},
        {Kind::Complaint, VisitStation::Intake, [](Visit &v) { v.complaints[0].text.clear(); }, "What brings"},
        {Kind::Pain, VisitStation::Intake, [](Visit &v) { v.complaints[0].now.reset(); }, "0 to 10"},
        {Kind::NotConfirmed, VisitStation::Intake, [](Visit &v) { v.complaints[1].asked = "2026-11-22"; }, "shoulder will not"},
        {Kind::WarningSign, VisitStation::WarningSigns, [&](Visit &v) { unsay(v, "chest-pain-now"); }, "chest pain"},
        {Kind::Consent, VisitStation::Consent, [&](Visit &v) { refuse(v, "examination-by-touch"); }, "Looking and feeling"},
        {Kind::Consent, VisitStation::Consent, [&](Visit &v) { refuse(v, "cupping"); }, "Work with cups"},
        {Kind::Consent, VisitStation::Consent, [&](Visit &v) { refuse(v, "region-buttock-tailbone"); }, "buttock"},
        {Kind::Side, VisitStation::Examination, [](Visit &v) { v.measures[0].side = Side::Midline; }, "trunk side bending"},
        {Kind::Side, VisitStation::Examination, [](Visit &v) { v.tests[1].side = Side::Midline; }, "thigh thrust"},
        {Kind::Side, VisitStation::Examination, [](Visit &v) { v.findings[2].place.side = Side::Midline; }, "piriformis"},
        {Kind::Side, VisitStation::Examination, [](Visit &v) { v.treatment.steps[2].place.side = Side::Midline; }, "soleus"},
        {Kind::StepDone, VisitStation::Treatment, [](Visit &v) { v.treatment.steps[0].done.reset(); }, "right gluteus maximus"},
        {Kind::AdverseAnswer, VisitStation::Treatment, [](Visit &v) { v.treatment.events[0].answer.clear(); }, "10:31:00"},
        {Kind::Retest, VisitStation::Retest, [](Visit &v) { v.retested.findings.pop_back(); }, "sacroiliac joint"},
        {Kind::Impression, VisitStation::Close, [](Visit &v) { v.closing.impression.text.clear(); }, "impression"},
        {Kind::Plan, VisitStation::Close,
            [](Visit &v) {
                v.closing.plan.reset();
                v.closing.review.reset();
            },
            "plan of care"},
        {Kind::Told, VisitStation::Close, [](Visit &v) { v.closing.isTold = false; }, "what to expect"}};
    for (const Case &one : cases) {
        Visit visit = completeVisit();
        one.takeOut(visit);
        const auto missing = missingOf(visit);
        const auto it =
            std::find_if(missing.begin(), missing.end(), [&](const MissingItem &item) { return item.kind == one.kind; });
        ASSERT_NE(it, missing.end()) << one.words << "\n" << missingLines(missing);
        EXPECT_EQ(missing.size(), 1U) << one.words << "\n" << missingLines(missing);
        EXPECT_EQ(it->where, one.where) << one.words;
        EXPECT_NE(it->text.find(one.words), std::string::npos) << it->text;
    }
}

TEST(Completeness, WhatIsNotNeededIsNotMissed)
{
    Visit visit = completeVisit();
    std::erase_if(visit.consents, [](const ConsentAnswer &answer) {
        return answer.item == "thrust-neck" || answer.item == "stretching" || answer.item == "pictures";
    });
    EXPECT_EQ(missingLines(missingOf(visit)), "") << "nothing of it was done";
    visit.treatment.steps[0].technique = "stretch-breath";
    EXPECT_NE(missingLines(missingOf(visit)).find("stretch"), std::string::npos) << "now it was";
    visit = completeVisit();
    visit.treatment = {};
    visit.retested = {};
    visit.closing.isTold = false;
    EXPECT_EQ(missingLines(missingOf(visit)), "") << "without work there is nothing to retest and nothing to expect";
}

TEST(Completeness, AStopAsksForTheDecisionAndForNothingElse)
{
    Visit visit = completeVisit();
    visit.consents.clear();
    visit.findings.clear();
    visit.measures.clear();
    visit.tests.clear();
    visit.retest.reset();
    visit.treatment = {};
    visit.retested = {};
    visit.closing = {};
    for (WarningAnswer &answer : visit.warnings)
        if (answer.sign == "chest-pain-now")
            answer.isThere = true;
    const auto open = missingOf(visit);
    ASSERT_EQ(open.size(), 1U) << missingLines(open);
    EXPECT_EQ(open[0].kind, Kind::Decision);
    for (WarningAnswer &answer : visit.warnings)
        if (answer.isThere)
            answer.decided = Decision::EmergencyServices;
    EXPECT_EQ(missingLines(missingOf(visit)), "");
}

TEST(Completeness, AnEmptyVisitLacksAllAndAsksForNoRetest)
{
    const auto missing = missingOf(Visit());
    for (const Kind kind : {Kind::Patient, Kind::Date, Kind::Practitioner, Kind::Complaint, Kind::WhereItHurts, Kind::WarningSign,
             Kind::Consent, Kind::Findings, Kind::Impression, Kind::Plan})
        EXPECT_TRUE(std::any_of(missing.begin(), missing.end(), [&](const MissingItem &item) { return item.kind == kind; }))
            << static_cast<int>(kind);
    for (const Kind kind : {Kind::Retest, Kind::StepDone, Kind::Told, Kind::Side, Kind::Decision, Kind::Review})
        EXPECT_TRUE(std::none_of(missing.begin(), missing.end(), [&](const MissingItem &item) { return item.kind == kind; }))
            << static_cast<int>(kind);
}

TEST(Completeness, CareThatIsOverAndChangedNothingIsToBeReviewed)
{
    Visit visit = completeVisit();
    visit.closing.plan->agreed = "2026-11-01";
    visit.closing.plan->visits = 1;
    Visit then = visit;
    then.date = "2026-11-01";
    visit.closing.review.reset();
    const auto missing = missingOf(visit, {{then, false}});
    ASSERT_EQ(missing.size(), 1U) << missingLines(missing);
    EXPECT_EQ(missing[0].kind, Kind::Review);
    EXPECT_EQ(missing[0].where, VisitStation::Close);
}

// A draft shows it; a signed note and a copy for others do not.
TEST(Completeness, StandsInTheNoteOfADraft)
{
    Visit visit = completeVisit();
    visit.closing.impression.text.clear();
    const auto shows = [&](NoteState state, NoteFor readers) {
        NoteGiven given;
        given.state = state;
        given.readers = readers;
        return wholeText(notedAs(visit, given)).find("impression is missing") != std::string::npos;
    };
    EXPECT_TRUE(shows(NoteState::Draft, NoteFor::Record));
    EXPECT_TRUE(shows(NoteState::Amending, NoteFor::Record));
    EXPECT_FALSE(shows(NoteState::Signed, NoteFor::Record));
    EXPECT_FALSE(shows(NoteState::Draft, NoteFor::Others));
}

} // namespace raphe::test
