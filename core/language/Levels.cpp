#include "core/language/Levels.h"

#include <algorithm>
#include <charconv>

namespace raphe::language {

namespace {

// Ids of vertebrae and segments are made of a letter and a number ('vertebra-l4', 'l4-l5').
const std::string vertebraPrefix = "vertebra-";

std::optional<int> wholeNumber(const std::string &text)
{
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value > 99)
        return {};
    return value;
}

const std::string *spineLetter(const std::string &typed, const LineWords &words)
{
    for (const WordList::SpineLetter &letter : words.list().spine)
        if (letter.letter == typed)
            return &letter.means;
    return nullptr;
}

std::optional<std::size_t> indexOf(const std::string &id, const LineWords &words)
{
    const Structure *s = words.atlas().find(StructureId{id});
    if (!s)
        return {};
    return static_cast<std::size_t>(s - words.atlas().structures().data());
}

// All segments in order from the head down, as they meet at their vertebrae.
std::vector<std::size_t> segmentsBetween(const std::string &upper, const std::string &lower, const LineWords &words)
{
    std::vector<std::size_t> out;
    std::string level = upper;
    while (level != lower && out.size() < 30) {
        const std::string prefix = level + "-";
        const auto &all = words.atlas().structures();
        const auto next = std::find_if(all.begin(), all.end(),
            [&](const Structure &s) { return s.id.value.starts_with(prefix) && words.atlas().isSpinalSegment(s.id); });
        if (next == all.end())
            return {};
        out.push_back(static_cast<std::size_t>(next - all.begin()));
        level = next->id.value.substr(prefix.size());
    }
    return out;
}

bool isGlued(const std::vector<Token> &tokens, std::size_t at, TokenKind kind)
{
    return at < tokens.size() && tokens[at].kind == kind && tokens[at].glued;
}

} // namespace

std::optional<std::size_t> vertebra(const std::string &letter, int number, const LineWords &words)
{
    const std::string *means = spineLetter(letter, words);
    return means ? indexOf(vertebraPrefix + *means + std::to_string(number), words) : std::nullopt;
}

std::optional<Level> levelAt(const std::vector<Token> &tokens, std::size_t at, const LineWords &words)
{
    const std::string *letter = tokens[at].kind == TokenKind::Word ? spineLetter(tokens[at].text, words) : nullptr;
    if (!letter || !isGlued(tokens, at + 1, TokenKind::Number))
        return {};
    const auto first = wholeNumber(tokens[at + 1].text);
    if (!first)
        return {};
    // What follows may be '/5', '-5', '/l5', 'l5' or nothing.
    std::size_t next = at + 2;
    if (isGlued(tokens, next, TokenKind::Slash) || isGlued(tokens, next, TokenKind::Dash))
        ++next;
    const std::string *other = letter;
    if (isGlued(tokens, next, TokenKind::Word)) {
        other = spineLetter(tokens[next].text, words);
        ++next;
    }
    const bool isPair = next > at + 2 && other && isGlued(tokens, next, TokenKind::Number);
    const auto second = isPair ? wholeNumber(tokens[next].text) : std::nullopt;
    if (!second) {
        const auto one = indexOf(vertebraPrefix + *letter + std::to_string(*first), words);
        if (*letter == "c" && *first == 0) // the skull is no vertebra; its own name says it
            return {};
        return Level{2, one ? std::vector{*one} : std::vector<std::size_t>()};
    }
    return Level{next - at + 1, segmentsBetween(*letter + std::to_string(*first), *other + std::to_string(*second), words)};
}

std::vector<std::size_t> segmentsOf(const StructureId &vertebra, const LineWords &words)
{
    std::vector<std::size_t> out;
    for (const Joint &joint : words.atlas().joints())
        if ((joint.bones[0] == vertebra || joint.bones[1] == vertebra) && words.atlas().isSpinalSegment(joint.id))
            if (const auto index = indexOf(joint.id.value, words))
                out.push_back(*index);
    return out;
}

bool isVertebra(const Structure &structure)
{
    return structure.id.value.starts_with(vertebraPrefix);
}

bool isOfSpine(const Structure &structure, const Atlas &atlas)
{
    if (isVertebra(structure) || (structure.kind == Kind::Disc && !structure.paired))
        return true;
    if (structure.partOf)
        if (const Structure *whole = atlas.find(*structure.partOf); whole && isVertebra(*whole))
            return true;
    const Joint *joint = atlas.findJoint(structure.id);
    return joint && atlas.isSpinalSegment(structure.id)
        && std::any_of(
            joint->bones.begin(), joint->bones.end(), [&](const StructureId &bone) { return isVertebra(atlas.at(bone)); });
}

} // namespace raphe::language
