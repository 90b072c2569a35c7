// How far two drawings cover each other: against brute force on random pairs, its limits, and the words.
#include "core/outcome/DrawingOverlap.h"

#include "core/anatomy/StrokeRaster.h"
#include "core/record/PainMask.h"
#include "tests/support/BrutePaint.h"
#include "tests/support/Cases.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <iostream>

namespace raphe::test {

namespace {

SurfaceMask block(View view, int from, int to)
{
    SurfaceMask mask;
    for (int y = 300; y < 310; ++y)
        mask.markRun(view, y, from, to);
    return mask;
}

std::optional<double> bruteJaccard(const std::vector<const Picture *> &now, const std::vector<const Picture *> &before)
{
    int nows = 0;
    int befores = 0;
    int shared = 0;
    for (std::size_t view = 0; view < now.size(); ++view)
        for (std::size_t i = 0; i < now[view]->size(); ++i) {
            const bool a = (*now[view])[i];
            const bool b = (*before[view])[i];
            nows += a;
            befores += b;
            shared += a && b;
        }
    if (nows == 0 || befores == 0)
        return std::nullopt;
    return static_cast<double>(shared) / (nows + befores - shared);
}

TEST(DrawingOverlap, AgreesWithBruteForceAndItsMirrorImage)
{
    const SurfaceMask silhouette = silhouetteMask(body());
    const Picture front = bodyPicture(body().of(View::Front));
    const Picture back = bodyPicture(body().of(View::Back));
    RandomDrawings drawings(29);
    int compared = 0;
    int none = 0;
    for (int i = 0; i < casesWanted(); ++i) {
        std::vector<PainPatch> now = drawings.next(3, 5);
        std::vector<PainPatch> before = drawings.next(2, 5);
        if (i % 2 == 0) { // the same again, a little beside
            before = now;
            for (PainPatch &patch : before)
                for (BrushStroke &stroke : patch.strokes)
                    for (Point &p : stroke.points)
                        p.x += drawings.between(-15, 15);
        }
        const Picture nowFront = brutePicture(now, View::Front, front);
        const Picture nowBack = brutePicture(now, View::Back, back);
        const Picture beforeFront = brutePicture(before, View::Front, front);
        const Picture beforeBack = brutePicture(before, View::Back, back);
        const DrawingOverlap overlap = overlapOf(painMask(now, silhouette), painMask(before, silhouette));
        ASSERT_EQ(overlap.front, bruteJaccard({&nowFront}, {&beforeFront})) << i;
        ASSERT_EQ(overlap.back, bruteJaccard({&nowBack}, {&beforeBack})) << i;
        ASSERT_EQ(overlap.both, bruteJaccard({&nowFront, &nowBack}, {&beforeFront, &beforeBack})) << i;
        compared += overlap.both && *overlap.both > 0;
        none += !overlap.both;
        ASSERT_EQ(overlapOf(painMask(before, silhouette), painMask(now, silhouette)), overlap) << "which was first is no matter";

        Visit nowVisit;
        nowVisit.pain = now;
        Visit beforeVisit;
        beforeVisit.pain = before;
        ASSERT_EQ(
            overlapOf(painMask(mirrored(nowVisit).pain, silhouette), painMask(mirrored(beforeVisit).pain, silhouette)), overlap);
    }
    EXPECT_GT(compared, casesWanted() / 4);
    EXPECT_GT(none, 0);
    std::cout << compared << " of " << casesWanted() << " pairs overlap, " << none << " have no number\n";
}

TEST(DrawingOverlap, WorkedOutByHand)
{
    SurfaceMask now = block(View::Front, 0, 9); // 100 cells
    const SurfaceMask before = block(View::Front, 5, 14); // 100, of which 50 are the same
    EXPECT_EQ(overlapOf(now, before).front, 50.0 / 150);
    EXPECT_EQ(overlapOf(now, before).both, 50.0 / 150);
    EXPECT_FALSE(overlapOf(now, before).back);
    for (int y = 300; y < 310; ++y)
        now.markRun(View::Back, y, 0, 9);
    EXPECT_EQ(overlapOf(now, before).both, 50.0 / 250) << "the back counts where one of them shows it";
    EXPECT_FALSE(overlapOf(now, before).back);
    EXPECT_EQ(overlapOf(now, now).both, 1.0);
    EXPECT_EQ(overlapOf(block(View::Front, 0, 9), block(View::Back, 0, 9)).both, 0.0) << "front and back are not the same place";
}

TEST(DrawingOverlap, AnEmptyDrawingHasNoNumber)
{
    const SurfaceMask drawn = block(View::Back, 0, 9);
    const SurfaceMask empty;
    for (const auto &[now, before] : {std::pair(drawn, empty), std::pair(empty, drawn), std::pair(empty, empty)}) {
        const DrawingOverlap overlap = overlapOf(now, before);
        EXPECT_EQ(overlap, DrawingOverlap{});
        EXPECT_FALSE(overlap.verdict());
        EXPECT_NE(inWords(overlap).find("Nothing to compare"), std::string::npos);
        EXPECT_EQ(inWords(overlap).find_first_of("0123456789"), std::string::npos) << "no number: " << inWords(overlap);
    }
}

TEST(DrawingOverlap, TheVerdictTurnsAtTheThreshold)
{
    const auto verdictAt = [](double jaccard) { return DrawingOverlap{{}, {}, jaccard}.verdict(); };
    EXPECT_EQ(verdictAt(0), OverlapVerdict::MayHaveMoved);
    EXPECT_EQ(verdictAt(0.3199), OverlapVerdict::MayHaveMoved);
    EXPECT_EQ(verdictAt(0.32), OverlapVerdict::WithinRedrawingError);
    EXPECT_EQ(verdictAt(1), OverlapVerdict::WithinRedrawingError);
}

TEST(DrawingOverlap, TheWordsSayWhatItRestsOn)
{
    for (const double jaccard : {0.0, 0.31, 0.3199, 0.32, 0.9}) {
        const std::string words = inWords(DrawingOverlap{{}, {}, jaccard});
        EXPECT_EQ(words.find("may have moved") != std::string::npos, jaccard < 0.32) << words;
        EXPECT_EQ(words.find("ithin redrawing error") != std::string::npos, jaccard >= 0.32) << words;
        EXPECT_NE(words.find("one-minute retest"), std::string::npos) << words;
        EXPECT_NE(words.find("0.62"), std::string::npos) << words;
        EXPECT_NE(words.find("0.18"), std::string::npos) << words;
        EXPECT_EQ(words.find("by 0.32, less"), std::string::npos) << "never rounded up to the threshold: " << words;
        EXPECT_EQ(words.find('%'), std::string::npos) << words;
    }
}

} // namespace

} // namespace raphe::test
