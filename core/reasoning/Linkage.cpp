#include "core/reasoning/Linkage.h"

#include <algorithm>
#include <set>

namespace raphe {

namespace {

double gradeWeight(const Constants &constants, Grade grade)
{
    return constants["grade-" + std::string(wordOf(gradeWords, grade))];
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
    m_at.resize(m_places.size());

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
    for (const Crossing &c : atlas.crossings())
        connect(c.muscle, c.joint, false, pattern(LinkKind::Crosses, c.evidence, c.basis, c.sources));

    std::set<std::pair<StructureId, StructureId>> overlying;
    for (const Drawing &drawing : body.drawings())
        for (const Overlap &o : drawing.overlaps(atlas, constants["overlap-least"]))
            if (overlying.insert({o.outer, o.inner}).second) {
                auto sources = atlas.at(o.outer).sources;
                connect(
                    o.outer, o.inner, false, pattern(LinkKind::Overlies, Grade::Described, Basis::Computed, std::move(sources)));
            }
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
            m_at[link.a].push_back(m_links.size());
            m_at[link.b].push_back(m_links.size());
            m_links.push_back(std::move(link));
        }
    }
}

} // namespace raphe
