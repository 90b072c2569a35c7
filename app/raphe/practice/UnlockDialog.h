// Asks for sign-in name and passphrase of a practice file that is there, and unlocks it. After mistakes the next try has to wait
// (unlockDelay), visibly; nobody is ever locked out. Leads on to the recovery key for who has lost the passphrase.
// accepted() when it is done: keys() then opens the file, in any thread.
#pragma once

#include "app/raphe/practice/TryDelay.h"
#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"

#include <memory>

class QLineEdit;
class QPushButton;

namespace raphe {

class PassphraseLine;

class UnlockDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `failures`: wrong tries in a row so far, also before the program was started. `cost`: of a passphrase that is set after
    /// the old one was lost.
    UnlockDialog(const std::string &file, const QString &signIn, int failures, QWidget *parent = nullptr,
        const DerivationCost &cost = usualCost());
    ~UnlockDialog() override;

    /// Null until it is accepted.
    [[nodiscard]] const std::shared_ptr<const Keyring> &keys() const { return m_keys; }
    /// Who unlocked it, to be proposed the next time.
    [[nodiscard]] QString signIn() const;

    /// After restoreWanted(): it is done, typing can go on.
    void tellRestored();
    void done(int result) override;

Q_SIGNALS:
    /// To be kept across restarts. A try counts before its outcome is known, so that ending the program does not undo it.
    void failuresChanged(int failures);
    /// The file cannot be used as it is: a back-up is to be put in its place. The dialog stays.
    void restoreWanted();

private:
    void unlock();
    void takeOutcome(const Result<std::shared_ptr<const Keyring>> &outcome, int failuresBefore);
    void recover();
    void setFailures(int failures);
    void waitAsLongAsNeeded();
    void showWait(qint64 secondsLeft);
    void explain(const Error &error);

    const std::string m_file;
    const DerivationCost m_cost;
    QLineEdit *m_signIn;
    PassphraseLine *m_passphrase;
    QPushButton *m_restore;
    QPushButton *m_unlock;
    int m_failures;
    QString m_why; // of the wait
    TryDelay m_delay;
    std::shared_ptr<const Keyring> m_keys;
};

} // namespace raphe
