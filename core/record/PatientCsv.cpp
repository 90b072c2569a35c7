// Reads a patient list: the table's cells, then what its header means, then each row, then who may be there twice.
// Inside this file a mistake of a row is thrown as RowError and caught where the row is read.
#include "core/record/PatientCsv.h"

#include "core/record/Visit.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <unordered_map>
#include <utility>

namespace raphe {

namespace {

struct TableRow {
    std::size_t line = 1; // where it begins
    std::vector<std::string> cells;
    std::string mistake; // of the quoting; empty: none
    std::size_t mistakeCell = 0;

    [[nodiscard]] bool isBlank() const
    {
        return mistake.empty() && std::all_of(cells.begin(), cells.end(), [](const std::string &cell) {
            return cell.find_first_not_of(" \t\r\n") == std::string::npos;
        });
    }
};

// Cuts a text into rows and cells. After a mistake the row goes on as far as it can be told.
class Table {
public:
    Table(std::string_view text, char separator) : m_text(text), m_separator(separator) { }

    /// The next row that is not blank; nothing at the end.
    std::optional<TableRow> next()
    {
        while (m_at < m_text.size()) {
            TableRow row = readRow();
            if (!row.isBlank())
                return row;
        }
        return std::nullopt;
    }

private:
    TableRow readRow()
    {
        TableRow row;
        row.line = m_line;
        do
            row.cells.push_back(readCell(row));
        while (takeSeparator());
        takeLineBreak();
        return row;
    }

    std::string readCell(TableRow &row)
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

    std::string readQuoted(TableRow &row)
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

    static void note(TableRow &row, const char *mistake)
    {
        if (!row.mistake.empty())
            return;
        row.mistake = mistake;
        row.mistakeCell = row.cells.size();
    }

    // The CR of a CRLF is no end of its own.
    [[nodiscard]] bool isLineEnd(std::size_t at) const
    {
        return m_text[at] == '\n' || (m_text[at] == '\r' && (at + 1 >= m_text.size() || m_text[at + 1] != '\n'));
    }

    bool takeSeparator()
    {
        if (m_at >= m_text.size() || m_text[m_at] != m_separator)
            return false;
        ++m_at;
        return true;
    }

