// Reads and writes the patient's record. The shape is checked here, the rules by checkPatient; both stand in
// resources/schema/patient.schema.json too. Errors leave as Result; no state, any thread.
#include "core/record/PatientRecordJson.h"

#include "core/base/JsonReader.h"
#include "core/base/JsonText.h"
#include "core/record/Visit.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cmath>
#include <cstdio>

namespace raphe {

namespace {

constexpr std::string_view patientFormat = "raphe-patient";
constexpr int patientVersion = 1;

// Before the fields: a later version has fields that this one does not know, and that is the better message.
void checkFormat(const JsonReader &root)
{
    if (const std::string format = root.string("format"); format != patientFormat)
        root.field("format").fail(ErrorCode::WrongFormat, format);
    const JsonReader at = root.field("version");
    const double version = at.asNumber();
    if (version == patientVersion)
        return;
    std::array<char, 32> written{};
    std::snprintf(written.data(), written.size(), "%.15g", version);
    const bool newer = version > patientVersion && version == std::floor(version);
    at.fail(newer ? ErrorCode::NewerVersion : ErrorCode::WrongFormat, written.data());
}

std::string readDate(const JsonReader &at)
{
    std::string date = at.asString();
    if (!isIsoDate(date))
        at.fail(ErrorCode::OutOfRange, date + std::string(dateAllowed));
    return date;
}

Contact readContact(const JsonReader &at)
{
    at.expectObject({"name", "phone"});
    return {at.stringOr("name", {}), at.stringOr("phone", {})};
}

Surgery readSurgery(const JsonReader &at)
{
    at.expectObject({"text", "year"});
    Surgery surgery{at.string("text"), {}};
    if (at.has("year"))
        surgery.year = at.field("year").asInt(Surgery::firstYear, Surgery::lastYear);
    return surgery;
}

Implant readImplant(const JsonReader &at)
{
    at.expectObject({"text", "place"});
    return {at.string("text"), at.stringOr("place", {})};
}

StandingCondition readCondition(const JsonReader &at)
{
    at.expectObject({"condition", "note"});
    return {at.string("condition"), at.stringOr("note", {})};
}

RuledOut readRuledOut(const JsonReader &at)
{
    at.expectObject({"condition", "because"});
    return {at.string("condition"), at.stringOr("because", {})};
}

Pregnancy readPregnancy(const JsonReader &at)
{
    at.expectObject({"week", "date"});
    return {at.field("week").asInt(Pregnancy::firstWeek, Pregnancy::lastWeek), readDate(at.field("date"))};
}

BloodPressure readBloodPressure(const JsonReader &at)
{
    using P = BloodPressure;
    at.expectObject({"systolic", "diastolic", "date"});
    return {at.field("systolic").asInt(P::lowestSystolic, P::highestSystolic),
        at.field("diastolic").asInt(P::lowestDiastolic, P::highestDiastolic), readDate(at.field("date"))};
}

PatientComplaint readComplaint(const JsonReader &at)
{
    at.expectObject({"id", "text", "since", "closed"});
    return {at.field("id").asInt(1, PatientComplaint::highestId), at.string("text"), at.stringOr("since", {}),
        at.has("closed") && at.field("closed").asBool()};
}

template <class T> std::optional<T> readOptional(const JsonReader &root, std::string_view name, T (*read)(const JsonReader &))
{
    return root.has(name) ? std::optional(read(root.field(name))) : std::nullopt;
}

template <class T> std::vector<T> readList(const JsonReader &root, std::string_view name, T (*read)(const JsonReader &))
{
    std::vector<T> list;
    if (root.has(name))
        for (const JsonReader &item : root.field(name).items())
            list.push_back(read(item));
    return list;
}

PatientRecord readRecord(const JsonReader &root)
{
    checkFormat(root);
    root.expectObject({"format", "version", "name", "other_names", "born", "other_born", "sex", "height", "mark", "language",
        "interpreter", "phone", "email", "address", "doctor", "emergency", "guardian", "medicines", "allergies", "surgery",
        "implants", "conditions", "ruled_out", "pregnancy", "other_pregnancies", "blood_pressure", "other_blood_pressures",
        "unclear", "complaints"});
    PatientRecord record;
    record.name = root.string("name");
    record.otherNames = root.stringsOr("other_names");
    record.born = readOptional(root, "born", readDate).value_or(std::string());
    record.otherBorn = readList(root, "other_born", readDate);
    record.sex = readWordOr(root, "sex", sexWords);
    if (root.has("height"))
        record.height = root.field("height").asInt(PatientRecord::leastHeight, PatientRecord::greatestHeight);
    record.mark = root.stringOr("mark", {});
    record.language = root.stringOr("language", {});
    record.interpreter = root.stringOr("interpreter", {});
    record.phone = root.stringOr("phone", {});
    record.email = root.stringOr("email", {});
    record.address = root.stringOr("address", {});
    record.doctor = readOptional(root, "doctor", readContact);
    record.emergency = readOptional(root, "emergency", readContact);
    record.guardian = readOptional(root, "guardian", readContact);
    record.medicines = root.stringsOr("medicines");
    record.allergies = root.stringsOr("allergies");
    record.surgery = readList(root, "surgery", readSurgery);
    record.implants = readList(root, "implants", readImplant);
    record.conditions = readList(root, "conditions", readCondition);
    record.ruledOut = readList(root, "ruled_out", readRuledOut);
    record.pregnancy = readOptional(root, "pregnancy", readPregnancy);
    record.otherPregnancies = readList(root, "other_pregnancies", readPregnancy);
    record.bloodPressure = readOptional(root, "blood_pressure", readBloodPressure);
    record.otherBloodPressures = readList(root, "other_blood_pressures", readBloodPressure);
    record.unclear = root.stringsOr("unclear");
    record.complaints = readList(root, "complaints", readComplaint);
    return record;
}

using Json = nlohmann::ordered_json; // fields in the order in which a person reads them

Json written(const std::string &text)
{
    return text;
}

Json written(const Contact &contact)
{
    Json json = Json::object();
    putText(json, "name", contact.name);
    putText(json, "phone", contact.phone);
    return json;
}

Json written(const Surgery &surgery)
{
    Json json{{"text", surgery.text}};
    if (surgery.year)
        json["year"] = *surgery.year;
    return json;
}

Json written(const Implant &implant)
{
    Json json{{"text", implant.text}};
    putText(json, "place", implant.place);
    return json;
}

Json written(const StandingCondition &condition)
{
    Json json{{"condition", condition.id}};
    putText(json, "note", condition.note);
    return json;
}

Json written(const RuledOut &ruledOut)
{
    Json json{{"condition", ruledOut.id}};
    putText(json, "because", ruledOut.because);
    return json;
}

Json written(const Pregnancy &pregnancy)
{
    return {{"week", pregnancy.week}, {"date", pregnancy.date}};
}

Json written(const BloodPressure &pressure)
{
    return {{"systolic", pressure.systolic}, {"diastolic", pressure.diastolic}, {"date", pressure.date}};
}

Json written(const PatientComplaint &complaint)
{
    Json json{{"id", complaint.id}, {"text", complaint.text}};
    putText(json, "since", complaint.since);
    if (complaint.closed)
        json["closed"] = true;
    return json;
}

template <class T> void putOptional(Json &json, const char *name, const std::optional<T> &value)
{
    if (value)
        json[name] = written(*value);
}

template <class T> void putList(Json &json, const char *name, const std::vector<T> &list)
{
    for (const T &value : list)
        json[name].push_back(written(value));
}

} // namespace

Result<PatientRecord> readPatient(std::string_view text, const std::string &file)
{
    const auto json = parseJson(text, file);
    if (!json)
        return json.error();
    auto record = guarded([&] { return readRecord(JsonReader(json.value(), file)); });
    if (!record)
        return record;
    if (const auto sound = checkPatient(record.value(), file); !sound)
        return sound.error();
    return record;
}

std::string writePatient(const PatientRecord &record)
{
    Json json;
    json["format"] = patientFormat;
    json["version"] = patientVersion;
    json["name"] = record.name;
    putList(json, "other_names", record.otherNames);
    putText(json, "born", record.born);
    putList(json, "other_born", record.otherBorn);
    putWord(json, "sex", sexWords, record.sex);
    if (record.height)
        json["height"] = *record.height;
    putText(json, "mark", record.mark);
    putText(json, "language", record.language);
    putText(json, "interpreter", record.interpreter);
    putText(json, "phone", record.phone);
    putText(json, "email", record.email);
    putText(json, "address", record.address);
    putOptional(json, "doctor", record.doctor);
    putOptional(json, "emergency", record.emergency);
    putOptional(json, "guardian", record.guardian);
    putList(json, "medicines", record.medicines);
    putList(json, "allergies", record.allergies);
    putList(json, "surgery", record.surgery);
    putList(json, "implants", record.implants);
    putList(json, "conditions", record.conditions);
    putList(json, "ruled_out", record.ruledOut);
    putOptional(json, "pregnancy", record.pregnancy);
    putList(json, "other_pregnancies", record.otherPregnancies);
    putOptional(json, "blood_pressure", record.bloodPressure);
    putList(json, "other_blood_pressures", record.otherBloodPressures);
    putList(json, "unclear", record.unclear);
    putList(json, "complaints", record.complaints);
    // Ill-formed UTF-8 would make dump() throw; a replacement character loses less than the whole record.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace raphe
