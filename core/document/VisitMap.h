// What stands on the visit map: the page that the patient takes home, in the patient's language. Content only; app/paint draws
// it. What was answered when nobody else could hear is left out: others may read the page. Nothing is said of continuities.
#pragma once

#include "core/anatomy/MarkPoint.h"
#include "core/document/FindingWords.h"
#include "core/document/MapWords.h"
#include "core/examination/Examination.h"
#include "core/plan/Technique.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"
#include "core/treatment/HomeAdvice.h"

#include <map>
#include <string>
#include <vector>

namespace raphe {

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
    std::string finding; // 'Very sore, hardly moves. This is the pain you know.'
};

struct MapWord {
    std::string lead; // stands before it, in bold; may be empty
    std::string text;
    bool isTyped = false; // by the practitioner, not composed
    int number = 0; // of the line of what was found that it is about; 0: none
};

struct MapSection {
    std::string title;
    std::vector<MapWord> words; // not empty
};

/// The words around the figures.
struct MapLabels {
    std::string front, back, before, now, left, right;
    std::map<MarkKind, std::string> marks;
    std::string familiar;
    std::string pageText; // with {page} and {pages}
};

struct VisitMap {
    Language language{};
    std::string title;
    std::string patient;
    std::string date; // as it is spoken
    std::string practitioner;
    std::string complaint; // 'In your words: ...'; may be empty
    std::vector<std::string> warnings; // the signs that somebody else must see, and how soon; gravest first
    std::vector<MapMark> marks;
    std::vector<MapMark> now; // what was felt again, on the same scale and with the same numbers; empty: nothing was
    std::string foundTitle;
    std::vector<MapLine> lines;
    std::vector<MapSection> sections; // what we did, what changed, at home, what to expect, when to call whom
    std::string cautions;
    std::string legal; // what the page is not
    MapLabels labels;
    std::vector<std::string> names; // of the places that stand on it, without their side
};

/// All that a map is made with; must outlive the call.
struct MapSource {
    const SafetyRules &rules;
    const Atlas &atlas;
    const Body &body;
    const Examination &examination;
    const Techniques &techniques; // the program's and the practice's own
    const HomeAdvice &advice;
};

/// Numbers follow the order of the findings. What the practitioner wrote stands as it was written.
[[nodiscard]] VisitMap visitMap(const MapSource &source, const Visit &visit, const Phrases &phrases);

} // namespace raphe
