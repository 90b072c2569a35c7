// A patient list from a table: the rules of RFC 4180, what the columns become, dates, mistakes of rows and of the file,
// and people who are there twice. All people here are invented.
#include "core/record/PatientCsv.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace raphe {

static void PrintTo(const Error &error, std::ostream *out)
{
    *out << "code " << static_cast<int>(error.code) << " at " << error.place << ": " << error.detail;
}

namespace {

CsvOptions with(std::optional<DateOrder> order)
{
    CsvOptions options;
    options.file = "list.csv";
    options.dateOrder = order;
    return options;
}

const CsvOptions plain = with({});

CsvPreview preview(const std::string &text, const CsvOptions &options = plain, const std::vector<PatientRecord> &existing = {})
{
    auto result = previewCsv(text, options, existing);
    if (result)
        return std::move(result).value();
    ADD_FAILURE() << testing::PrintToString(result.error()) << "\n" << text;
    return {};
}

PatientRecord recordAt(const CsvPreview &seen, std::size_t row)
{
    if (row >= seen.rows.size()) {
        ADD_FAILURE() << "no row " << row;
        return {};
    }
    if (!seen.rows[row].ok()) {
        const RowError &error = seen.rows[row].error();
        ADD_FAILURE() << "row " << row << ", column " << error.column << ": " << error.detail;
        return {};
    }
    return seen.rows[row].record();
}

void expectRowError(const CsvPreview &seen, std::size_t row, std::size_t line, const std::string &column, ErrorCode code,
    const std::string &detail)
{
    ASSERT_LT(row, seen.rows.size());
    ASSERT_FALSE(seen.rows[row].ok()) << "row " << row << " was accepted: " << seen.rows[row].record().name;
    const RowError &error = seen.rows[row].error();
    EXPECT_EQ(error.line, line) << error.detail;
    EXPECT_EQ(seen.rows[row].line, line);
    EXPECT_EQ(error.column, column) << error.detail;
    EXPECT_EQ(error.code, code) << error.detail;
    EXPECT_NE(error.detail.find(detail), std::string::npos) << error.detail << " lacks " << detail;
}

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

std::string bornFrom(const std::string &cell, std::optional<DateOrder> order = {})
{
    return recordAt(preview("name,born\nAna," + cell + "\n", with(order)), 0).born;
}

void expectBadDate(const std::string &cell, std::optional<DateOrder> order, ErrorCode code, const std::string &detail)
{
    const CsvPreview seen = preview("name,born\nAna," + cell + "\n", with(order));
    expectRowError(seen, 0, 2, "born", code, cell + ", " + detail);
}

PatientRecord named(const std::string &name, const std::string &born = {})
{
    PatientRecord r;
    r.name = name;
    r.born = born;
    return r;
}

} // namespace

// RFC 4180, section 2, rules 1 to 7 in its order (from memory).
TEST(PatientCsvTest, Rfc4180Rules)
{
    CsvPreview seen = preview("name,phone\r\nAna,1\r\nBo,2\r\n");
    ASSERT_EQ(seen.rows.size(), 2U) << "1: each row on a line of its own, ended by CRLF";
    EXPECT_EQ(recordAt(seen, 0).name, "Ana");
    EXPECT_EQ(recordAt(seen, 1).phone, "2");

    seen = preview("name,phone\r\nAna,1\r\nBo,2");
    ASSERT_EQ(seen.rows.size(), 2U) << "2: the last line may have no line break";
    EXPECT_EQ(recordAt(seen, 1).phone, "2");

    seen = preview("name,phone\r\nAna,1,\r\nBo\r\nCy,3\r\n");
    expectRowError(seen, 0, 2, "", ErrorCode::OutOfRange, "3 cells, allowed: 2"); // 4: as many cells as the header
    expectRowError(seen, 1, 3, "", ErrorCode::OutOfRange, "1 cells, allowed: 2");
    EXPECT_EQ(recordAt(seen, 2).name, "Cy");

    seen = preview("\"name\",\"phone\"\r\n\"Ana\",1\r\n");
    EXPECT_EQ(recordAt(seen, 0).name, "Ana") << "5: quotes around a cell are no part of it";

    seen = preview("name,mark\r\n\"Lee, Ana\",\"first\r\nsecond\"\r\nBo,x\r\n");
    EXPECT_EQ(recordAt(seen, 0).name, "Lee, Ana") << "6: a separator inside quotes";
    EXPECT_EQ(recordAt(seen, 0).mark, "first\r\nsecond") << "6: a line break inside quotes";
    EXPECT_EQ(seen.rows[1].line, 4U) << "and it counts as a line of the file";

    seen = preview("name,mark\r\nAna,\"a \"\"small\"\" scar\"\r\nBo,\"\"\"\"\r\nCy,\"\"\r\n");
    EXPECT_EQ(recordAt(seen, 0).mark, "a \"small\" scar") << "7: a quote inside quotes is doubled";
    EXPECT_EQ(recordAt(seen, 1).mark, "\"");
    EXPECT_EQ(recordAt(seen, 2).mark, "");
}

