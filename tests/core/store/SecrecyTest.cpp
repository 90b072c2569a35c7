// Nothing that is said in a practice can be read in what is written to the disk: not in the practice file or its log, not in a
// back-up, a restored file or what a restore keeps, not in a temporary file, and not in a file that was removed again meanwhile,
// since every byte that SQLite writes is looked at (DiskCalls). The same search finds all of it in plain SQLite files.
// Searched for, in UTF-8 and UTF-16LE: every eight bytes in a row of every text, and each word by itself. A word of four or
// five letters turns up in enough random bytes by chance (each of four once in 4 GB), so these are counted instead: chance makes
// a few, a leak makes hundreds. The same bytes elsewhere do not count again: one box is seen some twenty times.
// The files are read while connections are open, which drops SQLite's locks on them (howtocorrupt.html, section 2.2): no other
// program has them open here.
#include "core/record/PatientRecordJson.h"
#include "core/record/PatientSearch.h"
#include "core/store/Backup.h"
#include "core/store/Export.h"
#include "core/store/PlainPractice.h"
#include "core/store/crypto/Bytes.h"
#include "tests/core/store/PracticeTesting.h"
#include "tests/support/storage/DiskCalls.h"

#include <nlohmann/json.hpp>
#include <sqlite3.h>

#include <bitset>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iostream>
#include <iterator>
#include <set>
#include <unordered_map>

namespace raphe::test {

namespace {

namespace fs = std::filesystem;

// ---- What is searched for ----

std::string inUtf16(const std::string &utf8)
{
    std::string out;
    for (const QChar unit : QString::fromStdString(utf8)) {
        out += static_cast<char>(unit.unicode() & 0xff);
        out += static_cast<char>(unit.unicode() >> 8);
    }
    return out;
}

struct Found {
    std::set<std::string> windows; // of eight bytes
    std::set<std::string> words; // of six or seven letters, UTF-8
    std::set<std::string> shortWords; // of four or five, UTF-8
    std::set<std::string> shortHits; // each with the bytes around it: a box that is written or read again counts once
};

class Needles {
public:
    static constexpr std::size_t window = 8; // bytes: one that is not there comes up by chance once in 10^19
    static constexpr std::size_t shortest = 4;
    static constexpr std::size_t sureWord = 6; // from this length on a single hit is no chance

    /// Also the words in it, in both encodings.
    void addText(const std::string &text)
    {
        addWindows(text, m_utf8);
        addWindows(inUtf16(text), m_utf16);
        std::erase_if(m_utf16, isOfNumbers);
        addWord(text);
        std::string word;
        for (const char c : text + " ") {
            if (std::isalnum(static_cast<unsigned char>(c)) != 0 || (static_cast<unsigned char>(c) & 0x80) != 0) {
                word += c;
                continue;
            }
            addWord(word);
            word.clear();
        }
    }
    void addBytes(std::string_view bytes) { addWindows(std::string(bytes), m_utf8); }
    void addKey(const SecretBytes &key)
    {
        addBytes({reinterpret_cast<const char *>(key.span().data()), key.size()});
        addText(toHex(key.span()));
    }

    /// What stands in these bytes is no secret: the words of the tables themselves.
    void leaveOut(const std::string &bytes)
    {
        const Found found = foundIn(bytes);
        for (const std::string &eight : found.windows) {
            m_utf8.erase(eight);
            m_utf16.erase(eight);
        }
        for (const auto *words : {&found.words, &found.shortWords})
            for (const std::string &word : *words)
                std::erase(m_words[head(word)], word);
        for (const auto *gone : {&found.windows, &found.words, &found.shortWords})
            m_leftOut.insert(gone->begin(), gone->end());
    }

