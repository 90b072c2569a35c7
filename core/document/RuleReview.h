// All caution rules, warning signs and reminders as tables for a clinician to read, judge and sign. Content only; app/paint
// draws it, with room for the answers. Plain values; any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/safety/SafetyRules.h"

#include <string>
#include <vector>

namespace raphe {

struct ReviewColumn {
    std::string name;
    double share = 0; // of the width, beside those of the others
};

struct ReviewRow {
    std::vector<std::string> cells; // one a column; a line break divides paragraphs
};

struct ReviewGroup {
    std::string title;
    std::vector<ReviewRow> rows; // not empty
};

struct ReviewPart {
    std::string title;
    std::string words; // what it is, and what to judge
    std::vector<ReviewColumn> columns;
    std::vector<ReviewGroup> groups;
};

struct RuleReview {
    std::string title;
    std::string mark; // stands on every page
    std::vector<std::string> words; // before the tables, one paragraph each
    std::vector<ReviewPart> parts;
};

/// Rules by verdict, the gravest first, then by what they limit; signs by level, the gravest first, then by who finds out;
/// reminders by the part of the record.
[[nodiscard]] RuleReview ruleReview(const SafetyRules &rules, const Atlas &atlas);

} // namespace raphe
