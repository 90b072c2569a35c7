// The page that explains the typed line shows lines that are read as they stand.
#include "tests/core/language/EnglishWords.h"
#include "tests/core/plan/Planning.h"

#include "core/anatomy/AtlasReader.h"
#include "core/treatment/WorkLine.h"

#include <gtest/gtest.h>

#include <sstream>

namespace {

using namespace raphe;

std::string helpPage()
{
    const auto files = embeddedFiles("language");
    for (const NamedText &file : files.value())
        if (file.name == "help-en.md")
            return file.text;
    return {};
}

// What stands between backticks in the first column of its table.
std::vector<std::string> examples()
{
    std::vector<std::string> out;
    std::istringstream page(helpPage());
    for (std::string row; std::getline(page, row);) {
        if (!row.starts_with("| `"))
            continue;
        const std::string cell = row.substr(0, row.find(" | ", 2));
        for (std::size_t from = cell.find('`'); from != std::string::npos;) {
            const std::size_t to = cell.find('`', from + 1);
            out.push_back(cell.substr(from + 1, to - from - 1));
            from = cell.find('`', to + 1);
        }
    }
    return out;
}

TEST(HelpPage, ItsExamplesAreReadWithoutAQuestion)
{
    EXPECT_GE(examples().size(), 20U);
    int ofWork = 0;
    for (const std::string &line : examples()) {
        if (isWorkLine(line, test::englishWords())) {
            EXPECT_TRUE(readWorkLine(line, test::englishWords(), test::techniques()).step) << line;
            ++ofWork;
            continue;
        }
        const auto reading = test::read(line);
        EXPECT_TRUE(reading.questions().empty() && reading.mistakes().empty()) << line << ": " << test::inWords(reading);
        EXPECT_FALSE(reading.findings().empty() && reading.measures().empty()) << line;
    }
    EXPECT_GE(ofWork, 3);
}

} // namespace
