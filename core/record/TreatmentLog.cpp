#include "core/record/TreatmentLog.h"

namespace raphe {

TreatmentLog mirrored(TreatmentLog treatment)
{
    for (std::vector<TreatmentStep> *steps : {&treatment.steps, &treatment.ahead})
        for (TreatmentStep &step : *steps) {
            step.place = mirrored(step.place);
            if (step.position)
                step.position = mirrored(*step.position);
        }
    return treatment;
}

} // namespace raphe
