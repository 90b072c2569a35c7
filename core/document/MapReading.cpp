#include "core/document/MapReading.h"

namespace raphe {

std::vector<std::string> textsOf(const VisitMap &map)
{
    std::vector<std::string> out{map.title};
    out.insert(out.end(), map.warnings.begin(), map.warnings.end());
    if (!map.lines.empty())
        out.push_back(map.foundTitle);
    for (const MapLine &line : map.lines)
        out.push_back(line.place + ": " + line.finding);
    for (const MapSection &section : map.sections) {
        out.push_back(section.title);
        for (const MapWord &word : section.words)
            out.push_back(
                word.lead.empty() || word.lead.ends_with(':') ? word.lead + " " + word.text : word.lead + ". " + word.text);
    }
    return out;
}

ReadingGrade gradeOf(const Readability &readability, const VisitMap &map)
{
    return map.language == Language::English ? readability.gradeOf(textsOf(map), map.names) : ReadingGrade{};
}

} // namespace raphe
