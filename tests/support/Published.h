// Reads the figures of tests/published. A file that is missing or broken throws std::runtime_error, which fails the test.
#pragma once

#include <nlohmann/json.hpp>

#include <map>
#include <string>
#include <vector>

namespace raphe::test {

/// A table with a header row; lines that begin with '#' are its source and licence.
struct Table {
    std::string source; // the '#' lines, for messages
    std::vector<std::map<std::string, std::string>> rows;
};

[[nodiscard]] std::string publishedText(const std::string &file);
[[nodiscard]] nlohmann::json publishedJson(const std::string &file);
[[nodiscard]] Table publishedTable(const std::string &file);

/// The constants of the reasoning as they are shipped.
[[nodiscard]] nlohmann::json shippedConstants();
/// Text of a file of the source tree, path from its top.
[[nodiscard]] std::string sourceText(const std::string &path);

/// "a;b;c" in its parts; nothing for an empty text.
[[nodiscard]] std::vector<std::string> splitList(const std::string &text, char separator = ';');

} // namespace raphe::test
