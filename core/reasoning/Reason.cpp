#include "core/reasoning/Reason.h"

#include "core/reasoning/Between.h"
#include "core/reasoning/Candidates.h"
#include "core/reasoning/ReasonWords.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace raphe {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using Nodes = std::vector<std::size_t>;

constexpr double least = 1e-12; // what the walk does not reach at all is not a suggestion
constexpr std::size_t none = Between::notASource;

Nodes foundNodes(const Linkage &linkage, const std::vector<Finding> &findings)
{
    std::set<std::size_t> found;
    for (const Finding &f : findings)
        if (f.isFound())
            for (const std::size_t node : linkage.nodesOf(f.place))
                found.insert(node);
    return {found.begin(), found.end()};
}

VectorXd valuesAt(const std::vector<double> &values, const Nodes &nodes)
{
    VectorXd out(static_cast<Index>(nodes.size()));
    for (std::size_t i = 0; i < nodes.size(); ++i)
        out[static_cast<Index>(i)] = values[nodes[i]];
    return out;
}

// What is said of one side concerns the midline too, and the reverse.
bool goTogether(Side a, Side b)
{
    return a == b || a == Side::Midline || b == Side::Midline;
}

// Rounding must not tell left from right where the visit does not.
void symmetrise(std::vector<double> &values, const std::vector<std::size_t> &image)
{
    for (std::size_t i = 0; i < image.size(); ++i)
        if (image[i] > i)
            values[i] = values[image[i]] = (values[i] + values[image[i]]) / 2;
}

// A visit as the answer's parts need it, in canonical orientation.
struct Asked {
    Canonical canonical;
    Nodes found;
    std::set<std::size_t> isFound;
    Nodes clear;
    std::set<std::size_t> isClear;
    std::vector<Evidence> evidence;

    Asked(const Linkage &linkage, const Visit &visit, const Constants &constants) : canonical(raphe::canonical(visit))
    {
        const auto &findings = canonical.visit.findings;
        found = foundNodes(linkage, findings);
        isFound = {found.begin(), found.end()};
        isClear = clearNodes(linkage, findings);
        clear = {isClear.begin(), isClear.end()};
        evidence = evidenceOf(linkage, findings, constants);
    }
};

} // namespace

struct Reasoner::Tables {
    const Linkage &linkage;
    const Regions &regions;
    const Constants &constants;
    WalkSolver walk;
    Candidates candidates;
    ReachTable reach;
    CheckTable check;
    std::vector<std::size_t> sourceOf; // of a node: index among the sources, or none
    std::vector<std::size_t> mirroredSource; // of a source: index of its mirror image
    std::vector<std::size_t> mirroredCheck; // of a check: index of its mirror image

    Tables(const Linkage &l, const Regions &r, const Constants &c)
        : linkage(l),
          regions(r),
          constants(c),
          walk(l.graph(), c["restart"], l.mirror()),
          candidates(candidatesOf(l, r.body(), c)),
          reach(walk, l.places().size(), candidates.sources, l.mirror()),
          check(reach, candidates.checks, touch(c)),
          sourceOf(l.places().size(), none)
    {
        const Nodes &sources = candidates.sources;
        const Nodes &checks = candidates.checks;
        for (std::size_t s = 0; s < sources.size(); ++s) {
            sourceOf[sources[s]] = s;
            static_cast<void>(regions.over(source(s).structure)); // they remember: the first answer shall not wait for them
            static_cast<void>(regions.atMark(source(s).structure));
        }
        for (const std::size_t node : sources)
            mirroredSource.push_back(sourceOf[linkage.mirror()[node]]);
        for (const std::size_t node : checks)
            mirroredCheck.push_back(static_cast<std::size_t>(
                std::lower_bound(checks.begin(), checks.end(), linkage.mirror()[node]) - checks.begin()));
    }

    [[nodiscard]] const Place &source(std::size_t s) const { return linkage.places()[candidates.sources[s]]; }
    [[nodiscard]] std::size_t nodeOf(const Place &place) const { return linkage.nodesOf(place).front(); }

