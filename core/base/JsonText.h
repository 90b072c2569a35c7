// Small helps for writing JSON in the order in which a person reads it.
#pragma once

#include <nlohmann/json.hpp>

#include <string>

namespace raphe {

/// An empty text says nothing and is left out.
inline void putText(nlohmann::ordered_json &json, const char *name, const std::string &text)
{
    if (!text.empty())
        json[name] = text;
}

} // namespace raphe
