// Exports of other practices: any bytes are refused with a place, or are a record that a practice takes whole: the same record,
// the same visits to the letter, in the same states, with the same versions. The practice verifies, and its own export is read
// again.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/fuzz/Expect.h"
#include "tests/fuzz/SmallPractice.h"
#include "tests/support/storage/StorageShim.h"

#include "core/store/Export.h"
#include "core/store/ExportImport.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>

namespace {

using namespace raphe;
using fuzz::expect;

template <class T> T must(Result<T> result, const char *promise)
{
    expect(result.ok(), promise, result ? std::string() : result.error().place + ": " + result.error().detail);
    return std::move(result).value();
}

std::vector<std::string> versionsOf(const ExportedVisit &visit)
{
    std::vector<std::string> out;
    for (const ExportedAct &act : visit.history)
        if (!act.document.empty())
            out.push_back(act.document);
    return out;
}

void expectSame(const ExportedRecord &before, const ExportedRecord &after)
{
    expect(before.patient == after.patient, "the record is the same");
    expect(before.visits.size() == after.visits.size(), "no visit is lost");
    for (std::size_t i = 0; i < before.visits.size(); ++i) {
        expect(before.visits[i].document == after.visits[i].document, "a visit is the same", after.visits[i].document);
        expect(before.visits[i].visit == after.visits[i].visit, "it reads the same", after.visits[i].document);
        expect(before.visits[i].state == after.visits[i].state, "a visit is in the same state", after.visits[i].document);
        expect(versionsOf(before.visits[i]) == versionsOf(after.visits[i]), "no version is lost", after.visits[i].document);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    static const Atlas atlas = raphe::test::tinyAtlas();
    const auto read = readExport(std::string(data, data + size), "input.json", atlas);
    if (!read) {
        expect(!read.error().place.empty(), "an error has a place", read.error().detail);
        return 0;
    }
    const std::string watched = fuzz::workFolder() + "/watched";
    std::filesystem::remove_all(watched);
    std::filesystem::create_directories(watched);
    const std::string file = watched + "/input.raphe";
    fuzz::putFile(file, fuzz::smallPractice().bytes);
    const test::StorageShim shim(watched); // it leaves syncs out, which is most of the time
    const auto practice = must(Practice::open(file, fuzz::smallPractice().keys), "the small practice opens");
    const ImportedPatient imported = must(importPatient(*practice, read.value()), "what was read is taken");
    must(practice->verify(), "the practice verifies");
    const PatientExport again = must(exportPatient(*practice, imported.patient), "what was taken is exported");
    expectSame(read.value(), must(readExport(again.json, "again.json", atlas), "the export is read"));
    return 0;
}
