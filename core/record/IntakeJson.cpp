#include "core/record/IntakeJson.h"

#include "core/base/JsonText.h"
#include "core/record/PatientRecord.h"
#include "core/record/Visit.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

using Json = nlohmann::ordered_json;

std::optional<PainScore> readScore(const JsonReader &owner, std::string_view name)
{
    return owner.has(name) ? std::optional(PainScore{owner.field(name).asInt(0, PainScore::highest)}) : std::nullopt;
}

Activity readActivity(const JsonReader &at)
{
    at.expectObject({"name", "score"});
    Activity activity{at.stringOr("name", {}), {}};
    if (at.has("score"))
        activity.score = at.field("score").asInt(0, Activity::highest);
    if (activity == Activity{})
        at.fail(ErrorCode::MissingField, "name or score");
    return activity;
}

Json activityJson(const Activity &activity)
{
    Json json = Json::object();
    putText(json, "name", activity.name);
    if (activity.score)
        json["score"] = *activity.score;
    return json;
}

Complaint readComplaint(const JsonReader &at)
{
    at.expectObject({"episode", "text", "since", "now", "worst", "best", "aggravates", "eases", "day", "irritability",
        "activities", "goal", "asked"});
    Complaint out;
    if (at.has("episode"))
        out.episode = at.field("episode").asInt(1, PatientComplaint::highestId);
    out.text = at.stringOr("text", {});
    out.since = at.stringOr("since", {});
    out.now = readScore(at, "now");
    out.worst = readScore(at, "worst");
    out.best = readScore(at, "best");
    out.aggravates = at.stringOr("aggravates", {});
    out.eases = at.stringOr("eases", {});
    if (at.has("day")) {
        const JsonReader day = at.field("day");
        day.expectObject({"waking", "morning", "noon", "evening", "night"});
        for (std::size_t i = 0; i < out.day.size(); ++i)
            out.day[i] = readWordOr(day, partOfDayWords[i].second, dayLevelWords);
    }
    out.irritability = readWordOr(at, "irritability", irritabilityWords);
    if (at.has("activities"))
        for (const JsonReader &item : at.field("activities").items(0, Activity::most))
            out.activities.push_back(readActivity(item));
    out.goal = at.stringOr("goal", {});
    out.asked = readDate(at, "asked");
    return out;
}

Json complaintJson(const Complaint &complaint)
{
    Json json = Json::object();
    if (complaint.episode)
        json["episode"] = *complaint.episode;
    putText(json, "text", complaint.text);
    putText(json, "since", complaint.since);
    const auto putScore = [&](const char *name, const std::optional<PainScore> &score) {
        if (score)
            json[name] = score->value;
    };
    putScore("now", complaint.now);
    putScore("worst", complaint.worst);
    putScore("best", complaint.best);
    putText(json, "aggravates", complaint.aggravates);
    putText(json, "eases", complaint.eases);
    for (std::size_t i = 0; i < complaint.day.size(); ++i)
        if (complaint.day[i])
            json["day"][std::string(partOfDayWords[i].second)] = wordOf(dayLevelWords, *complaint.day[i]);
    putWord(json, "irritability", irritabilityWords, complaint.irritability);
    for (const Activity &activity : complaint.activities)
        json["activities"].push_back(activityJson(activity));
    putText(json, "goal", complaint.goal);
    putText(json, "asked", complaint.asked);
    return json;
}

