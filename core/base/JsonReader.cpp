#include "core/base/JsonReader.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace raphe {

Result<nlohmann::json> parseJson(std::string_view text, const std::string &file)
{
    try {
        return nlohmann::json::parse(text);
    } catch (const nlohmann::json::parse_error &e) {
        const auto at = std::min<std::size_t>(e.byte > 0 ? e.byte - 1 : 0, text.size());
        const auto before = text.substr(0, at);
        const auto line = std::count(before.begin(), before.end(), '\n') + 1;
        const auto newline = before.rfind('\n');
        const auto column = at - (newline == std::string_view::npos ? 0 : newline + 1) + 1;
        return Error{ErrorCode::BadJson, file + ", line " + std::to_string(line) + ", column " + std::to_string(column), {}};
    } catch (const nlohmann::json::out_of_range &) { // a number such as 1e999, which the parser reports without a position
        return Error{ErrorCode::BadJson, file, "number too large"};
    }
}

JsonReader::JsonReader(const nlohmann::json &value, std::string file, std::string pointer)
    : m_value(value), m_file(std::move(file)), m_pointer(std::move(pointer))
{
}

void JsonReader::fail(ErrorCode code, std::string detail) const
{
    throw Error{code, place(), std::move(detail)};
}

std::string JsonReader::place() const
{
    return m_file + "#" + (m_pointer.empty() ? "/" : m_pointer);
}

void JsonReader::expectObject(std::initializer_list<std::string_view> allowed) const
{
    if (!m_value.is_object())
        fail(ErrorCode::WrongType, "object");
    for (const auto &item : m_value.items())
        if (std::find(allowed.begin(), allowed.end(), item.key()) == allowed.end())
            fail(ErrorCode::UnknownField, item.key());
}

bool JsonReader::has(std::string_view field) const
{
    return m_value.is_object() && m_value.contains(std::string(field));
}

JsonReader JsonReader::field(std::string_view name) const
{
    if (!has(name))
        fail(ErrorCode::MissingField, std::string(name));
    return {m_value.at(std::string(name)), m_file, m_pointer + "/" + std::string(name)};
}

std::vector<JsonReader> JsonReader::items() const
{
    if (!m_value.is_array())
        fail(ErrorCode::WrongType, "array");
    std::vector<JsonReader> out;
    out.reserve(m_value.size());
    for (std::size_t i = 0; i < m_value.size(); ++i)
        out.emplace_back(m_value[i], m_file, m_pointer + "/" + std::to_string(i));
    return out;
}

std::vector<JsonReader> JsonReader::items(std::size_t least, std::size_t most) const
{
    if (m_value.is_array() && (m_value.size() < least || m_value.size() > most))
        fail(ErrorCode::OutOfRange,
            std::to_string(m_value.size()) + " entries, allowed: " + std::to_string(least) + " to " + std::to_string(most));
    return items();
}

bool JsonReader::isBool() const
{
    return m_value.is_boolean();
}

bool JsonReader::isNull() const
{
    return m_value.is_null();
}

bool JsonReader::asBool() const
{
    if (!m_value.is_boolean())
        fail(ErrorCode::WrongType, "true or false");
    return m_value.get<bool>();
}

std::string JsonReader::asString() const
{
    if (!m_value.is_string())
        fail(ErrorCode::WrongType, "text");
    return m_value.get<std::string>();
}

double JsonReader::asNumber() const
{
    if (!m_value.is_number())
        fail(ErrorCode::WrongType, "number");
    return m_value.get<double>();
}

double JsonReader::asNumber(double low, double high) const
{
    const double value = asNumber();
    if (!(value >= low && value <= high))
        fail(ErrorCode::OutOfRange,
            m_value.dump() + ", allowed: " + nlohmann::json(low).dump() + " to " + nlohmann::json(high).dump());
    return value;
}

int JsonReader::asInt(int low, int high) const
{
    const double value = asNumber();
    if (value != std::floor(value) || value < low || value > high)
        fail(ErrorCode::OutOfRange,
            m_value.dump() + ", allowed: whole number " + std::to_string(low) + " to " + std::to_string(high));
    return static_cast<int>(value);
}

std::vector<std::string> JsonReader::asStrings() const
{
    std::vector<std::string> out;
    for (const auto &item : items())
        out.push_back(item.asString());
    return out;
}

std::string JsonReader::stringOr(std::string_view name, std::string fallback) const
{
    return has(name) ? string(name) : std::move(fallback);
}

std::vector<std::string> JsonReader::stringsOr(std::string_view name) const
{
    return has(name) ? field(name).asStrings() : std::vector<std::string>{};
}

} // namespace raphe
