#include "core/safety/SafetyRules.h"

#include "core/anatomy/AtlasReader.h"
#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

using namespace content;

namespace {

constexpr const char *actionsFile = "safety/actions.json";
constexpr const char *conditionsFile = "safety/conditions.json";
constexpr const char *rulesFile = "safety/rules.json";
constexpr const char *feedsFile = "safety/feeds.json";
constexpr const char *signsFile = "safety/warning-signs.json";
constexpr const char *consentFile = "safety/consent.json";

class Reader {
public:
    explicit Reader(const Atlas &atlas) : m_atlas(atlas) { }

    void readActions(const JsonReader &root)
    {
        root.expectObject({"format", "version", "actions"});
        expectFormat(root, "raphe-actions");
        for (const JsonReader &at : root.field("actions").items()) {
            at.expectObject({"id", "kind", "name"});
            m_actions.push_back({readNewId(at, m_actions), readWord(actionKindWords, at.field("kind")), readText(at, "name")});
        }
    }

    void readConditions(const JsonReader &root)
    {
        root.expectObject({"format", "version", "conditions"});
        expectFormat(root, "raphe-conditions");
        for (const JsonReader &at : root.field("conditions").items()) {
            at.expectObject({"id", "name", "place"});
            m_conditions.push_back(
                {readNewId(at, m_conditions), readText(at, "name"), readWord(placeNeedWords, at.field("place"))});
            m_conditionPlaces.push_back(at.place());
        }
    }

    void readRules(const JsonReader &root)
    {
        root.expectObject({"format", "version", "limb_roots", "rules"});
        expectFormat(root, "raphe-caution-rules");
        for (const JsonReader &at : root.field("limb_roots").items())
            readLimbRoots(at);
        for (const JsonReader &at : root.field("rules").items())
            m_rules.push_back(readRule(at));
    }

    SafetyRules finish()
    {
        for (std::size_t i = 0; i < m_conditions.size(); ++i)
            if (std::none_of(m_rules.begin(), m_rules.end(),
                    [&](const CautionRule &rule) { return isIn(rule.conditions, m_conditions[i].id); }))
                throw Error{ErrorCode::MissingField, m_conditionPlaces[i], "a rule for " + m_conditions[i].id};
        return {std::move(m_actions), std::move(m_conditions), std::move(m_limbRoots), std::move(m_rules)};
    }

private:
    void readLimbRoots(const JsonReader &at)
    {
        at.expectObject({"limb", "regions", "reason", "source"});
        const Limb limb = readWord(limbWords, at.field("limb"));
        const std::vector<JsonReader> regions = at.field("regions").items();
        if (regions.empty())
            at.fail(ErrorCode::MissingField, "regions");
        for (const JsonReader &item : regions) {
            const StructureId region = readRegion(item, m_atlas);
            if (!m_limbRoots.emplace(region, limb).second)
                item.fail(ErrorCode::Duplicate, region.value);
        }
        static_cast<void>(readText(at, "reason"));
        static_cast<void>(readText(at, "source"));
    }

    CautionRule readRule(const JsonReader &at) const
    {
        at.expectObject({"id", "conditions", "actions", "where", "regions", "layers", "kinds", "verdict", "spares_the_rest",
            "reason", "source", "read"});
        CautionRule rule;
        rule.id = readNewId(at, m_rules);
        rule.conditions = readChoice(at, "conditions", [&](const JsonReader &item) { return readKnownId(item, m_conditions); });
        rule.actions = readChoice(at, "actions", [&](const JsonReader &item) { return readKnownId(item, m_actions); });
        rule.where = readWord(whereWords, at.field("where"));
        rule.regions = readChoice(at, "regions", [&](const JsonReader &item) { return readRegion(item, m_atlas); });
        rule.layers = readChoice(at, "layers", [](const JsonReader &item) { return readWord(layerWords, item); });
        rule.kinds = readChoice(at, "kinds", [](const JsonReader &item) { return readWord(kindWords, item); });
        rule.verdict = readWord(verdictWords, at.field("verdict"));
        if (at.has("spares_the_rest")) {
            rule.sparesTheRest = at.field("spares_the_rest").asBool();
            if (rule.where != Where::AtPlace || rule.verdict != Verdict::Stop)
                at.fail(ErrorCode::Contradiction, "spares_the_rest; only a stop at a place can");
        }
        rule.reason = readText(at, "reason");
        rule.source = readText(at, "source");
        rule.read = readWord(readingWords, at.field("read"));
        checkWhere(at, rule);
        return rule;
    }

    // A rule that goes by a place must get one from each of its conditions.
    void checkWhere(const JsonReader &at, const CautionRule &rule) const
    {
        if (rule.where == Where::Everywhere)
            return;
        if (rule.conditions.empty())
            at.fail(ErrorCode::MissingField, "conditions");
        for (const std::string &id : rule.conditions)
            if (findById(m_conditions, id)->place == PlaceNeed::None)
                at.fail(ErrorCode::Contradiction, std::string(wordOf(whereWords, rule.where)) + ", " + id);
    }

    const Atlas &m_atlas;
    std::vector<HandsAction> m_actions;
    std::vector<ConditionKind> m_conditions;
    std::vector<std::string> m_conditionPlaces; // of each, for messages
    LimbRegions m_limbRoots;
    std::vector<CautionRule> m_rules;
};

} // namespace

const HandsAction *SafetyRules::findAction(std::string_view id) const
{
    return findById(m_actions, id);
}

const ConditionKind *SafetyRules::findCondition(std::string_view id) const
{
    return findById(m_conditions, id);
}

Result<SafetyRules> readSafetyRules(
    std::string_view actionsText, std::string_view conditionsText, std::string_view rulesText, const Atlas &atlas)
{
    return guarded([&] {
        Reader reader(atlas);
        reader.readActions(JsonReader(valueOrThrow(parseJson(actionsText, actionsFile)), actionsFile));
        reader.readConditions(JsonReader(valueOrThrow(parseJson(conditionsText, conditionsFile)), conditionsFile));
        reader.readRules(JsonReader(valueOrThrow(parseJson(rulesText, rulesFile)), rulesFile));
        return reader.finish();
    });
}

Result<SafetyRules> readEmbeddedSafetyRules(const Atlas &atlas)
{
    const auto files = embeddedFiles("safety");
    if (!files)
        return files.error();
    const auto textOf = [&](std::string_view name) -> std::string_view {
        for (const NamedText &file : files.value())
            if ("safety/" + file.name == name)
                return file.text;
        return {};
    };
    auto rules = readSafetyRules(textOf(actionsFile), textOf(conditionsFile), textOf(rulesFile), atlas);
    if (!rules)
        return rules;
    auto signs = readWarningSigns(textOf(signsFile), rules.value().conditions(), atlas);
    if (!signs)
        return signs.error();
    auto feeds = readCautionFeeds(textOf(feedsFile), rules.value().conditions());
    if (!feeds)
        return feeds.error();
    auto consents = readConsentItems(textOf(consentFile), rules.value().actions(), atlas);
    if (!consents)
        return consents.error();
    rules.value().setSigns(std::move(signs).value());
    rules.value().setFeeds(std::move(feeds).value());
    rules.value().setConsents(std::move(consents).value());
    return rules;
}

} // namespace raphe
