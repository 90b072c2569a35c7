// Visit maps of the shipped content, and the visits of the demo practice.
#pragma once

#include "core/document/VisitMap.h"
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <stdexcept>

namespace raphe::test {

template <class T> [[nodiscard]] T valueOf(Result<T> result)
{
    if (!result)
        throw std::runtime_error(inWords(result.error()));
    return std::move(result).value();
}

inline const MapSource &mapSource()
{
    static const Examination examination = valueOf(readEmbeddedExamination(atlas(), safetyRules()));
    static const Techniques techniques = valueOf(readEmbeddedTechniques(safetyRules()));
    static const HomeAdvice advice = valueOf(readEmbeddedHomeAdvice(safetyRules()));
    static const MapSource source{safetyRules(), atlas(), body(), examination, techniques, advice};
    return source;
}

[[nodiscard]] inline VisitMap mapOf(const Visit &visit, Language language = Language::English)
{
    return visitMap(mapSource(), visit, Phrases(language));
}

/// 'tarrant-2026-11-12'.
[[nodiscard]] inline Visit demoVisit(const std::string &name)
{
    return valueOf(readVisit(sourceText("demo/practice/" + name + ".json"), name, atlas()));
}
inline constexpr std::array demoVisits{"tarrant-2026-11-12", "brandvold-2026-11-18", "sandoval-2026-11-24", "pellam-2026-11-26"};

} // namespace raphe::test
