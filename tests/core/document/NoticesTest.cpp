// The notices: read strictly, and nothing is missing whose licence or whose presence in the program asks for one. What is used is
// found in the project itself: licence lines of data files, packages that the build looks for, code systems of the exchange.
#include "core/document/Notices.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

namespace raphe::test {

namespace {

const Notices &shippedNotices()
{
    static const Result<Notices> read = readEmbeddedNotices();
    return read.value();
}

const Notice *noticeOf(const std::string &id)
{
    const auto &all = shippedNotices().notices;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Notice &notice) { return notice.id == id; });
    return found == all.end() ? nullptr : &*found;
}

// A folder stands for all that lies in it.
bool namesFile(const Notice &notice, const std::string &file)
{
    return std::any_of(notice.files.begin(), notice.files.end(),
        [&](const std::string &named) { return file == named || file.compare(0, named.size() + 1, named + "/") == 0; });
}

// Licences as people write them in a line about their data.
const std::vector<std::pair<std::string, std::string>> licenceWords{{"CC BY 3.0", "CC-BY-3.0"}, {"CC-BY-3.0", "CC-BY-3.0"},
    {"CC BY 4.0", "CC-BY-4.0"}, {"CC-BY-4.0", "CC-BY-4.0"}, {"CC BY-ND", "CC-BY-ND-4.0"}, {"CC BY-SA", "CC-BY-SA"},
    {"CC BY-NC", "CC-BY-NC"}, {"CC0", "CC0-1.0"}, {"Apache-2.0", "Apache-2.0"}, {"Apache License", "Apache-2.0"}, {"MIT", "MIT"},
    {"BSD", "BSD-3-Clause"}, {"GPL", "LGPL-3.0"}, {"LGPL", "LGPL-3.0"}, {"US Government", "US-Government-work"}};

// As a word, not within one.
bool hasWord(const std::string &text, const std::string &word)
{
    const auto isLetter = [&](std::size_t at) { return at < text.size() && std::isalnum(static_cast<unsigned char>(text[at])); };
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
        if ((at == 0 || !isLetter(at - 1)) && !isLetter(at + word.size()))
            return true;
    return false;
}

struct LicenceLine {
    std::string file;
    std::string licence;
};

// Data files of the project that state a licence, each licence of a file once.
std::vector<LicenceLine> licenceLines()
{
    const std::filesystem::path top(RAPHE_SOURCE_DIR);
    const std::set<std::string> kinds{".csv", ".json", ".md", ".svg", ".txt"};
    std::vector<LicenceLine> out;
    for (const char *folder : {"resources", "tests", "demo"})
        for (const auto &entry : std::filesystem::recursive_directory_iterator(top / folder)) {
            const std::string file = std::filesystem::relative(entry.path(), top).generic_string();
            const bool isOwn =
                file.rfind("resources/licences/", 0) == 0 || file == "resources/notices.json" || file.rfind("demo/out/", 0) == 0;
            if (!entry.is_regular_file() || isOwn || !kinds.count(entry.path().extension().string()))
                continue;
            const std::string text = sourceText(file);
            for (const auto &[word, licence] : licenceWords)
                if (hasWord(text, word))
                    out.push_back({file, licence});
        }
    return out;
}

std::string inOneLine(const std::string &text)
{
    std::string out;
    for (const char c : text)
        if (!std::isspace(static_cast<unsigned char>(c)))
            out += c;
        else if (!out.empty() && out.back() != ' ')
            out += ' ';
    return out;
}

std::string systemFile(const std::string &path)
{
    std::ifstream in(path, std::ios::binary);
    EXPECT_TRUE(in) << path << " is in Debian 12, with the packages of .ci/build-packages";
    return {std::istreambuf_iterator<char>(in), {}};
}

// Debian writes '.' for an empty line.
std::string debianCopyright(const std::string &package)
{
    return inOneLine(
        std::regex_replace(systemFile("/usr/share/doc/" + package + "/copyright"), std::regex("\n[ ]+\\.[ ]*\n"), "\n\n"));
}

