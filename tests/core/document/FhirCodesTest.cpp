// The codes of the FHIR export: that the content is read strictly, and that what it says of others' codes can be.
#include "core/document/fhir/FhirCodes.h"

#include "core/examination/Examination.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <functional>
#include <set>

namespace raphe::test::fhir_codes {

namespace {

const FhirCodes &shippedCodes()
{
    static const FhirCodes codes = readEmbeddedFhirCodes().value();
    return codes;
}

const Examination &shippedExamination()
{
    static const Examination examination = readEmbeddedExamination(atlas(), safetyRules()).value();
    return examination;
}

// What the reader says of the content with one change.
std::string refusal(const std::function<void(nlohmann::json &)> &change)
{
    nlohmann::json json = shipped("fhir-codes.json");
    change(json);
    const auto codes = readFhirCodes(json.dump(), "codes.json");
    return codes.ok() ? "accepted" : inWords(codes.error());
}

bool isNamed(const std::string &message, const std::string &words)
{
    return message.find(words) != std::string::npos;
}

// LOINC's check digit (mod 10, as its users' guide has it; from memory): of the digits before the hyphen every second one from
// the right is doubled as one number, the others stand before it, and the sum of all digits is filled up to a multiple of ten.
int checkDigit(const std::string &number)
{
    std::string odd;
    std::string even;
    for (std::size_t i = 0; i < number.size(); ++i)
        (i % 2 == 0 ? odd : even) += number[number.size() - 1 - i];
    std::reverse(odd.begin(), odd.end());
    int sum = 0;
    for (const char digit : even + std::to_string(2 * std::stoll(odd)))
        sum += digit - '0';
    return (10 - sum % 10) % 10;
}

} // namespace

TEST(FhirCodes, ReadsWhatIsShipped)
{
    const auto codes = readEmbeddedFhirCodes();
    ASSERT_TRUE(codes.ok()) << inWords(codes.error());
    EXPECT_EQ(codes.value().uri("loinc"), "http://loinc.org");
    EXPECT_EQ(codes.value().code("pain-now").loinc->code, "72514-3");
    EXPECT_FALSE(codes.value().code("pain-worst").loinc) << "LOINC's code is of the pain now";
}

TEST(FhirCodes, CodesOfLoincHaveTheirCheckDigit)
{
    EXPECT_EQ(checkDigit("8480"), 6); // systolic blood pressure, a code that everybody knows
    EXPECT_EQ(checkDigit("2345"), 7); // glucose, another
    std::set<std::string> all{shippedCodes().consent.code};
    for (const FhirCode &code : shippedCodes().codes)
        if (code.loinc)
            all.insert(code.loinc->code);
    for (const FhirVital &vital : shippedCodes().vitals) {
        all.insert(vital.loinc);
        for (const LoincCode &field : vital.fields)
            all.insert(field.code);
    }
    EXPECT_GE(all.size(), 9U);
    for (const std::string &code : all) {
        const auto hyphen = code.find('-');
        ASSERT_EQ(hyphen + 2, code.size()) << code;
        EXPECT_EQ(checkDigit(code.substr(0, hyphen)), code.back() - '0') << code;
    }
}

TEST(FhirCodes, EveryVitalSignIsCoded)
{
    int vitals = 0;
    for (const ExamTest &test : shippedExamination().tests) {
        if (test.kind != TestKind::Vital)
            continue;
        ++vitals;
        const FhirVital *vital = shippedCodes().findVital(test.id);
        ASSERT_TRUE(vital) << test.id;
        EXPECT_EQ(vital->fields.size(), test.vital->fields.size() > 1 ? test.vital->fields.size() : 0) << test.id;
    }
    EXPECT_EQ(shippedCodes().vitals.size(), static_cast<std::size_t>(vitals)) << "a vital sign that is no test";
}

TEST(FhirCodes, PartsOfTheBodyAreGroupsOfMovementsAndTests)
{
    std::set<std::string> groups;
    std::set<std::string> ofMovements;
    for (const Movement &movement : shippedExamination().movements)
        ofMovements.insert(movement.group);
    groups = ofMovements;
    for (const ExamTest &test : shippedExamination().tests)
        groups.insert(test.group);
    const auto &parts = shippedCodes().bodyParts;
    for (const std::string &part : parts)
        EXPECT_TRUE(groups.contains(part)) << part;
    for (const std::string &group : ofMovements)
        EXPECT_NE(std::find(parts.begin(), parts.end(), group), parts.end()) << group << ": a movement is somewhere";
}

TEST(FhirCodes, KnowsAListByItsName)
{
    const auto uriOf = [](const std::string &name) {
        const ImpressionList *list = shippedCodes().listOf(name);
        return list ? list->uri : std::string();
    };
    EXPECT_EQ(uriOf("ICD-10"), "http://hl7.org/fhir/sid/icd-10");
    EXPECT_EQ(uriOf("ICD-10 2019"), "http://hl7.org/fhir/sid/icd-10");
    EXPECT_EQ(uriOf("icd-10-gm, 2026"), "http://fhir.de/CodeSystem/bfarm/icd-10-gm") << "the longest name, in whatever case";
    for (const char *name : {"", "ICD", "ICD-100", "ICD-10-XY 2026", "my own list"})
        EXPECT_EQ(uriOf(name), "") << name;
}

TEST(FhirCodes, RefusesWhatCannotBe)
{
    EXPECT_EQ(refusal([](nlohmann::json &) {}), "accepted");
    const auto expect = [](const char *words, const std::function<void(nlohmann::json &)> &change) {
        const std::string said = refusal(change);
        EXPECT_TRUE(isNamed(said, words)) << words << " not in: " << said;
    };
    expect("codes.json#/systems: loinc", [](nlohmann::json &json) { json["systems"].erase(0); });
    expect("codes.json#/codes: tenderness", [](nlohmann::json &json) { json["codes"].erase(1); });
    expect("codes.json#/codes/1/id: palpation", [](nlohmann::json &json) { json["codes"][1]["id"] = "palpation"; });
    expect("codes.json#/codes/0/category: gossip", [](nlohmann::json &json) { json["codes"][0]["category"] = "gossip"; });
    expect("codes.json#/codes/0: colour", [](nlohmann::json &json) { json["codes"][0]["colour"] = "red"; });
    expect("codes.json#/codes/0: display", [](nlohmann::json &json) { json["codes"][0]["display"] = ""; });
    expect("codes.json#/systems/0/read: hearsay", [](nlohmann::json &json) { json["systems"][0]["read"] = "hearsay"; });
    expect(
        "codes.json#/vitals/1/test: blood-pressure", [](nlohmann::json &json) { json["vitals"][1]["test"] = "blood-pressure"; });
    expect("codes.json#/body_parts/1: jaw", [](nlohmann::json &json) { json["body_parts"][1] = "jaw"; });
    expect("codes.json#/version", [](nlohmann::json &json) { json["version"] = 2; });
}

} // namespace raphe::test::fhir_codes
