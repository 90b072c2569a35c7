// Reads and writes the visit file. What a finding may say is checked here once, so that every later floor can rely on
// it; the same rules stand in resources/schema/visit.schema.json. Errors leave as Result; no state, any thread.
#include "core/record/VisitJson.h"

#include "core/record/ClosingJson.h"
#include "core/record/ExaminationJson.h"
#include "core/record/IntakeJson.h"
#include "core/record/JsonFields.h"
#include "core/record/LetterJson.h"
#include "core/record/PainDrawingJson.h"
#include "core/record/PatientRecord.h"
#include "core/record/PlanWishJson.h"
#include "core/record/TreatmentJson.h"

#include "core/anatomy/Atlas.h"
#include "core/base/JsonReader.h"
#include "core/base/JsonText.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <set>
#include <tuple>
#include <utility>

namespace raphe {

namespace {

constexpr int visitVersion = 2;
constexpr int firstVersion = 1; // had one complaint, in two fields

enum class Quality { Tenderness, Motion };
constexpr WordTable<Quality, 2> qualityWords{{{Quality::Tenderness, "tenderness"}, {Quality::Motion, "motion"}}};

constexpr WordTable<bool, 2> answerWords{{{false, "no"}, {true, "yes"}}};

constexpr std::array spotKinds{Kind::Muscle, Kind::Fascia, Kind::Ligament, Kind::Tendon};

std::string listed(const std::vector<std::string> &words)
{
    std::string out;
    for (const std::string &word : words)
        out += (out.empty() ? "" : ", ") + word;
    return out;
}

class Reader {
public:
    explicit Reader(const Atlas &atlas) : m_atlas(atlas) { }

    Visit readVisit(const JsonReader &root)
    {
        if (checkFormat(root) == firstVersion)
            root.expectObject({"format", "version", "patient", "date", "practitioner", "episode", "complaint", "complaint_at",
                "pain", "injured", "cautions", "conditions", "warnings", "findings", "judgements"});
        else
            root.expectObject({"format", "version", "patient", "date", "practitioner", "complaints", "complaint_at", "pain",
                "injured", "cautions", "conditions", "warnings", "consents", "since_last", "promised", "focus", "findings",
                "measures", "tests", "retest", "timeline", "judgements", "plan", "treatment", "retested", "closing", "letters",
                "sides_intended"});
        Visit visit;
        if (root.has("patient"))
            visit.patient = readPatient(root.field("patient"));
        visit.date = readDate(root, "date");
        visit.practitioner = root.stringOr("practitioner", {});
        visit.complaints = root.has("complaints") ? readComplaints(root.field("complaints")) : complaintOfFirstVersion(root);
        visit.cautions = root.stringsOr("cautions");
        if (root.has("complaint_at"))
            visit.complaintAt = readPlaces(root.field("complaint_at"));
        if (root.has("pain"))
            visit.pain = readPainDrawing(root.field("pain"));
        if (root.has("conditions"))
            for (const JsonReader &item : root.field("conditions").items())
                visit.conditions.push_back(readCondition(item));
        visit.injured = root.has("injured") && root.field("injured").asBool();
        if (root.has("warnings"))
            for (const JsonReader &item : root.field("warnings").items())
                visit.warnings.push_back(readWarning(item, visit.warnings));
        if (root.has("consents"))
            visit.consents = readConsents(root.field("consents"));
        if (root.has("since_last"))
            visit.sinceLast = readSinceLast(root.field("since_last"));
        visit.promised = root.stringsOr("promised");
        visit.focus = root.stringsOr("focus");
        visit.sidesIntended = root.has("sides_intended") && root.field("sides_intended").asBool();
        visit.findings = readFindings(root.field("findings"));
        if (root.has("measures"))
            visit.measures = readMeasures(root.field("measures"));
        if (root.has("tests"))
            visit.tests = readTestResults(root.field("tests"));
        if (root.has("retest"))
            visit.retest = readRetest(root.field("retest"));
        if (root.has("timeline"))
            visit.timeline = readTimeline(root.field("timeline"));
        if (root.has("judgements"))
            for (const JsonReader &item : root.field("judgements").items())
                visit.judgements.push_back(readJudgement(item, visit.judgements));
        if (root.has("plan"))
            visit.plan = readPlanWish(root.field("plan"), [this](const JsonReader &at) { return readPlace(at); });
        if (root.has("treatment"))
            visit.treatment = readTreatment(root.field("treatment"), [this](const JsonReader &at) { return readPlace(at); });
        if (root.has("retested"))
            visit.retested = readRetested(root.field("retested"));
        if (root.has("closing"))
            visit.closing = readClosing(root.field("closing"));
        if (root.has("letters"))
            visit.letters = readLetters(root.field("letters"));
        return visit;
    }

private:
    using Key = std::tuple<Place, std::optional<Spot>, std::optional<StructureId>>;

