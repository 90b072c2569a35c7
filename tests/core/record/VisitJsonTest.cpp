// The visit file: what is read, what is refused and where, and that writing loses nothing. Uses a small atlas of its
// own, so that changes of the real one do not touch these tests.
#include "core/record/VisitJson.h"
#include "core/anatomy/Atlas.h"
#include "core/anatomy/AtlasReader.h"

#include "tests/support/Complaints.h"
#include "tests/support/PrintError.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <random>
#include <set>

namespace raphe {

namespace {

using nlohmann::json;

json structure(const char *id, const char *kind, bool paired)
{
    return {{"id", id}, {"kind", kind}, {"layer", "bone"}, {"paired", paired},
        {"names", {{"latin", id}, {"english", id}, {"plain", {{"en", id}, {"de", id}, {"es", id}}}}}, {"sources", {"book"}}};
}

json part(json whole, const char *of)
{
    whole["part_of"] = of;
    return whole;
}

json attached(json tissue, const json &origins, const json &insertions)
{
    tissue["attachments"].push_back(
        {{"origins", origins}, {"insertions", insertions}, {"evidence", "described"}, {"sources", {"book"}}});
    return tissue;
}

Atlas smallAtlas()
{
    json atlas{{"format", "raphe-atlas"}, {"version", 1}};
    atlas["sources"] = {
        {{"id", "book"}, {"citation", "A book"}, {"doi", nullptr}, {"supports", "described"}, {"read", "memory"}}};
    atlas["joints"] = {
        {{"id", "l4-l5"}, {"bones", {"vertebra-l4", "vertebra-l5"}}, {"role", "tree"}, {"complex", "lumbar-spine"}},
        {{"id", "l5-s1"}, {"bones", {"vertebra-l5", "sacrum"}}, {"role", "tree"}, {"complex", "lumbar-spine"}},
        {{"id", "sacroiliac-joint"}, {"bones", {"sacrum", "hip-bone"}}, {"role", "tree"}, {"complex", "pelvis"}},
        {{"id", "hip-joint"}, {"bones", {"hip-bone", "femur"}}, {"role", "tree"}, {"complex", "hip"}}};
    atlas["structures"] = {
        structure("vertebra-l4", "bone", false),
        structure("vertebra-l5", "bone", false),
        structure("sacrum", "bone", false),
        structure("hip-bone", "bone", true),
        structure("femur", "bone", true),
        structure("l4-l5", "joint", false),
        structure("l5-s1", "joint", false),
        structure("sacroiliac-joint", "joint", true),
        structure("hip-joint", "joint", true),
        part(structure("gluteal-tuberosity", "landmark", true), "femur"),
        part(structure("tibial-side", "landmark", true), "femur"),
        structure("tract", "fascia", true),
        structure("middle-ligament", "ligament", false),
        attached(attached(structure("gluteus", "muscle", true), {"sacrum"}, {"gluteal-tuberosity"}), {"hip-bone"}, {"tract"}),
        structure("four-headed", "muscle", true),
        attached(part(structure("first-head", "muscle", true), "four-headed"), {"hip-bone"}, {"tibial-side"}),
    };
    auto read = readAtlas({{"small.json", atlas.dump()}});
    if (!read)
        ADD_FAILURE() << testing::PrintToString(read.error());
    return std::move(read).value();
}

const Atlas &theAtlas()
{
    static const Atlas atlas = smallAtlas();
    return atlas;
}

json visitWith(const json &findings)
{
    return {{"format", "raphe-visit"}, {"version", 2}, {"findings", findings}};
}

Result<Visit> readJson(const json &visit)
{
    return readVisit(visit.dump(), "v.json", theAtlas());
}

Result<Visit> readFinding(const json &finding)
{
    return readJson(visitWith(json::array({finding})));
}

Finding only(const Result<Visit> &visit)
{
    if (!visit || visit.value().findings.size() != 1) {
        ADD_FAILURE() << (visit ? "not one finding" : testing::PrintToString(visit.error()));
        return {};
    }
    return visit.value().findings.front();
}

void expectError(const Result<Visit> &visit, ErrorCode code, const std::string &place, const std::string &detail)
{
    ASSERT_FALSE(visit) << "was accepted";
    EXPECT_EQ(visit.error().code, code) << testing::PrintToString(visit.error());
    EXPECT_EQ(visit.error().place, place);
    EXPECT_EQ(visit.error().detail, detail);
}

void expectFindingError(const json &finding, ErrorCode code, const std::string &where, const std::string &detail)
{
    SCOPED_TRACE(finding.dump());
    expectError(readFinding(finding), code, "v.json#/findings/0" + where, detail);
}

Judgement judgementOf(AdviceList list, const std::string &id, Side side, const std::string &dismissed)
{
    Judgement judgement;
    judgement.list = list;
    judgement.place = {{id}, side};
    judgement.dismissed = dismissed;
    return judgement;
}

TEST(VisitJson, ReadsTheSmallestVisit)
{
    const auto visit = readJson(visitWith(json::array()));
    ASSERT_TRUE(visit) << testing::PrintToString(visit.error());
    EXPECT_EQ(visit.value(), Visit{});
}

TEST(VisitJson, ReadsEveryFieldOfTheVisit)
{
    json input = visitWith(json::array({{{"structure", "l4-l5"}, {"clear", true}}, {{"structure", "sacrum"}, {"note", "cold"}}}));
    input["patient"] = {{"name", "Ana Müller"}, {"born", "1971-12-31"}};
    input["date"] = "2024-02-29";
    input["practitioner"] = "B. Okoye";
    input["complaints"] = {
        {{"episode", 2}, {"text", "my back"}, {"since", "May"}, {"now", 3}, {"worst", 8}, {"best", 0}, {"aggravates", "sitting"},
            {"eases", "a walk"}, {"day", {{"waking", "more"}, {"night", "none"}}}, {"irritability", "high"},
            {"activities", {{{"name", "shoes"}, {"score", 4}}, {{"score", 10}}}}, {"goal", "to sleep"}, {"asked", "2024-02-28"}},
        {{"text", "my heel"}}};
    input["consents"] = {{{"item", "cupping"}, {"answer", "withdrawn"}, {"asked", "2024-02-28"}, {"remark", "marks"}},
        {{"item", "region-abdomen"}, {"answer", "given"}, {"asked", "2024-02-29"}, {"chaperone", "present"},
            {"chaperone_name", "C. Ode"}, {"guardian", {{"name", "D. Ode"}, {"relation", "mother"}}}}};
    input["since_last"] = {{"course", "better"}, {"reaction", "sore"}, {"reaction_told", "a day"},
        {"promises", {{{"task", "walk"}, {"kept", "part"}}, {{"task", "call the doctor"}}}}};
    input["promised"] = {"walk"};
    input["focus"] = {"the left hip", "stairs"};
    input["retested"] = {{"pain", 0}};
    input["closing"] = {{"told", true}, {"focus", {"the right hip"}}};
    input["letters"] = {{{"written", "2024-03-01"}, {"to", {{"name", "Dr Nord"}}}, {"title", "A letter"}, {"urgency", "routine"},
        {"reason", {{"text", "swollen"}}}}};
    input["sides_intended"] = true;
    input["cautions"] = {"thin bones", "new scar"};
    input["complaint_at"] = {{{"structure", "gluteus"}, {"side", "left"}}, {{"structure", "sacrum"}}};
    input["pain"] = {{{"view", "back"}, {"painter", "patient"}, {"intensity", 6}, {"quality", "aching"},
        {"strokes", {{{"radius", 9}, {"points", {{30, 480}, {42.5, 491}}}}}}}};
    input["conditions"] = {{{"condition", "thin-bone"}},
        {{"condition", "new-scar"}, {"at", {{{"structure", "tract"}, {"side", "right"}}}}},
        {{"condition", "wound"}, {"at", json::array()}}};
    input["judgements"] = {{{"list", "check"}, {"structure", "hip-joint"}, {"side", "right"}, {"pinned", true}},
        {{"list", "treat"}, {"structure", "l4-l5"}, {"dismissed", "done last week"}}};
    const auto visit = readJson(input);
    ASSERT_TRUE(visit) << testing::PrintToString(visit.error());
    EXPECT_EQ(visit.value().patient, (Patient{"Ana Müller", "1971-12-31"}));
    EXPECT_EQ(visit.value().date, "2024-02-29");
    EXPECT_EQ(visit.value().practitioner, "B. Okoye");
    EXPECT_EQ(visit.value().episode(), 2);
    EXPECT_EQ(visit.value().complaint(), "my back");
    Complaint first{2, "my back", "May", PainScore{3}, PainScore{8}, PainScore{0}, "sitting", "a walk", {}, Irritability::High,
        {{"shoes", 4}, {"", 10}}, "to sleep", "2024-02-28"};
    first.day[static_cast<std::size_t>(PartOfDay::Waking)] = DayLevel::More;
    first.day[static_cast<std::size_t>(PartOfDay::Night)] = DayLevel::None;
    Complaint second;
    second.text = "my heel";
    EXPECT_EQ(visit.value().complaints, (std::vector{first, second}));
    EXPECT_EQ(visit.value().consents,
        (std::vector<ConsentAnswer>{{"cupping", ConsentState::Withdrawn, "2024-02-28", {}, {}, {}, "marks"},
            {"region-abdomen", ConsentState::Given, "2024-02-29", Chaperone::Present, "C. Ode", Guardian{"D. Ode", "mother"},
                {}}}));
    EXPECT_EQ(visit.value().sinceLast,
        (SinceLast{Course::Better, Reaction::Sore, "a day", {{"walk", Kept::Part}, {"call the doctor", {}}}}));
    EXPECT_EQ(visit.value().promised, std::vector<std::string>{"walk"});
    EXPECT_EQ(visit.value().focus, (std::vector<std::string>{"the left hip", "stairs"}));
    EXPECT_EQ(visit.value().retested, (Retested{{}, {}, {}, PainScore{0}}));
    EXPECT_TRUE(visit.value().closing.isTold);
    EXPECT_EQ(visit.value().closing.focus, std::vector<std::string>{"the right hip"}) << "of the next visit, not of this one";
    ASSERT_EQ(visit.value().letters.size(), 1U);
    EXPECT_EQ(visit.value().letters[0],
        (Letter{"2024-03-01", {"Dr Nord", {}, {}}, "A letter", Urgency::Routine, {"swollen", "swollen"}, {}, {}, {}}));
    EXPECT_TRUE(visit.value().sidesIntended);
    EXPECT_EQ(visit.value().cautions, (std::vector<std::string>{"thin bones", "new scar"}));
    EXPECT_EQ(visit.value().complaintAt, (std::vector<Place>{{{"gluteus"}, Side::Left}, {{"sacrum"}, Side::Midline}}));
    ASSERT_EQ(visit.value().pain.size(), 1U);
    EXPECT_EQ(visit.value().pain[0].strokes, (std::vector<BrushStroke>{{{{30, 480}, {42.5, 491}}, 9}}));
    EXPECT_EQ(visit.value().conditions,
        (std::vector<Condition>{{"thin-bone", {}}, {"new-scar", {{{"tract"}, Side::Right}}}, {"wound", {}}}));
    ASSERT_EQ(visit.value().judgements.size(), 2U);
    EXPECT_EQ(visit.value().judgements[0], judgementOf(AdviceList::Check, "hip-joint", Side::Right, ""));
    EXPECT_EQ(visit.value().judgements[1], judgementOf(AdviceList::Treat, "l4-l5", Side::Midline, "done last week"));
    EXPECT_TRUE(visit.value().judgements[0].isPinned());
    EXPECT_FALSE(visit.value().judgements[1].isPinned());
    ASSERT_EQ(visit.value().findings.size(), 2U);
    EXPECT_EQ(visit.value().findings[1].note, "cold");
}

TEST(VisitJson, ReadsEveryFieldOfAFinding)
{
    const Finding finding = only(readFinding({{"structure", "gluteus"}, {"side", "right"}, {"spot", "origin"}, {"at", "sacrum"},
        {"tenderness", 4}, {"restriction", 3}, {"familiar", true}, {"note", "since March"}}));
    Finding expected;
    expected.place = {{"gluteus"}, Side::Right};
    expected.spot = Spot::Origin;
    expected.at = StructureId{"sacrum"};
    expected.tenderness = Tenderness{4};
    expected.restriction = Restriction{3};
    expected.familiar = true;
    expected.note = "since March";
    EXPECT_EQ(finding, expected);
    EXPECT_TRUE(finding.isFound());
}

TEST(VisitJson, ReadsPlayOfAJointAndHowSureItIs)
{
    for (int grade = 0; grade <= JointPlay::highest; ++grade) {
        const Finding finding =
            only(readFinding({{"structure", "hip-joint"}, {"side", "left"}, {"play", grade}, {"certain", true}}));
        EXPECT_EQ(finding.play, JointPlay{grade});
        EXPECT_TRUE(finding.certain);
        EXPECT_EQ(finding.isFound(), grade != 3) << grade;
        EXPECT_EQ(finding.isClear(), grade == 3) << grade;
    }
    EXPECT_FALSE(only(readFinding({{"structure", "l4-l5"}, {"play", 2}})).certain);
    EXPECT_FALSE(only(readFinding({{"structure", "l4-l5"}, {"play", 2}, {"certain", false}})).certain);
}

TEST(VisitJson, ReadsClearAndUnable)
{
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"clear", true}})).clear, (Clear{true, true}));
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"clear", {"tenderness"}}})).clear, (Clear{true, false}));
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"clear", {"motion"}}})).clear, (Clear{false, true}));
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"clear", {"motion", "tenderness"}}})).clear, (Clear{true, true}));
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"unable", "plaster"}})).unable, "plaster");
}

