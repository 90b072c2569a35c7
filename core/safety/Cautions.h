// What the caution rules, the consents and the caution areas of the atlas say about one visit: at a place, or everywhere. Keeps
// references to the rules and to the regions, which must outlive it. Immutable after construction, thread-safe.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/record/Visit.h"
#include "core/safety/Consents.h"
#include "core/safety/SafetyRules.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Fails when the visit names a condition that the rules do not know, when one lacks the place that it needs, and when one has
/// a place that it cannot have. `file` is used in messages.
[[nodiscard]] Result<Done> checkConditions(const SafetyRules &rules, const Visit &visit, const std::string &file);

class Cautions {
public:
    /// Checks the visit's conditions as checkConditions does, its warning signs as checkWarnings, and its consents as
    /// checkConsents. What the signs let suspect counts as a condition.
    [[nodiscard]] static Result<Cautions> of(
        const SafetyRules &rules, const Regions &regions, const Visit &visit, const std::string &file);

    /// All that holds at a place of the atlas, what holds everywhere included; one verdict a rule, for the first of the rule's
    /// conditions that calls for it. Gravest first, then by rule; each with this place.
    [[nodiscard]] std::vector<CautionVerdict> at(const Place &place) const;
    /// What holds everywhere because of a condition, a warning sign or a refusal of this patient; in the same order, without a
    /// place.
    [[nodiscard]] std::vector<CautionVerdict> general() const;
    /// Some verdict stops every action there.
    [[nodiscard]] bool isBarred(const Place &place) const;
    /// The stop for this action there; one of every action goes before one of some.
    [[nodiscard]] std::optional<CautionVerdict> stopOf(const Place &place, std::string_view action) const;

private:
    // A condition of the visit, with the limb of each of its places.
    struct Case {
        std::string condition;
        std::vector<std::pair<Place, std::optional<Limb>>> at; // empty: everywhere
    };

    // How much of a place lies where a condition is.
    enum class Extent { None, Part, Whole };
    // Why a rule holds at a place.
    struct Cause {
        std::string condition; // empty for a rule for everybody
        bool isPart = false; // and only a part of the place lies there
    };

    Cautions(const SafetyRules &rules, const Regions &regions);
    [[nodiscard]] Extent extentAt(const Place &place, const Place &other) const;
    [[nodiscard]] bool concerns(const CautionRule &rule, const StructureId &id) const;
    // Whether the rule holds there: the first of its conditions that the patient has there.
    [[nodiscard]] std::optional<Cause> causeOf(const CautionRule &rule, const Place &place) const;
    [[nodiscard]] CautionVerdict verdictOf(const Structure &area, const Place &place) const;

    const ConsentItems &m_items;
    const Regions &m_regions;
    std::vector<Case> m_cases;
    std::vector<CautionVerdict> m_everywhere; // of the warning signs that are there, and of what was refused
    std::vector<ConsentVerdict> m_consents; // of what was refused, or is to be asked, at places
    std::vector<const CautionRule *> m_rules; // those that can hold in this visit
    std::multimap<StructureId, const Structure *> m_areas; // caution areas by what they lie beside, and by themselves
};

} // namespace raphe
