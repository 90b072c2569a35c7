#include "app/raphe/intake/patient/TakeOverDialog.h"

#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/PassphraseEdit.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

TakeOverDialog::TakeOverDialog(Whose whose, int failures, QWidget *parent)
    : WorkDialog(tr("For the therapist"), parent),
      m_whose(std::move(whose)),
      m_failures(failures),
      m_passphrase(new PassphraseLine)
{
    form().addLayout(labelled(tr("Passphrase of %1", "sign-in name").arg(QString::fromStdString(m_whose.signIn)), m_passphrase));
    form().addStretch(1);
    QPushButton *back = addButton(tr("Back to the questions"));
    addGap();
    m_take = addButton(tr("Take over"));
    m_take->setDefault(true);
    connect(back, &QPushButton::clicked, this, &TakeOverDialog::reject);
    connect(m_take, &QPushButton::clicked, this, &TakeOverDialog::tryIt);
    connect(&m_delay, &TryDelay::told, this, &TakeOverDialog::showWait);
    resize(560, sizeHint().height());
    waitAsLongAsNeeded();
    m_passphrase->setFocus();
}

void TakeOverDialog::tryIt()
{
    if (m_passphrase->text().isEmpty() || m_delay.isWaiting()) {
        m_passphrase->setFocus();
        return;
    }
    const int before = m_failures;
    setFailures(before + 1); // so that ending the program does not undo a try
    workOn(
        tr("Looking ..."),
        [whose = m_whose, passphrase = m_passphrase->passphrase()]() -> Result<std::int64_t> {
            const auto practice = Practice::unlock(whose.file, whose.signIn, passphrase.characters());
            if (!practice)
                return practice.error();
            return practice.value()->keys()->account;
        },
        [this, before](const Result<std::int64_t> &outcome) {
            if (outcome && outcome.value() == m_whose.account) {
                setFailures(0);
                accept();
                return;
            }
            if (!outcome && outcome.error().code != ErrorCode::WrongPassphrase) {
                setFailures(before);
                complain(outcome.error());
                return;
            }
            m_passphrase->setFocus();
            m_passphrase->selectAll();
            say(tr("This is not the passphrase."));
            waitAsLongAsNeeded();
        });
}

void TakeOverDialog::setFailures(int failures)
{
    m_failures = failures;
    Q_EMIT failuresChanged(failures);
}

void TakeOverDialog::waitAsLongAsNeeded()
{
    if (m_delay.begin(m_failures))
        showWait(m_delay.secondsLeft());
}

void TakeOverDialog::showWait(qint64 secondsLeft)
{
    m_take->setEnabled(secondsLeft <= 0);
    amend(secondsLeft > 0 ? tr("The last tries were wrong. The next one can be made in %1 s.").arg(secondsLeft) : QString());
}

void TakeOverDialog::done(int result)
{
    wipe(*m_passphrase);
    m_delay.stop();
    WorkDialog::done(result);
}

} // namespace raphe
