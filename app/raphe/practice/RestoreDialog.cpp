#include "app/raphe/practice/RestoreDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/EntryWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/words/ErrorText.h"

#include <QFileDialog>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

RestoreDialog::RestoreDialog(const std::string &practiceFile, QWidget *parent)
    : WorkDialog(tr("Restore a back-up"), parent), m_file(practiceFile), m_gap(new WrappedLabel)
{
    form().addWidget(
        hint(tr("The back-up is checked and then put in the place of the practice file. The file as it is now stays "
                "beside it, its name ending in '.before-restore'. What was written after the back-up is only there.")));
    m_gap->setTextFormat(Qt::PlainText);
    form().addWidget(m_gap);
    form().addStretch(1);
    QPushButton *leave = addButton(tr("Leave it"));
    addGap();
    m_choose = addButton(tr("Choose a back-up ..."));
    m_restore = addButton(tr("Restore it"));
    m_restore->setEnabled(false);
    m_choose->setDefault(true);
    resize(520, sizeHint().height());
    connect(leave, &QPushButton::clicked, this, &RestoreDialog::reject);
    connect(m_choose, &QPushButton::clicked, this, &RestoreDialog::choose);
    connect(m_restore, &QPushButton::clicked, this, &RestoreDialog::restoreNow);
}

void RestoreDialog::choose()
{
    const QString backup =
        QFileDialog::getOpenFileName(this, tr("Choose a back-up"), {}, tr("Back-ups (*.raphe-backup);;All files (*)"));
    if (!backup.isEmpty())
        look(backup);
}

void RestoreDialog::look(const QString &backup)
{
    m_backup = backup;
    workOn(
        tr("Comparing ..."), [from = backup.toStdString(), to = m_file] { return gapOf(from, to); },
        [this](const Result<BackupGap> &gap) { tell(gap); });
}

void RestoreDialog::tell(const Result<BackupGap> &gap)
{
    m_restore->setEnabled(true);
    m_endsAt = gap ? gap.value().endsAt : 0;
    if (!gap)
        m_gap->say(
            tr("What the back-up lacks cannot be checked (%1). Visits and emergencies recorded since may be missing in it.")
                .arg(errorText(gap.error())));
    else if (gap.value().isOfAnother)
        m_gap->say(tr("This is a back-up of ANOTHER practice. Its last entry is of %1.").arg(momentWords(m_endsAt)));
    else if (gap.value().entries == 0 && gap.value().visits == 0)
        m_gap->say(tr("Its last entry is of %1. It lacks nothing that the file has now.").arg(momentWords(m_endsAt)));
    else
        m_gap->say(tr("Its last entry is of %1. Written since, and not in it: %2 of the history, %3. An emergency among them is "
                      "not known to the restored file.")
                       .arg(momentWords(m_endsAt), tr("%n entry(s)", nullptr, static_cast<int>(gap.value().entries)),
                           tr("%n new or changed visit(s)", nullptr, static_cast<int>(gap.value().visits))));
}

void RestoreDialog::restoreNow()
{
    workOn(
        tr("Checking and restoring ..."), [from = m_backup.toStdString(), to = m_file] { return restore(from, to); },
        [this](const Result<std::vector<std::int64_t>> &erased) {
            if (!erased) {
                complain(erased.error());
                return;
            }
            m_erasedSince = erased.value();
            accept();
        });
}

} // namespace raphe
