#include "core/record/ClosingJson.h"

#include "core/base/JsonText.h"
#include "core/record/IntakeJson.h"
#include "core/record/JsonFields.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

using Json = nlohmann::ordered_json;

std::string readFilled(const JsonReader &owner, std::string_view name)
{
    std::string text = owner.string(name);
    if (text.empty())
        owner.fail(ErrorCode::MissingField, std::string(name));
    return text;
}

bool readFlag(const JsonReader &owner, std::string_view name)
{
    return owner.has(name) && owner.field(name).asBool();
}

GivenAdvice readAdvice(const JsonReader &at, const std::vector<GivenAdvice> &earlier)
{
    at.expectObject({"item", "title", "text"});
    GivenAdvice out;
    if (at.has("item"))
        out.item = readForeignId(at.field("item"));
    out.title = at.stringOr("title", {});
    out.text = readFilled(at, "text");
    const bool isTwice = std::any_of(
        earlier.begin(), earlier.end(), [&](const GivenAdvice &other) { return !out.item.empty() && other.item == out.item; });
    if (isTwice)
        at.fail(ErrorCode::Duplicate, out.item);
    return out;
}

Json adviceJson(const GivenAdvice &advice)
{
    Json json = Json::object();
    putText(json, "item", advice.item);
    putText(json, "title", advice.title);
    json["text"] = advice.text;
    return json;
}

Impression readImpression(const JsonReader &at)
{
    at.expectObject({"text", "code", "system"});
    Impression out{at.stringOr("text", {}), at.stringOr("code", {}), at.stringOr("system", {})};
    if (out.text.empty() && out.code.empty())
        at.fail(ErrorCode::MissingField, "text or code");
    return out;
}

Json impressionJson(const Impression &impression)
{
    Json json = Json::object();
    putText(json, "text", impression.text);
    putText(json, "code", impression.code);
    putText(json, "system", impression.system);
    return json;
}

Goal readGoal(const JsonReader &at)
{
    at.expectObject({"text", "until", "reached"});
    return {readFilled(at, "text"), readDate(at, "until"), readFlag(at, "reached")};
}

Json goalJson(const Goal &goal)
{
    Json json{{"text", goal.text}};
    putText(json, "until", goal.until);
    if (goal.reached)
        json["reached"] = true;
    return json;
}

CarePlan readPlan(const JsonReader &at)
{
    at.expectObject({"agreed", "visits", "every_days", "success"});
    CarePlan out;
    static_cast<void>(at.field("agreed"));
    out.agreed = readDate(at, "agreed");
    out.visits = at.field("visits").asInt(1, CarePlan::mostVisits);
    out.everyDays = at.field("every_days").asInt(1, CarePlan::mostDays);
    out.success = at.stringOr("success", {});
    return out;
}

Json planJson(const CarePlan &plan)
{
    Json json{{"agreed", plan.agreed}, {"visits", plan.visits}, {"every_days", plan.everyDays}};
    putText(json, "success", plan.success);
    return json;
}

CareReview readReview(const JsonReader &at)
{
    at.expectObject({"decision", "why"});
    return {readWord(careDecisionWords, at.field("decision")), readFilled(at, "why")};
}

LaterCall readCall(const JsonReader &at)
{
    at.expectObject({"due", "made", "reaction", "told"});
    LaterCall out;
    static_cast<void>(at.field("due"));
    out.due = readDate(at, "due");
    out.made = readDate(at, "made");
    out.reaction = readWordOr(at, "reaction", reactionWords);
    out.told = at.stringOr("told", {});
    if (out.made.empty() && (out.reaction || !out.told.empty()))
        at.fail(ErrorCode::MissingField, "made");
    return out;
}

Json callJson(const LaterCall &call)
{
    Json json{{"due", call.due}};
    putText(json, "made", call.made);
    putWord(json, "reaction", reactionWords, call.reaction);
    putText(json, "told", call.told);
    return json;
}

} // namespace

Closing readClosing(const JsonReader &at)
{
    at.expectObject({"advice", "told", "focus", "impression", "goals", "plan", "review", "call"});
    Closing out;
    if (at.has("advice"))
        for (const JsonReader &item : at.field("advice").items())
            out.advice.push_back(readAdvice(item, out.advice));
    out.isTold = readFlag(at, "told");
    out.focus = at.stringsOr("focus");
    if (at.has("impression"))
        out.impression = readImpression(at.field("impression"));
    if (at.has("goals"))
        for (const JsonReader &item : at.field("goals").items())
            out.goals.push_back(readGoal(item));
    if (at.has("plan"))
        out.plan = readPlan(at.field("plan"));
    if (at.has("review"))
        out.review = readReview(at.field("review"));
    if (at.has("call"))
        out.call = readCall(at.field("call"));
    return out;
}

Json closingJson(const Closing &closing)
{
    Json json = Json::object();
    for (const GivenAdvice &advice : closing.advice)
        json["advice"].push_back(adviceJson(advice));
    if (closing.isTold)
        json["told"] = true;
    if (!closing.focus.empty())
        json["focus"] = closing.focus;
    if (const Json impression = impressionJson(closing.impression); !impression.empty())
        json["impression"] = impression;
    for (const Goal &goal : closing.goals)
        json["goals"].push_back(goalJson(goal));
    if (closing.plan)
        json["plan"] = planJson(*closing.plan);
    if (closing.review)
        json["review"] = Json{{"decision", wordOf(careDecisionWords, closing.review->decision)}, {"why", closing.review->why}};
    if (closing.call)
        json["call"] = callJson(*closing.call);
    return json;
}

} // namespace raphe
