// What ties muscles that work with and against each other, and a tissue to that of the other side.
#include "tests/support/Content.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

// Weight of the link of this kind between two places, 0 where there is none.
double weightOf(LinkKind kind, const Place &a, const Place &b)
{
    const std::size_t from = linkage().nodesOf(a).front();
    const std::size_t to = linkage().nodesOf(b).front();
    double weight = 0;
    for (const std::size_t index : linkage().linksAt(from)) {
        const Link &link = linkage().links()[index];
        if (link.kind == kind && link.other(from) == to)
            weight += link.weight;
    }
    return weight;
}

double onTheRight(LinkKind kind, const char *a, const char *b)
{
    return weightOf(kind, {{a}, Side::Right}, {{b}, Side::Right});
}

TEST(Linkage, MusclesOfOppositeWorkAtAJointAreTiedOnTheirOwnSide)
{
    EXPECT_GT(onTheRight(LinkKind::Opposes, "tibialis-anterior", "soleus"), 0) << "they move the foot up and down";
    EXPECT_EQ(onTheRight(LinkKind::Opposes, "tibialis-anterior", "extensor-hallucis-longus"), 0) << "they work together";
    EXPECT_EQ(weightOf(LinkKind::Opposes, {{"tibialis-anterior"}, Side::Right}, {{"soleus"}, Side::Left}), 0);
}

TEST(Linkage, MusclesOfOneWorkBetweenTheSameBonesArePartners)
{
    const double partner = onTheRight(LinkKind::Synergist, "adductor-longus", "adductor-brevis"); // pubis to femur, both
    const double helper = onTheRight(LinkKind::Synergist, "adductor-longus", "gracilis"); // pubis to tibia
    EXPECT_GT(helper, 0);
    EXPECT_NEAR(partner, helper * constants()["synergist-together"], 1e-12) << "the same two works at the hip";
}

TEST(Linkage, TheOtherSideIsTiedWhereBothMeetABoneOfTheMidline)
{
    const auto across = [](const char *id) { return weightOf(LinkKind::OtherSide, {{id}, Side::Left}, {{id}, Side::Right}); };
    EXPECT_GT(across("masseter"), 0) << "both on the mandible";
    EXPECT_GT(across("temporomandibular-joint"), 0);
    EXPECT_GT(across("sacroiliac-joint"), 0);
    EXPECT_EQ(across("vastus-lateralis"), 0);
    EXPECT_EQ(across("knee-joint"), 0);
}

} // namespace

} // namespace raphe::test