TEST(VisitJson, TenderButMovingFreelyIsBothFoundAndClear)
{
    const Finding mixed = only(readFinding({{"structure", "sacrum"}, {"tenderness", 2}, {"clear", {"motion"}}}));
    EXPECT_TRUE(mixed.isFound());
    EXPECT_TRUE(mixed.isClear());
    const Finding clear = only(readFinding({{"structure", "sacrum"}, {"tenderness", 0}, {"clear", true}}));
    EXPECT_FALSE(clear.isFound());
    EXPECT_TRUE(clear.isClear());
}

TEST(VisitJson, SidesFollowTheStructure)
{
    const auto side = [](const char *id, const json &word) {
        json finding{{"structure", id}, {"tenderness", 1}};
        if (!word.is_null())
            finding["side"] = word;
        return readFinding(finding);
    };
    EXPECT_EQ(only(side("gluteus", "left")).place.side, Side::Left);
    EXPECT_EQ(only(side("gluteus", "right")).place.side, Side::Right);
    EXPECT_EQ(only(side("sacrum", "midline")).place.side, Side::Midline);
    EXPECT_EQ(only(side("sacrum", nullptr)).place.side, Side::Midline);
    EXPECT_EQ(only(side("l4-l5", "left")).place.side, Side::Left);
    EXPECT_EQ(only(side("l4-l5", "right")).place.side, Side::Right);
    EXPECT_EQ(only(side("l4-l5", "midline")).place.side, Side::Midline);
    EXPECT_EQ(only(side("l4-l5", nullptr)).place.side, Side::Midline);
    expectError(side("gluteus", nullptr), ErrorCode::MissingField, "v.json#/findings/0", "side");
    expectError(side("gluteus", "midline"), ErrorCode::WrongSide, "v.json#/findings/0/side", "gluteus");
    expectError(side("sacroiliac-joint", "midline"), ErrorCode::WrongSide, "v.json#/findings/0/side", "sacroiliac-joint");
    expectError(side("sacrum", "left"), ErrorCode::WrongSide, "v.json#/findings/0/side", "sacrum");
    expectError(side("sacrum", "both"), ErrorCode::UnknownWord, "v.json#/findings/0/side", "both");
}

TEST(VisitJson, SpotsBelongOnSoftTissue)
{
    EXPECT_EQ(
        only(readFinding({{"structure", "tract"}, {"side", "left"}, {"spot", "border"}, {"tenderness", 1}})).spot, Spot::Border);
    EXPECT_EQ(
        only(readFinding({{"structure", "middle-ligament"}, {"spot", "insertion"}, {"tenderness", 1}})).spot, Spot::Insertion);
    for (const char *id : {"sacrum", "l4-l5"})
        expectFindingError({{"structure", id}, {"spot", "border"}, {"tenderness", 1}}, ErrorCode::OutOfRange, "/spot",
            "border, allowed on: muscle, fascia, ligament, tendon");
    expectFindingError({{"structure", "gluteus"}, {"side", "left"}, {"spot", "middle"}, {"tenderness", 1}},
        ErrorCode::UnknownWord, "/spot", "middle");
}

TEST(VisitJson, AtNamesAnEndOfTheStructure)
{
    const auto at = [](const char *id, const char *end, const json &spot = nullptr) {
        json finding{{"structure", id}, {"side", "left"}, {"at", end}, {"tenderness", 1}};
        if (!spot.is_null())
            finding["spot"] = spot;
        return finding;
    };
    for (const char *end : {"sacrum", "hip-bone", "gluteal-tuberosity", "tract"})
        EXPECT_EQ(only(readFinding(at("gluteus", end))).at, StructureId{end});
    EXPECT_EQ(only(readFinding(at("gluteus", "tract", "insertion"))).at, StructureId{"tract"});
    EXPECT_EQ(only(readFinding(at("gluteus", "tract", "belly"))).at, StructureId{"tract"});
    EXPECT_EQ(only(readFinding(at("four-headed", "tibial-side"))).at, StructureId{"tibial-side"}) << "the end of a part";

    expectFindingError(at("gluteus", "tract", "origin"), ErrorCode::OutOfRange, "/at", "tract, allowed: hip-bone, sacrum");
    expectFindingError(
        at("gluteus", "sacrum", "insertion"), ErrorCode::OutOfRange, "/at", "sacrum, allowed: gluteal-tuberosity, tract");
    expectFindingError(
        at("gluteus", "femur"), ErrorCode::OutOfRange, "/at", "femur, allowed: gluteal-tuberosity, hip-bone, sacrum, tract");
    expectFindingError(at("first-head", "sacrum"), ErrorCode::OutOfRange, "/at", "sacrum, allowed: hip-bone, tibial-side");
    expectFindingError(at("gluteus", "nowhere"), ErrorCode::UnknownId, "/at", "nowhere");
    expectFindingError(at("gluteus", "No Where"), ErrorCode::BadId, "/at", "No Where");
}

