#include "app/paint/Type.h"

#include "app/paint/Theme.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr double drawn = 100; // pixels of the type before it is scaled down

} // namespace

Type::Type(QPainter &painter, double millimetres, int weight, const QColor &color)
    : m_painter(painter), m_scale(millimetres / drawn), m_font(typefaceInUnits(drawn, weight)), m_color(color)
{
}

double Type::draw(const QRectF &box, const QString &text, int flags)
{
    m_painter.save();
    m_painter.translate(box.topLeft());
    m_painter.scale(m_scale, m_scale);
    m_painter.setFont(m_font);
    m_painter.setPen(m_color);
    QRectF used;
    m_painter.drawText(QRectF(0, 0, box.width() / m_scale, box.height() / m_scale), flags, text, &used);
    m_painter.restore();
    return used.height() * m_scale;
}

double Type::height(double width, const QString &text) const
{
    const QFontMetricsF metrics(m_font);
    return metrics.boundingRect(QRectF(0, 0, width / m_scale, 1e6), Qt::TextWordWrap, text).height() * m_scale;
}

Lines::Lines(const QString &text, double width, const TypeLook &look, int lead) : m_look(look)
{
    QString broken = text;
    broken.replace(QLatin1Char('\n'), QChar::LineSeparator);
    QTextLayout layout(broken, typefaceInUnits(drawn, look.weight));
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    if (lead > 0) {
        QTextLayout::FormatRange range;
        range.length = lead;
        range.format.setFont(typefaceInUnits(drawn, QFont::Bold));
        layout.setFormats({range});
    }
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width * drawn / millimetresOf(look.points));
        m_lines << broken.mid(line.textStart(), line.textLength()).remove(QChar::LineSeparator);
        m_leads << std::clamp(lead - line.textStart(), 0, static_cast<int>(m_lines.back().size()));
    }
    layout.endLayout();
}

Lines Lines::part(int first, int count) const
{
    Lines out = *this;
    out.m_lines = m_lines.mid(first, count);
    out.m_leads = m_leads.mid(first, count);
    return out;
}

void Lines::draw(QPainter &painter, const QPointF &topLeft) const
{
    const QFont font = typefaceInUnits(drawn, m_look.weight);
    const QFontMetricsF metrics(font);
    const double scale = millimetresOf(m_look.points) / drawn;
    const double above = (drawn * m_look.leading - metrics.ascent() - metrics.descent()) / 2 + metrics.ascent();
    painter.save();
    painter.translate(topLeft);
    painter.scale(scale, scale);
    painter.setPen(m_look.color);
    const QFont bold = typefaceInUnits(drawn, QFont::Bold);
    for (int i = 0; i < count(); ++i) {
        const QString lead = m_lines.at(i).left(m_leads.at(i));
        const QPointF at(0, drawn * m_look.leading * i + above);
        if (!lead.isEmpty()) {
            painter.setFont(bold);
            painter.drawText(at, lead);
        }
        painter.setFont(font);
        painter.drawText(
            at + QPointF(lead.isEmpty() ? 0 : QFontMetricsF(bold).horizontalAdvance(lead), 0), m_lines.at(i).mid(lead.size()));
    }
    painter.restore();
}

} // namespace raphe