    void takeLineBreak()
    {
        if (m_at >= m_text.size())
            return;
        if (!isLineEnd(m_at))
            ++m_at;
        ++m_at;
        ++m_line;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
};

std::string trimmed(const std::string &text)
{
    constexpr const char *space = " \t\r\n";
    const std::size_t first = text.find_first_not_of(space);
    return first == std::string::npos ? std::string() : text.substr(first, text.find_last_not_of(space) - first + 1);
}

struct HeaderWords {
    CsvField field;
    std::string_view words; // folded, each without spaces, single spaces between and around
};

// Plain words for a column in English, German and Spanish.
constexpr std::array headerWords = std::to_array<HeaderWords>({
    {CsvField::Name,
        " name fullname patient patientname vollername namedespatienten nombre nombrecompleto "
        "nombreyapellidos paciente "},
    {CsvField::FirstName, " firstname forename givenname vorname nombredepila "},
    {CsvField::LastName, " lastname surname familyname nachname familienname apellido apellidos "},
    {CsvField::Born,
        " dateofbirth birthdate birthday born dob geburtsdatum geburtstag geboren geborenam "
        "fechadenacimiento fechanacimiento nacimiento "},
    {CsvField::Phone,
        " phone phonenumber telephone telephonenumber tel mobile mobilephone telefon telefonnummer mobil "
        "mobiltelefon handy telefono movil telefonomovil "},
    {CsvField::Email, " email mail emailaddress emailadresse correo correoelectronico "},
    {CsvField::Address, " address adresse anschrift direccion domicilio "},
    {CsvField::Street, " street strasse strasseundhausnummer calle "},
    {CsvField::Postcode, " postcode postalcode zip zipcode plz postleitzahl codigopostal "},
    {CsvField::City, " city town ort wohnort stadt ciudad localidad "},
    {CsvField::Country, " country land pais "},
    {CsvField::Language, " language sprache idioma "},
    {CsvField::Interpreter, " interpreter dolmetscher interprete "},
    {CsvField::Mark, " mark distinguishingmark merkmal erkennungsmerkmal rasgo senaparticular "},
    {CsvField::Doctor, " doctor familydoctor physician arzt arztin hausarzt hausarztin medico medicodecabecera "},
    {CsvField::DoctorPhone, " doctorphone doctorsphone telefonarzt telefonhausarzt telefonodelmedico "},
    {CsvField::Emergency, " emergencycontact notfallkontakt contactodeemergencia "},
    {CsvField::EmergencyPhone, " emergencyphone emergencycontactphone notfalltelefon notfallnummer telefonodeemergencia "},
    {CsvField::Guardian, " guardian vormund gesetzlichervertreter tutor tutorlegal "},
    {CsvField::GuardianPhone, " guardianphone guardiansphone telefonvormund telefonodeltutor "},
    {CsvField::Medicines, " medicine medicines medication medikamente medicamentos medicacion "},
    {CsvField::Allergies, " allergy allergies allergie allergien alergia alergias "},
    {CsvField::Surgery, " surgery operations operationen cirugia cirugias operaciones "},
    {CsvField::Complaint, " complaint complaints beschwerde beschwerden molestia molestias dolencia motivodeconsulta "},
});

CsvField fieldOf(const std::string &header)
{
    std::string word = foldedWords(header);
    std::erase(word, ' ');
    for (const HeaderWords &known : headerWords)
        if (known.words.find(" " + word + " ") != std::string_view::npos)
            return known.field;
    return CsvField::NotUsed;
}

bool has(const std::vector<CsvColumn> &columns, CsvField field)
{
    return std::any_of(columns.begin(), columns.end(), [field](const CsvColumn &c) { return c.becomes == field; });
}

void replace(std::vector<CsvColumn> &columns, CsvField from, CsvField to)
{
    for (CsvColumn &column : columns)
        if (column.becomes == from)
            column.becomes = to;
}

// Beside 'Vorname' the column 'Name' is the last name; beside 'Apellidos' the column 'Nombre' is the first name. Beside
// both it is the whole name, and they say nothing new.
void settleNames(std::vector<CsvColumn> &columns)
{
    if (!has(columns, CsvField::Name))
        return;
    const bool first = has(columns, CsvField::FirstName);
    const bool last = has(columns, CsvField::LastName);
    if (first && last) {
        replace(columns, CsvField::FirstName, CsvField::NotUsed);
        replace(columns, CsvField::LastName, CsvField::NotUsed);
    } else if (first || last) {
        replace(columns, CsvField::Name, first ? CsvField::LastName : CsvField::FirstName);
    }
}

std::vector<CsvColumn> columnsOf(const TableRow &header)
{
    std::vector<CsvColumn> columns;
    for (const std::string &cell : header.cells)
        columns.push_back({trimmed(cell), fieldOf(cell)});
    settleNames(columns);
    return columns;
}

// The separator with which most columns are known; the first of equals that cuts the line into most cells.
char separatorOf(std::string_view text)
{
    char best = ',';
    std::pair<std::ptrdiff_t, std::size_t> most{-1, 0};
    for (const char separator : {',', ';', '\t'}) {
        const std::optional<TableRow> header = Table(text, separator).next();
        if (!header)
            continue;
        std::ptrdiff_t known = 0;
        for (const std::string &cell : header->cells)
            known += fieldOf(cell) == CsvField::NotUsed ? 0 : 1;
        const std::pair now{known, header->cells.size()};
        if (now > most) {
            most = now;
            best = separator;
        }
    }
    return best;
}

// Several columns of these are put together; any other stands once.
bool mayRepeat(CsvField field)
{
    constexpr std::array repeated{CsvField::NotUsed, CsvField::Phone, CsvField::Email, CsvField::Medicines, CsvField::Allergies,
        CsvField::Surgery, CsvField::Complaint};
    return std::find(repeated.begin(), repeated.end(), field) != repeated.end();
}

std::string placeOf(const std::string &file, std::size_t line, const std::string &column)
{
    return file + ", line " + std::to_string(line) + (column.empty() ? "" : ", column " + column);
}

Result<std::vector<CsvColumn>> readHeader(Table &table, const std::string &file)
{
    const std::optional<TableRow> header = table.next();
    if (!header)
        return Error{ErrorCode::MissingField, placeOf(file, 1, {}), "header line"};
    if (!header->mistake.empty())
        return Error{ErrorCode::WrongType, placeOf(file, header->line, {}), header->mistake};
    for (const std::string &cell : header->cells)
        if (!isUtf8(cell))
            return Error{ErrorCode::WrongType, placeOf(file, header->line, {}), "UTF-8 text"};
    std::vector<CsvColumn> columns = columnsOf(*header);
    std::set<CsvField> seen;
    for (const CsvColumn &column : columns)
        if (!seen.insert(column.becomes).second && !mayRepeat(column.becomes))
            return Error{ErrorCode::Duplicate, placeOf(file, header->line, column.header),
                std::string(wordOf(csvFieldWords, column.becomes))};
    const bool named = has(columns, CsvField::Name) || (has(columns, CsvField::FirstName) && has(columns, CsvField::LastName));
    if (!named)
        return Error{ErrorCode::MissingField, placeOf(file, header->line, {}), "name, or first name and last name"};
    return columns;
}

// Puts b after a, with something between them when both are there.
std::string together(const std::string &a, const char *between, const std::string &b)
{
    return a.empty() || b.empty() ? a + b : a + between + b;
}

// One row of the table as a record.
class RowReader {
public:
    RowReader(const std::vector<CsvColumn> &columns, const CsvOptions &options) : m_columns(columns), m_options(options) { }

