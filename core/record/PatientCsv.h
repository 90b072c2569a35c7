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
#include "core/base/Words.h"
#include "core/record/PatientRecord.h"

#include <cstddef>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace raphe {

/// How to read a date such as 03/04/1980. The user chooses; there is no default.
enum class DateOrder { DayFirst, MonthFirst };

/// What a column becomes.
enum class CsvField {
    NotUsed,
    Name,
    FirstName,
    LastName,
    Born,
    Phone,
    Email,
    Address,
    Street,
    Postcode,
    City,
    Country,
    Language,
    Interpreter,
    Mark,
    Doctor,
    DoctorPhone,
    Emergency,
    EmergencyPhone,
    Guardian,
    GuardianPhone,
    Medicines, // lists: entries apart by ';' or line breaks
    Allergies,
    Surgery,
    Complaint
};
inline constexpr WordTable<CsvField, 25> csvFieldWords{{{CsvField::NotUsed, "not used"}, {CsvField::Name, "name"},
    {CsvField::FirstName, "first name"}, {CsvField::LastName, "last name"}, {CsvField::Born, "date of birth"},
    {CsvField::Phone, "phone"}, {CsvField::Email, "email"}, {CsvField::Address, "address"}, {CsvField::Street, "street"},
    {CsvField::Postcode, "postcode"}, {CsvField::City, "city"}, {CsvField::Country, "country"}, {CsvField::Language, "language"},
    {CsvField::Interpreter, "interpreter"}, {CsvField::Mark, "mark"}, {CsvField::Doctor, "doctor"},
    {CsvField::DoctorPhone, "doctor's phone"}, {CsvField::Emergency, "emergency contact"},
    {CsvField::EmergencyPhone, "emergency phone"}, {CsvField::Guardian, "guardian"},
    {CsvField::GuardianPhone, "guardian's phone"}, {CsvField::Medicines, "medicines"}, {CsvField::Allergies, "allergies"},
    {CsvField::Surgery, "surgery"}, {CsvField::Complaint, "complaint"}}};

struct CsvOptions {
    std::string file; // its name in messages
    std::optional<DateOrder> dateOrder;
    std::size_t mostComparisons = 2'000'000; // of two people in search of duplicates: a second or so; our choice
};

struct CsvColumn {
    std::string header; // as it stands in the file
    CsvField becomes = CsvField::NotUsed;
    bool operator==(const CsvColumn &) const = default;
};

struct RowError {
    std::size_t line = 0; // of the file, from 1; where the row begins
    std::string column; // header; empty when it is about the whole row
    ErrorCode code{};
    std::string detail;
    bool operator==(const RowError &) const = default;
};

struct CsvRow {
    std::size_t line = 0; // of the file, from 1; where the row begins
    std::variant<PatientRecord, RowError> content;
    [[nodiscard]] bool ok() const { return content.index() == 0; }
    [[nodiscard]] const PatientRecord &record() const { return std::get<0>(content); }
    [[nodiscard]] const RowError &error() const { return std::get<1>(content); }
};

/// From this likeness on two records are shown as perhaps one person. Our choice, no source.
inline constexpr double duplicateLikeness = 0.75;

struct CsvDuplicate {
    enum class Among { Existing, Rows };
    std::size_t row = 0; // index into CsvPreview::rows
    Among among{};
    std::size_t other = 0; // index into the existing records, or of an earlier row
    double likeness = 0;
    bool operator==(const CsvDuplicate &) const = default;
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
