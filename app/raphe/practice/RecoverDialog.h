// Sets a new passphrase with the recovery key, for a user who has lost theirs. accepted() when the user has read what changed:
// keys() then opens the file.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"

#include <memory>

class QComboBox;
class QPushButton;
class QStackedWidget;

namespace raphe {

class PassphraseEdit;
class RecoveryKeyEdit;

class RecoverDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `signIn`: proposed, of those that the file has.
    RecoverDialog(
        const std::string &file, const QString &signIn, QWidget *parent = nullptr, const DerivationCost &cost = usualCost());
    ~RecoverDialog() override;

    /// Null until the new passphrase is set.
    [[nodiscard]] const std::shared_ptr<const Keyring> &keys() const { return m_keys; }
    [[nodiscard]] QString signIn() const;

    void done(int result) override;
    /// Once the passphrase is set there is no way back: leaving is then going on.
    void reject() override;

private:
    QWidget *makeTypingPage();
    QWidget *makeDonePage();
    void readNames(const QString &signIn);
    void recover();
    void takeOutcome(const Result<std::shared_ptr<const Keyring>> &outcome);

    const std::string m_file;
    const DerivationCost m_cost;
    QStackedWidget *m_pages;
    RecoveryKeyEdit *m_key = nullptr;
    QComboBox *m_who = nullptr;
    PassphraseEdit *m_passphrase = nullptr;
    QPushButton *m_cancel;
    QPushButton *m_set;
    std::shared_ptr<const Keyring> m_keys;
};

} // namespace raphe
