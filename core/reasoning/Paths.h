// Ways over the linkage as steps between places, and in words.
#pragma once

#include "core/reasoning/Linkage.h"
#include "core/reasoning/ShortestPaths.h"

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

[[nodiscard]] PathStep stepOver(const Linkage &linkage, const Link &link, std::size_t from);
[[nodiscard]] std::vector<PathStep> stepsOf(const Linkage &linkage, const Way &way);
[[nodiscard]] std::vector<PathStep> mirrored(std::vector<PathStep> path);
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