    // Before the fields: a later version has fields that this one does not know, and that is the better message.
    static int checkFormat(const JsonReader &root)
    {
        if (const std::string format = root.string("format"); format != visitFormat)
            root.field("format").fail(ErrorCode::WrongFormat, format);
        const JsonReader at = root.field("version");
        const double version = at.asNumber();
        if (version == visitVersion || version == firstVersion)
            return static_cast<int>(version);
        std::array<char, 32> written{};
        std::snprintf(written.data(), written.size(), "%.15g", version);
        const bool newer = version > visitVersion && version == std::floor(version);
        at.fail(newer ? ErrorCode::NewerVersion : ErrorCode::WrongFormat, written.data());
    }

    static std::vector<Complaint> complaintOfFirstVersion(const JsonReader &root)
    {
        Complaint only;
        if (root.has("episode"))
            only.episode = root.field("episode").asInt(1, PatientComplaint::highestId);
        only.text = root.stringOr("complaint", {});
        return only == Complaint{} ? std::vector<Complaint>{} : std::vector{only};
    }

    static Patient readPatient(const JsonReader &at)
    {
        at.expectObject({"name", "born"});
        return {at.stringOr("name", {}), readDate(at, "born")};
    }

    const Structure &readStructure(const JsonReader &at) const
    {
        const StructureId id{at.asString()};
        if (!isWellFormed(id))
            at.fail(ErrorCode::BadId, id.value);
        const Structure *structure = m_atlas.find(id);
        if (!structure)
            at.fail(ErrorCode::UnknownId, id.value);
        return *structure;
    }

    Side readSide(const JsonReader &owner, const Structure &structure) const
    {
        const std::vector<Side> allowed = m_atlas.sides(structure);
        const auto isAllowed = [&](Side side) { return std::find(allowed.begin(), allowed.end(), side) != allowed.end(); };
        if (!owner.has("side")) {
            if (!isAllowed(Side::Midline))
                owner.fail(ErrorCode::MissingField, "side");
            return Side::Midline;
        }
        const Side side = readWord(sideWords, owner.field("side"));
        if (!isAllowed(side))
            owner.field("side").fail(ErrorCode::WrongSide, structure.id.value);
        return side;
    }

    Place readPlace(const JsonReader &at) const
    {
        const Structure &structure = readStructure(at.field("structure"));
        return {structure.id, readSide(at, structure)};
    }

    std::vector<Place> readPlaces(const JsonReader &at) const
    {
        std::vector<Place> places;
        for (const JsonReader &item : at.items()) {
            item.expectObject({"structure", "side"});
            Place place = readPlace(item);
            if (std::find(places.begin(), places.end(), place) != places.end())
                item.fail(ErrorCode::Duplicate, place.structure.value);
            places.push_back(std::move(place));
        }
        return places;
    }

    // Which conditions there are is the caution rules' to know (core/safety).
    Condition readCondition(const JsonReader &at) const
    {
        at.expectObject({"condition", "at"});
        Condition condition{at.string("condition"), {}};
        if (!isWellFormed(StructureId{condition.id}))
            at.field("condition").fail(ErrorCode::BadId, condition.id);
        if (at.has("at"))
            condition.at = readPlaces(at.field("at"));
        return condition;
    }

