#include "tests/support/storage/StorageShim.h"

#include <sqlite3.h>

#include <cstdlib>
#include <iostream>
#include <mutex>
#include <new>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

namespace raphe::test {

namespace {

int codeOf(Operation operation, Failure failure)
{
    if (failure == Failure::DiskFull)
        return SQLITE_FULL;
    switch (operation) {
    case Operation::Open: return SQLITE_CANTOPEN;
    case Operation::Write: return SQLITE_IOERR_WRITE;
    case Operation::Sync: return SQLITE_IOERR_FSYNC;
    case Operation::Truncate: return SQLITE_IOERR_TRUNCATE;
    case Operation::Remove: return SQLITE_IOERR_DELETE;
    }
    return SQLITE_IOERR;
}

} // namespace

// The functions that SQLite calls are static; they find their object in the VFS or the file that they are given.
class StorageShim::Vfs {
public:
    explicit Vfs(const std::filesystem::path &folder);
    ~Vfs();
    Vfs(const Vfs &) = delete;
    Vfs &operator=(const Vfs &) = delete;

    FaultPlan faults;
    WriteRecorder record;

private:
    // What SQLite takes for its file. The real one lies behind it in the memory that SQLite gives.
    struct File {
        sqlite3_file handle; // first, for a pointer to it is one to the whole
        Vfs *vfs;
        sqlite3_file *real;
        WriteRecorder::FileId id;
        bool folderSyncDue; // the real VFS would sync the folder with the first sync of this file
    };

    static Vfs &vfsOf(sqlite3_vfs *vfs) { return *static_cast<Vfs *>(vfs->pAppData); }
    static File &fileOf(sqlite3_file *file) { return *reinterpret_cast<File *>(file); }
    static sqlite3_file *realOf(sqlite3_file *file) { return fileOf(file).real; }

    static int open(sqlite3_vfs *vfs, const char *path, sqlite3_file *file, int flags, int *outFlags) noexcept;
    static int remove(sqlite3_vfs *vfs, const char *path, int syncFolder) noexcept;
    static int close(sqlite3_file *file) noexcept;
    static int write(sqlite3_file *file, const void *data, int size, sqlite3_int64 offset) noexcept;
    static int truncate(sqlite3_file *file, sqlite3_int64 size) noexcept;
    static int sync(sqlite3_file *file, int flags) noexcept;
    static int control(sqlite3_file *file, int operation, void *argument) noexcept;
    static int characteristics(sqlite3_file *file) noexcept;

    static sqlite3_io_methods makeMethods();
    void forwardTheRest();
    [[nodiscard]] std::optional<std::string> watchedName(const char *path) const;

    sqlite3_vfs *m_real;
    sqlite3_vfs m_vfs{};
    const sqlite3_io_methods m_methods = makeMethods();
    std::filesystem::path m_folder;
    std::mutex m_mutex; // one change at a time, so that the record has the order of the disk
    int m_openFiles = 0;
};

StorageShim::Vfs::Vfs(const std::filesystem::path &folder)
    : record(std::filesystem::canonical(folder)), m_real(sqlite3_vfs_find(nullptr)), m_folder(std::filesystem::canonical(folder))
{
    if (!m_real)
        throw std::runtime_error("SQLite has no default VFS");
    m_vfs.iVersion = 2;
    m_vfs.szOsFile = static_cast<int>(sizeof(File)) + m_real->szOsFile;
    m_vfs.mxPathname = m_real->mxPathname;
    m_vfs.zName = "raphe-storage-shim";
    m_vfs.pAppData = this;
    m_vfs.xOpen = open;
    m_vfs.xDelete = remove;
    forwardTheRest();
    if (sqlite3_vfs_register(&m_vfs, 1) != SQLITE_OK)
        throw std::runtime_error("SQLite refuses the shim");
}

StorageShim::Vfs::~Vfs()
{
    if (m_openFiles != 0) {
        std::cerr << "StorageShim: files still open: " << m_openFiles << "\n";
        std::abort();
    }
    sqlite3_vfs_unregister(&m_vfs);
    sqlite3_vfs_register(m_real, 1);
}

// Everything that changes no file goes to the real VFS, which is handed itself.
void StorageShim::Vfs::forwardTheRest()
{
    m_vfs.xAccess = [](sqlite3_vfs *vfs, const char *path, int flags, int *out) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xAccess(real, path, flags, out);
    };
    m_vfs.xFullPathname = [](sqlite3_vfs *vfs, const char *path, int size, char *out) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xFullPathname(real, path, size, out);
    };
    m_vfs.xRandomness = [](sqlite3_vfs *vfs, int size, char *out) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xRandomness(real, size, out);
    };
    m_vfs.xSleep = [](sqlite3_vfs *vfs, int microseconds) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xSleep(real, microseconds);
    };
    m_vfs.xCurrentTime = [](sqlite3_vfs *vfs, double *days) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xCurrentTime(real, days);
    };
    m_vfs.xCurrentTimeInt64 = [](sqlite3_vfs *vfs, sqlite3_int64 *milliseconds) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xCurrentTimeInt64(real, milliseconds);
    };
    m_vfs.xGetLastError = [](sqlite3_vfs *vfs, int size, char *out) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xGetLastError(real, size, out);
    };
    m_vfs.xDlOpen = [](sqlite3_vfs *vfs, const char *path) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xDlOpen(real, path);
    };
    m_vfs.xDlError = [](sqlite3_vfs *vfs, int size, char *out) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        real->xDlError(real, size, out);
    };
    m_vfs.xDlSym = [](sqlite3_vfs *vfs, void *library, const char *symbol) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        return real->xDlSym(real, library, symbol);
    };
    m_vfs.xDlClose = [](sqlite3_vfs *vfs, void *library) {
        sqlite3_vfs *real = vfsOf(vfs).m_real;
        real->xDlClose(real, library);
    };
}

