// What was done at a visit, as plain values: the steps with their times, what the patient said, what went wrong, and where the
// work stands when it is interrupted. The JSON form is in TreatmentJson.h.
#pragma once

#include "core/anatomy/Place.h"
#include "core/base/Words.h"
#include "core/record/PatientPosition.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// How much of a step was done; confirmed by the practitioner.
enum class StepDone { Done, Partly, Skipped };
inline constexpr WordTable<StepDone, 3> stepDoneWords{
    {{StepDone::Done, "done"}, {StepDone::Partly, "partly"}, {StepDone::Skipped, "skipped"}}};

/// What the patient said, and what was made of it. Familiar: this is their pain; eased: less than at the beginning; sore: too
/// much. Lighter: the hands gave way.
enum class StepWord { Familiar, Eased, Sore, Lighter };
inline constexpr WordTable<StepWord, 4> stepWordWords{
    {{StepWord::Familiar, "familiar"}, {StepWord::Eased, "eased"}, {StepWord::Sore, "sore"}, {StepWord::Lighter, "lighter"}}};

struct TreatmentStep {
    static constexpr int longest = 4 * 3600; // seconds
    static constexpr double strongestSuction = 80; // kPa below the pressure of the air

    Place place;
    std::string technique; // id
    std::optional<Position> position;
    int planned = 0; // seconds of work; 0: not planned
    int rest = 0; // seconds to rest before it, as proposed
    std::string began; // local time, HH:MM:SS; empty: not begun
    int seconds = 0; // of work, without what lay between
    std::vector<StepWord> words; // in the order in which they were said
    std::vector<std::string> minded; // rules (id) that held there and were read before the work began
    std::optional<double> kPa; // of cups, below the pressure of the air
    std::optional<StepDone> done; // nothing: not confirmed yet
    std::string note;
    [[nodiscard]] bool hasBegun() const { return !began.empty(); }
    bool operator==(const TreatmentStep &) const = default;
};

/// Something that should not have happened.
struct AdverseEvent {
    std::string time; // local, HH:MM:SS
    std::vector<std::string> signs; // by their id in the list that is asked when the work is stopped; may be empty
    std::string told; // what happened, in words
    std::string answer; // what was done about it
    bool operator==(const AdverseEvent &) const = default;
};

struct TreatmentLog {
    std::vector<TreatmentStep> steps; // begun, or skipped, in the order of time
    std::vector<TreatmentStep> ahead; // still to do, in the order of the plan
    std::string running; // local time, HH:MM:SS, when the clock of the last of `steps` was last seen running; empty: it stands
    std::vector<AdverseEvent> events;
    bool operator==(const TreatmentLog &) const = default;
};

[[nodiscard]] TreatmentLog mirrored(TreatmentLog treatment);

} // namespace raphe
