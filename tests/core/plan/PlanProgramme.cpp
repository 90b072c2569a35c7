#include "tests/core/plan/PlanProgramme.h"

#include <algorithm>

namespace raphe::plan::test {

PlanProgramme::PlanProgramme(const Problem &problem) : m_problem(problem), m_programme(glp_create_prob())
{
    glp_term_out(GLP_OFF);
    makeNodes();
    makeArcs();
    const int places = static_cast<int>(m_problem.places.size());
    if (const int columns = static_cast<int>(m_arcs.size()) + places; columns > 0)
        glp_add_cols(m_programme, columns);
    for (std::size_t a = 0; a < m_arcs.size(); ++a)
        glp_set_col_kind(m_programme, column(a), GLP_BV);
    for (std::size_t i = 0; i < m_problem.places.size(); ++i)
        glp_set_col_bnds(m_programme, orderColumn(i), places > 1 ? GLP_DB : GLP_FX, 1, places);
    addRows();
    addOrderRows();
}

void PlanProgramme::makeNodes()
{
    for (std::size_t i = 0; i < m_problem.places.size(); ++i)
        for (std::size_t p = 0; p < positionCount; ++p)
            if (((m_problem.places[i].positions >> p) & 1U) != 0)
                for (const bool isOiled : {false, true})
                    m_nodes.push_back({i, p, isOiled});
}

bool PlanProgramme::isOiledAfter(const Node &node) const
{
    return placeOf(node).skin == Skin::Any ? node.isOiled : placeOf(node).skin == Skin::Oiled;
}

bool PlanProgramme::mayFollow(const Node &before, const Node &after) const
{
    const auto &pairs = m_problem.before;
    return before.place != after.place && isOiledAfter(before) == after.isOiled
        && std::find(pairs.begin(), pairs.end(), std::pair(after.place, before.place)) == pairs.end();
}

int PlanProgramme::entering(const Node &node, int cover, int deepArea) const
{
    const ProblemPlace &place = placeOf(node);
    int seconds = place.seconds;
    seconds += node.isOiled && place.skin == Skin::Dry ? m_problem.times.wipe : 0;
    seconds += place.cover[node.position] != 0 && place.cover[node.position] != cover ? m_problem.times.uncover : 0;
    seconds += place.deepArea != 0 && place.deepArea == deepArea ? m_problem.times.rest : 0;
    return seconds;
}

PlanProgramme::Arc PlanProgramme::fromStart(std::size_t to) const
{
    const ProblemStart &start = m_problem.start;
    const Node &node = m_nodes[to];
    Arc arc{{}, to, entering(node, start.cover, start.deepArea), start.position && *start.position != node.position};
    if (arc.isTurn)
        arc.seconds += m_problem.times.turn[*start.position][node.position];
    return arc;
}

PlanProgramme::Arc PlanProgramme::between(std::size_t from, std::size_t to) const
{
    const Node &a = m_nodes[from];
    const Node &b = m_nodes[to];
    return {from, to,
        entering(b, placeOf(a).cover[a.position], placeOf(a).deepArea) + m_problem.times.turn[a.position][b.position],
        a.position != b.position};
}

void PlanProgramme::makeArcs()
{
    for (std::size_t a = 0; a < m_nodes.size(); ++a) {
        if (m_nodes[a].isOiled == m_problem.start.oiled)
            m_arcs.push_back(fromStart(a));
        m_arcs.push_back({a, {}, 0, false});
        for (std::size_t b = 0; b < m_nodes.size(); ++b)
            if (mayFollow(m_nodes[a], m_nodes[b]))
                m_arcs.push_back(between(a, b));
    }
}

void PlanProgramme::addRow(const Terms &terms, int type, double least, double most)
{
    if (terms.empty())
        return;
    std::vector<int> columns{0};
    std::vector<double> values{0};
    for (const auto &[at, value] : terms) {
        columns.push_back(at);
        values.push_back(value);
    }
    const int row = glp_add_rows(m_programme, 1);
    glp_set_mat_row(m_programme, row, static_cast<int>(terms.size()), columns.data(), values.data());
    glp_set_row_bnds(m_programme, row, type, least, most);
}

PlanProgramme::Terms PlanProgramme::into(std::size_t place) const
{
    Terms out;
    for (std::size_t a = 0; a < m_arcs.size(); ++a)
        if (m_arcs[a].to && m_nodes[*m_arcs[a].to].place == place)
            out.emplace_back(column(a), 1);
    return out;
}

PlanProgramme::Terms PlanProgramme::weighed(const Weight &weight) const
{
    Terms out;
    for (std::size_t a = 0; a < m_arcs.size(); ++a)
        if (const double w = weight(m_arcs[a]); w != 0)
            out.emplace_back(column(a), w);
    return out;
}

// One path: out of the beginning once, into and out of each node alike, each place once at most.
void PlanProgramme::addRows()
{
    addRow(weighed([](const Arc &arc) { return arc.from ? 0.0 : 1.0; }), GLP_UP, 0, 1);
    for (std::size_t n = 0; n < m_nodes.size(); ++n)
        addRow(weighed([n](const Arc &arc) { return (arc.to == n ? 1.0 : 0.0) - (arc.from == n ? 1.0 : 0.0); }), GLP_FX, 0, 0);
    for (std::size_t i = 0; i < m_problem.places.size(); ++i) {
        const bool isPinned = std::find(m_problem.pinned.begin(), m_problem.pinned.end(), i) != m_problem.pinned.end();
        addRow(into(i), isPinned ? GLP_FX : GLP_UP, isPinned ? 1 : 0, 1);
    }
    addRow(weighed([](const Arc &arc) { return arc.seconds; }), GLP_UP, 0, m_problem.seconds);
    addRow(weighed([](const Arc &arc) { return arc.isTurn ? 1.0 : 0.0; }), GLP_UP, 0, m_problem.turnsAtMost);
}

// What follows has the next number, which also forbids rings beside the path; what is ordered has a higher one.
void PlanProgramme::addOrderRows()
{
    const std::size_t places = m_problem.places.size();
    const auto n = static_cast<double>(places);
    const auto joins = [&](const Arc &arc, std::size_t i, std::size_t j) {
        return arc.from && arc.to && m_nodes[*arc.from].place == i && m_nodes[*arc.to].place == j;
    };
    for (std::size_t i = 0; i < places; ++i)
        for (std::size_t j = 0; j < places; ++j) {
            if (i == j)
                continue;
            Terms row = weighed([&](const Arc &arc) { return joins(arc, i, j) ? -n : joins(arc, j, i) ? -(n - 2) : 0.0; });
            if (std::none_of(m_arcs.begin(), m_arcs.end(), [&](const Arc &arc) { return joins(arc, i, j); }))
                continue;
            row.emplace_back(orderColumn(j), 1);
            row.emplace_back(orderColumn(i), -1);
            addRow(row, GLP_LO, 1 - n, 0);
        }
    for (const auto &[first, second] : m_problem.before) {
        Terms row{{orderColumn(second), 1}, {orderColumn(first), -1}};
        for (const std::size_t place : {first, second})
            for (const auto &[at, one] : into(place))
                row.emplace_back(at, -n * one);
        addRow(row, GLP_LO, 1 - 2 * n, 0);
    }
}

bool PlanProgramme::optimise(int direction, const Weight &weight, int milliseconds, bool &isPossible, int &value)
{
    glp_set_obj_dir(m_programme, direction);
    for (std::size_t a = 0; a < m_arcs.size(); ++a)
        glp_set_obj_coef(m_programme, column(a), weight(m_arcs[a]));
    glp_smcp relaxed;
    glp_init_smcp(&relaxed);
    relaxed.msg_lev = GLP_MSG_OFF;
    glp_std_basis(m_programme);
    if (glp_simplex(m_programme, &relaxed) != 0 || glp_get_status(m_programme) != GLP_OPT) {
        isPossible = false;
        return glp_get_status(m_programme) == GLP_NOFEAS || glp_get_status(m_programme) == GLP_INFEAS;
    }
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.tm_lim = milliseconds;
    how.gmi_cuts = how.mir_cuts = how.cov_cuts = how.clq_cuts = GLP_ON;
    const int failed = glp_intopt(m_programme, &how);
    const int status = glp_mip_status(m_programme);
    isPossible = status == GLP_OPT || status == GLP_FEAS;
    value = isPossible ? static_cast<int>(std::lround(glp_mip_obj_val(m_programme))) : 0;
    return failed == 0 && (status == GLP_OPT || status == GLP_NOFEAS);
}

PlanProgramme::Answer PlanProgramme::solve(int milliseconds)
{
    const Weight value = [this](const Arc &arc) { return arc.to ? placeOf(m_nodes[*arc.to]).value : 0.0; };
    const Weight turns = [](const Arc &arc) { return arc.isTurn ? 1.0 : 0.0; };
    const Weight seconds = [](const Arc &arc) { return static_cast<double>(arc.seconds); };
    Answer out;
    if (m_arcs.empty()) {
        out.isProved = true;
        out.isPossible = m_problem.pinned.empty();
        return out;
    }
    bool isPossible = false;
    out.isProved = optimise(GLP_MAX, value, milliseconds, out.isPossible, out.value);
    if (!out.isProved || !out.isPossible)
        return out;
    addRow(weighed(value), GLP_FX, out.value, out.value);
    out.isProved = optimise(GLP_MIN, turns, milliseconds, isPossible, out.turns);
    if (!out.isProved)
        return out;
    addRow(weighed(turns), GLP_FX, out.turns, out.turns);
    out.isProved = optimise(GLP_MIN, seconds, milliseconds, isPossible, out.seconds);
    return out;
}

} // namespace raphe::plan::test
