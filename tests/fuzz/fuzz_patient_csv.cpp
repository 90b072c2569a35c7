// Patient lists: any bytes give a refusal with a place or a preview. Its rows go down the file; what reads as a record is in
// order and comes back from its JSON form; a mistake says what it is, and must be left out before the rest is given.
#include "tests/fuzz/Expect.h"

#include "core/record/PatientCsv.h"
#include "core/record/PatientRecordJson.h"
#include "core/record/PatientSearch.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <set>
#include <string>

namespace {

using namespace raphe;
using fuzz::expect;

void expectRow(const CsvRow &row)
{
    if (!row.ok()) {
        expect(!row.error().detail.empty(), "a mistake says what it is", row.error().column);
        expect(row.error().line == row.line, "a mistake is on the row's line", row.error().detail);
        return;
    }
    const std::string text = writePatient(row.record());
    const auto again = readPatient(text, "written.json");
    expect(again.ok(), "a row's record can be written and read", text);
    expect(again.value() == row.record(), "a row's record reads back equal", text);
    expect(PatientQuery(row.record().name).matches(searchText(row.record())), "a row is found by its name", text);
}

void expectPreview(const CsvPreview &preview)
{
    std::size_t line = 0;
    std::set<std::size_t> mistakes;
    for (std::size_t i = 0; i < preview.rows.size(); ++i) {
        const CsvRow &row = preview.rows[i];
        expect(row.line > line, "rows go down the file");
        line = row.line;
        expectRow(row);
        if (!row.ok())
            mistakes.insert(i);
    }
    for (const CsvDuplicate &d : preview.duplicates)
        expect(d.row < preview.rows.size() && d.other < d.row && d.likeness >= duplicateLikeness && d.likeness <= 1,
            "a duplicate is of an earlier row");
    expect(chosenRows(preview, {}).ok() == mistakes.empty(), "mistakes must be left out");
    const auto chosen = chosenRows(preview, mistakes);
    expect(chosen.ok() && chosen.value().size() + mistakes.size() == preview.rows.size(), "the rest is given");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string text(data, data + size);
    constexpr std::array<std::optional<DateOrder>, 3> orders{std::nullopt, DateOrder::DayFirst, DateOrder::MonthFirst};
    for (const std::optional<DateOrder> order : orders) {
        CsvOptions options;
        options.file = "input.csv";
        options.dateOrder = order;
        const auto preview = previewCsv(text, options, {});
        if (preview)
            expectPreview(preview.value());
        else
            expect(!preview.error().place.empty(), "an error has a place", preview.error().detail);
    }
    return 0;
}
