// What the warning signs ask of one visit, and what follows from the answers: which questions are due, what was left undecided,
// and what stops. A sign of the gravest level stops all work at this visit, whatever was decided; a sign of a lower level stops
// it until the decision is written down. Plain functions of plain values; any thread.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace raphe {

/// Whom the signs are asked of.
struct Asked {
    std::set<std::string> areas; // of the complaint
    std::optional<int> age; // years on the day; nothing: not known, and the questions of every age are asked
    bool isPregnant = false;
    bool isInjured = false;
};

/// From complaint, birth date, day, conditions and injury of the visit.
[[nodiscard]] Asked askedOf(const WarningSigns &signs, const Regions &regions, const Visit &visit);

/// Whether the answer no longer holds on that day (ISO 8601 dates): too long ago, or given after it.
[[nodiscard]] bool isStale(const WarningSign &sign, const WarningAnswer &answer, const std::string &today);

/// The signs to be asked for on that day, gravest first, then in the order of the content: those that concern this person, and to
/// which none of the answers holds any more. Several answers to a sign: any that holds will do.
[[nodiscard]] std::vector<const WarningSign *> dueSigns(
    const WarningSigns &signs, const Asked &asked, const std::vector<WarningAnswer> &answers, const std::string &today);

struct SignPlace {
    Place place;
    std::string area; // the name of the part of the body that the place stands for; empty: for itself
};

/// Where a sign that needs a place may be: where it hurts, or else its parts of the body on each side; both for a sign that is
/// asked of everybody. A sign that concerns a whole limb is offered limbs only, wherever else it hurts. Empty when it needs no
/// place.
[[nodiscard]] std::vector<SignPlace> placesOf(
    const WarningSign &sign, const SafetyRules &rules, const Regions &regions, const Visit &visit);

/// Fails for a sign that the content does not know; for a decided one that needs a place and has none; and when nobody was told
/// of an emergency. `file` is used in messages.
[[nodiscard]] Result<Done> checkWarnings(const SafetyRules &rules, const Visit &visit, const std::string &file);

/// The visit with the conditions that its warning signs let suspect; without a place where none is told, so that they hold
/// everywhere.
[[nodiscard]] Visit withSuspected(const SafetyRules &rules, Visit visit);

/// What the signs that are there mean for the whole visit, gravest first.
[[nodiscard]] std::vector<CautionVerdict> warningVerdicts(const WarningSigns &signs, const Visit &visit);

/// 'emergency services were called'.
[[nodiscard]] std::string decisionInWords(Decision decision);

/// Points of the two-level score of a leg clot that the answers make (Wells 2003: 2 or more means likely). Nothing is released by
/// a low one.
[[nodiscard]] int legClotPoints(const WarningSigns &signs, const std::vector<WarningAnswer> &answers);

/// The answers of another visit of the same patient and the same day that hold in a new one: every sign that is there.
[[nodiscard]] std::vector<WarningAnswer> carriedOver(const std::vector<WarningAnswer> &answers, const std::string &today);

} // namespace raphe
