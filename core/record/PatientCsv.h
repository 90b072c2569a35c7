// A patient list from a table (CSV), looked at before anything is imported: what each column becomes, each row as a
// record or with its mistake, and rows that look like a patient who is there already. Nothing is stored here.
//
// The table is as RFC 4180 says: cells in double quotes may hold separators, line breaks and doubled quotes; every row
// has as many cells as the header. Beyond it: the separator may be a comma, a semicolon or a tab (the one with which most
// column names of the header line are known); lines end with CRLF, LF or CR; the text is UTF-8, with or without a byte
// order mark; rows without any content are passed over; white space around a cell's content is dropped.
// Plain functions of plain values; any thread.
#pragma once

#include "core/base/Result.h"
#include "core/record/CsvColumns.h"
#include "core/record/CsvDate.h"
#include "core/record/CsvRows.h"
#include "core/record/PatientDuplicates.h"
#include "core/record/PatientRecord.h"

#include <cstddef>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct CsvOptions {
    std::string file; // its name in messages
    std::optional<DateOrder> dateOrder;
    std::size_t mostComparisons = 2'000'000; // of two people in search of duplicates: a second or so; our choice
};

struct CsvPreview {
    std::string file;
    std::vector<CsvColumn> columns;
    std::vector<CsvRow> rows; // in the order of the file
    /// For each row the one most like it among the existing records, and among the earlier rows. Compared are those that
    /// share a date of birth or a word of a name.
    std::vector<CsvDuplicate> duplicates;
    bool comparedAll = true; // false: there was too much alike to compare it all, and duplicates may be missing
    bool dateOrderNeeded = false; // a row's date can be read in two ways and no order was chosen
};

/// Fails for the whole file when there is no header line or it is broken, no column holds the name (or first and last
/// name), or two columns hold the same. Everything else is a mistake of a row. A date with slashes that cannot be told
/// apart follows options.dateOrder; one that speaks against the chosen order is a mistake.
[[nodiscard]] Result<CsvPreview> previewCsv(
    std::string_view text, const CsvOptions &options, std::span<const PatientRecord> existing);

/// The records of all rows but those left out (indices into rows), in the order of the file. Fails when a row with a
/// mistake is not left out (its code and detail, with file, line and column), or an index names no row.
[[nodiscard]] Result<std::vector<PatientRecord>> chosenRows(const CsvPreview &preview, const std::set<std::size_t> &leaveOut);

} // namespace raphe
