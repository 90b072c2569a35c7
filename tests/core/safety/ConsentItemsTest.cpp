// The reader of the consents: the shipped ones are accepted, and each mistake is refused with file and place. What the texts
// promise, the fields keep.
#include "tests/core/safety/Rules.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace raphe::test {

namespace {

using nlohmann::json;

std::size_t indexOf(const json &content, const std::string &id)
{
    for (std::size_t i = 0; i < content.at("items").size(); ++i)
        if (content.at("items")[i].at("id") == id)
            return i;
    throw std::runtime_error("no item " + id);
}

void expectRefused(const json &spoilt, ErrorCode code, const std::string &place, const std::string &detail)
{
    const auto read = readConsentItems(spoilt.dump(), safetyRules().actions(), atlas());
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen: " << detail;
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, "safety/consent.json#" + place);
    EXPECT_NE(read.error().detail.find(detail), std::string::npos) << read.error().detail;
}

bool says(const std::string &text, const char *words)
{
    return text.find(words) != std::string::npos;
}

} // namespace

TEST(ConsentItems, TheShippedOnesAreReadWhole)
{
    const json content = shipped("safety/consent.json");
    const ConsentItems &items = safetyRules().consents();
    EXPECT_EQ(items.guardianBelow, content.at("guardian_below"));
    ASSERT_EQ(items.items.size(), content.at("items").size());
    for (std::size_t i = 0; i < items.items.size(); ++i) {
        const json &from = content.at("items")[i];
        const ConsentItem &item = items.items[i];
        SCOPED_TRACE(item.id);
        EXPECT_EQ(item.id, from.at("id"));
        const json &covers = from.at("covers");
        EXPECT_EQ(item.covers.techniques, covers.value("techniques", std::vector<std::string>{}));
        EXPECT_EQ(item.covers.regions.size(), covers.value("regions", json::array()).size());
        EXPECT_EQ(item.covers.structures.size(), covers.value("structures", json::array()).size());
        EXPECT_EQ(item.covers.examination, covers.value("examination", false));
        EXPECT_EQ(item.covers.record, covers.value("record", false));
        EXPECT_EQ(item.covers.pictures, covers.value("pictures", false));
        EXPECT_EQ(item.covers.guardian, covers.value("guardian", false));
        EXPECT_EQ(item.covers.elsewhere, covers.value("elsewhere", false));
        EXPECT_EQ(item.covers.inside, covers.value("inside", false));
        EXPECT_EQ(item.explain, from.at("explain"));
        EXPECT_EQ(item.benefits, from.at("benefits"));
        EXPECT_EQ(item.risks, from.at("risks"));
        EXPECT_EQ(item.alternatives, from.at("alternatives"));
        EXPECT_EQ(item.withdraw, from.at("withdraw"));
        EXPECT_EQ(item.chaperone, from.at("chaperone"));
        EXPECT_EQ(item.marks, from.at("marks"));
        EXPECT_EQ(item.adultsOnly, from.value("adults_only", false));
        EXPECT_EQ(item.together, from.value("together", false));
        EXPECT_EQ(item.renewDays, from.at("renew_days"));
        for (const CautionRule &rule : safetyRules().rules())
            EXPECT_NE(rule.id, item.id) << "a verdict names either by its id";
        EXPECT_EQ(safetyRules().signs().find(item.id), nullptr) << "a verdict names either by its id";
    }
}

TEST(ConsentItems, WhatTheTextsPromiseTheFieldsKeep)
{
    std::size_t ofPlace = 0;
    for (const ConsentItem &item : safetyRules().consents().items) {
        SCOPED_TRACE(item.id);
        const bool eachTime =
            says(item.explain, "We ask for your yes each time") || says(item.withdraw, "does not count for today");
        EXPECT_EQ(item.renewDays == 0, eachTime) << "how long a yes holds";
        EXPECT_EQ(item.chaperone, says(item.explain, "chaperone"));
        EXPECT_EQ(item.adultsOnly, says(item.risks, "not of age"));
        const bool saysMarks = says(item.risks, "marks") || says(item.risks, "bruise. It fades") || says(item.risks, "turn red");
        EXPECT_EQ(item.marks, saysMarks) << "marks that stay";
        const bool nothing = says(item.alternatives, "nothing") || item.covers.record || item.covers.pictures;
        EXPECT_TRUE(nothing) << "nothing is one of the alternatives";
        if (item.covers.isOfPlace() && item.covers.techniques.empty()) {
            EXPECT_TRUE(item.chaperone) << "offered at a region of its own";
            ++ofPlace;
        }
        EXPECT_TRUE(item.renewDays == 0 || !item.covers.isOfPlace()) << "asked for at each visit";
        EXPECT_EQ(says(item.explain, "{time}"), item.covers.record);
        for (const std::string *text : {&item.title, &item.benefits, &item.risks, &item.alternatives, &item.withdraw})
            EXPECT_EQ(text->find('{'), std::string::npos);
    }
    EXPECT_EQ(ofPlace, 7U) << "breast, groin, buttock, mouth, pelvic floor from outside and inside, belly";
}

