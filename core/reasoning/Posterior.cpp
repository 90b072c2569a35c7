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
    for (const Observation &o : observations) {
        const auto reach = table.at(o.node);
        for (std::size_t s = 0; s < reach.size(); ++s)
            logs[s] += o.logLikelihood(reach[s]);
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

CheckTable::CheckTable(const ReachTable &table, std::vector<std::size_t> checks, const Detection &detection)
    : m_checks(std::move(checks)), m_detection(detection), m_entropyOfLeak(entropyOf(detection.leak))
{
    m_entropy.reserve(m_checks.size() * table.sources().size());
    for (const std::size_t node : m_checks)
        for (const double h : table.at(node))
            m_entropy.push_back(entropyOf(detection.chance(h)));
}

std::vector<double> CheckTable::gains(const ReachTable &table, const Posterior &posterior) const
{
    const std::size_t sources = posterior.of.size();
    const Vector p = mapped(posterior.of);
    std::vector<double> out;
    out.reserve(m_checks.size());
    for (std::size_t k = 0; k < m_checks.size(); ++k) {
        const double expected = mapped(table.at(m_checks[k])).dot(p); // the chance is linear in h
        const double given =
            mapped(std::span(m_entropy).subspan(k * sources, sources)).dot(p) + posterior.unexplained * m_entropyOfLeak;
        out.push_back(std::max(0.0, entropyOf(m_detection.chance(expected)) - given));
    }
    return out;
}

} // namespace raphe
