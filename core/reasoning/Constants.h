// The numbers of the reasoning, read from resources/reasoning.json, where each stands with its reason.
#pragma once

#include "core/base/Result.h"

#include <map>
#include <string>
#include <string_view>

namespace raphe {

class Constants {
public:
    explicit Constants(std::map<std::string, double, std::less<>> values) : m_values(std::move(values)) { }
    /// The constant must exist; readConstants has checked the whole list of names.
    [[nodiscard]] double operator[](std::string_view name) const { return m_values.find(name)->second; }

private:
    std::map<std::string, double, std::less<>> m_values;
};

/// Fails on unknown or missing names, on a value without a reason and on values outside 0 to 10.
[[nodiscard]] Result<Constants> readConstants(std::string_view text, const std::string &file);
[[nodiscard]] Result<Constants> readEmbeddedConstants();

} // namespace raphe
