#include "core/document/fhir/FhirMaking.h"

#include <QDateTime>
#include <QUuid>

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace raphe::fhir {

namespace {

// Ours alone, drawn by lot once: the space in which practices have their names.
constexpr const char *space = "5b1d5a3e-0d0f-4d2b-9a53-7f0c6a1e8c42";

// UUID version 5 (RFC 4122), in small letters without braces.
std::string named(const std::string &within, const std::string &name)
{
    return QUuid::createUuidV5(QUuid(QString::fromStdString(within)), QByteArray::fromStdString(name))
        .toString(QUuid::WithoutBraces)
        .toStdString();
}

std::string joinedByLine(std::initializer_list<std::string> parts)
{
    std::string out;
    for (const std::string &part : parts)
        out += part + '\n';
    return out;
}

std::string sideWords(Side side)
{
    return std::string(wordOf(raphe::sideWords, side));
}

// FHIR writes minutes of the zone, never a letter but Z.
std::string zoneText(int minutes)
{
    const int size = std::abs(minutes);
    const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return (minutes < 0 ? "-" : "+") + two(size / 60) + ":" + two(size % 60);
}

} // namespace

Making::Making(const FhirSource &source)
    : m_source(source), m_practice(named(space, source.practiceKey.empty() ? source.practice : source.practiceKey))
{
    const Visit &visit = source.visit;
    const Patient who = visit.patient.value_or(Patient{});
    m_patient = named(m_practice,
        source.patientNumber.empty() ? joinedByLine({"patient", who.name, who.born})
                                     : joinedByLine({"patient number", source.patientNumber}));
    m_visit = named(m_patient,
        source.visitNumber.empty() ? joinedByLine({"visit", visit.date, visit.practitioner})
                                   : joinedByLine({"visit number", source.visitNumber}));
}

std::string Making::idOf(const std::string &name) const
{
    return named(m_visit, name);
}

std::string Making::lastingId(const std::string &name) const
{
    return named(m_practice, name);
}

Json Making::referTo(const std::string &name) const
{
    return fhir::referTo(idOf(name));
}

void Making::push(const std::string &id, Json resource, bool isTarget)
{
    resource["id"] = id;
    m_entries.push_back({isTarget, std::move(resource)});
}

Json Making::add(const std::string &name, Json resource)
{
    std::string free = name;
    for (int number = 2; !m_names.insert(free).second; ++number)
        free = name + "#" + std::to_string(number);
    const std::string id = idOf(free);
    push(id, std::move(resource), true);
    return fhir::referTo(id);
}

Json Making::addLasting(const std::string &id, Json resource)
{
    if (m_ids.insert(id).second)
        push(id, std::move(resource), false);
    return fhir::referTo(id);
}

std::vector<Json> Making::targets() const
{
    std::vector<Json> out;
    for (const Entry &entry : m_entries)
        if (entry.isTarget)
            out.push_back(fhir::referTo(entry.resource.at("id").get<std::string>()));
    return out;
}

std::vector<Json> Making::takeResources()
{
    std::vector<Json> out;
    for (std::vector<Entry> *entries : {&m_entries, &m_structures})
        for (Entry &entry : *entries)
            out.push_back(std::move(entry.resource));
    return out;
}

std::optional<Json> Making::practitioner(const std::string &name)
{
    const std::string clean = cleaned(name);
    if (clean.empty())
        return std::nullopt;
    Json person{{"resourceType", "Practitioner"}, {"id", ""}};
    append(person, "name", textOnly(clean));
    return addLasting(lastingId(joinedByLine({"practitioner", clean})), std::move(person));
}

void Making::putPractitioner(Json &json, const char *field)
{
    if (auto who = practitioner(visit().practitioner))
        json[field] = std::move(*who);
}

std::string Making::moment(const std::string &time) const
{
    return momentAfter(time, 0);
}

std::string Making::momentAfter(const std::string &time, int seconds) const
{
    const std::string &date = visit().date;
    if (date.empty() || time.empty() || !m_source.utcOffset)
        return date;
    const QDateTime begin(QDate::fromString(QString::fromStdString(date), Qt::ISODate),
        QTime::fromString(QString::fromStdString(time), Qt::ISODate), Qt::UTC); // counted as if in UTC: only the clock matters
    if (!begin.isValid())
        return date;
    return begin.addSecs(seconds).toString(QStringLiteral("yyyy-MM-ddTHH:mm:ss")).toStdString() + zoneText(*m_source.utcOffset);
}

std::string Making::status(const char *open, const char *done) const
{
    if (isInError())
        return "entered-in-error";
    return isSigned() ? done : open;
}

Json Making::codeOf(std::string_view id) const
{
    const FhirCode &code = codes().code(id);
    Json out = Json::object();
    if (code.loinc)
        append(out, "coding", coding(codes().uri("loinc"), code.loinc->code, code.loinc->display));
    append(out, "coding", ownCoding("observed", code.id, code.display));
    put(out, "text", code.display);
    return out;
}

Json Making::component(std::string_view code, const char *valueName, Json value) const
{
    Json out = Json::object();
    out["code"] = codeOf(code);
    out[valueName] = std::move(value);
    return out;
}

Json Making::observation(std::string_view code, const std::string &time)
{
    return observation(codeOf(code), codes().code(code).category, time);
}

Json Making::observation(Json code, std::string_view category, const std::string &time)
{
    Json out{{"resourceType", "Observation"}, {"id", ""}};
    out["status"] = status("preliminary", "final");
    append(out, "category", coded(coding(codes().uri("observation-category"), std::string(category), {})));
    out["code"] = std::move(code);
    out["subject"] = patient();
    out["encounter"] = encounter();
    put(out, "effectiveDateTime", moment(time));
    if (category == "survey")
        append(out, "performer", patient());
    else if (auto who = practitioner(visit().practitioner))
        append(out, "performer", std::move(*who));
    return out;
}

void Making::setAbsent(Json &observation, const char *reason, const std::string &text) const
{
    observation["dataAbsentReason"] = coded(coding(codes().uri("data-absent"), reason, spelt(reason)), text);
}

Json Making::sideConcept(Side side) const
{
    Json out = Json::object();
    if (side != Side::Midline)
        append(out, "coding",
            coding(codes().uri("body-side"), side == Side::Left ? "L" : "R", side == Side::Left ? "Left" : "Right"));
    append(out, "coding", ownCoding("side", sideWords(side)));
    out["text"] = sideWords(side);
    return out;
}

std::string Making::placeWords(const Place &place, std::optional<Spot> spot, const std::optional<StructureId> &at) const
{
    std::string out =
        (place.side == Side::Midline ? "" : sideWords(place.side) + " ") + atlas().at(place.structure).names.english;
    if (place.side == Side::Midline && atlas().isSpinalSegment(place.structure))
        out += ", midline";
    if (spot)
        out += ", " + std::string(wordOf(spotWords, *spot));
    if (at)
        out += ", at " + atlas().at(*at).names.english;
    return out;
}

Json Making::structureCoded(const StructureId &id) const
{
    const Structure &structure = atlas().at(id);
    Json out = Json::object();
    append(out, "coding", ownCoding("structure", id.value, structure.names.english));
    for (const std::string &code : structure.uberon)
        append(out, "coding", coding(codes().uri("uberon"), code, {}));
    for (const std::string &code : structure.fma)
        append(out, "coding", coding(codes().uri("fma"), code, {}));
    return out;
}

Json Making::placeCoding(const Place &place) const
{
    Json out = ownCoding("structure", place.structure.value, placeWords(place));
    append(out, "extension", extension(own("laterality"), "valueCodeableConcept", sideConcept(place.side)));
    return out;
}

Json Making::bodyStructure(const std::string &name, Json location, std::vector<Json> qualifiers, const std::string &words)
{
    const std::string id = named(m_patient, "body structure\n" + name); // the same at every visit of the patient
    if (m_ids.insert(id).second) {
        Json out{{"resourceType", "BodyStructure"}, {"id", id}};
        out["active"] = true;
        out["location"] = std::move(location);
        for (Json &qualifier : qualifiers)
            append(out, "locationQualifier", std::move(qualifier));
        put(out, "description", words);
        out["patient"] = patient();
        m_structures.push_back({false, std::move(out)});
    }
    return fhir::referTo(id);
}

Json Making::siteOf(Json coded, const std::string &words, Side side, const Json &structure) const
{
    Json out = Json::object();
    append(out, "extension", extension(codes().uri("body-structure-of"), "valueReference", structure));
    append(out, "extension", extension(own("laterality"), "valueCodeableConcept", sideConcept(side)));
    if (coded.contains("coding"))
        out["coding"] = std::move(coded["coding"]);
    put(out, "text", words);
    return out;
}

Json Making::site(const Place &place, std::optional<Spot> spot, const std::optional<StructureId> &at)
{
    const std::string words = placeWords(place, spot, at);
    std::vector<Json> qualifiers{sideConcept(place.side)};
    std::string name = place.structure.value + "\n" + sideWords(place.side);
    if (spot) {
        qualifiers.push_back(ownCoded("spot", wordOf(spotWords, *spot)));
        name += "\n" + std::string(wordOf(spotWords, *spot));
    }
    if (at) {
        qualifiers.push_back(coded(ownCoding("attached-at", at->value, atlas().at(*at).names.english)));
        name += "\nat " + at->value;
    }
    qualifiers.push_back(ownCoded("layer", wordOf(layerWords, atlas().at(place.structure).layer)));
    const Json structure = bodyStructure(name, structureCoded(place.structure), std::move(qualifiers), words);
    return siteOf(structureCoded(place.structure), words, place.side, structure);
}

std::optional<Json> Making::partSite(const std::string &group, Side side)
{
    const std::vector<std::string> &parts = codes().bodyParts;
    const bool isPart = std::find(parts.begin(), parts.end(), group) != parts.end();
    if (!isPart && side == Side::Midline)
        return std::nullopt;
    Json part = isPart ? ownCoded("body-part", group) : ownCoded("body-part", "half-of-the-body");
    if (side == Side::Midline) { // without sides: said of the whole part
        put(part, "text", spelt(group));
        return part;
    }
    const std::string words = sideWords(side) + (isPart ? " " + spelt(group) : " side");
    const Json structure =
        bodyStructure("part\n" + (isPart ? group : "") + "\n" + sideWords(side), part, {sideConcept(side)}, words);
    return siteOf(part, words, side, structure);
}

} // namespace raphe::fhir
