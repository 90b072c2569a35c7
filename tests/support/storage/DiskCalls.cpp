#include "tests/support/storage/DiskCalls.h"

#include <sqlite3.h>

#include <list>
#include <mutex>
#include <stdexcept>

namespace raphe::test {

// The functions that SQLite calls are static; they find the one object that lives.
class DiskCalls::Vfs {
public:
    explicit Vfs(std::function<void(const DiskCall &)> told);
    ~Vfs();
    Vfs(const Vfs &) = delete;
    Vfs &operator=(const Vfs &) = delete;

private:
    // Stands in the file in the place of the real functions, of which a VFS has several sets.
    struct Methods {
        sqlite3_io_methods handle; // first, for a pointer to it is one to the whole
        const sqlite3_io_methods *real;
    };

    static const sqlite3_io_methods &realOf(const sqlite3_file *file)
    {
        return *reinterpret_cast<const Methods *>(file->pMethods)->real;
    }

    static int open(sqlite3_vfs *vfs, const char *path, sqlite3_file *file, int flags, int *outFlags) noexcept;
    static int remove(sqlite3_vfs *vfs, const char *path, int syncFolder) noexcept;
    static int write(sqlite3_file *file, const void *data, int size, sqlite3_int64 offset) noexcept;
    static int truncate(sqlite3_file *file, sqlite3_int64 size) noexcept;
    static int sync(sqlite3_file *file, int flags) noexcept;

    template <class Call> static int telling(DiskCall call, Call make)
    {
        s_living->m_told(call);
        const int code = make();
        call.done = true;
        s_living->m_told(call);
        return code;
    }

    [[nodiscard]] const sqlite3_io_methods *wrapped(const sqlite3_io_methods *real);

    static Vfs *s_living;

    std::function<void(const DiskCall &)> m_told;
    sqlite3_vfs *m_real;
    sqlite3_vfs m_vfs{};
    std::mutex m_mutex;
    std::list<Methods> m_methods; // pointers into it stay
};

DiskCalls::Vfs *DiskCalls::Vfs::s_living = nullptr;

// All but opening and removing stays the real VFS's own.
DiskCalls::Vfs::Vfs(std::function<void(const DiskCall &)> told) : m_told(std::move(told)), m_real(sqlite3_vfs_find(nullptr))
{
    if (!m_real || s_living)
        throw std::runtime_error("SQLite has no default VFS, or it is watched already");
    s_living = this;
    m_vfs = *m_real;
    m_vfs.pNext = nullptr;
    m_vfs.zName = "raphe-disk-calls";
    m_vfs.xOpen = open;
    m_vfs.xDelete = remove;
    if (sqlite3_vfs_register(&m_vfs, 1) != SQLITE_OK)
        throw std::runtime_error("SQLite refuses the VFS");
}

DiskCalls::Vfs::~Vfs()
{
    sqlite3_vfs_unregister(&m_vfs);
    sqlite3_vfs_register(m_real, 1);
    s_living = nullptr;
}

const sqlite3_io_methods *DiskCalls::Vfs::wrapped(const sqlite3_io_methods *real)
{
    const std::lock_guard lock(m_mutex);
    for (const Methods &known : m_methods)
        if (known.real == real)
            return &known.handle;
    Methods methods{*real, real};
    methods.handle.iVersion = 2; // with the shared memory that a write-ahead log needs, without memory mapping
    methods.handle.xWrite = write;
    methods.handle.xTruncate = truncate;
    methods.handle.xSync = sync;
    m_methods.push_back(methods);
    return &m_methods.back().handle;
}

int DiskCalls::Vfs::open(sqlite3_vfs *, const char *path, sqlite3_file *file, int flags, int *outFlags) noexcept
{
    sqlite3_vfs *real = s_living->m_real;
    const bool temporary = (flags & SQLITE_OPEN_DELETEONCLOSE) != 0;
    const int code = telling({DiskCall::Kind::Open, false, path && !temporary ? path : "", {}},
        [&] { return real->xOpen(real, path, file, flags, outFlags); });
    if (file->pMethods)
        file->pMethods = s_living->wrapped(file->pMethods);
    return code;
}

int DiskCalls::Vfs::remove(sqlite3_vfs *, const char *path, int syncFolder) noexcept
{
    sqlite3_vfs *real = s_living->m_real;
    return telling({DiskCall::Kind::Remove, false, path, {}}, [&] { return real->xDelete(real, path, syncFolder); });
}

int DiskCalls::Vfs::write(sqlite3_file *file, const void *data, int size, sqlite3_int64 offset) noexcept
{
    const std::string_view bytes(static_cast<const char *>(data), static_cast<std::size_t>(size));
    return telling({DiskCall::Kind::Write, false, {}, bytes}, [&] { return realOf(file).xWrite(file, data, size, offset); });
}

int DiskCalls::Vfs::truncate(sqlite3_file *file, sqlite3_int64 size) noexcept
{
    return telling({DiskCall::Kind::Truncate, false, {}, {}}, [&] { return realOf(file).xTruncate(file, size); });
}

int DiskCalls::Vfs::sync(sqlite3_file *file, int flags) noexcept
{
    return telling({DiskCall::Kind::Sync, false, {}, {}}, [&] { return realOf(file).xSync(file, flags); });
}

DiskCalls::DiskCalls(std::function<void(const DiskCall &)> told) : m_vfs(std::make_unique<Vfs>(std::move(told))) { }

DiskCalls::~DiskCalls() = default;

} // namespace raphe::test
