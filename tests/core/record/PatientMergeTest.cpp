// One record of two: nothing is lost, nothing stands twice. All people here are invented.
#include "core/record/PatientMerge.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace raphe::test {

namespace {

template <class T> bool holds(const std::vector<T> &list, const T &value)
{
    return std::find(list.begin(), list.end(), value) != list.end();
}

} // namespace

TEST(PatientMergeTest, JoinsTextsAndListsTheRest)
{
    PatientRecord keep = named("Anna Meyer", "1980-03-05");
    keep.phone = "1";
    keep.sex = Sex::Female;
    keep.height = 170;
    keep.email = "a@example.org";
    keep.doctor = Contact{"Dr Quill", "90"};
    keep.medicines = {"a"};
    keep.conditions = {{"diabetes", "mild"}};
    keep.bloodPressure = BloodPressure{120, 80, "2024-01-01"};
    keep.complaints = {{3, "back", "", false}};
    PatientRecord other = named("Anna Maier", "1980-05-03");
    other.sex = Sex::Male;
    other.height = 171;
    other.phone = "2";
    other.email = "a@example.org";
    other.address = "Low Lane 3";
    other.doctor = Contact{"Dr Reed", "91"};
    other.guardian = Contact{"Ib", ""};
    other.medicines = {"b", "a"};
    other.conditions = {{"pacemaker", ""}, {"diabetes", "insulin"}};
    other.bloodPressure = BloodPressure{140, 90, "2023-01-01"};
    other.pregnancy = Pregnancy{12, "2024-02-01"};
    other.complaints = {{3, "knee", "", false}, {1, "back", "", false}, {2, "back", "", false}};

    const MergedPatient merge = okay(merged(keep, other));
    PatientRecord expected = named("Anna Meyer", "1980-03-05");
    expected.otherNames = {"Anna Maier"};
    expected.otherBorn = {"1980-05-03"};
    expected.sex = Sex::Female;
    expected.height = 170;
    expected.unclear = {"sex female; sex male", "170 cm; 171 cm"};
    expected.phone = "1; 2";
    expected.email = "a@example.org";
    expected.address = "Low Lane 3";
    expected.doctor = Contact{"Dr Quill; Dr Reed 91", "90"};
    expected.guardian = Contact{"Ib", ""};
    expected.medicines = {"a", "b"};
    expected.conditions = {{"diabetes", "mild; insulin"}, {"pacemaker", ""}};
    expected.pregnancy = other.pregnancy;
    expected.bloodPressure = keep.bloodPressure;
    expected.otherBloodPressures = {{140, 90, "2023-01-01"}};
    expected.complaints = {{3, "back", "", false}, {4, "knee", "", false}, {5, "back", "", false}};
    EXPECT_EQ(merge.record, expected);
    const std::map<int, int> ids{{3, 4}, {1, 3}, {2, 5}};
    EXPECT_EQ(merge.complaintIds, ids) << "the first 'back' is the same complaint, the second stays one of its own";
}

TEST(PatientMergeTest, AContactsPhoneStaysWithItsName)
{
    const auto doctor = [](std::optional<Contact> keep, std::optional<Contact> other) {
        PatientRecord a = named("Ana");
        PatientRecord b = named("Ana");
        a.doctor = std::move(keep);
        b.doctor = std::move(other);
        return okay(merged(a, b)).record.doctor;
    };
    EXPECT_EQ(doctor(Contact{"A", "1"}, std::nullopt), (Contact{"A", "1"}));
    EXPECT_EQ(doctor(std::nullopt, Contact{"A", "1"}), (Contact{"A", "1"}));
    EXPECT_EQ(doctor(Contact{"A", "1"}, Contact{"A", "2"}), (Contact{"A", "1; 2"}));
    EXPECT_EQ(doctor(Contact{"A", ""}, Contact{"A", "2"}), (Contact{"A", "2"}));
    EXPECT_EQ(doctor(Contact{"A", ""}, Contact{"B", "2"}), (Contact{"A; B 2", ""}));
    EXPECT_EQ(doctor(Contact{"", "1"}, Contact{"B", "2"}), (Contact{"B; 1", "2"}));
    EXPECT_EQ(doctor(Contact{"A", "1"}, Contact{"", "2"}), (Contact{"A; 2", "1"}));
    EXPECT_EQ(doctor(Contact{"B; 1", "2"}, Contact{"B", "2"}), (Contact{"B; 1", "2"})) << "is there already";
    EXPECT_EQ(doctor(Contact{"A; B 2", "1"}, Contact{"B", "2"}), (Contact{"A; B 2", "1"})) << "is there already";
}

