// Search by name: distance against a plain table; finds every structure by each of its names, and when they are misspelt.
#include "core/anatomy/NameSearch.h"

#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <random>

namespace raphe::test {

namespace {

const NameSearch &search()
{
    static const NameSearch made(atlas());
    return made;
}

std::vector<std::string> found(const std::string &typed, std::size_t most = 8)
{
    std::vector<std::string> ids;
    for (const NameHit &hit : search().find(typed, most))
        ids.push_back(hit.structure.value);
    return ids;
}

bool isAmong(const std::vector<std::string> &ids, const std::string &id)
{
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

// The textbook's recursion for optimal string alignment, over the whole table.
int plainEdits(const std::string &a, const std::string &b)
{
    std::vector<std::vector<int>> d(a.size() + 1, std::vector<int>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = static_cast<int>(i + j);
                continue;
            }
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

// One slip of the fingers: a letter left out, doubled, replaced, or two swapped.
std::string misspelt(std::string name, std::mt19937 &random)
{
    const std::size_t at = random() % (name.size() - 1);
    switch (random() % 4) {
    case 0: return name.erase(at, 1);
    case 1: return name.insert(at, 1, name[at]);
    case 2: name[at] = static_cast<char>('a' + static_cast<char>(random() % 26)); return name;
    default: std::swap(name[at], name[at + 1]); return name;
    }
}

} // namespace

TEST(NameSearch, DistanceIsThatOfThePlainTable)
{
    std::mt19937 random(7); // NOLINT(cert-msc32-c,cert-msc51-cpp)
    for (int round = 0; round < 4000; ++round) {
        const auto word = [&] {
            std::string letters(1 + random() % 9, 'a');
            for (char &c : letters)
                c = static_cast<char>('a' + static_cast<char>(random() % 3));
            return letters;
        };
        const std::string a = word();
        const std::string b = word();
        int begun = plainEdits(a, "");
        for (std::size_t length = 1; length <= b.size(); ++length)
            begun = std::min(begun, plainEdits(a, b.substr(0, length)));
        for (const int most : {0, 1, 2, 3}) {
            const Edits edits = editsBetween(a, b, most);
            EXPECT_EQ(edits.whole, std::min(plainEdits(a, b), most + 1)) << a << " and " << b << ", at most " << most;
            EXPECT_EQ(edits.begun, std::min(begun, most + 1)) << a << " beginning " << b << ", at most " << most;
        }
    }
}

TEST(NameSearch, FoldsCaseAccentsAndPunctuation)
{
    EXPECT_EQ(foldedName("  Großer Gesäßmuskel "), "grosser gesassmuskel");
    EXPECT_EQ(foldedName("L4/L5"), "l4 l5");
    EXPECT_EQ(foldedName("glúteo mayor"), "gluteo mayor");
    EXPECT_EQ(foldedName("adam's apple"), "adams apple");
    EXPECT_EQ(foldedName("--"), "");
}

TEST(NameSearch, FindsEveryStructureByEachOfItsNames)
{
    for (const Structure &s : atlas().structures()) {
        std::vector<std::string> names{s.names.english, s.names.latin};
        names.insert(names.end(), s.names.synonyms.begin(), s.names.synonyms.end());
        for (const std::string &name : names) {
            EXPECT_TRUE(isAmong(found(name), s.id.value)) << s.id.value << " by '" << name << "'";
        }
    }
}

TEST(NameSearch, TheVeryNameComesFirst)
{
    for (const Structure &s : atlas().structures()) {
        const auto hits = search().find(s.names.english, 1);
        ASSERT_FALSE(hits.empty()) << s.names.english;
        EXPECT_EQ(foldedName(hits.front().name), foldedName(s.names.english));
    }
}

TEST(NameSearch, OneSlipOfTheFingersRarelyMatters)
{
    std::mt19937 random(20261125); // NOLINT(cert-msc32-c,cert-msc51-cpp)
    int tried = 0;
    int missed = 0;
    for (const Structure &s : atlas().structures()) {
        if (s.names.english.size() < 6)
            continue;
        const std::string typed = misspelt(s.names.english, random);
        ++tried;
        if (!isAmong(found(typed), s.id.value))
            ++missed;
    }
    std::cout << "misspelt names: " << tried - missed << " of " << tried << " found among the first eight\n";
    EXPECT_LT(missed, tried / 50);
}

TEST(NameSearch, WhatPractitionersTypeIsUnderstood)
{
    // From memory of how the trade abbreviates; no source.
    const std::vector<std::pair<std::string, std::string>> typed{{"glute max", "gluteus-maximus"}, {"glutmax", "gluteus-maximus"},
        {"QL", "quadratus-lumborum"}, {"scm", "sternocleidomastoid"}, {"tfl", "tensor-fasciae-latae"},
        {"itb", "iliotibial-tract"}, {"pirifomis", "piriformis"}, {"sterno cleido mastoid", "sternocleidomastoid"},
        {"ilio psoas fascia", "iliopsoas-fascia"}, {"lat dorsi", "latissimus-dorsi"}, {"M. soleus", "soleus"},
        {"tmj", "temporomandibular-joint"}, {"l4/5", "l4-l5"}, {"kneecap", "patella"}, {"maximus gluteus", "gluteus-maximus"},
        {"Kniescheibe", "patella"}, {"rótula", "patella"}, {"achilles", "calcaneal-tendon"},
        {"psis", "posterior-superior-iliac-spine"}, {"peroneus longus", "fibularis-longus"},
        {"popliteal foss", "posterior-region-of-knee"}, {"scalenes", "scalenus-anterior"}};
    for (const auto &[text, id] : typed) {
        EXPECT_TRUE(isAmong(found(text), id)) << text << " should offer " << id;
    }
}

TEST(NameSearch, NonsenseFindsNothing)
{
    EXPECT_TRUE(found("xqzzwv").empty());
    EXPECT_TRUE(found("").empty());
    EXPECT_TRUE(found("   ").empty());
    EXPECT_TRUE(search().find("soleus", 0).empty());
    EXPECT_TRUE(found(std::string(5000, 'q')).empty()) << "a very long line is no trouble";
}

} // namespace raphe::test
