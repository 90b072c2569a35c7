// What was answered when a warning sign was asked for, and what was decided. Which signs there are, and what follows, is known to
// core/safety.
#pragma once

#include "core/anatomy/Place.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What the practitioner decided about a sign that is there.
enum class Decision {
    EmergencyServices, // called, or taken to hospital at once
    CareSameDay, // sent to licensed medical care on this day
    Referred, // to be judged by licensed medical care before this is treated
    InCare, // known to the treating team, who agree to the work
    Explained // asked further, and there is a harmless reason
};
inline constexpr WordTable<Decision, 5> decisionWords{
    {{Decision::EmergencyServices, "emergency-services"}, {Decision::CareSameDay, "care-same-day"},
        {Decision::Referred, "referred"}, {Decision::InCare, "in-care"}, {Decision::Explained, "explained"}}};

struct WarningAnswer {
    std::string sign; // its id in resources/safety/warning-signs.json
    bool isThere = false;
    std::string asked; // ISO 8601 date
    // Of a sign that is there:
    std::vector<Place> at; // where, if it has a place
    std::optional<Decision> decided; // nothing: not yet, and the work waits
    std::string why;
    std::string told; // who was told
    bool isMoved = false; // told at a visit that was moved to another patient: this one has to be asked
    bool operator==(const WarningAnswer &) const = default;
};

} // namespace raphe
