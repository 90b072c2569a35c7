#include "core/plan/NextVisit.h"

#include "core/safety/Warnings.h"

#include <algorithm>

namespace raphe {

namespace {

// How it is today is asked today.
std::vector<Complaint> carried(std::vector<Complaint> complaints)
{
    for (Complaint &complaint : complaints) {
        complaint.now = complaint.worst = complaint.best = std::nullopt;
        for (Activity &activity : complaint.activities)
            activity.score.reset();
        std::erase_if(complaint.activities, [](const Activity &activity) { return activity.name.empty(); });
    }
    return complaints;
}

// The complaint of that episode comes first, as far as it was told; another one begins anew.
std::vector<Complaint> about(std::vector<Complaint> complaints, const PatientRecord &record, std::optional<int> episode)
{
    if (!episode)
        return complaints;
    const auto same = std::find_if(
        complaints.begin(), complaints.end(), [&](const Complaint &complaint) { return complaint.episode == episode; });
    if (same != complaints.end()) {
        std::rotate(complaints.begin(), same, same + 1);
        return complaints;
    }
    Complaint first;
    first.episode = episode;
    for (const PatientComplaint &known : record.complaints)
        if (known.id == episode) {
            first.text = known.text;
            first.since = known.since;
        }
    complaints.assign(1, first);
    return complaints;
}

// What the newest visit about the same complaint left for this one.
void takeCare(const std::vector<EarlierVisit> &earlier, Visit &visit)
{
    const auto last = std::find_if(earlier.begin(), earlier.end(),
        [&](const EarlierVisit &other) { return !other.isInError && other.visit.episode() == visit.episode(); });
    if (last == earlier.end())
        return;
    const Closing &closing = last->visit.closing;
    visit.focus = closing.focus;
    std::copy_if(closing.goals.begin(), closing.goals.end(), std::back_inserter(visit.closing.goals),
        [](const Goal &goal) { return !goal.reached; });
    const bool isAgreedAnew = closing.review && closing.review->decision == CareDecision::ChangePlan && closing.plan
        && closing.plan->agreed == last->visit.date;
    if (!closing.review || isAgreedAnew)
        visit.closing.plan = closing.plan;
}

} // namespace

Visit nextVisit(const SafetyRules &rules, const PatientRecord &record, const std::vector<EarlierVisit> &earlier,
    const std::string &today, std::optional<int> episode)
{
    Visit visit;
    visit.patient = Patient{record.name, record.born};
    visit.date = today;
    for (const EarlierVisit &other : earlier)
        for (WarningAnswer &answer : carriedOver(other.visit.warnings, today))
            if (std::none_of(
                    visit.warnings.begin(), visit.warnings.end(), [&](const WarningAnswer &a) { return a.sign == answer.sign; }))
                visit.warnings.push_back(std::move(answer));
    const auto last = std::find_if(earlier.begin(), earlier.end(), [](const EarlierVisit &other) { return !other.isInError; });
    if (last != earlier.end()) {
        visit.cautions = last->visit.cautions; // they stay with the patient until someone takes them away
        visit.practitioner = last->visit.practitioner;
        visit.complaints = carried(last->visit.complaints);
        visit.injured = last->visit.injured && (!episode || episode == last->visit.episode());
        visit.consents = last->visit.consents;
        visit.plan.barred = last->visit.plan.barred;
        for (const std::string &task : last->visit.promised) {
            if (!visit.sinceLast)
                visit.sinceLast.emplace();
            visit.sinceLast->promises.push_back({task, {}});
        }
        for (const GivenAdvice &advice : last->visit.closing.advice) {
            if (!visit.sinceLast)
                visit.sinceLast.emplace();
            visit.sinceLast->promises.push_back({advice.title.empty() ? advice.text : advice.title, {}});
        }
    }
    visit.complaints = about(std::move(visit.complaints), record, episode);
    takeCare(earlier, visit);
    for (const StandingCondition &condition : record.conditions)
        takeStanding(rules, condition, visit);
    return visit;
}

void takeStanding(const SafetyRules &rules, const StandingCondition &condition, Visit &visit)
{
    const ConditionKind *kind = rules.findCondition(condition.id);
    if (kind && kind->place != PlaceNeed::Required) {
        visit.conditions.push_back({condition.id, {}});
        return;
    }
    std::string line = kind ? kind->name : condition.id; // the rules need to know where; the words say it so far
    line += condition.note.empty() ? std::string() : ": " + condition.note;
    if (std::find(visit.cautions.begin(), visit.cautions.end(), line) == visit.cautions.end())
        visit.cautions.push_back(std::move(line));
}

std::vector<Complaint> confirmedOn(const std::string &day, std::vector<Complaint> complaints)
{
    for (Complaint &complaint : complaints)
        complaint.asked = day;
    return complaints;
}

} // namespace raphe
