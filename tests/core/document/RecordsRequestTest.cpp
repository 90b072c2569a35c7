// The copy of a whole record: every field of the record, every visit with what was signed before, and who used it.
#include "core/document/RecordsRequest.h"
#include "core/document/NoteText.h"
#include "core/record/VisitJson.h"
#include "tests/core/document/NoteTesting.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe::test {

namespace {

std::string wholePart(const NotePart &part)
{
    std::string out = part.title + "\n";
    for (const NoteSection &section : part.sections) {
        out += section.title + "\n";
        for (const NoteLine &line : section.lines)
            out += line.label + ": " + line.text + "\n";
    }
    return out;
}

std::string wholeRequest(const RecordsRequest &request)
{
    std::string out = request.title + "\n";
    for (const NoteLine &line : request.heads)
        out += line.label + ": " + line.text + "\n";
    for (const std::string &words : request.words)
        out += words + "\n";
    out += wholePart(request.contents) + wholePart(request.record);
    for (const ClinicalNote &note : request.notes)
        out += wholeText(note);
    return out + wholePart(request.accesses) + request.limits + "\n";
}

NoteVersion signedEntry(const Visit &visit, RecordAct act, std::int64_t entry, const std::string &reason = {})
{
    NoteVersion out;
    out.entry = entry;
    out.act = act;
    out.author = "Ines Brook";
    out.enteredAt = 1'796'000'000'000 + entry * 60'000;
    out.reason = reason;
    out.visit = visit;
    return out;
}

// A signed and amended visit, one in error, a draft, and one that no program can read.
RecordContent sampleRecord()
{
    RecordContent out;
    out.patient = wholeRecord();
    out.number = 4;
    out.practice = "Lowbridge Practice";
    out.madeBy = "Juno Marsh";
    out.madeAt = 1'796'100'000'000;
    Visit first = notedVisit();
    first.date = "2026-11-15";
    Visit amended = first;
    amended.findings[0].tenderness = Tenderness{1};
    amended.findings[0].note = "felt anew";
    KeptVisit one{NoteState::Signed, writeVisit(amended), amended,
        {signedEntry(first, RecordAct::Signed, 11), signedEntry(amended, RecordAct::Amended, 14, "one grade was wrong")},
        {writeVisit(first), writeVisit(amended)}};
    Visit wrong = notedVisit();
    wrong.date = "2026-11-22";
    wrong.complaints[0].text = "wrong person's knee";
    KeptVisit two{NoteState::InError, writeVisit(wrong), wrong,
        {signedEntry(wrong, RecordAct::InError, 17, "belongs to another patient")}, {writeVisit(wrong)}};
    KeptVisit three{NoteState::Draft, writeVisit(notedVisit()), notedVisit(), {}, {}};
    KeptVisit four{NoteState::Draft, "{\"note\":\"of a later program\"}", {}, {}, {}};
    out.visits = {one, two, three, four};
    out.accesses = {{1'796'000'500'000, "Juno Marsh", RecordAct::Opened}, {1'796'000'900'000, "Ines Brook", RecordAct::Exported}};
    return out;
}

RecordsRequest sampleRequest(const RecordContent &kept, NoteFor readers = NoteFor::Record)
{
    return recordsRequest(noteKnowledge(), kept, readers);
}

void requestLeaves(const nlohmann::json &json, std::vector<std::string> &out)
{
    if (json.is_structured()) {
        for (const auto &child : json)
            requestLeaves(child, out);
    } else if (!json.is_boolean()) {
        out.push_back(json.is_string() ? json.get<std::string>() : json.dump());
    }
}

} // namespace

TEST(RecordsRequest, HoldsEveryFieldOfThePatientsRecord)
{
    const std::string record = wholePart(sampleRequest(sampleRecord()).record);
    auto json = nlohmann::json::parse(writePatient(wholeRecord()));
    json.erase("format");
    json.erase("version");
    for (auto *list : {&json["conditions"], &json["ruled_out"]}) // by their names
        for (auto &item : *list)
            item["condition"] = safetyRules().findCondition(item["condition"].get<std::string>())->name;
    std::vector<std::string> leaves;
    requestLeaves(json, leaves);
    EXPECT_GT(leaves.size(), 45U);
    for (const std::string &leaf : leaves)
        EXPECT_TRUE(hasWords(record, leaf)) << leaf << "\nnot in\n" << record;
    EXPECT_TRUE(hasWords(record, "closed"));
}