TEST(PatientCsvTest, BrokenQuotesAreTheRowsMistake)
{
    CsvPreview seen = preview("name,mark\nAna,a \"scar\"\nBo,x\n");
    expectRowError(seen, 0, 2, "mark", ErrorCode::WrongType, "quotes around the whole cell");
    EXPECT_EQ(recordAt(seen, 1).name, "Bo");
    seen = preview("name,mark\nAna, \"scar\"\n\"Bo\"x,y\n\"\"Cy,z\nDi,z\n");
    expectRowError(seen, 0, 2, "mark", ErrorCode::WrongType, "quotes around the whole cell");
    expectRowError(seen, 1, 3, "name", ErrorCode::WrongType, "a separator after the closing quote");
    expectRowError(seen, 2, 4, "name", ErrorCode::WrongType, "a separator after the closing quote");
    EXPECT_EQ(recordAt(seen, 3).name, "Di");
    seen = preview("name,mark\nAna,\"scar\nBo,x\n");
    ASSERT_EQ(seen.rows.size(), 1U);
    expectRowError(seen, 0, 2, "mark", ErrorCode::WrongType, "a closing quote; the rest of the file");
}

TEST(PatientCsvTest, LinesEndInThreeWaysAndBlankOnesAreNone)
{
    for (const std::string end : {"\n", "\r\n", "\r"}) {
        const CsvPreview seen =
            preview(end + "name,phone" + end + "Ana,\"1" + end + "2\"" + end + end + " , " + end + "Bo,2" + end + end);
        ASSERT_EQ(seen.rows.size(), 2U) << testing::PrintToString(end);
        EXPECT_EQ(seen.rows[0].line, 3U) << testing::PrintToString(end);
        EXPECT_EQ(seen.rows[1].line, 7U) << testing::PrintToString(end);
    }
}

TEST(PatientCsvTest, FindsTheSeparator)
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

TEST(PatientCsvTest, AByteOrderMarkIsNoPartOfTheHeader)
{
    const CsvPreview seen = preview("\xEF\xBB\xBFname,phone\nAna,1\n");
    EXPECT_EQ(seen.columns[0], (CsvColumn{"name", CsvField::Name}));
    EXPECT_EQ(recordAt(seen, 0).name, "Ana");
}

TEST(PatientCsvTest, WhatIsNotUtf8IsTheRowsMistake)
{
    const CsvPreview seen = preview("name,phone,shoe size\nJos\xE9,1,38\nJosé,1,38\nAna,1,\xFF\n");
    expectRowError(seen, 0, 2, "name", ErrorCode::WrongType, "UTF-8");
    EXPECT_EQ(recordAt(seen, 1).name, "José");
    expectRowError(seen, 2, 4, "shoe size", ErrorCode::WrongType, "UTF-8");
}

TEST(PatientCsvTest, KnowsColumnsInThreeLanguages)
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

TEST(PatientCsvTest, KnowsTheNameInItsParts)
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

