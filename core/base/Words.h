// Closed lists of words: one table per enum, used both to read and to write it.
#pragma once

#include "core/base/JsonReader.h"

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace raphe {

template <class E, std::size_t N> using WordTable = std::array<std::pair<E, std::string_view>, N>;

template <class E, std::size_t N> [[nodiscard]] constexpr std::string_view wordOf(const WordTable<E, N> &table, E value)
{
    for (const auto &[key, word] : table)
        if (key == value)
            return word;
    return {};
}

template <class E, std::size_t N>
[[nodiscard]] constexpr std::optional<E> fromWord(const WordTable<E, N> &table, std::string_view text)
{
    for (const auto &[key, word] : table)
        if (word == text)
            return key;
    return std::nullopt;
}

/// Reads a word of the table or fails with the place and the word.
template <class E, std::size_t N> [[nodiscard]] E readWord(const WordTable<E, N> &table, const JsonReader &at)
{
    const std::string text = at.asString();
    if (const auto value = fromWord(table, text))
        return *value;
    at.fail(ErrorCode::UnknownWord, text);
}

/// The word of a field that may be left out.
template <class E, std::size_t N>
[[nodiscard]] std::optional<E> readWordOr(const JsonReader &owner, std::string_view name, const WordTable<E, N> &table)
{
    return owner.has(name) ? std::optional(readWord(table, owner.field(name))) : std::nullopt;
}

} // namespace raphe
