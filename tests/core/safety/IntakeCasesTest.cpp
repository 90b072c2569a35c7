// What the warning signs, the cautions and the consents make of 24 invented patients (tests/intake-cases). Who wrote the patients
// and what is expected (cases.json) had not seen the program; who answered the questions for them (answers.json) had seen neither
// the rules nor what is expected. barred.json says by hand what the expected words mean in actions and places.
// A level that is too low, and something barred that is not stopped, is unsafe and fails; one that is too high is listed.
#include "tests/core/safety/Rules.h"
#include "tests/support/Published.h"

#include "core/safety/Warnings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <map>
#include <set>

namespace raphe::test {

namespace {

using nlohmann::json;

constexpr const char *dayOfCases = "2031-03-12";
constexpr const char *later = "2031-09-12";

// Unsafe, and known: the case and the words, with the reason. Empty is what we want.
const std::map<std::string, std::string> &knownMisses()
{
    static const std::map<std::string, std::string> out{};
    return out;
}

json fileOf(const char *name)
{
    return json::parse(sourceText(std::string("tests/intake-cases/") + name));
}

const json &find(const json &list, const char *key, const json &value)
{
    for (const json &one : list)
        if (one.at(key) == value)
            return one;
    throw std::runtime_error("nothing has " + std::string(key) + " " + value.dump());
}

std::vector<Place> placesIn(const json &list)
{
    std::vector<Place> out;
    for (const json &at : list)
        out.push_back({{at.at("structure").get<std::string>()}, *fromWord(sideWords, at.at("side").get<std::string>())});
    for (const Place &place : out)
        if (!atlas().find(place.structure))
            throw std::runtime_error("no structure " + place.structure.value);
    return out;
}

Visit visitOf(const json &answers)
{
    Visit visit;
    visit.patient = Patient{"Invented", answers.at("born").get<std::string>()};
    visit.date = dayOfCases;
    visit.complaintAt = placesIn(answers.at("complaint_at"));
    visit.injured = answers.at("injured").get<bool>();
    for (const json &c : answers.at("conditions"))
        visit.conditions.push_back({c.at("condition").get<std::string>(), placesIn(c.value("at", json::array()))});
    return visit;
}

/// Answers what is due until nothing is: yes to these, without a decision, and no to the rest.
void answerAll(Visit &visit, const std::map<std::string, std::vector<Place>> &yes)
{
    const WarningSigns &signs = safetyRules().signs();
    for (;;) {
        const auto due = dueSigns(signs, askedOf(signs, regions(), visit), visit.warnings, visit.date);
        if (due.empty())
            return;
        for (const WarningSign *sign : due) {
            const auto it = yes.find(sign->id);
            const bool isThere = it != yes.end();
            visit.warnings.push_back({sign->id, isThere, dayOfCases, isThere ? it->second : std::vector<Place>{}, {}, {}, {}});
        }
    }
}

/// The same, once the practitioner has decided that it is referred, and told the reason.
Visit referred(Visit visit)
{
    for (WarningAnswer &answer : visit.warnings) {
        if (!answer.isThere)
            continue;
        const auto places = placesOf(*safetyRules().signs().find(answer.sign), safetyRules(), regions(), visit);
        if (answer.at.empty())
            for (const SignPlace &place : places)
                answer.at.push_back(place.place);
        answer.decided = Decision::Referred;
        answer.why = "as told";
        answer.told = "the doctor";
    }
    return visit;
}

/// 0: no sign is there; above it the levels in their order.
int weightOf(const std::string &level)
{
    const auto word = fromWord(warningLevelWords, level);
    return word ? 1 + static_cast<int>(*word) : 0;
}

int reachedBy(const Visit &visit)
{
    int reached = 0;
    for (const WarningAnswer &answer : visit.warnings)
        if (answer.isThere)
            reached = std::max(reached, 1 + static_cast<int>(safetyRules().signs().find(answer.sign)->level));
    return reached;
}

std::string levelWords(int weight)
{
    return weight == 0 ? "none" : std::string(wordOf(warningLevelWords, static_cast<WarningLevel>(weight - 1)));
}

bool isLocked(const Visit &visit)
{
    return lockAmong(cautionsOf(visit).general()) != nullptr;
}

/// What of the line is not stopped; empty: all of it is.
std::string openOf(const json &line, const Visit &visit)
{
    if (line.value("locked", false))
        return isLocked(visit) ? "" : "the visit is not locked";
    const Cautions cautions = cautionsOf(visit);
    std::string open;
    for (const json &stops : line.at("stops"))
        for (const Place &place : placesIn(stops.at("places")))
            for (const json &action : stops.at("actions")) {
                const auto id = action.get<std::string>();
                if (!safetyRules().findAction(id))
                    throw std::runtime_error("no action " + id);
                if (!cautions.stopOf(place, id))
                    open += (open.empty() ? "" : ", ") + id + " at " + std::string(wordOf(sideWords, place.side)) + " "
                        + place.structure.value;
            }
    return open;
}

struct Score {
    int cases = 0, passed = 0;
    int levels = 0;
    int barred = 0, barredLines = 0, notScored = 0;
    int barredOnceReferred = 0, linesOnceReferred = 0;
    int consents = 0, consentLines = 0;
};

class Scoring {
public:
    Score run()
    {
        for (const json &one : m_cases.at("cases"))
            score(one);
        return m_score;
    }

private:
    void say(const std::string &words) { m_words += "    " + words + '\n'; }
    void unsafe(const std::string &what)
    {
        m_isPassed = false;
        const auto known = knownMisses().find(what);
        say("UNSAFE: " + what);
        EXPECT_NE(known, knownMisses().end()) << "not safe, and not known: " << what;
    }

