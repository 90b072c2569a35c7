// The groups of techniques by which a user says what is within their scope of practice: content of resources/safety/scope.json.
#pragma once

#include "core/safety/SafetyRules.h"

#include <optional>
#include <set>

namespace raphe {

struct TechniqueGroup {
    std::string id;
    std::string name; // in the trade's words, lower case
    std::vector<std::string> techniques; // ids of actions that are techniques
};

/// Fails with file and JSON pointer for unknown fields and ids, a technique in two groups, or one in none.
[[nodiscard]] Result<std::vector<TechniqueGroup>> readTechniqueGroups(std::string_view text, const SafetyRules &rules);
/// Those that are built into the program.
[[nodiscard]] Result<std::vector<TechniqueGroup>> readEmbeddedTechniqueGroups(const SafetyRules &rules);

/// The techniques of these groups; nothing when no group is named, which means not restricted. Ids of groups that are not there
/// allow nothing.
[[nodiscard]] std::optional<std::set<std::string>> techniquesWithin(
    const std::vector<TechniqueGroup> &groups, const std::vector<std::string> &scope);

} // namespace raphe
