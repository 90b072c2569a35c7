// Who among the practice's patients may be one person written down twice. Only a hint for a person who looks at both records.
// Plain functions of plain values; any thread.
#pragma once

#include "core/record/PatientDuplicates.h"
#include "core/record/PatientRecord.h"

#include <cstddef>
#include <span>
#include <vector>

namespace raphe {

struct PatientPair {
    std::size_t one = 0; // index into the records
    std::size_t other = 0; // of a later one
    double likeness = 0; // duplicateLikeness to 1
    bool operator==(const PatientPair &) const = default;
};

/// Our choice, no source: a second or two at most, and more pairs than anybody looks through.
struct PairLimits {
    std::size_t comparisons = 2'000'000; // of two people
    std::size_t pairs = 1'000; // that are given
};

struct PatientPairs {
    std::vector<PatientPair> found; // most alike first, then in the order of the records
    bool isAll = true; // false: a limit was met, and pairs may be missing
};

/// The pairs whose likeness is at least duplicateLikeness. Compared are those that share a birth date or a word of a name, what
/// the fewest share first: when the comparisons do not suffice it is the commonest names that are left out.
[[nodiscard]] PatientPairs findPatientPairs(std::span<const PatientRecord> records, const PairLimits &limits = {});

} // namespace raphe
