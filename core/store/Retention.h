// Which records have been kept as long as the practice chose to keep them, so that a person may consider erasing them. It only
// proposes: local law and the practitioner decide, and nothing is erased here.
// Days are dates of the local calendar, ISO 8601. A year after 29 February ends on 1 March when there is no 29 February.
#pragma once

#include "core/store/Practice.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace raphe {

/// Until a patient was this old at the last visit, in years, they count as a child. It follows from the ages below, where the
/// eldest child is 17.
inline constexpr int adultAge = 18;

struct RetentionRule {
    static constexpr int longest = 100; // for each number; our choice: more is a slip of the pen
    int years = 0; // after the last visit; 0: not set, and nobody is due
    /// Birthdays until which the record of a child is kept at least; 0: no such rule. 25, and 26 for who was 17 at the end:
    /// General Chiropractic Council (United Kingdom), guidance on records,
    /// https://gcc-uk.org/gcc-news/news/entry/registrant-guidance
    int childUntil = 25;
    int childOf17Until = 26;
    bool operator==(const RetentionRule &) const = default;
};

/// What counts of one patient.
struct KeptRecord {
    std::int64_t patient = 0;
    std::string name;
    std::string born; // ISO 8601 date; empty when it is not known
    std::size_t visits = 0; // but those entered in error
    std::string lastVisit; // ISO 8601 date; without visits it says nothing
    bool operator==(const KeptRecord &) const = default;
};

struct DueRecord {
    KeptRecord record;
    std::string from; // ISO 8601 date: the day from which it may be considered
    bool mayBeChild = false; // the birth date is missing, or after the last visit: the rule for children could not be kept
    bool operator==(const DueRecord &) const = default;
};

struct RetentionReview {
    std::vector<DueRecord> due; // in order of `from`, then of the last visit, then of the patient's number
    std::vector<KeptRecord> unclear; // not proposed: the last visit has no date that can be read; by the patient's number
};

/// Who is due on `today`. Patients without a visit are not. Fails with OutOfRange when today is no date, or a number of the rule
/// is below 0 or above RetentionRule::longest.
[[nodiscard]] Result<RetentionReview> reviewRetention(
    std::span<const KeptRecord> records, const RetentionRule &rule, const std::string &today);

/// What counts of a patient, joined records included. Of several birth dates the latest counts. When a visit has no date that can
/// be read, the last visit has none either.
[[nodiscard]] Result<KeptRecord> readKeptRecord(const Practice &practice, std::int64_t patient);
/// Of all patients. Opens every record and visit: not for the thread of the windows.
[[nodiscard]] Result<std::vector<KeptRecord>> readKeptRecords(const Practice &practice);

} // namespace raphe
