// What a patient's record says that may be a condition of the caution rules: content of resources/safety/feeds.json, read
// strictly. It reminds; the practitioner confirms. Plain values and functions, thread-safe.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/base/Result.h"
#include "core/record/PatientRecord.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct ConditionKind;

/// The part of the record that is looked at.
enum class FeedField { Medicines, Implants, Surgery, Allergies, PregnancyWeek, BloodPressure, Age };
inline constexpr WordTable<FeedField, 7> feedFieldWords{{{FeedField::Medicines, "medicines"}, {FeedField::Implants, "implants"},
    {FeedField::Surgery, "surgery"}, {FeedField::Allergies, "allergies"}, {FeedField::PregnancyWeek, "pregnancy_week"},
    {FeedField::BloodPressure, "blood_pressure"}, {FeedField::Age, "age"}}};

/// A limit of blood pressure in mmHg (both numbers), of age in years or of pregnancy in weeks (the first alone).
struct FeedLimit {
    int first = 0; // systolic
    int second = 0; // diastolic
};

struct CautionFeed {
    std::string id;
    FeedField field{};
    std::vector<std::string> words; // of a text: lower case; one of four letters or more also within a word
    std::optional<FeedLimit> from; // of a number: this or more; of a pressure: either number
    std::optional<FeedLimit> to; // this or less; of a pressure with `from`: both numbers, alone: either
    std::vector<std::string> suggests; // ids of conditions; empty: a question that stays until the record is changed
    std::string say; // one sentence to the practitioner
    std::string source;
    Reading read{};
};

/// Unknown fields, words and ids, duplicates, and a feed of a text without words or of a number without limits are errors with
/// file and JSON pointer.
[[nodiscard]] Result<std::vector<CautionFeed>> readCautionFeeds(
    std::string_view text, const std::vector<ConditionKind> &conditions);

struct Reminder {
    const CautionFeed *feed = nullptr;
    std::string because; // what the record says
};

/// Which feeds the record calls for on that day (ISO 8601), but for those whose conditions are all confirmed or ruled out
/// already. A pregnancy counts on from the day of its week, for as long as 60 weeks.
[[nodiscard]] std::vector<Reminder> remindersOf(const std::vector<CautionFeed> &feeds, const PatientRecord &record,
    const std::vector<std::string> &confirmed, const std::string &today);

/// The conditions that a reminder still puts: neither confirmed nor ruled out. What was ruled out at one age stays so at another.
[[nodiscard]] std::vector<std::string> openOf(
    const Reminder &reminder, const PatientRecord &record, const std::vector<std::string> &confirmed);

/// The medicines and allergies of the record in which no feed finds a word that it knows: no rule watches them.
[[nodiscard]] std::vector<std::string> unwatched(const std::vector<CautionFeed> &feeds, const PatientRecord &record);

} // namespace raphe
