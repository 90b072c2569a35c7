#include "core/document/fhir/FhirThemes.h"

namespace raphe::fhir {

namespace {

Json item(const std::string &linkId, const char *label, const char *valueName, Json value)
{
    Json out{{"linkId", linkId}, {"text", label}};
    append(out, "answer", Json{{valueName, std::move(value)}});
    return out;
}

Json answered(const Making &making, const WarningSign &sign, const WarningAnswer &answer)
{
    Json out = Json::object();
    out["linkId"] = sign.id;
    put(out, "text", sign.ask);
    Json given{{"valueBoolean", answer.isThere}};
    const auto say = [&](const char *part, const char *label, const char *valueName, Json value) {
        append(given, "item", item(sign.id + "." + part, label, valueName, std::move(value)));
    };
    const auto sayText = [&](const char *part, const char *label, const std::string &words) {
        if (std::string clean = cleaned(words); !clean.empty())
            say(part, label, "valueString", std::move(clean));
    };
    if (!answer.asked.empty())
        say("asked", "Asked on", "valueDate", answer.asked);
    if (answer.isThere) {
        if (!answer.at.empty()) {
            Json places{{"linkId", sign.id + ".where"}, {"text", "Where"}};
            for (const Place &place : answer.at)
                append(places, "answer", Json{{"valueCoding", making.placeCoding(place)}});
            append(given, "item", std::move(places));
        }
        if (answer.decided)
            say("decided", "Decided", "valueCoding", ownCoding("decision", wordOf(decisionWords, *answer.decided)));
        sayText("why", "Why", answer.why);
        sayText("told", "Who was told", answer.told);
    }
    append(out, "answer", std::move(given));
    return out;
}

void addScreening(Making &making)
{
    Json out{{"resourceType", "QuestionnaireResponse"}, {"id", ""}};
    out["questionnaire"] = own("questionnaire:warning-signs");
    out["status"] = making.status("in-progress", "completed");
    out["subject"] = making.patient();
    out["encounter"] = making.encounter();
    put(out, "authored", making.moment({}));
    making.putPractitioner(out, "author");
    out["source"] = making.patient();
    for (const WarningAnswer &answer : making.visit().warnings) {
        const WarningSign *sign = making.source().rules->signs().find(answer.sign);
        // Not even that such a question was asked is told: whoever reads the bundle may not be alone.
        if (sign && !sign->alone && !answer.isMoved)
            append(out, "item", answered(making, *sign, answer));
    }
    if (out.contains("item"))
        making.add("warning-signs", std::move(out));
}

const char *consentStatus(const Making &making, ConsentState state)
{
    if (making.isInError())
        return "entered-in-error";
    switch (state) {
    case ConsentState::Given: return "active";
    case ConsentState::Refused: return "rejected";
    case ConsentState::Withdrawn: break;
    }
    return "inactive";
}

Json guardianOf(Making &making, const Guardian &guardian)
{
    Json out{{"resourceType", "RelatedPerson"}, {"id", ""}};
    out["patient"] = making.patient();
    if (Json relation = textOnly(guardian.relation); !relation.empty())
        append(out, "relationship", std::move(relation));
    if (Json name = textOnly(guardian.name); !name.empty())
        append(out, "name", std::move(name));
    const std::string name = making.patientId() + "\nguardian\n" + guardian.name + "\n" + guardian.relation;
    return making.addLasting(making.lastingId(name), std::move(out));
}

void addConsent(Making &making, const ConsentAnswer &answer)
{
    const ConsentItem *asked = making.source().rules->consents().find(answer.item);
    const std::string title = asked ? asked->title : spelt(answer.item);
    Json out{{"resourceType", "Consent"}, {"id", ""}};
    out["status"] = consentStatus(making, answer.state);
    const bool isOfData = asked && (asked->covers.record || asked->covers.pictures);
    out["scope"] = coded(coding(making.codes().uri("consent-scope"), isOfData ? "patient-privacy" : "treatment",
        isOfData ? "Privacy Consent" : "Treatment"));
    const LoincCode &category = making.codes().consent;
    append(out, "category", coded(coding(making.codes().uri("loinc"), category.code, category.display)));
    append(out, "category", coded(ownCoding("consent", answer.item, title), title));
    out["patient"] = making.patient();
    put(out, "dateTime", answer.asked);
    append(out, "performer", answer.guardian ? guardianOf(making, *answer.guardian) : making.patient());
    // FHIR asks for the policy under which it was asked: our own explanation of the item.
    out["policyRule"] = coded(ownCoding("consent", answer.item, title), asked ? asked->explain : title);
    Json provision{{"type", answer.state == ConsentState::Given ? "permit" : "deny"}};
    append(provision, "code", coded(ownCoding("consent", answer.item, title), title));
    out["provision"] = std::move(provision);
    append(out, "extension",
        extension(
            own("consent-answer"), "valueCodeableConcept", ownCoded("consent-answer", wordOf(consentStateWords, answer.state))));
    if (answer.chaperone)
        append(out, "extension",
            extension(own("chaperone"), "valueCodeableConcept",
                coded(ownCoding("chaperone", wordOf(chaperoneWords, *answer.chaperone)), answer.chaperoneName)));
    if (std::string remark = cleaned(answer.remark); !remark.empty())
        append(out, "extension", extension(own("remark"), "valueString", std::move(remark)));
    making.add("consent/" + answer.item, std::move(out));
}

} // namespace

void addAsked(Making &making)
{
    addScreening(making);
    for (const ConsentAnswer &answer : making.visit().consents)
        addConsent(making, answer);
}

} // namespace raphe::fhir
