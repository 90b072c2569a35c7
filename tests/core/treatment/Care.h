// Care of one complaint since it was agreed on, for tests: short ways to write what was read then and today.
#pragma once

#include "core/treatment/CareProgress.h"
#include "tests/core/examination/Exam.h"

#include <string>
#include <utility>
#include <vector>

namespace raphe::test {

inline constexpr int knee = 1;
inline constexpr int neck = 2;
inline const std::string agreedOn = "2031-03-01";
inline const std::string thisDay = "2031-03-29";

[[nodiscard]] inline Visit careVisit(const std::string &date, int episode = knee)
{
    Complaint complaint;
    complaint.episode = episode;
    Visit visit;
    visit.date = date;
    visit.complaints = {complaint};
    return visit;
}

/// The visit of an agreement on four visits, and today's four weeks later.
struct Care {
    Visit then = careVisit(agreedOn);
    Visit now = careVisit(thisDay);
    std::vector<EarlierVisit> between; // newest first

    Care() { now.closing.plan = CarePlan{agreedOn, 4, 7, {}}; }
    [[nodiscard]] std::vector<EarlierVisit> earlier() const
    {
        std::vector<EarlierVisit> out = between;
        out.push_back({then, false});
        return out;
    }
    [[nodiscard]] CareProgress progress() const { return careProgress(now, earlier(), examination()); }
};

[[nodiscard]] inline Care withPain(int then, int now)
{
    Care out;
    out.then.complaints.front().now = PainScore{then};
    out.now.complaints.front().now = PainScore{now};
    return out;
}

[[nodiscard]] inline Care withActivities(std::vector<Activity> then, std::vector<Activity> now)
{
    Care out;
    out.then.complaints.front().activities = std::move(then);
    out.now.complaints.front().activities = std::move(now);
    return out;
}

[[nodiscard]] inline Measure readWith(
    const std::string &movement, Side side, double value, Device device, MoveMode mode = MoveMode::Active)
{
    Measure out;
    out.movement = movement;
    out.side = side;
    out.value = value;
    out.device = device;
    out.mode = mode;
    return out;
}

[[nodiscard]] inline Care withMeasures(Measure then, Measure now)
{
    Care out;
    out.then.measures = {std::move(then)};
    out.now.measures = {std::move(now)};
    return out;
}

/// Enough visits that the plan of four is over.
[[nodiscard]] inline std::vector<EarlierVisit> threeVisits()
{
    return {{careVisit("2031-03-22"), false}, {careVisit("2031-03-15"), false}, {careVisit("2031-03-08"), false}};
}

} // namespace raphe::test
