// A scale on which a number is pointed at: where it is pressed, there the number is. The keyboard moves it by one, with Page keys
// by ten. Nothing is on it until then.
#pragma once

#include <QSlider>

#include <optional>

namespace raphe {

class ValueScale : public QSlider {
    Q_OBJECT

public:
    ValueScale(const QString &name, int least, int most, QWidget *parent = nullptr);

    void give(std::optional<double> value);

Q_SIGNALS:
    void pointedAt(int value);

protected:
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;

private:
    void point(const QPointF &at);
};

} // namespace raphe
