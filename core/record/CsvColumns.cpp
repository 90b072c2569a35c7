#include "core/record/CsvColumns.h"

#include "core/base/Utf8.h"
#include "core/record/PatientSearch.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <set>
#include <utility>

namespace raphe {

namespace {

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
    if (!hasField(columns, CsvField::Name))
        return;
    const bool first = hasField(columns, CsvField::FirstName);
    const bool last = hasField(columns, CsvField::LastName);
    if (first && last) {
        replace(columns, CsvField::FirstName, CsvField::NotUsed);
        replace(columns, CsvField::LastName, CsvField::NotUsed);
    } else if (first || last) {
        replace(columns, CsvField::Name, first ? CsvField::LastName : CsvField::FirstName);
    }
}

std::vector<CsvColumn> columnsOf(const CsvTableRow &header)
{
    std::vector<CsvColumn> columns;
    for (const std::string &cell : header.cells)
        columns.push_back({trimmedCell(cell), fieldOf(cell)});
    settleNames(columns);
    return columns;
}

// Several columns of these are put together; any other stands once.
bool mayRepeat(CsvField field)
{
    constexpr std::array repeated{CsvField::NotUsed, CsvField::Phone, CsvField::Email, CsvField::Medicines, CsvField::Allergies,
        CsvField::Surgery, CsvField::Complaint};
    return std::find(repeated.begin(), repeated.end(), field) != repeated.end();
}

} // namespace

bool hasField(const std::vector<CsvColumn> &columns, CsvField field)
{
    return std::any_of(columns.begin(), columns.end(), [field](const CsvColumn &c) { return c.becomes == field; });
}

char separatorOf(std::string_view text)
{
    char best = ',';
    std::pair<std::ptrdiff_t, std::size_t> most{-1, 0};
    for (const char separator : {',', ';', '\t'}) {
        const std::optional<CsvTableRow> header = CsvTable(text, separator).next();
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

Result<std::vector<CsvColumn>> readHeader(CsvTable &table, const std::string &file)
{
    const std::optional<CsvTableRow> header = table.next();
    if (!header)
        return Error{ErrorCode::MissingField, csvPlace(file, 1, {}), "header line"};
    if (!header->mistake.empty())
        return Error{ErrorCode::WrongType, csvPlace(file, header->line, {}), header->mistake};
    for (const std::string &cell : header->cells)
        if (!isUtf8(cell))
            return Error{ErrorCode::WrongType, csvPlace(file, header->line, {}), "UTF-8 text"};
    std::vector<CsvColumn> columns = columnsOf(*header);
    std::set<CsvField> seen;
    for (const CsvColumn &column : columns)
        if (!seen.insert(column.becomes).second && !mayRepeat(column.becomes))
            return Error{ErrorCode::Duplicate, csvPlace(file, header->line, column.header),
                std::string(wordOf(csvFieldWords, column.becomes))};
    const bool named =
        hasField(columns, CsvField::Name) || (hasField(columns, CsvField::FirstName) && hasField(columns, CsvField::LastName));
    if (!named)
        return Error{ErrorCode::MissingField, csvPlace(file, header->line, {}), "name, or first name and last name"};
    return columns;
}

} // namespace raphe
