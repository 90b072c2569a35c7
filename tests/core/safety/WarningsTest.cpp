// The warning signs: each is asked when it concerns the patient and not else, asked again when its answer is too old, and stops
// the work until it was decided; the gravest ones for the whole visit, whatever was decided.
#include "tests/core/safety/Rules.h"

#include "core/safety/Warnings.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QDate>

#include <fstream>
#include <numeric>

namespace raphe::test {

namespace {

const WarningSigns &signs()
{
    return safetyRules().signs();
}

constexpr const char *today = "2026-11-27";

std::string dayAfter(const std::string &day, int days)
{
    return QDate::fromString(QString::fromStdString(day), Qt::ISODate).addDays(days).toString(Qt::ISODate).toStdString();
}

const Place knee{{"knee-joint"}, Side::Right};

WarningAnswer no(const std::string &sign)
{
    return {sign, false, today, {}, {}, {}, {}};
}

WarningAnswer yes(const std::string &sign, std::optional<Decision> decided = {})
{
    WarningAnswer out{sign, true, today, {knee}, decided, {}, {}};
    if (decided) {
        out.why = "looked into";
        out.told = "the doctor on call";
    }
    return out;
}

Visit visitAnswering(const WarningAnswer &answer)
{
    Visit visit;
    visit.date = today;
    visit.warnings = {answer};
    return visit;
}

// The person whom this sign concerns, and no other part of it.
Asked fitting(const WarningSign &sign)
{
    Asked out;
    if (!sign.areas.empty())
        out.areas.insert(sign.areas.back());
    out.age = sign.ageFrom ? *sign.ageFrom : sign.ageBelow ? *sign.ageBelow - 1 : 40;
    out.isPregnant = sign.ifPregnant;
    out.isInjured = sign.ifInjured;
    return out;
}

std::vector<WarningAnswer> openers(const WarningSign &sign)
{
    return sign.askedWith.empty() ? std::vector<WarningAnswer>{} : std::vector{yes(sign.askedWith.front())};
}

bool isDue(const WarningSign &sign, const Asked &asked, const std::vector<WarningAnswer> &answers, const std::string &day = today)
{
    const auto due = dueSigns(signs(), asked, answers, day);
    return std::find(due.begin(), due.end(), &sign) != due.end();
}

constexpr Decision decisions[] = {
    Decision::EmergencyServices, Decision::CareSameDay, Decision::Referred, Decision::InCare, Decision::Explained};

} // namespace

TEST(Warnings, EachSignIsAskedOfWhomItConcernsAndOfNobodyElse)
{
    ASSERT_GE(signs().signs.size(), 100U);
    for (const WarningSign &sign : signs().signs) {
        SCOPED_TRACE(sign.id);
        const Asked asked = fitting(sign);
        EXPECT_TRUE(isDue(sign, asked, openers(sign)));
        EXPECT_FALSE(isDue(sign, asked,
            [&] {
                auto answers = openers(sign);
                answers.push_back(no(sign.id));
                return answers;
            }()))
            << "it was answered today";
        Asked other = asked;
        other.areas.clear();
        EXPECT_EQ(isDue(sign, other, openers(sign)), sign.areas.empty()) << "pain elsewhere";
        other = asked;
        other.age.reset();
        EXPECT_TRUE(isDue(sign, other, openers(sign))) << "an unknown age leaves nothing out";
        if (sign.ageFrom) {
            other.age = *sign.ageFrom - 1;
            EXPECT_FALSE(isDue(sign, other, openers(sign))) << "too young";
        }
        if (sign.ageBelow) {
            other.age = *sign.ageBelow;
            EXPECT_FALSE(isDue(sign, other, openers(sign))) << "too old";
        }
        other = asked;
        other.isPregnant = false;
        EXPECT_EQ(isDue(sign, other, openers(sign)), !sign.ifPregnant);
        other = asked;
        other.isInjured = false;
        EXPECT_EQ(isDue(sign, other, openers(sign)), !sign.ifInjured);
        EXPECT_EQ(isDue(sign, asked, {}), sign.askedWith.empty()) << "asked only with another";
    }
}

TEST(Warnings, AnAnswerIsAskedForAgainWhenItIsTooOld)
{
    for (const WarningSign &sign : signs().signs) {
        SCOPED_TRACE(sign.id);
        for (const bool isThere : {false, true}) {
            WarningAnswer answer = isThere ? yes(sign.id) : no(sign.id);
            EXPECT_FALSE(isStale(sign, answer, dayAfter(today, sign.staleDays)));
            EXPECT_TRUE(isStale(sign, answer, dayAfter(today, sign.staleDays + 1)));
            EXPECT_TRUE(isStale(sign, answer, dayAfter(today, -1))) << "the clock was put back";
            answer.asked.clear();
            EXPECT_TRUE(isStale(sign, answer, today)) << "nobody knows when";
        }
    }
    const WarningSign *saddle = signs().find("cauda-equina-saddle");
    ASSERT_NE(saddle, nullptr);
    EXPECT_EQ(saddle->staleDays, 0) << "asked at every visit";
    const Asked asked = fitting(*saddle);
    EXPECT_FALSE(isDue(*saddle, asked, {no(saddle->id)}));
    EXPECT_TRUE(isDue(*saddle, asked, {no(saddle->id)}, dayAfter(today, 1)));
}

TEST(Warnings, TheGravestAreAskedFirst)
{
    Asked everything;
    for (const WarningArea &area : signs().areas)
        everything.areas.insert(area.id);
    everything.isPregnant = everything.isInjured = true;
    const auto due = dueSigns(signs(), everything, {}, today);
    EXPECT_TRUE(
        std::is_sorted(due.begin(), due.end(), [](const WarningSign *a, const WarningSign *b) { return a->level > b->level; }));
}

TEST(Warnings, AnEmergencyStopsEverythingEverywhereWhateverWasDecided)
{
    for (const WarningSign &sign : signs().signs) {
        SCOPED_TRACE(sign.id);
        const auto stops = [&](const WarningAnswer &answer) {
            const Cautions cautions = cautionsOf(visitAnswering(answer));
            const Place far{{"palm"}, Side::Left};
            const auto general = cautions.general();
            const CautionVerdict *verdict = verdictOf(general, sign.id);
            EXPECT_EQ(verdict != nullptr, answer.isThere);
            const bool isStop = verdict && verdict->verdict == Verdict::Stop && verdict->concernsAll();
            EXPECT_EQ(verdictOf(cautions.at(far), sign.id) != nullptr, answer.isThere) << "also said at a place";
            if (isStop) {
                EXPECT_TRUE(cautions.isBarred(far));
                EXPECT_TRUE(cautions.stopOf(far, "gliding"));
            }
            return isStop;
        };
        EXPECT_FALSE(stops(no(sign.id)));
        EXPECT_TRUE(stops(yes(sign.id))) << "nothing was decided";
        for (const Decision decision : decisions)
            EXPECT_EQ(stops(yes(sign.id, decision)), sign.level == WarningLevel::EmergencyNow) << wordOf(decisionWords, decision);
    }
}

TEST(Warnings, WhatASignLetsSuspectHoldsAsACondition)
{
    std::size_t seen = 0;
    for (const WarningSign &sign : signs().signs)
        for (const std::string &condition : sign.suspects) {
            const Visit without = withSuspected(safetyRules(), visitAnswering(no(sign.id)));
            EXPECT_TRUE(without.conditions.empty()) << sign.id;
            const Visit with = withSuspected(safetyRules(), visitAnswering(yes(sign.id)));
            const auto it = std::find_if(
                with.conditions.begin(), with.conditions.end(), [&](const Condition &c) { return c.id == condition; });
            ASSERT_NE(it, with.conditions.end()) << sign.id << " " << condition;
            EXPECT_TRUE(checkConditions(safetyRules(), with, "v")) << sign.id;
            ++seen;
        }
    EXPECT_GT(seen, 80U);
}

// FACTS: any suspicion stops work on that leg; a low score never releases it.
TEST(Warnings, ASuspectedLegClotBarsTheLegWhateverTheScoreSays)
{
    for (const WarningSign &sign : signs().signs) {
        if (std::find(sign.suspects.begin(), sign.suspects.end(), "suspected-leg-clot") == sign.suspects.end())
            continue;
        Visit visit = visitAnswering(yes(sign.id, Decision::Explained));
        visit.warnings.push_back(yes("leg-clot-other-cause", Decision::Explained));
        if (sign.id == "leg-clot-other-cause")
            visit.warnings.pop_back();
        EXPECT_LT(legClotPoints(signs(), visit.warnings), 2) << sign.id << ": by the score unlikely";
        const Cautions cautions = cautionsOf(visit);
        EXPECT_TRUE(cautions.isBarred({{"soleus"}, Side::Right})) << sign.id;
        EXPECT_FALSE(cautions.isBarred({{"soleus"}, Side::Left})) << sign.id;
    }
}

TEST(Warnings, AMirroredVisitGivesMirroredVerdicts)
{
    for (const char *sign : {"leg-clot-suspicion", "hot-joint", "shingles-rash", "compartment-signs"}) {
        const Visit visit = visitAnswering(yes(sign, Decision::CareSameDay));
        const Cautions cautions = cautionsOf(visit);
        const Cautions mirror = cautionsOf(mirrored(visit));
        for (const char *structure : {"soleus", "knee-joint", "gluteus-maximus", "biceps-brachii"})
            for (const Side side : {Side::Left, Side::Right}) {
                const Place place{{structure}, side};
                auto verdicts = mirror.at(mirrored(place));
                for (CautionVerdict &v : verdicts)
                    v.place = mirrored(*v.place);
                EXPECT_EQ(verdicts, cautions.at(place)) << sign << " " << place;
            }
    }
}

TEST(Warnings, TheAreaFollowsFromWhereItHurts)
{
    const auto areasOf = [](const Place &place) {
        Visit visit;
        visit.complaintAt = {place};
        return askedOf(signs(), regions(), visit).areas;
    };
    EXPECT_TRUE(areasOf({{"lumbar-region-medial"}, Side::Right}).contains("low-back"));
    EXPECT_TRUE(areasOf({{"quadratus-lumborum"}, Side::Left}).contains("low-back"));
    EXPECT_TRUE(areasOf({{"knee-joint"}, Side::Left}).contains("leg"));
    EXPECT_TRUE(areasOf({{"c4-c5"}, Side::Midline}).contains("neck"));
    EXPECT_FALSE(areasOf({{"knee-joint"}, Side::Left}).contains("neck"));
    EXPECT_TRUE(askedOf(signs(), regions(), {}).areas.empty());
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::SurfaceRegion) {
            EXPECT_FALSE(areasOf({s.id, atlas().sides(s).back()}).empty()) << s.id.value;
        }
}

