#include "tests/support/storage/WriteRecorder.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <optional>
#include <stdexcept>
#include <utility>

namespace raphe::test {

namespace {

constexpr std::size_t sector = 512; // bytes

struct Change {
    std::size_t position = 0;
    std::optional<std::string_view> bytes; // none: the file is truncated at the position
};

void apply(const Change &change, std::string &content)
{
    if (!change.bytes) {
        content.resize(change.position);
        return;
    }
    content.resize(std::max(content.size(), change.position + change.bytes->size()));
    std::copy(change.bytes->begin(), change.bytes->end(), content.begin() + static_cast<std::ptrdiff_t>(change.position));
}

// The change as one for each sector of the file that it touches.
std::vector<Change> inSectors(const Change &change)
{
    if (!change.bytes)
        return {change};
    std::vector<Change> pieces;
    for (std::size_t done = 0; done < change.bytes->size();) {
        const std::size_t position = change.position + done;
        const auto bytes = change.bytes->substr(done, sector - position % sector);
        pieces.push_back({position, bytes});
        done += bytes.size();
    }
    return pieces;
}

// Some of the changes: now most, now few, so that also a single lost or a single kept one comes up.
std::vector<Change> some(const std::vector<Change> &changes, std::mt19937_64 &random)
{
    std::bernoulli_distribution kept(std::uniform_real_distribution<>(0, 1)(random));
    std::vector<Change> out;
    std::copy_if(changes.begin(), changes.end(), std::back_inserter(out), [&](const Change &) { return kept(random); });
    return out;
}

std::vector<Change> survivors(const std::vector<Change> &changes, Cut how, std::mt19937_64 &random)
{
    switch (how) {
    case Cut::None: return {};
    case Cut::All: return changes;
    case Cut::Subset: return some(changes, random);
    case Cut::Torn: break;
    }
    std::vector<Change> sectors;
    for (const Change &change : changes) {
        const auto pieces = inSectors(change);
        sectors.insert(sectors.end(), pieces.begin(), pieces.end());
    }
    auto kept = some(sectors, random);
    std::shuffle(kept.begin(), kept.end(), random);
    return kept;
}

std::string folderOf(const std::string &name)
{
    return std::filesystem::path(name).parent_path().string();
}

std::string readFile(const std::filesystem::path &path)
{
    std::ifstream in(path, std::ios::binary);
    std::string content{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    if (!in)
        throw std::runtime_error("cannot read " + path.string());
    return content;
}

void writeFile(const std::filesystem::path &path, const std::string &content)
{
    std::filesystem::create_directories(path.parent_path());
    std::ofstream out(path, std::ios::binary);
    out << content;
    out.close();
    if (!out)
        throw std::runtime_error("cannot write " + path.string());
}

} // namespace

WriteRecorder::WriteRecorder(std::filesystem::path folder) : m_folder(std::move(folder)) { }

// Reads the file by itself. That would drop the POSIX locks of another connection to it in this process, but there is
// none: the file has not been opened yet.
void WriteRecorder::notice(const std::string &name)
{
    if (!m_noticed.insert(name).second || !std::filesystem::exists(m_folder / name))
        return;
    m_atFirst[name] = addFile(name, readFile(m_folder / name));
}

WriteRecorder::FileId WriteRecorder::open(const std::string &name)
{
    if (const auto found = m_now.find(name); found != m_now.end())
        return found->second;
    const FileId file = addFile(name, {});
    m_events.push_back({.kind = Kind::Create, .name = name, .file = file});
    return file;
}

void WriteRecorder::write(FileId file, std::size_t offset, std::string_view bytes)
{
    m_events.push_back({.kind = Kind::Write, .file = file, .position = offset, .bytes = std::string(bytes)});
}

void WriteRecorder::truncate(FileId file, std::size_t size)
{
    m_events.push_back({.kind = Kind::Truncate, .file = file, .position = size});
}

void WriteRecorder::sync(FileId file)
{
    m_events.push_back({.kind = Kind::Sync, .file = file});
    ++m_syncs;
}

void WriteRecorder::remove(const std::string &name)
{
    m_events.push_back({.kind = Kind::Remove, .name = name});
    m_now.erase(name);
}

void WriteRecorder::syncFolder(const std::string &name)
{
    m_events.push_back({.kind = Kind::SyncFolder, .name = folderOf(name)});
    ++m_syncs;
}

WriteRecorder::FileId WriteRecorder::addFile(const std::string &name, std::string content)
{
    m_files.push_back({name, std::move(content)});
    return m_now[name] = m_files.size() - 1;
}

void WriteRecorder::materialise(const std::filesystem::path &folder, std::size_t afterSync, std::uint64_t seed, Cut how) const
{
    std::filesystem::create_directories(folder);
    if (!std::filesystem::is_empty(folder))
        throw std::runtime_error(folder.string() + " is not empty");
    std::mt19937_64 random(seed);
    const std::size_t end = endOf(afterSync);
    for (const auto &[name, file] : namesAt(end, how, random))
        writeFile(folder / name, contentAt(file, end, how, random));
}

// The index of the sync that follows the first `afterSync` ones.
std::size_t WriteRecorder::endOf(std::size_t afterSync) const
{
    if (afterSync > m_syncs)
        throw std::runtime_error("there are only " + std::to_string(m_syncs) + " syncs");
    std::size_t seen = 0;
    const auto end = std::find_if(m_events.begin(), m_events.end(), [&](const Event &event) {
        const bool isSync = event.kind == Kind::Sync || event.kind == Kind::SyncFolder;
        return isSync && seen++ == afterSync;
    });
    return static_cast<std::size_t>(end - m_events.begin());
}

// A name stands for one file after another, or for none; a cut leaves the last durable state or one after it.
std::map<std::string, WriteRecorder::FileId> WriteRecorder::namesAt(std::size_t end, Cut how, std::mt19937_64 &random) const
{
    struct History {
        std::vector<std::optional<FileId>> states{std::nullopt};
        std::size_t durable = 0; // index
    };
    std::map<std::string, History> histories;
    for (const auto &[name, file] : m_atFirst)
        histories[name].states = {file};
    for (std::size_t i = 0; i < end; ++i) {
        const Event &event = m_events[i];
        if (event.kind == Kind::Create) {
            histories[event.name].states.push_back(event.file);
        } else if (event.kind == Kind::Remove) {
            histories[event.name].states.push_back(std::nullopt);
        } else if (event.kind == Kind::SyncFolder) {
            for (auto &[name, history] : histories)
                if (folderOf(name) == event.name)
                    history.durable = history.states.size() - 1;
        } else if (event.kind == Kind::Sync) {
            History &history = histories[m_files[event.file].name];
            const auto state = std::find(history.states.begin(), history.states.end(), event.file);
            history.durable = std::max(history.durable, static_cast<std::size_t>(state - history.states.begin()));
        }
    }

    std::map<std::string, FileId> names;
    for (const auto &[name, history] : histories) {
        const std::size_t last = history.states.size() - 1;
        std::size_t chosen = how == Cut::All ? last : history.durable;
        if (how == Cut::Subset || how == Cut::Torn)
            chosen = std::uniform_int_distribution<std::size_t>(history.durable, last)(random);
        if (const auto file = history.states[chosen])
            names[name] = *file;
    }
    return names;
}

std::string WriteRecorder::contentAt(FileId file, std::size_t end, Cut how, std::mt19937_64 &random) const
{
    std::string content = m_files[file].content;
    std::vector<Change> pending;
    for (std::size_t i = 0; i < end; ++i) {
        const Event &event = m_events[i];
        if (event.file != file)
            continue;
        if (event.kind == Kind::Write) {
            pending.push_back({event.position, event.bytes});
        } else if (event.kind == Kind::Truncate) {
            pending.push_back({event.position, std::nullopt});
        } else if (event.kind == Kind::Sync) {
            for (const Change &change : pending)
                apply(change, content);
            pending.clear();
        }
    }
    for (const Change &change : survivors(pending, how, random))
        apply(change, content);
    return content;
}

} // namespace raphe::test
