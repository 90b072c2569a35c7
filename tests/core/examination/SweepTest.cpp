// The sweep along an edge: steps of the customary length, what attaches at each, and the findings that the marks make.
#include "core/examination/Sweep.h"
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace raphe {

namespace {

const Place crest{StructureId{"iliac-crest"}, Side::Right};

std::set<std::string> attachedAt(const Sweep &sweep, std::size_t step)
{
    std::set<std::string> out;
    for (const std::size_t s : sweep.steps[step].stretches)
        out.insert(sweep.edge.stretches[s].structure.value);
    return out;
}

TEST(SweepTest, StepsOfAboutTwentyFiveMillimetresByHeight)
{
    for (const double stature : {1500.0, 1700.0, 1950.0}) {
        const auto sweep = sweepOf(test::atlas(), crest, {stature});
        ASSERT_TRUE(sweep);
        for (const SweepStep &step : sweep->steps) {
            EXPECT_NEAR(step.to.value - step.from.value, customaryStep.value, 2) << stature;
            EXPECT_FALSE(step.stretches.empty()) << "something attaches everywhere along the iliac crest";
        }
        EXPECT_DOUBLE_EQ(sweep->steps.back().to.value, sweep->length.value);
    }
    EXPECT_GT(sweepOf(test::atlas(), crest, {1950})->steps.size(), sweepOf(test::atlas(), crest, {1500})->steps.size());
    EXPECT_FALSE(sweepOf(test::atlas(), {StructureId{"gluteus-medius"}, Side::Right}, {1700}));
}

TEST(SweepTest, ASoreStepIsAFindingOfWhatAttachesThereOnThatSide)
{
    const auto sweep = sweepOf(test::atlas(), crest, {1700});
    std::vector<std::optional<int>> marks(sweep->steps.size());
    marks.back() = 3; // at the posterior superior iliac spine
    const auto findings = findingsOf(*sweep, marks);
    std::set<std::string> found;
    for (const Finding &f : findings) {
        EXPECT_EQ(f.place.side, Side::Right);
        EXPECT_EQ(f.tenderness, Tenderness{3});
        EXPECT_EQ(f.at, crest.structure);
        EXPECT_NE(f.note.find("from the anterior superior iliac spine"), std::string::npos) << f.note;
        found.insert(f.place.structure.value);
    }
    EXPECT_EQ(found, attachedAt(*sweep, sweep->steps.size() - 1));
}

TEST(SweepTest, WhatWasFeltHalfIsNotClear)
{
    const auto sweep = sweepOf(test::atlas(), crest, {1700});
    std::vector<std::optional<int>> marks(sweep->steps.size(), 0);
    const auto all = findingsOf(*sweep, marks);
    EXPECT_FALSE(all.empty());
    for (const Finding &f : all)
        EXPECT_TRUE(f.clear.tenderness) << f.place.structure.value;
    marks.front().reset();
    for (const Finding &f : findingsOf(*sweep, marks))
        EXPECT_FALSE(attachedAt(*sweep, 0).contains(f.place.structure.value)) << "its first step was not felt";
}

TEST(SweepTest, NeighbouringSoreStepsAreOneStretchInWords)
{
    const auto sweep = sweepOf(test::atlas(), crest, {1700});
    std::vector<std::optional<int>> marks(sweep->steps.size());
    marks[1] = 1;
    marks[2] = 2;
    marks[5] = 1;
    const std::string words = whereSore(*sweep, marks);
    EXPECT_EQ(std::count(words.begin(), words.end(), ','), 1) << words;
    EXPECT_EQ(whereSore(*sweep, std::vector<std::optional<int>>(sweep->steps.size(), 0)), "");
}

// Every edge of the atlas, on every side, with random marks: findings that a visit can hold; the mirrored sweep has the mirrored
// ones.
TEST(SweepTest, RandomMarksMakeSoundFindingsAndMirror)
{
    std::mt19937 random(3);
    int edges = 0;
    for (const Structure &structure : test::atlas().structures()) {
        if (!structure.border)
            continue;
        for (const Side side : test::atlas().sides(structure)) {
            ++edges;
            const auto sweep = sweepOf(test::atlas(), {structure.id, side}, {1680});
            const auto other = sweepOf(test::atlas(), {structure.id, mirrored(side)}, {1680});
            ASSERT_TRUE(sweep && other) << structure.id;
            for (int round = 0; round < 10; ++round) {
                std::vector<std::optional<int>> marks;
                for (std::size_t i = 0; i < sweep->steps.size(); ++i)
                    marks.push_back(random() % 3 == 0 ? std::nullopt : std::optional(static_cast<int>(random() % 5)));
                Visit visit;
                visit.findings = findingsOf(*sweep, marks);
                const auto again = readVisit(writeVisit(visit), structure.id.value, test::atlas());
                ASSERT_TRUE(again) << test::inWords(again.error());
                EXPECT_EQ(mirrored(visit).findings, findingsOf(*other, marks)) << structure.id;
            }
        }
    }
    EXPECT_GT(edges, 20);
}

} // namespace

} // namespace raphe
