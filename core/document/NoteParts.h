// What written records are made of: labelled lines in sections of parts, the same for text and for paper. Plain values.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace raphe {

struct NoteLine {
    std::string label; // empty: the text stands alone
    std::string text; // may have several lines
    std::string asOf; // where it was not asked or written anew at this visit: since when it stands so; else empty
    bool operator==(const NoteLine &) const = default;
};

struct NoteSection {
    std::string title; // empty: the lines stand under the part's title
    std::vector<NoteLine> lines; // not empty
    bool isDerived = false; // reckoned by the program from what stands in other sections
};

struct NotePart {
    std::string title;
    std::vector<NoteSection> sections;
};

/// A part while it is written. Sections without lines, and lines without words, are left out.
class NotePartWriter {
public:
    explicit NotePartWriter(std::string title) { m_part.title = std::move(title); }

    void section(std::string title, bool isDerived = false) { m_part.sections.push_back({std::move(title), {}, isDerived}); }
    void line(std::string label, std::string text, std::string asOf = {})
    {
        if (text.empty())
            return;
        if (m_part.sections.empty())
            section({});
        m_part.sections.back().lines.push_back({std::move(label), std::move(text), std::move(asOf)});
    }
    [[nodiscard]] NotePart take()
    {
        std::erase_if(m_part.sections, [](const NoteSection &section) { return section.lines.empty(); });
        return std::move(m_part);
    }

private:
    NotePart m_part;
};

} // namespace raphe
