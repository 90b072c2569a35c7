// Advice for home in the words of a practice: items of its own, and items of the program in another wording. Plain values, kept
// with the settings of the practice.
#pragma once

#include "core/base/JsonReader.h"
#include "core/treatment/HomeAdvice.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <vector>

namespace raphe {

struct OwnAdvice {
    std::string id; // that of an item of the program: takes the place of its words
    std::string title;
    std::string text; // with when to stop
    bool operator==(const OwnAdvice &) const = default;
};

/// Unknown fields, texts that are missing and duplicate ids throw Error, inside guarded().
[[nodiscard]] std::vector<OwnAdvice> readOwnAdvice(const JsonReader &at);
[[nodiscard]] nlohmann::ordered_json ownAdviceJson(const std::vector<OwnAdvice> &advice);

/// Items of the practice come first and are for anywhere; what is asked first of all advice is asked of them too, and an item of
/// the program keeps what it is for and with what it is asked about.
[[nodiscard]] HomeAdvice withOwn(HomeAdvice known, const std::vector<OwnAdvice> &own);

/// An id that none of these has.
[[nodiscard]] std::string newAdviceId(const std::vector<OwnAdvice> &own);

} // namespace raphe