// Each thing that was in either record is in the merged one, at its place.
TEST(PatientMergeTest, LosesNothing)
{
    Random random(4);
    for (int i = 0; i < 300; ++i) {
        const PatientRecord keep = random.record();
        const PatientRecord other = random.record();
        const MergedPatient merge = okay(merged(keep, other));
        const PatientRecord &r = merge.record;
        EXPECT_EQ(r.name, keep.name);
        for (const PatientRecord *from : {&keep, &other}) {
            const auto allIn = [&](auto list, const char *what) {
                for (const auto &value : (*from).*list)
                    EXPECT_TRUE(holds(r.*list, value)) << what;
            };
            const auto inSingleOrList = [&](const auto &value, const auto &single, const auto &list, const char *what) {
                EXPECT_TRUE(single == value || holds(list, value)) << what;
            };
            inSingleOrList(from->name, r.name, r.otherNames, "name");
            for (const std::string &name : from->otherNames)
                inSingleOrList(name, r.name, r.otherNames, "other name");
            if (!from->born.empty())
                inSingleOrList(from->born, r.born, r.otherBorn, "born");
            for (const std::string &date : from->otherBorn)
                inSingleOrList(date, r.born, r.otherBorn, "other born");
            if (from->pregnancy)
                inSingleOrList(*from->pregnancy, r.pregnancy, r.otherPregnancies, "pregnancy");
            for (const Pregnancy &pregnancy : from->otherPregnancies)
                inSingleOrList(pregnancy, r.pregnancy, r.otherPregnancies, "other pregnancy");
            if (from->bloodPressure)
                inSingleOrList(*from->bloodPressure, r.bloodPressure, r.otherBloodPressures, "blood pressure");
            for (const BloodPressure &pressure : from->otherBloodPressures)
                inSingleOrList(pressure, r.bloodPressure, r.otherBloodPressures, "other blood pressure");
            using R = PatientRecord;
            for (auto text : {&R::mark, &R::language, &R::interpreter, &R::phone, &R::email, &R::address})
                EXPECT_NE((r.*text).find((*from).*text), std::string::npos) << (*from).*text;
            for (auto contact : {&R::doctor, &R::emergency, &R::guardian}) {
                if (!((*from).*contact))
                    continue;
                ASSERT_TRUE(r.*contact);
                const std::string all = (r.*contact)->name + "\n" + (r.*contact)->phone;
                EXPECT_NE(all.find(((*from).*contact)->name), std::string::npos);
                EXPECT_NE(all.find(((*from).*contact)->phone), std::string::npos);
            }
            allIn(&R::medicines, "medicines");
            allIn(&R::allergies, "allergies");
            allIn(&R::surgery, "surgery");
            allIn(&R::implants, "implants");
            for (const StandingCondition &condition : from->conditions)
                EXPECT_TRUE(std::any_of(r.conditions.begin(), r.conditions.end(), [&](const StandingCondition &c) {
                    return c.id == condition.id && c.note.find(condition.note) != std::string::npos;
                })) << condition.id;
        }
        for (const PatientComplaint &complaint : keep.complaints)
            EXPECT_TRUE(holds(r.complaints, complaint));
        ASSERT_EQ(merge.complaintIds.size(), other.complaints.size());
        std::set<int> newIds;
        for (PatientComplaint complaint : other.complaints) {
            complaint.id = merge.complaintIds.at(complaint.id);
            EXPECT_TRUE(newIds.insert(complaint.id).second) << "two complaints became one";
            EXPECT_TRUE(holds(r.complaints, complaint)) << complaint.text;
        }
        // Once more brings nothing new.
        EXPECT_EQ(okay(merged(r, other)).record, r);
    }
}

TEST(PatientMergeTest, WithItselfIsItself)
{
    EXPECT_EQ(okay(merged(wholeRecord(), wholeRecord())).record, wholeRecord());
}

TEST(PatientMergeTest, WhatBecomesTooLongIsRefused)
{
    PatientRecord keep = named("Ana");
    PatientRecord other = named("Ana");
    keep.mark = std::string(6000, 'a');
    other.mark = std::string(6000, 'b');
    expectError(merged(keep, other), ErrorCode::OutOfRange, "merged#/mark", "12002 characters");
    other.mark.clear();
    keep.medicines.assign(500, "a");
    other.medicines = {"b"};
    expectError(merged(keep, other), ErrorCode::OutOfRange, "merged#/medicines", "501 entries");
    other.medicines.clear();
    keep.complaints = {{PatientComplaint::highestId, "a", "", false}};
    other.complaints = {{1, "b", "", false}};
    expectError(merged(keep, other), ErrorCode::OutOfRange, "merged#/complaints/1/id", "1000000001");
}

} // namespace raphe::test
