// The thresholds of the patient's scales are the published ones.
#include "core/outcome/ReadingChange.h"
#include "core/outcome/ScaleChange.h"
#include "core/record/Complaint.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace raphe::test {

TEST(Scales, ThresholdsAreThePublishedOnes)
{
    const auto scales = publishedJson("scales.json");
    const auto source = [&](const char *scale) { return scales[scale]["citation"].get<std::string>(); };
    EXPECT_EQ(painScoreThreshold.least, scales["pain_rating"]["least_important_change"].get<double>()) << source("pain_rating");
    EXPECT_GE(painScoreThreshold.least, scales["pain_rating_error"]["least_detectable_change"].get<double>())
        << "what counts is more than the scale's own error: " << source("pain_rating_error");
    EXPECT_EQ(painScale().error->value, scales["pain_rating_error"]["least_detectable_change"].get<double>())
        << source("pain_rating_error");
    EXPECT_EQ(painScale().important->value, scales["pain_rating"]["least_important_change"].get<double>())
        << source("pain_rating");
    EXPECT_EQ(activitiesThreshold.least, scales["activities"]["of_the_mean"].get<double>()) << source("activities");
    EXPECT_EQ(activityThreshold.least, scales["activities"]["of_one_activity"].get<double>()) << source("activities");
    EXPECT_EQ(Activity::highest, scales["activities"]["highest"].get<int>()) << source("activities");
}

TEST(Scales, AChangeIsSaidWithItsThresholdAndSource)
{
    EXPECT_EQ(changeInWords(5, 2, painScoreThreshold), "less by 3: counts as a change (from 2 points on, Ostelo 2008)");
    EXPECT_EQ(changeInWords(5, 4, painScoreThreshold), "less by 1: does not count as a change (from 2 points on, Ostelo 2008)");
    EXPECT_EQ(
        changeInWords(4, 4, activitiesThreshold), "the same: does not count as a change (from 2 points on, Stratford 1995)");
    EXPECT_TRUE(counts(3.5, 5.5, activitiesThreshold)) << "at the threshold";
    EXPECT_FALSE(counts(3.5, 5.4, activitiesThreshold));
}

} // namespace raphe::test
