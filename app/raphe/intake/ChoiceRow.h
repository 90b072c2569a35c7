// A row of buttons of which one at most is chosen; pressing the chosen one again takes it back. One stop for Tab: arrows choose
// the next, a digit chooses a number and a letter the next choice that begins with it; Delete takes the choice back.
#pragma once

#include <QStringList>
#include <QWidget>

#include <optional>
#include <vector>

class QPushButton;

namespace raphe {

class ChoiceRow : public QWidget {
    Q_OBJECT

public:
    /// `columns`: as many beside each other, then on; 0: all in one row.
    ChoiceRow(const QString &name, const QStringList &texts, int columns = 0, QWidget *parent = nullptr);
    /// The numbers 0 to `highest`.
    [[nodiscard]] static ChoiceRow *ofNumbers(const QString &name, int highest);

    /// Index of what is chosen.
    [[nodiscard]] std::optional<int> value() const { return m_value; }
    void give(std::optional<int> value);
    /// Fewer words than the buttons' tips.
    void setTips(const QStringList &tips);
    [[nodiscard]] QPushButton *button(int index) const { return m_buttons[static_cast<std::size_t>(index)]; }

Q_SIGNALS:
    void chosen();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void choose(std::optional<int> value);
    void show(std::optional<int> value);
    [[nodiscard]] std::optional<int> after(int key) const;

    std::vector<QPushButton *> m_buttons;
    std::optional<int> m_value;
    bool m_isOfNumbers = false;
};

} // namespace raphe
