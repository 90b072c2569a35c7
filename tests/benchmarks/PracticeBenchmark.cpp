// The sealed practice file: unlocking to a usable list, one keystroke of the search, also in the window, opening a patient,
// saving a change, checking all, and a back-up; and the derivation of a key, which the others leave out (they use the least cost
// there is). Argument: how many patients, with 10 visits each of about 2 KB; 100,000 patients only with the environment variable
// RAPHE_BENCH_LARGE, as making that file takes long. The first visit of each patient is signed, the others are drafts. Reference
// in the same run, in turn with what is measured: the same rows unsealed in plain SQLite through the same Database. Counters:
// median and 99th percentile in ms; `plain_ms`, the reference's median; `ratio` of the two medians. The files lie in the system's
// temporary folder and are warm: what a sync costs there decides about opening and saving.
#include "app/raphe/patients/PatientsDialog.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/PatientRecordJson.h"
#include "core/record/PatientSearch.h"
#include "core/record/VisitJson.h"
#include "core/store/Backup.h"
#include "core/store/Practice.h"

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QListView>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <map>
#include <random>
#include <stdexcept>

namespace {

using namespace raphe;

constexpr std::int64_t visitsEach = 10;
constexpr std::string_view passphrase = "quiet harbour lamp";

template <class T> T got(Result<T> result)
{
    if (!result)
        throw std::runtime_error(result.error().place + ": " + result.error().detail);
    return std::move(result).value();
}

/// What the step gives is let go only after the end.
template <class Step> double secondsOf(Step step)
{
    const auto start = std::chrono::steady_clock::now();
    auto result = step();
    const auto end = std::chrono::steady_clock::now();
    benchmark::DoNotOptimize(result);
    return std::chrono::duration<double>(end - start).count();
}

double milliseconds(std::vector<double> seconds, std::size_t percent)
{
    std::sort(seconds.begin(), seconds.end());
    return seconds[seconds.size() * percent / 100] * 1e3;
}

/// Both in turn; what else the machine does meets both. `prepare` comes before each pair and is not measured.
template <class Prepare, class Sealed, class Plain>
void sideBySide(benchmark::State &state, Prepare prepare, Sealed sealed, Plain plain)
{
    std::vector<double> sealedSeconds;
    std::vector<double> plainSeconds;
    for (auto _ : state) {
        prepare();
        sealedSeconds.push_back(secondsOf(sealed));
        state.SetIterationTime(sealedSeconds.back());
        plainSeconds.push_back(secondsOf(plain));
    }
    state.counters["median_ms"] = milliseconds(sealedSeconds, 50);
    state.counters["p99_ms"] = milliseconds(sealedSeconds, 99);
    state.counters["plain_ms"] = milliseconds(plainSeconds, 50);
    state.counters["ratio"] = milliseconds(sealedSeconds, 50) / milliseconds(plainSeconds, 50);
}

std::string two(std::mt19937::result_type number)
{
    return (number < 10 ? "0" : "") + std::to_string(number);
}

/// Invented people.
PatientRecord person(std::mt19937 &random)
{
    constexpr std::string_view given[] = {
        "Ambrin", "Belisande", "Corvan", "Delphia", "Edrik", "Fennula", "Garrow", "Hestia", "Isolte", "Jorun"};
    constexpr std::string_view family[] = {
        "Ashwick", "Brandermoor", "Coldwater", "Dunmarrow", "Elverstone", "Farthingdale", "Greyling", "Hollowmere"};
    constexpr std::string_view ending[] = {"", "-Vane", "-Orr", "-Tamsin", "-Pell"};
    PatientRecord p;
    p.name = std::string(given[random() % std::size(given)]) + ' ' + std::string(family[random() % std::size(family)])
        + std::string(ending[random() % std::size(ending)]);
    p.born = std::to_string(1930 + random() % 80) + '-' + two(1 + random() % 12) + '-' + two(1 + random() % 28);
    p.phone = "000 " + std::to_string(100000 + random() % 900000);
    p.address = std::to_string(1 + random() % 200) + " Mill Lane, Nether Hollow";
    p.medicines = {"apixaban 5 mg"};
    p.conditions = {{"anticoagulant", "since spring"}};
    p.complaints = {
        {1, "low back, worse in the morning", "three weeks", false}, {2, "right knee on stairs", "last winter", true}};
    return p;
}

std::string visitDocument(std::mt19937 &random)
{
    constexpr std::string_view places[] = {"gluteal-region-middle", "tibialis-anterior", "l4-l5", "heel-region", "fibula"};
    Visit visit;
    visit.date = "2026-11-27";
    visit.practitioner = "Oriel Brook";
    visit.complaints.emplace_back();
    visit.complaints.back().text = "low back, worse in the morning";
    visit.complaintAt = {{{"gluteal-region-middle"}, Side::Right}};
    for (std::size_t i = 0; i < 12; ++i) {
        Finding f;
        f.place = {{std::string(places[random() % std::size(places)])}, random() % 2 == 0 ? Side::Left : Side::Right};
        f.tenderness = Tenderness{1 + static_cast<int>(random() % 3)};
        f.note = "eases when held";
        visit.findings.push_back(std::move(f));
    }
    return writeVisit(visit);
}

/// One practice in both forms. Patients count from 1; the visits of a patient lie apart in the file, as they come in life.
struct TwoFiles {
    QTemporaryDir folder;
    std::int64_t patients = 0;
    double makingSeconds = 0; // of the sealed file

