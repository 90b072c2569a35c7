// Small helps for writing JSON in the order in which a person reads it.
#pragma once

#include "core/base/Words.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace raphe {

/// An empty text says nothing and is left out.
inline void putText(nlohmann::ordered_json &json, const char *name, const std::string &text)
{
    if (!text.empty())
        json[name] = text;
}

/// Nothing is left out.
template <class E, std::size_t N>
void putWord(nlohmann::ordered_json &json, const char *name, const WordTable<E, N> &table, const std::optional<E> &value)
{
    if (value)
        json[name] = wordOf(table, *value);
}

} // namespace raphe
