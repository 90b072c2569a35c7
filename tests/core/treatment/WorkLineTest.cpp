// What a typed line says was done: read whole or not at all, and never on a side that was not typed.
#include "core/treatment/WorkLine.h"
#include "core/base/NumberText.h"
#include "core/plan/TreatmentSettings.h"
#include "tests/core/language/EnglishWords.h"
#include "tests/core/plan/Planning.h"

#include <gtest/gtest.h>

#include <functional>
#include <random>

namespace raphe {

namespace {

using namespace test;
using nlohmann::json;

WorkReading work(std::string_view line, const Techniques &among = techniques())
{
    return readWorkLine(line, englishWords(), among);
}

/// "right piriformis, sustained-pressure, 90 s", or what keeps it from being that.
std::string inWords(const WorkReading &reading)
{
    if (reading.step) {
        const TreatmentStep &step = *reading.step;
        std::string out = std::string(wordOf(sideWords, step.place.side)) + ' ' + step.place.structure.value + ", "
            + step.technique + ", " + std::to_string(step.seconds) + " s";
        return step.kPa ? out + ", " + numberText(*step.kPa) + " kPa" : out;
    }
    std::string out = reading.problem;
    const auto add = [&](const std::string &more) { out += out.empty() ? more : "; " + more; };
    for (const LineQuestion &question : reading.questions)
        add("ask " + std::string(wordOf(askAboutWords, question.about)) + ": " + question.words);
    for (const LineMistake &mistake : reading.mistakes)
        add("mistake: " + mistake.words);
    return out;
}

struct Line {
    const char *typed;
    const char *meant;
};

void expectAll(std::initializer_list<Line> lines)
{
    for (const Line &line : lines) {
        EXPECT_TRUE(isWorkLine(line.typed, englishWords())) << line.typed;
        EXPECT_EQ(inWords(work(line.typed)), line.meant) << line.typed;
    }
}

const char *const howLong = "How long was it? Type the time, for example '90 s', '2 min' or '1:30'.";
const char *const whichTechnique =
    "No technique is named that is known. Type one, for example 'gliding strokes along the fibres'.";
const char *const where = "Where was it? Type side and structure, for example 'right piriformis'.";
const char *const severalPlaces = "More than one place is named. Type a line for each place and side.";

TEST(WorkLine, IsOneThatBeginsWithAWordForWork)
{
    for (const char *line :
        {"did", "Did right piriformis", "done r ql", "worked on r ql", "TREATED l4/5", "  did r ql", "did: r ql"})
        EXPECT_TRUE(isWorkLine(line, englishWords())) << line;
    for (const char *line : {"", "r ql tender 2", "r ql did", "didnt r ql", "diddle", "r did", ", did r ql", "workedout r ql"})
        EXPECT_FALSE(isWorkLine(line, englishWords())) << line;
}

TEST(WorkLine, TakesPlaceTechniqueAndTimeInAnyOrder)
{
    expectAll({{"did right piriformis sustained pressure 90 s", "right piriformis, sustained-pressure, 90 s"},
        {"DID RIGHT PIRIFORMIS SUSTAINED PRESSURE 90 S", "right piriformis, sustained-pressure, 90 s"},
        {"worked l glute max, cross-fibre friction, 2 min", "left gluteus-maximus, cross-fibre, 120 s"},
        {"did 90 s sustained pressure on the right piriformis", "right piriformis, sustained-pressure, 90 s"},
        {"did 2 min of gliding to the left soleus", "left soleus, gliding, 120 s"},
        {"did piriformis right with friction for about 2 min", "right piriformis, cross-fibre, 120 s"},
        {"treated l4/5 gentle mobilisation 1:30", "midline l4-l5, mobilise-gently, 90 s"},
        {"treated r l4/5, joint mobilisation, grade I to II, 90 s", "right l4-l5, mobilise-gently, 90 s"},
        {"done: r psoas; position of ease; 90 s.", "right psoas-major, held-ease, 90 s"},
        {"did right: piriformis, friction, 2 min", "right piriformis, cross-fibre, 120 s"},
        {"did r rib 5 gentle mobilisation 60 s", "right rib-5, mobilise-gently, 60 s"},
        {"did t3 thrust 1 s", "midline vertebra-t3, thrust, 1 s"}, {"did l5s1 hvla 1 s", "midline l5-s1, thrust, 1 s"},
        {"did r ext. obl. gliding 2 min", "right external-oblique, gliding, 120 s"},
        {"did r glute min friction 2 min", "right gluteus-minimus, cross-fibre, 120 s"}});
}

TEST(WorkLine, TheLongestPhraseIsTheTechniqueAndItsWordsAreNoSide)
{
    expectAll({{"did cups left standing left latissimus dorsi 5 min 20 kPa", "left latissimus-dorsi, cups-still, 300 s, 20 kPa"},
        {"did cups left standing right latissimus dorsi 5 min 20 kPa", "right latissimus-dorsi, cups-still, 300 s, 20 kPa"},
        {"did latissimus dorsi right cups left standing 5 min", "right latissimus-dorsi, cups-still, 300 s"},
        {"did cups left standing latissimus dorsi 5 min", "ask side: latissimus dorsi"},
        {"did cups left standing left lat 5 min 20 kPa", "ask structure: lat"},
        {"did r soleus gliding cups 2 min", "right soleus, cups-gliding, 120 s"},
        {"did r soleus gliding 2 min", "right soleus, gliding, 120 s"},
        {"did r soleus stretch, contract and relax 90 s", "right soleus, stretch-contract-relax, 90 s"},
        {"did r soleus sustained pressure on a spot 90 s", "right soleus, sustained-pressure, 90 s"},
        {"did r soleus friction, cross-fibre friction 90 s", "right soleus, cross-fibre, 90 s"},
        {"did r soleus frictional 90 s",
            "No technique is named that is known. Type one, for example 'gliding strokes along the "
            "fibres'.; mistake: frictional"}});
}

TEST(WorkLine, ReadsTimesAsTheyAreTyped)
{
    const auto expectTime = [](const char *typed, int seconds) {
        const WorkReading reading = work(std::string("did r soleus gliding ") + typed);
        ASSERT_TRUE(reading.step) << typed << ": " << inWords(reading);
        EXPECT_EQ(reading.step->seconds, seconds) << typed;
    };
    expectTime("90s", 90);
    expectTime("90 sec", 90);
    expectTime("45 seconds", 45);
    expectTime("2min", 120);
    expectTime("1.5 min", 90);
    expectTime("1,5 min", 90);
    expectTime("2 min 30 s", 150);
    expectTime("2min30", 150);
    expectTime("1:30", 90);
    expectTime("1:30 min", 90);
    expectTime("(90 s)", 90);
    expectTime("240 min", TreatmentStep::longest);
}

TEST(WorkLine, AsksForTheTimeAndTakesNoneThatIsUnclear)
{
    const auto notOne = [](const char *typed) {
        return std::string("'") + typed + "' is not one time of work. Type it as '90 s', '2 min' or '1:30'.";
    };
    const auto expect = [](const std::string &typed, const std::string &meant) {
        EXPECT_EQ(inWords(work("did r soleus gliding " + typed)), meant) << typed;
    };
    expect("", howLong);
    expect("2 m", howLong);
    expect("60-90 s", notOne("60-90 s"));
    expect("1/2 min", notOne("1/2 min"));
    expect(".5 min", notOne(".5 min"));
    expect("1:75", notOne("1:75"));
    expect("1:3", notOne("1:3"));
    expect("1:30:20", notOne("1:30:20"));
    expect("0 s", notOne("0 s"));
    expect("0.4 s", notOne("0.4 s"));
    expect("60 s 90 s", "More than one time is typed: 60 s and 90 s. Leave one.");
    expect("2 min 90 s", "More than one time is typed: 2 min and 90 s. Leave one.");
    expect("241 min", "'241 min' is too long: one piece of work takes 240 min at most. Type its time.");
    expect("99999999999999999999999999 min",
        "'99999999999999999999999999 min' is too long: one piece of work takes 240 min at most. Type its time.");
    for (const char *typed :
        {"90", "at 10:30", "3 x 30 s", "60 to 90 s", "1e3 s", "not 90 s", "2 h", "> 90 s", "1,500 s", "%1 %2"})
        EXPECT_FALSE(work(std::string("did r soleus gliding ") + typed).step) << typed;
}

TEST(WorkLine, ALevelOfTheSpineIsNoTime)
{
    expectAll({{"did l5 s1 gentle mobilisation", howLong},
        {"did l5/s1 gentle mobilisation 60 s", "midline l5-s1, mobilise-gently, 60 s"},
        {"did c5/6 gentle mobilisation 60 s", "midline c5-c6, mobilise-gently, 60 s"},
        {"did l5 60 s thrust", "midline vertebra-l5, thrust, 60 s"}, {"did r psoas, l5 s thrust", howLong}});
}

TEST(WorkLine, SuctionIsOfCupsAndWithinWhatTheyDo)
{
    const char *const none = "' is no suction. Type one value up to 80 kPa, for example '20 kPa'.";
    expectAll({{"did r soleus standing cups 5 min 20kPa", "right soleus, cups-still, 300 s, 20 kPa"},
        {"did r soleus static cups at 12.5 kpa for 5 min", "right soleus, cups-still, 300 s, 12.5 kPa"},
        {"did r soleus standing cups 5 min -20 kPa", "right soleus, cups-still, 300 s, 20 kPa"},
        {"did r soleus moving cups 2 min 80 kPa", "right soleus, cups-gliding, 120 s, 80 kPa"},
        {"did r soleus gliding 2 min 20 kPa", "'20 kPa' is of cups only. Take it out, or name the cups."}});
    for (const char *suction : {"81 kPa", "0 kPa", "15-20 kPa", "15 kPa 20 kPa"})
        EXPECT_EQ(inWords(work(std::string("did r soleus standing cups 5 min ") + suction)), std::string("'") + suction + none);
    EXPECT_FALSE(work("did r soleus standing cups 5 min 150 mmHg").step);
}

TEST(WorkLine, OneTechniqueIsNamed)
{
    expectAll({{"did right piriformis 90 s", whichTechnique},
        {"did r latissimus dorsi cups 5 min",
            "Which technique is 'cups'? Type its name: cups left standing; cups moved with oil."},
        {"did r soleus, 2 min", whichTechnique}, {"did r shoulder joint 2 min", whichTechnique},
        {"did r soleus stretch 60 s",
            "Which technique is 'stretch'? Type its name: hold and lengthen; stretch with breath; "
            "stretch, contract and relax."},
        {"did r soleus gliding and friction 2 min",
            "More than one technique is named: gliding strokes along the fibres; cross-fibre "
            "friction. Type a line for each."},
        {"did r soleus static cups moved with oil 2 min",
            "More than one technique is named: cups left standing; cups moved with oil. Type a line for each."}});
}

TEST(WorkLine, OnePlaceIsNamedWithItsSide)
{
    expectAll({{"did sustained pressure 90 s", where}, {"did", whichTechnique},
        {"did piriformis friction 90 s", "ask side: piriformis"}, {"did r friction 90 s", "mistake: r"},
        {"did r left piriformis friction 90 s", "mistake: r left"}, {"did r sternum friction 90 s", "ask side: r sternum"},
        {"did r hamstrings gliding 2 min", "ask structure: hamstrings"}, {"did both piriformis friction 90 s", severalPlaces},
        {"did r piriformis and psoas friction 90 s", severalPlaces}, {"did r piriformis, l psoas, friction 90 s", severalPlaces},
        {"did r piriformis r psoas friction 90 s", severalPlaces}, {"did r piriformis psoas friction 90 s", severalPlaces},
        {"did c5, c6 thrust 1 s", severalPlaces}, {"did c5 thrust c6 1 s", severalPlaces},
        {"did r glute friction max 90 s", severalPlaces}, {"did r glute, max, friction 90 s", severalPlaces},
        {"did r wibble friction 90 s", "mistake: r wibble"}, {"did t14 thrust 1 s", "mistake: t14"},
        {"did r c5 thrust 1 s", "ask structure: r c5"}});
}

TEST(WorkLine, NothingElseIsInIt)
{
    const auto noPart = [](const char *words) {
        return std::string("'") + words
            + "' is no part of a piece of work. Take it out, or type what was found on a line of its own.";
    };
    const auto expect = [](const std::string &typed, const std::string &meant) {
        EXPECT_EQ(inWords(work("did r soleus " + typed + ", gliding 2 min")), meant) << typed;
    };
    for (const char *words :
        {"tender", "tender 3", "t3", "stiff", "clear", "familiar", "ropy", "not", "maybe", "20", "++", "same"})
        expect(words, noPart(words));
    expect("refers to r heel", noPart("refers to r heel"));
    expect("insertion", "Work is logged for the whole structure. Take out 'insertion'.");
    expect("at the heel", "Work is logged for the whole structure. Take out 'at the heel'.");
    expect("oily", "mistake: oily");
}

TEST(WorkLine, AnAnswerIsPutIntoTheLineAndSettlesTheQuestion)
{
    struct Asked {
        const char *typed;
        std::size_t choice;
        const char *meant;
    };
    for (const Asked &asked : {Asked{"did piriformis friction 90 s", 0, "left piriformis, cross-fibre, 90 s"},
             Asked{"did piriformis friction 90 s", 1, "right piriformis, cross-fibre, 90 s"},
             Asked{"did 90 s friction r hamstrings", 0, "right biceps-femoris, cross-fibre, 90 s"},
             Asked{"did cups left standing left lat 5 min 20 kPa", 0, "left latissimus-dorsi, cups-still, 300 s, 20 kPa"},
             Asked{"did r friction sternum 90 s", 0, "midline sternum, cross-fibre, 90 s"},
             Asked{"did r 90 s thrust c5", 0, "right c4-c5, thrust, 90 s"}}) {
        const WorkReading reading = work(asked.typed);
        ASSERT_EQ(reading.questions.size(), 1U) << asked.typed << ": " << inWords(reading);
        ASSERT_LT(asked.choice, reading.questions.front().choices.size()) << asked.typed;
        const std::string mended = answered(asked.typed, reading.questions.front(), asked.choice);
        EXPECT_EQ(inWords(work(mended)), asked.meant) << mended;
    }
}

TEST(WorkLine, TheStepSaysNothingThatWasNotTyped)
{
    TreatmentStep meant;
    meant.place = {StructureId{"piriformis"}, Side::Right};
    meant.technique = "sustained-pressure";
    meant.seconds = 90;
    EXPECT_EQ(work("did right piriformis sustained pressure 90 s").step, meant);
}

// An own technique is found by its name; its way of being like another gives it none of the other's phrases.
TEST(WorkLine, ThePractitionersOwnTechniquesAreFoundByTheirName)
{
    TreatmentSettings settings;
    settings.techniques = {{"slow-hand", "gliding", "Slow hand 5/3", 240, "very slowly", "Lighter over bone."},
        {"own-friction", "cross-fibre", "friction", 60, "as ever", "Not on a tear."}};
    const Techniques all = withOwn(techniques(), settings).value();
    const auto read = [&](const char *line) { return inWords(work(line, all)); };
    EXPECT_EQ(read("did r soleus slow hand 5/3, 2 min"), "right soleus, slow-hand, 120 s");
    EXPECT_EQ(read("did r soleus gliding 2 min"), "right soleus, gliding, 120 s");
    EXPECT_EQ(read("did r soleus friction 2 min"), "right soleus, own-friction, 120 s") << "a name before another's short form";
    EXPECT_EQ(read("did r soleus cross-fibre friction 2 min"), "right soleus, cross-fibre, 120 s");
}

TEST(WorkLine, APhraseSaysOneTechnique)
{
    const auto refused = [](const std::function<void(json &)> &spoil) {
        json content = shipped("techniques.json");
        spoil(content);
        const auto read = readTechniques(content.dump(), "t", safetyRules());
        return read ? std::string("read") : std::to_string(static_cast<int>(read.error().code)) + ' ' + read.error().place;
    };
    const std::string duplicate = std::to_string(static_cast<int>(ErrorCode::Duplicate));
    const std::string missing = std::to_string(static_cast<int>(ErrorCode::MissingField));
    EXPECT_EQ(refused([](json &) {}), "read");
    EXPECT_EQ(refused([](json &d) { d["techniques"][0].erase("says"); }), "read");
    EXPECT_EQ(refused([](json &d) {
        d["techniques"][1]["says"] = {"rolling", "Gliding"};
    }),
        duplicate + " t#/techniques/1/says/1");
    EXPECT_EQ(refused([](json &d) { d["techniques"][1]["name"] = "effleurage"; }), duplicate + " t#/techniques/1/name");
    EXPECT_EQ(refused([](json &d) { d["techniques"][1]["says"] = {"skin-rolling"}; }), duplicate + " t#/techniques/1/says/0")
        << "its own name";
    EXPECT_EQ(refused([](json &d) { d["techniques"][1]["says"] = {"..."}; }), missing + " t#/techniques/1/says/0");
    for (const Technique &technique : techniques().all)
        EXPECT_TRUE(!technique.says.empty() && technique.says.size() <= 3) << technique.id;
}

// The side of the step is the side word of the line and nothing else.
TEST(WorkLine, TheOtherSideWordGivesTheOtherSideAndChangesNothingElse)
{
    constexpr int tries = 1500;
    std::mt19937 random(14);
    std::vector<std::size_t> paired;
    for (std::size_t i = 0; i < atlas().structures().size(); ++i)
        if (atlas().structures()[i].paired)
            paired.push_back(i);
    const std::vector<std::pair<std::string, int>> times{
        {"90 s", 90}, {"45 sec", 45}, {"2 min", 120}, {"1:05", 65}, {"2 min 30 s", 150}};
    const std::vector<std::pair<std::string, std::string>> sides{
        {"right", "left"}, {"r", "l"}, {"rt", "lt"}, {"right side", "left side"}};
    const auto pick = [&](const auto &from) -> const auto &
    {
        return from[random() % from.size()];
    };
    int withCups = 0;
    for (int i = 0; i < tries; ++i) {
        const std::size_t structure = pick(paired);
        const Technique &technique = pick(techniques().all);
        std::vector<std::string> phrases = technique.says;
        phrases.push_back(technique.name);
        const std::string &phrase = pick(phrases);
        const auto &chosen = pick(times);
        const std::string &time = chosen.first;
        const int seconds = chosen.second;
        const auto &[right, left] = pick(sides);
        const std::string name = englishWords().names().sureName(atlas(), structure);
        const std::string suction = technique.dose.kPa && random() % 2 == 0 ? " 20 kPa" : "";
        const auto order = random() % 5;
        const auto lineOn = [&](const std::string &side) {
            const std::string what = phrase + ' ' + time + suction;
            switch (order) {
            case 0: return "did " + side + ' ' + name + ", " + what;
            case 1: return "worked " + what + ' ' + side + ' ' + name;
            case 2: return "did " + name + ' ' + side + ' ' + what;
            case 3: return "treated " + side + ' ' + phrase + ' ' + name + ", " + time + suction;
            default: return "done " + time + ' ' + phrase + ", " + side + ' ' + name + suction;
            }
        };
        TreatmentStep meant;
        meant.place = {atlas().structures()[structure].id, Side::Right};
        meant.technique = technique.id;
        meant.seconds = seconds;
        if (!suction.empty()) {
            meant.kPa = 20;
            ++withCups;
        }
        ASSERT_EQ(work(lineOn(right)).step, meant) << lineOn(right) << ": " << inWords(work(lineOn(right)));
        meant.place.side = Side::Left;
        ASSERT_EQ(work(lineOn(left)).step, meant) << lineOn(left) << ": " << inWords(work(lineOn(left)));
    }
    EXPECT_GT(withCups, tries / 50);
}

TEST(WorkLine, WithoutASideWordNothingIsLogged)
{
    for (const Structure &structure : atlas().structures()) {
        const auto index = static_cast<std::size_t>(&structure - atlas().structures().data());
        const std::string line = "did cups left standing " + englishWords().names().sureName(atlas(), index) + " 5 min";
        EXPECT_EQ(work(line).step.has_value(), !structure.paired) << line;
    }
}

TEST(WorkLine, AnyBytesGiveIssuesWithinTheLine)
{
    std::mt19937 random(15);
    const std::vector<std::string> pieces{"right ", "l", " piriformis", "cups left standing", "friction", "90 s", "1:30",
        "20 kPa", ",", ".", ":", "-", "\xc2\xa0", "\xff", "did ", "t3", "lat", "sternum", "5", " at ", "c5", "'", "hamstrings",
        "+", "/", "both"};
    int questions = 0;
    for (int i = 0; i < 3000; ++i) {
        std::string line = "did ";
        for (auto more = random() % 9; more > 0; --more)
            line += pieces[random() % pieces.size()] + (random() % 2 == 0 ? " " : "");
        const WorkReading reading = work(line);
        EXPECT_EQ(reading.step.has_value(), reading.problem.empty() && reading.questions.empty() && reading.mistakes.empty())
            << line;
        for (const LineQuestion &question : reading.questions) {
            ++questions;
            EXPECT_TRUE(question.begin < question.end && question.end <= line.size()) << line;
            EXPECT_FALSE(question.words.empty()) << line;
        }
        for (const LineMistake &mistake : reading.mistakes)
            EXPECT_TRUE(mistake.begin < mistake.end && mistake.end <= line.size() && !mistake.words.empty()) << line;
        if (reading.step) {
            EXPECT_TRUE(reading.step->seconds >= 1 && reading.step->seconds <= TreatmentStep::longest) << line;
        }
    }
    EXPECT_GT(questions, 100);
}

} // namespace

} // namespace raphe
