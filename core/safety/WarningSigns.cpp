#include "core/safety/WarningSigns.h"

#include "core/safety/ContentReading.h"
#include "core/safety/SafetyRules.h"

#include <nlohmann/json.hpp>

namespace raphe {

using namespace content;

namespace {

constexpr const char *signsFile = "safety/warning-signs.json";
constexpr int oldest = 120; // years
constexpr int longest = 3650; // days
constexpr int mostPoints = 9; // of the score

class Reader {
public:
    Reader(const std::vector<ConditionKind> &conditions, const Atlas &atlas) : m_conditions(conditions), m_atlas(atlas) { }

    WarningSigns read(const JsonReader &root)
    {
        root.expectObject({"format", "version", "read", "areas", "signs"});
        expectFormat(root, "raphe-warning-signs");
        static_cast<void>(readText(root, "read"));
        for (const JsonReader &at : root.field("areas").items())
            m_out.areas.push_back(readArea(at));
        checkAreas(root.field("areas"));
        const std::vector<JsonReader> signs = root.field("signs").items();
        for (const JsonReader &at : signs)
            m_out.signs.push_back(readSign(at));
        for (std::size_t i = 0; i < signs.size(); ++i)
            for (const std::string &other : m_out.signs[i].askedWith)
                if (!m_out.find(other))
                    signs[i].field("asked_with").fail(ErrorCode::UnknownId, other);
        return std::move(m_out);
    }

private:
    WarningArea readArea(const JsonReader &at) const
    {
        at.expectObject({"id", "name", "regions"});
        return {readNewId(at, m_out.areas), readText(at, "name"),
            readChoice(at, "regions", [&](const JsonReader &item) { return readRegion(item, m_atlas); })};
    }

    // Wherever it hurts, something is asked.
    void checkAreas(const JsonReader &at) const
    {
        for (const Structure &s : m_atlas.structures())
            if (s.kind == Kind::SurfaceRegion
                && std::none_of(
                    m_out.areas.begin(), m_out.areas.end(), [&](const WarningArea &area) { return isIn(area.regions, s.id); }))
                at.fail(ErrorCode::MissingField, "an area with " + s.id.value);
    }

    WarningSign readSign(const JsonReader &at) const
    {
        at.expectObject({"id", "level", "areas", "when", "by", "alone", "asked_with", "name", "ask", "means", "act", "suspects",
            "stale_days", "points", "source", "read"});
        WarningSign sign;
        sign.id = readNewId(at, m_out.signs);
        sign.level = readWord(warningLevelWords, at.field("level"));
        sign.areas = readChoice(at, "areas", [&](const JsonReader &item) { return readKnownId(item, m_out.areas); });
        if (at.has("when"))
            readWhen(at.field("when"), sign);
        if (at.has("by")) {
            if (at.string("by") != "practitioner")
                at.field("by").fail(ErrorCode::UnknownWord, at.string("by"));
            sign.byPractitioner = true;
        }
        sign.alone = at.has("alone") && at.field("alone").asBool();
        sign.askedWith = readChoice(at, "asked_with", [](const JsonReader &item) { return item.asString(); });
        sign.name = readText(at, "name");
        sign.ask = readText(at, "ask");
        sign.means = readText(at, "means");
        sign.act = readText(at, "act");
        sign.suspects = readChoice(at, "suspects", [&](const JsonReader &item) { return readKnownId(item, m_conditions); });
        sign.staleDays = at.field("stale_days").asInt(0, longest);
        if (at.has("points"))
            sign.points = at.field("points").asInt(-mostPoints, mostPoints);
        sign.source = readText(at, "source");
        sign.read = readWord(readingWords, at.field("read"));
        return sign;
    }

    static void readWhen(const JsonReader &at, WarningSign &sign)
    {
        at.expectObject({"age_from", "age_below", "pregnant", "after_injury"});
        if (at.has("age_from"))
            sign.ageFrom = at.field("age_from").asInt(0, oldest);
        if (at.has("age_below"))
            sign.ageBelow = at.field("age_below").asInt(1, oldest);
        sign.ifPregnant = at.has("pregnant") && at.field("pregnant").asBool();
        sign.ifInjured = at.has("after_injury") && at.field("after_injury").asBool();
        if (!sign.ageFrom && !sign.ageBelow && !sign.ifPregnant && !sign.ifInjured)
            at.fail(ErrorCode::MissingField, "age_from, age_below, pregnant or after_injury");
    }

    const std::vector<ConditionKind> &m_conditions;
    const Atlas &m_atlas;
    WarningSigns m_out;
};

} // namespace

const WarningSign *WarningSigns::find(std::string_view id) const
{
    return findById(signs, id);
}

Result<WarningSigns> readWarningSigns(std::string_view text, const std::vector<ConditionKind> &conditions, const Atlas &atlas)
{
    return guarded(
        [&] { return Reader(conditions, atlas).read(JsonReader(valueOrThrow(parseJson(text, signsFile)), signsFile)); });
}

} // namespace raphe
