// What a patient takes home after a treatment: content of resources/home-advice.json, in plain words. What to do, what to expect
// after which technique, and when to call whom. Plain values.
#pragma once

#include "core/base/Result.h"
#include "core/base/Words.h"
#include "core/plan/Technique.h"
#include "core/record/TreatmentLog.h"
#include "core/safety/SafetyRules.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct HomeAdviceItem {
    std::string id;
    std::string title;
    std::string text;
    std::string stop; // when to stop
    std::vector<std::string> regions; // parts of the body that it is for, of HomeAdvice::regions
    std::vector<std::string> askFirst; // conditions (id) with which it is not offered unasked
    std::string source;
    Reading read{};
};

/// After a technique, by its action.
struct Expectation {
    std::string action; // id
    std::string text;
    std::optional<int> days; // the longest that is told
    std::string source;
    Reading read{};
};

enum class CallWhom { Emergency, DoctorToday, Us };
inline constexpr WordTable<CallWhom, 3> callWhomWords{
    {{CallWhom::Emergency, "emergency"}, {CallWhom::DoctorToday, "today"}, {CallWhom::Us, "us"}}};

struct CallLine {
    std::string id;
    CallWhom whom{};
    std::string text;
};

/// What a sheet of the examination stands for.
struct SheetRegions {
    std::string sheet; // id
    std::vector<std::string> regions; // the nearest first
};

struct HomeAdvice {
    std::vector<std::string> always; // stand above all of it
    std::vector<std::string> regions;
    std::vector<SheetRegions> bySheet;
    std::vector<std::string> askFirst; // conditions (id) with which nothing is offered unasked
    std::vector<HomeAdviceItem> items;
    std::vector<Expectation> expectations;
    std::vector<CallLine> calls; // gravest first

    // nullptr when there is no such thing.
    [[nodiscard]] const HomeAdviceItem *find(std::string_view id) const;
    [[nodiscard]] const Expectation *after(std::string_view action) const;
};

/// Unknown fields, words, conditions, actions and regions, duplicates, a technique that nothing is told of, and a text that is
/// missing are errors with file and JSON pointer.
[[nodiscard]] Result<HomeAdvice> readHomeAdvice(std::string_view text, const std::string &file, const SafetyRules &rules);
/// Built into the program.
[[nodiscard]] Result<HomeAdvice> readEmbeddedHomeAdvice(const SafetyRules &rules);

/// The items, those for the sheets' parts of the body first, then those for anywhere, then the others; each in the order of the
/// content.
[[nodiscard]] std::vector<const HomeAdviceItem *> offeredFor(const HomeAdvice &advice, const std::vector<std::string> &sheets);

/// What is told after this work, each once and in the order of the work; of skipped steps nothing.
[[nodiscard]] std::vector<std::string> expectedAfter(
    const HomeAdvice &advice, const TreatmentLog &treatment, const Techniques &techniques);

/// Whether the advice is offered to who has these conditions (ids), or is to be asked about first.
[[nodiscard]] bool isAskedFirst(const HomeAdvice &advice, const HomeAdviceItem &item, const std::vector<std::string> &conditions);

} // namespace raphe
