// What is done to the users of a practice, each in a small dialog: adding, removing, changing one's own passphrase. accepted()
// when it is done. They open the file once more in the background, and delete themselves when they are closed. The practice must
// outlive them.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/safety/TechniqueGroups.h"
#include "core/store/Practice.h"

#include <memory>

class QLineEdit;
class QPushButton;

namespace raphe {

class PassphraseEdit;
class PassphraseLine;
class ScopeTicks;

class AddUserDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `groups`: of techniques to choose from, if there are any.
    AddUserDialog(const Practice &practice, const DerivationCost &cost, const std::vector<TechniqueGroup> &groups,
        QWidget *parent = nullptr);

    [[nodiscard]] QString signIn() const;
    void done(int result) override;

private:
    void add();

    const Practice &m_practice;
    const DerivationCost m_cost;
    QLineEdit *m_name;
    QLineEdit *m_signIn;
    PassphraseEdit *m_passphrase;
    ScopeTicks *m_scope = nullptr; // only when there are groups
    bool m_isSignInTheirs = false; // typed, not proposed
};

class UserScopeDialog : public WorkDialog {
    Q_OBJECT

public:
    UserScopeDialog(
        const Practice &practice, const AccountCard &user, const std::vector<TechniqueGroup> &groups, QWidget *parent = nullptr);

private:
    void save();

    const Practice &m_practice;
    const AccountCard m_user;
    ScopeTicks *m_scope;
};

class RemoveUserDialog : public WorkDialog {
    Q_OBJECT

public:
    RemoveUserDialog(const Practice &practice, const AccountCard &user, QWidget *parent = nullptr);

    /// The new ones; null until the user is removed.
    [[nodiscard]] const std::shared_ptr<const Keyring> &keys() const { return m_keys; }

private:
    void remove();

    const Practice &m_practice;
    const AccountCard m_user;
    std::shared_ptr<const Keyring> m_keys;
};

class ChangePassphraseDialog : public WorkDialog {
    Q_OBJECT

public:
    ChangePassphraseDialog(const Practice &practice, const DerivationCost &cost, QWidget *parent = nullptr);

    void done(int result) override;

private:
    void change();

    const Practice &m_practice;
    const DerivationCost m_cost;
    PassphraseLine *m_old;
    PassphraseEdit *m_new;
};

} // namespace raphe
