// What stands on the card of a structure: names, attachments, ties with their evidence, cautions, this patient's findings.
// Content only, as plain values; the window shows it. Made anew for each place; keeps no reference.
#pragma once

#include "core/reasoning/Linkage.h"
#include "core/record/Visit.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// A piece of a line; with a place it leads on to that place's card.
struct CardText {
    std::string text;
    std::optional<Place> leadsTo;
};

/// One statement, with how well it is known in words (empty for names and for what the patient's record says).
struct CardLine {
    std::vector<CardText> parts;
    std::string evidence;
};

struct CardSection {
    std::string title;
    std::string evidence; // where it is the same for all lines; theirs are empty then
    std::vector<CardLine> lines;
};

struct StructureCard {
    Place place;
    std::string title; // 'right gluteus maximus'
    std::string plain; // what the patient understands
    std::string nature; // 'muscle, superficial muscle layer'
    std::vector<CardSection> sections; // none is empty
    std::vector<std::string> sources; // in full, numbered from 1 in the order of this list
};

/// A finding of an earlier visit.
struct PastFinding {
    std::string date; // ISO 8601
    Finding finding;
};

/// Findings count as there when they stand on the structure or one of its parts, on this side. Language: code of the plain
/// names. Edges are measured at 1.70 m, as an example: a visit does not hold the patient's stature.
[[nodiscard]] StructureCard structureCard(const Linkage &linkage, const Place &place, const std::string &language,
    const std::vector<Finding> &now, const std::vector<PastFinding> &before);

} // namespace raphe
