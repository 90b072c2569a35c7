// The records of the atlas as plain values. Fields and closed lists follow resources/schema/atlas.schema.json.
#pragma once

#include "core/anatomy/Place.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <variant>
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

/// Which stretch of a border an attachment takes: 0 is the border's start, 1 its end.
struct Along {
    StructureId end;
    double from = 0;
    double to = 1;
    bool operator==(const Along &) const = default;
};

/// One head or fascicle group: every origin belongs with every insertion.
struct Attachment {
    std::string head;
    std::vector<StructureId> origins;
    std::vector<StructureId> insertions;
    std::vector<Along> along; // for ends that are borders
    Grade evidence{};
    std::vector<std::string> sources;

    /// The stretch that it takes of this end; nullptr when none is stated.
    [[nodiscard]] const Along *alongOf(const StructureId &end) const
    {
        for (const Along &a : along)
            if (a.end == end)
                return &a;
        return nullptr;
    }
};

/// A joint that a muscle acts across although its ends cannot tell (an end on fascia, or a gliding surface).
struct Span {
    StructureId joint;
    std::vector<std::string> sources;
};

/// Movements, in the trade's terms. Lateral flexion is to the same side; fingers spread from the middle finger, toes from
/// the second toe; ribs rise on breathing in; the jaw's elevation closes the mouth.
enum class Motion {
    Flexion,
    Extension,
    LateralFlexion,
    RotationSameSide,
    RotationOppositeSide,
    Abduction,
    Adduction,
    MedialRotation,
    LateralRotation,
    Elevation,
    Depression,
    Protraction,
    Retraction,
    UpwardRotation,
    DownwardRotation,
    Supination,
    Pronation,
    Dorsiflexion,
    Plantarflexion,
    Inversion,
    Eversion,
    Opposition,
    RadialDeviation,
    UlnarDeviation,
    LateralExcursion,
    Compression,
    Stabilisation
};
inline constexpr WordTable<Motion, 27> motionWords{
    {{Motion::Flexion, "flexion"}, {Motion::Extension, "extension"}, {Motion::LateralFlexion, "lateral-flexion"},
        {Motion::RotationSameSide, "rotation-same-side"}, {Motion::RotationOppositeSide, "rotation-opposite-side"},
        {Motion::Abduction, "abduction"}, {Motion::Adduction, "adduction"}, {Motion::MedialRotation, "medial-rotation"},
        {Motion::LateralRotation, "lateral-rotation"}, {Motion::Elevation, "elevation"}, {Motion::Depression, "depression"},
        {Motion::Protraction, "protraction"}, {Motion::Retraction, "retraction"}, {Motion::UpwardRotation, "upward-rotation"},
        {Motion::DownwardRotation, "downward-rotation"}, {Motion::Supination, "supination"}, {Motion::Pronation, "pronation"},
        {Motion::Dorsiflexion, "dorsiflexion"}, {Motion::Plantarflexion, "plantarflexion"}, {Motion::Inversion, "inversion"},
        {Motion::Eversion, "eversion"}, {Motion::Opposition, "opposition"}, {Motion::RadialDeviation, "radial-deviation"},
        {Motion::UlnarDeviation, "ulnar-deviation"}, {Motion::LateralExcursion, "lateral-excursion"},
        {Motion::Compression, "compression"}, {Motion::Stabilisation, "stabilisation"}}};

/// Joints that move together, so that an action can be said of all of them at once.
enum class JointComplex {
    Skull,
    Jaw,
    Throat,
    Neck,
    ThoracicSpine,
    LumbarSpine,
    RibCage,
    Pelvis,
    ShoulderGirdle,
    Shoulder,
    Elbow,
    Forearm,
    Wrist,
    Carpometacarpal,
    Metacarpophalangeal,
    FingerInterphalangeal,
    Hip,
    Knee,
    Tibiofibular,
    Ankle,
    Hindfoot,
    Midfoot,
    Metatarsophalangeal,
    ToeInterphalangeal
};
inline constexpr WordTable<JointComplex, 24> complexWords{{{JointComplex::Skull, "skull"}, {JointComplex::Jaw, "jaw"},
    {JointComplex::Throat, "throat"}, {JointComplex::Neck, "neck"}, {JointComplex::ThoracicSpine, "thoracic-spine"},
    {JointComplex::LumbarSpine, "lumbar-spine"}, {JointComplex::RibCage, "rib-cage"}, {JointComplex::Pelvis, "pelvis"},
    {JointComplex::ShoulderGirdle, "shoulder-girdle"}, {JointComplex::Shoulder, "shoulder"}, {JointComplex::Elbow, "elbow"},
    {JointComplex::Forearm, "forearm"}, {JointComplex::Wrist, "wrist"}, {JointComplex::Carpometacarpal, "carpometacarpal"},
    {JointComplex::Metacarpophalangeal, "metacarpophalangeal"}, {JointComplex::FingerInterphalangeal, "finger-interphalangeal"},
    {JointComplex::Hip, "hip"}, {JointComplex::Knee, "knee"}, {JointComplex::Tibiofibular, "tibiofibular"},
    {JointComplex::Ankle, "ankle"}, {JointComplex::Hindfoot, "hindfoot"}, {JointComplex::Midfoot, "midfoot"},
    {JointComplex::Metatarsophalangeal, "metatarsophalangeal"}, {JointComplex::ToeInterphalangeal, "toe-interphalangeal"}}};

/// What a muscle does at one joint, or at those joints of a complex that it crosses.
struct Action {
    std::variant<StructureId, JointComplex> at;
    std::vector<Motion> motions;
};

/// An attachment area that is an edge: where it starts and ends, in words, and how long it is along the edge.
struct Border {
    std::string from;
    std::string to;
    double lengthOverStature = 0; // fraction of stature
    std::vector<std::string> sources;
    std::string note; // how the length was come by
};

/// What hands must respect in a caution area.
struct Caution {
    std::vector<StructureId> runs; // what runs or lies there
    std::string risk; // what can be hurt
    std::string work; // how to work there, or not
};

/// How often a tissue is the place of a complaint in ordinary practice, or is felt for because of one.
enum class HowOften { Common, Occasional, Rare };
inline constexpr WordTable<HowOften, 3> howOftenWords{
    {{HowOften::Common, "common"}, {HowOften::Occasional, "occasional"}, {HowOften::Rare, "rare"}}};

/// What the trade knows of a tissue as a place of trouble: how often it is one, and the skin regions where that is felt, over it
/// and further off. On the structure's own side; of a midline structure on the side that is in trouble.
struct Seat {
    HowOften howOften{};
    std::vector<StructureId> feltAt; // surface regions, the most typical first
    Grade evidence{}; // of where it is felt
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
    std::vector<Action> actions;
    std::vector<Span> spans;
    std::vector<StructureId> beside; // what a nerve, vessel, bursa or disc runs along or lies against
    std::optional<Border> border; // landmarks that are an edge
    std::optional<Caution> caution; // caution areas
    std::optional<Seat> seat; // of what can be the place of a complaint
    std::vector<std::string> sources;
};

enum class JointRole { Tree, Closing };
inline constexpr WordTable<JointRole, 2> jointRoleWords{{{JointRole::Tree, "tree"}, {JointRole::Closing, "closing"}}};

struct Joint {
    StructureId id;
    std::array<StructureId, 2> bones;
    JointRole role{};
    JointComplex complex{};
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
