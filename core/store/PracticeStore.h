// Where visits are kept: the interface behind which the practice file stands. Implementations say how they are safe.
// One object belongs to one thread.
#pragma once

#include "core/base/Result.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace raphe {

struct PatientRow {
    std::int64_t id = 0;
    std::string name;
    std::string born; // ISO 8601 date or empty
};

struct VisitRow {
    std::int64_t id = 0;
    std::int64_t patient = 0;
    std::string date; // ISO 8601 date
    std::string document; // visit JSON
};

class PracticeStore {
public:
    virtual ~PracticeStore() = default;

    [[nodiscard]] virtual Result<std::vector<PatientRow>> patients() = 0;
    [[nodiscard]] virtual Result<std::int64_t> addPatient(const std::string &name, const std::string &born) = 0;
    /// Newest first.
    [[nodiscard]] virtual Result<std::vector<VisitRow>> visits(std::int64_t patient) = 0;
    [[nodiscard]] virtual Result<VisitRow> visit(std::int64_t id) = 0;
    [[nodiscard]] virtual Result<std::int64_t> addVisit(
        std::int64_t patient, const std::string &date, const std::string &document) = 0;
    /// Durable when it returns: survives a kill and a power cut.
    [[nodiscard]] virtual Result<Done> saveVisit(std::int64_t id, const std::string &document) = 0;
};

/// Opens a practice once more, for another thread; may be called from any thread.
using StoreOpener = std::function<Result<std::unique_ptr<PracticeStore>>()>;
/// Of a plain practice file that must exist: openPractice would make a new one in the place of one that was moved, or lies on a
/// drive that was pulled out.
[[nodiscard]] StoreOpener existingPractice(const std::string &file);

/// Opens or creates a practice file. The file is an SQLite database with our application id.
[[nodiscard]] Result<std::unique_ptr<PracticeStore>> openPractice(const std::string &file);

} // namespace raphe
