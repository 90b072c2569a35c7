// A patient's record goes from one practice to another and back without loss; what is no export is refused with its place.
#include "core/store/ExportImport.h"

#include "core/record/VisitJson.h"
#include "core/store/Export.h"
#include "tests/core/record/PatientTesting.h"
#include "tests/core/store/PracticeTesting.h"
#include "tests/support/WholeVisits.h"

#include <nlohmann/json.hpp>

#include <functional>

namespace raphe::test {

namespace {

using OrderedJson = nlohmann::ordered_json;

class ExportImport : public PracticeFileTest {
protected:
    void SetUp() override
    {
        PracticeFileTest::SetUp();
        m_from = made();
        ASSERT_TRUE(m_from);
    }

    // Another practice, whose only user is called Bo.
    [[nodiscard]] std::unique_ptr<Practice> another(const char *name = "/other.raphe") const
    {
        auto made = Practice::make(folder() + name, settings(), {"bo", "Bo Stone", "second of them", cheap});
        EXPECT_TRUE(made.ok());
        return std::move(made.value().practice);
    }
    [[nodiscard]] Practice &from() { return *m_from; }

    [[nodiscard]] static std::string exported(Practice &practice, std::int64_t patient)
    {
        return valueOf(exportPatient(practice, patient)).json;
    }
    [[nodiscard]] static ExportedRecord read(const std::string &text) { return valueOf(readExport(text, "e.json", atlas())); }

