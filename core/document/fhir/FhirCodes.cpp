#include "core/document/fhir/FhirCodes.h"

#include "core/safety/ContentReading.h"

#include <QFile>
#include <QString>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace raphe {

using namespace content;

namespace {

constexpr const char *codesFile = "fhir-codes.json";

// What the code of the bundle asks for by name.
constexpr std::array neededSystems{"loinc", "ucum", "uberon", "fma", "body-side", "body-structure-of", "procedure-structure",
    "sequel-to", "observation-category", "data-absent", "condition-clinical", "condition-verification", "condition-category",
    "flag-category", "encounter-class", "consent-scope", "goal-achievement", "data-operation", "provenance-participant"};
constexpr std::array neededCodes{"palpation", "tenderness", "restriction", "joint-play", "end-feel", "familiar-pain", "texture",
    "felt-also-here", "remark", "very-sure", "felt-after-comparing", "pain-from", "brings-pain", "changes-from-afar", "pain-now",
    "pain-worst", "pain-best", "activity", "activity-name", "activities-mean", "irritability", "pain-through-day", "waking",
    "morning", "noon", "evening", "night", "hurts-here", "pain-drawing", "drawn-side", "drawn-view", "pain-quality",
    "pain-intensity", "painted-by", "place-confirmed", "began-with-injury", "since-last", "reaction", "promise-kept",
    "said-in-work"};
constexpr std::array categories{"exam", "survey", "therapy"};

LoincCode readLoinc(const JsonReader &at)
{
    at.expectObject({"code", "display", "source", "read"});
    return {readText(at, "code"), readText(at, "display"), readText(at, "source"), readWord(readingWords, at.field("read"))};
}

FhirSystem readSystem(const JsonReader &at, const std::vector<FhirSystem> &earlier)
{
    at.expectObject({"id", "uri", "source", "read"});
    return {readNewId(at, earlier), readText(at, "uri"), readText(at, "source"), readWord(readingWords, at.field("read"))};
}

FhirCode readCode(const JsonReader &at, const std::vector<FhirCode> &earlier)
{
    at.expectObject({"id", "display", "category", "loinc"});
    FhirCode out{readNewId(at, earlier), readText(at, "display"), {}, {}};
    if (at.has("category")) {
        out.category = readText(at, "category");
        if (std::find(categories.begin(), categories.end(), out.category) == categories.end())
            at.field("category").fail(ErrorCode::UnknownWord, out.category);
    }
    if (at.has("loinc"))
        out.loinc = readLoinc(at.field("loinc"));
    return out;
}

FhirVital readVital(const JsonReader &at, const std::vector<FhirVital> &earlier)
{
    at.expectObject({"test", "loinc", "display", "unit", "fields", "source", "read"});
    FhirVital out{readText(at, "test"), readText(at, "loinc"), readText(at, "display"), readText(at, "unit"), {},
        readText(at, "source"), readWord(readingWords, at.field("read"))};
    for (const FhirVital &other : earlier)
        if (other.test == out.test)
            at.field("test").fail(ErrorCode::Duplicate, out.test);
    for (const JsonReader &field : at.field("fields").items()) {
        field.expectObject({"loinc", "display"});
        out.fields.push_back({readText(field, "loinc"), readText(field, "display"), {}, {}});
    }
    return out;
}

ImpressionList readImpressionList(const JsonReader &at)
{
    at.expectObject({"begins", "uri", "source", "read"});
    return {readText(at, "begins"), readText(at, "uri"), readText(at, "source"), readWord(readingWords, at.field("read"))};
}

FhirCodes readAllCodes(const JsonReader &root)
{
    root.expectObject({"format", "version", "read", "systems", "codes", "vitals", "consent", "body_parts", "impression_lists"});
    expectFormat(root, "raphe-fhir-codes");
    FhirCodes out;
    for (const JsonReader &at : root.field("systems").items())
        out.systems.push_back(readSystem(at, out.systems));
    for (const JsonReader &at : root.field("codes").items())
        out.codes.push_back(readCode(at, out.codes));
    for (const JsonReader &at : root.field("vitals").items())
        out.vitals.push_back(readVital(at, out.vitals));
    out.consent = readLoinc(root.field("consent"));
    out.bodyParts = readChoice(root, "body_parts", [](const JsonReader &item) { return item.asString(); });
    for (const JsonReader &at : root.field("impression_lists").items())
        out.impressionLists.push_back(readImpressionList(at));
    for (const char *id : neededSystems)
        if (!findById(out.systems, id))
            root.field("systems").fail(ErrorCode::MissingField, id);
    for (const char *id : neededCodes)
        if (!findById(out.codes, id))
            root.field("codes").fail(ErrorCode::MissingField, id);
    return out;
}

} // namespace

const std::string &FhirCodes::uri(std::string_view id) const
{
    return findById(systems, id)->uri;
}

const FhirCode &FhirCodes::code(std::string_view id) const
{
    return *findById(codes, id);
}

const FhirVital *FhirCodes::findVital(std::string_view test) const
{
    const auto it = std::find_if(vitals.begin(), vitals.end(), [&](const FhirVital &vital) { return vital.test == test; });
    return it == vitals.end() ? nullptr : &*it;
}

const ImpressionList *FhirCodes::listOf(const std::string &list) const
{
    const QString named = QString::fromStdString(list).trimmed();
    const ImpressionList *best = nullptr;
    for (const ImpressionList &known : impressionLists) {
        const QString begins = QString::fromStdString(known.begins);
        // 'ICD-100' is not of 'ICD-10', and 'ICD-10-XY' is a list of its own.
        const bool fits = named.startsWith(begins, Qt::CaseInsensitive)
            && (named.size() == begins.size() || named[begins.size()].isSpace() || named[begins.size()] == QLatin1Char(','));
        if (fits && (!best || best->begins.size() < known.begins.size()))
            best = &known;
    }
    return best;
}

Result<FhirCodes> readFhirCodes(std::string_view text, const std::string &file)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, file));
        return readAllCodes(JsonReader(json, file));
    });
}

Result<FhirCodes> readEmbeddedFhirCodes()
{
    QFile file(QStringLiteral(":/fhir-codes.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, codesFile, file.errorString().toStdString()};
    return readFhirCodes(file.readAll().toStdString(), codesFile);
}

} // namespace raphe
