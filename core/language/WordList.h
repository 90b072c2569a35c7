// The words of the trade in one language: content of resources/language/<language>.json as plain values. Nothing of any
// language stands in the code; what a word does stands in the closed list below.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/base/Result.h"
#include "core/record/Measure.h"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// What a word of the trade does in a line.
enum class LineWord {
    Left,
    Right,
    Both,
    Midline,
    Tender,
    Stiff,
    Play,
    Normal,
    Clear,
    ClearOfTenderness,
    ClearOfMotion,
    Unable,
    Familiar,
    NotFamiliar,
    Certain,
    NotCertain,
    AfterComparing,
    RefersTo,
    At,
    And,
    Same,
    Belly,
    Origin,
    Insertion,
    Border,
    Junction,
    EndFeelSoft,
    EndFeelFirm,
    EndFeelHard,
    EndFeelSpringy,
    EndFeelEmpty,
    EndFeelSpasm,
    Active,
    Passive,
    PainFrom,
    Degrees,
    Millimetres,
    Centimetres,
    SuperficialFasciaOf,
    Open, // its sense hangs on more than a line can tell: asked about
    Filler
};
inline constexpr WordTable<LineWord, 41> lineWordWords{{{LineWord::Left, "left"}, {LineWord::Right, "right"},
    {LineWord::Both, "both"}, {LineWord::Midline, "midline"}, {LineWord::Tender, "tender"}, {LineWord::Stiff, "stiff"},
    {LineWord::Play, "play"}, {LineWord::Normal, "normal"}, {LineWord::Clear, "clear"},
    {LineWord::ClearOfTenderness, "clear-of-tenderness"}, {LineWord::ClearOfMotion, "clear-of-motion"},
    {LineWord::Unable, "unable"}, {LineWord::Familiar, "familiar"}, {LineWord::NotFamiliar, "not-familiar"},
    {LineWord::Certain, "certain"}, {LineWord::NotCertain, "not-certain"}, {LineWord::AfterComparing, "after-comparing"},
    {LineWord::RefersTo, "refers-to"}, {LineWord::At, "at"}, {LineWord::And, "and"}, {LineWord::Same, "same"},
    {LineWord::Belly, "belly"}, {LineWord::Origin, "origin"}, {LineWord::Insertion, "insertion"}, {LineWord::Border, "border"},
    {LineWord::Junction, "junction"}, {LineWord::EndFeelSoft, "end-feel-soft"}, {LineWord::EndFeelFirm, "end-feel-firm"},
    {LineWord::EndFeelHard, "end-feel-hard"}, {LineWord::EndFeelSpringy, "end-feel-springy"},
    {LineWord::EndFeelEmpty, "end-feel-empty"}, {LineWord::EndFeelSpasm, "end-feel-spasm"}, {LineWord::Active, "active"},
    {LineWord::Passive, "passive"}, {LineWord::PainFrom, "pain-from"}, {LineWord::Open, "open"}, {LineWord::Degrees, "degrees"},
    {LineWord::Millimetres, "millimetres"}, {LineWord::Centimetres, "centimetres"},
    {LineWord::SuperficialFasciaOf, "superficial-fascia-of"}, {LineWord::Filler, "filler"}}};

enum class MoveUnit { Degrees, Millimetres };
inline constexpr WordTable<MoveUnit, 2> moveUnitWords{{{MoveUnit::Degrees, "degrees"}, {MoveUnit::Millimetres, "millimetres"}}};

/// A joint or stretch of the body that movements are said of.
struct MoveRegion {
    std::string id;
    std::vector<std::string> says;
    std::vector<StructureId> joints; // whose names say it too
};

struct LineMovement {
    std::string id;
    std::string region; // of MoveRegion
    std::vector<std::string> also; // further regions after which its words are understood
    std::vector<std::string> says; // after the region's name
    std::vector<std::string> unclear; // after the region's name; other movements share them
    std::vector<std::string> alone; // without it; the first is how a question says it
    bool hasSides = true;
    double least = 0; // a typed value beyond is asked about
    double most = 0;
    MoveUnit unit = MoveUnit::Degrees;
    bool needsUnit = false; // people say it in millimetres and in centimetres

    /// Its words are understood after the name of this region.
    [[nodiscard]] bool isOf(const std::string &named) const
    {
        return region == named || std::find(also.begin(), also.end(), named) != also.end();
    }
};

struct WordList {
    std::string language; // ISO 639-1
    std::vector<std::pair<LineWord, std::vector<std::string>>> words;
    std::vector<std::string> textures;
    std::vector<std::string> leftOut; // words of a name that may be left out where one structure remains
    std::vector<std::string> joiners; // words of a name that say nothing
    struct Says {
        std::vector<std::string> says;
        std::vector<StructureId> structures;
    };
    std::vector<Says> shortForms; // one structure each
    std::vector<Says> shared; // always asked
    /// A letter glued to a number.
    struct GradeLetter {
        std::string letter;
        std::vector<std::string> grades; // what it may mean, in words of the trade, the number following
        bool afterStructure = false; // directly after a structure it is sure, and the first of them
    };
    std::vector<GradeLetter> gradeLetters;
    struct SpineLetter {
        std::string letter;
        std::string means; // as ids spell it
    };
    std::vector<SpineLetter> spine;
    std::vector<MoveRegion> regions;
    std::vector<LineMovement> movements;
    struct DeviceName {
        Device device{};
        std::vector<std::string> says;
    };
    std::vector<DeviceName> devices;
    /// Of a line that says what was done. Units and leads are single words.
    struct Work {
        std::vector<std::string> begins; // what such a line begins with
        std::vector<std::string> leads; // say nothing before a technique, a time or a suction
        std::vector<std::string> seconds;
        std::vector<std::string> minutes;
        std::vector<std::string> kilopascals;
    };
    Work work;
};

/// Fails with file and JSON pointer for unknown fields, words and ids, an empty list, and a phrase said twice with two meanings.
[[nodiscard]] Result<WordList> readWordList(std::string_view text, const std::string &file, const Atlas &atlas);
/// The list that is built into the program; fails when there is none for the language.
[[nodiscard]] Result<WordList> readEmbeddedWordList(const std::string &language, const Atlas &atlas);

} // namespace raphe