    // A patient with a visit in each state that a history can lead to.
    std::int64_t fill(unsigned seed)
    {
        Random people(seed);
        WholeVisits visits(seed);
        const auto next = [&] { return writeVisit(visits.below(2) == 0 ? visits.whole() : visits.next()); };
        const auto patient = valueOf(from().addPatient(people.record()));
        const auto add = [&] { return valueOf(from().addVisit(patient, next())); };
        const auto expectDone = [](const Result<Done> &done) { EXPECT_TRUE(done) << (done ? "" : inWords(done.error())); };
        const auto amend = [&](std::int64_t visit, const char *reason) {
            expectDone(from().beginAmendment(visit));
            expectDone(from().saveVisit(visit, next()));
            if (reason)
                expectDone(from().signAmendment(visit, reason, "2024-03-06"));
        };
        add(); // stays a draft
        expectDone(from().sign(add()));
        expectDone(from().sign(add(), "2024-03-05T10:00", "power was out: %1 %2"));
        const auto twice = add();
        expectDone(from().sign(twice, "2024-03-05"));
        amend(twice, "the side was missing");
        amend(twice, "the other side");
        const auto same = add();
        expectDone(from().sign(same));
        expectDone(from().beginAmendment(same));
        expectDone(from().signAmendment(same, "nothing was changed"));
        const auto open = add();
        expectDone(from().sign(open));
        amend(open, nullptr);
        const auto wrong = add();
        expectDone(from().markInError(wrong, "a draft in error"));
        const auto wrongSigned = add();
        expectDone(from().sign(wrongSigned));
        expectDone(from().markInError(wrongSigned, "somebody else's"));
        const auto wrongAmending = add();
        expectDone(from().sign(wrongAmending));
        amend(wrongAmending, nullptr);
        expectDone(from().markInError(wrongAmending, "while it was amended"));
        const auto other = valueOf(from().addPatient(people.record()));
        const auto moved = valueOf(from().addVisit(other, next()));
        expectDone(from().move(moved, patient, "written under the wrong name"));
        expectDone(from().sign(moved));
        return patient;
    }

private:
    std::unique_ptr<Practice> m_from;
};

// An export with one signed visit.
OrderedJson smallExport()
{
    const OrderedJson visit =
        OrderedJson::parse(R"({"format": "raphe-visit", "version": 2, "date": "2024-03-05", "findings": []})");
    OrderedJson json = OrderedJson::parse(
        R"({"format": "raphe-export", "version": 1, "patient": {"format": "raphe-patient", "version": 1, "name": "Ada Quill"}})");
    OrderedJson one{{"state", "signed"}, {"document", visit}};
    one["history"].push_back(
        {{"act", "signed"}, {"author", "Ada Brook"}, {"entered_at", "2024-03-05T10:00:00Z"}, {"document", visit}});
    json["visits"] = OrderedJson::array();
    json["visits"].push_back(one);
    json["accesses"] = OrderedJson::array();
    json["accesses"].push_back({{"at", "2024-03-05T10:00:00Z"}, {"by", "Ada Brook"}, {"act", "opened"}});
    return json;
}

} // namespace

TEST_F(ExportImport, NothingOfTheRecordIsLost)
{
    for (unsigned seed = 1; seed <= 3; ++seed) {
        const auto patient = fill(seed);
        const std::string text = exported(from(), patient);
        const auto to = another(("/to" + std::to_string(seed) + ".raphe").c_str());
        const auto imported = valueOf(importPatient(*to, read(text)));
        ASSERT_TRUE(valueOf(to->patient(imported.patient)) == valueOf(from().patient(patient)));
        auto before = valueOf(from().visits(patient));
        auto after = valueOf(to->visits(imported.patient));
        ASSERT_EQ(before.size(), 10U);
        ASSERT_EQ(after.size(), before.size());
        ASSERT_EQ(imported.visits.size(), before.size());
        for (std::size_t i = 0; i < before.size(); ++i) {
            SCOPED_TRACE("visit " + std::to_string(i));
            EXPECT_EQ(after[i].id, imported.visits[before.size() - 1 - i]) << "oldest first";
            EXPECT_EQ(after[i].document, before[i].document) << "to the letter";
            EXPECT_EQ(after[i].state, before[i].state);
            std::vector<VisitVersion> acts;
            for (const VisitVersion &version : valueOf(from().history(before[i].id)))
                if (version.kind != EntryKind::Moved)
                    acts.push_back(version);
            const auto taken = valueOf(to->history(after[i].id));
            ASSERT_EQ(taken.size(), acts.size());
            for (std::size_t a = 0; a < acts.size(); ++a) {
                EXPECT_EQ(taken[a].document, acts[a].document);
                EXPECT_EQ(taken[a].kind, acts[a].kind == EntryKind::Signed ? EntryKind::Late : acts[a].kind);
                EXPECT_EQ(taken[a].author, "Bo Stone") << "who vouches for it here";
                EXPECT_NE(taken[a].reason.find("by Ada Brook on 20"), std::string::npos) << taken[a].reason;
                EXPECT_NE(taken[a].reason.find(acts[a].reason), std::string::npos) << taken[a].reason;
                EXPECT_NE(taken[a].reason.find("Taken over"), std::string::npos);
                if (acts[a].kind != EntryKind::InError) {
                    EXPECT_TRUE(acts[a].careAt.empty() ? taken[a].careAt.size() == 20 : taken[a].careAt == acts[a].careAt);
                }
            }
        }
        EXPECT_TRUE(to->verify().ok());
    }
}

TEST_F(ExportImport, AnExportOfWhatWasImportedIsTheSame)
{
    const auto patient = fill(4);
    std::vector<std::unique_ptr<Practice>> practices;
    std::string text = exported(from(), patient);
    const OrderedJson first = OrderedJson::parse(text);
    for (int i = 0; i < 3; ++i) { // on and on
        practices.push_back(another(("/on" + std::to_string(i) + ".raphe").c_str()));
        const auto imported = valueOf(importPatient(*practices.back(), read(text)));
        text = exported(*practices.back(), imported.patient);
        const OrderedJson again = OrderedJson::parse(text);
        EXPECT_EQ(again.at("patient").dump(), first.at("patient").dump());
        ASSERT_EQ(again.at("visits").size(), first.at("visits").size());
        for (std::size_t v = 0; v < first["visits"].size(); ++v) {
            const OrderedJson &was = first["visits"][v];
            const OrderedJson &is = again["visits"][v];
            EXPECT_EQ(is.at("state"), was.at("state")) << v;
            EXPECT_EQ(is.at("document").dump(), was.at("document").dump()) << v;
            std::vector<std::string> versions;
            std::vector<std::string> versionsAgain;
            for (const auto &[json, list] : {std::pair(&was, &versions), {&is, &versionsAgain}})
                if (json->contains("history"))
                    for (const auto &act : json->at("history"))
                        if (act.contains("document"))
                            list->push_back(act.at("document").dump());
            EXPECT_EQ(versionsAgain, versions) << v;
        }
    }
}

TEST_F(ExportImport, AMergedPatientComesAsOne)
{
    const auto keep = fill(5);
    const auto other = fill(6);
    ASSERT_TRUE(from().merge(keep, other).ok());
    const auto to = another();
    const auto imported = valueOf(importPatient(*to, read(exported(from(), keep))));
    EXPECT_EQ(imported.visits.size(), 20U);
    EXPECT_EQ(valueOf(to->patients()).size(), 1U);
    EXPECT_TRUE(valueOf(to->patient(imported.patient)) == valueOf(from().patient(keep)));
}

TEST_F(ExportImport, TheSamePatientTwiceStaysTwoRecords)
{
    const auto patient = valueOf(from().addPatient(person("Ada Quill", "1980-02-03")));
    const ExportedRecord record = read(exported(from(), patient));
    EXPECT_TRUE(record.visits.empty());
    EXPECT_EQ(record.accesses, 1U) << "the export itself";
    const auto again = valueOf(importPatient(from(), record));
    EXPECT_NE(again.patient, patient);
    EXPECT_EQ(valueOf(from().patients()).size(), 2U);
}

TEST_F(ExportImport, WhatCannotBeImportedLeavesNobody)
{
    ExportedRecord record = read(smallExport().dump());
    record.visits.push_back(record.visits.front());
    record.visits.back().history.front().kind = EntryKind::Amended; // of what was never signed
    const auto to = another();
    const auto refused = importPatient(*to, record);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, ErrorCode::NotAllowed) << inWords(refused.error());
    EXPECT_TRUE(valueOf(to->patients()).empty());
    EXPECT_TRUE(to->verify().ok());
    record.patient.name.clear();
    EXPECT_EQ(importPatient(*to, record).error().code, ErrorCode::OutOfRange);
    EXPECT_TRUE(valueOf(to->patients()).empty());
}