    void search(std::string_view bytes, Found &found) const
    {
        for (std::size_t i = 0; i + shortest <= bytes.size(); ++i) {
            if (!m_starts[start(bytes.substr(i, 2))])
                continue;
            if (const auto words = m_words.find(head(bytes.substr(i))); words != m_words.end())
                for (const std::string &word : words->second)
                    if (bytes.substr(i, word.size()) == word) {
                        (word.size() < sureWord ? found.shortWords : found.words).insert(word);
                        if (word.size() < sureWord)
                            found.shortHits.emplace(bytes.substr(i - std::min(i, window), word.size() + 2 * window));
                    }
            if (i + window <= bytes.size()) {
                const std::string eight(bytes.substr(i, window));
                if (m_utf8.contains(eight) || m_utf16.contains(eight))
                    found.windows.insert(eight);
            }
        }
    }
    [[nodiscard]] Found foundIn(std::string_view bytes) const
    {
        Found found;
        search(bytes, found);
        return found;
    }

    [[nodiscard]] const std::set<std::string> &utf8() const { return m_utf8; }
    [[nodiscard]] const std::set<std::string> &utf16() const { return m_utf16; }
    [[nodiscard]] const std::set<std::string> &leftOut() const { return m_leftOut; }
    [[nodiscard]] std::size_t words() const
    {
        std::size_t count = 0;
        for (const auto &[unused, words] : m_words)
            count += words.size();
        return count;
    }

private:
    static std::uint32_t head(std::string_view word)
    {
        std::uint32_t out = 0;
        std::memcpy(&out, word.data(), sizeof out);
        return out;
    }
    static std::size_t start(std::string_view two)
    {
        return static_cast<std::size_t>(static_cast<unsigned char>(two[0])) << 8 | static_cast<unsigned char>(two[1]);
    }

    // Without a letter: four digits in UTF-16 also stand in a table of rising numbers, as SQLite's index of its log is one. UTF-8
    // is searched for them.
    static bool isOfNumbers(const std::string &eight)
    {
        return std::none_of(eight.begin(), eight.end(), [](unsigned char c) { return std::isalpha(c) != 0 || c >= 0x80; });
    }
    void addWindows(const std::string &bytes, std::set<std::string> &to)
    {
        for (std::size_t i = 0; i + window <= bytes.size(); ++i) {
            to.insert(bytes.substr(i, window));
            m_starts.set(start(std::string_view(bytes).substr(i, 2)));
        }
    }
    void addWord(const std::string &word)
    {
        if (word.size() < shortest || word.size() >= window) // longer ones are windows
            return;
        auto &same = m_words[head(word)];
        if (std::find(same.begin(), same.end(), word) == same.end())
            same.push_back(word);
        m_starts.set(start(word));
    }

