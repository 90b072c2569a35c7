#include "core/record/PainEditor.h"

#include "core/anatomy/StrokeReach.h"

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr std::size_t historyKept = 50; // each a drawing of at most 320 KB
constexpr double unseen = 0.3; // units: a line that is off by less looks the same (half a millimetre)
constexpr std::size_t worthThinning = 100; // points

// Points nearer than this add nothing to a round brush's stroke.
double spacingFor(double radius)
{
    return std::max(radius / 4, 1.0);
}

double distance(Point a, Point b)
{
    return std::hypot(a.x - b.x, a.y - b.y);
}

} // namespace

Point keptPoint(Point p)
{
    const auto tenths = [](double v, double low, double high) {
        return std::clamp(std::round(v * 10) / 10, low, high) + 0.0; // 0, never -0
    };
    return {tenths(p.x, viewFrame.left, viewFrame.right), tenths(p.y, viewFrame.top, viewFrame.bottom)};
}

void PainEditor::setPatches(std::vector<PainPatch> patches)
{
    if (patches == (m_open ? m_open->before : m_state).patches)
        return;
    m_open.reset();
    m_history.clear();
    m_merges.reset();
    m_state.patches = std::move(patches);
    choose(m_state.current);
}

void PainEditor::choose(int index)
{
    m_state.current = index >= 0 && index < static_cast<int>(m_state.patches.size()) ? index : -1;
}

std::size_t PainEditor::pointsOfAll() const
{
    std::size_t count = 0;
    for (const PainPatch &patch : m_state.patches)
        for (const BrushStroke &stroke : patch.strokes)
            count += stroke.points.size();
    return count;
}

bool PainEditor::takes(int index, const Canvas &on) const
{
    return index >= 0 && canvasOf(at(index)) == on && at(index).painter == m_painter;
}

bool PainEditor::isWithin(int index, double reach, Point from, Point to) const
{
    const auto &strokes = at(index).strokes;
    return std::any_of(strokes.begin(), strokes.end(),
        [&](const BrushStroke &stroke) { return distanceToLine(stroke, from, to) <= stroke.radius + reach; });
}

std::optional<int> PainEditor::patchFor(const Canvas &on, double radius, Point p) const
{
    if (takes(m_state.current, on) && isWithin(m_state.current, radius + nearness, p, p))
        return m_state.current;
    for (int i = static_cast<int>(m_state.patches.size()) - 1; i >= 0; --i)
        if (takes(i, on) && isWithin(i, radius, p, p))
            return i;
    return std::nullopt;
}

std::optional<int> PainEditor::patchAt(const Canvas &on, Point p) const
{
    const auto holds = [&](int i) { return i >= 0 && canvasOf(at(i)) == on && isWithin(i, 0, p, p); };
    if (holds(m_state.current))
        return m_state.current;
    for (int i = static_cast<int>(m_state.patches.size()) - 1; i >= 0; --i)
        if (holds(i))
            return i;
    return std::nullopt;
}

std::optional<PainLimit> PainEditor::begin(const Canvas &on, double radius, Point p)
{
    end();
    const Point first = keptPoint(p);
    const double breadth = std::clamp(radius, PainLimits::leastRadius, PainLimits::greatestRadius);
    const auto target = patchFor(on, breadth, first);
    if (!target && m_state.patches.size() >= PainLimits::patches)
        return PainLimit::Patches;
    if (target && at(*target).strokes.size() >= PainLimits::strokes)
        return PainLimit::Strokes;
    if (pointsOfAll() >= PainLimits::pointsOfAll)
        return PainLimit::Points;
    Open open{m_state, on, target.value_or(static_cast<int>(m_state.patches.size())), !target, first, false, 1};
    if (!target) {
        PainPatch fresh;
        fresh.view = on.view;
        fresh.facing = on.facing;
        fresh.painter = m_painter;
        m_state.patches.push_back(std::move(fresh));
    }
    PainPatch &patch = at(open.patch);
    patch.strokes.push_back({{first}, breadth});
    patch.confirmed = false;
    m_state.current = open.patch;
    m_open = std::move(open);
    return std::nullopt;
}

std::optional<PainLimit> PainEditor::extend(Point p)
{
    if (!m_open || m_open->refused)
        return std::nullopt;
    const Point to = keptPoint(p);
    m_open->last = to;
    const BrushStroke &stroke = at(m_open->patch).strokes.back();
    const Point from = stroke.points.back();
    if (distance(from, to) < spacingFor(stroke.radius))
        return std::nullopt;
    if (const auto limit = makeRoom()) {
        m_open->refused = true;
        return limit;
    }
    at(m_open->patch).strokes.back().points.push_back(to);
    joinCurrent(from, to);
    return std::nullopt;
}

// One more point must find room: in the drawing, after thinning the line if it must, and in the stroke, after beginning another.
std::optional<PainLimit> PainEditor::makeRoom()
{
    PainPatch &patch = at(m_open->patch);
    const auto thin = [&] {
        BrushStroke &stroke = patch.strokes.back();
        std::vector<Point> fewer = thinned(stroke.points, stroke.radius / 8);
        const bool worth = fewer.size() + worthThinning <= stroke.points.size();
        if (worth)
            stroke.points = std::move(fewer);
        return worth;
    };
    const std::size_t all = pointsOfAll();
    const bool strokeIsFull = patch.strokes.back().points.size() >= PainLimits::points;
    // A further stroke takes two: it begins where the last one ended.
    if (all + (strokeIsFull ? 2 : 1) > PainLimits::pointsOfAll)
        return thin() ? std::nullopt : std::optional(PainLimit::Points);
    if (!strokeIsFull || thin())
        return std::nullopt;
    if (patch.strokes.size() >= PainLimits::strokes)
        return PainLimit::Strokes;
    const BrushStroke &full = patch.strokes.back();
    patch.strokes.push_back({{full.points.back()}, full.radius});
    ++m_open->strokes;
    return std::nullopt;
}

