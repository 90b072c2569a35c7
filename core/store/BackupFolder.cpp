#include "core/store/BackupFolder.h"

#include <algorithm>
#include <filesystem>

namespace raphe {

namespace {

constexpr std::size_t dayLength = std::string_view("2026-11-27").size();

std::string beginning(const std::string &practiceFile)
{
    return std::filesystem::path(practiceFile).stem().string() + "-";
}

// Names of back-ups of this practice, and of no other whose name begins in the same way.
std::vector<std::string> namesIn(const std::string &folder, const std::string &practiceFile)
{
    const std::string start = beginning(practiceFile);
    std::vector<std::string> out;
    std::error_code none;
    for (const auto &entry : std::filesystem::directory_iterator(folder, none)) {
        const std::string name = entry.path().filename().string();
        if (name.size() == start.size() + backupMinuteLength + backupEnding.size() && name.starts_with(start)
            && name.ends_with(backupEnding))
            out.push_back(name);
    }
    return out;
}

} // namespace

Result<FolderBackup> backUpInto(
    const std::string &folder, const std::string &practiceFile, const std::string &isoMinute, const EntryProgress &progress)
{
    if (!std::filesystem::is_directory(folder))
        return Error{ErrorCode::CannotWrite, folder, "no such folder"};
    FolderBackup out;
    out.file = (std::filesystem::path(folder) / backupName(practiceFile, isoMinute)).string();
    if (const auto done = backUp(practiceFile, out.file, progress); !done)
        return done.error();
    for (const std::string &name : superseded(namesIn(folder, practiceFile))) {
        std::error_code failed;
        if (std::filesystem::remove(std::filesystem::path(folder) / name, failed))
            out.removed.push_back(name);
    }
    return out;
}

std::string lastBackupDay(const std::string &folder, const std::string &practiceFile)
{
    std::string newest;
    const std::size_t start = beginning(practiceFile).size();
    for (const std::string &name : namesIn(folder, practiceFile))
        newest = std::max(newest, name.substr(start, dayLength));
    return newest;
}

} // namespace raphe
