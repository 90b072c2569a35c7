// Whether care changed anything since it was agreed on: each reading at the edge of its published error, what counts as a visit,
// and when it is to be reviewed.
#include "core/treatment/CareProgress.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/core/treatment/Care.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <cmath>

namespace raphe {

namespace {

using namespace test;

TEST(CareProgress, PainIsBetterOnlyBeyondThePublishedError)
{
    const auto published = publishedJson("scales.json")["pain_rating_error"];
    const std::string source = published["citation"].get<std::string>();
    const int within = static_cast<int>(std::floor(published["least_detectable_change"].get<double>())); // in whole points
    for (int then = 0; then <= 10; ++then)
        for (int now = 0; now <= 10; ++now) {
            const CareProgress care = withPain(then, now).progress();
            ASSERT_EQ(care.readings.size(), 1U);
            EXPECT_EQ(care.isBetter, then - now > within) << then << " to " << now << ": " << source;
            EXPECT_EQ(care.isWorse, now - then > within) << then << " to " << now << ": " << source;
            EXPECT_EQ(care.readings.front().change.beyond == Beyond::Beyond, std::abs(now - then) > within) << source;
        }
    const CareReading reading = withPain(7, 4).progress().readings.front();
    EXPECT_EQ(reading.name, "pain now");
    EXPECT_EQ(reading.before, "7");
    EXPECT_EQ(reading.now, "4");
    EXPECT_EQ(reading.verdict, inWords(changeOf(7, 4, painScale()), painScale()));
    EXPECT_EQ(reading.verdict.rfind("better by 3, beyond the test's error (1.77", 0), 0U) << reading.verdict;
}

TEST(CareProgress, OneActivityChangesByMoreThanThePublishedPoints)
{
    const auto published = publishedJson("scales.json")["activities"];
    const std::string source = published["citation"].get<std::string>();
    const int edge = published["of_one_activity"].get<int>();
    for (int then = 0; then <= Activity::highest; ++then)
        for (int now = 0; now <= Activity::highest; ++now) {
            const CareProgress care = withActivities({{"stairs", then}}, {{"stairs", now}}).progress();
            ASSERT_EQ(care.readings.size(), 1U) << "one activity has no mean";
            EXPECT_EQ(care.isBetter, now - then > edge) << then << " to " << now << ", more is better: " << source;
            EXPECT_EQ(care.isWorse, then - now > edge) << then << " to " << now << ": " << source;
        }
    EXPECT_EQ(withActivities({{"stairs", 2}}, {{"stairs", 5}}).progress().readings.front().verdict,
        "better by 3, within the test's error (3, Stratford 1995)");
    EXPECT_EQ(withActivities({{"stairs", 2}}, {{"stairs", 6}}).progress().readings.front().verdict,
        "better by 4, beyond the test's error (3, Stratford 1995)");
}

// Also where the mean is in thirds, which no binary number holds exactly.
TEST(CareProgress, TheMeanOfSeveralActivitiesChangesByMoreThanItsPublishedPoints)
{
    const auto published = publishedJson("scales.json")["activities"];
    const std::string source = published["citation"].get<std::string>();
    const int edge = published["of_the_mean"].get<int>();
    for (int count = 2; count <= static_cast<int>(Activity::most); ++count)
        for (int sum = 0; sum <= count * (Activity::highest - edge) - 1; ++sum)
            for (const int more : {0, 1}) {
                std::vector<Activity> then;
                std::vector<Activity> now;
                for (int i = 0; i < count; ++i) { // as even as they can be
                    const auto share = [&](int whole) { return whole / count + (i < whole % count ? 1 : 0); };
                    then.push_back({"activity " + std::to_string(i), share(sum)});
                    now.push_back({"activity " + std::to_string(i), share(sum + edge * count + more)});
                }
                const CareReading up = withActivities(then, now).progress().readings.back();
                const CareReading down = withActivities(now, then).progress().readings.back();
                ASSERT_EQ(up.name, "mean of " + std::to_string(count) + " activities");
                EXPECT_EQ(up.change.course, ReadingChange::Course::Better);
                EXPECT_EQ(down.change.course, ReadingChange::Course::Worse);
                EXPECT_EQ(up.change.beyond, more ? Beyond::Beyond : Beyond::Within) << count << ", " << sum << ": " << source;
                EXPECT_EQ(down.change.beyond, up.change.beyond) << count << ", " << sum << ": " << source;
            }
    const CareProgress care =
        withActivities({{"stairs", 2}, {"sleep", 3}, {"garden", 3}}, {{"stairs", 5}, {"sleep", 6}, {"garden", 4}}).progress();
    ASSERT_EQ(care.readings.size(), 4U);
    EXPECT_EQ(care.readings.back().before, "2.67");
    EXPECT_EQ(care.readings.back().now, "5");
    EXPECT_EQ(care.readings.back().verdict, "better by 2.33, beyond the test's error (2, Stratford 1995)");
    EXPECT_TRUE(care.isBetter) << "by the mean alone: " << source;
}

TEST(CareProgress, ActivitiesAreMatchedByTheirNames)
{
    const CareProgress care = withActivities({{"stairs", 2}, {"sleep", 3}, {"garden", {}}, {"", 1}},
        {{"sleep", 9}, {"garden", 4}, {"", 9},
            {"cycling", 8}}).progress();
    ASSERT_EQ(care.readings.size(), 1U) << "no score, no name, or not asked at both";
    EXPECT_EQ(care.readings.front().name, "sleep");
    EXPECT_EQ(care.readings.front().change.by, 6);
    EXPECT_EQ(withActivities({{"sleep", 3}}, {{"sleep", 4}, {"sleep", 5}}).progress().readings.size(), 1U)
        << "one score is no two pairs";
}

// Every published error of every movement: at it is within, a hundredth more is beyond; which way is better, the movement says.
TEST(CareProgress, EachPublishedErrorOfAMovementIsTheEdge)
{
    int edges = 0;
    for (const Movement &movement : examination().movements)
        for (const ReadingError &error : movement.errors) {
            const MoveMode mode = error.mode.value_or(MoveMode::Active);
            double edge = 0;
            for (const ReadingError &other : movement.errors) // the greatest of several holds
                if (other.device == error.device && (!other.mode || other.mode == mode))
                    edge = std::max(edge, other.least());
            const ExamSource *source = examination().findSource(error.source);
            ASSERT_NE(source, nullptr) << error.source;
            const Side side = movement.isPaired ? Side::Left : Side::Midline;
            const auto at = [&](double value) { return readWith(movement.id, side, value, error.device, mode); };
            for (const double past : {0.0, 0.01}) {
                const bool isBeyond = past > 0;
                const CareProgress more = withMeasures(at(0), at(edge + past)).progress();
                const CareProgress less = withMeasures(at(edge + past), at(0)).progress();
                ASSERT_EQ(more.readings.size(), 1U) << movement.id;
                EXPECT_EQ(more.isBetter, isBeyond && !movement.lessIsBetter) << movement.id << ": " << source->citation;
                EXPECT_EQ(more.isWorse, isBeyond && movement.lessIsBetter) << movement.id << ": " << source->citation;
                EXPECT_EQ(less.isBetter, more.isWorse) << movement.id << ": " << source->citation;
                EXPECT_EQ(less.isWorse, more.isBetter) << movement.id << ": " << source->citation;
                ++edges;
            }
        }
    EXPECT_GE(edges, 2 * 30);
}

TEST(CareProgress, MovementsAreComparedOnlyWhenReadAlike)
{
    const Measure before = readWith("shoulder-flexion", Side::Right, 120, Device::Inclinometer);
    const CareProgress care =
        withMeasures(before, readWith("shoulder-flexion", Side::Right, 135, Device::Inclinometer)).progress();
    ASSERT_EQ(care.readings.size(), 1U);
    EXPECT_EQ(care.readings.front().name, "RIGHT shoulder flexion");
    EXPECT_EQ(care.readings.front().before, "120 degrees");
    EXPECT_EQ(care.readings.front().now, "135 degrees");
    EXPECT_EQ(care.readings.front().verdict.rfind("better by 15 degrees, beyond the test's error (8 degrees", 0), 0U)
        << care.readings.front().verdict;
    Measure unmeasured = before;
    unmeasured.value.reset();
    for (const Measure &other : {readWith("shoulder-flexion", Side::Right, 135, Device::Goniometer),
             readWith("shoulder-flexion", Side::Right, 135, Device::Inclinometer, MoveMode::Passive),
             readWith("shoulder-flexion", Side::Left, 135, Device::Inclinometer),
             readWith("shoulder-abduction", Side::Right, 135, Device::Inclinometer), unmeasured}) {
        EXPECT_TRUE(withMeasures(before, other).progress().readings.empty());
        EXPECT_TRUE(withMeasures(other, before).progress().readings.empty());
    }
}

TEST(CareProgress, WithoutAPublishedErrorNothingIsBetterOrWorse)
{
    for (const auto &[then, now] : {std::pair(100.0, 170.0), std::pair(170.0, 100.0)}) {
        Care care = withMeasures(readWith("shoulder-flexion", Side::Right, then, Device::Eye),
            readWith("shoulder-flexion", Side::Right, now, Device::Eye));
        care.between = threeVisits();
        const CareProgress progress = care.progress();
        ASSERT_EQ(progress.readings.size(), 1U);
        EXPECT_NE(progress.readings.front().verdict.find("error unknown"), std::string::npos);
        EXPECT_FALSE(progress.isBetter || progress.isWorse);
        EXPECT_TRUE(progress.isToReview);
    }
}

TEST(CareProgress, WhatWasReadAfterTheTreatmentIsNotCompared)
{
    Care care = withPain(6, 6);
    care.now.retested.pain = PainScore{1};
    care.now.retested.measures = {readWith("shoulder-flexion", Side::Right, 150, Device::Inclinometer)};
    care.then.measures = {readWith("shoulder-flexion", Side::Right, 100, Device::Inclinometer)};
    const CareProgress progress = care.progress();
    EXPECT_EQ(progress.readings.size(), 1U);
    EXPECT_FALSE(progress.isBetter);
}

TEST(CareProgress, OneBetterAndOneWorseAreBothSaid)
{
    Care care = withPain(7, 2);
    care.then.complaints.front().activities = {{"stairs", 8}};
    care.now.complaints.front().activities = {{"stairs", 2}};
    care.between = threeVisits();
    const CareProgress progress = care.progress();
    EXPECT_TRUE(progress.isBetter);
    EXPECT_TRUE(progress.isWorse);
    EXPECT_FALSE(progress.isToReview);
}

TEST(CareProgress, CountsTheVisitsAboutTheComplaintAfterTheAgreement)
{
    Care care;
    EXPECT_EQ(care.progress().visits, 1) << "today's";
    care.between = threeVisits();
    EXPECT_EQ(care.progress().visits, 4);
    care.between.push_back({careVisit("2031-03-09", neck), false});
    EXPECT_EQ(care.progress().visits, 4) << "about another complaint";
    care.between.push_back({careVisit("2031-03-10"), true});
    EXPECT_EQ(care.progress().visits, 4) << "in error";
    care.between.push_back({careVisit("2031-03-30"), false});
    EXPECT_EQ(care.progress().visits, 4) << "after today's";
    care.between.push_back({careVisit("2031-02-28"), false});
    EXPECT_EQ(care.progress().visits, 4) << "before the agreement";
    care.between.push_back({careVisit(thisDay), false});
    EXPECT_EQ(care.progress().visits, 5) << "of the same day";
}

TEST(CareProgress, OnTheDayOfTheAgreementThereIsNothingYet)
{
    Care care = withPain(8, 2);
    care.now.date = agreedOn;
    const CareProgress progress = care.progress();
    EXPECT_EQ(progress.visits, 0);
    EXPECT_TRUE(progress.readings.empty());
    EXPECT_FALSE(progress.isBetter || progress.isWorse || progress.isToReview);
}

TEST(CareProgress, WithoutAPlanThereIsNone)
{
    Care care = withPain(2, 8);
    care.between = threeVisits();
    care.now.closing.plan.reset();
    const CareProgress progress = care.progress();
    EXPECT_EQ(progress.visits, 0);
    EXPECT_TRUE(progress.readings.empty());
    EXPECT_FALSE(progress.isBetter || progress.isWorse || progress.isToReview);
}

TEST(CareProgress, IsReviewedWhenTheVisitsAreOverAndNothingIsBetter)
{
    Care care = withPain(6, 5); // within the error
    care.between = threeVisits();
    EXPECT_TRUE(care.progress().isToReview);
    care.now.closing.plan->visits = 5;
    EXPECT_FALSE(care.progress().isToReview) << "one visit is left";
    care.now.closing.plan->visits = 3;
    EXPECT_TRUE(care.progress().isToReview) << "one too many, and still nobody decided";
    care.now.complaints.front().now = PainScore{4};
    EXPECT_FALSE(care.progress().isToReview) << "better";
    care.now.complaints.front().now = PainScore{9};
    EXPECT_TRUE(care.progress().isToReview) << "worse";
    care.now.closing.review = CareReview{CareDecision::Refer, "no better"};
    EXPECT_FALSE(care.progress().isToReview) << "decided";
}

TEST(CareProgress, WithoutTheVisitOfTheAgreementItIsReviewedWhenDue)
{
    Care care = withPain(8, 2);
    care.between = threeVisits();
    ASSERT_TRUE(care.progress().isBetter);
    const std::vector<EarlierVisit> inError{{care.then, true}};
    const std::vector<EarlierVisit> ofAnother{{careVisit(agreedOn, neck), false}};
    for (const std::vector<EarlierVisit> &first : {std::vector<EarlierVisit>{}, inError, ofAnother}) {
        std::vector<EarlierVisit> earlier = care.between;
        earlier.insert(earlier.end(), first.begin(), first.end());
        const CareProgress progress = careProgress(care.now, earlier, examination());
        EXPECT_EQ(progress.visits, 4);
        EXPECT_TRUE(progress.readings.empty());
        EXPECT_FALSE(progress.isBetter);
        EXPECT_TRUE(progress.isToReview);
        earlier.erase(earlier.begin());
        EXPECT_FALSE(careProgress(care.now, earlier, examination()).isToReview) << "not due";
    }
}

std::string otherSide(const std::string &name)
{
    const std::string right = "RIGHT ";
    const std::string left = "LEFT ";
    if (name.rfind(right, 0) == 0)
        return left + name.substr(right.size());
    return name.rfind(left, 0) == 0 ? right + name.substr(left.size()) : name;
}

// Some movements at random, on one or both sides, mostly with the same device.
std::vector<Measure> randomMeasures(RandomVisits &random)
{
    std::vector<Measure> out;
    for (const Movement &movement : examination().movements)
        for (const Side side : {Side::Right, Side::Left})
            if (random.below(8) == 0) {
                const bool isOther = random.below(5) == 0;
                const Device usual = movement.errors.empty() ? Device::Eye : movement.errors.front().device;
                out.push_back(readWith(movement.id, movement.isPaired ? side : Side::Midline, random.below(60),
                    isOther ? Device::Goniometer : usual));
                if (!movement.isPaired)
                    break;
            }
    return out;
}

TEST(CareProgress, MirroringTheVisitsMirrorsTheReadings)
{
    RandomVisits random(20310329);
    int sided = 0;
    for (int i = 0; i < casesWanted(); ++i) {
        Care care = withPain(random.below(11), random.below(11));
        care.between = threeVisits();
        care.then.measures = randomMeasures(random);
        care.now.measures = randomMeasures(random);
        std::vector<EarlierVisit> mirror = care.earlier();
        for (EarlierVisit &other : mirror)
            other.visit = mirrored(other.visit);
        const CareProgress here = care.progress();
        const CareProgress there = careProgress(mirrored(care.now), mirror, examination());
        EXPECT_EQ(here.visits, there.visits);
        EXPECT_EQ(here.isBetter, there.isBetter);
        EXPECT_EQ(here.isWorse, there.isWorse);
        EXPECT_EQ(here.isToReview, there.isToReview);
        ASSERT_EQ(here.readings.size(), there.readings.size());
        for (std::size_t k = 0; k < here.readings.size(); ++k) {
            const CareReading &reading = here.readings[k];
            EXPECT_EQ(there.readings[k].name, otherSide(reading.name));
            EXPECT_EQ(there.readings[k].before, reading.before);
            EXPECT_EQ(there.readings[k].now, reading.now);
            EXPECT_EQ(there.readings[k].change, reading.change);
            EXPECT_EQ(there.readings[k].verdict, reading.verdict);
            sided += otherSide(reading.name) != reading.name ? 1 : 0;
        }
    }
    EXPECT_GE(sided, casesWanted() / 4) << "sides were there to be swapped";
}

} // namespace

} // namespace raphe
