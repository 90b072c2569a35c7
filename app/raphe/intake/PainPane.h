// One view on the PainBoard: where it stands, which skin it shows, and its picture, painted once and kept. No widget of its own.
// Keeps references to the atlas and the drawing, which must outlive it.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/raphe/BodyPanes.h"
#include "app/raphe/ViewTransform.h"
#include "core/record/PainEditor.h"

#include <QPixmap>

#include <optional>
#include <vector>

namespace raphe {

class PainPane {
public:
    /// A region of the skin and a point well inside it.
    struct Region {
        Place place;
        Point centre;
    };

    PainPane(const Atlas &atlas, const Drawing &drawing, const Pane &pane);

    [[nodiscard]] const Pane &pane() const { return m_pane; }
    [[nodiscard]] Canvas canvas() const { return canvasOf(m_pane.view, m_pane.facing); }
    [[nodiscard]] QString title() const { return BodyView::titleOf(m_pane.view, m_pane.facing); }
    /// Those that can be painted on, head to foot, the patient's left before the right.
    [[nodiscard]] const std::vector<Region> &regions() const { return m_regions; }
    [[nodiscard]] const Region *find(const Place &place) const;
    [[nodiscard]] std::optional<Place> skinAt(Point p) const;

    /// Within the board.
    void setRect(const QRect &rect);
    [[nodiscard]] const QRect &rect() const { return m_rect; }
    /// Units of the view to pixels of the board.
    [[nodiscard]] QTransform toPixels() const;
    [[nodiscard]] QPointF toBoard(Point p) const { return m_transform.toWidget(p) + m_rect.topLeft(); }
    [[nodiscard]] Point toBody(QPointF p) const { return m_transform.toBody(p - m_rect.topLeft()); }
    [[nodiscard]] QRect boxOf(const Place &place) const;

    /// The body, ground to letters. The picture is painted anew after `setRect`, `forgetPicture`, or on a screen of another
    /// ratio.
    void paintBody(QPainter &painter, const Theme &theme);
    void forgetPicture() { m_picture = {}; }
    void paintOutline(QPainter &painter, const Theme &theme, const Place &place) const;

private:
    [[nodiscard]] std::optional<Point> uncovered(const Place &place, Point centre) const;

    const Atlas &m_atlas;
    Pane m_pane;
    BodyArt m_art;
    std::vector<Region> m_regions;
    QRect m_rect;
    ViewTransform m_transform;
    QPixmap m_picture;
};

} // namespace raphe
