// The fields that a schema of resources/schema names, for tests that none is forgotten.
#pragma once

#include "tests/support/Content.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace raphe::test {

struct SchemaField {
    std::string path; // as "/findings/*/note": an asterisk for each entry of a list
    bool isFreeText = false; // a text, or a list of texts, that is no id, date, time or word of a closed list
};

namespace schema {

inline const nlohmann::json &resolved(const nlohmann::json &root, const nlohmann::json &node)
{
    const nlohmann::json *at = &node;
    while (at->is_object() && at->contains("$ref"))
        at = &root.at(nlohmann::json::json_pointer(at->at("$ref").get<std::string>().substr(1)));
    return *at;
}

inline bool isFree(const nlohmann::json &node)
{
    return node.is_object() && node.value("type", "") == "string" && !node.contains("pattern") && !node.contains("enum")
        && !node.contains("format");
}

inline void addFields(
    const nlohmann::json &root, const nlohmann::json &node, const std::string &path, std::vector<SchemaField> &out)
{
    const nlohmann::json &here = resolved(root, node);
    if (!here.is_object()) // anything, or nothing
        return;
    if (here.contains("properties"))
        for (const auto &[name, field] : here.at("properties").items()) {
            const nlohmann::json &what = resolved(root, field);
            const bool isListOfTexts = what.is_object() && what.contains("items") && isFree(resolved(root, what.at("items")));
            out.push_back({path + "/" + name, isFree(what) || isListOfTexts});
            addFields(root, field, path + "/" + name, out);
        }
    if (here.contains("allOf"))
        for (const nlohmann::json &part : here.at("allOf"))
            addFields(root, part, path, out);
    if (here.contains("items"))
        addFields(root, here.at("items"), path + "/*", out);
    if (here.contains("properties"))
        for (const auto &[name, field] : here.at("properties").items())
            if (field == false) // never there, whatever another part of it says
                std::erase_if(out, [at = path + "/" + name](const SchemaField &one) { return one.path == at; });
}

} // namespace schema

/// Of resources/schema/NAME.schema.json, through its references.
inline std::vector<SchemaField> schemaFields(const std::string &name)
{
    std::vector<SchemaField> out;
    const nlohmann::json root = shipped("schema/" + name + ".schema.json");
    schema::addFields(root, root, "", out);
    return out;
}

/// Adds the paths of all fields that stand in the document.
inline void addFilledFields(const nlohmann::json &document, const std::string &path, std::set<std::string> &out)
{
    if (document.is_object())
        for (const auto &[name, field] : document.items()) {
            out.insert(path + "/" + name);
            addFilledFields(field, path + "/" + name, out);
        }
    if (document.is_array())
        for (const auto &entry : document)
            addFilledFields(entry, path + "/*", out);
}

} // namespace raphe::test