const std::string &licenceText(const std::string &id)
{
    return shippedNotices().licence(id)->text;
}

nlohmann::json goodNotices()
{
    nlohmann::json licence{{"id", "MIT"}, {"name", "MIT License"}, {"reference", "somewhere"}, {"text", "mit.txt"}};
    nlohmann::json notice{{"id", "a-table"}, {"kind", "data"}, {"what", "a table"}, {"who", "somebody"}, {"licence", "MIT"},
        {"read", "page"}, {"source", "a book"}, {"where", "program"}, {"changed", "nothing"}};
    notice["files"] = nlohmann::json::array({"resources/atlas"});
    nlohmann::json out{{"format", "raphe-notices"}, {"version", 1}};
    out["licences"] = nlohmann::json::array();
    out["licences"].push_back(licence);
    out["notices"] = nlohmann::json::array();
    out["notices"].push_back(notice);
    return out;
}

void expectRefused(const nlohmann::json &notices, ErrorCode code, const std::string &place)
{
    const auto read = readNotices(notices.dump(), {{"mit.txt", "the words"}});
    ASSERT_FALSE(read.ok()) << notices;
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, place) << inWords(read.error());
}

} // namespace

TEST(Notices, AreReadStrictly)
{
    const auto read = readNotices(goodNotices().dump(), {{"mit.txt", "the words"}});
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    EXPECT_EQ(read.value().licence("MIT")->text, "the words");
    EXPECT_EQ(read.value().licence("ISC"), nullptr);

    const auto with = [](const char *field, const nlohmann::json &value) {
        nlohmann::json out = goodNotices();
        out["notices"][0][field] = value;
        return out;
    };
    const std::string first = "notices.json#/notices/0/";
    expectRefused(with("id", "A table"), ErrorCode::BadId, first + "id");
    expectRefused(with("kind", "book"), ErrorCode::UnknownWord, first + "kind");
    expectRefused(with("licence", "ISC"), ErrorCode::UnknownId, first + "licence");
    expectRefused(with("read", "abstract"), ErrorCode::UnknownWord, first + "read");
    expectRefused(with("where", "nowhere"), ErrorCode::UnknownWord, first + "where");
    expectRefused(with("what", ""), ErrorCode::MissingField, "notices.json#/notices/0");
    expectRefused(with("changed", ""), ErrorCode::MissingField, "notices.json#/notices/0");
    expectRefused(with("notice", ""), ErrorCode::MissingField, "notices.json#/notices/0");
    expectRefused(with("colour", "red"), ErrorCode::UnknownField, "notices.json#/notices/0");
    expectRefused(with("kind", "library"), ErrorCode::UnknownField, "notices.json#/notices/0");
    expectRefused(with("files", nlohmann::json::array()), ErrorCode::MissingField, "notices.json#/notices/0");

    nlohmann::json twice = goodNotices();
    twice["notices"].push_back(twice["notices"][0]);
    expectRefused(twice, ErrorCode::Duplicate, "notices.json#/notices/1/id");
    nlohmann::json unused = goodNotices();
    unused["licences"].push_back({{"id", "ISC"}, {"name", "ISC License"}, {"reference", "somewhere"}});
    expectRefused(unused, ErrorCode::Contradiction, "notices.json#/licences/1/id");
    nlohmann::json lost = goodNotices();
    lost["licences"][0]["text"] = "isc.txt";
    expectRefused(lost, ErrorCode::UnknownId, "notices.json#/licences/0/text");
    nlohmann::json wordless = goodNotices();
    wordless["licences"][0].erase("text");
    expectRefused(wordless, ErrorCode::Contradiction, "licences/mit.txt");
    nlohmann::json later = goodNotices();
    later["version"] = 2;
    EXPECT_FALSE(readNotices(later.dump(), {{"mit.txt", "the words"}}).ok());
}

TEST(Notices, ThoseOfTheProgramCanBeRead)
{
    const auto read = readEmbeddedNotices();
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    EXPECT_FALSE(read.value().notices.empty());
}

