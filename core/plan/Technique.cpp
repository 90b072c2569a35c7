#include "core/plan/Technique.h"

#include "core/anatomy/NameSearch.h"
#include "core/reasoning/Position.h"
#include "core/record/Visit.h"
#include "core/safety/ContentReading.h"

#include <QFile>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

using namespace content;

namespace {

constexpr const char *techniquesFile = "techniques.json";
constexpr int longest = Technique::longest;
constexpr int highestGrade = 5; // of mobilisation
constexpr int highestWeight = 9;
constexpr double strongestSuction = TreatmentStep::strongestSuction; // the most that a study of cups used; from memory
constexpr int hoursOfWeeks = 24 * 28;
constexpr int timesAtMost = 14;

int intOr(const JsonReader &owner, std::string_view name, int low, int high, int fallback)
{
    return owner.has(name) ? owner.field(name).asInt(low, high) : fallback;
}

Suit readSuit(const JsonReader &at)
{
    at.expectObject({"tissue", "least_tenderness", "most_tenderness", "least_restriction", "weight"});
    Suit out;
    out.tissue = readWord(tissueWords, at.field("tissue"));
    out.leastTenderness = intOr(at, "least_tenderness", 0, Tenderness::highest, 0);
    out.mostTenderness = intOr(at, "most_tenderness", out.leastTenderness, Tenderness::highest, Tenderness::highest);
    out.leastRestriction = intOr(at, "least_restriction", 0, Restriction::highest, 0);
    out.weight = at.field("weight").asInt(1, highestWeight);
    return out;
}

Dose readDose(const JsonReader &at)
{
    at.expectObject({"seconds", "how", "kpa", "grades", "rest_hours", "per_week", "source", "read"});
    Dose out;
    out.seconds = at.field("seconds").asInt(1, longest);
    out.how = readText(at, "how");
    if (at.has("kpa")) {
        const auto range = at.field("kpa").items(2, 2);
        const double low = range[0].asNumber(0, strongestSuction);
        out.kPa = {low, range[1].asNumber(low, strongestSuction)};
    }
    out.restHours = at.field("rest_hours").asInt(0, hoursOfWeeks);
    out.perWeek = at.field("per_week").asInt(1, timesAtMost);
    out.source = readText(at, "source");
    out.read = readWord(readingWords, at.field("read"));
    return out;
}

// Says the technique, as a typed line is compared: capitals, accents and hyphens do not count.
bool isSaid(const Technique &technique, const std::string &phrase)
{
    const auto isPhrase = [folded = foldedName(phrase)](const std::string &other) { return foldedName(other) == folded; };
    return isPhrase(technique.name) || std::any_of(technique.says.begin(), technique.says.end(), isPhrase);
}

void readSays(const JsonReader &at, Technique &into, const std::vector<Technique> &earlier)
{
    const auto expectNew = [&](const JsonReader &phrase) {
        if (foldedName(phrase.asString()).empty())
            phrase.fail(ErrorCode::MissingField, "a phrase");
        for (const Technique &other : earlier)
            if (isSaid(other, phrase.asString()))
                phrase.fail(ErrorCode::Duplicate, phrase.asString());
    };
    expectNew(at.field("name"));
    into.says = readChoice(at, "says", [&](const JsonReader &phrase) {
        expectNew(phrase);
        if (isSaid(into, phrase.asString()))
            phrase.fail(ErrorCode::Duplicate, phrase.asString());
        return phrase.asString();
    });
}

Technique readTechnique(const JsonReader &at, const std::vector<Technique> &earlier, const SafetyRules &rules)
{
    at.expectObject({"id", "action", "name", "plain", "says", "layers", "skin", "deep", "through_cloth", "lengthens", "dose",
        "suits", "caution"});
    Technique out;
    out.id = readNewId(at, earlier);
    out.action = readKnownId(at.field("action"), rules.actions());
    if (rules.findAction(out.action)->kind != ActionKind::Technique)
        at.field("action").fail(ErrorCode::UnknownId, out.action);
    out.name = readText(at, "name");
    out.plain = readText(at, "plain");
    readSays(at, out, earlier);
    out.layers = readChoice(at, "layers", [](const JsonReader &layer) { return readWord(layerWords, layer); });
    out.skin = readWord(skinWords, at.field("skin"));
    out.deep = at.field("deep").asBool();
    out.throughCloth = at.field("through_cloth").asBool();
    out.lengthens = at.field("lengthens").asBool();
    const JsonReader dose = at.field("dose");
    out.dose = readDose(dose);
    if (dose.has("grades"))
        for (const JsonReader &grade : dose.field("grades").items(1, highestGrade))
            out.grades.push_back(grade.asInt(1, highestGrade));
    for (const JsonReader &suit : at.field("suits").items(1, tissueWords.size() * 2))
        out.suits.push_back(readSuit(suit));
    out.caution = readText(at, "caution");
    return out;
}

void readTurns(const JsonReader &at, plan::ProblemTimes &into)
{
    at.expectObject({"prone", "supine", "on-left-side", "on-right-side"});
    for (const auto &[from, word] : positionWords) {
        if (from == Position::Seated)
            continue; // stands with the others
        const JsonReader row = at.field(word);
        row.expectObject({"supine", "on-left-side", "on-right-side", "seated"});
        for (const auto &[to, toWord] : positionWords) {
            if (to <= from)
                continue;
            const int seconds = row.field(toWord).asInt(0, longest);
            into.turn[static_cast<std::size_t>(from)][static_cast<std::size_t>(to)] = seconds;
            into.turn[static_cast<std::size_t>(to)][static_cast<std::size_t>(from)] = seconds;
        }
    }
}

PlanTimes readTimes(const JsonReader &at)
{
    at.expectObject({"turn", "wipe", "uncover", "rest", "greeting", "undressing", "retest", "rising", "source"});
    const auto seconds = [&](std::string_view name) { return at.field(name).asInt(0, longest); };
    PlanTimes out;
    readTurns(at.field("turn"), out.between);
    out.between.wipe = seconds("wipe");
    out.between.uncover = seconds("uncover");
    out.between.rest = seconds("rest");
    out.reserved.greeting = seconds("greeting");
    out.reserved.undressing = seconds("undressing");
    out.reserved.retest = seconds("retest");
    out.reserved.rising = seconds("rising");
    static_cast<void>(readText(at, "source"));
    return out;
}

} // namespace

const Technique *Techniques::find(std::string_view id) const
{
    return findById(all, id);
}

Result<Techniques> readTechniques(std::string_view text, const std::string &file, const SafetyRules &rules)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, file));
        const JsonReader root(json, file);
        root.expectObject({"format", "version", "read", "times", "techniques"});
        expectFormat(root, "raphe-techniques");
        Techniques out;
        out.times = readTimes(root.field("times"));
        for (const JsonReader &at : root.field("techniques").items())
            out.all.push_back(readTechnique(at, out.all, rules));
        return out;
    });
}

Result<Techniques> readEmbeddedTechniques(const SafetyRules &rules)
{
    QFile file(QStringLiteral(":/techniques.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, techniquesFile, file.errorString().toStdString()};
    return readTechniques(file.readAll().toStdString(), techniquesFile, rules);
}

} // namespace raphe
