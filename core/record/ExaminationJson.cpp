#include "core/record/ExaminationJson.h"

#include "core/base/JsonText.h"
#include "core/record/JsonFields.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

using Json = nlohmann::ordered_json;

Side readSideOr(const JsonReader &at)
{
    return readWordOr(at, "side", sideWords).value_or(Side::Midline);
}

bool readFlag(const JsonReader &at, std::string_view name)
{
    return at.has(name) && at.field(name).asBool();
}

std::optional<double> readNumber(const JsonReader &at, std::string_view name)
{
    return at.has(name) ? std::optional(at.field(name).asNumber(-Measure::furthest, Measure::furthest)) : std::nullopt;
}

Measure readMeasure(const JsonReader &at)
{
    at.expectObject({"movement", "side", "value", "mode", "device", "pain_from", "hurts", "familiar", "note"});
    Measure out;
    out.movement = readForeignId(at.field("movement"));
    out.side = readSideOr(at);
    out.value = readNumber(at, "value");
    out.mode = readWordOr(at, "mode", moveModeWords);
    out.device = readWordOr(at, "device", deviceWords);
    out.painFrom = readNumber(at, "pain_from");
    out.hurts = readFlag(at, "hurts");
    out.familiar = readFlag(at, "familiar");
    out.note = at.stringOr("note", {});
    return out;
}

void putSide(Json &json, Side side)
{
    json["side"] = wordOf(sideWords, side);
}

TestResult readTestResult(const JsonReader &at)
{
    at.expectObject({"test", "side", "pain", "changes", "grade", "present", "values", "unable", "note"});
    TestResult out;
    out.test = readForeignId(at.field("test"));
    out.side = readSideOr(at);
    out.pain = readWordOr(at, "pain", testPainWords);
    out.changesFromAfar = readFlag(at, "changes");
    if (at.has("grade"))
        out.grade = at.field("grade").asInt(0, TestResult::highestGrade);
    if (at.has("present"))
        out.present = at.field("present").asBool();
    if (at.has("values"))
        for (const JsonReader &value : at.field("values").items(1, 2))
            out.values.push_back(value.asNumber(0, TestResult::furthest));
    if (at.has("unable"))
        out.unable = at.string("unable");
    out.note = at.stringOr("note", {});
    const std::array said{
        out.pain.has_value(), out.grade.has_value(), out.present.has_value(), !out.values.empty(), out.unable.has_value()};
    const auto count = std::count(said.begin(), said.end(), true);
    if (count == 0)
        at.fail(ErrorCode::MissingField, "pain, grade, present, values or unable");
    if (count > 1)
        at.fail(ErrorCode::Contradiction, "only one of pain, grade, present, values and unable");
    if (out.changesFromAfar && !out.pain)
        at.fail(ErrorCode::MissingField, "pain, that changes");
    return out;
}

const std::string &idOf(const Measure &measure)
{
    return measure.movement;
}
const std::string &idOf(const TestResult &result)
{
    return result.test;
}

// A list in which no two are the same in the sense of `isSame`.
template <class T, class F> std::vector<T> readOnce(const JsonReader &at, T (*readOne)(const JsonReader &), F isSame)
{
    std::vector<T> out;
    for (const JsonReader &item : at.items()) {
        T one = readOne(item);
        if (std::any_of(out.begin(), out.end(), [&](const T &other) { return isSame(other, one); }))
            item.fail(ErrorCode::Duplicate, idOf(one));
        out.push_back(std::move(one));
    }
    return out;
}

Json measureJson(const Measure &measure)
{
    Json json;
    json["movement"] = measure.movement;
    putSide(json, measure.side);
    if (measure.value)
        json["value"] = *measure.value;
    putWord(json, "mode", moveModeWords, measure.mode);
    putWord(json, "device", deviceWords, measure.device);
    if (measure.painFrom)
        json["pain_from"] = *measure.painFrom;
    if (measure.hurts)
        json["hurts"] = true;
    if (measure.familiar)
        json["familiar"] = true;
    putText(json, "note", measure.note);
    return json;
}

} // namespace

std::vector<Measure> readMeasures(const JsonReader &at)
{
    return readOnce(at, readMeasure,
        [](const Measure &a, const Measure &b) { return a.movement == b.movement && a.side == b.side && a.mode == b.mode; });
}

Json measuresJson(const std::vector<Measure> &measures)
{
    Json json = Json::array();
    for (const Measure &measure : measures)
        json.push_back(measureJson(measure));
    return json;
}

std::vector<TestResult> readTestResults(const JsonReader &at)
{
    return readOnce(
        at, readTestResult, [](const TestResult &a, const TestResult &b) { return a.test == b.test && a.side == b.side; });
}

Json testResultsJson(const std::vector<TestResult> &results)
{
    Json json = Json::array();
    for (const TestResult &result : results) {
        Json one;
        one["test"] = result.test;
        putSide(one, result.side);
        putWord(one, "pain", testPainWords, result.pain);
        if (result.changesFromAfar)
            one["changes"] = true;
        if (result.grade)
            one["grade"] = *result.grade;
        if (result.present)
            one["present"] = *result.present;
        if (!result.values.empty())
            one["values"] = result.values;
        if (result.unable)
            one["unable"] = *result.unable;
        putText(one, "note", result.note);
        json.push_back(std::move(one));
    }
    return json;
}

RetestMark readRetest(const JsonReader &at)
{
    at.expectObject({"kind", "id", "side"});
    RetestMark out{readWord(momentKindWords, at.field("kind")), readForeignId(at.field("id")), readSideOr(at)};
    if (out.kind == MomentKind::Finding)
        at.field("kind").fail(ErrorCode::OutOfRange, "finding, allowed: movement, test");
    return out;
}

Json retestJson(const RetestMark &mark)
{
    Json json;
    json["kind"] = wordOf(momentKindWords, mark.kind);
    json["id"] = mark.id;
    putSide(json, mark.side);
    return json;
}

std::vector<Moment> readTimeline(const JsonReader &at)
{
    std::vector<Moment> out;
    for (const JsonReader &item : at.items()) {
        item.expectObject({"time", "kind", "id", "side"});
        Moment moment{readTimeOfDay(item.field("time")), readWord(momentKindWords, item.field("kind")),
            readForeignId(item.field("id")), readSideOr(item)};
        out.push_back(std::move(moment));
    }
    return out;
}

Json timelineJson(const std::vector<Moment> &timeline)
{
    Json json = Json::array();
    for (const Moment &moment : timeline) {
        Json one;
        one["time"] = moment.time;
        one["kind"] = wordOf(momentKindWords, moment.kind);
        one["id"] = moment.id;
        putSide(one, moment.side);
        json.push_back(std::move(one));
    }
    return json;
}

} // namespace raphe
