// Stands between SQLite and the disk in a test: lets operations fail by plan (FaultPlan) and records what is done, to
// make from it what a power cut could leave (WriteRecorder). It is a VFS of SQLite over the system's default one
// (https://www.sqlite.org/vfs.html) and is the default while the object lives, so it serves every connection of the
// process, also those of Qt's driver, as far as Qt uses the system's SQLite.
//
// Only files with a name in the watched folder, or below it, are counted and recorded: databases, rollback journals and
// write-ahead logs. Others go straight to the disk, temporary files and the shared memory (-shm) among them. Reading and
// locking pass through. A sync is recorded but not done: no real power cut comes in a test, and it would take long.
// Memory mapping and growth ahead of writing are refused, so that no change goes past the shim.
//
// One shim at a time. Open the connections after it, close them before it ends; it aborts the program when a file is
// still open then. Several threads may have connections; what changes files is done one operation at a time.
// SQLite cannot be thrown through: when the record runs out of memory, or cannot read a file, the program ends.
#pragma once

#include "tests/support/storage/FaultPlan.h"
#include "tests/support/storage/WriteRecorder.h"

#include <filesystem>
#include <memory>

namespace raphe::test {

class StorageShim {
public:
    /// The folder must exist; std::filesystem::filesystem_error otherwise.
    explicit StorageShim(const std::filesystem::path &folder);
    ~StorageShim();
    StorageShim(const StorageShim &) = delete;
    StorageShim &operator=(const StorageShim &) = delete;

    /// Counts only, until it is armed.
    [[nodiscard]] FaultPlan &faults();
    [[nodiscard]] const WriteRecorder &record() const;

private:
    class Vfs;
    std::unique_ptr<Vfs> m_vfs;
};

} // namespace raphe::test
