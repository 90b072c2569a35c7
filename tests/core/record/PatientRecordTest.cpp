// The patient's record: what is read, what is refused and where, that writing loses nothing; searching, likeness and
// merging. All people here are invented.
#include "core/record/PatientRecord.h"
#include "core/record/PatientRecordJson.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <functional>
#include <random>
#include <set>

namespace raphe {

static void PrintTo(const Error &error, std::ostream *out)
{
    *out << "code " << static_cast<int>(error.code) << " at " << error.place << ": " << error.detail;
}

static void PrintTo(const PatientRecord &record, std::ostream *out)
{
    *out << writePatient(record);
}

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

PatientRecord wholeRecord()
{
    PatientRecord r;
    r.name = "Zoë Ørsted";
    r.otherNames = {"Zoe Oersted"};
    r.born = "1980-03-05";
    r.otherBorn = {"1980-05-03"};
    r.mark = "scar on the left eyebrow";
    r.language = "Danish";
    r.interpreter = "her son";
    r.phone = "0555 12";
    r.email = "zoe@example.org";
    r.address = "Low Lane 3";
    r.doctor = Contact{"Dr Quill", "0555 90"};
    r.emergency = Contact{"", "0555 13"};
    r.guardian = Contact{"Ib Ørsted", ""};
    r.medicines = {"a", "b"};
    r.allergies = {"nickel"};
    r.surgery = {{"appendix", 1999}, {"tonsils", {}}};
    r.implants = {{"plate", "left wrist"}, {"port", ""}};
    r.conditions = {{"diabetes", "since childhood"}, {"osteoporosis", ""}};
    r.pregnancy = Pregnancy{12, "2024-02-29"};
    r.otherPregnancies = {{42, "2019-01-31"}};
    r.bloodPressure = BloodPressure{120, 80, "2024-01-02"};
    r.otherBloodPressures = {{140, 90, "2023-01-02"}};
    r.complaints = {{1, "low back", "last winter", true}, {7, "Knie rechts", "", false}};
    return r;
}

PatientRecord named(const std::string &name, const std::string &born = {})
{
    PatientRecord r;
    r.name = name;
    r.born = born;
    return r;
}

template <class T> T okay(const Result<T> &result)
{
    if (result)
        return result.value();
    ADD_FAILURE() << testing::PrintToString(result.error());
    return {};
}

template <class T>
void expectError(
    const Result<T> &result, ErrorCode code, const std::string &place, const std::string &detail, const std::string &about = {})
{
    ASSERT_FALSE(result) << "was accepted: " << about;
    EXPECT_EQ(result.error().code, code) << about << ": " << testing::PrintToString(result.error());
    EXPECT_EQ(result.error().place, place) << about;
    EXPECT_NE(result.error().detail.find(detail), std::string::npos)
        << about << ": " << result.error().detail << " lacks " << detail;
}

// Random records that keep the rules. Words come from several scripts.
class Random {
public:
    explicit Random(unsigned seed) : m_engine(seed) { }

    int number(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_engine); }
    bool yes() { return number(0, 1) == 1; }

    std::string word()
    {
        static const std::vector<std::string> words{"Ana", "Łukasz", "Müller", "Strauß", "José", "O'Brien", "Ødegård", "Ленка",
            "Ελένη", "李", "김", "d'Été", "Çelik", "back", "knee", "\"quoted\"", "a;b", "line\nbreak", "L4/5", "\\", "zwölf"};
        return words[static_cast<std::size_t>(number(0, static_cast<int>(words.size()) - 1))];
    }

    std::string text()
    {
        std::string out = word();
        for (int i = number(0, 3); i > 0; --i)
            out += " " + word();
        return out;
    }

    std::string maybe() { return yes() ? text() : std::string(); }

    std::string date()
    {
        std::array<char, 16> out{};
        std::snprintf(out.data(), out.size(), "%04d-%02d-%02d", number(1900, 2030), number(1, 12), number(1, 28));
        return out.data();
    }

