// Strict reading of JSON: every accessor knows its JSON pointer, so that a mistake is reported with file and place.
// Inside a reader the accessors throw raphe::Error; guarded() turns that into a Result at the floor's edge.
// Does not own the document; the nlohmann::json must outlive the reader. No threads.
#pragma once

#include "core/base/Result.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace raphe {

/// Parses text; on failure the place is "file, line L, column C".
[[nodiscard]] Result<nlohmann::json> parseJson(std::string_view text, const std::string &file);

class JsonReader {
public:
    JsonReader(const nlohmann::json &value, std::string file, std::string pointer = {});

    [[noreturn]] void fail(ErrorCode code, std::string detail) const;
    [[nodiscard]] std::string place() const;

    /// Fails unless this is an object whose fields are all in `allowed`.
    void expectObject(std::initializer_list<std::string_view> allowed) const;
    [[nodiscard]] bool has(std::string_view field) const;
    [[nodiscard]] JsonReader field(std::string_view name) const;
    [[nodiscard]] std::vector<JsonReader> items() const;
    /// The same, when there are from `least` to `most` of them; they are counted before anything is made of them.
    [[nodiscard]] std::vector<JsonReader> items(std::size_t least, std::size_t most) const;

    [[nodiscard]] bool isBool() const;
    [[nodiscard]] bool isNull() const;
    [[nodiscard]] bool asBool() const;
    [[nodiscard]] std::string asString() const;
    [[nodiscard]] double asNumber() const;
    /// A number within [low, high].
    [[nodiscard]] double asNumber(double low, double high) const;
    /// A whole number within [low, high].
    [[nodiscard]] int asInt(int low, int high) const;
    [[nodiscard]] std::vector<std::string> asStrings() const;

    [[nodiscard]] std::string string(std::string_view name) const { return field(name).asString(); }
    [[nodiscard]] std::string stringOr(std::string_view name, std::string fallback) const;
    [[nodiscard]] std::vector<std::string> stringsOr(std::string_view name) const;

private:
    const nlohmann::json &m_value;
    std::string m_file;
    std::string m_pointer;
};

/// Runs a reader that may throw Error and returns its value or that error.
template <class F> [[nodiscard]] auto guarded(F read) -> Result<decltype(read())>
{
    try {
        return read();
    } catch (const Error &error) {
        return error;
    }
}

/// The reverse, inside guarded(): the value, or the error is thrown.
template <class T> [[nodiscard]] T valueOrThrow(Result<T> result)
{
    if (!result)
        throw result.error();
    return std::move(result).value();
}

} // namespace raphe
