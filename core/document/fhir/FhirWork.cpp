#include "core/document/fhir/FhirThemes.h"

namespace raphe::fhir {

namespace {

// Signed care was confirmed step by step before; a step that was not is of a visit that still goes on, or nobody can tell.
std::string stepStatus(const Making &making, const TreatmentStep &step)
{
    if (making.isInError())
        return "entered-in-error";
    if (!step.done)
        return making.isSigned() ? "unknown" : "in-progress";
    switch (*step.done) {
    case StepDone::Done: return "completed";
    case StepDone::Partly: return "stopped";
    case StepDone::Skipped: break;
    }
    return "not-done";
}

void addStep(Making &making, std::size_t index)
{
    const TreatmentStep &step = making.visit().treatment.steps[index];
    const Technique *technique = making.source().techniques->find(step.technique);
    const std::string words = technique ? technique->name : spelt(step.technique);
    const std::string name = "step/" + std::to_string(index);
    Json out{{"resourceType", "Procedure"}, {"id", ""}};
    out["status"] = stepStatus(making, step);
    if (technique)
        out["category"] = ownCoded("technique-group", technique->action);
    out["code"] = coded(ownCoding("technique", step.technique, words), words);
    out["subject"] = making.patient();
    out["encounter"] = making.encounter();
    if (const std::string begin = making.moment(step.began); !begin.empty() && step.done != StepDone::Skipped) {
        Json period{{"start", begin}};
        if (step.done) // the work's seconds without the pauses: it ended no earlier
            period["end"] = making.momentAfter(step.began, step.seconds);
        out["performedPeriod"] = std::move(period);
    }
    if (auto who = making.practitioner(making.visit().practitioner))
        append(out, "performer", Json{{"actor", std::move(*who)}});
    if (!making.visit().complaints.empty())
        append(out, "reasonReference", making.referTo(complaintName(0)));
    Json site = making.site(step.place);
    append(out, "extension",
        extension(making.codes().uri("procedure-structure"), "valueReference", site.at("extension").at(0).at("valueReference")));
    append(out, "bodySite", std::move(site));
    const auto measured = [&](const char *what, double value, const char *unit, const char *ucum) {
        append(out, "extension",
            extension(own(what), "valueQuantity",
                Json{{"value", value}, {"unit", unit}, {"system", making.codes().uri("ucum")}, {"code", ucum}}));
    };
    if (step.seconds > 0)
        measured("seconds-of-work", step.seconds, "s", "s");
    if (step.kPa)
        measured("suction", *step.kPa, "kPa", "kPa");
    if (step.position)
        append(out, "extension",
            extension(
                own("patient-position"), "valueCodeableConcept", ownCoded("position", wordOf(positionWords, *step.position))));
    addNote(out, step.note);
    const Json procedure = making.add(name, std::move(out));

    for (std::size_t i = 0; i < step.words.size(); ++i) {
        Json said = making.observation("said-in-work", step.began);
        append(said, "partOf", procedure);
        said["bodySite"] = making.site(step.place);
        said["valueCodeableConcept"] = ownCoded("said", wordOf(stepWordWords, step.words[i]));
        making.add(name + "/said/" + std::to_string(i), std::move(said));
    }
}

void addUnwanted(Making &making, std::size_t index)
{
    const AdverseEvent &happened = making.visit().treatment.events[index];
    Json out{{"resourceType", "AdverseEvent"}, {"id", ""}};
    if (making.isInError()) // the resource has no status of its own
        append(out, "modifierExtension", extension(own("entered-in-error"), "valueBoolean", true));
    out["actuality"] = "actual";
    Json what = Json::object();
    for (const std::string &sign : happened.signs)
        append(what, "coding", ownCoding("stop-sign", sign));
    std::string words = cleaned(happened.told);
    const std::string answer = cleaned(happened.answer);
    if (!answer.empty()) { // the resource has no notes either: in words too, for who reads no extensions
        words += (words.empty() ? "" : ". ") + std::string("What was done: ") + answer;
        append(out, "extension", extension(own("what-was-done"), "valueString", answer));
    }
    put(what, "text", words);
    if (!what.empty())
        out["event"] = std::move(what);
    out["subject"] = making.patient();
    out["encounter"] = making.encounter();
    put(out, "date", making.moment(happened.time));
    making.putPractitioner(out, "recorder");
    making.add("event/" + std::to_string(index), std::move(out));
}

} // namespace

void addWork(Making &making)
{
    const TreatmentLog &treatment = making.visit().treatment;
    for (std::size_t i = 0; i < treatment.steps.size(); ++i)
        addStep(making, i);
    for (std::size_t i = 0; i < treatment.events.size(); ++i)
        addUnwanted(making, i);
}

} // namespace raphe::fhir
