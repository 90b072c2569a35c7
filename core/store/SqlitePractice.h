// The practice file as an SQLite database with our application id. It must survive a kill and a power cut: write-ahead
// log, a sync at every commit, one transaction a change. Owns one named Qt Sql connection, which belongs to the thread
// that opened it; several objects, also in several programs, may have the same file open.
// A file that is not ours, newer than us or damaged is refused and left as it is.
#pragma once

#include "core/store/Database.h"
#include "core/store/PracticeStore.h"

#include <string>

namespace raphe {

class SqlitePractice : public PracticeStore {
public:
    static constexpr int applicationId = 0x52617068; // "Raph" in ASCII
    static constexpr int schemaVersion = 1; // SQLite's user_version

    /// Opens the file, or creates it where there is none (or an empty one). The folder must exist.
    [[nodiscard]] static Result<std::unique_ptr<PracticeStore>> open(const std::string &file);

    [[nodiscard]] Result<std::vector<PatientRow>> patients() override;
    [[nodiscard]] Result<std::int64_t> addPatient(const std::string &name, const std::string &born) override;
    [[nodiscard]] Result<std::vector<VisitRow>> visits(std::int64_t patient) override;
    [[nodiscard]] Result<VisitRow> visit(std::int64_t id) override;
    [[nodiscard]] Result<std::int64_t> addVisit(
        std::int64_t patient, const std::string &date, const std::string &document) override;
    [[nodiscard]] Result<Done> saveVisit(std::int64_t id, const std::string &document) override;

private:
    explicit SqlitePractice(const std::string &file);

    void prepareFile();
    void createSchema();

    Database m_db;
};

} // namespace raphe
