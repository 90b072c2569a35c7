#include "core/reasoning/Posterior.h"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

using Vector = Eigen::Map<const Eigen::VectorXd>;

Vector mapped(std::span<const double> values)
{
    return {values.data(), static_cast<Eigen::Index>(values.size())};
}

} // namespace

double Observation::logLikelihood(double h) const
{
    const double chance = detection.chance(h);
    return weight * std::log(isPositive ? chance : 1 - chance);
}

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
    std::transform(prior.begin(), prior.end(), logs.begin(), [](double p) { return std::log(p); });
    Eigen::Map<Eigen::ArrayXd> ofSources(logs.data(), static_cast<Eigen::Index>(logs.size()) - 1);
    for (const Observation &o : observations) { // as logLikelihood, for all sources at once
        const auto missed = (1 - o.detection.leak) * (1 - o.detection.detect * mapped(table.at(o.node)).array());
        if (o.isPositive)
            ofSources += o.weight * (1 - missed).log();
        else
            ofSources += o.weight * missed.log();
        logs.back() += o.logLikelihood(0);
    }
    return logs;
}

Posterior normalised(std::span<const double> logs)
{
    const double most = *std::max_element(logs.begin(), logs.end());
    Posterior out;
    out.of.reserve(logs.size());
    double total = 0;
    for (const double value : logs) {
        out.of.push_back(std::exp(value - most));
        total += out.of.back();
    }
    for (double &p : out.of)
        p /= total;
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

Outcomes::Outcomes(const ReachTable &table, const CheckTable &checks, const Posterior &posterior)
    : m_table(table),
      m_checks(checks),
      m_posterior(posterior),
      m_outcomes{{posterior.of, posterior.unexplained, 1}},
      m_noise(checks.checks().size(), -1)
{
}

double Outcomes::bitsOf(std::size_t check)
{
    if (m_noise[check] < 0)
        m_noise[check] = m_checks.noiseOf(check, m_posterior);
    const Vector reach = mapped(m_table.at(m_checks.checks()[check]));
    double entropy = 0;
    for (const Outcome &outcome : m_outcomes)
        if (outcome.chance > 0) // the chance is linear in h
            entropy +=
                outcome.chance * entropyOf(m_checks.detection(check).chance(reach.dot(mapped(outcome.joint)) / outcome.chance));
    return std::max(0.0, entropy - m_noise[check]);
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
