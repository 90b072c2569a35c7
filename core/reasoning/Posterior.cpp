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

CheckTable::CheckTable(const ReachTable &table, std::vector<std::size_t> checks, std::vector<Detection> detections)
    : m_checks(std::move(checks)), m_detections(std::move(detections))
{
    m_entropy.reserve(m_checks.size() * table.sources().size());
    for (std::size_t k = 0; k < m_checks.size(); ++k) {
        for (const double h : table.at(m_checks[k]))
            m_entropy.push_back(entropyOf(m_detections[k].chance(h)));
        m_entropyOfLeak.push_back(entropyOf(m_detections[k].leak));
    }
}

CheckTable::CheckTable(const ReachTable &table, std::vector<std::size_t> checks, const Detection &detection)
    : CheckTable(table, checks, std::vector(checks.size(), detection))
{
}

double CheckTable::noiseOf(std::size_t check, const Posterior &posterior) const
{
    const std::size_t sources = posterior.of.size();
    return mapped(std::span(m_entropy).subspan(check * sources, sources)).dot(mapped(posterior.of))
        + posterior.unexplained * m_entropyOfLeak[check];
}

std::vector<double> CheckTable::gains(const ReachTable &table, const Posterior &posterior) const
{
    const Vector p = mapped(posterior.of);
    std::vector<double> out;
    out.reserve(m_checks.size());
    for (std::size_t k = 0; k < m_checks.size(); ++k) {
        const double expected = mapped(table.at(m_checks[k])).dot(p); // the chance is linear in h
        out.push_back(std::max(0.0, entropyOf(m_detections[k].chance(expected)) - noiseOf(k, posterior)));
    }
    return out;
}

Outcomes::Outcomes(const ReachTable &table, const CheckTable &checks, const Posterior &posterior)
    : m_table(table), m_checks(checks), m_posterior(posterior), m_joint{posterior.of}
{
    m_joint.front().push_back(posterior.unexplained);
}

double Outcomes::bitsOf(std::size_t check) const
{
    const auto reach = m_table.at(m_checks.checks()[check]);
    double entropy = 0;
    for (const std::vector<double> &joint : m_joint) {
        const Vector all = mapped(joint);
        if (const double chance = all.sum(); chance > 0)
            entropy += chance
                * entropyOf(
                    m_checks.detection(check).chance(mapped(reach).dot(mapped(std::span(joint).first(reach.size()))) / chance));
    }
    return std::max(0.0, entropy - m_checks.noiseOf(check, m_posterior));
}

void Outcomes::add(std::size_t check)
{
    const auto reach = m_table.at(m_checks.checks()[check]);
    const std::size_t before = m_joint.size();
    for (std::size_t i = 0; i < before; ++i) {
        std::vector<double> found = m_joint[i];
        for (std::size_t s = 0; s < found.size(); ++s) {
            found[s] *= m_checks.detection(check).chance(s < reach.size() ? reach[s] : 0);
            m_joint[i][s] -= found[s];
        }
        m_joint.push_back(std::move(found));
    }
}

} // namespace raphe
