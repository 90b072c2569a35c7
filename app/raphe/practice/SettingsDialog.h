// The settings of a practice in tabs. All are written together by 'Save', but for what is done to users, which is done at once.
#pragma once

#include "app/raphe/practice/ChoiceFields.h"
#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"

#include <memory>

class QLineEdit;
class QPlainTextEdit;
class QSpinBox;
class QTabWidget;

namespace raphe {

class AddresseesTab;
class AdviceTab;
class TreatmentTab;
class UsersTab;

class SettingsDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `practice` must outlive it. `scope`: groups of techniques to choose from, if there are any. `techniques`: the program's.
    explicit SettingsDialog(Practice &practice, QWidget *parent = nullptr, const DerivationCost &cost = usualCost(),
        const std::vector<TechniqueGroup> &scope = {}, const Techniques &techniques = {});
    ~SettingsDialog() override;

Q_SIGNALS:
    /// A user was removed, and with them the old file key. `practice` has the new keys already, and the dialog goes on; every
    /// other connection to the file must be opened anew with these before it is used again.
    void keysChanged(const std::shared_ptr<const raphe::Keyring> &keys);

private:
    QWidget *makePracticeTab();
    QWidget *makeBackupTab();
    QWidget *makeRecordsTab();
    void save();

    Practice &m_practice;
    PracticeSettings m_settings; // as they were read
    QTabWidget *m_tabs;
    QLineEdit *m_name = nullptr;
    QPlainTextEdit *m_letterhead = nullptr;
    LanguageBox *m_language = nullptr;
    UnitsBox *m_units = nullptr;
    LockBox *m_lock = nullptr;
    FolderEdit *m_folder = nullptr;
    QLineEdit *m_jurisdiction = nullptr;
    QSpinBox *m_years = nullptr;
    AdviceTab *m_advice = nullptr;
    AddresseesTab *m_addressees = nullptr;
    TreatmentTab *m_treatment;
    UsersTab *m_users;
};

} // namespace raphe
