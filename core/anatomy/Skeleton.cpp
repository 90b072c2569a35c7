#include "core/anatomy/Skeleton.h"

#include "core/anatomy/Atlas.h"

#include <algorithm>
#include <deque>
#include <map>
#include <numeric>
#include <set>

namespace raphe {

Skeleton::Skeleton(const std::vector<Joint> &joints)
{
    std::map<std::string, std::string> root; // union-find over bones met so far
    const auto find = [&root](std::string bone) {
        root.try_emplace(bone, bone);
        while (root[bone] != bone)
            bone = root[bone];
        return bone;
    };
    for (const Joint &joint : joints) {
        if (joint.role != JointRole::Tree)
            continue;
        const std::string a = find(joint.bones[0].value);
        const std::string b = find(joint.bones[1].value);
        if (a == b) {
            if (!m_cycle)
                m_cycle = joint.id;
            continue;
        }
        root[a] = b;
        m_edges[joint.bones[0].value].push_back({joint.bones[1].value, joint.id});
        m_edges[joint.bones[1].value].push_back({joint.bones[0].value, joint.id});
    }
}

std::optional<StructureId> Skeleton::gap(const std::vector<StructureId> &bones) const
{
    if (bones.empty())
        return std::nullopt;
    std::set<std::string> reached{bones.front().value};
    std::deque<std::string> queue{bones.front().value};
    while (!queue.empty()) {
        const std::string bone = queue.front();
        queue.pop_front();
        const auto it = m_edges.find(bone);
        if (it == m_edges.end())
            continue;
        for (const Edge &edge : it->second)
            if (reached.insert(edge.bone).second)
                queue.push_back(edge.bone);
    }
    for (const StructureId &bone : bones)
        if (!reached.contains(bone.value))
            return bone;
    return std::nullopt;
}

std::vector<StructureId> Skeleton::path(const StructureId &from, const StructureId &to) const
{
    std::unordered_map<std::string, Edge> cameBy;
    std::deque<std::string> queue{from.value};
    cameBy[from.value] = {};
    while (!queue.empty() && !cameBy.contains(to.value)) {
        const std::string bone = queue.front();
        queue.pop_front();
        const auto it = m_edges.find(bone);
        if (it == m_edges.end())
            continue;
        for (const Edge &edge : it->second)
            if (cameBy.try_emplace(edge.bone, Edge{bone, edge.joint}).second)
                queue.push_back(edge.bone);
    }
    std::vector<StructureId> joints;
    if (!cameBy.contains(to.value))
        return joints;
    for (std::string bone = to.value; bone != from.value; bone = cameBy[bone].bone)
        joints.push_back(cameBy[bone].joint);
    std::reverse(joints.begin(), joints.end());
    return joints;
}

std::vector<Crossing> computeCrossings(const Atlas &atlas)
{
    const Skeleton skeleton(atlas.joints());
    std::vector<Crossing> out;
    for (const Structure &muscle : atlas.structures()) {
        if (muscle.kind != Kind::Muscle)
            continue;
        std::map<StructureId, Crossing> found;
        const auto add = [&](const StructureId &joint, Basis basis, Grade grade, const std::vector<std::string> &sources) {
            auto [it, fresh] = found.try_emplace(joint, Crossing{muscle.id, joint, basis, grade, sources});
            if (fresh)
                return;
            it->second.evidence = std::min(it->second.evidence, grade); // the best head is enough to show it
            for (const auto &source : sources)
                if (std::find(it->second.sources.begin(), it->second.sources.end(), source) == it->second.sources.end())
                    it->second.sources.push_back(source);
        };
        for (const Attachment &head : muscle.attachments)
            for (const StructureId &origin : head.origins)
                for (const StructureId &insertion : head.insertions)
                    for (const StructureId &from : atlas.bonesOf(origin))
                        for (const StructureId &to : atlas.bonesOf(insertion))
                            for (const StructureId &joint : skeleton.path(from, to))
                                add(joint, Basis::Computed, head.evidence, head.sources);
        for (const Span &span : muscle.spans) {
            Grade grade = Grade::Convention;
            for (const auto &id : span.sources)
                if (const Source *source = atlas.findSource(id))
                    grade = std::min(grade, source->supports);
            add(span.joint, Basis::Stated, weaker(grade, Grade::Described), span.sources);
        }
        for (auto &[joint, crossing] : found)
            out.push_back(std::move(crossing));
    }
    return out;
}

} // namespace raphe
