#include "tests/trials/Simulation.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <queue>

namespace raphe::trials {

namespace {

constexpr std::size_t foundAmong = 3;

double evenly(std::mt19937 &random)
{
    return (static_cast<double>(random()) + 0.5) / 4294967296.0; // the same on every platform
}

// Shortest length to every node; infinite where none leads.
std::vector<double> lengthsFrom(const WeightedGraph &graph, const std::vector<std::size_t> &starts)
{
    std::vector<double> length(graph.size(), std::numeric_limits<double>::infinity());
    using Entry = std::pair<double, std::size_t>;
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    for (const std::size_t start : starts) {
        length[start] = 0;
        queue.emplace(0.0, start);
    }
    while (!queue.empty()) {
        const auto [here, node] = queue.top();
        queue.pop();
        if (here > length[node])
            continue;
        for (const std::size_t link : graph.linksAt(node)) {
            const std::size_t next = graph.links()[link].other(node);
            if (const double through = here + graph.length(link); through < length[next]) {
                length[next] = through;
                queue.emplace(through, next);
            }
        }
    }
    return length;
}

// One patient: what each place would show if it were examined.
struct Patient {
    std::size_t source = 0; // node
    std::size_t complaint = 0; // node
    std::vector<bool> isTender; // by node
};

Patient patient(const World &world, const Noise &noise, std::mt19937 &random)
{
    std::vector<WeightedLink> links = world.graph->links();
    for (WeightedLink &link : links)
        link.weight *= std::exp2(2 * evenly(random) - 1);
    const WeightedGraph drawn(world.graph->size(), std::move(links));
    const std::vector<std::size_t> &places = world.check->checks();
    Patient p;
    p.source = places[random() % places.size()];
    const auto length = lengthsFrom(drawn, {p.source});
    const auto decay = [&](std::size_t node) { return std::exp2(-std::pow(length[node] / world.decay, 2)); };
    p.isTender.resize(drawn.size());
    for (std::size_t node = 0; node < drawn.size(); ++node)
        p.isTender[node] = evenly(random) < 1 - (1 - noise.falsePositive) * (1 - noise.sensitivity * decay(node));
    double total = 0;
    for (const std::size_t node : places)
        total += node == p.source ? 0 : decay(node);
    double left = evenly(random) * total;
    p.complaint = p.source;
    for (const std::size_t node : places)
        if (node != p.source && (left -= decay(node)) < 0) {
            p.complaint = node;
            break;
        }
    if (p.complaint == p.source) // nothing is tied to it: then it hurts at the place itself
        p.isTender[p.source] = true;
    p.isTender[p.complaint] = true;
    return p;
}

class Visit {
public:
    Visit(const World &world, const Patient &patient)
        : m_world(&world), m_patient(&patient), m_examined(world.graph->size(), false)
    {
        for (const double p : world.prior)
            m_logs.push_back(std::log(p));
        examine(patient.complaint);
    }

    void examine(std::size_t node)
    {
        const Observation o{node, m_patient->isTender[node], m_world->check->detection(0), 1};
        const auto reach = m_world->reach->at(node);
        for (std::size_t s = 0; s < reach.size(); ++s)
            m_logs[s] += o.logLikelihood(reach[s]);
        m_logs.back() += o.logLikelihood(0);
        m_examined[node] = true;
        if (o.isPositive)
            m_tender.push_back(node);
    }

    [[nodiscard]] bool isFound() const
    {
        std::size_t better = 0;
        double own = 0;
        for (std::size_t s = 0; s + 1 < m_logs.size(); ++s)
            if (m_world->reach->sources()[s] == m_patient->source)
                own = m_logs[s];
        std::vector<bool> counts(m_world->graph->size(), false);
        for (const std::size_t node : m_world->check->checks())
            counts[node] = true;
        for (std::size_t s = 0; s + 1 < m_logs.size(); ++s)
            better += counts[m_world->reach->sources()[s]] && m_logs[s] > own;
        return better < foundAmong;
    }

