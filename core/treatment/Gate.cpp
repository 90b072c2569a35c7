#include "core/treatment/Gate.h"

#include <algorithm>
#include <iterator>

namespace raphe {

std::vector<CautionVerdict> gateOf(const Cautions &cautions, const Techniques &techniques, const TreatmentStep &step)
{
    const Technique *technique = techniques.find(step.technique);
    std::vector<CautionVerdict> out;
    for (CautionVerdict &v : cautions.at(step.place))
        if (!technique || v.concernsAll() || std::find(v.actions.begin(), v.actions.end(), technique->action) != v.actions.end())
            out.push_back(std::move(v));
    return out;
}

std::vector<TreatmentStep> stepsAhead(const SessionPlan &plan, const TreatmentLog &today)
{
    std::vector<TreatmentStep> out;
    std::transform(plan.steps.begin(), plan.steps.end(), std::back_inserter(out), [](const PlannedStep &from) {
        TreatmentStep step;
        step.place = from.place;
        step.technique = from.technique->id;
        step.position = from.position;
        step.planned = from.work;
        step.rest = from.rest;
        return step;
    });
    std::erase_if(out, [&](const TreatmentStep &step) {
        return std::any_of(today.steps.begin(), today.steps.end(), [&](const TreatmentStep &done) {
            return done.done == StepDone::Done && done.place == step.place && done.technique == step.technique;
        });
    });
    return out;
}

} // namespace raphe