TEST(PatientCsvTest, EveryColumnFindsItsField)
{
    const CsvPreview seen = preview("name,born,phone,mobile,email,address,street,postcode,city,country,language,interpreter,mark,"
                                    "doctor,doctor's phone,emergency contact,emergency phone,guardian,guardian's phone,"
                                    "medicines,allergies,surgery,complaint,complaint,shoe size\n"
                                    " Ana Lago ,1980-03-05,1,2,a@example.org,House Elm,Low Lane 3,0001,Elmford,Arden,Danish,"
                                    "her son,scar,Dr Quill,90,Ib,91,Bo,92,\"a; b;;\nc \r\nd\",nickel,appendix;tonsils,"
                                    "\"low back; worse at night\",knee,38\n");
    PatientRecord expected = named("Ana Lago", "1980-03-05");
    expected.phone = "1; 2";
    expected.email = "a@example.org";
    expected.address = "House Elm, Low Lane 3, 0001 Elmford, Arden";
    expected.language = "Danish";
    expected.interpreter = "her son";
    expected.mark = "scar";
    expected.doctor = Contact{"Dr Quill", "90"};
    expected.emergency = Contact{"Ib", "91"};
    expected.guardian = Contact{"Bo", "92"};
    expected.medicines = {"a", "b", "c", "d"};
    expected.allergies = {"nickel"};
    expected.surgery = {{"appendix", {}}, {"tonsils", {}}};
    expected.complaints = {{1, "low back; worse at night", "", false}, {2, "knee", "", false}};
    EXPECT_EQ(recordAt(seen, 0), expected);
    EXPECT_EQ(seen.columns.back(), (CsvColumn{"shoe size", CsvField::NotUsed}));
}

TEST(PatientCsvTest, EmptyCellsSayNothing)
{
    EXPECT_EQ(recordAt(preview("name,born,phone,city,doctor,medicines,complaint\nAna,,,,,,\n"), 0), named("Ana"));
    EXPECT_EQ(recordAt(preview("name,postcode,city\nAna,,Elmford\n"), 0).address, "Elmford");
}

TEST(PatientCsvTest, ReadsDates)
{
    EXPECT_EQ(bornFrom("1980-03-05"), "1980-03-05");
    EXPECT_EQ(bornFrom("05.03.1980"), "1980-03-05");
    EXPECT_EQ(bornFrom("5.3.1980"), "1980-03-05");
    EXPECT_EQ(bornFrom("29.02.2024"), "2024-02-29");
    EXPECT_EQ(bornFrom("25/03/1980"), "1980-03-25");
    EXPECT_EQ(bornFrom("03/25/1980"), "1980-03-25");
    EXPECT_EQ(bornFrom("04/04/1980"), "1980-04-04") << "the same either way";
    EXPECT_EQ(bornFrom("03/04/1980", DateOrder::DayFirst), "1980-04-03");
    EXPECT_EQ(bornFrom("03/04/1980", DateOrder::MonthFirst), "1980-03-04");
    EXPECT_EQ(bornFrom("12/11/1980", DateOrder::DayFirst), "1980-11-12");
    EXPECT_EQ(bornFrom("05.03.1980", DateOrder::MonthFirst), "1980-03-05") << "points always put the day first";
}

TEST(PatientCsvTest, RefusesDatesThatAreNone)
{
    for (const char *cell : {"1980", "5.3.80", "1980-3-5", "30.02.1980", "0.1.1980", "1.13.1980", "13/13/1980", "32/01/1980",
             "05-03-1980", "5.3/1980", "5..1980", "5.3.1980.", "5.3.19800", "005.3.1980", "1980/03/05", "5 March 1980",
             "29.02.2023", "/", "..", "+5.3.1980"})
        expectBadDate(cell, {}, ErrorCode::OutOfRange, "allowed: a real date");
}

TEST(PatientCsvTest, ADateWithTwoReadingsWaitsForTheUser)
{
    expectBadDate("03/04/1980", {}, ErrorCode::OutOfRange, "allowed: a date of which day and month can be told apart");
    EXPECT_TRUE(preview("name,born\nAna,03/04/1980\n").dateOrderNeeded);
    EXPECT_FALSE(preview("name,born\nAna,03/14/1980\nBo,13/01/1980\nCy,1980\n").dateOrderNeeded);
    EXPECT_FALSE(preview("name,born\nAna,03/04/1980\n", with(DateOrder::DayFirst)).dateOrderNeeded);
}

