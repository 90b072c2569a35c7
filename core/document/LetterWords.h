// Fixed words of a letter to another professional, and texts put into its sentences. Plain functions; nothing fails, any thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/record/Letter.h"

#include <string>
#include <vector>

namespace raphe {

/// 'Same day'.
[[nodiscard]] std::string urgencyInWords(Urgency urgency);
/// What it asks of who reads it: 'please see the patient on 2026-11-27'; `written` is an ISO 8601 date.
[[nodiscard]] std::string urgencyAsks(Urgency urgency, const std::string &written);
/// What the letter is not, and whose law it defers to.
[[nodiscard]] std::string letterLimits();

/// 'right hip flexion: 20 degrees', of what begins with the side word in capitals.
[[nodiscard]] std::string inSentence(const std::string &named, Side side);
[[nodiscard]] std::string spokenList(const Atlas &atlas, const std::vector<Place> &places);

/// A verdict in which '(8 degrees, Kolber MJ, Vega F. The reliability ... 2011;27:176 (between examiners).)' has become
/// '(8 degrees, Kolber 2011)': who reads a letter finds the source by author and year. Shorter ones stay as they are.
[[nodiscard]] std::string withShortSources(const std::string &verdict);

/// As many as `most`, and how many more there are.
[[nodiscard]] std::vector<std::string> capped(std::vector<std::string> lines, std::size_t most);
/// Divided by semicolons.
[[nodiscard]] std::string inOneLine(const std::vector<std::string> &items);

} // namespace raphe
