// The walk over a line that marks what each stretch of it says; marksOf (Marker.h) is its only user. One object a line.
#pragma once

#include "core/language/Levels.h"
#include "core/language/Mark.h"
#include "core/language/NameReader.h"

#include <optional>
#include <string_view>
#include <vector>

namespace raphe::language {

/// The meaning of this kind that a phrase has; nullptr when it has none.
[[nodiscard]] const LineWords::Meaning *meaningOf(const std::optional<PhraseFound> &phrase, LineWords::Kind kind);

class LineMarker {
public:
    LineMarker(std::string_view line, const LineWords &words);
    [[nodiscard]] std::vector<Mark> run();

private:
    // What stands before a 't3' decides what it may be.
    enum class Before { Nothing, Structure, Spine, Grade };

    void step();
    Mark &add(MarkKind kind, std::size_t end);
    void addBreak(MarkKind kind);
    void addBare(MarkKind kind, double number, std::size_t end);
    // A point behind a whole word ends a clause, as a comma does; 'glute. max.' and 'r. hip' are cut short.
    [[nodiscard]] bool isFullStop(std::size_t token) const;
    // 'slr r: 60 l: 80', 'hip flexion: 90': within one clause.
    [[nodiscard]] bool isColonWithin() const;
    void addNumber();
    // 'r - 5', 'r-30' in a row of measured values: a dash, or less than nothing.
    bool addDoubtfulMinus();
    bool addGradeAfterPluses();
    // 't3', 'l4/5', 'r2', and in a row of measured values 'r40'.
    bool addLetterAndNumber();
    bool addLetterGrade(const std::optional<Level> &level);
    void addPhraseOrName();
    // 'l spine flexion', but 'l spine of scapula' is the left one.
    void addRegionOfSeveralWords(const PhraseFound &phrase);
    // The one meaning that a misspelt word is nearest to, if no more than `edits` away. Words that say nothing are no reading:
    // they would make an unknown word vanish.
    [[nodiscard]] std::optional<LineWords::Meaning> misspeltPhrase(std::size_t token, int edits) const;
    void addMisspelt(const LineWords::Meaning &meaning);
    // 'hip flexion', by its whole name.
    void addWholeMove(std::size_t movement, std::size_t end);
    // Movements of the joint that was named before in the line.
    bool addMoveOf(const std::optional<PhraseFound> &phrase);
    void addMove(std::vector<std::size_t> movements, std::size_t end);
    void addShared(const LineWords::Meaning &shared, std::size_t end);
    void addName(const NameFound &name);
    // The joint that movements after this name belong to.
    [[nodiscard]] std::optional<std::size_t> regionOf(std::size_t token, const NameFound &name) const;
    bool addSide(std::size_t end);
    [[nodiscard]] static std::optional<SideWord> sideOf(LineWord word);
    void addWord(LineWord word, std::size_t end);
    void addClear(LineWord word, std::size_t end);
    void addSideWord(LineWord word, std::size_t end);
    void addUnable(std::size_t end);
    // 'not tender / stiff': how far the 'not' reaches is open.
    [[nodiscard]] bool isNegatedToo() const;
    [[nodiscard]] bool isFiller(std::size_t token) const;
    [[nodiscard]] std::optional<SideWord> sideAt(std::size_t token) const;
    // The side of the comparison is no side of a finding.
    void addAfterComparing(std::size_t end);
    // Parts are marked by going on as usual and taking the marks back.
    void addRefersTo(std::size_t end);
    [[nodiscard]] bool isSpot(std::size_t token) const;
    [[nodiscard]] bool isAnd(std::size_t token) const;
    void takeTarget(std::size_t into);
    void addAt(std::size_t end);
    void addPainFrom(std::size_t end);
    void addSuperficialFascia(std::size_t end);

    std::string_view m_line;
    const LineWords &m_words;
    std::vector<Token> m_tokens;
    NameReader m_reader;
    std::vector<Mark> m_marks;
    std::size_t m_at = 0;
    Before m_before = Before::Nothing;
    Before m_lineStructure = Before::Nothing;
    std::optional<std::size_t> m_region; // the joint that was named last
    bool m_hasName = false; // since the last break
    bool m_inMeasure = false; // a movement was named since the last break or name
};

} // namespace raphe::language