    void score(const json &one)
    {
        const auto id = one.at("id").get<std::string>();
        SCOPED_TRACE(id);
        const json &answers = find(m_answers.at("cases"), "id", id);
        std::map<std::string, std::vector<Place>> yes;
        for (const json &y : answers.at("yes"))
            yes[y.at("sign").get<std::string>()] = placesIn(y.value("at", json::array()));
        Visit visit = visitOf(answers);
        answerAll(visit, yes);
        m_words.clear();
        m_isPassed = true;
        for (const auto &[sign, at] : yes)
            if (std::none_of(
                    visit.warnings.begin(), visit.warnings.end(), [&, &sign = sign](const auto &a) { return a.sign == sign; }))
                say("not asked: " + sign);
        scoreLevel(one, visit);
        for (const json &words : one.at("expect").at("barred"))
            scoreBarred(id, words, visit, yes);
        for (const json &words : one.at("expect").at("consents"))
            scoreConsent(words, visit);
        ++m_score.cases;
        m_score.passed += m_isPassed;
        std::cout << "  " << id << (m_isPassed ? " passed" : " MISSED") << '\n' << m_words;
    }

    void scoreLevel(const json &one, const Visit &visit)
    {
        const auto id = one.at("id").get<std::string>();
        std::vector<std::string> accepted{one.at("expect").at("level").get<std::string>()};
        const json note = m_cases.at("notes").value(id, json::object());
        for (const json &also : note.value("also_accepted_level", json::array()))
            accepted.push_back(also.get<std::string>());
        const int reached = reachedBy(visit);
        int lowest = weightOf(accepted.front());
        bool isAccepted = false;
        for (const std::string &level : accepted) {
            lowest = std::min(lowest, weightOf(level));
            isAccepted = isAccepted || weightOf(level) == reached;
        }
        const std::string words = "level " + levelWords(reached) + ", expected " + accepted.front();
        m_score.levels += isAccepted;
        if (reached < lowest)
            unsafe(id + ": " + words);
        else if (!isAccepted) {
            m_isPassed = false;
            say("higher: " + words);
        }
        const bool isHarmless =
            std::find(m_cases.at("harmless").begin(), m_cases.at("harmless").end(), json(id)) != m_cases.at("harmless").end();
        if (isHarmless && isLocked(visit)) {
            m_isPassed = false;
            say("locked, and harmless");
        }
    }

    void scoreBarred(
        const std::string &id, const json &words, const Visit &visit, const std::map<std::string, std::vector<Place>> &yes)
    {
        std::size_t count = 0;
        for (const json &line : m_barred.at("barred")) {
            if (line.at("case") != id || line.at("words") != words)
                continue;
            ++count;
            if (line.contains("not_scored")) {
                ++m_score.notScored;
                say("not scored: " + words.get<std::string>() + " (" + line.at("not_scored").get<std::string>() + ")");
                continue;
            }
            Visit seen = visit;
            if (line.contains("also_yes")) {
                auto more = yes;
                for (const json &sign : line.at("also_yes"))
                    more[sign.get<std::string>()] = visit.complaintAt;
                seen.warnings.clear();
                answerAll(seen, more);
            }
            if (line.value("later", false)) {
                seen.warnings.clear();
                seen.date = later;
            }
            const std::string open = openOf(line, seen);
            ++m_score.barredLines;
            m_score.barred += open.empty();
            if (!open.empty())
                unsafe(id + ": not stopped: " + words.get<std::string>() + ": " + open);
            const std::string openThen = openOf(line, referred(seen));
            ++m_score.linesOnceReferred;
            m_score.barredOnceReferred += openThen.empty();
            if (!openThen.empty() && open.empty())
                say("once 'referred' stands written, no rule stops: " + openThen);
        }
        EXPECT_EQ(count, 1U) << "barred.json and the words: " << words;
    }

