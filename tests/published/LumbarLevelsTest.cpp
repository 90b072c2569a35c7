// Psoas major, multifidus and quadratus lumborum level by level, and the spinal segments that their fascicles cross.
#include "tests/published/Crossed.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

using Names = std::set<std::string>;

const nlohmann::json &levelsOf(const std::string &muscle)
{
    static const nlohmann::json json = publishedJson("lumbar-levels.json");
    for (const auto &entry : json.at("muscles"))
        if (entry.at("muscle") == muscle)
            return entry;
    throw std::runtime_error("lumbar-levels.json has no " + muscle);
}

std::string sourceOfMuscle(const std::string &muscle)
{
    return "source: lumbar-levels.json, " + muscle + ", " + levelsOf(muscle).at("how_sure").get<std::string>();
}

bool has(const std::vector<StructureId> &ends, const std::string &id)
{
    return std::find(ends.begin(), ends.end(), StructureId{id}) != ends.end();
}

/// Whether one head of the muscle joins the two ends, whichever is called the origin.
bool joins(const std::string &muscle, const std::string &one, const std::string &other)
{
    for (const Attachment &head : atlas().at({muscle}).attachments)
        if ((has(head.origins, one) && has(head.insertions, other)) || (has(head.origins, other) && has(head.insertions, one)))
            return true;
    return false;
}

class LumbarSegments : public testing::TestWithParam<std::string> { };

TEST_P(LumbarSegments, CrossedAreExactlyThePublishedOnes)
{
    const std::string &muscle = GetParam();
    Names ours;
    for (const std::string &joint : jointsCrossedBy(atlas(), muscle))
        if (atlas().isSpinalSegment({joint}) && joint != "sacrococcygeal-joint")
            ours.insert(joint);
    EXPECT_EQ(ours, levelsOf(muscle).at("segments_crossed").get<Names>()) << sourceOfMuscle(muscle);
}

INSTANTIATE_TEST_SUITE_P(
    Published, LumbarSegments, testing::Values("psoas-major", "multifidus", "quadratus-lumborum"), [](const auto &each) {
        std::string name;
        for (const char c : each.param)
            if (c != '-')
                name += c;
        return name;
    });

TEST(LumbarLevels, PsoasMajorRunsFromEveryPublishedLevelToTheLesserTrochanter)
{
    const auto &levels = levelsOf("psoas-major");
    for (const auto &upper : levels.at("upper_landmarks"))
        for (const auto &lower : levels.at("lower_landmarks")) {
            EXPECT_TRUE(joins("psoas-major", upper, lower)) << upper << " to " << lower << "; " << sourceOfMuscle("psoas-major");
        }
    for (const Attachment &head : atlas().at({"psoas-major"}).attachments)
        for (const StructureId &origin : head.origins) {
            EXPECT_TRUE(levels.at("upper_landmarks").get<Names>().contains(origin.value))
                << origin << "; " << sourceOfMuscle("psoas-major");
        }
}

TEST(LumbarLevels, MultifidusFasciclesJoinThePublishedVertebrae)
{
    const auto &levels = levelsOf("multifidus");
    Names ours;
    for (int upper = 1; upper <= 5; ++upper)
        for (int lower = upper; lower <= 5; ++lower)
            if (joins("multifidus", "spinous-process-l" + std::to_string(upper), "mammillary-process-l" + std::to_string(lower)))
                ours.insert("l" + std::to_string(upper) + " to l" + std::to_string(lower));
    Names theirs;
    for (const auto &pair : levels.at("mammillary_pairs"))
        theirs.insert(pair[0].get<std::string>() + " to " + pair[1].get<std::string>());
    EXPECT_EQ(ours, theirs) << sourceOfMuscle("multifidus");
}

TEST(LumbarLevels, MultifidusReachesTheSacrumFromEveryVertebraAndTheIliumFromTheUpperThree)
{
    const auto ilium = levelsOf("multifidus").at("reach_posterior_superior_iliac_spine").get<Names>();
    for (int level = 1; level <= 5; ++level) {
        const std::string name = "l" + std::to_string(level);
        EXPECT_TRUE(joins("multifidus", "spinous-process-" + name, "dorsal-surface-of-sacrum"))
            << name << "; " << sourceOfMuscle("multifidus");
        EXPECT_EQ(joins("multifidus", "spinous-process-" + name, "posterior-superior-iliac-spine"), ilium.contains(name))
            << name << "; " << sourceOfMuscle("multifidus");
    }
}

TEST(LumbarLevels, QuadratusLumborumHasItsThreeSetsOfFibres)
{
    const auto &levels = levelsOf("quadratus-lumborum");
    const std::string rib = levels.at("rib");
    EXPECT_TRUE(joins("quadratus-lumborum", "iliac-crest", rib)) << "iliocostal; " << sourceOfMuscle("quadratus-lumborum");
    EXPECT_TRUE(joins("quadratus-lumborum", "iliolumbar-ligament", rib))
        << "iliocostal; " << sourceOfMuscle("quadratus-lumborum");
    for (const auto &process : levels.at("transverse_processes")) {
        EXPECT_TRUE(joins("quadratus-lumborum", "iliac-crest", process))
            << "iliotransverse " << process << "; " << sourceOfMuscle("quadratus-lumborum");
    }
    for (const auto &process : levels.at("costotransverse_processes")) {
        EXPECT_TRUE(joins("quadratus-lumborum", process, rib))
            << "costotransverse " << process << "; source: " << levels.at("costotransverse_processes_how");
    }
    for (const Attachment &head : atlas().at({"quadratus-lumborum"}).attachments)
        EXPECT_FALSE(has(head.origins, "rib-1") || has(head.insertions, "rib-1")) << levels.at("trap");
}

TEST(LumbarLevels, QuadratusLumborumHasThePublishedRoots)
{
    const auto &roots = atlas().at({"quadratus-lumborum"}).roots;
    EXPECT_EQ(Names(roots.begin(), roots.end()), levelsOf("quadratus-lumborum").at("roots").get<Names>())
        << sourceOfMuscle("quadratus-lumborum");
}

} // namespace

} // namespace raphe::test
