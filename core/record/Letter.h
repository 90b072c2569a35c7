// A letter to another professional as it was kept with a visit: to whom, how urgent, why, what is asked, and the parts as they
// were edited beside what the program had composed. Plain values. The JSON form is in LetterJson.h.
#pragma once

#include "core/base/Words.h"

#include <cstddef>
#include <string>
#include <vector>

namespace raphe {

/// Whom letters go to. Something of name or role is there.
struct Addressee {
    static constexpr std::size_t longestLine = 200; // code points, of each text; our choice, no source
    static constexpr std::size_t mostLines = 6; // of the address; as many stand in the window of an envelope

    std::string name;
    std::string role; // as 'general practice'
    std::vector<std::string> lines; // place and address
    [[nodiscard]] bool isNobody() const { return name.empty() && role.empty() && lines.empty(); }
    bool operator==(const Addressee &) const = default;
};

/// How soon somebody should act; chosen by the practitioner. The order is that of gravity.
enum class Urgency { Information, Routine, WithinDays, SameDay, EmergencyNow };
inline constexpr WordTable<Urgency, 5> urgencyWords{{{Urgency::EmergencyNow, "emergency-now"}, {Urgency::SameDay, "same-day"},
    {Urgency::WithinDays, "within-days"}, {Urgency::Routine, "routine"}, {Urgency::Information, "for-information"}}};

/// A text as it was left, beside what the program had composed, so that one sees what was changed.
struct LetterText {
    static constexpr std::size_t longest = 20'000; // code points, of each of the two; our choice, no source
    std::string text; // empty: it is left out of the letter
    std::string composed; // empty: written by hand alone
    [[nodiscard]] bool isEdited() const { return text != composed; }
    bool operator==(const LetterText &) const = default;
};

struct LetterPart {
    std::string title; // never empty; each once
    LetterText words; // not both empty
    bool operator==(const LetterPart &) const = default;
};

/// Patient, birth date, day of the visit and practitioner are those of the visit and do not stand here.
struct Letter {
    static constexpr std::size_t most = 20; // of a visit; our choice, no source
    static constexpr std::size_t mostParts = 20;

    std::string written; // ISO 8601 date
    Addressee to; // nobody: whoever takes over
    std::string title; // never empty
    Urgency urgency{};
    LetterText reason;
    LetterText question;
    std::vector<LetterPart> parts; // in the order in which they stand
    std::string sent; // ISO 8601 date on which it was handed over; empty: not yet
    bool operator==(const Letter &) const = default;
};

} // namespace raphe
