#include "core/language/LineReading.h"

#include "core/language/LineReader.h"

namespace raphe {

namespace {

template <class T> std::vector<T> allOf(const std::vector<LineChip> &chips)
{
    std::vector<T> out;
    for (const LineChip &chip : chips)
        if (const T *is = std::get_if<T>(&chip.is))
            out.push_back(*is);
    return out;
}

} // namespace

std::vector<Finding> LineReading::findings() const
{
    return allOf<Finding>(chips);
}
std::vector<Measure> LineReading::measures() const
{
    return allOf<Measure>(chips);
}
std::vector<LineQuestion> LineReading::questions() const
{
    return allOf<LineQuestion>(chips);
}
std::vector<LineMistake> LineReading::mistakes() const
{
    return allOf<LineMistake>(chips);
}

LineReading readLine(std::string_view line, const LineWords &words)
{
    return language::LineReader(line, words).run();
}

std::string answered(std::string_view line, const LineQuestion &question, std::size_t choice)
{
    if (choice >= question.choices.size() || question.end > line.size() || question.begin > question.end)
        return std::string(line);
    std::string out(line.substr(0, question.begin));
    out += question.choices[choice].insert;
    out += line.substr(question.end);
    return out;
}

} // namespace raphe
