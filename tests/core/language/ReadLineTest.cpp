// What single lines are read as, rule by rule. The lines that judge the work stand in tests/quick-lines.
#include "tests/core/language/EnglishWords.h"

#include <gtest/gtest.h>

namespace {

using namespace raphe;
using test::inWords;
using test::read;

struct Line {
    const char *typed;
    const char *meant;
};

void expectAll(std::initializer_list<Line> lines)
{
    for (const Line &line : lines)
        EXPECT_EQ(inWords(read(line.typed)), line.meant) << line.typed;
}

TEST(ReadLine, TakesSideStructureAndGradeInAnyOrder)
{
    expectAll({{"r ql tender 2", "right quadratus-lumborum tender 2"}, {"QL R TENDER2", "right quadratus-lumborum tender 2"},
        {"tender 2 right ql", "right quadratus-lumborum tender 2"},
        {"ql lt tight++ sore", "left quadratus-lumborum stiff 2 sore"},
        {"ql both t1", "right quadratus-lumborum tender 1; left quadratus-lumborum tender 1"}, {"", ""}, {" , ; ", ""}});
}

TEST(ReadLine, NeverGuessesASide)
{
    expectAll({{"ql t2", "ask side: ql"}, {"r ql t2, psoas t3", "right quadratus-lumborum tender 2; ask side: psoas"},
        {"r left ql t2", "mistake side: r left"}, {"r ql l t2", "mistake side: r ql l"}, {"r sternum t2", "ask side: r sternum"},
        {"piri t2 r ql t1", "ask side: r"},
        {"ql t2 r psoas l t3", "right quadratus-lumborum tender 2; left psoas-major tender 3"},
        {"l4/5 stiff 2", "midline l4-l5 stiff 2"}, {"r l4/5 stiff 2", "right l4-l5 stiff 2"}});
}

TEST(ReadLine, AHeadingGivesSideOrStructure)
{
    expectAll({{"right: psoas t2, sternum t1", "right psoas-major tender 2; midline sternum tender 1"},
        {"right: psoas t2; left: psoas t1", "right psoas-major tender 2; left psoas-major tender 1"},
        {"right: l psoas t2", "mistake side: l"},
        {"si: r stiff 2, l free", "right sacroiliac-joint stiff 2; left sacroiliac-joint free"},
        {"r si: t2, ql t1", "right sacroiliac-joint tender 2; ask side: ql"}});
}

TEST(ReadLine, LaterClausesSpeakOfTheStructureBefore)
{
    expectAll({{"ql r t3 l t2", "right quadratus-lumborum tender 3; left quadratus-lumborum tender 2"},
        {"ql t3 r t2 l", "right quadratus-lumborum tender 3; left quadratus-lumborum tender 2"},
        {"fcu r origin t2, insertion clear",
            "right flexor-carpi-ulnaris origin tender 2; right flexor-carpi-ulnaris insertion not-tender free"},
        {"r si stiff 2, felt after left, sure", "right sacroiliac-joint stiff 2 certain compared"},
        {"r ql t2 stuck 1, l same", "right quadratus-lumborum tender 2 stiff 1; left quadratus-lumborum tender 2 stiff 1"},
        {"l tender 2", "mistake structure: l tender 2"}, {"r levator t2, l clear", "ask structure: levator"},
        {"l ql and psoas t2", "left quadratus-lumborum tender 2; left psoas-major tender 2"},
        {"l2/3 and l3/4 stiff 1", "midline l2-l3 stiff 1; midline l3-l4 stiff 1"}});
}

TEST(ReadLine, AFullStopEndsWhatIsSaidButAShortenedWordGoesOn)
{
    expectAll({{"si right stiff, felt after left. r psoas tender 2",
                   "right sacroiliac-joint stiff compared; right psoas-major tender 2"},
        {"si right stiff, sure. t3 stuck 1", "right sacroiliac-joint stiff certain; midline vertebra-t3 stiff 1"},
        {"psoas t2 right. iliacus clear left.", "right psoas-major tender 2; left iliacus not-tender free"},
        {"r. psoas t2", "right psoas-major tender 2"}, {"r biceps fem. t2", "right biceps-femoris tender 2"},
        {"l psoas could not: too sore. r psoas t3", "left psoas-major unable: too sore; right psoas-major tender 3"}});
}

TEST(ReadLine, AHeadingOfTwoSidesOrTwoJointsSaysNeither)
{
    for (const char *line : {"right glute max left glute med: tender 2", "left glute max and right glute med: tender 2",
             "left right hip: flexion 90", "right psis left psis: tender 2", "left hip and right shoulder: ir 30"}) {
        const LineReading reading = read(line);
        EXPECT_TRUE(reading.findings().empty()) << line << " - " << inWords(reading);
        EXPECT_TRUE(reading.measures().empty()) << line << " - " << inWords(reading);
    }
}

TEST(ReadLine, WhatFollowsSeveralSidesIsAskedAbout)
{
    expectAll({{"glute max r t2 l t3, insertion clear",
                   "right gluteus-maximus tender 2; left gluteus-maximus tender 3; ask side: insertion clear"},
        {"glute max r t2 l t3, familiar", "right gluteus-maximus tender 2; left gluteus-maximus tender 3; ask side: familiar"},
        {"glute max r t2 l t3, l insertion clear",
            "right gluteus-maximus tender 2; left gluteus-maximus tender 3; left gluteus-maximus insertion not-tender free"}});
}

TEST(ReadLine, AMovementByItsWholeNameIsTheJointSpokenOf)
{
    expectAll({{"right shoulder: flexion 120, left hip flexion 100, abduction 40",
                   "right shoulder-flexion 120; left hip-flexion 100; ask side: abduction"},
        {"right knee clear, right hip flexion 100, right extension 5",
            "right knee-joint not-tender free; right hip-flexion 100; right hip-extension 5"}});
}

TEST(ReadLine, TheSameIsAskedAboutWhereItMayNotFit)
{
    expectAll({{"right l4/5 play 2, right glute max same", "right l4-l5 play 2; ask value: right glute max same"},
        {"right glute max origin tender 3, left l4/5 same", "right gluteus-maximus origin tender 3; ask value: left l4/5 same"},
        {"right glute max origin tender 3, left glute max same",
            "right gluteus-maximus origin tender 3; left gluteus-maximus origin tender 3"}});
}

TEST(ReadLine, PainIsInTheUnitOfTheMovementAndWithinItsLimits)
{
    expectAll({{"fingertip to floor 20 cm pain from 15 cm", "midline fingertip-to-floor 200 pain from 150"},
        {"hip ir r 20 pain from 90", "ask value: pain from 90"},
        {"right hip: flexion 90, 80", "right hip-flexion 90; mistake side: 80"},
        {"right glute max clear, familiar", "right gluteus-maximus not-tender free; mistake value: familiar"}});
}

TEST(ReadLine, ABlankAtWhichNoLineBreaksIsABlank)
{
    EXPECT_EQ(inWords(read("right glute\u00a0max tender 2")), "right gluteus-maximus tender 2");
}

TEST(ReadLine, ARangeWithoutAScaleOffersBothEnds)
{
    const LineReading reading = read("glute max right 2-3");
    const auto questions = reading.questions();
    ASSERT_EQ(questions.size(), 1U);
    std::vector<std::string> offered;
    for (const LineChoice &choice : questions.front().choices)
        offered.push_back(choice.insert);
    EXPECT_EQ(offered, (std::vector<std::string>{"tender 2", "tender 3", "stiff 2", "stiff 3"}));
}

TEST(ReadLine, AVertebraAndAGradeAreToldApart)
{
    expectAll({{"t3 stuck 1", "midline vertebra-t3 stiff 1"}, {"r ql t3", "right quadratus-lumborum tender 3"},
        {"l4/5 r t3", "ask scale: t3"}, {"r c5 stiff 2", "ask structure: r c5"}, {"l 5 stiff", "ask structure: l 5"},
        {"l5 stiff 2", "midline vertebra-l5 stiff 2"}, {"t13 stuck 1", "mistake structure: t13"},
        {"c8/9 stuck 1", "mistake structure: c8/9"}, {"t4-6 stiff 1", "ask structure: t4-6"},
        {"l5s1 clear", "midline l5-s1 not-tender free"}, {"r ql r2", "ask scale: r2"}, {"ql r2", "ask side: r2"},
        {"r 5th rib t2", "right rib-5 tender 2"}});
}

TEST(ReadLine, GradesStayOnTheirScales)
{
    expectAll({{"r ql tender 5", "mistake grade: 5"}, {"r ql tender 2.5", "mistake grade: 2.5"},
        {"r ql tender 2-3", "ask grade: 2-3"}, {"r ql stuck -1", "mistake grade: -1"}, {"r ql 3", "ask scale: 3"},
        {"r ql ++", "ask scale: ++"}, {"r si play normal", "right sacroiliac-joint play 3"}, {"r si play 7", "mistake grade: 7"},
        {"r ql play 2", "mistake structure: ql play 2"}, {"l3 play 2", "ask structure: l3"},
        {"r ql tender 2 tender 3", "mistake value: tender 3"}, {"r ql clear tender 2", "mistake value: r ql clear tender 2"},
        {"r ql tender 0 clear", "right quadratus-lumborum tender 0 not-tender free"}});
}

TEST(ReadLine, ReasonsSpotsLandmarksAndReferral)
{
    expectAll({{"l ql could not: r arm in a cast, r clear",
                   "left quadratus-lumborum unable: r arm in a cast; right quadratus-lumborum not-tender free"},
        {"r ql could not", "ask value: could not"}, {"r si origin t2", "ask spot: origin"},
        {"scm r at the mastoid t2", "right sternocleidomastoid insertion at mastoid-process tender 2"},
        {"r deltoid at the sternum t2", "ask spot: sternum"},
        {"piri r t3 refers to l heel", "right piriformis tender 3 to left heel-region"},
        {"piri r t3 refers to heel", "ask side: heel"},
        {"r ql ropy and doughy t2 familiar", "right quadratus-lumborum tender 2 familiar ropy doughy"},
        {"r ql t2 sure", "ask value: sure"}, {"r ql", "ask value: r ql"}});
}

TEST(ReadLine, NamesAreCutShortMisspeltOrAsked)
{
    expectAll({{"ant scal r t2", "right scalenus-anterior tender 2"}, {"iliolumbar l t2", "left iliolumbar-ligament tender 2"},
        {"r hamstrings t2", "ask structure: hamstrings"}, {"r mtp sore", "ask structure: mtp"}, {"r ta t2", "ask structure: ta"},
        {"l pirifromis stuk 2", "left piriformis stiff 2"}, {"rihgt psoas t2", "right psoas-major tender 2"},
        {"r xyzzy t2", "mistake structure: xyzzy"}, {"r ql quux t2", "mistake structure: quux"},
        {"superficial fascia of the inner thigh r stuck 1", "right sf-medial-region-of-thigh stiff 1"}});
}

TEST(ReadLine, MovementsKeepNumberAndSideTogether)
{
    expectAll({{"hip ir r 32 l 45", "right hip-internal-rotation 32; left hip-internal-rotation 45"},
        {"hip ir 32 r 45 l", "right hip-internal-rotation 32; left hip-internal-rotation 45"},
        {"wrist ext r55 l70", "right wrist-extension 55; left wrist-extension 70"},
        {"r knee flex 120, ext -5", "right knee-flexion 120; ask side: ext"},
        {"right knee: flex 120, ext -5", "right knee-flexion 120; right knee-extension -5"},
        {"trunk sb both 20", "right trunk-side-bending 20; left trunk-side-bending 20"},
        {"neck flex 45", "midline neck-flexion 45"}, {"r neck flex 45", "ask side: r"}, {"neck rot 60 75", "ask side: 60 75"},
        {"hip rot r 30", "ask value: hip rot"}, {"er r 40", "ask structure: er"}, {"knee flex r 400", "ask value: 400"},
        {"jaw opening 4 cm", "midline jaw-opening 40"}, {"knee flex r 12 mm", "ask value: mm"}, {"hip ir r", "ask value: hip ir"},
        {"slr r 60 pain from 45 l 80", "right straight-leg-raise 60 pain from 45; left straight-leg-raise 80"},
        {"knee flex r 110 l 125 rec fem r tight 2",
            "right knee-flexion 110; left knee-flexion 125; right rectus-femoris stiff 2"},
        {"ankle df r 5, r psoas t2", "right ankle-dorsiflexion 5; right psoas-major tender 2"}});
}

TEST(ReadLine, AChipKnowsItsStretch)
{
    const auto reading = read("r ql t2, psoas l t3, felt after right");
    const std::string line = "r ql t2, psoas l stiff 1, felt after right";
    const auto chips = read(line).chips;
    ASSERT_EQ(chips.size(), 2U);
    EXPECT_EQ(line.substr(chips[0].begin, chips[0].end - chips[0].begin), "r ql t2");
    EXPECT_EQ(line.substr(chips[1].begin, chips[1].end - chips[1].begin), "psoas l stiff 1, felt after right");
}

TEST(Completions, OfferNamesMovementsAndWords)
{
    const auto &words = test::englishWords();
    const std::string line = "r ql t2, l glute m";
    const auto found = completions(line, line.size(), words);
    ASSERT_FALSE(found.empty());
    for (const LineCompletion &one : found) {
        EXPECT_EQ(line.substr(one.begin, one.end - one.begin), "glute m") << one.insert;
        EXPECT_TRUE(one.insert.starts_with("glute m")) << one.insert;
        ASSERT_TRUE(one.structure);
    }
    const auto offers = [&](const std::string &typed, const std::string &insert) {
        const auto all = completions(typed, typed.size(), words, 20);
        return std::any_of(all.begin(), all.end(), [&](const LineCompletion &c) { return c.insert == insert; });
    };
    EXPECT_TRUE(offers("r ql ten", "tender"));
    EXPECT_TRUE(offers("knee fl", "knee flexion"));
    EXPECT_TRUE(offers("r ql rop", "ropy"));
    EXPECT_FALSE(offers("ql right", "right side")) << "said already";
    EXPECT_TRUE(completions("r ql ", 5, words).empty()) << "nothing is being typed";
    EXPECT_TRUE(completions("", 0, words).empty());
}

} // namespace
