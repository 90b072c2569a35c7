#include "core/document/fhir/FhirThemes.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace raphe::fhir {

namespace {

Json quantity(const Making &making, double value, const std::string &unit, const std::string &ucum)
{
    Json out = Json::object();
    // A whole number stands as one: 45, not 45.0.
    if (value == std::floor(value) && std::abs(value) < 1e15)
        out["value"] = static_cast<std::int64_t>(value);
    else
        out["value"] = value;
    out["unit"] = unit;
    out["system"] = making.codes().uri("ucum");
    out["code"] = ucum;
    return out;
}

std::optional<Json> siteOfMovement(Making &making, const Movement *movement, Side side)
{
    if (!movement)
        return making.partSite({}, side);
    if (movement->joints.size() == 1) { // where several move it is no one's
        const Structure &joint = making.atlas().at(movement->joints.front());
        const std::vector<Side> sides = making.atlas().sides(joint);
        if (std::find(sides.begin(), sides.end(), side) != sides.end())
            return making.site({joint.id, side});
    }
    return making.partSite(movement->group, side);
}

void addMeasure(Making &making, When when, const Measure &measure)
{
    const Movement *movement = making.source().examination->findMovement(measure.movement);
    const bool isDegrees = !movement || movement->unit == Unit::Degrees;
    const auto amount = [&](double value) {
        return quantity(making, value, isDegrees ? "degrees" : "mm", isDegrees ? "deg" : "mm");
    };
    const std::string name = movement ? movement->name : spelt(measure.movement);
    Json out = making.observation(coded(ownCoding("movement", measure.movement, name), name), "exam",
        timeOf(making, when, MomentKind::Movement, measure.movement, measure.side));
    if (measure.value)
        out["valueQuantity"] = amount(*measure.value);
    else
        out["valueCodeableConcept"] = ownCoded("found", "watched-not-measured");
    addNote(out, measure.note);
    if (auto site = siteOfMovement(making, movement, measure.side))
        out["bodySite"] = std::move(*site);
    if (measure.mode)
        out["method"] = ownCoded("method", wordOf(moveModeWords, *measure.mode));
    if (measure.device)
        out["device"] = Json{{"display", wordOf(deviceWords, *measure.device)}};
    if (measure.painFrom)
        append(out, "component", making.component("pain-from", "valueQuantity", amount(*measure.painFrom)));
    if (measure.hurts)
        append(out, "component", making.component("brings-pain", "valueBoolean", true));
    if (measure.familiar)
        append(out, "component", making.component("familiar-pain", "valueBoolean", true));
    addSeen(making, when,
        "movement/" + measure.movement + "/" + std::string(wordOf(raphe::sideWords, measure.side))
            + (measure.mode ? "/" + std::string(wordOf(moveModeWords, *measure.mode)) : ""),
        std::move(out));
}

// As the vital signs profiles want it; a sign that they do not know stands with its own unit, uncoded.
void putVital(Making &making, Json &out, const ExamTest &test, const TestResult &result)
{
    const FhirVital *vital = making.codes().findVital(test.id);
    const std::string unit = test.vital ? test.vital->unit : std::string();
    const auto amount = [&](double value) {
        if (vital)
            return quantity(making, value, unit, vital->unit);
        Json plain{{"value", value}};
        put(plain, "unit", unit);
        return plain;
    };
    if (result.values.size() == 1) {
        out["valueQuantity"] = amount(result.values.front());
        return;
    }
    for (std::size_t i = 0; i < result.values.size(); ++i) {
        const std::string field =
            test.vital && i < test.vital->fields.size() ? test.vital->fields[i] : "value-" + std::to_string(i + 1);
        Json part = Json::object();
        Json code = Json::object();
        if (vital && i < vital->fields.size())
            append(code, "coding", coding(making.codes().uri("loinc"), vital->fields[i].code, vital->fields[i].display));
        append(code, "coding", ownCoding("test-value", field));
        part["code"] = std::move(code);
        part["valueQuantity"] = amount(result.values[i]);
        append(out, "component", std::move(part));
    }
}

void addTest(Making &making, When when, const TestResult &result)
{
    const ExamTest *test = making.source().examination->findTest(result.test);
    const FhirVital *vital = making.codes().findVital(result.test);
    const std::string name = test ? test->name : spelt(result.test);
    Json code = Json::object();
    if (vital)
        append(code, "coding", coding(making.codes().uri("loinc"), vital->loinc, vital->display));
    append(code, "coding", ownCoding("test", result.test, name));
    put(code, "text", name);
    const bool isVital = test && test->kind == TestKind::Vital;
    Json out = making.observation(
        std::move(code), isVital ? "vital-signs" : "exam", timeOf(making, when, MomentKind::Test, result.test, result.side));
    if (result.pain)
        out["valueCodeableConcept"] = ownCoded("test-pain", wordOf(testPainWords, *result.pain));
    else if (result.grade)
        out["valueInteger"] = *result.grade;
    else if (result.present)
        out["valueBoolean"] = *result.present;
    else if (!result.values.empty() && test)
        putVital(making, out, *test, result);
    else
        making.setAbsent(out, result.unable ? "not-performed" : "unknown", result.unable.value_or(std::string()));
    addNote(out, result.note);
    if (auto site = making.partSite(test ? test->group : std::string(), result.side))
        out["bodySite"] = std::move(*site);
    if (result.changesFromAfar)
        append(out, "component", making.component("changes-from-afar", "valueBoolean", true));
    addSeen(making, when, "test/" + result.test + "/" + std::string(wordOf(raphe::sideWords, result.side)), std::move(out));
}

} // namespace

void addMeasures(Making &making)
{
    const Visit &visit = making.visit();
    for (const Measure &measure : visit.measures)
        addMeasure(making, When::Before, measure);
    for (const TestResult &result : visit.tests)
        addTest(making, When::Before, result);
    for (const Measure &measure : visit.retested.measures)
        addMeasure(making, When::After, measure);
    for (const TestResult &result : visit.retested.tests)
        addTest(making, When::After, result);
    if (!visit.retested.pain)
        return;
    Json out = making.observation("pain-now");
    out["valueInteger"] = visit.retested.pain->value;
    addSeen(making, When::After, complaintName(0) + "/pain-now", std::move(out));
}

} // namespace raphe::fhir
