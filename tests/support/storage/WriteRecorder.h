// Records what SQLite does to the files of a folder, and from the record makes what a power cut could have left there.
//
// The model:
// - A sync of a file makes everything done to that file before it durable, and that the file is there at all. It does
//   nothing for other files.
// - A sync of a folder makes every file made or removed in it before durable as such, though not what is in the files.
//   SQLite's unix VFS does one with a deletion when it is asked to, and at the first sync of a journal or a log that it
//   has opened to be made (seen in the system calls of SQLite 3.40.1).
// - Everything else may be lost at the cut, in whole or in part (see Cut), whatever order it was done in. What is lost
//   of a file's end leaves zeros where something after it was kept.
// - A write changes no byte outside its range, also when it is cut off. SQLite's usual build relies on this; it calls it
//   'powersafe overwrite'.
// - What was in a file when SQLite first opened it was durable. Files that SQLite did not open, and changes that others
//   make to the files, are not in the record.
// - The shared memory of a write-ahead log (-shm) does not survive a cut, so it is not recorded: SQLite does not open it
//   like the other files, and the shim never sees it.
// Source of the model: SQLite's pages 'Atomic Commit In SQLite' and 'How SQLite Is Tested' describe such cuts; from memory.
//
// Not modelled: disks that lose what they were told to sync, bits that change by themselves, operations that fail half-way
// by themselves (a short write that FaultPlan asks for is recorded as it is).
// The shim makes one call at a time; syncs() may be asked by any thread, materialise() while nothing is being written.
#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <map>
#include <random>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace raphe::test {

/// What is left of the operations that were not yet durable at the cut.
enum class Cut {
    None, // nothing
    All, // everything
    Subset, // some of them, in their order; a write as a whole or not at all
    Torn // some of them, in any order; of a write some of its sectors of 512 bytes
};

class WriteRecorder {
public:
    using FileId = std::size_t; // a file removed and made again under its name has a new one

    /// `folder` is the one whose files are recorded; they are known by their path relative to it.
    explicit WriteRecorder(std::filesystem::path folder);

    /// Syncs so far, of a file or of the folder. Asked after a commit it tells which cuts must keep that commit:
    /// all from materialise(.., syncs(), ..) on.
    [[nodiscard]] std::size_t syncs() const { return m_syncs; }

    /// Fills `folder` with what is left when the power is cut just before the sync that follows the first `afterSync`
    /// ones (after the last one: when all recorded operations have been done). The folder is made, or must be empty.
    /// The same seed gives the same files; Cut::None and Cut::All do not depend on it.
    /// Throws std::runtime_error or std::filesystem::filesystem_error when it cannot.
    void materialise(const std::filesystem::path &folder, std::size_t afterSync, std::uint64_t seed, Cut how) const;

    // For the shim. The first is called before a file is opened or removed, the others after the operation succeeded.
    void notice(const std::string &name);
    [[nodiscard]] FileId open(const std::string &name);
    [[nodiscard]] const std::string &nameOf(FileId file) const { return m_files[file].name; }
    void write(FileId file, std::size_t offset, std::string_view bytes);
    void truncate(FileId file, std::size_t size);
    void sync(FileId file);
    void remove(const std::string &name);
    void syncFolder(const std::string &name); // the one that holds the file of this name

private:
    enum class Kind { Create, Write, Truncate, Sync, Remove, SyncFolder };

    struct Event {
        Kind kind{};
        std::string name{}; // Create, Remove; SyncFolder: the folder
        FileId file = 0; // Create, Write, Truncate, Sync
        std::size_t position = 0; // Write: its offset; Truncate: the new size
        std::string bytes{}; // Write
    };

    struct File {
        std::string name;
        std::string content; // when it was first opened
    };

    FileId addFile(const std::string &name, std::string content);
    [[nodiscard]] std::size_t endOf(std::size_t afterSync) const;
    [[nodiscard]] std::map<std::string, FileId> namesAt(std::size_t end, Cut how, std::mt19937_64 &random) const;
    [[nodiscard]] std::string contentAt(FileId file, std::size_t end, Cut how, std::mt19937_64 &random) const;

    std::filesystem::path m_folder;
    std::vector<File> m_files; // FileId is the index
    std::vector<Event> m_events; // in the order of the disk
    std::set<std::string> m_noticed;
    std::map<std::string, FileId> m_atFirst; // the files that were there
    std::map<std::string, FileId> m_now;
    std::atomic<std::size_t> m_syncs{0};
};

} // namespace raphe::test
