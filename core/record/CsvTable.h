// A table in a text (CSV), cut into rows and cells; what the cells mean is none of its business.
//
// The table is as RFC 4180 says: cells in double quotes may hold separators, line breaks and doubled quotes. Beyond it:
// the separator is any one character; lines end with CRLF, LF or CR; rows without any content are passed over.
// Whether all rows have as many cells is for the caller to see. Any thread, but one table is for one at a time.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct CsvTableRow {
    std::size_t line = 1; // of the text, from 1; where the row begins
    std::vector<std::string> cells; // as they stand between the separators, without their quotes
    std::string mistake; // of the quoting; empty: none
    std::size_t mistakeCell = 0;

    /// Whether no cell holds more than white space.
    [[nodiscard]] bool isBlank() const;
};

/// After a mistake of the quoting the row goes on as far as it can be told, and the next one is read as if there was none.
class CsvTable {
public:
    /// The text must outlive the table.
    CsvTable(std::string_view text, char separator) : m_text(text), m_separator(separator) { }

    /// The next row that is not blank; nothing at the end.
    [[nodiscard]] std::optional<CsvTableRow> next();

private:
    CsvTableRow readRow();
    std::string readCell(CsvTableRow &row);
    std::string readQuoted(CsvTableRow &row);
    [[nodiscard]] bool isLineEnd(std::size_t at) const;
    bool takeSeparator();
    void takeLineBreak();

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
};

/// The cell's content without the white space around it.
[[nodiscard]] std::string trimmedCell(const std::string &cell);

/// How messages name a place: the file, the line (from 1) and, unless it is empty, the column.
[[nodiscard]] std::string csvPlace(const std::string &file, std::size_t line, const std::string &column);

} // namespace raphe