    template <class T> std::vector<T> list(const std::function<T()> &make)
    {
        std::vector<T> out;
        for (int i = number(0, 3); i > 0; --i)
            out.push_back(make());
        return out;
    }

    std::optional<Contact> contact()
    {
        if (yes())
            return std::nullopt;
        Contact c{maybe(), maybe()};
        if (c.name.empty() && c.phone.empty())
            c.phone = text();
        return c;
    }

    BloodPressure pressure()
    {
        const int diastolic = number(20, 200);
        return {number(std::max(diastolic + 1, 40), 300), diastolic, date()};
    }

    PatientRecord record()
    {
        PatientRecord r;
        r.name = text();
        r.otherNames = list<std::string>([&] { return text(); });
        r.born = yes() ? date() : "";
        r.otherBorn = list<std::string>([&] { return date(); });
        for (std::string *field : {&r.mark, &r.language, &r.interpreter, &r.phone, &r.email, &r.address})
            *field = maybe();
        r.doctor = contact();
        r.emergency = contact();
        r.guardian = contact();
        r.medicines = list<std::string>([&] { return text(); });
        r.allergies = list<std::string>([&] { return text(); });
        r.surgery = list<Surgery>([&] { return Surgery{text(), yes() ? std::optional(number(1880, 2200)) : std::nullopt}; });
        r.implants = list<Implant>([&] { return Implant{text(), maybe()}; });
        for (const char *id : {"diabetes", "osteoporosis", "pacemaker"})
            if (yes())
                r.conditions.push_back({id, maybe()});
        r.pregnancy = yes() ? std::optional(Pregnancy{number(1, 42), date()}) : std::nullopt;
        r.otherPregnancies = list<Pregnancy>([&] { return Pregnancy{number(1, 42), date()}; });
        r.bloodPressure = yes() ? std::optional(pressure()) : std::nullopt;
        r.otherBloodPressures = list<BloodPressure>([&] { return pressure(); });
        int id = 0;
        r.complaints = list<PatientComplaint>([&] { return PatientComplaint{id += number(1, 9), text(), maybe(), yes()}; });
        return r;
    }

private:
    std::mt19937 m_engine;
};

template <class T> bool holds(const std::vector<T> &list, const T &value)
{
    return std::find(list.begin(), list.end(), value) != list.end();
}

} // namespace

TEST(PatientRecordTest, ReadsEveryField)
{
    EXPECT_EQ(okay(readPatient(wholeText, "p.json")), wholeRecord());
}

TEST(PatientRecordTest, WritesEveryFieldInOneOrder)
{
    EXPECT_EQ(writePatient(wholeRecord()), wholeText);
}

TEST(PatientRecordTest, ANameIsEnough)
{
    const auto read = okay(readPatient(R"({"format": "raphe-patient", "version": 1, "name": "Ana"})", "p.json"));
    EXPECT_EQ(read, named("Ana"));
}

TEST(PatientRecordTest, FieldsThatSayNothingAreTheSameAsNone)
{
    const auto read = okay(readPatient(R"({"format": "raphe-patient", "version": 1, "name": "Ana", "mark": "", "medicines": [],
        "complaints": [{"id": 1, "text": "x", "since": "", "closed": false}]})",
        "p.json"));
    PatientRecord expected = named("Ana");
    expected.complaints = {{1, "x", "", false}};
    EXPECT_EQ(read, expected);
}

TEST(PatientRecordTest, RandomRecordsReadBackEqual)
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

TEST(PatientRecordTest, EveryMistakeIsRefusedWithItsPlace)
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

TEST(PatientRecordTest, WhatIsNeededIsMissed)
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
TEST(PatientRecordTest, EveryTextHasItsLimit)
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

TEST(PatientRecordTest, EveryListHasItsLimit)
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

