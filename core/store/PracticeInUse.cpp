#include "core/store/PracticeInUse.h"

#include <QLockFile>

namespace raphe {

PracticeInUse::PracticeInUse(std::unique_ptr<QLockFile> lock) : m_lock(std::move(lock)) { }

PracticeInUse::~PracticeInUse() = default;
PracticeInUse::PracticeInUse(PracticeInUse &&) noexcept = default;
PracticeInUse &PracticeInUse::operator=(PracticeInUse &&) noexcept = default;

Result<PracticeInUse> PracticeInUse::hold(const std::string &practiceFile)
{
    auto lock = std::make_unique<QLockFile>(QString::fromStdString(practiceFile + ".in-use"));
    lock->setStaleLockTime(0); // a lock is old when its program is gone, not when some time has passed
    if (lock->tryLock())
        return PracticeInUse(std::move(lock));
    if (lock->error() != QLockFile::LockFailedError)
        return Error{ErrorCode::CannotWrite, practiceFile + ".in-use", "the file that marks the practice as in use"};
    qint64 process = 0;
    QString host;
    QString program;
    lock->getLockInfo(&process, &host, &program);
    return Error{ErrorCode::NotAllowed, practiceFile,
        "the practice is open already (" + program.toStdString() + ", process " + std::to_string(process) + " on "
            + host.toStdString() + ") - go on there, or close it first; nothing was changed"};
}

} // namespace raphe
