// How much the atlas holds. The floors are the project's own aim for its first region (no outside source).
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <iostream>
#include <map>

namespace raphe::test {

namespace {

TEST(Counts, ReachTheAimOfTheFirstRegion)
{
    std::map<Kind, int> counts;
    for (const Structure &s : atlas().structures())
        ++counts[s.kind];
    for (const auto &[kind, count] : counts)
        std::cout << "  " << wordOf(kindWords, kind) << ": " << count << '\n';
    std::cout << "  joints with two bones: " << atlas().joints().size() << "\n  crossings: " << atlas().crossings().size()
              << "\n  continuities: " << atlas().continuities().size() << "\n  sources: " << atlas().sources().size() << '\n';
    const std::string source =
        "source: aim of the project for lumbar spine, pelvis, hip, thigh, abdomen, back and shoulder girdle";
    EXPECT_GE(counts[Kind::Muscle], 50) << source;
    EXPECT_GE(counts[Kind::Fascia] + counts[Kind::Ligament], 12) << source;
    EXPECT_GE(atlas().joints().size(), 25U) << source;
    EXPECT_GE(counts[Kind::Landmark], 45) << source;
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
