// One visit as plain values: what was found, what was clear, what could not be examined. No storage, no window.
// Scales: tenderness 0-4, restriction 0-3, pain 0-10 (see the fields). The JSON form is in VisitJson.h.
#pragma once

#include "core/anatomy/Place.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Tenderness grade 0 to 4: 0 none, 1 mild, 2 moderate with grimace or flinch, 3 severe with withdrawal,
/// 4 withdraws from touch that is normally painless. Common teaching scale, attributed to Hubbard & Berkoff 1993
/// in teaching notes (the paper itself is about EMG): 'as attributed'.
struct Tenderness {
    static constexpr int highest = 4;
    int grade = 0;
    auto operator<=>(const Tenderness &) const = default;
};

/// Restriction of movement or glide, 0 to 3: 0 free, 1 slight, 2 clear, 3 hardly moves. Common practice, no source.
struct Restriction {
    static constexpr int highest = 3;
    int grade = 0;
    auto operator<=>(const Restriction &) const = default;
};

/// What a clear check covered.
struct Clear {
    bool tenderness = false;
    bool motion = false;
    [[nodiscard]] bool any() const { return tenderness || motion; }
    bool operator==(const Clear &) const = default;
};

/// One place examined. Either found (tenderness, restriction, familiar), or clear, or unable - never two of them
/// about the same quality.
struct Finding {
    Place place;
    std::optional<Spot> spot;
    std::optional<StructureId> at; // landmark, where a muscle attaches to several
    std::optional<Tenderness> tenderness;
    std::optional<Restriction> restriction;
    bool familiar = false; // the patient recognises the pain as theirs
    Clear clear;
    std::optional<std::string> unable; // the reason why it could not be examined
    std::string note;

    [[nodiscard]] bool isPositive() const
    {
        return (tenderness && tenderness->grade > 0) || (restriction && restriction->grade > 0) || familiar;
    }
    /// Checked and nothing found; a grade of 0 says the same as the word 'clear'.
    [[nodiscard]] bool isClear() const { return clear.any() || (!isPositive() && (tenderness || restriction)); }
    [[nodiscard]] bool isUnable() const { return unable.has_value(); }
    /// Something was found; with 'clear' of the other quality both hold (tender, but moving freely).
    [[nodiscard]] bool isFound() const { return !isUnable() && (isPositive() || !isClear()); }
    bool operator==(const Finding &) const = default;
};

struct Patient {
    std::string name;
    std::string born; // ISO 8601 date or empty
    bool operator==(const Patient &) const = default;
};

struct Visit {
    std::optional<Patient> patient;
    std::string date; // ISO 8601 date or empty
    std::string practitioner; // name on the printed page
    std::string complaint; // in the patient's words
    std::vector<std::string> cautions; // what must be respected, one line each
    std::vector<Finding> findings; // in the order of examination
    bool operator==(const Visit &) const = default;
};

/// A real day of the Gregorian calendar, written YYYY-MM-DD (ISO 8601).
[[nodiscard]] bool isIsoDate(std::string_view text);

[[nodiscard]] Finding mirrored(Finding finding);
[[nodiscard]] Visit mirrored(Visit visit);

} // namespace raphe
