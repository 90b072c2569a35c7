// What holds for every line, tried on many that are made up of the trade's words by chance.
#include "tests/core/language/EnglishWords.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <random>

namespace {

using namespace raphe;
using test::inWords;
using test::read;

constexpr int tries = 400;

class Lines {
public:
    explicit Lines(unsigned seed) : m_random(seed) { }

    // One clause or two without a comma, as they come; most make sense, some do not.
    std::string clause()
    {
        static const std::vector<std::string> names{"ql", "psoas", "l4/5", "t7", "si", "glute med", "sternum", "rib 5", "levator",
            "c5", "scm", "piri and ql", "knee", "linea alba", "mastoid"};
        static const std::vector<std::string> sides{"r", "l", "r", "l", "both", ""};
        static const std::vector<std::string> said{"t2", "tender 3", "stuck 1", "stiff", "clear", "free", "play 2", "r2", "3",
            "++", "familiar", "ropy", "origin t1", "could not: guarding", "t2 stuck 2", "refers to r heel", "tender 9"};
        static const std::vector<std::string> moves{
            "hip ir r 30 l 40", "knee flex 120 r", "neck flex 40", "slr l 60", "hip rot r 20"};
        switch (m_random() % 6) {
        case 0: return pick(moves);
        case 1: return pick(sides) + ' ' + pick(said);
        case 2: return pick(names) + ' ' + pick(said) + ' ' + pick(sides);
        case 3: return pick(names) + " r " + pick(said) + " l " + pick(said);
        default: return pick(sides) + ' ' + pick(names) + ' ' + pick(said);
        }
    }

    std::string line()
    {
        std::string out = clause();
        for (auto more = m_random() % 3; more > 0; --more)
            out += (m_random() % 4 == 0 ? " " : ", ") + clause();
        return out;
    }

