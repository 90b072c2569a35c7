#include "core/document/fhir/FhirThemes.h"

#include <QString>

namespace raphe::fhir {

namespace {

void addressComplaints(const Making &making, Json &json, const char *field)
{
    for (std::size_t i = 0; i < making.visit().complaints.size(); ++i)
        append(json, field, making.referTo(complaintName(i)));
}

struct GoalWords {
    std::string text;
    std::string until;
    bool reached = false;
    bool isPatients = false; // in the patient's own words
};

void addGoal(Making &making, std::vector<Json> &goals, const std::string &name, const GoalWords &goal)
{
    if (cleaned(goal.text).empty())
        return;
    Json out{{"resourceType", "Goal"}, {"id", ""}};
    // What the patient hopes for is nobody's plan yet.
    const char *open = goal.reached ? "completed" : "proposed";
    out["lifecycleStatus"] = making.status(open, goal.reached || goal.isPatients ? open : "active");
    if (goal.reached)
        out["achievementStatus"] = coded(coding(making.codes().uri("goal-achievement"), "achieved", "Achieved"));
    out["description"] = textOnly(goal.text);
    out["subject"] = making.patient();
    if (!goal.until.empty())
        append(out, "target", Json{{"dueDate", goal.until}});
    put(out, "statusDate", making.moment({}));
    if (goal.isPatients)
        out["expressedBy"] = making.patient();
    else
        making.putPractitioner(out, "expressedBy");
    addressComplaints(making, out, "addresses");
    goals.push_back(making.add(name, std::move(out)));
}

std::vector<Json> addGoals(Making &making)
{
    const Visit &visit = making.visit();
    std::vector<Json> goals;
    for (std::size_t i = 0; i < visit.complaints.size(); ++i)
        addGoal(making, goals, complaintName(i) + "/goal", {visit.complaints[i].goal, {}, false, true});
    for (std::size_t i = 0; i < visit.closing.goals.size(); ++i) {
        const Goal &goal = visit.closing.goals[i];
        addGoal(making, goals, "goal/" + std::to_string(i), {goal.text, goal.until, goal.reached, false});
    }
    if (visit.closing.plan)
        addGoal(making, goals, "plan/success", {visit.closing.plan->success, {}, false, false});
    return goals;
}

void addActivity(
    Making &making, Json &plan, std::string_view kind, const char *status, const std::string &words, const Json &more = {})
{
    if (cleaned(words).empty())
        return;
    Json detail = Json::object();
    detail["code"] = ownCoded("care", kind);
    detail["status"] = making.isInError() ? "entered-in-error" : status;
    put(detail, "description", words);
    if (more.is_object())
        detail.update(more);
    append(plan, "activity", Json{{"detail", std::move(detail)}});
}

void addVisits(Making &making, Json &out, const CarePlan &plan)
{
    const Json repeat{{"count", plan.visits}, {"frequency", 1}, {"period", plan.everyDays}, {"periodUnit", "d"}};
    addActivity(making, out, "visits", "scheduled",
        std::to_string(plan.visits) + " visits, one every " + std::to_string(plan.everyDays)
            + " days, until it is asked whether it works",
        Json{{"scheduledTiming", Json{{"repeat", repeat}}}});
}

void addCall(Making &making, Json &out, const LaterCall &call)
{
    std::string words = "Call to the patient";
    if (!call.made.empty())
        words += ", made on " + call.made;
    if (call.reaction)
        words += ", reaction: " + std::string(wordOf(reactionWords, *call.reaction));
    if (const std::string told = cleaned(call.told); !told.empty())
        words += ", told: " + told;
    addActivity(making, out, "call", call.made.empty() ? "scheduled" : "completed", words,
        call.due.empty() ? Json() : Json{{"scheduledPeriod", Json{{"start", call.due}, {"end", call.due}}}});
}

void addPlan(Making &making, std::vector<Json> goals)
{
    const Visit &visit = making.visit();
    const Closing &closing = visit.closing;
    Json out{{"resourceType", "CarePlan"}, {"id", ""}};
    const bool isOver = closing.review && closing.review->decision == CareDecision::Discharge;
    out["status"] = making.status("draft", isOver ? "completed" : "active");
    out["intent"] = "plan";
    out["subject"] = making.patient();
    out["encounter"] = making.encounter();
    if (closing.plan && !closing.plan->agreed.empty())
        out["period"] = Json{{"start", closing.plan->agreed}};
    put(out, "created", making.moment({}));
    making.putPractitioner(out, "author");
    addressComplaints(making, out, "addresses");
    for (Json &goal : goals)
        append(out, "goal", std::move(goal));
    if (closing.plan)
        addVisits(making, out, *closing.plan);
    for (const GivenAdvice &advice : closing.advice)
        addActivity(making, out, "advice-for-home", "not-started",
            cleaned(advice.title).empty() ? advice.text : cleaned(advice.title) + ": " + cleaned(advice.text));
    for (const std::string &promise : visit.promised)
        addActivity(making, out, "promised-until-next-visit", "not-started", promise);
    for (const std::string &focus : closing.focus)
        addActivity(making, out, "focus-of-next-visit", "not-started", focus);
    if (closing.call)
        addCall(making, out, *closing.call);
    if (closing.isTold)
        addNote(out, "The patient was told what to expect, and when to call whom.");
    if (closing.review)
        addNote(out,
            "Care that changed nothing: " + spelt(wordOf(careDecisionWords, closing.review->decision)) + ". "
                + cleaned(closing.review->why));
    if (!out.contains("goal") && !out.contains("activity") && !out.contains("note"))
        return;
    addNote(out, "Assists a trained practitioner; follow local law, scope of practice and licensed care.");
    making.add("plan", std::move(out));
}

// What the list is called comes by hand. A name that is known becomes its official one, with the edition; the code of any other
// list stands in words only, since a code without a system says nothing.
Json impressionCode(const Making &making, const Impression &impression)
{
    const std::string words =
        cleaned(impression.code) + (cleaned(impression.system).empty() ? std::string() : " (" + cleaned(impression.system) + ")");
    const ImpressionList *list = making.codes().listOf(impression.system);
    if (!list)
        return textOnly(words);
    Json code = coding(list->uri, impression.code, {});
    QString edition = QString::fromStdString(cleaned(impression.system)).mid(QString::fromStdString(list->begins).size());
    while (edition.startsWith(QLatin1Char(',')) || edition.startsWith(QLatin1Char(' ')))
        edition.remove(0, 1);
    put(code, "version", edition.toStdString());
    return coded(std::move(code), words);
}

void addImpression(Making &making)
{
    const Impression &impression = making.visit().closing.impression;
    const bool hasCode = !cleaned(impression.code).empty();
    if (cleaned(impression.text).empty() && !hasCode)
        return;
    Json out{{"resourceType", "ClinicalImpression"}, {"id", ""}};
    out["status"] = making.status("in-progress", "completed");
    out["description"] = "The practitioner's own impression; nothing of it was filled in by a program.";
    out["subject"] = making.patient();
    out["encounter"] = making.encounter();
    put(out, "date", making.moment({}));
    making.putPractitioner(out, "assessor");
    addressComplaints(making, out, "problem");
    put(out, "summary", impression.text);
    if (hasCode)
        append(out, "finding", Json{{"itemCodeableConcept", impressionCode(making, impression)}});
    making.add("impression", std::move(out));
}

} // namespace

void addCare(Making &making)
{
    addPlan(making, addGoals(making));
    addImpression(making);
}

} // namespace raphe::fhir