    [[nodiscard]] std::string checkedTogether(const Place &place) const;
    [[nodiscard]] std::vector<double> near(const std::vector<Place> &complaint) const;
    [[nodiscard]] std::vector<Suggestion> tied(const Asked &asked) const;
    [[nodiscard]] std::vector<double> priorFor(const std::vector<Place> &complaint) const;
    [[nodiscard]] std::vector<Term> termsOf(std::size_t source, const Asked &asked, std::span<const double> prior) const;
    [[nodiscard]] std::vector<Suggestion> explained(
        const Asked &asked, const Posterior &posterior, std::span<const double> prior) const;
    [[nodiscard]] std::vector<Suggestion> checks(
        const Asked &asked, const Posterior &posterior, const std::function<bool(const Place &)> &mayCheck) const;
    [[nodiscard]] std::pair<Place, std::optional<Place>> separates(
        const Suggestion &s, const Posterior &posterior, std::span<const std::size_t> leading) const;
    void addPaths(std::vector<Suggestion> &list, const Asked &asked, const PathTree &tree) const;
};

// What one pass of the hands checks: the joints of a complex, and what lies in one layer under one region of the skin. The
// most telling of them stands for the others until it is examined.
std::string Reasoner::Tables::checkedTogether(const Place &place) const
{
    const Structure &structure = linkage.atlas().at(place.structure);
    if (const Joint *joint = linkage.atlas().findJoint(place.structure))
        return std::string(wordOf(complexWords, joint->complex));
    const auto &region = regions.atMark(place.structure);
    return std::string(wordOf(layerWords, structure.layer)) + (region ? " " + region->value : "");
}

// Nearness of every source to where it hurts, 0 to 1. What lies under a skin region by a clear share is there; of any other
// place, what it reaches, against the place that it reaches best. The segment that supplies a muscle there is near as well.
std::vector<double> Reasoner::Tables::near(const std::vector<Place> &complaint) const
{
    constexpr double clearShare = 0.3; // of the structure's shape; our choice, as for the caution rules
    const Atlas &atlas = linkage.atlas();
    std::vector<double> out(candidates.sources.size(), 0.0);
    for (const Place &at : complaint) {
        if (atlas.at(at.structure).kind == Kind::SurfaceRegion) {
            for (std::size_t s = 0; s < out.size(); ++s) {
                const auto &over = regions.over(source(s).structure);
                if (const auto share = over.find(at.structure); share != over.end() && goTogether(source(s).side, at.side))
                    out[s] = std::min(1.0, out[s] + share->second / clearShare);
            }
            continue;
        }
        for (const std::size_t node : linkage.nodesOf(at)) {
            const auto column = reach.at(node);
            double most = 0;
            for (const std::size_t other : candidates.checks)
                most = std::max(most, column[sourceOf[other]]);
            if (most > 0)
                for (std::size_t s = 0; s < out.size(); ++s)
                    out[s] = std::max(out[s], std::min(1.0, column[s] / most));
        }
    }
    if (complaint.empty())
        return out;
    std::vector<double> supplying(out.size(), 0.0);
    for (const Link &link : linkage.links())
        if (link.kind == LinkKind::Supplied) { // a muscle and a segment
            double &segment = supplying[sourceOf[link.b]];
            segment = std::max(segment, constants["near-supplied"] * out[sourceOf[link.a]]);
        }
    for (std::size_t s = 0; s < out.size(); ++s)
        out[s] = std::max(out[s], supplying[s]);
    return out;
}

std::vector<Suggestion> Reasoner::Tables::tied(const Asked &asked) const
{
    const Nodes &sources = candidates.sources;
    const std::vector<double> start = startOf(linkage, asked.canonical.visit.findings, constants);
    const VectorXd e = valuesAt(start, asked.found) / std::accumulate(start.begin(), start.end(), 0.0);
    VectorXd y = VectorXd::Zero(static_cast<Index>(sources.size())); // G e, less what has passed through clear places
    const auto add = [&](std::size_t node, double amount) {
        const auto column = reach.at(node);
        y += amount * reach.diagonal(node) * Eigen::Map<const VectorXd>(column.data(), static_cast<Index>(column.size()));
    };
    for (std::size_t i = 0; i < asked.found.size(); ++i)
        add(asked.found[i], e[static_cast<Index>(i)]);
    if (!asked.clear.empty()) {
        Between between(walk, reach, sourceOf);
        const VectorXd x = between.block(asked.clear, asked.clear).ldlt().solve(between.block(asked.clear, asked.found) * e);
        for (std::size_t i = 0; i < asked.clear.size(); ++i)
            add(asked.clear[i], -x[static_cast<Index>(i)]);
    }
    std::vector<double> lift(sources.size());
    for (std::size_t s = 0; s < sources.size(); ++s)
        lift[s] = walk.scale(sources[s]) * y[static_cast<Index>(s)] / walk.everywhere()[sources[s]];
    if (asked.canonical.isItsOwnImage)
        symmetrise(lift, mirroredSource);
    std::vector<Suggestion> out;
    for (std::size_t s = 0; s < sources.size(); ++s)
        if (lift[s] > least && !asked.isClear.contains(sources[s]))
            out.emplace_back(source(s), lift[s]);
    rankAndCut(out);
    for (Suggestion &s : out)
        s.terms.push_back({"spread", s.score, {}});
    return out;
}