TEST(VisitJson, GradesStayOnTheirScales)
{
    for (const json &grade : {json(-1), json(5), json(2.5)})
        expectFindingError({{"structure", "sacrum"}, {"tenderness", grade}}, ErrorCode::OutOfRange, "/tenderness",
            grade.dump() + ", allowed: whole number 0 to 4");
    for (const json &grade : {json(-1), json(4), json(1e300)})
        expectFindingError({{"structure", "sacrum"}, {"restriction", grade}}, ErrorCode::OutOfRange, "/restriction",
            grade.dump() + ", allowed: whole number 0 to 3");
    for (const json &grade : {json(-1), json(7), json(3.5)})
        expectFindingError({{"structure", "l4-l5"}, {"play", grade}}, ErrorCode::OutOfRange, "/play",
            grade.dump() + ", allowed: whole number 0 to 6");
    expectFindingError({{"structure", "l4-l5"}, {"play", "normal"}}, ErrorCode::WrongType, "/play", "number");
    expectFindingError({{"structure", "sacrum"}, {"tenderness", "3"}}, ErrorCode::WrongType, "/tenderness", "number");
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"tenderness", 0}})).tenderness, Tenderness{0});
    EXPECT_EQ(only(readFinding({{"structure", "sacrum"}, {"restriction", 0}})).restriction, Restriction{0});
}

TEST(VisitJson, AFindingSaysSomething)
{
    const std::string says =
        "tenderness, restriction, sore, stiff, play, end_feel, familiar, texture, refers_to, clear, unable or note";
    expectFindingError({{"structure", "sacrum"}}, ErrorCode::MissingField, "", says);
    expectFindingError({{"structure", "sacrum"}, {"familiar", false}}, ErrorCode::MissingField, "", says);
    expectFindingError({{"structure", "sacrum"}, {"note", ""}}, ErrorCode::MissingField, "", says);
    expectFindingError(
        {{"structure", "sacrum"}, {"clear", json::array()}}, ErrorCode::MissingField, "/clear", "tenderness or motion");
    expectFindingError({{"structure", "sacrum"}, {"clear", false}}, ErrorCode::WrongType, "/clear", "true or array");
    expectFindingError({{"structure", "sacrum"}, {"clear", "motion"}}, ErrorCode::WrongType, "/clear", "array");
    expectFindingError({{"structure", "sacrum"}, {"clear", {"heat"}}}, ErrorCode::UnknownWord, "/clear/0", "heat");
    expectFindingError({{"structure", "sacrum"}, {"clear", {"motion", "motion"}}}, ErrorCode::Duplicate, "/clear/1", "motion");
}

TEST(VisitJson, AFindingDoesNotContradictItself)
{
    const auto with = [](json more) {
        more["structure"] = "sacrum";
        return more;
    };
    expectFindingError(with({{"clear", true}, {"tenderness", 1}}), ErrorCode::Contradiction, "", "clear, tenderness");
    expectFindingError(with({{"clear", {"tenderness"}}, {"tenderness", 1}}), ErrorCode::Contradiction, "", "clear, tenderness");
    expectFindingError(with({{"clear", true}, {"restriction", 1}}), ErrorCode::Contradiction, "", "clear, restriction");
    expectFindingError(with({{"clear", {"motion"}}, {"restriction", 1}}), ErrorCode::Contradiction, "", "clear, restriction");
    for (const auto &[field, value] :
        std::map<std::string, json>{{"tenderness", 0}, {"restriction", 0}, {"familiar", true}, {"clear", true}, {"note", "hot"}})
        expectFindingError(with({{"unable", "plaster"}, {field, value}}), ErrorCode::Contradiction, "", "unable");
    EXPECT_TRUE(readFinding(with({{"clear", {"tenderness"}}, {"restriction", 3}})));
    EXPECT_TRUE(readFinding(with({{"clear", {"motion"}}, {"tenderness", 4}})));
    EXPECT_TRUE(readFinding(with({{"clear", true}, {"tenderness", 0}, {"restriction", 0}})));
    EXPECT_TRUE(readFinding(with({{"unable", "plaster"}, {"familiar", false}})));
}

TEST(VisitJson, OnlyJointsHavePlay)
{
    for (const auto &[id, side] : std::vector<std::pair<const char *, const char *>>{{"gluteus", "left"}, {"tract", "right"},
             {"femur", "left"}, {"gluteal-tuberosity", "left"}, {"sacrum", "midline"}, {"middle-ligament", "midline"}})
        expectFindingError({{"structure", id}, {"side", side}, {"play", 3}}, ErrorCode::OutOfRange, "/play",
            std::string(id) + ", allowed on: joint");
    for (const auto &[id, side] : std::vector<std::pair<const char *, const char *>>{
             {"hip-joint", "left"}, {"sacroiliac-joint", "right"}, {"l4-l5", "left"}, {"l5-s1", "midline"}})
        EXPECT_TRUE(readFinding({{"structure", id}, {"side", side}, {"play", 3}})) << id;
}

TEST(VisitJson, PlayDoesNotContradictClearMotion)
{
    const auto with = [](json more) {
        more["structure"] = "l4-l5";
        return more;
    };
    for (int grade = 0; grade <= JointPlay::highest; ++grade) {
        for (const json &clear : {json(true), json{"motion"}}) {
            const json finding = with({{"play", grade}, {"clear", clear}});
            if (grade == JointPlay::normal)
                EXPECT_TRUE(readFinding(finding)) << finding;
            else
                expectFindingError(finding, ErrorCode::Contradiction, "", "clear, play");
        }
        EXPECT_TRUE(readFinding(with({{"play", grade}, {"clear", {"tenderness"}}}))) << grade;
    }
    expectFindingError(with({{"unable", "plaster"}, {"play", 3}}), ErrorCode::Contradiction, "", "unable");
    expectFindingError(with({{"unable", "plaster"}, {"certain", true}}), ErrorCode::Contradiction, "", "unable");
    EXPECT_TRUE(readFinding(with({{"unable", "plaster"}, {"certain", false}})));
}

TEST(VisitJson, CertainIsOfWhatWasFeltOfTheMotion)
{
    const auto with = [](json more) {
        more["structure"] = "l4-l5";
        more["certain"] = true;
        return more;
    };
    const std::string lacks = "restriction, stiff, play, end_feel or clear motion, to be certain of";
    expectFindingError(with({{"tenderness", 2}}), ErrorCode::MissingField, "", lacks);
    expectFindingError(with({{"familiar", true}}), ErrorCode::MissingField, "", lacks);
    expectFindingError(with({{"note", "sure"}}), ErrorCode::MissingField, "", lacks);
    expectFindingError(with({{"clear", {"tenderness"}}}), ErrorCode::MissingField, "", lacks);
    expectFindingError(with(json::object()), ErrorCode::MissingField, "",
        "tenderness, restriction, sore, stiff, play, end_feel, familiar, texture, refers_to, clear, unable or note"); // certain
                                                                                                                      // alone
                                                                                                                      // says
                                                                                                                      // nothing
    for (const json &felt : {json{{"restriction", 0}}, json{{"restriction", 2}}, json{{"play", 3}}, json{{"play", 1}},
             json{{"clear", true}}, json{{"clear", {"motion"}}}})
        EXPECT_TRUE(only(readFinding(with(felt))).certain) << felt;
    expectFindingError({{"structure", "l4-l5"}, {"play", 2}, {"certain", 1}}, ErrorCode::WrongType, "/certain", "true or false");
}

TEST(VisitJson, WhereItHurtsIsPlacesOfTheAtlas)
{
    const auto at = [](const json &places) {
        json visit = visitWith(json::array());
        visit["complaint_at"] = places;
        return readJson(visit);
    };
    const std::string pointer = "v.json#/complaint_at";
    EXPECT_TRUE(at(json::array()));
    EXPECT_TRUE(at({{{"structure", "gluteus"}, {"side", "left"}}, {{"structure", "gluteus"}, {"side", "right"}}}));
    expectError(at("hip"), ErrorCode::WrongType, pointer, "array");
    expectError(at({"gluteus"}), ErrorCode::WrongType, pointer + "/0", "object");
    expectError(at({{{"structure", "tail"}}}), ErrorCode::UnknownId, pointer + "/0/structure", "tail");
    expectError(at({{{"structure", "Tail"}}}), ErrorCode::BadId, pointer + "/0/structure", "Tail");
    expectError(at({{{"structure", "gluteus"}}}), ErrorCode::MissingField, pointer + "/0", "side");
    expectError(at({{{"structure", "sacrum"}}, {{"structure", "gluteus"}, {"side", "midline"}}}), ErrorCode::WrongSide,
        pointer + "/1/side", "gluteus");
    expectError(at({{{"structure", "gluteus"}, {"side", "both"}}}), ErrorCode::UnknownWord, pointer + "/0/side", "both");
    expectError(at({{{"structure", "sacrum"}, {"spot", "belly"}}}), ErrorCode::UnknownField, pointer + "/0", "spot");
    expectError(at({{{"side", "left"}}}), ErrorCode::MissingField, pointer + "/0", "structure");
    expectError(at({{{"structure", "sacrum"}}, {{"structure", "tract"}, {"side", "left"}},
                    {{"structure", "sacrum"}, {"side", "midline"}}}),
        ErrorCode::Duplicate, pointer + "/2", "sacrum");
}

