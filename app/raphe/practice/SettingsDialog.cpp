#include "app/raphe/practice/SettingsDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/AddresseesTab.h"
#include "app/raphe/practice/AdviceTab.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/Passphrase.h"
#include "app/raphe/practice/TreatmentTab.h"
#include "app/raphe/practice/UsersTab.h"
#include "core/store/Retention.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr int letterheadRows = 4;

QVBoxLayout *tabColumn(QWidget *tab)
{
    auto *column = new QVBoxLayout(tab);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(12);
    return column;
}

} // namespace

SettingsDialog::SettingsDialog(Practice &practice, QWidget *parent, const DerivationCost &cost,
    const std::vector<TechniqueGroup> &scope, const Techniques &techniques)
    : WorkDialog(tr("Settings of the practice"), parent), m_practice(practice), m_tabs(new QTabWidget)
{
    const auto settings = practice.settings();
    if (settings)
        m_settings = settings.value();
    m_users = new UsersTab(practice, cost, scope);
    m_treatment = new TreatmentTab(m_settings.treatment, techniques);
    m_tabs->addTab(makePracticeTab(), tr("Practice"));
    m_tabs->addTab(makeBackupTab(), tr("Back-ups"));
    m_tabs->addTab(makeRecordsTab(), tr("Keeping records"));
    m_tabs->addTab(m_users, tr("Users"));
    m_tabs->addTab(scrolled(m_treatment), tr("Treatment"));
    m_advice = new AdviceTab(m_settings.advice);
    m_tabs->addTab(scrolled(m_advice), tr("Advice"));
    m_addressees = new AddresseesTab(m_settings.addressees);
    m_tabs->addTab(scrolled(m_addressees), tr("Addressees"));
    m_tabs->tabBar()->setAccessibleName(tr("Parts of the settings"));
    form().addWidget(m_tabs, 1);
    addGap();
    connect(addButton(tr("Cancel")), &QPushButton::clicked, this, &SettingsDialog::reject);
    QPushButton *save = addButton(tr("Save"));
    save->setDefault(true);
    connect(save, &QPushButton::clicked, this, &SettingsDialog::save);
    connect(m_users, &UsersTab::failed, this, &SettingsDialog::complain);
    connect(m_users, &UsersTab::keysChanged, this, &SettingsDialog::keysChanged);
    m_users->readUsers();
    forgetNoticeWhenTyping();
    resize(740, 690);
    m_name->setFocus();
    if (!settings) {
        complain(settings.error());
        save->setEnabled(false);
    }
}

SettingsDialog::~SettingsDialog() = default;

QWidget *SettingsDialog::makePracticeTab()
{
    auto *tab = new QWidget;
    QVBoxLayout *column = tabColumn(tab);
    m_name = new QLineEdit(QString::fromStdString(m_settings.name));
    column->addLayout(labelled(tr("Name of the practice"), m_name));
    m_letterhead = new QPlainTextEdit(QString::fromStdString(m_settings.letterhead));
    m_letterhead->setTabChangesFocus(true);
    column->addLayout(labelled(tr("Letterhead"), m_letterhead));
    m_letterhead->setFixedHeight(m_letterhead->fontMetrics().lineSpacing() * letterheadRows + 24);
    m_units = new UnitsBox(m_settings.isMetric);
    m_language = new LanguageBox(m_settings.language);
    auto *row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(m_units, 1);
    row->addWidget(m_language, 1);
    column->addLayout(row);
    m_lock = new LockBox(m_settings.lockMinutes);
    column->addWidget(m_lock);
    column->addStretch(1);
    return scrolled(tab);
}

QWidget *SettingsDialog::makeBackupTab()
{
    auto *tab = new QWidget;
    QVBoxLayout *column = tabColumn(tab);
    m_folder = new FolderEdit(m_settings.backupFolder);
    column->addWidget(m_folder);
    column->addWidget(
        hint(tr("Best on a drive that is unplugged afterwards: what is not connected cannot be spoilt or stolen with "
                "this computer.")));
    auto *kept = new QVBoxLayout;
    kept->setSpacing(2);
    kept->addWidget(heading(tr("What is kept")));
    kept->addWidget(
        new WrappedLabel(tr("The newest back-up of each of the last 7 days that have one, of 5 weeks and of 12 months. "
                            "Older ones are removed when a new one is made. Other files in the folder stay as they are.")));
    column->addLayout(kept);
    column->addWidget(
        hint(tr("A back-up is sealed as the practice is: it opens with a passphrase of its day, or the recovery key.")));
    column->addStretch(1);
    return tab;
}

QWidget *SettingsDialog::makeRecordsTab()
{
    auto *tab = new QWidget;
    QVBoxLayout *column = tabColumn(tab);
    column->addWidget(new WrappedLabel(tr("The law where you work says how long records must be kept and when they must go. Ask "
                                          "your professional body: the program does not know it.")));
    m_jurisdiction = new QLineEdit(QString::fromStdString(m_settings.jurisdiction));
    m_jurisdiction->setPlaceholderText(tr("Country or state, and the rule that you go by"));
    column->addLayout(labelled(tr("Law that you go by"), m_jurisdiction));
    m_years = new QSpinBox;
    m_years->setRange(0, RetentionRule::longest);
    m_years->setSpecialValueText(tr("Not set"));
    m_years->setSuffix(tr(" years", "after a number of years"));
    m_years->setValue(m_settings.retentionYears);
    m_years->setMinimumWidth(160);
    auto *row = new QHBoxLayout;
    row->addWidget(m_years);
    row->addStretch(1);
    column->addLayout(labelled(tr("Kept after the last visit"), row, m_years));
    column->addWidget(hint(tr("When the time is over the program proposes to erase a record. It never erases by itself.")));
    column->addStretch(1);
    return tab;
}

void SettingsDialog::save()
{
    const auto stopAt = [this](int tab, QWidget *field, const QString &words) {
        m_tabs->setCurrentIndex(tab);
        field->setFocus();
        say(words);
    };
    const auto stored = m_practice.settings(); // what the users' tab does may have changed them meanwhile
    if (!stored)
        return complain(stored.error());
    PracticeSettings settings = stored.value();
    settings.name = storedName(m_name->text());
    settings.letterhead = storedName(m_letterhead->toPlainText());
    settings.language = m_language->code();
    settings.isMetric = m_units->isMetric();
    settings.lockMinutes = m_lock->minutes();
    settings.backupFolder = m_folder->folder();
    settings.jurisdiction = storedName(m_jurisdiction->text());
    settings.retentionYears = m_years->value();
    settings.treatment = m_treatment->settings();
    settings.advice = m_advice->advice();
    settings.addressees = m_addressees->addressees();
    if (settings.name.empty())
        return stopAt(0, m_name, tr("Give the practice a name."));
    if (const QString trouble = m_folder->trouble(); !trouble.isEmpty())
        return stopAt(1, m_folder, trouble);
    if (const auto mistake = m_advice->mistake())
        return stopAt(m_tabs->count() - 2, mistake->at, mistake->words);
    if (const auto mistake = m_addressees->mistake())
        return stopAt(m_tabs->count() - 1, mistake->at, mistake->words);
    if (settings != stored.value()) {
        if (const auto saved = m_practice.saveSettings(settings); !saved)
            return complain(saved.error());
    }
    accept();
}

} // namespace raphe
