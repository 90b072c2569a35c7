#include "core/store/Backup.h"

#include "core/base/JsonReader.h"
#include "core/store/Entries.h"

#include <QDate>

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <map>
#include <set>

namespace raphe {

namespace {

// Durable: file and the folder's entry for it.
void syncToDisk(const std::filesystem::path &path)
{
    for (const std::filesystem::path &one :
        {path, path.parent_path().empty() ? std::filesystem::path(".") : path.parent_path()}) {
        const int descriptor = open(one.c_str(), O_RDONLY | O_CLOEXEC);
        const bool done = descriptor >= 0 && fsync(descriptor) == 0;
        if (descriptor >= 0)
            close(descriptor);
        if (!done)
            throw Error{ErrorCode::CannotWrite, one.string(), "cannot be brought to the disk"};
    }
}

void removeWithLog(const std::filesystem::path &file)
{
    for (const char *end : {"", "-wal", "-shm"})
        std::filesystem::remove(file.string() + end);
}

std::int64_t checked(const std::string &file, const EntryProgress &progress)
{
    const Database db(file);
    expectPractice(db);
    if (const std::string answer = db.single("PRAGMA integrity_check(1)").text(0); answer != "ok")
        throw Error{ErrorCode::Tampered, file, answer};
    return checkChain(db, readPracticeId(db), 1, progress).entries;
}

std::set<std::int64_t> erasedIn(const std::string &file)
{
    const Database db(file);
    expectPractice(db);
    std::set<std::int64_t> out;
    Rows rows = db.run(
        "SELECT patient FROM entry WHERE kind = ? AND patient IS NOT NULL", {std::string(wordOf(entryWords, EntryKind::Erased))});
    while (rows.next())
        out.insert(rows.number(0));
    return out;
}

// SQLite's own copy in one state, also while others write; it does not sync what it makes.
void copyState(const std::string &from, const std::filesystem::path &to)
{
    removeWithLog(to);
    const Database db(from);
    expectPractice(db);
    db.run("VACUUM INTO ?", {to.string()});
    syncToDisk(to);
}

} // namespace

Result<std::int64_t> checkWithoutKey(const std::string &file, const EntryProgress &progress)
{
    return guarded([&]() -> std::int64_t {
        if (!std::filesystem::exists(file))
            throw Error{ErrorCode::CannotRead, file, "no such file"};
        return checked(file, progress);
    });
}

Result<Done> backUp(const std::string &practiceFile, const std::string &target, const EntryProgress &progress)
{
    return guarded([&]() -> Done {
        if (!std::filesystem::exists(practiceFile))
            throw Error{ErrorCode::CannotRead, practiceFile, "no such file"};
        const std::filesystem::path unfinished = target + ".unfinished";
        try {
            copyState(practiceFile, unfinished);
            static_cast<void>(checked(unfinished.string(), progress));
            std::filesystem::rename(unfinished, target);
            syncToDisk(target);
        } catch (const std::filesystem::filesystem_error &error) {
            removeWithLog(unfinished);
            throw Error{ErrorCode::CannotWrite, target, error.code().message()};
        } catch (const Error &) {
            removeWithLog(unfinished);
            throw;
        }
        return {};
    });
}

Result<BackupGap> gapOf(const std::string &backup, const std::string &practiceFile)
{
    return guarded([&]() -> BackupGap {
        for (const std::string &file : {backup, practiceFile})
            if (!std::filesystem::exists(file))
                throw Error{ErrorCode::CannotRead, file, "no such file"};
        const Database then(backup);
        expectPractice(then);
        const Database now(practiceFile);
        expectPractice(now);
        BackupGap gap;
        gap.endsAt = then.number("SELECT MAX(made_at) FROM entry");
        gap.isOfAnother = readPracticeId(then) != readPracticeId(now);
        if (gap.isOfAnother)
            return gap;
        gap.entries =
            std::max<std::int64_t>(0, now.number("SELECT COUNT(*) FROM entry") - then.number("SELECT COUNT(*) FROM entry"));
        std::map<std::int64_t, std::int64_t> changes;
        for (Rows rows = then.run("SELECT id, changes FROM visit"); rows.next();)
            changes[rows.number(0)] = rows.number(1);
        for (Rows rows = now.run("SELECT id, changes FROM visit"); rows.next();) {
            const auto same = changes.find(rows.number(0));
            gap.visits += same == changes.end() || same->second < rows.number(1) ? 1 : 0;
        }
        return gap;
    });
}

std::string keptBeside(const std::string &practiceFile)
{
    return practiceFile + ".before-restore";
}

Result<std::vector<std::int64_t>> restore(
    const std::string &backup, const std::string &practiceFile, const EntryProgress &progress)
{
    return guarded([&]() -> std::vector<std::int64_t> {
        if (!std::filesystem::exists(backup))
            throw Error{ErrorCode::CannotRead, backup, "no such file"};
        static_cast<void>(checked(backup, progress));
        std::set<std::int64_t> erased;
        try {
            const std::filesystem::path fresh = practiceFile + ".restoring";
            copyState(backup, fresh);
            if (std::filesystem::exists(practiceFile)) {
                const auto now = guarded([&] { return erasedIn(practiceFile); });
                const auto then = erasedIn(fresh.string());
                if (now) // a file that cannot be read any more is a reason to restore
                    std::set_difference(
                        now.value().begin(), now.value().end(), then.begin(), then.end(), std::inserter(erased, erased.end()));
                for (const char *end : {"-wal", ""})
                    if (std::filesystem::exists(practiceFile + end))
                        std::filesystem::rename(practiceFile + end, keptBeside(practiceFile) + end);
                std::filesystem::remove(practiceFile + "-shm");
            }
            std::filesystem::rename(fresh, practiceFile);
            syncToDisk(practiceFile);
        } catch (const std::filesystem::filesystem_error &error) {
            throw Error{ErrorCode::CannotWrite, practiceFile, error.code().message()};
        }
        return {erased.begin(), erased.end()};
    });
}

std::string backupName(const std::string &practiceFile, const std::string &isoMinute)
{
    return std::filesystem::path(practiceFile).stem().string() + "-" + isoMinute + std::string(backupEnding);
}

std::vector<std::string> superseded(const std::vector<std::string> &names)
{
    constexpr std::size_t days = 7;
    constexpr std::size_t weeks = 5;
    constexpr std::size_t months = 12;
    std::map<std::string, std::string, std::greater<>> newestFirst; // minute -> name
    for (const std::string &name : names)
        if (name.ends_with(backupEnding) && name.size() > backupEnding.size() + backupMinuteLength) {
            const std::string minute = name.substr(name.size() - backupEnding.size() - backupMinuteLength, backupMinuteLength);
            if (QDate::fromString(QString::fromStdString(minute.substr(0, 10)), Qt::ISODate).isValid() && minute[10] == 'T')
                newestFirst.emplace(minute, name);
        }
    std::vector<std::string> out;
    std::set<std::string> keptDays;
    std::set<std::string> keptWeeks;
    std::set<std::string> keptMonths;
    for (const auto &[minute, name] : newestFirst) {
        const QDate date = QDate::fromString(QString::fromStdString(minute.substr(0, 10)), Qt::ISODate);
        int year = 0;
        const std::string week = std::to_string(date.weekNumber(&year)) + " of " + std::to_string(year);
        const auto keeps = [](std::set<std::string> &kept, const std::string &span, std::size_t most) {
            return kept.size() < most && kept.insert(span).second;
        };
        const bool day = keeps(keptDays, minute.substr(0, 10), days);
        const bool inWeek = keeps(keptWeeks, week, weeks);
        const bool month = keeps(keptMonths, minute.substr(0, 7), months);
        if (!day && !inWeek && !month)
            out.push_back(name);
    }
    return out;
}

} // namespace raphe
