// The patient's record as a plain value: who it is, what bears on the work, and the complaints. No storage, no window, no
// visits: a visit names the complaint that it is about by its id. The JSON form is in PatientRecordJson.h. Also what is
// done with records as a whole: checking, searching, finding two records of one person and making one of them.
// Texts are UTF-8. Plain functions of plain values; any thread.
#pragma once

#include "core/base/Result.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// A doctor, an emergency contact, a guardian. At least one of the two is there.
struct Contact {
    std::string name;
    std::string phone;
    bool operator==(const Contact &) const = default;
};

struct Surgery {
    static constexpr int firstYear = 1880; // our choice, no source
    static constexpr int lastYear = 2200;
    std::string text;
    std::optional<int> year;
    bool operator==(const Surgery &) const = default;
};

struct Implant {
    std::string text;
    std::string place; // in the practitioner's words; empty when not told
    bool operator==(const Implant &) const = default;
};

/// What the patient has for long or takes, by its id in resources/safety/conditions.json. Whether there is such an id is
/// checked where the rules are read.
struct StandingCondition {
    std::string id;
    std::string note;
    bool operator==(const StandingCondition &) const = default;
};

/// Week of pregnancy as counted on a day.
struct Pregnancy {
    static constexpr int firstWeek = 1;
    static constexpr int lastWeek = 42;
    int week = firstWeek;
    std::string date; // ISO 8601 date
    bool operator==(const Pregnancy &) const = default;
};

/// In mmHg. The bounds only catch slips of the pen; our choice, no source.
struct BloodPressure {
    static constexpr int lowestSystolic = 40;
    static constexpr int highestSystolic = 300;
    static constexpr int lowestDiastolic = 20;
    static constexpr int highestDiastolic = 200;
    int systolic = 0; // above the diastolic
    int diastolic = 0;
    std::string date; // ISO 8601 date
    bool operator==(const BloodPressure &) const = default;
};

/// What the patient comes for. One person can have several at a time.
struct PatientComplaint {
    static constexpr int highestId = 1'000'000'000;
    int id = 1; // from 1; unique within the record, never used again
    std::string text; // in the patient's words
    std::string since; // in the patient's words; empty when not told
    bool closed = false;
    bool operator==(const PatientComplaint &) const = default;
};

struct PatientRecord {
    static constexpr std::size_t longestText = 10'000; // code points, for each text
    static constexpr std::size_t longestList = 500; // entries, for each list

    std::string name; // never blank
    std::vector<std::string> otherNames; // also known as; a merge puts the second name here
    std::string born; // ISO 8601 date or empty
    std::vector<std::string> otherBorn; // a merge puts a date here that differs
    std::string mark; // what the practitioner recognises the person by
    std::string language;
    std::string interpreter; // empty when none is needed
    std::string phone;
    std::string email;
    std::string address;
    std::optional<Contact> doctor;
    std::optional<Contact> emergency;
    std::optional<Contact> guardian;
    std::vector<std::string> medicines;
    std::vector<std::string> allergies;
    std::vector<Surgery> surgery;
    std::vector<Implant> implants;
    std::vector<StandingCondition> conditions; // each id once
    std::optional<Pregnancy> pregnancy;
    std::vector<Pregnancy> otherPregnancies; // a merge puts a statement here that differs
    std::optional<BloodPressure> bloodPressure;
    std::vector<BloodPressure> otherBloodPressures; // a merge puts a reading here that differs
    std::vector<PatientComplaint> complaints;
    bool operator==(const PatientRecord &) const = default;
};

/// What `OutOfRange` says of a date.
inline constexpr std::string_view dateAllowed = ", allowed: a real date, YYYY-MM-DD";

/// Whether the record keeps the rules that stand in the comments above; what is in order can be written and read back
/// equal. The error's place is "file#/pointer" in the record's JSON form.
[[nodiscard]] Result<Done> checkPatient(const PatientRecord &record, const std::string &file);

[[nodiscard]] bool isUtf8(std::string_view text);

/// How many code points the UTF-8 text has.
[[nodiscard]] std::size_t characterCount(std::string_view text);

/// Lower case letters and digits without accents, single spaces between words. A word that is a date in digits, as
/// 5.3.1980, 05/03/1980 or 1980-03-05, keeps its points (a slash becomes one) and hyphens.
[[nodiscard]] std::string foldedWords(std::string_view text);

/// What is searched for a patient: names, days of birth (1980-03-05, 05.03.1980, 5.3.1980, 05031980) and complaints,
/// folded.
[[nodiscard]] std::string searchText(const PatientRecord &record);

/// Whether every word of the query, folded, occurs somewhere in the folded text. An empty query matches everybody.
[[nodiscard]] bool matches(std::string_view folded, std::string_view query);

/// What likeness looks at, prepared once for many comparisons.
struct LikenessKey {
    std::vector<std::vector<std::string>> names; // words of each name, sorted, each once
    std::vector<std::string> born;
};
[[nodiscard]] LikenessKey likenessKey(const PatientRecord &record);

/// How much two records look like one person: 0 to 1, the same either way round. The likeness of the names times a
/// factor for the birth dates (bornLikeness); with several names or dates the best counts.
/// Names: words are paired best first, in any order, so that a swapped first and last name costs nothing. A pair counts
/// 1 - edits / length of the longer word, and nothing below a half. The sum is divided by the number of words of the
/// shorter name, plus a half for each further word of the longer one. Only the first 8 words are looked at.
/// Our choice, no source.
[[nodiscard]] double likeness(const PatientRecord &a, const PatientRecord &b);
[[nodiscard]] double likeness(const LikenessKey &a, const LikenessKey &b);

/// 1 for the same birth date; 0.8 where one is missing, day and month are swapped or one digit differs; else 0.3.
/// Our choice, no source.
[[nodiscard]] double bornLikeness(const LikenessKey &a, const LikenessKey &b);

struct MergedPatient {
    PatientRecord record;
    std::map<int, int> complaintIds; // from the complaints' ids in `other` to those in the record
};

/// One record of two of the same person; nothing is lost. Single texts that differ stand one after the other with '; '
/// between. The name, birth date, pregnancy and blood pressure of `keep` stay, and those of `other` that differ go into
/// the lists beside them. A contact of another name is added to the name together with its phone. Lists are united.
/// The complaints of `other` get new ids, unless `keep` has the very same one. A text or list that becomes too long is an
/// error with its place, as of checkPatient.
[[nodiscard]] Result<MergedPatient> merged(const PatientRecord &keep, const PatientRecord &other);

} // namespace raphe