    CsvRow read(const TableRow &row)
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

    PatientRecord readRecord(const TableRow &row)
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
            const std::string cell = trimmed(row.cells[i]);
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
            if (std::string entry = trimmed(cell.substr(start, end - start)); !entry.empty())
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
        const CsvField field = has(m_columns, CsvField::Name) ? CsvField::Name : CsvField::LastName;
        return std::find_if(m_columns.begin(), m_columns.end(), [field](const CsvColumn &c) {
            return c.becomes == field;
        })->header;
    }

    std::string readDate(const std::string &column, const std::string &cell)
    {
        if (isIsoDate(cell))
            return cell;
        const std::optional<std::array<int, 3>> parts = datePartsOf(cell);
        if (!parts)
            refuseDate(column, cell);
        auto [day, month, year] = *parts;
        if (cell.find('/') != std::string::npos && orderOf(column, cell, day, month) == DateOrder::MonthFirst)
            std::swap(day, month);
        std::array<char, 16> iso{};
        std::snprintf(iso.data(), iso.size(), "%04d-%02d-%02d", year, month, day);
        if (!isIsoDate(iso.data()))
            refuseDate(column, cell);
        return iso.data();
    }

    [[noreturn]] void refuseDate(const std::string &column, const std::string &cell) const
    {
        fail(column, ErrorCode::OutOfRange, cell + ", allowed: a real date, YYYY-MM-DD, DD.MM.YYYY or with slashes");
    }

    // Three whole numbers with points or slashes between them: one or two digits twice, then four.
    static std::optional<std::array<int, 3>> datePartsOf(const std::string &cell)
    {
        std::array<int, 3> parts{};
        std::array<int, 3> digits{};
        std::size_t part = 0;
        char between = 0;
        for (const char c : cell) {
            if (c >= '0' && c <= '9') {
                if (++digits[part] > 4)
                    return std::nullopt;
                parts[part] = parts[part] * 10 + (c - '0');
            } else if ((c == '.' || c == '/') && part < 2 && (between == 0 || c == between)) {
                between = c;
                ++part;
            } else {
                return std::nullopt;
            }
        }
        const bool shaped = digits[0] >= 1 && digits[0] <= 2 && digits[1] >= 1 && digits[1] <= 2 && digits[2] == 4;
        return shaped ? std::optional(parts) : std::nullopt;
    }

    // Which of two numbers between slashes is the day. A number above 12 tells; so do two equal ones.
    DateOrder orderOf(const std::string &column, const std::string &cell, int first, int second)
    {
        constexpr int months = 12;
        const std::optional<DateOrder> chosen = m_options.dateOrder;
        if (first == second)
            return DateOrder::DayFirst;
        if (first > months || second > months) {
            const DateOrder told = first > months ? DateOrder::DayFirst : DateOrder::MonthFirst;
            if (chosen && told != *chosen)
                fail(column, ErrorCode::Contradiction, cell + ", the chosen order of day and month");
            return told;
        }
        if (!chosen) {
            m_dateOrderNeeded = true;
            fail(column, ErrorCode::OutOfRange, cell + ", allowed: a date of which day and month can be told apart");
        }
        return *chosen;
    }