std::vector<double> Reasoner::Tables::priorFor(const std::vector<Place> &complaint) const
{
    std::vector<double> prior = candidates.prior;
    const std::vector<double> nearness = near(complaint);
    for (std::size_t s = 0; s < nearness.size(); ++s)
        prior[s] *= 1 + constants["prior-complaint"] * nearness[s];
    return prior;
}

// What each finding says for or against a source, in bits against 'not explained', heaviest first; then its prior.
std::vector<Term> Reasoner::Tables::termsOf(std::size_t source, const Asked &asked, std::span<const double> prior) const
{
    std::vector<Term> terms;
    for (const Evidence &one : asked.evidence) {
        const double h = reach.at(one.observation.node)[source];
        const double bits = (one.observation.logLikelihood(h) - one.observation.logLikelihood(0)) / std::log(2.0);
        const auto same = std::find_if(
            terms.begin(), terms.end(), [&](const Term &term) { return term.name == one.quality && term.at == one.place; });
        if (same != terms.end())
            same->value += bits; // the two nodes of a midline segment
        else
            terms.push_back({std::string(one.quality), bits, one.place});
    }
    std::stable_sort(
        terms.begin(), terms.end(), [](const Term &a, const Term &b) { return std::abs(a.value) > std::abs(b.value); });
    terms.push_back({"prior", std::log2(prior[source] / prior.back()), {}});
    return terms;
}

std::vector<Suggestion> Reasoner::Tables::explained(
    const Asked &asked, const Posterior &posterior, std::span<const double> prior) const
{
    const double best = *std::max_element(posterior.of.begin(), posterior.of.end());
    std::vector<Suggestion> out;
    for (std::size_t s = 0; s < candidates.sources.size(); ++s)
        if (!candidates.isWhole[s] || asked.isFound.contains(candidates.sources[s])) // else its parts stand for it
            out.emplace_back(source(s), posterior.of[s] / best);
    rankAndCut(out);
    for (Suggestion &s : out)
        s.terms = termsOf(sourceOf[nodeOf(s.place)], asked, prior);
    return out;
}

std::vector<Suggestion> Reasoner::Tables::checks(
    const Asked &asked, const Posterior &posterior, const std::function<bool(const Place &)> &mayCheck) const
{
    std::vector<double> gains = check.gains(reach, posterior);
    if (asked.canonical.isItsOwnImage)
        symmetrise(gains, mirroredCheck);
    const std::set<std::size_t> examined = examinedNodes(linkage, asked.canonical.visit.findings);
    // Where neither the findings nor the complaint make trouble likelier than before, a check is not worth a row.
    constexpr double worthwhile = 1.1; // our choice: a tenth likelier
    const double before = posterior.unexplained / candidates.prior.back();
    std::vector<Suggestion> all;
    for (std::size_t k = 0; k < gains.size(); ++k) {
        const std::size_t node = candidates.checks[k];
        const std::size_t own = sourceOf[node];
        if (gains[k] > least && !examined.contains(node) && posterior.of[own] > worthwhile * before * candidates.prior[own])
            all.emplace_back(linkage.places()[node], gains[k]);
    }
    std::sort(all.begin(), all.end(),
        [](const Suggestion &a, const Suggestion &b) { return a.score != b.score ? a.score > b.score : a.place < b.place; });
    std::vector<Suggestion> out;
    std::set<std::pair<std::string, Side>> shown;
    for (Suggestion &s : all) {
        if (out.size() == suggestionsAtMost)
            break;
        if (!shown.emplace(checkedTogether(s.place), s.place.side).second)
            continue;
        if (mayCheck && !mayCheck(asked.canonical.isMirrored ? mirrored(s.place) : s.place))
            continue;
        s.terms.push_back({"bits", s.score, {}});
        s.position = positionFor(regions.body(), s.place);
        out.push_back(std::move(s));
    }
    rankAndCut(out);
    return out;
}

