// The atlas: all structures, joints, attachments, continuities and sources, checked and indexed.
// Immutable after reading, so it may be shared between threads. Made by readAtlas (AtlasReader.h).
#pragma once

#include "core/anatomy/Structure.h"

#include <cstddef>
#include <string>
#include <unordered_map>
#include <vector>

namespace raphe {

class Atlas {
public:
    /// Takes checked parts; derives the superficial-fascia structures and the crossings.
    Atlas(std::vector<Structure> structures, std::vector<Joint> joints, std::vector<Continuity> continuities,
        std::vector<Source> sources);

    [[nodiscard]] const std::vector<Structure> &structures() const { return m_structures; }
    [[nodiscard]] const std::vector<Joint> &joints() const { return m_joints; }
    [[nodiscard]] const std::vector<Continuity> &continuities() const { return m_continuities; }
    [[nodiscard]] const std::vector<Source> &sources() const { return m_sources; }
    [[nodiscard]] const std::vector<Crossing> &crossings() const { return m_crossings; }

    /// nullptr when there is no such structure.
    [[nodiscard]] const Structure *find(const StructureId &id) const;
    [[nodiscard]] const Structure &at(const StructureId &id) const;
    [[nodiscard]] const Source *findSource(const std::string &id) const;
    [[nodiscard]] const Joint *findJoint(const StructureId &id) const;

    /// Joint between two midline bones of spine or pelvis: a segment, which has a left, a right and a midline place.
    [[nodiscard]] bool isSpinalSegment(const StructureId &id) const;
    /// The sides on which a finding can be recorded.
    [[nodiscard]] std::vector<Side> sides(const Structure &structure) const;
    /// The bones an attachment resolves to: a landmark's bone, a bone itself, nothing for soft tissue.
    [[nodiscard]] std::vector<StructureId> bonesOf(const StructureId &onto) const;
    /// The parts of a whole muscle or sheet, and their parts; landmarks do not count as parts of their bone.
    [[nodiscard]] std::vector<StructureId> partsOf(const StructureId &whole) const;
    /// "right gluteus maximus", "L4/5, midline": the side word is always written out.
    [[nodiscard]] std::string spoken(const Place &place) const;
    /// For patients: "main buttock muscle, right". Falls back on English.
    [[nodiscard]] std::string plain(const Place &place, const std::string &language) const;
    /// The name for patients, in English where there is none in that language.
    [[nodiscard]] std::string plainName(const StructureId &structure, const std::string &language) const;

private:
    std::vector<Structure> m_structures;
    std::vector<Joint> m_joints;
    std::vector<Continuity> m_continuities;
    std::vector<Source> m_sources;
    std::vector<Crossing> m_crossings;
    std::unordered_map<std::string, std::size_t> m_index;
    std::unordered_map<std::string, std::size_t> m_sourceIndex;
    std::unordered_map<std::string, std::size_t> m_jointIndex;
};

} // namespace raphe