TEST(Notices, EveryLicenceLineOfADataFileHasOne)
{
    std::set<std::string> found;
    for (const LicenceLine &line : licenceLines()) {
        found.insert(line.file);
        const auto &all = shippedNotices().notices;
        EXPECT_TRUE(std::any_of(all.begin(), all.end(),
            [&](const Notice &notice) { return notice.licence == line.licence && namesFile(notice, line.file); }))
            << line.file << " states the licence " << line.licence << ", but no notice of that licence names the file";
    }
    // That the search finds: these state one.
    for (const char *known : {"attachment-points.csv", "bone-pairs.csv", "bone-pairs-mapping.json",
             "landmarks-in-drawing-units.csv", "range-of-motion.csv", "uberon-terms.csv"})
        EXPECT_TRUE(found.count(std::string("tests/published/") + known)) << known;
}

TEST(Notices, WhatTheyNameIsThere)
{
    for (const Notice &notice : shippedNotices().notices) {
        bool isInProgram = notice.kind != NoticeKind::Data;
        for (const std::string &file : notice.files) {
            EXPECT_TRUE(std::filesystem::exists(std::string(RAPHE_SOURCE_DIR) + "/" + file)) << notice.id << ": " << file;
            isInProgram = isInProgram || file.rfind("resources/", 0) == 0;
        }
        EXPECT_EQ(notice.where == NoticeWhere::Program, isInProgram) << notice.id;
    }
}

TEST(Notices, IdentifiersOfOthersInTheAtlasHaveOne)
{
    std::set<std::string> lists; // "UBERON" of "UBERON:0000303"
    const auto add = [&](const std::string &id) { lists.insert(id.substr(0, id.find(':'))); };
    for (const Structure &structure : atlas().structures()) {
        std::for_each(structure.uberon.begin(), structure.uberon.end(), add);
        std::for_each(structure.fma.begin(), structure.fma.end(), add);
    }
    const std::map<std::string, std::string> notices{{"UBERON", "uberon"}, {"FMA", "fma"}};
    EXPECT_EQ(lists.size(), notices.size());
    for (const std::string &list : lists) {
        ASSERT_TRUE(notices.count(list)) << "no notice is known for identifiers of " << list;
        const Notice *notice = noticeOf(notices.at(list));
        ASSERT_NE(notice, nullptr) << list;
        EXPECT_TRUE(namesFile(*notice, "resources/atlas/muscles-hip.json")) << list;
    }
}

TEST(Notices, CodeSystemsOfTheExchangeHaveOne)
{
    // By the start of a system's address.
    const std::vector<std::pair<std::string, std::string>> owners{{"http://loinc.org", "loinc"},
        {"http://unitsofmeasure.org", "ucum"}, {"http://purl.obolibrary.org/obo/uberon", "uberon"},
        {"http://purl.obolibrary.org/obo/fma", "fma"}, {"http://terminology.hl7.org/", "fhir"}, {"http://hl7.org/fhir/", "fhir"}};
    const nlohmann::json codes = shipped("fhir-codes.json");
    for (const auto &system : codes.at("systems")) {
        const std::string uri = system.at("uri");
        if (uri.rfind("urn:", 0) == 0) // our own, and those of the internet's standards
            continue;
        const auto owner =
            std::find_if(owners.begin(), owners.end(), [&](const auto &known) { return uri.rfind(known.first, 0) == 0; });
        ASSERT_NE(owner, owners.end()) << "no notice is known for the codes of " << uri;
        const Notice *notice = noticeOf(owner->second);
        ASSERT_NE(notice, nullptr) << uri;
        EXPECT_TRUE(namesFile(*notice, "resources/fhir-codes.json")) << uri;
    }
    ASSERT_NE(noticeOf("loinc"), nullptr); // its licence asks for these words
    EXPECT_NE(noticeOf("loinc")->notice.find("This material contains content from LOINC"), std::string::npos);
}

