// The reading grade: syllables of words whose count is known, texts whose grade is published, and where it goes wrong.
#include "core/document/Readability.h"
#include "tests/support/Maps.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

namespace raphe::test {

namespace {

const Readability &readability()
{
    static const Readability read = valueOf(readEmbeddedReadability());
    return read;
}

} // namespace

TEST(Readability, CountsTheSyllablesOfWordsThatAreKnown)
{
    const auto known = publishedJson("syllables.json");
    int words = 0;
    for (const auto &group : known.at("words"))
        for (const auto &word : group.at("words")) {
            EXPECT_EQ(readability().syllablesOf(word.get<std::string>()), group.at("syllables").get<int>())
                << word << ", " << known.at("source");
            ++words;
        }
    EXPECT_GT(words, 100);
}

TEST(Readability, GivesTheGradesThatArePublished)
{
    const auto published = publishedJson("reading-grade.json");
    for (const auto &each : published.at("texts")) {
        const ReadingGrade grade = readability().gradeOf({each.at("text").get<std::string>()});
        EXPECT_EQ(grade.words, each.at("words").get<int>()) << each.at("source");
        EXPECT_EQ(grade.syllables, each.at("syllables").get<int>()) << each.at("source");
        EXPECT_NEAR(grade.grade, each.at("grade").get<double>(), 0.05) << each.at("text") << ", " << each.at("source");
    }
}

TEST(Readability, SentencesEndWithTheirTextAndNamesAreNotCountedAtFullLength)
{
    const ReadingGrade two = readability().gradeOf({"The back is sore", "It moves well. Walk!"});
    EXPECT_EQ(two.sentences, 3);
    EXPECT_EQ(two.words, 8);
    EXPECT_EQ(two.longest, 4);
    EXPECT_EQ(two.longestSentence, "The back is sore");
    const std::string text = "Sternocleidomastoid muscle, right side: sore.";
    const ReadingGrade full = readability().gradeOf({text});
    const ReadingGrade named = readability().gradeOf({text}, {"sternocleidomastoid muscle"});
    EXPECT_EQ(full.words, 5);
    EXPECT_EQ(named.words, 4);
    EXPECT_EQ(named.syllables, 4) << "a name is one word of one syllable";
    EXPECT_EQ(named.excepted, std::vector<std::string>{"sternocleidomastoid muscle"});
    EXPECT_GT(full.grade, named.grade + 5);
    EXPECT_EQ(readability().gradeOf({}).grade, 0);
    EXPECT_EQ(readability().gradeOf({"...", "!"}).words, 0);
}

TEST(Readability, RefusesWhatCannotBe)
{
    auto json = shipped("readability.json");
    EXPECT_TRUE(readReadability(json.dump()).ok());
    json["odd"]["being"] = 0;
    auto read = readReadability(json.dump());
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().place, "readability.json#/odd/being");
    json = shipped("readability.json");
    json["surprise"] = 1;
    EXPECT_EQ(readReadability(json.dump()).error().code, ErrorCode::UnknownField);
    EXPECT_FALSE(readReadability("{").ok());
}

} // namespace raphe::test
