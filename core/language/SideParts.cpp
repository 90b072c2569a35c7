// Which sides a name takes, and the parts of a clause that says several of them.
#include "core/language/Clause.h"

#include <algorithm>

namespace raphe::language {

Sidedness sidednessOf(const Mark &name, const LineWords &words)
{
    bool hasMidline = false;
    for (const std::size_t index : name.structures) {
        const Structure &s = words.atlas().structures()[index];
        if (s.paired)
            return Sidedness::Paired;
        if (words.atlas().isSpinalSegment(s.id))
            return Sidedness::Segment;
        hasMidline = true;
    }
    return hasMidline ? Sidedness::Midline : Sidedness::Segment;
}

std::vector<SidePart> sideParts(const Clause &clause)
{
    std::vector<SidePart> out;
    // Side first ('r t3 l t2') or side last ('t3 r t2 l'), seen from what stands behind the names.
    std::size_t from = clause.firstSaid.value_or(0);
    const bool isSideBeforeName = std::any_of(clause.marks.begin(), clause.marks.begin() + static_cast<std::ptrdiff_t>(from),
        [](const Mark &m) { return m.kind == MarkKind::Side; });
    const bool isSideLast = !isSideBeforeName && from < clause.marks.size() && clause.marks[from].kind != MarkKind::Side;
    std::vector<Mark> waiting;
    for (std::size_t i = 0; i < clause.marks.size(); ++i) {
        const Mark &mark = clause.marks[i];
        if (mark.kind != MarkKind::Side) {
            if (out.empty() || isSideLast)
                waiting.push_back(mark);
            else
                out.back().marks.push_back(mark);
            continue;
        }
        out.push_back({mark, std::move(waiting)});
        waiting.clear();
    }
    const bool isOneEmpty =
        out.size() > 1 && std::any_of(out.begin(), out.end(), [](const SidePart &part) { return part.marks.empty(); });
    if (isOneEmpty || (isSideLast && !waiting.empty()))
        return {};
    return out;
}

} // namespace raphe::language
