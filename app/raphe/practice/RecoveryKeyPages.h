// The pages on which the recovery key is shown once, kept on paper, and proved to be there.
#pragma once

#include "app/raphe/practice/RecoverySheet.h"

#include <QWidget>

#include <array>
#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace raphe {

class WrappedLabel;

/// The key in large groups, to be printed or saved.
class RecoveryKeyPage : public QWidget {
    Q_OBJECT

public:
    explicit RecoveryKeyPage(QWidget *parent = nullptr);

    /// `words`: what has just been done.
    void show(const RecoverySheet &sheet, const QString &words);
    void focusPrint();
    /// Forgets the key.
    void clear();

Q_SIGNALS:
    void failed(const QString &words);

private:
    void print();
    void save();

    std::optional<RecoverySheet> m_sheet;
    WrappedLabel *m_words;
    QWidget *m_frame;
    std::array<QLabel *, RecoveryKey::groupCount> m_groups{};
    QPushButton *m_print;
    WrappedLabel *m_saved;
};

/// Asks for two groups of it, other ones each time.
class RecoveryProofPage : public QWidget {
    Q_OBJECT

public:
    explicit RecoveryProofPage(QWidget *parent = nullptr);

    void ask();
    /// What is wrong, as a sentence; typing then goes on there. Empty when both groups are those of the key.
    [[nodiscard]] QString trouble(const RecoveryKey &key);

private:
    struct Question {
        std::size_t group = 1;
        QLabel *name = nullptr;
        QLineEdit *answer = nullptr;
    };
    std::array<Question, 2> m_questions;
};

} // namespace raphe
