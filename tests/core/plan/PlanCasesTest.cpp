// Twelve treatments with the order that a colleague would take (tests/plan-cases/sessions.json), written before there was a plan:
// every firm statement holds, or stands here with the reason why the plan differs.
#include "core/record/VisitJson.h"
#include "core/safety/TechniqueGroups.h"
#include "tests/core/plan/Planning.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <iostream>
#include <map>

namespace raphe {

namespace {

using namespace test;
using nlohmann::json;

// Session, number of the statement from 0 -> why the plan differs.
const std::map<std::pair<std::string, std::size_t>, std::string> &defended()
{
    static const std::map<std::pair<std::string, std::size_t>, std::string> all{
        {{"runner-outer-hip", 1},
            "What lies where it hurts comes before quadratus lumborum and piriformis, and two of it, the hip joint and the "
            "tensor, "
            "are reached face up. All nine places fit, so that the plan turns twice rather than leave two of them out."},
        {{"fifteen-minutes-heel", 6},
            "The ankle is worth one hundredth more than the hamstring that takes its place, and takes 30 s longer; both do not "
            "fit."}};
    return all;
}

json cases()
{
    std::ifstream file(RAPHE_SOURCE_DIR "/tests/plan-cases/sessions.json");
    return json::parse(file);
}

Place placeOf(const json &at)
{
    for (const auto &[side, word] : sideWords)
        if (word == at.value("side", "midline"))
            return {StructureId{at.at("structure")}, side};
    throw std::runtime_error("no such side");
}

Position positionOf(std::string word)
{
    if (word == "lying-left")
        word = "on-left-side";
    else if (word == "lying-right")
        word = "on-right-side";
    for (const auto &[position, name] : positionWords)
        if (name == word)
            return position;
    throw std::runtime_error("no such position: " + word);
}

PlanRequest requestOf(const json &session)
{
    PlanRequest out;
    out.wish.minutes = session.at("minutes");
    const json settings = session.value("settings", json::object());
    out.preferences.complaintFirst = settings.value("complaint_first", true);
    out.preferences.jointFirst = settings.value("joint_first", true);
    if (settings.contains("scope"))
        out.preferences.techniques = techniquesWithin(
            readEmbeddedTechniqueGroups(safetyRules()).value(), settings.at("scope").get<std::vector<std::string>>());
    for (const std::string word : settings.value("barred_positions", json::array()))
        out.wish.barred.insert(positionOf(word));
    for (const std::string technique : settings.value("refused", json::array()))
        out.wish.refused.insert(technique);
    for (const json &work : session.value("earlier", json::array())) {
        const std::string action = work.at("technique");
        const auto it = std::find_if(techniques().all.begin(), techniques().all.end(),
            [&](const Technique &t) { return t.id == action || t.action == action; });
        out.earlier.push_back({placeOf(work), it->id, work.at("days_ago")});
    }
    return out;
}

class Judge {
public:
    explicit Judge(const SessionPlan &plan) : m_plan(plan) { }