ConsentAnswer readConsent(const JsonReader &at, const std::vector<ConsentAnswer> &earlier)
{
    at.expectObject({"item", "answer", "asked", "chaperone", "chaperone_name", "guardian", "remark"});
    ConsentAnswer out;
    out.item = at.string("item");
    if (!isWellFormed(StructureId{out.item}))
        at.field("item").fail(ErrorCode::BadId, out.item);
    if (std::any_of(earlier.begin(), earlier.end(), [&](const ConsentAnswer &other) { return other.item == out.item; }))
        at.fail(ErrorCode::Duplicate, out.item);
    out.state = readWord(consentStateWords, at.field("answer"));
    static_cast<void>(at.field("asked"));
    out.asked = readDate(at, "asked");
    out.chaperone = readWordOr(at, "chaperone", chaperoneWords);
    out.chaperoneName = at.stringOr("chaperone_name", {});
    if (!out.chaperoneName.empty() && out.chaperone != Chaperone::Present)
        at.field("chaperone_name").fail(ErrorCode::Contradiction, "chaperone_name, no chaperone present");
    if (at.has("guardian")) {
        const JsonReader guardian = at.field("guardian");
        guardian.expectObject({"name", "relation"});
        out.guardian = Guardian{guardian.string("name"), guardian.stringOr("relation", {})};
    }
    out.remark = at.stringOr("remark", {});
    return out;
}

Json consentJson(const ConsentAnswer &consent)
{
    Json json;
    json["item"] = consent.item;
    json["answer"] = wordOf(consentStateWords, consent.state);
    json["asked"] = consent.asked;
    putWord(json, "chaperone", chaperoneWords, consent.chaperone);
    putText(json, "chaperone_name", consent.chaperoneName);
    if (consent.guardian) {
        json["guardian"]["name"] = consent.guardian->name;
        putText(json["guardian"], "relation", consent.guardian->relation);
    }
    putText(json, "remark", consent.remark);
    return json;
}

Promise readPromise(const JsonReader &at)
{
    at.expectObject({"task", "kept"});
    return {at.string("task"), readWordOr(at, "kept", keptWords)};
}

} // namespace

std::string readDate(const JsonReader &owner, std::string_view name)
{
    if (!owner.has(name))
        return {};
    std::string date = owner.string(name);
    if (!isIsoDate(date))
        owner.field(name).fail(ErrorCode::OutOfRange, date + std::string(dateAllowed));
    return date;
}

std::vector<Complaint> readComplaints(const JsonReader &at)
{
    std::vector<Complaint> complaints;
    for (const JsonReader &item : at.items(0, Complaint::most))
        complaints.push_back(readComplaint(item));
    return complaints;
}

nlohmann::ordered_json complaintsJson(const std::vector<Complaint> &complaints)
{
    Json json = Json::array();
    for (const Complaint &complaint : complaints)
        json.push_back(complaintJson(complaint));
    return json;
}

std::vector<ConsentAnswer> readConsents(const JsonReader &at)
{
    std::vector<ConsentAnswer> consents;
    for (const JsonReader &item : at.items())
        consents.push_back(readConsent(item, consents));
    return consents;
}

nlohmann::ordered_json consentsJson(const std::vector<ConsentAnswer> &consents)
{
    Json json = Json::array();
    for (const ConsentAnswer &consent : consents)
        json.push_back(consentJson(consent));
    return json;
}

SinceLast readSinceLast(const JsonReader &at)
{
    at.expectObject({"course", "reaction", "reaction_told", "promises"});
    SinceLast out;
    out.course = readWordOr(at, "course", courseWords);
    out.reaction = readWordOr(at, "reaction", reactionWords);
    out.reactionTold = at.stringOr("reaction_told", {});
    if (at.has("promises"))
        for (const JsonReader &item : at.field("promises").items())
            out.promises.push_back(readPromise(item));
    return out;
}

nlohmann::ordered_json sinceLastJson(const SinceLast &since)
{
    Json json = Json::object();
    putWord(json, "course", courseWords, since.course);
    putWord(json, "reaction", reactionWords, since.reaction);
    putText(json, "reaction_told", since.reactionTold);
    for (const Promise &promise : since.promises) {
        Json item;
        item["task"] = promise.task;
        putWord(item, "kept", keptWords, promise.kept);
        json["promises"].push_back(std::move(item));
    }
    return json;
}

} // namespace raphe
