// A mistake of a row is thrown as RowError and caught where the row is read.
#include "core/record/CsvRows.h"

#include "core/base/Utf8.h"

#include <algorithm>
#include <array>
#include <utility>

namespace raphe {

namespace {

// Puts b after a, with something between them when both are there.
std::string together(const std::string &a, const char *between, const std::string &b)
{
    return a.empty() || b.empty() ? a + b : a + between + b;
}

// One row of the table as a record.
class RowReader {
public:
    RowReader(const std::vector<CsvColumn> &columns, std::optional<DateOrder> dateOrder)
        : m_columns(columns), m_dateOrder(dateOrder)
    {
    }

    CsvRow read(const CsvTableRow &row)
    {
        try {
            m_line = row.line;
            return {row.line, readRecord(row)};
        } catch (const RowError &error) {
            return {row.line, error};
        }
    }

    [[nodiscard]] bool dateOrderNeeded() const { return m_dateOrderNeeded; }

private:
    [[noreturn]] void fail(const std::string &column, ErrorCode code, std::string detail) const
    {
        throw RowError{m_line, column, code, std::move(detail)};
    }

    PatientRecord readRecord(const CsvTableRow &row)
    {
        const std::size_t wanted = m_columns.size();
        if (!row.mistake.empty())
            fail(row.mistakeCell < wanted ? m_columns[row.mistakeCell].header : "", ErrorCode::WrongType, row.mistake);
        if (row.cells.size() != wanted)
            fail({}, ErrorCode::OutOfRange,
                std::to_string(row.cells.size()) + " cells, allowed: " + std::to_string(wanted) + " as in the header line");
        PatientRecord record;
        std::array<std::string, csvFieldWords.size()> texts; // by field
        for (std::size_t i = 0; i < wanted; ++i) {
            const CsvColumn &column = m_columns[i];
            if (!isUtf8(row.cells[i]))
                fail(column.header, ErrorCode::WrongType, "UTF-8 text");
            const std::string cell = trimmedCell(row.cells[i]);
            if (column.becomes == CsvField::NotUsed || cell.empty())
                continue;
            if (!putInList(record, column.becomes, cell)) {
                checkLength(column.header, cell);
                std::string &text = texts[static_cast<std::size_t>(column.becomes)];
                text = together(text, "; ", column.becomes == CsvField::Born ? readDate(column.header, cell) : cell);
            }
        }
        putTexts(record, texts);
        if (record.name.empty())
            fail(nameColumn(), ErrorCode::MissingField, "name");
        if (const auto sound = checkPatient(record, {}); !sound)
            fail({}, sound.error().code, sound.error().place + ": " + sound.error().detail);
        return record;
    }

    void checkLength(const std::string &column, const std::string &cell) const
    {
        const std::size_t length = characterCount(cell);
        if (length > PatientRecord::longestText)
            fail(column, ErrorCode::OutOfRange,
                std::to_string(length) + " characters, allowed: at most " + std::to_string(PatientRecord::longestText));
    }

    static std::vector<std::string> entries(const std::string &cell)
    {
        std::vector<std::string> out;
        for (std::size_t start = 0; start <= cell.size();) {
            const std::size_t end = std::min(cell.find_first_of(";\r\n", start), cell.size());
            if (std::string entry = trimmedCell(cell.substr(start, end - start)); !entry.empty())
                out.push_back(std::move(entry));
            start = end + 1;
        }
        return out;
    }

    static bool putInList(PatientRecord &record, CsvField field, const std::string &cell)
    {
        if (field == CsvField::Complaint) {
            record.complaints.push_back({static_cast<int>(record.complaints.size()) + 1, cell, {}, false});
            return true;
        }
        if (field != CsvField::Medicines && field != CsvField::Allergies && field != CsvField::Surgery)
            return false;
        for (std::string &entry : entries(cell)) {
            if (field == CsvField::Surgery)
                record.surgery.push_back({std::move(entry), {}});
            else
                (field == CsvField::Medicines ? record.medicines : record.allergies).push_back(std::move(entry));
        }
        return true;
    }

    static void putTexts(PatientRecord &record, const std::array<std::string, csvFieldWords.size()> &texts)
    {
        const auto text = [&](CsvField field) -> const std::string & { return texts[static_cast<std::size_t>(field)]; };
        const auto contact = [&](CsvField name, CsvField phone) -> std::optional<Contact> {
            if (text(name).empty() && text(phone).empty())
                return std::nullopt;
            return Contact{text(name), text(phone)};
        };
        record.name = text(CsvField::Name).empty() ? together(text(CsvField::FirstName), " ", text(CsvField::LastName))
                                                   : text(CsvField::Name);
        record.born = text(CsvField::Born);
        record.mark = text(CsvField::Mark);
        record.language = text(CsvField::Language);
        record.interpreter = text(CsvField::Interpreter);
        record.phone = text(CsvField::Phone);
        record.email = text(CsvField::Email);
        record.address = together(text(CsvField::Address), ", ", text(CsvField::Street));
        record.address = together(record.address, ", ", together(text(CsvField::Postcode), " ", text(CsvField::City)));
        record.address = together(record.address, ", ", text(CsvField::Country));
        record.doctor = contact(CsvField::Doctor, CsvField::DoctorPhone);
        record.emergency = contact(CsvField::Emergency, CsvField::EmergencyPhone);
        record.guardian = contact(CsvField::Guardian, CsvField::GuardianPhone);
    }

    [[nodiscard]] std::string nameColumn() const
    {
        const CsvField field = hasField(m_columns, CsvField::Name) ? CsvField::Name : CsvField::LastName;
        return std::find_if(m_columns.begin(), m_columns.end(), [field](const CsvColumn &c) {
            return c.becomes == field;
        })->header;
    }

    std::string readDate(const std::string &column, const std::string &cell)
    {
        CsvDate date = readCsvDate(cell, m_dateOrder);
        m_dateOrderNeeded = m_dateOrderNeeded || date.orderNeeded;
        if (!date.iso)
            fail(column, date.iso.error().code, date.iso.error().detail);
        return std::move(date.iso).value();
    }

    const std::vector<CsvColumn> &m_columns;
    std::optional<DateOrder> m_dateOrder;
    std::size_t m_line = 0;
    bool m_dateOrderNeeded = false;
};

} // namespace

CsvRows readRows(CsvTable &table, const std::vector<CsvColumn> &columns, std::optional<DateOrder> dateOrder)
{
    CsvRows out;
    RowReader reader(columns, dateOrder);
    while (const std::optional<CsvTableRow> row = table.next())
        out.rows.push_back(reader.read(*row));
    out.dateOrderNeeded = reader.dateOrderNeeded();
    return out;
}

} // namespace raphe
