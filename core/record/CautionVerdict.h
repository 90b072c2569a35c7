// What a caution rule says of a technique or a test, at a place or everywhere. Plain values; made by core/safety.
#pragma once

#include "core/anatomy/Place.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// Ask: put the question first. Adapt: lighter, another way. Stop: not done. The order of the enumerators is that of weight.
enum class Verdict { Ask, Adapt, Stop };
inline constexpr WordTable<Verdict, 3> verdictWords{{{Verdict::Ask, "ask"}, {Verdict::Adapt, "adapt"}, {Verdict::Stop, "stop"}}};

struct CautionVerdict {
    std::optional<Place> place; // nothing: everywhere
    std::vector<std::string> actions; // techniques and tests, ids of resources/safety/actions.json; empty: all of them
    Verdict verdict{};
    std::string reason; // the danger and what to do instead, in one sentence
    std::string rule; // id
    std::string condition; // the condition that calls for it; empty: holds for everybody
    std::string source;

    [[nodiscard]] bool concernsAll() const { return actions.empty(); }
    [[nodiscard]] bool stopsAll() const { return verdict == Verdict::Stop && concernsAll(); }
    bool operator==(const CautionVerdict &) const = default;
};

/// The first that stops everything, where nothing may be done; nullptr: none does.
[[nodiscard]] inline const CautionVerdict *lockAmong(const std::vector<CautionVerdict> &verdicts)
{
    const auto it = std::find_if(verdicts.begin(), verdicts.end(), [](const CautionVerdict &v) { return v.stopsAll(); });
    return it == verdicts.end() ? nullptr : &*it;
}

} // namespace raphe
