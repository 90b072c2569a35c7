// Who in a patient list may be there already, among the practice's patients or further up in the list.
// Plain functions of plain values; any thread.
#pragma once

#include "core/record/CsvRows.h"
#include "core/record/PatientRecord.h"

#include <cstddef>
#include <span>
#include <vector>

namespace raphe {

/// From this likeness on two records are shown as perhaps one person. Our choice, no source.
inline constexpr double duplicateLikeness = 0.75;

struct CsvDuplicate {
    enum class Among { Existing, Rows };
    std::size_t row = 0; // index into the rows
    Among among{};
    std::size_t other = 0; // index into the existing records, or of an earlier row
    double likeness = 0;
    bool operator==(const CsvDuplicate &) const = default;
};

struct CsvDuplicates {
    std::vector<CsvDuplicate> found;
    bool comparedAll = true; // false: there was too much alike to compare it all, and duplicates may be missing
};

/// For each row the one most like it among the existing records, and among the earlier rows. Compared are those that
/// share a date of birth or a word of a name, up to `mostComparisons` times two people. Rows with a mistake are passed over.
[[nodiscard]] CsvDuplicates findDuplicates(
    std::span<const CsvRow> rows, std::span<const PatientRecord> existing, std::size_t mostComparisons);

} // namespace raphe
