#include "core/reasoning/Linkage.h"

#include "core/anatomy/SpinalRoot.h"

#include <algorithm>
#include <array>
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

using Work = std::pair<std::string, Motion>; // at a joint or complex
using Shares = std::map<std::pair<StructureId, StructureId>, double>;

// Who does which work. Holding still is no work of its own.
std::map<Work, std::set<StructureId>> workers(const Atlas &atlas)
{
    std::map<Work, std::set<StructureId>> doing;
    for (const Structure &s : atlas.structures())
        for (const Action &action : s.actions) {
            const auto *joint = std::get_if<StructureId>(&action.at);
            const std::string at = joint ? joint->value : std::string(wordOf(complexWords, std::get<JointComplex>(action.at)));
            for (const Motion motion : action.motions)
                if (motion != Motion::Stabilisation)
                    doing[{at, motion}].insert(s.id);
        }
    return doing;
}

bool isPartOrWhole(const Atlas &atlas, const StructureId &a, const StructureId &b)
{
    return atlas.at(a).partOf == b || atlas.at(b).partOf == a;
}

// The bones at an end of a muscle; where it ends on other tissue, that.
std::set<StructureId> endsOf(const Atlas &atlas, const Structure &muscle, std::vector<StructureId> Attachment::*end)
{
    std::set<StructureId> out;
    for (const Attachment &head : muscle.attachments)
        for (const StructureId &onto : head.*end) {
            const std::vector<StructureId> bones = atlas.bonesOf(onto);
            out.insert(bones.begin(), bones.end());
            if (bones.empty())
                out.insert(onto);
        }
    return out;
}

bool meet(const std::set<StructureId> &a, const std::set<StructureId> &b)
{
    return std::any_of(a.begin(), a.end(), [&](const StructureId &id) { return b.contains(id); });
}

// Two muscles between the same bones.
bool runTogether(const Atlas &atlas, const StructureId &a, const StructureId &b)
{
    const Structure &one = atlas.at(a);
    const Structure &other = atlas.at(b);
    return meet(endsOf(atlas, one, &Attachment::origins), endsOf(atlas, other, &Attachment::origins))
        && meet(endsOf(atlas, one, &Attachment::insertions), endsOf(atlas, other, &Attachment::insertions));
}

// Pairs of muscles that do the same work at a joint. Each work is one share, divided among the others that do it.
Shares synergists(const Atlas &atlas, double together)
{
    Shares shares;
    for (const auto &[work, muscles] : workers(atlas))
        for (auto a = muscles.begin(); a != muscles.end(); ++a)
            for (auto b = std::next(a); b != muscles.end(); ++b)
                if (!isPartOrWhole(atlas, *a, *b))
                    shares[{*a, *b}] += 1.0 / std::sqrt(static_cast<double>(muscles.size() - 1));
    for (auto &[pair, share] : shares)
        if (runTogether(atlas, pair.first, pair.second))
            share *= together;
    return shares;
}

constexpr std::array<std::pair<Motion, Motion>, 11> opposites{{{Motion::Flexion, Motion::Extension},
    {Motion::Abduction, Motion::Adduction}, {Motion::MedialRotation, Motion::LateralRotation},
    {Motion::RotationSameSide, Motion::RotationOppositeSide}, {Motion::Elevation, Motion::Depression},
    {Motion::Protraction, Motion::Retraction}, {Motion::UpwardRotation, Motion::DownwardRotation},
    {Motion::Supination, Motion::Pronation}, {Motion::Dorsiflexion, Motion::Plantarflexion},
    {Motion::Inversion, Motion::Eversion}, {Motion::RadialDeviation, Motion::UlnarDeviation}}};

// Pairs of muscles of opposite work at a joint, each work divided among those on the other side of it.
Shares opponents(const Atlas &atlas)
{
    const auto doing = workers(atlas);
    Shares shares;
    for (const auto &[work, muscles] : doing)
        for (const auto &[one, other] : opposites) {
            const auto against = work.second == one ? doing.find({work.first, other}) : doing.end();
            if (against == doing.end())
                continue;
            const auto many = static_cast<double>(std::max(muscles.size(), against->second.size()));
            for (const StructureId &a : muscles)
                for (const StructureId &b : against->second)
                    if (a != b && !isPartOrWhole(atlas, a, b))
                        shares[std::minmax(a, b)] += 1 / std::sqrt(many);
        }
    return shares;
}

// Whether the tissues of both sides pull on one bone of the midline.
bool meetsAtMidline(const Atlas &atlas, const Structure &s)
{
    return std::any_of(s.attachments.begin(), s.attachments.end(), [&](const Attachment &head) {
        for (const auto *ends : {&head.origins, &head.insertions})
            for (const StructureId &end : *ends)
                for (const StructureId &bone : atlas.bonesOf(end))
                    if (!atlas.at(bone).paired)
                        return true;
        return false;
    });
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
    for (const auto &[pair, share] : synergists(atlas, constants["synergist-together"])) {
        Link link = pattern(LinkKind::Synergist, Grade::Described, Basis::Computed, atlas.at(pair.first).sources);
        link.weight *= share;
        connect(pair.first, pair.second, false, link);
    }
    for (const auto &[pair, share] : opponents(atlas)) {
        Link link = pattern(LinkKind::Opposes, Grade::Described, Basis::Computed, atlas.at(pair.first).sources);
        link.weight *= share;
        connect(pair.first, pair.second, false, link);
    }
    for (const Structure &s : atlas.structures())
        if (s.paired && s.kind == Kind::Muscle && meetsAtMidline(atlas, s)) {
            Link link = pattern(LinkKind::OtherSide, Grade::Described, Basis::Computed, s.sources);
            link.weight /= 2; // connect() sees this pair from either side
            connect(s.id, s.id, true, link);
        }
    for (std::size_t i = 0; i < atlas.joints().size(); ++i) {
        const auto &a = atlas.joints()[i];
        Link across = pattern(LinkKind::OtherSide, Grade::Described, Basis::Computed, atlas.at(a.id).sources);
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
