// An edge drawn straight: its steps as fields with their marks, and under them how far each attachment reaches. Choosing a field
// by hand or by arrows, marking it by a digit or a press.
#pragma once

#include "app/paint/Theme.h"
#include "core/anatomy/Atlas.h"
#include "core/examination/Sweep.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace raphe {

class EdgeStrip : public QWidget {
    Q_OBJECT

public:
    /// Keeps references to the atlas and the sweep.
    EdgeStrip(const Atlas &atlas, const Sweep &sweep, const Theme &theme, QWidget *parent = nullptr);

    [[nodiscard]] const std::vector<std::optional<int>> &marks() const { return m_marks; }
    [[nodiscard]] std::size_t at() const { return m_at; }
    void goTo(std::size_t step);
    /// Marks the step and goes on to the next.
    void mark(std::optional<int> grade);
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// The field of a step.
    [[nodiscard]] QRectF field(std::size_t step) const;

Q_SIGNALS:
    void changed();

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    [[nodiscard]] std::vector<std::vector<std::size_t>> lanes() const;

    const Atlas &m_atlas;
    const Sweep &m_sweep;
    Theme m_theme;
    std::vector<std::optional<int>> m_marks;
    std::size_t m_at = 0;
};

} // namespace raphe
