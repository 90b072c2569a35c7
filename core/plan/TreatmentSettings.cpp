#include "core/plan/TreatmentSettings.h"

#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

using namespace content;

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t techniquesAtMost = 100;

ReservedTimes readReserved(const JsonReader &at)
{
    at.expectObject({"greeting", "undressing", "retest", "rising"});
    const auto seconds = [&](std::string_view name) { return at.field(name).asInt(0, Technique::longest); };
    return {seconds("greeting"), seconds("undressing"), seconds("retest"), seconds("rising")};
}

OwnTechnique readOwn(const JsonReader &at, const std::vector<OwnTechnique> &earlier)
{
    at.expectObject({"id", "like", "name", "seconds", "how", "caution", "preferred"});
    OwnTechnique out;
    out.id = readNewId(at, earlier);
    out.like = at.string("like");
    out.name = readText(at, "name");
    out.seconds = at.field("seconds").asInt(1, Technique::longest);
    out.how = readText(at, "how");
    out.caution = readText(at, "caution");
    out.isPreferred = at.has("preferred") && at.field("preferred").asBool();
    return out;
}

} // namespace

TreatmentSettings readTreatmentSettings(const JsonReader &at)
{
    at.expectObject({"reserved", "techniques"});
    TreatmentSettings out;
    if (at.has("reserved"))
        out.reserved = readReserved(at.field("reserved"));
    if (at.has("techniques"))
        for (const JsonReader &item : at.field("techniques").items(0, techniquesAtMost))
            out.techniques.push_back(readOwn(item, out.techniques));
    return out;
}

Json treatmentSettingsJson(const TreatmentSettings &settings)
{
    Json json = Json::object();
    if (const auto &reserved = settings.reserved)
        json["reserved"] = {{"greeting", reserved->greeting}, {"undressing", reserved->undressing}, {"retest", reserved->retest},
            {"rising", reserved->rising}};
    for (const OwnTechnique &own : settings.techniques) {
        Json technique{{"id", own.id}, {"like", own.like}, {"name", own.name}, {"seconds", own.seconds}, {"how", own.how},
            {"caution", own.caution}};
        if (own.isPreferred)
            technique["preferred"] = true;
        json["techniques"].push_back(std::move(technique));
    }
    return json;
}

Result<Techniques> withOwn(Techniques known, const TreatmentSettings &settings)
{
    if (settings.reserved)
        known.times.reserved = *settings.reserved;
    for (const OwnTechnique &own : settings.techniques) {
        const auto like =
            std::find_if(known.all.begin(), known.all.end(), [&](const Technique &t) { return t.id == own.like && !t.isOwn; });
        if (like == known.all.end())
            return Error{ErrorCode::UnknownId, own.name, own.like};
        if (known.find(own.id))
            return Error{ErrorCode::Duplicate, own.name, own.id};
        Technique technique = *like;
        technique.id = own.id;
        technique.name = own.name;
        technique.plain.clear();
        technique.dose.seconds = own.seconds;
        technique.dose.how = own.how;
        technique.dose.source = "your own";
        technique.caution = own.caution;
        technique.isOwn = true;
        known.all.insert(own.isPreferred ? like : known.all.end(), std::move(technique)); // of two that suit alike, the first
    }
    return known;
}

} // namespace raphe
