// Every mistake that an atlas file can have is refused with its code, its exact place (file and JSON pointer, or line
// and column) and the offending word. Each case spoils one thing in an atlas that is otherwise correct.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <functional>

namespace raphe::test {

namespace {

using nlohmann::json;

struct BadAtlas {
    std::string name;
    std::function<void(json &)> spoil;
    ErrorCode code;
    std::string place;
    std::string detail;
};

std::ostream &operator<<(std::ostream &out, const BadAtlas &bad)
{
    return out << bad.name;
}

std::string in(const std::string &pointer)
{
    return "tiny.json#" + pointer;
}

std::string structure(TinyIndex index, const std::string &rest = {})
{
    return in("/structures/" + std::to_string(index) + rest);
}

json &head(json &j)
{
    return j["structures"][mover]["attachments"][0];
}

class RefusedAtlas : public testing::TestWithParam<BadAtlas> { };

TEST_P(RefusedAtlas, IsRefusedWithItsPlace)
{
    const BadAtlas &bad = GetParam();
    json spoilt = tinyJson();
    bad.spoil(spoilt);
    const auto read = readTiny(spoilt);
    ASSERT_FALSE(read.ok()) << "this mistake goes unseen";
    EXPECT_EQ(read.error().code, bad.code) << inWords(read.error());
    EXPECT_EQ(read.error().place, bad.place);
    EXPECT_EQ(read.error().detail, bad.detail);
}

const std::vector<BadAtlas> badAtlases{
    // words of the file itself
    {"ForeignFormat", [](json &j) { j["format"] = "other"; }, ErrorCode::WrongFormat, in("/format"), "other"},
    {"LaterVersion", [](json &j) { j["version"] = 2; }, ErrorCode::WrongFormat, in("/version"), "2.000000"},
    {"NoVersion", [](json &j) { j.erase("version"); }, ErrorCode::MissingField, in("/"), "version"},
    {"UnknownFieldAtTheTop", [](json &j) { j["muscles"] = json::array(); }, ErrorCode::UnknownField, in("/"), "muscles"},
    {"ListThatIsNone", [](json &j) { j["structures"] = 3; }, ErrorCode::WrongType, in("/structures"), "array"},

    // structures
    {"UnknownFieldOfAStructure", [](json &j) { j["structures"][femur]["colour"] = "red"; }, ErrorCode::UnknownField,
        structure(femur), "colour"},
    {"UnknownFieldOfNames", [](json &j) { j["structures"][femur]["names"]["french"] = "fémur"; }, ErrorCode::UnknownField,
        structure(femur, "/names"), "french"},
    {"UnknownFieldOfIds",
        [](json &j) {
            j["structures"][femur]["ids"] = {{"ta", json::array()}};
        },
        ErrorCode::UnknownField, structure(femur, "/ids"), "ta"},
    {"NoPlainName", [](json &j) { j["structures"][femur]["names"]["plain"].erase("es"); }, ErrorCode::MissingField,
        structure(femur, "/names/plain"), "es"},
    {"NoSource", [](json &j) { j["structures"][femur]["sources"] = json::array(); }, ErrorCode::MissingField,
        structure(femur, "/sources"), "a source"},
    {"KindOutsideTheList", [](json &j) { j["structures"][femur]["kind"] = "organ"; }, ErrorCode::UnknownWord,
        structure(femur, "/kind"), "organ"},
    {"RootThatDoesNotExist",
        [](json &j) {
            j["structures"][mover]["roots"] = {"L5", "L6"};
        },
        ErrorCode::UnknownWord, structure(mover, "/roots/1"), "L6"},
    {"LayerOutsideTheList", [](json &j) { j["structures"][femur]["layer"] = "deep"; }, ErrorCode::UnknownWord,
        structure(femur, "/layer"), "deep"},
    {"PairedIsAWord", [](json &j) { j["structures"][femur]["paired"] = "yes"; }, ErrorCode::WrongType,
        structure(femur, "/paired"), "true or false"},
    {"IdInCapitals", [](json &j) { j["structures"][nerve]["id"] = "Nerve"; }, ErrorCode::BadId, structure(nerve, "/id"), "Nerve"},
    {"IdWithTwoHyphens", [](json &j) { j["structures"][nerve]["id"] = "a--b"; }, ErrorCode::BadId, structure(nerve, "/id"),
        "a--b"},
    {"IdThatEndsInAHyphen", [](json &j) { j["structures"][nerve]["id"] = "a-"; }, ErrorCode::BadId, structure(nerve, "/id"),
        "a-"},
    {"SameIdTwice", [](json &j) { j["structures"].push_back(j["structures"][femur]); }, ErrorCode::Duplicate,
        in("/structures/" + std::to_string(region + 1) + "/id"), "femur"},
    {"TypedInSuperficialFasciaOfARegion",
        [](json &j) { j["structures"].push_back(tinyStructure("sf-flank", "superficial-fascia", "superficial-fascia", true)); },
        ErrorCode::Duplicate, in("/structures/" + std::to_string(region + 1)), "sf-flank"},

    // links of structures
    {"PartOfNothing", [](json &j) { j["structures"][crest]["part_of"] = "ilium"; }, ErrorCode::UnknownId,
        structure(crest, "/part_of"), "ilium"},
    {"PartOfItself", [](json &j) { j["structures"][mover]["part_of"] = "mover"; }, ErrorCode::Contradiction,
        structure(mover, "/part_of"), "mover would be part of itself"},
    {"PartsOfEachOther",
        [](json &j) {
            auto other = j["structures"][mover];
            other["id"] = "other";
            other["part_of"] = "mover";
            j["structures"][mover]["part_of"] = "other";
            j["structures"].push_back(other);
        },
        ErrorCode::Contradiction, structure(mover, "/part_of"), "mover would be part of itself"},
    {"NerveThatIsUnknown", [](json &j) { j["structures"][mover]["nerves"] = {"wire"}; }, ErrorCode::UnknownId,
        structure(mover, "/nerves/0"), "wire"},
    {"NerveThatIsABone", [](json &j) { j["structures"][mover]["nerves"] = {"femur"}; }, ErrorCode::WrongType,
        structure(mover, "/nerves"), "id of a nerve, not femur"},
    {"SourceThatIsUnknown",
        [](json &j) {
            j["structures"][mover]["sources"] = {"book", "hearsay"};
        },
        ErrorCode::UnknownId, structure(mover, "/sources/1"), "hearsay"},
    {"LandmarkWithoutBone", [](json &j) { j["structures"][crest].erase("part_of"); }, ErrorCode::MissingField, structure(crest),
        "part_of a bone"},
    {"LandmarkOnAMuscle", [](json &j) { j["structures"][crest]["part_of"] = "mover"; }, ErrorCode::MissingField, structure(crest),
        "part_of a bone"},

    // attachments
    {"DanglingOrigin",
        [](json &j) {
            head(j)["origins"] = {"crest", "nowhere"};
        },
        ErrorCode::UnknownId, structure(mover, "/attachments/0/origins/1"), "nowhere"},
    {"DanglingInsertion", [](json &j) { head(j)["insertions"][0] = "nowhere"; }, ErrorCode::UnknownId,
        structure(mover, "/attachments/0/insertions/0"), "nowhere"},
    {"OriginTwice",
        [](json &j) {
            head(j)["origins"] = {"crest", "crest"};
        },
        ErrorCode::Duplicate, structure(mover, "/attachments/0/origins/1"), "crest"},
    {"AttachedToANerve", [](json &j) { head(j)["insertions"] = {"nerve"}; }, ErrorCode::WrongType,
        structure(mover, "/attachments"), "id of a landmark, bone, fascia, ligament, tendon or surface-region, not nerve"},
    {"MuscleWithoutOrigin", [](json &j) { head(j)["origins"] = json::array(); }, ErrorCode::MissingEnd,
        structure(mover, "/attachments/0"), "mover"},
    {"MuscleWithoutInsertion", [](json &j) { head(j)["insertions"] = json::array(); }, ErrorCode::MissingEnd,
        structure(mover, "/attachments/0"), "mover"},
    {"MuscleWithoutAttachments", [](json &j) { j["structures"][mover].erase("attachments"); }, ErrorCode::MissingEnd,
        structure(mover), "mover"},
    {"UnknownFieldOfAnAttachment", [](json &j) { head(j)["angle"] = 5; }, ErrorCode::UnknownField,
        structure(mover, "/attachments/0"), "angle"},
    {"AttachmentGradedAboveItsSource", [](json &j) { head(j)["evidence"] = "verified"; }, ErrorCode::GradeTooHigh,
        structure(mover, "/attachments/0"), "verified"},
    {"AttachmentWithoutSource", [](json &j) { head(j).erase("sources"); }, ErrorCode::MissingField,
        structure(mover, "/attachments/0"), "sources"},
    {"GradeOutsideTheList", [](json &j) { head(j)["evidence"] = "certain"; }, ErrorCode::UnknownWord,
        structure(mover, "/attachments/0/evidence"), "certain"},
    {"SpanOfNoJoint",
        [](json &j) {
            j["structures"][mover]["spans"] = {{{"joint", "femur"}, {"sources", {"book"}}}};
        },
        ErrorCode::UnknownId, structure(mover, "/spans/0/joint"), "femur"},

    // borders, actions, cautions
    {"AlongWhatIsNoEnd",
        [](json &j) {
            head(j)["along"] = {{{"end", "trochanter"}, {"from", 0}, {"to", 1}}};
        },
        ErrorCode::UnknownId, structure(mover, "/attachments/0/along/0/end"), "trochanter"},
    {"AlongWhatIsNoBorder",
        [](json &j) {
            head(j)["along"] = {{{"end", "crest"}, {"from", 0}, {"to", 1}}};
        },
        ErrorCode::WrongType, structure(mover, "/attachments/0/along/0/end"), "id of a landmark with a border, not crest"},
    {"AlongBackwards",
        [](json &j) {
            head(j)["along"] = {{{"end", "crest"}, {"from", 0.5}, {"to", 0.5}}};
        },
        ErrorCode::OutOfRange, structure(mover, "/attachments/0/along/0"), "from and to; allowed: 0 to 1, the smaller first"},
    {"BorderOfAMuscle",
        [](json &j) {
            j["structures"][mover]["border"] = {{"from", "a"}, {"to", "b"}, {"length_over_stature", 0.1}, {"sources", {"book"}}};
        },
        ErrorCode::WrongType, structure(mover, "/border"), "field of a landmark, not of a muscle"},
    {"BorderInMillimetres",
        [](json &j) {
            j["structures"][crest]["border"] = {{"from", "a"}, {"to", "b"}, {"length_over_stature", 226}, {"sources", {"book"}}};
        },
        ErrorCode::OutOfRange, structure(crest, "/border/length_over_stature"),
        "a fraction of stature; allowed: between 0 and 1"},
    {"ActionAtNoJoint",
        [](json &j) {
            j["structures"][mover]["actions"] = {{{"at", "femur"}, {"motions", {"flexion"}}}};
        },
        ErrorCode::UnknownId, structure(mover, "/actions/0/at"), "femur"},
    {"ActionThatIsNone",
        [](json &j) {
            j["structures"][mover]["actions"] = {{{"at", "knee"}, {"motions", {"wiggling"}}}};
        },
        ErrorCode::UnknownWord, structure(mover, "/actions/0/motions/0"), "wiggling"},
    {"ActionWithoutMotion",
        [](json &j) {
            j["structures"][mover]["actions"] = {{{"at", "knee"}, {"motions", json::array()}}};
        },
        ErrorCode::MissingField, structure(mover, "/actions/0/motions"), "a motion"},
    {"BesideNothing", [](json &j) { j["structures"][nerve]["beside"] = {"air"}; }, ErrorCode::UnknownId,
        structure(nerve, "/beside/0"), "air"},
    {"CautionAreaWithoutCaution",
        [](json &j) { j["structures"].push_back(tinyStructure("shin-edge", "caution-area", "skin", true)); },
        ErrorCode::MissingField, in("/structures/" + std::to_string(region + 1)), "caution"},
    {"CautionOfAMuscle",
        [](json &j) {
            j["structures"][mover]["caution"] = {{"runs", json::array()}, {"risk", "r"}, {"work", "w"}};
        },
        ErrorCode::WrongType, structure(mover, "/caution"), "field of a caution-area, not of a muscle"},

    // joints
    {"ComplexOutsideTheList", [](json &j) { j["joints"][1]["complex"] = "leg"; }, ErrorCode::UnknownWord, in("/joints/1/complex"),
        "leg"},
    {"JointOfThreeBones",
        [](json &j) {
            j["joints"][1]["bones"] = {"hip-bone", "femur", "tibia"};
        },
        ErrorCode::OutOfRange, in("/joints/1/bones"), "3, allowed: two bones"},
    {"JointOfAnUnknownBone", [](json &j) { j["joints"][1]["bones"][1] = "thigh"; }, ErrorCode::UnknownId, in("/joints/1/bones/1"),
        "thigh"},
    {"JointOfALandmark", [](json &j) { j["joints"][1]["bones"][1] = "trochanter"; }, ErrorCode::WrongType, in("/joints/1/bones"),
        "id of a bone, not trochanter"},
    {"JointThatIsABone",
        [](json &j) {
            j["joints"].push_back({{"id", "femur"}, {"bones", {"femur", "tibia"}}, {"role", "closing"}, {"complex", "knee"}});
        },
        ErrorCode::WrongType, in("/joints/5/id"), "id of a joint, not femur"},
    {"JointTwice", [](json &j) { j["joints"].push_back(j["joints"][1]); }, ErrorCode::Duplicate, in("/joints/5/id"), "hip"},
    {"JointWithoutBones", [](json &j) { j["joints"].erase(4); }, ErrorCode::MissingField, structure(symphysis),
        "an entry in joints"},
    {"RoleOutsideTheList", [](json &j) { j["joints"][1]["role"] = "branch"; }, ErrorCode::UnknownWord, in("/joints/1/role"),
        "branch"},
    {"RingOfOneBone", [](json &j) { j["joints"][4]["role"] = "tree"; }, ErrorCode::SkeletonCycle, in("/joints/4"), "symphysis"},
    {"RingOfSeveralBones",
        [](json &j) {
            j["structures"].push_back(tinyStructure("shortcut", "joint", "bone", true));
            j["joints"].push_back({{"id", "shortcut"}, {"bones", {"lumbar", "tibia"}}, {"role", "tree"}, {"complex", "knee"}});
        },
        ErrorCode::SkeletonCycle, in("/joints/5"), "shortcut"},
    {"GapBeforeABone", [](json &j) { j["structures"].push_back(tinyStructure("fibula", "bone", "bone", true)); },
        ErrorCode::SkeletonGap, in("/structures/" + std::to_string(region + 1)), "fibula"},
    {"GapWhereOnlyAClosingJointReaches", [](json &j) { j["joints"][2]["role"] = "closing"; }, ErrorCode::SkeletonGap,
        structure(tibia), "tibia"},

    // continuities
    {"ContinuityWithNothing", [](json &j) { j["continuities"][0]["to"] = "air"; }, ErrorCode::UnknownId, in("/continuities/0/to"),
        "air"},
    {"ContinuityTwice", [](json &j) { j["continuities"].push_back(j["continuities"][0]); }, ErrorCode::Duplicate,
        in("/continuities/1"), "mover ~ tract"},
    {"ContinuityTwiceTheOtherWayRound",
        [](json &j) {
            auto again = j["continuities"][0];
            std::swap(again["from"], again["to"]);
            j["continuities"].push_back(again);
        },
        ErrorCode::Duplicate, in("/continuities/1"), "tract ~ mover"},
    {"ContinuityGradedAboveItsSource", [](json &j) { j["continuities"][0]["evidence"] = "supported"; }, ErrorCode::GradeTooHigh,
        in("/continuities/0"), "supported"},
    {"ForceOutsideTheList", [](json &j) { j["continuities"][0]["force"] = "maybe"; }, ErrorCode::UnknownWord,
        in("/continuities/0/force"), "maybe"},
    {"ContinuityWithoutSide", [](json &j) { j["continuities"][0].erase("changes_side"); }, ErrorCode::MissingField,
        in("/continuities/0"), "changes_side"},
    {"UnknownFieldOfAContinuity", [](json &j) { j["continuities"][0]["name"] = "x"; }, ErrorCode::UnknownField,
        in("/continuities/0"), "name"},

    // seats
    {"SeatOfSomethingUnknown", [](json &j) { j["seats"][0]["structure"] = "tail"; }, ErrorCode::UnknownId,
        in("/seats/0/structure"), "tail"},
    {"SeatTwice", [](json &j) { j["seats"].push_back(j["seats"][0]); }, ErrorCode::Duplicate, in("/seats/1/structure"), "mover"},
    {"FeltAtAMuscle", [](json &j) { j["seats"][0]["felt_at"] = {"mover"}; }, ErrorCode::WrongType, in("/seats/0/felt_at"),
        "id of a surface-region, not mover"},
    {"FeltNowhere", [](json &j) { j["seats"][0]["felt_at"] = json::array(); }, ErrorCode::MissingField, in("/seats/0/felt_at"),
        "a surface-region"},
    {"HowOftenOutsideTheList", [](json &j) { j["seats"][0]["how_often"] = "always"; }, ErrorCode::UnknownWord,
        in("/seats/0/how_often"), "always"},
    {"SeatGradedAboveItsSource", [](json &j) { j["seats"][0]["evidence"] = "supported"; }, ErrorCode::GradeTooHigh,
        in("/seats/0"), "supported"},
    {"UnknownFieldOfASeat", [](json &j) { j["seats"][0]["colour"] = "red"; }, ErrorCode::UnknownField, in("/seats/0"), "colour"},

    // sources
    {"SourceTwice", [](json &j) { j["sources"].push_back(j["sources"][0]); }, ErrorCode::Duplicate, in("/sources/2/id"), "book"},
    {"SourceWithoutDoi", [](json &j) { j["sources"][0].erase("doi"); }, ErrorCode::MissingField, in("/sources/0"), "doi"},
    {"ReadingOutsideTheList", [](json &j) { j["sources"][0]["read"] = "skimmed"; }, ErrorCode::UnknownWord, in("/sources/0/read"),
        "skimmed"},
    {"UnknownFieldOfASource", [](json &j) { j["sources"][0]["year"] = 1918; }, ErrorCode::UnknownField, in("/sources/0"), "year"},
};

INSTANTIATE_TEST_SUITE_P(Atlas, RefusedAtlas, testing::ValuesIn(badAtlases), [](const auto &each) { return each.param.name; });

TEST(AtlasReader, AcceptsTheAtlasThatTheOtherTestsSpoil)
{
    const auto read = readTiny(tinyJson());
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    EXPECT_EQ(read.value().structures().size(), tinyJson()["structures"].size() + 1)
        << "one region brings its superficial fascia";
}

TEST(AtlasReader, NamesLineAndColumnOfTextThatIsNotJson)
{
    const auto read = readAtlas({{"broken.json", "{\n  \"format\": \"raphe-atlas\",\n  \"version\": }\n"}});
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().code, ErrorCode::BadJson);
    EXPECT_EQ(read.error().place, "broken.json, line 3, column 14");
}

TEST(AtlasReader, NamesTheEndOfTextThatStopsTooEarly)
{
    const auto read = readAtlas({{"cut.json", "{\"format\":"}});
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().code, ErrorCode::BadJson);
    EXPECT_EQ(read.error().place, "cut.json, line 1, column 11");
}