    // Which signs there are is known to core/safety.
    WarningAnswer readWarning(const JsonReader &at, const std::vector<WarningAnswer> &earlier) const
    {
        at.expectObject({"sign", "answer", "asked", "at", "decided", "why", "told", "moved"});
        WarningAnswer out;
        out.sign = at.string("sign");
        if (!isWellFormed(StructureId{out.sign}))
            at.field("sign").fail(ErrorCode::BadId, out.sign);
        for (const WarningAnswer &other : earlier)
            if (other.sign == out.sign)
                at.fail(ErrorCode::Duplicate, out.sign);
        out.isThere = readWord(answerWords, at.field("answer"));
        static_cast<void>(at.field("asked"));
        out.asked = readDate(at, "asked");
        if (at.has("at"))
            out.at = readPlaces(at.field("at"));
        if (at.has("decided"))
            out.decided = readWord(decisionWords, at.field("decided"));
        out.why = at.stringOr("why", {});
        out.told = at.stringOr("told", {});
        out.isMoved = at.has("moved") && at.field("moved").asBool();
        if (!out.isThere && (!out.at.empty() || out.decided || !out.why.empty() || !out.told.empty() || out.isMoved))
            at.fail(ErrorCode::Contradiction, "answer no, and what was decided");
        if (out.decided && out.isMoved)
            at.fail(ErrorCode::Contradiction, "decided, moved");
        if (out.decided && out.why.empty())
            at.fail(ErrorCode::MissingField, "why");
        return out;
    }

    Judgement readJudgement(const JsonReader &at, const std::vector<Judgement> &earlier) const
    {
        at.expectObject({"list", "structure", "side", "pinned", "dismissed"});
        Judgement out{readWord(adviceListWords, at.field("list")), readPlace(at), at.stringOr("dismissed", {})};
        const bool pinned = at.has("pinned") && at.field("pinned").asBool();
        if (pinned && !out.isPinned())
            at.fail(ErrorCode::Contradiction, "pinned, dismissed");
        if (!pinned && out.isPinned())
            at.fail(ErrorCode::MissingField, "pinned or dismissed");
        for (const Judgement &other : earlier)
            if (other.list == out.list && other.place == out.place)
                at.fail(ErrorCode::Duplicate, out.place.structure.value);
        return out;
    }

    static Spot readSpot(const JsonReader &at, const Structure &structure)
    {
        const Spot spot = readWord(spotWords, at);
        if (!hasSpots(structure.kind)) {
            std::vector<std::string> kinds;
            kinds.reserve(spotKinds.size());
            for (const Kind kind : spotKinds)
                kinds.emplace_back(wordOf(kindWords, kind));
            at.fail(ErrorCode::OutOfRange, std::string(wordOf(spotWords, spot)) + ", allowed on: " + listed(kinds));
        }
        return spot;
    }

    // A whole muscle has its ends in its parts.
    std::vector<const Structure *> withParts(const Structure &structure) const
    {
        std::vector<const Structure *> out{&structure};
        for (std::size_t i = 0; i < out.size(); ++i)
            for (const Structure &part : m_atlas.structures())
                if (part.partOf == out[i]->id && part.kind == structure.kind
                    && std::find(out.begin(), out.end(), &part) == out.end())
                    out.push_back(&part);
        return out;
    }

    // Where the structure or a part of it is fixed; with the spot 'origin' or 'insertion' only the ends of that role.
    std::set<std::string> endsOf(const Structure &structure, std::optional<Spot> spot) const
    {
        std::set<std::string> ends;
        for (const Structure *part : withParts(structure))
            for (const Attachment &attachment : part->attachments) {
                if (spot != Spot::Insertion)
                    for (const StructureId &end : attachment.origins)
                        ends.insert(end.value);
                if (spot != Spot::Origin)
                    for (const StructureId &end : attachment.insertions)
                        ends.insert(end.value);
            }
        return ends;
    }

