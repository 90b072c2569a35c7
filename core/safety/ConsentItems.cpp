#include "core/safety/ConsentItems.h"

#include "core/safety/ContentReading.h"
#include "core/safety/SafetyRules.h"

#include <nlohmann/json.hpp>

namespace raphe {

using namespace content;

namespace {

constexpr const char *consentFile = "safety/consent.json";
constexpr int oldest = 120; // years
constexpr int longest = 3650; // days

class Reader {
public:
    Reader(const std::vector<HandsAction> &actions, const Atlas &atlas) : m_actions(actions), m_atlas(atlas) { }

    ConsentItems read(const JsonReader &root)
    {
        root.expectObject({"format", "version", "read", "guardian_below", "items"});
        expectFormat(root, "raphe-consent");
        static_cast<void>(readText(root, "read"));
        m_out.guardianBelow = root.field("guardian_below").asInt(0, oldest);
        for (const JsonReader &at : root.field("items").items())
            m_out.items.push_back(readItem(at));
        checkTechniques(root.field("items"));
        return std::move(m_out);
    }

private:
    // Whatever is done with the hands can be refused.
    void checkTechniques(const JsonReader &at) const
    {
        for (const HandsAction &action : m_actions)
            if (action.kind == ActionKind::Technique
                && std::none_of(m_out.items.begin(), m_out.items.end(),
                    [&](const ConsentItem &item) { return isIn(item.covers.techniques, action.id); }))
                at.fail(ErrorCode::MissingField, "an item with " + action.id);
    }

    ConsentItem readItem(const JsonReader &at) const
    {
        at.expectObject({"id", "covers", "title", "explain", "benefits", "risks", "alternatives", "withdraw", "chaperone",
            "marks", "adults_only", "together", "renew_days", "source", "read"});
        ConsentItem item;
        item.id = readNewId(at, m_out.items);
        item.covers = readScope(at.field("covers"));
        item.title = readText(at, "title");
        item.explain = readText(at, "explain");
        item.benefits = readText(at, "benefits");
        item.risks = readText(at, "risks");
        item.alternatives = readText(at, "alternatives");
        item.withdraw = readText(at, "withdraw");
        item.chaperone = at.field("chaperone").asBool();
        item.marks = at.field("marks").asBool();
        item.adultsOnly = flag(at, "adults_only");
        item.together = flag(at, "together");
        if (item.together && item.covers.isOfPlace())
            at.fail(ErrorCode::Contradiction, "together, regions or structures");
        item.renewDays = at.field("renew_days").asInt(0, longest);
        item.source = readText(at, "source");
        item.read = readWord(readingWords, at.field("read"));
        return item;
    }

    ConsentScope readScope(const JsonReader &at) const
    {
        at.expectObject(
            {"examination", "record", "pictures", "guardian", "techniques", "regions", "structures", "elsewhere", "inside"});
        ConsentScope scope;
        scope.examination = flag(at, "examination");
        scope.record = flag(at, "record");
        scope.pictures = flag(at, "pictures");
        scope.guardian = flag(at, "guardian");
        scope.techniques = readChoice(at, "techniques", [&](const JsonReader &item) { return readTechnique(item); });
        scope.regions = readChoice(at, "regions", [&](const JsonReader &item) { return readRegion(item, m_atlas); });
        scope.structures = readChoice(at, "structures", [&](const JsonReader &item) { return readStructure(item); });
        scope.elsewhere = flag(at, "elsewhere");
        scope.inside = flag(at, "inside");
        if (scope.elsewhere && (scope.techniques.empty() || !scope.regions.empty() || !scope.structures.empty()))
            at.fail(ErrorCode::Contradiction, "elsewhere needs techniques, and has no regions or structures");
        if (scope.inside && !scope.isOfPlace())
            at.fail(ErrorCode::MissingField, "regions or structures");
        if (!scope.examination && !scope.record && !scope.pictures && !scope.guardian && scope.techniques.empty()
            && !scope.isOfPlace())
            at.fail(ErrorCode::MissingField, "what it covers");
        return scope;
    }

    std::string readTechnique(const JsonReader &at) const
    {
        std::string id = readKnownId(at, m_actions);
        if (findById(m_actions, id)->kind != ActionKind::Technique)
            at.fail(ErrorCode::WrongType, "id of a technique, not " + id);
        return id;
    }

    StructureId readStructure(const JsonReader &at) const
    {
        StructureId id{at.asString()};
        if (!m_atlas.find(id))
            at.fail(ErrorCode::UnknownId, id.value);
        return id;
    }

    // Left out means no.
    static bool flag(const JsonReader &owner, std::string_view name) { return owner.has(name) && owner.field(name).asBool(); }

    const std::vector<HandsAction> &m_actions;
    const Atlas &m_atlas;
    ConsentItems m_out;
};

} // namespace

const ConsentItem *ConsentItems::find(std::string_view id) const
{
    return findById(items, id);
}

Result<ConsentItems> readConsentItems(std::string_view text, const std::vector<HandsAction> &actions, const Atlas &atlas)
{
    return guarded(
        [&] { return Reader(actions, atlas).read(JsonReader(valueOrThrow(parseJson(text, consentFile)), consentFile)); });
}

} // namespace raphe