TEST(Notices, EveryLibraryOfTheBuildHasOne)
{
    const std::map<std::string, std::string> notices{
        {"Qt6", "qt"}, {"nlohmann_json", "nlohmann-json"}, {"Eigen3", "eigen"}, {"CLI11", "cli11"}, {"SODIUM", "libsodium"}};
    const std::set<std::string> tools{"PkgConfig"}; // looks for others
    const std::string build = sourceText("CMakeLists.txt") + sourceText("app/CMakeLists.txt") + sourceText("core/CMakeLists.txt");
    const std::regex looksFor("(?:find_package|pkg_check_modules)\\(([A-Za-z0-9_]+)");
    std::set<std::string> found;
    for (std::sregex_iterator it(build.begin(), build.end(), looksFor), end; it != end; ++it)
        if (!tools.count((*it)[1]))
            found.insert((*it)[1]);
    EXPECT_EQ(found.size(), notices.size());
    for (const std::string &library : found) {
        ASSERT_TRUE(notices.count(library)) << "no notice is known for " << library;
        const Notice *notice = noticeOf(notices.at(library));
        ASSERT_NE(notice, nullptr) << library;
        EXPECT_EQ(notice->kind, NoticeKind::Library) << library;
    }
    EXPECT_NE(sourceText("app/paint/Theme.cpp").find("family = QStringLiteral(\"Lato\")"), std::string::npos);
    ASSERT_NE(noticeOf("lato"), nullptr);
    EXPECT_EQ(noticeOf("lato")->kind, NoticeKind::Typeface);
}

// Licences that want their words handed on, not only named; and the words are theirs.
TEST(Notices, LicenceTextsAreWhatOthersHave)
{
    EXPECT_EQ(licenceText("Apache-2.0"), systemFile("/usr/share/common-licenses/Apache-2.0"));
    EXPECT_NE(debianCopyright("nlohmann-json3-dev").find(inOneLine(licenceText("MIT"))), std::string::npos);
    // Debian's copies of these two name other owners; what follows is the same.
    const auto from = [](const std::string &text, const std::string &words) {
        const std::string line = inOneLine(text);
        return line.find(words) == std::string::npos ? std::string("(no '" + words + "')") : line.substr(line.find(words));
    };
    const std::string disclaimer = from(licenceText("BSD-3-Clause"), "IN NO EVENT SHALL THE COPYRIGHT HOLDER");
    EXPECT_NE(debianCopyright("libeigen3-dev").find(from(disclaimer, "BE LIABLE FOR ANY DIRECT")), std::string::npos);
    const std::string sodium = debianCopyright("libsodium-dev");
    const std::string isc = inOneLine(licenceText("ISC"));
    EXPECT_NE(sodium.find(isc.substr(0, isc.find(" AND THE AUTHOR DISCLAIMS"))), std::string::npos);
    EXPECT_NE(sodium.find(from(isc, "OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER")), std::string::npos);
}

TEST(Notices, LicencesOfOwnersHaveTheirOwnersNames)
{
    for (const Notice &notice : shippedNotices().notices)
        if (notice.kind != NoticeKind::Data) {
            EXPECT_NE(notice.who.find("Copyright (c) "), std::string::npos) << notice.id;
            EXPECT_EQ(notice.read, LicenceReading::Page) << notice.id;
        }
    // The owners as the installed headers name them.
    const std::string cli = systemFile("/usr/include/CLI/CLI.hpp");
    EXPECT_NE(cli.find("University of Cincinnati"), std::string::npos);
    EXPECT_NE(noticeOf("cli11")->who.find("University of Cincinnati"), std::string::npos);
    const std::string json = systemFile("/usr/include/nlohmann/json.hpp");
    EXPECT_NE(json.find("2013-2022 Niels Lohmann"), std::string::npos) << "another release: look at its owners' names";
    EXPECT_NE(noticeOf("nlohmann-json")->who.find("2013-2022 Niels Lohmann"), std::string::npos);
}

} // namespace raphe::test
