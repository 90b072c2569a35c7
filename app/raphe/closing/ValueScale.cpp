#include "app/raphe/closing/ValueScale.h"

#include "app/raphe/Style.h"

#include <QMouseEvent>
#include <QSignalBlocker>
#include <QStyle>

namespace raphe {

ValueScale::ValueScale(const QString &name, int least, int most, QWidget *parent) : QSlider(Qt::Horizontal, parent)
{
    setAccessibleName(name);
    setRange(least, most);
    setSingleStep(1);
    setPageStep(10);
    setMinimumHeight(touchTarget);
    setTickPosition(TicksBelow);
    setTickInterval(10);
    connect(this, &QSlider::valueChanged, this, &ValueScale::pointedAt);
}

void ValueScale::give(std::optional<double> value)
{
    const QSignalBlocker quiet(this);
    setValue(value ? static_cast<int>(*value) : minimum());
}

void ValueScale::point(const QPointF &at)
{
    const int value = QStyle::sliderValueFromPosition(minimum(), maximum(), static_cast<int>(at.x()), width());
    if (value == this->value())
        Q_EMIT pointedAt(value); // the least, which is shown before anything is said
    else
        setValue(value);
}

void ValueScale::mousePressEvent(QMouseEvent *event)
{
    point(event->position());
}

void ValueScale::mouseMoveEvent(QMouseEvent *event)
{
    if (event->buttons() & Qt::LeftButton)
        point(event->position());
}

} // namespace raphe
