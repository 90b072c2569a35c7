// When a pain drawing may have moved: the threshold follows from the published retest (pain-drawing.json), and the words that go
// with it name what was published.
#include "core/outcome/DrawingOverlap.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <cmath>

namespace raphe::test {

namespace {

TEST(RedrawingError, TheThresholdFollowsFromThePublishedRetest)
{
    const auto json = publishedJson("pain-drawing.json");
    const std::string source = "source: pain-drawing.json, " + json.at("citation")[0].get<std::string>();
    EXPECT_EQ(RedrawingError::mean, json.at("jaccard").at("mean").get<double>()) << source;
    EXPECT_EQ(RedrawingError::standardDeviation, json.at("jaccard").at("standard_deviation").get<double>()) << source;
    EXPECT_EQ(RedrawingError::deviations, json.at("deviations").get<double>()) << source;
    EXPECT_EQ(RedrawingError::leastJaccard, json.at("threshold").get<double>()) << source;
    const double computed = json.at("jaccard").at("mean").get<double>()
        - json.at("deviations").get<double>() * json.at("jaccard").at("standard_deviation").get<double>();
    EXPECT_DOUBLE_EQ(std::round(computed * 100) / 100, RedrawingError::leastJaccard) << source;
    // 1.645: below the mean less so many deviations lies one in twenty of a normal distribution.
    EXPECT_NEAR(std::erfc(RedrawingError::deviations / std::sqrt(2.0)) / 2, 0.05, 0.0001) << source;
}

TEST(RedrawingError, TheWordsNameThePublishedRetest)
{
    const auto json = publishedJson("pain-drawing.json");
    const std::string source = "source: pain-drawing.json, " + json.at("citation")[0].get<std::string>();
    ASSERT_EQ(json.at("retest_minutes").get<int>(), 1) << source;
    for (const double jaccard : {0.1, 0.9}) {
        const std::string words = inWords(DrawingOverlap{{}, {}, jaccard});
        EXPECT_NE(words.find("one-minute retest"), std::string::npos) << source << ": " << words;
        EXPECT_NE(words.find(json.at("jaccard").at("mean").dump()), std::string::npos) << source << ": " << words;
        EXPECT_NE(words.find("low back or neck pain"), std::string::npos) << source << ": " << words;
    }
}

} // namespace

} // namespace raphe::test
