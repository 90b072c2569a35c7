// The patient's record as JSON: what is read, what is refused and where, that writing loses nothing. All people here are
// invented.
#include "core/record/PatientRecordJson.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace raphe::test {

namespace {

using nlohmann::json;

const std::string wholeText = R"({
  "format": "raphe-patient",
  "version": 1,
  "name": "Zoë Ørsted",
  "other_names": [
    "Zoe Oersted"
  ],
  "born": "1980-03-05",
  "other_born": [
    "1980-05-03"
  ],
  "sex": "female",
  "height": 168,
  "mark": "scar on the left eyebrow",
  "language": "Danish",
  "interpreter": "her son",
  "phone": "0555 12",
  "email": "zoe@example.org",
  "address": "Low Lane 3",
  "doctor": {
    "name": "Dr Quill",
    "phone": "0555 90"
  },
  "emergency": {
    "phone": "0555 13"
  },
  "guardian": {
    "name": "Ib Ørsted"
  },
  "medicines": [
    "a",
    "b"
  ],
  "allergies": [
    "nickel"
  ],
  "surgery": [
    {
      "text": "appendix",
      "year": 1999
    },
    {
      "text": "tonsils"
    }
  ],
  "implants": [
    {
      "text": "plate",
      "place": "left wrist"
    },
    {
      "text": "port"
    }
  ],
  "conditions": [
    {
      "condition": "diabetes",
      "note": "since childhood"
    },
    {
      "condition": "osteoporosis"
    }
  ],
  "ruled_out": [
    {
      "condition": "frailty",
      "because": "pregabalin"
    },
    {
      "condition": "epilepsy"
    }
  ],
  "pregnancy": {
    "week": 12,
    "date": "2024-02-29"
  },
  "other_pregnancies": [
    {
      "week": 42,
      "date": "2019-01-31"
    }
  ],
  "blood_pressure": {
    "systolic": 120,
    "diastolic": 80,
    "date": "2024-01-02"
  },
  "other_blood_pressures": [
    {
      "systolic": 140,
      "diastolic": 90,
      "date": "2023-01-02"
    }
  ],
  "unclear": [
    "blood pressure 80 over 190"
  ],
  "complaints": [
    {
      "id": 1,
      "text": "low back",
      "since": "last winter",
      "closed": true
    },
    {
      "id": 7,
      "text": "Knie rechts"
    }
  ]
}
)";

} // namespace

TEST(PatientRecordJsonTest, ReadsEveryField)
{
    EXPECT_EQ(okay(readPatient(wholeText, "p.json")), wholeRecord());
}

TEST(PatientRecordJsonTest, WritesEveryFieldInOneOrder)
{
    EXPECT_EQ(writePatient(wholeRecord()), wholeText);
}

TEST(PatientRecordJsonTest, ANameIsEnough)
{
    const auto read = okay(readPatient(R"({"format": "raphe-patient", "version": 1, "name": "Ana"})", "p.json"));
    EXPECT_EQ(read, named("Ana"));
}

TEST(PatientRecordJsonTest, FieldsThatSayNothingAreTheSameAsNone)
{
    const auto read = okay(readPatient(R"({"format": "raphe-patient", "version": 1, "name": "Ana", "mark": "", "medicines": [],
        "complaints": [{"id": 1, "text": "x", "since": "", "closed": false}]})",
        "p.json"));
    PatientRecord expected = named("Ana");
    expected.complaints = {{1, "x", "", false}};
    EXPECT_EQ(read, expected);
}

TEST(PatientRecordJsonTest, RandomRecordsReadBackEqual)
{
    Random random(1);
    for (int i = 0; i < 500; ++i) {
        const PatientRecord record = random.record();
        const std::string text = writePatient(record);
        const auto read = readPatient(text, "p.json");
        ASSERT_TRUE(read) << testing::PrintToString(read.error()) << text;
        ASSERT_EQ(read.value(), record);
        ASSERT_EQ(writePatient(read.value()), text);
    }
}

