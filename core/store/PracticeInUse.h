// Holds a practice file for one running program: a second one is refused instead of surprising the first. A lock file beside the
// practice, which says who holds it; one that a killed program left is taken over. Owns the lock until it goes.
// Not for two programs that do belong together: a back-up may be made while the window is open.
#pragma once

#include "core/base/Result.h"

#include <memory>
#include <string>

class QLockFile;

namespace raphe {

class PracticeInUse {
public:
    /// Fails with NotAllowed, detail: who holds it; with CannotWrite when the folder cannot be written to.
    [[nodiscard]] static Result<PracticeInUse> hold(const std::string &practiceFile);
    ~PracticeInUse();
    PracticeInUse(PracticeInUse &&) noexcept;
    PracticeInUse &operator=(PracticeInUse &&) noexcept;

private:
    explicit PracticeInUse(std::unique_ptr<QLockFile> lock);

    std::unique_ptr<QLockFile> m_lock;
};

} // namespace raphe
