// Caution rules: any three texts, for actions, conditions and rules, give the rules or an error with a place. Rules that read
// keep what the reader promises, and a visit is held to what they say of its conditions.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/fuzz/Expect.h"

#include "core/safety/Cautions.h"

#include <cstddef>
#include <cstdint>

namespace {

using namespace raphe;
using fuzz::expect;

// The part before the line "---"; the rest stays in `text`.
std::string takePart(std::string &text)
{
    constexpr std::string_view line = "\n---\n";
    const std::size_t end = text.find(line);
    std::string part = text.substr(0, end);
    text = end == std::string::npos ? std::string() : text.substr(end + line.size());
    return part;
}

void expectSound(const CautionRule &rule, const SafetyRules &rules, const Atlas &atlas)
{
    expect(!rule.id.empty() && !rule.reason.empty() && !rule.source.empty(), "a rule has id, reason and source", rule.id);
    expect(rule.where == Where::Everywhere || !rule.conditions.empty(), "a rule at a place has conditions", rule.id);
    for (const std::string &id : rule.actions)
        expect(rules.findAction(id) != nullptr, "a rule's actions are known", id);
    for (const StructureId &id : rule.regions)
        expect(atlas.find(id) && atlas.at(id).kind == Kind::SurfaceRegion, "a rule's regions are surface regions", id.value);
    for (const std::string &id : rule.conditions) {
        const ConditionKind *kind = rules.findCondition(id);
        expect(kind != nullptr, "a rule's conditions are known", id);
        expect(rule.where == Where::Everywhere || kind->place != PlaceNeed::None, "a rule at a place gets one", id);
    }
}

void expectChecked(const ConditionKind &kind, const SafetyRules &rules)
{
    Visit visit;
    visit.conditions = {{kind.id, {}}};
    expect(checkConditions(rules, visit, "v").ok() == (kind.place != PlaceNeed::Required), "a needed place is missed", kind.id);
    visit.conditions[0].at = {{{"femur"}, Side::Left}};
    expect(checkConditions(rules, visit, "v").ok() == (kind.place != PlaceNeed::None), "a place too many is refused", kind.id);
    visit.conditions[0].id += "-";
    expect(!checkConditions(rules, visit, "v").ok(), "an unknown condition is refused", visit.conditions[0].id);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    static const Atlas atlas = raphe::test::tinyAtlas();
    std::string text(data, data + size);
    const std::string actions = takePart(text);
    const std::string conditions = takePart(text);
    const auto rules = readSafetyRules(actions, conditions, text, atlas);
    if (!rules) {
        expect(rules.error().place.starts_with("safety/"), "an error has a place", rules.error().detail);
        return 0;
    }
    for (const auto &[region, limb] : rules.value().limbRoots())
        expect(atlas.find(region) && atlas.at(region).kind == Kind::SurfaceRegion, "a limb's roots are regions", region.value);
    for (const CautionRule &rule : rules.value().rules())
        expectSound(rule, rules.value(), atlas);
    for (const ConditionKind &kind : rules.value().conditions())
        expectChecked(kind, rules.value());
    return 0;
}