TEST(VisitJson, ConditionsHaveAnIdAndPerhapsPlaces)
{
    const auto having = [](const json &conditions) {
        json visit = visitWith(json::array());
        visit["conditions"] = conditions;
        return readJson(visit);
    };
    const std::string pointer = "v.json#/conditions";
    EXPECT_TRUE(having(json::array()));
    EXPECT_TRUE(having({{{"condition", "anything-well-formed"}}})) << "which ones there are, the caution rules know";
    expectError(having("fever"), ErrorCode::WrongType, pointer, "array");
    expectError(having({"fever"}), ErrorCode::WrongType, pointer + "/0", "object");
    expectError(having({{{"at", json::array()}}}), ErrorCode::MissingField, pointer + "/0", "condition");
    expectError(having({{{"condition", "fever"}}, {{"condition", "High Fever"}}}), ErrorCode::BadId, pointer + "/1/condition",
        "High Fever");
    expectError(having({{{"condition", ""}}}), ErrorCode::BadId, pointer + "/0/condition", "");
    expectError(having({{{"condition", 3}}}), ErrorCode::WrongType, pointer + "/0/condition", "text");
    expectError(having({{{"condition", "fever"}, {"since", "May"}}}), ErrorCode::UnknownField, pointer + "/0", "since");
    expectError(having({{{"condition", "scar"}, {"at", {{{"structure", "tract"}, {"side", "left"}}, {{"structure", "tail"}}}}}}),
        ErrorCode::UnknownId, pointer + "/0/at/1/structure", "tail");
    expectError(having({{{"condition", "scar"}, {"at", {{{"structure", "tract"}}}}}}), ErrorCode::MissingField,
        pointer + "/0/at/0", "side");
    expectError(having({{{"condition", "scar"}, {"at", {{{"structure", "sacrum"}}, {{"structure", "sacrum"}}}}}}),
        ErrorCode::Duplicate, pointer + "/0/at/1", "sacrum");
}

TEST(VisitJson, AWarningSignIsAnsweredWithWhatWasDecided)
{
    const auto having = [](const json &warnings) {
        json visit = visitWith(json::array());
        visit["warnings"] = warnings;
        return readJson(visit);
    };
    const json yes{{"sign", "hot-joint"}, {"answer", "yes"}, {"asked", "2026-11-27"}, {"at", {{{"structure", "sacrum"}}}},
        {"decided", "care-same-day"}, {"why", "red and hot"}, {"told", "the doctor"}};
    const auto with = [&](const char *field, const json &value) {
        json spoilt = yes;
        spoilt[field] = value;
        return having(json::array({spoilt}));
    };
    const auto without = [&](const char *field) {
        json spoilt = yes;
        spoilt.erase(field);
        return having(json::array({spoilt}));
    };
    const std::string pointer = "v.json#/warnings";
    const auto read = having(json::array({yes}));
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(read.value().warnings,
        (std::vector<WarningAnswer>{{"hot-joint", true, "2026-11-27", {{{"sacrum"}, Side::Midline}}, Decision::CareSameDay,
            "red and hot", "the doctor"}}));
    EXPECT_TRUE(having({{{"sign", "hot-joint"}, {"answer", "no"}, {"asked", "2026-11-27"}}}));
    EXPECT_TRUE(without("told"));
    expectError(having(json::array({yes, yes})), ErrorCode::Duplicate, pointer + "/1", "hot-joint");
    expectError(without("asked"), ErrorCode::MissingField, pointer + "/0", "asked");
    expectError(
        with("asked", "2026-02-29"), ErrorCode::OutOfRange, pointer + "/0/asked", "2026-02-29, allowed: a real date, YYYY-MM-DD");
    expectError(with("answer", "perhaps"), ErrorCode::UnknownWord, pointer + "/0/answer", "perhaps");
    expectError(with("answer", "no"), ErrorCode::Contradiction, pointer + "/0", "answer no, and what was decided");
    expectError(with("decided", "nothing"), ErrorCode::UnknownWord, pointer + "/0/decided", "nothing");
    expectError(without("why"), ErrorCode::MissingField, pointer + "/0", "why");
    expectError(with("moved", true), ErrorCode::Contradiction, pointer + "/0", "decided, moved");
    const auto moved = having({{{"sign", "hot-joint"}, {"answer", "yes"}, {"asked", "2026-11-27"}, {"moved", true}}});
    ASSERT_TRUE(moved);
    EXPECT_TRUE(moved.value().warnings.front().isMoved);
    expectError(having({{{"sign", "hot-joint"}, {"answer", "no"}, {"asked", "2026-11-27"}, {"moved", true}}}),
        ErrorCode::Contradiction, pointer + "/0", "answer no, and what was decided");
    expectError(with("sign", "Hot Joint"), ErrorCode::BadId, pointer + "/0/sign", "Hot Joint");
}

TEST(VisitJson, TheWishesForThePlanAreRead)
{
    const auto planned = [](const json &plan) {
        json visit = visitWith(json::array());
        visit["plan"] = plan;
        return readJson(visit);
    };
    const json hip{{"structure", "hip-joint"}, {"side", "left"}};
    const auto with = [](json place, const json &more) {
        place.update(more);
        return place;
    };
    const Place left{{"hip-joint"}, Side::Left};
    const Place right{{"hip-joint"}, Side::Right};
    const json other{{"structure", "hip-joint"}, {"side", "right"}};
    const auto read = planned({{"minutes", 35}, {"barred", {"prone", "on-left-side"}}, {"refused", {"thrust"}},
        {"places", {with(hip, {{"pinned", true}, {"technique", "held-ease"}}), with(other, {{"dropped", true}})}},
        {"order", {{{"first", other}, {"then", hip}}}}});
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    PlanWish expected;
    expected.minutes = 35;
    expected.barred = {Position::Prone, Position::OnLeftSide};
    expected.refused = {"thrust"};
    expected.pinned = {left};
    expected.dropped = {right};
    expected.byHand = {{left, "held-ease"}};
    expected.ordered = {{right, left}};
    EXPECT_EQ(read.value().plan, expected);
    const Visit image = mirrored(read.value());
    EXPECT_EQ(image.plan.barred, (std::set<Position>{Position::Prone, Position::OnRightSide}));
    EXPECT_EQ(image.plan.pinned, (std::set<Place>{right}));

    const std::string pointer = "v.json#/plan";
    const auto refused = [&](const json &plan, ErrorCode code, const std::string &where, const std::string &detail) {
        SCOPED_TRACE(plan.dump());
        expectError(planned(plan), code, pointer + where, detail);
    };
    refused({{"minutes", 241}}, ErrorCode::OutOfRange, "/minutes", "241, allowed: whole number 0 to 240");
    refused({{"colour", 1}}, ErrorCode::UnknownField, "", "colour");
    refused({{"barred", {"standing"}}}, ErrorCode::UnknownWord, "/barred/0", "standing");
    refused({{"barred", {"prone", "prone"}}}, ErrorCode::Duplicate, "/barred/1", "prone");
    refused({{"refused", {"thrust", "thrust"}}}, ErrorCode::Duplicate, "/refused/1", "thrust");
    refused({{"refused", {"Two Words"}}}, ErrorCode::BadId, "/refused/0", "Two Words");
    refused({{"places", {hip}}}, ErrorCode::MissingField, "/places/0", "pinned, dropped or technique");
    refused({{"places", {with(hip, {{"pinned", true}, {"dropped", true}})}}}, ErrorCode::Contradiction, "/places/0",
        "pinned, dropped");
    refused({{"places", {with(hip, {{"pinned", true}}), with(hip, {{"dropped", true}})}}}, ErrorCode::Duplicate, "/places/1",
        "hip-joint");
    refused({{"places", {with(hip, {{"technique", "A B"}})}}}, ErrorCode::BadId, "/places/0/technique", "A B");
    refused({{"order", {{{"first", hip}, {"then", hip}}}}}, ErrorCode::Contradiction, "/order/0", "first, then");
    refused({{"order", {{{"first", hip}}}}}, ErrorCode::MissingField, "/order/0", "then");
}