TEST_F(ExportImport, EveryMistakeIsRefusedWithItsPlace)
{
    struct Case {
        const char *pointer;
        const char *value; // JSON; empty: the field is left out
        ErrorCode code;
        const char *place;
        const char *detail;
    };
    const std::vector<Case> cases{
        {"/format", R"("raphe-visit")", ErrorCode::WrongFormat, "/format", "raphe-visit"},
        {"/version", "2", ErrorCode::NewerVersion, "/version", "2"},
        {"/version", "0", ErrorCode::WrongFormat, "/version", "0"},
        {"/version", R"("1")", ErrorCode::WrongType, "/version", "number"},
        {"/colour", "1", ErrorCode::UnknownField, "/", "colour"},
        {"/patient", "", ErrorCode::MissingField, "/", "patient"},
        {"/patient", "[]", ErrorCode::MissingField, "/patient", "format"},
        {"/patient/name", R"("")", ErrorCode::OutOfRange, "/patient/name", "empty"},
        {"/patient/shoe", "42", ErrorCode::UnknownField, "/patient", "shoe"},
        {"/patient/medicines", R"(["a", 3])", ErrorCode::WrongType, "/patient/medicines/1", "text"},
        {"/visits", "", ErrorCode::MissingField, "/", "visits"},
        {"/visits", "{}", ErrorCode::WrongType, "/visits", "array"},
        {"/visits/0", "3", ErrorCode::WrongType, "/visits/0", "object"},
        {"/visits/0/note", "3", ErrorCode::UnknownField, "/visits/0", "note"},
        {"/visits/0/state", R"("lost")", ErrorCode::UnknownWord, "/visits/0/state", "lost"},
        {"/visits/0/state", "", ErrorCode::MissingField, "/visits/0", "state"},
        {"/visits/0/state", R"("draft")", ErrorCode::Contradiction, "/visits/0/history/0", "draft, signed"},
        {"/visits/0/state", R"("entered in error")", ErrorCode::Contradiction, "/visits/0/history/0", "entered in error, signed"},
        {"/visits/0/document", "", ErrorCode::MissingField, "/visits/0", "document"},
        {"/visits/0/document", R"("no JSON at all")", ErrorCode::MissingField, "/visits/0/document", "format"},
        {"/visits/0/document/date", R"("2024-02-30")", ErrorCode::OutOfRange, "/visits/0/document/date", "2024-02-30"},
        {"/visits/0/document/date", R"("2024-03-06")", ErrorCode::Contradiction, "/visits/0/history/0", "document"},
        {"/visits/0/history", "", ErrorCode::MissingField, "/visits/0", "history"},
        {"/visits/0/history", "[]", ErrorCode::MissingField, "/visits/0", "history"},
        {"/visits/0/history", "{}", ErrorCode::WrongType, "/visits/0/history", "array"},
        {"/visits/0/history/0/act", R"("erased")", ErrorCode::OutOfRange, "/visits/0/history/0/act", "allowed: signed"},
        {"/visits/0/history/0/act", R"("read")", ErrorCode::UnknownWord, "/visits/0/history/0/act", "read"},
        {"/visits/0/history/0/act", R"("amended")", ErrorCode::Contradiction, "/visits/0/history/0/act", "amended, draft"},
        {"/visits/0/history/0/act", R"("moved")", ErrorCode::Contradiction, "/visits/0/history/0", "moved, document"},
        {"/visits/0/history/0/author", "", ErrorCode::MissingField, "/visits/0/history/0", "author"},
        {"/visits/0/history/0/entered_at", R"("2024-03-05")", ErrorCode::OutOfRange, "/visits/0/history/0/entered_at",
            "2024-03-05"},
        {"/visits/0/history/0/entered_at", R"("2024-02-30T10:00:00Z")", ErrorCode::OutOfRange, "/visits/0/history/0/entered_at",
            ""},
        {"/visits/0/history/0/entered_at", R"("2024-03-05T25:00:00Z")", ErrorCode::OutOfRange, "/visits/0/history/0/entered_at",
            ""},
        {"/visits/0/history/0/document", "", ErrorCode::MissingField, "/visits/0/history/0", "document"},
        {"/visits/0/history/0/document/findings", R"([{"structure": "tail"}])", ErrorCode::UnknownId,
            "/visits/0/history/0/document/findings/0/structure", "tail"},
        {"/visits/0/history/0/care_at", "3", ErrorCode::WrongType, "/visits/0/history/0/care_at", "text"},
        {"/visits/0/history/0/reason", "[]", ErrorCode::WrongType, "/visits/0/history/0/reason", "text"},
        {"/visits/0/history/0/mood", "1", ErrorCode::UnknownField, "/visits/0/history/0", "mood"},
        {"/accesses", "", ErrorCode::MissingField, "/", "accesses"},
        {"/accesses/0/by", "3", ErrorCode::WrongType, "/accesses/0/by", "text"},
        {"/accesses/0/act", R"("looked")", ErrorCode::UnknownWord, "/accesses/0/act", "looked"},
        {"/accesses/0/at", R"("now")", ErrorCode::OutOfRange, "/accesses/0/at", "now"},
        {"/accesses/0/from", "1", ErrorCode::UnknownField, "/accesses/0", "from"},
    };
    ASSERT_TRUE(readExport(smallExport().dump(), "e.json", atlas()).ok());
    for (const Case &c : cases) {
        OrderedJson json = smallExport();
        const OrderedJson::json_pointer at(c.pointer);
        if (*c.value)
            json[at] = OrderedJson::parse(c.value);
        else
            json.at(at.parent_pointer()).erase(at.back());
        expectError(readExport(json.dump(), "e.json", atlas()), c.code, std::string("e.json#") + c.place, c.detail,
            std::string(c.pointer) + " = " + c.value);
    }
}

