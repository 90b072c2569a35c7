// What becomes of the cells of a row, and what makes it a mistake.
#include "tests/core/record/CsvTesting.h"

#include <gtest/gtest.h>

#include <string>

namespace raphe::test {

TEST(CsvRowsTest, EveryColumnFindsItsField)
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

TEST(CsvRowsTest, EmptyCellsSayNothing)
{
    EXPECT_EQ(recordAt(preview("name,born,phone,city,doctor,medicines,complaint\nAna,,,,,,\n"), 0), named("Ana"));
    EXPECT_EQ(recordAt(preview("name,postcode,city\nAna,,Elmford\n"), 0).address, "Elmford");
}

TEST(CsvRowsTest, RowsWithoutANameOrWithTooMuchAreMistakes)
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

} // namespace raphe::test