TEST(VisitJson, ARowIsPinnedOrDismissedWithItsReason)
{
    const auto judged = [](const json &judgements) {
        json visit = visitWith(json::array());
        visit["judgements"] = judgements;
        return readJson(visit);
    };
    const auto hip = [](json more) {
        json judgement{{"list", "check"}, {"structure", "hip-joint"}, {"side", "left"}};
        judgement.update(more);
        return judgement;
    };
    const std::string pointer = "v.json#/judgements";
    EXPECT_TRUE(judged(json::array()));
    EXPECT_TRUE(judged(json::array({hip({{"pinned", true}})})));
    EXPECT_TRUE(judged(json::array({hip({{"pinned", true}, {"dismissed", ""}})})));
    EXPECT_TRUE(judged(json::array({hip({{"dismissed", "was done"}, {"pinned", false}})})));
    const auto refused = [&](const json &judgement, ErrorCode code, const std::string &where, const std::string &detail) {
        SCOPED_TRACE(judgement.dump());
        expectError(judged(json::array({judgement})), code, pointer + "/0" + where, detail);
    };
    refused(hip(json::object()), ErrorCode::MissingField, "", "pinned or dismissed");
    refused(hip({{"pinned", false}}), ErrorCode::MissingField, "", "pinned or dismissed");
    refused(hip({{"dismissed", ""}}), ErrorCode::MissingField, "", "pinned or dismissed");
    refused(hip({{"pinned", true}, {"dismissed", "was done"}}), ErrorCode::Contradiction, "", "pinned, dismissed");
    refused(hip({{"pinned", "yes"}}), ErrorCode::WrongType, "/pinned", "true or false");
    refused(hip({{"dismissed", true}}), ErrorCode::WrongType, "/dismissed", "text");
    refused(hip({{"pinned", true}, {"list", "tied"}}), ErrorCode::UnknownWord, "/list", "tied");
    refused(hip({{"pinned", true}, {"structure", "tail"}}), ErrorCode::UnknownId, "/structure", "tail");
    refused(hip({{"pinned", true}, {"side", "midline"}}), ErrorCode::WrongSide, "/side", "hip-joint");
    refused(hip({{"pinned", true}, {"why", "x"}}), ErrorCode::UnknownField, "", "why");
    refused({{"structure", "hip-joint"}, {"side", "left"}, {"pinned", true}}, ErrorCode::MissingField, "", "list");
    refused({{"list", "check"}, {"pinned", true}}, ErrorCode::MissingField, "", "structure");
    refused("hip-joint", ErrorCode::WrongType, "", "object");

    const json first = hip({{"pinned", true}});
    EXPECT_TRUE(judged(json::array({first, hip({{"pinned", true}, {"list", "treat"}})}))) << "another list";
    EXPECT_TRUE(judged(json::array({first, hip({{"pinned", true}, {"side", "right"}})}))) << "another side";
    expectError(judged(json::array({first, first})), ErrorCode::Duplicate, pointer + "/1", "hip-joint");
    expectError(
        judged(json::array({first, hip({{"dismissed", "was done"}})})), ErrorCode::Duplicate, pointer + "/1", "hip-joint");
}

TEST(VisitJson, OnePlaceOccursOnce)
{
    const json base{{"structure", "gluteus"}, {"side", "left"}, {"tenderness", 1}};
    const auto pair = [&base](const json &change) {
        json second = base;
        second.update(change);
        return readJson(visitWith(json::array({base, second})));
    };
    expectError(pair({{"tenderness", 3}}), ErrorCode::Duplicate, "v.json#/findings/1", "gluteus");
    EXPECT_TRUE(pair({{"side", "right"}}));
    EXPECT_TRUE(pair({{"spot", "belly"}}));
    EXPECT_TRUE(pair({{"at", "tract"}}));
    EXPECT_TRUE(pair({{"structure", "tract"}}));
    const json left_out{{"structure", "sacrum"}, {"clear", true}};
    const json written{{"structure", "sacrum"}, {"side", "midline"}, {"tenderness", 1}};
    expectError(readJson(visitWith(json::array({left_out, written}))), ErrorCode::Duplicate, "v.json#/findings/1", "sacrum");
}

TEST(VisitJson, UnknownFieldsAndIdsAreErrors)
{
    json visit = visitWith(json::array());
    visit["mood"] = "good";
    expectError(readJson(visit), ErrorCode::UnknownField, "v.json#/", "mood");
    visit = visitWith(json::array());
    visit["patient"] = {{"name", "A"}, {"shoe", 42}};
    expectError(readJson(visit), ErrorCode::UnknownField, "v.json#/patient", "shoe");
    expectFindingError({{"structure", "sacrum"}, {"tender", 2}}, ErrorCode::UnknownField, "", "tender");
    expectFindingError({{"structure", "tail"}, {"tenderness", 2}}, ErrorCode::UnknownId, "/structure", "tail");
    expectFindingError({{"structure", "Sacrum"}, {"tenderness", 2}}, ErrorCode::BadId, "/structure", "Sacrum");
    expectFindingError({{"tenderness", 2}}, ErrorCode::MissingField, "", "structure");
    expectFindingError("sacrum", ErrorCode::WrongType, "", "object");
}

TEST(VisitJson, FormatAndVersionComeFirst)
{
    json visit = visitWith(json::array());
    visit["version"] = 3;
    visit["a_field_of_version_3"] = true;
    expectError(readJson(visit), ErrorCode::NewerVersion, "v.json#/version", "3");
    for (const json &version : {json(0), json(-1), json(1.5)}) {
        visit["version"] = version;
        expectError(readJson(visit), ErrorCode::WrongFormat, "v.json#/version", version.dump());
    }
    visit["version"] = "1";
    expectError(readJson(visit), ErrorCode::WrongType, "v.json#/version", "number");
    visit["format"] = "raphe-atlas";
    expectError(readJson(visit), ErrorCode::WrongFormat, "v.json#/format", "raphe-atlas");
    for (const char *field : {"format", "version", "findings"}) {
        visit = visitWith(json::array());
        visit.erase(field);
        expectError(readJson(visit), ErrorCode::MissingField, "v.json#/", field);
    }
}

// Version 1 had one complaint, in two fields; its files stay good, and each version refuses the fields of the other.
TEST(VisitJson, TheFirstVersionIsReadAndWrittenAsTheSecond)
{
    json old = visitWith(json::array());
    old["version"] = 1;
    old["episode"] = 4;
    old["complaint"] = "my knee";
    const auto visit = readJson(old);
    ASSERT_TRUE(visit) << testing::PrintToString(visit.error());
    EXPECT_EQ(visit.value().episode(), 4);
    EXPECT_EQ(visit.value().complaint(), "my knee");
    const json written = json::parse(writeVisit(visit.value()));
    EXPECT_EQ(written["version"], 2);
    EXPECT_EQ(written["complaints"], json::array({json{{"episode", 4}, {"text", "my knee"}}}));
    EXPECT_EQ(readJson(written).value(), visit.value());

    old["complaints"] = json::array();
    expectError(readJson(old), ErrorCode::UnknownField, "v.json#/", "complaints");
    json mixed = visitWith(json::array());
    mixed["complaint"] = "my knee";
    expectError(readJson(mixed), ErrorCode::UnknownField, "v.json#/", "complaint");
}

TEST(VisitJson, IntakeHasLimitsAndNoHalfAnswers)
{
    const auto with = [](const char *field, const json &value) {
        json visit = visitWith(json::array());
        visit[field] = value;
        return readJson(visit);
    };
    expectError(with("complaints", {{{"now", 11}}}), ErrorCode::OutOfRange, "v.json#/complaints/0/now",
        "11, allowed: whole number 0 to 10");
    expectError(with("complaints", {{{"activities", {json::object()}}}}), ErrorCode::MissingField,
        "v.json#/complaints/0/activities/0", "name or score");
    EXPECT_FALSE(with("complaints", json(Complaint::most + 1, json{{"text", "x"}})));
    EXPECT_FALSE(with("complaints", {{{"activities", json(Activity::most + 1, json{{"name", "x"}})}}}));
    const json consent{{"item", "cupping"}, {"answer", "given"}, {"asked", "2024-02-29"}};
    ASSERT_TRUE(with("consents", json::array({consent})));
    expectError(with("consents", json::array({consent, consent})), ErrorCode::Duplicate, "v.json#/consents/1", "cupping");
    json named = consent;
    named["chaperone_name"] = "C. Ode";
    EXPECT_FALSE(with("consents", json::array({named})));
    json undated = consent;
    undated.erase("asked");
    expectError(with("consents", json::array({undated})), ErrorCode::MissingField, "v.json#/consents/0", "asked");
}

TEST(VisitJson, DatesAreRealDays)
{
    for (const char *date : {"2024-02-29", "2000-02-29", "1999-12-31", "2023-04-30"})
        EXPECT_TRUE(isIsoDate(date)) << date;
    for (const char *date : {"", "2023-02-29", "1900-02-29", "2023-04-31", "2023-13-01", "2023-00-10", "2023-01-00", "2023-01-32",
             "23-01-01", "2023-1-01", "2023/01/01", "01.02.2023", "2023-01-01 ", " 2023-01-01", "2023-01-01T00:00", "2023-01-0a",
             "+023-01-01", "20230101"}) {
        EXPECT_FALSE(isIsoDate(date)) << date;
        json visit = visitWith(json::array());
        visit["date"] = date;
        expectError(
            readJson(visit), ErrorCode::OutOfRange, "v.json#/date", std::string(date) + ", allowed: a real date, YYYY-MM-DD");
        visit = visitWith(json::array());
        visit["patient"] = {{"name", "A"}, {"born", date}};
        expectError(readJson(visit), ErrorCode::OutOfRange, "v.json#/patient/born",
            std::string(date) + ", allowed: a real date, YYYY-MM-DD");
    }
}

