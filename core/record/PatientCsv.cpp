#include "core/record/PatientCsv.h"

#include "core/record/CsvTable.h"

#include <utility>

namespace raphe {

Result<CsvPreview> previewCsv(std::string_view text, const CsvOptions &options, std::span<const PatientRecord> existing)
{
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    CsvTable table(text, separatorOf(text));
    auto columns = readHeader(table, options.file);
    if (!columns)
        return columns.error();
    CsvRows read = readRows(table, columns.value(), options.dateOrder);
    CsvPreview preview{options.file, std::move(columns).value(), std::move(read.rows), {}};
    preview.dateOrderNeeded = read.dateOrderNeeded;
    CsvDuplicates duplicates = findDuplicates(preview.rows, existing, options.mostComparisons);
    preview.duplicates = std::move(duplicates.found);
    preview.comparedAll = duplicates.comparedAll;
    return preview;
}

Result<std::vector<PatientRecord>> chosenRows(const CsvPreview &preview, const std::set<std::size_t> &leaveOut)
{
    if (!leaveOut.empty() && *leaveOut.rbegin() >= preview.rows.size())
        return Error{ErrorCode::OutOfRange, preview.file,
            "row " + std::to_string(*leaveOut.rbegin()) + ", allowed: below " + std::to_string(preview.rows.size())};
    std::vector<PatientRecord> records;
    for (std::size_t i = 0; i < preview.rows.size(); ++i) {
        if (leaveOut.contains(i))
            continue;
        const CsvRow &row = preview.rows[i];
        if (!row.ok()) {
            const RowError &error = row.error();
            return Error{error.code, csvPlace(preview.file, error.line, error.column), error.detail};
        }
        records.push_back(row.record());
    }
    return records;
}

} // namespace raphe
