// The warning signs that are asked for before hands-on work: content of resources/safety/warning-signs.json, read strictly. Plain
// values, immutable after reading; thread-safe.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/base/Result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

class Atlas;
struct ConditionKind;

/// How fast somebody else must see the patient. The order of the enumerators is that of gravity.
enum class WarningLevel {
    BeforeTreating, // licensed medical care judges it before this is treated
    SameDay, // on this day
    EmergencyNow // at once; nothing is treated at this visit
};
inline constexpr WordTable<WarningLevel, 3> warningLevelWords{{{WarningLevel::BeforeTreating, "before-treating"},
    {WarningLevel::SameDay, "same-day"}, {WarningLevel::EmergencyNow, "emergency-now"}}};

/// A part of the body that complaints are asked about together.
struct WarningArea {
    std::string id;
    std::string name; // lower case
    std::vector<StructureId> regions; // surface regions; some belong to several areas
};

struct WarningSign {
    std::string id;
    WarningLevel level{};
    std::vector<std::string> areas; // of the complaint; empty: asked of everybody
    std::optional<int> ageFrom; // years; asked from this age on
    std::optional<int> ageBelow; // years; asked below this age
    bool ifPregnant = false; // asked of the pregnant only
    bool ifInjured = false; // asked after an injury only
    bool byPractitioner = false; // seen or felt by the practitioner, not asked of the patient
    bool alone = false; // asked only when nobody else can hear or read along
    std::vector<std::string> askedWith; // asked only once one of these is there
    std::string name; // in the trade's words, lower case
    std::string ask; // the question; its answer is yes or no
    std::string means; // what it could mean at worst
    std::string act; // what to do
    std::vector<std::string> suspects; // ids of conditions that hold from then on
    int staleDays = 0; // how many days an answer holds; 0: on its own day
    int points = 0; // in the two-level score of a leg clot (Wells 2003); shown, and nothing is released by it
    std::string source;
    Reading read{}; // how we read the source
};

struct WarningSigns {
    std::vector<WarningArea> areas;
    std::vector<WarningSign> signs;

    /// nullptr when there is no such sign.
    [[nodiscard]] const WarningSign *find(std::string_view id) const;
};

/// Unknown fields, words and ids, duplicates, empty lists and texts, and a surface region that no area has are errors with file
/// and JSON pointer.
[[nodiscard]] Result<WarningSigns> readWarningSigns(
    std::string_view text, const std::vector<ConditionKind> &conditions, const Atlas &atlas);

} // namespace raphe
