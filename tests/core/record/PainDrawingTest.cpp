// The pain drawing in the visit file: what is read, what is refused and where, that writing loses nothing, and its mirror image.
#include "core/record/VisitJson.h"

#include "core/anatomy/AtlasReader.h"
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/support/BrutePaint.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <chrono>

namespace raphe::test {

namespace {

using nlohmann::json;

const Atlas &small()
{
    static const Atlas tiny = tinyAtlas();
    return tiny;
}

json patch()
{
    return {{"view", "front"}, {"painter", "patient"}, {"strokes", {{{"radius", 12}, {"points", {{-40.5, 420}}}}}}};
}

Result<Visit> readPain(const json &pain)
{
    const json visit{{"format", "raphe-visit"}, {"version", 1}, {"findings", json::array()}, {"pain", pain}};
    return readVisit(visit.dump(), "v.json", small());
}

Result<Visit> readPatch(const json &one)
{
    return readPain(json::array({one}));
}

void expectRefused(const json &one, ErrorCode code, const std::string &where, const std::string &detail)
{
    const auto read = readPatch(one);
    ASSERT_FALSE(read) << "was accepted: " << one.dump().substr(0, 300);
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, "v.json#/pain/0" + where);
    EXPECT_EQ(read.error().detail, detail);
}

json with(const char *field, const json &value)
{
    json out = patch();
    out[field] = value;
    return out;
}

json without(const char *field)
{
    json out = patch();
    out.erase(field);
    return out;
}

json painted(const json &radius, const json &points)
{
    return with("strokes", json::array({{{"radius", radius}, {"points", points}}}));
}

TEST(PainDrawing, ReadsEveryField)
{
    json one = patch();
    one["view"] = "side";
    one["facing"] = "left";
    one["quality"] = "burning";
    one["intensity"] = 7;
    one["painter"] = "practitioner";
    one["confirmed"] = true;
    one["strokes"].push_back({{"radius", 1}, {"points", {{-500, 0}, {500, 1000}, {0.125, 3}}}});
    const auto read = readPatch(one);
    ASSERT_TRUE(read) << inWords(read.error());
    PainPatch expected;
    expected.view = View::Side;
    expected.facing = Side::Left;
    expected.quality = PainQuality::Burning;
    expected.intensity = PainScore{7};
    expected.painter = Painter::Practitioner;
    expected.confirmed = true;
    expected.strokes = {{{{-40.5, 420}}, 12}, {{{-500, 0}, {500, 1000}, {0.125, 3}}, 1}};
    EXPECT_EQ(read.value().pain, std::vector<PainPatch>{expected});
}

TEST(PainDrawing, WhatWasNotSaidIsNothing)
{
    const auto read = readPatch(patch());
    ASSERT_TRUE(read) << inWords(read.error());
    ASSERT_EQ(read.value().pain.size(), 1U);
    const PainPatch &one = read.value().pain.front();
    EXPECT_FALSE(one.quality);
    EXPECT_FALSE(one.intensity) << "not said is not 'no pain'";
    EXPECT_FALSE(one.confirmed);
    EXPECT_EQ(one.facing, Side::Midline);
    ASSERT_TRUE(readPatch(with("intensity", 0)));
    EXPECT_EQ(readPatch(with("intensity", 0)).value().pain.front().intensity, PainScore{0});
    EXPECT_TRUE(readPain(json::array()).value().pain.empty());
}

TEST(PainDrawing, WordsAndFieldsAreClosed)
{
    for (const char *field : {"view", "painter", "strokes"})
        expectRefused(without(field), ErrorCode::MissingField, "", field);
    expectRefused(with("colour", "red"), ErrorCode::UnknownField, "", "colour");
    expectRefused(with("view", "inside"), ErrorCode::UnknownWord, "/view", "inside");
    expectRefused(with("quality", "strange"), ErrorCode::UnknownWord, "/quality", "strange");
    expectRefused(with("quality", nullptr), ErrorCode::WrongType, "/quality", "text");
    expectRefused(with("painter", "doctor"), ErrorCode::UnknownWord, "/painter", "doctor");
    expectRefused(with("confirmed", "yes"), ErrorCode::WrongType, "/confirmed", "true or false");
    for (const json &value : {json(-1), json(11), json(2.5)})
        expectRefused(
            with("intensity", value), ErrorCode::OutOfRange, "/intensity", value.dump() + ", allowed: whole number 0 to 10");
    expectRefused(with("intensity", "7"), ErrorCode::WrongType, "/intensity", "number");
    json stroke = patch();
    stroke["strokes"][0]["pressure"] = 1;
    expectRefused(stroke, ErrorCode::UnknownField, "/strokes/0", "pressure");
    expectRefused("left knee", ErrorCode::WrongType, "", "object");
    for (const char *word :
        {"aching", "burning", "shooting", "stabbing", "tingling", "numb", "stiff", "throbbing", "pressing", "other"})
        EXPECT_TRUE(readPatch(with("quality", word))) << word;
}

TEST(PainDrawing, WholeViewsSayWhichSideTheyShow)
{
    for (const char *view : {"side", "head"}) {
        json one = with("view", view);
        expectRefused(one, ErrorCode::MissingField, "", "facing");
        one["facing"] = "midline";
        expectRefused(one, ErrorCode::OutOfRange, "/facing", "midline, allowed: left or right");
        one["facing"] = "up";
        expectRefused(one, ErrorCode::UnknownWord, "/facing", "up");
        for (const char *facing : {"left", "right"}) {
            one["facing"] = facing;
            EXPECT_TRUE(readPatch(one)) << view << " " << facing;
        }
    }
    for (const char *view : {"front", "back", "sole", "palm"}) {
        json one = with("view", view);
        EXPECT_TRUE(readPatch(one)) << view;
        one["facing"] = "left";
        expectRefused(one, ErrorCode::Contradiction, "/facing", std::string("facing, view ") + view);
    }
}

TEST(PainDrawing, NumbersStayWithinTheView)
{
    const std::string point = "/strokes/0/points/0";
    for (const json &x : {json(-500.1), json(501), json(1e308)})
        expectRefused(painted(10, {{x, 3}}), ErrorCode::OutOfRange, point + "/0", x.dump() + ", allowed: -500.0 to 500.0");
    for (const json &y : {json(-0.1), json(1000.5)})
        expectRefused(painted(10, {{3, y}}), ErrorCode::OutOfRange, point + "/1", y.dump() + ", allowed: 0.0 to 1000.0");
    for (const json &radius : {json(0), json(0.99), json(-5), json(100.5), json(1e300)})
        expectRefused(
            painted(radius, {{3, 3}}), ErrorCode::OutOfRange, "/strokes/0/radius", radius.dump() + ", allowed: 1.0 to 100.0");
    expectRefused(painted(10, json::parse("[[1,2,3]]")), ErrorCode::OutOfRange, point, "3 entries, allowed: 2 to 2");
    expectRefused(painted(10, json::parse("[[1]]")), ErrorCode::OutOfRange, point, "1 entries, allowed: 2 to 2");
    expectRefused(painted(10, json::parse("[[]]")), ErrorCode::OutOfRange, point, "0 entries, allowed: 2 to 2");
    expectRefused(painted(10, json::parse("[3]")), ErrorCode::WrongType, point, "array");
    expectRefused(painted(10, json::parse("[[null, 2]]")), ErrorCode::WrongType, point + "/0", "number");
    expectRefused(painted(nullptr, json::parse("[[1, 2]]")), ErrorCode::WrongType, "/strokes/0/radius", "number");
    expectRefused(painted(10, json::array()), ErrorCode::OutOfRange, "/strokes/0/points", "0 entries, allowed: 1 to 5000");
    expectRefused(with("strokes", json::array()), ErrorCode::OutOfRange, "/strokes", "0 entries, allowed: 1 to 500");
    // What is no number of JSON does not get that far.
    for (const char *number : {"NaN", "Infinity", "-Infinity", "1e999"}) {
        std::string text = R"({"format":"raphe-visit","version":1,"findings":[],"pain":[{"view":"front","painter":"patient",)"
                           R"("strokes":[{"radius":5,"points":[[X,1]]}]}]})";
        text.replace(text.find('X'), 1, number);
        const auto read = readVisit(text, "v.json", small());
        ASSERT_FALSE(read) << number;
        EXPECT_EQ(read.error().code, ErrorCode::BadJson) << number;
        EXPECT_FALSE(read.error().place.empty());
    }
}

TEST(PainDrawing, AHostileFileIsRefusedBeforeItIsBuilt)
{
    const auto points = [](std::size_t count) { return json(std::vector<json>(count, json::array({1, 2}))); };
    const auto strokes = [&](std::size_t count, std::size_t each) {
        return with("strokes", json(std::vector<json>(count, {{"radius", 5}, {"points", points(each)}})));
    };
    EXPECT_TRUE(readPatch(painted(5, points(PainLimits::points))));
    expectRefused(painted(5, points(PainLimits::points + 1)), ErrorCode::OutOfRange, "/strokes/0/points",
        "5001 entries, allowed: 1 to 5000");
    EXPECT_TRUE(readPatch(strokes(PainLimits::strokes, 1)));
    expectRefused(strokes(PainLimits::strokes + 1, 1), ErrorCode::OutOfRange, "/strokes", "501 entries, allowed: 1 to 500");
    EXPECT_TRUE(readPatch(strokes(4, PainLimits::points)));
    expectRefused(
        strokes(5, PainLimits::points), ErrorCode::OutOfRange, "/strokes/4/points", "too many points, allowed in all: 20000");
    EXPECT_TRUE(readPain(json(std::vector<json>(PainLimits::patches, patch()))));
    const auto many = readPain(json(std::vector<json>(PainLimits::patches + 1, patch())));
    ASSERT_FALSE(many);
    EXPECT_EQ(many.error().place, "v.json#/pain");
    EXPECT_EQ(many.error().detail, "101 entries, allowed: 0 to 100");
    // Over all patches together, too.
    const auto spread = readPain(json(std::vector<json>(3, strokes(2, 4000))));
    ASSERT_FALSE(spread);
    EXPECT_EQ(spread.error().place, "v.json#/pain/2/strokes/1/points");
    for (const json &pain : {json("all over"), json(3), json::object()}) {
        const auto read = readPain(pain);
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().code, ErrorCode::WrongType);
        EXPECT_EQ(read.error().place, "v.json#/pain");
    }
}