// A stroke that began a patch and comes to the one that was current belongs to that one.
void PainEditor::joinCurrent(Point from, Point to)
{
    Open &open = *m_open;
    const int other = open.before.current;
    if (!open.isNew || !takes(other, open.on) || at(other).strokes.size() + open.strokes > PainLimits::strokes)
        return;
    if (!isWithin(other, at(open.patch).strokes.back().radius + nearness, from, to))
        return;
    std::vector<BrushStroke> strokes = std::move(at(open.patch).strokes);
    m_state.patches.pop_back(); // the new one stands last
    PainPatch &patch = at(other);
    patch.strokes.insert(patch.strokes.end(), strokes.begin(), strokes.end());
    patch.confirmed = false;
    open.patch = m_state.current = other;
    open.isNew = false;
}

bool PainEditor::end()
{
    if (!m_open)
        return false;
    BrushStroke *stroke = &at(m_open->patch).strokes.back();
    if (!m_open->refused && stroke->points.back() != m_open->last && pointsOfAll() < PainLimits::pointsOfAll
        && stroke->points.size() < PainLimits::points)
        stroke->points.push_back(m_open->last);
    auto &strokes = at(m_open->patch).strokes;
    for (std::size_t i = strokes.size() - m_open->strokes; i < strokes.size(); ++i)
        strokes[i].points = thinned(strokes[i].points, unseen);
    Open done = std::move(*m_open);
    m_open.reset();
    const bool isDot = done.strokes == 1 && stroke->points.size() == 1;
    if (isDot && !done.isNew && done.patch != done.before.current) {
        State &before = done.before;
        const auto &painted = before.patches[static_cast<std::size_t>(done.patch)].strokes;
        const Point centre = stroke->points.front();
        if (std::any_of(
                painted.begin(), painted.end(), [&](const BrushStroke &s) { return distanceToLine(s, centre) <= s.radius; })) {
            m_state = std::move(before);
            m_state.current = done.patch;
            return false;
        }
    }
    remember(done.before);
    return true;
}

void PainEditor::cancel()
{
    if (!m_open)
        return;
    m_state = std::move(m_open->before);
    m_open.reset();
}

void PainEditor::remember(const State &before)
{
    if (m_history.size() == historyKept)
        m_history.erase(m_history.begin());
    m_history.push_back(before);
    m_merges.reset();
}

void PainEditor::rememberOnce(Merge kind)
{
    const std::pair change{kind, kind == Merge::Erasing ? -1 : m_state.current};
    if (m_merges == change)
        return;
    remember(m_state);
    m_merges = change;
}

template <class Touched> bool PainEditor::removeStrokes(const Canvas &on, Touched touched)
{
    bool removed = false;
    for (PainPatch &patch : m_state.patches)
        if (canvasOf(patch) == on && std::erase_if(patch.strokes, touched) > 0) {
            patch.confirmed = false;
            removed = true;
        }
    dropEmpty();
    return removed;
}

// A patch without a stroke is none.
void PainEditor::dropEmpty()
{
    for (int i = static_cast<int>(m_state.patches.size()) - 1; i >= 0; --i)
        if (at(i).strokes.empty()) {
            m_state.patches.erase(m_state.patches.begin() + i);
            if (m_state.current == i)
                m_state.current = -1;
            else if (m_state.current > i)
                --m_state.current;
        }
}

bool PainEditor::erase(const Canvas &on, Point from, Point to)
{
    end();
    const auto touched = [&](const BrushStroke &stroke) { return distanceToLine(stroke, from, to) <= stroke.radius; };
    const auto holdsOne = [&](const PainPatch &patch) {
        return canvasOf(patch) == on && std::any_of(patch.strokes.begin(), patch.strokes.end(), touched);
    };
    if (std::none_of(m_state.patches.begin(), m_state.patches.end(), holdsOne))
        return false;
    rememberOnce(Merge::Erasing);
    return removeStrokes(on, touched);
}

bool PainEditor::removeDot(const Canvas &on, Point p)
{
    end();
    const std::vector<Point> dot{keptPoint(p)};
    State before = m_state;
    if (!removeStrokes(on, [&](const BrushStroke &stroke) { return stroke.points == dot; }))
        return false;
    remember(before);
    return true;
}

bool PainEditor::setQuality(std::optional<PainQuality> quality)
{
    if (m_state.current < 0 || at(m_state.current).quality == quality)
        return false;
    end();
    rememberOnce(Merge::Quality);
    at(m_state.current).quality = quality;
    return true;
}

bool PainEditor::setIntensity(std::optional<PainScore> intensity)
{
    if (m_state.current < 0 || at(m_state.current).intensity == intensity)
        return false;
    end();
    rememberOnce(Merge::Intensity);
    at(m_state.current).intensity = intensity;
    return true;
}

bool PainEditor::removeCurrent()
{
    end();
    if (m_state.current < 0)
        return false;
    remember(m_state);
    at(m_state.current).strokes.clear();
    dropEmpty();
    return true;
}

bool PainEditor::clear()
{
    end();
    if (m_state.patches.empty())
        return false;
    remember(m_state);
    m_state = {};
    return true;
}

bool PainEditor::undo()
{
    end();
    if (m_history.empty())
        return false;
    m_state = std::move(m_history.back());
    m_history.pop_back();
    m_merges.reset();
    return true;
}

} // namespace raphe
