// The examination's part of the visit file: fields `measures`, `tests`, `retest` and `timeline` of
// resources/schema/visit.schema.json. For VisitJson. The readers throw Error inside guarded(). Which movements and tests there
// are is known to core/examination.
#pragma once

#include "core/base/JsonReader.h"
#include "core/record/Measure.h"
#include "core/record/TestResult.h"
#include "core/record/Timeline.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace raphe {

/// Each movement once on a side and in a mode.
[[nodiscard]] std::vector<Measure> readMeasures(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json measuresJson(const std::vector<Measure> &measures);

/// Each test once on a side.
[[nodiscard]] std::vector<TestResult> readTestResults(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json testResultsJson(const std::vector<TestResult> &results);

[[nodiscard]] RetestMark readRetest(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json retestJson(const RetestMark &mark);

/// In the order of the file.
[[nodiscard]] std::vector<Moment> readTimeline(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json timelineJson(const std::vector<Moment> &timeline);

} // namespace raphe