    [[nodiscard]] std::string named(const char *name) const { return folder.path().toStdString() + '/' + name; }
    [[nodiscard]] std::string sealed() const { return named("sealed.raphe"); }
    [[nodiscard]] std::unique_ptr<Practice> unlocked() const { return got(Practice::unlock(sealed(), "oriel", passphrase)); }
    [[nodiscard]] std::unique_ptr<Database> plain() const
    {
        auto db = std::make_unique<Database>(named("plain.sqlite"));
        db->makeDurable();
        return db;
    }
};

/// A copy that is left unsynced would slow down every later sync.
void syncFile(const std::string &file)
{
    const int descriptor = open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0 || fsync(descriptor) != 0 || close(descriptor) != 0)
        throw std::runtime_error("cannot sync " + file);
}

// In memory where the system has room for files there, as each visit is synced; then copied, closed, to where it is measured.
void makeSealed(TwoFiles &files, const std::vector<PatientRecord> &records, const std::vector<std::string> &documents)
{
    constexpr const char *memory = "/dev/shm"; // on Linux
    constexpr std::int64_t room = 100'000; // bytes for each patient: about four times what the file takes
    const bool fits = std::filesystem::is_directory(memory)
        && std::filesystem::space(memory).available > static_cast<std::uintmax_t>(files.patients * room);
    const QString root = fits ? QString::fromLatin1(memory) : QDir::tempPath();
    const QTemporaryDir folder(root + QStringLiteral("/raphe-XXXXXX"));
    const std::string file = folder.path().toStdString() + "/made.raphe";
    PracticeSettings settings;
    settings.name = "Nether Hollow";
    files.makingSeconds = secondsOf([&] {
        const auto made = got(Practice::make(file, settings, {"oriel", "Oriel Brook", std::string(passphrase), leastCost}));
        got(made.practice->addPatients(records));
        for (std::size_t i = 0; i < documents.size(); ++i) {
            const std::int64_t patient = static_cast<std::int64_t>(i) % files.patients + 1;
            const std::int64_t visit = got(made.practice->addVisit(patient, documents[i]));
            if (visit <= files.patients)
                got(made.practice->sign(visit));
        }
        return Done{};
    });
    std::filesystem::copy_file(file, files.sealed());
    syncFile(files.sealed());
}

void makePlain(const TwoFiles &files, const std::vector<PatientRecord> &records, const std::vector<std::string> &documents)
{
    const auto db = files.plain();
    WriteTransaction transaction(*db);
    db->run("CREATE TABLE patient (id INTEGER PRIMARY KEY, record TEXT NOT NULL)");
    db->run(
        "CREATE TABLE visit (id INTEGER PRIMARY KEY, patient INTEGER NOT NULL REFERENCES patient (id), document TEXT NOT NULL)");
    db->run("CREATE INDEX visit_by_patient ON visit (patient)");
    db->run("CREATE TABLE opened (id INTEGER PRIMARY KEY, patient INTEGER NOT NULL)");
    for (const PatientRecord &record : records)
        db->run("INSERT INTO patient (record) VALUES (?)", {writePatient(record)});
    for (std::size_t i = 0; i < documents.size(); ++i)
        db->run("INSERT INTO visit (patient, document) VALUES (?, ?)",
            {static_cast<std::int64_t>(i) % files.patients + 1, documents[i]});
    transaction.commit();
}

