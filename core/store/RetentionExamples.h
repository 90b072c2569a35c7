// How long records are kept, as bodies of the trade say it: examples to choose from, each with its source. Content of
// resources/retention.json, read strictly. They are examples and no legal advice; the practice sets its own number.
// Plain values; thread-safe.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/store/Retention.h"

#include <string_view>

namespace raphe {

struct RetentionExample {
    std::string label; // whose rule it is, and where
    RetentionRule rule;
    std::string source;
    Reading read{}; // how we read the source
};

/// In the order of the file. Fails with the file and the place of the first mistake.
[[nodiscard]] Result<std::vector<RetentionExample>> readRetentionExamples(std::string_view json, const std::string &file);
/// Those that are built into the program.
[[nodiscard]] Result<std::vector<RetentionExample>> readEmbeddedRetentionExamples();

} // namespace raphe