    StructureId readEnd(const JsonReader &at, const Structure &structure, std::optional<Spot> spot) const
    {
        StructureId end = readStructure(at).id;
        const std::set<std::string> ends = endsOf(structure, spot);
        if (!ends.contains(end.value))
            at.fail(ErrorCode::OutOfRange, end.value + ", allowed: " + listed({ends.begin(), ends.end()}));
        return end;
    }

    static Clear readClear(const JsonReader &at)
    {
        if (at.isBool()) {
            if (!at.asBool())
                at.fail(ErrorCode::WrongType, "true or array");
            return {true, true};
        }
        Clear clear;
        for (const JsonReader &item : at.items()) {
            const Quality quality = readWord(qualityWords, item);
            bool &flag = quality == Quality::Tenderness ? clear.tenderness : clear.motion;
            if (flag)
                item.fail(ErrorCode::Duplicate, std::string(wordOf(qualityWords, quality)));
            flag = true;
        }
        if (!clear.any())
            at.fail(ErrorCode::MissingField, "tenderness or motion");
        return clear;
    }

    // Each place once, with its spot and end.
    std::vector<Finding> readFindings(const JsonReader &at) const
    {
        std::vector<Finding> out;
        std::set<Key> seen;
        for (const JsonReader &item : at.items()) {
            Finding finding = readFinding(item);
            if (!seen.emplace(finding.place, finding.spot, finding.at).second)
                item.fail(ErrorCode::Duplicate, finding.place.structure.value);
            out.push_back(std::move(finding));
        }
        return out;
    }

    Retested readRetested(const JsonReader &at) const
    {
        at.expectObject({"findings", "measures", "tests", "pain"});
        Retested out;
        if (at.has("findings"))
            out.findings = readFindings(at.field("findings"));
        if (at.has("measures"))
            out.measures = readMeasures(at.field("measures"));
        if (at.has("tests"))
            out.tests = readTestResults(at.field("tests"));
        if (at.has("pain"))
            out.pain = PainScore{at.field("pain").asInt(0, PainScore::highest)};
        return out;
    }

    Finding readFinding(const JsonReader &at) const
    {
        at.expectObject({"structure", "side", "spot", "at", "tenderness", "restriction", "sore", "stiff", "play", "end_feel",
            "familiar", "certain", "after_comparing", "texture", "refers_to", "clear", "unable", "note"});
        Finding finding;
        finding.place = readPlace(at);
        const Structure &structure = m_atlas.at(finding.place.structure);
        if (at.has("spot"))
            finding.spot = readSpot(at.field("spot"), structure);
        if (at.has("at"))
            finding.at = readEnd(at.field("at"), structure, finding.spot);
        if (at.has("tenderness"))
            finding.tenderness = Tenderness{at.field("tenderness").asInt(0, Tenderness::highest)};
        if (at.has("restriction"))
            finding.restriction = Restriction{at.field("restriction").asInt(0, Restriction::highest)};
        for (const char *ofJoints : {"play", "end_feel"})
            if (at.has(ofJoints) && structure.kind != Kind::Joint)
                at.field(ofJoints).fail(ErrorCode::OutOfRange, structure.id.value + ", allowed on: joint");
        if (at.has("play"))
            finding.play = JointPlay{at.field("play").asInt(0, JointPlay::highest)};
        finding.endFeel = readWordOr(at, "end_feel", endFeelWords);
        for (const auto &[name, flag] : {std::pair{"sore", &finding.sore}, {"stiff", &finding.stiff},
                 {"familiar", &finding.familiar}, {"certain", &finding.certain}, {"after_comparing", &finding.afterComparing}})
            if (at.has(name))
                *flag = at.field(name).asBool();
        finding.texture = readTexture(at);
        if (at.has("refers_to"))
            finding.refersTo = readPlaces(at.field("refers_to"));
        if (at.has("clear"))
            finding.clear = readClear(at.field("clear"));
        if (at.has("unable"))
            finding.unable = at.string("unable");
        finding.note = at.stringOr("note", {});
        checkSense(at, finding);
        return finding;
    }

