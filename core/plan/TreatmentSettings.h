// What a practice says of its own way of treating: the time that every treatment takes besides the work, and techniques of its
// own. Plain values, kept with the settings of the practice.
#pragma once

#include "core/base/JsonReader.h"
#include "core/plan/Technique.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// One that is worked like a technique of the program: for the same tissue and layers, with its cautions, consent, rest, and
/// group of the scope of practice.
struct OwnTechnique {
    std::string id;
    std::string like; // id of a technique of the program
    std::string name;
    int seconds = 60; // at one place
    std::string how;
    std::string caution; // when to stop
    bool isPreferred = false; // chosen where the one that it is like would be
    bool operator==(const OwnTechnique &) const = default;
};

struct TreatmentSettings {
    std::optional<ReservedTimes> reserved; // nothing: as the program has it
    std::vector<OwnTechnique> techniques; // ids differ
    bool operator==(const TreatmentSettings &) const = default;
};

/// Unknown fields, texts that are missing, times that cannot be and duplicate ids throw Error, inside guarded().
[[nodiscard]] TreatmentSettings readTreatmentSettings(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json treatmentSettingsJson(const TreatmentSettings &settings);

/// The program's techniques and times with those of the practice. Fails with UnknownId or Duplicate, and the name of the
/// technique, when it is like none of the program, or has an id of one.
[[nodiscard]] Result<Techniques> withOwn(Techniques known, const TreatmentSettings &settings);

} // namespace raphe
