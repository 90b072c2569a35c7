// What the header line of a patient list is taken for, and what is refused there.
#include "tests/core/record/CsvTesting.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace raphe::test {

namespace {

void expectFileError(const std::string &text, ErrorCode code, const std::string &place, const std::string &detail)
{
    const auto result = previewCsv(text, plain, {});
    ASSERT_FALSE(result) << "was accepted: " << text;
    EXPECT_EQ(result.error().code, code) << testing::PrintToString(result.error());
    EXPECT_EQ(result.error().place, place);
    EXPECT_NE(result.error().detail.find(detail), std::string::npos) << result.error().detail;
}

std::vector<CsvField> fieldsOf(const std::string &header)
{
    std::vector<CsvField> fields;
    for (const CsvColumn &column : preview(header).columns)
        fields.push_back(column.becomes);
    return fields;
}

} // namespace

TEST(CsvColumnsTest, FindsTheSeparator)
{
    for (const std::string s : {",", ";", "\t"}) {
        const CsvPreview seen = preview("name" + s + "phone" + s + "shoe size\nAna" + s + "1" + s + "38\n");
        ASSERT_EQ(seen.columns.size(), 3U);
        EXPECT_EQ(recordAt(seen, 0).phone, "1");
    }
    EXPECT_EQ(recordAt(preview("name;size, in all, in cm;born\nAna;1,70;1980-03-05\n"), 0).born, "1980-03-05")
        << "more commas than semicolons, but they name nothing";
    EXPECT_EQ(recordAt(preview("name\nLee; Ana\n"), 0).name, "Lee; Ana") << "a single column: the comma";
}

TEST(CsvColumnsTest, KnowsColumnsInThreeLanguages)
{
    struct Case {
        CsvField field;
        std::vector<std::string> headers;
    };
    const std::vector<Case> cases{
        {CsvField::Born, {"Date of birth", "date-of-birth", "DATE_OF_BIRTH", "D.O.B.", "Geburtsdatum", "Fecha de nacimiento"}},
        {CsvField::Phone, {"Phone", "telephone number", "Tel.", "Mobile", "Telefon", "Handy", "Teléfono", "móvil"}},
        {CsvField::Email, {"email", "E-Mail", "e mail", "E-Mail-Adresse", "Correo electrónico"}},
        {CsvField::Address, {"Address", "Anschrift", "Dirección"}},
        {CsvField::Street, {"Street", "Straße", "STRASSE", "Calle"}},
        {CsvField::Postcode, {"Post code", "ZIP", "PLZ", "Código postal"}},
        {CsvField::City, {"City", "Ort", "Ciudad"}},
        {CsvField::Country, {"Country", "Land", "País"}},
        {CsvField::Language, {"Language", "Sprache", "Idioma"}},
        {CsvField::Interpreter, {"Interpreter", "Dolmetscher", "Intérprete"}},
        {CsvField::Mark, {"Distinguishing mark", "Merkmal", "Seña particular"}},
        {CsvField::Doctor, {"Family doctor", "Hausärztin", "Médico"}},
        {CsvField::DoctorPhone, {"Doctor's phone", "Telefon Hausarzt", "Teléfono del médico"}},
        {CsvField::Emergency, {"Emergency contact", "Notfallkontakt", "Contacto de emergencia"}},
        {CsvField::EmergencyPhone, {"Emergency phone", "Notfall-Telefon", "Teléfono de emergencia"}},
        {CsvField::Guardian, {"Guardian", "Gesetzlicher Vertreter", "Tutor"}},
        {CsvField::GuardianPhone, {"Guardian's phone", "Telefon Vormund", "Teléfono del tutor"}},
        {CsvField::Medicines, {"Medicines", "Medikamente", "Medicación"}},
        {CsvField::Allergies, {"Allergies", "Allergien", "Alergias"}},
        {CsvField::Surgery, {"Surgery", "Operationen", "Cirugías"}},
        {CsvField::Complaint, {"Complaint", "Beschwerden", "Motivo de consulta"}},
        {CsvField::NotUsed, {"Shoe size", "", "?", "name of the dog", "phone call"}},
    };
    for (const Case &c : cases)
        for (const std::string &header : c.headers)
            EXPECT_EQ(fieldsOf("name," + header).at(1), c.field) << header;
}

TEST(CsvColumnsTest, KnowsTheNameInItsParts)
{
    using F = CsvField;
    using Fields = std::vector<CsvField>;
    for (const char *whole : {"Name", "Full name", "Patient", "Nombre", "Nombre y apellidos", "Paciente"})
        EXPECT_EQ(fieldsOf(whole), Fields{F::Name}) << whole;
    for (const char *parts :
        {"First name,Last name", "Given-name,Surname", "Vorname,Nachname", "Vorname,Name", "Nombre,Apellidos"})
        EXPECT_EQ(fieldsOf(parts), (Fields{F::FirstName, F::LastName})) << parts;
    EXPECT_EQ(fieldsOf("Name,Vorname"), (Fields{F::LastName, F::FirstName}));
    EXPECT_EQ(fieldsOf("Name,First name,Last name"), (Fields{F::Name, F::NotUsed, F::NotUsed}));
    EXPECT_EQ(recordAt(preview("Name;Vorname\nMeyer;Anna\n"), 0).name, "Anna Meyer");
    EXPECT_EQ(recordAt(preview("Nombre;Apellidos\nAna;Lago Ruiz\n"), 0).name, "Ana Lago Ruiz");
    EXPECT_EQ(recordAt(preview("Nombre;Apellidos\nAna;\n"), 0).name, "Ana");
}

TEST(CsvColumnsTest, WholeFilesAreRefusedWithTheirPlace)
{
    for (const char *nothing : {"", "\n\r\n", " \n", "\xEF\xBB\xBF"})
        expectFileError(nothing, ErrorCode::MissingField, "list.csv, line 1", "header line");
    expectFileError(" , ,\n", ErrorCode::MissingField, "list.csv, line 1", "name");
    expectFileError("Ana,1\nBo,2\n", ErrorCode::MissingField, "list.csv, line 1", "name, or first name and last name");
    expectFileError("\nphone,born\n1,1980-03-05\n", ErrorCode::MissingField, "list.csv, line 2", "name");
    expectFileError("Vorname,Telefon\nAna,1\n", ErrorCode::MissingField, "list.csv, line 1", "name");
    expectFileError("name,born,Geburtsdatum\n", ErrorCode::Duplicate, "list.csv, line 1, column Geburtsdatum", "date of birth");
    expectFileError("name,Full name\n", ErrorCode::Duplicate, "list.csv, line 1, column Full name", "name");
    expectFileError("name,\"phone\nAna,1\n", ErrorCode::WrongType, "list.csv, line 1", "a closing quote");
    expectFileError("name,tel\xE9"
                    "fono\n",
        ErrorCode::WrongType, "list.csv, line 1", "UTF-8");
    expectFileError("\xFF\xFEn\0a\0", ErrorCode::WrongType, "list.csv, line 1", "UTF-8");
}

} // namespace raphe::test
