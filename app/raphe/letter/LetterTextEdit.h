// One text of a letter: its name, the words to be edited, and the way back to what the program had composed.
#pragma once

#include "core/record/Letter.h"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;

namespace raphe {

class TextBlock;

class LetterTextEdit : public QWidget {
    Q_OBJECT

public:
    /// As high as the text needs, from `least` lines on, up to a bound.
    LetterTextEdit(const QString &name, const LetterText &text, int least, QWidget *parent = nullptr);

    void give(const LetterText &text);
    [[nodiscard]] LetterText value() const;
    void setReadOnly(bool isReadOnly);
    [[nodiscard]] TextBlock *block() const { return m_block; }
    [[nodiscard]] QString name() const;
    /// All that Tab reaches, in its order.
    [[nodiscard]] std::vector<QWidget *> stops() const;

Q_SIGNALS:
    void edited();

private:
    void tell();

    std::string m_composed;
    bool m_isReadOnly = false;
    TextBlock *m_block;
    QLabel *m_state;
    QPushButton *m_reset;
};

} // namespace raphe
