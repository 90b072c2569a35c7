// A sealed practice behind the interface that the window uses.
#pragma once

#include "core/store/Practice.h"
#include "core/store/PracticeStore.h"

namespace raphe {

class SealedStore : public PracticeStore {
public:
    explicit SealedStore(std::unique_ptr<Practice> practice) : m_practice(std::move(practice)) { }
    [[nodiscard]] Practice &practice() { return *m_practice; }

    [[nodiscard]] Result<std::vector<PatientRow>> patients() override;
    [[nodiscard]] Result<std::int64_t> addPatient(const std::string &name, const std::string &born) override;
    [[nodiscard]] Result<std::vector<VisitRow>> visits(std::int64_t patient) override;
    [[nodiscard]] Result<VisitRow> visit(std::int64_t id) override;
    /// The date stands in the document too, and only there.
    [[nodiscard]] Result<std::int64_t> addVisit(
        std::int64_t patient, const std::string &date, const std::string &document) override;
    [[nodiscard]] Result<Done> saveVisit(std::int64_t id, const std::string &document) override;

private:
    std::unique_ptr<Practice> m_practice;
};

/// Opens the practice once more with keys that are known.
[[nodiscard]] StoreOpener sealedPractice(const std::string &file, std::shared_ptr<const Keyring> keys);

} // namespace raphe
