#include "core/reasoning/Linkage.h"

#include "core/anatomy/SpinalRoot.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>
#include <string>
#include <variant>

namespace raphe {

namespace {

double gradeWeight(const Constants &constants, Grade grade)
{
    return constants["grade-" + std::string(wordOf(gradeWords, grade))];
}

// Pairs of muscles that do the same work at a joint. Each work is one share, divided among the others that do it; holding
// still is no work of its own.
std::map<std::pair<StructureId, StructureId>, double> synergists(const Atlas &atlas)
{
    std::map<std::pair<std::string, Motion>, std::set<StructureId>> doing;
    for (const Structure &s : atlas.structures())
        for (const Action &action : s.actions) {
            const auto *joint = std::get_if<StructureId>(&action.at);
            const std::string at = joint ? joint->value : std::string(wordOf(complexWords, std::get<JointComplex>(action.at)));
            for (const Motion motion : action.motions)
                if (motion != Motion::Stabilisation)
                    doing[{at, motion}].insert(s.id);
        }
    std::map<std::pair<StructureId, StructureId>, double> shares;
    for (const auto &[work, muscles] : doing)
        for (auto a = muscles.begin(); a != muscles.end(); ++a)
            for (auto b = std::next(a); b != muscles.end(); ++b)
                if (atlas.at(*a).partOf != *b && atlas.at(*b).partOf != *a)
                    shares[{*a, *b}] += 1.0 / static_cast<double>(muscles.size() - 1);
    return shares;
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
    for (const auto &[pair, share] : synergists(atlas)) {
        Link link = pattern(LinkKind::Synergist, Grade::Described, Basis::Computed, atlas.at(pair.first).sources);
        link.weight *= share;
        connect(pair.first, pair.second, false, link);
    }
    for (std::size_t i = 0; i < atlas.joints().size(); ++i) {
        const auto &a = atlas.joints()[i];
        Link across = pattern(LinkKind::Adjoins, Grade::Described, Basis::Computed, atlas.at(a.id).sources);
        across.weight /= 2; // connect() sees this pair from either side
        if (atlas.at(a.id).paired
            && std::any_of(a.bones.begin(), a.bones.end(), [&](const StructureId &bone) { return !atlas.at(bone).paired; }))
            connect(a.id, a.id, true, across);
        for (std::size_t j = 0; j < i; ++j) {
            const auto &b = atlas.joints()[j];
            if (std::find_first_of(a.bones.begin(), a.bones.end(), b.bones.begin(), b.bones.end()) != a.bones.end())
                connect(a.id, b.id, false, pattern(LinkKind::Adjoins, Grade::Described, Basis::Computed, atlas.at(a.id).sources));
        }
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
