#include "core/document/fhir/FhirThemes.h"

#include <cmath>

namespace raphe::fhir {

namespace {

/// Adds one and gives its reference to `evidence`.
void addScale(Making &making, std::vector<Json> &evidence, const std::string &name, Json observation)
{
    evidence.push_back(making.add(name, std::move(observation)));
}

void addPainScore(
    Making &making, std::vector<Json> &evidence, const std::string &name, const char *code, const std::optional<PainScore> &score)
{
    if (!score)
        return;
    Json out = making.observation(code);
    out["valueInteger"] = score->value;
    addScale(making, evidence, name + "/" + code, std::move(out));
}

void addActivities(Making &making, std::vector<Json> &evidence, const std::string &name, const Complaint &complaint)
{
    std::vector<Json> counted;
    for (std::size_t i = 0; i < complaint.activities.size(); ++i) {
        const Activity &activity = complaint.activities[i];
        Json out = making.observation("activity");
        if (activity.score)
            out["valueInteger"] = *activity.score;
        else
            making.setAbsent(out, "unknown", "no number was given");
        if (std::string words = cleaned(activity.name); !words.empty())
            append(out, "component", making.component("activity-name", "valueString", std::move(words)));
        Json reference = making.add(name + "/activity/" + std::to_string(i), std::move(out));
        if (activity.isComplete())
            counted.push_back(reference);
        evidence.push_back(std::move(reference));
    }
    const auto mean = meanScore(complaint.activities);
    if (!mean)
        return;
    Json out = making.observation("activities-mean");
    out["valueQuantity"] = Json{{"value", std::round(*mean * 100) / 100}, {"unit", "points"},
        {"system", making.codes().uri("ucum")}, {"code", "{score}"}};
    for (Json &reference : counted)
        append(out, "derivedFrom", std::move(reference));
    addScale(making, evidence, name + "/activities-mean", std::move(out));
}

void addDay(Making &making, std::vector<Json> &evidence, const std::string &name, const Complaint &complaint)
{
    Json out = making.observation("pain-through-day");
    for (const auto &[part, word] : partOfDayWords)
        if (const auto level = complaint.day[static_cast<std::size_t>(part)])
            append(out, "component",
                making.component(word, "valueCodeableConcept", ownCoded("day-level", wordOf(dayLevelWords, *level))));
    if (out.contains("component"))
        addScale(making, evidence, name + "/day", std::move(out));
}

void addComplaint(Making &making, std::size_t index)
{
    const Complaint &complaint = making.visit().complaints[index];
    const std::string name = complaintName(index);
    std::vector<Json> evidence;
    addPainScore(making, evidence, name, "pain-now", complaint.now);
    addPainScore(making, evidence, name, "pain-worst", complaint.worst);
    addPainScore(making, evidence, name, "pain-best", complaint.best);
    addActivities(making, evidence, name, complaint);
    addDay(making, evidence, name, complaint);
    if (complaint.irritability) {
        Json out = making.observation("irritability");
        out["valueCodeableConcept"] = ownCoded("irritability", wordOf(irritabilityWords, *complaint.irritability));
        addScale(making, evidence, name + "/irritability", std::move(out));
    }

    Json out{{"resourceType", "Condition"}, {"id", ""}};
    const auto status = [&](const char *system, const char *code) {
        return coded(coding(making.codes().uri(system), code, spelt(code)));
    };
    if (!making.isInError())
        out["clinicalStatus"] = status("condition-clinical", "active");
    // A complaint is told, not judged: nothing here is anybody's diagnosis.
    out["verificationStatus"] = status("condition-verification", making.isInError() ? "entered-in-error" : "unconfirmed");
    append(out, "category", status("condition-category", "problem-list-item"));
    out["code"] = coded(ownCoding("problem", "complaint", "complaint, in the patient's words"), complaint.text);
    // Where it hurts is said of the whole visit: with several complaints it is nobody's in particular.
    if (making.visit().complaints.size() == 1)
        for (const Place &place : making.visit().complaintAt)
            append(out, "bodySite", making.site(place));
    out["subject"] = making.patient();
    out["encounter"] = making.encounter();
    put(out, "onsetString", complaint.since);
    put(out, "recordedDate", making.moment({}));
    making.putPractitioner(out, "recorder");
    out["asserter"] = making.patient();
    for (Json &reference : evidence) {
        Json one = Json::object();
        append(one, "detail", std::move(reference));
        append(out, "evidence", std::move(one));
    }
    const auto told = [&](const char *label, const std::string &words) {
        if (!cleaned(words).empty())
            addNote(out, label + cleaned(words));
    };
    told("Made worse by: ", complaint.aggravates);
    told("Made better by: ", complaint.eases);
    told("Last asked: ", complaint.asked);
    making.add(name, std::move(out));
}

/// Which half of the body is painted: 'left', 'right' or 'both'; empty: nothing is.
std::string paintedSide(const PainPatch &patch)
{
    if (isWhole(patch.view))
        return std::string(wordOf(raphe::sideWords, patch.facing));
    bool isLeft = false;
    bool isRight = false;
    for (const BrushStroke &stroke : patch.strokes)
        for (const Point &p : stroke.points) {
            const double x = patch.view == View::Back ? p.x : -p.x; // above 0: the patient's right, as the drawings have it
            isRight = isRight || x + stroke.radius > 0;
            isLeft = isLeft || x - stroke.radius < 0;
        }
    return isLeft && isRight ? "both" : isLeft ? "left" : isRight ? "right" : "";
}

void addPatch(Making &making, std::size_t index)
{
    const PainPatch &patch = making.visit().pain[index];
    Json out = making.observation("pain-drawing");
    const auto word = [&](const char *code, const char *list, std::string_view value) {
        append(out, "component", making.component(code, "valueCodeableConcept", ownCoded(list, value)));
    };
    word("drawn-view", "view", wordOf(viewWords, patch.view));
    if (const std::string side = paintedSide(patch); !side.empty())
        word("drawn-side", "drawn-side", side);
    if (patch.quality)
        word("pain-quality", "pain-quality", wordOf(painQualityWords, *patch.quality));
    if (patch.intensity)
        append(out, "component", making.component("pain-intensity", "valueInteger", patch.intensity->value));
    word("painted-by", "painter", wordOf(painterWords, patch.painter));
    append(out, "component", making.component("place-confirmed", "valueBoolean", patch.confirmed));
    making.add("pain-drawing/" + std::to_string(index), std::move(out));
}

void addSince(Making &making)
{
    const auto &since = making.visit().sinceLast;
    if (!since)
        return;
    if (since->course) {
        Json out = making.observation("since-last");
        out["valueCodeableConcept"] = ownCoded("course", wordOf(courseWords, *since->course));
        making.add("since-last/course", std::move(out));
    }
    if (since->reaction || !cleaned(since->reactionTold).empty()) {
        Json out = making.observation("reaction");
        if (since->reaction)
            out["valueCodeableConcept"] = ownCoded("reaction", wordOf(reactionWords, *since->reaction));
        else
            making.setAbsent(out, "unknown", {});
        addNote(out, since->reactionTold);
        making.add("since-last/reaction", std::move(out));
    }
    for (std::size_t i = 0; i < since->promises.size(); ++i) {
        const Promise &promise = since->promises[i];
        Json out = making.observation("promise-kept");
        if (promise.kept)
            out["valueCodeableConcept"] = ownCoded("kept", wordOf(keptWords, *promise.kept));
        else
            making.setAbsent(out, "not-asked", {});
        addNote(out, promise.task);
        making.add("since-last/promise/" + std::to_string(i), std::move(out));
    }
}

} // namespace

std::string complaintName(std::size_t index)
{
    return "complaint/" + std::to_string(index);
}

void addComplaints(Making &making)
{
    const Visit &visit = making.visit();
    for (std::size_t i = 0; i < visit.complaints.size(); ++i)
        addComplaint(making, i);
    for (const Place &place : visit.complaintAt) {
        Json out = making.observation("hurts-here");
        out["bodySite"] = making.site(place);
        out["valueBoolean"] = true;
        making.add(
            "hurts-here/" + place.structure.value + "/" + std::string(wordOf(raphe::sideWords, place.side)), std::move(out));
    }
    for (std::size_t i = 0; i < visit.pain.size(); ++i)
        addPatch(making, i);
    if (visit.injured) {
        Json out = making.observation("began-with-injury");
        out["valueBoolean"] = true;
        making.add("injured", std::move(out));
    }
    addSince(making);
}

} // namespace raphe::fhir
