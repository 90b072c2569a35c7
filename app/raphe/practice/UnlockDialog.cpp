#include "app/raphe/practice/UnlockDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/practice/RecoverDialog.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

using Keys = std::shared_ptr<const Keyring>;

} // namespace

UnlockDialog::UnlockDialog(
    const std::string &file, const QString &signIn, int failures, QWidget *parent, const DerivationCost &cost)
    : WorkDialog(tr("Unlock the practice"), parent),
      m_file(file),
      m_cost(cost),
      m_signIn(new QLineEdit(signIn)),
      m_passphrase(new PassphraseLine),
      m_failures(failures)
{
    const QFileInfo info(QString::fromStdString(file));
    auto *where = hint(tr("%1, in the folder %2", "name of a file").arg(info.fileName(), info.absolutePath()));
    where->setAccessibleName(tr("Practice file"));
    form().addWidget(where);
    form().addLayout(labelled(tr("Sign-in name"), m_signIn));
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_passphrase, 1);
    row->addWidget(PassphraseLine::showButton({m_passphrase}));
    form().addLayout(labelled(tr("Passphrase"), row, m_passphrase));
    m_restore = pushButton(tr("Restore a back-up ..."));
    m_restore->hide();
    form().addWidget(m_restore, 0, Qt::AlignLeft);
    form().addStretch(1);

    QPushButton *lost = addButton(tr("I have lost the passphrase"));
    addGap();
    QPushButton *close = addButton(tr("Close"));
    m_unlock = addButton(tr("Unlock"));
    m_unlock->setDefault(true);
    resize(520, sizeHint().height());

    connect(&m_delay, &TryDelay::told, this, &UnlockDialog::showWait);
    connect(m_unlock, &QPushButton::clicked, this, &UnlockDialog::unlock);
    connect(close, &QPushButton::clicked, this, &UnlockDialog::reject);
    connect(lost, &QPushButton::clicked, this, &UnlockDialog::recover);
    connect(m_restore, &QPushButton::clicked, this, &UnlockDialog::restoreWanted);
    (signIn.isEmpty() ? m_signIn : m_passphrase)->setFocus();
    m_why = tr("The last tries were wrong.");
    waitAsLongAsNeeded();
}

UnlockDialog::~UnlockDialog() = default;

QString UnlockDialog::signIn() const
{
    return QString::fromStdString(storedName(m_signIn->text()));
}

void UnlockDialog::unlock()
{
    const std::string who = storedName(m_signIn->text());
    if (who.empty() || m_passphrase->text().isEmpty()) {
        say(who.empty() ? tr("Type your sign-in name.") : tr("Type your passphrase."));
        (who.empty() ? m_signIn : m_passphrase)->setFocus();
        return;
    }
    m_restore->hide();
    const int before = m_failures;
    setFailures(before + 1);
    workOn(
        tr("Unlocking ..."),
        [file = m_file, who, passphrase = m_passphrase->passphrase()]() -> Result<Keys> {
            const auto practice = Practice::unlock(file, who, passphrase.characters());
            if (!practice)
                return practice.error();
            return practice.value()->keys();
        },
        [this, before](const Result<Keys> &outcome) { takeOutcome(outcome, before); });
}

void UnlockDialog::takeOutcome(const Result<Keys> &outcome, int failuresBefore)
{
    if (outcome) {
        setFailures(0);
        m_keys = outcome.value();
        accept();
        return;
    }
    if (outcome.error().code != ErrorCode::WrongPassphrase) {
        setFailures(failuresBefore);
        explain(outcome.error());
        return;
    }
    m_passphrase->setFocus();
    m_passphrase->selectAll();
    m_why = tr("This sign-in name and this passphrase do not belong together.");
    waitAsLongAsNeeded();
}

void UnlockDialog::setFailures(int failures)
{
    m_failures = failures;
    Q_EMIT failuresChanged(failures);
}

void UnlockDialog::waitAsLongAsNeeded()
{
    if (m_delay.begin(m_failures)) {
        say(m_why);
        showWait(m_delay.secondsLeft());
    } else if (m_failures > 0) {
        say(m_why + QLatin1Char(' ') + tr("Try again."));
    }
}

void UnlockDialog::showWait(qint64 secondsLeft)
{
    m_unlock->setEnabled(secondsLeft <= 0);
    if (secondsLeft > 0)
        amend(m_why + QLatin1Char(' ') + tr("The next try can be made in %1 s.").arg(secondsLeft));
    else
        say(m_why + QLatin1Char(' ') + tr("Try again."));
}

void UnlockDialog::explain(const Error &error)
{
    const bool backupHelps =
        error.code == ErrorCode::Tampered || error.code == ErrorCode::NotAPractice || error.code == ErrorCode::Storage;
    QString words = sentence(error);
    if (backupHelps)
        words += QLatin1Char(' ')
            + tr("If this stays so: 'Restore a back-up' puts a good copy in its place and keeps this file beside it.");
    say(words);
    m_restore->setVisible(backupHelps);
}

void UnlockDialog::tellRestored()
{
    m_restore->hide();
    say(tr("The back-up is in its place. It opens with the passphrase of its day, or with the recovery key."));
    wipe(*m_passphrase);
    m_passphrase->setFocus();
}

void UnlockDialog::recover()
{
    auto *dialog = new RecoverDialog(m_file, signIn(), this, m_cost);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        m_keys = dialog->keys();
        m_signIn->setText(dialog->signIn());
        setFailures(0);
        accept();
    });
    dialog->open();
}

void UnlockDialog::done(int result)
{
    wipe(*m_passphrase);
    m_delay.stop();
    WorkDialog::done(result);
}

} // namespace raphe
