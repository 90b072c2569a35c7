#include "tests/support/Published.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace raphe::test {

namespace {

// One line of comma-separated values; a quoted value may hold commas and doubled quotes.
std::vector<std::string> cellsOf(const std::string &line)
{
    std::vector<std::string> cells{{}};
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (quoted && c == '"' && i + 1 < line.size() && line[i + 1] == '"') {
            cells.back() += c;
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            cells.emplace_back();
        } else if (c != '\r') {
            cells.back() += c;
        }
    }
    return cells;
}

} // namespace

std::string sourceText(const std::string &path)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/" + path, std::ios::binary);
    if (!in)
        throw std::runtime_error("cannot read " + path);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::string publishedText(const std::string &file)
{
    return sourceText("tests/published/" + file);
}

nlohmann::json shippedConstants()
{
    return nlohmann::json::parse(sourceText("resources/reasoning.json"));
}

nlohmann::json publishedJson(const std::string &file)
{
    return nlohmann::json::parse(publishedText(file));
}

Table publishedTable(const std::string &file)
{
    Table table;
    std::vector<std::string> header;
    std::istringstream in(publishedText(file));
    for (std::string line; std::getline(in, line);) {
        if (line.empty())
            continue;
        if (line.front() == '#') {
            table.source += line.substr(1);
            continue;
        }
        const auto cells = cellsOf(line);
        if (header.empty()) {
            header = cells;
            continue;
        }
        if (cells.size() != header.size())
            throw std::runtime_error(file + ": a row with " + std::to_string(cells.size()) + " cells: " + line);
        auto &row = table.rows.emplace_back();
        for (std::size_t i = 0; i < cells.size(); ++i)
            row[header[i]] = cells[i];
    }
    if (table.source.empty())
        throw std::runtime_error(file + ": no '#' line names its source and licence");
    return table;
}

std::vector<std::string> splitList(const std::string &text, char separator)
{
    std::vector<std::string> parts;
    std::istringstream in(text);
    for (std::string part; std::getline(in, part, separator);)
        if (!part.empty())
            parts.push_back(part);
    return parts;
}

} // namespace raphe::test
