#include "core/reasoning/Posterior.h"

#include <Eigen/Core>

#include <algorithm>
#include <map>

namespace raphe {

namespace {

using Vector = Eigen::Map<const Eigen::VectorXd>;

Vector mapped(std::span<const double> values)
{
    return {values.data(), static_cast<Eigen::Index>(values.size())};
}

} // namespace

double entropyOf(double p)
{
    if (p <= 0 || p >= 1)
        return 0;
    return -p * std::log2(p) - (1 - p) * std::log2(1 - p);
}

std::vector<double> logPosterior(
    const ReachTable &table, std::span<const double> prior, std::span<const Observation> observations)
{
    std::vector<double> logs(prior.size());
    Eigen::Map<Eigen::ArrayXd>(logs.data(), static_cast<Eigen::Index>(logs.size())) = mapped(prior).array().log();
    Eigen::Map<Eigen::ArrayXd> ofSources(logs.data(), static_cast<Eigen::Index>(logs.size()) - 1);
    std::map<double, std::vector<const Observation *>> ofWeight;
    for (const Observation &o : observations) {
        ofWeight[o.weight].push_back(&o);
        logs.back() += o.logLikelihood(0);
    }
    // As logLikelihood, for all sources at once, and one logarithm of several likelihoods multiplied: it takes the longest.
    constexpr std::size_t multiplied = 10; // far from where a product would be too small to be held
    Eigen::ArrayXd product(ofSources.size());
    for (const auto &[weight, alike] : ofWeight) {
        product = 1;
        for (std::size_t i = 0; i < alike.size(); ++i) {
            const Observation &o = *alike[i];
            const auto missed = (1 - o.detection.leak) * (1 - o.detection.detect * mapped(table.at(o.node)).array());
            if (o.isPositive)
                product *= 1 - missed;
            else
                product *= missed;
            if (i % multiplied == multiplied - 1 || i + 1 == alike.size()) {
                ofSources += weight * product.log();
                product = 1;
            }
        }
    }
    return logs;
}

Posterior normalised(std::span<const double> logs)
{
    Posterior out;
    out.of.resize(logs.size());
    Eigen::Map<Eigen::ArrayXd> p(out.of.data(), static_cast<Eigen::Index>(out.of.size()));
    p = (mapped(logs).array() - mapped(logs).maxCoeff()).exp();
    p /= p.sum();
    out.unexplained = out.of.back();
    out.of.pop_back();
    return out;
}

CheckTable::CheckTable(const ReachTable &table, std::vector<std::size_t> checks, std::vector<Detection> detections)
    : m_checks(std::move(checks)), m_detections(std::move(detections))
{
    const std::size_t sources = table.sources().size();
    m_entropy.resize(m_checks.size() * sources);
    for (std::size_t k = 0; k < m_checks.size(); ++k) {
        const Detection &d = m_detections[k];
        Eigen::Map<Eigen::ArrayXd> row(m_entropy.data() + k * sources, static_cast<Eigen::Index>(sources));
        row = 1 - (1 - d.leak) * (1 - d.detect * mapped(table.at(m_checks[k])).array()); // chances; never 0 or 1
        row = -(row * row.log() + (1 - row) * (1 - row).log()) / std::log(2.0);
        m_entropyOfLeak.push_back(entropyOf(d.leak));
        m_entropyAtHome.push_back(entropyOf(d.chance(1)));
    }
}

CheckTable::CheckTable(const ReachTable &table, const std::vector<std::size_t> &checks, const Detection &detection)
    : CheckTable(table, checks, std::vector(checks.size(), detection))
{
}

double CheckTable::noiseOf(std::size_t check, const Posterior &posterior) const
{
    const std::size_t sources = posterior.of.size();
    return mapped(std::span(m_entropy).subspan(check * sources, sources)).dot(mapped(posterior.of))
        + posterior.unexplained * m_entropyOfLeak[check];
}

double CheckTable::noiseAtLeast(std::size_t check, double meanReach) const
{
    // As a function of h the entropy lies above the line between its ends.
    return m_entropyOfLeak[check] + meanReach * (m_entropyAtHome[check] - m_entropyOfLeak[check]);
}

Outcomes::Outcomes(const ReachTable &table, const CheckTable &checks, const Posterior &posterior)
    : m_table(table),
      m_checks(checks),
      m_posterior(posterior),
      m_outcomes{{posterior.of, posterior.unexplained, 1}},
      m_meanAlone(checks.checks().size(), -1),
      m_noise(checks.checks().size(), -1)
{
}

double Outcomes::meanAlone(std::size_t check)
{
    if (m_meanAlone[check] < 0)
        m_meanAlone[check] = mapped(m_table.at(m_checks.checks()[check])).dot(mapped(m_posterior.of));
    return m_meanAlone[check];
}

double Outcomes::noiseOf(std::size_t check)
{
    if (m_noise[check] < 0)
        m_noise[check] = m_checks.noiseOf(check, m_posterior);
    return m_noise[check];
}

double Outcomes::bitsOf(std::size_t check)
{
    const Vector reach = mapped(m_table.at(m_checks.checks()[check]));
    double entropy = 0;
    for (const Outcome &outcome : m_outcomes)
        if (outcome.chance > 0) // the chance is linear in h
            entropy +=
                outcome.chance * entropyOf(m_checks.detection(check).chance(reach.dot(mapped(outcome.joint)) / outcome.chance));
    return std::max(0.0, entropy - noiseOf(check));
}

double Outcomes::bitsAlone(std::size_t check)
{
    return std::max(0.0, entropyOf(m_checks.detection(check).chance(meanAlone(check))) - noiseOf(check));
}

double Outcomes::bitsAtMost(std::size_t check)
{
    const double mean = meanAlone(check);
    return std::max(0.0, entropyOf(m_checks.detection(check).chance(mean)) - m_checks.noiseAtLeast(check, mean));
}

void Outcomes::add(std::size_t check)
{
    const Detection &detection = m_checks.detection(check);
    const auto reach = m_table.at(m_checks.checks()[check]);
    const std::size_t before = m_outcomes.size();
    for (std::size_t i = 0; i < before; ++i) {
        Outcome found = m_outcomes[i];
        Outcome &clear = m_outcomes[i];
        for (std::size_t s = 0; s < reach.size(); ++s) {
            found.joint[s] *= detection.chance(reach[s]);
            clear.joint[s] -= found.joint[s];
        }
        found.unexplained *= detection.leak;
        clear.unexplained -= found.unexplained;
        found.chance = mapped(found.joint).sum() + found.unexplained;
        clear.chance = mapped(clear.joint).sum() + clear.unexplained;
        m_outcomes.push_back(std::move(found));
    }
}

} // namespace raphe
