// Puts a back-up in the place of a practice file that cannot be used any more. The file is kept beside it. accepted() when it is
// done; then the practice has to be unlocked with a passphrase of the back-up's day, or the recovery key.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Backup.h"

#include <cstdint>
#include <string>
#include <vector>

namespace raphe {

class RestoreDialog : public WorkDialog {
    Q_OBJECT

public:
    explicit RestoreDialog(const std::string &practiceFile, QWidget *parent = nullptr);

    /// Says what the back-up lacks; then it can be restored.
    void look(const QString &backup);
    void restoreNow();
    /// The newest entry of the back-up: milliseconds since 1970, UTC.
    [[nodiscard]] std::int64_t endsAt() const { return m_endsAt; }
    /// Patients that were erased after the back-up was made: to be erased again as soon as the file is unlocked.
    [[nodiscard]] const std::vector<std::int64_t> &erasedSince() const { return m_erasedSince; }

private:
    void choose();
    void tell(const Result<BackupGap> &gap);

    const std::string m_file;
    WrappedLabel *m_gap;
    QPushButton *m_choose;
    QPushButton *m_restore;
    QString m_backup;
    std::int64_t m_endsAt = 0;
    std::vector<std::int64_t> m_erasedSince;
};

} // namespace raphe
