// Back-ups: one file each, sealed as the practice file itself is, so that no passphrase is needed to make, check or keep one; to
// open one takes a passphrase of that day or the recovery key. What is readable in the file is readable in its back-up. Long
// calls: not for the thread of the windows.
#pragma once

#include "core/base/Result.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Told how many entries were checked; answers false to stop (NotAllowed).
using EntryProgress = std::function<bool(std::int64_t)>;

/// Checks what can be checked without a key: SQLite's own structure, and the chain of signed entries.
[[nodiscard]] Result<std::int64_t> checkWithoutKey(const std::string &file, const EntryProgress &progress = {});

/// Writes a back-up beside its final name, checks it, and only then gives it the name; an older file of that name is replaced.
/// The practice may be in use. Fails with CannotWrite or Tampered; then there is no new file.
[[nodiscard]] Result<Done> backUp(const std::string &practiceFile, const std::string &target, const EntryProgress &progress = {});

/// What a practice file has and a back-up lacks, as far as it can be seen without a key.
struct BackupGap {
    std::int64_t endsAt = 0; // the back-up's newest entry: milliseconds since 1970, UTC
    std::int64_t entries = 0; // signed entries since, of whatever kind
    std::int64_t visits = 0; // begun or changed since, drafts too
    bool isOfAnother = false; // of another practice; then nothing is counted
};
/// Fails when one of the two cannot be read.
[[nodiscard]] Result<BackupGap> gapOf(const std::string &backup, const std::string &practiceFile);

/// Where the practice file is kept that a back-up was put in the place of.
[[nodiscard]] std::string keptBeside(const std::string &practiceFile);

/// Puts a back-up in the place of a practice file, which must not be in use; an existing one is kept, see keptBeside(). Gives the
/// patients that were erased since: erase them again once the file is unlocked.
[[nodiscard]] Result<std::vector<std::int64_t>> restore(
    const std::string &backup, const std::string &practiceFile, const EntryProgress &progress = {});

inline constexpr std::string_view backupEnding = ".raphe-backup";
inline constexpr std::size_t backupMinuteLength = std::string_view("2026-11-27T0930").size(); // before the ending
/// The name of a back-up made at this time: "NAME-2026-11-27T0930.raphe-backup"; times are local.
[[nodiscard]] std::string backupName(const std::string &practiceFile, const std::string &isoMinute);
/// Which of these back-ups (names as above, of one practice) can go: kept are the newest of each of the last 7 days that have
/// one, of 5 weeks and of 12 months. Names of another form are never named.
[[nodiscard]] std::vector<std::string> superseded(const std::vector<std::string> &names);

} // namespace raphe
