// raphe-batch plan: the best use of the minutes left (resources/schema/plan.schema.json).
#include "app/batch/Commands.h"

#include "app/batch/Output.h"
#include "app/batch/VisitFile.h"
#include "core/plan/SessionPlan.h"
#include "core/safety/TechniqueGroups.h"

#include <algorithm>
#include <iostream>

namespace raphe::batch {

namespace {

Json stepJson(const PlannedStep &step)
{
    Json out = placeJson(step.place);
    out["technique"] = step.technique->id;
    out["how"] = step.technique->dose.how;
    out["position"] = wordOf(positionWords, step.position);
    if (step.cover)
        out["uncover"] = step.cover->id;
    else
        out["through_cloth"] = step.technique->throughCloth;
    out["seconds"] = {
        {"turn", step.turn}, {"wipe", step.wipe}, {"uncover", step.uncover}, {"rest", step.rest}, {"work", step.work}};
    out["value"] = step.value;
    out["why"] = step.why;
    out["stop_when"] = step.technique->caution;
    if (!step.cautions.empty())
        out["cautions"] = verdictsJson(step.cautions);
    return out;
}

// The wishes of the visit, with what the command line says.
Result<PlanRequest> requestOf(
    const PlanWish &wish, const PlanVerb &verb, const Techniques &techniques, const std::vector<TechniqueGroup> &groups)
{
    PlanRequest request;
    request.wish = wish;
    if (verb.minutes)
        request.wish.minutes = verb.minutes;
    for (const std::string &word : verb.barred) {
        const auto *known =
            std::find_if(positionWords.begin(), positionWords.end(), [&](const auto &p) { return p.second == word; });
        if (known == positionWords.end())
            return Error{ErrorCode::UnknownWord, "--bar", word};
        request.wish.barred.insert(known->first);
    }
    for (const std::string &id : verb.scope)
        if (std::none_of(groups.begin(), groups.end(), [&](const TechniqueGroup &g) { return g.id == id; }))
            return Error{ErrorCode::UnknownId, "--scope", id};
    request.preferences.techniques = techniquesWithin(groups, verb.scope);
    for (const std::string &id : verb.without) {
        const bool isKnown = std::any_of(
            techniques.all.begin(), techniques.all.end(), [&](const Technique &t) { return t.id == id || t.action == id; });
        if (!isKnown)
            return Error{ErrorCode::UnknownId, "--without", id};
        request.wish.refused.insert(id);
    }
    return request;
}

} // namespace

Result<Done> printPlan(const PlanVerb &verb)
{
    const auto read = readAdvisedVisit(verb.visit);
    if (!read)
        return read.error();
    const auto &[known, adviser] = read.value();
    const auto &[knowledge, visit] = known;
    const SafetyRules &rules = adviser.rules();
    const auto techniques = readEmbeddedTechniques(rules);
    if (!techniques)
        return techniques.error();
    const auto access = readEmbeddedAccess(*knowledge.regions);
    if (!access)
        return access.error();
    const auto groups = readEmbeddedTechniqueGroups(rules);
    if (!groups)
        return groups.error();
    const auto request = requestOf(visit.plan, verb, techniques.value(), groups.value());
    if (!request)
        return request.error();
    const Planner planner(adviser, *knowledge.regions, techniques.value(), access.value());
    const auto planned = planner.plan(visit, request.value(), verb.visit);
    if (!planned)
        return planned.error();
    const SessionPlan &plan = planned.value();
    Json steps = Json::array();
    for (const PlannedStep &step : plan.steps)
        steps.push_back(stepJson(step));
    Json left = Json::array();
    for (const LeftOut &out : plan.left) {
        left.push_back(placeJson(out.place));
        left.back()["why"] = out.why;
    }
    const Json out{{"minutes", request.value().wish.minutes.value_or(PlanWish::usualMinutes)},
        {"reserved_seconds", plan.reserved}, {"seconds", plan.seconds}, {"value", plan.value}, {"bound", plan.bound},
        {"proved", plan.isProved()}, {"turns", plan.turns}, {"told", plan.told}, {"steps", std::move(steps)},
        {"left_out", std::move(left)}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
