// One place of the body, large and in the middle, in its layer and among its neighbours, with R and L. It takes no touch.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/paint/Theme.h"
#include "app/raphe/ViewTransform.h"
#include "core/reasoning/Knowledge.h"

#include <QPixmap>
#include <QWidget>

#include <optional>

namespace raphe {

class PlacePicture : public QWidget {
    Q_OBJECT

public:
    /// Keeps a reference to the knowledge.
    PlacePicture(const Knowledge &knowledge, const Theme &theme, QWidget *parent = nullptr);

    /// Blank when no view draws it.
    void setPlace(const Place &place);
    [[nodiscard]] const std::optional<BodyArt> &art() const { return m_art; }
    /// Where the body stands in this widget.
    [[nodiscard]] ViewTransform transform() const;

protected:
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    const Knowledge &m_knowledge;
    const Theme m_theme;
    std::optional<Place> m_place;
    std::optional<BodyArt> m_art;
    QPixmap m_painted; // null: to be painted anew
};

} // namespace raphe