TEST(VisitJson, BrokenTextIsAnErrorWithItsPlace)
{
    const auto broken = readVisit("{\n  \"format\": ?", "v.json", theAtlas());
    ASSERT_FALSE(broken);
    EXPECT_EQ(broken.error().code, ErrorCode::BadJson);
    EXPECT_EQ(broken.error().place, "v.json, line 2, column 13");
    // Numbers that no double holds and text that is not UTF-8 must not escape as exceptions either.
    for (const std::string text : {"{\"version\":1e999}", "{\"format\":\"\xff\"}", "", "\"\\ud800\""}) {
        const auto visit = readVisit(text, "v.json", theAtlas());
        ASSERT_FALSE(visit) << text;
        EXPECT_EQ(visit.error().code, ErrorCode::BadJson) << text;
    }
    for (const char *text : {"[]", "null", "3", "\"raphe-visit\""})
        expectError(readVisit(text, "v.json", theAtlas()), ErrorCode::MissingField, "v.json#/", "format");
}

// Random visits that keep the rules.
class RandomVisits {
public:
    explicit RandomVisits(unsigned seed) : m_random(seed) { }

    Visit next()
    {
        Visit visit;
        if (chance())
            visit.patient = Patient{chance() ? words() : "", chance() ? "1950-06-07" : ""};
        if (chance())
            visit.date = "2024-02-29";
        if (chance())
            visit.practitioner = words();
        for (int i = below(3); i > 0; --i)
            visit.complaints.push_back(complaint());
        if (chance())
            visit.consents.push_back({"cupping", pick(consentStateWords), "2024-02-28", {}, {}, Guardian{words(), {}}, words()});
        if (chance())
            visit.consents.push_back(
                {"mouth", ConsentState::Given, "2024-02-28", Chaperone::Present, chance() ? words() : "", {}, {}});
        if (chance())
            visit.sinceLast =
                SinceLast{pick(courseWords), pick(reactionWords), words(), {{words(), pick(keptWords)}, {words(), {}}}};
        for (int i = below(3); i > 0; --i)
            visit.promised.push_back(words());
        for (int i = below(3); i > 0; --i)
            visit.focus.push_back(words());
        visit.sidesIntended = chance();
        for (int i = below(3); i > 0; --i)
            visit.cautions.push_back(words());
        visit.complaintAt = places();
        for (int i = below(3); i > 0; --i)
            visit.pain.push_back(patch());
        for (int i = below(3); i > 0; --i)
            visit.conditions.push_back({chance() ? "thin-bone" : "new-scar", places()});
        visit.injured = chance();
        for (const char *sign : {"saddle-numbness", "hot-joint"}) {
            if (chance())
                continue;
            WarningAnswer answer{sign, chance(), "2024-02-28", {}, {}, {}, {}};
            if (answer.isThere) {
                answer.at = places();
                if (chance())
                    answer.decided = decisionWords[static_cast<std::size_t>(below(decisionWords.size()))].first;
                answer.why = "since " + words();
                answer.told = chance() ? words() : std::string();
                answer.isMoved = !answer.decided && chance();
            }
            visit.warnings.push_back(std::move(answer));
        }
        for (int i = below(4); i > 0; --i) {
            const AdviceList list = adviceListWords[static_cast<std::size_t>(below(adviceListWords.size()))].first;
            const Judgement judgement{list, place(), chance() ? std::string() : words()};
            const auto same = [&](const Judgement &j) { return j.list == judgement.list && j.place == judgement.place; };
            if (std::none_of(visit.judgements.begin(), visit.judgements.end(), same))
                visit.judgements.push_back(judgement);
        }
        visit.plan = planWish();
        if (chance())
            visit.retested.pain = PainScore{below(11)};
        if (chance())
            visit.closing = closing();
        for (int i = below(3); i > 0; --i)
            visit.letters.push_back(letter());
        std::set<std::pair<Place, std::optional<Spot>>> seen;
        for (int i = below(12); i > 0; --i) {
            Finding finding = nextFinding();
            if (seen.emplace(finding.place, finding.spot).second)
                visit.findings.push_back(std::move(finding));
        }
        return visit;
    }

    int below(int limit) { return std::uniform_int_distribution(0, limit - 1)(m_random); }

private:
    PlanWish planWish()
    {
        PlanWish out;
        if (chance())
            out.minutes = below(PlanWish::mostMinutes + 1);
        for (int i = below(3); i > 0; --i)
            out.barred.insert(positionWords[static_cast<std::size_t>(below(positionWords.size()))].first);
        if (chance())
            out.refused = {"cups-still", "thrust"};
        for (int i = below(3); i > 0; --i)
            out.pinned.insert(place());
        for (int i = below(3); i > 0; --i)
            if (const Place dropped = place(); !out.pinned.contains(dropped))
                out.dropped.insert(dropped);
        if (chance())
            out.byHand.emplace(place(), "gliding");
        const std::pair pair(place(), place());
        if (chance() && pair.first != pair.second)
            out.ordered.push_back(pair);
        return out;
    }
    Letter letter()
    {
        const auto text = [this] { return chance() ? LetterText{} : LetterText{words(), chance() ? words() : ""}; };
        Letter out{"2024-02-29", {}, words(), pick(urgencyWords), text(), text(), {}, chance() ? "2024-03-01" : ""};
        if (chance())
            out.to = {words(), chance() ? words() : "", {words()}};
        if (chance())
            out.parts = {{"Complaint", {words(), words()}}, {"Tests", {"", words()}}};
        return out;
    }
    Closing closing()
    {
        Closing out;
        if (chance())
            out.advice.push_back({"walk-a-little", chance() ? words() : "", words()});
        for (int i = below(3); i > 0; --i)
            out.advice.push_back({"", "", words()});
        out.isTold = chance();
        for (int i = below(3); i > 0; --i)
            out.focus.push_back(words());
        if (chance())
            out.impression = {words(), chance() ? "B-12" : "", chance() ? words() : ""};
        for (int i = below(3); i > 0; --i)
            out.goals.push_back({words(), chance() ? "2024-05-01" : "", chance()});
        if (chance())
            out.plan =
                CarePlan{"2024-02-29", 1 + below(CarePlan::mostVisits), 1 + below(CarePlan::mostDays), chance() ? words() : ""};
        if (chance())
            out.review = CareReview{pick(careDecisionWords), words()};
        if (chance())
            out.call = LaterCall{"2024-03-02", {}, {}, {}};
        if (out.call && chance())
            out.call = LaterCall{"2024-03-02", "2024-03-03", pick(reactionWords), chance() ? words() : ""};
        return out;
    }
    bool chance() { return below(2) == 0; }
    std::string words()
    {
        static const std::vector<std::string> samples{
            "pain", "größer", "\"quoted\" \\ back", "two\nlines\ttab", "𝄞 é", "\x01\x7f", "</p>"};
        return samples[static_cast<std::size_t>(below(static_cast<int>(samples.size())))];
    }

    template <class E, std::size_t N> E pick(const WordTable<E, N> &table)
    {
        return table[static_cast<std::size_t>(below(static_cast<int>(N)))].first;
    }

    Complaint complaint()
    {
        Complaint out;
        out.text = words();
        if (chance())
            out.episode = 1 + below(9);
        if (chance())
            out.now = PainScore{below(11)};
        if (chance())
            out.best = PainScore{below(11)};
        out.aggravates = chance() ? words() : "";
        for (auto &level : out.day)
            if (chance())
                level = pick(dayLevelWords);
        if (chance())
            out.irritability = pick(irritabilityWords);
        for (int i = below(4); i > 0; --i)
            out.activities.push_back({words(), chance() ? std::optional(below(11)) : std::nullopt});
        out.goal = chance() ? words() : "";
        out.asked = chance() ? "2024-02-29" : "";
        return out;
    }

    Place place()
    {
        const auto &all = theAtlas().structures();
        const Structure &s = all[static_cast<std::size_t>(below(static_cast<int>(all.size())))];
        const auto sides = theAtlas().sides(s);
        return {s.id, sides[static_cast<std::size_t>(below(static_cast<int>(sides.size())))]};
    }

    std::vector<Place> places()
    {
        std::vector<Place> out;
        for (int i = below(4); i > 0; --i)
            if (const Place one = place(); std::find(out.begin(), out.end(), one) == out.end())
                out.push_back(one);
        return out;
    }

    PainPatch patch()
    {
        PainPatch out;
        out.view = viewWords[static_cast<std::size_t>(below(viewWords.size()))].first;
        if (isWhole(out.view))
            out.facing = chance() ? Side::Left : Side::Right;
        for (int i = 1 + below(2); i > 0; --i) {
            out.strokes.push_back({{}, 1 + below(990) / 10.0});
            for (int p = 1 + below(3); p > 0; --p)
                out.strokes.back().points.push_back({below(10001) / 10.0 - 500, below(10001) / 10.0});
        }
        if (chance())
            out.quality = painQualityWords[static_cast<std::size_t>(below(painQualityWords.size()))].first;
        if (chance())
            out.intensity = PainScore{below(PainScore::highest + 1)};
        out.painter = chance() ? Painter::Patient : Painter::Practitioner;
        out.confirmed = chance();
        return out;
    }

