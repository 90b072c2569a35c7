// The saver's thread: it waits for a change, lets the window pass, then writes the newest document of each visit. The
// window starts with the first change and is not drawn out by later ones, so that steady work is saved as well.
// What could not be written stays and is tried again, unless a newer document has come or the visit does not exist.
// Everything in Worker below the mutex is guarded by it; the practice is touched by the thread only.
#include "core/store/VisitSaver.h"

#include <algorithm>
#include <condition_variable>
#include <map>
#include <mutex>
#include <thread>
#include <utility>

namespace raphe {

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds retryAfter{1000}; // from a failed write to the next attempt; common practice, no source

} // namespace

struct VisitSaver::Worker {
    using Documents = std::map<std::int64_t, std::string>;

    Worker(PracticeOpener opener, std::function<void(const Result<Done> &)> callback)
        : open(std::move(opener)), onResult(std::move(callback)), thread([this] { run(); })
    {
    }

    ~Worker()
    {
        {
            const std::lock_guard lock(mutex);
            stopping = true;
        }
        changed.notify_all();
        thread.join();
    }

    Worker(const Worker &) = delete;
    Worker &operator=(const Worker &) = delete;

    void save(std::int64_t visit, std::string document)
    {
        {
            const std::lock_guard lock(mutex);
            const auto latest = Clock::now() + coalesce;
            due = pending.empty() ? latest : std::min(due, latest);
            pending.insert_or_assign(visit, std::move(document));
        }
        changed.notify_all();
    }

    bool flush()
    {
        std::unique_lock lock(mutex);
        const std::uint64_t mine = ++flushesAsked;
        changed.notify_all();
        written.wait(lock, [&] { return flushesDone >= mine; });
        return pending.empty();
    }

    void run()
    {
        Result<std::unique_ptr<Practice>> practice = open();
        std::unique_lock lock(mutex);
        while (true) {
            changed.wait(lock, [this] { return urgent() || !pending.empty(); });
            while (!urgent() && Clock::now() < due)
                changed.wait_until(lock, Clock::time_point(due)); // a copy: `due` may be moved forward meanwhile
            const Documents batch = std::exchange(pending, {});
            const std::uint64_t flushes = flushesAsked;
            const bool last = stopping;

            lock.unlock();
            const Documents failed = write(practice, batch);
            lock.lock();

            if (!failed.empty()) {
                due = pending.empty() ? Clock::now() + retryAfter : due;
                for (const auto &[visit, document] : failed)
                    pending.try_emplace(visit, document);
            }
            flushesDone = flushes;
            written.notify_all();
            if (last)
                return;
        }
    }

    bool urgent() const { return stopping || flushesAsked > flushesDone; }

    // Returns what should be tried again.
    Documents write(Result<std::unique_ptr<Practice>> &practice, const Documents &batch) const
    {
        Documents failed;
        for (const auto &[visit, document] : batch) {
            if (!practice)
                practice = open();
            const Result<Done> result = practice ? practice.value()->saveVisit(visit, document) : Result<Done>(practice.error());
            if (!result && result.error().code != ErrorCode::UnknownId)
                failed.emplace(visit, document);
            if (onResult)
                onResult(result);
        }
        return failed;
    }

    const PracticeOpener open;
    const std::function<void(const Result<Done> &)> onResult;

    std::mutex mutex;
    std::condition_variable changed; // something to write, to flush or to stop for
    std::condition_variable written; // a batch is through
    Documents pending;
    Clock::time_point due; // when `pending` must be written
    std::uint64_t flushesAsked = 0;
    std::uint64_t flushesDone = 0;
    bool stopping = false;

    std::thread thread; // last: it starts when everything above is there
};

VisitSaver::VisitSaver(PracticeOpener open, std::function<void(const Result<Done> &)> onResult)
    : m_worker(std::make_unique<Worker>(std::move(open), std::move(onResult)))
{
}

VisitSaver::~VisitSaver() = default;

void VisitSaver::save(std::int64_t visit, std::string document)
{
    m_worker->save(visit, std::move(document));
}

bool VisitSaver::flush()
{
    return m_worker->flush();
}

} // namespace raphe
