// What a hand does to a pain drawing: strokes that begin a patch or go on in one, erasing, undoing, within PainLimits. Knows no
// widgets. Owns its patches. Not for several threads. What cannot be painted is refused with the limit that stands in the way;
// what was painted before stays.
//
// A stroke goes on in the current patch when it touches it or passes within `nearness` of its edge, else in the patch that it
// begins on, else it begins a new one. A patch belongs to one view and to one painter. Whatever changes where a patch lies takes
// back its confirmation.
#pragma once

#include "core/record/PainDrawing.h"

#include <optional>
#include <vector>

namespace raphe {

/// A view that is painted on. Facing counts for whole views; for the others it is midline, as in PainPatch.
struct Canvas {
    View view{};
    Side facing = Side::Midline;
    bool operator==(const Canvas &) const = default;
};

[[nodiscard]] inline Canvas canvasOf(View view, Side facing)
{
    return {view, isWhole(view) ? facing : Side::Midline};
}
[[nodiscard]] inline Canvas canvasOf(const PainPatch &patch)
{
    return canvasOf(patch.view, patch.facing);
}

/// What stood in the way of a stroke.
enum class PainLimit { Patches, Strokes, Points };

class PainEditor {
public:
    static constexpr double nearness = 12; // units between edges; about a finger's breadth, our choice

    /// Forgets what could be undone, and a stroke that is being painted, unless these are the patches that are there without it.
    void setPatches(std::vector<PainPatch> patches);
    [[nodiscard]] const std::vector<PainPatch> &patches() const { return m_state.patches; }
    /// Index of the current patch, -1 when there is none.
    [[nodiscard]] int current() const { return m_state.current; }
    void choose(int index);
    /// Whose strokes these are from now on.
    void setPainter(Painter painter) { m_painter = painter; }

    /// A stroke from its first point to its end. Between them it is part of the patches already. A refused one is not begun, or
    /// ends where it was refused: later points are left out until the next `begin`.
    std::optional<PainLimit> begin(const Canvas &on, double radius, Point at);
    std::optional<PainLimit> extend(Point to);
    /// False when nothing was painted: a dot on another patch chooses that one.
    bool end();
    void cancel();
    [[nodiscard]] bool isPainting() const { return m_open.has_value(); }

    /// Removes every stroke that a straight movement of the eraser touches. What is erased until `endErasing` is undone at once.
    bool erase(const Canvas &on, Point from, Point to);
    void endErasing() { m_merges.reset(); }
    /// Removes the dot that was painted at this very point; false when there is none.
    bool removeDot(const Canvas &on, Point at);

    /// Of the current patch; false when nothing changed. Changes of the same one that follow one another are undone at once.
    bool setQuality(std::optional<PainQuality> quality);
    bool setIntensity(std::optional<PainScore> intensity);
    bool removeCurrent();
    bool clear();
    /// Takes the last change back.
    bool undo();

    /// The patch that is painted at a point: the current one first, then the last painted.
    [[nodiscard]] std::optional<int> patchAt(const Canvas &on, Point at) const;

private:
    struct State {
        std::vector<PainPatch> patches;
        int current = -1;
    };
    // A stroke that is being painted.
    struct Open {
        State before;
        Canvas on;
        int patch = -1;
        bool isNew = false; // the patch
        Point last; // where the hand is, kept or not
        bool refused = false;
        std::size_t strokes = 1; // a long line becomes several
    };
    enum class Merge { Erasing, Quality, Intensity };

    [[nodiscard]] PainPatch &at(int index) { return m_state.patches[static_cast<std::size_t>(index)]; }
    [[nodiscard]] const PainPatch &at(int index) const { return m_state.patches[static_cast<std::size_t>(index)]; }
    [[nodiscard]] std::size_t pointsOfAll() const;
    [[nodiscard]] bool takes(int index, const Canvas &on) const;
    [[nodiscard]] bool isWithin(int index, double reach, Point from, Point to) const;
    [[nodiscard]] std::optional<int> patchFor(const Canvas &on, double radius, Point p) const;
    [[nodiscard]] std::optional<PainLimit> makeRoom();
    void joinCurrent(Point from, Point to);
    void remember(const State &before);
    void rememberOnce(Merge kind);
    template <class Touched> bool removeStrokes(const Canvas &on, Touched touched);
    void dropEmpty();

    State m_state;
    Painter m_painter = Painter::Patient;
    std::optional<Open> m_open;
    std::vector<State> m_history; // oldest first
    std::optional<std::pair<Merge, int>> m_merges; // the last change: the next one of its kind, on that patch, belongs to it
};

/// A point as it is kept: in tenths of a unit (0.2 mm) and within the view.
[[nodiscard]] Point keptPoint(Point p);

} // namespace raphe
