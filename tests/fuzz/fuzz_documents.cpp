// What stands in the sealed boxes, after unsealing: whoever has the keys, or made the file with another program, may have sealed
// anything. Any bytes read as what they should be, or fail with a place; what reads is written and read back equal.
// Input: the first byte says whose place the rest takes.
//   'p' a patient's record    's' the settings    'v' a visit's document    'e' what a signed entry says
//   'a' a user's name         'h' the head        'm' what a merger's entry says
#include "tests/fuzz/Expect.h"
#include "tests/fuzz/SmallPractice.h"
#include "tests/support/storage/StorageShim.h"

#include "core/base/JsonReader.h"
#include "core/record/PatientRecordJson.h"
#include "core/record/PatientSearch.h"
#include "core/store/Entries.h"
#include "core/store/Export.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <cstdint>
#include <filesystem>

namespace {

using namespace raphe;
using fuzz::expect;

// Whether it is one.
bool readRecord(const std::string &text)
{
    const auto record = readPatient(text, "input.json");
    if (!record) {
        expect(!record.error().place.empty(), "an error has a place", record.error().detail);
        return false;
    }
    const std::string written = writePatient(record.value());
    const auto again = readPatient(written, "written.json");
    expect(again.ok() && again.value() == record.value(), "a record reads back equal", written);
    expect(PatientQuery(record.value().name).matches(searchText(record.value())), "a record is found by its name", written);
    return true;
}

bool readPracticeSettings(const std::string &text)
{
    const auto settings = readSettings(text, "input.json");
    if (!settings) {
        expect(!settings.error().place.empty(), "an error has a place", settings.error().detail);
        return false;
    }
    const auto again = readSettings(writeSettings(settings.value()), "written.json");
    expect(again.ok() && again.value() == settings.value(), "settings read back equal", writeSettings(settings.value()));
    return true;
}

// Seals the text into its place, by the keys; the sums need not hold, since they are not looked at before `verify`.
void sealInto(const std::string &file, std::uint8_t kind, const std::string &text)
{
    const Keyring &keys = *fuzz::smallPractice().keys;
    const Database db(file);
    const auto place = [&](const char *table, std::int64_t row, const char *column, std::int64_t changes) {
        return boxPlace(keys.practice, table, row, column, changes);
    };
    const auto keyOf = [&](std::int64_t patient) {
        return unsealKey(keys.fileKey, db.single("SELECT patient_key FROM patient WHERE id = ?", {patient}).blob(0),
            place("patient", patient, "patient_key", 0));
    };
    const auto entry = [&](const char *kindWord) {
        const std::int64_t number = db.number("SELECT MIN(number) FROM entry WHERE kind = ?", {std::string(kindWord)});
        db.run("UPDATE entry SET content = ? WHERE number = ?",
            {sealText(keyOf(1), text, contentPlace(keys.practice, number)), number});
    };
    switch (kind) {
    case 'p': {
        const std::int64_t changes = db.number("SELECT changes FROM patient WHERE id = 1");
        db.run("UPDATE patient SET record = ? WHERE id = 1", {sealText(keyOf(1), text, place("patient", 1, "record", changes))});
        break;
    }
    case 's': {
        const std::int64_t changes = db.number("SELECT changes FROM practice WHERE id = 1");
        db.run("UPDATE practice SET settings = ? WHERE id = 1",
            {sealText(keys.fileKey, text, place("practice", 1, "settings", changes))});
        break;
    }
    case 'v': {
        const std::int64_t changes = db.number("SELECT changes FROM visit WHERE id = 1");
        db.run("UPDATE visit SET document = ? WHERE id = 1", {sealText(keyOf(1), text, place("visit", 1, "document", changes))});
        break;
    }
    case 'a':
        db.run("UPDATE account SET card = ? WHERE id = 1", {sealText(keys.fileKey, text, place("account", 1, "card", 0))});
        break;
    case 'h': db.run("UPDATE head SET seal = ?", {sealText(keys.fileKey, text, place("head", 1, "seal", 0))}); break;
    case 'm': entry("merged"); break;
    default: entry("late"); break;
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::uint8_t kind = size > 0 ? data[0] : std::uint8_t{'p'};
    const std::string text(data + std::min<std::size_t>(size, 1), data + size);
    if ((kind == 'p' && !readRecord(text)) || (kind == 's' && !readPracticeSettings(text)))
        return 0; // the practice would say the same, slowly

    const std::string watched = fuzz::workFolder() + "/watched";
    std::filesystem::remove_all(watched);
    std::filesystem::create_directories(watched);
    const std::string file = watched + "/input.raphe";
    fuzz::putFile(file, fuzz::smallPractice().bytes);
    const test::StorageShim shim(watched); // it leaves syncs out, which is most of the time
    auto practice = Practice::open(file, fuzz::smallPractice().keys);
    expect(practice.ok(), "the small practice opens");
    sealInto(file, kind, text);
    static_cast<void>(fuzz::allOf(*practice.value(), false));
    const auto exported = exportPatient(*practice.value(), 1);
    if (exported)
        expect(nlohmann::json::accept(exported.value().json), "an export is JSON", exported.value().json);
    else
        expect(!exported.error().place.empty(), "an error has a place", exported.error().detail);
    if (kind == 'h') {
        expect(!practice.value()->verify().ok(), "another head does not verify");
        static_cast<void>(Practice::open(file, fuzz::smallPractice().keys));
    } else {
        static_cast<void>(practice.value()->beginAmendment(1));
        static_cast<void>(practice.value()->dropAmendment(1)); // looks for the words that were signed
    }
    return 0;
}
