#include "core/record/TreatmentJson.h"

#include "core/base/JsonText.h"
#include "core/record/JsonFields.h"

namespace raphe {

namespace {

using Json = nlohmann::ordered_json;

std::vector<std::string> readIds(const JsonReader &owner, std::string_view name)
{
    std::vector<std::string> out;
    if (owner.has(name))
        for (const JsonReader &item : owner.field(name).items())
            out.push_back(readForeignId(item));
    return out;
}

TreatmentStep readStep(const JsonReader &at, const std::function<Place(const JsonReader &)> &readPlace)
{
    at.expectObject({"structure", "side", "technique", "position", "planned", "rest", "began", "seconds", "words", "minded",
        "kpa", "done", "note"});
    TreatmentStep out;
    out.place = readPlace(at);
    out.technique = readForeignId(at.field("technique"));
    out.position = readWordOr(at, "position", positionWords);
    for (const auto &[name, seconds] : {std::pair{"planned", &out.planned}, {"rest", &out.rest}, {"seconds", &out.seconds}})
        if (at.has(name))
            *seconds = at.field(name).asInt(0, TreatmentStep::longest);
    if (at.has("began"))
        out.began = readTimeOfDay(at.field("began"));
    if (at.has("words"))
        for (const JsonReader &word : at.field("words").items())
            out.words.push_back(readWord(stepWordWords, word));
    out.minded = readIds(at, "minded");
    if (at.has("kpa"))
        out.kPa = at.field("kpa").asNumber(0, TreatmentStep::strongestSuction);
    out.done = readWordOr(at, "done", stepDoneWords);
    out.note = at.stringOr("note", {});
    return out;
}

AdverseEvent readEvent(const JsonReader &at)
{
    at.expectObject({"time", "signs", "told", "answer"});
    AdverseEvent out{readTimeOfDay(at.field("time")), readIds(at, "signs"), at.stringOr("told", {}), at.stringOr("answer", {})};
    if (out.signs.empty() && out.told.empty())
        at.fail(ErrorCode::MissingField, "signs or told");
    return out;
}

Json stepJson(const TreatmentStep &step)
{
    Json json = placeJson(step.place);
    json["technique"] = step.technique;
    putWord(json, "position", positionWords, step.position);
    putText(json, "began", step.began);
    for (const auto &[name, seconds] : {std::pair{"planned", step.planned}, {"rest", step.rest}, {"seconds", step.seconds}})
        if (seconds > 0)
            json[name] = seconds;
    for (const StepWord word : step.words)
        json["words"].push_back(wordOf(stepWordWords, word));
    if (!step.minded.empty())
        json["minded"] = step.minded;
    if (step.kPa)
        json["kpa"] = *step.kPa;
    putWord(json, "done", stepDoneWords, step.done);
    putText(json, "note", step.note);
    return json;
}

Json eventJson(const AdverseEvent &event)
{
    Json json{{"time", event.time}};
    if (!event.signs.empty())
        json["signs"] = event.signs;
    putText(json, "told", event.told);
    putText(json, "answer", event.answer);
    return json;
}

} // namespace

TreatmentLog readTreatment(const JsonReader &at, const std::function<Place(const JsonReader &)> &readPlace)
{
    at.expectObject({"steps", "ahead", "running", "events"});
    TreatmentLog out;
    if (at.has("steps"))
        for (const JsonReader &item : at.field("steps").items()) {
            out.steps.push_back(readStep(item, readPlace));
            if (!out.steps.back().hasBegun() && out.steps.back().done != StepDone::Skipped)
                item.fail(ErrorCode::MissingField, "began");
        }
    if (at.has("ahead"))
        for (const JsonReader &item : at.field("ahead").items()) {
            out.ahead.push_back(readStep(item, readPlace));
            if (out.ahead.back().done)
                item.field("done").fail(ErrorCode::Contradiction, "ahead, done");
        }
    if (at.has("running")) {
        out.running = readTimeOfDay(at.field("running"));
        if (out.steps.empty() || out.steps.back().done)
            at.field("running").fail(ErrorCode::Contradiction, "running, without a step");
    }
    if (at.has("events"))
        for (const JsonReader &item : at.field("events").items())
            out.events.push_back(readEvent(item));
    return out;
}

Json treatmentJson(const TreatmentLog &treatment)
{
    Json json = Json::object();
    for (const TreatmentStep &step : treatment.steps)
        json["steps"].push_back(stepJson(step));
    for (const TreatmentStep &step : treatment.ahead)
        json["ahead"].push_back(stepJson(step));
    putText(json, "running", treatment.running);
    for (const AdverseEvent &event : treatment.events)
        json["events"].push_back(eventJson(event));
    return json;
}

} // namespace raphe