    [[nodiscard]] std::size_t next(Policy policy, std::mt19937 &random) const
    {
        const auto &places = m_world->check->checks();
        std::vector<double> worth(places.size());
        switch (policy) {
        case Policy::Ours: {
            const Posterior posterior = normalised(m_logs);
            Outcomes outcomes(*m_world->reach, *m_world->check, posterior);
            for (std::size_t k = 0; k < places.size(); ++k)
                worth[k] = outcomes.bitsOf(k);
            break;
        }
        case Policy::Nearest: {
            const auto length = lengthsFrom(*m_world->graph, m_tender);
            for (std::size_t k = 0; k < places.size(); ++k)
                worth[k] = -length[places[k]];
            break;
        }
        case Policy::MostConnected:
            for (std::size_t k = 0; k < places.size(); ++k)
                worth[k] = m_world->graph->degree(places[k]);
            break;
        case Policy::Random:
            for (double &w : worth)
                w = evenly(random);
            break;
        }
        std::size_t best = places.size();
        for (std::size_t k = 0; k < places.size(); ++k)
            if (!m_examined[places[k]] && (best == places.size() || worth[k] > worth[best]))
                best = k;
        return places[best];
    }

private:
    const World *m_world;
    const Patient *m_patient;
    std::vector<double> m_logs;
    std::vector<bool> m_examined;
    std::vector<std::size_t> m_tender;
};

} // namespace

std::string nameOf(Policy policy)
{
    switch (policy) {
    case Policy::Ours: return "ours";
    case Policy::Nearest: return "nearest";
    case Policy::MostConnected: return "most connected";
    case Policy::Random: break;
    }
    return "random";
}

double Outcome::median() const
{
    std::vector<int> sorted = checks;
    std::sort(sorted.begin(), sorted.end());
    const std::size_t n = sorted.size();
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2.0;
}

int Outcome::cutOff() const
{
    return static_cast<int>(std::count_if(checks.begin(), checks.end(), [](int n) { return n > checksAtMost; }));
}

double decayLength(const WeightedGraph &graph, const std::vector<std::size_t> &places)
{
    constexpr double sore = 10;
    std::vector<std::vector<double>> lengths; // from every twentieth place
    for (std::size_t k = 0; k < places.size(); k += 20)
        lengths.push_back(lengthsFrom(graph, {places[k]}));
    double low = 0.01;
    double high = 100;
    for (int i = 0; i < 50; ++i) {
        const double middle = (low + high) / 2;
        std::vector<double> reached;
        for (const auto &from : lengths)
            reached.push_back(std::accumulate(from.begin(), from.end(), 0.0,
                [middle](double sum, double length) { return sum + std::exp2(-std::pow(length / middle, 2)); }));
        std::nth_element(reached.begin(), reached.begin() + static_cast<std::ptrdiff_t>(reached.size() / 2), reached.end());
        (reached[reached.size() / 2] > sore ? high : low) = middle;
    }
    return low;
}

std::vector<Outcome> simulate(const World &world, const Noise &noise, int trials, unsigned seed)
{
    std::vector<Outcome> out(std::size(policies));
    std::mt19937 random(seed);
    for (int trial = 0; trial < trials; ++trial) {
        const Patient p = patient(world, noise, random);
        for (std::size_t i = 0; i < std::size(policies); ++i) {
            std::mt19937 own(random()); // so that no policy moves another's chances
            Visit visit(world, p);
            int checks = 0;
            while (checks <= checksAtMost && !visit.isFound()) {
                visit.examine(visit.next(policies[i], own));
                ++checks;
            }
            out[i].checks.push_back(checks);
        }
    }
    return out;
}

int foundWithAll(const World &world, const Noise &noise, int trials, unsigned seed)
{
    int found = 0;
    std::mt19937 random(seed);
    for (int trial = 0; trial < trials; ++trial) {
        const Patient p = patient(world, noise, random);
        for (std::size_t i = 0; i < std::size(policies); ++i)
            random(); // the same patients as in simulate()
        Visit visit(world, p);
        for (const std::size_t node : world.check->checks())
            if (node != p.complaint)
                visit.examine(node);
        found += visit.isFound();
    }
    return found;
}

} // namespace raphe::trials
