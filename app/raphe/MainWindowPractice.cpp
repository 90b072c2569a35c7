// What the window offers for the practice as a whole: locking, back-up, settings, the log of accesses, checking the file.
#include "app/raphe/MainWindow.h"

#include "app/raphe/InBackground.h"
#include "app/raphe/help/AboutDialog.h"
#include "app/raphe/practice/AccessLogDialog.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/practice/SettingsDialog.h"
#include "app/words/ErrorText.h"
#include "core/safety/TechniqueGroups.h"
#include "core/store/Backup.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QStatusBar>
#include <QToolButton>

namespace raphe {

void MainWindow::makePracticeMenu(QToolButton *button)
{
    auto *menu = new QMenu(button);
    QAction *lock = menu->addAction(tr("Lock"), this, &MainWindow::lockWanted);
    lock->setShortcut(Qt::CTRL | Qt::Key_L);
    addAction(lock); // the key works while the menu is closed
    menu->addSeparator();
    menu->addAction(tr("Back up now"), m_backups, &BackupRunner::run);
    menu->addAction(tr("Check the whole file"), this, &MainWindow::checkPractice);
    menu->addAction(tr("Who opened what ..."), this, &MainWindow::showAccesses);
    menu->addSeparator();
    menu->addAction(tr("Settings and users ..."), this, &MainWindow::changeSettings);
    menu->addSeparator();
    menu->addAction(tr("About Raphe ..."), this, [this] {
        if (const auto notices = readEmbeddedNotices())
            AboutDialog(notices.value(), QCoreApplication::applicationVersion(), this).exec();
        else
            tell(errorText(notices.error()));
    });
    button->setMenu(menu);
    button->setPopupMode(QToolButton::InstantPopup);
}

void MainWindow::changeSettings()
{
    if (const auto saved = m_session.saveNow(); !saved) {
        tellSaveFailed(errorText(saved.error()));
        return;
    }
    const auto groups = readEmbeddedTechniqueGroups(m_session.adviser().rules());
    if (!groups) {
        statusBar()->showMessage(errorText(groups.error()));
        return;
    }
    SettingsDialog dialog(m_session.practice(), this, usualCost(), groups.value(), m_session.programTechniques());
    bool locks = false; // a new file key: all connections have to be opened anew
    connect(&dialog, &SettingsDialog::keysChanged, this, [&] { locks = true; });
    dialog.exec();
    if (locks) {
        Q_EMIT lockWanted();
        return;
    }
    if (const auto scope = m_session.rereadScope(); !scope)
        statusBar()->showMessage(errorText(scope.error()));
    if (const auto own = m_session.rereadTreatment(); !own)
        statusBar()->showMessage(errorText(own.error()));
    Q_EMIT settingsChanged();
}

void MainWindow::remindOfRecoveryKey()
{
    const auto settings = m_session.practice().settings();
    if (settings && !settings.value().isRecoveryOnPaper)
        statusBar()->showMessage(
            tr("The recovery key is not known to be on paper: 'Practice', 'Settings and users ...', 'Users'."));
}

void MainWindow::remindOfRestore()
{
    const QString kept = QString::fromStdString(keptBeside(m_session.practice().file()));
    if (QFileInfo::exists(kept))
        statusBar()->showMessage(
            tr("Restored from a back-up: what was written after it is only in %1.").arg(QFileInfo(kept).fileName()));
}

void MainWindow::showAccesses()
{
    AccessLogDialog(m_session.practice(), {}, this).exec();
}

void MainWindow::checkPractice()
{
    statusBar()->showMessage(tr("Checking the whole file ..."));
    inBackground(this,
        onPractice(m_session.practice(),
            [stop = m_stopCheck](
                const Practice &practice) { return practice.verify([&](std::int64_t) { return !stop->load(); }); }),
        [this](const Result<Done> &checked) {
            statusBar()->showMessage(checked ? tr("The whole file was checked: it is as it was written.") : QString(), 8000);
            if (!checked)
                QMessageBox::critical(this, tr("The file is not in order"), errorText(checked.error()));
        });
}

} // namespace raphe