TEST(PatientRecordJsonTest, EveryMistakeIsRefusedWithItsPlace)
{
    struct Case {
        const char *pointer;
        json value;
        ErrorCode code;
        const char *place;
        const char *detail;
    };
    const std::vector<Case> cases{
        {"/format", "raphe-visit", ErrorCode::WrongFormat, "/format", "raphe-visit"},
        {"/version", 2, ErrorCode::NewerVersion, "/version", "2"},
        {"/version", 0, ErrorCode::WrongFormat, "/version", "0"},
        {"/version", 1.5, ErrorCode::WrongFormat, "/version", "1.5"},
        {"/version", "1", ErrorCode::WrongType, "/version", "number"},
        {"/nickname", "Z", ErrorCode::UnknownField, "/", "nickname"},
        {"/name", "", ErrorCode::OutOfRange, "/name", "empty"},
        {"/name", " \n\t", ErrorCode::OutOfRange, "/name", "empty"},
        {"/name", nullptr, ErrorCode::WrongType, "/name", "text"},
        {"/other_names", "Z", ErrorCode::WrongType, "/other_names", "array"},
        {"/other_names/0", "", ErrorCode::OutOfRange, "/other_names/0", "empty"},
        {"/born", "1980-02-30", ErrorCode::OutOfRange, "/born", "1980-02-30, allowed: a real date"},
        {"/born", "5.3.1980", ErrorCode::OutOfRange, "/born", "YYYY-MM-DD"},
        {"/born", "", ErrorCode::OutOfRange, "/born", "YYYY-MM-DD"},
        {"/born", 1980, ErrorCode::WrongType, "/born", "text"},
        {"/other_born/0", "1980", ErrorCode::OutOfRange, "/other_born/0", "1980"},
        {"/mark", 1, ErrorCode::WrongType, "/mark", "text"},
        {"/language", 1, ErrorCode::WrongType, "/language", "text"},
        {"/interpreter", true, ErrorCode::WrongType, "/interpreter", "text"},
        {"/phone", 5551, ErrorCode::WrongType, "/phone", "text"},
        {"/email", json::array(), ErrorCode::WrongType, "/email", "text"},
        {"/address", json::object(), ErrorCode::WrongType, "/address", "text"},
        {"/doctor", "Dr Quill", ErrorCode::WrongType, "/doctor", "object"},
        {"/doctor", json::object(), ErrorCode::MissingField, "/doctor", "name or phone"},
        {"/doctor/email", "x", ErrorCode::UnknownField, "/doctor", "email"},
        {"/doctor/phone", 5, ErrorCode::WrongType, "/doctor/phone", "text"},
        {"/emergency/phone", " ", ErrorCode::MissingField, "/emergency", "name or phone"},
        {"/emergency/name", 1, ErrorCode::WrongType, "/emergency/name", "text"},
        {"/guardian/name", "", ErrorCode::MissingField, "/guardian", "name or phone"},
        {"/medicines", json::object(), ErrorCode::WrongType, "/medicines", "array"},
        {"/medicines/1", "", ErrorCode::OutOfRange, "/medicines/1", "empty"},
        {"/allergies/0", 3, ErrorCode::WrongType, "/allergies/0", "text"},
        {"/allergies/0", " ", ErrorCode::OutOfRange, "/allergies/0", "empty"},
        {"/surgery/0", "appendix", ErrorCode::WrongType, "/surgery/0", "object"},
        {"/surgery/0", {{"year", 1999}}, ErrorCode::MissingField, "/surgery/0", "text"},
        {"/surgery/1/text", "", ErrorCode::OutOfRange, "/surgery/1/text", "empty"},
        {"/surgery/0/year", 1879, ErrorCode::OutOfRange, "/surgery/0/year", "1880 to 2200"},
        {"/surgery/0/year", 2201, ErrorCode::OutOfRange, "/surgery/0/year", "1880 to 2200"},
        {"/surgery/0/year", 1999.5, ErrorCode::OutOfRange, "/surgery/0/year", "whole number"},
        {"/surgery/0/year", "1999", ErrorCode::WrongType, "/surgery/0/year", "number"},
        {"/surgery/0/by", "x", ErrorCode::UnknownField, "/surgery/0", "by"},
        {"/implants/0", {{"place", "x"}}, ErrorCode::MissingField, "/implants/0", "text"},
        {"/implants/1/text", " ", ErrorCode::OutOfRange, "/implants/1/text", "empty"},
        {"/implants/0/place", 1, ErrorCode::WrongType, "/implants/0/place", "text"},
        {"/implants/0/side", "left", ErrorCode::UnknownField, "/implants/0", "side"},
        {"/conditions/0", "diabetes", ErrorCode::WrongType, "/conditions/0", "object"},
        {"/conditions/0", {{"note", "x"}}, ErrorCode::MissingField, "/conditions/0", "condition"},
        {"/conditions/0/condition", "Thin bone", ErrorCode::BadId, "/conditions/0/condition", "Thin bone"},
        {"/conditions/0/condition", "", ErrorCode::BadId, "/conditions/0/condition", ""},
        {"/conditions/1/condition", "diabetes", ErrorCode::Duplicate, "/conditions/1", "diabetes"},
        {"/conditions/0/note", 1, ErrorCode::WrongType, "/conditions/0/note", "text"},
        {"/conditions/0/at", json::array(), ErrorCode::UnknownField, "/conditions/0", "at"},
        {"/sex", "x", ErrorCode::UnknownWord, "/sex", "x"},
        {"/height", 39, ErrorCode::OutOfRange, "/height", "40 to 260"},
        {"/height", 261, ErrorCode::OutOfRange, "/height", "40 to 260"},
        {"/pregnancy", 12, ErrorCode::WrongType, "/pregnancy", "object"},
        {"/pregnancy", {{"week", 12}}, ErrorCode::MissingField, "/pregnancy", "date"},
        {"/pregnancy", {{"date", "2024-01-01"}}, ErrorCode::MissingField, "/pregnancy", "week"},
        {"/pregnancy/week", 0, ErrorCode::OutOfRange, "/pregnancy/week", "1 to 42"},
        {"/pregnancy/week", 43, ErrorCode::OutOfRange, "/pregnancy/week", "1 to 42"},
        {"/pregnancy/date", "2023-02-29", ErrorCode::OutOfRange, "/pregnancy/date", "2023-02-29"},
        {"/pregnancy/of", 1, ErrorCode::UnknownField, "/pregnancy", "of"},
        {"/other_pregnancies/0/week", 99, ErrorCode::OutOfRange, "/other_pregnancies/0/week", "99"},
        {"/blood_pressure", "120/80", ErrorCode::WrongType, "/blood_pressure", "object"},
        {"/blood_pressure", {{"systolic", 120}, {"diastolic", 80}}, ErrorCode::MissingField, "/blood_pressure", "date"},
        {"/blood_pressure/systolic", 301, ErrorCode::OutOfRange, "/blood_pressure/systolic", "40 to 300"},
        {"/blood_pressure/systolic", 39, ErrorCode::OutOfRange, "/blood_pressure/systolic", "40 to 300"},
        {"/blood_pressure/diastolic", 201, ErrorCode::OutOfRange, "/blood_pressure/diastolic", "20 to 200"},
        {"/blood_pressure/diastolic", 19, ErrorCode::OutOfRange, "/blood_pressure/diastolic", "20 to 200"},
        {"/blood_pressure/diastolic", 120, ErrorCode::Contradiction, "/blood_pressure", "systolic, diastolic"},
        {"/blood_pressure/date", "today", ErrorCode::OutOfRange, "/blood_pressure/date", "today"},
        {"/blood_pressure/arm", "left", ErrorCode::UnknownField, "/blood_pressure", "arm"},
        {"/other_blood_pressures/0/diastolic", 150, ErrorCode::Contradiction, "/other_blood_pressures/0", "systolic"},
        {"/complaints/0/id", 0, ErrorCode::OutOfRange, "/complaints/0/id", "0, allowed"},
        {"/complaints/0/id", 1000000001, ErrorCode::OutOfRange, "/complaints/0/id", "1000000001"},
        {"/complaints/0/id", "1", ErrorCode::WrongType, "/complaints/0/id", "number"},
        {"/complaints/1/id", 1, ErrorCode::Duplicate, "/complaints/1", "1"},
        {"/complaints/0", {{"text", "x"}}, ErrorCode::MissingField, "/complaints/0", "id"},
        {"/complaints/0", {{"id", 1}}, ErrorCode::MissingField, "/complaints/0", "text"},
        {"/complaints/0/text", "", ErrorCode::OutOfRange, "/complaints/0/text", "empty"},
        {"/complaints/0/since", 2020, ErrorCode::WrongType, "/complaints/0/since", "text"},
        {"/complaints/0/closed", 1, ErrorCode::WrongType, "/complaints/0/closed", "true or false"},
        {"/complaints/0/side", "left", ErrorCode::UnknownField, "/complaints/0", "side"},
    };
    for (const Case &c : cases) {
        json document = json::parse(wholeText);
        document[json::json_pointer(c.pointer)] = c.value;
        expectError(readPatient(document.dump(), "p.json"), c.code, std::string("p.json#") + c.place, c.detail,
            std::string(c.pointer) + " = " + c.value.dump());
    }
}

