// Who may open the practice: a list, and what can be done to it. Everything here is done at once.
#pragma once

#include "core/store/Practice.h"

#include <QWidget>

class QListWidget;
class QPushButton;

namespace raphe {

class WrappedLabel;

class UsersTab : public QWidget {
    Q_OBJECT

public:
    UsersTab(Practice &practice, const DerivationCost &cost, QWidget *parent = nullptr);

    void readUsers();

Q_SIGNALS:
    void failed(const raphe::Error &error);
    void keysChanged(const std::shared_ptr<const raphe::Keyring> &keys);

private:
    void showChoice();
    [[nodiscard]] const AccountCard *chosen() const;
    void add();
    void remove();
    void changePassphrase();

    Practice &m_practice;
    const DerivationCost m_cost;
    std::vector<AccountCard> m_users; // as in the list
    QListWidget *m_list;
    QPushButton *m_remove;
    WrappedLabel *m_done;
};

} // namespace raphe
