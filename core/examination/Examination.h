// All that is known of examining: movements, tests, clusters, sheets, sources. Content of resources/examination, read strictly.
// Plain values, immutable after reading; thread-safe.
#pragma once

#include "core/base/Result.h"
#include "core/examination/ExamTest.h"
#include "core/examination/Movement.h"
#include "core/examination/Sheet.h"
#include "core/record/Visit.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

class Atlas;
class SafetyRules;

struct Examination {
    std::vector<ExamSource> sources;
    std::vector<Movement> movements;
    std::vector<ExamTest> tests;
    std::vector<Cluster> clusters;
    std::vector<Sheet> sheets;

    // nullptr when there is no such thing.
    [[nodiscard]] const ExamSource *findSource(std::string_view id) const;
    [[nodiscard]] const Movement *findMovement(std::string_view id) const;
    [[nodiscard]] const ExamTest *findTest(std::string_view id) const;
    [[nodiscard]] const Sheet *findSheet(std::string_view id) const;
};

/// The four files of resources/examination. Unknown fields, words and ids, duplicates, figures that cannot be, a source that
/// nobody names and a test or movement that stands on no sheet are errors with file and JSON pointer.
struct ExaminationTexts {
    std::string_view sources;
    std::string_view movements;
    std::string_view tests;
    std::string_view sheets;
};
[[nodiscard]] Result<Examination> readExamination(const ExaminationTexts &texts, const Atlas &atlas, const SafetyRules &rules);

/// The content that is built into the program.
[[nodiscard]] Result<Examination> readEmbeddedExamination(const Atlas &atlas, const SafetyRules &rules);

/// Fails when the visit names a movement or test that there is not, on a side that it has not, with a value beyond what can be,
/// or with an answer of another form. `file` is used in messages.
[[nodiscard]] Result<Done> checkExamined(const Examination &examination, const Visit &visit, const std::string &file);

} // namespace raphe