TEST(PatientRecordJsonTest, WhatIsNeededIsMissed)
{
    for (const char *field : {"format", "version", "name"}) {
        json document = json::parse(wholeText);
        document.erase(field);
        expectError(readPatient(document.dump(), "p.json"), ErrorCode::MissingField, "p.json#/", field);
    }
    expectError(readPatient("{", "p.json"), ErrorCode::BadJson, "p.json, line 1, column 2", "");
    expectError(readPatient("[]", "p.json"), ErrorCode::MissingField, "p.json#/", "format");
}

// A limit is met exactly, counted in characters and not in bytes; one more is refused and nothing is cut.
TEST(PatientRecordJsonTest, EveryTextHasItsLimit)
{
    const std::vector<const char *> texts{"/name", "/other_names/0", "/mark", "/language", "/interpreter", "/phone", "/email",
        "/address", "/doctor/name", "/doctor/phone", "/emergency/name", "/emergency/phone", "/guardian/name", "/guardian/phone",
        "/medicines/0", "/allergies/0", "/surgery/0/text", "/implants/0/text", "/implants/0/place", "/conditions/0/note",
        "/complaints/0/text", "/complaints/0/since"};
    std::string longest;
    for (std::size_t i = 0; i < PatientRecord::longestText; ++i)
        longest += "ß";
    for (const char *pointer : texts) {
        json document = json::parse(wholeText);
        document[json::json_pointer(pointer)] = longest;
        EXPECT_TRUE(readPatient(document.dump(), "p.json")) << pointer;
        document[json::json_pointer(pointer)] = longest + "x";
        expectError(readPatient(document.dump(), "p.json"), ErrorCode::OutOfRange, std::string("p.json#") + pointer,
            "10001 characters, allowed: at most 10000");
    }
}

TEST(PatientRecordJsonTest, EveryListHasItsLimit)
{
    for (const char *list : {"/other_names", "/other_born", "/medicines", "/allergies", "/surgery", "/implants", "/conditions",
             "/other_pregnancies", "/other_blood_pressures", "/complaints"}) {
        json document = json::parse(wholeText);
        const json::json_pointer at(list);
        const json entry = document[at][0];
        document[at] = json::array();
        for (std::size_t i = 0; i < PatientRecord::longestList; ++i) {
            document[at].push_back(entry);
            if (document[at].back().contains("id"))
                document[at].back()["id"] = i + 1;
            if (document[at].back().contains("condition"))
                document[at].back()["condition"] = "c" + std::to_string(i);
        }
        EXPECT_TRUE(readPatient(document.dump(), "p.json")) << list;
        document[at].push_back(entry);
        expectError(readPatient(document.dump(), "p.json"), ErrorCode::OutOfRange, std::string("p.json#") + list,
            "501 entries, allowed: at most 500");
    }
}

} // namespace raphe::test
