// Tells a test of every call by which SQLite changes files in this process, just before it is made and again when it has
// been: of all files, also of the temporary ones, which have no name, which StorageShim leaves alone, and which are gone from
// their folder before one could look. It changes nothing itself: what is asked for is done.
// It is a VFS of SQLite over the system's default one (https://www.sqlite.org/vfs.html) and is the default while the object
// lives, so it serves every connection of the process, also those of Qt's driver, as far as Qt uses the system's SQLite.
// Memory mapping is refused, so that no change goes past it. The shared memory of a write-ahead log (-shm) is not told of: it
// holds numbers and checksums of pages, nothing of what is in them.
// One at a time, and not beside a StorageShim. Open the connections after it, close them before it ends. `told` is called in
// SQLite's thread and must not throw, since SQLite cannot be thrown through.
#pragma once

#include <functional>
#include <memory>
#include <string_view>

namespace raphe::test {

struct DiskCall {
    enum class Kind { Open, Write, Sync, Truncate, Remove };
    Kind kind{};
    bool done = false; // false: it is about to be made
    std::string_view name; // Open and Remove: the path; empty for a temporary file
    std::string_view bytes; // Write
};

class DiskCalls {
public:
    explicit DiskCalls(std::function<void(const DiskCall &)> told);
    ~DiskCalls();
    DiskCalls(const DiskCalls &) = delete;
    DiskCalls &operator=(const DiskCalls &) = delete;

private:
    class Vfs;
    std::unique_ptr<Vfs> m_vfs;
};

} // namespace raphe::test
