// What the patient complains of, as asked at one visit: what it feels like through the day, what it costs, and what they hope
// for. Plain values. The JSON form is in IntakeJson.h; where it hurts stands in the visit itself.
#pragma once

#include "core/base/Words.h"
#include "core/record/PainScore.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace raphe {

/// How easily it is stirred up and how long it then takes to settle. Common practice, no source: low - much is needed, and it
/// settles within minutes; high - little is needed, and it stays for hours.
enum class Irritability { Low, Medium, High };
inline constexpr WordTable<Irritability, 3> irritabilityWords{
    {{Irritability::Low, "low"}, {Irritability::Medium, "medium"}, {Irritability::High, "high"}}};

enum class PartOfDay { Waking, Morning, Noon, Evening, Night };
inline constexpr WordTable<PartOfDay, 5> partOfDayWords{{{PartOfDay::Waking, "waking"}, {PartOfDay::Morning, "morning"},
    {PartOfDay::Noon, "noon"}, {PartOfDay::Evening, "evening"}, {PartOfDay::Night, "night"}}};

/// How it is at that time, beside how it mostly is.
enum class DayLevel { None, Less, Same, More };
inline constexpr WordTable<DayLevel, 4> dayLevelWords{
    {{DayLevel::None, "none"}, {DayLevel::Less, "less"}, {DayLevel::Same, "same"}, {DayLevel::More, "more"}}};

/// Something that the patient needs or wants to do and that is hard now, as in the Patient-Specific Functional Scale (Stratford
/// 1995, Physiother Can 47:258-63): 0 cannot do it, 10 as before. One of the two may still be missing.
struct Activity {
    static constexpr int highest = 10;
    static constexpr std::size_t usual = 3; // as many are asked for
    static constexpr std::size_t most = 5; // of a complaint
    std::string name; // in the patient's words
    std::optional<int> score;
    [[nodiscard]] bool isComplete() const { return !name.empty() && score; }
    bool operator==(const Activity &) const = default;
};

struct Complaint {
    static constexpr std::size_t most = 20; // of a visit; our choice, no source

    std::optional<int> episode; // the patient's complaint that it is about, by its id in the patient's record
    std::string text; // in the patient's words
    std::string since; // in the patient's words
    std::optional<PainScore> now, worst, best; // worst and best of the last seven days
    std::string aggravates; // in the patient's words
    std::string eases; // in the patient's words
    std::array<std::optional<DayLevel>, partOfDayWords.size()> day; // by PartOfDay
    std::optional<Irritability> irritability;
    std::vector<Activity> activities;
    std::string goal; // in the patient's words
    std::string asked; // ISO 8601 date on which this was last asked or confirmed; empty: not yet

    bool operator==(const Complaint &) const = default;
};

/// Whether best, now and worst stand in this order, as far as they are told.
[[nodiscard]] inline bool areRatingsInOrder(const Complaint &c)
{
    const auto isAbove = [](const std::optional<PainScore> &a, const std::optional<PainScore> &b) { return a && b && *a > *b; };
    return !isAbove(c.best, c.worst) && !isAbove(c.best, c.now) && !isAbove(c.now, c.worst);
}

/// Mean of the scores of the complete activities; nothing without any.
[[nodiscard]] inline std::optional<double> meanScore(const std::vector<Activity> &activities)
{
    double sum = 0;
    int count = 0;
    for (const Activity &activity : activities)
        if (activity.isComplete()) {
            sum += *activity.score;
            ++count;
        }
    return count == 0 ? std::nullopt : std::optional(sum / count);
}

} // namespace raphe
