// The rules of a record: one walk over its fields in the order of the JSON form, ended by the first that is broken.
#include "core/record/PatientRecord.h"

#include "core/base/JsonReader.h"
#include "core/base/Utf8.h"
#include "core/record/Visit.h"

#include <QString>

#include <set>
#include <utility>

namespace raphe {

namespace {

bool isBlank(const std::string &text)
{
    return QString::fromStdString(text).trimmed().isEmpty();
}

// Throws Error at the first rule that is broken.
class Check {
public:
    explicit Check(std::string file) : m_file(std::move(file)) { }

    void record(const PatientRecord &r) const
    {
        needed("/name", r.name);
        list("/other_names", r.otherNames, &Check::needed);
        if (!r.born.empty())
            date("/born", r.born);
        list("/other_born", r.otherBorn, &Check::date);
        if (r.height)
            number("/height", *r.height, PatientRecord::leastHeight, PatientRecord::greatestHeight);
        text("/mark", r.mark);
        text("/language", r.language);
        text("/interpreter", r.interpreter);
        text("/phone", r.phone);
        text("/email", r.email);
        text("/address", r.address);
        optional("/doctor", r.doctor, &Check::contact);
        optional("/emergency", r.emergency, &Check::contact);
        optional("/guardian", r.guardian, &Check::contact);
        list("/medicines", r.medicines, &Check::needed);
        list("/allergies", r.allergies, &Check::needed);
        list("/surgery", r.surgery, &Check::surgery);
        list("/implants", r.implants, &Check::implant);
        list("/conditions", r.conditions, &Check::condition);
        once("/conditions", r.conditions, &StandingCondition::id);
        list("/ruled_out", r.ruledOut, &Check::ruledOut);
        optional("/pregnancy", r.pregnancy, &Check::pregnancy);
        list("/other_pregnancies", r.otherPregnancies, &Check::pregnancy);
        optional("/blood_pressure", r.bloodPressure, &Check::bloodPressure);
        list("/other_blood_pressures", r.otherBloodPressures, &Check::bloodPressure);
        list("/unclear", r.unclear, &Check::needed);
        list("/complaints", r.complaints, &Check::complaint);
        once("/complaints", r.complaints, &PatientComplaint::id);
    }

private:
    [[noreturn]] void fail(ErrorCode code, const std::string &pointer, std::string detail) const
    {
        throw Error{code, m_file + "#" + pointer, std::move(detail)};
    }

    void text(const std::string &pointer, const std::string &value) const
    {
        if (!isUtf8(value))
            fail(ErrorCode::WrongType, pointer, "UTF-8 text");
        const std::size_t length = characterCount(value);
        if (length > PatientRecord::longestText)
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(length) + " characters, allowed: at most " + std::to_string(PatientRecord::longestText));
    }

    void needed(const std::string &pointer, const std::string &value) const
    {
        text(pointer, value);
        if (isBlank(value))
            fail(ErrorCode::OutOfRange, pointer, "empty, allowed: a text");
    }

    void date(const std::string &pointer, const std::string &value) const
    {
        if (!isIsoDate(value))
            fail(ErrorCode::OutOfRange, pointer, value + std::string(dateAllowed));
    }

    void number(const std::string &pointer, int value, int low, int high) const
    {
        if (value < low || value > high)
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(value) + ", allowed: whole number " + std::to_string(low) + " to " + std::to_string(high));
    }

    void contact(const std::string &pointer, const Contact &value) const
    {
        text(pointer + "/name", value.name);
        text(pointer + "/phone", value.phone);
        if (isBlank(value.name) && isBlank(value.phone))
            fail(ErrorCode::MissingField, pointer, "name or phone");
    }

    void surgery(const std::string &pointer, const Surgery &value) const
    {
        needed(pointer + "/text", value.text);
        if (value.year)
            number(pointer + "/year", *value.year, Surgery::firstYear, Surgery::lastYear);
    }

    void implant(const std::string &pointer, const Implant &value) const
    {
        needed(pointer + "/text", value.text);
        text(pointer + "/place", value.place);
    }

    void conditionId(const std::string &pointer, const std::string &id) const
    {
        text(pointer, id);
        if (!isWellFormed(StructureId{id}))
            fail(ErrorCode::BadId, pointer, id);
    }

    void ruledOut(const std::string &pointer, const RuledOut &value) const
    {
        conditionId(pointer + "/condition", value.id);
        text(pointer + "/because", value.because);
    }

    void condition(const std::string &pointer, const StandingCondition &value) const
    {
        conditionId(pointer + "/condition", value.id);
        text(pointer + "/note", value.note);
    }

    void pregnancy(const std::string &pointer, const Pregnancy &value) const
    {
        number(pointer + "/week", value.week, Pregnancy::firstWeek, Pregnancy::lastWeek);
        date(pointer + "/date", value.date);
    }

    void bloodPressure(const std::string &pointer, const BloodPressure &value) const
    {
        using P = BloodPressure;
        number(pointer + "/systolic", value.systolic, P::lowestSystolic, P::highestSystolic);
        number(pointer + "/diastolic", value.diastolic, P::lowestDiastolic, P::highestDiastolic);
        if (value.systolic <= value.diastolic)
            fail(ErrorCode::Contradiction, pointer, "systolic, diastolic");
        date(pointer + "/date", value.date);
    }

    void complaint(const std::string &pointer, const PatientComplaint &value) const
    {
        number(pointer + "/id", value.id, 1, PatientComplaint::highestId);
        needed(pointer + "/text", value.text);
        text(pointer + "/since", value.since);
    }

    template <class T>
    void optional(const std::string &pointer, const std::optional<T> &value,
        void (Check::*check)(const std::string &, const T &) const) const
    {
        if (value)
            (this->*check)(pointer, *value);
    }

    template <class T>
    void list(const std::string &pointer, const std::vector<T> &values,
        void (Check::*check)(const std::string &, const T &) const) const
    {
        if (values.size() > PatientRecord::longestList)
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(values.size()) + " entries, allowed: at most " + std::to_string(PatientRecord::longestList));
        for (std::size_t i = 0; i < values.size(); ++i)
            (this->*check)(pointer + "/" + std::to_string(i), values[i]);
    }

    template <class T, class Id> void once(const std::string &pointer, const std::vector<T> &values, Id T::*id) const
    {
        std::set<Id> seen;
        for (std::size_t i = 0; i < values.size(); ++i)
            if (!seen.insert(values[i].*id).second)
                fail(ErrorCode::Duplicate, pointer + "/" + std::to_string(i), inWords(values[i].*id));
    }

    static std::string inWords(const std::string &id) { return id; }
    static std::string inWords(int id) { return std::to_string(id); }

    std::string m_file;
};

} // namespace

Result<Done> checkPatient(const PatientRecord &record, const std::string &file)
{
    return guarded([&] {
        Check(file).record(record);
        return Done{};
    });
}

} // namespace raphe
