// Five hundred typed lines with what they mean (lines.json), written before the reader of them and by someone who had not seen
// it. A line is right when everything in it is read exactly as intended, or asked about where a question is due. A finding or
// value on a side that was not meant is the worst fault and is counted by itself.
#include "tests/core/language/EnglishWords.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <fstream>
#include <map>
#include <set>

namespace {

using namespace raphe;
using nlohmann::json;

constexpr double leastShare = 0.95;

json lines()
{
    std::ifstream file(RAPHE_SOURCE_DIR "/tests/quick-lines/lines.json");
    return json::parse(file).at("lines");
}

// The reading in the form of the file, without what is not said.
json formOf(const Finding &f)
{
    json out{{"structure", f.place.structure.value}, {"side", wordOf(sideWords, f.place.side)}};
    if (f.spot)
        out["spot"] = wordOf(spotWords, *f.spot);
    if (f.at)
        out["at"] = f.at->value;
    if (f.tenderness)
        out["tenderness"] = f.tenderness->grade;
    if (f.restriction)
        out["restriction"] = f.restriction->grade;
    if (f.play)
        out["play"] = f.play->grade;
    for (const auto &[name, is] : std::map<std::string, bool>{{"sore", f.sore}, {"stiff", f.stiff}, {"familiar", f.familiar},
             {"certain", f.certain}, {"after_comparing", f.afterComparing}})
        if (is)
            out[name] = true;
    if (f.clear.tenderness && f.clear.motion)
        out["clear"] = true;
    else if (f.clear.any())
        out["clear"] = json::array({f.clear.motion ? "motion" : "tenderness"});
    if (f.unable)
        out["unable"] = *f.unable;
    if (!f.texture.empty())
        out["texture"] = f.texture;
    for (const Place &place : f.refersTo)
        out["refers_to"].push_back({{"structure", place.structure.value}, {"side", wordOf(sideWords, place.side)}});
    return out;
}

json formOf(const Measure &m)
{
    const auto &movements = test::englishWords().list().movements;
    const auto movement =
        std::find_if(movements.begin(), movements.end(), [&](const LineMovement &known) { return known.id == m.movement; });
    const char *unit = movement->unit == MoveUnit::Degrees ? "degrees" : "millimetres";
    json out{{"motion", m.movement}, {"side", wordOf(sideWords, m.side)}, {unit, m.value.value_or(-9999)}};
    return out;
}

template <class T> std::vector<std::string> sorted(const std::vector<T> &read)
{
    std::vector<std::string> out;
    for (const T &one : read)
        out.push_back(formOf(one).dump());
    std::sort(out.begin(), out.end());
    return out;
}

std::vector<std::string> sorted(const json &meant, bool asNumbers)
{
    std::vector<std::string> out;
    for (json one : meant) {
        if (asNumbers)
            for (const char *unit : {"degrees", "millimetres"})
                if (one.contains(unit))
                    one[unit] = one[unit].get<double>();
        out.push_back(one.dump());
    }
    std::sort(out.begin(), out.end());
    return out;
}

// Whether the line asks, or says what is wrong, about these words where they stand as words.
bool asks(const LineReading &reading, const std::string &line, const std::string &about)
{
    const auto isInWord = [&](std::size_t at) {
        return at < line.size() && std::isalpha(static_cast<unsigned char>(line[at])) != 0;
    };
    for (std::size_t begin = line.find(about); begin != std::string::npos; begin = line.find(about, begin + 1)) {
        const std::size_t end = begin + about.size();
        if ((begin > 0 && isInWord(begin - 1)) || isInWord(end))
            continue;
        const auto meets = [&](const auto &open) { return open.begin < end && begin < open.end; };
        const auto questions = reading.questions();
        const auto mistakes = reading.mistakes();
        if (std::any_of(questions.begin(), questions.end(), meets) || std::any_of(mistakes.begin(), mistakes.end(), meets))
            return true;
    }
    return false;
}

struct Verdict {
    bool isRight = false;
    bool hasWrongSide = false;
    std::string seen;
};

Verdict judge(const json &entry)
{
    const std::string line = entry.at("line");
    const json &expect = entry.at("expect");
    const LineReading reading = test::read(line);
    const auto findings = sorted(reading.findings());
    const auto measures = sorted(reading.measures());
    Verdict out;
    out.isRight = findings == sorted(expect.at("findings"), false) && measures == sorted(expect.at("measures"), true);
    for (const json &ask : expect.at("ask"))
        out.isRight = out.isRight && asks(reading, line, ask.at("words"));
    const std::size_t asked = reading.questions().size() + reading.mistakes().size();
    if (expect.at("ask").empty())
        out.isRight = out.isRight && asked == 0;

    std::set<std::string> meant; // structure or movement with a side
    for (const json &one : expect.at("findings"))
        meant.insert(one.at("structure").get<std::string>() + ' ' + one.at("side").get<std::string>());
    for (const json &one : expect.at("measures"))
        meant.insert(one.at("motion").get<std::string>() + ' ' + one.at("side").get<std::string>());
    const auto isMeant = [&](const std::string &what, Side side) {
        return meant.contains(what + ' ' + std::string(wordOf(sideWords, side)));
    };
    for (const Finding &finding : reading.findings())
        out.hasWrongSide = out.hasWrongSide || !isMeant(finding.place.structure.value, finding.place.side);
    for (const Measure &measure : reading.measures())
        out.hasWrongSide = out.hasWrongSide || !isMeant(measure.movement, measure.side);

    for (const auto &one : findings)
        out.seen += "\n    read " + one;
    for (const auto &one : measures)
        out.seen += "\n    read " + one;
    for (const LineQuestion &q : reading.questions())
        out.seen += "\n    asked about " + std::string(wordOf(askAboutWords, q.about)) + ": " + q.words;
    for (const LineMistake &m : reading.mistakes())
        out.seen += "\n    mistake about " + std::string(wordOf(askAboutWords, m.about)) + ": " + m.words;
    return out;
}

TEST(QuickLines, AreReadAsIntendedOrAskedAbout)
{
    int right = 0;
    int wrongSides = 0;
    const json all = lines();
    ASSERT_GT(all.size(), 200U);
    for (const json &entry : all) {
        const Verdict verdict = judge(entry);
        right += verdict.isRight ? 1 : 0;
        wrongSides += verdict.hasWrongSide ? 1 : 0;
        if (!verdict.isRight)
            std::printf("%s  %s%s%s\n    meant %s\n", entry.at("id").get<std::string>().c_str(),
                entry.at("line").get<std::string>().c_str(), verdict.hasWrongSide ? "  (SIDE OR PLACE NOT MEANT)" : "",
                verdict.seen.c_str(), entry.at("expect").dump().c_str());
    }
    std::printf("%d of %zu lines as intended, %d with a side or place that was not meant\n", right, all.size(), wrongSides);
    EXPECT_GE(right, leastShare * static_cast<double>(all.size()));
    EXPECT_EQ(wrongSides, 0);
}

} // namespace
