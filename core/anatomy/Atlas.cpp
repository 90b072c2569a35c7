#include "core/anatomy/Atlas.h"

#include "core/anatomy/Skeleton.h"

#include <QCoreApplication>

#include <algorithm>

namespace raphe {

namespace {

// The membranous layer under each surface region has the region's outline; it is not typed in.
Structure superficialFasciaUnder(const Structure &region)
{
    Structure s = region;
    s.id.value = "sf-" + region.id.value;
    s.kind = Kind::SuperficialFascia;
    s.layer = Layer::SuperficialFascia;
    s.names.latin = "Tela subcutanea: " + region.names.latin;
    s.names.english = "superficial fascia of the " + region.names.english;
    s.names.plain = {};
    for (const auto &[language, word] : region.names.plain) {
        if (language == "de")
            s.names.plain[language] = "Unterhaut: " + word;
        else if (language == "es")
            s.names.plain[language] = "capa bajo la piel: " + word;
        else
            s.names.plain[language] = "layer under the skin: " + word;
    }
    s.names.synonyms = {};
    for (const auto &synonym : region.names.synonyms)
        s.names.synonyms.push_back("skin layer " + synonym);
    s.uberon.clear();
    s.fma.clear();
    return s;
}

} // namespace

Atlas::Atlas(std::vector<Structure> structures, std::vector<Joint> joints, std::vector<Continuity> continuities,
    std::vector<Source> sources)
    : m_structures(std::move(structures)),
      m_joints(std::move(joints)),
      m_continuities(std::move(continuities)),
      m_sources(std::move(sources))
{
    const auto typed = m_structures.size();
    for (std::size_t i = 0; i < typed; ++i)
        if (m_structures[i].kind == Kind::SurfaceRegion)
            m_structures.push_back(superficialFasciaUnder(m_structures[i]));
    for (std::size_t i = 0; i < m_structures.size(); ++i)
        m_index.emplace(m_structures[i].id.value, i);
    for (std::size_t i = 0; i < m_sources.size(); ++i)
        m_sourceIndex.emplace(m_sources[i].id, i);
    for (std::size_t i = 0; i < m_joints.size(); ++i)
        m_jointIndex.emplace(m_joints[i].id.value, i);
    m_crossings = computeCrossings(*this);
}

const Structure *Atlas::find(const StructureId &id) const
{
    const auto it = m_index.find(id.value);
    return it == m_index.end() ? nullptr : &m_structures[it->second];
}

const Structure &Atlas::at(const StructureId &id) const
{
    return m_structures[m_index.at(id.value)];
}

const Source *Atlas::findSource(const std::string &id) const
{
    const auto it = m_sourceIndex.find(id);
    return it == m_sourceIndex.end() ? nullptr : &m_sources[it->second];
}

const Joint *Atlas::findJoint(const StructureId &id) const
{
    const auto it = m_jointIndex.find(id.value);
    return it == m_jointIndex.end() ? nullptr : &m_joints[it->second];
}

bool Atlas::isSpinalSegment(const StructureId &id) const
{
    const Joint *joint = findJoint(id);
    if (!joint || joint->bones[0] == joint->bones[1] || at(joint->bones[0]).paired || at(joint->bones[1]).paired)
        return false;
    return joint->complex == JointComplex::Neck || joint->complex == JointComplex::ThoracicSpine
        || joint->complex == JointComplex::LumbarSpine || joint->complex == JointComplex::Pelvis;
}

std::vector<Side> Atlas::sides(const Structure &structure) const
{
    if (isSpinalSegment(structure.id))
        return {Side::Left, Side::Right, Side::Midline};
    if (structure.paired)
        return {Side::Left, Side::Right};
    return {Side::Midline};
}

std::vector<StructureId> Atlas::bonesOf(const StructureId &onto) const
{
    const Structure *s = find(onto);
    if (!s)
        return {};
    if (s->kind == Kind::Bone)
        return {s->id};
    if (s->kind == Kind::Landmark && s->partOf)
        return {*s->partOf};
    return {};
}

std::vector<StructureId> Atlas::partsOf(const StructureId &whole) const
{
    std::vector<StructureId> parts;
    for (const Structure &s : m_structures)
        if (s.partOf == whole && s.kind != Kind::Landmark) {
            parts.push_back(s.id);
            for (StructureId &smaller : partsOf(s.id))
                parts.push_back(std::move(smaller));
        }
    return parts;
}

std::string Atlas::spoken(const Place &place) const
{
    const std::string &name = at(place.structure).names.english;
    switch (place.side) {
    case Side::Left: return QCoreApplication::translate("Atlas", "left %1").arg(QString::fromStdString(name)).toStdString();
    case Side::Right: return QCoreApplication::translate("Atlas", "right %1").arg(QString::fromStdString(name)).toStdString();
    case Side::Midline: break;
    }
    return isSpinalSegment(place.structure)
        ? QCoreApplication::translate("Atlas", "%1, midline").arg(QString::fromStdString(name)).toStdString()
        : name;
}

std::string Atlas::plainName(const StructureId &structure, const std::string &language) const
{
    const Names &names = at(structure).names;
    auto it = names.plain.find(language);
    if (it == names.plain.end())
        it = names.plain.find("en");
    return it == names.plain.end() ? names.english : it->second;
}

std::string Atlas::plain(const Place &place, const std::string &language) const
{
    const QString name = QString::fromStdString(plainName(place.structure, language));
    switch (place.side) {
    case Side::Left: return QCoreApplication::translate("Atlas", "%1, left side").arg(name).toStdString();
    case Side::Right: return QCoreApplication::translate("Atlas", "%1, right side").arg(name).toStdString();
    case Side::Midline: break;
    }
    return QCoreApplication::translate("Atlas", "%1, in the middle").arg(name).toStdString();
}

} // namespace raphe
