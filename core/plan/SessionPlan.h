// The plan of one treatment: the best use of the minutes that are left, each step with its reason, and what was left out and why.
// Made of what treatFirst offers, one technique a place. Plain values; planSession is immutable work on them, thread-safe.
#pragma once

#include "core/plan/Access.h"
#include "core/plan/Advice.h"
#include "core/plan/PlanOrder.h"
#include "core/plan/TechniqueChoice.h"
#include "core/record/PlanWish.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace raphe {

/// What is asked for. Places are the visit's.
struct PlanRequest {
    PlanWish wish; // the visit's, as a rule
    Preferences preferences;
    std::vector<EarlierWork> earlier;
    // How things are; nothing: the patient has just come in, and greeting and undressing take their time.
    std::optional<Position> lying;
    bool isOiled = false;
};

struct PlannedStep {
    Place place;
    const Technique *technique = nullptr; // of Techniques
    Position position{};
    std::optional<Cover> cover; // what is uncovered for it; nothing: worked through cloth, or bare already
    // Seconds, in this order.
    int turn = 0;
    int wipe = 0;
    int uncover = 0;
    int rest = 0;
    int work = 0;
    int value = 0;
    std::vector<std::string> why; // sentences: why here, why this technique, why before others
    std::vector<std::pair<OrderReason, Place>> before; // steps that come later because of their order
    std::vector<CautionVerdict> cautions; // that concern this technique there
    [[nodiscard]] int seconds() const { return turn + wipe + uncover + rest + work; }
};

struct LeftOut {
    Place place;
    std::string why; // a sentence
};

struct SessionPlan {
    std::vector<PlannedStep> steps; // in order
    std::vector<LeftOut> left; // of what was found, and what must be left alone
    std::vector<std::string> told; // what the plan as a whole must say: locked, pinned steps that do not fit
    int reserved = 0; // seconds: greeting, undressing, retest, rising slowly
    int seconds = 0; // of the steps
    int value = 0;
    int turns = 0;
    int bound = 0; // no plan is worth more
    [[nodiscard]] bool isProved() const { return bound == value; }
    /// How much more any plan could be worth, 0 to 1 of the bound.
    [[nodiscard]] double gap() const { return bound > 0 ? static_cast<double>(bound - value) / bound : 0; }
};

/// Keeps references; all must outlive it.
class Planner {
public:
    Planner(const Adviser &adviser, const Regions &regions, const Techniques &techniques, const Access &access)
        : m_adviser(adviser), m_regions(regions), m_techniques(techniques), m_access(access)
    {
    }

    /// Mirroring the visit and the request mirrors the plan. `file` is used in
    /// messages. Fails when the visit names a condition that the rules do not know.
    [[nodiscard]] Result<SessionPlan> plan(const Visit &visit, const PlanRequest &request, const std::string &file) const;

private:
    const Adviser &m_adviser;
    const Regions &m_regions;
    const Techniques &m_techniques;
    const Access &m_access;
};

[[nodiscard]] PlanRequest mirrored(PlanRequest request);
/// Places and positions; sentences stay as they are.
[[nodiscard]] SessionPlan mirrored(SessionPlan plan);

} // namespace raphe
