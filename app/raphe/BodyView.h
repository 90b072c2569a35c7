// One view of the body on screen: pan, zoom to the pointer, turn for work from the head end, hover names, labels, marks, lit
// tissue, keyboard. Shows what it is given and says what was touched; it changes no visit itself.
// The layers are painted into a picture a little larger than the widget; panning moves it, zooming stretches it until it is
// painted anew, a new layer fades in over it.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/paint/Labels.h"
#include "app/paint/Marks.h"
#include "app/raphe/ViewTransform.h"
#include "core/reasoning/Paths.h"

#include <QPixmap>
#include <QTimer>
#include <QVariantAnimation>
#include <QWidget>

#include <map>
#include <optional>
#include <vector>

namespace raphe {

struct ShownMark {
    MarkLook look;
    Point at; // in the view's units
};

class BodyView : public QWidget {
    Q_OBJECT

public:
    /// Facing: which side of the patient a side view or the head's inset shows.
    BodyView(const Atlas &atlas, const Drawing &drawing, Side facing = Side::Right, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    void setLayer(Layer layer);
    void setSelected(std::optional<Place> place);
    void setLit(std::vector<LitPlace> lit, std::vector<PathStep> path);
    void setMarks(std::vector<ShownMark> marks);
    void resetZoom();
    /// For work from the head end: turned by half, never mirrored; the letters stay upright.
    void setUpsideDown(bool upsideDown);
    void panBy(QPointF pixels);
    void zoomBy(double factor, QPointF around);
    /// Zooms and pans just enough that the place can be seen.
    void reveal(const Place &place);

    [[nodiscard]] const Drawing &drawing() const { return m_art.drawing(); }
    [[nodiscard]] Side facing() const { return m_art.facing(); }
    [[nodiscard]] Layer layer() const { return m_look.layer; }
    [[nodiscard]] bool isUpsideDown() const { return m_transform.upsideDown; }
    /// Whether a place can be seen here at all: drawn, and on a side that this view faces.
    [[nodiscard]] bool shows(const Place &place) const;
    /// Whether the picture stays as it is: no layer fades in and the hand rests.
    [[nodiscard]] bool isStill() const { return m_fading.isNull() && !m_rest.isActive(); }
    /// In words: 'Front', 'Right side', 'Soles'.
    [[nodiscard]] QString title() const { return titleOf(drawing().view(), facing()); }
    [[nodiscard]] static QString titleOf(View view, Side facing);
    /// R and L in the upper corners of a view of this size; a whole view has the one that it shows.
    static void paintSideLetters(
        QPainter &painter, const Theme &theme, const Drawing &drawing, Side facing, QSizeF size, bool upsideDown);
    /// Names on the drawing at the present zoom.
    [[nodiscard]] const std::vector<Label> &labels() const { return m_labels; }
    [[nodiscard]] const std::optional<Place> &cursor() const { return m_cursor; }
    /// Places of the layer shown, head to foot, the patient's left before the right.
    [[nodiscard]] std::vector<Place> placesShown() const;
    [[nodiscard]] QPointF toWidget(Point p) const { return m_transform.toWidget(p); }
    [[nodiscard]] Point toBody(QPointF p) const { return m_transform.toBody(p); }
    /// What a touch at this pixel would mean, if anything.
    [[nodiscard]] std::optional<Place> placeAt(QPointF p) const;
    [[nodiscard]] QRect widgetRectOf(const Place &place) const;
    [[nodiscard]] QString nameOf(const Place &place) const;

    [[nodiscard]] QSize sizeHint() const override { return {380, 800}; }

Q_SIGNALS:
    /// A point was touched (or a place chosen by keyboard): what lies there, outside in, and the place that is meant.
    void touched(const raphe::Place &place, const std::vector<raphe::UnderHit> &stack);
    void hovered(const QString &name);

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void leaveEvent(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void moved(); // the same picture elsewhere or stretched; painted anew when the hand rests
    void changed(); // another picture
    void moveCursor(int dx, int dy);
    void setCursorPlace(const Place &place);
    [[nodiscard]] std::optional<UnderHit> meantAt(const std::vector<UnderHit> &stack) const;
    [[nodiscard]] std::vector<UnderHit> under(Point p) const;
    [[nodiscard]] std::optional<Point> centreOf(const Place &place) const;
    [[nodiscard]] bool baseCovers() const;
    void paintBase();
    void placeLabels();
    void paintLabels(QPainter &painter) const;
    void paintMarks(QPainter &painter) const;
    void paintPath(QPainter &painter) const;

    const Atlas &m_atlas;
    BodyArt m_art;
    Theme m_theme = Theme::light();
    BodyLook m_look;
    std::vector<ShownMark> m_marks;
    std::vector<PathStep> m_path;
    std::optional<Place> m_cursor; // where the keyboard stands
    mutable std::map<Place, std::optional<Point>> m_centres; // found once, for the arrow keys
    ViewTransform m_transform;
    QPixmap m_base; // layers, with a margin around the widget
    ViewTransform m_baseTransform; // with which the base was painted
    bool m_baseIsOld = true;
    QTimer m_rest; // ends when the hand rests: then the base is painted anew
    QPixmap m_fading; // the base before the layer changed
    ViewTransform m_fadingTransform;
    QVariantAnimation m_fade;
    std::vector<Label> m_labels;
    QPointF m_pressed;
    QPointF m_panAtPress;
    bool m_dragging = false;
};

} // namespace raphe