TEST(RecordsRequest, HasEachVisitWithWhatWasSignedBefore)
{
    const RecordsRequest request = sampleRequest(sampleRecord());
    ASSERT_EQ(request.notes.size(), 5U) << "four visits, one of them with an earlier version";
    EXPECT_EQ(request.notes[0].state, "");
    EXPECT_EQ(request.notes[1].state, "EARLIER VERSION OF " + momentInRecord(1'796'000'000'000 + 11 * 60'000));
    EXPECT_EQ(request.notes[2].state, "ENTERED IN ERROR");
    EXPECT_EQ(request.notes[3].state, "DRAFT: NOT SIGNED");
    EXPECT_TRUE(hasWords(wholeText(request.notes[0]), "origin, tenderness 1")) << "as it stands";
    EXPECT_TRUE(hasWords(wholeText(request.notes[0]), "one grade was wrong"));
    EXPECT_TRUE(hasWords(wholeText(request.notes[0]), "was 'origin, tenderness 3"));
    EXPECT_TRUE(hasWords(wholeText(request.notes[1]), "origin, tenderness 3"));
    EXPECT_FALSE(hasWords(wholeText(request.notes[1]), "felt anew")) << "nor the amendment that came after it";
    EXPECT_TRUE(hasWords(wholeText(request.notes[2]), "wrong person's knee")
        && hasWords(wholeText(request.notes[2]), "belongs to another"));
    EXPECT_TRUE(hasWords(wholeText(request.notes[4]), "{\"note\":\"of a later program\"}"))
        << "what cannot be read stands as it is";
    EXPECT_TRUE(hasWords(wholeText(request.notes[4]), "cannot be read as a visit"));
    const std::string contents = wholePart(request.contents);
    for (const char *line : {"2026-11-15: signed; earlier versions: 1", "2026-11-22: entered in error",
             "2026-11-29: draft, not signed", "no date: draft, not signed"})
        EXPECT_TRUE(hasWords(contents, line)) << line << "\nnot in\n" << contents;
}

TEST(RecordsRequest, AnEarlierVersionOfAVisitInErrorSaysSoToo)
{
    RecordContent kept = sampleRecord();
    kept.visits.front().state = NoteState::InError;
    EXPECT_EQ(sampleRequest(kept).notes[1].state.rfind("ENTERED IN ERROR, EARLIER VERSION OF ", 0), 0U);
}

// The note of the request is the note of the visit.
TEST(RecordsRequest, LeavesNothingOfANoteOut)
{
    const RecordsRequest request = sampleRequest(sampleRecord());
    NoteGiven given;
    given.state = NoteState::Draft;
    for (const FlatNoteLine &line : flatLines(notedAs(notedVisit(), given), false))
        EXPECT_TRUE(hasWords(wholeText(request.notes[3]), line.line.text)) << wholeText(line);
}

TEST(RecordsRequest, TellsWhoUsedTheRecordAndWhatItIs)
{
    const std::string all = wholeRequest(sampleRequest(sampleRecord()));
    for (const std::string &words : {momentInRecord(1'796'000'500'000) + ": Juno Marsh: opened the record",
             momentInRecord(1'796'000'900'000) + ": Ines Brook: exported the record", std::string("Practice: Lowbridge Practice"),
             std::string("Made by: Juno Marsh"), "Made: " + momentInRecord(1'796'100'000'000),
             std::string("Number in the practice: 4"), std::string("Visits: 4"), std::string("hand it to the patient alone"),
             std::string("Assists a trained practitioner; follow local law, scope of practice and licensed care.")})
        EXPECT_TRUE(hasWords(all, words)) << words << "\nnot in\n" << all;
}

TEST(RecordsRequest, ACopyForOthersHasNothingThatWasAnsweredAlone)
{
    RecordContent kept = sampleRecord();
    const std::string without = wholeRequest(sampleRequest(kept, NoteFor::Others));
    for (const WarningSign &sign : safetyRules().signs().signs)
        if (sign.alone) {
            const WarningAnswer secret{sign.id, true, "2026-11-15", {}, Decision::Referred, "whispered", "hotline"};
            for (KeptVisit &visit : kept.visits) {
                if (!visit.visit)
                    continue;
                visit.visit->warnings.push_back(secret);
                visit.document = writeVisit(*visit.visit);
                for (std::size_t i = 0; i < visit.versions.size(); ++i) {
                    visit.versions[i].visit->warnings.push_back(secret);
                    visit.documents[i] = writeVisit(*visit.versions[i].visit);
                }
            }
        }
    kept.visits[3].document = "{\"warnings\":\"whispered\"}";
    EXPECT_TRUE(hasWords(wholeRequest(sampleRequest(kept)), "whispered"));
    EXPECT_EQ(wholeRequest(sampleRequest(kept, NoteFor::Others)), without);
    EXPECT_FALSE(hasWords(without, "later program")) << "of what cannot be read nothing can be left out";
}

TEST(RecordsRequest, ARecordWithoutVisitsIsACopyAllTheSame)
{
    RecordContent kept;
    kept.patient.name = "Ada Quill";
    const RecordsRequest request = sampleRequest(kept);
    EXPECT_TRUE(request.notes.empty());
    EXPECT_TRUE(request.accesses.sections.empty());
    EXPECT_EQ(request.patient, "Ada Quill");
    EXPECT_TRUE(hasWords(wholeRequest(request), "Visits: 0"));
}

} // namespace raphe::test
