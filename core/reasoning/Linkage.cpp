#include "core/reasoning/Linkage.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <string>

namespace raphe {

namespace {

double gradeWeight(const Constants &constants, Grade grade)
{
    return constants["grade-" + std::string(wordOf(gradeWords, grade))];
}

// The segment at which a spinal root leaves: in the neck above the vertebra of its name, C8 below the seventh, from T1 on
// below. Sacral roots leave through the sacrum: none.
std::optional<StructureId> segmentOf(const std::string &root)
{
    static constexpr std::array segments{"c0-c1", "c1-c2", "c2-c3", "c3-c4", "c4-c5", "c5-c6", "c6-c7", "c7-t1", "t1-t2", "t2-t3",
        "t3-t4", "t4-t5", "t5-t6", "t6-t7", "t7-t8", "t8-t9", "t9-t10", "t10-t11", "t11-t12", "t12-l1", "l1-l2", "l2-l3", "l3-l4",
        "l4-l5", "l5-s1"}; // C1 to C8, T1 to T12, L1 to L5 in this order
    const std::size_t before = root.front() == 'C' ? 0 : (root.front() == 'T' ? 8 : 20);
    const std::size_t index = before + std::stoul(root.substr(1)) - 1;
    if (root.front() == 'S' || index >= segments.size())
        return std::nullopt;
    return StructureId{segments[index]};
}

} // namespace

Linkage::Linkage(const Atlas &atlas, const Body &body, const Constants &constants) : m_atlas(&atlas)
{
    for (const Structure &s : atlas.structures())
        for (const Side side : atlas.sides(s))
            if (!(side == Side::Midline && atlas.isSpinalSegment(s.id))) {
                m_nodes.emplace(Place{s.id, side}, m_places.size());
                m_places.push_back({s.id, side});
            }
    m_mirror.reserve(m_places.size());
    for (const Place &place : m_places)
        m_mirror.push_back(m_nodes.at(mirrored(place)));

    const auto pattern = [&](LinkKind kind, Grade grade, Basis basis, std::vector<std::string> sources) {
        Link link;
        link.kind = kind;
        link.evidence = grade;
        link.basis = basis;
        link.sources = std::move(sources);
        link.weight = constants["link-" + std::string(wordOf(linkWords, kind))] * gradeWeight(constants, grade);
        return link;
    };

    for (const Continuity &c : atlas.continuities()) {
        Link link = pattern(LinkKind::Continues, c.evidence, Basis::Stated, c.sources);
        link.force = c.force;
        link.note = c.note;
        connect(c.from, c.to, c.changesSide, link);
    }
    for (const Structure &s : atlas.structures()) {
        std::set<StructureId> ends; // each attachment area once, however many heads reach it
        for (const Attachment &head : s.attachments) {
            const Link link = pattern(LinkKind::Attaches, head.evidence, Basis::Stated, head.sources);
            for (const auto *list : {&head.origins, &head.insertions})
                for (const StructureId &onto : *list)
                    if (atlas.at(onto).kind != Kind::Bone && ends.insert(onto).second) // whole bones tie everything to everything
                        connect(s.id, onto, false, link);
        }
        if (s.partOf && s.kind != Kind::Landmark)
            connect(s.id, *s.partOf, false, pattern(LinkKind::PartOf, Grade::Described, Basis::Stated, s.sources));
    }
    // A muscle over a dozen segments is tied less to each of them than one over two: by the root of their number.
    std::map<StructureId, int> crossed;
    for (const Crossing &c : atlas.crossings())
        ++crossed[c.muscle];
    for (const Crossing &c : atlas.crossings()) {
        Link link = pattern(LinkKind::Crosses, c.evidence, c.basis, c.sources);
        link.weight /= std::sqrt(crossed[c.muscle]);
        connect(c.muscle, c.joint, false, link);
    }

    for (const Structure &s : atlas.structures())
        if (s.kind == Kind::Muscle)
            for (const std::string &root : s.roots)
                if (const auto segment = segmentOf(root))
                    connect(s.id, *segment, false, pattern(LinkKind::Supplied, Grade::Described, Basis::Computed, s.sources));
    for (std::size_t i = 0; i < atlas.joints().size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const auto &a = atlas.joints()[i];
            const auto &b = atlas.joints()[j];
            if (std::find_first_of(a.bones.begin(), a.bones.end(), b.bones.begin(), b.bones.end()) != a.bones.end())
                connect(a.id, b.id, false, pattern(LinkKind::Adjoins, Grade::Described, Basis::Computed, atlas.at(a.id).sources));
        }

    std::set<std::pair<StructureId, StructureId>> overlying;
    for (const Drawing &drawing : body.drawings())
        for (const Overlap &o : drawing.overlaps(atlas, constants["overlap-least"]))
            if (overlying.insert({o.outer, o.inner}).second) {
                auto sources = atlas.at(o.outer).sources;
                connect(
                    o.outer, o.inner, false, pattern(LinkKind::Overlies, Grade::Described, Basis::Computed, std::move(sources)));
            }
    makeGraph();
}

Linkage::Linkage(const Linkage &other, const std::vector<double> &weights) : Linkage(other)
{
    for (std::size_t i = 0; i < m_links.size(); ++i)
        m_links[i].weight = weights[i];
    makeGraph();
}

void Linkage::makeGraph()
{
    std::vector<WeightedLink> weighted;
    weighted.reserve(m_links.size());
    for (const Link &link : m_links)
        weighted.push_back({link.a, link.b, link.weight});
    m_graph = WeightedGraph(m_places.size(), std::move(weighted));
}

std::vector<std::size_t> Linkage::nodesOf(const Place &place) const
{
    if (const auto it = m_nodes.find(place); it != m_nodes.end())
        return {it->second};
    std::vector<std::size_t> both;
    for (const Side side : {Side::Left, Side::Right})
        if (const auto it = m_nodes.find({place.structure, side}); it != m_nodes.end())
            both.push_back(it->second);
    return both;
}

// On a two-sided pair left goes with left; a midline end goes with both sides.
void Linkage::connect(const StructureId &from, const StructureId &to, bool changesSide, const Link &pattern)
{
    for (const Side side : {Side::Left, Side::Right, Side::Midline}) {
        const auto a = m_nodes.find({from, side});
        if (a == m_nodes.end())
            continue;
        const Side wanted = changesSide ? mirrored(side) : side;
        for (const Side other : {Side::Left, Side::Right, Side::Midline}) {
            const auto b = m_nodes.find({to, other});
            if (b == m_nodes.end() || a == b || (other != wanted && other != Side::Midline && side != Side::Midline))
                continue;
            Link link = pattern;
            link.a = a->second;
            link.b = b->second;
            m_links.push_back(std::move(link));
        }
    }
}

} // namespace raphe
