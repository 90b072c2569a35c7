// The pages on which a practice is described when it is set up: who, and how it shall work.
#pragma once

#include "app/raphe/practice/ChoiceFields.h"
#include "app/raphe/practice/Passphrase.h"

#include <QWidget>

class QLineEdit;
class QPlainTextEdit;

namespace raphe {

class PassphraseEdit;

/// Names and the first passphrase.
class SetUpNamesPage : public QWidget {
    Q_OBJECT

public:
    explicit SetUpNamesPage(const QString &introduction, QWidget *parent = nullptr);

    /// The first thing that is missing, as a sentence; typing then goes on there. Empty when nothing is.
    [[nodiscard]] QString trouble();
    void writeInto(PracticeSettings &settings) const;
    [[nodiscard]] std::string signIn() const;
    [[nodiscard]] std::string name() const;
    [[nodiscard]] Passphrase passphrase() const;
    void wipePassphrase();

private:
    void proposeSignIn();

    QLineEdit *m_practice;
    QPlainTextEdit *m_letterhead;
    QLineEdit *m_name;
    QLineEdit *m_signIn;
    PassphraseEdit *m_passphrase;
    bool m_isSignInTheirs = false; // typed, not proposed
};

/// Back-ups, locking, units, language, scope.
class SetUpChoicesPage : public QWidget {
    Q_OBJECT

public:
    explicit SetUpChoicesPage(const std::vector<TechniqueGroup> &scope, QWidget *parent = nullptr);

    [[nodiscard]] QString trouble();
    void writeInto(PracticeSettings &settings) const;
    /// Of the first user, as in AccountCard.
    [[nodiscard]] std::vector<std::string> scope() const;

private:
    FolderEdit *m_folder;
    LockBox *m_lock;
    UnitsBox *m_units;
    LanguageBox *m_language;
    ScopeTicks *m_scope = nullptr; // only when there are groups
};

/// Proposed from a person's name: the first word of it in small letters without accents.
[[nodiscard]] QString proposedSignIn(const QString &name);

} // namespace raphe