TEST(Warnings, AgePregnancyAndInjuryAreThoseOfTheDay)
{
    Visit visit;
    visit.patient = Patient{"Ida", "1976-11-28"};
    visit.date = today;
    EXPECT_EQ(askedOf(signs(), regions(), visit).age, 49);
    visit.date = "2026-11-28";
    EXPECT_EQ(askedOf(signs(), regions(), visit).age, 50) << "on the birthday";
    visit.patient->born = "2030-01-01";
    EXPECT_EQ(askedOf(signs(), regions(), visit).age, std::nullopt) << "born after the visit";
    visit.patient->born.clear();
    EXPECT_EQ(askedOf(signs(), regions(), visit).age, std::nullopt);
    EXPECT_FALSE(askedOf(signs(), regions(), visit).isPregnant);
    visit.conditions = {{"late-pregnancy", {}}};
    visit.injured = true;
    EXPECT_TRUE(askedOf(signs(), regions(), visit).isPregnant);
    EXPECT_TRUE(askedOf(signs(), regions(), visit).isInjured);
}

TEST(Warnings, MistakesInTheAnswersAreNamed)
{
    const auto failure = [](const WarningAnswer &answer) {
        const auto checked = checkWarnings(safetyRules(), visitAnswering(answer), "v.json");
        return checked ? std::string() : checked.error().place + " " + checked.error().detail;
    };
    EXPECT_EQ(failure(yes("no-such-sign")), "v.json#/warnings/0/sign no-such-sign");
    WarningAnswer clot = yes("leg-clot-suspicion", Decision::CareSameDay);
    EXPECT_EQ(failure(clot), "");
    clot.at.clear();
    EXPECT_EQ(failure(clot), "v.json#/warnings/0 at");
    WarningAnswer chest = yes("chest-pain-now", Decision::EmergencyServices);
    EXPECT_EQ(failure(chest), "");
    chest.told.clear();
    EXPECT_EQ(failure(chest), "v.json#/warnings/0 told");
    EXPECT_EQ(failure(yes("chest-pain-now")), "") << "not decided yet";
}

