// The rules of a record that a reader of JSON cannot break. What it can break is tested in PatientRecordJsonTest.cpp.
#include "core/record/PatientRecord.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

namespace raphe::test {

TEST(PatientRecordTest, ARecordMadeByHandIsCheckedToo)
{
    EXPECT_TRUE(checkPatient(wholeRecord(), "form"));
    PatientRecord broken = wholeRecord();
    broken.phone = "\xC3";
    expectError(checkPatient(broken, "form"), ErrorCode::WrongType, "form#/phone", "UTF-8");
    broken = wholeRecord();
    broken.bloodPressure->systolic = 400;
    expectError(checkPatient(broken, "form"), ErrorCode::OutOfRange, "form#/blood_pressure/systolic", "400");
    broken = wholeRecord();
    broken.pregnancy->date.clear();
    expectError(checkPatient(broken, "form"), ErrorCode::OutOfRange, "form#/pregnancy/date", "YYYY-MM-DD");
}

} // namespace raphe::test
