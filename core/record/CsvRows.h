// The rows of a patient list: each as a record, or the mistake for which it is none. Plain functions of plain values;
// any thread.
#pragma once

#include "core/base/Result.h"
#include "core/record/CsvColumns.h"
#include "core/record/CsvDate.h"
#include "core/record/CsvTable.h"
#include "core/record/PatientRecord.h"

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace raphe {

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

struct CsvRows {
    std::vector<CsvRow> rows; // in the order of the file
    bool dateOrderNeeded = false; // a row's date can be read in two ways and no order was chosen
};

/// Reads what is left of the table, the header line being taken. A record that is given keeps the rules of checkPatient.
[[nodiscard]] CsvRows readRows(CsvTable &table, const std::vector<CsvColumn> &columns, std::optional<DateOrder> dateOrder);

} // namespace raphe
