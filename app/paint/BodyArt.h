// Paints one view of the body. The paths are built once; painting is const and may be called from any GUI thread.
// The painter's units are those of the drawing (1/1000 of stature, crown at y = 0, midline at x = 0; insets have their own).
// What lies outside of the painter's clip is skipped.
#pragma once

#include "app/paint/Theme.h"
#include "core/anatomy/Atlas.h"
#include "core/anatomy/Drawing.h"

#include <QPainterPath>

#include <optional>
#include <vector>

class QPainter;

namespace raphe {

/// A tissue that stands out over the layer shown.
struct LitPlace {
    Place place;
    int ring = 0; // 0: the place itself; 1, 2, 3: steps away
    Grade evidence{};
};

struct BodyLook {
    Layer layer = Layer::SuperficialMuscle; // shown strongly; deeper ones as a ghost
    std::optional<Place> hovered;
    std::optional<Place> selected;
    std::vector<LitPlace> lit;
    std::vector<Place> found; // tinted, for paper
    double unitsPerPixel = 1; // of the painter, so that lines keep their width at every zoom
};

class BodyArt {
public:
    /// Facing: which side of the patient a whole view shows; left is the mirror image.
    BodyArt(const Atlas &atlas, const Drawing &drawing, Side facing = Side::Right);

    [[nodiscard]] const Drawing &drawing() const { return *m_drawing; }
    [[nodiscard]] Side facing() const { return m_facing; }
    /// Of the whole figure as painted.
    [[nodiscard]] QRectF frame() const;
    /// Silhouette, layers and fibres: what changes only with layer, theme and zoom.
    void paintLayers(QPainter &painter, const Theme &theme, const BodyLook &look) const;
    /// Lit, hovered and selected tissue on top.
    void paintHighlights(QPainter &painter, const Theme &theme, const BodyLook &look) const;
    /// Outline of a place on its own side (both halves for a midline place), a whole that is drawn by its parts as all of them;
    /// empty when not drawn here, or when the view faces the other side.
    [[nodiscard]] QPainterPath outlineOf(const Place &place) const;
    [[nodiscard]] const QPainterPath &silhouette() const { return m_silhouette; }

private:
    struct Art {
        StructureId structure;
        Layer layer{};
        Kind kind{};
        QPainterPath shape; // both halves
        QPainterPath half; // as drawn
        QPainterPath fibres;
        QRectF box; // of the shape
    };
    void paintArt(QPainter &painter, const Theme &theme, const Art &art, double strength, double unitsPerPixel) const;

    const Atlas *m_atlas;
    const Drawing *m_drawing;
    Side m_facing;
    QPainterPath m_silhouette;
    std::vector<Art> m_art; // deepest first
};

[[nodiscard]] QPainterPath painterPath(const Outline &outline);

} // namespace raphe
