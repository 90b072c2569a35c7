// Whether a number changed between two readings in one visit: better or worse, and whether by more than the error of reading it.
// Plain functions of plain values; nothing fails, any thread.
#pragma once

#include <optional>
#include <string>

namespace raphe {

/// Within: the published error explains it. Unknown: no error is published for this reading.
enum class Beyond { Within, Beyond, Unknown };

/// A published figure, in the unit of the reading.
struct PublishedFigure {
    double value = 0;
    std::string source; // author and year
    bool operator==(const PublishedFigure &) const = default;
};

enum class Better { More, Less };

/// What a reading is held against.
struct ReadingScale {
    Better better = Better::More;
    std::optional<PublishedFigure> error; // two readings of the same differ by no more
    std::optional<PublishedFigure> important; // the least change that matters to patients
    std::string unit; // after a number: ' degrees'; may be empty
};

struct ReadingChange {
    enum class Course { Better, Same, Worse, Unsaid }; // Unsaid: it differs, and nothing is known of the error
    double by = 0; // now less before
    Course course{};
    Beyond beyond{};
    bool isImportant = false;
    bool operator==(const ReadingChange &) const = default;
};

/// Beyond: the difference is greater than the error. Important: it is at least what matters, and beyond the error. Without a
/// published error nothing is called better or worse.
[[nodiscard]] ReadingChange changeOf(double before, double now, const ReadingScale &scale);

/// 'better by 12 degrees, beyond the test's error (8 degrees, Kolber 2011)'; 'more by 12 degrees: error unknown' (translated).
[[nodiscard]] std::string inWords(const ReadingChange &change, const ReadingScale &scale);

// The scales that are no movements. Each figure with its source; tests/published/scales.json has them too.
/// Numeric rating of pain, 0 to 10: least detectable change in 1,232 inpatients with trouble of the spine (secondhand), least
/// important change as in ScaleChange.h.
[[nodiscard]] ReadingScale painScale();
/// Grades of tenderness and of restriction: no error is published for them.
[[nodiscard]] ReadingScale gradeScale();

} // namespace raphe
