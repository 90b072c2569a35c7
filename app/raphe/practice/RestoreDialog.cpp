#include "app/raphe/practice/RestoreDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/store/Backup.h"

#include <QFileDialog>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

RestoreDialog::RestoreDialog(const std::string &practiceFile, QWidget *parent)
    : WorkDialog(tr("Restore a back-up"), parent), m_file(practiceFile)
{
    form().addWidget(
        hint(tr("The back-up is checked and then put in the place of the practice file. The file as it is now stays "
                "beside it, its name ending in '.before-restore'. What was written after the back-up is only there.")));
    form().addStretch(1);
    QPushButton *leave = addButton(tr("Leave it"));
    addGap();
    QPushButton *next = addButton(tr("Choose a back-up ..."));
    next->setDefault(true);
    resize(520, sizeHint().height());
    connect(leave, &QPushButton::clicked, this, &RestoreDialog::reject);
    connect(next, &QPushButton::clicked, this, &RestoreDialog::choose);
}

void RestoreDialog::choose()
{
    const QString backup =
        QFileDialog::getOpenFileName(this, tr("Choose a back-up"), {}, tr("Back-ups (*.raphe-backup);;All files (*)"));
    if (!backup.isEmpty())
        restoreFrom(backup);
}

void RestoreDialog::restoreFrom(const QString &backup)
{
    workOn(
        tr("Checking and restoring ..."), [from = backup.toStdString(), to = m_file] { return restore(from, to); },
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
