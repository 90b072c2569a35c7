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

TEST(Uberon, TheTableHoldsNoRowThatIsNotUsed)
{
    std::set<std::string> used;
    for (const Structure &s : atlas().structures())
        used.insert(s.uberon.begin(), s.uberon.end());
    for (const auto &row : terms().rows) {
        EXPECT_TRUE(used.contains(row.at("uberon_id"))) << row.at("name");
    }
}

} // namespace

} // namespace raphe::test
