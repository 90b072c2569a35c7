// A movement that can be watched or measured, what is known of its usual range, and how far two readings of it can differ by
// measuring alone. Content of resources/examination/movements.json. Plain values.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/record/Measure.h"
#include "core/record/PatientRecord.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// Where a figure was published, and how we read it.
struct ExamSource {
    std::string id;
    std::string citation;
    std::string doi; // empty: none known
    Reading read{};
};

enum class Unit { Degrees, Millimetres };
inline constexpr WordTable<Unit, 2> unitWords{{{Unit::Degrees, "degrees"}, {Unit::Millimetres, "mm"}}};

/// The usual range of people of one sex and age, measured in one way; in the unit of the movement.
struct Norm {
    MoveMode mode{};
    Device device{};
    std::optional<Sex> sex; // nothing: both together
    int from = 0; // years, the youngest
    int to = 0; // years, the oldest
    double mean = 0;
    std::optional<int> people; // in the study
    std::optional<double> sd; // nothing: the source gives none, and no z-score follows
    std::string source; // id
    Reading read{}; // of this figure, which can be worse than that of the source
};

/// MDC: smallest detectable change at 90 or 95 % confidence; SDC the same at 95 %; SEM: standard error of measurement.
enum class ErrorKind { Mdc90, Mdc95, Sdc, Sem };
inline constexpr WordTable<ErrorKind, 4> errorKindWords{
    {{ErrorKind::Mdc90, "mdc90"}, {ErrorKind::Mdc95, "mdc95"}, {ErrorKind::Sdc, "sdc"}, {ErrorKind::Sem, "sem"}}};

/// The published error of reading a movement in one way; in the unit of the movement.
struct ReadingError {
    std::optional<MoveMode> mode; // nothing: the source does not say
    Device device{};
    ErrorKind kind{};
    double value = 0; // above 0
    std::string source;
    Reading read{};

    /// How far two readings must lie apart to be more than error: 1.96 * sqrt(2) * SEM (Weir 2005, J Strength Cond Res 19:231,
    /// from memory), and the others as they are.
    [[nodiscard]] double least() const;
};

struct Movement {
    std::string id;
    std::string name; // in the trade's words, lower case
    std::string plain; // in the patient's words
    std::string group; // part of the body
    bool isPaired = true; // has a right and a left
    Unit unit{};
    double least = 0; // what can be written
    double furthest = 0;
    bool lessIsBetter = false; // a gap that is left
    std::vector<StructureId> joints; // that move
    std::string position;
    std::vector<std::string> actions; // ids of the caution rules
    std::vector<Norm> norms;
    std::vector<ReadingError> errors;
};

} // namespace raphe
