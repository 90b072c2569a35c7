#include "core/anatomy/Skeleton.h"

#include "core/anatomy/Atlas.h"

#include <algorithm>
#include <deque>
#include <map>
#include <set>

namespace raphe {

Skeleton::Skeleton(const std::vector<Joint> &joints)
{
    struct Edge {
        std::size_t bone;
        std::size_t joint;
    };
    std::vector<std::vector<Edge>> edges;
    std::vector<std::size_t> root; // union-find over bones met so far
    const auto find = [&root](std::size_t bone) {
        while (root[bone] != bone)
            bone = root[bone];
        return bone;
    };
    const auto indexOf = [&](const StructureId &bone) {
        const auto [it, fresh] = m_index.emplace(bone.value, root.size());
        if (fresh) {
            root.push_back(root.size());
            edges.emplace_back();
        }
        return it->second;
    };
    for (const Joint &joint : joints) {
        if (joint.role != JointRole::Tree)
            continue;
        const std::size_t a = indexOf(joint.bones[0]);
        const std::size_t b = indexOf(joint.bones[1]);
        if (find(a) == find(b)) {
            if (!m_cycle)
                m_cycle = joint.id;
            continue;
        }
        root[find(a)] = find(b);
        edges[a].push_back({b, m_joints.size()});
        edges[b].push_back({a, m_joints.size()});
        m_joints.push_back(joint.id);
    }

    m_nodes.resize(root.size());
    for (std::size_t top = 0; top < root.size(); ++top) {
        if (find(top) != top)
            continue;
        m_nodes[top] = {top, 0, 0, top};
        std::deque<std::size_t> queue{top};
        while (!queue.empty()) {
            const std::size_t bone = queue.front();
            queue.pop_front();
            for (const Edge &edge : edges[bone])
                if (edge.bone != m_nodes[bone].parent) {
                    m_nodes[edge.bone] = {bone, edge.joint, m_nodes[bone].depth + 1, top};
                    queue.push_back(edge.bone);
                }
        }
    }
}

std::optional<StructureId> Skeleton::gap(const std::vector<StructureId> &bones) const
{
    if (bones.empty())
        return std::nullopt;
    const auto first = m_index.find(bones.front().value);
    for (const StructureId &bone : bones) {
        const auto it = m_index.find(bone.value);
        const bool isFirst = bone == bones.front();
        if (!isFirst
            && (first == m_index.end() || it == m_index.end() || m_nodes[it->second].tree != m_nodes[first->second].tree))
            return bone;
    }
    return std::nullopt;
}

std::vector<StructureId> Skeleton::path(const StructureId &from, const StructureId &to) const
{
    const auto start = m_index.find(from.value);
    const auto end = m_index.find(to.value);
    if (start == m_index.end() || end == m_index.end() || m_nodes[start->second].tree != m_nodes[end->second].tree)
        return {};
    std::size_t a = start->second;
    std::size_t b = end->second;
    std::vector<StructureId> up; // from the start to where the two ways to the root meet
    std::vector<StructureId> down; // from the end to there
    while (a != b) {
        auto &deeper = m_nodes[a].depth >= m_nodes[b].depth ? a : b;
        (&deeper == &a ? up : down).push_back(m_joints[m_nodes[deeper].joint]);
        deeper = m_nodes[deeper].parent;
    }
    up.insert(up.end(), down.rbegin(), down.rend());
    return up;
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
