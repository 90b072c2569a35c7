// Which operation on the disk fails in a test, and how. Counts the operations of each kind, so that a test can run once
// without a fault to learn how many there are, and then once for each of them. Any thread may use it.
#pragma once

#include <array>
#include <cstddef>
#include <mutex>
#include <optional>

namespace raphe::test {

enum class Operation { Open, Write, Sync, Truncate, Remove };

enum class Failure {
    IoError, // nothing is done; SQLite is told its I/O error for the operation, SQLITE_CANTOPEN for Open
    DiskFull, // nothing is done; SQLite is told SQLITE_FULL
    ShortWrite // the first half of the bytes is written, then as IoError; for the other operations the same as IoError
};

struct Fault {
    Operation operation{};
    std::size_t number = 1; // the first of its kind is 1
    Failure failure{};
    bool lasting = false; // all later operations of the kind fail too
};

class FaultPlan {
public:
    /// Counts from zero again, and lets `fault` come.
    void arm(const Fault &fault);
    /// Counts from zero again; nothing fails.
    void disarm();

    /// Operations of the kind since the last arm() or disarm(), failed ones included.
    [[nodiscard]] std::size_t count(Operation operation) const;
    /// Operations that failed by this plan since then.
    [[nodiscard]] std::size_t failures() const;

    /// For the shim: counts an operation that is about to be done, and says whether it fails.
    [[nodiscard]] std::optional<Failure> next(Operation operation);

private:
    static constexpr std::size_t kinds = 5;

    void restart(std::optional<Fault> fault);

    mutable std::mutex m_mutex;
    std::optional<Fault> m_fault;
    std::array<std::size_t, kinds> m_counts{};
    std::size_t m_failures = 0;
};

} // namespace raphe::test
