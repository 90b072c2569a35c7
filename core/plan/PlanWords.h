// What a plan says in sentences. No state; thread-safe.
#pragma once

#include "core/plan/PlanOrder.h"

#include <string>

namespace raphe {

[[nodiscard]] std::string pinnedDoNotFitInWords();
[[nodiscard]] std::string droppedInWords();
[[nodiscard]] std::string notReachedInWords();
[[nodiscard]] std::string noTimeInWords();
/// Why a step stands before that one; `later`: its place, with the side word.
[[nodiscard]] std::string beforeInWords(OrderReason reason, const std::string &later);
/// '2 min 30 s'.
[[nodiscard]] std::string minutesInWords(int seconds);

} // namespace raphe
