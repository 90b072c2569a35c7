#include "app/raphe/practice/UserDialogs.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/ChoiceFields.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/practice/SetUpPages.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

using Keys = std::shared_ptr<const Keyring>;

constexpr int dialogWidth = 520;

} // namespace

AddUserDialog::AddUserDialog(
    const Practice &practice, const DerivationCost &cost, const std::vector<TechniqueGroup> &groups, QWidget *parent)
    : WorkDialog(tr("Add a user"), parent),
      m_practice(practice),
      m_cost(cost),
      m_name(new QLineEdit),
      m_signIn(new QLineEdit),
      m_passphrase(new PassphraseEdit(tr("Their passphrase")))
{
    setAttribute(Qt::WA_DeleteOnClose);
    form().addWidget(
        hint(tr("They can read and sign everything, and add and remove users. Let them type the passphrase themselves.")));
    auto *row = new QHBoxLayout;
    row->setSpacing(12);
    row->addLayout(labelled(tr("Name"), m_name), 3);
    row->addLayout(labelled(tr("Sign-in name"), m_signIn), 2);
    form().addLayout(row);
    form().addWidget(m_passphrase);
    if (!groups.empty()) {
        m_scope = new ScopeTicks(tr("Techniques within their scope of practice"), groups, {});
        form().addWidget(m_scope);
    }
    form().addStretch(1);
    addGap();
    connect(addButton(tr("Cancel")), &QPushButton::clicked, this, &AddUserDialog::reject);
    QPushButton *ok = addButton(tr("Add"));
    ok->setDefault(true);
    connect(ok, &QPushButton::clicked, this, &AddUserDialog::add);
    connect(m_name, &QLineEdit::textEdited, this, [this](const QString &typed) {
        if (!m_isSignInTheirs)
            m_signIn->setText(proposedSignIn(typed));
    });
    connect(m_signIn, &QLineEdit::textEdited, this, [this](const QString &typed) { m_isSignInTheirs = !typed.isEmpty(); });
    resize(dialogWidth, sizeHint().height());
    forgetNoticeWhenTyping();
    m_name->setFocus();
}

QString AddUserDialog::signIn() const
{
    return QString::fromStdString(storedName(m_signIn->text()));
}

void AddUserDialog::add()
{
    const std::string name = storedName(m_name->text());
    const std::string who = storedName(m_signIn->text());
    if (name.empty() || who.empty()) {
        say(name.empty() ? tr("Type their name: it stands under what they sign.") : tr("Choose a sign-in name."));
        (name.empty() ? m_name : m_signIn)->setFocus();
        return;
    }
    if (const QString trouble = m_passphrase->trouble(); !trouble.isEmpty()) {
        say(tr("The passphrase: %1", "followed by a sentence").arg(trouble));
        m_passphrase->focusTrouble();
        return;
    }
    if (const QString trouble = m_scope ? m_scope->trouble() : QString(); !trouble.isEmpty())
        return say(trouble);
    workOn(tr("Adding ..."),
        onPractice(m_practice,
            [name, who, passphrase = m_passphrase->passphrase(), cost = m_cost,
                scope = m_scope ? m_scope->scope() : std::vector<std::string>()](Practice &practice) -> Result<Done> {
                const WipedAccount account(who, name, passphrase, cost, scope);
                const auto added = practice.addAccount(account);
                if (!added)
                    return added.error();
                return Done{};
            }),
        [this](const Result<Done> &outcome) {
            if (outcome) {
                accept();
            } else if (outcome.error().code == ErrorCode::Duplicate) {
                say(tr("Somebody signs in as '%1' already. Choose another sign-in name.").arg(signIn()));
                m_signIn->setFocus();
                m_signIn->selectAll();
            } else {
                complain(outcome.error());
            }
        });
}

void AddUserDialog::done(int result)
{
    m_passphrase->wipeBoth();
    WorkDialog::done(result);
}

UserScopeDialog::UserScopeDialog(
    const Practice &practice, const AccountCard &user, const std::vector<TechniqueGroup> &groups, QWidget *parent)
    : WorkDialog(tr("Techniques of %1", "name of a user").arg(QString::fromStdString(user.name)), parent),
      m_practice(practice),
      m_user(user),
      m_scope(new ScopeTicks(tr("Within their scope of practice"), groups, user.scope))
{
    setAttribute(Qt::WA_DeleteOnClose);
    form().addWidget(m_scope);
    form().addStretch(1);
    addGap();
    connect(addButton(tr("Cancel")), &QPushButton::clicked, this, &UserScopeDialog::reject);
    QPushButton *ok = addButton(tr("Save"));
    ok->setDefault(true);
    connect(ok, &QPushButton::clicked, this, &UserScopeDialog::save);
    resize(dialogWidth, sizeHint().height());
}