TEST(AtlasReader, NamesTheFileInWhichADuplicateStands)
{
    const json all = tinyJson();
    const json again{{"format", "raphe-atlas"}, {"version", 1}, {"structures", json::array({all["structures"][femur]})}};
    const auto read = readAtlas({{"first.json", all.dump()}, {"second.json", again.dump()}});
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().code, ErrorCode::Duplicate);
    EXPECT_EQ(read.error().place, "second.json#/structures/0/id");
}

TEST(AtlasReader, FollowsReferencesIntoOtherFiles)
{
    json all = tinyJson();
    json sources{{"format", "raphe-atlas"}, {"version", 1}, {"sources", all["sources"]}};
    all.erase("sources");
    EXPECT_TRUE(readAtlas({{"body.json", all.dump()}, {"sources.json", sources.dump()}}).ok());
}

TEST(AtlasReader, AcceptsAWholeWithoutAttachmentsWhenPartsPointToIt)
{
    json j = tinyJson();
    j["structures"].push_back(tinyStructure("whole", "muscle", "superficial-muscle", true));
    j["structures"][mover]["part_of"] = "whole";
    const auto read = readTiny(j);
    EXPECT_TRUE(read.ok()) << inWords(read.error());
}

TEST(AtlasReader, AcceptsAGradeThatTheBestOfItsSourcesSupports)
{
    json j = tinyJson();
    j["continuities"][0]["evidence"] = "verified";
    j["continuities"][0]["sources"] = {"book", "review"};
    const auto read = readTiny(j);
    EXPECT_TRUE(read.ok()) << inWords(read.error());
}

TEST(AtlasReader, ReadsTheBuiltInAtlas)
{
    const auto read = readEmbeddedAtlas();
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    EXPECT_FALSE(read.value().structures().empty());
}

} // namespace

} // namespace raphe::test
