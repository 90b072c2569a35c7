// The pages of the help: read strictly, all there, all reached by links; and what they say in numbers and grades is what the
// program does.
#include "core/document/HelpPages.h"
#include "core/reasoning/Paths.h"
#include "core/store/AccountRow.h"
#include "core/store/PracticeSettings.h"
#include "core/treatment/SinglePedal.h"
#include "core/treatment/TreatmentRun.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <filesystem>
#include <set>
#include <sstream>

namespace raphe::test {

namespace {

const HelpPages &helpPages()
{
    static const Result<HelpPages> read = readEmbeddedHelpPages();
    if (!read)
        throw std::runtime_error(inWords(read.error()));
    return read.value();
}

const std::string &helpPage(const char *id)
{
    const HelpPage *found = helpPages().find(id);
    if (!found)
        throw std::runtime_error(std::string("no page ") + id);
    return found->text;
}

// With one space where a line is broken.
std::string unbroken(const std::string &text)
{
    std::string out;
    std::istringstream words(text);
    for (std::string word; words >> word;)
        out += (out.empty() ? "" : " ") + word;
    return out;
}

void expectSaid(const char *id, const std::string &words)
{
    EXPECT_NE(unbroken(helpPage(id)).find(words), std::string::npos) << id << " does not say: " << words;
}

nlohmann::json helpList(const nlohmann::json &pages)
{
    return {{"format", "raphe-help"}, {"version", 1}, {"pages", pages}};
}

const nlohmann::json firstPage{{"id", "begin"}, {"title", "Begin"}, {"file", "help/en/begin.md"}};
const nlohmann::json secondPage{{"id", "more"}, {"title", "More"}, {"file", "help/en/more.md"}};

std::vector<NamedText> pageFiles()
{
    return {{"help/en/begin.md", "# Begin\nRead [more](more.md)."}, {"help/en/more.md", "# More\nAnd [back](begin.md)."}};
}

void expectRefused(const nlohmann::json &list, const std::vector<NamedText> &of, ErrorCode code, const std::string &place)
{
    const auto read = readHelpPages(list.dump(), of);
    ASSERT_FALSE(read.ok()) << list;
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, place) << inWords(read.error());
}

nlohmann::json pagesOf(std::initializer_list<nlohmann::json> pages)
{
    nlohmann::json out = nlohmann::json::array();
    for (const nlohmann::json &one : pages)
        out.push_back(one);
    return helpList(out);
}

} // namespace

TEST(HelpPages, AreReadStrictly)
{
    const auto good = readHelpPages(pagesOf({firstPage, secondPage}).dump(), pageFiles());
    ASSERT_TRUE(good.ok()) << inWords(good.error());
    EXPECT_EQ(good.value().pages.at(1).title, "More");
    EXPECT_EQ(linkedFrom(good.value(), "more.md"), &good.value().pages[1]);
    EXPECT_EQ(linkedFrom(good.value(), "more"), nullptr);

    const auto with = [](nlohmann::json changed, const char *field, const char *value) {
        changed[field] = value;
        return changed;
    };
    expectRefused(pagesOf({firstPage, with(secondPage, "colour", "red")}), pageFiles(), ErrorCode::UnknownField,
        "help/pages.json#/pages/1");
    expectRefused(
        pagesOf({firstPage, with(secondPage, "id", "More")}), pageFiles(), ErrorCode::BadId, "help/pages.json#/pages/1/id");
    expectRefused(
        pagesOf({firstPage, with(secondPage, "id", "begin")}), pageFiles(), ErrorCode::Duplicate, "help/pages.json#/pages/1/id");
    expectRefused(
        pagesOf({firstPage, with(secondPage, "title", "")}), pageFiles(), ErrorCode::MissingField, "help/pages.json#/pages/1");
    expectRefused(pagesOf({firstPage, with(secondPage, "file", "help/en/none.md")}), pageFiles(), ErrorCode::UnknownId,
        "help/pages.json#/pages/1/file");
    expectRefused(pagesOf({firstPage, with(secondPage, "file", "help/en/begin.md")}), pageFiles(), ErrorCode::Duplicate,
        "help/pages.json#/pages/1/file");
    expectRefused(pagesOf({}), pageFiles(), ErrorCode::MissingField, "help/pages.json#/");
    EXPECT_FALSE(readHelpPages("", pageFiles()).ok());
}

