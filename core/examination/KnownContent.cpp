#include "core/examination/KnownContent.h"

#include "core/safety/Cautions.h"
#include "core/safety/Warnings.h"

namespace raphe {

Result<Done> checkKnownContent(
    const SafetyRules &rules, const Examination &examination, const Visit &visit, const std::string &file)
{
    if (auto checked = checkConditions(rules, visit, file); !checked)
        return checked;
    if (auto checked = checkWarnings(rules, visit, file); !checked)
        return checked;
    return checkExamined(examination, visit, file);
}

} // namespace raphe
