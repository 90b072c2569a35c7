// What a clause leaves open or says wrongly, collected while it is read.
#pragma once

#include "core/language/LineReading.h"
#include "core/language/Mark.h"

#include <string_view>
#include <variant>
#include <vector>

namespace raphe::language {

struct Stretch {
    std::size_t begin = 0; // bytes
    std::size_t end = 0;
};

[[nodiscard]] inline Stretch stretchOf(const Mark &mark)
{
    return {mark.begin, mark.end};
}
[[nodiscard]] inline Stretch spanOf(Stretch a, Stretch b)
{
    return {std::min(a.begin, b.begin), std::max(a.end, b.end)};
}

class Issues {
public:
    explicit Issues(std::string_view line) : m_line(line) { }

    LineQuestion &ask(AskAbout about, Doubt doubt, Stretch at)
    {
        m_questions.push_back({about, doubt, textOf(at), at.begin, at.end, {}, {}});
        return m_questions.back();
    }
    void fault(AskAbout about, LineFault fault, Stretch at)
    {
        m_mistakes.push_back({about, fault, textOf(at), at.begin, at.end});
    }
    [[nodiscard]] bool any() const { return !m_questions.empty() || !m_mistakes.empty(); }
    [[nodiscard]] const std::vector<LineQuestion> &questions() const { return m_questions; }
    [[nodiscard]] const std::vector<LineMistake> &mistakes() const { return m_mistakes; }
    [[nodiscard]] std::string textOf(Stretch at) const { return std::string(m_line.substr(at.begin, at.end - at.begin)); }

private:
    std::string_view m_line;
    std::vector<LineQuestion> m_questions;
    std::vector<LineMistake> m_mistakes;
};

} // namespace raphe::language
