// One truth in every layout that people type it in: the pairs of side and value come back as they were meant, or nothing is
// recorded. And words that could turn a side or a finding round are asked about.
#include "tests/core/language/EnglishWords.h"

#include <gtest/gtest.h>

#include <array>
#include <set>

namespace {

using namespace raphe;
using test::inWords;
using test::read;

using Pairs = std::set<std::pair<Side, int>>;

std::string in(std::string layout, int right, int left)
{
    for (const auto &[sign, value] : {std::pair{"#r", right}, {"#l", left}})
        for (std::size_t at; (at = layout.find(sign)) != std::string::npos;)
            layout.replace(at, 2, std::to_string(value));
    return layout;
}

// What is recorded is part of the truth; how many of the layouts are understood in full is counted.
template <class T, class F> int understood(const std::vector<T> &read, const Pairs &truth, const std::string &line, F pairOf)
{
    Pairs recorded;
    for (const T &one : read)
        recorded.insert(pairOf(one));
    for (const auto &pair : recorded)
        EXPECT_TRUE(truth.contains(pair)) << line << "\n" << inWords(test::read(line));
    return recorded == truth ? 1 : 0;
}

TEST(SidesInLayouts, MeasuredValuesKeepTheirSides)
{
    const std::array layouts{"slr r #r l #l", "slr r: #r l: #l", "slr r: #r, l: #l", "slr: r #r, l #l", "slr: r: #r l: #l",
        "slr r=#r l=#l", "slr #r r #l l", "slr #r r, #l l", "slr l #l r #r", "slr l: #l, r: #r", "slr right #r left #l",
        "slr right: #r; left: #l", "slr #r right, left #l", "slr r #r° l #l°", "slr r #r and l #l", "right: slr #r; left: slr #l",
        "r slr #r, l slr #l", "slr r#r l#l", "slr r #r painful l #l", "slr r #r gonio l #l", "slr r-#r l-#l", "slr r - #r l - #l",
        "slr r #r/l #l"};
    int whole = 0;
    for (const std::string layout : layouts)
        for (const auto &[right, left] : {std::pair{60, 80}, {45, 30}}) {
            const std::string line = in(layout, right, left);
            whole += understood(read(line).measures(), {{Side::Right, right}, {Side::Left, left}}, line,
                [](const Measure &m) { return std::pair(m.side, static_cast<int>(m.value.value_or(-1))); });
        }
    EXPECT_GE(whole, 34) << "of 46: sides that are asked about instead of being read";
}

TEST(SidesInLayouts, GradesKeepTheirSides)
{
    const std::array layouts{"ql r t#r l t#l", "ql t#r r t#l l", "r ql t#r, l ql t#l", "r ql t#r, l t#l", "ql r: t#r l: t#l",
        "ql r: t#r, l: t#l", "ql: r t#r, l t#l", "ql: r: t#r l: t#l", "ql r tender #r, l tender #l",
        "right: ql t#r; left: ql t#l", "ql r tender #r l tender #l", "l ql t#l; r ql t#r", "ql right t#r left t#l",
        "ql r t#r / l t#l", "ql r t#r vs l t#l", "ql r t#r > l t#l", "right: ql t#r\nl ql t#l"};
    int whole = 0;
    for (const std::string layout : layouts)
        for (const auto &[right, left] : {std::pair{1, 3}, {4, 2}}) {
            const std::string line = in(layout, right, left);
            whole += understood(read(line).findings(), {{Side::Right, right}, {Side::Left, left}}, line,
                [](const Finding &f) { return std::pair(f.place.side, f.tenderness ? f.tenderness->grade : -1); });
        }
    EXPECT_GE(whole, 26) << "of 34: sides that are asked about instead of being read";
}

TEST(SidesInLayouts, WordsThatTurnThingsRoundAreAskedAbout)
{
    for (const char *line :
        {"r si stiff other side tender", "r ql not tender/stiff", "r ql not tender and stiff", "r ql no pain/tightness",
            "r ql was tender 3", "ql r>l t2", "ql tender more on left", "r si more stiff", "knee lift tender", "heel lift tender",
            "si loft stiff", "hip ir r 32 painful l 45", "hip ir r 32 active l 45 passive", "knee ext r - 5", "hip er r-30",
            "shoulder abd r painful from 60 to 120", "chest expansion 5", "ftf 10", "r ql tree", "r si core tender"}) {
        const LineReading reading = read(line);
        EXPECT_TRUE(reading.findings().empty() && reading.measures().empty()) << line << "\n" << inWords(reading);
        EXPECT_FALSE(reading.questions().empty() && reading.mistakes().empty()) << line;
    }
}

TEST(SidesInLayouts, WhatComesAfterADoubtDoesNotTouchWhatCameBefore)
{
    for (const auto &[line, meant] : {std::pair{"r si stiff, other side tender", "right sacroiliac-joint stiff"},
             {"r ql stuck 2, other side not tender", "right quadratus-lumborum stiff 2"},
             {"r ql t2, other side same", "right quadratus-lumborum tender 2"},
             {"right: ql t2\npsoas t3", "right quadratus-lumborum tender 2"},
             {"r si: stiff 2, knee flex 110", "right sacroiliac-joint stiff 2"}}) {
        const LineReading reading = read(line);
        LineReading recorded;
        for (const LineChip &chip : reading.chips)
            if (chip.is.index() < 2)
                recorded.chips.push_back(chip);
        EXPECT_EQ(inWords(recorded), meant) << line;
        EXPECT_GT(reading.chips.size(), recorded.chips.size()) << line << ": nothing is asked";
    }
}

TEST(SidesInLayouts, TheSameIsOfTheClauseBeforeOnly)
{
    for (const char *line : {"ql r t3 l t1, psoas r same", "r ql t2, piri t2 r psoas t1, l same", "r ql t2, r psoas l t3, l same",
             "r ql t2 refers to r heel, l same"})
        for (const Finding &finding : read(line).findings())
            EXPECT_FALSE(finding.place.structure.value == "psoas-major" && finding.tenderness == Tenderness{2}) << line;
    EXPECT_EQ(read("r ql t2 refers to r heel, l same").findings().size(), 1U);
}

TEST(SidesInLayouts, ANumberTooLongForAnyScaleIsNoGrade)
{
    const std::string many(400, '9');
    for (const std::string &line : {"r ql tender " + many, "knee flex r " + many, "r ql r" + many, "r ql play " + many}) {
        const LineReading reading = read(line);
        EXPECT_TRUE(reading.findings().empty() && reading.measures().empty()) << inWords(reading);
    }
}

} // namespace