    std::set<std::string> m_utf8;
    std::set<std::string> m_utf16;
    std::unordered_map<std::uint32_t, std::vector<std::string>> m_words; // by their first four bytes
    std::set<std::string> m_leftOut;
    std::bitset<65536> m_starts; // by two bytes: is there anything that begins so?
};

// ---- The texts ----

void collectTexts(const nlohmann::json &json, std::vector<std::string> &out)
{
    if (json.is_string())
        out.push_back(json.get<std::string>());
    else if (json.is_structured())
        for (const auto &item : json)
            collectTexts(item, out);
}

// With everything that a visit says, the ids of what was examined too: they say what is wrong with whom.
std::vector<std::string> textsIn(const std::string &document)
{
    std::vector<std::string> out;
    collectTexts(nlohmann::json::parse(document), out);
    return out;
}

std::string bytesOfFile(const fs::path &path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::vector<std::string> demoDocuments()
{
    std::vector<std::string> out;
    for (const auto &one : fs::directory_iterator(RAPHE_SOURCE_DIR "/demo/practice"))
        if (one.path().extension() == ".json")
            out.push_back(bytesOfFile(one.path()));
    std::sort(out.begin(), out.end());
    return out;
}

// Every field filled; the demo patient's own name and birth date in it.
PatientRecord fullRecord(const std::string &name, const std::string &born)
{
    PatientRecord r;
    r.name = name;
    r.otherNames = {"Wilhelmína Łukasz-Þórsdóttir", "Mina"};
    r.born = born;
    r.otherBorn = {"1961-07-19"};
    r.sex = Sex::Female;
    r.height = 168;
    r.mark = "crescent birthmark under the chin";
    r.language = "Icelandic";
    r.interpreter = "Svanhvit Tomasdottir";
    r.phone = "+354 555 7319";
    r.email = "quince@harbour.example";
    r.address = "Lighthouse Cottage, 14 Cobble Rise";
    r.doctor = Contact{"Dr Bartholomew Finch", "0555 204466"};
    r.emergency = Contact{"Gwendolyn Marsh", "0555 881122"};
    r.guardian = Contact{"Theodora Penrose", "0555 660099"};
    r.medicines = {"warfarin 3 mg each evening", "levothyroxine"};
    r.allergies = {"elastoplast", "almond oil"};
    r.surgery = {{"gall bladder taken out", 2009}};
    r.implants = {{"pacemaker", "beneath the collarbone"}};
    r.conditions = {{"anticoagulant", "bruises within minutes"}};
    r.ruledOut = {{"frailty", "pregabalin at bedtime"}};
    r.pregnancy = Pregnancy{23, "2026-10-17"};
    r.otherPregnancies = {{21, "2026-10-03"}};
    r.bloodPressure = BloodPressure{147, 93, "2026-11-09"};
    r.otherBloodPressures = {{139, 88, "2026-09-30"}};
    r.unclear = {"blood pressure 88 over 197"};
    r.complaints = {{1, "numb fingers after knitting", "since midsummer", false}, {2, "clicking jaw", "two winters", true}};
    return r;
}

PracticeSettings fullSettings()
{
    PracticeSettings s;
    s.name = "Lowbridge Hands";
    s.letterhead = "Lowbridge Hands\n3 Millpond Yard\nLowbridge";
    s.language = "cy-GB";
    s.backupFolder = "/media/blue-stick/lowbridge";
    s.jurisdiction = "Wales, adults";
    return s;
}

// Bytes and where they were seen.
struct Seen {
    std::string where;
    std::string bytes;
};

// The texts of short life: reasons, and what was typed and taken back.
constexpr const char *typedFirst = "pins and needles down to the thumb, I think";
constexpr const char *amended = "measured again: the grip is weaker on the left";
constexpr const char *amendReason = "grip had been forgotten";
constexpr const char *careTime = "2026-11-20T10:35";
constexpr const char *lateReason = "snowed in for two days";
constexpr const char *moveReason = "chosen from the wrong line";
constexpr const char *errorReason = "belongs to her sister";
constexpr const char *eraseReason = "emigrated and wished it";
constexpr const char *secretPassphrase = "seven grey herons wading";
constexpr const char *nextSecretPassphrase = "a kettle sings at dusk";
constexpr const char *userName = "Agnes Kestrel";
constexpr const char *otherUser = "Rowan Thistlewood";
constexpr const char *otherPassphrase = "violet umbrella stand";

std::string withNote(const std::string &document, const std::string &note)
{
    auto json = nlohmann::json::parse(document);
    json["findings"][0]["note"] = note;
    return json.dump();
}

class Secrecy : public PracticeFileTest {
protected:
    void SetUp() override
    {
        PracticeFileTest::SetUp();
        const fs::path temporary = fs::path(folder()) / "temporary";
        fs::create_directories(temporary);
        for (const char *name : {"TMPDIR", "SQLITE_TMPDIR"}) {
            m_environment.emplace_back(name, qgetenv(name));
            qputenv(name, QByteArray::fromStdString(temporary.string()));
        }
        sqlite3_temp_directory = sqlite3_mprintf("%s", temporary.c_str()); // SQLite reads the environment once only
    }
    void TearDown() override
    {
        sqlite3_free(sqlite3_temp_directory);
        sqlite3_temp_directory = nullptr;
        for (const auto &[name, value] : m_environment)
            value.isNull() ? qunsetenv(name) : qputenv(name, value);
    }

    // All files below the folder as they are now.
    [[nodiscard]] std::vector<Seen> filesNow(const std::string &when) const
    {
        std::vector<Seen> out;
        for (const auto &one : fs::recursive_directory_iterator(folder()))
            if (one.is_regular_file())
                out.push_back({when + ": " + one.path().filename().string(), bytesOfFile(one.path())});
        return out;
    }

    [[nodiscard]] static NewAccount agnes() { return {"desk", userName, secretPassphrase, cheap, {"stretching", "cupping"}}; }

private:
    std::vector<std::pair<const char *, QByteArray>> m_environment;
};

template <class T> T must(Result<T> result)
{
    if (!result)
        throw std::runtime_error(inWords(result.error()));
    return std::move(result).value();
}

std::string firstOf(const std::set<std::string> &found)
{
    return found.empty() ? std::string() : *found.begin();
}

} // namespace

TEST_F(Secrecy, NoTextOfAPracticeIsEverWritten)
{
    const std::vector<std::string> documents = demoDocuments();
    ASSERT_GE(documents.size(), 3U);
    const auto schema = nlohmann::json::parse(bytesOfFile(RAPHE_SOURCE_DIR "/resources/schema/patient.schema.json"));
    const auto filled = nlohmann::json::parse(writePatient(fullRecord("Somebody", "1970-01-01")));
    for (const auto &[field, unused] : schema.at("properties").items())
        EXPECT_TRUE(filled.contains(field)) << "the record leaves out " << field;

    std::vector<std::string> texts{typedFirst, amended, amendReason, careTime, lateReason, moveReason, errorReason, eraseReason,
        secretPassphrase, nextSecretPassphrase, userName, otherUser, otherPassphrase};
    const auto take = [&](const std::vector<std::string> &more) { texts.insert(texts.end(), more.begin(), more.end()); };
    Needles needles;
    std::vector<Seen> seen;
    std::string readable; // an empty practice: what stands there is no patient's word
    std::size_t temporaries = 0;
    std::size_t removed = 0;
    std::size_t written = 0;
    const auto look = [&](const std::string &when) {
        for (Seen &one : filesNow(when))
            seen.push_back(std::move(one));
    };
    const auto elsewhere = folder() + "/elsewhere.raphe";
    const auto backup = folder() + "/one.raphe-backup";
    {
        const DiskCalls calls([&](const DiskCall &call) {
            if (!call.done)
                return;
            temporaries += call.kind == DiskCall::Kind::Open && call.name.empty() ? 1 : 0;
            removed += call.kind == DiskCall::Kind::Remove ? 1 : 0;
            if (call.kind == DiskCall::Kind::Write) {
                written += call.bytes.size();
                seen.push_back({"a write", std::string(call.bytes)});
            }
        });
        const std::string empty = folder() + "/empty.raphe";
        static_cast<void>(must(Practice::make(empty, {}, {"desk", "?", secretPassphrase, cheap})));
        readable = bytesOfFile(empty);
        fs::remove(empty);

        auto made = must(Practice::make(file(), fullSettings(), agnes()));
        Practice &practice = *made.practice;
        needles.addKey(practice.keys()->fileKey);
        needles.addKey(practice.keys()->signing.seed());
        take({made.recovery.text(), "stretching", "cupping"});
        take(textsIn(writeSettings(fullSettings())));

        std::vector<std::int64_t> patients;
        std::vector<std::int64_t> visits;
        for (const std::string &document : documents) {
            const auto json = nlohmann::json::parse(document);
            const PatientRecord record = fullRecord(json.at("patient").at("name"), json.at("patient").at("born"));
            take(textsIn(document));
            take(textsIn(writePatient(record)));
            take({searchText(record)});
            patients.push_back(must(practice.addPatient(record)));
            must(practice.noteOpened(patients.back()));
            const auto visit = must(practice.addVisit(patients.back(), withNote(document, typedFirst)));
            for (std::size_t typed = 4; typed < 20; typed += 4)
                must(practice.saveVisit(visit, withNote(document, std::string(typedFirst).substr(0, typed))));
            must(practice.saveVisit(visit, document));
            must(practice.sign(visit));
            visits.push_back(visit);
        }
        must(practice.beginAmendment(visits[0]));
        must(practice.saveVisit(visits[0], withNote(documents[0], amended)));
        look("an amendment under way");
        must(practice.signAmendment(visits[0], amendReason, careTime));
        must(practice.markInError(visits[1], errorReason));
        const auto astray = must(practice.addVisit(patients[0], documents[2]));
        must(practice.move(astray, patients[2], moveReason));
        must(practice.sign(astray, careTime, lateReason));
        PatientRecord twin = fullRecord("Imogene Tarrant-Lisle", "1979-04-03");
        take(textsIn(writePatient(twin)));
        must(practice.merge(patients[2], must(practice.addPatient(twin))));
        must(practice.addPatients({fullRecord("Hester Applegarth", "1946-02-27")}));
        take({"Hester Applegarth", "1946-02-27"});
        for (const std::int64_t patient : patients) {
            const PatientExport out = must(exportPatient(practice, patient));
            EXPECT_NE(out.json.find("crescent birthmark"), std::string::npos);
        }
        const auto rowan = must(practice.addAccount({"room", otherUser, otherPassphrase, cheap}));
        must(practice.changePassphrase(std::string_view(secretPassphrase), std::string_view(nextSecretPassphrase), cheap));
        must(practice.saveSettings(fullSettings()));

        // Long ones: more than the two megabytes that SQLite keeps in memory before it uses a temporary file.
        std::string longest;
        while (longest.size() < 400'000)
            for (const std::string &document : documents)
                longest += document;
        for (int i = 0; i < 10; ++i)
            must(practice.addVisit(patients[0], longest));

        ASSERT_GT(fs::file_size(file() + "-wal"), 0U) << "the log is not brought in yet";
        look("in use");
        must(backUp(file(), backup));
        look("backed up");
        must(practice.removeAccount(rowan));
        needles.addKey(practice.keys()->fileKey); // a new one
        must(practice.erase(patients[1], eraseReason));
        look("one patient erased");
        must(practice.saveVisit(must(practice.addVisit(patients[0], documents[0])), withNote(documents[0], amended)));
        made.practice.reset();
        ASSERT_FALSE(fs::exists(file() + "-wal"));
        look("closed");

        EXPECT_EQ(must(restore(backup, file())), std::vector<std::int64_t>{patients[1]});
        look("restored over the old one");
        static_cast<void>(must(restore(backup, elsewhere)));
        auto again = must(Practice::recover(elsewhere, made.recovery, {"desk", userName, otherPassphrase, cheap}));
        must(again->erase(patients[1], eraseReason));
        must(again->verify());
        again.reset();
        look("restored elsewhere and recovered");
        look("at the end");
    }
    for (const std::string &text : texts)
        needles.addText(text);
    needles.leaveOut(readable);

    std::size_t files = 0;
    std::size_t bytes = 0;
    std::set<std::string> shortHits;
    std::set<std::string> shortWords;
    for (const Seen &one : seen) {
        const Found found = needles.foundIn(one.bytes);
        EXPECT_TRUE(found.windows.empty()) << one.where << " holds " << testing::PrintToString(firstOf(found.windows));
        EXPECT_TRUE(found.words.empty()) << one.where << " holds " << testing::PrintToString(firstOf(found.words));
        shortHits.insert(found.shortHits.begin(), found.shortHits.end());
        shortWords.insert(found.shortWords.begin(), found.shortWords.end());
        bytes += one.bytes.size();
        files += one.where == "a write" ? 0 : 1;
    }
    constexpr std::size_t byChance = 20; // some 90 words of four letters in 130 MB, most of it the same bytes again: 0 to 3
    EXPECT_LE(shortHits.size(), byChance) << "words of four or five letters, as " << testing::PrintToString(shortWords);
    EXPECT_GT(temporaries, 0U) << "no temporary file was used, so none was looked at";
    EXPECT_GT(removed, 0U);
    constexpr std::size_t fewLeftOut = 10;
    EXPECT_LE(needles.leftOut().size(), fewLeftOut) << "choose texts that the tables do not hold";
    std::cout << texts.size() << " texts, " << needles.utf8().size() << " + " << needles.utf16().size()
              << " runs of eight bytes in UTF-8 and UTF-16LE, " << needles.words()
              << " short words; not searched, since the tables hold it: " << testing::PrintToString(needles.leftOut()) << "\n"
              << written << " bytes written, " << temporaries << " temporary files, " << removed << " removals, " << files
              << " files looked at, " << bytes << " bytes searched, " << shortHits.size() << " short words by chance\n";
}

// ---- That the search finds what is there ----

namespace {

Needles someNeedles(std::vector<std::string> &texts)
{
    for (const std::string &document : demoDocuments())
        for (const std::string &text : textsIn(document))
            texts.push_back(text);
    for (const std::string &text : textsIn(writePatient(fullRecord("Hester Applegarth", "1946-02-27"))))
        texts.push_back(text);
    Needles needles;
    for (const std::string &text : texts)
        needles.addText(text);
    return needles;
}

} // namespace

TEST_F(Secrecy, TheSearchFindsAllInAPlainFile)
{
    std::vector<std::string> texts;
    const Needles needles = someNeedles(texts);
    for (const bool wide : {false, true}) {
        const std::string plain = folder() + (wide ? "/wide" : "/narrow");
        {
            const Database db(plain);
            db.run(wide ? "PRAGMA encoding = 'UTF-16le'" : "PRAGMA encoding = 'UTF-8'");
            db.run("CREATE TABLE said (words TEXT)");
            for (const std::string &text : texts)
                db.run("INSERT INTO said VALUES (?)", {text});
        }
        const Found found = needles.foundIn(bytesOfFile(plain));
        const std::set<std::string> &expected = wide ? needles.utf16() : needles.utf8();
        EXPECT_GT(expected.size(), 1000U);
        EXPECT_TRUE(std::includes(found.windows.begin(), found.windows.end(), expected.begin(), expected.end()))
            << (wide ? "UTF-16LE" : "UTF-8");
        if (!wide) {
            EXPECT_EQ(found.words.size() + found.shortWords.size(), needles.words());
            EXPECT_GT(found.shortHits.size(), 100U) << "far more than chance makes";
        }
    }
}

TEST_F(Secrecy, TheSearchSeesFilesThatWereRemovedMeanwhile)
{
    const auto foundInWrites = [&](const std::vector<std::string> &statements) {
        Needles needles;
        needles.addText("crescent birthmark");
        Found found;
        const DiskCalls calls([&](const DiskCall &call) {
            if (call.kind == DiskCall::Kind::Write)
                needles.search(call.bytes, found);
        });
        const Database db(file());
        for (const std::string &sql : statements)
            db.run(sql);
        return !found.windows.empty();
    };
    const auto isInAFile = [&] {
        for (const Seen &one : filesNow(""))
            if (one.bytes.find("crescent birthmark") != std::string::npos)
                return true;
        return false;
    };
    EXPECT_FALSE(foundInWrites({"CREATE TABLE said (words TEXT)"}));
    EXPECT_TRUE(foundInWrites({"PRAGMA secure_delete = ON", "INSERT INTO said VALUES ('crescent birthmark')"}));
    EXPECT_TRUE(foundInWrites({"PRAGMA secure_delete = ON", "UPDATE said SET words = 'nothing'"})) << "the rollback journal";
    EXPECT_FALSE(isInAFile()) << "and it is removed";
    EXPECT_TRUE(foundInWrites({"PRAGMA temp_store = FILE", "PRAGMA temp.cache_size = 2", "CREATE TEMP TABLE seen (words TEXT)",
        "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 5000)"
        " INSERT INTO seen SELECT 'crescent ' || 'birthmark' || i FROM n"}))
        << "a temporary file";
    EXPECT_FALSE(isInAFile()) << "which has no name";
}

// ---- What is left of an erased patient ----

namespace {

// The sealed boxes of a patient, and what is bound to them.
Needles boxesOf(const std::string &file, std::int64_t patient)
{
    Needles needles;
    const Database db(file);
    for (const char *sql : {"SELECT patient_key FROM patient WHERE id = ?", "SELECT record FROM patient WHERE id = ?",
             "SELECT document FROM visit WHERE patient = ?",
             "SELECT content FROM entry WHERE patient = ? AND content IS NOT NULL"}) {
        Rows rows = db.run(sql, {patient});
        while (rows.next()) {
            const Blob box = rows.blob(0);
            needles.addBytes({reinterpret_cast<const char *>(box.data()), std::min<std::size_t>(box.size(), 64)});
        }
    }
    return needles;
}

} // namespace

// Also when a kill comes between the erasure's commit and the tidying after it: then the next opening and closing tidies.
TEST_F(Secrecy, OfAnErasedPatientNoSealedBoxIsLeft)
{
    const auto use = fs::path(folder()) / "use";
    fs::create_directories(use);
    const std::string practiceFile = (use / "p.raphe").string();
    std::shared_ptr<const Keyring> keys;
    std::int64_t goes = 0;
    Needles boxes;
    std::vector<fs::path> copies; // what a kill at each moment of the erasure would leave
    {
        bool erasing = false;
        const DiskCalls calls([&](const DiskCall &) {
            if (!erasing)
                return;
            copies.push_back(fs::path(folder()) / ("copy-" + std::to_string(copies.size())));
            fs::copy(use, copies.back());
        });
        auto made = must(Practice::make(practiceFile, settings(), owner()));
        keys = made.practice->keys();
        goes = must(made.practice->addPatient(fullRecord("Hester Applegarth", "1946-02-27")));
        const auto stays = must(made.practice->addPatient(person("Bo Stone", "")));
        for (const std::int64_t patient : {goes, stays})
            for (const std::string &document : demoDocuments())
                must(made.practice->sign(must(made.practice->addVisit(patient, document))));
        boxes = boxesOf(practiceFile, goes);
        made.practice = must(Practice::open(practiceFile, keys));
        erasing = true;
        must(made.practice->erase(goes, "asked for it"));
        erasing = false;
        for (const auto &one : fs::directory_iterator(use))
            EXPECT_EQ(firstOf(boxes.foundIn(bytesOfFile(one.path())).windows), "") << "in use: " << one.path();
    }
    ASSERT_GT(copies.size(), 20U);
    std::size_t erased = 0;
    for (const fs::path &copy : copies) {
        SCOPED_TRACE(copy.filename().string());
        fs::remove(copy / "p.raphe-shm"); // copied while it was being changed; SQLite makes it anew
        bool isErased = false;
        {
            const auto practice = must(Practice::open((copy / "p.raphe").string(), keys));
            isErased = practice->patients().value().size() == 1;
            const auto verified = practice->verify();
            ASSERT_TRUE(verified.ok()) << inWords(verified.error());
        }
        erased += isErased ? 1 : 0;
        Found left;
        for (const auto &one : fs::directory_iterator(copy))
            boxes.search(bytesOfFile(one.path()), left);
        EXPECT_EQ(left.windows.empty(), isErased);
        fs::remove_all(copy);
    }
    std::cout << copies.size() << " moments, at " << erased << " of them the patient was erased\n";
    EXPECT_GT(erased, 0U);
    EXPECT_LT(erased, copies.size());
}

// ---- The plain file of the first versions ----

TEST_F(Secrecy, OfASealedPlainPracticeNoTextIsLeftInTheFolder)
{
    std::vector<std::string> texts;
    Needles needles = someNeedles(texts);
    const std::string empty = folder() + "/empty.raphe";
    static_cast<void>(must(Practice::make(empty, {}, owner())));
    needles.leaveOut(bytesOfFile(empty));
    {
        const Database db(file());
        db.makeDurable();
        db.run("CREATE TABLE patient (id INTEGER PRIMARY KEY, name TEXT NOT NULL, born TEXT NOT NULL)");
        db.run("CREATE TABLE visit (id INTEGER PRIMARY KEY, patient INTEGER NOT NULL REFERENCES patient (id),"
               " held_on TEXT NOT NULL, document TEXT NOT NULL)");
        db.run("INSERT INTO patient VALUES (1, 'Hester Applegarth', '1946-02-27')");
        for (const std::string &document : demoDocuments())
            db.run("INSERT INTO visit (patient, held_on, document) VALUES (1, '2026-11-02', ?)", {document});
        db.run("PRAGMA application_id = " + std::to_string(practiceApplicationId));
        db.run("PRAGMA user_version = 1");
    }
    const auto left = [&] {
        Found found;
        for (const Seen &one : filesNow(""))
            needles.search(one.bytes, found);
        return found;
    };
    EXPECT_FALSE(left().windows.empty());
    auto sealed = must(sealPlainPractice(file(), settings(), owner()));
    EXPECT_EQ(firstOf(left().windows), "");
    sealed.practice.reset();
    EXPECT_EQ(firstOf(left().windows), "");
}

} // namespace raphe::test