// Such a date shows that the order was chosen wrongly; the others would be read without a sign of it.
TEST(PatientCsvTest, ADateAgainstTheChosenOrderIsAMistake)
{
    expectBadDate("03/25/1980", DateOrder::DayFirst, ErrorCode::Contradiction, "the chosen order");
    expectBadDate("25/03/1980", DateOrder::MonthFirst, ErrorCode::Contradiction, "the chosen order");
    EXPECT_EQ(bornFrom("25/03/1980", DateOrder::DayFirst), "1980-03-25");
    EXPECT_EQ(bornFrom("03/25/1980", DateOrder::MonthFirst), "1980-03-25");
}

TEST(PatientCsvTest, RowsWithoutANameOrWithTooMuchAreMistakes)
{
    expectRowError(preview("name,phone\n,1\n"), 0, 2, "name", ErrorCode::MissingField, "name");
    expectRowError(preview("Vorname,Nachname,Telefon\n, ,1\n"), 0, 2, "Nachname", ErrorCode::MissingField, "name");
    const std::string longest(PatientRecord::longestText, 'x');
    EXPECT_EQ(recordAt(preview("name,mark\nAna," + longest + "\n"), 0).mark, longest);
    expectRowError(preview("name,mark\nAna," + longest + "x\n"), 0, 2, "mark", ErrorCode::OutOfRange, "10001 characters");
    expectRowError(preview("name,phone,mobile\nAna," + longest + ",1\n"), 0, 2, "", ErrorCode::OutOfRange, "#/phone: 10003");
    std::string many;
    for (std::size_t i = 0; i < PatientRecord::longestList; ++i)
        many += "a;";
    EXPECT_EQ(recordAt(preview("name,medicines\nAna," + many + "\n"), 0).medicines.size(), PatientRecord::longestList);
    expectRowError(preview("name,medicines\nAna," + many + "b\n"), 0, 2, "", ErrorCode::OutOfRange, "#/medicines: 501 entries");
}

TEST(PatientCsvTest, WholeFilesAreRefusedWithTheirPlace)
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

TEST(PatientCsvTest, AHeaderAloneIsAnEmptyList)
{
    EXPECT_TRUE(preview("name,born\n").rows.empty());
}

TEST(PatientCsvTest, ShowsWhoIsThereAlready)
{
    const std::vector<PatientRecord> existing{named("Bo Reed", "1990-01-01"), named("Anna Méyer", "1980-03-05")};
    const CsvPreview seen = preview("name,born\n"
                                    "Zed Orr,1970-01-01\n"
                                    ",1980-03-05\n"
                                    "Meyer Anna,05.03.1980\n"
                                    "Anna Maier,1980-03-05\n"
                                    "Bo Reed,\n"
                                    "Anna Meyer,1955-07-21\n",
        plain, existing);
    using D = CsvDuplicate;
    const std::vector<D> expected{
        {2, D::Among::Existing, 1, 1.0},
        {3, D::Among::Existing, 1, 0.8},
        {3, D::Among::Rows, 2, 0.8},
        {4, D::Among::Existing, 0, 0.8},
    };
    EXPECT_EQ(seen.duplicates, expected) << "rows with mistakes and another birth date are none";
    EXPECT_TRUE(seen.comparedAll);
}

