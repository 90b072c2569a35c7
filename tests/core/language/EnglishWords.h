// The words that are built into the program, for tests that read lines; and a reading in words, for their messages.
#pragma once

#include "core/language/LineReading.h"

#include "tests/support/Content.h"

#include <stdexcept>
#include <string>

namespace raphe::test {

inline const LineWords &englishWords()
{
    static const LineWords made = [] {
        auto list = readEmbeddedWordList("en", atlas());
        if (!list)
            throw std::runtime_error("the built-in words: " + inWords(list.error()));
        return LineWords(atlas(), std::move(list).value());
    }();
    return made;
}

inline LineReading read(std::string_view line)
{
    return readLine(line, englishWords());
}

/// "right quadratus-lumborum tender 2; ask side: psoas".
inline std::string inWords(const LineReading &reading)
{
    std::string out;
    for (const LineChip &chip : reading.chips) {
        out += out.empty() ? "" : "; ";
        if (const auto *f = std::get_if<Finding>(&chip.is)) {
            out += std::string(wordOf(sideWords, f->place.side)) + ' ' + f->place.structure.value;
            out += f->spot ? ' ' + std::string(wordOf(spotWords, *f->spot)) : std::string();
            out += f->at ? " at " + f->at->value : std::string();
            out += f->tenderness ? " tender " + std::to_string(f->tenderness->grade) : std::string();
            out += f->restriction ? " stiff " + std::to_string(f->restriction->grade) : std::string();
            out += f->play ? " play " + std::to_string(f->play->grade) : std::string();
            out += f->sore ? " sore" : "";
            out += f->stiff ? " stiff" : "";
            out += f->clear.tenderness ? " not-tender" : "";
            out += f->clear.motion ? " free" : "";
            out += f->familiar ? " familiar" : "";
            out += f->certain ? " certain" : "";
            out += f->afterComparing ? " compared" : "";
            for (const std::string &texture : f->texture)
                out += ' ' + texture;
            for (const Place &place : f->refersTo)
                out += " to " + std::string(wordOf(sideWords, place.side)) + ' ' + place.structure.value;
            out += f->unable ? " unable: " + *f->unable : std::string();
        } else if (const auto *m = std::get_if<Measure>(&chip.is)) {
            out += std::string(wordOf(sideWords, m->side)) + ' ' + m->movement;
            out += m->value ? ' ' + std::to_string(static_cast<int>(*m->value)) : std::string();
            out += m->painFrom ? " pain from " + std::to_string(static_cast<int>(*m->painFrom)) : std::string();
        } else if (const auto *q = std::get_if<LineQuestion>(&chip.is)) {
            out += "ask " + std::string(wordOf(askAboutWords, q->about)) + ": " + q->words;
        } else {
            const auto &mistake = std::get<LineMistake>(chip.is);
            out += "mistake " + std::string(wordOf(askAboutWords, mistake.about)) + ": " + mistake.words;
        }
    }
    return out;
}

} // namespace raphe::test
