// Who may open the practice: a list, and what can be done to it. Everything here is done at once.
#pragma once

#include "core/safety/TechniqueGroups.h"
#include "core/store/Practice.h"

#include <QWidget>

class QListWidget;
class QPushButton;

namespace raphe {

class WrappedLabel;

class UsersTab : public QWidget {
    Q_OBJECT

public:
    /// `groups`: of techniques to choose from, if there are any.
    UsersTab(
        Practice &practice, const DerivationCost &cost, const std::vector<TechniqueGroup> &groups, QWidget *parent = nullptr);

    void readUsers();

Q_SIGNALS:
    void failed(const raphe::Error &error);
    void keysChanged(const std::shared_ptr<const raphe::Keyring> &keys);

private:
    void showChoice();
    [[nodiscard]] const AccountCard *chosen() const;
    void add();
    void remove();
    void changeScope();
    void changePassphrase();
    void changeRecoveryKey();

    Practice &m_practice;
    const DerivationCost m_cost;
    const std::vector<TechniqueGroup> m_groups;
    std::vector<AccountCard> m_users; // as in the list
    QListWidget *m_list;
    QPushButton *m_scope;
    QPushButton *m_remove;
    WrappedLabel *m_recovery; // whether there is a key on paper
    WrappedLabel *m_done;
};

} // namespace raphe
