// Someone with the file and without the key changes it: flips bits, swaps, drops and puts back rows, cuts the tail of the
// history. Each is reported or refused, or changes nothing that can be read. RAPHE_TAMPERED_BYTES says in how many bytes a bit is
// flipped, 400 when it is not set; with 0 in every byte of the file.
#include "tests/core/store/PracticeTesting.h"

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <random>

namespace raphe::test {

namespace {

class PracticeTamper : public PracticeFileTest {
protected:
    void SetUp() override
    {
        PracticeFileTest::SetUp();
        auto practice = made();
        ASSERT_TRUE(practice);
        m_keys = practice->keys();
        for (const char *name : {"Ada Quill", "Bo Stone"}) {
            const auto patient = practice->addPatient(person(name, "")).value();
            for (const char *document : {"one", "two"}) {
                const auto visit = practice->addVisit(patient, document).value();
                ASSERT_TRUE(practice->saveVisit(visit, std::string(document) + " again").ok());
                if (document == std::string("two")) {
                    ASSERT_TRUE(practice->sign(visit).ok());
                }
            }
        }
        practice.reset(); // brings the log into the file
        std::ifstream in(file(), std::ios::binary);
        m_bytes.assign(std::istreambuf_iterator<char>(in), {});
        m_whole = read(file());
        ASSERT_FALSE(m_whole.empty());
    }

    // All that can be read, or nothing when something is reported.
    [[nodiscard]] std::string read(const std::string &path) const
    {
        const auto practice = Practice::open(path, m_keys);
        if (!practice || !practice.value()->verify())
            return {};
        const Practice &p = *practice.value();
        std::string out = writeSettings(p.settings().value());
        const auto accounts = p.accounts();
        const auto patients = p.patients();
        const auto accesses = p.accesses();
        if (!accounts || !patients || !accesses)
            return {};
        for (const AccountCard &a : accounts.value()) {
            out += a.signIn + a.name + (a.isRemoved ? "-" : "+");
            for (const std::string &group : a.scope)
                out += group;
        }
        for (const AccessRow &a : accesses.value())
            out += std::to_string(a.madeAt) + a.account + std::string(wordOf(entryWords, a.kind));
        for (const PatientCard &card : patients.value()) {
            out += card.name + card.searched;
            const auto visits = p.visits(card.id);
            if (!visits)
                return {};
            for (const StoredVisit &v : visits.value()) {
                out += v.document + std::to_string(static_cast<int>(v.state));
                const auto history = p.history(v.id);
                if (!history)
                    return {};
                for (const VisitVersion &version : history.value())
                    out += version.author + version.document + std::to_string(version.madeAt);
            }
        }
        return out;
    }

    // A copy of the file for one attempt.
    [[nodiscard]] std::string copyOf(const std::string &bytes) const
    {
        const std::string path = folder() + "/copy.raphe";
        for (const char *end : {"", "-wal", "-shm"})
            std::filesystem::remove(path + end);
        std::ofstream(path, std::ios::binary) << bytes;
        return path;
    }

    /// Whether it is seen when these statements were run on the file.
    [[nodiscard]] bool isSeen(const std::vector<std::string> &statements) const
    {
        const std::string path = copyOf(m_bytes);
        {
            const Database db(path);
            for (const std::string &sql : statements)
                db.run(sql);
        }
        return read(path).empty();
    }

    std::shared_ptr<const Keyring> m_keys;
    std::string m_bytes;
    std::string m_whole;
};

} // namespace

TEST_F(PracticeTamper, OfOneBitIsSeenOrChangesNothing)
{
    const char *asked = std::getenv("RAPHE_TAMPERED_BYTES");
    const std::size_t tries = asked ? std::stoul(asked) : 400;
    std::mt19937 random(7);
    int seen = 0;
    int harmless = 0;
    for (std::size_t i = 0; i < (tries == 0 ? m_bytes.size() : tries); ++i) {
        const std::size_t at = tries == 0 ? i : random() % m_bytes.size();
        std::string bytes = m_bytes;
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << (random() % 8)));
        const std::string left = read(copyOf(bytes));
        ASSERT_TRUE(left.empty() || left == m_whole) << "byte " << at << " changes what is read, unseen";
        ++(left.empty() ? seen : harmless);
    }
    std::cout << m_bytes.size() << " bytes in the file; of " << seen + harmless << " flipped bits " << seen << " were seen, "
              << harmless << " changed nothing\n";
    EXPECT_GT(seen, 0);
}

