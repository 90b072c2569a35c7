// Letters in the visit file, and addressees: nothing is lost, what was changed is seen beside what was composed, and what cannot
// be is refused where it stands.
#include "core/record/LetterJson.h"
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <set>

namespace raphe::test {

namespace {

using nlohmann::json;

const json takenAway(json::value_t::discarded);

Letter wholeLetter()
{
    Letter out;
    out.written = "2031-03-02";
    out.to = {"Dr Asta Nord", "general practice", {"4 Mill Lane", "Lower Harrow"}};
    out.title = "Letter about warning signs";
    out.urgency = Urgency::SameDay;
    out.reason = {"One calf is swollen.", "Warning signs at this visit: calf."};
    out.question = {"May care go on?", "May care go on?"};
    out.parts = {{"Complaint", {"größer\n\"quoted\"", "größer\n\"quoted\""}},
        {"Found by hand", {{}, "right soleus: tenderness 3"}}, {"By hand alone", {"She asked for a copy.", {}}}};
    out.sent = "2031-03-03";
    return out;
}

Visit withLetters()
{
    Visit visit;
    Letter second;
    second.written = "2031-03-04";
    second.title = "Letter about hands-on care";
    second.urgency = Urgency::Information;
    visit.letters = {wholeLetter(), second};
    return visit;
}

Result<Visit> readWith(const json &letters)
{
    const json file{{"format", "raphe-visit"}, {"version", 2}, {"findings", json::array()}, {"letters", letters}};
    return readVisit(file.dump(), "v.json", atlas());
}

Result<Addressee> readTo(const json &addressee)
{
    return guarded([&] { return readAddressee(JsonReader(addressee, "a.json")); });
}

struct SpoiltLetter {
    const char *pointer;
    json value;
    ErrorCode code;
    const char *place;
    std::string detail;
};

// Both letters with one value changed or taken away.
void expectSpoiltLetters(const std::vector<SpoiltLetter> &cases)
{
    for (const SpoiltLetter &c : cases) {
        SCOPED_TRACE(std::string(c.pointer) + " " + (c.value.is_discarded() ? "taken away" : c.value.dump().substr(0, 60)));
        json file = json::parse(writeVisit(withLetters()));
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
}

std::string tooLong(std::size_t longest)
{
    return std::to_string(longest + 1) + " characters, allowed: at most " + std::to_string(longest);
}

} // namespace

TEST(LetterJson, NothingIsLost)
{
    const std::string written = writeVisit(withLetters());
    const auto again = readVisit(written, "v.json", atlas());
    ASSERT_TRUE(again) << inWords(again.error());
    EXPECT_EQ(again.value(), withLetters());
    EXPECT_EQ(writeVisit(again.value()), written);
}

TEST(LetterJson, EveryUrgencyIsReadBack)
{
    for (const auto &[urgency, word] : urgencyWords) {
        Visit visit = withLetters();
        visit.letters[0].urgency = urgency;
        EXPECT_EQ(readVisit(writeVisit(visit), "v.json", atlas()).value(), visit) << word;
        EXPECT_EQ(json::parse(writeVisit(visit))["letters"][0]["urgency"], word);
    }
}

TEST(LetterJson, WhatNobodyEditedStandsOnce)
{
    const json letter = json::parse(writeVisit(withLetters()))["letters"][0];
    EXPECT_FALSE(letter["question"].contains("composed"));
    EXPECT_FALSE(letter["parts"][0].contains("composed"));
    EXPECT_EQ(letter["reason"]["composed"], "Warning signs at this visit: calf.");
    EXPECT_EQ(letter["parts"][1]["text"], "") << "it was left out of the letter";
    EXPECT_EQ(letter["parts"][1]["composed"], "right soleus: tenderness 3");
    EXPECT_EQ(letter["parts"][2]["composed"], "") << "nothing was composed";
    const Letter read = readVisit(writeVisit(withLetters()), "v.json", atlas()).value().letters[0];
    EXPECT_TRUE(read.reason.isEdited());
    EXPECT_FALSE(read.question.isEdited());
    EXPECT_FALSE(read.parts[0].words.isEdited());
    EXPECT_TRUE(read.parts[1].words.isEdited());
    EXPECT_TRUE(read.parts[2].words.isEdited());
}

TEST(LetterJson, WhatWasNotSaidIsNotWritten)
{
    EXPECT_FALSE(json::parse(writeVisit(Visit{})).contains("letters"));
    const json shortest{{"written", "2031-03-02"}, {"title", "A letter"}, {"urgency", "routine"}};
    const auto visit = readWith(json::array({shortest}));
    ASSERT_TRUE(visit) << inWords(visit.error());
    ASSERT_EQ(visit.value().letters.size(), 1U);
    EXPECT_TRUE(visit.value().letters[0].to.isNobody());
    EXPECT_EQ(json::parse(writeVisit(visit.value()))["letters"], json::array({shortest}));
    const auto none = readWith(json::array());
    ASSERT_TRUE(none) << inWords(none.error());
    EXPECT_EQ(none.value(), Visit{});
}

TEST(LetterJson, ALetterHasItsDayTitleAndUrgency)
{
    expectSpoiltLetters({
        {"/letters", "none", ErrorCode::WrongType, "/letters", "array"},
        {"/letters/1", "none", ErrorCode::WrongType, "/letters/1", "object"},
        {"/letters/0/colour", "red", ErrorCode::UnknownField, "/letters/0", "colour"},
        {"/letters/0/written", takenAway, ErrorCode::MissingField, "/letters/0", "written"},
        {"/letters/0/written", "", ErrorCode::OutOfRange, "/letters/0/written", ", allowed: a real date, YYYY-MM-DD"},
        {"/letters/0/sent", "2031-02-29", ErrorCode::OutOfRange, "/letters/0/sent",
            "2031-02-29, allowed: a real date, YYYY-MM-DD"},
        {"/letters/0/title", takenAway, ErrorCode::MissingField, "/letters/0", "title"},
        {"/letters/0/title", "", ErrorCode::MissingField, "/letters/0", "title"},
        {"/letters/0/title", std::string(Addressee::longestLine + 1, 'x'), ErrorCode::OutOfRange, "/letters/0/title",
            tooLong(Addressee::longestLine)},
        {"/letters/0/urgency", takenAway, ErrorCode::MissingField, "/letters/0", "urgency"},
        {"/letters/0/urgency", "soon", ErrorCode::UnknownWord, "/letters/0/urgency", "soon"},
    });
}

TEST(LetterJson, ATextSaysSomethingOrSaysWhatWasLeftOut)
{
    const std::string longest(LetterText::longest + 1, 'x');
    expectSpoiltLetters({
        {"/letters/0/reason", "swollen", ErrorCode::WrongType, "/letters/0/reason", "object"},
        {"/letters/0/reason/why", "x", ErrorCode::UnknownField, "/letters/0/reason", "why"},
        {"/letters/0/reason/text", takenAway, ErrorCode::MissingField, "/letters/0/reason", "text"},
        {"/letters/0/reason", {{"text", ""}}, ErrorCode::MissingField, "/letters/0/reason", "text"},
        {"/letters/0/question", {{"text", ""}, {"composed", ""}}, ErrorCode::MissingField, "/letters/0/question", "text"},
        {"/letters/0/question/text", longest, ErrorCode::OutOfRange, "/letters/0/question/text", tooLong(LetterText::longest)},
        {"/letters/0/reason/composed", longest, ErrorCode::OutOfRange, "/letters/0/reason/composed",
            tooLong(LetterText::longest)},
        {"/letters/0/reason/composed", 3, ErrorCode::WrongType, "/letters/0/reason/composed", "text"},
        {"/letters/0/parts", json::object(), ErrorCode::WrongType, "/letters/0/parts", "array"},
        {"/letters/0/parts/0", "x", ErrorCode::WrongType, "/letters/0/parts/0", "object"},
        {"/letters/0/parts/0/side", "left", ErrorCode::UnknownField, "/letters/0/parts/0", "side"},
        {"/letters/0/parts/0/title", "", ErrorCode::MissingField, "/letters/0/parts/0", "title"},
        {"/letters/0/parts/1/title", "Complaint", ErrorCode::Duplicate, "/letters/0/parts/1", "Complaint"},
        {"/letters/0/parts/2/text", "", ErrorCode::MissingField, "/letters/0/parts/2", "text"},
        {"/letters/0/parts/1/composed", takenAway, ErrorCode::MissingField, "/letters/0/parts/1", "text"},
    });
    const auto equal = readWith(json::array(
        {{{"written", "2031-03-02"}, {"title", "t"}, {"urgency", "routine"}, {"reason", {{"text", "a"}, {"composed", "a"}}}}}));
    ASSERT_TRUE(equal) << inWords(equal.error());
    EXPECT_FALSE(equal.value().letters[0].reason.isEdited());
}

TEST(LetterJson, AnAddresseeHasANameOrARole)
{
    expectSpoiltLetters({
        {"/letters/0/to", "Dr Nord", ErrorCode::WrongType, "/letters/0/to", "object"},
        {"/letters/0/to/phone", "1", ErrorCode::UnknownField, "/letters/0/to", "phone"},
        {"/letters/0/to", json::object(), ErrorCode::MissingField, "/letters/0/to", "name or role"},
        {"/letters/0/to", {{"name", ""}, {"lines", {"4 Mill Lane"}}}, ErrorCode::MissingField, "/letters/0/to", "name or role"},
        {"/letters/0/to/name", 3, ErrorCode::WrongType, "/letters/0/to/name", "text"},
        {"/letters/0/to/role", std::string(Addressee::longestLine + 1, 'x'), ErrorCode::OutOfRange, "/letters/0/to/role",
            tooLong(Addressee::longestLine)},
        {"/letters/0/to/lines", "4 Mill Lane", ErrorCode::WrongType, "/letters/0/to/lines", "array"},
        {"/letters/0/to/lines/1", "", ErrorCode::MissingField, "/letters/0/to/lines/1", "a line"},
        {"/letters/0/to/lines", json(std::vector<std::string>(Addressee::mostLines + 1, "x")), ErrorCode::OutOfRange,
            "/letters/0/to/lines", "7 entries, allowed: 0 to 6"},
    });
    for (const Addressee &good : {Addressee{"Dr Nord", {}, {}}, {{}, "emergency department", {"Lower Harrow"}},
             {std::string(Addressee::longestLine, 'x'), "x", std::vector<std::string>(Addressee::mostLines, "x")}}) {
        const auto read = readTo(json::parse(addresseeJson(good).dump()));
        ASSERT_TRUE(read) << inWords(read.error());
        EXPECT_EQ(read.value(), good);
    }
}

TEST(LetterJson, ThereAreNotEndlesslyMany)
{
    json file = json::parse(writeVisit(withLetters()));
    const json one = file["letters"][1];
    file["letters"] = json(std::vector<json>(Letter::most, one));
    EXPECT_TRUE(readVisit(file.dump(), "v.json", atlas()));
    file["letters"].push_back(one);
    const auto many = readVisit(file.dump(), "v.json", atlas());
    ASSERT_FALSE(many);
    EXPECT_EQ(many.error().detail, "21 entries, allowed: 0 to 20");
    file["letters"] = json::array({one});
    for (std::size_t i = 0; i <= Letter::mostParts; ++i)
        file["letters"][0]["parts"].push_back({{"title", "part " + std::to_string(i)}, {"text", "x"}});
    const auto long_ = readVisit(file.dump(), "v.json", atlas());
    ASSERT_FALSE(long_);
    EXPECT_EQ(long_.error().place, "v.json#/letters/0/parts");
}

TEST(LetterJson, TheFirstVersionHadNone)
{
    const json file{{"format", "raphe-visit"}, {"version", 1}, {"findings", json::array()}, {"letters", json::array()}};
    const auto visit = readVisit(file.dump(), "v.json", atlas());
    ASSERT_FALSE(visit);
    EXPECT_EQ(visit.error().code, ErrorCode::UnknownField);
    EXPECT_EQ(visit.error().detail, "letters");
}

TEST(LetterJson, StaysAsItIsInTheMirror)
{
    Visit visit = withLetters();
    visit.letters[0].parts[0].words.text = "the left hip, told in words";
    EXPECT_EQ(mirrored(visit), visit);
}

// The published schema and the reader say the same.
TEST(LetterJson, TheSchemaNamesTheSameFieldsWordsAndBounds)
{
    const json schema = shipped("schema/visit.schema.json");
    const json file = json::parse(writeVisit(withLetters()));
    const auto fieldsOf = [](const json &object) {
        std::set<std::string> fields;
        for (const auto &[field, value] : object.items())
            fields.insert(field);
        return fields;
    };
    for (const auto &[whole, rule] : {std::pair{"/letters/0", "/properties/letters/items"}, {"/letters/0/to", "/$defs/addressee"},
             {"/letters/0/reason", "/$defs/letter_text"},
             {"/letters/0/parts/1", "/properties/letters/items/properties/parts/items"}}) {
        const json rules = schema.at(json::json_pointer(rule));
        EXPECT_EQ(fieldsOf(rules.at("properties")), fieldsOf(file.at(json::json_pointer(whole)))) << whole;
        EXPECT_EQ(rules.at("additionalProperties"), false) << whole;
    }
    const json letter = schema.at("/properties/letters/items/properties"_json_pointer);
    std::set<std::string> words;
    for (const auto &[value, word] : urgencyWords)
        words.emplace(word);
    EXPECT_EQ(letter.at("urgency").at("enum").get<std::set<std::string>>(), words);
    EXPECT_EQ(schema.at("/properties/letters/maxItems"_json_pointer), Letter::most);
    EXPECT_EQ(letter.at("parts").at("maxItems"), Letter::mostParts);
    EXPECT_EQ(schema.at("/$defs/letter_words/maxLength"_json_pointer), LetterText::longest);
    EXPECT_EQ(schema.at("/$defs/letter_title/maxLength"_json_pointer), Addressee::longestLine);
    EXPECT_EQ(schema.at("/$defs/addressee/properties/lines/maxItems"_json_pointer), Addressee::mostLines);
    EXPECT_EQ(schema.at("/$defs/addressee/properties/name/maxLength"_json_pointer), Addressee::longestLine);
}

} // namespace raphe::test
