// The plain file of the first versions is sealed without loss, or stays as it is.
#include "tests/core/store/PracticeTesting.h"

#include "core/store/Export.h"
#include "core/store/PlainPractice.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>

namespace raphe::test {

namespace {

class PlainFile : public PracticeFileTest {
protected:
    // As the first versions wrote it.
    void makePlain() const
    {
        const Database db(file());
        db.run("CREATE TABLE patient (id INTEGER PRIMARY KEY, name TEXT NOT NULL, born TEXT NOT NULL)");
        db.run("CREATE TABLE visit (id INTEGER PRIMARY KEY, patient INTEGER NOT NULL REFERENCES patient (id),"
               " held_on TEXT NOT NULL, document TEXT NOT NULL)");
        db.run("INSERT INTO patient VALUES (1, 'Ada Quill', '1980-02-03'), (2, 'Bo Stone', '')");
        db.run("INSERT INTO visit VALUES (1, 1, '2026-11-02', 'later'), (2, 2, '2026-11-01', 'of the other'),"
               " (3, 1, '2026-10-01', 'earlier')");
        db.run("PRAGMA application_id = " + std::to_string(practiceApplicationId));
        db.run("PRAGMA user_version = 1");
    }
};

} // namespace

TEST_F(PlainFile, IsSealedAndGone)
{
    makePlain();
    EXPECT_TRUE(isPlainPractice(file()).value());
    auto sealed = sealPlainPractice(file(), settings(), owner());
    ASSERT_TRUE(sealed.ok()) << inWords(sealed.error());
    sealed.value().practice.reset();
    EXPECT_FALSE(isPlainPractice(file()).value());
    EXPECT_FALSE(std::filesystem::exists(file() + ".sealing"));
    std::ifstream in(file(), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    EXPECT_EQ(bytes.find("Quill"), std::string::npos);
    auto practice = unlocked();
    ASSERT_TRUE(practice);
    const auto cards = practice->patients().value();
    ASSERT_EQ(cards.size(), 2U);
    EXPECT_EQ(cards[0].name, "Ada Quill");
    EXPECT_EQ(cards[0].born, "1980-02-03");
    const auto visits = practice->visits(cards[0].id).value();
    ASSERT_EQ(visits.size(), 2U);
    EXPECT_EQ(visits[0].document, "later") << "newest first";
    EXPECT_EQ(visits[1].document, "earlier");
    EXPECT_EQ(sealPlainPractice(file(), settings(), owner()).error().code, ErrorCode::NotAllowed) << "once is enough";
}

TEST_F(PlainFile, StaysWhenItCannotBeSealed)
{
    makePlain();
    NewAccount hasty = owner();
    hasty.passphrase = "short";
    EXPECT_EQ(sealPlainPractice(file(), settings(), hasty).error().code, ErrorCode::NotAllowed);
    EXPECT_TRUE(isPlainPractice(file()).value());
    EXPECT_FALSE(std::filesystem::exists(file() + ".sealing"));
    std::ofstream(folder() + "/x") << "not a database at all, but long enough to be looked at";
    EXPECT_FALSE(isPlainPractice(folder() + "/x").ok());
    EXPECT_EQ(isPlainPractice(folder() + "/none").error().code, ErrorCode::CannotRead);
}

TEST_F(PlainFile, TheExportOfOnePatientHoldsAllOfThemAndNobodyElse)
{
    auto practice = made();
    const auto ada = practice->addPatient(person("Ada Quill", "1980-02-03")).value();
    const auto bo = practice->addPatient(person("Bo Stone", "")).value();
    const auto visit = practice->addVisit(ada, "{\"note\":\"first words\"}").value();
    ASSERT_TRUE(practice->addVisit(bo, "{\"note\":\"of the other\"}").ok());
    ASSERT_TRUE(practice->sign(visit).ok());
    ASSERT_TRUE(practice->beginAmendment(visit).ok());
    ASSERT_TRUE(practice->saveVisit(visit, "{\"note\":\"second words\"}").ok());
    ASSERT_TRUE(practice->signAmendment(visit, "a slip").ok());
    const auto exported = exportPatient(*practice, ada);
    ASSERT_TRUE(exported.ok()) << inWords(exported.error());
    const auto json = nlohmann::json::parse(exported.value().json);
    EXPECT_EQ(json.at("format"), "raphe-export");
    EXPECT_EQ(json.at("patient").at("name"), "Ada Quill");
    ASSERT_EQ(json.at("visits").size(), 1U);
    EXPECT_EQ(json["visits"][0]["document"]["note"], "second words");
    ASSERT_EQ(json["visits"][0]["history"].size(), 2U);
    EXPECT_EQ(json["visits"][0]["history"][0]["document"]["note"], "first words");
    EXPECT_EQ(json["visits"][0]["history"][1]["reason"], "a slip");
    for (const std::string &text : {exported.value().json, exported.value().text}) {
        EXPECT_NE(text.find("second words"), std::string::npos);
        EXPECT_EQ(text.find("of the other"), std::string::npos);
        EXPECT_EQ(text.find("Bo Stone"), std::string::npos);
    }
    EXPECT_EQ(practice->accesses(ada).value().back().kind, EntryKind::Exported);
}

} // namespace raphe::test