TEST_F(PracticeTamper, OfRowsIsSeen)
{
    EXPECT_FALSE(isSeen({})) << "an untouched copy";
    EXPECT_TRUE(isSeen({"DELETE FROM visit WHERE id = 1"})) << "a draft dropped";
    EXPECT_TRUE(isSeen(
        {"UPDATE visit SET id = 9 WHERE id = 1", "UPDATE visit SET id = 1 WHERE id = 3", "UPDATE visit SET id = 3 WHERE id = 9"}))
        << "two visits swapped";
    EXPECT_TRUE(isSeen({"UPDATE visit SET document = (SELECT document FROM visit WHERE id = 2) WHERE id = 1"})) << "a box copied";
    EXPECT_TRUE(isSeen({"UPDATE visit SET patient = 2 WHERE id = 1"})) << "given to another patient";
    EXPECT_TRUE(isSeen({"UPDATE visit SET state = 0 WHERE id = 2"})) << "a signed visit called a draft";
    EXPECT_TRUE(isSeen({"UPDATE patient SET merged_into = 1 WHERE id = 2"})) << "a patient hidden";
    EXPECT_TRUE(isSeen({"UPDATE patient SET record = (SELECT record FROM patient WHERE id = 2) WHERE id = 1"}));
    EXPECT_TRUE(isSeen({"DELETE FROM entry WHERE number = (SELECT MAX(number) FROM entry)"})) << "the tail of the history cut";
    EXPECT_TRUE(isSeen({"DELETE FROM entry WHERE number = 2"})) << "one entry left out";
    EXPECT_TRUE(isSeen({"UPDATE entry SET made_at = made_at + 1 WHERE number = 2"})) << "a time changed";
    EXPECT_TRUE(isSeen({"UPDATE entry SET content = NULL WHERE number = 2"})) << "a signed word taken out";
    EXPECT_TRUE(isSeen({"UPDATE entry SET kind = 'opened' WHERE number = 2"}));
    EXPECT_TRUE(isSeen({"UPDATE account SET sign_in = 'eve'"}));
    EXPECT_TRUE(isSeen({"INSERT INTO account SELECT 2, 'eve', changes, salt, passes, memory_bytes, signs, box, seed, file_key, "
                        "card FROM account"}));
    EXPECT_TRUE(isSeen({"DELETE FROM head"}));
    EXPECT_TRUE(isSeen({"UPDATE account SET sign_in = sign_in || char(0)"})) << "a name that nobody can type";
    EXPECT_TRUE(isSeen({"UPDATE visit SET patient = CAST('1' AS BLOB) WHERE id = 1"})) << "a visit that no question finds";
    EXPECT_TRUE(isSeen({"UPDATE patient SET merged_into = '' WHERE id = 1"})) << "a patient that no question finds";
    EXPECT_TRUE(isSeen({"UPDATE entry SET visit = CAST(visit AS BLOB) WHERE number = 2"})) << "a signed word that none finds";
    EXPECT_TRUE(isSeen({"CREATE TRIGGER back AFTER UPDATE ON visit BEGIN UPDATE visit SET changes = OLD.changes,"
                        " document = OLD.document WHERE id = OLD.id; END"}))
        << "would take every save back";
}

TEST_F(PracticeTamper, WithARowFromBeforeIsSeen)
{
    Value before;
    {
        const Database db(file());
        before = db.single("SELECT document FROM visit WHERE id = 1").blob(0);
    }
    {
        auto practice = unlocked();
        ASSERT_TRUE(practice->saveVisit(1, "newer").ok());
    }
    {
        const Database db(file());
        db.run("UPDATE visit SET changes = changes - 1, document = ? WHERE id = 1", {before});
    }
    EXPECT_TRUE(read(file()).empty());
}

} // namespace raphe::test
