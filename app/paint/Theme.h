// Our colours and type, light and dark. Text on its ground has a contrast of at least 4.5:1 (tested).
#pragma once

#include "core/anatomy/Structure.h"
#include "core/document/VisitMap.h"

#include <QColor>
#include <QFont>

namespace raphe {

struct Theme {
    bool dark = false;
    bool pale = false; // tissue mixed with white
    QColor ground; // behind the figure
    QColor panel; // behind lists
    QColor ink; // text
    QColor quiet; // secondary text
    QColor line; // outlines of the body
    QColor skin; // fill of the silhouette
    QColor accent; // selection and keyboard focus
    QColor lit; // tissue that a trace reaches
    QColor tender;
    QColor restricted;
    QColor clear;
    QColor onMark; // number on a filled mark
    bool grey = false; // no colours

    [[nodiscard]] QColor layer(Layer layer) const;
    [[nodiscard]] static Theme light();
    [[nodiscard]] static Theme night();
    [[nodiscard]] static Theme paper(); // paler tissue, so that marks stand out and grey printers cope
    [[nodiscard]] static Theme greyPaper();
};

/// The program's typeface (Debian package fonts-lato); sizes in points, or in painter units with `pixels`.
[[nodiscard]] QFont typeface(double points, int weight = QFont::Normal);
[[nodiscard]] QFont typefaceInUnits(double pixels, int weight = QFont::Normal);
/// False when the system would silently use another family.
[[nodiscard]] bool typefaceIsInstalled();

/// Ratio of luminances by WCAG 2.1, 1 to 21.
[[nodiscard]] double contrast(const QColor &a, const QColor &b);

} // namespace raphe
