// The content that is built into the program, read once for all tests of a run. When it cannot be read the functions
// throw std::runtime_error with the code, the place and the detail, which GoogleTest reports as a failure of the test.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/anatomy/Drawing.h"
#include "core/plan/Advice.h"
#include "core/reasoning/Constants.h"
#include "core/reasoning/Linkage.h"
#include "core/reasoning/Reason.h"

#include <nlohmann/json.hpp>

#include <ostream>
#include <string>

namespace raphe {

// For messages of GoogleTest.
std::ostream &operator<<(std::ostream &out, const StructureId &id);
std::ostream &operator<<(std::ostream &out, const Place &place);
std::ostream &operator<<(std::ostream &out, ErrorCode code);

} // namespace raphe

namespace raphe::test {

/// "code 7 at file#/pointer: detail".
[[nodiscard]] std::string inWords(const Error &error);

/// A file of resources/, as it lies in the sources: to be changed and read again.
[[nodiscard]] nlohmann::json shipped(const std::string &file);

[[nodiscard]] const Atlas &atlas();
[[nodiscard]] const Body &body();
[[nodiscard]] const Constants &constants();
[[nodiscard]] const Linkage &linkage();
[[nodiscard]] const Reasoner &reasoner();
[[nodiscard]] const SafetyRules &safetyRules();
[[nodiscard]] const Regions &regions();
[[nodiscard]] const Adviser &adviser();

} // namespace raphe::test
