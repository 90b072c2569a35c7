// The FHIR bundle: left and right, what it must not tell, that it is the same each time, and odd texts. Whether it is FHIR at all
// is judged by tests/fhir.
#include "core/document/fhir/FhirBundle.h"

#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QFile>
#include <QRegularExpression>
#include <QString>

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <stdexcept>

namespace raphe::test::fhir_bundle {

namespace {

using Json = nlohmann::ordered_json;

const FhirSource &emptySource()
{
    static const FhirCodes codes = readEmbeddedFhirCodes().value();
    static const Examination examination = readEmbeddedExamination(atlas(), safetyRules()).value();
    static const Techniques techniques = readEmbeddedTechniques(safetyRules()).value();
    static const FhirSource source = [] {
        FhirSource out;
        out.atlas = &atlas();
        out.codes = &codes;
        out.rules = &safetyRules();
        out.examination = &examination;
        out.techniques = &techniques;
        return out;
    }();
    return source;
}

// In which every field says something; no free text of it names a side.
const Visit &fullVisit()
{
    static const Visit visit = [] {
        QFile file(QStringLiteral(RAPHE_SOURCE_DIR "/tests/fhir/visit.json"));
        if (!file.open(QIODevice::ReadOnly))
            throw std::runtime_error("tests/fhir/visit.json cannot be read");
        return readVisit(file.readAll().toStdString(), "visit.json", atlas()).value();
    }();
    return visit;
}

FhirSource sourceOf(const Visit &visit)
{
    FhirSource source = emptySource();
    source.visit = visit;
    return source;
}

std::string textOf(const FhirSource &source)
{
    const auto bundle = fhirBundle(source);
    return bundle ? bundle.value() : inWords(bundle.error());
}

Json bundleOf(const FhirSource &source)
{
    return Json::parse(textOf(source));
}

std::vector<Json> resourcesOf(const Json &bundle, const std::string &type)
{
    std::vector<Json> out;
    for (const Json &entry : bundle.at("entry"))
        if (type.empty() || entry.at("resource").at("resourceType") == type)
            out.push_back(entry.at("resource"));
    return out;
}

// Of our own list of what is observed; empty: of another.
std::string observedCode(const Json &observation)
{
    for (const Json &coding : observation.at("code").at("coding"))
        if (coding.at("system") == "urn:raphe:fhir:observed")
            return coding.at("code").get<std::string>();
    return {};
}

std::vector<Json> observed(const Json &bundle, const std::string &code)
{
    std::vector<Json> out;
    for (const Json &observation : resourcesOf(bundle, "Observation"))
        if (observedCode(observation) == code)
            out.push_back(observation);
    return out;
}

void eachString(const Json &json, const std::function<void(const std::string &)> &see)
{
    if (json.is_string())
        see(json.get<std::string>());
    if (json.is_structured())
        for (const Json &inner : json)
            eachString(inner, see);
}

// Ids by the order in which they are first seen: places are in the names that they are made of.
QString withCountedIds(const std::string &text)
{
    static const QRegularExpression id(QStringLiteral("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}"));
    const QString all = QString::fromStdString(text);
    std::map<QString, int> seen;
    QString out;
    qsizetype end = 0;
    for (auto it = id.globalMatch(all); it.hasNext();) {
        const auto found = it.next();
        const auto number = seen.emplace(found.captured(), static_cast<int>(seen.size())).first->second;
        out += all.mid(end, found.capturedStart() - end) + QStringLiteral("id-%1").arg(number);
        end = found.capturedEnd();
    }
    return out + all.mid(end);
}

// Every word for a side, in codes and in words.
QString withSidesTurned(QString text)
{
    const auto swap = [&text](const QString &a, const QString &b) {
        text.replace(QRegularExpression(a), QStringLiteral("\u0002"));
        text.replace(QRegularExpression(b), a.mid(2, a.size() - 4));
        text.replace(QStringLiteral("\u0002"), b.mid(2, b.size() - 4));
    };
    swap(QStringLiteral("\\bleft\\b"), QStringLiteral("\\bright\\b"));
    swap(QStringLiteral("\\bLeft\\b"), QStringLiteral("\\bRight\\b"));
    text.replace(QStringLiteral("\"L\""), QStringLiteral("\"?\""));
    text.replace(QStringLiteral("\"R\""), QStringLiteral("\"L\""));
    text.replace(QStringLiteral("\"?\""), QStringLiteral("\"R\""));
    return text;
}

FhirEntry entryOf(FhirAct act, const std::string &author, std::int64_t madeAt = 1'710'839'100'000) // 2024-03-19 09:05 UTC
{
    return {act, author, madeAt, {}, {}};
}

} // namespace

TEST(FhirBundle, AnEmptyVisitIsAPatientAndAnEncounter)
{
    const Json bundle = bundleOf(emptySource());
    EXPECT_EQ(bundle.at("type"), "collection");
    ASSERT_EQ(bundle.at("entry").size(), 2U) << bundle.dump(1);
    EXPECT_EQ(resourcesOf(bundle, "Patient").size(), 1U);
    EXPECT_EQ(resourcesOf(bundle, "Encounter").front().at("status"), "in-progress");
    EXPECT_FALSE(resourcesOf(bundle, "Encounter").front().contains("period")) << "no day was told";
}

TEST(FhirBundle, IsTheSameEachTime)
{
    EXPECT_EQ(textOf(sourceOf(fullVisit())), textOf(sourceOf(fullVisit())));
}

TEST(FhirBundle, ReferencesLeadToEntriesAndIdsDiffer)
{
    FhirSource source = sourceOf(fullVisit());
    source.state = FhirState::Signed;
    source.practice = "Lowbridge Practice";
    source.entries = {entryOf(FhirAct::Signed, "J. Ambar"), entryOf(FhirAct::Amended, "B. Holm")};
    const Json bundle = bundleOf(source);
    std::set<std::string> ids;
    for (const Json &entry : bundle.at("entry")) {
        EXPECT_EQ(entry.at("fullUrl"), "urn:uuid:" + entry.at("resource").at("id").get<std::string>());
        EXPECT_TRUE(ids.insert(entry.at("fullUrl").get<std::string>()).second) << entry.at("fullUrl");
    }
    int references = 0;
    eachString(bundle.at("entry"), [&](const std::string &text) {
        if (text.starts_with("urn:uuid:")) {
            ++references;
            EXPECT_TRUE(ids.contains(text)) << text;
        }
    });
    EXPECT_GT(references, 500);
    EXPECT_EQ(resourcesOf(bundle, "Practitioner").size(), 2U) << "J. Ambar once, and who amended it";
}

TEST(FhirBundle, AMirroredVisitGivesTheMirroredBundle)
{
    const std::string text = textOf(sourceOf(fullVisit()));
    const std::string mirror = textOf(sourceOf(mirrored(fullVisit())));
    EXPECT_NE(withCountedIds(text), withCountedIds(mirror));
    EXPECT_EQ(withCountedIds(text).toStdString(), withSidesTurned(withCountedIds(mirror)).toStdString());
    EXPECT_EQ(textOf(sourceOf(mirrored(mirrored(fullVisit())))), text);
}

TEST(FhirBundle, TellsEachQualityOfEachFindingOnce)
{
    const Json bundle = bundleOf(sourceOf(fullVisit()));
    const auto all = [](const std::vector<Finding> &findings, const std::function<int(const Finding &)> &count) {
        int sum = 0;
        for (const Finding &finding : findings)
            sum += count(finding);
        return static_cast<std::size_t>(sum);
    };
    const auto both = [&](const std::function<int(const Finding &)> &count) {
        return all(fullVisit().findings, count) + all(fullVisit().retested.findings, count);
    };
    EXPECT_EQ(observed(bundle, "palpation").size(), fullVisit().findings.size() + fullVisit().retested.findings.size());
    EXPECT_EQ(observed(bundle, "tenderness").size(),
        both([](const Finding &f) { return (f.tenderness ? 1 : 0) + (f.sore ? 1 : 0) + (f.clear.tenderness ? 1 : 0); }));
    EXPECT_EQ(observed(bundle, "restriction").size(),
        both([](const Finding &f) { return (f.restriction ? 1 : 0) + (f.stiff ? 1 : 0) + (f.clear.motion ? 1 : 0); }));
    EXPECT_EQ(observed(bundle, "joint-play").size(), both([](const Finding &f) { return f.play ? 1 : 0; }));
    EXPECT_EQ(
        observed(bundle, "felt-also-here").size(), both([](const Finding &f) { return static_cast<int>(f.refersTo.size()); }));
}

TEST(FhirBundle, WhatIsFoundAgainFollowsWhatWasFound)
{
    const Json bundle = bundleOf(sourceOf(fullVisit()));
    const auto pain = observed(bundle, "pain-now");
    ASSERT_EQ(pain.size(), 2U);
    EXPECT_FALSE(pain[0].contains("extension"));
    EXPECT_EQ(pain[0].at("valueInteger"), 5);
    EXPECT_EQ(pain[1].at("valueInteger"), 3);
    EXPECT_EQ(
        pain[1].at("extension").at(0).at("valueReference").at("reference"), "urn:uuid:" + pain[0].at("id").get<std::string>());
    EXPECT_EQ(pain[1].at("category").at(1).at("coding").at(0).at("code"), "after-the-treatment");
    int alone = 0; // what was not examined before follows nothing
    for (const Json &panel : observed(bundle, "palpation"))
        if (panel.at("category").size() == 2 && !panel.contains("extension"))
            ++alone;
    EXPECT_EQ(alone, 1) << "the sacroiliac joint";
}

TEST(FhirBundle, KeepsToItselfWhatWasAskedAlone)
{
    int asked = 0;
    for (const WarningSign &sign : safetyRules().signs().signs) {
        if (!sign.alone)
            continue;
        ++asked;
        Visit told;
        told.warnings = {{"shingles-rash", false, "2026-11-27", {}, {}, {}, {}}};
        Visit secret = told;
        secret.warnings.push_back({sign.id, true, "2026-11-26", {}, Decision::Referred, "whispered reason", "whispered name"});
        EXPECT_EQ(textOf(sourceOf(secret)), textOf(sourceOf(told))) << sign.id;
        secret.warnings.erase(secret.warnings.begin());
        EXPECT_EQ(textOf(sourceOf(secret)), textOf(sourceOf(Visit()))) << sign.id << ": nor that anything was asked";
    }
    EXPECT_GE(asked, 3);
}

TEST(FhirBundle, SaysNothingOfAnAnswerThatWasMoved)
{
    Visit visit;
    visit.warnings = {{"walking-calf-pain", true, "2026-11-27", {}, {}, "told at another visit", "P. Lind", true}};
    EXPECT_EQ(textOf(sourceOf(visit)), textOf(sourceOf(Visit())));
}

TEST(FhirBundle, OddTextsGiveValidJson)
{
    const std::string odd =
        "a\x01\x0b\x1f\xc2\xa0\xff\xfe\xed\xa0\x80z\xe2\x80\x83"; // control, white space, ill-formed, em space
    Visit visit = fullVisit();
    visit.patient->name = odd;
    visit.practitioner = odd;
    visit.cautions = {odd, "\x01 \xc2\xa0", ""};
    visit.complaints.front().text = odd;
    visit.complaints.front().aggravates = "\x02";
    visit.findings.front().note = odd;
    visit.findings.front().texture = {odd, " "};
    visit.treatment.events.front().told = odd;
    visit.closing.impression = {odd, "M 54\t5", odd};
    visit.consents.front().remark = odd;
    FhirSource source = sourceOf(visit);
    source.practice = odd;
    source.entries = {entryOf(FhirAct::Signed, "\xff")};
    const Json bundle = bundleOf(source); // throws where it is no JSON
    EXPECT_EQ(resourcesOf(bundle, "Flag").size(), 1U) << "what says nothing is no caution";
    int cleaned = 0;
    eachString(bundle, [&](const std::string &text) {
        EXPECT_FALSE(text.empty());
        const QString read = QString::fromStdString(text);
        EXPECT_EQ(read, read.trimmed()) << text;
        for (const QChar c : read) {
            const bool isBreak = c == QLatin1Char('\t') || c == QLatin1Char('\n') || c == QLatin1Char('\r');
            EXPECT_TRUE(isBreak || c == QLatin1Char(' ') || (c.category() != QChar::Other_Control && !c.isSpace()))
                << static_cast<int>(c.unicode());
        }
        if (read.startsWith(QLatin1Char('a')) && read.endsWith(QLatin1Char('z')))
            ++cleaned;
    });
    EXPECT_GE(cleaned, 6);
}

TEST(FhirBundle, TimesOfDayNeedAZone)
{
    FhirSource source = sourceOf(fullVisit());
    const auto started = [&] { return resourcesOf(bundleOf(source), "Procedure").front().at("performedPeriod").at("start"); };
    EXPECT_EQ(started(), "2024-03-19");
    source.utcOffset = -(5 * 60 + 30);
    EXPECT_EQ(started(), "2024-03-19T09:20:00-05:30");
    source.utcOffset = 0;
    EXPECT_EQ(started(), "2024-03-19T09:20:00+00:00");
    source.visit.treatment.steps.front().began = "23:59:50";
    EXPECT_EQ(resourcesOf(bundleOf(source), "Procedure").front().at("performedPeriod").at("end"), "2024-03-20T00:01:25+00:00");
    source.visit.date.clear();
    EXPECT_FALSE(resourcesOf(bundleOf(source), "Procedure").front().contains("performedPeriod"));
    source.utcOffset = 15 * 60;
    ASSERT_FALSE(fhirBundle(source).ok());
    EXPECT_EQ(fhirBundle(source).error().code, ErrorCode::OutOfRange);
}

TEST(FhirBundle, NumbersOfThePracticeMakeTheIds)
{
    FhirSource source = sourceOf(fullVisit());
    source.practiceKey = "practice one";
    source.patientNumber = "17";
    source.visitNumber = "203";
    const Json first = bundleOf(source);
    const Json patient = resourcesOf(first, "Patient").front();
    EXPECT_EQ(patient.at("identifier").at(0).at("value"), "17");
    const auto idOf = [](const Json &bundle, const char *type) { return resourcesOf(bundle, type).front().at("id"); };
    source.visit.patient->name = "Mira Lund"; // married since
    source.visit.date = "2024-03-20"; // written down wrongly
    EXPECT_EQ(idOf(bundleOf(source), "Patient"), patient.at("id"));
    EXPECT_EQ(idOf(bundleOf(source), "Encounter"), idOf(first, "Encounter"));
    source.visitNumber = "204";
    EXPECT_EQ(idOf(bundleOf(source), "Patient"), patient.at("id"));
    EXPECT_NE(idOf(bundleOf(source), "Encounter"), idOf(first, "Encounter"));
    source.practiceKey = "practice two";
    EXPECT_NE(idOf(bundleOf(source), "Patient"), patient.at("id"));
}

TEST(FhirBundle, TwoOfOneNameHaveTheirOwnIds)
{
    Visit visit; // no file can hold it, but a caller can
    Finding sore;
    sore.place = {StructureId{"soleus"}, Side::Right};
    sore.sore = true;
    visit.findings = {sore, sore};
    const auto found = observed(bundleOf(sourceOf(visit)), "tenderness");
    ASSERT_EQ(found.size(), 2U);
    EXPECT_NE(found[0].at("id"), found[1].at("id"));
    EXPECT_EQ(found[0].at("bodySite"), found[1].at("bodySite")) << "one body structure";
    EXPECT_EQ(resourcesOf(bundleOf(sourceOf(visit)), "BodyStructure").size(), 1U);
}

TEST(FhirBundle, StepsHaveTheStatusOfWhatWasDone)
{
    FhirSource source = sourceOf(fullVisit());
    source.visit.treatment.steps[1].done.reset();
    const auto statuses = [&] {
        std::vector<std::string> out;
        for (const Json &step : resourcesOf(bundleOf(source), "Procedure"))
            out.push_back(step.at("status").get<std::string>());
        return out;
    };
    EXPECT_EQ(statuses(), (std::vector<std::string>{"completed", "in-progress", "not-done"}));
    source.state = FhirState::Signed;
    EXPECT_EQ(statuses(), (std::vector<std::string>{"completed", "unknown", "not-done"}));
    source.visit.treatment.steps[1].done = StepDone::Partly;
    EXPECT_EQ(statuses(), (std::vector<std::string>{"completed", "stopped", "not-done"}));
    source.state = FhirState::InError;
    EXPECT_EQ(statuses(), std::vector<std::string>(3, "entered-in-error"));
}

TEST(FhirBundle, AnAmendmentSaysWhatItChanged)
{
    FhirSource source = sourceOf(fullVisit());
    source.state = FhirState::Signed;
    source.entries = {entryOf(FhirAct::Signed, "J. Ambar")};
    const auto amended = [&] {
        std::set<std::string> out;
        for (const Json &observation : resourcesOf(bundleOf(source), "Observation"))
            if (observation.at("status") == "amended")
                out.insert(observedCode(observation));
        return out;
    };
    EXPECT_TRUE(amended().empty());
    source.asSigned = source.visit;
    source.visit.complaints.front().now = PainScore{6};
    source.entries.push_back(entryOf(FhirAct::Amended, "J. Ambar"));
    EXPECT_EQ(amended(), std::set<std::string>{"pain-now"});
    EXPECT_EQ(resourcesOf(bundleOf(source), "QuestionnaireResponse").front().at("status"), "completed");
    source.asSigned.reset();
    EXPECT_GT(amended().size(), 10U) << "nobody knows what it was";
    EXPECT_EQ(resourcesOf(bundleOf(source), "QuestionnaireResponse").front().at("status"), "amended");
    source.state = FhirState::Amending;
    EXPECT_TRUE(amended().empty()) << "what it says now is signed by nobody yet";
}

TEST(FhirBundle, SignaturesHaveTheirTimes)
{
    FhirSource source = sourceOf(fullVisit());
    source.state = FhirState::Signed;
    FhirEntry late = entryOf(FhirAct::Late, "J. Ambar");
    late.reason = "the power was out";
    const auto careTime = [&](const std::string &told) {
        late.careAt = told;
        source.entries = {late};
        return resourcesOf(bundleOf(source), "Provenance").front().at("occurredDateTime").get<std::string>();
    };
    EXPECT_EQ(careTime(""), "2024-03-19") << "the day of the visit";
    EXPECT_EQ(careTime("2024-03-18"), "2024-03-18");
    EXPECT_EQ(careTime("2024-03-18T16:30"), "2024-03-18") << "no zone, no time of day";
    EXPECT_EQ(careTime("2024-03-18T16:30:00+01:00"), "2024-03-18T15:30:00Z");
    EXPECT_EQ(careTime("yesterday"), "2024-03-19");
    const Json provenance = resourcesOf(bundleOf(source), "Provenance").front();
    EXPECT_EQ(provenance.at("recorded"), "2024-03-19T09:05:00Z");
    EXPECT_EQ(provenance.at("reason").at(0).at("text"), "the power was out");
}

TEST(FhirBundle, TheCodeOfAnUnknownListStandsInWords)
{
    FhirSource source = sourceOf(Visit());
    const auto finding = [&](const Impression &impression) {
        source.visit.closing.impression = impression;
        return resourcesOf(bundleOf(source), "ClinicalImpression").front().at("finding").at(0).at("itemCodeableConcept");
    };
    EXPECT_EQ(finding({"", "LB-2", "our list, 2nd"}), (Json{{"text", "LB-2 (our list, 2nd)"}}));
    const Json known = finding({"", "M54.5", "ICD-10, 2019"});
    EXPECT_EQ(known.at("coding").at(0).at("system"), "http://hl7.org/fhir/sid/icd-10");
    EXPECT_EQ(known.at("coding").at(0).at("version"), "2019");
}

TEST(FhirBundle, ARecordAddsContactAndSexAlone)
{
    PatientRecord record;
    record.name = "Mira Halvorsen";
    record.born = "1981-04-17";
    record.sex = Sex::Female;
    record.phone = "0555 12";
    record.guardian = Contact{"Ib Lund", ""};
    record.medicines = {"metformin"};
    record.allergies = {"nickel"};
    FhirSource source = sourceOf(fullVisit());
    const std::string without = textOf(source);
    EXPECT_EQ(without.find("gender"), std::string::npos);
    source.record = &record;
    const std::string with = textOf(source);
    const Json patient = resourcesOf(Json::parse(with), "Patient").front();
    EXPECT_EQ(patient.at("gender"), "female");
    EXPECT_EQ(patient.at("telecom").at(0).at("value"), "0555 12");
    EXPECT_EQ(patient.at("contact").at(0).at("name").at("text"), "Ib Lund");
    EXPECT_FALSE(patient.at("contact").at(0).contains("telecom"));
    for (const char *word : {"metformin", "nickel"})
        EXPECT_EQ(with.find(word), std::string::npos) << word;
}

} // namespace raphe::test::fhir_bundle