    void scoreConsent(const json &words, const Visit &visit)
    {
        const auto item = find(m_barred.at("consents"), "words", words).at("item").get<std::string>();
        ASSERT_TRUE(safetyRules().consents().find(item)) << item;
        const auto due = consentsDue(safetyRules().consents(), regions(), visit, {});
        const bool isDue = std::any_of(due.begin(), due.end(), [&](const ConsentItem *d) { return d->id == item; });
        ++m_score.consentLines;
        m_score.consents += isDue;
        if (!isDue) {
            m_isPassed = false;
            say("consent not among those due: " + item);
        }
    }

    const json m_cases = fileOf("cases.json");
    const json m_answers = fileOf("answers.json");
    const json m_barred = fileOf("barred.json");
    Score m_score;
    std::string m_words; // of the case at hand
    bool m_isPassed = true;
};

} // namespace

TEST(IntakeCases, TheLevelsTheStopsAndTheConsentsOfInventedPatients)
{
    // Reached when the content was read last; it can only get better. Source: the notes of each case name its own.
    // Missed: the inside of the mouth is asked for where it hurts (ic-10 has pain at the temples, and wants the jaw worked on
    // from inside); the list asks for it when that work is planned. Before the content was mended for a replaced hip that is
    // marked at the side of the hip (ic-05, ic-23): 21 passed, 22 barred.
    constexpr int passed = 23, levels = 24, barred = 25, barredOnceReferred = 21, consents = 9;
    const Score s = Scoring().run();
    std::cout << "cases " << s.passed << " of " << s.cases << "; levels " << s.levels << " of " << s.cases << "; barred "
              << s.barred << " of " << s.barredLines << " (not scored " << s.notScored << "), by rules alone once referred "
              << s.barredOnceReferred << " of " << s.linesOnceReferred << "; consents " << s.consents << " of " << s.consentLines
              << '\n';
    EXPECT_EQ(s.cases, 24);
    EXPECT_GE(s.passed, passed);
    EXPECT_GE(s.levels, levels);
    EXPECT_GE(s.barred, barred);
    EXPECT_GE(s.barredOnceReferred, barredOnceReferred);
    EXPECT_GE(s.consents, consents);
}

// A break in the spine, and a rash on the trunk, can be said to be where they are.
TEST(IntakeCases, WhatIsAskedForIsOfferedWhereItCanBe)
{
    const auto offers = [](const char *sign, const Visit &visit, const Place &place) {
        const auto places = placesOf(*safetyRules().signs().find(sign), safetyRules(), regions(), visit);
        return std::any_of(places.begin(), places.end(), [&](const SignPlace &p) { return p.place == place; });
    };
    const json all = fileOf("answers.json");
    const Visit spine = visitOf(find(all.at("cases"), "id", "ic-19"));
    EXPECT_TRUE(offers("minor-injury-weak-bone", spine, {{"vertebral-region-thoracic"}, Side::Midline}));
    const Visit trunk = visitOf(find(all.at("cases"), "id", "ic-17"));
    EXPECT_TRUE(offers("shingles-rash", trunk, {{"scapular-region"}, Side::Left}));
    const Visit neck = visitOf(find(all.at("cases"), "id", "ic-18"));
    const auto places = placesOf(*safetyRules().signs().find("shingles-rash"), safetyRules(), regions(), neck);
    EXPECT_TRUE(std::any_of(places.begin(), places.end(), [](const SignPlace &p) { return p.area == "chest"; }))
        << "asked of everybody, wherever it hurts";
    for (const char *sign : {"leg-clot-suspicion", "compartment-signs", "arm-swollen-blue"})
        EXPECT_FALSE(offers(sign, spine, {{"vertebral-region-thoracic"}, Side::Midline})) << sign;
}

// The side that is well is not stopped by what the other side has.
TEST(IntakeCases, TheOtherLegIsLeftAloneByAClotThatIsSuspected)
{
    const json all = fileOf("answers.json");
    const json &answers = find(all.at("cases"), "id", "ic-03");
    Visit visit = visitOf(answers);
    answerAll(visit, {{"leg-clot-suspicion", visit.complaintAt}});
    const Cautions cautions = cautionsOf(referred(visit));
    EXPECT_TRUE(cautions.isBarred({{"soleus"}, Side::Left}));
    EXPECT_FALSE(cautions.isBarred({{"soleus"}, Side::Right}));
}

} // namespace raphe::test
