// The folder into which a practice is backed up day by day. Long calls: not for the thread of the windows.
#pragma once

#include "core/store/Backup.h"

namespace raphe {

struct FolderBackup {
    std::string file; // that was written
    std::vector<std::string> removed; // names that the rotation took away
};

/// Writes and checks a back-up of this name in the folder, and then removes what it supersedes. `isoMinute`: local time, as of
/// backupName.
[[nodiscard]] Result<FolderBackup> backUpInto(
    const std::string &folder, const std::string &practiceFile, const std::string &isoMinute, const EntryProgress &progress = {});

/// The day of the newest back-up of this practice in the folder, ISO 8601; empty when there is none.
[[nodiscard]] std::string lastBackupDay(const std::string &folder, const std::string &practiceFile);

} // namespace raphe
