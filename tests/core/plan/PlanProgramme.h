// The session plan as an integer programme for GLPK (GNU Linear Programming Kit), a reference for tests and benchmarks only: a
// path over nodes (place, position, oil on the skin before it), with the order of places as further variables.
#pragma once

#include "core/plan/PlanProblem.h"

#include <glpk.h>

#include <cmath>
#include <functional>
#include <vector>

namespace raphe::plan::test {

class PlanProgramme {
public:
    explicit PlanProgramme(const Problem &problem);
    ~PlanProgramme() { glp_delete_prob(m_programme); }
    PlanProgramme(const PlanProgramme &) = delete;
    PlanProgramme &operator=(const PlanProgramme &) = delete;

    struct Answer {
        bool isProved = false; // false: the time ran out
        bool isPossible = false;
        int value = 0;
        int turns = 0;
        int seconds = 0;
    };
    /// Greatest value, then fewest turns, then least time: three programmes one after the other, each of at most `milliseconds`.
    [[nodiscard]] Answer solve(int milliseconds);

private:
    struct Node {
        std::size_t place = 0;
        std::size_t position = 0;
        bool isOiled = false;
    };
    struct Arc {
        std::optional<std::size_t> from; // node; nothing: the beginning
        std::optional<std::size_t> to; // node; nothing: the end
        int seconds = 0;
        bool isTurn = false;
    };
    using Terms = std::vector<std::pair<int, double>>; // column, coefficient
    using Weight = std::function<double(const Arc &)>;

    [[nodiscard]] const ProblemPlace &placeOf(const Node &node) const { return m_problem.places[node.place]; }
    void makeNodes();
    void makeArcs();
    [[nodiscard]] bool isOiledAfter(const Node &node) const;
    [[nodiscard]] Arc fromStart(std::size_t to) const;
    [[nodiscard]] Arc between(std::size_t from, std::size_t to) const;
    [[nodiscard]] int entering(const Node &node, int cover, int deepArea) const;
    [[nodiscard]] bool mayFollow(const Node &before, const Node &after) const;
    [[nodiscard]] int column(std::size_t arc) const { return static_cast<int>(arc) + 1; }
    [[nodiscard]] int orderColumn(std::size_t place) const { return static_cast<int>(m_arcs.size() + place) + 1; }
    void addRow(const Terms &terms, int type, double least, double most);
    [[nodiscard]] Terms into(std::size_t place) const;
    [[nodiscard]] Terms weighed(const Weight &weight) const;
    void addRows();
    void addOrderRows();
    /// False when the time ran out; then `value` is the best found.
    [[nodiscard]] bool optimise(int direction, const Weight &weight, int milliseconds, bool &isPossible, int &value);

    const Problem &m_problem;
    std::vector<Node> m_nodes;
    std::vector<Arc> m_arcs;
    glp_prob *m_programme;
};

} // namespace raphe::plan::test
