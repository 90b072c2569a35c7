// A typed line that says what was done off the plan: 'did right piriformis sustained pressure 90 s'. Technique, time and the
// suction of cups are taken out of the line; what is left is read as the place, with the questions that a finding there would
// raise. Nothing is guessed: no side, no time, no technique. Plain values and functions; any thread; any bytes are taken.
#pragma once

#include "core/language/LineReading.h"
#include "core/plan/Technique.h"
#include "core/record/TreatmentLog.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct WorkReading {
    /// Place, technique, seconds, and kPa where it was said; when it began and how much was done is for the caller to say.
    /// Nothing while anything is open or wrong.
    std::optional<TreatmentStep> step;
    std::vector<LineQuestion> questions; // about the place
    std::vector<LineMistake> mistakes;
    std::string problem; // what is missing or cannot be, and what to type; one sentence or two, translated
};

/// It begins with a word for work.
[[nodiscard]] bool isWorkLine(std::string_view line, const LineWords &words);

/// Of a line that is one; of another the first words are read as part of the place.
[[nodiscard]] WorkReading readWorkLine(std::string_view line, const LineWords &words, const Techniques &techniques);

} // namespace raphe
