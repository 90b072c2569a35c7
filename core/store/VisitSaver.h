// Saves a visit on every change, off the caller's thread, joining changes that come within `coalesce`.
// Owns a thread and, in it, its own store. The destructor saves what is pending.
#pragma once

#include "core/store/Practice.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>

namespace raphe {

/// Opens the practice once more, in the saver's thread.
using PracticeOpener = std::function<Result<std::unique_ptr<Practice>>()>;

class VisitSaver {
public:
    static constexpr std::chrono::milliseconds coalesce{50}; // a kill loses at most this and the write itself

    /// `onResult` is called in the saver's thread after each write with the write's outcome.
    VisitSaver(PracticeOpener open, std::function<void(const Result<Done> &)> onResult);
    ~VisitSaver();
    VisitSaver(const VisitSaver &) = delete;
    VisitSaver &operator=(const VisitSaver &) = delete;

    /// Returns at once. Only the newest document of a visit is written; different visits are all written.
    void save(std::int64_t visit, std::string document);
    /// Blocks until everything handed over so far is on disk or has failed; false when something has, and waits to be tried
    /// again.
    [[nodiscard]] bool flush();

private:
    struct Worker;
    std::unique_ptr<Worker> m_worker;
};

} // namespace raphe
