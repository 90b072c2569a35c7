// raphe-batch fhir: one visit as an HL7 FHIR R4 bundle, of a visit file, or of what `export` printed of a practice file: that one
// also tells where the visit stands, who signed it, and the patient's record.
#include "app/batch/Commands.h"
#include "app/batch/VisitFile.h"

#include "app/paint/Paper.h"
#include "core/anatomy/AtlasReader.h"
#include "core/document/fhir/FhirBundle.h"
#include "core/record/PatientRecordJson.h"
#include "core/record/VisitJson.h"
#include "core/safety/Cautions.h"
#include "core/safety/Warnings.h"

#include <QDateTime>
#include <QFile>
#include <QRegularExpression>
#include <nlohmann/json.hpp>

#include <iostream>

namespace raphe::batch {

namespace {

// As core/store/Export writes them.
constexpr WordTable<FhirState, 4> exportedStates{{{FhirState::Draft, "draft"}, {FhirState::Signed, "signed"},
    {FhirState::Amending, "being amended"}, {FhirState::InError, "entered in error"}}};

/// Minutes east of UTC of '+01:00' or 'Z'.
Result<int> zoneOf(const std::string &text)
{
    static const QRegularExpression form(QStringLiteral("^([+-])(\\d\\d):([0-5]\\d)$"));
    const auto found = form.match(QString::fromStdString(text));
    const int minutes = found.captured(2).toInt() * 60 + found.captured(3).toInt();
    if (text == "Z")
        return 0;
    if (!found.hasMatch() || minutes > 14 * 60)
        return Error{ErrorCode::BadArgument, "--zone", "'" + text + "' is not a zone; write it as +01:00, or Z"};
    return found.captured(1) == QLatin1String("-") ? -minutes : minutes;
}

/// All that the bundle is made of; the source points into it, so that it stays where it is.
struct FhirContent {
    Atlas atlas;
    FhirCodes codes;
    SafetyRules rules;
    Examination examination;
    Techniques techniques;
};

FhirContent readContent()
{
    Atlas atlas = valueOrThrow(readEmbeddedAtlas());
    SafetyRules rules = valueOrThrow(readEmbeddedSafetyRules(atlas));
    Examination examination = valueOrThrow(readEmbeddedExamination(atlas, rules));
    Techniques techniques = valueOrThrow(readEmbeddedTechniques(rules));
    return {
        std::move(atlas), valueOrThrow(readEmbeddedFhirCodes()), std::move(rules), std::move(examination), std::move(techniques)};
}

Visit readExportedVisit(const JsonReader &at, const nlohmann::json &document, const FhirContent &content)
{
    Visit visit = valueOrThrow(
        readVisit(document.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace), at.place(), content.atlas));
    static_cast<void>(valueOrThrow(checkConditions(content.rules, visit, at.place())));
    static_cast<void>(valueOrThrow(checkWarnings(content.rules, visit, at.place())));
    static_cast<void>(valueOrThrow(checkExamined(content.examination, visit, at.place())));
    return visit;
}

std::int64_t readTime(const JsonReader &at)
{
    const QDateTime time = QDateTime::fromString(QString::fromStdString(at.asString()), Qt::ISODate);
    if (!time.isValid())
        at.fail(ErrorCode::OutOfRange, at.asString() + ", allowed: a time in UTC, ISO 8601");
    return time.toMSecsSinceEpoch();
}

void readHistory(const JsonReader &visitAt, const nlohmann::json &visit, const FhirContent &content, FhirSource &source)
{
    if (!visitAt.has("history"))
        return;
    const auto acts = visitAt.field("history").items();
    for (std::size_t i = 0; i < acts.size(); ++i) {
        const auto act = fromWord(fhirActWords, acts[i].string("act"));
        if (!act) // opened, moved and the like: nobody's word on the visit
            continue;
        source.entries.push_back({*act, acts[i].string("author"), readTime(acts[i].field("entered_at")),
            acts[i].stringOr("care_at", {}), acts[i].stringOr("reason", {})});
        const nlohmann::json &entry = visit.at("history").at(i);
        if (!source.asSigned && entry.contains("document") && entry.at("document").is_object())
            source.asSigned = readExportedVisit(acts[i].field("document"), entry.at("document"), content);
    }
}

// What is nested without end would run out of stack where it is written again. Ours has some ten levels; our choice, no source.
constexpr int deepest = 100;

nlohmann::json readJsonFile(const std::string &file)
{
    QFile in(QString::fromStdString(file));
    if (!in.open(QIODevice::ReadOnly))
        throw Error{ErrorCode::CannotRead, file, in.errorString().toStdString()};
    const std::string text = in.readAll().toStdString();
    auto json = valueOrThrow(parseJson(text, file));
    bool isTooDeep = false;
    const auto watch = [&](int depth, nlohmann::json::parse_event_t, const nlohmann::json &) {
        isTooDeep = isTooDeep || depth > deepest;
        return true;
    };
    const bool isWhole = !nlohmann::json::parse(text, watch, false).is_discarded();
    if (isTooDeep || !isWhole)
        throw Error{ErrorCode::BadJson, file, "nested too deep"};
    return json;
}

void readExport(const FhirVerb &verb, const FhirContent &content, FhirSource &source, PatientRecord &record)
{
    const nlohmann::json json = readJsonFile(verb.exported);
    const JsonReader root(json, verb.exported);
    root.expectObject({"format", "version", "patient", "visits", "accesses"});
    if (root.string("format") != "raphe-export")
        root.field("format").fail(ErrorCode::WrongFormat, root.string("format"));
    static_cast<void>(root.field("version").asInt(1, 1));
    const JsonReader patient = root.field("patient");
    record = valueOrThrow(
        readPatient(json.at("patient").dump(-1, ' ', false, nlohmann::json::error_handler_t::replace), patient.place()));
    source.record = &record;
    const auto visits = root.field("visits").items();
    const std::size_t nth = verb.nth ? static_cast<std::size_t>(*verb.nth) : visits.size();
    if (nth < 1 || nth > visits.size())
        throw Error{ErrorCode::BadArgument, "--nth",
            std::to_string(nth) + ", allowed: 1 to " + std::to_string(visits.size()) + ", the visits of the export"};
    const JsonReader &at = visits[nth - 1];
    const nlohmann::json &visit = json.at("visits").at(nth - 1);
    at.expectObject({"state", "document", "history"});
    source.state = readWord(exportedStates, at.field("state"));
    const JsonReader document = at.field("document");
    source.visit = readExportedVisit(document, visit.at("document"), content);
    readHistory(at, visit, content, source);
}

std::string bundleOf(const FhirVerb &verb)
{
    if (verb.visit.empty() == verb.exported.empty())
        throw Error{ErrorCode::BadArgument, "fhir", "one of --visit and --export is required"};
    const FhirContent content = readContent();
    PatientRecord record;
    FhirSource source;
    source.atlas = &content.atlas;
    source.codes = &content.codes;
    source.rules = &content.rules;
    source.examination = &content.examination;
    source.techniques = &content.techniques;
    source.practice = verb.practice;
    if (!verb.zone.empty())
        source.utcOffset = valueOrThrow(zoneOf(verb.zone));
    if (verb.exported.empty())
        source.visit = valueOrThrow(readVisitFile(verb.visit, content.atlas));
    else
        readExport(verb, content, source, record);
    return valueOrThrow(fhirBundle(source));
}

} // namespace

Result<Done> writeFhir(const FhirVerb &verb)
{
    const auto bundle = guarded([&] { return bundleOf(verb); });
    if (!bundle)
        return bundle.error();
    if (!verb.out.empty())
        return saveAll(verb.out, QByteArray::fromStdString(bundle.value()));
    std::cout << bundle.value();
    return Done{};
}

} // namespace raphe::batch
