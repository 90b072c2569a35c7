// What stands on the visit map: every part of a whole visit, in three languages, easy to read, and the same when mirrored.
#include "core/document/VisitMap.h"
#include "core/document/MapReading.h"
#include "core/document/PatientTexts.h"
#include "tests/support/Maps.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

namespace raphe::test {

namespace {

const MapSection *sectionOf(const VisitMap &map, const std::string &title)
{
    const auto it = std::find_if(map.sections.begin(), map.sections.end(), [&](const MapSection &s) { return s.title == title; });
    return it == map.sections.end() ? nullptr : &*it;
}

std::string wordsOf(const MapSection &section)
{
    std::string out;
    for (const MapWord &word : section.words)
        out += word.lead + " " + word.text + "\n";
    return out;
}

Visit wholeVisit()
{
    return demoVisit("pellam-2026-11-26");
}

} // namespace

TEST(VisitMap, HasEveryPartOfAWholeVisit)
{
    const VisitMap map = mapOf(wholeVisit());
    std::vector<std::string> titles;
    for (const MapSection &section : map.sections)
        titles.push_back(section.title);
    EXPECT_EQ(titles,
        (std::vector<std::string>{
            "What we did", "What changed", "What to do at home", "What to expect", "Call or see a doctor if"}));
    EXPECT_EQ(map.lines.size(), wholeVisit().findings.size());
    EXPECT_EQ(map.now.size(), 3U);
    for (const MapMark &now : map.now)
        EXPECT_EQ(now.place, map.marks[static_cast<std::size_t>(now.number) - 1].place) << "the same number before and now";
    EXPECT_EQ(wordsOf(*sectionOf(map, "What we did")).find("Rhomboid"), std::string::npos);
    EXPECT_EQ(sectionOf(map, "What we did")->words.size(), 4U);
    const std::string changed = wordsOf(*sectionOf(map, "What changed"));
    EXPECT_NE(changed.find("Turning your head (left side): 48\u00b0 before, 63\u00b0 now."), std::string::npos) << changed;
    EXPECT_NE(changed.find("Your pain, from 0 to 10: 5 before, 2 now. That is better"), std::string::npos) << changed;
    EXPECT_NE(changed.find("Very sore before, a bit sore now."), std::string::npos) << changed;
    const std::string home = wordsOf(*sectionOf(map, "What to do at home"));
    EXPECT_NE(home.find("In the van"), std::string::npos) << "the practitioner's own words";
    const VisitMap first = mapOf(demoVisit("tarrant-2026-11-12"));
    EXPECT_EQ(first.sections.size(), 1U) << "nothing was done, changed, given; only when to call";
    EXPECT_TRUE(first.now.empty());
}

TEST(VisitMap, ChangeIsSaidOnlyBeyondThePublishedError)
{
    Visit visit = wholeVisit();
    const auto changed = [&] { return wordsOf(*sectionOf(mapOf(visit), "What changed")); };
    visit.retested = {};
    visit.retested.pain = PainScore{4}; // 1 point: within 1.77 (tests/published/scales.json)
    EXPECT_NE(changed().find("That is about the same."), std::string::npos) << changed();
    visit.retested.pain = PainScore{8};
    EXPECT_NE(changed().find("That is worse"), std::string::npos) << changed();
    visit.retested.pain.reset();
    Finding felt = visit.findings.front();
    felt.tenderness = Tenderness{0};
    visit.retested.findings = {felt};
    EXPECT_EQ(changed().find("better"), std::string::npos) << "grades have no published error: " << changed();
    EXPECT_NE(changed().find("not exact"), std::string::npos) << changed();
}

TEST(VisitMap, IsAsEasyToReadAsItIsMeantToBe)
{
    const Readability readability = valueOf(readEmbeddedReadability());
    for (const char *name : demoVisits) {
        const VisitMap map = mapOf(demoVisit(name));
        const ReadingGrade grade = gradeOf(readability, map);
        std::cout << name << ": grade " << grade.grade << ", " << grade.words << " words, longest sentence " << grade.longest
                  << ", names excepted " << grade.excepted.size() << "\n";
        EXPECT_GT(grade.words, 50) << name;
        EXPECT_LE(grade.grade, readability.limit) << name << ": " << readability.gradeOf(textsOf(map)).grade << " with its names";
        EXPECT_LE(grade.longest, readability.longestSentence) << name << ": " << grade.longestSentence;
    }
    // Every sentence that a map can have: all advice, all that can be expected, each technique.
    Visit all = wholeVisit();
    all.closing.advice.clear();
    for (const HomeAdviceItem &item : mapSource().advice.items)
        all.closing.advice.push_back({item.id, item.title, item.text + "\n" + item.stop});
    for (const Technique &technique : mapSource().techniques.all) {
        TreatmentStep step = all.treatment.steps.front();
        step.technique = technique.id;
        all.treatment.steps.push_back(step);
    }
    const ReadingGrade grade = gradeOf(readability, mapOf(all));
    EXPECT_LE(grade.grade, readability.limit);
    EXPECT_LE(grade.longest, readability.longestSentence) << grade.longestSentence;
}

TEST(VisitMap, SaysNothingOfContinuitiesAndNothingInEnglishInOtherLanguages)
{
    for (const char *name : demoVisits) {
        const Visit visit = demoVisit(name);
        const std::vector<std::string> english = textsOf(mapOf(visit));
        for (const std::string &text : english)
            for (const char *word : {"continu", "fascial", "chain", "linked", "tied to"})
                EXPECT_EQ(text.find(word), std::string::npos) << text;
        for (const Language language : {Language::German, Language::Spanish}) {
            const VisitMap map = mapOf(visit, language);
            const std::vector<std::string> there = textsOf(map);
            ASSERT_EQ(there.size(), english.size());
            for (std::size_t i = 0; i < there.size(); ++i)
                if (english[i].find("In the van") == std::string::npos) { // typed by the practitioner
                    EXPECT_NE(there[i], english[i]) << name;
                }
            EXPECT_NE(map.legal, mapOf(visit).legal);
            EXPECT_NE(map.date, mapOf(visit).date);
            for (const auto &[kind, words] : map.labels.marks)
                EXPECT_NE(words, mapOf(visit).labels.marks.at(kind));
        }
    }
}

TEST(VisitMap, AllThatPatientsReadIsTranslated)
{
    for (const Language language : {Language::German, Language::Spanish}) {
        const Phrases phrases(language);
        ASSERT_TRUE(phrases.has("VisitMap", "What we found")) << phrases.code() << ": the file was not built in";
        const auto expect = [&](const char *context, const std::string &text) {
            EXPECT_TRUE(phrases.has(context, text)) << phrases.code() << ", " << context << ": " << text;
        };
        for (const PatientText &text : valueOf(readEmbeddedPatientTexts()).texts)
            expect("patient-texts", text.text);
        for (const WarningSign &sign : safetyRules().signs().signs) {
            expect("warning-signs", sign.name);
            expect("warning-signs", sign.ask);
        }
        const HomeAdvice &advice = mapSource().advice;
        for (const std::string &line : advice.always)
            expect("home-advice", line);
        for (const HomeAdviceItem &item : advice.items)
            for (const std::string &text : {item.title, item.text, item.stop})
                expect("home-advice", text);
        for (const Expectation &after : advice.expectations)
            expect("home-advice", after.text);
        for (const CallLine &call : advice.calls)
            expect("home-advice", call.text);
        for (const Movement &movement : mapSource().examination.movements)
            expect("movements", movement.plain);
        for (const Technique &technique : mapSource().techniques.all)
            expect("techniques", technique.plain);
        EXPECT_EQ(phrases.say("VisitMap", "not a text of ours"), "not a text of ours");
    }
}

TEST(VisitMap, AMirroredVisitGivesTheMirroredWords)
{
    const VisitMap here = mapOf(wholeVisit());
    const VisitMap there = mapOf(mirrored(wholeVisit()));
    const auto swapped = [](std::string text) {
        const auto replace = [&](const std::string &from, const std::string &to) {
            for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
                text.replace(at, from.size(), to);
        };
        replace("left side", "L#");
        replace("right side", "left side");
        replace("L#", "right side");
        return text;
    };
    const auto a = textsOf(here);
    const auto b = textsOf(there);
    ASSERT_EQ(a.size(), b.size());
    int sided = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_EQ(swapped(a[i]), b[i]);
        sided += a[i] != b[i] ? 1 : 0;
    }
    EXPECT_GT(sided, 5);
}

} // namespace raphe::test
