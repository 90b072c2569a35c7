// Export and import of visits and records made at random, with something in every field: nothing is lost, to the last bit. That
// the visits do fill every field is read off the schema, so that a field that comes later is not forgotten here.
#include "core/record/VisitJson.h"
#include "core/safety/Cautions.h"
#include "core/safety/Warnings.h"

#include "tests/core/record/PatientTesting.h"
#include "tests/support/SchemaFields.h"
#include "tests/support/WholeVisits.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <set>

namespace raphe::test {

namespace {

constexpr int roundTrips = 1000;

// One in ten is whole.
bool isWholeOne(int i)
{
    return i % 10 == 0;
}

Visit visitNumber(int i, WholeVisits &visits)
{
    return isWholeOne(i) ? visits.whole() : visits.next();
}

void expectTheSame(const Visit &visit, const std::string &about)
{
    const std::string written = writeVisit(visit);
    const auto read = readVisit(written, "v.json", atlas());
    ASSERT_TRUE(read) << about << ": " << testing::PrintToString(read.error()) << "\n" << written;
    ASSERT_TRUE(read.value() == visit) << about << "\n" << written;
    ASSERT_EQ(writeVisit(read.value()), written) << about;
}

} // namespace

TEST(RoundTrip, AThousandVisitsComeBackEqual)
{
    WholeVisits visits(20261129);
    for (int i = 0; i < roundTrips && !testing::Test::HasFatalFailure(); ++i) {
        const Visit visit = visitNumber(i, visits);
        expectTheSame(visit, "visit " + std::to_string(i));
        if (isWholeOne(i))
            expectTheSame(mirrored(visit), "mirror image of visit " + std::to_string(i));
        ASSERT_TRUE(mirrored(mirrored(visit)) == visit) << i;
    }
}

TEST(RoundTrip, TheVisitsHaveSomethingInEveryFieldOfTheSchema)
{
    std::set<std::string> filled;
    WholeVisits visits(20261129);
    for (int i = 0; i < 100; ++i)
        addFilledFields(nlohmann::json::parse(writeVisit(visitNumber(i, visits))), "", filled);
    std::size_t fields = 0;
    for (const SchemaField &field : schemaFields("visit")) {
        if (field.path == "/episode" || field.path == "/complaint")
            continue; // of version 1, which is read and not written
        ++fields;
        EXPECT_TRUE(filled.contains(field.path)) << field.path << " is never filled";
    }
    EXPECT_GT(fields, 150U) << "the schema was read";
}

// They are what the program takes, not only what the reader does.
TEST(RoundTrip, TheVisitsKeepToTheContent)
{
    WholeVisits visits(3);
    for (int i = 0; i < 50; ++i) {
        const Visit visit = visitNumber(i, visits);
        const auto ok = [](const Result<Done> &checked) { return checked ? std::string() : inWords(checked.error()); };
        EXPECT_EQ(ok(checkExamined(examination(), visit, "v")), "");
        EXPECT_EQ(ok(checkConditions(safetyRules(), visit, "v")), "");
        EXPECT_EQ(ok(checkWarnings(safetyRules(), visit, "v")), "");
    }
}

TEST(RoundTrip, AThousandRecordsComeBackEqual)
{
    Random random(20261129);
    for (int i = 0; i < roundTrips; ++i) {
        const PatientRecord record = random.record();
        const std::string text = writePatient(record);
        const auto read = readPatient(text, "p.json");
        ASSERT_TRUE(read) << testing::PrintToString(read.error()) << text;
        ASSERT_TRUE(read.value() == record) << text;
        ASSERT_EQ(writePatient(read.value()), text);
    }
}

} // namespace raphe::test
