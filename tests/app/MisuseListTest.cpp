// Every attempt of tests/misuse/attempts.json has a test of its name.
#include "tests/app/Misuse.h"
#include "tests/support/Published.h"

#include <nlohmann/json.hpp>

#include <set>

namespace raphe::test {

namespace {

// The ids of the tests of these suites: Mis07... is mis-07.
std::set<std::string> tested()
{
    std::set<std::string> ids;
    const auto *all = testing::UnitTest::GetInstance();
    for (int s = 0; s < all->total_test_suite_count(); ++s) {
        const auto *suite = all->GetTestSuite(s);
        if (std::string(suite->name()) != "Misuse" && std::string(suite->name()) != "MisusePatient")
            continue;
        for (int t = 0; t < suite->total_test_count(); ++t)
            ids.insert("mis-" + std::string(suite->GetTestInfo(t)->name()).substr(3, 2));
    }
    return ids;
}

} // namespace

TEST(MisuseList, EveryAttemptIsTested)
{
    std::set<std::string> attempts;
    const auto written = nlohmann::json::parse(sourceText("tests/misuse/attempts.json"));
    for (const auto &attempt : written.at("attempts"))
        attempts.insert(attempt.at("id").get<std::string>());
    EXPECT_EQ(attempts.size(), 50U);
    EXPECT_EQ(tested(), attempts);
}

} // namespace raphe::test
