#include "core/safety/TechniqueGroups.h"

#include "core/anatomy/AtlasReader.h"
#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

using namespace content;

namespace {

constexpr const char *scopeFile = "safety/scope.json";

std::set<std::string> techniquesOf(const SafetyRules &rules)
{
    std::set<std::string> out;
    for (const HandsAction &action : rules.actions())
        if (action.kind == ActionKind::Technique)
            out.insert(action.id);
    return out;
}

} // namespace

Result<std::vector<TechniqueGroup>> readTechniqueGroups(std::string_view text, const SafetyRules &rules)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, scopeFile));
        const JsonReader root(json, scopeFile);
        root.expectObject({"format", "version", "read", "groups"});
        expectFormat(root, "raphe-scope");
        std::set<std::string> left = techniquesOf(rules);
        const std::set<std::string> all = left;
        std::vector<TechniqueGroup> groups;
        for (const JsonReader &at : root.field("groups").items()) {
            at.expectObject({"id", "name", "techniques"});
            groups.push_back({readNewId(at, groups), readText(at, "name"), {}});
            for (const JsonReader &technique : at.field("techniques").items()) {
                const std::string id = technique.asString();
                if (!all.contains(id))
                    technique.fail(ErrorCode::UnknownId, id);
                if (left.erase(id) == 0)
                    technique.fail(ErrorCode::Duplicate, id);
                groups.back().techniques.push_back(id);
            }
        }
        if (!left.empty())
            root.field("groups").fail(ErrorCode::MissingField, *left.begin());
        return groups;
    });
}

Result<std::vector<TechniqueGroup>> readEmbeddedTechniqueGroups(const SafetyRules &rules)
{
    const auto files = embeddedFiles("safety");
    if (!files)
        return files.error();
    const auto scope = std::find_if(
        files.value().begin(), files.value().end(), [](const NamedText &file) { return "safety/" + file.name == scopeFile; });
    return readTechniqueGroups(scope == files.value().end() ? std::string_view() : std::string_view(scope->text), rules);
}

std::optional<std::set<std::string>> techniquesWithin(
    const std::vector<TechniqueGroup> &groups, const std::vector<std::string> &scope)
{
    if (scope.empty())
        return {};
    std::set<std::string> out;
    for (const TechniqueGroup &group : groups)
        if (std::find(scope.begin(), scope.end(), group.id) != scope.end())
            out.insert(group.techniques.begin(), group.techniques.end());
    return out;
}

} // namespace raphe