// The short way (only those who share a sign are compared) against comparing everybody with everybody.
TEST(PatientCsvTest, FindsTheSameDuplicatesAsComparingAll)
{
    std::mt19937 engine(5);
    const auto pick = [&](const std::vector<std::string> &from) {
        return from[std::uniform_int_distribution<std::size_t>(0, from.size() - 1)(engine)];
    };
    const std::vector<std::string> first{"Anna", "Ana", "Hanna", "Bo", "Boris", "Zoë", "Maria", "Marie"};
    const std::vector<std::string> last{"Meyer", "Maier", "Meier", "Reed", "Reid", "Ørsted", "Lago"};
    const std::vector<std::string> born{"1980-03-05", "1980-05-03", "1980-03-06", "1955-07-21", ""};
    std::string text = "name,born\n";
    std::vector<PatientRecord> records;
    for (int i = 0; i < 300; ++i) {
        records.push_back(named(pick(first) + " " + pick(last), pick(born)));
        text += records.back().name + "," + records.back().born + "\n";
    }
    const std::vector<PatientRecord> existing(records.begin(), records.begin() + 40);
    const CsvPreview seen = preview(text, plain, existing);
    ASSERT_EQ(seen.rows.size(), records.size());
    std::size_t found = 0;
    for (std::size_t row = 0; row < records.size(); ++row)
        for (const auto among : {CsvDuplicate::Among::Existing, CsvDuplicate::Among::Rows}) {
            double best = 0;
            const std::size_t count = among == CsvDuplicate::Among::Existing ? existing.size() : row;
            for (std::size_t other = 0; other < count; ++other)
                best = std::max(best, likeness(records[row], records[other]));
            const auto shown = std::find_if(seen.duplicates.begin(), seen.duplicates.end(),
                [&](const CsvDuplicate &d) { return d.row == row && d.among == among; });
            if (best < duplicateLikeness) {
                EXPECT_EQ(shown, seen.duplicates.end()) << records[row].name;
                continue;
            }
            ++found;
            ASSERT_NE(shown, seen.duplicates.end()) << records[row].name << " " << best;
            EXPECT_DOUBLE_EQ(shown->likeness, best);
            EXPECT_DOUBLE_EQ(likeness(records[row], records[shown->other]), best);
        }
    EXPECT_EQ(found, seen.duplicates.size());
    EXPECT_TRUE(seen.comparedAll);
}

TEST(PatientCsvTest, SaysWhenThereWasTooMuchAlikeToCompare)
{
    const std::string text = "name\nAnna Reed\nAnna Lago\nAnna Orr\nAnna Reed\n"; // one is found at once: 5 comparisons
    CsvOptions options = plain;
    options.mostComparisons = 6;
    EXPECT_TRUE(preview(text, options).comparedAll);
    EXPECT_EQ(preview(text, options).duplicates.size(), 1U);
    options.mostComparisons = 3;
    EXPECT_FALSE(preview(text, options).comparedAll);
    EXPECT_EQ(preview(text, options).duplicates.size(), 0U);
}

TEST(PatientCsvTest, GivesTheRowsThatWereChosen)
{
    const CsvPreview seen = preview("name,born\nAna,1980-03-05\nBo,1.1.80\nCy,\n");
    const auto refused = chosenRows(seen, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(refused.error().place, "list.csv, line 3, column born");
    EXPECT_NE(refused.error().detail.find("1.1.80"), std::string::npos);
    EXPECT_FALSE(chosenRows(seen, {0, 2})) << "another row left out does not help";

    const auto both = chosenRows(seen, {1});
    ASSERT_TRUE(both);
    EXPECT_EQ(both.value(), (std::vector<PatientRecord>{named("Ana", "1980-03-05"), named("Cy")}));
    const auto one = chosenRows(seen, {1, 0});
    ASSERT_TRUE(one);
    EXPECT_EQ(one.value(), std::vector<PatientRecord>{named("Cy")});

    const auto outside = chosenRows(seen, {1, 3});
    ASSERT_FALSE(outside);
    EXPECT_EQ(outside.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(outside.error().place, "list.csv");

    const auto wholeRow = chosenRows(preview("name,born\nAna\n"), {});
    ASSERT_FALSE(wholeRow);
    EXPECT_EQ(wholeRow.error().place, "list.csv, line 2");
}

// What is written by the rules is read back, whatever the cells hold.
TEST(PatientCsvTest, RandomTablesReadBackEqual)
{
    std::mt19937 engine(6);
    const auto number = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine); };
    const std::vector<std::string> pieces{"a", "É", "李", ",", ";", "\t", "\"", "\"\"", "\n", "\r\n", "\r", "'", " x", "z"};
    for (int i = 0; i < 300; ++i) {
        const std::string separator(1, ",;\t"[number(0, 2)]);
        std::string text = "name" + separator + "mark" + separator + "language\n";
        std::vector<PatientRecord> expected;
        for (int row = number(0, 6); row > 0; --row) {
            PatientRecord record;
            for (std::string *field : {&record.name, &record.mark, &record.language}) {
                *field = "b";
                for (int piece = number(0, 5); piece > 0; --piece)
                    *field += pieces[static_cast<std::size_t>(number(0, static_cast<int>(pieces.size()) - 1))];
                *field += "e";
                std::string cell = *field;
                for (std::size_t at = 0; (at = cell.find('"', at)) != std::string::npos; at += 2)
                    cell.insert(at, 1, '"');
                const bool bare = field->find_first_of(separator + "\"\r\n") == std::string::npos && number(0, 1) == 1;
                text += (field == &record.name ? "" : separator) + (bare ? *field : "\"" + cell + "\"");
            }
            text += number(0, 1) == 1 ? "\n" : "\r\n";
            expected.push_back(record);
        }
        const auto records = chosenRows(preview(text), {});
        ASSERT_TRUE(records) << testing::PrintToString(records.error()) << text;
        ASSERT_EQ(records.value(), expected) << text;
    }
}

