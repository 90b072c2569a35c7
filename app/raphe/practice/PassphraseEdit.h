// Fields for passphrases: one to type one, and a pair to choose one. What they hold is wiped when it was taken and when they go,
// as far as Passphrase.h says that it can be.
#pragma once

#include "app/raphe/practice/Passphrase.h"

#include <QLineEdit>
#include <QWidget>

class QPushButton;

namespace raphe {

class WrappedLabel;

/// Hides what is typed unless it was asked to show it.
class PassphraseLine : public QLineEdit {
    Q_OBJECT

public:
    explicit PassphraseLine(QWidget *parent = nullptr);
    ~PassphraseLine() override;

    /// A button that shows and hides what is typed in `lines`; belongs to the caller's layout.
    [[nodiscard]] static QPushButton *showButton(const QList<PassphraseLine *> &lines);
    [[nodiscard]] Passphrase passphrase() const { return Passphrase(text()); }
};

/// A new passphrase, typed twice, with words on whether it will do.
class PassphraseEdit : public QWidget {
    Q_OBJECT

public:
    explicit PassphraseEdit(const QString &name, QWidget *parent = nullptr);

    /// What is wrong, as a sentence; empty when both fields hold the same and it is long enough.
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] Passphrase passphrase() const { return m_first->passphrase(); }
    void wipeBoth();
    /// Where typing should go on.
    void focusTrouble();

private:
    void tell();

    PassphraseLine *m_first;
    PassphraseLine *m_second;
    WrappedLabel *m_words;
};

} // namespace raphe