    static std::vector<std::string> readTexture(const JsonReader &at)
    {
        std::vector<std::string> words = at.stringsOr("texture");
        for (std::size_t i = 0; i < words.size(); ++i) {
            if (words[i].empty())
                at.field("texture").fail(ErrorCode::MissingField, "a word");
            if (std::count(words.begin(), words.end(), words[i]) > 1)
                at.field("texture").fail(ErrorCode::Duplicate, words[i]);
        }
        return words;
    }

    static void checkSense(const JsonReader &at, const Finding &f)
    {
        if (f.isUnable() && (f.saysAnything() || f.certain || f.afterComparing))
            at.fail(ErrorCode::Contradiction, "unable");
        if (!f.isUnable() && !f.saysAnything())
            at.fail(ErrorCode::MissingField,
                "tenderness, restriction, sore, stiff, play, end_feel, familiar, texture, refers_to, clear, unable or note");
        if (f.certain && !f.saysOfMotion())
            at.fail(ErrorCode::MissingField, "restriction, stiff, play, end_feel or clear motion, to be certain of");
        if (f.afterComparing && !f.saysOfMotion())
            at.fail(ErrorCode::MissingField, "restriction, stiff, play, end_feel or clear motion, felt after comparing");
        if (f.sore && f.tenderness)
            at.fail(ErrorCode::Contradiction, "sore, tenderness");
        if (f.stiff && f.restriction)
            at.fail(ErrorCode::Contradiction, "stiff, restriction");
        if (f.clear.tenderness && f.tendernessGrade() > 0)
            at.fail(ErrorCode::Contradiction, f.sore ? "clear, sore" : "clear, tenderness");
        if (f.clear.motion && f.restrictionGrade() > 0)
            at.fail(ErrorCode::Contradiction, f.stiff ? "clear, stiff" : "clear, restriction");
        if (f.clear.motion && f.play && f.play->grade != JointPlay::normal)
            at.fail(ErrorCode::Contradiction, "clear, play");
    }

