// Typed lines: any bytes give chips within the line. What was read can be kept in a visit and read back equal; the questions
// name what stands in the line, and a line that is mended by an answer is a line again. Reads the real atlas and words.
#include "tests/fuzz/Expect.h"

#include "core/anatomy/AtlasReader.h"
#include "core/base/Utf8.h"
#include "core/language/LineReading.h"
#include "core/record/VisitJson.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace {

using namespace raphe;
using fuzz::expect;

std::string textOf(const std::filesystem::path &path)
{
    std::ifstream file(path);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

const Atlas &atlas()
{
    static const Atlas made = [] {
        std::vector<NamedText> files;
        for (const auto &entry : std::filesystem::directory_iterator(RAPHE_SOURCE_DIR "/resources/atlas"))
            files.push_back({entry.path().filename().string(), textOf(entry.path())});
        auto read = readAtlas(files);
        expect(read.ok(), "the atlas can be read");
        return std::move(read).value();
    }();
    return made;
}

const LineWords &words()
{
    static const LineWords made = [] {
        auto list = readWordList(textOf(RAPHE_SOURCE_DIR "/resources/language/en.json"), "en.json", atlas());
        expect(list.ok(), "the words can be read");
        return LineWords(atlas(), std::move(list).value());
    }();
    return made;
}

void expectKept(const Visit &visit)
{
    const std::string text = writeVisit(visit);
    const auto again = readVisit(text, "written.json", atlas());
    expect(again.ok(), "what was read can be kept",
        again ? std::string() : again.error().place + ": " + again.error().detail + "\n" + text);
    expect(again.value() == visit, "what was kept reads back equal", text);
}

void expectGood(const std::string &line, const LineReading &reading)
{
    for (const LineChip &chip : reading.chips) {
        expect(chip.begin < chip.end && chip.end <= line.size(), "a chip has its stretch of the line", line);
        Visit visit;
        if (const auto *finding = std::get_if<Finding>(&chip.is))
            visit.findings = {*finding};
        if (const auto *measure = std::get_if<Measure>(&chip.is))
            visit.measures = {*measure};
        if (isUtf8(line)) // a reason is kept as typed
            expectKept(visit);
    }
    for (const LineQuestion &question : reading.questions()) {
        expect(question.begin < question.end && question.end <= line.size(), "a question is about words of the line", line);
        expect(line.substr(question.begin, question.end - question.begin) == question.words, "its words stand there", line);
    }
    for (const LineMistake &mistake : reading.mistakes())
        expect(mistake.begin < mistake.end && mistake.end <= line.size(), "a mistake is in words of the line", line);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string line(data, data + std::min<std::size_t>(size, 400));
    const LineReading reading = readLine(line, words());
    expectGood(line, reading);
    for (const LineQuestion &question : reading.questions())
        if (!question.choices.empty()) {
            const std::string mended = answered(line, question, line.size() % question.choices.size());
            expectGood(mended, readLine(mended, words()));
            break;
        }
    for (const LineCompletion &one : completions(line, line.size(), words()))
        expect(one.begin <= one.end && one.end <= line.size(), "a completion has its stretch of the line", line);
    return 0;
}
