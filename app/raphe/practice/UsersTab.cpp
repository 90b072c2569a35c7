#include "app/raphe/practice/UsersTab.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/NewRecoveryKeyDialog.h"
#include "app/raphe/practice/UserDialogs.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

UsersTab::UsersTab(Practice &practice, const DerivationCost &cost, const std::vector<TechniqueGroup> &groups, QWidget *parent)
    : QWidget(parent),
      m_practice(practice),
      m_cost(cost),
      m_groups(groups),
      m_list(new QListWidget),
      m_scope(pushButton(tr("Techniques ..."))),
      m_remove(pushButton(tr("Remove ..."))),
      m_recovery(hint()),
      m_done(hint())
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(12);
    column->addWidget(
        hint(tr("Who may open this practice, each with a passphrase of their own. Changes here are made at once.")));
    m_list->setAccessibleName(tr("Users"));
    m_list->setStyleSheet(QStringLiteral("QListView { padding: 3px; }")); // the chosen row keeps off the round corners
    m_list->setUniformItemSizes(true);
    m_list->setTextElideMode(Qt::ElideMiddle);
    column->addWidget(m_list, 1);
    QPushButton *addButton = pushButton(tr("Add ..."));
    QPushButton *changeButton = pushButton(tr("Change your passphrase ..."));
    QPushButton *keyButton = pushButton(tr("New recovery key ..."));
    m_scope->setVisible(!m_groups.empty());
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(addButton);
    row->addWidget(m_scope);
    row->addWidget(m_remove);
    row->addStretch(1);
    column->addLayout(row);
    column->addWidget(m_done);
    auto *own = new QHBoxLayout;
    own->setSpacing(8);
    own->addWidget(changeButton);
    own->addWidget(keyButton);
    own->addStretch(1);
    column->addLayout(own);
    column->addWidget(m_recovery);
    connect(m_list, &QListWidget::currentRowChanged, this, &UsersTab::showChoice);
    connect(addButton, &QPushButton::clicked, this, &UsersTab::add);
    connect(m_remove, &QPushButton::clicked, this, &UsersTab::remove);
    connect(m_scope, &QPushButton::clicked, this, &UsersTab::changeScope);
    connect(keyButton, &QPushButton::clicked, this, &UsersTab::changeRecoveryKey);
    connect(changeButton, &QPushButton::clicked, this, &UsersTab::changePassphrase);
}

void UsersTab::readUsers()
{
    auto users = m_practice.accounts();
    if (!users) {
        Q_EMIT failed(users.error());
        return;
    }
    m_users = std::move(users).value();
    std::stable_partition(m_users.begin(), m_users.end(), [](const AccountCard &user) { return !user.isRemoved; });
    m_list->clear();
    for (const AccountCard &user : m_users) {
        const QString name = QString::fromStdString(user.name);
        auto *item = new QListWidgetItem(user.isRemoved ? tr("%1, removed").arg(name)
                : user.id == m_practice.keys()->account
                ? tr("%1, signs in as '%2': you").arg(name, QString::fromStdString(user.signIn))
                : tr("%1, signs in as '%2'").arg(name, QString::fromStdString(user.signIn)));
        if (user.isRemoved)
            item->setToolTip(tr("Kept, because what they signed names them."));
        item->setSizeHint({0, touchTarget});
        m_list->addItem(item);
    }
    m_list->setCurrentRow(0);
    showChoice();
    const auto settings = m_practice.settings();
    if (!settings)
        Q_EMIT failed(settings.error());
    else
        m_recovery->say(settings.value().isRecoveryOnPaper
                ? tr("The recovery key is on paper. If that is lost, or somebody saw it, make a new one.")
                : tr("Nobody has shown that the recovery key is on paper. Without it, records are lost with the last passphrase: "
                     "make a new one."));
}

const AccountCard *UsersTab::chosen() const
{
    const int row = m_list->currentRow();
    return row < 0 ? nullptr : &m_users[static_cast<std::size_t>(row)];
}

void UsersTab::showChoice()
{
    const AccountCard *user = chosen();
    m_scope->setEnabled(user && !user->isRemoved);
    m_remove->setEnabled(user && !user->isRemoved && user->id != m_practice.keys()->account);
}

void UsersTab::add()
{
    auto *dialog = new AddUserDialog(m_practice, m_cost, m_groups, this);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        readUsers();
        m_done->say(tr("'%1' can open the practice now.").arg(dialog->signIn()));
    });
    dialog->open();
}

void UsersTab::remove()
{
    const AccountCard user = *chosen();
    auto *dialog = new RemoveUserDialog(m_practice, user, this);
    connect(dialog, &QDialog::accepted, this, [this, dialog, user] {
        m_practice.renewKeys(dialog->keys());
        readUsers();
        m_done->say(tr("%1 can open the practice no more. It locks when the settings are closed.")
                        .arg(QString::fromStdString(user.name)));
        Q_EMIT keysChanged(dialog->keys());
    });
    dialog->open();
}

void UsersTab::changeScope()
{
    const AccountCard user = *chosen();
    auto *dialog = new UserScopeDialog(m_practice, user, m_groups, this);
    connect(dialog, &QDialog::accepted, this, [this, user] {
        readUsers();
        m_done->say(tr("The techniques of %1 are set.").arg(QString::fromStdString(user.name)));
    });
    dialog->open();
}

void UsersTab::changeRecoveryKey()
{
    auto *dialog = new NewRecoveryKeyDialog(m_practice, this);
    connect(dialog, &QDialog::accepted, this, [this] {
        readUsers();
        m_done->say(tr("The new recovery key is set. The old one still opens back-ups made until now."));
    });
    dialog->open();
}

void UsersTab::changePassphrase()
{
    auto *dialog = new ChangePassphraseDialog(m_practice, m_cost, this);
    connect(dialog, &QDialog::accepted, this, [this] { m_done->say(tr("Your new passphrase is set.")); });
    dialog->open();
}

} // namespace raphe