TEST(ConsentItems, MistakesAreNamedByTheirPlace)
{
    const auto spoilt = [](const std::string &pointer, const json &value) {
        json content = shipped("safety/consent.json");
        content[json::json_pointer(pointer)] = value;
        return content;
    };
    const std::string thrust = "/items/" + std::to_string(indexOf(shipped("safety/consent.json"), "thrust-elsewhere"));
    expectRefused(spoilt("/format", "raphe-consents"), ErrorCode::WrongFormat, "/format", "raphe-consents");
    expectRefused(spoilt("/version", 2), ErrorCode::WrongFormat, "/version", "2");
    expectRefused(spoilt("/read", ""), ErrorCode::MissingField, "/", "read");
    expectRefused(spoilt("/guardian_below", 121), ErrorCode::OutOfRange, "/guardian_below", "121");
    expectRefused(spoilt("/items/0/colour", "red"), ErrorCode::UnknownField, "/items/0", "colour");
    expectRefused(spoilt("/items/0/covers/colour", true), ErrorCode::UnknownField, "/items/0/covers", "colour");
    expectRefused(spoilt("/items/1/id", shipped("safety/consent.json")["items"][0]["id"]), ErrorCode::Duplicate, "/items/1/id",
        "examination");
    expectRefused(spoilt("/items/1/id", "Cups"), ErrorCode::BadId, "/items/1/id", "Cups");
    expectRefused(spoilt("/items/0/covers", json::object()), ErrorCode::MissingField, "/items/0/covers", "what it covers");
    expectRefused(
        spoilt("/items/0/covers", {{"examination", false}}), ErrorCode::MissingField, "/items/0/covers", "what it covers");
    expectRefused(
        spoilt("/items/1/covers/techniques", {"hugging"}), ErrorCode::UnknownId, "/items/1/covers/techniques/0", "hugging");
    expectRefused(spoilt("/items/1/covers/techniques", {"slump"}), ErrorCode::WrongType, "/items/1/covers/techniques/0", "slump");
    expectRefused(spoilt("/items/1/covers/techniques", json::array()), ErrorCode::MissingField, "/items/1/covers", "techniques");
    expectRefused(spoilt("/items/1/covers/techniques", {"gliding"}), ErrorCode::MissingField, "/items", "an item with");
    expectRefused(spoilt("/items/1/covers/regions", {"femur"}), ErrorCode::WrongType, "/items/1/covers/regions/0", "femur");
    expectRefused(spoilt("/items/1/covers/structures", {"tail"}), ErrorCode::UnknownId, "/items/1/covers/structures/0", "tail");
    expectRefused(spoilt(thrust + "/covers/regions", {"palm"}), ErrorCode::Contradiction, thrust + "/covers", "elsewhere");
    expectRefused(spoilt(thrust + "/together", true), ErrorCode::Contradiction, thrust, "together");
    expectRefused(spoilt("/items/1/covers/inside", true), ErrorCode::MissingField, "/items/1/covers", "regions or structures");
    expectRefused(spoilt("/items/1/chaperone", "yes"), ErrorCode::WrongType, "/items/1/chaperone", "");
    expectRefused(spoilt("/items/1/renew_days", -1), ErrorCode::OutOfRange, "/items/1/renew_days", "-1");
    for (const char *text : {"title", "explain", "benefits", "risks", "alternatives", "withdraw", "source"})
        expectRefused(spoilt(std::string("/items/1/") + text, ""), ErrorCode::MissingField, "/items/1", text);
    expectRefused(spoilt("/items/1/read", "heard"), ErrorCode::UnknownWord, "/items/1/read", "heard");
}

} // namespace raphe::test
