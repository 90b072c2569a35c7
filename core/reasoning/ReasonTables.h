// What a Reasoner keeps, made once, and how its lists are made from it. For Reason.cpp alone.
#pragma once

#include "core/reasoning/Between.h"
#include "core/reasoning/Candidates.h"
#include "core/reasoning/Reason.h"

#include <map>

namespace raphe {

/// A visit as the answer's parts need it, in canonical orientation.
struct VisitEvidence {
    Canonical canonical;
    std::vector<std::size_t> found;
    std::set<std::size_t> isFound;
    std::vector<std::size_t> clear;
    std::set<std::size_t> isClear;
    std::vector<Evidence> evidence;

    VisitEvidence(const Linkage &linkage, const Visit &visit, const Constants &constants) : canonical(raphe::canonical(visit))
    {
        const auto &findings = canonical.visit.findings;
        found = foundNodes(linkage, findings);
        isFound = {found.begin(), found.end()};
        isClear = clearNodes(linkage, findings);
        clear = {isClear.begin(), isClear.end()};
        evidence = evidenceOf(linkage, findings, constants);
    }
};

struct ReasonTables {
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
    std::map<StructureId, std::vector<std::pair<std::size_t, double>>> nearRegion; // of a skin region: sources, and how near
    std::vector<std::pair<std::size_t, std::size_t>> supplied; // sources: a muscle and a segment of its nerve

    ReasonTables(const Linkage &l, const Regions &r, const Constants &c);

    [[nodiscard]] const Place &source(std::size_t s) const { return linkage.places()[candidates.sources[s]]; }
    [[nodiscard]] std::size_t nodeOf(const Place &place) const { return linkage.nodesOf(place).front(); }

    void findNearRegions();

    // Which rows say the same, and what comes before any finding.
    [[nodiscard]] std::string checkedTogether(const Place &place) const;
    [[nodiscard]] std::vector<double> near(const std::vector<Place> &complaint) const;
    [[nodiscard]] std::vector<double> nearTo(const Place &at) const;
    [[nodiscard]] std::vector<double> nearTissue(const Place &place) const;
    [[nodiscard]] std::vector<double> priorFor(const std::vector<Place> &complaint) const;

    // Rows, in canonical orientation, without words.
    [[nodiscard]] std::vector<Suggestion> best(std::vector<std::pair<double, std::size_t>> scored) const;
    [[nodiscard]] std::vector<Suggestion> tied(const VisitEvidence &seen) const;
    [[nodiscard]] std::vector<Term> termsOf(std::size_t source, const VisitEvidence &seen, std::span<const double> prior) const;
    [[nodiscard]] std::vector<Suggestion> explained(
        const VisitEvidence &seen, const Posterior &posterior, std::span<const double> prior) const;
    [[nodiscard]] std::vector<Suggestion> checks(
        const VisitEvidence &seen, const Posterior &posterior, const std::function<bool(const Place &)> &mayCheck) const;
    [[nodiscard]] std::pair<Place, std::optional<Place>> separates(
        const Suggestion &s, const Posterior &posterior, std::span<const std::size_t> leading) const;
    void addPaths(std::vector<Suggestion> &list, const VisitEvidence &seen, const PathTree &tree) const;
};

/// Makes a value and that of its mirror image one, for a visit that is its own: rounding must not tell left from right.
void symmetrise(std::vector<double> &values, const std::vector<std::size_t> &image);

} // namespace raphe
