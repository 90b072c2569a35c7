// Shortest paths over the linkage (length of a link: 1 / weight), as steps and as words.
#pragma once

#include "core/reasoning/Linkage.h"

#include <string>
#include <vector>

namespace raphe {

struct PathStep {
    Place from;
    Place to;
    LinkKind link{};
    Grade evidence{};
    Basis basis{};
    std::optional<Force> force;
    std::vector<std::string> sources;
    std::string note;
    [[nodiscard]] bool changesSide() const
    {
        return from.side != to.side && from.side != Side::Midline && to.side != Side::Midline;
    }
};

/// Shortest paths from a set of start nodes to every node.
class PathTree {
public:
    PathTree(const Linkage &linkage, const std::vector<std::size_t> &starts);
    [[nodiscard]] bool reaches(std::size_t node) const;
    [[nodiscard]] double length(std::size_t node) const { return m_length[node]; }
    /// From the nearest start to the node; empty for a start or an unreachable node.
    [[nodiscard]] std::vector<PathStep> to(std::size_t node) const;

private:
    const Linkage *m_linkage;
    std::vector<double> m_length;
    std::vector<std::size_t> m_via; // link by which the node was reached
};

[[nodiscard]] PathStep stepOver(const Linkage &linkage, const Link &link, std::size_t from);
/// The weakest grade on the path; Verified for an empty path.
[[nodiscard]] Grade weakestOf(const std::vector<PathStep> &path);
/// 'right gluteus maximus, to the other side to left thoracolumbar fascia, to left latissimus dorsi'.
[[nodiscard]] std::string pathInWords(const Atlas &atlas, const std::vector<PathStep> &path);
/// 'continuity seen in dissection', 'described in textbooks', 'taught in the trade; no source'.
[[nodiscard]] std::string gradeInWords(Grade grade);
/// What the step's grade means and what it does not: 'verified: continuity seen in dissection; force transfer: partly;
/// that treating one end helps the other: not shown'.
[[nodiscard]] std::string evidenceInWords(const PathStep &step);
/// 'Citation. doi ... (from memory)', one a source.
[[nodiscard]] std::vector<std::string> sourcesInWords(const Atlas &atlas, const std::vector<std::string> &sources);

} // namespace raphe
