#include "core/record/CsvTable.h"

#include <algorithm>

namespace raphe {

namespace {

constexpr const char *whiteSpace = " \t\r\n";

void note(CsvTableRow &row, const char *mistake)
{
    if (!row.mistake.empty())
        return;
    row.mistake = mistake;
    row.mistakeCell = row.cells.size();
}

} // namespace

bool CsvTableRow::isBlank() const
{
    return mistake.empty() && std::all_of(cells.begin(), cells.end(), [](const std::string &cell) {
        return cell.find_first_not_of(whiteSpace) == std::string::npos;
    });
}

std::optional<CsvTableRow> CsvTable::next()
{
    while (m_at < m_text.size()) {
        CsvTableRow row = readRow();
        if (!row.isBlank())
            return row;
    }
    return std::nullopt;
}

CsvTableRow CsvTable::readRow()
{
    CsvTableRow row;
    row.line = m_line;
    do
        row.cells.push_back(readCell(row));
    while (takeSeparator());
    takeLineBreak();
    return row;
}

std::string CsvTable::readCell(CsvTableRow &row)
{
    const bool quoted = m_at < m_text.size() && m_text[m_at] == '"';
    std::string cell = quoted ? readQuoted(row) : std::string();
    const std::size_t start = m_at;
    while (m_at < m_text.size() && m_text[m_at] != m_separator && m_text[m_at] != '\n' && m_text[m_at] != '\r')
        ++m_at;
    const std::string_view rest = m_text.substr(start, m_at - start);
    if (quoted && !rest.empty())
        note(row, "a separator after the closing quote");
    else if (rest.find('"') != std::string_view::npos)
        note(row, "quotes around the whole cell only, doubled inside");
    return cell.append(rest);
}

std::string CsvTable::readQuoted(CsvTableRow &row)
{
    std::string cell;
    for (++m_at; m_at < m_text.size(); ++m_at) {
        if (m_text[m_at] == '"') {
            if (m_at + 1 >= m_text.size() || m_text[m_at + 1] != '"') {
                ++m_at;
                return cell;
            }
            ++m_at;
        } else if (isLineEnd(m_at)) {
            ++m_line;
        }
        cell += m_text[m_at];
    }
    note(row, "a closing quote; the rest of the file is in this cell");
    return cell;
}

// The CR of a CRLF is no end of its own.
bool CsvTable::isLineEnd(std::size_t at) const
{
    return m_text[at] == '\n' || (m_text[at] == '\r' && (at + 1 >= m_text.size() || m_text[at + 1] != '\n'));
}

bool CsvTable::takeSeparator()
{
    if (m_at >= m_text.size() || m_text[m_at] != m_separator)
        return false;
    ++m_at;
    return true;
}

void CsvTable::takeLineBreak()
{
    if (m_at >= m_text.size())
        return;
    if (!isLineEnd(m_at))
        ++m_at;
    ++m_at;
    ++m_line;
}

std::string trimmedCell(const std::string &cell)
{
    const std::size_t first = cell.find_first_not_of(whiteSpace);
    return first == std::string::npos ? std::string() : cell.substr(first, cell.find_last_not_of(whiteSpace) - first + 1);
}

std::string csvPlace(const std::string &file, std::size_t line, const std::string &column)
{
    return file + ", line " + std::to_string(line) + (column.empty() ? "" : ", column " + column);
}

} // namespace raphe
