// One view of the body on screen: pan, zoom to the pointer, hover names, marks, lit tissue, keyboard.
// Shows what it is given and says what was touched; it changes no visit itself.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/paint/Marks.h"
#include "core/reasoning/Paths.h"

#include <QPixmap>
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
    BodyView(const Atlas &atlas, const Drawing &drawing, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    void setLayer(Layer layer);
    void setSelected(std::optional<Place> place);
    void setLit(std::vector<LitPlace> lit, std::vector<PathStep> path);
    void setMarks(std::vector<ShownMark> marks);
    void resetZoom();
    void zoomBy(double factor, QPointF around);
    /// Zooms and pans just enough that the place can be seen.
    void reveal(const Place &place);

    [[nodiscard]] const Drawing &drawing() const { return m_art.drawing(); }
    [[nodiscard]] Layer layer() const { return m_look.layer; }
    [[nodiscard]] const std::optional<Place> &cursor() const { return m_cursor; }
    /// Places of the layer shown, head to foot, the patient's left before the right.
    [[nodiscard]] std::vector<Place> placesShown() const;
    [[nodiscard]] QPointF toWidget(Point p) const;
    [[nodiscard]] Point toBody(QPointF p) const;
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
    [[nodiscard]] double scale() const;
    void viewChanged();
    void moveCursor(int dx, int dy);
    void setCursorPlace(const Place &place);
    [[nodiscard]] std::optional<UnderHit> meantAt(const std::vector<UnderHit> &stack) const;
    [[nodiscard]] std::optional<Point> centreOf(const Place &place) const;
    void paintBase();
    void paintMarks(QPainter &painter) const;
    void paintPath(QPainter &painter) const;
    void paintSideLetters(QPainter &painter) const;

    const Atlas &m_atlas;
    BodyArt m_art;
    Theme m_theme = Theme::light();
    BodyLook m_look;
    std::vector<ShownMark> m_marks;
    std::vector<PathStep> m_path;
    std::optional<Place> m_cursor; // where the keyboard stands
    mutable std::map<Place, std::optional<Point>> m_centres; // found once, for the arrow keys
    QPixmap m_base; // layers at the present zoom
    bool m_baseIsOld = true;
    double m_zoom = 1; // 1: the whole figure fits
    QPointF m_pan{0, 0}; // pixels from the resting place
    QPointF m_pressed;
    QPointF m_panAtPress;
    bool m_dragging = false;
};

} // namespace raphe
