// What the patient answered when something was explained and asked. Which items there are, and what follows from an answer, is
// known to core/safety.
#pragma once

#include "core/base/Words.h"

#include <optional>
#include <string>

namespace raphe {

/// Withdrawn: given before, and taken back.
enum class ConsentState { Given, Refused, Withdrawn };
inline constexpr WordTable<ConsentState, 3> consentStateWords{
    {{ConsentState::Given, "given"}, {ConsentState::Refused, "refused"}, {ConsentState::Withdrawn, "withdrawn"}}};

/// What the patient said when offered that somebody else be in the room.
enum class Chaperone { Declined, Present };
inline constexpr WordTable<Chaperone, 2> chaperoneWords{{{Chaperone::Declined, "declined"}, {Chaperone::Present, "present"}}};

/// Who consents for the patient.
struct Guardian {
    std::string name;
    std::string relation;
    bool operator==(const Guardian &) const = default;
};

struct ConsentAnswer {
    std::string item; // its id in resources/safety/consent.json
    ConsentState state{};
    std::string asked; // ISO 8601 date of the answer
    std::optional<Chaperone> chaperone; // nothing: not offered
    std::string chaperoneName; // who was there
    std::optional<Guardian> guardian;
    std::string remark; // what was asked, or agreed beside it
    bool operator==(const ConsentAnswer &) const = default;
};

} // namespace raphe
