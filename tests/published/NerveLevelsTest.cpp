// Key muscles of spinal roots (nerve-levels.csv): the muscles that do the named movement carry the named root.
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

TEST(NerveLevels, KeyMusclesCarryTheirRoot)
{
    const Table table = publishedTable("nerve-levels.csv");
    EXPECT_EQ(table.rows.size(), meant().size()) << "source:" << table.source;
    for (const auto &row : table.rows) {
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