TEST(HelpPages, AFileThatIsNotListedAndALinkThatLeadsNowhereAreErrors)
{
    std::vector<NamedText> all = pageFiles();
    all.push_back({"help/en/other.md", "# Other"});
    expectRefused(pagesOf({firstPage, secondPage}), all, ErrorCode::MissingField, "help/pages.json#/pages");
    all = pageFiles();
    all[1].text = "# More\nAnd [there](nowhere.md).";
    expectRefused(pagesOf({firstPage, secondPage}), all, ErrorCode::UnknownId, "help page more");
    all[1].text = "# More\nAnd [out](https://example.org/begin.md).";
    expectRefused(pagesOf({firstPage, secondPage}), all, ErrorCode::UnknownId, "help page more");
    all[1].text = "More";
    expectRefused(pagesOf({firstPage, secondPage}), all, ErrorCode::WrongFormat, "help/en/more.md");
}

TEST(HelpPages, AllAreThereAndLinksLeadToEachFromTheFirst)
{
    EXPECT_EQ(helpPages().pages.front().id, "index");
    const std::filesystem::path folder = RAPHE_SOURCE_DIR "/resources/help/en";
    for (const auto &entry : std::filesystem::directory_iterator(folder)) {
        const HelpPage *found = helpPages().find(entry.path().stem().string());
        EXPECT_TRUE(found) << entry.path() << " is built in and listed under its name";
    }
    std::set<std::string> reached{"index"};
    std::vector<const HelpPage *> ahead{&helpPages().pages.front()};
    while (!ahead.empty()) {
        const HelpPage *from = ahead.back();
        ahead.pop_back();
        for (const std::string &link : linksIn(from->text)) {
            const HelpPage *to = linkedFrom(helpPages(), link);
            ASSERT_TRUE(to) << from->id << ": " << link;
            if (reached.insert(to->id).second)
                ahead.push_back(to);
        }
    }
    for (const HelpPage &one : helpPages().pages)
        EXPECT_TRUE(reached.contains(one.id)) << one.id;
}

TEST(HelpPages, SayWhereTheirLimitsAre)
{
    for (const char *id : {"index", "limits"})
        expectSaid(id, "Assists a trained practitioner; follow local law, scope of practice and licensed care.");
    expectSaid("limits", "It makes no diagnosis.");
    expectSaid("evidence", "that treating one end helps the other: not shown.");
}

// What is written in two places is compared.
TEST(HelpPages, GradesStandThereAsTheWindowShowsThem)
{
    for (const auto &[grade, word] : gradeWords)
        expectSaid("evidence", "| " + std::string(word) + " | " + gradeInWords(grade) + " |");
}

TEST(HelpPages, FiguresAreThoseOfTheProgram)
{
    using namespace std::chrono_literals;
    expectSaid("practice-file", "at least " + std::to_string(shortestPassphrase) + " characters");
    expectSaid("practice-file", "(" + std::to_string(PracticeSettings().lockMinutes) + " minutes unless set otherwise)");
    EXPECT_EQ(SinglePedal::held, 2s);
    expectSaid("treatment", "held for two seconds | STOP");
    EXPECT_EQ(TreatmentRun::keptEvery, 5s);
    expectSaid("treatment", "loses five seconds at most");
    EXPECT_EQ(Finding::ungraded, 2);
    expectSaid("scales", "it counts as grade 2");
    EXPECT_EQ(safetyRules().consents().guardianBelow, 18);
    expectSaid("consent", "Below 18 a **guardian** is named too");
}

} // namespace raphe::test