TEST(PainDrawing, WritingLosesNothingAndMirroringTwiceGivesItBack)
{
    RandomDrawings drawings(11);
    for (int i = 0; i < 300; ++i) {
        Visit visit;
        visit.pain = drawings.next(5, 20);
        for (const Visit &one : {visit, mirrored(visit)}) {
            const std::string written = writeVisit(one);
            const auto read = readVisit(written, "v.json", small());
            ASSERT_TRUE(read) << inWords(read.error());
            ASSERT_EQ(read.value(), one) << written;
            ASSERT_EQ(writeVisit(read.value()), written);
        }
        const Visit other = mirrored(visit);
        ASSERT_EQ(mirrored(other), visit);
        ASSERT_EQ(other.pain.size(), visit.pain.size());
        for (std::size_t p = 0; p < visit.pain.size(); ++p) {
            PainPatch expected = visit.pain[p];
            if (isWhole(expected.view))
                expected.facing = expected.facing == Side::Left ? Side::Right : Side::Left;
            for (BrushStroke &stroke : expected.strokes)
                for (Point &point : stroke.points)
                    point.x = -point.x;
            ASSERT_EQ(other.pain[p], expected) << "all else stays";
        }
    }
}

TEST(PainDrawing, ZeroHasNoSign)
{
    const auto read = readPatch(painted(5, json::parse("[[-0.0, 3]]")));
    ASSERT_TRUE(read);
    EXPECT_EQ(writeVisit(read.value()).find("-0"), std::string::npos);
    EXPECT_EQ(writeVisit(mirrored(read.value())), writeVisit(read.value())) << "a dot in the middle is its own mirror image";
}

} // namespace

} // namespace raphe::test