TEST(PatientRecordTest, ARecordMadeByHandIsCheckedToo)
{
    EXPECT_TRUE(checkPatient(wholeRecord(), "form"));
    PatientRecord broken = wholeRecord();
    broken.phone = "\xC3";
    expectError(checkPatient(broken, "form"), ErrorCode::WrongType, "form#/phone", "UTF-8");
    broken = wholeRecord();
    broken.bloodPressure->systolic = 400;
    expectError(checkPatient(broken, "form"), ErrorCode::OutOfRange, "form#/blood_pressure/systolic", "400");
    broken = wholeRecord();
    broken.pregnancy->date.clear();
    expectError(checkPatient(broken, "form"), ErrorCode::OutOfRange, "form#/pregnancy/date", "YYYY-MM-DD");
}

// Byte sequences that RFC 3629 (UTF-8; from memory) allows and forbids.
TEST(PatientRecordTest, KnowsUtf8)
{
    for (const char *good : {"", "a", "é", "\xEF\xBB\xBF", "李", "\xF0\x9F\x98\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_TRUE(isUtf8(good)) << good;
    for (const char *bad : {"\x80", "\xC3", "\xC0\x80", "\xE9t", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF", "ab\xE2\x82"})
        EXPECT_FALSE(isUtf8(bad)) << bad;
}

TEST(PatientSearchTest, FoldsWords)
{
    EXPECT_EQ(foldedWords("  José   MÜLLER-Strauß "), "jose muller strauss");
    EXPECT_EQ(foldedWords("Wałęsa Ødegård Đorđe"), "walesa odegard dorde");
    EXPECT_EQ(foldedWords("O’Brien O'Brien"), "obrien obrien");
    EXPECT_EQ(foldedWords("Žižka\tçelik"), "zizka celik");
    EXPECT_EQ(foldedWords("5/3/1980"), "5.3.1980");
    EXPECT_EQ(foldedWords("4-5 weeks, L4/5"), "4 5 weeks l4 5");
    EXPECT_EQ(foldedWords(" -- "), "");
}

TEST(PatientSearchTest, TextHoldsNamesDatesAndComplaints)
{
    EXPECT_EQ(searchText(wholeRecord()),
        "zoe orsted zoe oersted 1980-03-05 05.03.1980 5.3.1980 05031980 1980-05-03 03.05.1980 3.5.1980 03051980 low back knie "
        "rechts");
    EXPECT_EQ(searchText(named("Ana")), "ana");
}

TEST(PatientSearchTest, FindsByAnyPart)
{
    PatientRecord anna = named("Anna-María Lindström", "1980-03-05");
    anna.complaints = {{1, "Schmerz im Kreuz, seit 4-5 Wochen", "", false}};
    const std::string text = searchText(anna);
    for (const char *query : {"", " ", "anna", "LIND", "lindstrom maria", "strö", "Lindström", "1980", "1980-03-05", "05.03.1980",
             "5.3.1980", "5/3/1980", "05/03/1980", "5.3.", "03.1980", "05031980", "kreuz lind", "wochen 1980 anna", "4-5"})
        EXPECT_TRUE(matches(text, query)) << query;
    for (const char *query : {"anne", "lindqvist", "1981", "1980-05-03", "3.5.1980", "anna knie", "6.3."})
        EXPECT_FALSE(matches(text, query)) << query;
}

// Any piece of a word, as it was written or without its accents, in any order.
TEST(PatientSearchTest, FindsRandomPieces)
{
    Random random(2);
    for (int i = 0; i < 300; ++i) {
        const PatientRecord record = random.record();
        const std::string text = searchText(record);
        EXPECT_TRUE(matches(text, record.name)) << record.name;
        EXPECT_TRUE(matches(text, foldedWords(record.name))) << record.name;
        EXPECT_TRUE(matches(text, record.born)) << record.born;
        for (const PatientComplaint &complaint : record.complaints) {
            EXPECT_TRUE(matches(text, complaint.text)) << complaint.text;
            EXPECT_TRUE(matches(text, complaint.text + " " + record.born + " " + record.name));
        }
        const std::string folded = foldedWords(record.name);
        const std::string begun = folded.substr(0, static_cast<std::size_t>(random.number(1, 3)));
        EXPECT_TRUE(!isUtf8(begun) || matches(text, begun)) << begun;
        EXPECT_FALSE(matches(text, record.name + " xqzw"));
    }
}

TEST(PatientLikenessTest, TheSameNameAndBirthDateAreOne)
{
    EXPECT_DOUBLE_EQ(likeness(named("Anna Meyer", "1980-03-05"), named("Anna Meyer", "1980-03-05")), 1);
    EXPECT_DOUBLE_EQ(likeness(named("Anna Méyer", "1980-03-05"), named("MEYER, Anna", "1980-03-05")), 1) << "swapped";
}

// Worked out by hand from the rule in the header.
TEST(PatientLikenessTest, FollowsTheRule)
{
    const auto like = [](const char *a, const char *b) { return likeness(named(a, "1980-03-05"), named(b, "1980-03-05")); };
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Maier"), (1 + 0.6) / 2) << "two of five letters";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Hanna Meyer"), (1 + 0.8) / 2);
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Maria Meyer"), 2 / 2.5) << "a further word";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Schulz"), 0.5) << "nothing common with the other word";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Anna Huber"), 0.5) << "two of five letters in common are chance";
    EXPECT_DOUBLE_EQ(like("Anna Meyer", "Bodo Schulz"), 0);
    EXPECT_DOUBLE_EQ(like("Meyer Mayer", "Mayer Meyor"), (1 + 0.8) / 2) << "the equal word first";
    EXPECT_DOUBLE_EQ(like("Mayer Meyer", "Meier"), 0.8 / 1.5) << "a word is paired once, with the most alike";
    EXPECT_DOUBLE_EQ(like("Meier", "Mayer Meyer"), 0.8 / 1.5);
}