    const Atlas &m_atlas;
};

using Json = nlohmann::ordered_json; // fields in the order in which a person reads them

Json clearJson(const Clear &clear)
{
    if (clear.tenderness && clear.motion)
        return true;
    return Json::array({wordOf(qualityWords, clear.tenderness ? Quality::Tenderness : Quality::Motion)});
}

Json placesJson(const std::vector<Place> &places)
{
    Json json = Json::array();
    for (const Place &place : places)
        json.push_back(placeJson(place));
    return json;
}

Json conditionJson(const Condition &condition)
{
    Json json;
    json["condition"] = condition.id;
    if (!condition.at.empty())
        json["at"] = placesJson(condition.at);
    return json;
}

Json warningJson(const WarningAnswer &answer)
{
    Json json;
    json["sign"] = answer.sign;
    json["answer"] = wordOf(answerWords, answer.isThere);
    json["asked"] = answer.asked;
    if (!answer.at.empty())
        json["at"] = placesJson(answer.at);
    if (answer.decided)
        json["decided"] = wordOf(decisionWords, *answer.decided);
    putText(json, "why", answer.why);
    putText(json, "told", answer.told);
    if (answer.isMoved)
        json["moved"] = true;
    return json;
}

Json judgementJson(const Judgement &judgement)
{
    Json json;
    json["list"] = wordOf(adviceListWords, judgement.list);
    json.update(placeJson(judgement.place));
    if (judgement.isPinned())
        json["pinned"] = true;
    else
        json["dismissed"] = judgement.dismissed;
    return json;
}

Json findingJson(const Finding &finding)
{
    Json json = placeJson(finding.place);
    if (finding.spot)
        json["spot"] = wordOf(spotWords, *finding.spot);
    if (finding.at)
        json["at"] = finding.at->value;
    if (finding.tenderness)
        json["tenderness"] = finding.tenderness->grade;
    if (finding.restriction)
        json["restriction"] = finding.restriction->grade;
    if (finding.play)
        json["play"] = finding.play->grade;
    putWord(json, "end_feel", endFeelWords, finding.endFeel);
    for (const auto &[name, flag] : {std::pair{"sore", finding.sore}, {"stiff", finding.stiff}, {"familiar", finding.familiar},
             {"certain", finding.certain}, {"after_comparing", finding.afterComparing}})
        if (flag)
            json[name] = true;
    if (!finding.texture.empty())
        json["texture"] = finding.texture;
    if (!finding.refersTo.empty())
        json["refers_to"] = placesJson(finding.refersTo);
    if (finding.clear.any())
        json["clear"] = clearJson(finding.clear);
    if (finding.unable)
        json["unable"] = *finding.unable;
    putText(json, "note", finding.note);
    return json;
}

Json findingsJson(const std::vector<Finding> &findings)
{
    Json json = Json::array();
    for (const Finding &finding : findings)
        json.push_back(findingJson(finding));
    return json;
}

Json retestedJson(const Retested &retested)
{
    Json json = Json::object();
    if (!retested.findings.empty())
        json["findings"] = findingsJson(retested.findings);
    if (!retested.measures.empty())
        json["measures"] = measuresJson(retested.measures);
    if (!retested.tests.empty())
        json["tests"] = testResultsJson(retested.tests);
    if (retested.pain)
        json["pain"] = retested.pain->value;
    return json;
}

} // namespace

bool hasSpots(Kind kind)
{
    return std::find(spotKinds.begin(), spotKinds.end(), kind) != spotKinds.end();
}

Result<Visit> readVisit(std::string_view text, const std::string &file, const Atlas &atlas)
{
    const auto json = parseJson(text, file);
    if (!json)
        return json.error();
    return guarded([&] { return Reader(atlas).readVisit(JsonReader(json.value(), file)); });
}

std::string writeVisit(const Visit &visit)
{
    Json json;
    json["format"] = visitFormat;
    json["version"] = visitVersion;
    if (visit.patient) {
        json["patient"] = Json::object();
        putText(json["patient"], "name", visit.patient->name);
        putText(json["patient"], "born", visit.patient->born);
    }
    putText(json, "date", visit.date);
    putText(json, "practitioner", visit.practitioner);
    if (!visit.complaints.empty())
        json["complaints"] = complaintsJson(visit.complaints);
    if (!visit.complaintAt.empty())
        json["complaint_at"] = placesJson(visit.complaintAt);
    if (!visit.pain.empty())
        json["pain"] = painDrawingJson(visit.pain);
    if (!visit.cautions.empty())
        json["cautions"] = visit.cautions;
    if (visit.injured)
        json["injured"] = true;
    for (const Condition &condition : visit.conditions)
        json["conditions"].push_back(conditionJson(condition));
    for (const WarningAnswer &answer : visit.warnings)
        json["warnings"].push_back(warningJson(answer));
    if (!visit.consents.empty())
        json["consents"] = consentsJson(visit.consents);
    if (visit.sinceLast)
        json["since_last"] = sinceLastJson(*visit.sinceLast);
    if (!visit.promised.empty())
        json["promised"] = visit.promised;
    if (!visit.focus.empty())
        json["focus"] = visit.focus;
    json["findings"] = findingsJson(visit.findings);
    if (!visit.measures.empty())
        json["measures"] = measuresJson(visit.measures);
    if (!visit.tests.empty())
        json["tests"] = testResultsJson(visit.tests);
    if (visit.retest)
        json["retest"] = retestJson(*visit.retest);
    if (!visit.timeline.empty())
        json["timeline"] = timelineJson(visit.timeline);
    for (const Judgement &judgement : visit.judgements)
        json["judgements"].push_back(judgementJson(judgement));
    if (visit.plan != PlanWish{})
        json["plan"] = planWishJson(visit.plan);
    if (visit.treatment != TreatmentLog{})
        json["treatment"] = treatmentJson(visit.treatment);
    if (visit.retested != Retested{})
        json["retested"] = retestedJson(visit.retested);
    if (visit.closing != Closing{})
        json["closing"] = closingJson(visit.closing);
    if (!visit.letters.empty())
        json["letters"] = lettersJson(visit.letters);
    if (visit.sidesIntended)
        json["sides_intended"] = true;
    // Ill-formed UTF-8 would make dump() throw; a replacement character loses less than the whole visit.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace raphe
