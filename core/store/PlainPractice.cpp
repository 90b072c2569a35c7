#include "core/store/PlainPractice.h"

#include "core/base/JsonReader.h"

#include <filesystem>

namespace raphe {

namespace {

constexpr std::int64_t plainVersion = 1;

struct PlainVisit {
    std::int64_t patient = 0; // number in the plain file
    std::string document;
};

// In an order of its own, so that numbers come out the same way in both files.
struct Plain {
    std::vector<std::pair<std::int64_t, PatientRecord>> patients;
    std::vector<PlainVisit> visits;
};

Plain readPlain(const std::string &file)
{
    const Database db(file);
    Plain out;
    Rows patients = db.run("SELECT id, name, born FROM patient ORDER BY id");
    while (patients.next()) {
        PatientRecord record;
        record.name = patients.text(1);
        record.born = patients.text(2);
        out.patients.emplace_back(patients.number(0), std::move(record));
    }
    Rows visits = db.run("SELECT patient, document FROM visit ORDER BY held_on, id");
    while (visits.next())
        out.visits.push_back({visits.number(0), visits.text(1)});
    return out;
}

void expectSame(const Practice &practice, const Plain &plain, const std::map<std::int64_t, std::int64_t> &ids)
{
    std::map<std::int64_t, std::vector<std::string>> documents; // by the new patient, oldest first
    for (const PlainVisit &visit : plain.visits)
        documents[ids.at(visit.patient)].push_back(visit.document);
    for (const auto &[old, record] : plain.patients) {
        const std::int64_t id = ids.at(old);
        std::vector<std::string> stored;
        for (const StoredVisit &visit : valueOrThrow(practice.visits(id)))
            stored.insert(stored.begin(), visit.document);
        if (valueOrThrow(practice.patient(id)) != record || stored != documents[id])
            throw Error{ErrorCode::Tampered, practice.file(), "the sealed file does not hold the same as the plain one"};
    }
}

} // namespace

Result<bool> isPlainPractice(const std::string &file)
{
    return guarded([&]() -> bool {
        if (!std::filesystem::exists(file))
            throw Error{ErrorCode::CannotRead, file, "no such file"};
        const Database db(file);
        if (const auto id = db.number("PRAGMA application_id"); id != practiceApplicationId)
            throw Error{ErrorCode::NotAPractice, file, "application id " + std::to_string(id)};
        return db.number("PRAGMA user_version") == plainVersion;
    });
}

Result<MadePractice> sealPlainPractice(const std::string &file, const PracticeSettings &settings, const NewAccount &first)
{
    return guarded([&]() -> MadePractice {
        if (!valueOrThrow(isPlainPractice(file)))
            throw Error{ErrorCode::NotAllowed, file, "it is not a plain practice file"};
        const std::string sealedFile = file + ".sealing";
        const auto removeSealed = [&] {
            for (const char *end : {"", "-wal", "-shm"})
                std::filesystem::remove(sealedFile + end);
        };
        removeSealed(); // of an attempt that was cut off
        RecoveryKey recovery = RecoveryKey::random(); // replaced below
        std::shared_ptr<const Keyring> keys;
        try {
            const Plain plain = readPlain(file);
            MadePractice made = valueOrThrow(Practice::make(sealedFile, settings, first));
            recovery = made.recovery;
            keys = made.practice->keys();
            std::map<std::int64_t, std::int64_t> ids;
            for (const auto &[old, record] : plain.patients)
                ids[old] = valueOrThrow(made.practice->addPatient(record));
            for (const PlainVisit &visit : plain.visits)
                static_cast<void>(valueOrThrow(made.practice->addVisit(ids.at(visit.patient), visit.document)));
            expectSame(*made.practice, plain, ids);
            static_cast<void>(valueOrThrow(made.practice->verify()));
        } catch (const Error &) {
            removeSealed();
            throw;
        }
        // Closing has brought the log into the file. The rename is the moment: before it the plain file is there, after it the
        // sealed.
        std::filesystem::remove(file + "-wal");
        std::filesystem::remove(file + "-shm");
        std::filesystem::rename(sealedFile, file);
        return {valueOrThrow(Practice::open(file, keys)), recovery};
    });
}

} // namespace raphe
