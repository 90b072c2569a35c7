// The records of the atlas as plain values. Fields and closed lists follow resources/schema/atlas.schema.json.
#pragma once

#include "core/anatomy/Place.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

enum class Kind {
    SurfaceRegion,
    SuperficialFascia,
    Fascia,
    Ligament,
    Tendon,
    Muscle,
    Bone,
    Landmark,
    Joint,
    Nerve,
    Vessel,
    Bursa,
    Disc,
    CautionArea
};
inline constexpr WordTable<Kind, 14> kindWords{
    {{Kind::SurfaceRegion, "surface-region"}, {Kind::SuperficialFascia, "superficial-fascia"}, {Kind::Fascia, "fascia"},
        {Kind::Ligament, "ligament"}, {Kind::Tendon, "tendon"}, {Kind::Muscle, "muscle"}, {Kind::Bone, "bone"},
        {Kind::Landmark, "landmark"}, {Kind::Joint, "joint"}, {Kind::Nerve, "nerve"}, {Kind::Vessel, "vessel"},
        {Kind::Bursa, "bursa"}, {Kind::Disc, "disc"}, {Kind::CautionArea, "caution-area"}}};

/// Layers from the outside in; the order of the enumerators is that order.
enum class Layer { Skin, SuperficialFascia, DeepFascia, SuperficialMuscle, IntermediateMuscle, DeepMuscle, Bone };
inline constexpr WordTable<Layer, 7> layerWords{{{Layer::Skin, "skin"}, {Layer::SuperficialFascia, "superficial-fascia"},
    {Layer::DeepFascia, "deep-fascia"}, {Layer::SuperficialMuscle, "superficial-muscle"},
    {Layer::IntermediateMuscle, "intermediate-muscle"}, {Layer::DeepMuscle, "deep-muscle"}, {Layer::Bone, "bone"}}};

/// How well a link is known, best first (the design's grades).
enum class Grade { Verified, Supported, Described, Convention };
inline constexpr WordTable<Grade, 4> gradeWords{{{Grade::Verified, "verified"}, {Grade::Supported, "supported"},
    {Grade::Described, "described"}, {Grade::Convention, "convention"}}};

[[nodiscard]] constexpr Grade weaker(Grade a, Grade b)
{
    return a < b ? b : a;
}

enum class Reading { Page, Abstract, Memory };
inline constexpr WordTable<Reading, 3> readingWords{
    {{Reading::Page, "page"}, {Reading::Abstract, "abstract"}, {Reading::Memory, "memory"}}};

struct Source {
    std::string id;
    std::string citation;
    std::optional<std::string> doi;
    Grade supports{}; // the best grade a link may have on its word
    Reading read{}; // how we read it
};

struct Names {
    std::string latin;
    std::string english;
    std::map<std::string, std::string> plain; // language code -> what a patient understands
    std::vector<std::string> synonyms; // what practitioners say and type
};

/// One head or fascicle group: every origin belongs with every insertion.
struct Attachment {
    std::string head;
    std::vector<StructureId> origins;
    std::vector<StructureId> insertions;
    Grade evidence{};
    std::vector<std::string> sources;
};

/// A joint that a muscle acts across although its ends cannot tell (an end on fascia, or a gliding surface).
struct Span {
    StructureId joint;
    std::vector<std::string> sources;
};

struct Structure {
    StructureId id;
    Kind kind{};
    Layer layer{};
    bool paired = false;
    std::optional<StructureId> partOf;
    Names names;
    std::vector<std::string> uberon;
    std::vector<std::string> fma;
    std::vector<StructureId> nerves;
    std::vector<std::string> roots;
    std::vector<Attachment> attachments;
    std::vector<Span> spans;
    std::vector<std::string> sources;
};

enum class JointRole { Tree, Closing };
inline constexpr WordTable<JointRole, 2> jointRoleWords{{{JointRole::Tree, "tree"}, {JointRole::Closing, "closing"}}};

struct Joint {
    StructureId id;
    std::array<StructureId, 2> bones;
    JointRole role{};
};

enum class Basis { Computed, Stated };
inline constexpr WordTable<Basis, 2> basisWords{{{Basis::Computed, "computed"}, {Basis::Stated, "stated"}}};

/// A muscle acts across a joint. Computed from ends and skeleton, or stated by a Span.
struct Crossing {
    StructureId muscle;
    StructureId joint;
    Basis basis{};
    Grade evidence{};
    std::vector<std::string> sources;
};

enum class Force { Yes, Partly, No, Unknown };
inline constexpr WordTable<Force, 4> forceWords{
    {{Force::Yes, "yes"}, {Force::Partly, "partly"}, {Force::No, "no"}, {Force::Unknown, "unknown"}}};

struct Continuity {
    StructureId from;
    StructureId to;
    bool changesSide = false;
    Grade evidence{};
    Force force{};
    std::vector<std::string> sources;
    std::string note;
    std::string transition; // which transition of a review this link stands for; empty when none
};

} // namespace raphe
