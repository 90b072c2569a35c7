#include "core/reasoning/ShortestPaths.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <optional>
#include <queue>
#include <set>
#include <tuple>
#include <utility>

namespace raphe {

namespace {

constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
constexpr double far = std::numeric_limits<double>::infinity();

constexpr auto allOpen = [](std::size_t, std::size_t) { return false; }; // no link is barred

struct Search {
    std::vector<double> length;
    std::vector<std::size_t> via;
};

// Dijkstra from the starts until `arrived` says so of a settled node; gives that node, or none. `barred`: links not to be taken.
template <typename Arrived, typename Barred>
std::size_t settle(const WeightedGraph &graph, const std::vector<std::size_t> &starts, Search &search, const Arrived &arrived,
    const Barred &barred)
{
    search.length.assign(graph.size(), far);
    search.via.assign(graph.size(), none);
    using Entry = std::pair<double, std::size_t>;
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    for (const std::size_t start : starts) {
        search.length[start] = 0;
        queue.emplace(0.0, start);
    }
    while (!queue.empty()) {
        const auto [length, node] = queue.top();
        queue.pop();
        if (length > search.length[node])
            continue;
        if (arrived(node))
            return node;
        for (const std::size_t index : graph.linksAt(node)) {
            const std::size_t next = graph.links()[index].other(node);
            const double through = length + graph.length(index);
            if (through < search.length[next] && !barred(node, next)) {
                search.length[next] = through;
                search.via[next] = index;
                queue.emplace(through, next);
            }
        }
    }
    return none;
}

Way wayTo(const WeightedGraph &graph, double length, const std::vector<std::size_t> &via, std::size_t node)
{
    Way way;
    way.length = length;
    while (via[node] != none) {
        way.links.push_back(via[node]);
        node = graph.links()[via[node]].other(node);
    }
    way.start = node;
    std::reverse(way.links.begin(), way.links.end());
    return way;
}

std::vector<std::size_t> nodesOf(const WeightedGraph &graph, const Way &way)
{
    std::vector<std::size_t> nodes{way.start};
    for (const std::size_t link : way.links)
        nodes.push_back(graph.links()[link].other(nodes.back()));
    return nodes;
}

} // namespace

PathTree::PathTree(const WeightedGraph &graph, const std::vector<std::size_t> &starts, const std::set<std::size_t> &ends)
    : m_graph(&graph)
{
    Search search;
    std::size_t left = ends.size();
    const auto hasAll = [&](std::size_t node) {
        left -= ends.contains(node); // each is settled once
        return left == 0;
    };
    settle(graph, starts, search, hasAll, allOpen);
    m_length = std::move(search.length);
    m_via = std::move(search.via);
}

Way PathTree::to(std::size_t node) const
{
    return wayTo(*m_graph, m_length[node], m_via, node);
}

Way nearest(const WeightedGraph &graph, std::size_t from, const std::vector<std::size_t> &ends)
{
    Search search;
    const std::size_t end = settle(
        graph, {from}, search,
        [&](std::size_t node) { return node != from && std::find(ends.begin(), ends.end(), node) != ends.end(); }, allOpen);
    return end == none ? Way{from, {}, 0} : wayTo(graph, search.length[end], search.via, end);
}

std::vector<Way> shortestWays(const WeightedGraph &graph, std::size_t from, std::size_t to, std::size_t k)
{
    std::vector<Way> found;
    const auto earlier = [&](const Way &a, const Way &b) {
        return std::tuple(a.length, nodesOf(graph, a)) < std::tuple(b.length, nodesOf(graph, b));
    };
    std::set<Way, decltype(earlier)> candidates(earlier);
    Search search;
    const auto isEnd = [to](std::size_t node) { return node == to; };
    if (settle(graph, {from}, search, isEnd, allOpen) == none)
        return found;
    candidates.insert(wayTo(graph, search.length[to], search.via, to));
    while (found.size() < k && !candidates.empty()) {
        found.push_back(*candidates.begin());
        candidates.erase(candidates.begin());
        const Way &last = found.back();
        const std::vector<std::size_t> nodes = nodesOf(graph, last);
        for (std::size_t i = 0; i + 1 < nodes.size() && found.size() < k; ++i) { // leave the last way at each of its nodes
            std::set<std::size_t> closed(nodes.begin(), nodes.begin() + static_cast<std::ptrdiff_t>(i));
            std::set<std::size_t> taken; // onward from here by ways that are known already
            for (const Way &way : found) {
                const auto known = nodesOf(graph, way);
                if (known.size() > i + 1
                    && std::equal(nodes.begin(), nodes.begin() + static_cast<std::ptrdiff_t>(i) + 1, known.begin()))
                    taken.insert(known[i + 1]);
            }
            const auto barred = [&](std::size_t node, std::size_t next) {
                return closed.contains(next) || (node == nodes[i] && taken.contains(next));
            };
            if (settle(graph, {nodes[i]}, search, isEnd, barred) != none) {
                const Way rest = wayTo(graph, search.length[to], search.via, to);
                Way way{from, {last.links.begin(), last.links.begin() + static_cast<std::ptrdiff_t>(i)}, 0};
                way.links.insert(way.links.end(), rest.links.begin(), rest.links.end());
                for (const std::size_t link : way.links) // added up in one order: the same way has the same length
                    way.length += graph.length(link);
                candidates.insert(std::move(way));
            }
        }
    }
    return found;
}

} // namespace raphe