// Version 2: with the shared memory that a write-ahead log needs, without memory mapping.
sqlite3_io_methods StorageShim::Vfs::makeMethods()
{
    sqlite3_io_methods out{};
    out.iVersion = 2;
    out.xClose = close;
    out.xWrite = write;
    out.xTruncate = truncate;
    out.xSync = sync;
    out.xFileControl = control;
    out.xDeviceCharacteristics = characteristics;
    out.xRead = [](sqlite3_file *file, void *data, int size, sqlite3_int64 offset) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xRead(real, data, size, offset);
    };
    out.xFileSize = [](sqlite3_file *file, sqlite3_int64 *size) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xFileSize(real, size);
    };
    out.xLock = [](sqlite3_file *file, int level) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xLock(real, level);
    };
    out.xUnlock = [](sqlite3_file *file, int level) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xUnlock(real, level);
    };
    out.xCheckReservedLock = [](sqlite3_file *file, int *reserved) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xCheckReservedLock(real, reserved);
    };
    out.xSectorSize = [](sqlite3_file *file) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xSectorSize(real);
    };
    out.xShmMap = [](sqlite3_file *file, int region, int size, int extend, void volatile **memory) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xShmMap(real, region, size, extend, memory);
    };
    out.xShmLock = [](sqlite3_file *file, int offset, int count, int flags) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xShmLock(real, offset, count, flags);
    };
    out.xShmBarrier = [](sqlite3_file *file) {
        sqlite3_file *real = realOf(file);
        real->pMethods->xShmBarrier(real);
    };
    out.xShmUnmap = [](sqlite3_file *file, int alsoDelete) {
        sqlite3_file *real = realOf(file);
        return real->pMethods->xShmUnmap(real, alsoDelete);
    };
    return out;
}

// The path relative to the watched folder, or nothing for a file elsewhere or without a name.
std::optional<std::string> StorageShim::Vfs::watchedName(const char *path) const
{
    if (!path)
        return std::nullopt;
    const auto relative = std::filesystem::path(path).lexically_relative(m_folder);
    if (relative.empty() || *relative.begin() == "..")
        return std::nullopt;
    return relative.string();
}

int StorageShim::Vfs::open(sqlite3_vfs *vfs, const char *path, sqlite3_file *file, int flags, int *outFlags) noexcept
{
    Vfs &self = vfsOf(vfs);
    const auto name = self.watchedName(path);
    if (!name)
        return self.m_real->xOpen(self.m_real, path, file, flags, outFlags);

    const std::lock_guard lock(self.m_mutex);
    file->pMethods = nullptr; // tells SQLite that there is nothing to close
    if (const auto failure = self.faults.next(Operation::Open))
        return codeOf(Operation::Open, *failure);
    self.record.notice(*name);
    auto *real = reinterpret_cast<sqlite3_file *>(reinterpret_cast<char *>(file) + sizeof(File));
    real->pMethods = nullptr;
    File *shimFile = new (file) File{{nullptr}, &self, real, 0, false};
    const int code = self.m_real->xOpen(self.m_real, path, real, flags, outFlags);
    if (real->pMethods) { // by the rules of SQLite it is to be closed then, even after an error
        shimFile->handle.pMethods = &self.m_methods;
        ++self.m_openFiles;
    }
    if (code == SQLITE_OK) {
        constexpr int journals = SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL | SQLITE_OPEN_WAL;
        shimFile->folderSyncDue = (flags & SQLITE_OPEN_CREATE) != 0 && (flags & journals) != 0;
        shimFile->id = self.record.open(*name);
    }
    return code;
}