// Which two of the leading sources, or the place itself, the check would tell apart best. No second: from 'nothing found
// explains it'.
std::pair<Place, std::optional<Place>> Reasoner::Tables::separates(
    const Suggestion &s, const Posterior &posterior, std::span<const std::size_t> leading) const
{
    const std::size_t node = nodeOf(s.place);
    const auto reachHere = reach.at(node);
    Nodes rivals(leading.begin(), leading.end());
    if (std::find(rivals.begin(), rivals.end(), sourceOf[node]) == rivals.end())
        rivals.push_back(sourceOf[node]);
    std::size_t one = sourceOf[node];
    std::size_t other = none;
    double most = -1;
    for (const std::size_t a : rivals) {
        const double high = check.detection().chance(reachHere[a]);
        const auto consider = [&](std::size_t b, double p, double low) {
            const double worth = posterior.of[a] * p * (high - low) * (high - low);
            if (high > low && worth > most) {
                most = worth;
                one = a;
                other = b;
            }
        };
        for (const std::size_t b : rivals)
            consider(b, posterior.of[b], check.detection().chance(reachHere[b]));
        consider(none, posterior.unexplained, check.detection().leak);
    }
    return {source(one), other == none ? std::nullopt : std::optional(source(other))};
}

// From the nearest finding; of a finding, to the nearest other one.
void Reasoner::Tables::addPaths(std::vector<Suggestion> &list, const Asked &asked, const PathTree &tree) const
{
    for (std::size_t i = 0; i < std::min(list.size(), pathsAtOnce); ++i) {
        const std::size_t node = nodeOf(list[i].place);
        list[i].path =
            stepsOf(linkage, asked.isFound.contains(node) ? nearest(linkage.graph(), node, asked.found) : tree.to(node));
    }
}

Reasoner::Reasoner(const Linkage &linkage, const Regions &regions, const Constants &constants)
    : m_tables(std::make_unique<const Tables>(linkage, regions, constants))
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
    const Tables &t = *m_tables;
    const Asked asked(t.linkage, visit, t.constants);
    Reasons out;
    if (!asked.found.empty())
        out.tied = t.tied(asked);
    const bool isFound =
        std::any_of(asked.evidence.begin(), asked.evidence.end(), [](const Evidence &e) { return e.observation.isPositive; });
    std::vector<std::pair<Place, std::optional<Place>>> separated; // by each check
    if (isFound || !visit.complaintAt.empty()) {
        const std::vector<double> prior = t.priorFor(asked.canonical.visit.complaintAt);
        std::vector<Observation> observations;
        for (const Evidence &one : asked.evidence)
            observations.push_back(one.observation);
        std::vector<double> logs = logPosterior(t.reach, prior, observations);
        if (asked.canonical.isItsOwnImage)
            symmetrise(logs, t.mirroredSource);
        const Posterior posterior = normalised(logs);
        out.unexplained = posterior.unexplained / *std::max_element(posterior.of.begin(), posterior.of.end());
        if (isFound)
            out.explain = t.explained(asked, posterior, prior);
        out.check = t.checks(asked, posterior, mayCheck);

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

    const PathTree tree(t.linkage.graph(), asked.found);
    for (auto *list : {&out.tied, &out.explain, &out.check}) {
        t.addPaths(*list, asked, tree);
        if (asked.canonical.isMirrored)
            mirrorAll(*list);
    }
    const Atlas &atlas = t.linkage.atlas();
    for (Suggestion &s : out.tied)
        s.why = linkedInWords(atlas, s.path);
    for (Suggestion &s : out.explain)
        s.why = explainedInWords(atlas, s);
    for (std::size_t i = 0; i < out.check.size(); ++i) {
        auto [one, other] = separated[i];
        if (asked.canonical.isMirrored) {
            one = mirrored(one);
            other = other ? std::optional(mirrored(*other)) : other;
        }
        out.check[i].why = separatedInWords(atlas, out.check[i].place, one, other);
    }
    return out;
}

std::vector<double> Reasoner::pullOfOthers(const Visit &visit, const std::vector<Place> &places) const
{
    const Tables &t = *m_tables;
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
            if (const std::size_t source = m_tables->sourceOf[node]; source != none)
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
