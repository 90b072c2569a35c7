// A row of buttons of which one at most is chosen; pressing the chosen one again takes it back. One stop for Tab: arrows choose
// the next, a letter the next choice that begins with it; Delete takes the choice back. On a row of numbers what is typed without
// a pause is one number, in the digits of any script; what is none of the row's numbers chooses nothing, and can be read.
#pragma once

#include <QStringList>
#include <QWidget>

#include <optional>
#include <vector>

class QKeyEvent;
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
    /// What was typed on a row of numbers and is none of them; empty when it is one, or was taken back.
    [[nodiscard]] const QString &unread() const { return m_unread; }
    [[nodiscard]] QPushButton *button(int index) const { return m_buttons[static_cast<std::size_t>(index)]; }

Q_SIGNALS:
    /// Or what is typed is no number of the row; then nothing is chosen.
    void chosen();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void choose(std::optional<int> value, const QString &unread = {});
    void show(std::optional<int> value);
    [[nodiscard]] std::optional<int> after(int key) const;

    std::vector<QPushButton *> m_buttons;
    std::optional<int> m_value;
    [[nodiscard]] bool isTyped(const QKeyEvent &key) const;
    [[nodiscard]] bool isGoingOn(const QKeyEvent &key) const;
    void type(const QKeyEvent &key);

    bool m_isOfNumbers = false;
    QString m_typed; // without a pause
    QString m_unread;
    quint64 m_lastKey = 0; // ms, as the window system counts
};

} // namespace raphe
