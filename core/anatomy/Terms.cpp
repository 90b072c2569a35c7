#include "core/anatomy/Terms.h"

#include <QCoreApplication>

namespace raphe {

namespace {

std::string tr(const char *text)
{
    return QCoreApplication::translate("Terms", text).toStdString();
}

} // namespace

std::string inWords(Kind kind)
{
    switch (kind) {
    case Kind::SurfaceRegion: return tr(QT_TRANSLATE_NOOP("Terms", "region of the skin"));
    case Kind::SuperficialFascia: return tr(QT_TRANSLATE_NOOP("Terms", "superficial fascia"));
    case Kind::Fascia: return tr(QT_TRANSLATE_NOOP("Terms", "fascia"));
    case Kind::Ligament: return tr(QT_TRANSLATE_NOOP("Terms", "ligament"));
    case Kind::Tendon: return tr(QT_TRANSLATE_NOOP("Terms", "tendon"));
    case Kind::Muscle: return tr(QT_TRANSLATE_NOOP("Terms", "muscle"));
    case Kind::Bone: return tr(QT_TRANSLATE_NOOP("Terms", "bone"));
    case Kind::Landmark: return tr(QT_TRANSLATE_NOOP("Terms", "landmark"));
    case Kind::Joint: return tr(QT_TRANSLATE_NOOP("Terms", "joint"));
    case Kind::Nerve: return tr(QT_TRANSLATE_NOOP("Terms", "nerve"));
    case Kind::Vessel: return tr(QT_TRANSLATE_NOOP("Terms", "vessel"));
    case Kind::Bursa: return tr(QT_TRANSLATE_NOOP("Terms", "bursa"));
    case Kind::Disc: return tr(QT_TRANSLATE_NOOP("Terms", "disc"));
    case Kind::CautionArea: break;
    }
    return tr(QT_TRANSLATE_NOOP("Terms", "caution area"));
}

std::string inWords(Layer layer)
{
    switch (layer) {
    case Layer::Skin: return tr(QT_TRANSLATE_NOOP("Terms", "skin"));
    case Layer::SuperficialFascia: return tr(QT_TRANSLATE_NOOP("Terms", "superficial fascia"));
    case Layer::DeepFascia: return tr(QT_TRANSLATE_NOOP("Terms", "deep fascia"));
    case Layer::SuperficialMuscle: return tr(QT_TRANSLATE_NOOP("Terms", "superficial muscle"));
    case Layer::IntermediateMuscle: return tr(QT_TRANSLATE_NOOP("Terms", "intermediate muscle"));
    case Layer::DeepMuscle: return tr(QT_TRANSLATE_NOOP("Terms", "deep muscle"));
    case Layer::Bone: break;
    }
    return tr(QT_TRANSLATE_NOOP("Terms", "bone and joint"));
}

std::string inWords(Motion motion)
{
    switch (motion) {
    case Motion::Flexion: return tr(QT_TRANSLATE_NOOP("Terms", "flexion"));
    case Motion::Extension: return tr(QT_TRANSLATE_NOOP("Terms", "extension"));
    case Motion::LateralFlexion: return tr(QT_TRANSLATE_NOOP("Terms", "lateral flexion to the same side"));
    case Motion::RotationSameSide: return tr(QT_TRANSLATE_NOOP("Terms", "rotation to the same side"));
    case Motion::RotationOppositeSide: return tr(QT_TRANSLATE_NOOP("Terms", "rotation to the opposite side"));
    case Motion::Abduction: return tr(QT_TRANSLATE_NOOP("Terms", "abduction"));
    case Motion::Adduction: return tr(QT_TRANSLATE_NOOP("Terms", "adduction"));
    case Motion::MedialRotation: return tr(QT_TRANSLATE_NOOP("Terms", "medial rotation"));
    case Motion::LateralRotation: return tr(QT_TRANSLATE_NOOP("Terms", "lateral rotation"));
    case Motion::Elevation: return tr(QT_TRANSLATE_NOOP("Terms", "elevation"));
    case Motion::Depression: return tr(QT_TRANSLATE_NOOP("Terms", "depression"));
    case Motion::Protraction: return tr(QT_TRANSLATE_NOOP("Terms", "protraction"));
    case Motion::Retraction: return tr(QT_TRANSLATE_NOOP("Terms", "retraction"));
    case Motion::UpwardRotation: return tr(QT_TRANSLATE_NOOP("Terms", "upward rotation"));
    case Motion::DownwardRotation: return tr(QT_TRANSLATE_NOOP("Terms", "downward rotation"));
    case Motion::Supination: return tr(QT_TRANSLATE_NOOP("Terms", "supination"));
    case Motion::Pronation: return tr(QT_TRANSLATE_NOOP("Terms", "pronation"));
    case Motion::Dorsiflexion: return tr(QT_TRANSLATE_NOOP("Terms", "dorsiflexion"));
    case Motion::Plantarflexion: return tr(QT_TRANSLATE_NOOP("Terms", "plantarflexion"));
    case Motion::Inversion: return tr(QT_TRANSLATE_NOOP("Terms", "inversion"));
    case Motion::Eversion: return tr(QT_TRANSLATE_NOOP("Terms", "eversion"));
    case Motion::Opposition: return tr(QT_TRANSLATE_NOOP("Terms", "opposition"));
    case Motion::RadialDeviation: return tr(QT_TRANSLATE_NOOP("Terms", "radial deviation"));
    case Motion::UlnarDeviation: return tr(QT_TRANSLATE_NOOP("Terms", "ulnar deviation"));
    case Motion::LateralExcursion: return tr(QT_TRANSLATE_NOOP("Terms", "lateral excursion"));
    case Motion::Compression: return tr(QT_TRANSLATE_NOOP("Terms", "compression"));
    case Motion::Stabilisation: break;
    }
    return tr(QT_TRANSLATE_NOOP("Terms", "steadies"));
}

std::string inWords(JointComplex complex)
{
    switch (complex) {
    case JointComplex::Skull: return tr(QT_TRANSLATE_NOOP("Terms", "seams of the skull"));
    case JointComplex::Jaw: return tr(QT_TRANSLATE_NOOP("Terms", "jaw"));
    case JointComplex::Throat: return tr(QT_TRANSLATE_NOOP("Terms", "hyoid and larynx"));
    case JointComplex::Neck: return tr(QT_TRANSLATE_NOOP("Terms", "neck"));
    case JointComplex::ThoracicSpine: return tr(QT_TRANSLATE_NOOP("Terms", "thoracic spine"));
    case JointComplex::LumbarSpine: return tr(QT_TRANSLATE_NOOP("Terms", "lumbar spine"));
    case JointComplex::RibCage: return tr(QT_TRANSLATE_NOOP("Terms", "ribs"));
    case JointComplex::Pelvis: return tr(QT_TRANSLATE_NOOP("Terms", "pelvis"));
    case JointComplex::ShoulderGirdle: return tr(QT_TRANSLATE_NOOP("Terms", "shoulder girdle"));
    case JointComplex::Shoulder: return tr(QT_TRANSLATE_NOOP("Terms", "shoulder"));
    case JointComplex::Elbow: return tr(QT_TRANSLATE_NOOP("Terms", "elbow"));
    case JointComplex::Forearm: return tr(QT_TRANSLATE_NOOP("Terms", "forearm"));
    case JointComplex::Wrist: return tr(QT_TRANSLATE_NOOP("Terms", "wrist"));
    case JointComplex::Carpometacarpal: return tr(QT_TRANSLATE_NOOP("Terms", "carpometacarpal joints"));
    case JointComplex::Metacarpophalangeal: return tr(QT_TRANSLATE_NOOP("Terms", "knuckles"));
    case JointComplex::FingerInterphalangeal: return tr(QT_TRANSLATE_NOOP("Terms", "finger joints"));
    case JointComplex::Hip: return tr(QT_TRANSLATE_NOOP("Terms", "hip"));
    case JointComplex::Knee: return tr(QT_TRANSLATE_NOOP("Terms", "knee"));
    case JointComplex::Tibiofibular: return tr(QT_TRANSLATE_NOOP("Terms", "tibia and fibula"));
    case JointComplex::Ankle: return tr(QT_TRANSLATE_NOOP("Terms", "ankle"));
    case JointComplex::Hindfoot: return tr(QT_TRANSLATE_NOOP("Terms", "hindfoot"));
    case JointComplex::Midfoot: return tr(QT_TRANSLATE_NOOP("Terms", "midfoot"));
    case JointComplex::Metatarsophalangeal: return tr(QT_TRANSLATE_NOOP("Terms", "roots of the toes"));
    case JointComplex::ToeInterphalangeal: break;
    }
    return tr(QT_TRANSLATE_NOOP("Terms", "toe joints"));
}

} // namespace raphe