TEST(PatientCsvTest, ReadsTenThousandRows)
{
    std::string text = "Vorname;Nachname;Geburtsdatum;Telefon;Ort\n";
    for (int i = 0; i < 10'000; ++i)
        text += "Anna" + std::to_string(i % 97) + ";Meyer" + std::to_string(i) + ";" + std::to_string(1 + i % 28) + "."
            + std::to_string(1 + i % 12) + "." + std::to_string(1920 + i % 90) + ";0555 " + std::to_string(i) + ";Elmford\n";
    const CsvPreview seen = preview(text);
    ASSERT_EQ(seen.rows.size(), 10'000U);
    EXPECT_EQ(seen.rows.back().line, 10'001U);
    EXPECT_TRUE(std::all_of(seen.rows.begin(), seen.rows.end(), [](const CsvRow &row) { return row.ok(); }));
    EXPECT_TRUE(seen.comparedAll);
}

// Whatever the bytes, there is a refusal with a place, or a preview that keeps its promises.
TEST(PatientCsvTest, RandomBytesNeverBreakAPromise)
{
    std::mt19937 engine(7);
    const auto number = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine); };
    const std::vector<std::string> pieces{"name", "born", "Vorname", "medicines", "Ana", "Bo", "5.3.1980", "03/04/1980", ",", ",",
        ";", "\t", "\n", "\n", "\r\n", "\r", "\"", "\"\"", " ", "\xEF\xBB\xBF", "\xE9", std::string(1, '\0'), "é", "\xF0\x9F"};
    int previews = 0;
    for (int i = 0; i < 20'000; ++i) {
        std::string text = number(0, 2) == 0 ? "" : "name,born,phone\n";
        for (int piece = number(0, 30); piece > 0; --piece)
            text += number(0, 9) == 0 ? std::string(1, static_cast<char>(number(0, 255)))
                                      : pieces[static_cast<std::size_t>(number(0, static_cast<int>(pieces.size()) - 1))];
        const auto seen = previewCsv(text, with(number(0, 1) == 1 ? std::optional(DateOrder::DayFirst) : std::nullopt), {});
        if (!seen) {
            ASSERT_FALSE(seen.error().place.empty());
            ASSERT_FALSE(seen.error().detail.empty());
            continue;
        }
        ++previews;
        std::size_t line = 1;
        for (const CsvRow &row : seen.value().rows) {
            ASSERT_GT(row.line, line) << "lines go up, and the first is the header's";
            line = row.line;
            if (row.ok())
                ASSERT_TRUE(checkPatient(row.record(), "row"));
            else
                ASSERT_TRUE(row.error().line == line && !row.error().detail.empty());
        }
        for (const CsvDuplicate &d : seen.value().duplicates)
            ASSERT_TRUE(d.row < seen.value().rows.size() && d.other < d.row && d.likeness >= duplicateLikeness);
    }
    EXPECT_GT(previews, 5000) << "too few got beyond the header to say much";
}

} // namespace raphe
