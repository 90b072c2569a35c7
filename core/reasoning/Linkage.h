// The weighted graph over places that every answer walks on: which tissue is tied to which, how, and how well known.
// Built once from the atlas, the drawings and the constants; immutable, thread-safe.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/anatomy/Drawing.h"
#include "core/reasoning/Constants.h"
#include "core/reasoning/Graph.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// Supplied: a muscle and the segment at which a root of its nerve leaves the spine. Adjoins: two joints of one bone. Synergist:
/// two muscles that do the same work at a joint. Opposes: two muscles of opposite work at a joint. OtherSide: the same tissue of
/// the other side, where both pull on one bone of the midline.
enum class LinkKind { Continues, Attaches, Crosses, PartOf, Overlies, Supplied, Adjoins, Synergist, Opposes, OtherSide };
inline constexpr WordTable<LinkKind, 10> linkWords{{{LinkKind::Continues, "continues"}, {LinkKind::Attaches, "attaches"},
    {LinkKind::Crosses, "crosses"}, {LinkKind::PartOf, "part-of"}, {LinkKind::Overlies, "overlies"},
    {LinkKind::Supplied, "supplied"}, {LinkKind::Adjoins, "adjoins"}, {LinkKind::Synergist, "synergist"},
    {LinkKind::Opposes, "opposes"}, {LinkKind::OtherSide, "other-side"}}};

/// A link between two places, undirected.
struct Link {
    std::size_t a = 0;
    std::size_t b = 0;
    LinkKind kind{};
    Grade evidence{};
    Basis basis{};
    std::optional<Force> force; // for continuities
    std::vector<std::string> sources;
    std::string note;
    double weight = 0;
    [[nodiscard]] std::size_t other(std::size_t node) const { return node == a ? b : a; }
};

class Linkage {
public:
    Linkage(const Atlas &atlas, const Body &body, const Constants &constants);

    /// The same links with other weights, to see what an answer owes to them.
    Linkage(const Linkage &other, const std::vector<double> &weights);

    [[nodiscard]] const Atlas &atlas() const { return *m_atlas; }
    /// Spinal segments are nodes left and right; their midline place stands for half of each.
    [[nodiscard]] const std::vector<Place> &places() const { return m_places; }
    [[nodiscard]] const std::vector<Link> &links() const { return m_links; }
    /// The same by index alone: nodes as places(), links as links().
    [[nodiscard]] const WeightedGraph &graph() const { return m_graph; }
    /// Indices into links() of the links at a place.
    [[nodiscard]] std::span<const std::size_t> linksAt(std::size_t place) const { return m_graph.linksAt(place); }
    /// Of each node the node of its mirror image.
    [[nodiscard]] const std::vector<std::size_t> &mirror() const { return m_mirror; }
    /// One node, or the left and right node of a spinal segment's midline place, or none.
    [[nodiscard]] std::vector<std::size_t> nodesOf(const Place &place) const;

private:
    void makeGraph();
    void connect(const StructureId &from, const StructureId &to, bool changesSide, const Link &pattern);

    const Atlas *m_atlas;
    std::vector<Place> m_places;
    std::map<Place, std::size_t> m_nodes;
    std::vector<Link> m_links;
    WeightedGraph m_graph;
    std::vector<std::size_t> m_mirror;
};

} // namespace raphe
