// The caution rules: what may be done (actions), what a patient may have (conditions), and which of the two do not go together
// where; the warning signs, and what is asked consent for. Content of resources/safety, read strictly. Plain values, immutable
// after reading; thread-safe.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/base/Result.h"
#include "core/record/CautionVerdict.h"
#include "core/safety/CautionFeeds.h"
#include "core/safety/ConsentItems.h"
#include "core/safety/WarningSigns.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

enum class ActionKind { Technique, Test };
inline constexpr WordTable<ActionKind, 2> actionKindWords{{{ActionKind::Technique, "technique"}, {ActionKind::Test, "test"}}};

/// Something that the practitioner does with the hands.
struct HandsAction {
    std::string id;
    ActionKind kind{};
    std::string name; // in the trade's words, lower case
};

/// Whether a condition must, may or cannot say where it is.
enum class PlaceNeed { None, Optional, Required };
inline constexpr WordTable<PlaceNeed, 3> placeNeedWords{
    {{PlaceNeed::None, "none"}, {PlaceNeed::Optional, "optional"}, {PlaceNeed::Required, "required"}}};

struct ConditionKind {
    std::string id;
    std::string name;
    PlaceNeed place{};
};

/// Where a rule holds. AtPlace: at the condition's place, its parts and its whole, and what lies over or under it. SameLimb: the
/// whole arm or leg of that side, also when the condition is at the limb's root (limbRoots). A condition that may be without a
/// place, and is, holds everywhere.
enum class Where { Everywhere, AtPlace, SameLimb };
inline constexpr WordTable<Where, 3> whereWords{
    {{Where::Everywhere, "everywhere"}, {Where::AtPlace, "at-place"}, {Where::SameLimb, "same-limb"}}};

/// What a list leaves out is not asked for: a rule without actions is about all of them, without conditions about everybody.
struct CautionRule {
    std::string id;
    std::vector<std::string> conditions; // any one of them
    std::vector<std::string> actions;
    Where where{};
    std::vector<StructureId> regions; // only under these surface regions
    std::vector<Layer> layers; // only in these layers
    std::vector<Kind> kinds; // only at structures of these kinds
    Verdict verdict{};
    bool sparesTheRest = false; // a stop that only adapts work on what lies there with less than half of it
    std::string reason;
    std::string source;
    Reading read{}; // how we read the source
};

class SafetyRules {
public:
    /// Takes checked parts.
    SafetyRules(std::vector<HandsAction> actions, std::vector<ConditionKind> conditions, LimbRegions limbRoots,
        std::vector<CautionRule> rules)
        : m_actions(std::move(actions)),
          m_conditions(std::move(conditions)),
          m_limbRoots(std::move(limbRoots)),
          m_rules(std::move(rules))
    {
    }

    [[nodiscard]] const std::vector<HandsAction> &actions() const { return m_actions; }
    [[nodiscard]] const std::vector<ConditionKind> &conditions() const { return m_conditions; }
    /// Regions beyond a limb, or at its root, where a condition is one of that limb: a clot in the groin is one of the leg.
    [[nodiscard]] const LimbRegions &limbRoots() const { return m_limbRoots; }
    [[nodiscard]] const std::vector<CautionRule> &rules() const { return m_rules; }
    /// None but in the rules that are built into the program.
    [[nodiscard]] const WarningSigns &signs() const { return m_signs; }
    void setSigns(WarningSigns signs) { m_signs = std::move(signs); }
    [[nodiscard]] const std::vector<CautionFeed> &feeds() const { return m_feeds; }
    void setFeeds(std::vector<CautionFeed> feeds) { m_feeds = std::move(feeds); }
    [[nodiscard]] const ConsentItems &consents() const { return m_consents; }
    void setConsents(ConsentItems consents) { m_consents = std::move(consents); }
    /// nullptr when there is no such thing.
    [[nodiscard]] const HandsAction *findAction(std::string_view id) const;
    [[nodiscard]] const ConditionKind *findCondition(std::string_view id) const;

private:
    std::vector<HandsAction> m_actions;
    std::vector<ConditionKind> m_conditions;
    LimbRegions m_limbRoots;
    std::vector<CautionRule> m_rules;
    WarningSigns m_signs;
    std::vector<CautionFeed> m_feeds;
    ConsentItems m_consents;
};

/// Unknown fields, words and ids, duplicates, empty lists and texts, a condition that no rule uses and a rule that can never hold
/// are errors with file and JSON pointer.
[[nodiscard]] Result<SafetyRules> readSafetyRules(
    std::string_view actionsText, std::string_view conditionsText, std::string_view rulesText, const Atlas &atlas);

/// The rules that are built into the program (resources/safety).
[[nodiscard]] Result<SafetyRules> readEmbeddedSafetyRules(const Atlas &atlas);

} // namespace raphe
