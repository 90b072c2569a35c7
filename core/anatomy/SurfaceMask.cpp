#include "core/anatomy/SurfaceMask.h"

#include <algorithm>
#include <bit>

namespace raphe {

namespace {

using Words = std::vector<std::uint64_t>;

template <class F> int countOf(const Words &a, const Words &b, std::size_t first, std::size_t count, F together)
{
    int sum = 0;
    for (std::size_t i = first; i < first + count; ++i)
        sum += std::popcount(together(a[i], b[i]));
    return sum;
}

} // namespace

void SurfaceMask::markRun(View view, int y, int from, int to)
{
    from = std::max(from, firstX);
    to = std::min(to, lastX);
    if (y < 0 || y >= rows || from > to)
        return;
    const std::size_t first = wordOf(view, from, y);
    const std::size_t last = wordOf(view, to, y);
    const std::uint64_t start = ~(bitOf(from) - 1); // `from` and what is right of it
    const std::uint64_t end = bitOf(to) | (bitOf(to) - 1); // `to` and what is left of it
    if (first == last) {
        m_words[first] |= start & end;
        return;
    }
    m_words[first] |= start;
    for (std::size_t i = first + 1; i < last; ++i)
        m_words[i] = ~std::uint64_t{0};
    m_words[last] |= end;
}

void SurfaceMask::keepOnly(const SurfaceMask &other)
{
    for (std::size_t i = 0; i < m_words.size(); ++i)
        m_words[i] &= other.m_words[i];
}

int SurfaceMask::count(View view) const
{
    return countBoth(*this, view);
}

int SurfaceMask::countBoth(const SurfaceMask &other, View view) const
{
    return countOf(m_words, other.m_words, wordOf(view, firstX, 0), wordsInView, [](auto a, auto b) { return a & b; });
}

int SurfaceMask::countEither(const SurfaceMask &other, View view) const
{
    return countOf(m_words, other.m_words, wordOf(view, firstX, 0), wordsInView, [](auto a, auto b) { return a | b; });
}

} // namespace raphe
