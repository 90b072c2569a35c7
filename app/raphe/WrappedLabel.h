// A label whose words wrap and which is as high as they need, no more and no less. A plain QLabel that wraps lets a layout
// squeeze what stands under it, because its height is not part of the layout's smallest size.
#pragma once

#include <QLabel>

namespace raphe {

class WrappedLabel : public QLabel {
    Q_OBJECT

public:
    explicit WrappedLabel(const QString &text = {}, QWidget *parent = nullptr);
    /// Instead of setText().
    void say(const QString &text);

protected:
    bool event(QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void fit();

    bool m_isPlaced = false; // by a layout: its width is real
};

} // namespace raphe