TEST(PatientLikenessTest, TheBirthDateWeighs)
{
    const auto like = [](const char *a, const char *b) { return likeness(named("Anna Meyer", a), named("Anna Meyer", b)); };
    EXPECT_DOUBLE_EQ(like("1980-03-05", ""), 0.8) << "missing";
    EXPECT_DOUBLE_EQ(like("", ""), 0.8) << "missing in both";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1980-05-03"), 0.8) << "day and month swapped";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1980-03-15"), 0.8) << "one digit";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1980-05-04"), 0.3);
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1981-05-03"), 0.3) << "swapped, and another year";
    EXPECT_DOUBLE_EQ(like("1980-03-05", "1955-07-21"), 0.3) << "father and son";
}

TEST(PatientLikenessTest, OtherNamesAndDatesCount)
{
    PatientRecord married = named("Anna Schulz", "1980-03-05");
    married.otherNames = {"Anna Meyer"};
    EXPECT_DOUBLE_EQ(likeness(married, named("Anna Meyer", "1980-03-05")), 1);
    married.otherBorn = {"1980-12-24"};
    EXPECT_DOUBLE_EQ(likeness(married, named("Anna Meyer", "1980-12-24")), 1);
}

TEST(PatientLikenessTest, IsTheSameEitherWayRoundAndWithinBounds)
{
    Random random(3);
    std::vector<PatientRecord> records;
    for (int i = 0; i < 30; ++i)
        records.push_back(random.record());
    for (const PatientRecord &a : records) {
        EXPECT_DOUBLE_EQ(likeness(a, a), foldedWords(a.name).empty() ? 0 : a.born.empty() && a.otherBorn.empty() ? 0.8 : 1);
        for (const PatientRecord &b : records) {
            EXPECT_DOUBLE_EQ(likeness(a, b), likeness(b, a));
            EXPECT_GE(likeness(a, b), 0);
            EXPECT_LE(likeness(a, b), 1);
        }
    }
}

