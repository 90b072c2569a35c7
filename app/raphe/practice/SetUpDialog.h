// The first run: makes a practice file, or seals the plain one of an early version, and puts the recovery key on paper. Nothing
// is written before the second page is done; from then on the file is there and opens with the passphrase, whatever happens to
// this dialog. accepted() at the end: keys() then opens the file. While it works, nobody else may have the file open.
#pragma once

#include "app/raphe/practice/SetUpPages.h"
#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"

#include <memory>
#include <optional>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace raphe {

class RecoveryKeyPage;
class RecoveryProofPage;

class SetUpDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `scope`: groups of techniques to choose from, if there are any.
    explicit SetUpDialog(const std::string &file, QWidget *parent = nullptr, const DerivationCost &cost = usualCost(),
        const std::vector<TechniqueGroup> &scope = {});
    ~SetUpDialog() override;

    /// Null until the file is made.
    [[nodiscard]] const std::shared_ptr<const Keyring> &keys() const { return m_keys; }
    [[nodiscard]] QString signIn() const;

    /// Before the file is made: leaves, with nothing done. Afterwards: asks whether to finish without proof.
    void reject() override;
    void done(int result) override;

private:
    enum Page { Names, Choices, Key, Proof, Leave };
    struct Made {
        std::shared_ptr<const Keyring> keys;
        RecoveryKey recovery;
    };

    QWidget *makeLeavePage();
    void goTo(Page page);
    void next();
    void back();
    void make();
    void takeOutcome(const Result<Made> &outcome);
    void noteOnPaper();

    const std::string m_file;
    const DerivationCost m_cost;
    const bool m_isSealing; // a plain file is there
    QLabel *m_step;
    QStackedWidget *m_pages;
    SetUpNamesPage *m_names;
    SetUpChoicesPage *m_choices;
    RecoveryKeyPage *m_key;
    RecoveryProofPage *m_proof;
    QPushButton *m_leave;
    QPushButton *m_back;
    QPushButton *m_next;
    std::shared_ptr<const Keyring> m_keys;
    std::optional<RecoveryKey> m_recovery;
};

} // namespace raphe
