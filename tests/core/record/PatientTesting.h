// What the tests of patients' records share: people, records made at random, what is expected. All people here are
// invented.
#pragma once

#include "core/base/Result.h"
#include "core/record/PatientRecord.h"
#include "core/record/PatientRecordJson.h"

#include "tests/support/PrintError.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <functional>
#include <optional>
#include <ostream>
#include <random>
#include <string>
#include <vector>

namespace raphe {

inline void PrintTo(const PatientRecord &record, std::ostream *out)
{
    *out << writePatient(record);
}

} // namespace raphe

namespace raphe::test {

/// A record with something in every field.
inline PatientRecord wholeRecord()
{
    PatientRecord r;
    r.name = "Zoë Ørsted";
    r.otherNames = {"Zoe Oersted"};
    r.born = "1980-03-05";
    r.otherBorn = {"1980-05-03"};
    r.mark = "scar on the left eyebrow";
    r.language = "Danish";
    r.interpreter = "her son";
    r.phone = "0555 12";
    r.email = "zoe@example.org";
    r.address = "Low Lane 3";
    r.doctor = Contact{"Dr Quill", "0555 90"};
    r.emergency = Contact{"", "0555 13"};
    r.guardian = Contact{"Ib Ørsted", ""};
    r.medicines = {"a", "b"};
    r.allergies = {"nickel"};
    r.surgery = {{"appendix", 1999}, {"tonsils", {}}};
    r.implants = {{"plate", "left wrist"}, {"port", ""}};
    r.conditions = {{"diabetes", "since childhood"}, {"osteoporosis", ""}};
    r.ruledOut = {{"frailty", "pregabalin"}, {"epilepsy", ""}};
    r.sex = Sex::Female;
    r.height = 168;
    r.pregnancy = Pregnancy{12, "2024-02-29"};
    r.otherPregnancies = {{42, "2019-01-31"}};
    r.bloodPressure = BloodPressure{120, 80, "2024-01-02"};
    r.otherBloodPressures = {{140, 90, "2023-01-02"}};
    r.unclear = {"blood pressure 80 over 190"};
    r.complaints = {{1, "low back", "last winter", true}, {7, "Knie rechts", "", false}};
    return r;
}

inline PatientRecord named(const std::string &name, const std::string &born = {})
{
    PatientRecord r;
    r.name = name;
    r.born = born;
    return r;
}

/// The value, or a failed test and a value made of nothing.
template <class T> T okay(const Result<T> &result)
{
    if (result)
        return result.value();
    ADD_FAILURE() << testing::PrintToString(result.error());
    return {};
}

template <class T>
void expectError(
    const Result<T> &result, ErrorCode code, const std::string &place, const std::string &detail, const std::string &about = {})
{
    ASSERT_FALSE(result) << "was accepted: " << about;
    EXPECT_EQ(result.error().code, code) << about << ": " << testing::PrintToString(result.error());
    EXPECT_EQ(result.error().place, place) << about;
    EXPECT_NE(result.error().detail.find(detail), std::string::npos)
        << about << ": " << result.error().detail << " lacks " << detail;
}

// Random records that keep the rules. Words come from several scripts.
class Random {
public:
    explicit Random(unsigned seed) : m_engine(seed) { }

    int number(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_engine); }
    bool yes() { return number(0, 1) == 1; }

    std::string word()
    {
        static const std::vector<std::string> words{"Ana", "Łukasz", "Müller", "Strauß", "José", "O'Brien", "Ødegård", "Ленка",
            "Ελένη", "李", "김", "d'Été", "Çelik", "back", "knee", "\"quoted\"", "a;b", "line\nbreak", "L4/5", "\\", "zwölf"};
        return words[static_cast<std::size_t>(number(0, static_cast<int>(words.size()) - 1))];
    }

    std::string text()
    {
        std::string out = word();
        for (int i = number(0, 3); i > 0; --i)
            out += " " + word();
        return out;
    }

    std::string maybe() { return yes() ? text() : std::string(); }

    std::string date()
    {
        std::array<char, 16> out{};
        std::snprintf(out.data(), out.size(), "%04d-%02d-%02d", number(1900, 2030), number(1, 12), number(1, 28));
        return out.data();
    }

    template <class T> std::vector<T> list(const std::function<T()> &make)
    {
        std::vector<T> out;
        for (int i = number(0, 3); i > 0; --i)
            out.push_back(make());
        return out;
    }

    std::optional<Contact> contact()
    {
        if (yes())
            return std::nullopt;
        Contact c{maybe(), maybe()};
        if (c.name.empty() && c.phone.empty())
            c.phone = text();
        return c;
    }

    BloodPressure pressure()
    {
        const int diastolic = number(20, 200);
        return {number(std::max(diastolic + 1, 40), 300), diastolic, date()};
    }

    PatientRecord record()
    {
        PatientRecord r;
        r.name = text();
        r.otherNames = list<std::string>([&] { return text(); });
        r.born = yes() ? date() : "";
        r.otherBorn = list<std::string>([&] { return date(); });
        for (std::string *field : {&r.mark, &r.language, &r.interpreter, &r.phone, &r.email, &r.address})
            *field = maybe();
        r.doctor = contact();
        r.emergency = contact();
        r.guardian = contact();
        r.medicines = list<std::string>([&] { return text(); });
        r.allergies = list<std::string>([&] { return text(); });
        r.surgery = list<Surgery>([&] { return Surgery{text(), yes() ? std::optional(number(1880, 2200)) : std::nullopt}; });
        r.implants = list<Implant>([&] { return Implant{text(), maybe()}; });
        for (const char *id : {"diabetes", "osteoporosis", "pacemaker"})
            if (yes())
                r.conditions.push_back({id, maybe()});
        r.ruledOut = list<RuledOut>([&] { return RuledOut{"frailty", maybe()}; });
        r.sex = yes() ? std::optional(yes() ? Sex::Female : Sex::Male) : std::nullopt;
        r.height = yes() ? std::optional(number(PatientRecord::leastHeight, PatientRecord::greatestHeight)) : std::nullopt;
        r.pregnancy = yes() ? std::optional(Pregnancy{number(1, 42), date()}) : std::nullopt;
        r.otherPregnancies = list<Pregnancy>([&] { return Pregnancy{number(1, 42), date()}; });
        r.bloodPressure = yes() ? std::optional(pressure()) : std::nullopt;
        r.otherBloodPressures = list<BloodPressure>([&] { return pressure(); });
        r.unclear = list<std::string>([&] { return text(); });
        int id = 0;
        r.complaints = list<PatientComplaint>([&] { return PatientComplaint{id += number(1, 9), text(), maybe(), yes()}; });
        return r;
    }

private:
    std::mt19937 m_engine;
};

} // namespace raphe::test
