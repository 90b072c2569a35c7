// How much the atlas holds. The floors are the project's own aim for the whole body (no outside source).
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <iostream>
#include <map>

namespace raphe::test {

namespace {

TEST(Counts, ReachTheAimOfTheWholeBody)
{
    std::map<Kind, int> counts;
    for (const Structure &s : atlas().structures())
        ++counts[s.kind];
    for (const auto &[kind, count] : counts)
        std::cout << "  " << wordOf(kindWords, kind) << ": " << count << '\n';
    std::cout << "  joints with two bones: " << atlas().joints().size() << "\n  crossings: " << atlas().crossings().size()
              << "\n  continuities: " << atlas().continuities().size() << "\n  sources: " << atlas().sources().size() << '\n';
    const std::string source = "source: aim of the project for the whole body";
    EXPECT_GE(counts[Kind::Muscle], 150) << source;
    EXPECT_GE(atlas().joints().size(), 75U) << source;
    EXPECT_GE(counts[Kind::Bone], 60) << source;
    EXPECT_GE(counts[Kind::Landmark], 120) << source;
    EXPECT_GE(counts[Kind::Fascia] + counts[Kind::Ligament] + counts[Kind::Tendon], 60) << source;
    EXPECT_GE(counts[Kind::SurfaceRegion], 75) << source;
    EXPECT_GE(atlas().continuities().size(), 90U) << source;
}

TEST(Counts, LandmarksAreOnBones)
{
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Landmark) {
            EXPECT_EQ(atlas().bonesOf(s.id).size(), 1U) << s.id;
        }
}

} // namespace

} // namespace raphe::test
