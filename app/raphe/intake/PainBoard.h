// The body to paint pain on: one or two views side by side. Knows no visit: it is given patches and says when they changed.
// Mouse, finger, pen and keys paint; what belongs to which patch, and what is too much, is PainEditor's matter.
//
// Keys: arrows go from region to region, left and right on to the other view; Shift and arrows move by 6 units; Space paints a
// dot, and on a dot removes it; [ and ] change the brush; Ctrl+Z takes back; Delete removes the current patch; N and P choose the
// next and the previous one.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/intake/PainPane.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/PaintedPlaces.h"

#include <QWidget>

#include <array>
#include <memory>
#include <optional>
#include <vector>

class QTabletEvent;
class QTouchEvent;

namespace raphe {

class PainBoard : public QWidget {
    Q_OBJECT

public:
    /// Radii in units of the body: 1, 2 and 4 cm. On an inset, which shows the body five or six times larger, the brush is twice
    /// as wide in its units, and so covers a third of that.
    static constexpr std::array<double, 3> brushes{6, 12, 24};

    explicit PainBoard(const Knowledge &knowledge, QWidget *parent = nullptr);
    ~PainBoard() override;

    void setTheme(const Theme &theme);
    /// One or two; front and back at first.
    void setViews(const std::vector<Pane> &views);
    [[nodiscard]] std::vector<Pane> views() const;

    void setPatches(std::vector<PainPatch> patches);
    [[nodiscard]] const std::vector<PainPatch> &patches() const { return m_editor.patches(); }
    /// -1: none.
    [[nodiscard]] int current() const { return m_editor.current(); }
    /// Shows the view of the patch, too.
    void choose(int index);
    void setPainter(Painter painter) { m_editor.setPainter(painter); }

    void setBrush(double radius);
    [[nodiscard]] double brush() const { return m_brush; }
    /// Every touch erases the strokes that it meets, as the far end of a pen always does.
    void setErasing(bool erasing) { m_erasing = erasing; }
    [[nodiscard]] bool isErasing() const { return m_erasing; }
    /// Patches can be chosen and read, nothing more.
    void setReadOnly(bool readOnly);
    [[nodiscard]] bool isReadOnly() const { return m_readOnly; }

    void setQuality(std::optional<PainQuality> quality);
    void setIntensity(std::optional<PainScore> intensity);
    void removeCurrent();
    /// The last change, whatever it was.
    void undoStroke();
    void clear();

    /// Puts the cursor into a region, in a view that shows it; false when it is drawn nowhere.
    bool goTo(const Place &place);
    /// A dot at the cursor, unless something is painted there.
    void paintAtCursor();
    /// Where a patch lies, for the patient, most first: 'LEFT shoulder cap; LEFT chest'.
    [[nodiscard]] QString words(int index) const;
    [[nodiscard]] const std::vector<PaintedPlace> &places(int index) const;

    /// A region on one of the views shown, left view first.
    struct Spot {
        std::size_t pane = 0;
        Place place;
        bool operator==(const Spot &) const = default;
    };
    [[nodiscard]] std::vector<Spot> spots() const;
    [[nodiscard]] std::optional<Spot> spotAtCursor() const;
    [[nodiscard]] QString nameOf(const Spot &spot) const;
    [[nodiscard]] QRect boxOf(const Spot &spot) const;
    [[nodiscard]] bool isPainted(const Spot &spot) const;
    /// Pixel of a point of a view that is shown.
    [[nodiscard]] QPointF pixelOf(const Pane &view, Point p) const;

    [[nodiscard]] QSize sizeHint() const override { return {760, 800}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {360, 420}; }

Q_SIGNALS:
    /// A stroke was finished, or the patches became others in another way.
    void changed();
    /// Another patch is current; -1: none.
    void chosen(int index);
    /// Why something was not painted; all that was painted before is there.
    void refused(const QString &message);
    /// The region under hand or cursor in words; empty beside the body.
    void hovered(const QString &words);
    void brushChanged(double radius);

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void tabletEvent(QTabletEvent *event) override;
    void leaveEvent(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    enum class Device { Mouse, Finger, Pen };
    // A hand that is down.
    struct Hand {
        Device device{};
        std::size_t pane = 0;
        Point at;
        bool erasing = false;
    };
    struct Cursor {
        std::size_t pane = 0;
        Point at;
        std::optional<Place> place;
    };

    [[nodiscard]] PainPane &paneOf(const Pane &pane);
    [[nodiscard]] std::optional<std::size_t> paneAt(QPointF p) const;
    [[nodiscard]] std::optional<std::size_t> paneFor(const PainPatch &patch) const;
    void layOut();
    void handBegins(Device device, QPointF p, bool erasing);
    void handMoves(Device device, QPointF p);
    void handEnds(Device device);
    void handLetsGo();
    void touch(QTouchEvent &event);
    void point(QPointF p);
    void tell(const std::optional<Place> &place);
    void tellRefused(PainLimit limit);
    void settle(int currentBefore, bool isChanged);
    void showPatch(int index);
    [[nodiscard]] static double brushOn(const PainPane &pane, double brush);
    void updateStroke(std::size_t pane, Point from, Point to);
    void updatePointer();
    void moveCursor(int dx, int dy);
    void nudgeCursor(int dx, int dy);
    void putCursor(Cursor cursor);
    void dotAtCursor();
    void stepBrush(int step);
    [[nodiscard]] static bool isOurKey(const QKeyEvent &event);
    void paintPane(QPainter &painter, std::size_t index, const QRect &seen);
    void paintCursor(QPainter &painter) const;

    const Knowledge &m_knowledge;
    std::vector<std::unique_ptr<PainPane>> m_made;
    std::vector<PainPane *> m_shown;
    PainEditor m_editor;
    Theme m_theme = Theme::light();
    double m_brush = brushes[1];
    bool m_erasing = false;
    bool m_readOnly = false;
    std::optional<Hand> m_hand;
    int m_currentAtPress = -1;
    std::optional<int> m_finger; // the id of the one that paints
    std::optional<QPointF> m_pointer; // where the mouse shows the brush
    std::optional<Cursor> m_cursor; // of the keyboard
    QString m_told;
    std::vector<QRectF> m_plates; // of each patch, empty when it has none
    mutable std::vector<std::optional<std::vector<PaintedPlace>>> m_places; // of each patch, found when asked for
};

} // namespace raphe
