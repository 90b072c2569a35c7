// Whose visits are whose, among files that were given together.
#pragma once

#include "core/record/Visit.h"

#include <vector>

namespace raphe::batch {

/// For each visit the number of its patient, from 1 in the order of the visits: patients are told apart by name and birth date.
/// A visit without a patient's name has a patient of its own.
[[nodiscard]] std::vector<int> patientNumbers(const std::vector<Visit> &visits);

} // namespace raphe::batch
