// Our open identifiers against the rows of Uberon that we use (uberon-terms.csv): the identifier exists, means the
// structure that we give it to, and brings the FMA identifiers that we name.
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <map>
#include <set>

namespace raphe::test {

namespace {

const Table &terms()
{
    static const Table table = publishedTable("uberon-terms.csv");
    return table;
}

const std::map<std::string, std::string> *term(const std::string &id)
{
    for (const auto &row : terms().rows)
        if (row.at("uberon_id") == id)
            return &row;
    return nullptr;
}

/// Lower case, no hyphens, no word 'muscle', 'of' or 'the', so that 'sacro-iliac joint' is 'sacroiliac joint'.
std::string plainest(const std::string &name)
{
    std::string word;
    std::string out;
    for (const char c : name + " ") {
        if (c == '-')
            continue;
        if (c != ' ') {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            continue;
        }
        if (!word.empty() && word != "muscle" && word != "musculus" && word != "of" && word != "the")
            out += (out.empty() ? "" : " ") + word;
        word.clear();
    }
    return out;
}

std::set<std::string> namesOf(const Structure &s)
{
    std::set<std::string> names{plainest(s.names.english), plainest(s.names.latin)};
    std::string words = s.id.value;
    std::replace(words.begin(), words.end(), '-', ' ');
    names.insert(plainest(words));
    for (const std::string &synonym : s.names.synonyms)
        names.insert(plainest(synonym));
    return names;
}

TEST(Uberon, EveryIdentifierMeansOurStructure)
{
    std::size_t checked = 0;
    for (const Structure &s : atlas().structures())
        for (const std::string &id : s.uberon) {
            const auto *row = term(id);
            ASSERT_TRUE(row) << s.id << " is given " << id << ", which is not in uberon-terms.csv; source:" << terms().source;
            EXPECT_TRUE(namesOf(s).contains(plainest(row->at("name"))))
                << s.id << " is given " << id << ", which means '" << row->at("name") << "'; source:" << terms().source;
            ++checked;
        }
    std::cout << "identifiers of Uberon checked: " << checked << '\n';
    EXPECT_GT(checked, 50U);
}

TEST(Uberon, FmaIdentifiersAreThoseOfTheSameTerm)
{
    for (const Structure &s : atlas().structures()) {
        std::set<std::string> theirs;
        for (const std::string &id : s.uberon)
            if (const auto *row = term(id))
                for (const std::string &fma : splitList(row->at("fma")))
                    theirs.insert(fma);
        for (const std::string &fma : s.fma) {
            EXPECT_TRUE(theirs.contains(fma)) << s.id << " is given " << fma << "; source:" << terms().source;
        }
    }
}

TEST(Uberon, NoIdentifierIsGivenTwice)
{
    std::map<std::string, std::string> owner;
    for (const Structure &s : atlas().structures())
        for (const std::string &id : s.uberon) {
            const auto [it, fresh] = owner.emplace(id, s.id.value);
            EXPECT_TRUE(fresh) << id << " stands for " << it->second << " and for " << s.id;
        }
}

TEST(Uberon, WhatTheTableNamesCarriesItsIdentifier)
{
    std::size_t named = 0;
    for (const auto &row : terms().rows)
        for (const Structure &s : atlas().structures()) {
            // Only the scientific names: what the trade says may mean something else in the table.
            if (plainest(row.at("name")) != plainest(s.names.english) && plainest(row.at("name")) != plainest(s.names.latin))
                continue;
            ++named;
            EXPECT_NE(std::find(s.uberon.begin(), s.uberon.end(), row.at("uberon_id")), s.uberon.end())
                << s.id << " should carry " << row.at("uberon_id") << " ('" << row.at("name") << "'); source:" << terms().source;
        }
    std::cout << "structures that the table names: " << named << '\n';
    EXPECT_GT(named, 100U);
}

} // namespace

} // namespace raphe::test
