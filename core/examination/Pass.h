// A pass over places with two pedals while the hands stay on the patient. It knows no window and no clock: presses and ticks come
// with their time, and it answers with what to record, what to take back, and what to say.
//
// Clear pedal: this place is clear, or, when it is sore already, on to the next one. Twice quickly: what was said last is taken
// back. Sore pedal: sore 1, and one grade more with each press. Held: the patient knows the pain. A clear press is held back
// until it can no longer be the first of two. Plain values; no threads; nothing fails.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/record/Visit.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

enum class Pedal { Clear, Sore };

/// Our choice, no source: long enough for a foot, short enough not to be waited for.
inline constexpr std::chrono::milliseconds quickPress{400}; // two presses within it are one double press
inline constexpr std::chrono::milliseconds heldPress{800}; // a press as long is held

/// What was felt at one place of the pass.
struct PassEntry {
    bool clear = false;
    int sore = 0; // 0 to Tenderness::highest
    bool familiar = false;
    [[nodiscard]] bool isEmpty() const { return !clear && sore == 0 && !familiar; }
    bool operator==(const PassEntry &) const = default;
};

/// What follows from a press or from time passing, in this order.
struct PassStep {
    enum class Kind { Nothing, Record, TakeBack } kind = Kind::Nothing;
    std::size_t at = 0; // of the places
    PassEntry entry; // Record: all that is felt there
    std::string say; // empty: nothing to say
};

class Pass {
public:
    using Time = std::chrono::milliseconds;

    /// Keeps a reference to the atlas, for the names.
    Pass(const Atlas &atlas, std::vector<Place> places);

    [[nodiscard]] const std::vector<Place> &places() const { return m_places; }
    /// The place that is asked for; places().size() at the end.
    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] bool isDone() const { return m_at >= m_places.size(); }
    [[nodiscard]] const PassEntry &entryAt(std::size_t index) const { return m_entries[index]; }

    /// The words for the place that is asked for: 'RIGHT, L4-L5'; at the end, that it is one.
    [[nodiscard]] std::string prompt() const;

    /// A press while another pedal is down ends the other one's press, which was for the same place.
    [[nodiscard]] PassStep press(Pedal pedal, Time now);
    [[nodiscard]] PassStep release(Pedal pedal, Time now);
    /// Has to be called at least every 50 ms.
    [[nodiscard]] PassStep tick(Time now);

private:
    // The sore press ends: what it was.
    [[nodiscard]] PassStep settleSore(Time now);
    [[nodiscard]] PassStep onClear();
    [[nodiscard]] PassStep onSore();
    [[nodiscard]] PassStep onHeld();
    [[nodiscard]] PassStep takeBack();
    [[nodiscard]] std::string echo(std::size_t index) const;

    const Atlas &m_atlas;
    std::vector<Place> m_places;
    std::vector<PassEntry> m_entries;
    std::size_t m_at = 0;
    std::vector<std::pair<std::size_t, PassEntry>> m_before; // what each act changed: the place, and what stood there
    std::optional<Time> m_clearAt; // a clear press that may still be the first of two
    std::optional<Time> m_soreAt; // since when the sore pedal is down
    bool m_wasHeld = false;
};

/// The place as a pass says it: the side first and loud, 'RIGHT, L4-L5'; the midline has no side word.
[[nodiscard]] std::string saidInPass(const Atlas &atlas, const Place &place);
/// The finding that an entry is.
[[nodiscard]] Finding findingOf(const Place &place, const PassEntry &entry);

} // namespace raphe
