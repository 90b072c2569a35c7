// Which single source would explain what was found, and which check would tell the most about it.
//
// A trouble at source s shows at place j with h = h(s,j) (Reach.h). The chance of a finding there is
// 1 - (1 - leak)(1 - detect h): `leak` is how often such a finding comes by itself, `detect` how surely a trouble at the very
// place is felt. What was found and what was clear both count. That nothing explains it (leak only) competes as a source.
// The chances are for ranking; they are not shown to anyone as such. No state; thread-safe.
#pragma once

#include "core/reasoning/Reach.h"

#include <cmath>

namespace raphe {

/// How well one kind of observation tells. Both 0 to 1.
struct Detection {
    double detect = 0;
    double leak = 0;
    [[nodiscard]] double chance(double h) const { return 1 - (1 - leak) * (1 - detect * h); }
};

struct Observation {
    std::size_t node = 0;
    bool isPositive = false;
    Detection detection;
    double weight = 1; // of its logarithm: 1 counts in full, 0 not at all

    /// For a source with h at this node, without the weight.
    [[nodiscard]] double likelihood(double h) const { return isPositive ? detection.chance(h) : 1 - detection.chance(h); }
    /// Weighted natural logarithm of that.
    [[nodiscard]] double logLikelihood(double h) const { return weight * std::log(likelihood(h)); }
};

/// Adds up to 1 over all sources and `unexplained`.
struct Posterior {
    std::vector<double> of; // in the order of the table's sources
    double unexplained = 0;
};

/// Logarithm of prior times likelihood; the last entry is 'not explained by what was found'. `prior`: one value a source,
/// then that of unexplained; positive, need not add up to 1.
[[nodiscard]] std::vector<double> logPosterior(
    const ReachTable &table, std::span<const double> prior, std::span<const Observation> observations);
[[nodiscard]] Posterior normalised(std::span<const double> logs);

/// Entropy of the outcome of a check at each of `checks`, for each source: the part of the gain that is known beforehand.
class CheckTable {
public:
    /// `detections`: how well each check tells.
    CheckTable(const ReachTable &table, std::vector<std::size_t> checks, std::vector<Detection> detections);
    /// All of them alike.
    CheckTable(const ReachTable &table, const std::vector<std::size_t> &checks, const Detection &detection);
    [[nodiscard]] const std::vector<std::size_t> &checks() const { return m_checks; }
    [[nodiscard]] const Detection &detection(std::size_t check) const { return m_detections[check]; }
    [[nodiscard]] std::size_t bytes() const { return m_entropy.size() * sizeof(double); }

    /// The part of a check's gain that does not depend on what else is checked: expected entropy of its outcome, bits.
    [[nodiscard]] double noiseOf(std::size_t check, const Posterior &posterior) const;
    /// No more than that, from the mean of h alone.
    [[nodiscard]] double noiseAtLeast(std::size_t check, double meanReach) const;

private:
    std::vector<std::size_t> m_checks;
    std::vector<Detection> m_detections;
    std::vector<double> m_entropy; // bits, sources in a row for each check
    std::vector<double> m_entropyOfLeak; // of each check at h = 0
    std::vector<double> m_entropyAtHome; // and at h = 1
};

/// What is still to be learnt once some checks have been made, whatever they will show: for each outcome of those together its
/// chance with each source.
class Outcomes {
public:
    /// Keeps references.
    Outcomes(const ReachTable &table, const CheckTable &checks, const Posterior &posterior);
    /// Expected reduction of the entropy of the source by one more check, bits; not negative, and never more than before a
    /// check was added.
    [[nodiscard]] double bitsOf(std::size_t check);
    /// The same before any check was added: no less than bitsOf.
    [[nodiscard]] double bitsAlone(std::size_t check);
    /// No less than bitsAlone, in half its time: from the mean of h.
    [[nodiscard]] double bitsAtMost(std::size_t check);
    void add(std::size_t check);
    [[nodiscard]] std::size_t count() const { return m_outcomes.size(); }

private:
    struct Outcome {
        std::vector<double> joint; // chance with each source
        double unexplained = 0; // and with none
        double chance = 1;
    };
    [[nodiscard]] double meanAlone(std::size_t check); // of h, before any check was added
    [[nodiscard]] double noiseOf(std::size_t check);

    const ReachTable &m_table;
    const CheckTable &m_checks;
    const Posterior &m_posterior;
    std::vector<Outcome> m_outcomes;
    // Of each check, once it was asked for; else negative.
    std::vector<double> m_meanAlone;
    std::vector<double> m_noise;
};

/// Entropy of a yes-or-no with chance p, bits.
[[nodiscard]] double entropyOf(double p);

} // namespace raphe
