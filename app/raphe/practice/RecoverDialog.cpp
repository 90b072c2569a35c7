#include "app/raphe/practice/RecoverDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/practice/RecoveryKeyEdit.h"

#include <QComboBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace raphe {

namespace {

using Keys = std::shared_ptr<const Keyring>;

} // namespace

RecoverDialog::RecoverDialog(const std::string &file, const QString &signIn, QWidget *parent, const DerivationCost &cost)
    : WorkDialog(tr("Set a new passphrase"), parent), m_file(file), m_cost(cost), m_pages(new QStackedWidget)
{
    m_pages->addWidget(makeTypingPage());
    m_pages->addWidget(makeDonePage());
    form().addWidget(m_pages, 1);
    addGap();
    m_cancel = addButton(tr("Cancel"));
    m_set = addButton(tr("Set the passphrase"));
    m_set->setDefault(true);
    resize(560, sizeHint().height());
    connect(m_cancel, &QPushButton::clicked, this, &RecoverDialog::reject);
    connect(m_set, &QPushButton::clicked, this, [this] { m_keys ? accept() : recover(); });
    forgetNoticeWhenTyping();
    readNames(signIn);
    m_key->setFocus();
}

RecoverDialog::~RecoverDialog() = default;

QWidget *RecoverDialog::makeTypingPage()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(hint(tr("Type the recovery key from your paper. Capital or small letters are the same.")));
    m_key = new RecoveryKeyEdit;
    column->addWidget(m_key);
    m_who = new QComboBox;
    column->addLayout(labelled(tr("Sign-in name"), m_who));
    m_passphrase = new PassphraseEdit(tr("New passphrase"));
    column->addWidget(m_passphrase);
    column->addStretch(1);
    return page;
}

QWidget *RecoverDialog::makeDonePage()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(new WrappedLabel(tr("The practice opens with your new passphrase. What you sign from now on carries a new "
                                          "signing key; what you signed before stays as it is, under the old one.")));
    column->addWidget(hint(tr("The recovery key is still the same: put the paper back where it is safe.")));
    column->addStretch(1);
    return page;
}

void RecoverDialog::readNames(const QString &signIn)
{
    const auto names = Practice::signInNames(m_file);
    if (!names) {
        complain(names.error());
        m_set->setEnabled(false);
        return;
    }
    for (const std::string &name : names.value())
        m_who->addItem(QString::fromStdString(name));
    m_who->setCurrentIndex(std::max(0, m_who->findText(signIn, Qt::MatchFixedString)));
}

QString RecoverDialog::signIn() const
{
    return m_who->currentText();
}

void RecoverDialog::recover()
{
    auto key = m_key->read();
    if (!key) {
        const QString group = QString::fromStdString(key.error().place).section(QLatin1Char(' '), 1);
        say(key.error().detail == "empty"
                ? tr("Type group %1 from your paper.").arg(group)
                : tr("Group %1 is not as it is printed. Compare it with the paper, character by character.").arg(group));
        return;
    }
    if (const QString trouble = m_passphrase->trouble(); !trouble.isEmpty()) {
        say(tr("The new passphrase: %1").arg(trouble));
        m_passphrase->focusTrouble();
        return;
    }
    workOn(
        tr("Setting the passphrase ..."),
        [file = m_file, who = signIn().toStdString(), passphrase = m_passphrase->passphrase(), cost = m_cost,
            key = std::move(key).value()]() -> Result<Keys> {
            const WipedAccount account(who, who, passphrase, cost);
            const auto practice = Practice::recover(file, key, account);
            if (!practice)
                return practice.error();
            return practice.value()->keys();
        },
        [this](const Result<Keys> &outcome) { takeOutcome(outcome); });
}

void RecoverDialog::takeOutcome(const Result<Keys> &outcome)
{
    if (!outcome) {
        if (outcome.error().code == ErrorCode::WrongPassphrase)
            say(tr("This is a recovery key, but not that of this practice file. Is it the paper of another practice?"));
        else
            complain(outcome.error());
        return;
    }
    m_keys = outcome.value();
    m_passphrase->wipeBoth();
    m_pages->setCurrentIndex(1);
    setTitle(tr("The new passphrase is set"));
    m_cancel->hide();
    m_set->setText(tr("Go on"));
    m_set->setAccessibleName(m_set->text());
    m_set->setFocus();
}

void RecoverDialog::done(int result)
{
    m_passphrase->wipeBoth();
    WorkDialog::done(result);
}

void RecoverDialog::reject()
{
    if (m_keys)
        accept();
    else
        WorkDialog::reject();
}

} // namespace raphe
