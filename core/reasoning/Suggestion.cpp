#include "core/reasoning/Suggestion.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace raphe {

namespace {

// But for rounding.
bool isEqual(double a, double b)
{
    constexpr double rounding = 1e-12;
    return std::abs(a - b) <= rounding * std::max(std::abs(a), std::abs(b));
}

} // namespace

void rankAndCut(std::vector<Suggestion> &list)
{
    const auto better = [](const Suggestion &a, const Suggestion &b) {
        return a.score != b.score ? a.score > b.score : a.place < b.place;
    };
    const std::size_t kept = std::min(list.size(), suggestionsAtMost);
    std::partial_sort(list.begin(), list.begin() + static_cast<std::ptrdiff_t>(kept), list.end(), better);
    list.resize(kept);
    for (std::size_t i = 0; i < list.size(); ++i)
        list[i].rank = i > 0 && isEqual(list[i].score, list[i - 1].score) ? list[i - 1].rank : static_cast<int>(i) + 1;
}

void mirrorAll(std::vector<Suggestion> &list)
{
    for (Suggestion &s : list) {
        s.place = mirrored(std::move(s.place));
        s.path = mirrored(std::move(s.path));
        if (s.position)
            s.position = mirrored(*s.position);
        for (Term &term : s.terms)
            if (term.at)
                term.at = mirrored(*std::move(term.at));
    }
}

std::vector<Suggestion> groupedByPosition(std::vector<Suggestion> list)
{
    std::map<std::optional<Position>, std::size_t> first;
    for (std::size_t i = 0; i < list.size(); ++i)
        first.try_emplace(list[i].position, i);
    std::stable_sort(list.begin(), list.end(),
        [&](const Suggestion &a, const Suggestion &b) { return first[a.position] < first[b.position]; });
    return list;
}

} // namespace raphe
