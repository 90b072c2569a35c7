// Key muscles and key points of the skin of spinal roots (nerve-levels.csv): the muscles that do the named movement, and the
// regions in which the point lies, carry the named root.
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace raphe::test {

namespace {

// Which of our muscles each wording of the table means; from memory of the standards.
const std::map<std::string, std::vector<std::string>> &meant()
{
    static const std::map<std::string, std::vector<std::string>> muscles{
        {"C5", {"biceps-brachii-long-head", "biceps-brachii-short-head", "brachialis"}},
        {"C6", {"extensor-carpi-radialis-longus", "extensor-carpi-radialis-brevis"}},
        {"C7", {"triceps-brachii-long-head", "triceps-brachii-lateral-head", "triceps-brachii-medial-head"}},
        {"C8", {"flexor-digitorum-profundus"}},
        {"T1", {"dorsal-interossei-of-hand", "palmar-interossei", "abductor-digiti-minimi-of-hand"}},
        {"L2", {"psoas-major", "iliacus"}},
        {"L3", {"rectus-femoris", "vastus-lateralis", "vastus-medialis", "vastus-intermedius"}}, {"L4", {"tibialis-anterior"}},
        {"L5", {"extensor-hallucis-longus"}}, {"S1", {"gastrocnemius-medial-head", "gastrocnemius-lateral-head", "soleus"}}};
    return muscles;
}

// The same for the key points; T4 and T10 by the row's note, S4 and S5 as 'S4_5'.
const std::map<std::string, std::vector<std::pair<std::string, std::string>>> &points()
{
    static const std::map<std::string, std::vector<std::pair<std::string, std::string>>> regions{
        {"C2", {{"C2", "occipital-region"}}}, {"C3", {{"C3", "lateral-cervical-region"}, {"C3", "clavicular-region"}}},
        {"C4", {{"C4", "suprascapular-region"}}}, {"C5", {{"C5", "deltoid-region"}, {"C5", "anterior-region-of-elbow"}}},
        {"C6", {{"C6", "thumb"}, {"C6", "anterior-region-of-forearm-radial"}}}, {"C7", {{"C7", "middle-finger"}}},
        {"C8", {{"C8", "little-finger"}, {"C8", "anterior-region-of-forearm-ulnar"}}},
        {"T1", {{"T1", "anterior-region-of-elbow"}, {"T1", "anterior-region-of-arm"}}},
        {"T2-T12", {{"T4", "pectoral-region"}, {"T10", "umbilical-region"}}},
        {"L1", {{"L1", "inguinal-region"}, {"L1", "femoral-triangle"}}}, {"L2", {{"L2", "anterior-region-of-thigh"}}},
        {"L3", {{"L3", "medial-region-of-knee"}}}, {"L4", {{"L4", "medial-malleolar-region"}, {"L4", "medial-region-of-leg"}}},
        {"L5", {{"L5", "dorsum-of-foot"}}}, {"S1", {{"S1", "heel-region"}, {"S1", "lateral-border-of-foot"}}},
        {"S2", {{"S2", "posterior-region-of-knee"}}}, {"S3", {{"S3", "gluteal-region-inferior"}}},
        {"S4_5", {{"S4", "coccygeal-region"}, {"S5", "coccygeal-region"}}}};
    return regions;
}

std::vector<std::map<std::string, std::string>> rowsOf(const Table &table, const std::string &kind)
{
    std::vector<std::map<std::string, std::string>> out;
    for (const auto &row : table.rows)
        if (row.at("kind") == kind)
            out.emplace_back(row.begin(), row.end());
    return out;
}

TEST(NerveLevels, KeyPointsLieInRegionsThatCarryTheirRoot)
{
    const Table table = publishedTable("nerve-levels.csv");
    const auto rows = rowsOf(table, "sensory");
    EXPECT_EQ(rows.size(), points().size()) << "source:" << table.source;
    for (const auto &row : rows) {
        ASSERT_TRUE(points().contains(row.at("level"))) << row.at("level");
        for (const auto &[root, region] : points().at(row.at("level"))) {
            const Structure *s = atlas().find({region});
            ASSERT_TRUE(s) << region;
            EXPECT_NE(std::find(s->roots.begin(), s->roots.end(), root), s->roots.end())
                << region << " should carry " << root << " (" << row.at("key_muscle_or_dermatome")
                << "); source:" << table.source;
        }
    }
}

TEST(NerveLevels, KeyMusclesCarryTheirRoot)
{
    const Table table = publishedTable("nerve-levels.csv");
    const auto rows = rowsOf(table, "motor");
    EXPECT_EQ(rows.size(), meant().size()) << "source:" << table.source;
    for (const auto &row : rows) {
        const std::string &root = row.at("level");
        ASSERT_TRUE(meant().contains(root)) << root;
        for (const std::string &muscle : meant().at(root)) {
            const Structure *s = atlas().find({muscle});
            ASSERT_TRUE(s) << muscle;
            EXPECT_NE(std::find(s->roots.begin(), s->roots.end(), root), s->roots.end())
                << muscle << " should carry " << root << " (" << row.at("key_muscle_or_dermatome")
                << "); source:" << table.source;
        }
    }
}

} // namespace

} // namespace raphe::test
