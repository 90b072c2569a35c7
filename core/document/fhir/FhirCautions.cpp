#include "core/document/fhir/FhirThemes.h"

namespace raphe::fhir {

void addCautions(Making &making)
{
    const Visit &visit = making.visit();
    for (const Condition &condition : visit.conditions) {
        const ConditionKind *kind = making.source().rules->findCondition(condition.id);
        Json out{{"resourceType", "Condition"}, {"id", ""}};
        const auto status = [&](const char *system, const char *code) {
            return coded(coding(making.codes().uri(system), code, spelt(code)));
        };
        if (!making.isInError())
            out["clinicalStatus"] = status("condition-clinical", "active");
        out["verificationStatus"] = status("condition-verification", making.isInError() ? "entered-in-error" : "unconfirmed");
        append(out, "category", ownCoded("problem", "bears-on-the-work"));
        const std::string name = kind ? kind->name : spelt(condition.id);
        out["code"] = coded(ownCoding("condition", condition.id, name), name);
        for (const Place &place : condition.at)
            append(out, "bodySite", making.site(place));
        out["subject"] = making.patient();
        out["encounter"] = making.encounter();
        put(out, "recordedDate", making.moment({}));
        making.putPractitioner(out, "recorder");
        making.add("condition/" + condition.id, std::move(out));
    }
    for (std::size_t i = 0; i < visit.cautions.size(); ++i) {
        if (cleaned(visit.cautions[i]).empty())
            continue;
        Json out{{"resourceType", "Flag"}, {"id", ""}};
        out["status"] = making.isInError() ? "entered-in-error" : "active";
        append(out, "category", coded(coding(making.codes().uri("flag-category"), "safety", "Safety")));
        out["code"] = coded(ownCoding("problem", "caution", "what must be respected in the work"), visit.cautions[i]);
        out["subject"] = making.patient();
        if (const std::string day = making.moment({}); !day.empty())
            out["period"] = Json{{"start", day}};
        out["encounter"] = making.encounter();
        making.putPractitioner(out, "author");
        making.add("caution/" + std::to_string(i), std::move(out));
    }
}

} // namespace raphe::fhir
