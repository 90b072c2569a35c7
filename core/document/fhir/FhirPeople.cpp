#include "core/document/fhir/FhirThemes.h"

namespace raphe::fhir {

namespace {

Json phone(const std::string &number)
{
    Json out{{"system", "phone"}};
    put(out, "value", number);
    return out;
}

void addContact(Json &patient, const char *relation, const std::optional<Contact> &contact)
{
    if (!contact)
        return;
    Json out = Json::object();
    append(out, "relationship", ownCoded("contact", relation));
    if (Json name = textOnly(contact->name); !name.empty())
        out["name"] = std::move(name);
    if (Json number = phone(contact->phone); number.contains("value"))
        append(out, "telecom", std::move(number));
    if (out.contains("name") || out.contains("telecom")) // FHIR allows no contact without
        append(patient, "contact", std::move(out));
}

void addRecord(Json &patient, const PatientRecord &record)
{
    if (Json number = phone(record.phone); number.contains("value"))
        append(patient, "telecom", std::move(number));
    Json mail{{"system", "email"}};
    put(mail, "value", record.email);
    if (mail.contains("value"))
        append(patient, "telecom", std::move(mail));
    if (record.sex)
        patient["gender"] = wordOf(sexWords, *record.sex);
    if (Json address = textOnly(record.address); !address.empty())
        append(patient, "address", std::move(address));
    addContact(patient, "emergency", record.emergency);
    addContact(patient, "guardian", record.guardian);
    if (Json language = textOnly(record.language); !language.empty())
        append(patient, "communication", Json{{"language", std::move(language)}});
    Json doctor = Json::object();
    put(doctor, "display", record.doctor ? record.doctor->name : std::string());
    if (!doctor.empty())
        append(patient, "generalPractitioner", std::move(doctor));
}

std::optional<Json> addPractice(Making &making)
{
    const FhirSource &source = making.source();
    if (cleaned(source.practice).empty())
        return std::nullopt;
    Json out{{"resourceType", "Organization"}, {"id", ""}};
    put(out, "name", source.practice);
    return making.addLasting(making.lastingId("practice"), std::move(out));
}

Json numberOf(Making &making, const std::optional<Json> &practice)
{
    Json out{{"use", "usual"}};
    out["system"] = "urn:uuid:" + making.lastingId("patient numbers");
    put(out, "value", making.source().patientNumber);
    if (practice)
        out["assigner"] = *practice;
    return out;
}

void addPatient(Making &making, const std::optional<Json> &practice)
{
    const FhirSource &source = making.source();
    const Patient who = making.visit().patient.value_or(Patient{});
    Json out{{"resourceType", "Patient"}, {"id", ""}};
    if (!source.patientNumber.empty())
        append(out, "identifier", numberOf(making, practice));
    // In one piece: nobody can tell which part of a name is the family's.
    if (Json name = textOnly(source.record ? source.record->name : who.name); !name.empty())
        append(out, "name", std::move(name));
    put(out, "birthDate", source.record ? source.record->born : who.born);
    if (source.record)
        addRecord(out, *source.record);
    if (practice)
        out["managingOrganization"] = *practice;
    making.addLasting(making.patientId(), std::move(out));
}

void addEncounter(Making &making, const std::optional<Json> &practice)
{
    Json out{{"resourceType", "Encounter"}, {"id", ""}};
    const bool isOver = making.source().state == FhirState::Amending || making.isSigned();
    out["status"] = making.isInError() ? "entered-in-error" : isOver ? "finished" : "in-progress";
    out["class"] = coding(making.codes().uri("encounter-class"), "AMB", "ambulatory");
    out["subject"] = making.patient();
    if (auto who = making.practitioner(making.visit().practitioner))
        append(out, "participant", Json{{"individual", std::move(*who)}});
    if (const std::string day = making.moment({}); !day.empty())
        out["period"] = Json{{"start", day}, {"end", day}};
    for (std::size_t i = 0; i < making.visit().complaints.size(); ++i)
        append(out, "reasonReference", making.referTo(complaintName(i)));
    if (practice)
        out["serviceProvider"] = *practice;
    making.add("encounter", std::move(out));
}

} // namespace

void addPeople(Making &making)
{
    const std::optional<Json> practice = addPractice(making);
    addPatient(making, practice);
    addEncounter(making, practice);
}

} // namespace raphe::fhir
