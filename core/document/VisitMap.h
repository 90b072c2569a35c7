// What stands on the visit map: the one page that the patient takes home. Content only; app/paint draws it. What was answered
// when nobody else could hear is left out: others may read the page.
#pragma once

#include "core/anatomy/MarkPoint.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <string>
#include <vector>

namespace raphe {

/// What a mark says. Each has a shape of its own, so that colour never carries the meaning alone.
enum class MarkKind { Tender, Restricted, TenderAndRestricted, Noted, Clear, Unable };

struct MapMark {
    int number = 0;
    MarkKind kind{};
    int grade = 0; // the higher of tenderness and restriction
    bool familiar = false;
    Place place;
    std::optional<DrawnPoint> at; // nothing: only in the list
};

struct MapLine {
    int number = 0;
    std::string place; // plain words with the side: 'main buttock muscle, right side'
    std::string finding; // 'very sore; moves less; you know this pain'
};

struct VisitMap {
    std::string patient;
    std::string date; // ISO 8601
    std::string practitioner;
    std::string complaint;
    std::vector<std::string> warnings; // the signs that somebody else must see, and how soon; gravest first
    std::vector<MapMark> marks;
    std::vector<MapLine> lines;
    std::vector<std::string> cautions; // empty: none recorded
};

[[nodiscard]] MarkKind markKindOf(const Finding &finding);
/// 'tenderness 3, restriction 2, familiar': for practitioners.
[[nodiscard]] std::string findingInWords(const Atlas &atlas, const Finding &finding);
/// 'very sore to touch; moves clearly less': for patients, no grades.
[[nodiscard]] std::string findingInPlainWords(const Finding &finding);

/// Numbers follow the order of the findings. Language: code of the plain names ('en', 'de', 'es').
[[nodiscard]] VisitMap visitMap(
    const SafetyRules &rules, const Atlas &atlas, const Body &body, const Visit &visit, const std::string &language);

} // namespace raphe