    Finding nextFinding()
    {
        Finding f;
        f.place = place();
        const Structure &s = theAtlas().at(f.place.structure);
        const bool soft = s.kind == Kind::Muscle || s.kind == Kind::Fascia || s.kind == Kind::Ligament;
        if (soft && chance())
            f.spot = spotWords[static_cast<std::size_t>(below(spotWords.size()))].first;
        if (s.id.value == "gluteus" && chance())
            f.at = StructureId{f.spot == Spot::Origin ? "hip-bone" : "tract"};
        if (below(6) == 0) {
            f.unable = words();
            return f;
        }
        if (chance())
            f.tenderness = Tenderness{below(5)};
        if (chance())
            f.restriction = Restriction{below(4)};
        if (s.kind == Kind::Joint && chance())
            f.play = JointPlay{below(7)};
        f.familiar = below(4) == 0;
        const bool movesFreely =
            f.restriction.value_or(Restriction{}).grade == 0 && f.play.value_or(JointPlay{}).grade == JointPlay::normal;
        f.clear = {f.tenderness.value_or(Tenderness{}).grade == 0 && chance(), movesFreely && chance()};
        f.certain = (f.restriction || f.play || f.clear.motion) && chance();
        const bool silent = !f.tenderness && !f.restriction && !f.play && !f.familiar && !f.clear.any();
        if (silent || chance())
            f.note = words();
        return f;
    }

    std::mt19937 m_random;
};

TEST(VisitJson, WritingLosesNothing)
{
    RandomVisits visits(20240229);
    for (int i = 0; i < 500; ++i) {
        const Visit visit = visits.next();
        const std::string written = writeVisit(visit);
        const auto read = readVisit(written, "v.json", theAtlas());
        ASSERT_TRUE(read) << testing::PrintToString(read.error()) << "\n" << written;
        ASSERT_EQ(read.value(), visit) << written;
        ASSERT_EQ(writeVisit(read.value()), written);
    }
}

TEST(VisitJson, WritesInAStableReadableOrder)
{
    Visit visit;
    visit.patient = Patient{"Ana", ""};
    visit.date = "2024-02-29";
    Finding finding;
    finding.place = {{"l4-l5"}, Side::Midline};
    finding.tenderness = Tenderness{2};
    finding.play = JointPlay{3};
    finding.certain = true;
    finding.clear.motion = true;
    visit.findings.push_back(finding);
    visit.complaintAt = {{{"gluteus"}, Side::Left}};
    PainPatch patch;
    patch.view = View::Side;
    patch.facing = Side::Left;
    patch.quality = PainQuality::Numb;
    patch.intensity = PainScore{0};
    patch.confirmed = true;
    patch.strokes = {{{{-12.5, 480}}, 6}};
    visit.pain.push_back(patch);
    visit.conditions = {{"thin-bone", {}}, {"new-scar", {{{"sacrum"}, Side::Midline}}}};
    visit.judgements.push_back(judgementOf(AdviceList::Explain, "hip-joint", Side::Right, ""));
    visit.judgements.push_back(judgementOf(AdviceList::Treat, "l4-l5", Side::Midline, "too sore"));
    EXPECT_EQ(writeVisit(visit), R"({
  "format": "raphe-visit",
  "version": 2,
  "patient": {
    "name": "Ana"
  },
  "date": "2024-02-29",
  "complaint_at": [
    {
      "structure": "gluteus",
      "side": "left"
    }
  ],
  "pain": [
    {
      "view": "side",
      "facing": "left",
      "quality": "numb",
      "intensity": 0,
      "painter": "patient",
      "confirmed": true,
      "strokes": [
        {
          "radius": 6.0,
          "points": [
            [
              -12.5,
              480.0
            ]
          ]
        }
      ]
    }
  ],
  "conditions": [
    {
      "condition": "thin-bone"
    },
    {
      "condition": "new-scar",
      "at": [
        {
          "structure": "sacrum",
          "side": "midline"
        }
      ]
    }
  ],
  "findings": [
    {
      "structure": "l4-l5",
      "side": "midline",
      "tenderness": 2,
      "play": 3,
      "certain": true,
      "clear": [
        "motion"
      ]
    }
  ],
  "judgements": [
    {
      "list": "explain",
      "structure": "hip-joint",
      "side": "right",
      "pinned": true
    },
    {
      "list": "treat",
      "structure": "l4-l5",
      "side": "midline",
      "dismissed": "too sore"
    }
  ]
}
)");
}

TEST(VisitJson, WritesEvenTextThatIsNotUtf8)
{
    Visit visit;
    visit.complaints = {test::complaintOf("caf\xe9")};
    const auto read = readVisit(writeVisit(visit), "v.json", theAtlas());
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(read.value().complaint(), "caf\xef\xbf\xbd");
}

TEST(VisitJson, DamagedFilesAreRefusedOrReadWhole)
{
    RandomVisits visits(7);
    int refused = 0;
    for (int i = 0; i < 300; ++i) {
        std::string text = writeVisit(visits.next());
        const auto at = static_cast<std::size_t>(visits.below(static_cast<int>(text.size())));
        if (i % 3 == 0)
            text.resize(at);
        else if (i % 3 == 1)
            text[at] = static_cast<char>(visits.below(256));
        else
            text.insert(at, text.substr(0, at));
        const auto read = readVisit(text, "v.json", theAtlas());
        if (!read) {
            ++refused;
            EXPECT_FALSE(read.error().place.empty());
            continue;
        }
        const auto again = readVisit(writeVisit(read.value()), "v.json", theAtlas());
        ASSERT_TRUE(again) << testing::PrintToString(again.error()) << "\n" << text;
        EXPECT_EQ(again.value(), read.value()) << text;
    }
    EXPECT_GT(refused, 150);
}

Place otherSide(Place place)
{
    if (place.side != Side::Midline)
        place.side = place.side == Side::Left ? Side::Right : Side::Left;
    return place;
}

TEST(Visit, MirroringSwapsSidesAndTwiceGivesItBack)
{
    RandomVisits visits(11);
    for (int i = 0; i < 200; ++i) {
        const Visit visit = visits.next();
        const Visit other = mirrored(visit);
        ASSERT_EQ(mirrored(other), visit);
        ASSERT_EQ(other.findings.size(), visit.findings.size());
        for (std::size_t f = 0; f < visit.findings.size(); ++f) {
            Finding expected = visit.findings[f];
            expected.place = otherSide(expected.place);
            ASSERT_EQ(other.findings[f], expected);
        }
        // What has no side, and the order, stay; every place changes its side.
        const auto expectMirrored = [](const std::vector<Place> &places, const std::vector<Place> &others) {
            ASSERT_EQ(others.size(), places.size());
            for (std::size_t p = 0; p < places.size(); ++p)
                ASSERT_EQ(others[p], otherSide(places[p]));
        };
        expectMirrored(visit.complaintAt, other.complaintAt);
        ASSERT_EQ(other.pain.size(), visit.pain.size());
        for (std::size_t p = 0; p < visit.pain.size(); ++p)
            ASSERT_EQ(other.pain[p], mirrored(visit.pain[p]));
        ASSERT_EQ(other.conditions.size(), visit.conditions.size());
        for (std::size_t c = 0; c < visit.conditions.size(); ++c) {
            ASSERT_EQ(other.conditions[c].id, visit.conditions[c].id);
            expectMirrored(visit.conditions[c].at, other.conditions[c].at);
        }
        ASSERT_EQ(other.warnings.size(), visit.warnings.size());
        for (std::size_t w = 0; w < visit.warnings.size(); ++w) {
            WarningAnswer expected = visit.warnings[w];
            expectMirrored(visit.warnings[w].at, other.warnings[w].at);
            expected.at = other.warnings[w].at;
            ASSERT_EQ(other.warnings[w], expected);
        }
        ASSERT_EQ(other.judgements.size(), visit.judgements.size());
        for (std::size_t j = 0; j < visit.judgements.size(); ++j)
            ASSERT_EQ(other.judgements[j],
                (Judgement{visit.judgements[j].list, otherSide(visit.judgements[j].place), visit.judgements[j].dismissed}));
        for (const auto &[one, two] : {std::pair{&PlanWish::pinned, "pinned"}, {&PlanWish::dropped, "dropped"}}) {
            ASSERT_EQ((other.plan.*one).size(), (visit.plan.*one).size()) << two;
            for (const Place &place : visit.plan.*one)
                ASSERT_TRUE((other.plan.*one).contains(otherSide(place))) << two;
        }
        ASSERT_EQ(mirrored(other.plan), visit.plan);
        ASSERT_EQ(other.focus, visit.focus);
        ASSERT_EQ(other.retested.pain, visit.retested.pain);
        ASSERT_EQ(other.closing, visit.closing);
        ASSERT_EQ(other.letters, visit.letters);
        const auto read = readVisit(writeVisit(other), "v.json", theAtlas());
        ASSERT_TRUE(read) << testing::PrintToString(read.error());
    }
}

// The published schema and the reader say the same.
class VisitSchema : public testing::Test {
protected:
    void SetUp() override
    {
        const auto files = embeddedFiles("schema");
        ASSERT_TRUE(files);
        for (const NamedText &file : files.value())
            if (file.name == "visit.schema.json")
                schema = json::parse(file.text, nullptr, false);
        ASSERT_TRUE(schema.is_object());
        finding = schema["$defs"]["finding"];
    }

    json schema;
    json finding;
};

template <class Table> std::set<std::string> wordsOf(const Table &table)
{
    std::set<std::string> words;
    for (const auto &entry : table)
        words.emplace(entry.second);
    return words;
}

