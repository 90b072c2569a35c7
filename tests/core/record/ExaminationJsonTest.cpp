// The examination's fields of the visit file: nothing is lost, mirroring turns every side, and what cannot be is refused where it
// stands.
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace raphe {

namespace {

using nlohmann::json;

const Place iliacus{StructureId{"iliacus"}, Side::Right};

Visit examined()
{
    Visit visit;
    Finding sore;
    sore.place = iliacus;
    sore.sore = sore.stiff = true;
    sore.texture = {"ropy", "gritty"};
    sore.refersTo = {{StructureId{"femoral-triangle"}, Side::Right}};
    Finding segment;
    segment.place = {StructureId{"l3-l4"}, Side::Left};
    segment.play = JointPlay{2};
    segment.endFeel = EndFeel::Springy;
    segment.certain = segment.afterComparing = true;
    visit.findings = {sore, segment};
    Measure hip{"hip-internal-rotation", Side::Right, 24.5, MoveMode::Passive, Device::Goniometer, 20, true, true, "guarded"};
    Measure watched{"trunk-flexion", Side::Midline, {}, {}, {}, {}, true, false, {}};
    visit.measures = {hip, watched};
    TestResult slump{"slump", Side::Left, TestPain::Familiar, true, {}, {}, {}, {}, "in sitting"};
    TestResult reflex{"knee-reflex", Side::Right, {}, false, 1, {}, {}, {}, {}};
    TestResult clonus{"ankle-clonus", Side::Right, {}, false, {}, false, {}, {}, {}};
    TestResult pressure{"blood-pressure", Side::Midline, {}, false, {}, {}, {128, 82}, {}, {}};
    TestResult gaenslen{"gaenslen", Side::Right, {}, false, {}, {}, {}, "hip replaced", {}};
    visit.tests = {slump, reflex, clonus, pressure, gaenslen};
    visit.retest = RetestMark{MomentKind::Test, "slump", Side::Left};
    visit.timeline = {{"09:04:10", MomentKind::Movement, "trunk-flexion", Side::Midline},
        {"09:05:59", MomentKind::Finding, "iliacus", Side::Right}};
    return visit;
}

Result<Visit> read(const json &file)
{
    return readVisit(file.dump(), "v.json", test::atlas());
}

TEST(ExaminationJsonTest, NothingIsLost)
{
    const auto again = readVisit(writeVisit(examined()), "v.json", test::atlas());
    ASSERT_TRUE(again) << test::inWords(again.error());
    EXPECT_EQ(again.value(), examined());
}

TEST(ExaminationJsonTest, MirroredTwiceIsTheSameAndOnceTurnsEverySide)
{
    const Visit once = mirrored(examined());
    EXPECT_EQ(mirrored(once), examined());
    EXPECT_EQ(once.findings[0].refersTo[0].side, Side::Left);
    EXPECT_EQ(once.measures[0].side, Side::Left);
    EXPECT_EQ(once.tests[0].side, Side::Right);
    EXPECT_EQ(once.retest->side, Side::Right);
    EXPECT_EQ(once.timeline[1].side, Side::Left);
    EXPECT_EQ(once.measures[1].side, Side::Midline);
}

TEST(ExaminationJsonTest, WhatCannotBeIsRefusedWhereItStands)
{
    struct Case {
        const char *pointer;
        json value;
        ErrorCode code;
        const char *place;
        const char *detail;
    };
    const Case cases[] = {
        {"/findings/0/tenderness", 2, ErrorCode::Contradiction, "/findings/0", "sore, tenderness"},
        {"/findings/0/restriction", 2, ErrorCode::Contradiction, "/findings/0", "stiff, restriction"},
        {"/findings/0/clear", json::array({"tenderness"}), ErrorCode::Contradiction, "/findings/0", "clear, sore"},
        {"/findings/0/clear", json::array({"motion"}), ErrorCode::Contradiction, "/findings/0", "clear, stiff"},
        {"/findings/0/unable", "rash", ErrorCode::Contradiction, "/findings/0", "unable"},
        {"/findings/0/end_feel", "firm", ErrorCode::OutOfRange, "/findings/0/end_feel", "joint"},
        {"/findings/0/texture", json::array({"ropy", "ropy"}), ErrorCode::Duplicate, "/findings/0/texture", "ropy"},
        {"/findings/0/texture", json::array({""}), ErrorCode::MissingField, "/findings/0/texture", "word"},
        {"/findings/0/refers_to", json::array({{{"structure", "femoral-triangle"}}}), ErrorCode::MissingField,
            "/findings/0/refers_to/0", "side"},
        {"/findings/1/end_feel", "nice", ErrorCode::UnknownWord, "/findings/1/end_feel", "nice"},
        {"/measures/0/value", 1001, ErrorCode::OutOfRange, "/measures/0/value", "1000"},
        {"/measures/0/mode", "assisted", ErrorCode::UnknownWord, "/measures/0/mode", "assisted"},
        {"/measures/0/device", "spoon", ErrorCode::UnknownWord, "/measures/0/device", "spoon"},
        {"/measures/0/movement", "Hip", ErrorCode::BadId, "/measures/0/movement", "Hip"},
        {"/measures/1", {{"movement", "hip-internal-rotation"}, {"side", "right"}, {"mode", "passive"}}, ErrorCode::Duplicate,
            "/measures/1", "hip-internal-rotation"},
        {"/tests/0/grade", 2, ErrorCode::Contradiction, "/tests/0", "only one"},
        {"/tests/1", {{"test", "knee-reflex"}, {"side", "right"}}, ErrorCode::MissingField, "/tests/1", "grade"},
        {"/tests/1/grade", 6, ErrorCode::OutOfRange, "/tests/1/grade", "5"},
        {"/tests/1/changes", true, ErrorCode::MissingField, "/tests/1", "pain"},
        {"/tests/2", {{"test", "slump"}, {"side", "left"}, {"pain", "none"}}, ErrorCode::Duplicate, "/tests/2", "slump"},
        {"/tests/3/values", json::array(), ErrorCode::OutOfRange, "/tests/3/values", "1"},
        {"/tests/3/values", {1, 2, 3}, ErrorCode::OutOfRange, "/tests/3/values", "2"},
        {"/tests/0/kind", "x", ErrorCode::UnknownField, "/tests/0", "kind"},
        {"/retest/kind", "finding", ErrorCode::OutOfRange, "/retest/kind", "movement"},
        {"/timeline/0/time", "24:00:00", ErrorCode::WrongFormat, "/timeline/0/time", "24:00:00"},
        {"/timeline/0/time", "09:60:00", ErrorCode::WrongFormat, "/timeline/0/time", "09:60:00"},
        {"/timeline/0/time", "9:00", ErrorCode::WrongFormat, "/timeline/0/time", "9:00"},
    };
    for (const Case &c : cases) {
        json file = json::parse(writeVisit(examined()));
        file[json::json_pointer(c.pointer)] = c.value;
        const auto result = read(file);
        ASSERT_FALSE(result) << c.pointer << " was accepted";
        EXPECT_EQ(result.error().code, c.code) << c.pointer << ": " << test::inWords(result.error());
        EXPECT_EQ(result.error().place, std::string("v.json#") + c.place) << c.pointer;
        EXPECT_NE(result.error().detail.find(c.detail), std::string::npos) << c.pointer << ": " << result.error().detail;
    }
}

TEST(ExaminationJsonTest, TheFirstVersionHadNoneOfIt)
{
    for (const char *field : {"measures", "tests", "timeline"}) {
        json file{{"format", "raphe-visit"}, {"version", 1}, {"findings", json::array()}, {field, json::array()}};
        const auto result = read(file);
        ASSERT_FALSE(result) << field;
        EXPECT_EQ(result.error().code, ErrorCode::UnknownField);
    }
}

TEST(ExaminationJsonTest, AnUngradedWordCountsAsTheMiddleOfItsScale)
{
    Finding f;
    f.place = iliacus;
    f.stiff = true;
    EXPECT_EQ(f.restrictionGrade(), 2);
    EXPECT_EQ(f.tendernessGrade(), 0);
    EXPECT_TRUE(f.isFound());
    f.stiff = false;
    f.restriction = Restriction{1};
    EXPECT_EQ(f.restrictionGrade(), 1);
}

} // namespace

} // namespace raphe
