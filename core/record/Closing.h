// How a visit is closed, as plain values: what the patient takes home, what is planned, how it goes on, and what the practitioner
// makes of it. The JSON form is in ClosingJson.h.
#pragma once

#include "core/record/SinceLast.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// Something to do at home, as it was given.
struct GivenAdvice {
    std::string item; // id in resources/home-advice.json; empty: in the practitioner's own words
    std::string title;
    std::string text;
    bool operator==(const GivenAdvice &) const = default;
};

/// The practitioner's own; the program fills in nothing of it.
struct Impression {
    std::string text;
    std::string code;
    std::string system; // which list the code is of, and its edition
    bool operator==(const Impression &) const = default;
};

struct Goal {
    std::string text;
    std::string until; // ISO 8601 date; empty: open
    bool reached = false;
    bool operator==(const Goal &) const = default;
};

/// What was agreed on how it goes on. The bounds only catch slips of the pen; our choice, no source.
struct CarePlan {
    static constexpr int mostVisits = 60;
    static constexpr int mostDays = 180;
    std::string agreed; // ISO 8601 date of the visit; visits are counted from it on
    int visits = 1; // until it is asked whether it works, this one not counted
    int everyDays = 7;
    std::string success; // what would count as success
    bool operator==(const CarePlan &) const = default;
};

/// What is made of care that changed nothing.
enum class CareDecision { ChangePlan, Refer, Discharge };
inline constexpr WordTable<CareDecision, 3> careDecisionWords{
    {{CareDecision::ChangePlan, "change-plan"}, {CareDecision::Refer, "refer"}, {CareDecision::Discharge, "discharge"}}};

struct CareReview {
    CareDecision decision{};
    std::string why; // never empty
    bool operator==(const CareReview &) const = default;
};

/// A call to the patient on one of the days after the treatment.
struct LaterCall {
    std::string due; // ISO 8601 date
    std::string made; // ISO 8601 date; empty: not yet
    std::optional<Reaction> reaction; // of a call that was made
    std::string told;
    bool operator==(const LaterCall &) const = default;
};

struct Closing {
    std::vector<GivenAdvice> advice;
    bool isTold = false; // what to expect, and when to call whom
    std::vector<std::string> focus; // of the next visit, one line each
    Impression impression;
    std::vector<Goal> goals;
    std::optional<CarePlan> plan;
    std::optional<CareReview> review;
    std::optional<LaterCall> call;
    bool operator==(const Closing &) const = default;
};

} // namespace raphe