TEST_F(VisitSchema, NamesTheFieldsThatTheReaderKnows)
{
    std::set<std::string> known;
    for (const char *field : {"structure", "side", "spot", "at", "tenderness", "restriction", "sore", "stiff", "play", "end_feel",
             "familiar", "certain", "after_comparing", "texture", "refers_to", "clear", "unable", "note"})
        known.insert(field);
    std::set<std::string> named;
    for (const auto &[field, rule] : finding["properties"].items()) {
        named.insert(field);
        EXPECT_FALSE(rule.value("description", "").empty()) << field;
        const auto read = readFinding({{field, nullptr}});
        ASSERT_FALSE(read);
        EXPECT_NE(read.error().code, ErrorCode::UnknownField) << field;
    }
    EXPECT_EQ(named, known);
    EXPECT_FALSE(finding["additionalProperties"].get<bool>());

    for (const auto &[field, rule] : schema["properties"].items()) {
        EXPECT_FALSE(rule.value("description", "").empty()) << field;
        json visit = visitWith(json::array());
        if (field == "complaint" || field == "episode")
            visit["version"] = 1;
        visit[field] = 3.5;
        const auto read = readJson(visit);
        ASSERT_FALSE(read) << field;
        EXPECT_NE(read.error().code, ErrorCode::UnknownField) << field;
    }
    const json full = json::parse(
        R"({"format":0,"version":0,"patient":0,"date":0,"practitioner":0,"episode":0,"complaint":0,"complaints":0,"complaint_at":0,"pain":0,"cautions":0,"conditions":0,
            "injured":0,"warnings":0,"consents":0,"since_last":0,"promised":0,"focus":0,"findings":0,"measures":0,"tests":0,"retest":0,"timeline":0,"judgements":0,"plan":0,
            "treatment":0,"retested":0,"closing":0,"letters":0,"sides_intended":0})");
    for (const auto &[field, unused] : full.items())
        EXPECT_TRUE(schema["properties"].contains(field)) << field;
    EXPECT_EQ(schema["properties"].size(), full.size());
    EXPECT_FALSE(schema["additionalProperties"].get<bool>());

    // The same for what stands inside the other lists: `good` is one entry that the reader takes.
    const auto same = [&](const char *list, const json &rules, const std::set<std::string> &fields, const json &good) {
        std::set<std::string> inSchema;
        for (const auto &[field, rule] : rules["properties"].items()) {
            inSchema.insert(field);
            json visit = visitWith(json::array());
            visit[list] = json::array({good});
            ASSERT_TRUE(readJson(visit)) << list;
            visit[list][0][field] = 3.5;
            const auto read = readJson(visit);
            ASSERT_FALSE(read) << list << " " << field;
            EXPECT_NE(read.error().code, ErrorCode::UnknownField) << list << " " << field;
        }
        EXPECT_EQ(inSchema, fields) << list;
        EXPECT_FALSE(rules["additionalProperties"].get<bool>()) << list;
    };
    const json place{{"structure", "sacrum"}, {"side", "midline"}};
    same("complaint_at", schema["$defs"]["place"], {"structure", "side"}, place);
    same("conditions", schema["properties"]["conditions"]["items"], {"condition", "at"}, {{"condition", "scar"}});
    same("warnings", schema["properties"]["warnings"]["items"],
        {"sign", "answer", "asked", "at", "decided", "why", "told", "moved"},
        {{"sign", "hot-joint"}, {"answer", "yes"}, {"asked", "2026-11-27"}});
    same("pain", schema["$defs"]["pain_patch"], {"view", "facing", "quality", "intensity", "painter", "confirmed", "strokes"},
        {{"view", "side"}, {"facing", "left"}, {"painter", "patient"}, {"strokes", {{{"radius", 5}, {"points", {{1, 2}}}}}}});
    same("complaints", schema["$defs"]["complaint"],
        {"episode", "text", "since", "now", "worst", "best", "aggravates", "eases", "day", "irritability", "activities", "goal",
            "asked"},
        {{"text", "back"}});
    same("consents", schema["properties"]["consents"]["items"],
        {"item", "answer", "asked", "chaperone", "chaperone_name", "guardian", "remark"},
        {{"item", "cupping"}, {"answer", "given"}, {"asked", "2026-11-27"}, {"chaperone", "present"}});
    json judgement = place;
    judgement["list"] = "check";
    judgement["pinned"] = true;
    same("judgements", schema["properties"]["judgements"]["items"], {"list", "structure", "side", "pinned", "dismissed"},
        judgement);
}

TEST_F(VisitSchema, HasTheSameWordsAndScales)
{
    json fields = finding["properties"]; // a copy: a missing field then reads as null
    EXPECT_EQ(fields["side"]["enum"].get<std::set<std::string>>(), wordsOf(sideWords));
    EXPECT_EQ(fields["spot"]["enum"].get<std::set<std::string>>(), wordsOf(spotWords));
    EXPECT_EQ(fields["tenderness"]["minimum"], 0);
    EXPECT_EQ(fields["tenderness"]["maximum"], Tenderness::highest);
    EXPECT_EQ(fields["restriction"]["minimum"], 0);
    EXPECT_EQ(fields["restriction"]["maximum"], Restriction::highest);
    EXPECT_EQ(fields["play"]["minimum"], 0);
    EXPECT_EQ(fields["play"]["maximum"], JointPlay::highest);
    const json &warning = schema["properties"]["warnings"]["items"]["properties"];
    EXPECT_EQ(warning.value("/decided/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(decisionWords));
    const json &complaint = schema["$defs"]["complaint"]["properties"];
    EXPECT_EQ(
        complaint.value("/irritability/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(irritabilityWords));
    EXPECT_EQ(schema.value("/$defs/day_level/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(dayLevelWords));
    EXPECT_EQ(complaint.value("/activities/maxItems"_json_pointer, json()), Activity::most);
    EXPECT_EQ(schema.value("/properties/complaints/maxItems"_json_pointer, json()), Complaint::most);
    EXPECT_EQ(schema.value("/$defs/score/maximum"_json_pointer, json()), PainScore::highest);
    const json &consent = schema["properties"]["consents"]["items"]["properties"];
    EXPECT_EQ(consent.value("/answer/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(consentStateWords));
    EXPECT_EQ(consent.value("/chaperone/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(chaperoneWords));
    const json &since = schema["properties"]["since_last"]["properties"];
    EXPECT_EQ(since.value("/course/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(courseWords));
    EXPECT_EQ(since.value("/reaction/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(reactionWords));
    const json &judgement = schema["properties"]["judgements"]["items"]["properties"];
    EXPECT_EQ(judgement.value("/list/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(adviceListWords));
    EXPECT_EQ(judgement.value("/side/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(sideWords));
    EXPECT_EQ(
        schema.value("/$defs/place/properties/side/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(sideWords));
    const json &plan = schema["properties"]["plan"]["properties"];
    EXPECT_EQ(plan.value("/minutes/maximum"_json_pointer, json()), PlanWish::mostMinutes);
    EXPECT_EQ(plan.value("/barred/items/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(positionWords));
    EXPECT_EQ(
        plan.value("/places/items/properties/side/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(sideWords));
    const json &patch = schema["$defs"]["pain_patch"]["properties"];
    EXPECT_EQ(patch.value("/view/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(viewWords));
    EXPECT_EQ(patch.value("/quality/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(painQualityWords));
    EXPECT_EQ(patch.value("/painter/enum"_json_pointer, json()).get<std::set<std::string>>(), wordsOf(painterWords));
    EXPECT_EQ(patch.value("/intensity/maximum"_json_pointer, json()), PainScore::highest);
    EXPECT_EQ(patch.value("/strokes/maxItems"_json_pointer, json()), PainLimits::strokes);
    EXPECT_EQ(schema.value("/properties/pain/maxItems"_json_pointer, json()), PainLimits::patches);
    const json &stroke = schema["$defs"]["brush_stroke"]["properties"];
    EXPECT_EQ(stroke.value("/radius/minimum"_json_pointer, json()), PainLimits::leastRadius);
    EXPECT_EQ(stroke.value("/radius/maximum"_json_pointer, json()), PainLimits::greatestRadius);
    EXPECT_EQ(stroke.value("/points/maxItems"_json_pointer, json()), PainLimits::points);
    EXPECT_EQ(stroke.value("/points/items/prefixItems/0/minimum"_json_pointer, json()), viewFrame.left);
    EXPECT_EQ(stroke.value("/points/items/prefixItems/0/maximum"_json_pointer, json()), viewFrame.right);
    EXPECT_EQ(stroke.value("/points/items/prefixItems/1/minimum"_json_pointer, json()), viewFrame.top);
    EXPECT_EQ(stroke.value("/points/items/prefixItems/1/maximum"_json_pointer, json()), viewFrame.bottom);
    const Visit empty;
    const json written = json::parse(writeVisit(empty));
    EXPECT_EQ(schema["properties"]["format"]["const"], written["format"]);
    EXPECT_EQ(schema["properties"]["version"]["enum"], json::array({1, written["version"]}));
    for (const auto &field : schema["required"])
        EXPECT_TRUE(written.contains(field.get<std::string>())) << field;
    EXPECT_EQ(schema["required"].size(), written.size()) << "an empty visit writes only what is required";
}

} // namespace
} // namespace raphe