TEST(PatientMergeTest, JoinsTextsAndListsTheRest)
{
    PatientRecord keep = named("Anna Meyer", "1980-03-05");
    keep.phone = "1";
    keep.email = "a@example.org";
    keep.doctor = Contact{"Dr Quill", "90"};
    keep.medicines = {"a"};
    keep.conditions = {{"diabetes", "mild"}};
    keep.bloodPressure = BloodPressure{120, 80, "2024-01-01"};
    keep.complaints = {{3, "back", "", false}};
    PatientRecord other = named("Anna Maier", "1980-05-03");
    other.phone = "2";
    other.email = "a@example.org";
    other.address = "Low Lane 3";
    other.doctor = Contact{"Dr Reed", "91"};
    other.guardian = Contact{"Ib", ""};
    other.medicines = {"b", "a"};
    other.conditions = {{"pacemaker", ""}, {"diabetes", "insulin"}};
    other.bloodPressure = BloodPressure{140, 90, "2023-01-01"};
    other.pregnancy = Pregnancy{12, "2024-02-01"};
    other.complaints = {{3, "knee", "", false}, {1, "back", "", false}, {2, "back", "", false}};

    const MergedPatient merge = okay(merged(keep, other));
    PatientRecord expected = named("Anna Meyer", "1980-03-05");
    expected.otherNames = {"Anna Maier"};
    expected.otherBorn = {"1980-05-03"};
    expected.phone = "1; 2";
    expected.email = "a@example.org";
    expected.address = "Low Lane 3";
    expected.doctor = Contact{"Dr Quill; Dr Reed 91", "90"};
    expected.guardian = Contact{"Ib", ""};
    expected.medicines = {"a", "b"};
    expected.conditions = {{"diabetes", "mild; insulin"}, {"pacemaker", ""}};
    expected.pregnancy = other.pregnancy;
    expected.bloodPressure = keep.bloodPressure;
    expected.otherBloodPressures = {{140, 90, "2023-01-01"}};
    expected.complaints = {{3, "back", "", false}, {4, "knee", "", false}, {5, "back", "", false}};
    EXPECT_EQ(merge.record, expected);
    const std::map<int, int> ids{{3, 4}, {1, 3}, {2, 5}};
    EXPECT_EQ(merge.complaintIds, ids) << "the first 'back' is the same complaint, the second stays one of its own";
}

TEST(PatientMergeTest, AContactsPhoneStaysWithItsName)
{
    const auto doctor = [](std::optional<Contact> keep, std::optional<Contact> other) {
        PatientRecord a = named("Ana");
        PatientRecord b = named("Ana");
        a.doctor = std::move(keep);
        b.doctor = std::move(other);
        return okay(merged(a, b)).record.doctor;
    };
    EXPECT_EQ(doctor(Contact{"A", "1"}, std::nullopt), (Contact{"A", "1"}));
    EXPECT_EQ(doctor(std::nullopt, Contact{"A", "1"}), (Contact{"A", "1"}));
    EXPECT_EQ(doctor(Contact{"A", "1"}, Contact{"A", "2"}), (Contact{"A", "1; 2"}));
    EXPECT_EQ(doctor(Contact{"A", ""}, Contact{"A", "2"}), (Contact{"A", "2"}));
    EXPECT_EQ(doctor(Contact{"A", ""}, Contact{"B", "2"}), (Contact{"A; B 2", ""}));
    EXPECT_EQ(doctor(Contact{"", "1"}, Contact{"B", "2"}), (Contact{"B; 1", "2"}));
    EXPECT_EQ(doctor(Contact{"A", "1"}, Contact{"", "2"}), (Contact{"A; 2", "1"}));
    EXPECT_EQ(doctor(Contact{"B; 1", "2"}, Contact{"B", "2"}), (Contact{"B; 1", "2"})) << "is there already";
    EXPECT_EQ(doctor(Contact{"A; B 2", "1"}, Contact{"B", "2"}), (Contact{"A; B 2", "1"})) << "is there already";
}