void UserScopeDialog::save()
{
    if (const QString trouble = m_scope->trouble(); !trouble.isEmpty())
        return say(trouble);
    workOn(tr("Saving ..."),
        onPractice(
            m_practice, [id = m_user.id, scope = m_scope->scope()](Practice &practice) { return practice.saveScope(id, scope); }),
        [this](const Result<Done> &outcome) {
            if (outcome)
                accept();
            else
                complain(outcome.error());
        });
}

RemoveUserDialog::RemoveUserDialog(const Practice &practice, const AccountCard &user, QWidget *parent)
    : WorkDialog(tr("Remove %1?", "name of a user").arg(QString::fromStdString(user.name)), parent),
      m_practice(practice),
      m_user(user)
{
    setAttribute(Qt::WA_DeleteOnClose);
    const auto addPart = [this](const QString &head, const QString &words) {
        auto *part = new QVBoxLayout;
        part->setSpacing(2);
        part->addWidget(heading(head));
        part->addWidget(new WrappedLabel(words));
        form().addLayout(part);
    };
    addPart(tr("What it does"),
        tr("The practice gets a new key. Their passphrase opens this file no more, nor any back-up made from now on."));
    addPart(tr("What it cannot do"),
        tr("Take back what they have read or copied. Older back-ups still open with their passphrase: keep those away from "
           "them."));
    addPart(tr("What stays"),
        tr("What they signed, under their name. Everybody else keeps their passphrase, and the recovery key "
           "stays the same."));
    form().addStretch(1);
    addGap();
    QPushButton *cancel = addButton(tr("Cancel"));
    connect(cancel, &QPushButton::clicked, this, &RemoveUserDialog::reject);
    cancel->setDefault(true); // not to be done by a slip
    connect(addButton(tr("Remove")), &QPushButton::clicked, this, &RemoveUserDialog::remove);
    resize(dialogWidth, sizeHint().height());
    cancel->setFocus();
}

void RemoveUserDialog::remove()
{
    workOn(tr("Making a new key ..."),
        onPractice(m_practice,
            [id = m_user.id](Practice &practice) -> Result<Keys> {
                if (const auto removed = practice.removeAccount(id); !removed)
                    return removed.error();
                return practice.keys();
            }),
        [this](const Result<Keys> &outcome) {
            if (!outcome) {
                complain(outcome.error());
                return;
            }
            m_keys = outcome.value();
            accept();
        });
}

ChangePassphraseDialog::ChangePassphraseDialog(const Practice &practice, const DerivationCost &cost, QWidget *parent)
    : WorkDialog(tr("Change your passphrase"), parent),
      m_practice(practice),
      m_cost(cost),
      m_old(new PassphraseLine),
      m_new(new PassphraseEdit(tr("New passphrase")))
{
    setAttribute(Qt::WA_DeleteOnClose);
    form().addWidget(hint(tr("Back-ups made until now still open with the present passphrase.")));
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_old, 1);
    row->addWidget(PassphraseLine::showButton({m_old}));
    form().addLayout(labelled(tr("Present passphrase"), row, m_old));
    form().addWidget(m_new);
    form().addStretch(1);
    addGap();
    connect(addButton(tr("Cancel")), &QPushButton::clicked, this, &ChangePassphraseDialog::reject);
    QPushButton *ok = addButton(tr("Change"));
    ok->setDefault(true);
    connect(ok, &QPushButton::clicked, this, &ChangePassphraseDialog::change);
    resize(dialogWidth, sizeHint().height());
    forgetNoticeWhenTyping();
    m_old->setFocus();
}

void ChangePassphraseDialog::change()
{
    if (m_old->text().isEmpty()) {
        say(tr("Type the present passphrase."));
        m_old->setFocus();
        return;
    }
    if (const QString trouble = m_new->trouble(); !trouble.isEmpty()) {
        say(tr("The new passphrase: %1", "followed by a sentence").arg(trouble));
        m_new->focusTrouble();
        return;
    }
    workOn(tr("Changing ..."),
        onPractice(m_practice,
            [old = m_old->passphrase(), next = m_new->passphrase(), cost = m_cost](
                Practice &practice) { return practice.changePassphrase(old.characters(), next.characters(), cost); }),
        [this](const Result<Done> &outcome) {
            if (outcome) {
                accept();
            } else if (outcome.error().code == ErrorCode::WrongPassphrase) {
                say(tr("This is not your present passphrase. Nothing was changed."));
                m_old->setFocus();
                m_old->selectAll();
            } else {
                complain(outcome.error());
            }
        });
}

void ChangePassphraseDialog::done(int result)
{
    wipe(*m_old);
    m_new->wipeBoth();
    WorkDialog::done(result);
}

} // namespace raphe
