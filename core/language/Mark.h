// A marked stretch of a line: what one phrase, name, level or number says, before clauses and sides are made out.
#pragma once

#include "core/language/WordList.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace raphe::language {

enum class MarkKind {
    Side, // side
    Name, // structures, isSure; region when it can be the joint of a movement
    NoLevel, // a level of the spine that no body has
    Spot, // word
    Grade, // grade
    LetterGrade, // text: the letter; number
    Clear, // word
    Unable, // text: the reason
    Familiar, // word
    Certain, // word
    AfterComparing,
    RefersTo, // parts: sides and names
    At, // parts: one name
    Texture, // text
    EndFeel, // word
    Same,
    And,
    Region, // region, no structure of that name
    Move, // movements; none when no joint was named
    Number, // number, upTo for a range
    Pluses, // number
    Unit, // word
    Mode, // word
    Device, // device
    PainFrom,
    Open,
    Break, // text: what it is, when it ends the line
    Colon,
    Unknown
};

enum class SideWord { Left, Right, Both, Midline };

enum class Quality { Tender, Stiff, Play };

/// A grade word with its number, when it has one.
struct GradeSaid {
    Quality quality{};
    std::optional<double> value;
    std::optional<double> upTo; // a range of two numbers
    std::size_t numberBegin = 0; // bytes
    std::size_t numberEnd = 0;
};

struct Mark {
    MarkKind kind{};
    std::size_t begin = 0; // bytes of the line
    std::size_t end = 0;
    LineWord word{};
    SideWord side{};
    std::vector<std::size_t> structures; // of Atlas::structures(), likeliest first
    bool isSure = false; // of the one structure
    bool isShort = false; // a name cut short, which a side may tell apart
    std::optional<std::size_t> region; // of WordList::regions
    std::vector<std::size_t> movements; // of WordList::movements
    GradeSaid grade;
    std::string text;
    Device device{};
    double number = 0;
    std::optional<double> upTo;
    bool bindsLeft = false; // belongs to the structure before it, whatever follows
    bool couldBeLevel = false; // a side whose letter, with the number after it, could be a vertebra
    std::vector<Mark> parts;
};

} // namespace raphe::language
