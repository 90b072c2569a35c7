// What the patient tells at a follow-up visit about the time since the last one. What is new and what is gone follows from the
// two visits and is not kept here.
#pragma once

#include "core/base/Words.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

enum class Course { Better, Same, Worse };
inline constexpr WordTable<Course, 3> courseWords{{{Course::Better, "better"}, {Course::Same, "same"}, {Course::Worse, "worse"}}};

/// What came of the last treatment within two days. Bad: more than soreness that passes.
enum class Reaction { None, Sore, Bad };
inline constexpr WordTable<Reaction, 3> reactionWords{
    {{Reaction::None, "none"}, {Reaction::Sore, "sore"}, {Reaction::Bad, "bad"}}};

enum class Kept { Done, Part, Not };
inline constexpr WordTable<Kept, 3> keptWords{{{Kept::Done, "done"}, {Kept::Part, "part"}, {Kept::Not, "not"}}};

/// What was promised at the last visit, by either of the two.
struct Promise {
    std::string task;
    std::optional<Kept> kept; // nothing: not asked yet
    bool operator==(const Promise &) const = default;
};

struct SinceLast {
    std::optional<Course> course;
    std::optional<Reaction> reaction;
    std::string reactionTold; // in the patient's words
    std::vector<Promise> promises;
    bool operator==(const SinceLast &) const = default;
};

} // namespace raphe
