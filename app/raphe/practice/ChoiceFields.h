// The choices of a practice that stand both in its first set-up and in its settings.
#pragma once

#include "core/safety/TechniqueGroups.h"

#include <QString>
#include <QWidget>

#include <string>
#include <vector>

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace raphe {

class WrappedLabel;

/// As who speaks a language calls it; 'Deutsch' of 'de'.
[[nodiscard]] QString ownName(const std::string &code);

/// The language of what patients read, by its code; a code that is not offered stays when it is the chosen one.
class LanguageBox : public QWidget {
    Q_OBJECT

public:
    explicit LanguageBox(const std::string &code, QWidget *parent = nullptr);
    [[nodiscard]] std::string code() const;

private:
    QComboBox *m_box;
};

class UnitsBox : public QWidget {
    Q_OBJECT

public:
    explicit UnitsBox(bool isMetric, QWidget *parent = nullptr);
    [[nodiscard]] bool isMetric() const;

private:
    QComboBox *m_box;
};

/// After how long the program locks itself, with what it means never to.
class LockBox : public QWidget {
    Q_OBJECT

public:
    explicit LockBox(int minutes, QWidget *parent = nullptr);
    /// 0: never.
    [[nodiscard]] int minutes() const;

private:
    void tell();

    QComboBox *m_box;
    WrappedLabel *m_words;
};

/// The folder for back-ups.
class FolderEdit : public QWidget {
    Q_OBJECT

public:
    explicit FolderEdit(const std::string &folder, QWidget *parent = nullptr);
    /// Empty: none.
    [[nodiscard]] std::string folder() const;
    /// As a sentence; empty when it is none, or the one that it began with, or one that is there and can be written to.
    [[nodiscard]] QString trouble() const;

private:
    void choose();

    const std::string m_before;
    QLineEdit *m_field;
};

/// Ticks for the groups of techniques that a user may use.
class ScopeTicks : public QWidget {
    Q_OBJECT

public:
    /// `chosen`: as in AccountCard::scope.
    ScopeTicks(const QString &title, const std::vector<TechniqueGroup> &groups, const std::vector<std::string> &chosen,
        QWidget *parent = nullptr);
    /// As in AccountCard::scope: empty when all are ticked. Ids that were chosen and are not offered stay.
    [[nodiscard]] std::vector<std::string> scope() const;
    /// As a sentence; empty when at least one is ticked.
    [[nodiscard]] QString trouble() const;

private:
    std::vector<std::pair<std::string, QCheckBox *>> m_ticks;
    std::vector<std::string> m_unknown; // chosen, but not offered
};

} // namespace raphe
