// What the program says of examination tests and movements, against what was published: tables of two by two, ranges of movement,
// errors of measuring. Each failure names its source.
#include "core/examination/ClusterCount.h"
#include "core/examination/Diagnostics.h"
#include "tests/core/examination/Exam.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace raphe::test {

namespace {

using nlohmann::json;

TwoByTwo tableOf(const json &row)
{
    return {row["tp"].get<int>(), row["fn"].get<int>(), row["fp"].get<int>(), row["tn"].get<int>()};
}

// As printed: rounded to so many decimals.
void expectPrinted(double ours, double printed, int decimals, const std::string &what)
{
    EXPECT_NEAR(ours, printed, 0.5 * std::pow(10, -decimals) + 1e-9) << what;
}

TEST(ExaminationTest, TablesGiveThePublishedFigures)
{
    const json published = publishedJson("examination.json");
    for (const json &row : published["tables"]) {
        const std::string about = row["citation"].get<std::string>() + " (" + row["sure"].get<std::string>() + ")";
        const TwoByTwo t = tableOf(row);
        EXPECT_EQ(t.truePositives + t.falseNegatives + t.falsePositives + t.trueNegatives, row["patients"].get<int>()) << about;
        expectPrinted(sensitivity(t).value(), row["sensitivity"], 3, about + ": sensitivity");
        expectPrinted(specificity(t).value(), row["specificity"], 3, about + ": specificity");
        expectPrinted(positiveRatio(t)->value, row["positive_ratio"], 2, about + ": positive ratio");
        expectPrinted(negativeRatio(t)->value, row["negative_ratio"], 3, about + ": negative ratio");
        expectPrinted(positiveValue(t)->value(), row["positive_value"], 3, about + ": positive value");
        expectPrinted(negativeValue(t)->value(), row["negative_value"], 3, about + ": negative value");
        if (row.contains("ratio_low")) {
            expectPrinted(positiveRatio(t)->interval.low, row["ratio_low"], 2, about + ": interval of the positive ratio");
            expectPrinted(positiveRatio(t)->interval.high, row["ratio_high"], 2, about + ": interval of the positive ratio");
        }
    }
}

TEST(ExaminationTest, TheClustersCarryThosePublishedTablesAndNoOther)
{
    const json tables = publishedJson("examination.json")["tables"];
    std::size_t found = 0;
    for (const Cluster &cluster : examination().clusters)
        for (const Accuracy &study : cluster.studies) {
            const auto it = std::find_if(tables.begin(), tables.end(), [&](const json &row) {
                return row["cluster"].get<std::string>() == cluster.id && row["source"].get<std::string>() == study.source
                    && tableOf(row) == *study.table;
            });
            EXPECT_NE(it, tables.end()) << cluster.id << ", " << study.source;
            found += it != tables.end() ? 1 : 0;
        }
    EXPECT_EQ(found, tables.size());
}

TEST(ExaminationTest, TheLineOfTheSetOfSixIsThatOfItsStudy)
{
    const auto &clusters = examination().clusters;
    const auto cluster =
        std::find_if(clusters.begin(), clusters.end(), [](const Cluster &c) { return c.id == "sacroiliac-of-six"; });
    ASSERT_NE(cluster, clusters.end());
    const auto line = [&](TestPain pain) {
        std::vector<TestResult> results;
        const auto add = [&](const char *test, Side side, bool hurts) {
            TestResult r;
            r.test = test;
            r.side = side;
            r.pain = hurts ? pain : TestPain::None;
            results.push_back(r);
        };
        add("distraction", Side::Midline, true);
        add("compression", Side::Midline, false);
        add("sacral-thrust", Side::Midline, false);
        for (const Side side : {Side::Right, Side::Left}) {
            add("thigh-thrust", side, side == Side::Right);
            add("gaenslen", side, side == Side::Right);
        }
        return inWords(countOf(*cluster, results));
    };
    const std::string about = "Laslett 2005, Man Ther 10:207-18: 15 of 22 with three or more, 1 of 26 with fewer: ";
    EXPECT_EQ(line(TestPain::Familiar),
        "sacroiliac tests, set of six: 3 of 6 reproduced the familiar pain; in one specialist sample 15 of 22 such patients, "
        "with 3 or more, responded to an anaesthetic injection into the joint")
        << about;
    EXPECT_EQ(line(TestPain::Other),
        "sacroiliac tests, set of six: 0 of 6 reproduced the familiar pain; in one specialist sample 1 of 26 such patients, "
        "with fewer than 3, responded to an anaesthetic injection into the joint")
        << about;
}

// "hip flexion" of the table is "hip-flexion" here.
std::string idOf(std::string motion)
{
    if (motion.rfind("elbow pro", 0) == 0 || motion.rfind("elbow sup", 0) == 0)
        motion.replace(0, 5, "forearm");
    if (motion == "ankle plantar flexion")
        return "ankle-plantarflexion";
    std::replace(motion.begin(), motion.end(), ' ', '-');
    return motion;
}

TEST(ExaminationTest, RangesOfMovementAreThoseOfTheTableAndSayHowTheyWereRead)
{
    const Table table = publishedTable("range-of-motion.csv");
    int compared = 0;
    for (const auto &row : table.rows) {
        const Movement *movement = examination().findMovement(idOf(row.at("motion")));
        ASSERT_NE(movement, nullptr) << row.at("motion");
        const auto ages = splitList(row.at("age_years"), '-');
        for (const auto &[sex, column] : {std::pair{Sex::Female, "female_mean_deg"}, {Sex::Male, "male_mean_deg"}}) {
            const std::string about = table.source + ": " + row.at("age_years") + ", " + row.at("motion") + ", " + column;
            const auto norm = std::find_if(movement->norms.begin(), movement->norms.end(), [&, s = sex](const Norm &n) {
                return n.source == "soucie-2011" && n.sex == s && n.from == std::stoi(ages.at(0))
                    && n.to == std::stoi(ages.at(1));
            });
            ASSERT_NE(norm, movement->norms.end()) << about;
            EXPECT_DOUBLE_EQ(norm->mean, std::stod(row.at(column))) << about;
            EXPECT_EQ(norm->mode, MoveMode::Passive) << about;
            EXPECT_EQ(norm->device, Device::Goniometer) << about;
            EXPECT_EQ(norm->read, row.at("source_key") == "A" ? Reading::Page : Reading::Memory) << about;
            EXPECT_FALSE(norm->sd) << about << ": the table gives none, so no z-score may follow";
            ++compared;
        }
    }
    EXPECT_EQ(compared, 48) << table.source;
    int shipped = 0;
    for (const Movement &m : examination().movements)
        shipped += static_cast<int>(
            std::count_if(m.norms.begin(), m.norms.end(), [](const Norm &n) { return n.source == "soucie-2011"; }));
    EXPECT_EQ(shipped, compared) << "no figure of that source that is not in the table";
}

TEST(ExaminationTest, MeansWithAnSdGiveTheZScore)
{
    const json published = publishedJson("examination.json");
    for (const json &block : published["means_with_sd"])
        for (const auto &[id, row] : block["rows"].items()) {
            const std::string about = block["citation"].get<std::string>() + ": " + id;
            const Movement *movement = examination().findMovement(id);
            ASSERT_NE(movement, nullptr) << about;
            const auto norm = std::find_if(movement->norms.begin(), movement->norms.end(),
                [&](const Norm &n) { return n.source == block["source"].get<std::string>(); });
            ASSERT_NE(norm, movement->norms.end()) << about;
            EXPECT_DOUBLE_EQ(norm->mean, row[0].get<double>()) << about;
            EXPECT_DOUBLE_EQ(norm->sd.value_or(0), row[1].get<double>()) << about;
            EXPECT_EQ(norm->read, Reading::Memory) << about;
            EXPECT_EQ(norm->sex, Sex::Male) << about;
        }
}

TEST(ExaminationTest, ErrorsOfMeasuringAreThePublishedOnes)
{
    const json published = publishedJson("examination.json");
    for (const json &row : published["errors"]) {
        const std::string about = row["citation"].get<std::string>() + ", " + row["movement"].get<std::string>();
        const Movement *movement = examination().findMovement(row["movement"].get<std::string>());
        ASSERT_NE(movement, nullptr) << about;
        const bool isThere = std::any_of(movement->errors.begin(), movement->errors.end(), [&](const ReadingError &e) {
            return wordOf(deviceWords, e.device) == row["device"].get<std::string>()
                && wordOf(errorKindWords, e.kind) == row["kind"].get<std::string>() && e.value == row["value"].get<double>();
        });
        EXPECT_TRUE(isThere) << about;
    }
}

// Values for rating a disability, and handbook 'normal' values, are no reference: nobody was measured for them.
TEST(ExaminationTest, NoNormComesFromARatingSchedule)
{
    for (const Movement &movement : examination().movements)
        for (const Norm &norm : movement.norms) {
            const std::string &citation = examination().findSource(norm.source)->citation;
            for (const char *schedule : {"CFR", "AAOS", "rating", "Code of Federal"})
                EXPECT_EQ(citation.find(schedule), std::string::npos) << movement.id << ": " << citation;
        }
}

} // namespace

} // namespace raphe::test
