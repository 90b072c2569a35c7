// Intake's part of the visit file: complaints, consents and what was told of the time since the last visit (fields `complaints`,
// `consents`, `since_last` of resources/schema/visit.schema.json). For VisitJson. The readers throw Error inside guarded().
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/Complaint.h"
#include "core/record/ConsentAnswer.h"
#include "core/record/SinceLast.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace raphe {

/// A date of the Gregorian calendar, or empty when it is not there.
[[nodiscard]] std::string readDate(const JsonReader &owner, std::string_view name);

[[nodiscard]] std::vector<Complaint> readComplaints(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json complaintsJson(const std::vector<Complaint> &complaints);

/// Each item once.
[[nodiscard]] std::vector<ConsentAnswer> readConsents(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json consentsJson(const std::vector<ConsentAnswer> &consents);

[[nodiscard]] SinceLast readSinceLast(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json sinceLastJson(const SinceLast &since);

} // namespace raphe