TEST_F(ExportImport, ActsFollowOneAnotherAsInAPractice)
{
    const auto withActs = [](const char *state, const std::vector<std::string> &acts) {
        OrderedJson json = smallExport();
        OrderedJson &visit = json["visits"][0];
        const OrderedJson act = visit["history"][0];
        visit["state"] = state;
        visit["history"] = OrderedJson::array();
        for (const std::string &kind : acts) {
            visit["history"].push_back(act);
            visit["history"].back()["act"] = kind;
            if (kind == "moved")
                visit["history"].back().erase("document");
        }
        return readExport(json.dump(), "e.json", atlas());
    };
    EXPECT_TRUE(withActs("signed", {"signed"}).ok());
    EXPECT_TRUE(withActs("signed", {"moved", "late", "amended", "amended"}).ok());
    EXPECT_TRUE(withActs("being amended", {"late", "amended"}).ok());
    EXPECT_TRUE(withActs("entered in error", {"in-error"}).ok());
    EXPECT_TRUE(withActs("entered in error", {"signed", "in-error"}).ok());
    EXPECT_TRUE(withActs("draft", {"moved", "moved"}).ok());
    EXPECT_FALSE(withActs("signed", {"signed", "signed"}).ok());
    EXPECT_FALSE(withActs("signed", {"signed", "late"}).ok());
    EXPECT_FALSE(withActs("signed", {"signed", "moved"}).ok());
    EXPECT_FALSE(withActs("signed", {"amended"}).ok());
    EXPECT_FALSE(withActs("signed", {"moved"}).ok());
    EXPECT_FALSE(withActs("being amended", {"moved"}).ok());
    EXPECT_FALSE(withActs("entered in error", {"in-error", "in-error"}).ok());
    EXPECT_FALSE(withActs("signed", {"signed", "in-error"}).ok());
    EXPECT_FALSE(withActs("signed", {"in-error", "amended"}).ok());
}

