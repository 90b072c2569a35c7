// A second reading: forty muscles, drawn at random, written down from independent knowledge (reading.json) before anyone
// compared, then compared with the atlas, differences settled (comparison.json). Here: nothing is missing, every difference
// is settled with a reason, and where the nerves agree the roots do meet. The tally is printed.
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <map>
#include <set>

namespace raphe::test {

namespace {

nlohmann::json fileOf(const std::string &name)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/tests/second-reading/" + name);
    return nlohmann::json::parse(in);
}

TEST(SecondReading, FortyMusclesWereReadComparedAndSettled)
{
    const auto reading = fileOf("reading.json").at("muscles");
    const auto comparison = fileOf("comparison.json").at("muscles");
    ASSERT_EQ(reading.size(), 40U);
    ASSERT_EQ(comparison.size(), reading.size());
    std::map<std::string, int> tally;
    std::set<std::string> ids;
    for (std::size_t i = 0; i < reading.size(); ++i) {
        const std::string id = reading[i].at("id");
        ids.insert(id);
        ASSERT_EQ(comparison[i].at("id"), id);
        const Structure *s = atlas().find({id});
        ASSERT_TRUE(s) << id;
        EXPECT_EQ(s->kind, Kind::Muscle) << id;
        for (const char *what : {"origin", "insertion", "nerve", "action"}) {
            EXPECT_FALSE(reading[i].at(what).get<std::string>().empty()) << id << ", " << what;
            const auto &verdict = comparison[i].at(what);
            if (verdict.at("verdict") == "agree") {
                ++tally["agree"];
                continue;
            }
            EXPECT_EQ(verdict.at("verdict"), "differ") << id << ", " << what;
            const std::string settled = verdict.at("settled");
            EXPECT_TRUE(settled == "atlas" || settled == "reading" || settled == "sources differ") << id << ", " << what;
            EXPECT_GT(verdict.at("reason").get<std::string>().size(), 20U) << id << ", " << what;
            ++tally["differ, settled: " + settled];
        }
    }
    EXPECT_EQ(ids.size(), 40U);
    for (const auto &[verdict, count] : tally)
        std::cout << "second reading, " << verdict << ": " << count << '\n';
}

TEST(SecondReading, WhereTheNerveAgreesTheRootsMeet)
{
    const auto reading = fileOf("reading.json").at("muscles");
    const auto comparison = fileOf("comparison.json").at("muscles");
    for (std::size_t i = 0; i < reading.size(); ++i) {
        const Structure &s = atlas().at({reading[i].at("id").get<std::string>()});
        if (comparison[i].at("nerve").at("verdict") != "agree" || s.roots.empty())
            continue;
        const auto theirs = reading[i].at("roots").get<std::set<std::string>>();
        bool meets = false;
        for (const std::string &root : s.roots)
            meets = meets || theirs.contains(root);
        EXPECT_TRUE(meets) << s.id;
    }
}

} // namespace

} // namespace raphe::test
