// One pedal, or one key, for hands that are oiled: a press moves on, two quick presses go back, a press held is a stop. It knows
// no window and no clock: presses and ticks come with their time. Plain values; nothing fails.
#pragma once

#include <chrono>
#include <optional>

namespace raphe {

class SinglePedal {
public:
    using Time = std::chrono::milliseconds; // of a clock that never jumps
    // Our choice, no source.
    static constexpr Time bounce{60}; // a contact that closes again so soon did not open
    static constexpr Time quick{400}; // two presses that begin within it are one double press
    static constexpr Time held{2000};

    enum class Act { Next, Back, Stop };
    struct Said {
        Act act{};
        Time at{}; // when the foot went down
        bool operator==(const Said &) const = default;
    };

    /// What the keyboard repeats while the key is down has to be left out.
    void press(Time now);
    [[nodiscard]] std::optional<Said> release(Time now);
    /// Has to be called at least every 50 ms.
    [[nodiscard]] std::optional<Said> tick(Time now);
    [[nodiscard]] bool isDown() const { return m_downAt.has_value(); }

private:
    std::optional<Time> m_downAt;
    std::optional<Time> m_waiting; // a press that may be the first of two
    std::optional<Time> m_upAt;
    bool m_isSecond = false;
    bool m_wasHeld = false;
};

} // namespace raphe