TEST_F(ExportImport, WhatIsNoJsonOrNestedWithoutEndIsRefused)
{
    expectError(readExport("{\n \"format\": ?", "e.json", atlas()), ErrorCode::BadJson, "e.json, line 2, column 12", "");
    for (const std::string text : {"", "{\"version\":1e999}", "{\"format\":\"\xff\"}", "\"\\ud800\""})
        EXPECT_EQ(readExport(text, "e.json", atlas()).error().code, ErrorCode::BadJson) << text;
    for (const char *text : {"[]", "null", "3", "\"raphe-export\""})
        expectError(readExport(text, "e.json", atlas()), ErrorCode::MissingField, "e.json#/", "format");
    const std::size_t deep = 2'000'000;
    for (const std::string &text : {std::string(deep, '['), std::string(deep, '[') + std::string(deep, ']'),
             R"({"format": "raphe-export", "version": 1, "visits": )" + std::string(deep, '[') + std::string(deep, ']') + "}"})
        expectError(readExport(text, "e.json", atlas()), ErrorCode::OutOfRange, "e.json", "nested");
    OrderedJson brackets = smallExport(); // in a text they are no nesting
    brackets["patient"]["mark"] = "\\\"" + std::string(200, '[') + "\\";
    EXPECT_TRUE(readExport(brackets.dump(), "e.json", atlas()).ok());
}

} // namespace raphe::test