    const std::vector<CsvColumn> &m_columns;
    const CsvOptions &m_options;
    std::size_t m_line = 0;
    bool m_dateOrderNeeded = false;
};

// People who can be found again by what they share with another: a date of birth or a word of a name.
class People {
public:
    void add(LikenessKey key)
    {
        for (const std::string &sign : signsOf(key))
            m_bySign[sign].push_back(m_keys.size());
        m_keys.push_back(std::move(key));
        m_seen.push_back(0);
    }

    struct Best {
        std::size_t person = 0;
        double likeness = 0;
    };

    /// The one most like it, if like enough. Each comparison takes one from `left`; at 0 the
    /// search ends.
    std::optional<Best> best(const LikenessKey &key, std::size_t &left)
    {
        ++m_search;
        Best found;
        const double utmost = key.born.empty() ? bornLikeness(key, key) : 1; // no other can be more like it
        for (const std::string &sign : signsOf(key)) {
            const auto others = m_bySign.find(sign);
            if (others == m_bySign.end())
                continue;
            for (const std::size_t person : others->second) {
                if (found.likeness >= utmost || left == 0)
                    break;
                if (std::exchange(m_seen[person], m_search) == m_search)
                    continue;
                if (bornLikeness(key, m_keys[person]) < duplicateLikeness)
                    continue;
                --left;
                const double now = likeness(key, m_keys[person]);
                if (now > found.likeness || (now == found.likeness && person < found.person))
                    found = {person, now};
            }
        }
        return found.likeness >= duplicateLikeness ? std::optional(found) : std::nullopt;
    }

private:
    // Words hold no hyphen, so that a date cannot be taken for one.
    static std::set<std::string> signsOf(const LikenessKey &key)
    {
        std::set<std::string> signs(key.born.begin(), key.born.end());
        for (const std::vector<std::string> &name : key.names)
            signs.insert(name.begin(), name.end());
        return signs;
    }

    std::vector<LikenessKey> m_keys;
    std::vector<std::size_t> m_seen; // the search that looked at it last
    std::size_t m_search = 0;
    std::unordered_map<std::string, std::vector<std::size_t>> m_bySign;
};

void findDuplicates(CsvPreview &preview, std::span<const PatientRecord> existing, std::size_t mostComparisons)
{
    std::size_t left = mostComparisons;
    People known;
    for (const PatientRecord &record : existing)
        known.add(likenessKey(record));
    People earlier;
    std::vector<std::size_t> rowOf; // of each in `earlier`
    for (std::size_t row = 0; row < preview.rows.size(); ++row) {
        if (!preview.rows[row].ok())
            continue;
        LikenessKey key = likenessKey(preview.rows[row].record());
        if (const auto best = known.best(key, left))
            preview.duplicates.push_back({row, CsvDuplicate::Among::Existing, best->person, best->likeness});
        if (const auto best = earlier.best(key, left))
            preview.duplicates.push_back({row, CsvDuplicate::Among::Rows, rowOf[best->person], best->likeness});
        earlier.add(std::move(key));
        rowOf.push_back(row);
    }
    preview.comparedAll = left > 0;
}

} // namespace

Result<CsvPreview> previewCsv(std::string_view text, const CsvOptions &options, std::span<const PatientRecord> existing)
{
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    Table table(text, separatorOf(text));
    auto columns = readHeader(table, options.file);
    if (!columns)
        return columns.error();
    CsvPreview preview{options.file, std::move(columns).value(), {}, {}};
    RowReader reader(preview.columns, options);
    while (const std::optional<TableRow> row = table.next())
        preview.rows.push_back(reader.read(*row));
    preview.dateOrderNeeded = reader.dateOrderNeeded();
    findDuplicates(preview, existing, options.mostComparisons);
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
            return Error{error.code, placeOf(preview.file, error.line, error.column), error.detail};
        }
        records.push_back(row.record());
    }
    return records;
}

} // namespace raphe
