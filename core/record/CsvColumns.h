// What the columns of a patient list become: told by the words of its header line, in English, German or Spanish.
// Plain functions of plain values; any thread.
#pragma once

#include "core/base/Result.h"
#include "core/base/Words.h"
#include "core/record/CsvTable.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

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

struct CsvColumn {
    std::string header; // as it stands in the file
    CsvField becomes = CsvField::NotUsed;
    bool operator==(const CsvColumn &) const = default;
};

/// The comma, semicolon or tab with which most column names of the header line are known; the first of equals that cuts
/// the line into most cells.
[[nodiscard]] char separatorOf(std::string_view text);

/// Takes the header line. Fails when there is none or it is broken, no column holds the name (or first and last name), or
/// two columns hold the same. The error's place names `file`, line and column.
[[nodiscard]] Result<std::vector<CsvColumn>> readHeader(CsvTable &table, const std::string &file);

[[nodiscard]] bool hasField(const std::vector<CsvColumn> &columns, CsvField field);

} // namespace raphe