TEST(Warnings, WhatIsThereTodayGoesIntoAnotherVisitOfTheDay)
{
    WarningAnswer old = yes("hot-joint", Decision::CareSameDay);
    old.asked = "2026-11-26";
    const std::vector<WarningAnswer> answers{no("fever-now"), yes("chest-pain-now"), old};
    EXPECT_EQ(carriedOver(answers, today), std::vector{yes("chest-pain-now")});
}

// Wells PS and others, N Engl J Med 2003;349:1227, the two-level score as FACTS has it: nine items of one point, one of minus
// two.
TEST(Warnings, TheLegClotScoreHasThePublishedPoints)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/tests/published/leg-clot-score.json", std::ios::binary);
    const auto published = nlohmann::json::parse(in);
    std::size_t items = 0;
    for (const WarningSign &sign : signs().signs) {
        if (sign.points == 0)
            continue;
        ASSERT_TRUE(published.at("points").contains(sign.id)) << published.at("citation");
        EXPECT_EQ(sign.points, published.at("points").at(sign.id)) << sign.id << ", " << published.at("citation");
        ++items;
    }
    EXPECT_EQ(items, published.at("points").size()) << published.at("citation");
    EXPECT_EQ(std::accumulate(signs().signs.begin(), signs().signs.end(), 0,
                  [](int sum, const WarningSign &sign) { return sum + std::max(0, sign.points); }),
        published.at("highest").get<int>())
        << published.at("citation");
}

} // namespace raphe::test
