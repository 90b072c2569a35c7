// Type on a millimetre page: painted large and scaled down, since QFont has whole pixels only. `Type` draws with a painter that
// must outlive it; `Lines` is text wrapped once, so that what was measured is what is drawn.
#pragma once

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QStringList>

class QPainter;

namespace raphe {

class Type {
public:
    Type(QPainter &painter, double millimetres, int weight, const QColor &color);

    /// Draws wrapped text and returns its height in millimetres.
    double draw(const QRectF &box, const QString &text, int flags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap);
    [[nodiscard]] double height(double width, const QString &text) const;

private:
    QPainter &m_painter;
    double m_scale;
    QFont m_font;
    QColor m_color;
};

/// Millimetres of a size in points.
[[nodiscard]] constexpr double millimetresOf(double points)
{
    return points * 25.4 / 72;
}

struct TypeLook {
    double points = 0;
    int weight = QFont::Normal;
    QColor color;
    double leading = 1.25; // from line to line, of the size
};

class Lines {
public:
    Lines() = default;
    /// Breaks between words, and within a word that is wider than all; a line break in the text stays one. Width in millimetres.
    /// The first `lead` characters are bold.
    Lines(const QString &text, double width, const TypeLook &look, int lead = 0);

    [[nodiscard]] int count() const { return static_cast<int>(m_lines.size()); }
    [[nodiscard]] double lineHeight() const { return millimetresOf(m_look.points) * m_look.leading; }
    [[nodiscard]] double height() const { return lineHeight() * count(); }
    /// `count` lines from `first` on, as far as there are.
    [[nodiscard]] Lines part(int first, int count) const;
    void draw(QPainter &painter, const QPointF &topLeft) const;

private:
    QStringList m_lines;
    QList<int> m_leads; // bold characters at the beginning of each line
    TypeLook m_look;
};

} // namespace raphe
