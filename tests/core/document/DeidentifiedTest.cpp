// A copy for teaching holds nothing of what somebody wrote, no day and no name; all that the program thinks with stays.
#include "core/document/Deidentified.h"

#include "core/record/VisitJson.h"
#include "core/safety/Cautions.h"
#include "core/safety/Day.h"
#include "core/safety/Warnings.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/SchemaFields.h"
#include "tests/support/WholeVisits.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace raphe::test {

namespace {

constexpr int lateYear = 2210; // no copy of a visit of these years has a date in them

std::vector<Visit> copyOf(const std::vector<Visit> &visits)
{
    return deidentified(visits, "Patient 1", wholeContent());
}

Visit copyOf(const Visit &visit)
{
    return copyOf(std::vector{visit}).front();
}

// A patient's, each with something in every field, every text of it a mark of its own, and so many of them.
std::vector<Visit> markedVisits(
    unsigned seed, const std::string &mark, bool areIdsMarked, std::size_t count = 3, int firstYear = lateYear)
{
    WholeVisits random(seed);
    random.setFirstYear(firstYear);
    int number = 0;
    random.setWords([&] { return mark + " " + std::to_string(++number); });
    if (areIdsMarked)
        random.setIds([&](const std::string &) { return "own-" + mark + "-" + std::to_string(++number); });
    std::vector<Visit> visits;
    for (std::size_t i = 0; i < count; ++i)
        visits.push_back(random.whole());
    return visits;
}

std::string writtenOf(const std::vector<Visit> &visits)
{
    std::string out;
    for (const Visit &visit : visits)
        out += writeVisit(visit);
    return out;
}

std::set<std::string> datesIn(const std::string &text)
{
    static const std::regex date("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    return {std::sregex_token_iterator(text.begin(), text.end(), date), std::sregex_token_iterator()};
}

// The visit as it reads from its file, which it must.
void expectReads(const Visit &visit)
{
    const std::string text = writeVisit(visit);
    const auto read = readVisit(text, "copy.json", atlas());
    ASSERT_TRUE(read) << inWords(read.error()) << "\n" << text;
    ASSERT_TRUE(read.value() == visit) << text;
}

Visit dated(const std::string &date, const std::string &born = {})
{
    Visit visit;
    visit.date = date;
    if (!born.empty())
        visit.patient = Patient{"Ada Quill", born};
    return visit;
}

std::string bornIn(const Visit &visit)
{
    return visit.patient ? visit.patient->born : "nobody";
}

} // namespace

TEST(Deidentified, HoldsNoWordNoNameAndNoDayOfTheVisits)
{
    for (unsigned seed = 1; seed <= 20; ++seed)
        for (const bool areIdsMarked : {false, true}) {
            auto visits = markedVisits(seed, "quilla", areIdsMarked);
            if (seed % 2 == 0)
                for (Visit &visit : visits)
                    visit = mirrored(visit);
            const std::string before = writtenOf(visits);
            const std::string after = writtenOf(copyOf(visits));
            ASSERT_GT(datesIn(before).size(), 30U);
            EXPECT_EQ(after.find("quilla"), std::string::npos) << after;
            for (const std::string &date : datesIn(before))
                EXPECT_EQ(after.find(date), std::string::npos) << date;
            for (const std::string &date : datesIn(after))
                EXPECT_LT(date, std::to_string(lateYear - 100)) << date;
        }
}

// Else the test above would look for nothing where a later field is.
TEST(Deidentified, EveryTextOfTheSchemaHadItsMark)
{
    std::set<std::string> marked;
    const std::function<void(const nlohmann::json &, const std::string &)> look = [&](const nlohmann::json &json,
                                                                                      const std::string &path) {
        if (json.is_string() && json.get<std::string>().find("quilla") != std::string::npos)
            marked.insert(path);
        for (const auto &[key, field] : json.items())
            if (json.is_structured())
                look(field, json.is_array() && field.is_string() ? path : path + "/" + (json.is_array() ? "*" : key));
    };
    for (const Visit &visit : markedVisits(1, "quilla", false, 20))
        look(nlohmann::json::parse(writeVisit(visit)), "");
    int texts = 0;
    for (const SchemaField &field : schemaFields("visit")) {
        if (!field.isFreeText || field.path == "/complaint") // of version 1
            continue;
        ++texts;
        EXPECT_TRUE(marked.contains(field.path)) << field.path << " held no mark";
    }
    EXPECT_GT(texts, 35) << "the schema was read";
}

// It cannot tell anything of the words, not even how long they were; nor in which years it was.
TEST(Deidentified, IsTheSameWhateverWasWrittenAndWhenever)
{
    for (unsigned seed = 1; seed <= 10; ++seed)
        for (const bool areIdsMarked : {false, true}) {
            const std::string copy = writtenOf(copyOf(markedVisits(seed, "quilla", areIdsMarked)));
            EXPECT_EQ(copy, writtenOf(copyOf(markedVisits(seed, "z", areIdsMarked))));
            EXPECT_EQ(copy, writtenOf(copyOf(markedVisits(seed, "quilla", areIdsMarked, 3, lateYear + 4))))
                << "as far from leap years";
        }
}

TEST(Deidentified, IsAVisitThatTheProgramTakes)
{
    WholeVisits random(5);
    const auto ok = [](const Result<Done> &checked) { return checked ? std::string() : inWords(checked.error()); };
    for (int i = 0; i < 200; ++i) {
        const Visit copy = copyOf(i % 2 == 0 ? random.whole() : random.next());
        expectReads(copy);
        EXPECT_EQ(ok(checkExamined(examination(), copy, "copy")), "");
        EXPECT_EQ(ok(checkConditions(safetyRules(), copy, "copy")), "");
        EXPECT_EQ(ok(checkWarnings(safetyRules(), copy, "copy")), "");
        if (testing::Test::HasFailure())
            return;
    }
    for (unsigned seed = 1; seed <= 20; ++seed)
        for (const Visit &copy : copyOf(markedVisits(seed, "quilla", true)))
            expectReads(copy);
}

// Where the schema knows no free text, no date and no time, the copy says what the visit said.
TEST(Deidentified, AllButWordsAndDaysStays)
{
    std::set<std::string> free{"/patient/born", "/complaints/*/episode"};
    for (const SchemaField &field : schemaFields("visit"))
        if (field.isFreeText)
            free.insert(field.path);
    const std::set<std::string> named{"date", "asked", "until", "agreed", "due", "made", "time", "began", "running"};
    const std::function<void(const nlohmann::json &, const nlohmann::json &, const std::string &)> compare =
        [&](const nlohmann::json &before, const nlohmann::json &after, const std::string &path) {
            ASSERT_EQ(before.size(), after.size()) << path << before << after;
            if (before.is_array()) {
                for (std::size_t i = 0; i < before.size(); ++i)
                    compare(before[i], after[i], path + "/*");
                return;
            }
            if (!before.is_object()) {
                ASSERT_EQ(before, after) << path;
                return;
            }
            for (const auto &[key, field] : before.items()) {
                const std::string at = path + "/" + key;
                ASSERT_TRUE(after.contains(key)) << at;
                if (!free.contains(at) && !(named.contains(key) && field.is_string()))
                    compare(field, after[key], at);
            }
        };
    WholeVisits random(6);
    for (int i = 0; i < 100; ++i) {
        Visit visit = i % 2 == 0 ? random.whole() : random.next();
        std::erase_if(visit.warnings, [](const WarningAnswer &a) { return safetyRules().signs().find(a.sign)->alone; });
        if (visit.patient)
            visit.patient->born = visit.date.empty() ? "" : "1980-01-01"; // a day that is dropped has a test of its own
        visit.letters.clear();
        for (Finding &f : visit.findings)
            EXPECT_TRUE(f.texture.empty() || !f.isUnable());
        compare(nlohmann::json::parse(writeVisit(visit)), nlohmann::json::parse(writeVisit(copyOf(visit))), "");
        if (testing::Test::HasFatalFailure() || testing::Test::HasFailure())
            return;
    }
}

TEST(Deidentified, TheProgramThinksAboutTheCopyAsAboutTheVisit)
{
    const auto rows = [](const std::vector<Suggestion> &list) {
        std::string out;
        for (const Suggestion &s : list)
            out += std::to_string(s.rank) + " " + std::string(wordOf(sideWords, s.place.side)) + " " + s.place.structure.value
                + " " + std::to_string(s.score) + " " + s.why + "\n";
        return out;
    };
    RandomVisits visits(7);
    WholeVisits more(7);
    int offered = 0;
    for (int i = 0; i < 30; ++i) {
        Visit visit = visits.next();
        visit.patient = Patient{"Ada Quill", "1950-06-07"};
        visit.date = "2024-05-06";
        visit.practitioner = "B. Brook";
        for (Finding &f : visit.findings)
            if (!f.isUnable())
                f.note = "as her mother had it";
        if (i % 2 == 0) {
            const Visit whole = more.whole();
            visit.conditions = whole.conditions;
            visit.complaints = whole.complaints;
            visit.complaintAt = whole.complaintAt;
            visit.plan = whole.plan;
        }
        const auto before = adviser().advise(visit, "v");
        const auto after = adviser().advise(copyOf(visit), "v");
        ASSERT_TRUE(before && after);
        for (const auto list : {&Reasons::explain, &Reasons::check})
            EXPECT_EQ(rows(before.value().reasons.*list), rows(after.value().reasons.*list));
        EXPECT_EQ(before.value().general, after.value().general);
        offered += static_cast<int>(before.value().reasons.check.size());
    }
    EXPECT_GT(offered, 50) << "there was something to compare";
}

TEST(Deidentified, OfTheMirroredVisitIsTheMirroredCopy)
{
    WholeVisits random(8);
    for (int i = 0; i < 50; ++i) {
        const Visit visit = random.whole();
        ASSERT_TRUE(copyOf(mirrored(visit)) == mirrored(copyOf(visit)));
    }
}

TEST(Deidentified, OfACopyIsTheSameCopy)
{
    for (unsigned seed = 1; seed <= 10; ++seed)
        for (const bool areIdsMarked : {false, true}) {
            const auto once = copyOf(markedVisits(seed, "quilla", areIdsMarked));
            EXPECT_EQ(writtenOf(copyOf(once)), writtenOf(once));
        }
}

TEST(Deidentified, KeepsIntervalsAndStartsOnTheNeutralDay)
{
    Visit first = dated("2024-02-27");
    first.complaints.resize(1);
    first.complaints[0].asked = "2024-02-27";
    first.consents = {{"cupping", ConsentState::Given, "2023-12-31", {}, {}, {}, {}}};
    Visit second = dated("2024-03-05");
    second.closing.goals = {{"to drive to the sea", "2025-02-27", false}};
    second.closing.plan = CarePlan{"2024-03-05", 6, 7, "an hour's drive"};
    second.closing.call = LaterCall{"2024-03-07", "2024-03-08", Reaction::Sore, "a day"};
    const auto copies = copyOf({second, first, Visit{}});
    ASSERT_EQ(copies.size(), 3U) << "in the order in which they were given";
    EXPECT_EQ(copies[1].date, neutralDay);
    EXPECT_EQ(copies[1].complaints[0].asked, neutralDay);
    EXPECT_EQ(copies[1].consents[0].asked, "1999-11-04") << "58 days before";
    EXPECT_EQ(daysBetween(copies[1].consents[0].asked, copies[1].date), daysBetween("2023-12-31", "2024-02-27"));
    EXPECT_EQ(copies[0].date, "2000-01-08") << "seven days later, over a leap day";
    EXPECT_EQ(copies[0].closing.goals[0].until, "2001-01-01") << "366 days after the first";
    EXPECT_EQ(copies[0].closing.plan->agreed, "2000-01-08");
    EXPECT_EQ(copies[0].closing.call->due, "2000-01-10");
    EXPECT_EQ(copies[0].closing.call->made, "2000-01-11");
    EXPECT_EQ(copies[2].date, "") << "what has no date gets none";

    Visit undated;
    undated.closing.goals = {{"to sleep", "2024-05-01", false}, {"to swim", "2024-05-31", false}};
    EXPECT_EQ(copyOf(undated).closing.goals[0].until, neutralDay);
    EXPECT_EQ(copyOf(undated).closing.goals[1].until, "2000-01-31");

    Visit slip = dated("0001-01-01");
    slip.closing.goals = {{"to sleep", "9999-12-31", false}};
    EXPECT_EQ(copyOf(slip).closing.goals[0].until, neutralDay) << "it would lie beyond the year 9999";
    expectReads(copyOf(slip));
}

TEST(Deidentified, KeepsTheAgeInYearsUpToNinety)
{
    struct Case {
        const char *born;
        const char *date;
        const char *copied;
    };
    for (const Case &c : {Case{"1981-04-17", "2024-04-16", "1958-01-01"}, {"1981-04-17", "2024-04-17", "1957-01-01"},
             {"2024-03-01", "2024-03-05", "2000-01-01"}, {"2008-02-29", "2026-02-28", "1983-01-01"},
             {"2008-02-29", "2026-03-01", "1982-01-01"}, {"1935-01-01", "2024-03-05", "1911-01-01"},
             {"1934-01-01", "2024-03-05", "1910-01-01"}, {"1919-01-01", "2024-03-05", "1910-01-01"},
             {"0000-05-05", "2024-03-05", ""}, {"2024-03-06", "2024-03-05", ""}}) {
        const Visit copy = copyOf(dated(c.date, c.born));
        EXPECT_EQ(bornIn(copy), c.copied) << c.born;
        EXPECT_EQ(copy.patient->name, "Patient 1");
        if (*c.copied) {
            EXPECT_EQ(yearsBetween(bornIn(copy), copy.date), std::min(yearsBetween(c.born, c.date).value(), 90)) << c.born;
        }
    }
    const auto older = copyOf({dated("2024-03-05", "1935-01-01"), dated("2027-03-05", "1935-01-01")});
    EXPECT_EQ(yearsBetween(bornIn(older[1]), older[1].date), 90) << "nobody is older at any visit";
    EXPECT_EQ(bornIn(older[0]), bornIn(older[1])) << "it stays one person";
    const auto later = copyOf({dated("2024-03-05"), dated("2024-09-05", "1981-04-17")});
    EXPECT_EQ(bornIn(later[0]), "nobody");
    EXPECT_EQ(bornIn(later[1]), "1958-01-01") << "42 on the day of the first visit";
    EXPECT_EQ(bornIn(copyOf(dated("", "1981-04-17"))), "") << "no day to count the age on";
}

TEST(Deidentified, CountsTimesFromTheFirst)
{
    const auto timesOf = [](const std::vector<std::string> &times) {
        Visit visit;
        for (const std::string &time : times)
            visit.timeline.push_back({time, MomentKind::Movement, "trunk-flexion", Side::Midline});
        std::vector<std::string> out;
        for (const Moment &moment : copyOf(visit).timeline)
            out.push_back(moment.time);
        return out;
    };
    using Times = std::vector<std::string>;
    EXPECT_EQ(timesOf({"09:04:10"}), Times{"00:00:00"});
    EXPECT_EQ(timesOf({"09:04:10", "09:05:00", "10:04:09"}), (Times{"00:00:00", "00:00:50", "00:59:59"}));
    EXPECT_EQ(timesOf({"23:50:00", "00:10:00", "00:00:00"}), (Times{"00:00:00", "00:20:00", "00:10:00"})) << "past midnight";
    Visit visit;
    visit.timeline = {{"14:30:00", MomentKind::Movement, "trunk-flexion", Side::Midline}}; // the retest alone
    TreatmentStep step;
    step.place = {{"gluteus-maximus"}, Side::Right};
    step.technique = wholeContent().techniques.all.front().id;
    step.began = "14:00:05";
    visit.treatment.steps = {step};
    visit.treatment.running = "14:10:05";
    visit.treatment.events = {{"14:15:05", {"faint"}, "Bo fainted", "water"}};
    const Visit copy = copyOf(visit);
    EXPECT_EQ(copy.treatment.steps[0].began, "00:00:00");
    EXPECT_EQ(copy.treatment.running, "00:10:00");
    EXPECT_EQ(copy.treatment.events[0].time, "00:15:00");
    EXPECT_EQ(copy.timeline[0].time, "00:29:55");
}

TEST(Deidentified, WhatIsAskedWhenNobodyHearsIsLeftOut)
{
    const auto &signs = safetyRules().signs().signs;
    const auto secret = std::find_if(signs.begin(), signs.end(), [](const WarningSign &s) { return s.alone; });
    const auto open = std::find_if(signs.begin(), signs.end(), [](const WarningSign &s) { return !s.alone; });
    ASSERT_TRUE(secret != signs.end() && open != signs.end());
    Visit visit = dated("2024-03-05");
    visit.warnings = {{secret->id, true, "2024-03-05", {}, Decision::Referred, "whispered", "hotline", false},
        {open->id, false, "2024-03-05", {}, {}, {}, {}, false}};
    TreatmentStep step;
    step.place = {{"gluteus-maximus"}, Side::Right};
    step.technique = "own-thumbs";
    step.began = "09:00:00";
    step.minded = {secret->id, open->id, safetyRules().rules().front().id};
    visit.treatment.steps = {step};
    const Visit copy = copyOf(visit);
    ASSERT_EQ(copy.warnings.size(), 1U);
    EXPECT_EQ(copy.warnings[0].sign, open->id);
    EXPECT_EQ(writeVisit(copy).find(secret->id), std::string::npos);
    EXPECT_EQ(copy.treatment.steps[0].minded, (std::vector<std::string>{open->id, safetyRules().rules().front().id}));
    EXPECT_EQ(copy.treatment.steps[0].technique, removedTechnique);
}

TEST(Deidentified, KeepsWhichComplaintsAndActivitiesAreTheSame)
{
    Visit first = dated("2024-03-05");
    first.complaints.resize(2);
    first.complaints[0].episode = 731;
    first.complaints[0].activities = {{"drive to Marsh Lane", 4}, {"carry Bo", 2}, {"", 5}};
    first.complaints[1].episode = 12;
    Visit second = dated("2024-03-12");
    second.complaints.resize(1);
    second.complaints[0].episode = 12;
    second.complaints[0].activities = {{"carry Bo", 6}};
    const auto copies = copyOf({first, second});
    EXPECT_EQ(copies[0].complaints[0].episode, 1);
    EXPECT_EQ(copies[0].complaints[1].episode, 2);
    EXPECT_EQ(copies[1].complaints[0].episode, 2);
    EXPECT_EQ(copies[0].complaints[0].activities, (std::vector<Activity>{{"[removed] 1", 4}, {"[removed] 2", 2}, {"", 5}}));
    EXPECT_EQ(copies[1].complaints[0].activities, (std::vector<Activity>{{"[removed] 2", 6}}));
}

TEST(Deidentified, SaysThatItCanStillTellWhoItIs)
{
    EXPECT_NE(deidentifiedWarning().find("can still tell who it is"), std::string::npos);
    EXPECT_NE(deidentifiedWarning().find("local law"), std::string::npos);
}

} // namespace raphe::test
