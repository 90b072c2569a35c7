#include "core/reasoning/Reason.h"

#include "core/reasoning/ReasonTables.h"
#include "core/reasoning/ReasonWords.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <numeric>

namespace raphe {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using Nodes = std::vector<std::size_t>;

} // namespace

Reasoner::Reasoner(const Linkage &linkage, const Regions &regions, const Constants &constants)
    : m_tables(std::make_unique<const ReasonTables>(linkage, regions, constants))
{
}

Reasoner::~Reasoner() = default;
Reasoner::Reasoner(Reasoner &&) noexcept = default;

const Linkage &Reasoner::linkage() const
{
    return m_tables->linkage;
}

const Constants &Reasoner::constants() const
{
    return m_tables->constants;
}

std::size_t Reasoner::bytes() const
{
    return m_tables->reach.bytes() + m_tables->check.bytes();
}

Reasons Reasoner::reasons(const Visit &visit, const std::function<bool(const Place &)> &mayCheck) const
{
    const ReasonTables &t = *m_tables;
    const VisitEvidence seen(t.linkage, visit, t.constants);
    Reasons out;
    if (!seen.found.empty())
        out.tied = t.tied(seen);
    const bool isFound =
        std::any_of(seen.evidence.begin(), seen.evidence.end(), [](const Evidence &e) { return e.observation.isPositive; });
    std::vector<std::pair<Place, std::optional<Place>>> separated; // by each check
    if (isFound || !visit.complaintAt.empty()) {
        const std::vector<double> prior = t.priorFor(seen.canonical.visit.complaintAt);
        std::vector<Observation> observations;
        for (const Evidence &one : seen.evidence)
            observations.push_back(one.observation);
        Posterior posterior = normalised(logPosterior(t.reach, prior, observations));
        if (seen.canonical.isItsOwnImage)
            symmetrise(posterior.of, t.mirroredSource);
        out.unexplained = posterior.unexplained / *std::max_element(posterior.of.begin(), posterior.of.end());
        if (isFound)
            out.explain = t.explained(seen, posterior, prior);
        out.check = t.checks(seen, posterior, mayCheck);

        constexpr std::size_t rivals = 8;
        Nodes leading(posterior.of.size());
        std::iota(leading.begin(), leading.end(), std::size_t{0});
        std::partial_sort(leading.begin(), leading.begin() + rivals, leading.end(), [&](std::size_t a, std::size_t b) {
            return posterior.of[a] != posterior.of[b] ? posterior.of[a] > posterior.of[b] : t.source(a) < t.source(b);
        });
        leading.resize(rivals);
        for (const Suggestion &s : out.check)
            separated.push_back(t.separates(s, posterior, leading));
    }

    std::set<std::size_t> ends;
    for (const auto *list : {&out.tied, &out.explain, &out.check})
        for (std::size_t i = 0; i < std::min(list->size(), pathsAtOnce); ++i)
            ends.insert(t.nodeOf((*list)[i].place));
    const PathTree tree(t.linkage.graph(), seen.found, ends);
    for (auto *list : {&out.tied, &out.explain, &out.check}) {
        t.addPaths(*list, seen, tree);
        if (seen.canonical.isMirrored)
            mirrorAll(*list);
    }
    const Atlas &atlas = t.linkage.atlas();
    for (Suggestion &s : out.tied)
        s.why = linkedInWords(atlas, s.path);
    for (Suggestion &s : out.explain)
        s.why = explainedInWords(atlas, s);
    for (std::size_t i = 0; i < out.check.size(); ++i) {
        auto [one, other] = separated[i];
        if (seen.canonical.isMirrored) {
            one = mirrored(one);
            other = other ? std::optional(mirrored(*other)) : other;
        }
        out.check[i].why = separatedInWords(atlas, out.check[i].place, one, other);
    }
    return out;
}

std::vector<double> Reasoner::pullOfOthers(const Visit &visit, const std::vector<Place> &places) const
{
    const ReasonTables &t = *m_tables;
    const Nodes found = foundNodes(t.linkage, visit.findings);
    const std::set<std::size_t> isClear = clearNodes(t.linkage, visit.findings);
    const Nodes clear(isClear.begin(), isClear.end());
    Between between(t.walk, t.reach, t.sourceOf);
    MatrixXd g = between.block(found, found);
    if (!clear.empty() && !found.empty()) {
        const MatrixXd across = between.block(clear, found);
        g -= across.transpose() * between.block(clear, clear).ldlt().solve(across);
    }
    const VectorXd e = valuesAt(startOf(t.linkage, visit.findings, t.constants), found);
    std::vector<double> out;
    for (const Place &place : places) {
        const Nodes own = t.linkage.nodesOf(place);
        std::vector<Index> rows;
        VectorXd others = e;
        for (const std::size_t node : own)
            if (const auto it = std::lower_bound(found.begin(), found.end(), node); it != found.end() && *it == node) {
                rows.push_back(it - found.begin());
                others[rows.back()] = 0;
            }
        double most = 0;
        if (const double left = others.sum(); left > 0)
            for (const Index row : rows) {
                const std::size_t node = found[static_cast<std::size_t>(row)];
                most = std::max(most, t.walk.scale(node) * g.row(row).dot(others) / left / t.walk.everywhere()[node]);
            }
        out.push_back(most);
    }
    return out;
}

std::vector<double> Reasoner::nearComplaint(const Visit &visit, const std::vector<Place> &places) const
{
    const std::vector<double> near = m_tables->near(visit.complaintAt);
    std::vector<double> out;
    for (const Place &place : places) {
        double most = 0;
        for (const std::size_t node : m_tables->linkage.nodesOf(place))
            if (const std::size_t source = m_tables->sourceOf[node]; source != Between::notASource)
                most = std::max(most, near[source]);
        out.push_back(most);
    }
    return out;
}

std::vector<std::vector<PathStep>> Reasoner::ways(const Visit &visit, const Place &place, std::size_t k) const
{
    const Linkage &linkage = m_tables->linkage;
    const WeightedGraph &graph = linkage.graph();
    const Canonical c = canonical(visit);
    const Nodes found = foundNodes(linkage, c.visit.findings);
    std::vector<Way> ways;
    for (const std::size_t node : linkage.nodesOf(c.isMirrored ? mirrored(place) : place)) {
        std::size_t end = node;
        for (const std::size_t link : nearest(graph, node, found).links)
            end = graph.links()[link].other(end);
        if (end == node)
            continue;
        const bool isFound = std::binary_search(found.begin(), found.end(), node);
        for (Way &way : isFound ? shortestWays(graph, node, end, k) : shortestWays(graph, end, node, k))
            ways.push_back(std::move(way));
    }
    std::stable_sort(ways.begin(), ways.end(), [](const Way &a, const Way &b) { return a.length < b.length; });
    ways.resize(std::min(ways.size(), k));
    std::vector<std::vector<PathStep>> out;
    out.reserve(ways.size());
    for (const Way &way : ways)
        out.push_back(c.isMirrored ? mirrored(stepsOf(linkage, way)) : stepsOf(linkage, way));
    return out;
}

} // namespace raphe