// Each thing that was in either record is in the merged one, at its place.
TEST(PatientMergeTest, LosesNothing)
{
    Random random(4);
    for (int i = 0; i < 300; ++i) {
        const PatientRecord keep = random.record();
        const PatientRecord other = random.record();
        const MergedPatient merge = okay(merged(keep, other));
        const PatientRecord &r = merge.record;
        EXPECT_EQ(r.name, keep.name);
        for (const PatientRecord *from : {&keep, &other}) {
            const auto allIn = [&](auto list, const char *what) {
                for (const auto &value : (*from).*list)
                    EXPECT_TRUE(holds(r.*list, value)) << what;
            };
            const auto inSingleOrList = [&](const auto &value, const auto &single, const auto &list, const char *what) {
                EXPECT_TRUE(single == value || holds(list, value)) << what;
            };
            inSingleOrList(from->name, r.name, r.otherNames, "name");
            for (const std::string &name : from->otherNames)
                inSingleOrList(name, r.name, r.otherNames, "other name");
            if (!from->born.empty())
                inSingleOrList(from->born, r.born, r.otherBorn, "born");
            for (const std::string &date : from->otherBorn)
                inSingleOrList(date, r.born, r.otherBorn, "other born");
            if (from->pregnancy)
                inSingleOrList(*from->pregnancy, r.pregnancy, r.otherPregnancies, "pregnancy");
            for (const Pregnancy &pregnancy : from->otherPregnancies)
                inSingleOrList(pregnancy, r.pregnancy, r.otherPregnancies, "other pregnancy");
            if (from->bloodPressure)
                inSingleOrList(*from->bloodPressure, r.bloodPressure, r.otherBloodPressures, "blood pressure");
            for (const BloodPressure &pressure : from->otherBloodPressures)
                inSingleOrList(pressure, r.bloodPressure, r.otherBloodPressures, "other blood pressure");
            using R = PatientRecord;
            for (auto text : {&R::mark, &R::language, &R::interpreter, &R::phone, &R::email, &R::address})
                EXPECT_NE((r.*text).find((*from).*text), std::string::npos) << (*from).*text;
            for (auto contact : {&R::doctor, &R::emergency, &R::guardian}) {
                if (!((*from).*contact))
                    continue;
                ASSERT_TRUE(r.*contact);
                const std::string all = (r.*contact)->name + "\n" + (r.*contact)->phone;
                EXPECT_NE(all.find(((*from).*contact)->name), std::string::npos);
                EXPECT_NE(all.find(((*from).*contact)->phone), std::string::npos);
            }
            allIn(&R::medicines, "medicines");
            allIn(&R::allergies, "allergies");
            allIn(&R::surgery, "surgery");
            allIn(&R::implants, "implants");
            for (const StandingCondition &condition : from->conditions)
                EXPECT_TRUE(std::any_of(r.conditions.begin(), r.conditions.end(), [&](const StandingCondition &c) {
                    return c.id == condition.id && c.note.find(condition.note) != std::string::npos;
                })) << condition.id;
        }
        for (const PatientComplaint &complaint : keep.complaints)
            EXPECT_TRUE(holds(r.complaints, complaint));
        ASSERT_EQ(merge.complaintIds.size(), other.complaints.size());
        std::set<int> newIds;
        for (PatientComplaint complaint : other.complaints) {
            complaint.id = merge.complaintIds.at(complaint.id);
            EXPECT_TRUE(newIds.insert(complaint.id).second) << "two complaints became one";
            EXPECT_TRUE(holds(r.complaints, complaint)) << complaint.text;
        }
        // Once more brings nothing new.
        EXPECT_EQ(okay(merged(r, other)).record, r);
    }
}

TEST(PatientMergeTest, WithItselfIsItself)
{
    EXPECT_EQ(okay(merged(wholeRecord(), wholeRecord())).record, wholeRecord());
}

TEST(PatientMergeTest, WhatBecomesTooLongIsRefused)
{
    PatientRecord keep = named("Ana");
    PatientRecord other = named("Ana");
    keep.mark = std::string(6000, 'a');
    other.mark = std::string(6000, 'b');
    expectError(merged(keep, other), ErrorCode::OutOfRange, "merged#/mark", "12002 characters");
    other.mark.clear();
    keep.medicines.assign(500, "a");
    other.medicines = {"b"};
    expectError(merged(keep, other), ErrorCode::OutOfRange, "merged#/medicines", "501 entries");
    other.medicines.clear();
    keep.complaints = {{PatientComplaint::highestId, "a", "", false}};
    other.complaints = {{1, "b", "", false}};
    expectError(merged(keep, other), ErrorCode::OutOfRange, "merged#/complaints/1/id", "1000000001");
}

} // namespace raphe
