#include "core/plan/Advice.h"

namespace raphe {

bool Advice::isLocked() const
{
    return lockAmong(general) != nullptr;
}

Result<Adviser> Adviser::of(const Knowledge &knowledge)
{
    auto rules = readEmbeddedSafetyRules(*knowledge.atlas);
    if (!rules)
        return rules.error();
    return Adviser(std::make_unique<const Reasoner>(*knowledge.linkage, *knowledge.regions, *knowledge.constants),
        std::make_unique<const SafetyRules>(std::move(rules).value()), *knowledge.regions);
}

Result<Advice> Adviser::advise(const Visit &visit, const std::string &file, const Preferences &preferences) const
{
    const auto cautions = Cautions::of(*m_rules, *m_regions, visit, file);
    if (!cautions)
        return cautions.error();
    Advice advice;
    advice.general = cautions.value().general();
    advice.reasons = m_reasoner->reasons(visit, [&](const Place &place) { return !cautions.value().isBarred(place); });
    advice.treatment =
        treatFirst(*m_reasoner, visit, preferences, [&](const Place &place) { return cautions.value().at(place); });
    return advice;
}

} // namespace raphe
