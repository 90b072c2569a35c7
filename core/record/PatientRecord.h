// The patient's record as a plain value: who it is, what bears on the work, and the complaints. No storage, no window, no
// visits: a visit names the complaint that it is about by its id. Around it: the JSON form in PatientRecordJson.h,
// searching in PatientSearch.h, two records of one person in PatientLikeness.h and PatientMerge.h.
// Texts are UTF-8. Plain functions of plain values; any thread.
#pragma once

#include "core/base/Result.h"
#include "core/base/Words.h"

#include <cstddef>
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

/// A condition that the record let suspect and that the patient does not have.
struct RuledOut {
    std::string id; // as in StandingCondition
    std::string because; // what the record said
    bool operator==(const RuledOut &) const = default;
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

/// For published reference values, which are given for women and men; may be left unsaid, then none is shown.
enum class Sex { Female, Male };
inline constexpr WordTable<Sex, 2> sexWords{{{Sex::Female, "female"}, {Sex::Male, "male"}}};

struct PatientRecord {
    /// Centimetres. The bounds only catch slips of the pen; our choice, no source.
    static constexpr int leastHeight = 40;
    static constexpr int greatestHeight = 260;
    static constexpr std::size_t longestText = 10'000; // code points, for each text
    static constexpr std::size_t longestList = 500; // entries, for each list

    std::string name; // never blank
    std::vector<std::string> otherNames; // also known as; a merge puts the second name here
    std::string born; // ISO 8601 date or empty
    std::vector<std::string> otherBorn; // a merge puts a date here that differs
    std::optional<Sex> sex;
    std::optional<int> height; // standing, in centimetres
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
    std::vector<RuledOut> ruledOut;
    std::optional<Pregnancy> pregnancy;
    std::vector<Pregnancy> otherPregnancies; // a merge puts a statement here that differs
    std::optional<BloodPressure> bloodPressure;
    std::vector<BloodPressure> otherBloodPressures; // a merge puts a reading here that differs
    std::vector<std::string> unclear; // as it was written, and cannot be; asked about at each visit
    std::vector<PatientComplaint> complaints;
    bool operator==(const PatientRecord &) const = default;
};

/// What `OutOfRange` says of a date.
inline constexpr std::string_view dateAllowed = ", allowed: a real date, YYYY-MM-DD";

/// Whether the record keeps the rules that stand in the comments above; what is in order can be written and read back
/// equal. The error's place is "file#/pointer" in the record's JSON form.
[[nodiscard]] Result<Done> checkPatient(const PatientRecord &record, const std::string &file);

} // namespace raphe