int StorageShim::Vfs::remove(sqlite3_vfs *vfs, const char *path, int syncFolder) noexcept
{
    Vfs &self = vfsOf(vfs);
    const auto name = self.watchedName(path);
    if (!name)
        return self.m_real->xDelete(self.m_real, path, syncFolder);

    const std::lock_guard lock(self.m_mutex);
    if (const auto failure = self.faults.next(Operation::Remove))
        return codeOf(Operation::Remove, *failure);
    self.record.notice(*name);
    const int code = self.m_real->xDelete(self.m_real, path, 0);
    if (code != SQLITE_OK)
        return code;
    self.record.remove(*name);
    if (syncFolder != 0)
        self.record.syncFolder(*name);
    return SQLITE_OK;
}

int StorageShim::Vfs::close(sqlite3_file *file) noexcept
{
    Vfs &self = *fileOf(file).vfs;
    const std::lock_guard lock(self.m_mutex);
    --self.m_openFiles;
    return realOf(file)->pMethods->xClose(realOf(file));
}

int StorageShim::Vfs::write(sqlite3_file *file, const void *data, int size, sqlite3_int64 offset) noexcept
{
    Vfs &self = *fileOf(file).vfs;
    const std::lock_guard lock(self.m_mutex);
    const auto failure = self.faults.next(Operation::Write);
    if (failure && *failure != Failure::ShortWrite)
        return codeOf(Operation::Write, *failure);
    const int written = failure ? size / 2 : size;
    const int code = realOf(file)->pMethods->xWrite(realOf(file), data, written, offset);
    if (code != SQLITE_OK)
        return code;
    self.record.write(fileOf(file).id, static_cast<std::size_t>(offset),
        std::string_view(static_cast<const char *>(data), static_cast<std::size_t>(written)));
    return failure ? codeOf(Operation::Write, *failure) : SQLITE_OK;
}

int StorageShim::Vfs::truncate(sqlite3_file *file, sqlite3_int64 size) noexcept
{
    Vfs &self = *fileOf(file).vfs;
    const std::lock_guard lock(self.m_mutex);
    if (const auto failure = self.faults.next(Operation::Truncate))
        return codeOf(Operation::Truncate, *failure);
    const int code = realOf(file)->pMethods->xTruncate(realOf(file), size);
    if (code == SQLITE_OK)
        self.record.truncate(fileOf(file).id, static_cast<std::size_t>(size));
    return code;
}

int StorageShim::Vfs::sync(sqlite3_file *file, int) noexcept
{
    Vfs &self = *fileOf(file).vfs;
    const std::lock_guard lock(self.m_mutex);
    if (const auto failure = self.faults.next(Operation::Sync))
        return codeOf(Operation::Sync, *failure);
    self.record.sync(fileOf(file).id);
    if (std::exchange(fileOf(file).folderSyncDue, false))
        self.record.syncFolder(self.record.nameOf(fileOf(file).id));
    return SQLITE_OK;
}

int StorageShim::Vfs::control(sqlite3_file *file, int operation, void *argument) noexcept
{
    if (operation == SQLITE_FCNTL_SIZE_HINT || operation == SQLITE_FCNTL_CHUNK_SIZE)
        return SQLITE_NOTFOUND; // they would let the real file grow past the shim
    return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}

int StorageShim::Vfs::characteristics(sqlite3_file *file) noexcept
{
    // The only promise of a disk that the cuts of WriteRecorder keep.
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file)) & SQLITE_IOCAP_POWERSAFE_OVERWRITE;
}

StorageShim::StorageShim(const std::filesystem::path &folder) : m_vfs(std::make_unique<Vfs>(folder)) { }

StorageShim::~StorageShim() = default;

FaultPlan &StorageShim::faults()
{
    return m_vfs->faults;
}

const WriteRecorder &StorageShim::record() const
{
    return m_vfs->record;
}

} // namespace raphe::test
