// How a visit is closed, what it leaves for the next one, and the pain of the retest, in the visit file: nothing is lost, and
// what cannot be is refused where it stands.
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <set>

namespace raphe::test {

namespace {

using nlohmann::json;

const json gone(json::value_t::discarded); // of a field that is taken away

Visit wholeClosing()
{
    Visit visit;
    visit.focus = {"stairs", "the left hip"};
    visit.retested.pain = PainScore{2};
    Closing &closing = visit.closing;
    closing.advice = {{"walk-a-little", "Walk a little", "Ten minutes, twice a day."}, {{}, {}, "A warm bath in the evening."},
        {{}, {}, "A warm bath in the evening."}};
    closing.isTold = true;
    closing.focus = {"the right hip", "größer\n\"quoted\""};
    closing.impression = {"joints of the low back", "B-12", "list of the house, 2nd edition"};
    closing.goals = {{"the stairs without the rail", "2031-05-01", true}, {"to sleep", {}, false}};
    closing.plan = CarePlan{"2031-03-01", 6, 10, "half the pain on the stairs"};
    closing.review = CareReview{CareDecision::ChangePlan, "as before"};
    closing.call = LaterCall{"2031-03-03", "2031-03-04", Reaction::Sore, "for a day"};
    return visit;
}

json closingFile()
{
    return json::parse(writeVisit(wholeClosing()));
}

Result<Visit> readClosed(const json &closing)
{
    const json file{{"format", "raphe-visit"}, {"version", 2}, {"findings", json::array()}, {"closing", closing}};
    return readVisit(file.dump(), "v.json", atlas());
}

struct SpoiltClosing {
    const char *pointer;
    json value;
    ErrorCode code;
    const char *place;
    const char *detail;
};

// The whole closing with one value changed or taken away.
void expectSpoilt(const SpoiltClosing &c)
{
    SCOPED_TRACE(std::string(c.pointer) + " " + (c.value.is_discarded() ? "taken away" : c.value.dump()));
    json file = closingFile();
    const json::json_pointer at(c.pointer);
    ASSERT_TRUE(file.contains(at.parent_pointer()));
    if (c.value.is_discarded()) {
        ASSERT_TRUE(file.contains(at));
        file[at.parent_pointer()].erase(at.back());
    } else {
        file[at] = c.value;
    }
    const auto visit = readVisit(file.dump(), "v.json", atlas());
    ASSERT_FALSE(visit) << "was accepted";
    EXPECT_EQ(visit.error().code, c.code) << inWords(visit.error());
    EXPECT_EQ(visit.error().place, std::string("v.json#") + c.place);
    EXPECT_EQ(visit.error().detail, c.detail);
}

void expectSpoilt(const std::vector<SpoiltClosing> &cases)
{
    for (const SpoiltClosing &c : cases)
        expectSpoilt(c);
}

} // namespace

TEST(ClosingJson, NothingIsLost)
{
    const std::string written = writeVisit(wholeClosing());
    const auto again = readVisit(written, "v.json", atlas());
    ASSERT_TRUE(again) << inWords(again.error());
    EXPECT_EQ(again.value(), wholeClosing());
    EXPECT_EQ(writeVisit(again.value()), written);
}

TEST(ClosingJson, EveryWordIsReadBack)
{
    Visit visit = wholeClosing();
    for (const auto &[decision, word] : careDecisionWords) {
        visit.closing.review->decision = decision;
        EXPECT_EQ(readVisit(writeVisit(visit), "v.json", atlas()).value(), visit) << word;
        EXPECT_EQ(json::parse(writeVisit(visit))["closing"]["review"]["decision"], word);
    }
    for (const auto &[reaction, word] : reactionWords) {
        visit.closing.call->reaction = reaction;
        EXPECT_EQ(readVisit(writeVisit(visit), "v.json", atlas()).value(), visit) << word;
        EXPECT_EQ(json::parse(writeVisit(visit))["closing"]["call"]["reaction"], word);
    }
}

TEST(ClosingJson, WhatWasNotSaidIsNotWritten)
{
    const json empty = json::parse(writeVisit(Visit{}));
    for (const char *field : {"closing", "focus", "retested"})
        EXPECT_FALSE(empty.contains(field)) << field;
    const json parts[] = {{{"told", true}}, {{"focus", {"hip"}}}, {{"advice", {{{"text", "rest"}}}}},
        {{"impression", {{"text", "hip"}}}}, {{"impression", {{"code", "B-12"}}}}, {{"goals", {{{"text", "to run"}}}}},
        {{"plan", {{"agreed", "2031-03-01"}, {"visits", 1}, {"every_days", 7}}}},
        {{"review", {{"decision", "refer"}, {"why", "numb"}}}}, {{"call", {{"due", "2031-03-03"}}}}};
    for (const json &part : parts) {
        const auto visit = readClosed(part);
        ASSERT_TRUE(visit) << part << inWords(visit.error());
        EXPECT_NE(visit.value(), Visit{}) << part;
        EXPECT_EQ(json::parse(writeVisit(visit.value()))["closing"], part);
    }
}

TEST(ClosingJson, WhatSaysNothingIsTheSameAsNothing)
{
    const json nothing[] = {
        json::object(), {{"told", false}}, {{"advice", json::array()}}, {{"focus", json::array()}}, {{"goals", json::array()}}};
    for (const json &closing : nothing) {
        const auto visit = readClosed(closing);
        ASSERT_TRUE(visit) << closing << inWords(visit.error());
        EXPECT_EQ(visit.value(), Visit{}) << closing;
    }
    const auto asked = readClosed({{"call", {{"due", "2031-03-03"}, {"told", ""}}}});
    ASSERT_TRUE(asked) << inWords(asked.error());
    EXPECT_EQ(asked.value().closing.call, (LaterCall{"2031-03-03", {}, {}, {}})) << "nobody has called yet";
    const auto open = readClosed({{"goals", {{{"text", "to run"}, {"reached", false}}}}});
    ASSERT_TRUE(open) << inWords(open.error());
    EXPECT_EQ(open.value().closing.goals, (std::vector<Goal>{{"to run", {}, false}}));
}

TEST(ClosingJson, AdviceHasItsTextAndEachItemIsGivenOnce)
{
    expectSpoilt({
        {"/closing", json::array(), ErrorCode::WrongType, "/closing", "object"},
        {"/closing/colour", "red", ErrorCode::UnknownField, "/closing", "colour"},
        {"/closing/advice", "walk", ErrorCode::WrongType, "/closing/advice", "array"},
        {"/closing/advice/1", "walk", ErrorCode::WrongType, "/closing/advice/1", "object"},
        {"/closing/advice/1/stop", "pain", ErrorCode::UnknownField, "/closing/advice/1", "stop"},
        {"/closing/advice/0/item", "Two Words", ErrorCode::BadId, "/closing/advice/0/item", "Two Words"},
        {"/closing/advice/0/item", "", ErrorCode::BadId, "/closing/advice/0/item", ""},
        {"/closing/advice/0/item", 3, ErrorCode::WrongType, "/closing/advice/0/item", "text"},
        {"/closing/advice/0/title", 3, ErrorCode::WrongType, "/closing/advice/0/title", "text"},
        {"/closing/advice/0/text", gone, ErrorCode::MissingField, "/closing/advice/0", "text"},
        {"/closing/advice/1/text", "", ErrorCode::MissingField, "/closing/advice/1", "text"},
        {"/closing/advice/1/text", true, ErrorCode::WrongType, "/closing/advice/1/text", "text"},
        {"/closing/advice/2/item", "walk-a-little", ErrorCode::Duplicate, "/closing/advice/2", "walk-a-little"},
        {"/closing/told", "yes", ErrorCode::WrongType, "/closing/told", "true or false"},
    });
}

TEST(ClosingJson, FocusIsLines)
{
    expectSpoilt({
        {"/closing/focus", "hip", ErrorCode::WrongType, "/closing/focus", "array"},
        {"/closing/focus/1", 3, ErrorCode::WrongType, "/closing/focus/1", "text"},
        {"/focus", "hip", ErrorCode::WrongType, "/focus", "array"},
        {"/focus/0", json::array(), ErrorCode::WrongType, "/focus/0", "text"},
    });
}

TEST(ClosingJson, AnImpressionHasWordsOrACode)
{
    const char *const at = "/closing/impression";
    const char *const needed = "text or code";
    expectSpoilt({
        {at, "hip", ErrorCode::WrongType, at, "object"},
        {at, json::object(), ErrorCode::MissingField, at, needed},
        {at, {{"system", "list of the house"}}, ErrorCode::MissingField, at, needed},
        {at, {{"text", ""}, {"code", ""}}, ErrorCode::MissingField, at, needed},
        {"/closing/impression/sure", true, ErrorCode::UnknownField, at, "sure"},
        {"/closing/impression/text", 1, ErrorCode::WrongType, "/closing/impression/text", "text"},
        {"/closing/impression/code", 12, ErrorCode::WrongType, "/closing/impression/code", "text"},
        {"/closing/impression/system", 2, ErrorCode::WrongType, "/closing/impression/system", "text"},
    });
}

TEST(ClosingJson, AGoalHasItsWords)
{
    expectSpoilt({
        {"/closing/goals", "run", ErrorCode::WrongType, "/closing/goals", "array"},
        {"/closing/goals/1", "run", ErrorCode::WrongType, "/closing/goals/1", "object"},
        {"/closing/goals/1/score", 3, ErrorCode::UnknownField, "/closing/goals/1", "score"},
        {"/closing/goals/0/text", gone, ErrorCode::MissingField, "/closing/goals/0", "text"},
        {"/closing/goals/1/text", "", ErrorCode::MissingField, "/closing/goals/1", "text"},
        {"/closing/goals/0/until", "May", ErrorCode::OutOfRange, "/closing/goals/0/until",
            "May, allowed: a real date, YYYY-MM-DD"},
        {"/closing/goals/0/until", 2031, ErrorCode::WrongType, "/closing/goals/0/until", "text"},
        {"/closing/goals/0/reached", "yes", ErrorCode::WrongType, "/closing/goals/0/reached", "true or false"},
    });
}

TEST(ClosingJson, ThePlanOfCareIsWhole)
{
    expectSpoilt({
        {"/closing/plan", 6, ErrorCode::WrongType, "/closing/plan", "object"},
        {"/closing/plan/cost", 6, ErrorCode::UnknownField, "/closing/plan", "cost"},
        {"/closing/plan/agreed", gone, ErrorCode::MissingField, "/closing/plan", "agreed"},
        {"/closing/plan/agreed", "2031-02-29", ErrorCode::OutOfRange, "/closing/plan/agreed",
            "2031-02-29, allowed: a real date, YYYY-MM-DD"},
        {"/closing/plan/agreed", "", ErrorCode::OutOfRange, "/closing/plan/agreed", ", allowed: a real date, YYYY-MM-DD"},
        {"/closing/plan/visits", gone, ErrorCode::MissingField, "/closing/plan", "visits"},
        {"/closing/plan/visits", 0, ErrorCode::OutOfRange, "/closing/plan/visits", "0, allowed: whole number 1 to 60"},
        {"/closing/plan/visits", 61, ErrorCode::OutOfRange, "/closing/plan/visits", "61, allowed: whole number 1 to 60"},
        {"/closing/plan/visits", 2.5, ErrorCode::OutOfRange, "/closing/plan/visits", "2.5, allowed: whole number 1 to 60"},
        {"/closing/plan/visits", "six", ErrorCode::WrongType, "/closing/plan/visits", "number"},
        {"/closing/plan/every_days", gone, ErrorCode::MissingField, "/closing/plan", "every_days"},
        {"/closing/plan/every_days", 0, ErrorCode::OutOfRange, "/closing/plan/every_days", "0, allowed: whole number 1 to 180"},
        {"/closing/plan/every_days", 181, ErrorCode::OutOfRange, "/closing/plan/every_days",
            "181, allowed: whole number 1 to 180"},
        {"/closing/plan/success", true, ErrorCode::WrongType, "/closing/plan/success", "text"},
    });
    for (const auto &[visits, days] : {std::pair{1, 1}, {CarePlan::mostVisits, CarePlan::mostDays}}) {
        const auto visit = readClosed({{"plan", {{"agreed", "2031-03-01"}, {"visits", visits}, {"every_days", days}}}});
        ASSERT_TRUE(visit) << inWords(visit.error());
        EXPECT_EQ(visit.value().closing.plan, (CarePlan{"2031-03-01", visits, days, {}}));
    }
}

TEST(ClosingJson, AReviewSaysWhatAndWhy)
{
    expectSpoilt({
        {"/closing/review", "refer", ErrorCode::WrongType, "/closing/review", "object"},
        {"/closing/review/whom", "B. Okoye", ErrorCode::UnknownField, "/closing/review", "whom"},
        {"/closing/review/decision", gone, ErrorCode::MissingField, "/closing/review", "decision"},
        {"/closing/review/decision", "wait", ErrorCode::UnknownWord, "/closing/review/decision", "wait"},
        {"/closing/review/why", gone, ErrorCode::MissingField, "/closing/review", "why"},
        {"/closing/review/why", "", ErrorCode::MissingField, "/closing/review", "why"},
        {"/closing/review/why", 1, ErrorCode::WrongType, "/closing/review/why", "text"},
    });
}

TEST(ClosingJson, OnlyACallThatWasMadeTellsSomething)
{
    const char *const at = "/closing/call";
    expectSpoilt({
        {at, "2031-03-03", ErrorCode::WrongType, at, "object"},
        {"/closing/call/by", "phone", ErrorCode::UnknownField, at, "by"},
        {"/closing/call/due", gone, ErrorCode::MissingField, at, "due"},
        {"/closing/call/due", "", ErrorCode::OutOfRange, "/closing/call/due", ", allowed: a real date, YYYY-MM-DD"},
        {"/closing/call/due", "2031-04-31", ErrorCode::OutOfRange, "/closing/call/due",
            "2031-04-31, allowed: a real date, YYYY-MM-DD"},
        {"/closing/call/made", "today", ErrorCode::OutOfRange, "/closing/call/made", "today, allowed: a real date, YYYY-MM-DD"},
        {"/closing/call/reaction", "worse", ErrorCode::UnknownWord, "/closing/call/reaction", "worse"},
        {"/closing/call/told", 3, ErrorCode::WrongType, "/closing/call/told", "text"},
        {"/closing/call/made", gone, ErrorCode::MissingField, at, "made"},
        {at, {{"due", "2031-03-03"}, {"reaction", "none"}}, ErrorCode::MissingField, at, "made"},
        {at, {{"due", "2031-03-03"}, {"told", "better"}}, ErrorCode::MissingField, at, "made"},
    });
    const auto unanswered = readClosed({{"call", {{"due", "2031-03-03"}, {"made", "2031-03-03"}}}});
    ASSERT_TRUE(unanswered) << inWords(unanswered.error());
    EXPECT_EQ(unanswered.value().closing.call, (LaterCall{"2031-03-03", "2031-03-03", {}, {}}));
}

TEST(ClosingJson, PainOfTheRetestStaysOnItsScale)
{
    expectSpoilt({
        {"/retested/pain", -1, ErrorCode::OutOfRange, "/retested/pain", "-1, allowed: whole number 0 to 10"},
        {"/retested/pain", 11, ErrorCode::OutOfRange, "/retested/pain", "11, allowed: whole number 0 to 10"},
        {"/retested/pain", 2.5, ErrorCode::OutOfRange, "/retested/pain", "2.5, allowed: whole number 0 to 10"},
        {"/retested/pain", "none", ErrorCode::WrongType, "/retested/pain", "number"},
    });
    for (const int pain : {0, PainScore::highest}) {
        Visit visit;
        visit.retested.pain = PainScore{pain};
        const auto again = readVisit(writeVisit(visit), "v.json", atlas());
        ASSERT_TRUE(again) << inWords(again.error());
        EXPECT_EQ(again.value(), visit) << "no pain is an answer too";
    }
}

TEST(ClosingJson, TheFirstVersionHadNoneOfIt)
{
    const json fields{{"closing", json::object()}, {"focus", json::array()}, {"retested", {{"pain", 3}}}};
    for (const auto &[field, value] : fields.items()) {
        json file{{"format", "raphe-visit"}, {"version", 2}, {"findings", json::array()}, {field, value}};
        EXPECT_TRUE(readVisit(file.dump(), "v.json", atlas())) << field;
        file["version"] = 1;
        const auto visit = readVisit(file.dump(), "v.json", atlas());
        ASSERT_FALSE(visit) << field;
        EXPECT_EQ(visit.error().code, ErrorCode::UnknownField) << inWords(visit.error());
        EXPECT_EQ(visit.error().place, "v.json#/");
        EXPECT_EQ(visit.error().detail, field);
    }
}

TEST(ClosingJson, HasNoSidesToMirror)
{
    EXPECT_EQ(mirrored(wholeClosing()), wholeClosing());
}

// The published schema and the reader say the same.
TEST(ClosingJson, TheSchemaNamesTheSameFieldsWordsAndBounds)
{
    const json schema = shipped("schema/visit.schema.json");
    const json file = closingFile();
    const auto fieldsOf = [](const json &object) {
        std::set<std::string> fields;
        for (const auto &[field, value] : object.items())
            fields.insert(field);
        return fields;
    };
    for (const auto &[whole, rule] : {std::pair{"/closing", ""}, {"/closing/advice/0", "/properties/advice/items"},
             {"/closing/impression", "/properties/impression"}, {"/closing/goals/0", "/properties/goals/items"},
             {"/closing/plan", "/properties/plan"}, {"/closing/review", "/properties/review"},
             {"/closing/call", "/properties/call"}}) {
        const json rules = schema.at("/properties/closing"_json_pointer).at(json::json_pointer(rule));
        EXPECT_EQ(fieldsOf(rules.at("properties")), fieldsOf(file.at(json::json_pointer(whole)))) << whole;
        EXPECT_EQ(rules.at("additionalProperties"), false) << whole;
    }
    const json closing = schema.at("/properties/closing/properties"_json_pointer);
    const auto expectWords = [&](const char *pointer, const auto &table) {
        std::set<std::string> words;
        for (const auto &[value, word] : table)
            words.emplace(word);
        EXPECT_EQ(closing.at(json::json_pointer(pointer)).get<std::set<std::string>>(), words) << pointer;
    };
    expectWords("/review/properties/decision/enum", careDecisionWords);
    expectWords("/call/properties/reaction/enum", reactionWords);
    EXPECT_EQ(closing.at("/plan/properties/visits/minimum"_json_pointer), 1);
    EXPECT_EQ(closing.at("/plan/properties/visits/maximum"_json_pointer), CarePlan::mostVisits);
    EXPECT_EQ(closing.at("/plan/properties/every_days/minimum"_json_pointer), 1);
    EXPECT_EQ(closing.at("/plan/properties/every_days/maximum"_json_pointer), CarePlan::mostDays);
    EXPECT_EQ(schema.at("/properties/retested/properties/pain/$ref"_json_pointer), "#/$defs/score");
}

} // namespace raphe::test
