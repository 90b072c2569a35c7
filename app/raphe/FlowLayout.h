// Widgets one after the other, on as many lines as they need.
#pragma once

#include <QLayout>

#include <vector>

namespace raphe {

class FlowLayout : public QLayout {
    Q_OBJECT

public:
    explicit FlowLayout(QWidget *parent = nullptr) : QLayout(parent) { }
    ~FlowLayout() override;

    void addItem(QLayoutItem *item) override { m_items.push_back(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem *itemAt(int index) const override;
    QLayoutItem *takeAt(int index) override;
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return arrange({0, 0, width, 0}, false); }
    void setGeometry(const QRect &rect) override;

private:
    int arrange(const QRect &rect, bool isReal) const;

    std::vector<QLayoutItem *> m_items;
};

} // namespace raphe