    std::string bytes()
    {
        std::string out(m_random() % 60, ' ');
        for (char &c : out)
            c = static_cast<char>(m_random() % 256);
        return out;
    }

private:
    const std::string &pick(const std::vector<std::string> &from) { return from[m_random() % from.size()]; }
    std::mt19937 m_random;
};

// Each 'r' and 'l' that is a word by itself, through `change`. A level such as 'l4' is none.
template <class F> std::string withSideWords(const std::string &line, F change)
{
    std::string out = line;
    const auto isWordByte = [&](std::size_t at) {
        return at < line.size() && std::isalnum(static_cast<unsigned char>(line[at])) != 0;
    };
    for (std::size_t i = 0; i < out.size(); ++i)
        if ((line[i] == 'r' || line[i] == 'l') && !isWordByte(i + 1) && (i == 0 || !isWordByte(i - 1)))
            out[i] = change(line[i]);
    return out;
}

std::string swapped(const std::string &line)
{
    return withSideWords(line, [](char c) { return c == 'r' ? 'l' : 'r'; });
}

TEST(LineProperties, SwappedSideWordsMirrorTheReading)
{
    Lines lines(1);
    int withSides = 0;
    for (int i = 0; i < tries; ++i) {
        const std::string line = lines.line();
        if (line.find("r2") != std::string::npos)
            continue;
        auto reading = read(line);
        const auto other = read(swapped(line));
        ASSERT_EQ(reading.chips.size(), other.chips.size()) << line << "\n" << inWords(reading) << "\n" << inWords(other);
        // What 'both' gives comes right first in either image.
        const auto placeOf = [](const LineChip &chip) {
            const auto *f = std::get_if<Finding>(&chip.is);
            const auto *m = std::get_if<Measure>(&chip.is);
            return std::tuple(chip.begin,
                f       ? f->place.structure.value
                    : m ? m->movement
                        : std::string(),
                f       ? f->place.side
                    : m ? m->side
                        : Side::Midline);
        };
        auto image = other.chips;
        for (LineChip &chip : image) {
            if (auto *f = std::get_if<Finding>(&chip.is)) {
                *f = mirrored(*f);
                if (f->unable) // as typed
                    f->unable = swapped(*f->unable);
            }
            if (auto *m = std::get_if<Measure>(&chip.is))
                m->side = mirrored(m->side);
        }
        const auto byPlace = [&](const LineChip &a, const LineChip &b) { return placeOf(a) < placeOf(b); };
        std::stable_sort(image.begin(), image.end(), byPlace);
        std::stable_sort(reading.chips.begin(), reading.chips.end(), byPlace);
        for (std::size_t c = 0; c < image.size(); ++c) {
            EXPECT_EQ(image[c].begin, reading.chips[c].begin) << line;
            // 'l 3' could be a vertebra and is asked, 'r 3' could not: either way nothing is recorded.
            EXPECT_EQ(std::min<std::size_t>(image[c].is.index(), 2), std::min<std::size_t>(reading.chips[c].is.index(), 2))
                << line;
            if (reading.chips[c].is.index() < 2) {
                EXPECT_EQ(image[c].is, reading.chips[c].is) << line << "\n" << inWords(reading);
                ++withSides;
            }
        }
    }
    EXPECT_GT(withSides, tries / 2) << "too little was read to say anything";
}

TEST(LineProperties, NoSideComesFromNowhere)
{
    Lines lines(2);
    for (int i = 0; i < tries; ++i) {
        // Without any word for the left nothing is on the left.
        std::string rightOnly = withSideWords(lines.line(), [](char) { return 'r'; });
        for (std::size_t at; (at = rightOnly.find("both")) != std::string::npos;)
            rightOnly.replace(at, 4, "r");
        for (const Finding &finding : read(rightOnly).findings())
            EXPECT_NE(finding.place.side, Side::Left) << rightOnly;
        for (const Measure &measure : read(rightOnly).measures())
            EXPECT_NE(measure.side, Side::Left) << rightOnly;
    }
}

TEST(LineProperties, AnyBytesGiveChipsWithinTheLine)
{
    Lines lines(3);
    for (int i = 0; i < tries * 5; ++i) {
        std::string line = lines.bytes();
        if (i % 2 == 0)
            line += lines.line() + lines.bytes();
        for (const LineChip &chip : read(line).chips) {
            EXPECT_LT(chip.begin, chip.end);
            EXPECT_LE(chip.end, line.size());
        }
        for (const LineCompletion &one : completions(line, line.size() / 2, test::englishWords()))
            EXPECT_LE(one.end, line.size());
    }
}

TEST(LineProperties, AFurtherClauseLeavesTheEarlierChipsAlone)
{
    Lines lines(4);
    for (int i = 0; i < tries; ++i) {
        const std::string line = lines.line();
        const auto before = read(line).chips;
        const auto after = read(line + ", l soleus stuck 2").chips;
        ASSERT_EQ(after.size(), before.size() + 1) << line;
        for (std::size_t c = 0; c < before.size(); ++c)
            EXPECT_EQ(after[c], before[c]) << line;
    }
}

TEST(LineProperties, AnAnswerSettlesItsQuestion)
{
    Lines lines(5);
    int answeredCount = 0;
    for (int i = 0; i < tries; ++i) {
        const std::string line = lines.line();
        for (const LineQuestion &question : read(line).questions())
            for (std::size_t choice = 0; choice < question.choices.size(); ++choice) {
                ++answeredCount;
                const std::string mended = answered(line, question, choice);
                for (const LineQuestion &still : read(mended).questions())
                    EXPECT_FALSE(still.begin == question.begin && still.doubt == question.doubt && still.words == question.words)
                        << line << "\n"
                        << mended;
            }
    }
    EXPECT_GT(answeredCount, tries / 2);
}

TEST(LineProperties, EveryStructureIsReadByItsSureName)
{
    // What a question puts into the line must be read as what it stands for.
    const auto &words = test::englishWords();
    const auto &structures = test::atlas().structures();
    for (std::size_t i = 0; i < structures.size(); ++i) {
        const std::string name = words.names().sureName(test::atlas(), i);
        const std::string line = (structures[i].paired ? "right " : "") + name + " tender 2";
        const auto findings = read(line).findings();
        ASSERT_EQ(findings.size(), 1U) << line << ": " << inWords(read(line));
        EXPECT_EQ(findings.front().place.structure, structures[i].id) << line;
    }
}

} // namespace
