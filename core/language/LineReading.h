// A line of trade talk to findings and measurements. What a line leaves open is asked, what makes no sense is named, and
// neither is recorded; nothing is guessed. Plain values and functions; any thread; any bytes are taken.
#pragma once

#include "core/language/LineWords.h"
#include "core/record/Measure.h"
#include "core/record/Visit.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace raphe {

enum class AskAbout { Structure, Side, Scale, Grade, Spot, Amount };
inline constexpr WordTable<AskAbout, 6> askAboutWords{{{AskAbout::Structure, "structure"}, {AskAbout::Side, "side"},
    {AskAbout::Scale, "scale"}, {AskAbout::Grade, "grade"}, {AskAbout::Spot, "spot"}, {AskAbout::Amount, "value"}}};

/// Why a question is asked; the sentence for it is in app/words.
enum class Doubt {
    NameOfSeveral, // the words fit several structures, or only the beginning of one
    SideMissing,
    NamesSideBySide, // 'erector t7': nothing parts them, and of the first nothing is said
    SideOfEither, // the side word could close one finding or open the next
    OnlyMidline, // a side of what exists in the midline only
    SideOfVertebra, // the vertebra is in the midline; its segments and parts have sides
    LevelOrSide, // 'l 5'
    LetterAndNumber, // 't3' after something of the spine, 'r2'
    NumberWithoutScale,
    GradeRange, // '2-3'
    NoSpotThere, // a joint has no origin
    NoSuchEnd, // it does not attach there
    EitherEnd, // it attaches there with both ends
    PlayOfBone, // joint play belongs to a joint
    MovementOfSeveral,
    JointMissing, // a movement of no named joint
    ValueMissing,
    ValueBeyond, // more or less than a body does
    UnitUnlike, // millimetres of a movement in degrees
    UnitMissing, // millimetres or centimetres
    SayAnew, // 'other side', 'not', 'more': what they do to the rest is not for a program to guess
    NothingSaid, // a place, and not what was found there
    ReasonMissing // unable, and not why
};

/// What would take the place of the words.
struct LineChoice {
    std::string insert;
    std::optional<StructureId> structure; // when it stands for one
    bool operator==(const LineChoice &) const = default;
};

struct LineQuestion {
    AskAbout about{};
    Doubt doubt{};
    std::string words; // as typed
    std::size_t begin = 0; // of the words, in bytes of the line
    std::size_t end = 0;
    std::vector<LineChoice> choices; // none: the words have to be typed anew
    std::string movement; // id, where it is about one
    bool operator==(const LineQuestion &) const = default;
};

enum class LineFault {
    UnknownWords,
    NoSuchLevel, // of the spine
    BothSides, // of one place
    GradeBeyondScale,
    GradeTwice,
    Contradiction, // clear, and a grade of the same
    NothingBefore, // a clause without a structure, and none before it
    PlayOfSoftTissue,
    NotOfMovement, // a word of palpation beside a movement
    SideTwice // two values of one side
};

struct LineMistake {
    AskAbout about{};
    LineFault fault{};
    std::string words;
    std::size_t begin = 0;
    std::size_t end = 0;
    bool operator==(const LineMistake &) const = default;
};

/// One stretch of the line and what it was read as. Two findings ('both') share a stretch.
struct LineChip {
    std::size_t begin = 0; // bytes
    std::size_t end = 0;
    std::variant<Finding, Measure, LineQuestion, LineMistake> is;
    bool operator==(const LineChip &) const = default;
};

struct LineReading {
    std::vector<LineChip> chips; // in the order of the line
    [[nodiscard]] std::vector<Finding> findings() const;
    [[nodiscard]] std::vector<Measure> measures() const;
    [[nodiscard]] std::vector<LineQuestion> questions() const;
    [[nodiscard]] std::vector<LineMistake> mistakes() const;
};

[[nodiscard]] LineReading readLine(std::string_view line, const LineWords &words);

/// The line with the words that were asked about replaced by the choice; the line itself when there is no such choice.
[[nodiscard]] std::string answered(std::string_view line, const LineQuestion &question, std::size_t choice);

/// What could be typed next.
struct LineCompletion {
    std::string insert; // takes the place of the bytes from begin to end
    std::size_t begin = 0;
    std::size_t end = 0;
    std::optional<StructureId> structure; // when it is a name
    bool operator==(const LineCompletion &) const = default;
};
/// For the word or words that end at the cursor (in bytes): names, then movements and words of the trade; best first.
[[nodiscard]] std::vector<LineCompletion> completions(
    std::string_view line, std::size_t cursor, const LineWords &words, std::size_t most = 8);

} // namespace raphe