/// Made once for each size.
const TwoFiles &practiceOf(const benchmark::State &state)
{
    static std::map<std::int64_t, TwoFiles> made;
    const std::int64_t patients = state.range(0);
    TwoFiles &files = made[patients];
    if (files.patients == patients)
        return files;
    files.patients = patients;
    std::mt19937 random(20261127); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same people every time
    std::vector<PatientRecord> records;
    for (std::int64_t i = 0; i < patients; ++i)
        records.push_back(person(random));
    std::vector<std::string> documents;
    for (std::int64_t i = 0; i < patients * visitsEach; ++i)
        documents.push_back(visitDocument(random));
    makeSealed(files, records, documents);
    makePlain(files, records, documents);
    return files;
}

void sizes(benchmark::internal::Benchmark *b)
{
    b->Arg(100)->Arg(10'000);
    if (qEnvironmentVariableIsSet("RAPHE_BENCH_LARGE"))
        b->Arg(100'000);
    b->UseManualTime()->Unit(benchmark::kMillisecond);
}

std::vector<PatientCard> plainCards(const Database &db)
{
    std::vector<PatientCard> out;
    Rows rows = db.run("SELECT id, record FROM patient");
    while (rows.next()) {
        const PatientRecord record = got(readPatient(rows.text(1), "patient"));
        out.push_back({rows.number(0), record.name, record.born, record.mark, searchText(record)});
    }
    std::sort(out.begin(), out.end(), [](const PatientCard &a, const PatientCard &b) { return a.searched < b.searched; });
    return out;
}

std::vector<std::string> plainVisits(const Database &db, std::int64_t patient)
{
    std::vector<std::string> out;
    Rows rows = db.run("SELECT document FROM visit WHERE patient = ? ORDER BY id DESC", {patient});
    while (rows.next())
        out.push_back(rows.text(0));
    return out;
}

// The reference opens the file, reads the same records and makes the same cards of them.
void unlockToList(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    sideBySide(
        state, [] {},
        [&] {
            auto practice = files.unlocked();
            auto cards = got(practice->patients());
            return std::pair(std::move(practice), std::move(cards));
        },
        [&] {
            auto db = files.plain();
            auto cards = plainCards(*db);
            return std::pair(std::move(db), std::move(cards));
        });
    state.counters["making_s"] = files.makingSeconds;
}
BENCHMARK(unlockToList)->Apply(sizes)->Iterations(5);

// One key after the other of a name and a year. The reference lets SQLite look through the records.
void searchKeystroke(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    const auto cards = got(files.unlocked()->patients());
    const auto db = files.plain();
    const std::string whole = "fennula farth 1971";
    std::string typed;
    sideBySide(
        state, [&] { typed = typed.size() == whole.size() ? whole.substr(0, 1) : whole.substr(0, typed.size() + 1); },
        [&] {
            std::vector<std::int64_t> found;
            const PatientQuery query(typed);
            for (const PatientCard &card : cards)
                if (query.matches(card.searched))
                    found.push_back(card.id);
            return found;
        },
        [&] {
            std::string pattern = '%' + typed + '%';
            std::replace(pattern.begin(), pattern.end(), ' ', '%');
            std::vector<std::int64_t> found;
            Rows rows = db->run("SELECT id FROM patient WHERE record LIKE ?", {pattern});
            while (rows.next())
                found.push_back(rows.number(0));
            return found;
        });
}
BENCHMARK(searchKeystroke)->Apply(sizes);

// The same in the window: the list as it is painted. The reference paints nothing.
void searchKeystrokeInWindow(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    const auto practice = files.unlocked();
    const auto db = files.plain();
    const auto knowledge = got(readKnowledge());
    const auto rules = got(readEmbeddedSafetyRules(*knowledge.atlas));
    PatientsDialog dialog(*practice, rules, PatientsDialog::Purpose::Open);
    dialog.show();
    const auto *list = dialog.findChild<QListView *>();
    while (list->model()->rowCount() == 0)
        QApplication::processEvents();
    auto *field = dialog.findChild<QLineEdit *>();
    const QString whole = QStringLiteral("fennula farth 1971");
    QString typed;
    sideBySide(
        state, [&] { typed = typed.size() == whole.size() ? whole.left(1) : whole.left(typed.size() + 1); },
        [&] {
            field->setText(typed);
            QApplication::processEvents();
            return list->model()->rowCount();
        },
        [&] {
            QString pattern = QStringLiteral("%") + typed + QStringLiteral("%");
            pattern.replace(QLatin1Char(' '), QLatin1Char('%'));
            Rows rows = db->run("SELECT id FROM patient WHERE record LIKE ?", {pattern.toStdString()});
            std::size_t found = 0;
            while (rows.next())
                ++found;
            return found;
        });
}
BENCHMARK(searchKeystrokeInWindow)->Apply(sizes);

// Before those that write, so that there are always as many entries. The reference: SQLite's own check, and all that is read.
void verifyAll(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    const auto practice = files.unlocked();
    const auto db = files.plain();
    sideBySide(
        state, [] {}, [&] { return got(practice->verify()); },
        [&] {
            bool whole = db->single("PRAGMA integrity_check(1)").text(0) == "ok";
            for (const PatientCard &card : plainCards(*db))
                whole = whole && !plainVisits(*db, card.id).empty();
            if (!whole)
                throw std::runtime_error("the plain file is broken");
            return Done{};
        });
    state.counters["entries"] = static_cast<double>(got(practice->accesses()).size());
}
BENCHMARK(verifyAll)->Apply(sizes)->Iterations(3);

// The reference copies, syncs, and lets SQLite check the copy.
void backUpAll(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    const auto db = files.plain();
    sideBySide(
        state, [&] { std::filesystem::remove(files.named("plain.copy")); },
        [&] { return got(backUp(files.sealed(), files.named("sealed.raphe-backup"))); },
        [&] {
            db->run("VACUUM INTO ?", {files.named("plain.copy")});
            syncFile(files.named("plain.copy"));
            if (Database(files.named("plain.copy")).single("PRAGMA integrity_check(1)").text(0) != "ok")
                throw std::runtime_error("the plain copy is broken");
            return Done{};
        });
    state.counters["MB"] = static_cast<double>(std::filesystem::file_size(files.named("sealed.raphe-backup"))) / 1e6;
}
BENCHMARK(backUpAll)->Apply(sizes)->Iterations(3);

// Each time somebody else, and noted. The reference reads and notes too, unsigned.
void openPatient(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    const auto practice = files.unlocked();
    const auto db = files.plain();
    std::mt19937 random(1); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same patients every time
    std::int64_t id = 0;
    sideBySide(
        state, [&] { id = 1 + static_cast<std::int64_t>(random()) % files.patients; },
        [&] {
            auto opened = std::pair(got(practice->patient(id)), got(practice->visits(id)));
            got(practice->noteOpened(id));
            return opened;
        },
        [&] {
            auto opened =
                std::pair(got(readPatient(db->single("SELECT record FROM patient WHERE id = ?", {id}).text(0), "patient")),
                    plainVisits(*db, id));
            db->run("INSERT INTO opened (patient) VALUES (?)", {id});
            return opened;
        });
}
BENCHMARK(openPatient)->Apply(sizes);

// A draft with other findings, each time of somebody else.
void saveChange(benchmark::State &state)
{
    const TwoFiles &files = practiceOf(state);
    const auto practice = files.unlocked();
    const auto db = files.plain();
    std::mt19937 random(2); // NOLINT(cert-msc32-c,cert-msc51-cpp): the same visits every time
    std::int64_t id = 0;
    std::string document;
    sideBySide(
        state,
        [&] {
            id = files.patients * (visitsEach - 1) + 1 + static_cast<std::int64_t>(random()) % files.patients;
            document = visitDocument(random);
        },
        [&] { return got(practice->saveVisit(id, document)); },
        [&] {
            return db->run("UPDATE visit SET document = ? WHERE id = ?", {document, id}).affected();
        });
}
BENCHMARK(saveChange)->Apply(sizes);

// What unlocking costs on top, whatever the size of the file.
void deriveKeyAtUsualCost(benchmark::State &state)
{
    const Salt salt = randomSalt();
    for (auto _ : state)
        benchmark::DoNotOptimize(got(deriveKey(passphrase, salt, usualCost())));
}
BENCHMARK(deriveKeyAtUsualCost)->Unit(benchmark::kMillisecond);

} // namespace
