// Every attempt of tests/misuse/attempts.json has a test of its name, or a reason in not-met.json why it has none.
#include "tests/app/Misuse.h"
#include "tests/support/Published.h"

#include <nlohmann/json.hpp>

#include <set>

namespace raphe::test {

namespace {

// The ids of the tests of this suite: Mis07... is mis-07.
std::set<std::string> tested()
{
    std::set<std::string> ids;
    const auto *all = testing::UnitTest::GetInstance();
    for (int s = 0; s < all->total_test_suite_count(); ++s) {
        const auto *suite = all->GetTestSuite(s);
        if (std::string(suite->name()) != "Misuse")
            continue;
        for (int t = 0; t < suite->total_test_count(); ++t)
            ids.insert("mis-" + std::string(suite->GetTestInfo(t)->name()).substr(3, 2));
    }
    return ids;
}

} // namespace

TEST(MisuseList, EveryAttemptIsTestedOrSaidToBeNotMet)
{
    std::set<std::string> attempts;
    const auto written = nlohmann::json::parse(sourceText("tests/misuse/attempts.json"));
    for (const auto &attempt : written.at("attempts"))
        attempts.insert(attempt.at("id").get<std::string>());
    std::set<std::string> notMet;
    const auto listed = nlohmann::json::parse(sourceText("tests/misuse/not-met.json"));
    for (const auto &one : listed.at("notMet")) {
        notMet.insert(one.at("id").get<std::string>());
        EXPECT_GT(one.at("why").get<std::string>().size(), 20U);
    }
    const auto met = tested();
    EXPECT_EQ(attempts.size(), 50U);
    for (const std::string &id : attempts)
        EXPECT_NE(met.contains(id), notMet.contains(id)) << id << ": one of the two, and not both";
    for (const std::string &id : met)
        EXPECT_TRUE(attempts.contains(id)) << id;
    EXPECT_EQ(met.size() + notMet.size(), attempts.size());
    std::cout << met.size() << " of " << attempts.size() << " are met\n";
    EXPECT_GE(met.size(), 37U) << "as many as when this was written";
}

} // namespace raphe::test