    bool holds(const json &s) const
    {
        if (s.contains("first"))
            return !m_plan.steps.empty() && isAmong(s.at("first"), m_plan.steps.front().place);
        if (s.contains("last"))
            return !m_plan.steps.empty() && isAmong(s.at("last"), m_plan.steps.back().place);
        if (s.contains("before")) {
            const auto a = at(placeOf(s.at("before")[0]));
            const auto b = at(placeOf(s.at("before")[1]));
            return !a || !b || *a < *b;
        }
        if (s.contains("in"))
            return at(placeOf(s.at("in"))).has_value();
        if (s.contains("out"))
            return !at(placeOf(s.at("out")));
        if (s.contains("never"))
            return std::none_of(m_plan.steps.begin(), m_plan.steps.end(), [&](const PlannedStep &step) {
                return isBy(step, s.at("never")) && (!s.contains("at") || step.place == placeOf(s.at("at")));
            });
        if (s.contains("technique")) {
            const auto i = at(placeOf(s.at("at")));
            return !i || std::any_of(s.at("technique").begin(), s.at("technique").end(), [&](const json &t) {
                return isBy(m_plan.steps[*i], t);
            });
        }
        if (s.contains("position")) {
            const auto i = at(placeOf(s.at("at")));
            return !i || std::any_of(s.at("position").begin(), s.at("position").end(), [&](const json &p) {
                return positionOf(p) == m_plan.steps[*i].position;
            });
        }
        if (s.contains("position_never"))
            return std::none_of(m_plan.steps.begin(), m_plan.steps.end(),
                [&](const PlannedStep &step) { return step.position == positionOf(s.at("position_never")); });
        if (s.contains("changes_at_most"))
            return m_plan.turns <= s.at("changes_at_most").get<int>();
        if (s.contains("steps_at_most"))
            return m_plan.steps.size() <= s.at("steps_at_most").get<std::size_t>();
        if (s.contains("steps_at_least"))
            return m_plan.steps.size() >= s.at("steps_at_least").get<std::size_t>();
        return areTogether(s.at("together"));
    }

private:
    std::optional<std::size_t> at(const Place &place) const
    {
        for (std::size_t i = 0; i < m_plan.steps.size(); ++i)
            if (m_plan.steps[i].place == place)
                return i;
        return {};
    }
    static bool isAmong(const json &places, const Place &place)
    {
        return std::any_of(places.begin(), places.end(), [&](const json &p) { return placeOf(p) == place; });
    }
    static bool isBy(const PlannedStep &step, const std::string &technique)
    {
        return step.technique->id == technique || step.technique->action == technique;
    }
    // With no other place between those that are worked.
    bool areTogether(const json &places) const
    {
        std::vector<std::size_t> found;
        for (const json &place : places)
            if (const auto i = at(placeOf(place)))
                found.push_back(*i);
        if (found.empty())
            return true;
        const auto [least, most] = std::minmax_element(found.begin(), found.end());
        return *most - *least + 1 == found.size();
    }

    const SessionPlan &m_plan;
};

void tell(const std::string &id, const SessionPlan &plan)
{
    std::cout << id << ": " << plan.steps.size() << " steps, " << plan.turns << " turns, " << plan.seconds << " s\n";
    for (const PlannedStep &step : plan.steps)
        std::cout << "    " << atlas().spoken(step.place) << ", " << step.technique->id << ", "
                  << wordOf(positionWords, step.position) << ", value " << step.value << '\n';
    for (const LeftOut &left : plan.left)
        std::cout << "    left: " << atlas().spoken(left.place) << ": " << left.why << '\n';
}

TEST(PlanCases, ColleaguesWouldTakeTheSameOrder)
{
    int firm = 0;
    int firmHeld = 0;
    int lean = 0;
    int leanHeld = 0;
    const json all = cases();
    for (const json &session : all.at("sessions")) {
        const std::string id = session.at("id");
        const auto visit = readVisit(session.at("visit").dump(), id, atlas());
        ASSERT_TRUE(visit) << inWords(visit.error());
        const auto plan = planner().plan(visit.value(), requestOf(session), id);
        ASSERT_TRUE(plan) << inWords(plan.error());
        tell(id, plan.value());
        const Judge judge(plan.value());
        const json &expected = session.at("expected");
        for (std::size_t i = 0; i < expected.size(); ++i) {
            const bool isFirm = expected[i].at("sure") == "firm";
            const bool holds = judge.holds(expected[i]);
            (isFirm ? firm : lean) += 1;
            (isFirm ? firmHeld : leanHeld) += holds ? 1 : 0;
            const bool isDefended = defended().contains({id, i});
            if (!holds)
                std::cout << "  differs (" << i << ", " << expected[i].at("sure") << "): " << expected[i].dump() << '\n';
            if (isFirm) {
                EXPECT_TRUE(holds || isDefended) << id << " " << i << ": " << expected[i].dump();
            }
            EXPECT_FALSE(holds && isDefended) << id << " " << i << " holds and is defended all the same";
        }
    }
    std::cout << "firm statements held " << firmHeld << " of " << firm << ", lean ones " << leanHeld << " of " << lean << '\n';
}

} // namespace

} // namespace raphe
