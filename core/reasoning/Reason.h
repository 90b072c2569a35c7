// What the findings are tied to, what would explain them, and what to check next: ranked, each with its terms, its reason and
// its path. Everything is computed in one canonical orientation and mirrored back, so that a mirrored visit gives exactly the
// mirrored answer. A Reasoner is made once (its tables take a good part of a second) and is immutable and thread-safe then.
#pragma once

#include "core/anatomy/Regions.h"
#include "core/reasoning/Evidence.h"
#include "core/reasoning/Suggestion.h"

#include <functional>
#include <memory>

namespace raphe {

struct Reasons {
    std::vector<Suggestion> tied; // by lift of the walk from the findings; what is clear never
    std::vector<Suggestion> explain; // single sources that would explain the findings, found ones included
    std::vector<Suggestion> check; // places not yet examined, by bits about the source
    double unexplained = 0; // 'not explained by what was found', on the scale of explain; above 1 it leads
};

inline constexpr std::size_t pathsAtOnce = 5; // of each list; the others on demand
inline constexpr std::size_t waysOnDemand = 3;

struct ReasonTables;

class Reasoner {
public:
    /// Keeps references.
    Reasoner(const Linkage &linkage, const Regions &regions, const Constants &constants);
    ~Reasoner();
    Reasoner(Reasoner &&) noexcept;
    Reasoner &operator=(Reasoner &&) = delete;

    [[nodiscard]] const Linkage &linkage() const;
    [[nodiscard]] const Constants &constants() const;
    /// Memory of the tables.
    [[nodiscard]] std::size_t bytes() const;

    /// `mayCheck`: false for a place that hands must keep off.
    [[nodiscard]] Reasons reasons(const Visit &visit, const std::function<bool(const Place &)> &mayCheck = {}) const;
    /// For each of these places: lift there of the walk from all the other findings.
    [[nodiscard]] std::vector<double> pullOfOthers(const Visit &canonicalVisit, const std::vector<Place> &places) const;
    /// For each of these places how near it is to where it hurts, 0 to 1.
    [[nodiscard]] std::vector<double> nearComplaint(const Visit &visit, const std::vector<Place> &places) const;
    /// The k shortest ways from the nearest finding to a place; of a finding, to the nearest other one.
    [[nodiscard]] std::vector<std::vector<PathStep>> ways(
        const Visit &visit, const Place &place, std::size_t k = waysOnDemand) const;

private:
    std::unique_ptr<const ReasonTables> m_tables;
};

} // namespace raphe
